// SI and US units as tagger/units.py shows them; a browser test holds the two together.

const MM_PER_INCH = 25.4, BAR_PER_PSI = 0.0689475729, NM_PER_LBF_FT = 1.3558179483;

// To the nearest whole, halves to the even one, as Python rounds.
export function round(value) {
  const low = Math.floor(value), part = value - low;
  return part === 0.5 ? low + (low % 2 === 0 ? 0 : 1) : Math.round(value);
}

// With that many decimals, halves to the even one. Only a multiple of 1/2^(places + 1) can be a half.
export function fixed(value, places) {
  const half = Math.abs(value * 2 ** (places + 1)) % 2 === 1;
  return (half ? round(value * 10 ** places) / 10 ** places : value).toFixed(places);
}

export function numberText(value, places = 1) {
  const text = fixed(value, places);
  const short = places ? text.replace(/0+$/, "").replace(/\.$/, "") : text;
  return short === "-0" ? "0" : short;
}

export function inchText(mm) {
  const inches = mm / MM_PER_INCH;
  const parts = round(inches * 16);
  if (Math.abs(parts / 16 * MM_PER_INCH - mm) > 0.051) return `${fixed(inches, 2)} in`;
  return `${mixed(parts, 16)} in`;
}

// A count to the twelfth, as a mixed number.
export const mixedText = (value) => mixed(round(value * 12), 12);

// top/bottom as a whole and a fraction: 17/16 is "1 1/16".
function mixed(top, bottom) {
  const whole = Math.floor(top / bottom);
  let part = top % bottom, by = bottom;
  for (let d = part; d > 1; d--) if (part % d === 0 && by % d === 0) { part /= d; by /= d; }
  return [whole || !part ? String(whole) : null, part ? `${part}/${by}` : null].filter(Boolean).join(" ");
}

// psi in steps of 5, at most 1.5 above the exact value: a rating does not grow by being shown.
export function psiOf(bar) {
  const psi = bar / BAR_PER_PSI + 1.5;
  return Math.round((psi - psi % 5) / 5) * 5;
}

// A pressure that must be reached: rounded up, or the round psi that the standards print.
export function leastPressurePair(bar) {
  const psi = bar / BAR_PER_PSI;
  const printed = round(psi / 25) * 25;
  const shown = Math.abs(psi - printed) <= 3 ? printed : Math.ceil(psi / 5) * 5;
  return [`${Math.ceil(Number(fixed(bar, 2)))} bar`, `${shown} psi`];
}

export const lengthPair = (mm) => [`${numberText(mm)} mm`, inchText(mm)];
export const diameterPair = (mm) => [`${numberText(mm, 2)} mm`, inchText(mm)]; // as a caliper reads a thread
export const pressurePair = (bar) => [`${round(bar)} bar`, `${psiOf(bar)} psi`];
export const temperaturePair = (celsius) => [`${numberText(celsius)} °C`, `${round(celsius * 1.8 + 32)} °F`];

// Whole from 10 up, else one decimal.
export function lbfFtOf(nm) {
  const value = nm / NM_PER_LBF_FT;
  return value >= 10 ? round(value) : Number(fixed(value, 1));
}
