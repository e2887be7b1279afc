"""The part of an end that mates, as seen from the side: from the origin towards +x, y down.

Schematic, but what tells one family from another is true: a cone stands out or lies inside at its own angle, a
taper tapers, an O-ring lies where it seals, a nut is cut open and shows its bore.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache

from tagger.drawing.primitives import Circle, Item, Line, Shape, rectangle
from tagger.drawing.way import Look
from tagger.spec import Form
from tagger.trade.cones import Cone, cone_of, usual_seat
from tagger.trade.tables import tables

THIN = 0.2
OUTLINE = 0.25
_HEXAGON = 0.6  # of the hose's half height: a male's hexagon; its outer side is the shoulder
_THREAD = 1.6
_NUT = 1.7
_RISE = 0.4  # how far a cone's side goes in or out


@dataclass(frozen=True)
class Fitting:
    """``length`` to its tip and ``seal`` to its sealing face, from the origin; ``mouth`` and ``bore``: radii as
    seen from its end.
    """

    items: tuple[Item, ...]
    length: float
    seal: float
    mouth: float
    bore: float


@lru_cache(maxsize=1024)
def fitting(end: Look, half: float) -> Fitting:
    """The mating part of an end on a hose of ``half`` mm half height."""
    if end.form.is_male_thread:
        return _male(end, half)
    if end.form.is_female_thread:
        return _female(end, half)
    if end.form is Form.FLANGE_HEAD:
        items = (_block(0, 0.4, 0.9, half), _block(0.4, 0.9, 1.5, half))
        return Fitting(items, half * 0.9, half * 0.9, half * 1.5, half * 0.5)
    return _threadless(end.form, half)


def _block(start: float, stop: float, rise: float, half: float) -> Shape:
    """A rectangle about the axis; all in half heights of the hose."""
    return rectangle(
        half * start, -half * rise, half * (stop - start), half * rise * 2, fill="white", width=OUTLINE
    )


def _chain(
    points: list[tuple[float, float]], half: float, *, closed: bool = False, fill: bool = False
) -> Shape:
    scaled = tuple((x * half, y * half) for x, y in points)
    return Shape(scaled, "white" if fill else None, OUTLINE if closed else THIN, closed)


def _mirrored(points: list[tuple[float, float]]) -> list[tuple[float, float]]:
    return [(x, -y) for x, y in reversed(points)]


def _male(end: Look, half: float) -> Fitting:
    cone, seat = cone_of(end.connection, end.form, tables()), usual_seat(end.connection, end.form, tables())
    tip = _HEXAGON + _THREAD
    top = 0.75 if seat == "taper" else 0.9
    items: list[Item] = [
        _block(0, _HEXAGON, 1.3, half),
        _chain([(_HEXAGON, -0.95), (tip, -top), (tip, top), (_HEXAGON, 0.95)], half, closed=True, fill=True),
    ]
    for side in (-1, 1):  # the thread's teeth, as one line on either side
        teeth = []
        for step in range(1, 5):
            x, rise = _HEXAGON + _THREAD * step / 5, 0.95 + (top - 0.95) * step / 5
            teeth += [(x - 0.16, side * rise), (x, side * (rise - 0.25)), (x + 0.16, side * rise)]
        items.append(_chain(teeth, half))
    if cone and cone.outside:
        long = _RISE / math.tan(math.radians(cone.half_angle))
        nose = [(tip, -0.8), (tip + long, -0.8 + _RISE), (tip + long, 0.8 - _RISE), (tip, 0.8)]
        items.append(_chain(nose, half, closed=True, fill=True))
        tip += long
    elif cone:
        items += _funnel(cone, tip, half)
    elif seat == "face":
        items += _rings(tip - 0.3, tip, 0.45, 0.65, half)
    elif seat in ("boss", "flat"):
        items += _rings(_HEXAGON, _HEXAGON + 0.25, 0.9, 1.15, half)
    under_the_shoulder = tables().families[end.connection].tighten_by == ("stud",)
    seal = half * _HEXAGON if end.form is Form.MALE and under_the_shoulder else half * tip
    return Fitting(tuple(items), half * tip, seal, half * 0.9, half * 0.5)


def _funnel(cone: Cone, mouth: float, half: float) -> list[Item]:
    """A cone inside, open at ``mouth``: its two sides, and its ground."""
    deep = _RISE / math.tan(math.radians(cone.half_angle))
    sides = [(mouth, -0.7), (mouth - deep, -0.7 + _RISE), (mouth - deep, 0.7 - _RISE), (mouth, 0.7)]
    return [_chain(sides, half)]


def _rings(start: float, stop: float, low: float, high: float, half: float) -> list[Item]:
    """An O-ring cut through: black above and below the axis."""
    length, rise = half * (stop - start), half * (high - low)
    return [rectangle(half * start, half * y, length, rise, fill="black") for y in (-high, low)]


def _female(end: Look, half: float) -> Fitting:
    """A nut, or a fixed body, cut open: its walls, its thread's bore, and in it what seals."""
    cone, seat = cone_of(end.connection, end.form, tables()), usual_seat(end.connection, end.form, tables())
    ground = 0.35
    items: list[Item] = [_block(0, _NUT, 1.35, half)]
    wall = [(ground, 0.0), (ground, -0.9), (_NUT, -0.9)]
    items.append(_chain([*wall[1:], *_mirrored(wall[1:])], half))
    for side in (-1, 1):
        teeth = []
        for step in range(1, 4):
            x = ground + 0.3 + (_NUT - ground - 0.3) * step / 4
            teeth += [(x - 0.14, side * 0.9), (x, side * 1.12), (x + 0.14, side * 0.9)]
        items.append(_chain(teeth, half))
    if end.form is Form.FEMALE_SWIVEL:
        items += _tail(cone, ground, half)
    elif cone and not cone.outside:
        items += _funnel(cone, ground + 0.6, half)
    elif seat == "boss":
        items.append(_chain([(_NUT - 0.25, -0.9), (_NUT, -1.12)], half))
        items.append(_chain([(_NUT - 0.25, 0.9), (_NUT, 1.12)], half))
    return Fitting(tuple(items), half * _NUT, half * _NUT, half * 1.35, half * 0.9)


def _tail(cone: Cone | None, ground: float, half: float) -> list[Item]:
    """What stands in a swivel nut: a nose, a flared funnel, or a flat face."""
    if cone and cone.outside:
        long = min(_RISE / math.tan(math.radians(cone.half_angle)), 0.9)
        thin = 0.7 - long * math.tan(math.radians(cone.half_angle))
        nose = [(ground, -0.7), (ground + long, -thin), (ground + long, thin), (ground, 0.7)]
        return [_chain(nose, half, closed=True, fill=True)]
    if cone:
        long = _RISE / math.tan(math.radians(cone.half_angle))
        flare = [(ground + long, -0.8), (ground, -0.8 + _RISE), (ground, 0.8 - _RISE), (ground + long, 0.8)]
        return [_chain(flare, half)]
    return [rectangle(half * ground, -half * 0.75, half * 0.3, half * 1.5, fill="white", width=OUTLINE)]


def _threadless(form: Form, half: float) -> Fitting:
    """A banjo eye, a socket, or a plug or plain tube."""
    middle, long = half * _NUT / 2, half * _NUT
    items: tuple[Item, ...]
    if form is Form.EYE:
        outer = Circle(middle, 0.0, half * 1.35, fill="white", width=OUTLINE)
        items = (outer, Circle(middle, 0.0, half * 0.8, fill="white", width=OUTLINE))
        return Fitting(items, middle + half * 1.35, long, half * 1.35, 0.0)
    if form in (Form.COUPLER_FEMALE, Form.STAPLE_FEMALE):
        rings = (Line(x, -half * 1.35, x, half * 1.35, THIN) for x in (middle * 0.5, middle * 1.5))
        return Fitting((_block(0, _NUT, 1.35, half), *rings), long, long, half * 1.35, half * 0.9)
    items = (_block(0, 0.4, 1.3, half), _block(0.4, _NUT, 0.8, half))
    return Fitting(items, long, long, half * 0.8, half * 0.4)
