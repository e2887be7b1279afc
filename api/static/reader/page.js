// What the public pages can do beyond their plain HTML: remember the units, send an order once
// and without a signal too, copy, share, keep the pages for later.

import { guide } from "./guide.js";
import { note } from "./held.js";
import { ready as orders, watchOutbox } from "./order.js";
import { list, see } from "./seen.js";

const html = document.documentElement;

function units() {
  const kept = document.cookie.match(/(?:^|; )units=(metric|inch)/);
  if (kept) first(kept[1]);
  for (const link of document.querySelectorAll("[data-units]")) {
    link.addEventListener("click", (event) => {
      event.preventDefault();
      first(link.dataset.units);
      document.cookie = `units=${link.dataset.units}; path=/; max-age=31536000; samesite=lax`;
    });
  }
}

// Puts one system's figures first on this page.
function first(chosen) {
  html.classList.remove("units-metric", "units-inch");
  html.classList.add(`units-${chosen}`);
  for (const link of document.querySelectorAll("[data-units]")) {
    if (link.dataset.units === chosen) link.setAttribute("aria-current", "true");
    else link.removeAttribute("aria-current");
  }
}

function copyAndShare() {
  for (const button of document.querySelectorAll("[data-copy]")) {
    button.hidden = false;
    button.addEventListener("click", () => copy(button, document.getElementById(button.dataset.copy).textContent));
  }
  for (const button of document.querySelectorAll("[data-share]")) {
    const place = document.getElementById(button.dataset.share);
    button.hidden = !place || !(navigator.share || "whole" in button.dataset);
    button.addEventListener("click", () => share(button, place.textContent));
  }
}

// By the phone's own sheet, which can also save; where there is none, the text is copied.
async function share(button, lines) {
  const text = "whole" in button.dataset ? lines.split("\n").slice(1).join("\n") : lines;
  if (navigator.share) await navigator.share({ title: document.title, text }).catch(() => {});
  else copy(button, text);
}

// The clipboard is there on secure pages alone; the old way is there on all.
async function copy(button, text) {
  try {
    await navigator.clipboard.writeText(text);
  } catch {
    const place = Object.assign(document.createElement("textarea"), { value: text, readOnly: true, className: "quiet" });
    document.body.append(place);
    place.select();
    document.execCommand("copy");
    place.remove();
    button.focus();
  }
  button.textContent = "✓ " + button.textContent.replace(/^✓ /, "");
}

// With a signal the server answers with the calendar file; without one the phone makes it.
function calendars() {
  for (const link of document.querySelectorAll("[data-calendar]")) {
    link.addEventListener("click", (event) => {
      if (navigator.onLine && !document.querySelector("[data-offline]")) return;
      event.preventDefault();
      import("./calendar.js").then(({ save }) => save(link.dataset));
    });
  }
}

async function keep() {
  if (!("serviceWorker" in navigator)) return;
  try {
    await (await caches.open("reader-choice")).put("/lang", new Response(html.lang));
    await navigator.serviceWorker.register("/scan-worker.js", { scope: "/" });
    const registration = await navigator.serviceWorker.ready;
    registration.active.postMessage({ keepLanguage: html.lang, keepLibrary: !(await knowsSignatures()) });
    const tag = document.querySelector("h1.number")?.dataset.number;
    if (tag && !document.querySelector("[data-offline]")) await note(tag, document);
  } catch { /* no signal, or storage is not allowed: the page works without */ }
}

// Whether this browser verifies Ed25519 by itself; where not, the worker of a shop that signs keeps a library for it.
const knowsSignatures = () => crypto.subtle.importKey("raw", new Uint8Array(32), { name: "Ed25519" }, false, ["verify"]).then(() => true, () => false);

// Paper shows every source.
function openForPaper() {
  addEventListener("beforeprint", () => {
    for (const more of document.querySelectorAll("details.more")) more.open = true;
  });
}

export function start() {
  units();
  openForPaper();
  copyAndShare();
  calendars();
  orders();
  watchOutbox();
  const tag = document.querySelector("h1.number")?.dataset.number;
  if (tag) { see(tag); guide(tag); }
  list();
  camera();
}

async function camera() {
  const section = document.querySelector("[data-camera]"), form = document.querySelector("form[data-photo]");
  if (!section) return;
  const { photo, ready } = await import("./camera.js");
  photo(form);
  if ("BarcodeDetector" in window) ready(section);
}

if (!document.querySelector("[data-offline]")) start();
if (document.readyState === "complete") keep();
else addEventListener("load", keep);
