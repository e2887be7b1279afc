// A tag read from its own digits, as the dictionary that fills tag.mustache: the same one that
// api/scan/view.py builds for a tag without a record.

import * as figures from "./figures.js";
import { fill } from "./fill.js";
import { guide } from "./fit.js";
import { bendOf, hottest, limitOf } from "./limits.js";
import { format } from "./number.js";
import * as phrases from "./phrases.js";
import { assemblyPicture, clockingPicture, clockwise, endPicture, mating } from "./picture.js";
import * as rated from "./rated.js";
import { tighten } from "./tighten.js";
import { psiOf, round } from "./units.js";

export function view(tag, kit, today) {
  const { t, tables } = kit;
  const { content, number, digits } = tag, { spec } = content;
  const bend = bendOf(spec.hose, tables);
  const lines = orderLines(tag, content, kit);
  const noGuide = barred(tag), why = noGuide ? [] : doubts(tag, t);
  return {
    number: format(number),
    withdrawn: tag.withdrawn || null,
    void: Boolean(tag.isVoid),
    held: Boolean(tag.isHeld),
    notices: [...tag.notices, ...age(content, today, kit)].map((n) => ({ more: null, href: null, href_words: null, differences: [], ...n })),
    dangers: [],
    warnings: [],
    line: t.html("scan-one_line", { hose: phrases.hose(spec.hose, tables), length: figures.length(spec.length_mm) }),
    end_a_short: t.html(shortEnd(spec.end_a, tables)), end_b_short: t.html(shortEnd(spec.end_b, tables)),
    pressure: pressure(content, kit),
    partly_rated: content.unknown_parts.length ? rated.lines(content, tables).map((line) => t.html(line)) : [],
    carried_dangers: rated.dangers(content).map((line) => t(line)),
    overview: assemblyPicture(spec, kit),
    ends: ["end_a", "end_b"].map((which) => endOf(content, which, kit)),
    length: { figure: t.html(long(spec.length_mm)), basis: t(phrases.lengthBasis(spec.length_basis)), tolerance: null, source: null },
    clocking: spec.clocking_deg === null ? null : {
      words: t(phrases.clocking(spec)), own: tag.clockwise ? t(clockwise(spec)) : null, tolerance: null,
      picture: clockingPicture(spec, kit, tag.clockwise), source: t("scan-clocking-convention"),
    },
    facts: facts(tag, bend, kit),
    order_form: fill(kit.templates.order, {
      number_compact: number, digits, spec_json: "", changes: true,
      new_length: t("scan-order-new_length", { length: figures.length(spec.length_mm) }),
      new_end_a: t("scan-order-new_end_a", { end: phrases.end(spec.end_a, tables) }),
      new_end_b: t("scan-order-new_end_b", { end: phrases.end(spec.end_b, tables) }),
    }),
    fitted_form: tag.reports ? fill(kit.templates.fitted, { number_compact: number }) : "",
    shop_name: tag.name, shop_phone: tag.phone,
    order_lines: lines,
    mailto: mailto(tag, lines, t),
    doubted: why.length > 0, doubts: why, shut: noGuide || why.length > 0,
    forged: tag.signed?.state === "broken",
    fit: noGuide ? null : guide(content, bend ? bend[0] : null, kit, tag.clockwise),
  };
}

// Of what must not be installed at all there is no guide.
const barred = (tag) => Boolean(tag.withdrawn || tag.isVoid || tag.isHeld);

// Why this hose assembly is not to be installed yet: the guide then opens only by a deliberate act.
// A pressure that is known in part is no such reason.
function doubts({ content, claimed, signed }, t) {
  const unknown = content.working_pressure_bar === null && content.at_most_bar === null;
  const forged = signed?.state === "broken" ? [t("words-sealed-broken")] : [];
  const tooMuch = claimed === null ? [] : [t("scan-fit-doubt-claims")];
  return [...forged, ...tooMuch, ...rated.dangers(content).map((line) => t(line)), ...(unknown ? [t("scan-pressure-not_known")] : [])];
}

// A figure alone, as a message.
const long = (mm) => ({ id: "scan-length-figure", values: { length: figures.length(mm) } });
const warm = (celsius) => ({ id: "scan-temperature", values: { temperature: figures.temperature(celsius) } });

// An end without what the page says further down.
const shortEnd = (end, tables) => ({ id: "scan-short_end", values: { title: phrases.endTitle(end, tables), shape: phrases.shape(end) } });
const covers = (spec) => ({ id: "scan-cover_list", values: { covers: spec.covers.map(phrases.cover) } });

function orderLines(tag, content, { t, tables }) {
  const rows = [[t("scan-tag"), format(tag.number)], ...sections(content, t, tables), [t("scan-link"), `${tag.base}/T/${tag.number}/${tag.digits}`]];
  return [t("scan-order-please"), ...rows.map(([label, text]) => t("scan-line", { label, text }))].join("\n");
}

// The whole content as labels and words, in the order in which a shop asks for it.
function sections(content, t, tables) {
  const { spec } = content, celsius = spec.max_temperature_c;
  return [
    [t("scan-hose"), t(phrases.hose(spec.hose, tables))],
    [t("scan-end_a"), t(phrases.end(spec.end_a, tables))],
    [t("scan-end_b"), t(phrases.end(spec.end_b, tables))],
    [t("scan-length"), t(phrases.overallLength(spec))],
    [t("scan-clocking"), spec.clocking_deg === null ? "" : t(phrases.clocking(spec))],
    [t("scan-pressure"), t(rated.said(content, tables))],
    [t("scan-max_temperature"), celsius === null ? "" : t(warm(celsius))],
    [t("scan-vacuum"), spec.vacuum_bar === null ? "" : t(phrases.vacuum(spec.vacuum_bar))],
    [t("scan-fluid"), t(phrases.fluidOf(spec))],
    [t("scan-covers"), spec.covers.length ? t(covers(spec)) : ""],
  ].filter(([, text]) => text);
}

function pressure(content, { t }) {
  const bar = content.working_pressure_bar, given = content.spec.working_pressure;
  if (bar === null) return null;
  const basis = given ? t("scan-pressure-given", { source: given.source }) : t("scan-pressure-as_tagged");
  const mark = content.unverified_parts.length ? t(rated.unverified(content)) : null;
  return { si: String(round(bar)), us: String(psiOf(bar)), mark, basis, origin: null };
}

function endOf(content, which, kit) {
  const { t, tables } = kit;
  const end = content.spec[which], letter = which.at(-1);
  return {
    letter: letter.toUpperCase(), title: t(phrases.endTitle(end, tables)), words: t.html(phrases.end(end, tables)),
    picture: endPicture(content.spec, which, kit),
    thread: t.html(thread(end, tables)), size_note: t(scale(end, tables)),
    tighten: tighten(content[`tighten_${letter}`], end, tables).map((line) => t.html(line)),
    tighten_source: t("scan-pressure-as_tagged"),
  };
}

// The one dimension to measure, as the trade gives it.
function thread(end, tables) {
  const found = mating(end, tables);
  if (!found) return { id: "scan-thread-not_known" };
  const diameter = figures.diameter(found[1]);
  if (phrases.isFlange(end)) return { id: "scan-thread-flange", values: { diameter } };
  if (!found[0]) return { id: "scan-thread-plain", values: { diameter } };
  return { id: "scan-thread", values: { thread: found[0], diameter } };
}

// What is to scale in the picture, and where the dimension comes from.
function scale(end, tables) {
  const found = mating(end, tables);
  return found ? { id: "scan-scale", values: { source: tables.sources[found[2]] } } : { id: "scan-scale-none" };
}

function facts(tag, bend, { t, tables }) {
  const { content, signed } = tag, { spec } = content, celsius = spec.max_temperature_c;
  const cold = limitOf(spec, tables.cold, tables), hot = hottest(spec, tables);
  const source = (place) => t("scan-source", { source: tables.sources[place] });
  const fact = (label, said, note = null) => ({ label, html: t.html(said), note, calendar: null });
  return [
    fact(t("scan-hose"), phrases.hose(spec.hose, tables)),
    bend && fact(t("scan-bend_radius"), long(bend[0]), source(bend[1])),
    celsius !== null ? fact(t("scan-max_temperature"), warm(celsius))
      : hot && hot[0] !== null && fact(t("scan-max_temperature"), warm(hot[0]), t("scan-source", { source: hot[1] })),
    cold && fact(t("scan-min_temperature"), warm(cold[0]), source(cold[1])),
    spec.vacuum_bar !== null && fact(t("scan-vacuum"), phrases.vacuum(spec.vacuum_bar)),
    fact(t("scan-fluid"), phrases.fluidOf(spec)),
    signed && fact(t("scan-sealed"), { id: `words-sealed-${signed.state}` }, sealNote(signed, t)),
    spec.covers.length && fact(t("scan-covers"), covers(spec)),
    content.built_on && fact(t("scan-built_on"), { id: "scan-day", values: { day: { date: content.built_on } } }),
    content.built_on && replaceBy(tag, fact, source, tables, t),
  ].filter(Boolean);
}

function sealNote({ state, key_id: key }, t) {
  if (state === "signed") return t("scan-sealed-note", { key });
  if (state === "unsigned") return t("scan-unsealed-note");
  return state === "unchecked" ? t("scan-unchecked-note") : null;
}

// Until when the most cautious source would have it replaced, and what makes a calendar file of that day.
function replaceBy({ content, number, digits, base }, fact, source, tables, t) {
  const [years, place] = tables.storage.life, day = yearsAfter(content.built_on, years), url = `${base}/T/${number}/${digits}`;
  const calendar = {
    href: `/calendar/${number}/${digits}.ics`, number, day, url, summary: t("fitted-event", { number: format(number) }),
    said: t("fitted-event-description", { source: tables.sources[place], address: url }),
  };
  return { ...fact(t("fitted-replace_by"), { id: "scan-day", values: { day: { date: day } } }, source(place)), calendar };
}

// The same day years later, or the last of February; built and never fitted, as far as the tag itself tells.
function yearsAfter(day, years) {
  const [year, rest] = [Number(day.slice(0, 4)) + years, day.slice(4)];
  const leap = new Date(Date.UTC(year, 2, 0)).getUTCDate() === 29;
  return String(year).padStart(4, "0") + (rest === "-02-29" && !leap ? "-02-28" : rest);
}

// What the storage guidance says of an assembly of this age.
function age(content, today, { t, tables }) {
  if (!content.built_on) return [];
  const old = (Date.parse(today) - Date.parse(content.built_on)) / 86400000 / 365.25;
  const { life, shelf } = tables.storage;
  const values = ([years, place]) => ({ day: { date: content.built_on }, years, source: tables.sources[place] });
  const notice = (words) => [{ severity: "care", heading: t("scan-notice-old-title"), words }];
  if (old > life[0]) return notice(t("scan-notice-life", values(life)));
  if (old > shelf[0]) return notice(t("scan-notice-shelf", values(shelf)));
  return [];
}

function mailto(tag, lines, t) {
  const subject = t("scan-order-subject", { number: format(tag.number) });
  return `mailto:${tag.email}?subject=${quoted(subject)}&body=${quoted(lines.replace(/\n/g, "\r\n"))}`;
}

// As Python's urllib.parse.quote writes it.
const quoted = (text) => encodeURIComponent(text).replace(/[!'()*]/g, (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`).replace(/%2F/g, "/");
