// What a tag claims, held against the tables: the phone's side of tagger/trade/present.py. Digits can be
// written by anybody; what they claim above the ratings of hose and ends is not shown.

import { hottestOfHose, limitOf, spelled } from "./limits.js";

const SAME_BAR = 0.5; // what rounding to a tag's tenths and to psi may differ by

// { content, claimed }: the content with the lower pressure, and the higher one that its digits claim, else null.
export function held(content, tables) {
  const was = content.working_pressure_bar;
  if (was === null) return heldAtMost(content, tables);
  const { now, atMost, unknown } = allowed(content.spec, was, tables);
  if (now !== null && now >= was - SAME_BAR) return { content, claimed: null };
  const lower = {
    working_pressure_bar: now,
    at_most_bar: now === null ? atMost : null,
    unknown_parts: now === null ? unknown : [],
    unverified_parts: content.unverified_parts.filter((part) => !unknown.includes(part)),
    dangers: dangersOf(content.spec, tables),
  };
  return { content: { ...content, ...lower }, claimed: was };
}

// What the known parts allow at most: what was not known stays so, and no pressure is made of it.
function heldAtMost(content, tables) {
  const was = content.at_most_bar;
  if (was === null) return { content, claimed: null };
  const { now, atMost, unknown, counts } = allowed(content.spec, was, tables);
  const bar = now ?? atMost;
  if (counts && (bar === null || bar >= was - SAME_BAR)) return { content, claimed: null };
  const lower = counts ? { at_most_bar: bar } : { at_most_bar: null, unknown_parts: unknown, unverified_parts: content.unverified_parts.filter((part) => !unknown.includes(part)) };
  return { content: { ...content, ...lower, dangers: dangersOf(content.spec, tables) }, claimed: was };
}

function allowed(spec, was, tables) {
  const given = spec.working_pressure;
  const counts = !dangersOf(spec, tables).some((danger) => danger !== "cold") || (given !== null && lifts(given, spec));
  const bars = { hose: counts ? hoseBar(spec.hose, tables) : null, end_a: endBar(spec.end_a, tables), end_b: endBar(spec.end_b, tables) };
  const unknown = Object.keys(bars).filter((part) => bars[part] === null);
  const known = Object.values(bars).filter((bar) => bar !== null);
  const atMost = counts && known.length ? Math.min(...known) : null;
  if (given && counts) return { now: Math.min(was, ...known), atMost, unknown, counts };
  return { now: unknown.length ? null : atMost, atMost, unknown, counts };
}

// Without its edition a hose has the least of them; with one that is not in the list, the highest.
function hoseBar({ standard, dash, edition }, tables) {
  const { hoses } = tables.ceilings;
  const name = [standard, spelled(standard, tables)].find((one) => hoses[`${one}|${dash}`] !== undefined);
  if (name === undefined) return null;
  const plain = hoses[`${name}|${dash}`];
  if (edition === null) return plain;
  const named = Object.keys(hoses).filter((key) => key.startsWith(`${name}|${dash}|`)).map((key) => hoses[key]);
  return hoses[`${name}|${dash}|${edition}`] ?? Math.max(plain, ...named);
}

// A series has its own rating where it differs from that of an end without one.
function endBar({ connection, size, dash, form, material, series }, tables) {
  const { ends } = tables.ceilings, key = `${connection}|${size ?? dash}|${form}`;
  const made = material && material !== "carbon_steel" ? `|${material}` : "";
  return ends[`${key}|${series}${made}`] ?? ends[`${key}${made}`] ?? null;
}

// What is asked of the hose beyond its limits, in the order of the tag's dangers: fluid, heat, cold.
function dangersOf(spec, tables) {
  const standard = spelled(spec.hose.standard, tables) ?? spec.hose.standard, hottest = spec.max_temperature_c;
  if (tables.hot[standard] === undefined) return [];
  const named = tables.hot[`${standard}|${spec.fluid}`], limit = hottestOfHose(spec, tables), cold = limitOf(spec, tables.cold, tables);
  const wrong = named ? named[0] === null : tables.needs_source.includes(spec.fluid);
  return [
    wrong && "fluid",
    hottest !== null && hottest > Math.min(tables.hot[standard][0], limit?.[0] ?? Infinity) && "heat",
    hottest !== null && cold && hottest < cold[0] && "cold",
  ].filter(Boolean);
}

function lifts(given, spec) {
  if (given.max_temperature_c === null || given.fluid !== (spec.fluid || "mineral_oil")) return false;
  return spec.max_temperature_c === null || given.max_temperature_c >= spec.max_temperature_c;
}
