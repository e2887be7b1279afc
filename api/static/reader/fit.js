// The fit guide without a server: which of the trade's steps apply to the two ends, in order,
// with their figures. The same choice as tagger/trade/steps.py, the same order as api/scan/fit.py.

import { both, escape } from "./fill.js";
import { clockingPicture, nutPicture } from "./picture.js";
import { turns } from "./phrases.js";
import { showLength } from "./units.js";
import { angleOf } from "./words.js";

const PHASES = ["before", "check", "route", "tighten", "prove"];

export function guide(content, radius, words) {
  const t = words.t.bind(words);
  const titles = { before: t("Before you start"), check: t("Check"), route: t("Lay the hose"), tighten: t("Tighten"), prove: t("Prove it") };
  const shown = merged(ofEnd("A", content, radius, words), ofEnd("B", content, radius, words));
  const total = shown.length;
  const phases = [];
  shown.forEach((step, at) => {
    const title = titles[step.row.phase];
    if (phases.at(-1)?.phase !== step.row.phase) phases.push({ phase: step.row.phase, title, steps: [] });
    const end = { A: t("End A"), B: t("End B") }[step.ends] || null;
    phases.at(-1).steps.push({
      id: `fit-${at + 1}`, count: `${at + 1} / ${total}`, phase: title, end,
      text: step.text, picture: step.picture, source: step.source, severity: step.row.caution ? "danger" : "",
      back: at ? `fit-${at}` : "fit", next: at + 1 < total ? `fit-${at + 2}` : null,
    });
  });
  return { phases, total };
}

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

function ofEnd(letter, content, radius, words) {
  const which = letter === "A" ? "end_a" : "end_b";
  const end = content.spec[which], tightening = letter === "A" ? content.tighten_a : content.tighten_b;
  const figures = figuresOf(end, tightening, content, radius, words);
  const holds = conditions(end, content, tightening, radius, words.tables.fit.taper);
  return words.tables.fit.rows.filter((row) =>
    holds.has(row.condition) &&
    (row.families.includes("all") || row.families.includes(end.connection)) &&
    (row.forms.includes("all") || row.forms.includes(end.form)),
  ).map((row) => {
    const [text, source] = words.language.steps[row.id];
    return {
      row, ends: letter,
      text: escape(text).replace(/\{(\w+)\}/g, (whole, name) => (name in figures ? `<strong>${both(figures[name])}</strong>` : whole)),
      picture: pictureOf(row, content, tightening, words),
      source: sourceOf(source, words),
    };
  });
}

function sourceOf(source, words) {
  const t = words.t.bind(words);
  return t("Source: {source}", { source: source || t("as the shop that built it put it on the tag") });
}

function conditions(end, content, tightening, radius, tapers) {
  const counted = tightening && tightening.flats_max !== null ? tightening.flats_basis : null;
  const flats = counted === "finger_tight" || counted === "wrench_resistance";
  const torque = Boolean(tightening && tightening.torque_max_nm !== null);
  const turns = Boolean(counted) && tapers.includes(end.connection);
  const elbow = angleOf(end) > 0;
  return new Set(Object.entries({
    "": true, has_flats: flats, has_torque: torque, has_turns: turns, flats_and_torque: flats && torque,
    flats_finger_tight: counted === "finger_tight", flats_wrench_resistance: counted === "wrench_resistance",
    no_figures: !(flats || torque || turns),
    has_pressure: content.working_pressure_bar !== null, no_pressure: content.working_pressure_bar === null,
    has_bend: radius !== null, no_bend: radius === null,
    straight: !elbow, elbow, elbow_pair: content.spec.clocking_deg !== null,
  }).filter(([, holding]) => holding).map(([name]) => name));
}

function figuresOf(end, tightening, content, radius, words) {
  const t = words.t.bind(words);
  const found = {};
  if (tightening && tightening.torque_max_nm !== null) {
    found.torque = words.torque(tightening.torque_min_nm, tightening.torque_max_nm);
    const screw = words.screwOf(tightening, end);
    found.screw = screw ?? "";
  }
  if (tightening && tightening.flats_max !== null) {
    const { flats_min: low, flats_max: high } = tightening;
    found.flats = words.flats(low, high);
    found.flats_basis = words.basis(tightening.flats_basis);
    found.turns = words.say(turns(low / 6, high / 6));
  }
  if (content.working_pressure_bar !== null) found.pressure = words.pressure(content.working_pressure_bar);
  if (radius !== null) found.bend_radius = showLength(radius);
  if (content.spec.clocking_deg !== null) found.clocking = `${content.spec.clocking_deg}°`;
  return found;
}

function pictureOf(row, content, tightening, words) {
  const t = words.t.bind(words);
  if (row.picture === "clocking" && content.spec.clocking_deg !== null) return clockingPicture(content.spec, words);
  if (row.picture === "nut_flats" && tightening && tightening.flats_max && tightening.flats_max < 6) {
    const { flats_min: low, flats_max: high } = tightening;
    if (row.id.startsWith("mark")) return nutPicture(low, high, t("A line across nut and body"), false, words);
    return nutPicture(low, high, `${words.flats(low, high)} ${words.basis(tightening.flats_basis)}`, true, words);
  }
  return words.tables.fit.pictures[row.picture] || "";
}
