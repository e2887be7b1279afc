"""How an end is measured, as pictures: across a male thread, inside a female one, its pitch, and its seat."""

from __future__ import annotations

import math

from tagger.drawing.primitives import Circle, Drawing, Item, Line, Point, Shape, arrow_head, rectangle

_THIN, _LINE = 0.15, 0.25


def outside_picture(width: float = 26.0, height: float = 17.0) -> Drawing:
    """The jaws of a caliper across the crests of a male thread."""
    middle, rise = height / 2, height * 0.24
    items: list[Item] = [
        rectangle(0.3, middle - rise * 1.35, width * 0.16, rise * 2.7, fill="white", width=_LINE),
        *_thread(width * 0.16, width * 0.62, middle, rise),
        *_jaws(width * 0.42, middle - rise, middle + rise, width, out=True),
        *_arrow(width * 0.36, middle - rise, middle + rise),
    ]
    return Drawing(width, height, tuple(items))


def inside_picture(width: float = 26.0, height: float = 17.0) -> Drawing:
    """A nut cut open, and the inner jaws of a caliper on the crests of its thread."""
    middle, rise = height / 2, height * 0.26
    items: list[Item] = []
    for side in (-1, 1):
        crest = middle + side * rise
        teeth = _teeth(width * 0.1, width * 0.5, crest, crest + side * 1.1)
        wall = [
            *teeth,
            (width * 0.5, middle + side * height * 0.46),
            (width * 0.1, middle + side * height * 0.46),
        ]
        items.append(Shape(tuple(wall), "white", _LINE))
    items += [*_jaws(width * 0.36, middle - rise, middle + rise, width, out=False)]
    items += _arrow(width * 0.28, middle - rise, middle + rise)
    return Drawing(width, height, tuple(items))


def pitch_picture(width: float = 26.0, height: float = 17.0) -> Drawing:
    """A thread gauge held to a thread, and the length over ten turns."""
    top, step = height * 0.5, width * 0.9 / 12
    teeth = _teeth(width * 0.05, width * 0.95, top, top + 1.5, count=12)
    blade = [(x, y - 0.7) for x, y in teeth]
    first, last = width * 0.05 + step, width * 0.05 + 11 * step
    items: list[Item] = [
        Shape((*teeth, (width * 0.95, height * 0.72), (width * 0.05, height * 0.72)), "white", _LINE),
        Shape((*blade, (width * 0.95, height * 0.12), (width * 0.05, height * 0.12)), "white", _LINE),
        *(Line(x, top, x, height * 0.94, _THIN, 0.5) for x in (first, last)),
        Line(first, height * 0.88, last, height * 0.88, _THIN),
        arrow_head(first, height * 0.88, (-1, 0), 1.1),
        arrow_head(last, height * 0.88, (1, 0), 1.1),
    ]
    return Drawing(width, height, tuple(items))


def seat_picture(width: float = 26.0, height: float = 17.0) -> Drawing:
    """A seat gauge against a nose, and another in a funnel."""
    items: list[Item] = []
    for x0, way in ((width * 0.04, 1), (width * 0.56, -1)):
        items += _nose_or_funnel(x0, width * 0.4, height, nose=way > 0)
    return Drawing(width, height, tuple(items))


def _nose_or_funnel(x0: float, across: float, height: float, *, nose: bool) -> list[Item]:
    middle, rise, bore = height / 2, height * 0.3, height * 0.1
    deep = (rise - bore) / math.tan(math.radians(37))
    base, tip = (
        (x0 + across * 0.45, x0 + across * 0.45 + deep)
        if nose
        else (x0 + across * 0.5, x0 + across * 0.5 - deep)
    )
    items: list[Item] = []
    for side in (-1, 1):
        upper = middle + side * rise
        body = [(x0, middle + side * bore), (x0, upper), (base, upper), (tip, middle + side * bore)]
        items.append(Shape(tuple(body), "white", _LINE))
    blade_base, blade_tip = base + 0.8, tip + 0.8
    far = x0 + across * 1.02
    if nose:
        gauge: list[Point] = [
            (blade_base - 0.6, middle - rise - 0.4), (blade_tip, middle - bore), (blade_tip + 0.6, middle - bore),
            (far, middle - bore), (far, middle - rise - 2.2), (blade_base - 0.6, middle - rise - 2.2),
        ]  # fmt: skip
    else:
        gauge = [(blade_tip, middle), (blade_base, middle - rise + 0.6), (far, middle - rise + 0.6), (far, middle + rise - 0.6), (blade_base, middle + rise - 0.6)]  # fmt: skip
    return [*items, Shape(tuple(gauge), "black", 0.0)]


def _teeth(start: float, stop: float, low: float, high: float, count: int = 6) -> list[Point]:
    step = (stop - start) / count
    points = [(start, low)]
    for place in range(count):
        points += [(start + step * (place + 0.5), high), (start + step * (place + 1), low)]
    return points


def _thread(start: float, stop: float, middle: float, rise: float) -> list[Item]:
    upper = _teeth(start, stop, middle - rise + 1.1, middle - rise)
    lower = [(x, 2 * middle - y) for x, y in reversed(upper)]
    return [Shape((*upper, *lower), "white", _LINE)]


def _jaws(x: float, top: float, bottom: float, width: float, *, out: bool) -> list[Item]:
    """Two jaws on a beam at the right; ``out``: around a part, else inside it."""
    items: list[Item] = [
        rectangle(width * 0.82, 0.3, width * 0.1, bottom + top - 0.6, fill="white", width=_LINE)
    ]
    for edge, away in ((top, -1), (bottom, 1)):
        thick = 1.7
        y = edge + (away * thick if out and away < 0 else 0) - (thick if not out and away > 0 else 0)
        items.append(rectangle(x, y, width * 0.92 - x, thick, fill="black"))
    return [*items, Circle(width * 0.87, (top + bottom) / 2, 0.7, "white", _LINE)]


def _arrow(x: float, top: float, bottom: float) -> list[Item]:
    return [
        Line(x, top, x, bottom, _THIN),
        arrow_head(x, top, (0, -1), 1.2),
        arrow_head(x, bottom, (0, 1), 1.2),
    ]
