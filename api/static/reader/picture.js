// The figures behind the pictures, as api/scan/picture.py computes them.

import { fill } from "./fill.js";
import { length } from "./figures.js";
import * as phrases from "./phrases.js";

const BORE = 1.5875, CARD_PX = 300;
const MALES = ["male", "male_swivel"], PLUGS = ["coupler_male", "staple_male", "standpipe"], SOCKETS = ["coupler_female", "staple_female"];
const rad = (degrees) => degrees * Math.PI / 180;
const n = (value) => Math.floor(value * 100 + 0.5) / 100;

export const mating = (end, tables) => tables.mating[`${end.connection}|${phrases.sizeKey(end)}`];

export function endPicture(spec, which, kit) {
  const shapes = [spec.end_a, spec.end_b].map((end) => figures(end, spec.hose.dash, FACING, kit.tables));
  const most = (name) => Math.max(...shapes.map((shape) => shape[name]));
  const left = most("shell") * 1.5, top = most("high");
  const shown = spec[which];
  return fill(kit.templates.card, {
    left: n(-left), top: n(-top), width: n(left + most("reach")), height: n(top + most("low")),
    px: CARD_PX, name: kit.t(phrases.end(shown, kit.tables)), shape: shapeOf(figures(shown, spec.hose.dash, FACING, kit.tables), kit),
  });
}

export function assemblyPicture(spec, kit) {
  const a = figures(spec.end_a, spec.hose.dash, FACING, kit.tables);
  const b = figures(spec.end_b, spec.hose.dash, seen(spec), kit.tables);
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

export function clockingPicture(spec, kit) {
  const deg = spec.clocking_deg || 0;
  return fill(kit.templates.clocking, { deg, apart: deg >= 25 && deg <= 335, name: kit.t(phrases.clocking(spec)) });
}

export function nutPicture(low, high, name, turned, kit) {
  const least = low === null || low === high ? null : n(low * 60);
  return fill(kit.templates.nut, { turned, least, most: turned ? n(high * 60) : 0, name });
}

function shapeOf(values, kit) { return fill(kit.templates.end, values).trim(); }

const FACING = { flip: 1, endOn: false, near: false };

// How elbow B is seen from the side; near a right angle it is drawn end-on.
function seen(spec) {
  if (spec.clocking_deg === null) return FACING;
  const flip = Math.floor(Math.cos(rad(spec.clocking_deg)) * 1000 + 0.5) / 1000;
  return { flip, endOn: Math.abs(flip) < 0.4, near: Math.sin(rad(spec.clocking_deg)) > 0 };
}

function figures(end, hoseDash, { flip, endOn, near }, tables) {
  const found = mating(end, tables);
  const bore = hoseDash * BORE;
  const across = found ? found[1] : bore * 1.4;
  const hoseD = bore * 1.5, shellD = bore * 1.75, shell = bore * 2.2;
  const degrees = phrases.angleOf(end), angle = rad(degrees), elbow = degrees > 0;
  const fitting = across * (end.form === "flange_head" ? 0.5 : MALES.includes(end.form) ? 1.1 : 1);
  const stem = bore * 0.6, corner = stem + (elbow ? bore * 0.5 : 0);
  const given = end.drop_mm && degrees > 0 && degrees < 180 ? end.drop_mm / Math.sin(angle) : fitting + bore * 0.9;
  const arm = elbow ? Math.min(Math.max(given, fitting + bore * 0.4), 8 * bore + fitting) : fitting;
  let along = Math.cos(angle);
  const aside = Math.sin(angle), port = arm - fitting, half = across * 0.7;
  let reach = corner + Math.max(arm * along, 0) + (elbow ? half * aside : 0);
  const portX = corner + port * along;
  let down = (elbow ? arm * aside + half * along : half) * Math.abs(flip);
  let up = Math.max(shellD / 2, elbow ? bore / 2 : half);
  if (endOn) [down, up, reach, along] = [half, Math.max(shellD / 2, half), corner + half, 0];
  return {
    hose_long: n(shell * 1.5), hose_r: n(hoseD / 2), hose_d: n(hoseD),
    shell: n(shell), shell_r: n(shellD / 2), shell_d: n(shellD), shell_1: n(shell * 0.3), shell_2: n(shell * 0.65),
    flip: n(flip), tube: n(bore * 0.9), tube_in: n(Math.max(bore * 0.9 - 1.6, 0.2)), corner: n(corner),
    port_x: n(portX), port_y: n(port * aside), angle: degrees, d: n(across),
    male: MALES.includes(end.form), nut: end.form === "female_swivel" || end.form === "female_fixed",
    swivel: end.form === "female_swivel" || end.form === "male_swivel", flange: end.form === "flange_head",
    eye: end.form === "eye", plug: PLUGS.includes(end.form), socket: SOCKETS.includes(end.form),
    face: n(corner + arm * along), reach: n(reach),
    end_on: endOn, near, round: n(half), round_in: n(half * 0.5), cross_1: n(corner - half * 0.5), cross_2: n(corner + half * 0.5),
    low: n(Math.max(flip > 0 ? down : up, shellD / 2)), high: n(flip > 0 ? up : Math.max(down, up)),
  };
}
