// The shell page: reads the tag in this page's own address, without a signal, and shows it as
// the server would. Of what the record knows beyond the tag it has only the shop's list of
// withdrawn numbers, and says how old that is.

import { held } from "./ceiling.js";
import { pressure } from "./figures.js";
import { fill } from "./fill.js";
import { known } from "./held.js";
import { load } from "./kit.js";
import { parse } from "./link.js";
import { compact, format, isValid } from "./number.js";
import { start } from "./page.js";
import { seenPath } from "./seen.js";
import { Damaged, decode } from "./payload.js";
import { stateOf } from "./seal.js";
import { view } from "./view.js";

// The page's content for an address, or a refusal in words. `knownOf` tells what is known of a number.
export async function read(path, kit, today, shop, knownOf = known) {
  const { t } = kit;
  const found = parse(decodeURIComponent(path));
  if (/^\/T\/R-[0-9A-Z]{7}$/i.test(path)) return refusal("", { id: "offline-order" }, kit, "", t("offline-no-signal"));
  if (path.startsWith("/identify/hose")) return refusal("", { id: "offline-identified" }, kit, "", t("offline-no-signal"));
  if (path.startsWith("/identify")) return refusal("", { id: "offline-identify" }, kit, "", t("offline-no-signal"));
  if (!found) return refusal("", { id: "offline-scan-a-tag" }, kit, "", t("offline-no-signal"));
  if (!isValid(found.number)) return refusal(t("scan-field-number"), { id: "code-number-check" }, kit, found.number);
  const number = compact(found.number);
  const state = await knownOf(number);
  if (!found.digits) return refusal(format(number), { id: alone(state) }, kit);
  try {
    const told = decode(found.digits, kit.tables), { content, claimed } = held(told, kit.tables);
    const signed = await stateOf(number, found.digits, content.built_on, kit.tables);
    const notices = [...forged(signed, t), ...tooMuch(claimed, told, content, t), { severity: "care", heading: t("offline-tag-only"), words: t(howSure(state)) }];
    const tag = { number, digits: found.digits, content, claimed, signed, notices, withdrawn: withdrawal(state, t), isVoid: Boolean(state.isVoid), isHeld: Boolean(state.isHeld), ...shop };
    return { number: format(number), html: fill(kit.templates.tag, view(tag, kit, today)) };
  } catch (error) {
    if (!(error instanceof Damaged)) throw error;
    return refusal(t("scan-field-digits"), error.problem, kit);
  }
}

// What is said of a number without digits: its spec is not known here, but whether it may be fitted may be.
function alone({ withdrawn, isVoid, isHeld }) {
  if (withdrawn) return "offline-number-withdrawn";
  if (isVoid) return "offline-number-void";
  return isHeld ? "offline-number-held" : "offline-number-alone";
}

// Digits that the shop did not sign, or not for this number.
function forged(signed, t) {
  if (signed?.state !== "broken") return [];
  return [{ severity: "danger", heading: t("words-sealed-broken"), words: t("scan-sealed-act"), more: t(`words-sealed-why-${signed.why}`) }];
}

// Digits that claim more than the tables allow: the lower pressure is shown, and this above it.
// What the known parts allow at most is no pressure to put in the place of a claimed one.
function tooMuch(claimed, told, content, t) {
  if (claimed === null) return [];
  const was = pressure(claimed), now = told.working_pressure_bar === null ? content.at_most_bar : content.working_pressure_bar;
  const words = now === null ? { id: "scan-claims-none", values: { was } } : { id: "scan-claims-more", values: { was, now: pressure(now) } };
  return [{ severity: "danger", heading: t("scan-claims-title"), words: t(words) }];
}

const time = (asOf) => ({ day: { date: asOf.slice(0, 10) }, time: `${asOf.slice(11, 16)} UTC` });

// That the list knows nothing of a hose is told with the list's age: no signal never looks like "all well".
// Of a hose that must not be installed it is not said that the list does not name it.
function howSure({ asOf, withdrawn, isVoid, isHeld }) {
  if (withdrawn || isVoid || isHeld) return { id: "offline-barred" };
  return asOf ? { id: "offline-withdrawn-as-of", values: time(asOf) } : { id: "offline-withdrawn-unknown" };
}

function withdrawal({ withdrawn, asOf }, t) {
  if (!withdrawn) return null;
  const { reason, since } = withdrawn;
  return { reason: reason || t("offline-withdrawn-reason"), since: since || t({ id: "offline-withdrawn-listed", values: time(asOf) }) };
}

// `heading` and `value`: what the refused text is, and itself. `problem`: a message with its mend.
function refusal(heading, problem, kit, value = "", title = kit.t("scan-refused-title")) {
  const values = { title, heading, value, why: kit.t(problem), mend: kit.t.mend(problem) };
  return { number: null, html: fill(kit.templates.refused, values) };
}

// What was looked for: a tag seen on this phone opens by its digits, any other text as a link does.
function wanted() {
  const typed = (location.pathname === "/find" && new URLSearchParams(location.search).get("q")?.trim()) || "";
  if (!typed) return location.pathname;
  if (seenPath(typed)) return void location.replace(seenPath(typed));
  try { return new URL(typed).pathname; } catch { return `/T/${typed.replace(/[\s/]/g, "")}`; }
}

async function show() {
  const place = document.querySelector("[data-offline]"), path = wanted();
  if (!place || !path) return;
  const kit = await load(place);
  const shop = { base: location.origin, email: place.dataset.email, name: place.dataset.name, phone: place.dataset.phone, clockwise: "clockwise" in place.dataset, reports: true };
  const found = await read(path, kit, new Date().toISOString().slice(0, 10), shop);
  place.innerHTML = found.html;
  if (found.number) entitle(kit.t, found.number);
  document.querySelector("[data-find]").hidden = location.pathname !== "/find";
  start();
  if (location.hash) location.replace(location.hash);
}

// The tag's number in the title and at the top, as the server's page has it.
function entitle(t, number) {
  document.title = t("scan-tag-title", { number });
  const heading = document.createElement("h1");
  const label = document.createElement("span");
  heading.className = "number";
  heading.dataset.number = compact(number);
  label.className = "muted";
  label.textContent = t("scan-tag");
  heading.append(label, ` ${number}`);
  document.querySelector("header").prepend(heading);
}

await show();
