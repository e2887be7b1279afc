// Lines that are dragged over the picture of an end: coarsely in the picture, finely in the magnifier,
// by buttons, or by keys. The form's own fields hold where they are; without this script they are typed.

const NAMES = ["edge_1", "edge_2", "crest_1", "crest_2"];
const PIVOT = { x: 60, y: 110 }; // mm: what the lines turn round, as in tagger/measuring/reading.py
const NEAR = { width: 24, height: 16 }; // mm that the magnifier shows
const SVG = "http://www.w3.org/2000/svg";

const across = (name) => name.startsWith("edge"); // a line along the axis: it moves in y
const number = (text) => Number(String(text).replace(",", "."));
const turned = (x, y, degrees) => {
  const a = (degrees * Math.PI) / 180, dx = x - PIVOT.x, dy = y - PIVOT.y;
  return { x: PIVOT.x + dx * Math.cos(a) - dy * Math.sin(a), y: PIVOT.y + dx * Math.sin(a) + dy * Math.cos(a) };
};

function make(kind, parent, attributes) {
  const one = document.createElementNS(SVG, kind);
  for (const [name, value] of Object.entries(attributes)) one.setAttribute(name, value);
  return parent.appendChild(one);
}

function lines(root, form) {
  const strip = root.querySelector(".strip"), box = strip.viewBox.baseVal;
  const magnifier = root.querySelector(".magnifier"), where = root.querySelector("[data-where]");
  const field = (name) => form.elements.namedItem(name);
  const value = (name) => number(field(name).value);
  const label = (name) => form.querySelector(`label[for="${name}"]`).textContent;
  const drawn = {}, handles = {}, picks = {};
  let active = NAMES[0], waiting = 0;

  NAMES.forEach((name, place) => {
    drawn[name] = make("line", root.querySelector("#lines"), { class: name });
    const handle = make("g", root.querySelector("#handles"), { class: "handle", role: "slider", tabindex: 0, "aria-label": label(name),
      "aria-orientation": across(name) ? "vertical" : "horizontal", "aria-valuemin": Math.round(across(name) ? box.y : box.x),
      "aria-valuemax": Math.round(across(name) ? box.y + box.height : box.x + box.width) });
    make("circle", handle, { r: 8.6, class: "reach" });
    make("circle", handle, { r: 5.5 });
    make("text", handle, { "text-anchor": "middle", y: 2 }).textContent = place + 1;
    handle.addEventListener("pointerdown", (event) => drag(event, name, handle, strip));
    handle.addEventListener("keydown", (event) => keys(event, name));
    handle.addEventListener("focus", () => choose(name));
    handles[name] = handle;
    const pick = Object.assign(document.createElement("button"), { type: "button", textContent: place + 1, ariaLabel: label(name) });
    pick.addEventListener("click", () => choose(name));
    picks[name] = root.querySelector("[data-pick]").appendChild(pick);
  });
  magnifier.addEventListener("pointerdown", (event) => drag(event, active, magnifier, magnifier));
  for (const button of root.querySelectorAll("[data-nudge]")) button.addEventListener("click", () => move(active, value(active) + number(button.dataset.nudge)));
  for (const name of ["tilt", "threads", "rest", "distance"]) field(name).addEventListener("input", () => { draw(); if (name === "tilt") byHand(); later(); });
  form.elements.namedItem("confirmed").addEventListener("change", later);

  // A finger moves the line by what it moves on the picture, wherever it took hold of it.
  function drag(event, name, held, picture) {
    event.preventDefault();
    held.focus?.({ preventScroll: true });
    choose(name);
    held.setPointerCapture(event.pointerId);
    const at = (e) => {
      const p = new DOMPoint(e.clientX, e.clientY).matrixTransform(start);
      const back = turned(p.x, p.y, -value("tilt"));
      return across(name) ? back.y : back.x;
    };
    const start = picture.getScreenCTM().inverse();
    let last = at(event);
    const go = (e) => { const now = at(e); move(name, value(name) + now - last); last = now; };
    const end = () => { held.removeEventListener("pointermove", go); held.removeEventListener("pointerup", end); held.removeEventListener("pointercancel", end); look(); };
    held.addEventListener("pointermove", go);
    held.addEventListener("pointerup", end);
    held.addEventListener("pointercancel", end);
    dragging = picture === magnifier;
  }
  let dragging = false; // in the magnifier, which then stands still

  function keys(event, name) {
    const step = { ArrowUp: -0.1, ArrowLeft: -0.1, ArrowDown: 0.1, ArrowRight: 0.1, PageUp: -1, PageDown: 1 }[event.key];
    if (!step) return;
    event.preventDefault();
    move(name, value(name) + step);
  }

  function move(name, to) {
    const [least, most] = across(name) ? [box.y, box.y + box.height] : [box.x, box.x + box.width];
    field(name).value = Math.min(most, Math.max(least, to)).toFixed(2);
    byHand();
    draw();
    if (!dragging) look();
    later();
  }

  function choose(name) {
    active = name;
    dragging = false;
    for (const one of NAMES) {
      handles[one].classList.toggle("active", one === name);
      drawn[one].classList.toggle("active", one === name);
      picks[one].setAttribute("aria-pressed", String(one === name));
    }
    look();
  }

  function draw() {
    const tilt = value("tilt") || 0;
    for (const name of NAMES) {
      const v = value(name), far = 200;
      const [a, b] = across(name) ? [turned(PIVOT.x - far, v, tilt), turned(PIVOT.x + far, v, tilt)] : [turned(v, PIVOT.y - far, tilt), turned(v, PIVOT.y + far, tilt)];
      for (const [key, to] of [["x1", a.x], ["y1", a.y], ["x2", b.x], ["y2", b.y]]) drawn[name].setAttribute(key, to);
      const side = { edge_1: box.x + 9, edge_2: box.x + box.width - 9, crest_1: box.y + box.height - 9, crest_2: box.y + 9 }[name];
      const part = across(name) ? (side - a.x) / (b.x - a.x) : (side - a.y) / (b.y - a.y);
      handles[name].setAttribute("transform", `translate(${a.x + part * (b.x - a.x)} ${a.y + part * (b.y - a.y)})`);
      handles[name].setAttribute("aria-valuenow", v.toFixed(1));
      handles[name].setAttribute("aria-valuetext", `${v.toFixed(1)} mm`);
    }
    ticks(tilt);
    where.textContent = `${value(active).toFixed(2)} mm`;
  }

  // A short line at each pitch between lines 3 and 4: one that stands on no crest shows a wrong count.
  function ticks(tilt) {
    const group = root.querySelector("#ticks"), count = value("threads");
    group.replaceChildren();
    if (!(count > 1 && count <= 60)) return;
    const y = Math.min(value("edge_1"), value("edge_2")), from = value("crest_1"), step = (value("crest_2") - from) / count;
    for (let n = 1; n < count; n++) {
      const a = turned(from + n * step, y - 2.5, tilt), b = turned(from + n * step, y + 0.5, tilt);
      make("line", group, { x1: a.x, y1: a.y, x2: b.x, y2: b.y });
    }
  }

  // The magnifier looks at the middle of the line between those that cross it.
  function look() {
    dragging = false;
    const x = across(active) ? (value("crest_1") + value("crest_2")) / 2 : value(active);
    const y = across(active) ? value(active) : Math.min(value("edge_1"), value("edge_2"));
    const at = turned(x, y, value("tilt") || 0);
    magnifier.setAttribute("viewBox", `${at.x - NEAR.width / 2} ${at.y - NEAR.height / 2} ${NEAR.width} ${NEAR.height}`);
    where.textContent = `${value(active).toFixed(2)} mm`;
  }

  function byHand() {
    field("found").value = "";
    form.querySelector("[data-confirm]").hidden = true;
    field("confirmed").checked = false;
    say("");
  }

  const says = form.querySelector("[data-measure-says]");
  function say(text) { says.textContent = text; }

  // What the lines say, worked out by the server a moment after the last move; only the last answer counts.
  function later() {
    clearTimeout(waiting);
    waiting = setTimeout(read, 400);
  }
  let asked = 0;
  async function read() {
    const mine = ++asked;
    try {
      const answer = await fetch(`${form.action}?${new URLSearchParams(new FormData(form))}&part=1`);
      const text = await answer.text();
      if (mine === asked) document.querySelector("[data-measure-result]").innerHTML = text;
    } catch { /* no signal: the form's own button says so */ }
  }

  async function find(button) {
    say(root.dataset.finding);
    button.disabled = true;
    try {
      const sent = new FormData(form);
      sent.append("photo", picture(strip.querySelector("image").getAttribute("href")), "strip.jpg");
      const headers = { Accept: "application/json", "X-CSRF": document.body.dataset.csrf ?? "" };
      const answer = await fetch(`${form.dataset.action}/find`, { method: "POST", body: sent, headers });
      const found = await answer.json();
      if (found.problems) { say(found.problems.map((one) => one.text).join(" ")); return; }
      for (const [name, to] of Object.entries(found)) field(name).value = to;
      field("found").value = "1";
      form.querySelector("[data-confirm]").hidden = false;
      field("confirmed").checked = false;
      say(root.dataset.found);
      draw();
      look();
      later();
    } catch { say(""); } finally { button.disabled = false; }
  }

  const seeking = form.querySelector("[data-measure-find]");
  seeking.hidden = false;
  seeking.addEventListener("click", () => find(seeking));
  form.addEventListener("submit", (event) => { event.preventDefault(); clearTimeout(waiting); read().then(() => document.querySelector("[data-measure-result]").scrollIntoView({ block: "nearest" })); });
  for (const one of form.querySelectorAll("[data-typed]")) one.hidden = true;
  root.querySelector(".near").hidden = false;
  draw();
  choose(active);
}

// The picture of a data address as a file: the page may not fetch such an address.
function picture(address) {
  const bytes = Uint8Array.from(atob(address.split(",")[1]), (letter) => letter.charCodeAt(0));
  return new Blob([bytes], { type: "image/jpeg" });
}

const root = document.querySelector("[data-measure]"), form = document.querySelector("[data-measure-form]");
if (root && form) lines(root, form);
const sending = document.querySelector("[data-measure-send]");
sending?.addEventListener("submit", () => { sending.querySelector("[data-measure-says]").textContent = sending.dataset.busy; });
