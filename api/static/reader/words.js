// A spec in plain words: the phone's side of tagger/words.py. What a phone keeps for its one language
// (catalogues, templates) and for all (tables) comes together here.

import { count } from "./figures.js";
import { translator } from "./i18n.js";
import * as phrases from "./phrases.js";
import { lbfFtOf, numberText } from "./units.js";

export { angleOf, isFlange, sizeKey } from "./phrases.js";

export class Words {
  constructor(language, tables) {
    this.language = language;
    this.tables = tables;
    this.say = translator(language.lang, language.catalogues);
  }

  t(text, values = {}) {
    const found = this.language.messages[text] || text;
    return found.replace(/\{(\w+)\}/g, (whole, name) => (name in values ? values[name] : whole));
  }

  title(end) { return `${phrases.sizeText(end, this.tables)} ${this.say(phrases.connection(end.connection))}`; }
  shape(end) { return this.say(phrases.shape(end)); }
  end(end) { return this.say(phrases.end(end, this.tables)); }
  hose(hose) { return this.say(phrases.hose(hose)); }
  fluid(fluid) { return this.say(phrases.fluid(fluid)); }
  cover(cover) { return this.say(phrases.cover(cover)); }
  basis(basis) { return this.say(phrases.basis(basis)); }
  lengthBasis(basis) { return this.say(phrases.lengthBasis(basis)); }
  length(spec) { return this.say(phrases.overallLength(spec)); }
  flats(low, high) { return this.say(phrases.flats(low, high)); }
  count(low, high) { return this.say.figure(count(low, high)); }

  clocking(spec) {
    const said = phrases.clocking(spec);
    return said ? this.say(said) : "";
  }

  pressure(bar) { return bar === null ? this.say(phrases.NOT_KNOWN) : this.say.figure({ value: bar, unit: "pressure" }); }

  torque(low, high) {
    const range = (of) => {
      if (low === null) return `≤ ${numberText(of(high))}`;
      return low === high ? numberText(of(high)) : `${numberText(of(low))}–${numberText(of(high))}`;
    };
    return this.say.decimal(`${range((nm) => nm)} N·m (${range(lbfFtOf)} lbf·ft)`);
  }

  // The torque tells the screw: only its range is on the tag. The same look-up as tagger/trade/screws.py.
  screwOf(tightening, end) {
    const tenths = (nm) => (nm === null ? null : Math.round(nm * 10));
    const { torque_min_nm: low, torque_max_nm: high } = tightening;
    const rows = this.tables.fit.screws[`${end.connection}|${phrases.sizeKey(end)}`] || [];
    const found = new Set(rows.filter((r) => tenths(r[0]) === tenths(low) && tenths(r[1]) === tenths(high)).map((r) => r[2]));
    return found.size === 1 ? [...found][0] : null;
  }

  eachScrew(torque, tightening, end) {
    const screw = this.screwOf(tightening, end);
    return screw === null ? this.say("words-torque-any-screw", { torque }) : this.say("words-torque-screw", { torque, screw });
  }

  // How to tighten one end: torque first, then the turn with its basis; never a guess.
  tighten(tightening, end) {
    const lines = [];
    if (tightening && tightening.torque_max_nm !== null) {
      const torque = this.torque(tightening.torque_min_nm, tightening.torque_max_nm);
      lines.push(phrases.isFlange(end) ? this.eachScrew(torque, tightening, end) : torque);
    }
    const counted = tightening && phrases.counted(tightening, end, this.tables);
    if (counted) lines.push(this.say(counted));
    return lines.length ? lines : [this.say(phrases.NOT_KNOWN)];
  }
}
