// The fit guide without a server: which of the trade's steps apply to the two ends, in order,
// with their figures. The same choice as tagger/trade/steps.py, the same order as api/scan/fit.py.

import { angle, length, pressure, torque } from "./figures.js";
import { angleOf, basis, flats, sizeKey, turns } from "./phrases.js";
import { clockingPicture, nutPicture } from "./picture.js";
import { eitherWay, isOfNut, screwOf, STATED } from "./tighten.js";

const WHOLE_TURN = 6; // flats
const NOT_SAID = "not_stated";
const PHASES = ["before", "check", "route", "tighten", "prove"];

// `clockwise`: the shop counts the clocking angle clockwise, with elbow A pointing up.
export function guide(content, radius, kit, clockwise = false) {
  const ends = ["A", "B"].map((letter) => ofEnd(letter, content, radius, kit, clockwise));
  const [first, second] = firstEnd(content.spec, kit.tables) === "end_a" ? ends : ends.reverse();
  const loose = motionOf(content.spec[firstEnd(content.spec, kit.tables)], kit.tables) === "flange";
  const screens = PHASES.flatMap((phase) => screensOf(phase, first, second, loose, kit.tables.fit));
  return { screens: screens.map((screen, at) => filled(screen, at + 1, screens.length, kit)), total: screens.length };
}

const on = (name, lines) => lines.filter(({ row }) => row.screen === name);
const said = ({ row, text, source }) => JSON.stringify([row.id, text, source]);

// The screens of one phase: those of the whole assembly, then end by end, or once for two alike.
// The first lines are those of the end that is connected first; loose: it is tightened only when the other is connected too.
function screensOf(phase, first, second, loose, { screens, of_one_end: single }) {
  const [mine, theirs] = [first, second].map((lines) => lines.filter(({ row }) => row.phase === phase));
  const whole = (name) => ({ name, ends: "AB", lines: merged(on(name, mine), on(name, theirs)) });
  const own = screens[phase].filter((name) => single.includes(name));
  const [ours, others] = [mine, theirs].map((lines) => own.flatMap((name) => on(name, lines)));
  const alike = ours.map(said).join() === others.map(said).join();
  const apart = [ours, others].flatMap((lines) => own.map((name) => ({ name, ends: lines[0]?.ends, lines: on(name, lines) })));
  if (loose) apart.sort((x, y) => own.indexOf(x.name) - own.indexOf(y.name));
  const found = screens[phase].filter((name) => !single.includes(name)).map(whole);
  return [...found, ...(alike ? own.map(whole) : apart)].filter(({ lines }) => lines.length);
}

// The lines of both ends in the trade's order; what both say is said once.
function merged(a, b) {
  const theirs = new Set(b.map(said)), common = new Set(a.map(said).filter((key) => theirs.has(key)));
  const both = a.filter((line) => common.has(said(line))).map((line) => ({ ...line, ends: "AB" }));
  const alone = [...a, ...b].filter((line) => !common.has(said(line)));
  return [...both, ...alone].sort((x, y) => x.row.order - y.row.order || (x.ends < y.ends ? -1 : x.ends > y.ends ? 1 : 0));
}

// What the template shows of screen n of the total.
function filled({ name, ends, lines }, n, total, { t, tables }) {
  const named = { A: t("scan-end_a"), B: t("scan-end_b"), AB: null };
  return {
    id: `step-${n}`, count: t("scan-fit-step", { n, total }), title: t(`fit-screen-${name}`),
    end: tables.fit.of_one_end.includes(name) ? named[ends] : null,
    lines: lines.map((line) => ({ text: line.text, end: ends === "AB" ? named[line.ends] : null, severity: line.row.caution ? "danger" : "" })),
    pictures: [...new Set(lines.map((line) => line.picture).filter(Boolean))],
    sources: [...new Set(lines.map((line) => line.source))],
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
    free_last: mine === "free" && theirs !== "free", flange_loose: mine === "flange", ...clocked(spec, tables),
  };
}

// What keeps the angle between two elbows free until the end connected last is tight: as tagger/trade/motion.py.
function clocked(spec, tables) {
  const last = spec[firstEnd(spec, tables) === "end_a" ? "end_b" : "end_a"], moves = motionOf(last, tables);
  const rigid = !["swivel", "mating", "flange"].includes(moves);
  return spec.clocking_deg === null ? {} : {
    clock_nut: moves === "swivel" || moves === "mating", clock_screws: moves === "flange",
    clock_locknut: rigid && tables.fit.adjustable.includes(last.connection) && last.form === "male",
  };
}

function ofEnd(letter, content, radius, kit, clockwise) {
  const which = letter === "A" ? "end_a" : "end_b";
  const end = content.spec[which], tightening = letter === "A" ? content.tighten_a : content.tighten_b;
  const figures = figuresOf(end, tightening, content, radius, kit.tables);
  const holds = conditions(end, content, tightening, figures, orderConditions(content.spec, which, kit.tables), kit.tables);
  return kit.tables.fit.rows.filter((row) =>
    holds.has(row.condition) &&
    (row.families.includes("all") || row.families.includes(end.connection)) &&
    (row.forms.includes("all") || row.forms.includes(end.form)) &&
    (row.sizes.includes("all") || row.sizes.includes(sizeKey(end))),
  ).map((row) => ({
    row, ends: letter,
    text: kit.t.html(clockwise && isClocking(row, content) ? countedClockwise(content) : messageOf(row, figures, kit.t)),
    picture: pictureOf(row, content, tightening, kit, clockwise),
    source: kit.t("scan-source", { source: messageOf({ message: row.source, figures: row.source === "fit-source-turns" ? ["turn_sources"] : [] }, figures, kit.t) }),
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
  let others;
  if (tightening && tightening.torque_max_nm !== null) {
    found.torque = torque(tightening.torque_min_nm, tightening.torque_max_nm);
    found.screw = screwOf(tightening, end, tables) ?? "none";
    const { lubrication } = tightening;
    if (lubrication && lubrication !== NOT_SAID) found.lubrication = { id: `trade-lubrication-${lubrication}` };
  }
  if (tightening && tightening.flats_max !== null) {
    const { flats_min: low, flats_max: high, flats_basis: start } = tightening;
    if (STATED.includes(start) && tables.fit.taper.includes(end.connection)) found.turns = turns((low ?? 0) / 6, high / 6);
    else found.flats = flats(low ?? 0, high);
    if (found.turns && (others = otherTurns(end, (low ?? 0) / 6, high / 6, tables)).length) {
      found.turn_choices = [...new Map(others.map(({ values: { turns: each } }) => [JSON.stringify(each), each])).values()];
      found.turn_sources = others;
    }
    if (found.flats && STATED.includes(start)) found.flats_basis = basis(start);
  }
  if (content.working_pressure_bar !== null) found.pressure = pressure(content.working_pressure_bar);
  else if (content.at_most_bar !== null) found.at_most = pressure(content.at_most_bar);
  if (radius !== null) found.bend_radius = length(radius);
  if (content.spec.clocking_deg !== null) found.clocking = angle(content.spec.clocking_deg);
  return found;
}

// Each source of another number of turns, where one shares nothing with those on the tag, which carries sixths.
function otherTurns(end, least, most, tables) {
  const rows = tables.fit.turns[`${end.connection}|${sizeKey(end)}|${end.material}`] ?? [];
  if (rows.every(([low, high]) => low <= most + 0.01 && least <= high + 0.01)) return [];
  return rows.map(([low, high, place]) => ({ id: "fit-turns_of_source", values: { turns: turns(low, high), source: tables.sources[place] } }));
}

function conditions(end, content, tightening, figures, order, tables) {
  const ofNut = isOfNut(tightening, end, tables);
  const flats = "flats_basis" in figures, torque = "torque" in figures, turns = "turns" in figures;
  const workedTo = torque && !ofNut, oiled = tightening?.lubrication ?? null;
  const either = eitherWay(end, tables), start = flats && (either || !torque) ? tightening.flats_basis : null, elbow = angleOf(end) > 0;
  return new Set(Object.entries({
    ...order, "": true, has_flats: flats, has_torque: torque, stud_torque: torque && !ofNut, nut_torque: ofNut, has_turns: turns,
    lubrication_said: workedTo && "lubrication" in figures, lubrication_unknown: workedTo && oiled === NOT_SAID, lubrication_not_carried: workedTo && oiled === null,
    turns_disputed: "turn_sources" in figures, flats_alone: flats && !torque, flats_and_torque: flats && torque,
    either_way: flats && torque && either, torque_counts: flats && workedTo && !either,
    flats_finger_tight: start === "finger_tight", flats_wrench_resistance: start === "wrench_resistance",
    no_figures: !(flats || torque || turns),
    has_pressure: "pressure" in figures, at_most_pressure: "at_most" in figures, no_pressure: !("pressure" in figures || "at_most" in figures),
    has_bend: "bend_radius" in figures, no_bend: !("bend_radius" in figures),
    straight: !elbow, elbow, elbow_alone: elbow && content.spec.clocking_deg === null, elbow_pair: content.spec.clocking_deg !== null,
    stainless: end.material === "stainless_steel",
  }).filter(([, holding]) => holding).map(([name]) => name));
}

const isClocking = (row, { spec }) => row.picture === "clocking" && spec.clocking_deg !== null;
const countedClockwise = ({ spec }) => ({ id: "fit-clocking_clockwise", values: { clocking: angle((360 - spec.clocking_deg) % 360) } });

function pictureOf(row, content, tightening, kit, clockwise) {
  if (isClocking(row, content)) return clockingPicture(content.spec, kit, clockwise);
  if (row.picture === "nut_flats" && tightening?.flats_max && tightening.flats_basis && tightening.flats_max < WHOLE_TURN) {
    return nutOf(tightening, kit);
  }
  return kit.tables.fit.pictures[row.picture] || "";
}

// The nut turned by its flats, from its mark.
function nutOf({ flats_min: low, flats_max: high, flats_basis: start }, kit) {
  return nutPicture(low, high, kit.t("words-counted", { count: flats(low ?? 0, high), basis: basis(start) }), true, kit);
}
