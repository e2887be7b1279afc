// Figures and days as people read them: the phone's side of tagger/i18n/figures.py.

import { diameterPair, lbfFtOf, leastPressurePair, lengthPair, mixedText, numberText, pressurePair, temperaturePair } from "./units.js";

const PAIRS = { pressure: pressurePair, least_pressure: leastPressurePair, length: lengthPair, diameter: diameterPair, temperature: temperaturePair };

// A figure {value, unit, low?, at_most?} in SI and in US units; null where there is one system only.
export function shown(figure, t) {
  const { value: high, low = high, unit, at_most: atMost } = figure;
  if (unit === "angle") return [t.decimal(`${numberText(high)}°`), null];
  if (unit === "count") return [range(t, mixedText(low), mixedText(high), atMost), null];
  if (unit === "torque") {
    const [lowFeet, highFeet] = [low, high].map((nm) => numberText(lbfFtOf(nm)));
    return [range(t, numberText(low), numberText(high), atMost, " N·m"), range(t, lowFeet, highFeet, atMost, " lbf·ft")];
  }
  return PAIRS[unit](high).map(t.decimal);
}

function range(t, low, high, atMost, unit = "") {
  const most = t.decimal(`${high}${unit}`);
  if (atMost) return t("words-at-most", { high: most });
  return low === high ? most : t("words-range", { low: t.decimal(low), high: most });
}

// A day "2026-11-26" as the language writes it.
export function showDate(text, t) {
  const [year, month, day] = text.split("-");
  return t("words-date", { year, month, day });
}

export const pressure = (bar) => ({ value: bar, unit: "pressure" });
export const length = (mm) => ({ value: mm, unit: "length" });
export const diameter = (mm) => ({ value: mm, unit: "diameter" });
export const temperature = (celsius) => ({ value: celsius, unit: "temperature" });
export const angle = (degrees) => ({ value: degrees, unit: "angle" });
export const count = (low, high) => ({ value: high, unit: "count", low });
export const torque = (low, high) => (low === null ? { value: high, unit: "torque", at_most: true } : { value: high, unit: "torque", low });
