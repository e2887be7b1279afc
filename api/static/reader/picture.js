// The figures behind the pictures, as api/scan/picture.py computes them.

import { fill } from "./fill.js";
import { angle, length } from "./figures.js";
import * as phrases from "./phrases.js";

const BORE = 1.5875, CARD_PX = 300, FLAT = 0.05;
const MALES = ["male", "male_swivel"], NUTS = ["female_swivel", "female_fixed"], PLUGS = ["coupler_male", "staple_male", "standpipe"], SOCKETS = ["coupler_female", "staple_female"];
const rad = (degrees) => degrees * Math.PI / 180;
const n3 = (value) => Math.floor(value * 1000 + 0.5) / 1000;
const n = (value) => Math.floor(value * 100 + 0.5) / 100;

export const mating = (end, tables) => tables.mating[`${end.connection}|${phrases.sizeKey(end)}`];

export function endPicture(spec, which, kit) {
  const shapes = [spec.end_a, spec.end_b].map((end) => figures(end, spec.hose.dash, 0, kit));
  const most = (name) => Math.max(...shapes.map((shape) => shape[name]));
  const left = most("shell") * 1.5, top = most("high");
  const shown = spec[which];
  return fill(kit.templates.card, {
    left: n(-left), top: n(-top), width: n(left + most("reach")), height: n(top + most("low")),
    px: CARD_PX, name: kit.t(phrases.end(shown, kit.tables)), shape: shapeOf(figures(shown, spec.hose.dash, 0, kit), kit),
  });
}

export function assemblyPicture(spec, kit) {
  const a = figures(spec.end_a, spec.hose.dash, 0, kit);
  const b = figures(spec.end_b, spec.hose.dash, spec.clocking_deg ?? 0, kit);
  const hoseR = a.hose_r, hose = Math.max(a.shell, b.shell) * 1.6 + hoseR * 3;
  const aX = a.reach, bX = aX + 2 * hose, width = bX + b.reach, font = width * 0.052;
  const high = Math.max(a.high, b.high) + font * 1.3, low = Math.max(a.low, b.low);
  const middle = (aX + bX) / 2;
  a.hose_long = b.hose_long = n(hose);
  return fill(kit.templates.assembly, {
    width: n(width), top: n(-high), height: n(high + low + font * 2.2), px: 640,
    name: kit.t(phrases.overallLength(spec)), a: shapeOf(a, kit), b: shapeOf(b, kit),
    a_x: n(aX), b_x: n(bX), hose_r: hoseR, break_1: n(middle - hoseR * 0.3),
    lean: n(hoseR * 0.5), gap: n(hoseR * 0.6),
    from: n(aX - a.face), to: n(bX + b.face), tick: n(low + font * 0.2), tick_long: n(font * 0.8),
    arrow: n(low + font * 0.6), head: n(font * 0.5), head_r: n(font * 0.25),
    middle: n(middle), text_y: n(low + font * 1.7), font: n(font), length: kit.t.figure(length(spec.length_mm)),
    a_label: n(aX + a.shell / 2), b_label: n(bX - b.shell / 2), label_y: n(-a.shell_r - font * 0.4),
  });
}

// The angle as a shop that counts clockwise from elbow A says it.
export function clockwise(spec) {
  return { id: "scan-clocking-shop", values: { angle: angle(turned(spec)) } };
}

const turned = (spec) => (360 - (spec.clocking_deg || 0)) % 360;

// `up`: as a shop that counts clockwise holds it, A pointing up.
export function clockingPicture(spec, kit, up = false) {
  const deg = spec.clocking_deg || 0, name = kit.t(up ? clockwise(spec) : phrases.clocking(spec));
  return fill(kit.templates.clocking, { deg, turned: turned(spec), up, apart: deg >= 25 && deg <= 335, name });
}

export function nutPicture(low, high, name, turned, kit) {
  const least = low === null || low === high ? null : n(low * 60);
  return fill(kit.templates.nut, { turned, least, most: turned ? n(high * 60) : 0, name });
}

function shapeOf(values, kit) { return fill(kit.templates.end, values).trim(); }

// Where a port points, as parts of one: along the hose, down, and towards the viewer.
function wayOf(end, turnDeg) {
  const bend = rad(phrases.angleOf(end)), turn = rad(turnDeg), aside = Math.sin(bend);
  const [along, down, near] = [Math.cos(bend), aside * Math.cos(turn), aside * Math.sin(turn)].map(n3);
  return { along, down, near, seen: Math.hypot(along, down) };
}

function figures(end, hoseDash, turnDeg, kit) {
  const { tables } = kit, found = mating(end, tables), seal = sealPaths(end, tables);
  const bore = hoseDash * BORE;
  const across = found ? found[1] : bore * 1.4;
  const hoseD = bore * 1.5, shellD = bore * 1.75, shell = bore * 2.2;
  const degrees = phrases.angleOf(end), angle = rad(degrees), elbow = degrees > 0;
  const male = MALES.includes(end.form), nut = NUTS.includes(end.form);
  const fitting = across * seal.long;
  const stem = bore * 0.6, corner = stem + (elbow ? bore * 0.5 : 0);
  const given = end.drop_mm && degrees > 0 && degrees < 180 ? end.drop_mm / Math.sin(angle) : fitting + bore * 0.9;
  const arm = elbow ? Math.min(Math.max(given, fitting + bore * 0.4), 8 * bore + fitting) : fitting;
  const { along, down, near, seen } = wayOf(end, turnDeg);
  const portX = corner + (arm - fitting) * along, portY = (arm - fitting) * down;
  const outX = corner + arm * along, outY = arm * down, half = across * 0.7;
  const level = Math.sqrt(Math.max(0, 1 - down ** 2)), wide = Math.sqrt(Math.max(0, 1 - along ** 2));
  const [ux, uy] = seen > FLAT ? [along / seen, down / seen] : [1, 0], flat = Math.abs(near);
  const round = `matrix(${n3(ux * flat)} ${n3(uy * flat)} ${n3(-uy)} ${n3(ux)}`;
  const part = {
    port: `${n(portX)} ${n(portY)}`, matrix: `${n3(along)} ${n3(down)} ${n3(-uy)} ${n3(ux)} 0 0`, d: n(across),
    male, nut, flange: end.form === "flange_head", eye: end.form === "eye",
    plug: PLUGS.includes(end.form), socket: SOCKETS.includes(end.form),
    taper: seal.taper, solid: seal.solid, open: seal.open, rings: seal.rings,
  };
  return {
    hose_long: n(shell * 1.5), hose_r: n(hoseD / 2), hose_d: n(hoseD),
    shell: n(shell), shell_r: n(shellD / 2), shell_d: n(shellD), shell_1: n(shell * 0.3), shell_2: n(shell * 0.65),
    tube: n(bore * 0.9), tube_in: n(Math.max(bore * 0.9 - 1.6, 0.2)), corner: n(corner),
    port_x: n(portX), port_y: n(portY), part: seen > FLAT ? fill(kit.templates.fitting, part) : "",
    near: near > FLAT, away: near < -FLAT,
    mouth: n(across * (nut ? 0.68 : 0.5)), mouth_in: n(across * (nut ? 0.5 : 0.28)),
    round_out: `${round} ${n(outX)} ${n(outY)})`, round_port: `${round} ${n(portX)} ${n(portY)})`,
    bend: n(bore * 0.55), dot: n(bore * 0.18), cross: n(bore * 0.38), cross_1: n(corner - bore * 0.38), cross_2: n(corner + bore * 0.38),
    face: n(outX), reach: n(Math.max(corner, outX) + half * wide),
    low: n(Math.max(outY, 0, outY < half ? shellD / 2 : 0) + half * level),
    high: n(Math.max(-outY + half * level, elbow ? 0 : half, shellD / 2)),
  };
}

// A nose, a funnel and O-rings as SVG paths in the mating part's own measure, and the part's length.
function sealPaths(end, tables) {
  const [outside, halfAngle, seat] = tables.seals[`${end.connection}|${end.form}`] ?? [null, null, ""];
  const male = MALES.includes(end.form), swivel = end.form === "female_swivel", cone = outside !== null;
  const slope = cone ? Math.tan(rad(halfAngle)) : 1, deep = cone ? 0.2 / slope : 0;
  let long = end.form === "flange_head" ? 0.5 : male ? 1.1 : 1;
  let solid = "", open = "", rings = "";
  if (male && outside) { long += deep; solid = `M1.1 -.44L${n(long)} -.24V.24L1.1 .44z`; }
  else if (male && cone) open = `M1.1 -.39L${n(1.1 - deep)} -.19V.19L1.1 .39`;
  else if (male && seat === "face") rings = "M.98 -.36h.12v.1h-.12zM.98 .26h.12v.1h-.12z";
  else if (male && (seat === "boss" || seat === "flat")) rings = "M.4 -.62h.12v.12h-.12zM.4 .5h.12v.12h-.12z";
  else if (swivel && outside) {
    const nose = Math.min(deep, 0.55), thin = n(0.39 - nose * slope);
    solid = `M.2 -.39L${n(0.2 + nose)} -${thin}V${thin}L.2 .39z`;
  } else if (swivel && cone) open = `M${n(0.2 + deep)} -.44L.2 -.24V.24L${n(0.2 + deep)} .44`;
  else if (swivel) solid = "M.2 -.42h.15V.42H.2z";
  else if (end.form === "female_fixed" && cone) open = `M${n(0.25 + deep)} -.39L.25 -.19V.19L${n(0.25 + deep)} .39`;
  return { solid, open, rings, taper: seat === "taper", long };
}
