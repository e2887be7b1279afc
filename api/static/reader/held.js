// Hoses that must not be used, as far as this phone knows: withdrawals its owner has seen, and the
// shop's list, which the worker fetches whenever there is a signal (api/scan/held.py).

const KEPT = "reader-choice", LIST = "/scan/held.json";
const seenAt = (number) => `/seen-withdrawn/${number}`;

// Remembers what the shop's own page said of a tag: withdrawn, void or held, or none of them any longer.
// The list is fetched anew with it, and the moment is the server's, as the list's is: a phone's clock may
// be wrong by a day.
export async function note(number, page) {
  const kept = await caches.open(KEPT);
  const section = page.querySelector("section.withdrawn");
  const isVoid = Boolean(page.querySelector("section.void")), isHeld = Boolean(page.querySelector("section.held"));
  if (!section && !isVoid && !isHeld) return kept.delete(seenAt(number));
  const { reason, since } = section ? section.dataset : {};
  const list = await fetch(LIST, { cache: "no-store" }).catch(() => null);
  const asOf = list?.ok ? (await list.clone().json()).as_of : "";
  // A server writes its date once a second: a list can be younger than the date it came with.
  const moments = [list?.headers.get("date") ?? "", asOf].map((one) => Date.parse(one) || 0);
  const at = new Date(Math.max(...moments) || Date.now()).toISOString();
  if (list?.ok) await kept.put(LIST, list);
  return kept.put(seenAt(number), new Response(JSON.stringify({ at, reason, since, isVoid, isHeld })));
}

// What is known of a tag without a signal: { withdrawn: null or { reason, since }, isVoid, isHeld,
// asOf: null or a time }.
export async function known(number) {
  const kept = await caches.open(KEPT);
  const [list, seen] = await Promise.all([LIST, seenAt(number)].map(async (at) => (await kept.match(at))?.json()));
  const asOf = list ? list.as_of : null;
  const mark = list && await digest(number);
  const listed = (name) => Boolean(list && list[name] && list[name].includes(mark));
  const lifted = list && seen && Date.parse(list.as_of) > Date.parse(seen.at);
  const holds = seen && !lifted ? seen : {};
  const isVoid = listed("void") || Boolean(seen && seen.isVoid); // what is void stays void
  const isHeld = listed("held") || Boolean(holds.isHeld);
  if (listed("withdrawn")) return { withdrawn: seen || {}, isVoid, isHeld, asOf };
  return { withdrawn: holds.reason === undefined ? null : holds, isVoid, isHeld, asOf };
}

async function digest(number) {
  const bytes = new Uint8Array(await crypto.subtle.digest("SHA-256", new TextEncoder().encode(number)));
  return [...bytes.slice(0, 8)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
