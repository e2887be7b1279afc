// What the public pages can do beyond their plain HTML: remember the units, send an order once
// and without a signal too, copy, share, keep the pages for later.

import { note } from "./held.js";
import { ready as orders, watchOutbox } from "./order.js";

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
    button.hidden = !navigator.clipboard;
    button.addEventListener("click", async () => {
      await navigator.clipboard.writeText(document.getElementById(button.dataset.copy).textContent);
      button.textContent = "✓ " + button.textContent.replace(/^✓ /, "");
    });
  }
  for (const button of document.querySelectorAll("[data-share]")) {
    button.hidden = !navigator.share;
    button.addEventListener("click", () => {
      const text = document.getElementById(button.dataset.share).textContent;
      navigator.share({ title: document.title, text }).catch(() => {});
    });
  }
}

async function keep() {
  if (!("serviceWorker" in navigator)) return;
  try {
    await (await caches.open("reader-choice")).put("/lang", new Response(html.lang));
    await navigator.serviceWorker.register("/scan-worker.js", { scope: "/" });
    const registration = await navigator.serviceWorker.ready;
    registration.active.postMessage({ keepLanguage: html.lang });
    const tag = document.querySelector("h1.number")?.dataset.number;
    if (tag && !document.querySelector("[data-offline]")) await note(tag, document.querySelector("section.withdrawn"));
  } catch { /* no signal, or storage is not allowed: the page works without */ }
}

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
  orders();
  watchOutbox();
  camera();
}

async function camera() {
  const section = document.querySelector("[data-camera]");
  if (section && "BarcodeDetector" in window) (await import("./camera.js")).ready(section);
}

if (!document.querySelector("[data-offline]")) start();
if (document.readyState === "complete") keep();
else addEventListener("load", keep);
