// A spec in plain words, exactly as the library's words.py says them. The words themselves
// come with the language file; only how they are put together stands here.

import { inchText, lbfFtOf, mixed, numberText, round, showLength, showPressure } from "./units.js";

const ANGLES = { straight: 0, elbow_45: 45, elbow_90: 90 };
export const angleOf = (end) => ANGLES[end.shape] ?? end.shape;
export const isFlange = (end) => end.connection.startsWith("flange_");
export const sizeKey = (end) => String(end.dash ?? end.size);

export class Words {
  constructor(language, tables) {
    this.language = language;
    this.tables = tables;
  }

  t(text, values = {}) {
    const found = this.language.messages[text] || text;
    return found.replace(/\{(\w+)\}/g, (whole, name) => (name in values ? values[name] : whole));
  }

  name(kind, key) { return this.language.names[kind][key]; }

  sizeText(end) {
    if (end.dash !== null) return `-${end.dash}`;
    return this.tables.sized_by[end.connection] === "tube" ? `${end.size} mm` : end.size;
  }

  shape(end) {
    const t = this.t.bind(this);
    if (!angleOf(end)) return t("straight");
    const elbow = t("{angle}° elbow", { angle: angleOf(end) });
    return end.drop_mm === null ? elbow : `${elbow}, ${t("drop {length}", { length: showLength(end.drop_mm) })}`;
  }

  title(end) { return `${this.sizeText(end)} ${this.name("connection", end.connection)}`; }

  end(end) {
    const t = this.t.bind(this);
    const parts = [this.title(end), this.name("form", end.form), this.shape(end)];
    if (end.material !== "carbon_steel") parts.push(this.name("material", end.material));
    if (end.hose_dash !== null) parts.push(t("jump size, tail for -{dash} hose", { dash: end.hose_dash }));
    return parts.join(", ");
  }

  hose(hose) {
    const t = this.t.bind(this);
    const edition = hose.edition ? ` ${t("edition {edition}", hose)}` : "";
    return `${hose.standard}${edition} -${hose.dash} (${inchText(hose.dash * 25.4 / 16)})`;
  }

  length(spec) { return `${showLength(spec.length_mm)}, ${this.name("length_basis", spec.length_basis)}`; }

  clocking(spec) {
    const t = this.t.bind(this);
    if (spec.clocking_deg === null) return "";
    return t("{angle}° counter-clockwise, end A nearest you pointing down", { angle: spec.clocking_deg });
  }

  pressure(bar) {
    const t = this.t.bind(this);
    return bar === null ? t("not known: use the fitting maker's figure") : showPressure(bar);
  }

  torque(low, high) {
    const range = (of) => {
      if (low === null) return `≤ ${numberText(of(high))}`;
      return low === high ? numberText(of(high)) : `${numberText(of(low))}–${numberText(of(high))}`;
    };
    return `${range((nm) => nm)} N·m (${range(lbfFtOf)} lbf·ft)`;
  }

  count(low, high) {
    const t = this.t.bind(this);
    const shown = [low, high].map((figure) => mixed(round(figure * 12), 12));
    return low === high ? shown[0] : t("{low} to {high}", { low: shown[0], high: shown[1] });
  }

  flats(low, high) {
    const t = this.t.bind(this);
    const count = this.count(low, high);
    return high <= 1 ? t("{count} flat", { count }) : t("{count} flats", { count });
  }

  turns(low, high) {
    const t = this.t.bind(this);
    const count = this.count(low / 6, high / 6);
    return high / 6 <= 1 ? t("{count} turn", { count }) : t("{count} turns", { count });
  }

  // The torque tells the screw: only its range is on the tag. The same look-up as tagger/trade/screws.py.
  screwOf(tightening, end) {
    const tenths = (nm) => (nm === null ? null : Math.round(nm * 10));
    const { torque_min_nm: low, torque_max_nm: high } = tightening;
    const rows = this.tables.fit.screws[`${end.connection}|${sizeKey(end)}`] || [];
    const found = new Set(rows.filter((r) => tenths(r[0]) === tenths(low) && tenths(r[1]) === tenths(high)).map((r) => r[2]));
    return found.size === 1 ? [...found][0] : null;
  }

  eachScrew(torque, tightening, end) {
    const t = this.t.bind(this);
    const screw = this.screwOf(tightening, end);
    if (screw === null) return t("{torque} each screw, see the maker for the screw", { torque });
    return t("{torque} each {screw} screw", { torque, screw });
  }

  tighten(tightening, end) {
    const t = this.t.bind(this);
    const lines = [];
    if (tightening && tightening.torque_max_nm !== null) {
      const torque = this.torque(tightening.torque_min_nm, tightening.torque_max_nm);
      lines.push(isFlange(end) ? this.eachScrew(torque, tightening, end) : torque);
    }
    if (tightening && tightening.flats_max !== null) {
      const { flats_min: low, flats_max: high } = tightening;
      const figure = this.tables.fit.taper.includes(end.connection) ? this.turns(low, high) : this.flats(low, high);
      lines.push(`${figure} ${this.name("basis", tightening.flats_basis)}`);
    }
    return lines.length ? lines : [t("not known: use the fitting maker's figure")];
  }
}
