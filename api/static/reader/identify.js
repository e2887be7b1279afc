// The page that identifies an end without a signal: what was measured stands in its address, as on the
// server's page, and the answer is worked out here.

import { load } from "./kit.js";
import { looking, made, notice, refusal, seen } from "./looking.js";
import { withMarks } from "./marks.js";
import { lengthOf, read } from "./measures.js";
import { start } from "./page.js";
import { form as formOf, connection } from "./phrases.js";
import { identify, sizeText, unpacked } from "./ranker.js";
import { round } from "./units.js";

const FIELD = { thread: "diameter" }; // where the form's field has another name than the feature
const KEPT = ["a", "b"]; // the ends that were picked
const SEEN = ["side", "swivels", "shape", "seals"]; // what the eye said

const place = document.querySelector("[data-identify]");
const form = document.querySelector("main form");
const query = new URLSearchParams(location.search);

const linkTo = (more, drop = []) => {
  const all = new URLSearchParams(query);
  for (const name of drop) all.delete(name);
  for (const [name, value] of Object.entries(more)) all.set(name, value);
  return `/identify?${all}`;
};

// An end as the address has it, "family~size~form~series", or null where it is none of ours.
function picked(name, pool) {
  const [family, size, shape, series = ""] = (query.get(name) ?? "").split("~");
  const row = pool.rows.find((one) => one.family === family && one.size === size && one.form === shape);
  return row ? { row, series } : null;
}

function endWords(row, series, t, pool) {
  const size = sizeText(row, pool);
  return t({ id: "words-end-family", values: { size: series ? `${size} ${series}` : size, connection: connection(row.family), form: formOf(row.form) } });
}

function fillForm(asked) {
  for (const [name, value] of Object.entries(asked)) {
    for (const field of form.querySelectorAll(`[name="${CSS.escape(name)}"]`)) {
      if (field.type === "radio") field.checked = field.value === value;
      else field.value = value;
    }
    if (value && ["found", "scale"].includes(name)) form.querySelector("#found-on").open = true;
    if (value) form.querySelector(`[data-optional="${CSS.escape(name)}"]`)?.removeAttribute("hidden");
  }
  for (const name of [...KEPT, "cannot", ...SEEN]) if (query.get(name)) form.append(made("input", "", { type: "hidden", name, value: query.get(name) }));
}

// The question that separates best what remains, with the field to answer it in.
function question(next, asked, t) {
  const field = FIELD[next] ?? next;
  form.querySelector(`[data-optional="${field}"]`)?.removeAttribute("hidden");
  form.querySelector("details")?.toggleAttribute("open", Boolean(form.querySelector(`details [name="${field}"]`)));
  const cannot = [...(asked.cannot ? [asked.cannot] : []), next].join(",");
  return notice("",
    made("p", "", {}, made("strong", t("scan-identify-measure_next"))), made("p", t(`scan-ask-${next}`)),
    made("p", "", {}, made("a", t("scan-identify-enter_below"), { href: `#${field}` })),
    made("p", "", {}, made("a", t("scan-identify-cannot"), { href: linkTo({ cannot }) })));
}

function card({ row, likelihood, contradicts, series, lookAlikes }, which, first, t, pool) {
  const percent = likelihood >= 0.01 ? `${round(likelihood * 100)}\u00a0%` : "<\u00a01\u00a0%";
  const found = made("section", "", { class: "card" },
    made("h3", endWords(row, series, t, pool)), made("p", `${row.thread} · ${t("scan-identify-likelihood", { percent })}`));
  if (contradicts.length) {
    const features = contradicts.map((name) => ({ id: `scan-feature-${name}`, values: {} }));
    found.append(notice("danger", made("p", t("scan-identify-contradicts", { features }))));
  }
  for (const alike of lookAlikes) found.append(made("p", t(alike), { class: "hint" }));
  if (!contradicts.length) {
    const pick = [row.family, row.size, row.form, series].filter(Boolean).join("~");
    const others = KEPT.filter((name) => query.get(name)).map((name) => [name, query.get(name)]);
    const href = `/identify?${new URLSearchParams({ ...Object.fromEntries(others), [which]: pick })}`;
    found.append(made("a", which === "a" ? t("scan-identify-use_a") : t("scan-identify-use_b"), { class: first ? "button" : "button second", href }));
  }
  return found;
}

function answer(asked, which, t, pool) {
  const marked = withMarks(asked, pool, lengthOf);
  const { measured, problems } = marked.problems.length ? marked : read(marked.asked, place.dataset.unit, pool);
  if (problems.length) {
    return problems.map((problem) => refusal(problem, captionOf(problem.field), t));
  }
  const found = identify(measured, marked.paper ? { ...pool, errors: pool.paper } : pool);
  return [
    made("h2", which === "a" ? t("scan-identify-possible_a") : t("scan-identify-possible_b")),
    made("p", t(found.summary), { class: "lead" }),
    ...(found.tie ? [notice("care", made("p", t(found.tie)))] : []),
    ...(found.next ? [question(found.next, asked, t)] : []),
    ...(found.candidates.length ? [] : [made("p", t("scan-identify-no_match"))]),
    ...found.candidates.map((each, at) => card(each, which, at === 0, t, pool)),
    made("p", t(found.lacks), { class: "hint" }),
  ];
}

// What the form calls a field.
function captionOf(field) {
  const input = form.querySelector(`[name="${field}"]`);
  return (input?.closest("fieldset")?.querySelector("legend") ?? form.querySelector(`label[for="${field}"]`))?.textContent.trim() ?? field;
}

// The ends that were picked; of two, that the rest needs a signal.
function pickedEnds(ends, t, pool) {
  const { a, b } = ends, measuring = query.has("form");
  const found = Object.entries(ends).filter(([, end]) => end).map(([name, { row, series }]) =>
    made("p", "", {}, made("span", name.toUpperCase(), { class: "letter" }), endWords(row, series, t, pool)));
  const chosen = new URLSearchParams(KEPT.filter((name) => ends[name]).map((name) => [name, query.get(name)]));
  if (a && b) found.push(notice("care", made("p", t("offline-identified")), made("p", t.mend({ id: "offline-identified" }))), made("a", t("scan-identify-next_hose"), { class: "button", href: `/identify/hose?${chosen}` }));
  if (a && !b && !measuring) found.push(made("a", t("scan-identify-same"), { class: "button second", href: `/identify?${new URLSearchParams({ a: query.get("a"), b: query.get("a") })}` }));
  return found;
}

async function show() {
  const { t, pool } = await loaded();
  if (location.pathname.endsWith("/look")) return looking(place, query, t, pool);
  const ends = { a: picked("a", pool), b: picked("b", pool) }, which = ends.a && !ends.b ? "b" : "a";
  const asked = Object.fromEntries([...query].filter(([name]) => !KEPT.includes(name)).map(([name, value]) => [name, value.trim()]));
  fillForm(asked);
  seen(asked, form, t, pool);
  const both = Boolean(ends.a && ends.b), measuring = Object.entries(asked).some(([name, value]) => value && form.querySelector(`[name="${CSS.escape(name)}"]`));
  place.replaceChildren(...pickedEnds(ends, t, pool), ...(measuring ? answer(asked, which, t, pool) : []));
  const heading = document.querySelector("[data-measure]");
  heading.textContent = which === "a" ? t("scan-identify-measure_a") : t("scan-identify-measure_b");
  heading.hidden = form.hidden = both;
  start();
  if (location.hash) location.replace(location.hash);
}

async function loaded() {
  const [{ t }, answer] = await Promise.all([load(place), fetch(place.dataset.candidates)]);
  return { t, pool: unpacked(await answer.json()) };
}

await show();
