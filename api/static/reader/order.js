// The order form and the report of fitting: sent once however often the button is tapped, kept on the
// phone when there is no signal, and sent when there is one again. Their words stand in the page, translated.

import { remember as keepContact, remembered } from "./contact.js";
import { valuesOf } from "./photos.js";
import "./queue.js";
import { before, remember } from "./sent.js";

const queue = globalThis.orderQueue;
const SEEN = 5000; // ms after which somebody has seen what became of an order
const AGAIN = [10, 20, 40, 80, 160, 300]; // seconds between tries while an order waits
const PHONE = /^[+(]*\d[\d\s()./-]*([,;]?\s*\p{L}{1,12}\.?\s*\d{1,6})?$/u; // as the shop's server takes it
const watching = new EventTarget();

export function ready() {
  for (const form of document.querySelectorAll("form[data-once]")) enhance(form);
}

// Sends what waits: now, when the signal comes back, when somebody looks at the page again, and by a timer.
export function watchOutbox() {
  const place = document.querySelector("[data-outbox]");
  if (!place) return;
  let looking = Promise.resolve(), tries = 0, timer;
  const look = () => { looking = looking.then(async () => {
    clearTimeout(timer);
    if (await outbox(place)) timer = setTimeout(look, AGAIN[Math.min(tries++, AGAIN.length - 1)] * 1000);
  }); };
  const again = () => { tries = 0; look(); };
  addEventListener("online", again);
  document.addEventListener("visibilitychange", () => document.hidden || again());
  watching.addEventListener("kept", () => { clearTimeout(timer); tries = 1; timer = setTimeout(look, AGAIN[0] * 1000); });
  look();
}

function enhance(form) {
  const button = form.querySelector("[data-send]");
  const words = button.textContent;
  const free = () => { delete form.dataset.busy; button.removeAttribute("aria-busy"); button.textContent = words; };
  addEventListener("pageshow", free);
  const today = form.querySelector("[data-today]");
  if (today) today.value ||= localDay();
  if ("order" in form.dataset) remembered(form);
  fillRefused(form);
  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    if (form.dataset.busy) return;
    if ("order" in form.dataset && (!reachable(form) || asksFirst(form))) return;
    form.dataset.busy = "yes";
    button.setAttribute("aria-busy", "true");
    button.textContent = form.dataset.sending;
    say(form, "");
    form.elements.key.value ||= queue.makeKey();
    keepContact(form);
    const to = form.getAttribute("action");
    const order = { ...(await valuesOf(form)), asked_on: new Date().toISOString().slice(0, 10) };
    const kept = await queue.keep(to, order);
    const outcome = await queue.send(to, order);
    if (outcome.reference || outcome.refused) await queue.drop(order);
    if (outcome.reference) leave(form, order, outcome);
    else { free(); stay(form, outcome, order, kept); }
  });
}

// An order without a way to answer it would be refused, perhaps hours later: it is not taken.
function reachable(form) {
  const { phone, email } = form.elements, typed = phone.value.trim();
  if (typed ? PHONE.test(typed) : email.value.trim()) return true;
  say(form, form.dataset.contact);
  phone.focus();
  return false;
}

// What was refused after it had waited stands in the form again.
async function fillRefused(form) {
  const own = new FormData(form), mine = ({ order }) => (order.number ? order.number === own.get("number") : order.spec === own.get("spec"));
  const to = form.getAttribute("action");
  const entry = (await queue.waiting()).find((one) => one.outcome?.refused && (one.to || "/order") === to && mine(one));
  if (!entry) return;
  for (const field of form.elements) if (field.type !== "hidden" && field.type !== "file" && field.type !== "checkbox" && entry.order[field.name]) field.value = entry.order[field.name];
  for (const more of form.querySelectorAll("details")) more.open = true;
  if (form.closest("details")) form.closest("details").open = true;
  form.dataset.refused = entry.order.key;
}

// The same hose was ordered from this phone before: nothing is sent until somebody says "once more".
function asksFirst(form) {
  const box = form.querySelector("[data-again]"), sent = before(Object.fromEntries(new FormData(form)));
  if (!sent || form.dataset.again) return false;
  box.querySelector("[data-again-reference]").replaceChildren(element("a", { href: `/order/${sent.reference}`, textContent: sent.reference }));
  box.hidden = false;
  box.querySelector("[data-again-yes]").onclick = () => {
    form.dataset.again = "yes";
    form.elements.key.value = "";
    box.hidden = true;
    form.requestSubmit();
  };
  return true;
}

function leave(form, order, { reference, page }) {
  if ("order" in form.dataset) remember(order, reference);
  if (form.dataset.refused) queue.drop({ key: form.dataset.refused });
  form.elements.key.value = "";
  delete form.dataset.again;
  location.assign(page);
}

function stay(form, outcome, order, kept) {
  if (outcome.refused) {
    form.elements.key.value = "";
    return say(form, outcome.refused);
  }
  if (!kept) return say(form, form.dataset.notKept);
  const place = form.parentElement.querySelector("[data-done]");
  const later = Boolean(navigator.serviceWorker?.controller && "SyncManager" in window);
  place.replaceChildren(notice(later ? place.dataset.waiting : place.dataset.waitingOpen, order));
  place.dataset.key = order.key;
  if (form.dataset.refused) queue.drop({ key: form.dataset.refused });
  place.hidden = false;
  form.hidden = true;
  place.focus();
  watching.dispatchEvent(new Event("kept"));
  laterEvenIfClosed();
}

function say(form, text) {
  const place = form.querySelector("[data-wrong]");
  place.textContent = text;
  place.hidden = !text;
}

// Where the browser can, the service worker sends it even with the page closed.
async function laterEvenIfClosed() {
  const registration = await navigator.serviceWorker?.ready;
  await registration?.sync?.register("orders").catch(() => {});
}

// Says what became of the orders that waited: one that arrived once, one that waits each time, one that was
// refused until it is corrected or deleted. Answers whether one still waits.
async function outbox(place) {
  const entries = await queue.sendAll();
  place.replaceChildren();
  for (const { order, outcome, to } of entries) {
    place.append(told(place, order, outcome, to === "/fitted"));
    const done = document.querySelector(`[data-done][data-key="${order.key}"]`);
    if (done && outcome) done.hidden = true;
    if (!outcome?.reference) continue;
    if (to !== "/fitted") remember(order, outcome.reference);
    if (!outcome.stop) setTimeout(() => queue.drop(order), SEEN);
  }
  place.hidden = !place.childElementCount;
  return entries.some((entry) => !entry.outcome);
}

function told(place, order, outcome, fitted) {
  const words = place.dataset;
  if (!outcome) return notice(fitted ? words.fittedWaiting : words.waiting, order);
  const arrived = outcome.reference && `${fitted ? words.fittedSent : words.sent} ${outcome.reference}`;
  if (arrived && !outcome.stop) return notice(arrived, order);
  const refused = fitted ? words.fittedRefused : words.refused;
  const box = notice(outcome.stop || refused, order, arrived || outcome.refused), row = element("p", { className: "row" });
  const remove = element("button", { type: "button", className: "button second", textContent: words.delete });
  remove.onclick = async () => { await queue.drop(order); box.remove(); place.hidden = !place.childElementCount; };
  if (arrived) box.className = "notice danger";
  else if (order.number) row.append(element("a", { className: "button second", href: `${pathOf(order)}#${fitted ? "fit" : "order"}`, textContent: words.correct }));
  row.append(remove);
  box.append(row);
  return box;
}

// The day as the phone's own clock and zone have it.
function localDay() {
  const now = new Date();
  return new Date(now - now.getTimezoneOffset() * 60000).toISOString().slice(0, 10);
}

const pathOf = (order) => ["/T", order.number, order.digits].filter(Boolean).join("/");
const element = (name, values) => Object.assign(document.createElement(name), values);

function notice(text, order, why) {
  const box = element("div", { className: "notice care" });
  const which = order.number.replace(/^.{5}/, "$&-") || order.reference;
  const what = order.quantity ? `${order.quantity} × ${which}` : which;
  for (const line of [text, why, what].filter(Boolean)) box.append(element("p", { textContent: line }));
  return box;
}
