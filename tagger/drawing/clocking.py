"""The clocking convention as a picture: the assembly as seen along the hose from end A."""

from __future__ import annotations

import math
from itertools import pairwise

from tagger.drawing.primitives import Circle, Drawing, Item, Line, Point, Shape, Text, arrow_head

_THIN = 0.2
SMALLEST_EM = 2.2  # mm: capitals of 1.6 mm
_LEAST_ARC = 15  # degrees: less is no more than the arrow's head


def clocking_picture(
    clocking_deg: int,
    size: float = 18.0,
    *,
    angle_text: str | None = None,
    clockwise: bool = False,
    up: bool = False,
) -> Drawing:
    """The clocking convention with this angle in it, as seen along the hose from end A.

    End A is nearest, its elbow at 6 o'clock (solid); end B is behind (dashed), turned by
    ``clocking_deg`` counter-clockwise from A. With ``clockwise`` the arc runs the other way
    round, for shops that count clockwise; the elbows stand where they stand, and
    ``angle_text`` should then say that shop's figure. With ``up`` the assembly is held with
    elbow A at 12 o'clock.
    """
    shown = f"{clocking_deg}°" if angle_text is None else angle_text
    items = end_view(clocking_deg, size, clockwise=clockwise, up=up)
    items += _angle_label(shown, size, clocking_deg, _em(size), up)
    return Drawing(size, size, tuple(items))


def _em(size: float) -> float:
    """Of the letters: a share of the picture, and in a small one as small as a tag may have them."""
    return max(size * 0.13, min(SMALLEST_EM, size * 0.27))


def end_view(clocking_deg: int, size: float, *, clockwise: bool = False, up: bool = False) -> list[Item]:
    """The picture of the convention without its figure, in a square of ``size``."""
    middle = size / 2
    hub, half, text = size * 0.13, size * 0.055, _em(size)
    arm = size * 0.5 - text
    down = -1.0 if up else 1.0  # which way elbow A points
    turn = math.radians(clocking_deg)
    bx, by = down * math.sin(turn), down * math.cos(turn)
    items: list[Item] = []
    items += _arm(middle, (bx, by), hub, arm, half, dashed=True)
    items += _arm(middle, (0.0, down), hub, arm, half, dashed=False)
    items.append(Circle(middle, middle, hub, fill="white", width=0.4))
    items.append(Circle(middle, middle, hub * 0.5, width=_THIN))
    items += _arc(middle, down * size * 0.25, clocking_deg, half, clockwise)
    label = arm + text * 0.6
    apart = 1.0 if 20 < clocking_deg < 340 else 1.0 - text * 1.3 / label
    items.append(Text(middle, middle + down * label + text * 0.36, "A", text, bold=True, anchor="middle"))
    side = 0.0 if apart == 1 else text * (0.9 if bx >= 0 else -0.9)
    x, y = middle + bx * label + side, middle + by * label + text * 0.36
    items.append(Text(x, y, "B", text, bold=True, anchor="middle"))
    return items


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


def _arc(middle: float, radius: float, clocking_deg: int, half: float, clockwise: bool) -> list[Item]:
    """From elbow A (down; up where the radius is negative) round to elbow B, with an arrow head at B.

    It runs from edge to edge of the elbows, which are ``half`` as broad on each side, where they stand that far apart:
    a head on the dashes of a small picture hides them, and the letter.
    """
    sweep = -(360 - clocking_deg) % 360 if clockwise else clocking_deg
    sweep = sweep - 360 if clockwise and sweep else sweep
    if sweep == 0:
        return []
    edge = math.degrees(math.asin(half / abs(radius)))
    edge = math.copysign(edge, sweep) if abs(sweep) >= 2 * edge + _LEAST_ARC else 0.0
    steps = max(4, abs(sweep) // 10)
    turns = [math.radians(edge + (sweep - 2 * edge) * step / steps) for step in range(steps + 1)]
    points = [(middle + radius * math.sin(turn), middle + radius * math.cos(turn)) for turn in turns]
    end = turns[-1]
    ahead = (math.cos(end), -math.sin(end)) if sweep > 0 else (-math.cos(end), math.sin(end))
    if radius < 0:
        ahead = (-ahead[0], -ahead[1])
    head = arrow_head(*points[-1], ahead, abs(radius) * 0.32)
    return [Shape(tuple(points[:-1]), closed=False, width=_THIN), head]


def _angle_label(text: str, size: float, clocking_deg: int, em: float, up: bool) -> list[Item]:
    """The figure in the upper corner that elbow B leaves free."""
    right = 0 < clocking_deg < 180 if up else clocking_deg > 180 or clocking_deg < 10
    x, anchor = (size, "end") if right else (0.0, "start")
    return [Text(x, em * 0.9, text, em * 1.05, bold=True, anchor=anchor)]  # type: ignore[arg-type]
