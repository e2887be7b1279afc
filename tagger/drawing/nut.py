"""A nut with the turn to tighten, seen from its end."""

from __future__ import annotations

import math

from tagger.drawing.primitives import Circle, Drawing, Item, Line, Shape, arrow_head

_THIN = 0.2


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
