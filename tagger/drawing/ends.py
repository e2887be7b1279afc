"""The ends of an assembly from the side, as the clocking convention has them: A left, its elbow down.

Proportions are schematic; angles are true. Elbow B is turned by the clocking angle about the hose: at 0 degrees it
points down, at 90 at the viewer, at 180 up, at 270 away. What points at the viewer shows its mouth, what points away
its back, and the bend says which: a dot towards the viewer, a cross away. So no two clockings are drawn alike.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import lru_cache

from tagger.drawing.clocking import end_view
from tagger.drawing.fittings import OUTLINE, THIN, fitting
from tagger.drawing.primitives import Circle, Drawing, Item, Line, Point, Shape, Text, arrow_head, moved
from tagger.drawing.way import Look, Way, way_of
from tagger.spec import AssemblySpec, LengthBasis

_EMS_A_LETTER = 0.63  # no figure of the tag's bold face is broader
_SMALLER = 0.95  # each bore that is tried is this much of the one before
_FLAT = 0.05  # what is turned less out of the picture than this is drawn as lying in it


def ends_picture(
    spec: AssemblySpec,
    width: float = 60.0,
    height: float = 16.0,
    *,
    length_text: str = "",
    labels: tuple[str, str] = ("A", "B"),
) -> Drawing:
    """The assembly from the side: end A left, end B right, the length arrow with its basis below.

    ``length_text`` stands on the arrow, ``labels`` beside the ends; both may be empty. Of two elbows the view along
    the hose stands beside it, right, where the picture is three times as wide as it is high.
    """
    beside: list[Item] = []
    across = width
    if spec.clocking_deg is not None and width >= 3 * height:
        across = width - height - 1
        beside = moved(end_view(spec.clocking_deg, height), across + 1, 0)
    bore = height * (0.125 if _points_down(spec) else 0.15)
    text = min(2.6, height * 0.17)
    arrow_y = height - 0.5 - (text * 0.25 if length_text else 0.0)
    axis = height * (0.44 if _points_up(spec) else 0.3 if _points_down(spec) else 0.38)
    below = arrow_y - text * 1.1 - axis if length_text else height * 0.94 - axis
    arm = min(below, axis * 0.94) if _points_up(spec) else below
    left = _End(Look.of(spec.end_a), bore, arm, 0)
    right = _End(Look.of(spec.end_b), bore, arm, spec.clocking_deg or 0)
    x_a, x_b = left.reach + 0.3, across - right.reach - 0.3
    items: list[Item] = _hose(x_a, x_b, axis, bore)
    items += _placed(left.items, x_a, axis, -1)
    items += _placed(right.items, x_b, axis, 1)
    items += _end_labels(labels, (x_a, x_b), axis - bore * 1.25 - 0.45, text)
    start, stop = x_a - left.measured(spec.length_basis), x_b + right.measured(spec.length_basis)
    text = min(text, 0.9 * (stop - start) / (_EMS_A_LETTER * max(len(length_text), 1)))
    items += _length_arrow(start, stop, axis, arrow_y, length_text, text)
    return Drawing(width, height, (*items, *beside))


def end_picture(spec: AssemblySpec, which: str, width: float, height: float) -> Drawing:
    """One end by itself as it lies in the picture of the whole: A points left, B right and as it is clocked."""
    if which == "a":
        return one_end(Look.of(spec.end_a), which, 0, width, height)
    return one_end(Look.of(spec.end_b), which, spec.clocking_deg or 0, width, height)


@lru_cache(maxsize=64)
def one_end(end: Look, which: str, turn: int, width: float, height: float) -> Drawing:
    """The same of an end by its look; ``turn``: how far its elbow is turned about the hose, in degrees."""
    side = -1 if which == "a" else 1
    down = way_of(end, turn).down
    bore = min(height * (0.17 if end.is_elbow else 0.3), width * 0.16)
    while True:  # as large as it can be with a stub of hose beside it
        arm = min(height * 0.74, width * 0.62)
        one = _End(end, bore, arm, turn)
        top, right, bottom = _beyond(one.items)
        reach = max(one.reach, right)
        room = min(width / (reach + bore * 2.6), height / (bottom - top))
        if room >= 1 or bore < 0.3:
            break
        tries = int(math.log(room, _SMALLER))  # at least: the arm does not shrink with the bore
        for _ in range(max(1, tries)):
            bore *= _SMALLER
    rise = max(bore * 1.25, one.part.mouth)
    axis = height / 2 if abs(down) < 0.1 else min(rise, height / 2)
    axis = height - axis if down < -0.1 else axis
    axis = max(min(axis, height - bottom), -top)
    x = width - reach - 0.2 if side > 0 else reach + 0.2
    edge = 0.0 if side > 0 else width
    items: list[Item] = [Line(x, axis + y, edge, axis + y) for y in (-bore, bore)]
    return Drawing(width, height, (*items, *_placed(one.items, x, axis, side)))


def _beyond(items: list[Item]) -> tuple[float, float, float]:
    """How far an end's lines, shapes and circles go up, out and down from the hose's end: y, x, y."""
    corners: list[Point] = []
    for item in items:
        if isinstance(item, Line):
            corners += [(item.x1, item.y1), (item.x2, item.y2)]
        elif isinstance(item, Shape):
            corners += item.points
        elif isinstance(item, Circle):
            corners += [(item.x + item.radius, item.y + item.radius), (item.x, item.y - item.radius)]
    return min(y for _, y in corners), max(x for x, _ in corners), max(y for _, y in corners)


def _points_up(spec: AssemblySpec) -> bool:
    return spec.clocking_deg is not None and math.cos(math.radians(spec.clocking_deg)) < -0.1


def _points_down(spec: AssemblySpec) -> bool:
    return spec.end_a.is_elbow or spec.end_b.is_elbow


class _End:
    """One end, drawn with the hose's end at the origin and the outside towards +x; y down.

    ``reach``: how far the drawing goes along the hose; ``face``, ``centre``, ``tip``: distance along the
    hose from the hose's end to the sealing face, the elbow's port centreline and the thread's end.
    """

    def __init__(self, end: Look, half: float, arm: float, clocking: int) -> None:
        self.half, self.part = half, fitting(end, half)
        self.items: list[Item] = _ferrule(half)
        stem = half * 0.9
        if not end.is_elbow:
            self.items.append(_rect(0, -half * 0.5, stem, half))
            self.items += _carried(self.part.items, stem, 0.0, Way(1, 0, 0))
            self.reach = self.tip = stem + self.part.length
            self.face = self.centre = stem + self.part.seal
            return
        way = way_of(end, clocking)
        corner = stem + half * 0.9
        length = max(arm - self.part.length, half * 1.2)
        port = (corner + length * way.along, length * way.down)
        self._elbow(way, corner, port)
        bent_back = end.angle_deg >= 90
        self.tip = corner if bent_back else corner + (length + self.part.length) * way.along
        self.face = self.centre = corner if bent_back else corner + (length + self.part.seal) * way.along
        across = math.sqrt(max(0.0, 1 - way.along**2))  # how far its round mouth reaches along the hose
        self.reach = max(corner, self.tip) + self.part.mouth * max(across, 0.3)

    def _elbow(self, way: Way, corner: float, port: Point) -> None:
        """Whichever is nearer the viewer is drawn last: the mouth, or the bend's back."""
        pipe = _pipe(((0.0, 0.0), (corner, 0.0), port), self.half * 0.5)
        body = _carried(self.part.items, *port, way) if way.seen > _FLAT else []
        out = (port[0] + self.part.length * way.along, port[1] + self.part.length * way.down)
        if way.near > _FLAT:
            mouth = [
                _ellipse(*out, self.part.mouth, way, fill="white"),
                _ellipse(*out, self.part.bore, way, fill="black"),
            ]
            self.items += [*pipe, *body, *mouth]
        elif way.near < -_FLAT:
            behind = [_ellipse(*out, self.part.mouth, way, fill="white"), *body]
            back = _ellipse(*port, self.part.mouth, way, fill="white")
            self.items += [*behind, back, *pipe]
        else:
            self.items += [*pipe, *body]
        if abs(way.near) > _FLAT:
            self.items += _bend(corner, self.half * 0.75, towards=way.near > 0)

    def measured(self, basis: LengthBasis) -> float:
        if basis is LengthBasis.THREAD_END:
            return self.tip
        return self.centre if basis is LengthBasis.ELBOW_CENTRELINE else self.face


def _ferrule(half: float) -> list[Item]:
    long = half * 2.2
    items: list[Item] = [_rect(-long, -half * 1.25, long, half * 2.5)]
    for at in (0.3, 0.55, 0.8):
        items.append(Line(-long * at, -half * 1.25, -long * at, half * 1.25, THIN))
    return items


def _rect(x: float, y: float, w: float, h: float) -> Shape:
    return Shape(((x, y), (x + w, y), (x + w, y + h), (x, y + h)), fill="white", width=OUTLINE)


def _pipe(points: tuple[Point, ...], half: float) -> list[Item]:
    """A bent tube: a wide black line under a narrower white one."""
    return [
        Shape(points, width=half * 2, closed=False),
        Shape(points, width=half * 2 - 0.5, closed=False, ink="white"),
    ]


def _bend(x: float, radius: float, *, towards: bool) -> list[Item]:
    """The arrow as seen from its point (a dot: towards the viewer) or from its feathers (a cross: away)."""
    items: list[Item] = [Circle(x, 0.0, radius, fill="white", width=OUTLINE)]
    if towards:
        return [*items, Circle(x, 0.0, radius * 0.35, fill="black", width=0.0)]
    arm = radius * 0.7
    return [*items, Line(x - arm, -arm, x + arm, arm, OUTLINE), Line(x - arm, arm, x + arm, -arm, OUTLINE)]


def _ellipse(x: float, y: float, radius: float, way: Way, *, fill: str) -> Item:
    """A round mouth that faces ``way``, as it is seen."""
    if way.seen <= _FLAT:
        return Circle(x, y, radius, fill, OUTLINE)  # type: ignore[arg-type]
    ux, uy, flat = way.along / way.seen, way.down / way.seen, abs(way.near)
    points = []
    for cos, sin in _CIRCLE:
        a, b = radius * flat * cos, radius * sin
        points.append((x + a * ux - b * uy, y + a * uy + b * ux))
    return Shape(tuple(points), fill, OUTLINE)  # type: ignore[arg-type]


_CIRCLE = tuple((math.cos(turn), math.sin(turn)) for turn in (2 * math.pi * step / 20 for step in range(20)))


def _carried(items: tuple[Item, ...], x: float, y: float, way: Way) -> list[Item]:
    """The mating part moved to its port and pointing ``way``, as long as it is seen."""
    ux, uy = way.along / way.seen, way.down / way.seen

    def put(px: float, py: float) -> Point:
        return x + px * way.along - py * uy, y + px * way.down + py * ux

    return [_mapped(_flattened(item, way), put) for item in items]


def _flattened(item: Item, way: Way) -> Item:
    """A circle seen aslant is none: as a chain of points it can be mapped."""
    if not isinstance(item, Circle) or way.seen > 1 - _FLAT:
        return item
    points = tuple([(item.x + item.radius * cos, item.y + item.radius * sin) for cos, sin in _CIRCLE])
    return Shape(points, item.fill, item.width, True, item.ink)


def _placed(items: list[Item], x: float, y: float, side: int) -> list[Item]:
    """The end moved to its place; ``side`` -1 mirrors it to the left."""

    def put(px: float, py: float) -> Point:
        return x + side * px, y + py

    return [_mapped(item, put) for item in items]


def _mapped(item: Item, put: Callable[[float, float], Point]) -> Item:
    if isinstance(item, Line):
        (x1, y1), (x2, y2) = put(item.x1, item.y1), put(item.x2, item.y2)
        return Line(x1, y1, x2, y2, item.width, item.dash, item.ink)
    if isinstance(item, Shape):
        points = tuple([put(px, py) for px, py in item.points])
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
        items.append(Shape(wave, closed=False, width=THIN))
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
        Line(x1, y, x2, y, THIN),
        arrow_head(x1, y, (-1, 0), head),
        arrow_head(x2, y, (1, 0), head),
    ]
    if text:
        items.append(Text((x1 + x2) / 2, y - size * 0.3, text, size, bold=True, anchor="middle"))
    return items
