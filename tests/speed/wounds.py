"""What a whole label suffers on a machine: corners and edges torn off, ink rubbed, scratched, faded, oiled, burnt.

Lengths in mm on the label. Every operation takes the label's picture, its size and a source of chance.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

import cv2
import numpy as np
import numpy.typing as npt

from tests.speed.damage import INK, PAPER, PIXELS_PER_MM, Chance, Picture

BENCH = 90  # grey of what lies behind the label
MARGIN = 6  # mm of it all round


@dataclass(frozen=True)
class Label:
    """A picture of a whole label, ``width`` by ``height`` mm, with MARGIN of the bench round it."""

    picture: Picture
    width: float
    height: float

    def point(self, x: float, y: float) -> tuple[int, int]:
        """A place on the label in pixels."""
        return round((x + MARGIN) * PIXELS_PER_MM), round((y + MARGIN) * PIXELS_PER_MM)

    def filled(self, corners: list[tuple[float, float]], level: int) -> Label:
        """A polygon of one level over it."""
        picture = self.picture.copy()
        cv2.fillPoly(picture, [np.array([self.point(*one) for one in corners], dtype=np.int32)], level)
        return Label(picture, self.width, self.height)

    def levels(self, levels: npt.NDArray[np.float64]) -> Label:
        """The same with other grey levels on the label; the bench stays."""
        picture, (left, top), (right, bottom) = self.picture.copy(), self.point(0, 0), self._end
        inside = np.clip(levels, 0, 255).astype(np.uint8)
        picture[top:bottom, left:right] = inside[top:bottom, left:right]
        return Label(picture, self.width, self.height)

    @property
    def _end(self) -> tuple[int, int]:
        return self.point(self.width, self.height)


Wound = Callable[[Label, Chance], Label]


def photographed(dots: Picture, dpi: float) -> Label:
    """The label as printed ``dots``, flat on a bench."""
    dot = 25.4 / dpi
    scale = PIXELS_PER_MM * dot
    smooth = cv2.INTER_AREA if scale < 1 else cv2.INTER_LINEAR
    picture = cv2.resize(dots, None, fx=scale, fy=scale, interpolation=smooth)
    levels = (picture / 255.0 * (PAPER - INK) + INK).astype(np.uint8)
    framed = np.pad(levels, round(MARGIN * PIXELS_PER_MM), constant_values=BENCH)
    return Label(framed, dots.shape[1] * dot, dots.shape[0] * dot)


def torn_corner(label: Label, chance: Chance) -> Label:
    """A corner is gone: a triangle with sides of 15 to 20 mm, or what a smaller label has of it."""
    side = [chance.uniform(15, 20), chance.uniform(15, 20)]
    x, y = chance.choice((0, label.width)), chance.choice((0, label.height))
    a = x + (side[0] if x == 0 else -side[0])
    b = y + (side[1] if y == 0 else -side[1])
    far = [(x, y), (a, y), (x, b)]
    return label.filled([(_off(p, label.width), _off(q, label.height)) for p, q in far], BENCH)


def _off(place: float, size: float) -> float:
    """A corner of the label a little outside, so that nothing of its rim stays."""
    return place - 1 if place == 0 else place + 1 if place == size else place


def torn_edge(label: Label, chance: Chance) -> Label:
    """A strip of 8 mm along an edge is gone, its border ragged by half a millimetre."""
    edge, steps = chance.integers(4), np.linspace(-1, 1 + max(label.width, label.height), 60)
    depth = [float(8 + chance.uniform(-0.5, 0.5)) for _ in steps]
    inside = [(float(at), deep) for at, deep in zip(steps, depth, strict=True)]
    strip = [(-1.0, -1.0), *inside, (float(steps[-1]), -1.0)]
    turned = {
        0: strip,
        1: [(x, label.height - y) for x, y in strip],
        2: [(y, x) for x, y in strip],
        3: [(label.width - y, x) for x, y in strip],
    }
    limits = (label.width + 1, label.height + 1)
    corners = [(min(x, limits[0]), min(y, limits[1])) for x, y in turned[int(edge)]]
    return label.filled(corners, BENCH)


def rubbed_band(label: Label, chance: Chance) -> Label:
    """A strap or a hose has rubbed a band of 8 mm bare, across the label or along it."""
    along = chance.random() < 0.5
    size = label.height if along else label.width
    at = chance.uniform(0, max(0.1, size - 8))
    if along:
        return label.filled([(0, at), (label.width, at), (label.width, at + 8), (0, at + 8)], PAPER)
    return label.filled([(at, 0), (at + 8, 0), (at + 8, label.height), (at, label.height)], PAPER)


def scratched(label: Label, chance: Chance) -> Label:
    """14 scratches down to the bare stock, 0.15 to 0.4 mm wide, a fifth to seven tenths of the label long."""
    picture, length = label.picture.copy(), math.hypot(label.width, label.height)
    for _ in range(14):
        x, y = chance.uniform(0, label.width), chance.uniform(0, label.height)
        angle, reach = chance.uniform(0, math.pi), length * chance.uniform(0.2, 0.7) / 2
        ends = [
            label.point(x + way * reach * math.cos(angle), y + way * reach * math.sin(angle))
            for way in (1, -1)
        ]
        cv2.line(picture, *ends, PAPER, max(1, round(chance.uniform(0.15, 0.4) * PIXELS_PER_MM)))
    return label.levels(picture.astype(float))


def faded(label: Label, chance: Chance) -> Label:
    """Sun: a quarter of the contrast is left, unevenly, on a lighter ground."""
    share = np.linspace(chance.uniform(0.15, 0.25), chance.uniform(0.25, 0.35), label.picture.shape[1])
    return label.levels(PAPER - 15 - (PAPER - label.picture.astype(float)) * share)


def oiled(label: Label, chance: Chance) -> Label:
    """Five drops of old oil, 5 to 9 mm in radius: the paper below is dark, ink shows through faintly."""
    cover = np.zeros(label.picture.shape, dtype=np.float32)
    for _ in range(5):
        centre = label.point(chance.uniform(0, label.width), chance.uniform(0, label.height))
        cv2.circle(cover, centre, round(chance.uniform(5, 9) * PIXELS_PER_MM), 1.0, -1)
    cover = cv2.GaussianBlur(cover, (0, 0), 0.5 * PIXELS_PER_MM)
    dark = INK + (label.picture.astype(float) - INK) * 0.12
    return label.levels(label.picture * (1 - cover) + dark * cover)


def burnt(label: Label, chance: Chance) -> Label:
    """One half has been hot: its paper is as dark as ink at the far edge, and clear from the middle on."""
    height, width = label.picture.shape
    side = chance.integers(4)
    across = np.linspace(0, 1, width)[None, :] if side < 2 else np.linspace(0, 1, height)[:, None]
    far = across if side % 2 else 1 - across
    share = np.broadcast_to(np.clip((far - 0.5) * 2.5, 0, 0.97), label.picture.shape)
    return label.levels(label.picture - (label.picture.astype(float) - INK) * share)


WOUNDS: dict[str, Wound] = {
    "torn corner": torn_corner,
    "torn edge, 8 mm": torn_edge,
    "rubbed band, 8 mm": rubbed_band,
    "14 scratches": scratched,
    "faded": faded,
    "oil": oiled,
    "burnt half": burnt,
}


def photo(label: Label, chance: Chance) -> Picture:
    """A slightly soft lens and sensor noise."""
    soft = cv2.GaussianBlur(label.picture, (0, 0), 0.05 * PIXELS_PER_MM)
    return np.clip(soft + chance.normal(0, 4.0, soft.shape), 0, 255).astype(np.uint8)
