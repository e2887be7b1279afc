// The parts of a spec as messages: the phone's side of tagger/phrases.py.

import { angle, count, length } from "./figures.js";
import { inchText } from "./units.js";

const ANGLES = { straight: 0, elbow_45: 45, elbow_90: 90 };
export const angleOf = (end) => ANGLES[end.shape] ?? end.shape;
export const isFlange = (end) => end.connection.startsWith("flange_");
export const sizeKey = (end) => end.description || String(end.dash ?? end.size);

const message = (id, values = {}) => ({ id, values });
export const NOT_KNOWN = message("words-not-known");
export const NOTHING_TO_TIGHTEN = message("words-nothing-to-tighten");

export const connection = (which) => message(`words-connection-${which}`);
export const form = (which) => message(`words-form-${which}`);
export const material = (which) => message(`words-material-${which}`);
export const fluid = (which) => message(`words-fluid-${which}`);
export const fluidOf = (spec) => (spec.fluid ? fluid(spec.fluid) : message("words-fluid-not_entered"));
export const cover = (which) => message(`words-cover-${which}`);
export const basis = (which) => message(`words-basis-${which}`);
export const lengthBasis = (which) => message(`words-length_basis-${which}`);

// The size as the trade writes it: -12, 1/2, 12 mm, and the series after it: M22x1.5 S;
// of an end of no family its description.
export function sizeText(end, tables) {
  if (end.description) return end.description;
  const size = end.dash !== null ? `-${end.dash}` : tables.sized_by[end.connection] === "tube" ? `${end.size} mm` : end.size;
  return end.series ? `${size} ${end.series}` : size;
}

// Straight, or the elbow with its drop.
export function shape(end) {
  if (!angleOf(end)) return message("words-shape-straight");
  const turn = angle(angleOf(end));
  if (end.drop_mm === null) return message("words-shape-elbow", { angle: turn });
  return message("words-shape-elbow-drop", { angle: turn, drop: length(end.drop_mm) });
}

// What stands behind the size; behind a description it is in brackets, or the two would read as one name.
const family = (which) => (which.description ? message("words-end-described") : connection(which.connection));

// One end in a line: size, family, form, shape, and what is not ordinary about it.
export function end(which, tables) {
  const common = {
    size: sizeText(which, tables), connection: family(which), form: form(which.form), shape: shape(which),
  };
  const made = { material: material(which.material) }, dash = which.hose_dash;
  const ordinary = which.material === "carbon_steel";
  if (dash === null) return ordinary ? message("words-end", common) : message("words-end-material", { ...common, ...made });
  if (ordinary) return message("words-end-jump", { ...common, dash });
  return message("words-end-material-jump", { ...common, ...made, dash });
}

// Size and family: "-12 37° flare (JIC)".
export const endTitle = (which, tables) => message("words-end-title", { size: sizeText(which, tables), connection: family(which) });

// The hose in a line: "SAE 100R2 -12 (3/4 in)", "SAE 100R5 -12 (for 3/4 in tube)".
export function hose({ standard, edition, dash }, tables) {
  const inches = inchText(dash * 25.4 / 16);
  if (tables.tube_hoses.includes(standard)) return message("words-hose-tube", { standard, dash, inches });
  return edition ? message("words-hose-edition", { standard, edition, dash, inches }) : message("words-hose", { standard, dash, inches });
}

// How far below the atmosphere the inside of a hose may go.
export const vacuum = (bar) => message("words-vacuum", { mbar: Math.round(bar * 1000) });

// The overall length with what it reaches between.
export const overallLength = (spec) => message("words-length", { length: length(spec.length_mm), basis: lengthBasis(spec.length_basis) });

// The clocking angle with its convention; null unless both ends are elbows.
export const clocking = (spec) => (spec.clocking_deg === null ? null : message("words-clocking", { angle: angle(spec.clocking_deg) }));

// Singular up to one, as the trade counts ("1/2 flat"); French has it below two ("1 1/2 pan").
const many = (high) => (high <= 1 ? "one" : high < 2 ? "below_two" : "other");
export const flats = (low, high) => message("words-flats", { count: count(low, high), many: many(high) });
export const turns = (low, high) => message("words-turns", { count: count(low, high), many: many(high) });

// Flats, or turns for a taper thread, with where they are counted from; null where not known.
export function counted(tightening, which, tables) {
  const { flats_min: low, flats_max: high, flats_basis: start } = tightening;
  if (low === null || high === null || start === null) return null;
  const said = tables.fit.taper.includes(which.connection) ? turns(low / 6, high / 6) : flats(low, high);
  return message("words-counted", { count: said, basis: basis(start) });
}
