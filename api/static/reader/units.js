// Figures in both systems, exactly as the library's units.py writes them.

const MM_PER_INCH = 25.4, BAR_PER_PSI = 0.0689475729, NM_PER_LBF_FT = 1.3558179483;

// To the nearest whole, halves to the even one, as Python rounds.
export function round(value) {
  const low = Math.floor(value), part = value - low;
  return part === 0.5 ? low + (low % 2 === 0 ? 0 : 1) : Math.round(value);
}

export function numberText(value, places = 1) {
  const text = value.toFixed(places);
  return places ? text.replace(/0+$/, "").replace(/\.$/, "") : text;
}

export function inchText(mm) {
  const inches = mm / MM_PER_INCH;
  const parts = round(inches * 16);
  if (Math.abs(parts / 16 * MM_PER_INCH - mm) > 0.051) return `${inches.toFixed(2)} in`;
  return `${mixed(parts, 16)} in`;
}

// top/bottom as a whole and a fraction: 17/16 is "1 1/16".
export function mixed(top, bottom) {
  const whole = Math.floor(top / bottom);
  let part = top % bottom, by = bottom;
  for (let d = part; d > 1; d--) if (part % d === 0 && by % d === 0) { part /= d; by /= d; }
  return [whole || !part ? String(whole) : null, part ? `${part}/${by}` : null].filter(Boolean).join(" ");
}

export const showLength = (mm) => `${numberText(mm)} mm (${inchText(mm)})`;
export const psiOf = (bar) => Math.floor((bar / BAR_PER_PSI + 1.5) / 5) * 5;
export const showPressure = (bar) => `${round(bar)} bar (${psiOf(bar)} psi)`;
export const fahrenheit = (celsius) => `${round(celsius * 1.8 + 32)} °F`;
export const showTemperature = (celsius) => `${numberText(celsius)} °C (${fahrenheit(celsius)})`;

export function lbfFtOf(nm) {
  const value = nm / NM_PER_LBF_FT;
  return value >= 10 ? round(value) : Math.round(value * 10) / 10;
}
