// The shell page: reads the tag in this page's own address, without a signal, and shows it as
// the server would. What the record knows beyond the tag (withdrawn or not) it cannot know,
// and says so.

import { fill } from "./fill.js";
import { parse } from "./link.js";
import { compact, format, isValid } from "./number.js";
import { start } from "./page.js";
import { Damaged, decode } from "./payload.js";
import { view } from "./view.js";
import { Words } from "./words.js";

export async function load(place) {
  const [tables, language] = await Promise.all([place.dataset.tables, place.dataset.words].map(async (url) => (await fetch(url)).json()));
  return new Words(language, tables);
}

// The page's content for an address, or a refusal in words.
export function read(path, words, today, shop) {
  const t = words.t.bind(words);
  const found = parse(decodeURIComponent(path));
  if (!found) return refusal("", t("Scan the QR code on a tag: this phone reads it without a signal."), "", words, "", t("There is no signal"));
  if (!isValid(found.number)) {
    return refusal(t("Tag number"), t("its check character does not fit, so something in it is wrong"), t("Compare it with the tag, character by character."), words, found.number);
  }
  const number = compact(found.number);
  if (!found.digits) {
    return refusal(format(number), t("There is no signal, and a number alone does not hold the spec."), t("Scan the QR code on the tag: it does, and this phone reads it without a signal."), words);
  }
  try {
    const content = decode(found.digits, words.tables);
    const notices = [{
      severity: "care", heading: t("No signal: read from the tag itself"),
      words: t("You see what the tag says. Whether the hose has been withdrawn since it was built is not known here: look again when there is a signal, or ask the shop."),
    }];
    const tag = { number, digits: found.digits, content, notices, ...shop };
    return { number: format(number), html: fill(words.language.templates.tag, view(tag, words, today)) };
  } catch (error) {
    if (!(error instanceof Damaged)) throw error;
    return refusal(t("The digits in the link"), t(error.message), t(error.mend), words);
  }
}

function refusal(heading, why, mend, words, value = "", title = words.t("This tag cannot be read")) {
  return { number: null, html: fill(words.language.templates.refused, { title, heading, value, why, mend }) };
}

async function show() {
  const place = document.querySelector("[data-offline]");
  if (!place) return;
  const words = await load(place);
  const shop = { base: location.origin, email: place.dataset.email, name: place.dataset.name, phone: place.dataset.phone };
  const found = read(location.pathname, words, new Date().toISOString().slice(0, 10), shop);
  place.innerHTML = found.html;
  if (found.number) entitle(words.t("Tag"), found.number);
  start();
  if (location.hash) location.replace(location.hash);
}

// The tag's number in the title and at the top, as the server's page has it.
function entitle(tag, number) {
  document.title = `${tag} ${number}`;
  const heading = document.createElement("h1");
  const label = document.createElement("span");
  heading.className = "number";
  label.className = "muted";
  label.textContent = tag;
  heading.append(label, ` ${number}`);
  document.querySelector("header").prepend(heading);
}

await show();
