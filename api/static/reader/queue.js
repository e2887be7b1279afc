// Orders kept on the phone until the shop has them. A plain script, so that the service worker
// can load it too; it defines globalThis.orderQueue. Each order carries a key: the shop keeps an
// order once however often it is sent.

globalThis.orderQueue = (() => {
  const TABLE = "orders";
  const PATIENCE = 20000; // ms after which a line that stands still counts as no line

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
  const keep = (order, outcome) => work("readwrite", (table) => table.put({ key: order.key, order, outcome })).then(() => true, () => false);
  const drop = (order) => work("readwrite", (table) => table.delete(order.key)).catch(() => {});
  const waiting = () => work("readonly", (table) => table.getAll()).catch(() => []);

  // Random; crypto.randomUUID is there on secure pages alone, this everywhere.
  const makeKey = () => Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, "0")).join("");

  // {reference} when the shop has it, {refused: words} when it will not take it, {} when it waits.
  async function send(order) {
    const patience = new AbortController();
    const timer = setTimeout(() => patience.abort(), PATIENCE);
    try {
      const headers = { Accept: "application/json" };
      const answer = await fetch("/order", { method: "POST", headers, body: new URLSearchParams(order), signal: patience.signal });
      if (answer.ok) return { reference: (await answer.json()).reference };
      if (answer.status !== 422 && answer.status !== 404) return {};
      const { problems } = await answer.json();
      return { refused: problems.map((problem) => problem.text).join(" ") };
    } catch {
      return {};
    } finally {
      clearTimeout(timer);
    }
  }

  // Sends all that wait and keeps what became of each, until somebody has been told (`drop`).
  async function sendAll() {
    const all = await waiting();
    for (const entry of all) {
      if (entry.outcome) continue;
      const outcome = await send(entry.order);
      if (outcome.reference || outcome.refused) await keep(entry.order, (entry.outcome = outcome));
    }
    return all;
  }

  return { keep, drop, waiting, makeKey, send, sendAll };
})();
