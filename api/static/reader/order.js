// The order form: sent once however often the button is tapped, kept on the phone when there
// is no signal, and sent when there is one again. Its words stand in the page, translated.

import "./queue.js";

const queue = globalThis.orderQueue;
const SEEN = 5000; // ms after which somebody has seen what became of an order

export function ready() {
  for (const form of document.querySelectorAll("form[data-order]")) enhance(form);
}

export function watchOutbox() {
  const place = document.querySelector("[data-outbox]");
  if (!place) return;
  let looking = Promise.resolve();
  const look = () => { looking = looking.then(() => { place.replaceChildren(); return outbox(place); }); };
  addEventListener("online", look);
  look();
}

function enhance(form) {
  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    if (form.dataset.busy) return;
    form.dataset.busy = "yes";
    say(form, "");
    form.elements.key.value ||= crypto.randomUUID();
    const order = { ...Object.fromEntries(new FormData(form)), asked_on: new Date().toISOString().slice(0, 10) };
    try {
      await queue.keep(order);
      const outcome = await queue.send(order);
      if (outcome.reference || outcome.refused) await queue.drop(order);
      show(form, outcome, order);
    } finally {
      delete form.dataset.busy;
    }
  });
}

function show(form, outcome, order) {
  if (outcome.refused) {
    form.elements.key.value = "";
    say(form, outcome.refused);
  } else if (outcome.reference) {
    location.assign(`/order/${outcome.reference}`);
  } else {
    const place = form.parentElement.querySelector("[data-done]");
    place.replaceChildren(notice(place.dataset.waiting, order));
    place.hidden = false;
    form.hidden = true;
    place.focus();
    laterEvenIfClosed();
  }
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

// Says what became of the orders that waited, once; those still waiting are named each time.
async function outbox(place) {
  const entries = await queue.sendAll();
  for (const { order, outcome } of entries) {
    const text = outcome?.reference ? `${place.dataset.sent} ${outcome.reference}` : outcome?.refused || place.dataset.waiting;
    place.append(notice(text, order));
    if (outcome) setTimeout(() => queue.drop(order), SEEN);
  }
  place.hidden = !place.childElementCount;
}

function notice(text, order) {
  const box = document.createElement("div");
  box.className = "notice care";
  for (const line of [text, `${order.quantity} × ${order.number.replace(/^.{5}/, "$&-") || order.reference}`]) {
    const p = document.createElement("p");
    p.textContent = line;
    box.append(p);
  }
  return box;
}
