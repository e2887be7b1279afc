"""Pictures on the pages: SVG templates filled with a few figures.

The thread (or flange head) is to scale, and so is the drop of an elbow where it is given;
both ends of a page share one scale. The rest is schematic, and the page says so. Angles are
true. The phone computes the same figures in ``static/reader/picture.js``.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

from api.scan import dims
from api.scan.fill import fill
from api.scan.visitor import Reader
from tagger import phrases
from tagger.messages import Message, diameter, length
from tagger.spec import AssemblySpec, End, Form
from tagger.trade.tables import Tables

Figures = dict[str, Any]
_BORE = 1.5875  # mm of hose bore a dash
_CARD_PX = 300
PLUGS = (Form.COUPLER_MALE, Form.STAPLE_MALE, Form.STANDPIPE)
SOCKETS = (Form.COUPLER_FEMALE, Form.STAPLE_FEMALE)


def end(spec: AssemblySpec, which: str, reader: Reader) -> str:
    """One end by itself, pointing right, its elbow down; both ends at one scale."""
    ends = (spec.end_a, spec.end_b)
    shown = spec.end_a if which == "end_a" else spec.end_b
    shapes = [_figures(each, spec.hose.dash, _FACING, reader.tables) for each in ends]
    left = max(shape["shell"] for shape in shapes) * 1.5
    right = max(shape["reach"] for shape in shapes)
    top = max(shape["high"] for shape in shapes)
    low = max(shape["low"] for shape in shapes)
    width, height = left + right, top + low
    figures = _figures(shown, spec.hose.dash, _FACING, reader.tables)
    return fill(
        "card",
        {
            "left": _n(-left),
            "top": _n(-top),
            "width": _n(width),
            "height": _n(height),
            "px": _CARD_PX,
            "name": reader.t(phrases.end(shown)),
            "shape": fill("end", figures),
        },
    )


def assembly(spec: AssemblySpec, reader: Reader) -> str:
    """The whole assembly from the side: A left and pointing down, B right, with the length."""
    a, b = (
        _figures(spec.end_a, spec.hose.dash, _FACING, reader.tables),
        _figures(spec.end_b, spec.hose.dash, _seen(spec), reader.tables),
    )
    hose_r = a["hose_r"]
    hose = max(a["shell"], b["shell"]) * 1.6 + hose_r * 3
    a_x = a["reach"]
    b_x = a_x + 2 * hose
    width = b_x + b["reach"]
    font = width * 0.052
    high = max(a["high"], b["high"]) + font * 1.3
    low = max(a["low"], b["low"])
    start, stop = a_x - a["face"], b_x + b["face"]
    middle = (a_x + b_x) / 2
    a["hose_long"] = b["hose_long"] = _n(hose)
    return fill(
        "assembly",
        {
            "width": _n(width),
            "top": _n(-high),
            "height": _n(high + low + font * 2.2),
            "px": 640,
            "name": reader.t(phrases.overall_length(spec)),
            "a": fill("end", a),
            "b": fill("end", b),
            "a_x": _n(a_x),
            "b_x": _n(b_x),
            "hose_r": hose_r,
            "break_1": _n(middle - hose_r * 0.3),
            "lean": _n(hose_r * 0.5),
            "gap": _n(hose_r * 0.6),
            "from": _n(start),
            "to": _n(stop),
            "tick": _n(low + font * 0.2),
            "tick_long": _n(font * 0.8),
            "arrow": _n(low + font * 0.6),
            "head": _n(font * 0.5),
            "head_r": _n(font * 0.25),
            "middle": _n(middle),
            "text_y": _n(low + font * 1.7),
            "font": _n(font),
            "length": reader.t.figure(length(spec.length_mm)),
            "a_label": _n(a_x + a["shell"] / 2),
            "b_label": _n(b_x - b["shell"] / 2),
            "label_y": _n(-a["shell_r"] - font * 0.4),
        },
    )


def clocking(spec: AssemblySpec, reader: Reader) -> str:
    """Seen along the hose from end A: A nearest, pointing down; B dashed, turned by the angle."""
    angle = spec.clocking_deg or 0
    said = phrases.clocking(spec)
    name = "" if said is None else reader.t(said)
    return fill("clocking", {"deg": angle, "apart": 25 <= angle <= 335, "name": name})


def nut(flats_min: float | None, flats_max: float, name: str, *, turned: bool) -> str:
    """A marked nut from its end: before the turn, or after it with the turn drawn round it."""
    least = None if flats_min in (None, flats_max) else _n((flats_min or 0) * 60)
    most = _n(flats_max * 60) if turned else 0
    return fill("nut", {"turned": turned, "least": least, "most": most, "name": name})


def thread(end: End, reader: Reader) -> Message:
    """The one dimension to measure, as the trade gives it."""
    found = dims.mating(end, reader.tables)
    if found is None:
        return Message("scan-thread-not_known")
    across = diameter(found.across_mm)
    if end.connection.is_flange:
        return Message("scan-thread-flange", diameter=across)
    if not found.thread:
        return Message("scan-thread-plain", diameter=across)
    return Message("scan-thread", thread=found.thread, diameter=across)


def scale(end: End, reader: Reader) -> Message:
    """What is to scale in the picture, and where the dimension comes from."""
    found = dims.mating(end, reader.tables)
    if found is None:
        return Message("scan-scale-none")
    return Message("scan-scale", source=reader.tables.where_from(found.source))


@dataclass(frozen=True)
class _Seen:
    """How an elbow is seen from the side: ``flip`` is the cosine of its turn out of the picture;
    near a right angle it is drawn end-on, ``near`` when it points at the viewer.
    """

    flip: float
    end_on: bool = False
    near: bool = False


_FACING = _Seen(1.0)


def _seen(spec: AssemblySpec) -> _Seen:
    """How elbow B is seen, with elbow A pointing down and to the left."""
    if spec.clocking_deg is None:
        return _FACING
    angle = math.radians(spec.clocking_deg)
    cos = math.floor(math.cos(angle) * 1000 + 0.5) / 1000
    return _Seen(cos, abs(cos) < 0.4, math.sin(angle) > 0)


def _figures(end: End, hose_dash: int, seen: _Seen, tables: Tables) -> Figures:
    found = dims.mating(end, tables)
    bore = hose_dash * _BORE
    across = found.across_mm if found else bore * 1.4
    hose_d, shell_d, shell = bore * 1.5, bore * 1.75, bore * 2.2
    angle = math.radians(end.angle_deg)
    fitting = across * (0.5 if end.form is Form.FLANGE_HEAD else 1.1 if end.form.is_male_thread else 1.0)
    stem = bore * 0.6
    corner = stem + (bore * 0.5 if end.is_elbow else 0)
    given = end.drop_mm / math.sin(angle) if end.drop_mm and 0 < end.angle_deg < 180 else fitting + bore * 0.9
    arm = min(max(given, fitting + bore * 0.4), 8 * bore + fitting) if end.is_elbow else fitting
    along, aside = math.cos(angle), math.sin(angle)
    port_x, port_y = corner + (arm - fitting) * along, (arm - fitting) * aside
    half = across * 0.7
    flip, reach = seen.flip, corner + max(arm * along, 0) + (half * aside if end.is_elbow else 0)
    down = (arm * aside + half * along if end.is_elbow else half) * abs(flip)
    up = max(shell_d / 2, half if not end.is_elbow else bore / 2)
    if seen.end_on:
        down, up, reach, along = half, max(shell_d / 2, half), corner + half, 0.0
    return {
        "hose_long": _n(shell * 1.5),
        "hose_r": _n(hose_d / 2),
        "hose_d": _n(hose_d),
        "shell": _n(shell),
        "shell_r": _n(shell_d / 2),
        "shell_d": _n(shell_d),
        "shell_1": _n(shell * 0.3),
        "shell_2": _n(shell * 0.65),
        "flip": _n(flip),
        "tube": _n(bore * 0.9),
        "tube_in": _n(max(bore * 0.9 - 1.6, 0.2)),
        "corner": _n(corner),
        "port_x": _n(port_x),
        "port_y": _n(port_y),
        "angle": end.angle_deg,
        "d": _n(across),
        "male": end.form.is_male_thread,
        "nut": end.form.is_female_thread,
        "swivel": end.form.swivels,
        "flange": end.form is Form.FLANGE_HEAD,
        "eye": end.form is Form.EYE,
        "plug": end.form in PLUGS,
        "socket": end.form in SOCKETS,
        "face": _n(corner + arm * along),
        "reach": _n(reach),
        "end_on": seen.end_on,
        "near": seen.near,
        "round": _n(half),
        "round_in": _n(half * 0.5),
        "cross_1": _n(corner - half * 0.5),
        "cross_2": _n(corner + half * 0.5),
        "low": _n(max(down, shell_d / 2) if flip > 0 else max(up, shell_d / 2)),
        "high": _n(up if flip > 0 else max(down, up)),
    }


def _n(value: float) -> float:
    """To a hundredth, half up, as the phone rounds; whole figures without a point."""
    rounded = math.floor(value * 100 + 0.5) / 100
    return int(rounded) if rounded == int(rounded) else rounded
