// Orders kept on the phone until the shop has them. A plain script, so that the service worker
// can load it too; it defines globalThis.orderQueue. Each order carries a key: the shop keeps an
// order once however often it is sent.

globalThis.orderQueue = (() => {
  const TABLE = "orders";

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

  const keep = (order) => work("readwrite", (table) => table.put(order));
  const drop = (order) => work("readwrite", (table) => table.delete(order.key));
  const waiting = () => work("readonly", (table) => table.getAll());

  // {reference} when the shop has it, {refused: words} when it will not take it, {} when it waits.
  async function send(order) {
    let answer;
    try {
      const headers = { Accept: "application/json" };
      answer = await fetch("/order", { method: "POST", headers, body: new URLSearchParams(order) });
    } catch {
      return {};
    }
    if (answer.ok) {
      const { reference } = await answer.json();
      await drop(order);
      return { reference };
    }
    if (answer.status === 422 || answer.status === 404) {
      await drop(order);
      const { problems } = await answer.json();
      return { refused: problems.map((problem) => [problem.label || problem.field, problem.why, problem.mend].join(" ")).join("; ") };
    }
    return {};
  }

  // Sends all that wait; returns what happened to each.
  async function sendAll() {
    const outcomes = [];
    for (const order of await waiting()) outcomes.push({ order, ...(await send(order)) });
    return outcomes;
  }

  return { keep, waiting, send, sendAll };
})();
