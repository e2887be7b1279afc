"""A sign that says "do not use this hose" without words: a ring with a bar over a hose assembly.

Its kind is that of the prohibition signs of ISO 7010 and ISO 3864 (ring, and a bar from top left to bottom right);
drawn here for printers of one colour, so it claims no conformity: those signs are red.
"""

from __future__ import annotations

import math

from tagger.drawing.primitives import Circle, Drawing, Item, Shape, rectangle

_RING, _BAR = 0.1, 0.09  # of the ring's outside diameter


def do_not_use_sign(size: float) -> Drawing:
    """The sign in a square of ``size`` mm."""
    middle = size / 2
    items: list[Item] = [
        Circle(middle, middle, middle, fill="black", width=0.0),
        Circle(middle, middle, middle - _RING * size, fill="white", width=0.0),
        *_hose(size),
        _bar(size, _BAR * 1.45, "white"),  # a light edge, so that the bar stands out from the black hose
        _bar(size, _BAR, "black"),
    ]
    return Drawing(size, size, tuple(items))


def _bar(size: float, share: float, ink: str) -> Shape:
    """A bar at 45 degrees within the ring, ``share`` of the diameter thick."""
    middle, half, reach = size / 2, share * size / 2, size * (0.5 - _RING * 0.6)
    along, aside = reach * math.sqrt(0.5), half * math.sqrt(0.5)
    corners = (
        (middle - along + aside, middle - along - aside),
        (middle + along + aside, middle + along - aside),
        (middle + along - aside, middle + along + aside),
        (middle - along - aside, middle - along + aside),
    )
    return Shape(corners, fill="white" if ink == "white" else "black", width=0.0)


def _hose(size: float) -> list[Item]:
    """A bent hose with a nut at each end."""
    points, steps = [], 24
    for step in range(steps + 1):
        turn = math.pi * step / steps
        points.append((size * (0.5 - 0.21 * math.cos(turn)), size * (0.5 - 0.24 * math.sin(turn))))
    nut, collar = size * 0.17, size * 0.12
    items: list[Item] = [Shape(tuple(points), closed=False, width=size * 0.08)]
    for x in (size * 0.29, size * 0.71):
        items.append(rectangle(x - collar / 2, size * 0.49, collar, size * 0.08, fill="black"))
        items.append(rectangle(x - nut / 2, size * 0.58, nut, size * 0.11, fill="black"))
    return items
