"""Pictures on the pages: SVG templates filled with a few figures.

The thread (or flange head) is to scale, and so is the drop of an elbow where it is given;
both ends of a page share one scale. The rest is schematic, and the page says so. Angles are
true. The phone computes the same figures in ``static/reader/picture.js``.
"""

from __future__ import annotations

import math
from typing import Any

from api.scan import dims
from api.scan.fill import fill
from api.scan.visitor import Reader
from tagger import phrases
from tagger.drawing.way import Way, way_of
from tagger.messages import Message, angle, diameter, length
from tagger.spec import AssemblySpec, Connection, End, Form
from tagger.trade.cones import cone_of, usual_seat
from tagger.trade.tables import Tables

Figures = dict[str, Any]
_BORE = 1.5875  # mm of hose bore a dash
_CARD_PX = 300
_FLAT = 0.05  # what is turned less out of the picture than this is drawn as lying in it
PLUGS = (Form.COUPLER_MALE, Form.STAPLE_MALE, Form.STANDPIPE)
SOCKETS = (Form.COUPLER_FEMALE, Form.STAPLE_FEMALE)


def end(spec: AssemblySpec, which: str, reader: Reader) -> str:
    """One end by itself, pointing right, its elbow down; both ends at one scale."""
    ends = (spec.end_a, spec.end_b)
    shown = spec.end_a if which == "end_a" else spec.end_b
    shapes = [_figures(each, spec.hose.dash, 0, reader.tables) for each in ends]
    left = max(shape["shell"] for shape in shapes) * 1.5
    right = max(shape["reach"] for shape in shapes)
    top = max(shape["high"] for shape in shapes)
    low = max(shape["low"] for shape in shapes)
    width, height = left + right, top + low
    figures = _figures(shown, spec.hose.dash, 0, reader.tables)
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
        _figures(spec.end_a, spec.hose.dash, 0, reader.tables),
        _figures(spec.end_b, spec.hose.dash, spec.clocking_deg or 0, reader.tables),
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


def clocking(spec: AssemblySpec, reader: Reader, *, clockwise: bool = False) -> str:
    """Seen along the hose from end A: A nearest, pointing down; B dashed, turned by the angle.

    ``clockwise``: as a shop that counts clockwise holds it, A pointing up and B turned by 360 minus the angle.
    """
    deg = spec.clocking_deg or 0
    turned = (360 - deg) % 360
    said = Message("scan-clocking-shop", angle=angle(turned)) if clockwise else phrases.clocking(spec)
    name = "" if said is None else reader.t(said)
    shown = {"deg": deg, "turned": turned, "up": clockwise, "apart": 25 <= deg <= 335, "name": name}
    return fill("clocking", shown)


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


Seal = tuple[bool | None, int | None, str]
"""Whether a cone stands out, its half angle in degrees, and the seat."""


def seals(tables: Tables) -> dict[str, Seal]:
    """How each form of each family seals, keyed "family|form"; None and None where it has no cone."""
    found: dict[str, Seal] = {}
    for row in tables.seats:
        family, form = Connection(row.family), Form(row.form)
        cone = cone_of(family, form, tables)
        seat = usual_seat(family, form, tables) or ""
        found[f"{family}|{form}"] = (
            (None, None, seat) if cone is None else (cone.outside, cone.half_angle, seat)
        )
    return found


def _figures(end: End, hose_dash: int, turn_deg: int, tables: Tables) -> Figures:
    """What ``end.mustache`` needs of one end; the hose's end is the origin, the outside is +x, y points down."""
    found, seal = dims.mating(end, tables), _seal_paths(end, tables)
    bore = hose_dash * _BORE
    across = found.across_mm if found else bore * 1.4
    fitting = across * seal["long"]
    corner = bore * (1.1 if end.is_elbow else 0.6)
    arm, way = _arm(end, bore, fitting), way_of(end, turn_deg, places=3)
    port = (corner + (arm - fitting) * way.along, (arm - fitting) * way.down)
    out = (corner + arm * way.along, arm * way.down)
    return {
        **_body(bore),
        **_bend(bore, corner),
        "port_x": _n(port[0]),
        "port_y": _n(port[1]),
        "part": fill("fitting", _part(end, across, port, way, seal)) if way.seen > _FLAT else "",
        "near": way.near > _FLAT,
        "away": way.near < -_FLAT,
        "mouth": _n(across * (0.68 if end.form.is_female_thread else 0.5)),
        "mouth_in": _n(across * (0.5 if end.form.is_female_thread else 0.28)),
        "round_out": _round(way, out),
        "round_port": _round(way, port),
        "face": _n(out[0]),
        **_reach(end, way, corner, out, across * 0.7, bore * 0.875),
    }


def _arm(end: End, bore: float, fitting: float) -> float:
    """From the bend to the sealing face: an elbow's drop to scale where it is given."""
    if not end.is_elbow:
        return fitting
    sine = math.sin(math.radians(end.angle_deg))
    given = end.drop_mm / sine if end.drop_mm and 0 < end.angle_deg < 180 else fitting + bore * 0.9
    return min(max(given, fitting + bore * 0.4), 8 * bore + fitting)


def _body(bore: float) -> Figures:
    """The hose and the shell on it."""
    hose_d, shell_d, shell = bore * 1.5, bore * 1.75, bore * 2.2
    return {
        "hose_long": _n(shell * 1.5),
        "hose_r": _n(hose_d / 2),
        "hose_d": _n(hose_d),
        "shell": _n(shell),
        "shell_r": _n(shell_d / 2),
        "shell_d": _n(shell_d),
        "shell_1": _n(shell * 0.3),
        "shell_2": _n(shell * 0.65),
        "tube": _n(bore * 0.9),
        "tube_in": _n(max(bore * 0.9 - 1.6, 0.2)),
    }


def _bend(bore: float, corner: float) -> Figures:
    """Where the tube bends, and the dot or cross there that says towards the viewer or away."""
    return {
        "corner": _n(corner),
        "bend": _n(bore * 0.55),
        "dot": _n(bore * 0.18),
        "cross": _n(bore * 0.38),
        "cross_1": _n(corner - bore * 0.38),
        "cross_2": _n(corner + bore * 0.38),
    }


def _part(end: End, across: float, port: tuple[float, float], way: Way, seal: Figures) -> Figures:
    """What ``fitting.mustache`` needs: the mating part at its port, pointing its way, as long as it is seen."""
    ux, uy = way.along / way.seen, way.down / way.seen
    return {
        "port": f"{_n(port[0])} {_n(port[1])}",
        "matrix": f"{_n3(way.along)} {_n3(way.down)} {_n3(-uy)} {_n3(ux)} 0 0",
        "d": _n(across),
        "male": end.form.is_male_thread,
        "nut": end.form.is_female_thread,
        "flange": end.form is Form.FLANGE_HEAD,
        "eye": end.form is Form.EYE,
        "plug": end.form in PLUGS,
        "socket": end.form in SOCKETS,
        **{key: seal[key] for key in ("taper", "solid", "open", "rings")},
    }


def _round(way: Way, at: tuple[float, float]) -> str:
    """The transform that shows a circle as a round mouth at ``at`` that faces ``way``."""
    ux, uy = (way.along / way.seen, way.down / way.seen) if way.seen > _FLAT else (1.0, 0.0)
    flat = abs(way.near)
    return f"matrix({_n3(ux * flat)} {_n3(uy * flat)} {_n3(-uy)} {_n3(ux)} {_n(at[0])} {_n(at[1])})"


def _reach(end: End, way: Way, corner: float, out: tuple[float, float], half: float, shell: float) -> Figures:
    """How far the picture goes along the hose, below its axis and above it."""
    level = math.sqrt(max(0.0, 1 - way.down**2))  # of a round mouth, how much of it stands upright
    wide = math.sqrt(max(0.0, 1 - way.along**2))
    below = max(out[1], 0.0, shell if out[1] < half else 0.0)
    above = half if not end.is_elbow else 0.0
    return {
        "reach": _n(max(corner, out[0]) + half * wide),
        "low": _n(below + half * level),
        "high": _n(max(-out[1] + half * level, above, shell)),
    }


def _seal_paths(end: End, tables: Tables) -> dict[str, Any]:
    """What seals, in the mating part's own measure (its thread's diameter is one).

    ``solid``, ``open``, ``rings``: a nose, a funnel and O-rings as SVG paths, or empty; ``long``: the part's length.
    """
    cone, seat = cone_of(end.connection, end.form, tables), usual_seat(end.connection, end.form, tables)
    solid = open_ = rings = ""
    long = 0.5 if end.form is Form.FLANGE_HEAD else 1.1 if end.form.is_male_thread else 1.0
    deep = 0.2 / math.tan(math.radians(cone.half_angle)) if cone else 0.0
    if end.form.is_male_thread and cone and cone.outside:
        long += deep
        solid = f"M1.1 -.44L{_n(long)} -.24V.24L1.1 .44z"
    elif end.form.is_male_thread and cone:
        open_ = f"M1.1 -.39L{_n(1.1 - deep)} -.19V.19L1.1 .39"
    elif end.form.is_male_thread and seat == "face":
        rings = "M.98 -.36h.12v.1h-.12zM.98 .26h.12v.1h-.12z"
    elif end.form.is_male_thread and seat in ("boss", "flat"):
        rings = "M.4 -.62h.12v.12h-.12zM.4 .5h.12v.12h-.12z"
    elif end.form is Form.FEMALE_SWIVEL and cone and cone.outside:
        nose = min(deep, 0.55)
        thin = _n(0.39 - nose * math.tan(math.radians(cone.half_angle)))
        solid = f"M.2 -.39L{_n(0.2 + nose)} -{thin}V{thin}L.2 .39z"
    elif end.form is Form.FEMALE_SWIVEL and cone:
        open_ = f"M{_n(0.2 + deep)} -.44L.2 -.24V.24L{_n(0.2 + deep)} .44"
    elif end.form is Form.FEMALE_SWIVEL:
        solid = "M.2 -.42h.15V.42H.2z"
    elif end.form is Form.FEMALE_FIXED and cone:
        open_ = f"M{_n(0.25 + deep)} -.39L.25 -.19V.19L{_n(0.25 + deep)} .39"
    return {"solid": solid, "open": open_, "rings": rings, "taper": seat == "taper", "long": long}


def _n3(value: float) -> float:
    """To a thousandth, half up, as the phone rounds."""
    rounded = math.floor(value * 1000 + 0.5) / 1000
    return int(rounded) if rounded == int(rounded) else rounded


def _n(value: float) -> float:
    """To a hundredth, half up, as the phone rounds; whole figures without a point."""
    rounded = math.floor(value * 100 + 0.5) / 100
    return int(rounded) if rounded == int(rounded) else rounded
