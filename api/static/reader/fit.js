// The fit guide without a server: which of the trade's steps apply to the two ends, in order,
// with their figures. The same choice as tagger/trade/steps.py, the same order as api/scan/fit.py.

import { angle, length, pressure, torque } from "./figures.js";
import { angleOf, basis, flats, turns } from "./phrases.js";
import { clockingPicture, nutPicture } from "./picture.js";
import { isOfNut, screwOf } from "./tighten.js";

const WHOLE_TURN = 6; // flats
const STATED = ["finger_tight", "wrench_resistance"];
const PHASES = ["before", "check", "route", "tighten", "prove"];

export function guide(content, radius, kit) {
  const ends = [ofEnd("A", content, radius, kit), ofEnd("B", content, radius, kit)];
  const shown = merged(...(firstEnd(content.spec, kit.tables) === "end_a" ? ends : ends.reverse()));
  const phases = [];
  shown.forEach((step, at) => {
    const { phase } = step.row;
    if (phases.at(-1)?.phase !== phase) phases.push({ phase, title: kit.t(`fit-phase-${phase}`), steps: [] });
    phases.at(-1).steps.push(filled(step, at + 1, shown.length, kit.t));
  });
  return { phases, total: shown.length };
}

// What the template shows of step n of the total.
function filled({ row, ends, text, picture, source }, n, total, t) {
  return {
    id: `step-${n}`, count: t("scan-fit-step", { n, total }), phase: t(`fit-phase-${row.phase}`),
    end: { A: t("scan-end_a"), B: t("scan-end_b") }[ends] ?? null,
    text, picture, source, severity: row.caution ? "danger" : "",
    back: n > 1 ? `step-${n - 1}` : "fit", next: n < total ? `step-${n + 1}` : null,
  };
}

// What turns while an end is screwed in, and the end that goes first: as tagger/trade/motion.py.
const motionOf = (end, { fit }) => fit.motions[`${end.connection}|${end.form}`] ?? "mating";

function firstEnd(spec, tables) {
  const [a, b] = [spec.end_a, spec.end_b].map((end) => tables.fit.order.indexOf(motionOf(end, tables)));
  return a <= b ? "end_a" : "end_b";
}

function orderConditions(spec, which, tables) {
  const mine = motionOf(spec[which], tables), theirs = motionOf(spec[which === "end_a" ? "end_b" : "end_a"], tables);
  const first = firstEnd(spec, tables) === which;
  return {
    rigid_first: mine === "turns_hose" && first, rigid_second: mine === "turns_hose" && !first,
    rigid_pair: mine === "turns_hose" && theirs === "turns_hose" && first,
    mating_first: mine === "mating" && first, mating_second: mine === "mating" && !first,
    swivel_last: mine === "swivel" && theirs !== "swivel" && theirs !== "free",
    free_last: mine === "free" && theirs !== "free", flange_loose: mine === "flange",
  };
}

// Both ends' steps in the trade's order; tightening is done end by end unless it is the same.
// The first are those of the end that is connected first.
function merged(a, b) {
  const found = [];
  const key = (step) => `${step.row.id}|${step.text}`;
  for (const phase of PHASES) {
    const ours = a.filter((step) => step.row.phase === phase), theirs = b.filter((step) => step.row.phase === phase);
    const same = JSON.stringify(ours.map((s) => [key(s), s.source])) === JSON.stringify(theirs.map((s) => [key(s), s.source]));
    if (phase === "tighten" && !same) { found.push(...ours, ...theirs); continue; }
    const shared = new Set(theirs.map(key));
    const common = new Set(ours.map(key).filter((k) => shared.has(k)));
    const both = ours.filter((s) => common.has(key(s))).map((s) => ({ ...s, ends: "AB" }));
    const alone = [...ours, ...theirs].filter((s) => !common.has(key(s)));
    found.push(...[...both, ...alone].sort((x, y) => x.row.order - y.row.order || (x.ends < y.ends ? -1 : 1)));
  }
  return found;
}

function ofEnd(letter, content, radius, kit) {
  const which = letter === "A" ? "end_a" : "end_b";
  const end = content.spec[which], tightening = letter === "A" ? content.tighten_a : content.tighten_b;
  const figures = figuresOf(end, tightening, content, radius, kit.tables);
  const holds = conditions(end, content, tightening, figures, orderConditions(content.spec, which, kit.tables), kit.tables);
  return kit.tables.fit.rows.filter((row) =>
    holds.has(row.condition) &&
    (row.families.includes("all") || row.families.includes(end.connection)) &&
    (row.forms.includes("all") || row.forms.includes(end.form)),
  ).map((row) => ({
    row, ends: letter,
    text: kit.t.html(messageOf(row, figures, kit.t)),
    picture: pictureOf(row, content, tightening, kit),
    source: kit.t("scan-source", { source: messageOf({ message: row.source }, {}, kit.t) }),
  }));
}

// A row's message with the figures it names; a shop's own sentence, or a citation, is as it is.
function messageOf({ message, figures: names = [] }, figures, t) {
  if (!t.has(message)) return { id: "words-as-is", values: { text: message } };
  return { id: message, values: Object.fromEntries(names.map((name) => [name, figures[name]])) };
}

// Turns in place of flats on a taper thread; a count whose start is not stated has no basis.
function figuresOf(end, tightening, content, radius, tables) {
  const found = {};
  if (tightening && tightening.torque_max_nm !== null) {
    found.torque = torque(tightening.torque_min_nm, tightening.torque_max_nm);
    found.screw = screwOf(tightening, end, tables) ?? "none";
  }
  if (tightening && tightening.flats_max !== null) {
    const { flats_min: low, flats_max: high, flats_basis: start } = tightening;
    if (start && tables.fit.taper.includes(end.connection)) found.turns = turns((low ?? 0) / 6, high / 6);
    else found.flats = flats(low ?? 0, high);
    if (found.flats && STATED.includes(start)) found.flats_basis = basis(start);
  }
  if (content.working_pressure_bar !== null) found.pressure = pressure(content.working_pressure_bar);
  if (radius !== null) found.bend_radius = length(radius);
  if (content.spec.clocking_deg !== null) found.clocking = angle(content.spec.clocking_deg);
  return found;
}

function conditions(end, content, tightening, figures, order, tables) {
  const ofNut = isOfNut(tightening, end, tables);
  const flats = "flats_basis" in figures, torque = "torque" in figures, turns = "turns" in figures;
  const start = flats ? tightening.flats_basis : null, elbow = angleOf(end) > 0;
  return new Set(Object.entries({
    ...order, "": true, has_flats: flats, has_torque: torque, stud_torque: torque && !ofNut, nut_torque: ofNut, has_turns: turns, flats_and_torque: flats && torque,
    flats_finger_tight: start === "finger_tight", flats_wrench_resistance: start === "wrench_resistance",
    no_figures: !(flats || torque || turns),
    has_pressure: "pressure" in figures, no_pressure: !("pressure" in figures),
    has_bend: "bend_radius" in figures, no_bend: !("bend_radius" in figures),
    straight: !elbow, elbow, elbow_pair: content.spec.clocking_deg !== null,
    stainless: end.material === "stainless_steel",
  }).filter(([, holding]) => holding).map(([name]) => name));
}

function pictureOf(row, content, tightening, kit) {
  if (row.picture === "clocking" && content.spec.clocking_deg !== null) return clockingPicture(content.spec, kit);
  if (row.picture === "nut_flats" && tightening?.flats_max && tightening.flats_basis && tightening.flats_max < WHOLE_TURN) {
    return nutOf(row, tightening, kit);
  }
  return kit.tables.fit.pictures[row.picture] || "";
}

// The nut with its mark before the turn, or turned by its flats.
function nutOf(row, { flats_min: low, flats_max: high, flats_basis: start }, kit) {
  if (row.id.startsWith("mark")) return nutPicture(low, high, kit.t("fit-mark"), false, kit);
  return nutPicture(low, high, kit.t("words-counted", { count: flats(low ?? 0, high), basis: basis(start) }), true, kit);
}
