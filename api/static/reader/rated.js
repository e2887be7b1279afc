// What is said of an assembly's working pressure, the figure or as much of the truth as is known: the
// phone's side of tagger/rated.py.

import { pressure } from "./figures.js";
import { endTitle, fluidOf, hose, NOT_KNOWN } from "./phrases.js";

const PARTS = ["hose", "end_a", "end_b"];
const message = (id, values = {}) => ({ id, values });
const parts = (names) => message("words-parts", { which: PARTS.filter((part) => names.includes(part)).join("-") });

// Whole lines: the figure with its mark, or the most that the known parts allow and whose figure to use else.
export function lines(content, tables) {
  const { working_pressure_bar: bar, unknown_parts: unknown, unverified_parts: doubtful } = content;
  if (bar !== null && doubtful.length) return [message("words-rated-unverified", { pressure: pressure(bar), parts: parts(doubtful) })];
  if (bar !== null) return [message("words-rated", { pressure: pressure(bar) })];
  if (!unknown.length) return [NOT_KNOWN];
  const ask = unknown.map((part) => message(`words-rated-ask-${part}`, { what: named(part, content.spec, tables) }));
  return [...atMost(content), ...ask, ...(doubtful.length ? [unverified(content)] : [])];
}

// The lines as one message of one to four sentences.
export function said(content, tables) {
  const [first, second, third, fourth] = lines(content, tables);
  if (fourth) return message("words-four-sentences", { first, second, third, fourth });
  if (third) return message("words-three-sentences", { first, second, third });
  return second ? message("words-two-sentences", { first, second }) : first;
}

function atMost({ at_most_bar: bar, unknown_parts: unknown }) {
  if (bar === null) return [];
  return [message("words-rated-at_most", { parts: parts(PARTS.filter((part) => !unknown.includes(part))), pressure: pressure(bar) })];
}

// That no published source rates these parts.
export const unverified = (content) => message("words-unverified", { parts: parts(content.unverified_parts) });

// The dangers that the tag carries.
export const dangers = ({ dangers: carried, spec }) => carried.map((danger) =>
  danger === "fluid" ? message("words-danger-fluid", { fluid: fluidOf(spec) }) : message(`words-danger-${danger}`));

// Which hose or end it is: "SAE 100R2 -12 (3/4 in)", "1/4 NPT".
const named = (part, spec, tables) => (part === "hose" ? hose(spec.hose, tables) : endTitle(spec[part], tables));
