// How to tighten one end, as messages: the phone's side of tagger/trade/tightened.py.

import { torque } from "./figures.js";
import { counted, isFlange, NOT_KNOWN, NOTHING_TO_TIGHTEN, sizeKey } from "./phrases.js";

export const STATED = ["finger_tight", "wrench_resistance"];
const WITHOUT_NUT = ["male", "female_fixed"];

// By its torque, or by the turn with its basis; never a guess.
export function tighten(tightening, end, tables) {
  if (tables.fit.latched.includes(end.connection)) return [NOTHING_TO_TIGHTEN];
  if (!tightening) return [NOT_KNOWN];
  const byTorque = torqued(tightening, end, tables);
  const count = STATED.includes(tightening.flats_basis) ? counted(tightening, end, tables) : null;
  if (!byTorque || !count) return [byTorque ?? count ?? NOT_KNOWN];
  return eitherWay(end, tables) ? [byTorque, { ...count, id: "words-counted-or" }] : [byTorque];
}

// Whether flats may take the place of a torque; in the other families the torque counts.
export const eitherWay = (end, tables) => tables.fit.either_way.includes(end.connection);

// The torque of the nut, the stud or each screw of a flange, with its lubrication and what it holds for.
function torqued(tightening, end, tables) {
  const { torque_min_nm: low, torque_max_nm: high, lubrication } = tightening;
  if (high === null || tables.fit.taper.includes(end.connection)) return null;
  const figure = torque(low, high);
  if (isOfNut(tightening, end, tables)) return { id: "words-torque-of-nut", values: { torque: figure } };
  const alone = isFlange(end) ? ofScrew(tightening, end, figure, tables) : { id: "words-as-is", values: { text: figure } };
  const said = lubrication ? { id: "words-torque-lubricated", values: { torque: alone, lubrication: { id: `trade-lubrication-${lubrication}` } } } : alone;
  const stud = WITHOUT_NUT.includes(end.form) && tables.fit.studs.includes(end.connection);
  return stud ? { id: "words-torque-stud", values: { torque: said } } : said;
}

function ofScrew(tightening, end, figure, tables) {
  const screw = screwOf(tightening, end, tables);
  return screw === null ? { id: "words-torque-any-screw", values: { torque: figure } } : { id: "words-torque-screw", values: { torque: figure, screw } };
}

// The screw a tag names; an older tag has the torque only, whose range tells the screw, as in tagger/trade/screws.py.
export function screwOf(tightening, end, tables) {
  if (tightening.screw) return tightening.screw;
  const { torque_min_nm: low, torque_max_nm: high } = tightening;
  const rows = tables.fit.screws[`${end.connection}|${sizeKey(end)}`] || [];
  const found = new Set(rows.filter((r) => tenths(r[0]) === tenths(low) && tenths(r[1]) === tenths(high)).map((r) => r[2]));
  return found.size === 1 ? [...found][0] : null;
}

const tenths = (nm) => (nm === null ? null : Math.round(nm * 10));

// Whether an end without a nut carries the torque of a nut, as in tagger/trade/joints.py.
export function isOfNut(tightening, end, tables) {
  if (!WITHOUT_NUT.includes(end.form) || !tightening || tightening.torque_max_nm === null) return false;
  const { torque_min_nm: low, torque_max_nm: high } = tightening;
  const ranges = tables.fit.nuts[`${end.connection}|${sizeKey(end)}`] || [];
  return ranges.some((r) => tenths(r[0]) === tenths(low) && tenths(r[1]) === tenths(high));
}
