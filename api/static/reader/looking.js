// The page that identifies an end by looking, without a signal: what templates/looking.html shows, from the pictures
// that the kept page holds.

import { answersOf, inWords, look, measured, sizes, told } from "./guided.js";
import { start } from "./page.js";
import { connection, form as formOf } from "./phrases.js";

const HANGS_ON = { side: ["form"], seals: ["cone", "seat"] };
const SEEN = ["side", "swivels", "shape", "seals"];

// An element with its text, attributes and children.
export function made(name, text, attributes = {}, ...children) {
  const found = Object.assign(document.createElement(name), { textContent: text ?? "" });
  for (const [key, value] of Object.entries(attributes)) found.setAttribute(key, value);
  found.append(...children);
  return found;
}

export const notice = (kind, ...children) => made("div", "", { class: `notice ${kind}` }, ...children);

export function refusal({ value, message }, caption, t) {
  const named = made("strong", value ? t("scan-line", { label: caption, text: value }) : caption);
  return made("div", "", { class: "notice danger", role: "alert" }, made("p", "", {}, named), made("p", `${t(message)} ${t.mend(message)}`));
}

// Fills the page instead of the form for measurements.
export function looking(place, query, t, pool) {
  const asked = Object.fromEntries([...query].map(([name, value]) => [name, value.trim()]));
  const keeps = Object.fromEntries(Object.entries(asked).filter(([name]) => !(name in pool.steps) && name !== "lang"));
  const { answers, problems } = answersOf(asked, pool);
  document.title = document.querySelector("h1").textContent = t("identify-looking-title");
  for (const part of document.querySelectorAll("[data-measure], main form, [data-look], [data-said]")) part.remove();
  if (problems.length) place.replaceChildren(...problems.map((problem) => refusal(problem, t(`scan-field-${problem.field}`), t)));
  else place.replaceChildren(...shown(answers, keeps, t, pool));
  start();
}

// What the form for measurements keeps of the answers, in words; the forms that they leave.
export function seen(asked, form, t, pool) {
  const { answers } = answersOf(asked, pool), said = SEEN.filter((step) => pool.steps[step].includes(answers[step]));
  const link = document.querySelector("[data-look]");
  link.setAttribute("href", address("/identify/look", asked));
  if (!said.length) return;
  const lines = said.map((step) => made("li", t(told(step, [answers[step]], pool))));
  link.closest("p").after(made("div", "", { "data-said": "" }, made("h3", t("identify-looking-known")), made("ul", "", { class: "seen" }, ...lines)));
  const { remaining } = look({ ...(answers.side && { side: answers.side }), ...(answers.swivels && { swivels: answers.swivels }) }, pool);
  const left = new Set(remaining.map(({ kind }) => kind.form));
  for (const radio of form.querySelectorAll('[name="form"]')) {
    if (answers.side && answers.side !== "unknown") radio.required = false;
    if (!left.has(radio.value)) radio.closest("label").remove();
  }
}

function shown(answers, keeps, t, pool) {
  const found = look(answers, pool), { step, remaining, ruledOut } = found, given = Object.entries(answers);
  const to = (more) => address("/identify/look", { ...keeps, ...more });
  const button = (kind, href, ...children) => made("a", "", { class: kind, href }, ...children);
  const left = made("section", ""), right = made("section", "");
  if (step) {
    const options = found.choices.map((answer) => button("button second", to({ ...answers, [step]: answer }), picture(step, answer, answers.side), made("span", t(inWords(step, answer, pool)))));
    const unsure = button("button second", to({ ...answers, [step]: "unknown" }), made("span", t("identify-looking-unsure")));
    left.append(made("h2", t(`identify-step-${step}`), { id: "question" }), made("div", "", { class: "looks", role: "group", "aria-labelledby": "question" }, ...options, unsure));
    if (given.length) left.append(made("p", t("identify-looking-other"), { class: "hint" }));
  } else if (remaining.length) left.append(made("h2", t("identify-looking-measure")), made("p", t("identify-looking-done")));
  const measure = address("/identify", { ...keeps, ...measured(answers, found) });
  if (given.length && remaining.length) left.append(made("a", t("identify-looking-measure"), { class: "button", href: measure }));
  if (given.length) left.append(made("h2", t("identify-looking-answers")), made("ul", "", { class: "seen" }, ...given.map((one) => answered(one, answers, to, t, pool))), made("p", "", {}, made("a", t("identify-looking-again"), { href: to({}) })));
  right.append(made("h2", t("identify-looking-remaining"), { id: "remaining" }), made("ul", "", { class: "seen" }, ...remaining.map((one) => kindOf(one, t, pool))));
  if (ruledOut.length) {
    const lines = ruledOut.map(([kind, by]) => made("li", `${nameOf(kind, t)} `, {}, made("span", `(${t(told(by, [answers[by]], pool))})`, { class: "hint" })));
    right.append(made("details", "", { class: "more" }, made("summary", t("identify-looking-ruled_out")), made("p", t("identify-looking-if_wrong")), made("ul", "", {}, ...lines)));
  }
  right.append(made("p", t("identify-looking-care"), { class: "hint" }));
  const count = remaining.length ? t("identify-looking-count", { count: remaining.length }) : t("identify-looking-none");
  return [made("p", t("identify-looking-lead")), made("p", "", { role: "status" }, made("a", count, { href: "#remaining" })), made("div", "", { class: "looks looking" }, left, right)];
}

function answered([step, answer], answers, to, t, pool) {
  const words = t(told(step, [answer], pool)), gone = [step, ...(HANGS_ON[step] ?? [])];
  const href = to(Object.fromEntries(Object.entries(answers).filter(([name]) => !gone.includes(name))));
  return made("li", `${words} · `, {}, made("a", t("identify-looking-change"), { href, "aria-label": t("identify-looking-change_one", { answer: words }) }));
}

const nameOf = ({ family, form }, t) => t("identify-looking-kind", { connection: connection(family), form: formOf(form) });

function kindOf({ kind, facts, alike }, t, pool) {
  const lines = [sizes(kind, pool), ...facts.map(([step, words]) => told(step, words, pool))].flatMap((each) => [made("br"), t(each)]);
  return made("li", "", {}, made("p", "", {}, made("strong", nameOf(kind, t)), ...lines), ...alike.map((each) => made("p", t(each), { class: "hint" })));
}

// A picture of the kept page.
function picture(step, answer, side = "unknown") {
  const all = document.querySelector("template[data-pictures]").content;
  const found = all.querySelector(`[data-step="${step}"][data-answer="${CSS.escape(answer)}"][data-sides~="${CSS.escape(side)}"] > svg`);
  return found ? found.cloneNode(true) : "";
}

function address(page, names) {
  const asked = new URLSearchParams(Object.entries(names).filter(([, value]) => value));
  return `${asked}` ? `${page}?${asked}` : page;
}
