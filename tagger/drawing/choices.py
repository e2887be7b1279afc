"""A picture of each answer to a question of guided identify: what to look at is black, or marked by an arrow.

From the side, as the ends of an assembly are drawn (``fittings.py``); the angle of a cone is true. 34 by 20 mm.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import cache

from tagger.drawing.fittings import OUTLINE, THIN, fitting
from tagger.drawing.primitives import (
    Circle,
    Drawing,
    Item,
    Line,
    Shape,
    arrow_head,
    moved,
    rectangle,
)
from tagger.drawing.way import Look
from tagger.spec import Connection, Form
from tagger.trade.cones import HALF_ANGLES

WIDTH, HEIGHT = 34.0, 20.0
_AXIS = HEIGHT / 2
_HALF = 5.0  # mm half height of the hose
_STEM = 7.0
_PLAIN = Connection("other")  # a thread, and nothing that seals
_THREADLESS = {
    Form.FLANGE_HEAD: "flange_code61",
    Form.EYE: "banjo_metric",
    Form.COUPLER_MALE: "qd_iso7241_a",
    Form.COUPLER_FEMALE: "qd_iso7241_a",
    Form.STAPLE_MALE: "staple",
    Form.STAPLE_FEMALE: "staple",
}


@cache
def choice(step: str, answer: str, side: str = "") -> Drawing:
    """The picture of an ``answer`` to a question; ``side``: where the thread of the end is, as far as it is known."""
    return Drawing(WIDTH, HEIGHT, tuple(_DRAWN[step](answer, side)))


def _end(family: str, form: Form) -> list[Item]:
    part = fitting(Look(Connection(family), form, 0, is_elbow=False), _HALF)
    stem = rectangle(1, _AXIS - _HALF * 0.5, _STEM, _HALF, fill="white", width=OUTLINE)
    return [stem, *moved(part.items, 1 + _STEM, _AXIS)]


def _side(answer: str, _: str) -> list[Item]:
    if answer == "none":
        return _end("flange_code61", Form.FLANGE_HEAD)
    if answer == "male":
        return [*_end(_PLAIN, Form.MALE), *_marked(12.5, 18.5, _HALF * 0.95, away=1)]
    return [*_end(_PLAIN, Form.FEMALE_FIXED), *_marked(11, 15.5, _HALF * 0.9, away=-1)]


def _marked(start: float, stop: float, rise: float, *, away: int) -> list[Item]:
    """Two arrows that point at a thread: from outside, or from the axis."""
    middle, tip, back = (start + stop) / 2, rise + away * 0.4, rise + away * 3.2
    items: list[Item] = []
    for up in (-1, 1):
        items.append(Line(middle, _AXIS + up * back, middle, _AXIS + up * tip, 0.7))
        items.append(arrow_head(middle, _AXIS + up * tip, (0, -up * away), 1.8))
    return items


def _form(answer: str, _: str) -> list[Item]:
    form = Form(answer)
    if form is Form.STANDPIPE:
        return [
            rectangle(1, _AXIS - _HALF * 0.5, _STEM, _HALF, fill="white", width=OUTLINE),
            rectangle(8, _AXIS - _HALF * 0.75, 22, _HALF * 1.5, fill="white", width=OUTLINE),
        ]
    items = _end(_THREADLESS[form], form)
    if form in (Form.STAPLE_MALE, Form.STAPLE_FEMALE):
        rise = _HALF * (0.8 if form is Form.STAPLE_MALE else 1.35)
        for up in (-1, 1):  # the two legs of the staple, cut through
            items.append(rectangle(12.5, _AXIS + up * rise - 0.8, 1.6, 1.6, fill="black"))
    return items


def _swivels(answer: str, side: str) -> list[Item]:
    """The threaded part with a turn about it, or with that struck out."""
    forms = (Form.MALE_SWIVEL, Form.MALE) if side == "male" else (Form.FEMALE_SWIVEL, Form.FEMALE_FIXED)
    items = _end(_PLAIN, forms[0] if answer == "yes" else forms[1])
    x, wide, tall = 26.0, 3.0, 7.0
    arc = [
        (x + wide * math.cos(math.radians(turn)), _AXIS + tall * math.sin(math.radians(turn)))
        for turn in range(-125, 126, 10)
    ]
    items += [
        Shape(tuple(arc), width=0.8, closed=False),
        arrow_head(arc[-1][0] - 1, arc[-1][1] - 1, (-1.0, -0.9), 3.0),
    ]
    if answer == "no":
        items += [Line(x - 3, _AXIS + turn * 6, x + 6, _AXIS - turn * 6, 0.9) for turn in (-1, 1)]
    return items


def _shape(answer: str, _: str) -> list[Item]:
    """A male thread between two straight lines: as far apart at both ends, or nearer at its tip."""
    start, stop, rise = 11.0, 23.0, 6.0
    fall = 1.6 if answer == "taper" else 0.0
    body = ((start, -rise), (stop, fall - rise), (stop, rise - fall), (start, rise))
    items: list[Item] = [
        rectangle(1, _AXIS - _HALF * 0.5, _STEM, _HALF, fill="white", width=OUTLINE),
        rectangle(8, _AXIS - 8.5, 3, 17, fill="white", width=OUTLINE),
        Shape(_placed(body), "white", OUTLINE),
    ]
    for up in (-1, 1):
        teeth = []
        for step in range(9):
            x = start + step * 1.5
            deep = rise - fall * (x - start) / (stop - start) - (1.1 if step % 2 else 0.0)
            teeth.append((x, up * deep))
        items.append(Shape(_placed(tuple(teeth)), width=0.4, closed=False))
        beyond = rise - fall * (32 - start) / (stop - start)
        items.append(Line(start, _AXIS + up * (rise + 0.7), 32, _AXIS + up * (beyond + 0.7), 0.6, dash=1.2))
    return items


def _seals(answer: str, side: str) -> list[Item]:
    if side == "female":
        return _sealed_inside(answer)
    if answer == "cone":
        return _pair(HALF_ANGLES["37"])
    if answer == "face":
        return _end("orfs", Form.MALE)
    if answer == "thread":
        return _shape("taper", side)
    items = _end(_PLAIN, Form.MALE)
    shoulder = 1 + _STEM + _HALF * 0.6
    for up in (-1, 1):
        if answer == "boss":
            items.append(
                Circle(shoulder + 1, _AXIS + up * (_HALF * 0.95 + 0.3), 1.0, fill="black", width=0.0)
            )
        else:  # a washer, wider than the hexagon
            items.append(_bar(shoulder, 1.7, _HALF * 0.98, _HALF * 1.55, up))
    return items


def _sealed_inside(answer: str) -> list[Item]:
    """What an end with a thread inside seals by, black: its cone, its flat face, the edge of its mouth, its thread."""
    ground, mouth, bore = 11.0, 24.0, 5.4
    items: list[Item] = [
        rectangle(1, _AXIS - _HALF * 0.5, _STEM, _HALF, fill="white", width=OUTLINE),
        rectangle(8, _AXIS - 8.5, mouth - 8, 17, fill="white", width=OUTLINE),
        Shape(
            _placed(((mouth, -bore), (ground, -bore), (ground, bore), (mouth, bore))),
            None,
            THIN,
            closed=False,
        ),
    ]
    fall = 1.2 if answer == "thread" else 0.0
    for up in (-1, 1):
        teeth = tuple(
            (14 + step * 1.25, up * (bore + 1.2 * (step % 2) - fall * (8 - step) / 8)) for step in range(9)
        )
        items.append(Shape(_placed(teeth), width=1.0 if answer == "thread" else 0.3, closed=False))
        if answer == "boss":
            slope = ((mouth - 2.2, up * bore), (mouth, up * (bore + 2)))
            items.append(Shape(_placed(slope), width=1.1, closed=False))
        if answer == "flat":
            items.append(_bar(mouth + 0.4, 1.7, 2.6, 8.5, up))
    if answer == "cone":
        items.append(Shape(_placed(((ground, -3.6), (18, -2.2), (18, 2.2), (ground, 3.6))), "white", OUTLINE))
        for up in (-1, 1):
            items.append(Shape(_placed(((ground, up * 3.6), (18, up * 2.2))), width=1.1, closed=False))
    if answer == "face":
        items.append(rectangle(ground, _AXIS - 4.4, 2.2, 8.8, fill="white", width=OUTLINE))
        items.append(Line(ground + 2.4, _AXIS - 4.4, ground + 2.4, _AXIS + 4.4, 1.1))
    return items


def _bar(x: float, wide: float, low: float, high: float, up: int) -> Shape:
    """A black bar from ``low`` to ``high`` above the axis, or below it."""
    return rectangle(x, _AXIS - high if up < 0 else _AXIS + low, wide, high - low, fill="black")


def _cone(answer: str, side: str) -> list[Item]:
    """The cone with its two sides black: a nose or a funnel, of a male, in a nut, or of neither."""
    nose = answer == "outside"
    deep = 3.2 / math.tan(math.radians(37))
    if side == "female":
        items = _sealed_inside("")
        start = 11.0
    else:
        items = _end(_PLAIN, Form.MALE)
        start = 19.0
    low, high = 1.2, 4.4
    first, last = (high, low) if nose else (low, high)
    if not nose and side != "female":
        start -= deep
    sides = ((start, first), (start + deep, last), (start + deep, -last), (start, -first))
    items.append(Shape(_placed(sides), "white", OUTLINE))
    for up in (-1, 1):
        items.append(
            Shape(_placed(((start, up * first), (start + deep, up * last))), width=1.2, closed=False)
        )
    return items


def _seat(answer: str, _: str) -> list[Item]:
    return _pair(HALF_ANGLES[answer])


def _pair(half_angle: int) -> list[Item]:
    """A nose and the funnel it goes into, cut through, with the sides that touch drawn black."""
    rise = 3.6 if half_angle > 20 else 1.6
    deep = rise / math.tan(math.radians(half_angle))
    low, high = 6.2 - rise, 6.2
    tip = 6.0
    mouth = tip + deep + 3.5
    nose = ((1, -high), (tip, -high), (tip + deep, -low), (tip + deep, low), (tip, high), (1, high))
    items: list[Item] = [Shape(_placed(nose), "white", OUTLINE)]
    for up in (-1, 1):
        wall = ((mouth, up * 9), (mouth, up * high), (mouth + deep, up * low), (33, up * low), (33, up * 9))
        items.append(Shape(_placed(wall), "white", OUTLINE))
        items.append(Shape(_placed(((tip, up * high), (tip + deep, up * low))), width=1.1, closed=False))
        items.append(Shape(_placed(((mouth, up * high), (mouth + deep, up * low))), width=1.1, closed=False))
    return [*items, Line(1, _AXIS, 33, _AXIS, THIN, dash=1.5)]


def _placed(points: tuple[tuple[float, float], ...]) -> tuple[tuple[float, float], ...]:
    return tuple((x, y + _AXIS) for x, y in points)


_DRAWN: dict[str, Callable[[str, str], list[Item]]] = {
    "side": _side,
    "form": _form,
    "swivels": _swivels,
    "shape": _shape,
    "seals": _seals,
    "cone": _cone,
    "seat": _seat,
}
