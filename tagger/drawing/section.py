"""The two halves of a joint cut along their axis and drawn apart: what a wall chart and a booklet show of a family.

Schematic, but what tells one family from another is true: a cone stands out or lies inside at its own angle, a
taper tapers, an O-ring lies where it seals. Where the joint seals is drawn black; cut metal is hatched.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from functools import lru_cache

from tagger.drawing.primitives import Circle, Drawing, Item, Line, Point, Shape
from tagger.spec import Connection, Form
from tagger.trade.cones import Cone, cone_of, usual_seat
from tagger.trade.tables import Tables, tables

_BORE, _THREAD, _ROOT = 4.0, 10.0, 8.9  # radii, in a drawing whose thread has a radius of 10
_STEM, _TAPER = 7.0, 1.3  # the taper is drawn steeper than 1 in 16, or nobody would see it
_THIN, _SEAL, _HATCH = 0.15, 0.7, 1.1  # mm on paper: lines, where it seals, between two lines of a hatching
_GAP = 3.0


class _Half:
    """One half of a joint, its own units: outlines of cut metal, sealing lines, O-rings, and edges behind the cut."""

    def __init__(self) -> None:
        self.cut: list[tuple[Point, ...]] = []
        self.seals: list[tuple[Point, ...]] = []
        self.rings: list[tuple[float, float, float]] = []
        self.washers: list[tuple[Point, ...]] = []
        self.edges: list[tuple[Point, ...]] = []
        self.holes: list[tuple[float, float, float]] = []

    def both(self, points: Sequence[Point]) -> None:
        """An outline above the axis, and its mirror image below."""
        self.cut += [tuple(points), tuple((x, -y) for x, y in points)]

    def sealing(self, *points: Point) -> None:
        self.seals += [points, tuple((x, -y) for x, y in points)]

    def ring(self, x: float, y: float, radius: float) -> None:
        self.rings += [(x, y, radius), (x, -y, radius)]

    def washer(self, x1: float, x2: float, low: float, high: float) -> None:
        for side in (-1, 1):
            self.washers.append(((x1, side * low), (x2, side * low), (x2, side * high), (x1, side * high)))

    def across(self, x: float, rise: float) -> None:
        """An edge that is seen behind the cut."""
        self.edges.append(((x, -rise), (x, rise)))

    def reach(self) -> tuple[float, float]:
        found = [x for outline in self.cut for x, _ in outline]
        return min(found), max(found)


def joint_section(family: Connection, width: float, height: float, known: Tables | None = None) -> Drawing:
    """The joint of a family on ``width`` by ``height`` mm: the half that goes in left, the half that takes it right."""
    return _drawn(family, width, height, known or tables())


@lru_cache(maxsize=256)
def _drawn(family: Connection, width: float, height: float, known: Tables) -> Drawing:
    left, right = _halves(family, known)
    (start, stop), (begin, end) = left.reach(), right.reach()
    gap = 0.0 if right.cut == left.cut else _GAP
    shift = stop + gap - begin
    halves = [(left, 0.0, 1)] if right is left else [(left, 0.0, 1), (right, shift, -1)]
    across = (end + shift if right is not left else stop) - start
    rise = max(abs(y) for half, _, _ in halves for outline in half.cut for _, y in outline)
    scale = min((width - 0.6) / across, (height - 0.6) / (2 * rise))
    x0, y0 = (width - across * scale) / 2 - start * scale, height / 2
    items: list[Item] = []
    for half, dx, lean in halves:
        items += _painted(half, x0 + dx * scale, y0, scale, lean)
    return Drawing(width, height, tuple(items))


def _painted(half: _Half, x0: float, y0: float, scale: float, lean: int) -> list[Item]:
    def put(points: Iterable[Point]) -> tuple[Point, ...]:
        return tuple((x0 + x * scale, y0 + y * scale) for x, y in points)

    items: list[Item] = [Shape(put(line), width=_THIN, closed=False) for line in half.edges]
    for outline in map(put, half.cut):
        items += [Shape(outline, "white", 0.0), *_hatched(outline, lean), Shape(outline, None, 0.25)]
    items += [Circle(x0 + x * scale, y0 + y * scale, r * scale, "white", 0.25) for x, y, r in half.holes]
    items += [Shape(put(line), width=_SEAL, closed=False) for line in half.seals]
    items += [Shape(put(block), "black", 0.0) for block in half.washers]
    return items + [Circle(x0 + x * scale, y0 + y * scale, r * scale, "black", 0.0) for x, y, r in half.rings]


def _hatched(outline: Sequence[Point], lean: int) -> list[Item]:
    """Lines at 45 degrees inside an outline; ``lean`` 1 or -1: which way."""
    turned = [(x - lean * y, x + lean * y) for x, y in outline]  # along u a hatching line is straight
    step = _HATCH * math.sqrt(2)
    items: list[Item] = []
    u = math.ceil(min(u for u, _ in turned) / step) * step
    while u < max(u for u, _ in turned):
        hits = sorted(_crossings(turned, u))
        for low, high in zip(hits[::2], hits[1::2], strict=False):
            ends = [((u + v) / 2, lean * (v - u) / 2) for v in (low, high)]
            items.append(Line(*ends[0], *ends[1], 0.1))
        u += step
    return items


def _crossings(turned: Sequence[Point], u: float) -> Iterable[float]:
    for (u1, v1), (u2, v2) in zip(turned, [*turned[1:], turned[0]], strict=True):
        if (u1 <= u) != (u2 <= u):
            yield v1 + (v2 - v1) * (u - u1) / (u2 - u1)


def _halves(family: Connection, known: Tables) -> tuple[_Half, _Half]:
    forms = [Form(form) for form in known.families[family].forms]
    male = next((form for form in forms if form.is_male_thread), None)
    female = next((form for form in forms if form.is_female_thread), None)
    if male and female:
        return _male(family, male, known), _female(family, female, known)
    if forms[0] is Form.COUPLER_MALE:
        ends = (row for (of, _), rows in known.plain_ends.items() if of is family for row in rows)
        return _coupler(flush=any(row.what == "flat_nose" for row in ends))
    threadless = {
        Form.FLANGE_HEAD: _flange,
        Form.EYE: _banjo,
        Form.STANDPIPE: _standpipe,
        Form.STAPLE_MALE: _staple,
    }
    return threadless[forms[0]]()


def _teeth(start: float, stop: float, low: float, high: float, drop: float = 0.0) -> list[Point]:
    """A thread's flanks from ``start`` to ``stop``, which rise from ``low`` to ``high``; ``drop``: how far they taper."""
    count = 7
    points: list[Point] = []
    for step in range(count):
        for part, rise in ((0.0, low), (0.5, high)):
            along = (step + part) / count
            points.append((start + (stop - start) * along, rise - drop * along))
    return [*points, (stop, low - drop)]


def _male(family: Connection, form: Form, known: Tables) -> _Half:
    """A body with its thread: from the hexagon to its front, which is at x = 9 but for a nose."""
    cone, seat = cone_of(family, form, known), usual_seat(family, form, known)
    half, drop = _Half(), _TAPER if seat == "taper" else 0.0
    thread = _teeth(-3, 9, _ROOT, _THREAD, drop)
    back = [(-14, _BORE), (-14, _STEM), (-8, _STEM), (-8, 12.5), (-3, 12.5)]
    front = _front(half, cone, seat, _ROOT - drop)
    half.both([*back, *thread, *front])
    if cone and not cone.outside:
        half.across(front[0][0], front[0][1])
    half.across(front[-1][0], _BORE)
    if seat == "taper":
        half.sealing(*thread)
    elif seat == "boss":
        half.ring(-1.5, _THREAD + 0.6, 1.5)
    elif seat == "flat":
        half.washer(-3, -1.6, _THREAD + 0.2, 12.5)
    return half


def _front(half: _Half, cone: Cone | None, seat: str | None, rise: float) -> list[Point]:
    """From the thread's end over the front to the bore, and what seals there."""
    if cone and cone.outside:
        tip, low = _slope(cone, rise - 0.6, 7.0)
        half.sealing((9, rise - 0.6), (9 + tip, low))
        return [(9, rise - 0.6), (9 + tip, low), (9 + tip, _BORE)]
    if cone:
        deep, low = _slope(cone, 8.0, 8.0)
        half.sealing((9, 8.0), (9 - deep, low))
        return [(9, 8.0), (9 - deep, low), (9 - deep, _BORE)]
    if seat == "face":
        half.ring(8.1, 6.3, 1.2)
        return [(9, 7.5), (7, 7.5), (7, 5.1), (9, 5.1), (9, _BORE)]
    return [(9, _BORE)]


def _slope(cone: Cone, rise: float, longest: float) -> Point:
    """How long a cone is drawn, and the radius where it ends, from the radius ``rise`` down to the bore."""
    slope = math.tan(math.radians(cone.half_angle))
    long = min((rise - _BORE) / slope, longest)
    return long, rise - long * slope


def _female(family: Connection, form: Form, known: Tables) -> _Half:
    """A nut on its tail, or a fixed body, its mouth at x = 0."""
    cone, seat = cone_of(family, form, known), usual_seat(family, form, known)
    half = _Half()
    if form is Form.FEMALE_SWIVEL:
        inner = _teeth(0, 9, _THREAD, _ROOT)
        half.both([(0, 13.5), *inner, (9, _THREAD), (13, _THREAD), (13, 7.4), (16, 7.4), (16, 13.5)])
        _tail(half, cone)
        return half
    drop = _TAPER if seat == "taper" else 0.0
    inner = _teeth(2.4 if seat == "boss" else 0, 11, _THREAD, _ROOT, drop)
    mouth: list[Point] = [(0, 14)]
    if seat == "boss":
        mouth.append((0, 12.2))
        half.sealing((0, 12.2), inner[0])
    elif seat == "flat":
        half.sealing((0, 12.5), (0, _THREAD + 0.2))
    elif seat == "taper":
        half.sealing(*inner)
    half.both(
        [
            *mouth,
            *inner,
            (11, _THREAD - drop),
            (14, _THREAD - drop),
            *_ground(half, cone),
            (24, _BORE),
            (24, 14),
        ]
    )
    return half


def _ground(half: _Half, cone: Cone | None) -> list[Point]:
    """The ground of a fixed female's thread down to its bore: flat, a funnel, or a nose that stands in it."""
    if cone and cone.outside:
        long, low = _slope(cone, 8.0, 6.0)
        half.sealing((14, 8.0), (14 - long, low))
        return [(14, 8.0), (14 - long, low), (14 - long, _BORE)]
    if cone:
        deep, low = _slope(cone, 8.4, 8.0)
        half.sealing((14, 8.4), (14 + deep, low))
        return [(14, 8.4), (14 + deep, low), (14 + deep, _BORE)]
    return [(14, _BORE)]


def _tail(half: _Half, cone: Cone | None) -> None:
    """What a swivel nut turns on: a nose, a funnel, or a flat face at its front."""
    back = [(12.6, 9.2), (12.6, _STEM), (24, _STEM), (24, _BORE)]
    if cone and cone.outside:
        long, low = _slope(cone, 8.2, 7.5)
        half.both([(9.5 - long, _BORE), (9.5 - long, low), (9.5, 8.2), (9.5, 9.2), *back])
        half.sealing((9.5 - long, low), (9.5, 8.2))
    elif cone:
        deep, low = _slope(cone, 8.2, 8.0)
        half.both([(6.5 + deep, _BORE), (6.5 + deep, low), (6.5, 8.2), (6.5, 8.7), (9.6, 9.2), *back])
        half.sealing((6.5 + deep, low), (6.5, 8.2))
    else:
        half.both([(7.5, _BORE), (7.5, 8.2), (9.6, 9.2), *back])
        half.sealing((7.5, 5.0), (7.5, 8.0))


def _flange() -> tuple[_Half, _Half]:
    """A flange head with its O-ring under its clamp, and the flat port."""
    left, right = _Half(), _Half()
    groove = [(4, 9.6), (2, 9.6), (2, 7.2), (4, 7.2)]
    left.both([(-14, _BORE), (-14, _STEM), (-1, _STEM), (-1, 12), (4, 12), *groove, (4, _BORE)])
    left.ring(3.0, 8.4, 1.2)
    left.both([(-5, 7.6), (-1.3, 7.6), (-1.3, 12.3), (3.4, 12.3), (3.4, 20), (-5, 20)])
    left.holes += [(-0.8, side * 16.2, 1.7) for side in (-1, 1)]
    right.both([(0, _BORE), (0, 20), (14, 20), (14, _BORE)])
    right.sealing((0, 7.0), (0, 9.8))
    return left, right


def _banjo() -> tuple[_Half, _Half]:
    """The eye with a ring on either side, and the bolt that goes through it; the axis is the bolt's."""
    left, right = _Half(), _Half()
    left.both([(-6, 8.4), (-6, 14), (6, 14), (6, 8.4)])
    left.washer(-7.6, -6, 8.4, 13)
    left.washer(6, 7.6, 8.4, 13)
    thread = _teeth(4, 15, _ROOT - 1.6, _THREAD - 1.8)
    right.cut.append(
        ((-14, -12), (-9, -12), (-9, -7.6), (4, -7.6), *[(x, -y) for x, y in thread], *reversed(thread), (4, 7.6), (-9, 7.6), (-9, 12), (-14, 12))
    )  # fmt: skip
    return left, right


def _standpipe() -> tuple[_Half, _Half]:
    """A plain tube with its cutting ring and nut, and the 24 degree cone that takes it."""
    left, right = _Half(), _Half()
    left.both([(-16, 5), (-16, 7.4), (10, 7.4), (10, 5)])
    left.both(
        [(-12, 7.8), (-12, 13.5), (4, 13.5), *reversed(_teeth(-4, 4, _THREAD, _ROOT)), (-4, 9.4), (-8, 7.8)]
    )
    left.washers += [((-4, s * 7.5), (2, s * 7.5), (2, s * 8.1), (-4, s * 9.2)) for s in (-1, 1)]
    slope = math.tan(math.radians(12))
    right.both(
        [
            (0, 7.5 + 7 * slope),
            (7, 7.5),
            (9, 7.5),
            (9, 5),
            (22, 5),
            (22, 12.5),
            (12, 12.5),
            *reversed(_teeth(0, 12, _ROOT, _THREAD)),
        ]
    )
    right.sealing((0, 7.5 + 7 * slope), (7, 7.5))
    return left, right


def _staple() -> tuple[_Half, _Half]:
    """A spigot with its O-ring and the groove for the staple, and the socket with the staple's holes."""
    left, right = _Half(), _Half()
    groove = [(7, 8), (7, 6.2), (9.6, 6.2), (9.6, 8)]
    staple = [(0, 8), (0, 6.6), (3, 6.6), (3, 8)]
    left.both(
        [
            (-14, _BORE),
            (-14, _STEM),
            (-6, _STEM),
            (-6, 12),
            (-4, 12),
            (-4, 8),
            *staple,
            *groove,
            (12, 8),
            (12, _BORE),
        ]
    )
    left.ring(8.3, 7.3, 1.2)
    right.both([(0, 8.3), (0, 13.5), (24, 13.5), (24, _BORE), (17, _BORE), (17, 8.3)])
    right.sealing((11, 8.3), (14, 8.3))
    right.holes += [(5.5, side * 8.6, 1.4) for side in (-1, 1)]
    return left, right


def _coupler(*, flush: bool) -> tuple[_Half, _Half]:
    """A plug with the groove that the balls of the socket hold; ``flush``: valves close both level with their faces."""
    left, right = _Half(), _Half()
    left.both([(-14, _BORE), (-14, 11), (-5, 11), (-5, 9.5), (-1, 9.5), (0, 8.2), (2, 8.2), (3, 9.5), (5, 9.5), (6, 7), (14, 7), (14, _BORE)])  # fmt: skip
    right.both([(0, 9.8), (0, 12), (22, 12), (22, _BORE), (17, _BORE), (17, 7.3), (8, 7.3), (7, 9.8)])
    right.both([(1, 12.4), (1, 15), (14, 15), (14, 12.4)])
    right.ring(12.5, 7.5, 1.0)
    right.holes += [(3.2, side * 10.6, 1.2) for side in (-1, 1)]
    if flush:
        left.cut.append(((11, -_BORE), (14, -_BORE), (14, _BORE), (11, _BORE)))
        right.cut.append(((9, -7.0), (12, -7.0), (12, 7.0), (9, 7.0)))
    return left, right
