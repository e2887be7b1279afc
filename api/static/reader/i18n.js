// Messages as text in one language: the phone's side of tagger/i18n. A message is {id, values}; a value
// is a string, a number, a day {date}, a figure {value, unit, ...}, a message, or a list of these.

import { escape } from "./fill.js";
import { showDate, shown } from "./figures.js";
import { FluentBundle } from "./fluent/bundle.js";
import { FluentResource } from "./fluent/resource.js";
import { FluentNumber, FluentType } from "./fluent/types.js";

// Private-use signs around a figure's two systems, and what they become where they are marked up.
const SI = "\ue000", US = "\ue001", END = "\ue002";
const MARKS = { [SI]: '<span class="both"><span class="si">', [US]: '</span> <span class="us">', [END]: "</span></span>" };
const NUMBER = { useGrouping: false, maximumFractionDigits: 3, roundingMode: "halfEven" };

// A message as a value of another one; SAY gives it further values, such as its case.
class Nested extends FluentType {
  constructor(message, render) {
    super(message);
    this.render = (more) => render(message, { more });
  }

  toString() { return this.render(); }
}

class Figure extends FluentType {
  constructor(figure, t, marked) {
    super(figure);
    this.shown = () => {
      const [si, us] = shown(figure, t);
      if (us === null) return si;
      return marked ? `${SI}${si}${US}${us}${END}` : `${si} (${us})`;
    };
  }

  toString() { return this.shown(); }
}

class List extends FluentType {
  toString() { return this.value.join(", "); }
}

// Fluent function: SAY($part, case: "of") renders a nested message with further values.
const say = ([value], more) => (value instanceof Nested ? value.render(more) : value);

// Fluent function: LIST($items) is "a, b and c"; LIST($items, style: "or") is "a, b or c".
const join = (language) => ([value], { style }) => {
  if (!(value instanceof List)) return value;
  return new Intl.ListFormat(language, { type: String(style) === "or" ? "disjunction" : "conjunction" }).format(value.value);
};

// What renders messages of one language: t(message), or t(id, values). `catalogues`: the .ftl texts kept.
export function translator(language, catalogues) {
  const bundle = new FluentBundle(language, { functions: { SAY: say, LIST: join(language) }, useIsolating: false });
  for (const text of catalogues) bundle.addResource(new FluentResource(text));

  function render(message, { attribute = null, marked = false, more = {} } = {}) {
    const found = bundle.getMessage(message.id);
    const pattern = attribute ? found?.attributes[attribute] : found?.value;
    if (!pattern) return attribute ? "" : message.id;
    const given = Object.entries(message.values ?? {}).map(([name, value]) => [name, fluentValue(value, marked)]);
    return bundle.formatPattern(pattern, { case: "", ...Object.fromEntries(given), ...more }, []);
  }

  function fluentValue(value, marked) {
    if (Array.isArray(value)) return new List(value.map((item) => textOf(fluentValue(item, marked))));
    if (typeof value === "number") return new FluentNumber(value, NUMBER);
    if (typeof value !== "object") return String(value);
    if ("id" in value) return new Nested(value, (message, options) => render(message, { marked, ...options }));
    if ("date" in value) return showDate(value.date, t);
    return new Figure(value, t, marked);
  }

  function textOf(value) {
    return value instanceof FluentNumber ? new Intl.NumberFormat(language, NUMBER).format(value.value) : String(value);
  }

  const t = (message, values) => render(asMessage(message, values));
  t.language = language;
  t.has = (id) => bundle.hasMessage(id);
  // What to do about it: the message's .mend; empty where it has none.
  t.mend = (message) => render(message, { attribute: "mend" });
  // The text as HTML, escaped; each figure marked so that the page can put the reader's system first.
  t.html = (message, values) => escape(render(asMessage(message, values), { marked: true })).replace(/[\ue000-\ue002]/g, (sign) => MARKS[sign]);
  // A figure alone, in both systems: "207 bar (3000 psi)".
  t.figure = (figure) => new Figure(figure, t, false).toString();
  // A figure's text with the decimal sign of the language.
  t.decimal = (text) => text.replaceAll(".", t("words-decimal-sign"));
  return t;
}

const asMessage = (message, values) => (typeof message === "string" ? { id: message, values } : message);
