// An end identified by looking: the phone's side of tagger/trade/identifying/guided.py, over the same rows as ranker.js.
// A test holds it against Python's over random answers.

import { sizeText, toldApart } from "./ranker.js";

const UNKNOWN = "unknown";
const FEW = 8; // kinds whose look-alikes are told: of more the list itself shows them
const CUTTING_RING = { seals: ["cone"], cone: ["outside"], seat: ["24"] }; // on a plain tube, with its nut
const TELLING = ["shape", "seals", "cone", "seat"];
const SEALS_OF_SEAT = { face: "face", boss: "boss", flat: "flat", taper: "thread" }; // what identify calls a seat, and is no angle
const message = (id, values = {}) => ({ id, values });
const angle = (seat) => (seat === "30" ? "60" : seat); // the same cone

// { answers, problems }: the answers among what an address holds, in the order of the questions.
export function answersOf(asked, { steps, forms }) {
  const answers = {}, problems = [], seals = SEALS_OF_SEAT[(asked.seat ?? "").trim().toLowerCase()];
  if (seals) asked = { ...asked, seat: "", seals: asked.seals || seals };
  for (const [step, words] of Object.entries(steps)) {
    const text = (asked[step] ?? "").trim(), word = text.toLowerCase(), plain = step === "seat" ? angle(word) : word;
    if (!word) continue;
    if (["?", UNKNOWN, "don't know", "dont know", "not known"].includes(word)) answers[step] = UNKNOWN;
    else if (words.includes(plain) || (step === "form" && forms.includes(word))) answers[step] = plain;
    else problems.push({ field: step, value: text, message: message("identify-not-an-answer", { value: text.slice(0, 40), known: [...words, UNKNOWN] }) });
  }
  return { answers, problems };
}

// { step, choices, remaining, ruledOut }: `remaining` as { kind, facts, alike }, `ruledOut` as [kind, step].
export function look(answers, pool) {
  const against = kinds(pool).map((kind) => [kind, Object.keys(answers).filter((step) => answers[step] !== UNKNOWN && !allows(kind, step, answers[step]))]);
  const remaining = against.filter(([, steps]) => !steps.length).map(([kind]) => kind);
  const step = Object.keys(pool.steps).find((one) => !(one in answers) && isAsked(one, answers, remaining, pool)) ?? null;
  const telling = TELLING.filter((one) => (answers[one] ?? UNKNOWN) === UNKNOWN && new Set(remaining.map(({ words }) => words[one].join()).filter(Boolean)).size > 1);
  return {
    step,
    choices: step ? choices(step, remaining, pool) : [],
    remaining: remaining.map((kind) => ({
      kind,
      facts: telling.map((one) => [one, pool.steps[one].filter((word) => kind.words[one].includes(word))]).filter(([, words]) => words.length),
      alike: remaining.length <= FEW ? alike(kind, remaining, pool) : [],
    })),
    ruledOut: against.filter(([, steps]) => steps.length === 1).map(([kind, [one]]) => [kind, one]),
  };
}

// The answers as identify takes them with measurements; a form that is the only one left says the most.
export function measured(answers, { remaining }) {
  const found = Object.fromEntries(Object.entries(answers).filter(([, word]) => word !== UNKNOWN));
  const forms = [...new Set(remaining.map(({ kind }) => kind.form))];
  if (forms.length === 1) {
    delete found.side;
    delete found.swivels;
    [found.form] = forms;
  }
  if (found.seat) delete found.seals;
  return found;
}

// Every form of every family, in the order of the tables; `words`: by question, the answers that are true of it.
function kinds(pool) {
  const found = new Map();
  for (const row of pool.rows) {
    const name = `${row.family}|${row.form}`;
    if (!found.has(name)) found.set(name, { family: row.family, form: row.form, rows: [], words: wordsOf(row, pool) });
    found.get(name).rows.push(row);
  }
  return [...found.values()];
}

function wordsOf(row, { read_as: words, limits }) {
  const own = (name) => (row[name].every((share) => share === 0.5) ? [] : words[name].filter((_, at) => row[name][at] >= 0.1));
  const seats = words.seat.filter((_, at) => row.seat[at] > limits.seat_misread / 2).map(angle);
  return {
    form: [row.form], seat: [...new Set(seats)].sort(),
    ...Object.fromEntries(["side", "swivels", "shape", "seals", "cone"].map((name) => [name, own(name)])),
    ...(row.form === "standpipe" ? CUTTING_RING : {}),
  };
}

const allows = ({ words }, step, answer) => !words[step].length || words[step].includes(answer);

const choices = (step, remaining, { steps }) => steps[step].filter((word) => remaining.some(({ words }) => words[step].includes(word)));

function isAsked(step, answers, remaining, pool) {
  if ((step === "form") !== (answers.side === "none") && step !== "side") return false;
  if (["cone", "seat"].includes(step) && !["cone", UNKNOWN].includes(answers.seals ?? UNKNOWN)) return false;
  return choices(step, remaining, pool).some((word) => remaining.some((kind) => !allows(kind, step, word)));
}

function alike(kind, remaining, pool) {
  const others = remaining.filter((one) => one !== kind && one.form === kind.form).map(({ family }) => family);
  return toldApart(kind.rows, (family) => others.includes(family), pool);
}

// In words

export function inWords(step, answer, { steps }) {
  if (answer === UNKNOWN) return message("identify-answer-unknown");
  return message(step === "form" && !steps.form.includes(answer) ? `words-form-${answer}` : `identify-answer-${step}-${answer}`);
}

export const told = (step, answers, pool) => message(`identify-told-${step}`, { answers: answers.map((answer) => inWords(step, answer, pool)) });

export function sizes({ rows }, pool) {
  const all = [...new Set(rows.map((row) => sizeText(row, pool)))];
  return message("identify-looking-sizes", { count: all.length, first: all[0], last: all.at(-1) });
}
