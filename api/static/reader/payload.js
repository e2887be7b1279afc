// Reads a tag's digits without any server: the same layout and code points, as data, that the
// library's Python reads (tables.layouts, tables.points). What it returns has the same JSON
// shape as the library's TagContent, and the same golden vectors test both.

// A tag that cannot be read; `problem` is a message with its mend.
export class Damaged extends Error {
  constructor(id) {
    super(id);
    this.problem = { id };
  }
}

const NAMED = "(named in full)", TABLES = "(tables)", KNOWN_PARTS = "(known parts)";

const SEAL_BITS = 520n; // of a signed tag, behind the payload: key id and signature

export function decode(digits, tables) {
  const { flat, layout } = readFlat(unsealed(digits, tables).value, tables);
  return content(flat, layout, tables);
}

// The payload of the digits as a whole number, and the seal behind it, or null: as tagger/code/payload.py.
export function unsealed(digits, tables) {
  const text = digits.trim();
  if (!/^\d{10,520}$/.test(text)) throw new Damaged("code-not-digits");
  const value = BigInt(text), before = value >> SEAL_BITS;
  if (!checked(before) && !checked(value)) throw new Damaged("code-damaged");
  if (!checked(before) || (checked(value) && reads(value, tables))) return { value, seal: null };
  return { value: before, seal: value & ((1n << SEAL_BITS) - 1n) };
}

function reads(value, tables) {
  try { return Boolean(readFlat(value, tables)); } catch { return false; }
}

const bitLength = (value) => value.toString(2).length;

// Whether the last 16 bits are the check of those before them.
function checked(value) {
  const length = bitLength(value) - 16;
  return length >= 6 && crc16(value >> 16n, length) === Number(value & 0xffffn);
}

function readFlat(value, tables) {
  if (!checked(value)) throw new Damaged("code-damaged");
  const bits = new Bits(value >> 16n, bitLength(value) - 17);
  const layout = tables.layouts[bits.take(4)];
  if (!layout) throw new Damaged("offline-newer-tag");
  const flat = {};
  for (const field of layout.fields) {
    if (applies(field, flat) && (!field.optional || bits.take(1))) {
      const value = fieldValue(field, bits, flat, tables);
      if (value !== undefined) flat[field.name] = value;
    }
  }
  if (bits.left) throw new Damaged("code-damaged");
  return { flat, layout };
}

class Bits {
  constructor(value, length) { this.value = value; this.left = length; }
  take(width) {
    if (width > this.left) throw new Damaged("code-incomplete");
    this.left -= width;
    return Number((this.value >> BigInt(this.left)) & ((1n << BigInt(width)) - 1n));
  }
}

// CRC-16/XMODEM over the body as bytes, first byte padded in front.
export function crc16(value, length) {
  const count = Math.ceil(length / 8);
  let crc = 0;
  for (let at = count - 1; at >= 0; at--) {
    crc ^= Number((value >> BigInt(at * 8)) & 0xffn) << 8;
    for (let bit = 0; bit < 8; bit++) crc = crc & 0x8000 ? ((crc << 1) ^ 0x1021) & 0xffff : (crc << 1) & 0xffff;
  }
  return crc;
}

function applies(field, flat) {
  if (field.only_with && flat[field.only_with] === undefined) return false;
  if (field.only_if_zero && flat[field.only_if_zero] !== NAMED) return false;
  return (field.when || []).every((one) => {
    const value = flat[one.field] ?? null;
    return one.in ? one.in.includes(value) : !one.not_in.includes(value);
  });
}

// The field's bits; a size has as many as its family's terms need.
function width(field, flat, tables) {
  if (typeof field.bits === "number") return field.bits;
  return field.bits[tables.sized_by[flat[field.name.replace(".size", ".connection")]]];
}

function fieldValue(field, bits, flat, tables) {
  let raw = bits.take(width(field, flat, tables));
  if (raw === field.absent) return undefined;
  switch (field.kind) {
    case "text": return Array.from({ length: raw }, () => String.fromCharCode(bits.take(7))).join("");
    case "point": return named(field.table, raw, tables);
    case "flags": return Object.entries(tables.points[field.table])
      .filter(([point]) => Math.floor(raw / 2 ** point) % 2).map(([, name]) => name);
    case "date": return new Date(Date.parse(field.from) + raw * 86400000).toISOString().slice(0, 10);
    case "size": return size(flat[field.name.replace(".size", ".connection")], raw, tables);
  }
  const [top, bottom] = step(field.step);
  const steps = (name) => Math.round(flat[name] * bottom / top);
  if (field.below) raw = steps(field.below) - raw;
  else if (field.above) raw += steps(field.above);
  return Math.round((raw + (field.offset || 0)) * top * 10000 / bottom) / 10000;
}

// "1/12", 0.1 or nothing, as two whole numbers.
function step(given = 1) {
  const [top, bottom] = String(given).split("/").map(Number);
  if (bottom) return [top, bottom];
  return Number.isInteger(top) ? [top, 1] : [1, Math.round(1 / top)];
}

function named(table, point, tables) {
  const name = tables.points[table][point];
  if (name === undefined) throw new Damaged("offline-newer-part");
  return name;
}

function size(connection, raw, tables) {
  switch (tables.sized_by[connection]) {
    case "thread": case "named": return named(tables.sized_by[connection], raw, tables);
    case "pipe": return pipe(raw);
    case "tube": return String(raw);
  }
  return raw;
}

// Sixteenths of an inch as a pipe size: 20 is "1 1/4".
export function pipe(sixteenths) {
  const whole = Math.floor(sixteenths / 16);
  let top = sixteenths % 16, bottom = 16;
  while (top && top % 2 === 0) { top /= 2; bottom /= 2; }
  return [whole || null, top ? `${top}/${bottom}` : null].filter(Boolean).join(" ");
}

// The content that the fields tell: most stand at their place (`at`), the rest are worked out. Its
// shape is the newest layout's, so that an older tag has null where it has no such field.
function content(flat, layout, tables) {
  const newest = tables.layouts[Math.max(...Object.keys(tables.layouts))];
  const values = {};
  for (const { name, at, kind } of newest.fields) {
    if (at) put(values, at.split("."), flat[name] ?? (kind === "flags" ? [] : null));
  }
  put(values, ["working_pressure_bar"], null);
  put(values, ["at_most_bar"], null);
  const given = { value_bar: null, source: null, fluid: null, max_temperature_c: null };
  put(values, ["spec", "working_pressure"], given);
  for (const { name, at } of layout.fields) if (at && flat[name] !== undefined) put(values, at.split("."), flat[name]);
  if (flat.pressure_from) pressure(values, flat);
  for (const holder of [values, values.spec]) emptyToNull(holder);
  const { spec } = values;
  let [standard, edition] = flat["hose.code"].split("|");
  if (flat["hose.code"] === NAMED) [standard, edition] = [flat["hose.standard"], flat["hose.edition"]];
  Object.assign(spec.hose, { standard, edition: edition || null, lot: null });
  for (const name of ["end_a", "end_b"]) Object.assign(spec[name], workedOut(flat, name, tables), { lot: null });
  return { ...values, spec: { ...spec, note: null } };
}

// One pressure and where it is from: the tables, the parts that are known, or somebody's word.
function pressure(values, flat) {
  const source = flat.pressure_from, bar = flat.pressure_bar ?? null;
  if (source === KNOWN_PARTS) { values.at_most_bar = bar; return; }
  values.working_pressure_bar = bar;
  if (source === TABLES) return;
  const names = flat.given_names_duty, hottest = flat.max_temperature_c ?? flat.given_temperature_c;
  Object.assign(values.spec.working_pressure, {
    value_bar: bar, source, fluid: names ? flat.fluid || "mineral_oil" : null, max_temperature_c: names ? hottest : null,
  });
}

function workedOut(flat, end, tables) {
  const byDash = tables.sized_by[flat[`${end}.connection`]] === "dash";
  const bend = flat[`${end}.bend_deg`];
  return {
    dash: byDash ? flat[`${end}.size`] : null,
    size: byDash ? null : flat[`${end}.size`] ?? null,
    shape: { 0: "straight", 45: "elbow_45", 90: "elbow_90" }[bend] || bend,
    hose_dash: flat[`${end}.jump_size`] ? flat["hose.dash"] : null,
  };
}

function put(values, [key, ...below], value) {
  if (below.length) put(values[key] ??= {}, below, value);
  else values[key] = value;
}

// A part of which the tag carries nothing is null, as the library has it.
function emptyToNull(holder) {
  for (const [key, part] of Object.entries(holder)) {
    if (part && !Array.isArray(part) && typeof part === "object" && Object.values(part).every((one) => one === null)) {
      holder[key] = null;
    }
  }
}
