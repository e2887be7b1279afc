// The build page: live answers at every key, the clocking dial, and scans into any field.
import { goOn } from "./bench-next.js";

const form = document.getElementById("build");
const csrf = document.body.dataset.csrf;
const offered = JSON.parse(document.getElementById("choices").textContent);
const field = (name) => form.elements.namedItem(name);

// ---- which fields there are to fill ---------------------------------------------------------
function show() {
  for (const box of form.querySelectorAll("[data-show]")) {
    const [, name, not, wanted] = /^([\w.]+?)(!?)=(.*)$/.exec(box.dataset.show);
    const control = field(name);
    const value = control.type === "checkbox" ? (control.checked ? control.value : "") : control.value;
    box.hidden = (value === wanted) === Boolean(not);
  }
}

function offer(end) {
  const family = field(`${end}.connection`).value;
  const forms = field(`${end}.form`);
  const wanted = offered.forms[family] ?? Object.keys(offered.form_words);
  // Nothing is chosen for anybody: only the one form of a family that has no other.
  const kept = wanted.includes(forms.value) ? forms.value : wanted.length === 1 ? wanted[0] : "";
  const none = wanted.length === 1 ? [] : [new Option(offered.choose, "", false, !kept)];
  forms.replaceChildren(...none, ...wanted.map((value) => new Option(offered.form_words[value], value, false, value === kept)));
  document.getElementById(`sizes-${end}`).replaceChildren(
    ...(offered.sizes[family] ?? []).map((value) => Object.assign(document.createElement("option"), { value })));
}

// ---- live answers ---------------------------------------------------------------------------
// Sizes that followed from the hose follow it on until a hand changes them.
const followed = new Set(["end_a.size", "end_b.size"].filter((name) => !field(name).value));
const AGAIN = 3000; // ms until a question without an answer is asked once more
let asked = 0, shown = 0, timer = 0;
let lacking = new Set(); // the fields that the last answer called missing
const answer = document.getElementById("view");
const working = document.getElementById("working"), unanswered = document.getElementById("unanswered");

function data() {
  const sent = new FormData(form);
  for (const name of followed) sent.set(name, "");
  return sent;
}

// What stands beside the fields may belong to other fields: it says so from the first key on.
function outOfDate(yes, failed = false) {
  answer.setAttribute("aria-busy", String(yes));
  working.hidden = !yes || failed;
  if (unanswered.hidden === failed) unanswered.hidden = !failed;
}

async function ask() {
  clearTimeout(timer);
  const mine = ++asked;
  if (unanswered.hidden) outOfDate(true);
  let found;
  const sent = data();
  try {
    const got = await fetch("/bench/build/preview", { method: "POST", body: sent, headers: { "X-CSRF": csrf } });
    if (got.status === 401 || got.redirected) { location.reload(); return; }
    if (!got.ok) throw new Error(String(got.status));
    found = await got.json();
  } catch {
    if (mine === asked) { outOfDate(true, true); timer = setTimeout(ask, AGAIN); }
    return;
  }
  if (mine < shown) return; // an older answer that came late
  shown = mine;
  answer.innerHTML = found.html;
  settle(found, sent);
  if (mine === asked) outOfDate(false);
}

function settle(found, sent) {
  // What follows from the beginning of a lay line is not the hose: "-1" of "-12" came late, and dash 1 stayed.
  const anotherLine = field("hose.standard").value !== sent.get("hose.standard");
  for (const [name, value] of Object.entries(found.settled)) {
    const control = field(name);
    if (!control || control === document.activeElement || control.value === value) continue;
    if (name.startsWith("hose.") && (anotherLine || control.value !== (sent.get(name) ?? ""))) continue; // typed since it was asked
    // A lay line typed into the standard fills what is empty of the hose, once it is typed to its end.
    const ofLine = name.startsWith("hose.") && !control.value && field("hose.standard") !== document.activeElement;
    if (name === "hose.standard" || ofLine || followed.has(name) || (field("end_b.same").checked && name.startsWith("end_b.") && name !== "end_b.lot")) {
      if (name === "end_b.connection") { control.value = value; offer("end_b"); } else control.value = value;
    }
  }
  document.getElementById("clocking").hidden = !found.clocking;
  ask_for(found.asks);
  for (const said of form.querySelectorAll("[data-reading]")) said.textContent = found.readings[said.dataset.reading] ?? "";
  document.getElementById("lot-reason").hidden = !found.ask_lot_reason;
  for (const box of form.querySelectorAll("[data-needs]")) {
    const control = field(box.dataset.needs);
    box.hidden = !control.checked && !found.problems.some((problem) => problem.field === box.dataset.needs);
  }
  lacking = new Set(found.problems.filter((problem) => problem.id === "spec-missing").map((problem) => problem.field));
  const wrong = new Map(found.problems.map((problem) => [problem.field, problem]));
  for (const note of form.querySelectorAll("[data-wrong]")) {
    const control = field(note.dataset.wrong);
    const problem = wrong.get(note.dataset.wrong);
    // A field that is merely empty is listed as still needed; only what was typed is called wrong.
    const bad = Boolean(problem && control?.value && control !== document.activeElement);
    note.hidden = !bad;
    note.textContent = bad ? `${problem.why} ${problem.mend}` : "";
    if (bad) {
      note.id = `wrong-${note.dataset.wrong}`;
      control.setAttribute("aria-invalid", "true");
      control.setAttribute("aria-describedby", note.id);
    } else if (control?.removeAttribute) {
      control.removeAttribute("aria-invalid");
      control.removeAttribute("aria-describedby");
    }
  }
}

// What only a manufacturer knows is asked for; a group that holds something stays open.
function ask_for(asks) {
  let any = false;
  for (const box of form.querySelectorAll("[data-ask]")) {
    const held = [...box.querySelectorAll("input:not([type=checkbox])")].some((control) => control.value);
    const why = asks[box.dataset.ask] ?? "";
    box.querySelector("[data-why]").textContent = why;
    box.querySelector("[data-why]").hidden = !why;
    box.hidden = !why && !held;
    any ||= !box.hidden;
  }
  document.getElementById("asks").hidden = !any;
}

// A value that is offered for a field: the field is opened, filled in and focused.
document.addEventListener("click", (event) => {
  const offer = event.target.closest("[data-fill]");
  if (!offer) return;
  const control = field(offer.dataset.fill);
  for (let box = control.closest("details"); box; box = box.parentElement.closest("details")) box.open = true;
  control.value = offer.dataset.value;
  control.focus();
  soon();
});

function soon() {
  if (unanswered.hidden) outOfDate(true);
  clearTimeout(timer);
  timer = setTimeout(ask, 40);
}

form.addEventListener("input", (event) => {
  const name = event.target.name ?? "";
  if (name.endsWith(".size")) { if (event.target.value) followed.delete(name); else followed.add(name); }
  if (name.endsWith(".connection")) {
    const end = name.split(".")[0];
    offer(end);
    followed.add(`${end}.size`);
    field(`${end}.size`).value = "";
  }
  if (name === "end_b.same" && !event.target.checked) { copyEnd(); followed.delete("end_b.size"); }
  if (name.endsWith(".fitting")) offerFittings(event.target);
  if (name === "clocking_deg") turnTo(event.target.value);
  show();
  // At once: a focus that moves a moment later takes what is typed into another field by then.
  if (name === "end_b.same" && event.target.checked) goOn(form, event.target, lacking);
  soon();
});
form.addEventListener("focusout", soon);
form.addEventListener("change", (event) => { if (event.target.name === "hose.part") takeHose(event.target); });

function copyEnd() {
  for (const part of ["connection", "size", "series", "form", "shape", "angle", "drop_mm", "material", "hose_dash", "fitting"]) {
    field(`end_b.${part}`).value = field(`end_a.${part}`).value;
    if (part === "connection") offer("end_b");
  }
}

// ---- the dial: end B is turned, in the shop's own sense -------------------------------------
const dial = document.getElementById("dial");
let picture = 0;

function turnTo(value) {
  const degrees = /^\d{1,3}$/.test(value) && Number(value) < 360 ? Number(value) : null;
  dial.setAttribute("aria-valuenow", degrees ?? 0);
  dial.setAttribute("aria-valuetext", degrees === null ? dial.dataset.unset : `${degrees}°`);
  const mine = ++picture;
  fetch(`/bench/build/dial.svg?degrees=${degrees ?? 0}`).then((got) => got.ok && got.text()).then((svg) => {
    if (svg && mine === picture) dial.innerHTML = svg;
  }, () => {});
}

function turn(degrees) {
  const value = String(((Math.round(degrees) % 360) + 360) % 360);
  field("clocking_deg").value = value;
  turnTo(value);
  soon();
}

dial.addEventListener("keydown", (event) => {
  const now = Number(field("clocking_deg").value) || 0;
  const steps = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1, PageUp: 15, PageDown: -15 };
  if (event.key in steps) turn(now + steps[event.key]);
  else if (event.key === "Home") turn(0);
  else return;
  event.preventDefault();
});

function pointed(event) {
  const box = dial.getBoundingClientRect();
  const x = event.clientX - box.left - box.width / 2, y = event.clientY - box.top - box.height / 2;
  // From 6 o'clock, counter-clockwise as drawn (the screen's y runs down): 0 points down, 90 right.
  const standard = Math.atan2(x, y) * 180 / Math.PI;
  turn(Math.round((offered.clockwise ? -standard : standard) / 5) * 5);
}
dial.addEventListener("pointerdown", (event) => { dial.setPointerCapture(event.pointerId); pointed(event); });
dial.addEventListener("pointermove", (event) => { if (dial.hasPointerCapture(event.pointerId)) pointed(event); });

// ---- scans: a scanner types fast and ends with Enter ----------------------------------------
const told = document.getElementById("scanned");
let keys = [];

function say(text) { told.textContent = text; told.hidden = !text; }

// ---- the shop's fittings: a few letters offer them, a stock number fills in its end ------------
async function offerFittings(control) {
  const text = control.value.trim();
  const found = text ? await (await fetch(`/bench/stock/find?text=${encodeURIComponent(text)}`)).json() : [];
  if (control.value.trim() !== text) return []; // a later key asked as well
  document.getElementById(control.getAttribute("list")).replaceChildren(
    ...found.map((one) => new Option(one.said, one.stock_number)));
  const whole = found.find((one) => one.stock_number.toUpperCase() === text.toUpperCase());
  if (whole) takeFitting(control, whole);
  return found;
}

function takeFitting(control, one) {
  const end = control.name.split(".")[0];
  const named = Object.fromEntries(Object.entries(one.fields).map(([part, value]) => [`${end}.${part}`, value]));
  fill(end === "end_b" ? { "end_b.same": "", ...named } : named);
}

// A part number of one of the shop's hoses says its standard, dash and edition.
async function takeHose(control) {
  const text = control.value.trim();
  const found = text ? await (await fetch(`/bench/scan?text=${encodeURIComponent(text)}`)).json() : {};
  if (found.kind !== "hose" || control.value.trim() !== text) return;
  say(found.say);
  fill(found.fields);
}

function fill(fields) {
  for (const [name, value] of Object.entries(fields)) {
    if (name === "covers") { for (const box of form.querySelectorAll("[name=covers]")) box.checked = value.includes(box.value); continue; }
    const control = field(name);
    if (!control) continue;
    if (control.type === "checkbox") control.checked = Boolean(value); else control.value = value;
    if (name.endsWith(".connection")) offer(name.split(".")[0]);
    if (name.endsWith(".form")) control.value = value;
    if (name.endsWith(".size") && value) followed.delete(name);
  }
  show();
  ask();
}

// What a scanner has typed over is put back: a list chooses by the first letters, and a connection brings its forms.
function held(control) {
  const names = control.name.endsWith(".connection") ? ["connection", "form", "size"].map((part) => control.name.replace("connection", part)) : [control.name];
  return names.map((name) => [name, field(name).value]);
}

function putBack(values) {
  for (const [name, value] of values) {
    if (name.endsWith(".connection") && field(name).value !== value) { field(name).value = value; offer(name.split(".")[0]); }
    field(name).value = value;
  }
}

// Fields whose scan has no answer yet, with what stood there before it: the next scan types behind its text.
const under = new Map();
const stood = (control) => under.get(control)?.before ?? control.value;
let earlier = Promise.resolve(); // the scan before: a late answer to it must not undo this one

async function scanned(text, control, before) {
  const mine = { before }, answer = fetch(`/bench/scan?text=${encodeURIComponent(text)}`).then((got) => got.json());
  under.set(control, mine);
  const taken = earlier.then(() => answer).then((found) => take(found, text, control, before));
  earlier = taken.catch(() => {}).then(() => { if (under.get(control) === mine) under.delete(control); });
  await taken;
}

function take(found, text, control, before) {
  // A stock number typed into a lot field is no lot: it leaves the field.
  if (control && found.kind !== "unknown") control.value = found.kind === "fitting" && before === text ? "" : before;
  // A lot is what was scanned, and nothing that was scanned before it; one that was typed stays as it is by now.
  const takes = "lot" in (control?.dataset ?? {}) || (control?.name === "hose.standard" && !control.value.endsWith(text));
  if (found.kind === "unknown" && before !== text && takes) { control.value = text; soon(); }
  say(found.say);
  // A hose that stands in the page already is not changed by a reel: the answer says whether it is that reel.
  const standing = found.kind === "hose_lot" && field("hose.standard").value && field("hose.dash").value;
  if (standing) fill({ "hose.lot": found.fields["hose.lot"] });
  else if (["tag", "hose_lot", "hose"].includes(found.kind)) fill(found.fields);
  else if (found.kind === "fitting_lot" || found.kind === "fitting") {
    const focused = /^end_[ab]/.exec(control?.name ?? "")?.[0];
    const end = focused ?? (field(found.kind === "fitting" ? "end_a.fitting" : "end_a.lot").value ? "end_b" : "end_a");
    const named = Object.fromEntries(Object.entries(found.fields).map(([part, value]) => [`${end}.${part}`, value]));
    fill(end === "end_b" ? { "end_b.same": "", ...named } : named);
  } else if (control && control.name !== "hose.standard" && !("lot" in control.dataset)) {
    control.value = before; // an unknown lot belongs into a lot field, not over a figure
    field("hose.lot").value ||= text;
    soon();
  }
}

// A slow scanner, a loaded machine or a hand wrote a whole tag number: what it names is asked, and nothing is lost if nobody knows it.
const NUMBER = /^\s*[0-9a-z]{5}-?[0-9a-z]{6}\s*$/i;

async function numbered(control) {
  const text = control.value;
  const found = await (await fetch(`/bench/scan?text=${encodeURIComponent(text)}`)).json();
  if (found.kind !== "tag" || control.value !== text) return goOn(form, control, lacking);
  control.value = "";
  say(found.say);
  fill(found.fields);
}

document.addEventListener("keydown", (event) => {
  if (event.key !== "Enter" || !(event.ctrlKey || event.metaKey)) return;
  event.preventDefault();
  form.requestSubmit(document.getElementById("register"));
});

form.addEventListener("keydown", (event) => {
  if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) return;
  const control = event.target;
  if (event.key === "Enter" && (control.tagName === "INPUT" || control.tagName === "SELECT")) {
    event.preventDefault(); // Enter never registers by accident
    const text = keys.map((k) => k.key).join("");
    const quick = keys.length >= 6 && keys.at(-1).at - keys[1].at < 50 * keys.length;
    const whole = NUMBER.test(control.value) ? control.value.trim() : ""; // whatever its keys' times say
    const link = /https?:\/\/\S+$/i.exec(control.value)?.[0];
    if (quick && control.tagName === "SELECT") putBack(keys[0].chosen);
    if (link) scanned(link, control, under.get(control)?.before ?? control.value.slice(0, -link.length));
    else if (quick) scanned(whole || text, control, whole ? "" : keys[0].before);
    else if ("fitting" in control.dataset && control.value) offerFittings(control).then((found) => { if (found.length === 1) takeFitting(control, found[0]); });
    else if ("lot" in control.dataset && control.value) scanned(control.value, control, control.value);
    else if (whole && control.name !== "replaces") numbered(control);
    else goOn(form, control, lacking);
    keys = [];
    return;
  }
  if (event.key.length !== 1 || event.ctrlKey || event.altKey) return;
  // The event's own time: a busy page must not make a scanner look like a hand. The first key may lie
  // a second before the others: it opens a field's list, and a lot without its first letter is another lot.
  const pause = keys.length ? event.timeStamp - keys.at(-1).at : 0;
  if (pause > (keys.length === 1 ? 1000 : 200)) keys = [];
  const first = keys.length ? {} : { before: stood(control), chosen: control.name ? held(control) : [] };
  keys.push({ key: event.key, at: event.timeStamp, ...first });
});

// ---- identifying an end by measuring it, over the page --------------------------------------
const measuring = document.getElementById("identify");
const measured = measuring.querySelector("form");

for (const link of document.querySelectorAll("[data-identify]")) {
  link.addEventListener("click", (event) => {
    event.preventDefault();
    measured.elements.namedItem("end").value = link.dataset.identify;
    measured.elements.namedItem("cannot").value = "";
    measuring.showModal();
  });
}
document.getElementById("close-measuring").addEventListener("click", () => measuring.close());
measured.addEventListener("submit", async (event) => {
  event.preventDefault();
  const question = new URLSearchParams(new FormData(measured));
  document.getElementById("identified").innerHTML = await (await fetch(`/bench/identify?part=1&${question}`)).text();
});
measuring.addEventListener("click", (event) => {
  const cannot = event.target.closest("[data-cannot]");
  if (cannot) {
    event.preventDefault();
    measured.elements.namedItem("cannot").value = cannot.dataset.cannot;
    measured.requestSubmit();
    return;
  }
  const taken = event.target.closest("[data-take]");
  if (!taken) return;
  event.preventDefault();
  const { take: end, connection, size, form: shape, series } = taken.dataset;
  measuring.close();
  const same = end === "end_b" ? { "end_b.same": "" } : {};
  fill({ ...same, [`${end}.connection`]: connection, [`${end}.size`]: size, [`${end}.form`]: shape, [`${end}.series`]: series });
  field(`${end}.shape`).focus();
});

// What was typed before this script came, or what the browser has put back, is asked about as well.
const typed = (one) => (one.type === "checkbox" ? one.checked !== one.defaultChecked : one.tagName === "INPUT" && one.value !== one.defaultValue);

show();
if ([...form.elements].some(typed)) soon();
