// A reader of the digits that knows tagger/code/format.json and nothing else of the program.
// node decode.js format.json < digits, one a line; answers one JSON content a line.
"use strict";
const fs = require("fs");
const format = JSON.parse(fs.readFileSync(process.argv[2], "utf8"));

function crc(value, length) {
  let sum = format.check.start;
  for (let byte = Math.ceil(length / 8) - 1; byte >= 0; byte--) {
    sum ^= Number((value >> BigInt(8 * byte)) & 255n) << 8;
    for (let bit = 0; bit < 8; bit++) sum = ((sum << 1) ^ (sum & 0x8000 ? format.check.polynomial : 0)) & 0xffff;
  }
  return sum;
}

function holds(test, read) {
  const value = "sized_by" in test ? format.sized_by[read[test.sized_by]] : read[test.field] ?? null;
  return "in" in test ? test.in.includes(value) : !test.not_in.includes(value);
}

const step = (field) => {
  const [top, bottom] = String(field.step ?? 1).split("/").map(Number);
  return top / (bottom || 1);
};

function present(field, read, take) {
  if ("only_with" in field && !(field.only_with in read)) return false;
  if ("only_if_zero" in field && read[field.only_if_zero] !== format.points[tableOf(field.only_if_zero)]["0"]) return false;
  if (!(field.when ?? []).every((test) => holds(test, read))) return false;
  return !field.optional || take(1) === 1;
}

const tableOf = (name) => format.layouts["1"].find((field) => field.name === name).table;

function value(field, read, take, number) {
  const sizing = field.kind === "size" ? format.sized_by[read[field.name.replace("size", "connection")]] : null;
  let raw = take(typeof field.bits === "object" ? field.bits[sizing] : field.bits);
  if (raw === field.absent) return undefined;
  if (field.kind === "text") return Array.from({ length: raw }, () => String.fromCharCode(take(7))).join("");
  if (field.kind === "point") return point(field.table, raw);
  if (field.kind === "flags") {
    return Object.keys(format.points[field.table]).filter((at) => (raw >> Number(at)) & 1).map((at) => point(field.table, at));
  }
  if (field.kind === "date") return new Date(Date.parse(field.from) + raw * 864e5).toISOString().slice(0, 10);
  if (field.kind === "size") {
    const how = format.sizes[sizing];
    if (how === "number") return raw;
    if (how === "text") return String(raw);
    return how === "points" ? point(sizing, raw) : how[raw];
  }
  if ("below" in field) raw = number[field.below] - raw;
  if ("above" in field) raw = number[field.above] + raw;
  raw += field.offset ?? 0;
  number[field.name] = raw;
  return Number((raw * step(field)).toFixed(4));
}

function point(table, at) {
  if (!(at in format.points[table])) throw new Error(`${table} ${at}: a later tag`);
  return format.points[table][at];
}

// With a signature behind it or without: only one of the two fits.
function decode(digits) {
  const whole = BigInt(digits), { key_id_bits: id, signature_bits: signature } = format.seal;
  try { return payload(whole); } catch { return payload(whole >> BigInt(id + signature)); }
}

function payload(whole) {
  const bits = whole.toString(2).length - format.check.bits, body = whole >> BigInt(format.check.bits);
  if (crc(body, bits) !== Number(whole & 0xffffn)) throw new Error("damaged");
  let left = bits - 1;
  const take = (width) => Number((body >> BigInt((left -= width))) & ((1n << BigInt(width)) - 1n));
  const version = take(format.version_bits), read = {}, number = {};
  for (const field of format.layouts[version]) {
    if (!present(field, read, take)) continue;
    const found = value(field, read, take, number);
    if (found !== undefined) read[field.name] = found;
  }
  if (left !== 0) throw new Error("bits left over");
  const content = {};
  for (const field of format.layouts[version]) if ("at" in field && field.name in read) put(content, field.at, read[field.name]);
  for (const rule of format.content[version]) {
    if (!(rule.when ?? []).every((test) => holds(test, read))) continue;
    let told = read[rule.field] ?? rule.otherwise;
    if (told === undefined) continue;
    if ("map" in rule) told = rule.map[told] ?? told;
    if ("part" in rule) told = told.split(rule.part[0])[rule.part[1]];
    if (told !== undefined && told !== "") put(content, rule.to, told);
  }
  return content;
}

function put(content, path, told) {
  const names = path.split("."), last = names.pop();
  names.reduce((holder, name) => (holder[name] ??= {}), content)[last] = told;
}

for (const digits of fs.readFileSync(0, "utf8").split("\n").filter(Boolean)) console.log(JSON.stringify(decode(digits)));
