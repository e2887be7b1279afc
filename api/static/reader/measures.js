// What was typed into the form of identify, as readings: the phone's side of tagger/units.py and of
// tagger/trade/identifying/readings.py. Lengths in mm, a pitch as threads per inch.

const MM_PER_INCH = 25.4;
const FACTORS = { mm: 1, cm: 10, m: 1000, in: 25.4, inch: 25.4, inches: 25.4, '"': 25.4, "″": 25.4, ft: 304.8, "'": 304.8 };
const FIGURE = /^\s*(?<sign>[-+])?\s*(?:(?<whole>\d+)(?:\s+|-))?(?<top>\d+)\s*\/\s*(?<bottom>\d+)\s*(?<unit>[^\d\s].*)?$|^\s*(?<decimal>[-+]?(?:\d+(?:[.,]\d*)?|[.,]\d+))\s*(?<unit2>[^\d\s].*)?$/;
const BAND = /\u00b1|\+\s*\/\s*[-\u2212]|\+[-\u2212]/;
const UNKNOWN = ["", "?", "unknown", "don't know", "dont know", "not known"];
const BETTER = { side: "form", swivels: "form", seals: "seat" }; // what says more than the eye
const SAID = [...Object.keys(BETTER), "shape"];
const LENGTHS = { hex: "hex", nose: "nose", tube_od: "tube_od", flange_od: "flange_od", bolt_spacing: "bolt_spacing" };
const message = (id, values = {}) => ({ id, values });
const ENTER = message("spec-enter-length");

class Unreadable extends Error {
  constructor(problem) {
    super(problem.id);
    this.problem = problem;
  }
}

// { measured, problems }: `measured` for the ranker; problems as { field, value, message }. `asked`: the texts of the
// form by name; `unit`: what a length without one stands in.
export function read(asked, unit, pool) {
  const problems = [], readings = {}, slips = {};
  const refuse = (field, value, wrong) => problems.push({ field, value, message: wrong });
  const form = known("form", pool.forms, (text) => text.toLowerCase());
  const side = form ? sideOf(form, pool) : given(asked.side).toLowerCase();
  if (form === null && !problems.length && UNKNOWN.includes(side)) refuse("form", "", message("scan-form-missing"));

  function known(field, words, plain = (text) => text.toLowerCase()) {
    const text = plain(given(asked[field]));
    if (UNKNOWN.includes(text.toLowerCase())) return null;
    if (words.includes(text)) return text;
    const values = { value: asked[field], known: words };
    refuse(field, asked[field], SAID.includes(field) ? message("identify-not-an-answer", values) : message(`identify-not-a-${field}`, values));
    return null;
  }

  // A reading without what it may be off by, and half of that: the standard deviation; 0 where it is not said.
  function apart(field, text) {
    const [read, band] = banded(given(text));
    if (!band) return { read: text, slip: 0 };
    let widest = 0, off = 0;
    try { [widest, off] = [lengthOf(read) / 2, lengthOf(band)]; } catch { off = 0; }
    if (off > 0 && off < widest) return { read, slip: off / 2 };
    refuse(field, text, message("identify-not-a-band", { value: given(text) }));
    return { read: "", slip: 0 };
  }

  function length(field, feature, text) {
    const { read: own, slip } = apart(field, text);
    if (UNKNOWN.includes(given(own).toLowerCase())) return;
    if (slip) slips[feature] = slip;
    try {
      readings[feature] = lengthOf(own);
    } catch (error) {
      if (!(error instanceof Unreadable)) throw error;
      return refuse(field, text, error.problem);
    }
    if (!(readings[feature] > 0 && readings[feature] < 1000)) refuse(field, text, message("identify-not-a-fitting-size", { value: given(text) }));
  }

  if (side === "male" || side === "female") length("diameter", "thread", withUnit(asked.diameter, unit));
  for (const [field, feature] of Object.entries(LENGTHS)) length(field, feature, withUnit(asked[field], unit));
  pitch(asked, readings, slips, refuse, length, apart);
  for (const [field, words] of Object.entries(pool.read_as)) {
    const word = known(field, words, (text) => text.toLowerCase().replace(/°$/, "").replace(/deg$/, "").trim());
    const better = BETTER[field] && !UNKNOWN.includes(given(asked[BETTER[field]]).toLowerCase());
    if (word !== null && !better) readings[field] = words.indexOf(word);
  }
  const series = known("series", ["S", "L"], (text) => text.toUpperCase());
  const origin = known("origin", [...new Set(pool.origins.map(([where]) => where))], (text) => text.toLowerCase().replace(/[ -]/g, "_"));
  const cannot = given(asked.cannot).split(",").map((word) => word.trim()).filter((word) => pool.asked.includes(word));
  const forms = "thread" in readings ? (side === "male" ? pool.males : pool.females) : null;
  return { measured: { form, forms, readings, slips, series, origin, cannot }, problems };
}

const sideOf = (form, { males, females }) => (males.includes(form) ? "male" : females.includes(form) ? "female" : "none");

// Threads per inch, or the pitch in mm: whichever was read.
function pitch(asked, readings, slips, refuse, length, apart) {
  const [tpi, mm] = [given(asked.tpi), given(asked.pitch)], none = (text) => UNKNOWN.includes(text.toLowerCase());
  if (!none(mm)) {
    length("pitch", "tpi", mm);
    if (readings.tpi !== undefined && !(readings.tpi >= 0.3 && readings.tpi <= 6)) refuse("pitch", mm, message("identify-not-a-pitch", { value: mm }));
    if (slips.tpi) slips.tpi *= MM_PER_INCH / readings.tpi ** 2;
    readings.tpi = MM_PER_INCH / readings.tpi;
    if (!none(tpi)) refuse("pitch", mm, message("identify-two-pitches"));
  } else if (!none(tpi)) {
    const { read, slip } = apart("tpi", tpi);
    if (!read) return;
    if (slip) slips.tpi = slip;
    try { readings.tpi = lengthOf(`${read} mm`); } catch { readings.tpi = 0; }
    if (!(readings.tpi >= 4 && readings.tpi <= 80)) refuse("tpi", tpi, message("identify-not-tpi", { value: tpi }));
  }
}

const given = (text) => (text ?? "").trim();

// A reading and what it may be off by, "" where that is not said; a unit that only one of them has is that of both.
function banded(text) {
  const match = BAND.exec(text);
  if (!match) return [text, ""];
  const parts = [text.slice(0, match.index).trim(), text.slice(match.index + match[0].length).trim()];
  const [one, other] = parts.map(unitOf);
  return [one || !other ? parts[0] : `${parts[0]} ${other}`, (other || !one ? parts[1] : `${parts[1]} ${one}`) || "?"];
}

function unitOf(text) {
  const { unit, unit2 } = FIGURE.exec(text.replaceAll("\u00a0", " "))?.groups ?? {};
  return unit ?? unit2 ?? "";
}

// A length without a unit in the shop's own; a fraction never stands in mm.
export function withUnit(text, unit) {
  const [own, band] = banded(given(text));
  if (band) return `${withUnit(own, unit)} \u00b1 ${withUnit(band, unit)}`;
  const plain = given(text), match = FIGURE.exec(plain.replaceAll("\u00a0", " "));
  if (!match || match.groups.unit || match.groups.unit2 || (unit === "mm" && plain.includes("/"))) return plain;
  return `${plain} ${unit}`;
}

// A length in mm. Throws Unreadable with the message that says why not.
export function lengthOf(text) {
  const match = FIGURE.exec(given(text).replaceAll("\u00a0", " "));
  if (!match) throw new Unreadable(message("spec-unit-unreadable", { enter: ENTER }));
  const { sign, whole, top, bottom, decimal, unit, unit2 } = match.groups;
  const figure = top ? fraction(sign, whole, top, bottom, unit, text) : plain(decimal);
  let named = (unit || unit2 || "mm").trim().toLowerCase().replace(/\.+$/, "");
  if (!(named in FACTORS)) named = named.replaceAll(" ", "");
  if (!Object.hasOwn(FACTORS, named)) throw new Unreadable(message("spec-unit-unknown", { unit: named.slice(0, 40), enter: ENTER }));
  return Number((figure * FACTORS[named]).toFixed(9));
}

function fraction(sign, whole, top, bottom, unit, text) {
  if (Number(bottom) === 0) throw new Unreadable(message("spec-unit-over-zero", { enter: ENTER }));
  if (!unit) throw new Unreadable(message("spec-unit-bare-fraction", { fraction: given(text).slice(0, 40) }));
  const figure = (Number(whole || 0) * Number(bottom) + Number(top)) / Number(bottom);
  return sign === "-" ? -figure : figure;
}

function plain(decimal) {
  if (/\d,\d{3}$/.test(decimal)) throw new Unreadable(message("spec-unit-comma"));
  return Number(decimal.replace(",", "."));
}
