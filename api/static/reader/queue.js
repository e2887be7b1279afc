// Orders, and reports of fitting, kept on the phone until the shop has them. A plain script, so that
// the service worker can load it too; it defines globalThis.orderQueue. Each carries a key: the shop
// keeps it once however often it is sent. `to`: the address it goes to.

globalThis.orderQueue = (() => {
  const TABLE = "orders";
  const PATIENCE = 20000; // ms after which a line that stands still counts as no line
  const LATER = [408, 425, 429]; // answers that ask for patience; any other refusal would be the same again
  const WITH_PHOTOS = 90000; // the same where photos are sent too

  function database() {
    return new Promise((done, failed) => {
      const opening = indexedDB.open("tag-orders", 1);
      opening.onupgradeneeded = () => opening.result.createObjectStore(TABLE, { keyPath: "key" });
      opening.onsuccess = () => done(opening.result);
      opening.onerror = () => failed(opening.error);
    });
  }

  async function work(mode, act) {
    const db = await database();
    try {
      return await new Promise((done, failed) => {
        const transaction = db.transaction(TABLE, mode);
        const request = act(transaction.objectStore(TABLE));
        transaction.oncomplete = () => done(request.result);
        transaction.onerror = transaction.onabort = () => failed(transaction.error);
      });
    } finally {
      db.close();
    }
  }

  // Whether the phone could keep it: some browsers keep nothing in a private window.
  const keep = (to, order, outcome) => work("readwrite", (table) => table.put({ key: order.key, to, order, outcome })).then(() => true, () => false);
  const drop = (order) => work("readwrite", (table) => table.delete(order.key)).catch(() => {});
  const waiting = () => work("readonly", (table) => table.getAll()).catch(() => []);

  // Random; crypto.randomUUID is there on secure pages alone, this everywhere.
  const makeKey = () => Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, "0")).join("");

  // What a shop in a flood of orders asks of each: a number that makes the digest of "KEY:NUMBER" begin with so many zero
  // bits. Nothing over plain HTTP, where a browser has no digests.
  async function effort(key, bits) {
    if (!globalThis.crypto?.subtle || bits > 24) return null;
    const tried = async (one) => new DataView(await crypto.subtle.digest("SHA-256", new TextEncoder().encode(`${key}:${one}`))).getUint32(0) >>> (32 - bits) === 0;
    for (let from = 0; ; from += 256) {
      const found = await Promise.all(Array.from({ length: 256 }, (_, more) => tried(from + more)));
      if (found.includes(true)) return String(from + found.indexOf(true));
    }
  }

  // {reference, page, stop} when the shop has it (stop: words, where the hose must come off), {refused: words} when it will not take it, {} when it waits.
  async function send(to, order) {
    const photos = Object.values(order).some((value) => value instanceof Blob);
    const patience = new AbortController();
    const timer = setTimeout(() => patience.abort(), photos ? WITH_PHOTOS : PATIENCE);
    try {
      const headers = { Accept: "application/json" };
      const answer = await fetch(to, { method: "POST", headers, body: photos ? parts(order) : new URLSearchParams(order), signal: patience.signal });
      if (answer.ok) {
        const { reference, page, stop } = await answer.json();
        return { reference, page: page || `/order/${reference}`, stop };
      }
      const bits = order.work ? 0 : Number(answer.headers.get("Tag-Work"));
      const made = bits ? await effort(order.key, bits) : null;
      if (made) return await send(to, { ...order, work: made });
      if (answer.status >= 500 || LATER.includes(answer.status)) return {};
      const { problems = [{ text: String(answer.status) }] } = await answer.json().catch(() => ({}));
      return { refused: problems.map((problem) => problem.text).join(" ") };
    } catch {
      return {};
    } finally {
      clearTimeout(timer);
    }
  }

  function parts(order) {
    const body = new FormData();
    for (const [name, value] of Object.entries(order)) value instanceof Blob ? body.append(name, value, "photo.jpg") : body.append(name, value);
    return body;
  }

  // Sends all that wait and keeps what became of each, until somebody has been told (`drop`).
  async function sendAll() {
    const all = await waiting();
    for (const entry of all) {
      if (entry.outcome) continue;
      const outcome = await send(entry.to || "/order", entry.order);
      if (outcome.reference || outcome.refused) await keep(entry.to, entry.order, (entry.outcome = outcome));
    }
    return all;
  }

  return { keep, drop, waiting, makeKey, send, sendAll };
})();
