// A tag read from its own digits, as the dictionary that fills tag.mustache: the same one that
// api/scan/view.py builds for a tag without a record.

import { both as inBoth, fill } from "./fill.js";
import { guide } from "./fit.js";
import { format } from "./number.js";
import { assemblyPicture, clockingPicture, endPicture, mating } from "./picture.js";
import { fahrenheit, inchText, numberText, psiOf, round, showLength, showTemperature } from "./units.js";
import { isFlange } from "./words.js";

export function view(tag, words, today) {
  const t = words.t.bind(words);
  const { content, number, digits } = tag, { spec } = content;
  const bend = bendOf(spec.hose, words.tables);
  const short = (end) => `${words.title(end)}, ${words.shape(end)}`;
  const orderLines = [
    t("Please make this hose again."), `${t("Tag")}: ${format(number)}`,
    ...sections(content, words).map(([, label, text]) => `${label}: ${text}`),
    `${t("Link")}: ${tag.base}/T/${number}/${digits}`,
  ].join("\n");
  return {
    number: format(number),
    withdrawn: null,
    notices: [...tag.notices.map((n) => ({ href: null, href_words: null, differences: [], ...n })), ...age(content, today, words)],
    dangers: [],
    warnings: [],
    line: inBoth(`${words.hose(spec.hose)}, ${showLength(spec.length_mm)}`),
    end_a_short: inBoth(short(spec.end_a)), end_b_short: inBoth(short(spec.end_b)),
    pressure: pressure(content, words),
    overview: assemblyPicture(spec, words),
    ends: ["end_a", "end_b"].map((which) => endOf(content, which, words)),
    length: {
      figure: inBoth(showLength(spec.length_mm)),
      basis: words.lengthBasis(spec.length_basis), tolerance: null, source: null,
    },
    clocking: spec.clocking_deg === null ? null : {
      words: words.clocking(spec), own: null, tolerance: null, picture: clockingPicture(spec, words),
      source: t("Convention: MIL-DTL-83796-5 figure 3, citing SAE J517; the viewing side is common practice, no source"),
    },
    facts: facts(content, bend, words),
    order_form: fill(words.language.templates.order, {
      number_compact: number, digits, spec_json: "", changes: true, new_length: showLength(spec.length_mm),
      new_end_a: words.end(spec.end_a), new_end_b: words.end(spec.end_b),
    }),
    shop_name: tag.name, shop_phone: tag.phone,
    order_lines: orderLines,
    mailto: mailto(tag, orderLines, words),
    fit: guide(content, bend ? bend[0] : null, words),
  };
}

export function sections(content, words) {
  const t = words.t.bind(words);
  const { spec } = content;
  return [
    ["hose", t("Hose"), words.hose(spec.hose)],
    ["end_a", t("End A"), words.end(spec.end_a)],
    ["end_b", t("End B"), words.end(spec.end_b)],
    ["length", t("Length"), words.length(spec)],
    ["clocking", t("Clocking angle"), words.clocking(spec)],
    ["pressure", t("Working pressure"), words.pressure(content.working_pressure_bar)],
    ["temperature", t("Highest temperature"), spec.max_temperature_c === null ? "" : showTemperature(spec.max_temperature_c)],
    ["fluid", t("Fluid"), spec.fluid ? words.fluid(spec.fluid) : ""],
    ["covers", t("Over the hose"), covers(spec, words)],
  ].filter(([, , text]) => text);
}

const covers = (spec, words) => spec.covers.map((cover) => words.cover(cover)).join(", ");

function pressure(content, words) {
  const t = words.t.bind(words);
  const bar = content.working_pressure_bar;
  if (bar === null) return null;
  const given = content.spec.working_pressure;
  const basis = given
    ? t("Given by the shop. Source: {source}", { source: given.source })
    : t("As the shop that built it put it on the tag");
  return { si: String(round(bar)), us: String(psiOf(bar)), basis };
}

function endOf(content, which, words) {
  const t = words.t.bind(words);
  const end = content.spec[which], letter = which.at(-1);
  return {
    letter: letter.toUpperCase(), title: words.title(end), words: inBoth(words.end(end)),
    picture: endPicture(content.spec, which, words),
    thread: inBoth(threadText(end, words)), size_note: sizeNote(end, words),
    tighten: words.tighten(content[`tighten_${letter}`], end).map(inBoth),
    tighten_source: t("As the shop that built it put it on the tag"),
  };
}

function threadText(end, words) {
  const t = words.t.bind(words);
  const found = mating(end, words.tables);
  if (!found) return t("Thread not in the tables: use the fitting maker's data");
  const figure = `${numberText(found[1], 2)} mm (${inchText(found[1])})`;
  if (isFlange(end)) return t("Flange head {figure} across", { figure });
  return t("Thread {thread}, male {figure} outside", { thread: found[0], figure });
}

function sizeNote(end, words) {
  const t = words.t.bind(words);
  const found = mating(end, words.tables);
  if (!found) return t("Not drawn to scale.");
  return t("The thread or flange head is drawn to scale, the rest is schematic. Source: {source}", { source: words.tables.sources[found[2]] });
}

function facts(content, bend, words) {
  const t = words.t.bind(words);
  const { spec } = content;
  const fact = (label, value) => ({ label, html: inBoth(value), note: null });
  const both = (label, si, us, note = null) => ({ label, html: inBoth(`${si} (${us})`), note });
  const found = [fact(t("Hose"), words.hose(spec.hose))];
  if (bend) {
    const note = t("Source: {source}", { source: words.tables.sources[bend[1]] });
    found.push(both(t("Smallest bend radius"), `${numberText(bend[0])} mm`, inchText(bend[0]), note));
  }
  const celsius = spec.max_temperature_c;
  if (celsius !== null) found.push(both(t("Highest temperature"), `${numberText(celsius)} °C`, fahrenheit(celsius)));
  const cold = coldest(spec, words.tables);
  if (cold) {
    const note = t("Source: {source}", { source: words.tables.sources[cold[1]] });
    found.push(both(t("Lowest temperature of the hose"), `${numberText(cold[0])} °C`, fahrenheit(cold[0]), note));
  }
  if (spec.fluid) found.push(fact(t("Fluid"), words.fluid(spec.fluid)));
  if (spec.covers.length) found.push(fact(t("Over the hose"), covers(spec, words)));
  if (content.built_on) found.push(fact(t("Built on"), content.built_on));
  return found;
}

const spelled = (standard, tables) => tables.fit.spellings[standard.toLowerCase().replace(/[^a-z0-9]/g, "")];

export function bendOf(hose, tables) {
  const { bends } = tables.fit;
  return bends[`${hose.standard}|${hose.dash}`] || bends[`${spelled(hose.standard, tables)}|${hose.dash}`] || null;
}

// The hose's lowest temperature with this fluid and where it stands, as tagger/trade/temperature.py finds it.
function coldest(spec, tables) {
  const { cold } = tables;
  const found = (name) => cold[`${name}|${spec.fluid}`] || cold[name];
  return found(spec.hose.standard) || found(spelled(spec.hose.standard, tables)) || null;
}

function age(content, today, words) {
  const t = words.t.bind(words);
  if (!content.built_on) return [];
  const old = (Date.parse(today) - Date.parse(content.built_on)) / 86400000 / 365.25;
  const { life, shelf } = words.tables.storage;
  const notice = (text) => [{ severity: "care", heading: t("Over its storage guidance"), words: text, href: null, href_words: null, differences: [] }];
  if (old > life[0]) return notice(t("Built on {day}, more than {years} years ago. An assembly is given {years} years in all, storage included ({source}): have it replaced, or inspected by somebody trained, before it works again.", { day: content.built_on, years: numberText(life[0]), source: words.tables.sources[life[1]] }));
  if (old > shelf[0]) return notice(t("Built on {day}, more than {years} years ago. An assembly may lie for {years} years before it is used ({source}): if it has not been in use since, have it inspected before you fit it.", { day: content.built_on, years: numberText(shelf[0]), source: words.tables.sources[shelf[1]] }));
  return [];
}

function mailto(tag, lines, words) {
  const t = words.t.bind(words);
  const subject = t("Order again: tag {number}", { number: format(tag.number) });
  return `mailto:${tag.email}?subject=${quoted(subject)}&body=${quoted(lines.replace(/\n/g, "\r\n"))}`;
}

// As Python's urllib.parse.quote writes it.
const quoted = (text) => encodeURIComponent(text).replace(/[!'()*]/g, (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`).replace(/%2F/g, "/");
