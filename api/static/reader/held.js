// Hoses that must not be used, as far as this phone knows: withdrawals its owner has seen, and the
// shop's list, which the worker fetches whenever there is a signal (api/scan/held.py).

const KEPT = "reader-choice";
const seenAt = (number) => `/seen-withdrawn/${number}`;

// Remembers what the shop's own page said of a tag: withdrawn, or no longer.
export async function note(number, section) {
  const kept = await caches.open(KEPT);
  if (!section) return kept.delete(seenAt(number));
  const seen = { at: new Date().toISOString(), reason: section.dataset.reason, since: section.dataset.since };
  return kept.put(seenAt(number), new Response(JSON.stringify(seen)));
}

// What is known of a tag without a signal: { withdrawn: null or { reason, since }, isVoid, isHeld,
// asOf: null or a time }.
export async function known(number) {
  const kept = await caches.open(KEPT);
  const [list, seen] = await Promise.all(["/scan/held.json", seenAt(number)].map(async (at) => (await kept.match(at))?.json()));
  const asOf = list ? list.as_of : null;
  const mark = list && await digest(number);
  const isVoid = Boolean(list && list.void && list.void.includes(mark));
  const isHeld = Boolean(list && list.held && list.held.includes(mark));
  if (list && list.withdrawn.includes(mark)) return { withdrawn: seen || {}, isVoid, isHeld, asOf };
  const lifted = list && seen && Date.parse(list.as_of) > Date.parse(seen.at);
  return { withdrawn: seen && !lifted ? seen : null, isVoid, isHeld, asOf };
}

async function digest(number) {
  const bytes = new Uint8Array(await crypto.subtle.digest("SHA-256", new TextEncoder().encode(number)));
  return [...bytes.slice(0, 8)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
