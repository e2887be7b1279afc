// Tags that were opened on this phone, newest first: with their digits, so that they open without a signal.

import { compact, format, isValid } from "./number.js";
import { ordered } from "./sent.js";

const AT = "tags-seen";
const MOST = 20;

export function seen() {
  try {
    return JSON.parse(localStorage.getItem(AT)) || [];
  } catch {
    return [];
  }
}

// Remembers the tag of this page. Its link, digits and all, ends the order lines.
export function see(number) {
  const link = document.getElementById("order-lines")?.textContent.trim().split(/\s/).at(-1);
  const what = words(document.getElementById("line"));
  if (!link || !what) return;
  try {
    const one = { number, path: new URL(link).pathname, what, at: new Date().toISOString() };
    localStorage.setItem(AT, JSON.stringify([one, ...seen().filter((other) => other.number !== number)].slice(0, MOST)));
  } catch { /* nothing is kept here */ }
}

// The words of a line as they look: a style sheet writes the brackets round the second system's figure.
function words(line) {
  const plain = line?.cloneNode(true);
  for (const us of plain?.querySelectorAll(".both > .us") ?? []) us.textContent = `(${us.textContent})`;
  return plain?.textContent.trim();
}

// Where a typed text leads without a signal: to a tag seen here, with its digits. Else null.
export function seenPath(typed) {
  if (!isValid(typed)) return null;
  return seen().find((one) => one.number === compact(typed))?.path || null;
}

// Fills the lists of a page that has them.
export function list() {
  fill(document.querySelector("[data-seen]"), seen().map(({ number, path, what }) => [path, format(number), what]));
  fill(document.querySelector("[data-sent-orders]"), ordered().map(({ reference, at }) => [`/order/${reference}`, reference, at.slice(0, 10)]));
  const forget = document.querySelector("[data-forget]");
  if (!forget) return;
  forget.hidden = !seen().length && !ordered().length;
  forget.onclick = () => {
    for (const name of [AT, "tag-orders-sent", "tag-contact"]) localStorage.removeItem(name);
    list();
  };
}

function fill(section, rows) {
  if (!section) return;
  section.hidden = !rows.length;
  section.querySelector("ul").replaceChildren(...rows.map(([href, name, more]) => {
    const item = document.createElement("li"), link = Object.assign(document.createElement("a"), { href, textContent: name });
    const words = Object.assign(document.createElement("span"), { textContent: more });
    item.append(link, " ", words);
    return item;
  }));
}
