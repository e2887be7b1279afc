"""The few things every drawing is made of. Millimetres; the origin is top left, y points down.

Those that a label has by the hundred are tuples with names, which are made and compared several times as fast as
frozen dataclasses. No two kinds have as many values, so that none equals one of another kind.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal, NamedTuple

import numpy as np
import numpy.typing as npt

Ink = Literal["black", "white"]
Point = tuple[float, float]


class Line(NamedTuple):
    """A straight line; ``dash`` is the length of a dash and of a gap in mm, 0 for a full line."""

    x1: float
    y1: float
    x2: float
    y2: float
    width: float = 0.3
    dash: float = 0.0
    ink: Ink = "black"


class Shape(NamedTuple):
    """A chain of straight lines, open or closed, outlined (``width`` > 0) and filled or not."""

    points: tuple[Point, ...]
    fill: Ink | None = None
    width: float = 0.3
    closed: bool = True
    ink: Ink = "black"


class Circle(NamedTuple):
    x: float
    y: float
    radius: float
    fill: Ink | None = None
    width: float = 0.3
    ink: Ink = "black"


class Text(NamedTuple):
    """One line of text; ``y`` is the baseline, ``size`` the em in mm.

    ``turn`` is clockwise about (x, y): 0, 90, 180 or 270 degrees.
    """

    x: float
    y: float
    text: str
    size: float
    bold: bool = False
    anchor: Literal["start", "middle", "end"] = "start"
    ink: Ink = "black"
    turn: int = 0


@dataclass(frozen=True, eq=False, slots=True)
class Grid:
    """Modules of a symbol: ``modules`` (rows, columns) True where dark, each ``pitch_x`` by ``pitch_y``."""

    x: float
    y: float
    pitch_x: float
    pitch_y: float
    modules: npt.NDArray[np.bool_]


Item = Line | Shape | Circle | Text | Grid


@dataclass(frozen=True, eq=False, slots=True)
class Group:
    """Items that many drawings have: made once, so that who draws those need not look at each of them again.

    Equal to itself alone. No symbol is in one: each drawing has its own.
    """

    items: tuple[Item, ...]

    def __post_init__(self) -> None:
        if any(isinstance(item, Grid) for item in self.items):
            raise TypeError("a group holds no symbols")


Part = Item | Group


@dataclass(frozen=True, slots=True)
class Drawing:
    """A rectangle of ``width`` by ``height`` mm and what is drawn on it, from the bottom up."""

    width: float
    height: float
    parts: tuple[Part, ...]

    @property
    def items(self) -> tuple[Item, ...]:
        """All items, those of groups among them."""
        return items_of(self.parts)


def items_of(parts: Iterable[Part]) -> tuple[Item, ...]:
    """The parts with the items of groups in their places."""
    return tuple([item for part in parts for item in (part.items if isinstance(part, Group) else (part,))])


def moved(items: Iterable[Item], dx: float, dy: float) -> list[Item]:
    """The same items further right by ``dx`` and further down by ``dy`` mm."""
    return [_moved(item, dx, dy) for item in items]


def _moved(item: Item, dx: float, dy: float) -> Item:
    # Spelt out: a long run moves millions of items, and _replace takes three times as long.
    if isinstance(item, Line):
        return Line(item.x1 + dx, item.y1 + dy, item.x2 + dx, item.y2 + dy, item.width, item.dash, item.ink)
    if isinstance(item, Text):
        x, y = item.x + dx, item.y + dy
        return Text(x, y, item.text, item.size, item.bold, item.anchor, item.ink, item.turn)
    if isinstance(item, Shape):
        points = tuple([(x + dx, y + dy) for x, y in item.points])
        return Shape(points, item.fill, item.width, item.closed, item.ink)
    if isinstance(item, Circle):
        return Circle(item.x + dx, item.y + dy, item.radius, item.fill, item.width, item.ink)
    return Grid(item.x + dx, item.y + dy, item.pitch_x, item.pitch_y, item.modules)


def rectangle(
    x: float, y: float, across: float, down: float, *, fill: Ink | None = None, width: float = 0.0
) -> Shape:
    """A rectangle of ``across`` by ``down`` mm as a Shape; ``width`` is its outline's."""
    corners = ((x, y), (x + across, y), (x + across, y + down), (x, y + down))
    return Shape(corners, fill, width)


def arrow_head(x: float, y: float, towards: Point, size: float) -> Shape:
    """A filled arrow head with its tip at (x, y), pointing along ``towards`` (any length)."""
    length = (towards[0] ** 2 + towards[1] ** 2) ** 0.5
    ux, uy = towards[0] / length, towards[1] / length
    back, half = size, size * 0.35
    return Shape(
        (
            (x, y),
            (x - back * ux - half * uy, y - back * uy + half * ux),
            (x - back * ux + half * uy, y - back * uy - half * ux),
        ),
        fill="black",
        width=0.0,
    )
