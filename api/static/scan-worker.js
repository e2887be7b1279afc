// Service worker of the public pages: keeps what is needed to read any tag without a signal.
// A tag page comes from the network; when that fails or takes too long, the kept shell page
// opens instead and fills itself from the link's digits (reader/offline.js).

const VERSION = "{{version}}";
const KEPT = `reader-${VERSION}`;
const PAGE = "{{page}}".split(" "); // the scripts of the page itself: the browser has them already
const CHOICE = "reader-choice"; // the language last seen, withdrawals seen, and the shop's list of them
const LIBRARY = "{{signs}}" && "ed25519/index.js"; // for signed tags, where the browser does not know their signatures
const LIST = "/scan/held.json"; // which hoses must not be used
const STALE = 60000; // ms after which a signal is used to fetch the list again
const PATIENCE = 6000; // ms to wait for the network before the phone reads the tag itself
const TAG = /^\/t\/[^/]+(\/\d+)?\/?$|^(\/t\/\d+)?\/8004\/|^\/01\/\d+\/21\//i;
const PAGES = /^\/(find|glossary|identify|identify\/look|identify\/layers|identify\/hose)$/; // the shell says what is left of these without a signal

importScripts("{{queue}}"); // the server puts reader/queue.js itself here

self.addEventListener("sync", (event) => {
  if (event.tag === "orders") event.waitUntil(sendOrders());
});
self.addEventListener("install", (event) => event.waitUntil(install()));
self.addEventListener("activate", (event) => event.waitUntil(activate()));
self.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || url.origin !== location.origin) return;
  if (event.request.mode === "navigate" && (TAG.test(url.pathname) || PAGES.test(url.pathname))) {
    event.respondWith(tagPage(event.request));
    event.waitUntil(keepList().catch(() => {}));
  } else if (url.pathname.startsWith("/scan/")) {
    event.respondWith(keptFirst(event.request));
  }
});

// Throws while an order still waits, so that the browser tries again later.
async function sendOrders() {
  const entries = await self.orderQueue.sendAll();
  if (entries.some((entry) => !entry.outcome)) throw new Error("an order still waits");
}

async function install() {
  await Promise.all([keep("kit.json"), ...PAGE.map(keepOwn)]);
  await keepLanguage((await chosenLanguage()) || "en");
  await keepList().catch(() => {});
  await self.skipWaiting();
}

// The shop's list of withdrawn numbers, as new as the signal allows.
async function keepList() {
  const cache = await caches.open(CHOICE);
  const kept = await cache.match(LIST);
  const age = kept ? Date.now() - Date.parse((await kept.json()).as_of) : STALE;
  if (age >= 0 && age < STALE) return; // below 0: this phone's clock is wrong, and tells no age
  const answer = await fetch(LIST, { cache: "no-store" });
  if (answer.ok) await cache.put(LIST, answer);
}

async function keepOwn(name) {
  const address = `/scan/${VERSION}/${name}`, answer = await fetch(address);
  if (!answer.ok) throw new Error(`${name}: ${answer.status}`);
  // Without the answer's "Vary": a cookie set since must not hide what is kept.
  const headers = { "Content-Type": answer.headers.get("Content-Type") };
  await (await caches.open(KEPT)).put(address, new Response(await answer.text(), { headers }));
}

// Puts every file of a kit into the cache under its own address.
async function keep(kit) {
  const answer = await fetch(`/scan/${VERSION}/${kit}`);
  if (!answer.ok) throw new Error(`${kit}: ${answer.status}`);
  const cache = await caches.open(KEPT);
  for (const [address, { type, text, policy }] of Object.entries(await answer.json())) {
    const headers = { "Content-Type": type, ...(policy && { "Content-Security-Policy": policy }) };
    await cache.put(address, new Response(typeof text === "string" ? text : JSON.stringify(text), { headers }));
  }
}

async function activate() {
  for (const name of await caches.keys()) {
    if (name.startsWith("reader-") && name !== KEPT && name !== CHOICE) await caches.delete(name);
  }
  // A page may have asked the worker before this one for its language while this one was installing.
  await keepLanguage((await chosenLanguage()) || "en").catch(() => {});
  if (await (await caches.open(CHOICE)).match("/library")) await keepLibrary().catch(() => {});
  await self.clients.claim();
}

// One language: its words and its shell page.
async function keepLanguage(lang) {
  const cache = await caches.open(KEPT);
  if (!(await cache.match(`/scan/shell?lang=${lang}`))) await keep(`kit-${lang}.json`);
}

// What a page has said it needs is kept anew with each version.
async function keepLibrary() {
  if (!LIBRARY) return;
  await (await caches.open(CHOICE)).put("/library", new Response(""));
  if (!(await (await caches.open(KEPT)).match(`/scan/${VERSION}/${LIBRARY}`))) await keepOwn(LIBRARY);
}

// What identifies an end, and the trade's words, after all that reads a tag: the larger part is the same in every language.
async function keepIdentify(lang) {
  const cache = await caches.open(KEPT);
  if (!(await cache.match(`/scan/${VERSION}/candidates.json`))) await keep("identify.json");
  if (!(await cache.match(`/scan/identify?lang=${lang}`))) await keep(`identify-${lang}.json`);
  if (!(await cache.match(`/scan/glossary?lang=${lang}`))) await keep(`glossary-${lang}.json`);
}

self.addEventListener("message", (event) => {
  if (event.data?.keepLibrary) event.waitUntil(keepLibrary().catch(() => {}));
  const lang = event.data?.keepLanguage;
  if (lang) event.waitUntil(keepLanguage(lang).then(() => keepIdentify(lang)).catch(() => {}));
});

// Always asked anew: a copy that the browser keeps for a minute could be older than a withdrawal.
async function tagPage(request) {
  try {
    const answer = await Promise.race([fetch(request, { cache: "no-cache" }), late()]);
    if (answer.status < 500 && answer.status !== 429) return answer;
  } catch { /* no network, or too slow: the shell reads the tag */ }
  return shell(request);
}

function late() {
  return new Promise((_, refuse) => setTimeout(() => refuse(new Error("slow")), PATIENCE));
}

// The kept shell in the language asked for, else in any; where what identifies an end or the words are kept, their page.
async function shell(request) {
  const cache = await caches.open(KEPT);
  const asked = new URL(request.url).searchParams.get("lang");
  const chosen = asked || (await chosenLanguage());
  const keptOf = async (page) => (chosen && (await cache.match(`${page}?lang=${chosen}`))) || cache.match(page, { ignoreSearch: true });
  const [, own] = /^\/(identify|glossary)(?:\/look)?$/.exec(new URL(request.url).pathname) || [];
  return (own && (await keptOf(`/scan/${own}`))) || (await keptOf("/scan/shell")) || Response.error();
}

async function chosenLanguage() {
  const cache = await caches.open(CHOICE);
  const found = await cache.match("/lang");
  return found ? found.text() : null;
}

async function keptFirst(request) {
  const cache = await caches.open(KEPT);
  return (await cache.match(request)) || fetch(request);
}
