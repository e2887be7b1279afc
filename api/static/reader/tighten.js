// How to tighten one end, as messages: the same choice as api/scan/view.py.

import { torque } from "./figures.js";
import { counted, isFlange, NOT_KNOWN, NOTHING_TO_TIGHTEN, sizeKey } from "./phrases.js";

// By its torque, or by the turn with its basis; never a guess.
export function tighten(tightening, end, tables) {
  if (tables.fit.latched.includes(end.connection)) return [NOTHING_TO_TIGHTEN];
  if (!tightening) return [NOT_KNOWN];
  const byTorque = torqued(tightening, end, tables), count = counted(tightening, end, tables);
  if (byTorque && count) return [byTorque, { ...count, id: "words-counted-or" }];
  const lines = [byTorque, count].filter(Boolean);
  return lines.length ? lines : [NOT_KNOWN];
}

// The torque with how the joint is lubricated at it; without where the tag does not say.
function torqued(tightening, end, tables) {
  const said = turned(tightening, end, tables), { lubrication } = tightening;
  if (!said || !lubrication) return said;
  return { id: "words-torque-lubricated", values: { torque: said, lubrication: { id: `trade-lubrication-${lubrication}` } } };
}

// The torque of the nut, or of each screw of a flange.
function turned(tightening, end, tables) {
  const { torque_min_nm: low, torque_max_nm: high } = tightening;
  if (high === null) return null;
  const values = { torque: torque(low, high) };
  if (!isFlange(end)) return { id: "scan-torque", values };
  const screw = screwOf(tightening, end, tables);
  return screw === null ? { id: "words-torque-any-screw", values } : { id: "words-torque-screw", values: { ...values, screw } };
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
  if (!["male", "female_fixed"].includes(end.form) || !tightening || tightening.torque_max_nm === null) return false;
  const { torque_min_nm: low, torque_max_nm: high } = tightening;
  const ranges = tables.fit.nuts[`${end.connection}|${sizeKey(end)}`] || [];
  return ranges.some((r) => tenths(r[0]) === tenths(low) && tenths(r[1]) === tenths(high));
}
