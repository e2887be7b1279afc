// The order form: sent once however often the button is tapped, kept on the phone when there
// is no signal, and sent when there is one again. Its words stand in the page, translated.

import "./queue.js";
import { before, remember } from "./sent.js";

const queue = globalThis.orderQueue;
const SEEN = 5000; // ms after which somebody has seen what became of an order
const AGAIN = [10, 20, 40, 80, 160, 300]; // seconds between tries while an order waits
const PHONE = /^[+(]*\d[\d\s()./-]*([,;]?\s*\p{L}{1,12}\.?\s*\d{1,6})?$/u; // as the shop's server takes it
const watching = new EventTarget();

export function ready() {
  for (const form of document.querySelectorAll("form[data-order]")) enhance(form);
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
  fillRefused(form);
  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    if (form.dataset.busy) return;
    if (!reachable(form)) return;
    if (asksFirst(form)) return;
    form.dataset.busy = "yes";
    button.setAttribute("aria-busy", "true");
    button.textContent = form.dataset.sending;
    say(form, "");
    form.elements.key.value ||= queue.makeKey();
    const order = { ...Object.fromEntries(new FormData(form)), asked_on: new Date().toISOString().slice(0, 10) };
    const kept = await queue.keep(order);
    const outcome = await queue.send(order);
    if (outcome.reference || outcome.refused) await queue.drop(order);
    if (outcome.reference) leave(form, order, outcome.reference);
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
  const entry = (await queue.waiting()).find((one) => one.outcome?.refused && mine(one));
  if (!entry) return;
  for (const field of form.elements) if (field.type !== "hidden" && entry.order[field.name]) field.value = entry.order[field.name];
  for (const more of form.querySelectorAll("details")) more.open = true;
  form.dataset.refused = entry.order.key;
}

// The same hose was ordered from this phone before: nothing is sent until somebody says "once more".
function asksFirst(form) {
  const box = form.querySelector("[data-again]"), sent = before(Object.fromEntries(new FormData(form)));
  if (!sent || form.dataset.again) return false;
  const link = box.querySelector("[data-again-reference]");
  link.href = `/order/${sent.reference}`;
  link.textContent = sent.reference;
  box.hidden = false;
  box.querySelector("[data-again-yes]").onclick = () => {
    form.dataset.again = "yes";
    form.elements.key.value = "";
    box.hidden = true;
    form.requestSubmit();
  };
  return true;
}

function leave(form, order, reference) {
  remember(order, reference);
  if (form.dataset.refused) queue.drop({ key: form.dataset.refused });
  form.elements.key.value = "";
  delete form.dataset.again;
  location.assign(`/order/${reference}`);
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
  for (const { order, outcome } of entries) {
    place.append(told(place, order, outcome));
    const done = document.querySelector(`[data-done][data-key="${order.key}"]`);
    if (done && outcome) done.hidden = true;
    if (!outcome?.reference) continue;
    remember(order, outcome.reference);
    setTimeout(() => queue.drop(order), SEEN);
  }
  place.hidden = !place.childElementCount;
  return entries.some((entry) => !entry.outcome);
}

function told(place, order, outcome) {
  if (!outcome) return notice(place.dataset.waiting, order);
  if (outcome.reference) return notice(`${place.dataset.sent} ${outcome.reference}`, order);
  const box = notice(place.dataset.refused, order, outcome.refused), row = element("p", { className: "row" });
  const remove = element("button", { type: "button", className: "button second", textContent: place.dataset.delete });
  remove.onclick = async () => { await queue.drop(order); box.remove(); place.hidden = !place.childElementCount; };
  if (order.number) row.append(element("a", { className: "button second", href: `${pathOf(order)}#order`, textContent: place.dataset.correct }));
  row.append(remove);
  box.append(row);
  return box;
}

const pathOf = (order) => ["/T", order.number, order.digits].filter(Boolean).join("/");
const element = (name, values) => Object.assign(document.createElement(name), values);

function notice(text, order, why) {
  const box = element("div", { className: "notice care" });
  const what = `${order.quantity} × ${order.number.replace(/^.{5}/, "$&-") || order.reference}`;
  for (const line of [text, why, what].filter(Boolean)) box.append(element("p", { textContent: line }));
  return box;
}
