// Marks found on a gauge sheet, corrected by its check line: the phone's side of
// tagger/trade/identifying/marks.py and of api/scan/identify.py.

const FIELDS = { D: "diameter", F: "diameter", P: "pitch", A: "seat", H: "hex", R: "flange_od", B: "bolt_spacing" };
const UNKNOWN = ["", "?", "unknown", "don't know", "dont know", "not known"];
const MARK = /^([A-Z])\s*(\d{1,3}(?:[.,]\d{1,3})?)/;
const INCHES = ["in", "in.", "inch", "inches", '"', "\u2033"];
const [LEAST, MOST, MANY, LINE_MM, LINE_IN] = [0.97, 1.03, 8, 100, 101.6];

// { asked, paper, problems }: `asked` with the marks in the fields that they measure, in mm; `paper`: that lengths were
// read off paper. `lengthOf` reads a length in mm and throws { problem }; `pool`: what ranker.js takes.
export function withMarks(asked, pool, lengthOf) {
  const problems = [], found = {}, [text, line] = [given(asked.found), given(asked.scale)];
  const refuse = (field, value, id, values = {}) => problems.push({ field, value, message: { id, values } });
  for (const [letter, figure] of split(text.toUpperCase(), refuse, text)) {
    const field = FIELDS[letter];
    if (field in found || given(asked[field])) refuse("found", text, "identify-mark-twice", { mark: letter + figure });
    found[field] = [letter, figure];
  }
  const lengths = Object.values(found).some(([letter]) => letter !== "A");
  const size = trueSize(line, Object.keys(found).length, lengths, lengthOf, refuse, problems);
  const [letter] = found.diameter ?? [], form = given(asked.form);
  const side = [...pool.males, ...pool.females].includes(form) ? (pool.males.includes(form) ? "male" : "female") : pool.forms.includes(form) ? "none" : given(asked.side).toLowerCase();
  if (letter && !problems.length && !UNKNOWN.includes(side) && side !== (letter === "D" ? "male" : "female")) {
    refuse("found", text, "identify-mark-other-end", { thread: letter === "D" ? "thread_od" : "thread_id" });
  }
  const values = Object.entries(found).map(([field, [of, figure]]) =>
    [field, of === "A" ? figure : `${Number((Number(figure.replace(",", ".")) * size).toFixed(4))} mm`]);
  return { asked: { ...asked, ...Object.fromEntries(values) }, paper: lengths, problems };
}

const given = (text) => (text ?? "").trim();

function split(text, refuse, whole) {
  const marks = [];
  if (text.length > 12 * MANY) refuse("found", whole.slice(0, 100), "identify-marks-many", { most: MANY });
  else for (let rest = text; rest; ) {
    const match = MARK.exec(rest);
    if (!match || !(match[1] in FIELDS)) {
      refuse("found", whole, "identify-mark-unreadable", { given: rest.slice(0, 20) });
      break;
    }
    marks.push([match[1], match[2]]);
    rest = rest.slice(match[0].length).replace(/^[\s,;+]+/, "");
  }
  return marks;
}

// How large the sheet was printed, as a share of true size.
function trueSize(line, count, lengths, lengthOf, refuse, problems) {
  if (!line) {
    if (lengths) refuse("scale", "", "identify-scale-missing");
    return 1;
  }
  if (!count && !problems.length) {
    refuse("scale", line, "identify-scale-alone");
    return 1;
  }
  let read, inches = INCHES.some((unit) => line.toLowerCase().endsWith(unit));
  try {
    read = lengthOf(line);
  } catch (error) {
    problems.push({ field: "scale", value: line, message: error.problem });
    return 1;
  }
  if (/^\d{1,3}(?:[.,]\d+)?$/.test(line) && read < LINE_MM / 10) [read, inches] = [read * 25.4, true];
  if (!inches && Math.abs(read - LINE_IN) < 0.15) {
    refuse("scale", line, "identify-scale-other-line");
    return 1;
  }
  const size = Number((read / (inches ? LINE_IN : LINE_MM)).toFixed(6));
  if (!(size >= LEAST && size <= MOST)) refuse("scale", line, "identify-scale-beyond", { given: line.slice(0, 20) });
  return size;
}
