"""Pictures of an assembly: its two ends with the length, its clocking, a nut with flats.

Proportions are schematic; angles are true. The side view is the one the clocking convention
gives: elbow A points down, and elbow B is turned by the clocking angle about the hose and seen
from the side, so 0 degrees points down, 180 up, and 90 points straight at the viewer or away.
"""

from __future__ import annotations

import math
from itertools import pairwise

from tagger.drawing.primitives import (
    Circle,
    Drawing,
    Item,
    Line,
    Point,
    Shape,
    Text,
    arrow_head,
)
from tagger.spec import AssemblySpec, End, Form, LengthBasis
from tagger.trade.tables import tables

_THIN = 0.2
_HEXAGON = 0.6  # of the hose's half height: a male's hexagon; its outer side is the shoulder
_EMS_A_LETTER = 0.63  # no figure of the tag's bold face is broader


def ends_picture(
    spec: AssemblySpec,
    width: float = 60.0,
    height: float = 16.0,
    *,
    length_text: str = "",
    labels: tuple[str, str] = ("A", "B"),
) -> Drawing:
    """The assembly from the side: end A left, end B right, the length arrow with its basis below.

    ``length_text`` stands on the arrow, ``labels`` beside the ends; both may be empty.
    """
    bore = height * (0.125 if _points_down(spec) else 0.15)
    unit = _Unit(bore)
    text = min(2.6, height * 0.17)
    arrow_y = height - 0.5 - (text * 0.25 if length_text else 0.0)
    axis = height * (0.44 if _points_up(spec) else 0.3 if _points_down(spec) else 0.38)
    below = arrow_y - text * 1.1 - axis if length_text else height * 0.94 - axis
    arm = min(below, axis * 0.94) if _points_up(spec) else below
    left = _End(spec.end_a, unit, arm, 0)
    right = _End(spec.end_b, unit, arm, spec.clocking_deg or 0)
    x_a, x_b = left.reach + 0.3, width - right.reach - 0.3
    items: list[Item] = _hose(x_a, x_b, axis, bore)
    items += _placed(left.items, x_a, axis, -1)
    items += _placed(right.items, x_b, axis, 1)
    items += _end_labels(labels, (x_a, x_b), axis - bore * 1.25 - 0.45, text)
    start, stop = x_a - left.measured(spec.length_basis), x_b + right.measured(spec.length_basis)
    text = min(text, 0.9 * (stop - start) / (_EMS_A_LETTER * max(len(length_text), 1)))
    items += _length_arrow(start, stop, axis, arrow_y, length_text, text)
    return Drawing(width, height, tuple(items))


def _points_up(spec: AssemblySpec) -> bool:
    return spec.clocking_deg is not None and math.cos(math.radians(spec.clocking_deg)) < -0.1


def _points_down(spec: AssemblySpec) -> bool:
    return spec.end_a.is_elbow or spec.end_b.is_elbow


class _Unit:
    """Sizes of the parts of an end, from the hose's half height."""

    def __init__(self, bore: float) -> None:
        self.half = bore
        self.ferrule = bore * 2.2
        self.nut = bore * 1.7
        self.thread = bore * 1.6


class _End:
    """One end, drawn with the hose's end at the origin and the outside towards +x; y down.

    ``reach``: how far the drawing goes along the hose; ``face``, ``centre``, ``tip``: distance along the
    hose from the hose's end to the sealing face, the elbow's port centreline and the thread's end.
    """

    def __init__(self, end: End, unit: _Unit, arm: float, clocking: int) -> None:
        self.items: list[Item] = []
        half = unit.half
        self.items.append(_rect(-unit.ferrule, -half * 1.25, unit.ferrule, half * 2.5, fill="white"))
        for at in (0.3, 0.55, 0.8):
            x = -unit.ferrule * at
            self.items.append(Line(x, -half * 1.25, x, half * 1.25, _THIN))
        stem = unit.half * 0.9
        if not end.is_elbow:
            self.items.append(_rect(0, -half * 0.5, stem, half, fill="white"))
            self.items += _moved_turned(_fitting(end, unit), stem, 0.0, 0.0)
            self.reach = self.tip = stem + _fitting_length(end, unit)
            self.face = self.centre = stem + _to_the_seal(end, unit)
            return
        angle = math.radians(end.angle_deg)
        down = math.cos(math.radians(clocking))
        corner = stem + half * 0.9
        along, aside = math.cos(angle), math.sin(angle) * down
        length = max(arm - _fitting_length(end, unit), half * 1.2)
        port = (corner + length * along, length * aside)
        self.items += _pipe(((0.0, 0.0), (corner, 0.0), port), half * 0.5)
        visible = math.hypot(along, aside)
        if visible > 0.25:
            self.items += _moved_turned(_fitting(end, unit), *port, math.atan2(aside, along))
        else:
            self.items += _end_on(corner, end, half, near=math.sin(math.radians(clocking)) > 0)
        tip = corner + (length + _fitting_length(end, unit)) * along
        seal = corner + (length + _to_the_seal(end, unit)) * along
        self.tip = tip if end.angle_deg < 90 else corner
        self.face = self.centre = seal if end.angle_deg < 90 else corner
        self.reach = max(corner, tip) + half * 1.3 * abs(math.sin(angle))

    def measured(self, basis: LengthBasis) -> float:
        if basis is LengthBasis.THREAD_END:
            return self.tip
        return self.centre if basis is LengthBasis.ELBOW_CENTRELINE else self.face


def _rect(x: float, y: float, w: float, h: float, fill: str | None = None) -> Shape:
    return Shape(((x, y), (x + w, y), (x + w, y + h), (x, y + h)), fill=fill, width=0.25)  # type: ignore[arg-type]


def _fitting_length(end: End, unit: _Unit) -> float:
    if end.form.is_male_thread:
        return unit.thread + unit.half * _HEXAGON
    return unit.half * 0.9 if end.form is Form.FLANGE_HEAD else unit.nut


def _to_the_seal(end: End, unit: _Unit) -> float:
    """How far out the fitting seals: an O-ring boss stud under its shoulder, all others at their tip."""
    if end.form is Form.MALE and tables().families[end.connection].tighten_by == ("stud",):
        return _HEXAGON * unit.half
    return _fitting_length(end, unit)


def _fitting(end: End, unit: _Unit) -> list[Item]:
    """The part that mates, from the origin towards +x."""
    half, items = unit.half, list[Item]()
    if end.form.is_male_thread:
        hexagon = half * _HEXAGON
        items.append(_rect(0, -half * 1.3, hexagon, half * 2.6, fill="white"))
        items.append(_rect(hexagon, -half * 0.9, unit.thread, half * 1.8, fill="white"))
        for step in range(1, 5):
            x = hexagon + unit.thread * step / 5
            items.append(Line(x - half * 0.12, half * 0.9, x + half * 0.12, -half * 0.9, _THIN))
    elif end.form is Form.FLANGE_HEAD:
        items.append(_rect(0, -half * 0.9, half * 0.4, half * 1.8, fill="white"))
        items.append(_rect(half * 0.4, -half * 1.5, half * 0.5, half * 3.0, fill="white"))
    elif not end.form.is_female_thread:
        items += _threadless(end.form, unit)
    else:
        items.append(_rect(0, -half * 1.35, unit.nut, half * 2.7, fill="white"))
        for y in (-half * 0.68, half * 0.68):
            items.append(Line(0, y, unit.nut, y, _THIN))
        if end.form is Form.FEMALE_SWIVEL:
            x = half * 0.3
            items.append(Line(x, -half * 1.35, x, half * 1.35, _THIN))
    return items


def _threadless(form: Form, unit: _Unit) -> list[Item]:
    """A banjo eye, a socket, or a plug or plain tube, from the origin towards +x."""
    half, middle = unit.half, unit.nut / 2
    if form is Form.EYE:
        eye = Circle(middle, 0.0, half * 1.35, fill="white", width=0.25)
        return [eye, Circle(middle, 0.0, half * 0.8, fill="white", width=0.25)]
    if form in (Form.COUPLER_FEMALE, Form.STAPLE_FEMALE):
        sleeve = _rect(0, -half * 1.35, unit.nut, half * 2.7, fill="white")
        rings = [Line(x, -half * 1.35, x, half * 1.35, _THIN) for x in (middle * 0.5, middle * 1.5)]
        return [sleeve, *rings]
    shoulder = _rect(0, -half * 1.3, half * 0.4, half * 2.6, fill="white")
    return [shoulder, _rect(half * 0.4, -half * 0.8, unit.nut - half * 0.4, half * 1.6, fill="white")]


def _pipe(points: tuple[Point, ...], half: float) -> list[Item]:
    """A bent tube: a wide black line under a narrower white one."""
    return [
        Shape(points, width=half * 2, closed=False),
        Shape(points, width=half * 2 - 0.5, closed=False, ink="white"),
    ]


def _end_on(x: float, end: End, half: float, *, near: bool) -> list[Item]:
    """An elbow that points at the viewer (its bore seen) or away (its back seen)."""
    outer = half * 1.15
    items: list[Item] = [Circle(x, 0.0, outer, fill="white", width=0.25)]
    if near:
        items.append(Circle(x, 0.0, outer * 0.5, fill="black", width=0.0))
    else:
        reach = outer * 0.7
        items.append(Line(x - reach, -reach, x + reach, reach, _THIN))
        items.append(Line(x - reach, reach, x + reach, -reach, _THIN))
    return items


def _moved_turned(items: list[Item], x: float, y: float, angle: float) -> list[Item]:
    cos, sin = math.cos(angle), math.sin(angle)

    def put(px: float, py: float) -> Point:
        return x + px * cos - py * sin, y + px * sin + py * cos

    return [_mapped(item, put) for item in items]


def _placed(items: list[Item], x: float, y: float, side: int) -> list[Item]:
    """The end moved to its place; ``side`` -1 mirrors it to the left."""

    def put(px: float, py: float) -> Point:
        return x + side * px, y + py

    return [_mapped(item, put) for item in items]


def _mapped(item: Item, put) -> Item:  # type: ignore[no-untyped-def]
    if isinstance(item, Line):
        (x1, y1), (x2, y2) = put(item.x1, item.y1), put(item.x2, item.y2)
        return Line(x1, y1, x2, y2, item.width, item.dash, item.ink)
    if isinstance(item, Shape):
        points = tuple(put(px, py) for px, py in item.points)
        return Shape(points, item.fill, item.width, item.closed, item.ink)
    assert isinstance(item, Circle)
    x, y = put(item.x, item.y)
    return Circle(x, y, item.radius, item.fill, item.width, item.ink)


def _hose(x_a: float, x_b: float, axis: float, half: float) -> list[Item]:
    """The hose, with a break in the middle: it is longer than drawn."""
    middle, gap, lean = (x_a + x_b) / 2, 0.7, half * 0.5
    items: list[Item] = []
    for x1, x2 in ((x_a, middle - gap), (middle + gap, x_b)):
        items += [Line(x1, axis - half, x2, axis - half), Line(x1, axis + half, x2, axis + half)]
    for x in (middle - gap, middle + gap):
        wave = (
            (x, axis - half),
            (x + lean * 0.6, axis - half / 2),
            (x, axis),
            (x - lean * 0.6, axis + half / 2),
            (x, axis + half),
        )
        items.append(Shape(wave, closed=False, width=_THIN))
    return items


def _end_labels(labels: tuple[str, str], at: Point, y: float, size: float) -> list[Item]:
    first, second = labels
    items: list[Item] = []
    if first:
        items.append(Text(at[0], y, first, size, bold=True))
    if second:
        items.append(Text(at[1], y, second, size, bold=True, anchor="end"))
    return items


def _length_arrow(x1: float, x2: float, axis: float, y: float, text: str, size: float) -> list[Item]:
    head = min(1.6, size * 0.7)
    items: list[Item] = [
        Line(x1, axis, x1, y + 0.4, 0.12, dash=0.5),
        Line(x2, axis, x2, y + 0.4, 0.12, dash=0.5),
        Line(x1, y, x2, y, _THIN),
        arrow_head(x1, y, (-1, 0), head),
        arrow_head(x2, y, (1, 0), head),
    ]
    if text:
        items.append(Text((x1 + x2) / 2, y - size * 0.3, text, size, bold=True, anchor="middle"))
    return items


def clocking_picture(
    clocking_deg: int,
    size: float = 18.0,
    *,
    angle_text: str | None = None,
    clockwise: bool = False,
) -> Drawing:
    """The clocking convention with this angle in it, as seen along the hose from end A.

    End A is nearest, its elbow at 6 o'clock (solid); end B is behind (dashed), turned by
    ``clocking_deg`` counter-clockwise from A. With ``clockwise`` the arc runs the other way
    round, for shops that count clockwise; the elbows stand where they stand, and
    ``angle_text`` should then say that shop's figure.
    """
    middle = size / 2
    hub, text = size * 0.13, size * 0.13
    arm = size * 0.5 - text * 1.15
    turn = math.radians(clocking_deg)
    bx, by = math.sin(turn), math.cos(turn)
    items: list[Item] = []
    items += _arm(middle, (bx, by), hub, arm, size * 0.055, dashed=True)
    items += _arm(middle, (0.0, 1.0), hub, arm, size * 0.055, dashed=False)
    items.append(Circle(middle, middle, hub, fill="white", width=0.4))
    items.append(Circle(middle, middle, hub * 0.5, width=_THIN))
    items += _arc(middle, size * 0.25, clocking_deg, clockwise)
    label = arm + text * 0.6
    apart = 1.0 if 12 < clocking_deg < 348 else 1.0 - text * 1.3 / label
    items.append(Text(middle, middle + label + text * 0.36, "A", text, bold=True, anchor="middle"))
    side = 0.0 if apart == 1 else text * (0.9 if bx >= 0 else -0.9)
    items.append(
        Text(
            middle + bx * label + side,
            middle + by * label + text * 0.36,
            "B",
            text,
            bold=True,
            anchor="middle",
        )
    )
    shown = f"{clocking_deg}°" if angle_text is None else angle_text
    items += _angle_label(shown, middle, size, clocking_deg, text)
    return Drawing(size, size, tuple(items))


def _arm(middle: float, towards: Point, hub: float, reach: float, half: float, *, dashed: bool) -> list[Item]:
    (ux, uy), near = towards, hub * 0.6
    items: list[Item] = []
    corners = []
    for along, aside in ((near, half), (reach, half), (reach, -half), (near, -half)):
        corners.append((middle + ux * along - uy * aside, middle + uy * along + ux * aside))
    if not dashed:
        return [Shape(tuple(corners), fill="white", width=0.4)]
    for (x1, y1), (x2, y2) in pairwise(corners):
        items.append(Line(x1, y1, x2, y2, 0.3, dash=0.6))
    return items


def _arc(middle: float, radius: float, clocking_deg: int, clockwise: bool) -> list[Item]:
    """From elbow A (down) round to elbow B, with an arrow head at B."""
    sweep = -(360 - clocking_deg) % 360 if clockwise else clocking_deg
    sweep = sweep - 360 if clockwise and sweep else sweep
    if sweep == 0:
        return []
    steps = max(4, abs(sweep) // 10)
    points = []
    for step in range(steps + 1):
        turn = math.radians(sweep * step / steps)
        points.append((middle + radius * math.sin(turn), middle + radius * math.cos(turn)))
    end = math.radians(sweep)
    ahead = (math.cos(end), -math.sin(end)) if sweep > 0 else (-math.cos(end), math.sin(end))
    head = arrow_head(*points[-1], ahead, radius * 0.32)
    return [Shape(tuple(points[:-1]), closed=False, width=_THIN), head]


def _angle_label(text: str, middle: float, size: float, clocking_deg: int, em: float) -> list[Item]:
    """The figure in the upper corner that elbow B leaves free."""
    right = clocking_deg > 180 or clocking_deg < 10
    x, anchor = (size, "end") if right else (0.0, "start")
    return [Text(x, em * 0.9, text, em * 1.05, bold=True, anchor=anchor)]  # type: ignore[arg-type]


def nut_picture(flats_min: float | None, flats_max: float | None, size: float = 16.0) -> Drawing:
    """A nut seen from its end, marked, with the turn of ``flats`` (sixths of a turn) to tighten.

    Tightening is clockwise. The mark on nut and body is at 12 o'clock at the start; the arc runs
    from it to where the nut's mark ends, at the least and at the most turn.
    """
    middle, radius = size / 2, size * 0.3
    corners = tuple(
        (
            middle + radius * math.sin(math.radians(60 * k + 30)),
            middle + radius * math.cos(math.radians(60 * k + 30)),
        )
        for k in range(6)
    )
    items: list[Item] = [
        Shape(corners, width=0.4),
        Circle(middle, middle, radius * 0.5, width=0.3),
        Line(middle, middle - radius * 0.5, middle, middle - radius * 0.98, 0.5),
        Line(middle, middle - radius * 1.12, middle, middle - radius * 1.5, 0.5),
    ]
    turn = flats_max if flats_max is not None else flats_min
    if turn:
        items += _turn_arc(middle, radius * 1.3, turn)
        for flats in {flats_min, flats_max} - {None}:
            angle = math.radians(60 * float(flats or 0))
            inner, outer = radius * 1.15, radius * 1.45
            ux, uy = math.sin(angle), -math.cos(angle)
            items.append(
                Line(
                    middle + ux * inner, middle + uy * inner, middle + ux * outer, middle + uy * outer, _THIN
                )
            )
    return Drawing(size, size, tuple(items))


def _turn_arc(middle: float, radius: float, flats: float) -> list[Item]:
    sweep = min(60 * flats, 350)
    points = []
    steps = max(4, int(sweep // 5))
    for step in range(steps + 1):
        turn = math.radians(sweep * step / steps)
        points.append((middle + radius * math.sin(turn), middle - radius * math.cos(turn)))
    end = math.radians(sweep)
    head = arrow_head(*points[-1], (math.cos(end), math.sin(end)), radius * 0.3)
    return [Shape(tuple(points[:-1]), closed=False, width=_THIN), head]
