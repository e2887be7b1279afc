"""From lines over the end to its diameter and pitch.

The end lies above the card, nearer to the camera, and so looks larger: a 27 mm thread lying on the table reads 5.7 %
too large from 250 mm. Both edges of a round part are tangents from the camera; where the part lies on the table, one
circle alone fits them (``_circle``).
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Final

from tagger.errors import Problem, SpecError
from tagger.measuring.rectify import Camera
from tagger.messages import Message

BY_HAND: Final = 0.10  # mm, one standard deviation of a line that was dragged
FOUND: Final = 0.04  # mm, of one that the program found
WORST_DIAMETER: Final = 0.8  # mm of band beyond which a diameter tells threads apart no more
_LEAST_REST = 0.97  # of the thread's diameter: nothing thinner keeps the thread off the table
_CARD = (
    0.0008  # share by which the card's own scale may be off where its check line was measured: 0.1 mm of 100
)
_UNCHECKED = 0.005  # and where nobody measured it


@dataclass(frozen=True)
class Lines:
    """Lines over the end in mm of the card as drawn, once the picture is turned by ``tilt`` degrees round (x, y).

    ``edge_1``, ``edge_2``: y of the thread's edges, over the crests. ``crest_1``, ``crest_2``: x of two crests with
    ``threads`` pitches between them. ``rest_mm``: across what touches the table, where it is not the thread itself.
    """

    edge_1: float
    edge_2: float
    crest_1: float
    crest_2: float
    threads: int
    tilt: float = 0.0
    x: float = 60.0
    y: float = 110.0
    rest_mm: float | None = None
    found: bool = False

    def __post_init__(self) -> None:
        """Raises SpecError for lines that no end has."""
        if not 3 <= abs(self.edge_2 - self.edge_1) <= 90:
            raise SpecError(Problem("edges", None, Message("measure-edges-wrong")))
        if not 1 <= self.threads <= 60 or not 0.4 <= self.pitch <= 6:
            raise SpecError(Problem("crests", None, Message("measure-crests-wrong")))
        if self.rest_mm is not None and not 3 <= self.rest_mm <= 120:
            raise SpecError(Problem("rest", self.rest_mm, Message("measure-rest-wrong")))

    @property
    def pitch(self) -> float:
        """As it looks in the picture, mm."""
        return abs(self.crest_2 - self.crest_1) / self.threads


@dataclass(frozen=True)
class Reading:
    """What was read, mm; the bands are two standard deviations to either side. ``axis_mm``: its height."""

    diameter_mm: float
    diameter_band_mm: float
    pitch_mm: float
    pitch_band_mm: float
    axis_mm: float

    @property
    def usable(self) -> bool:
        """Whether it tells threads apart at all."""
        return self.diameter_band_mm <= WORST_DIAMETER


def read(
    lines: Lines, camera: Camera, residual: float, scale: float = 1.0, *, checked: bool = False
) -> Reading:
    """The end under the lines. ``scale``: of the print; ``checked``: whether somebody measured its check line.

    Raises SpecError where the part would be as high as the camera, or rests on what is thinner than the thread.
    """
    diameter, pitch, axis, apart = _measured(lines, camera, scale)
    if lines.rest_mm is not None and lines.rest_mm < _LEAST_REST * diameter:
        raise SpecError(Problem("rest", lines.rest_mm, Message("measure-rest-wrong")))
    nearer = replace(camera, z=camera.z - camera.z_sd)
    by_height = [abs(a - b) for a, b in zip(_measured(lines, nearer, scale), (diameter, pitch), strict=False)]
    line = FOUND if lines.found else BY_HAND
    drawn = math.hypot(line, residual / 3)
    size = _CARD if checked else _UNCHECKED
    shrink = diameter / abs(lines.edge_2 - lines.edge_1)
    diameter_sd = math.hypot(shrink * drawn * math.sqrt(2), by_height[0], size * diameter)
    pitch_sd = math.hypot(drawn * math.sqrt(2) / lines.threads, by_height[1], size * pitch, apart * pitch / 2)
    return Reading(diameter, 2 * diameter_sd, pitch, 2 * pitch_sd, axis)


def _measured(lines: Lines, camera: Camera, scale: float) -> tuple[float, float, float, float]:
    """Diameter, pitch and the axis' height in mm; and by which share either edge's pitch looks unlike the mean."""
    across = _across(lines, camera)
    rest = None if lines.rest_mm is None else lines.rest_mm / scale / 2
    radius, height, slant = _circle(lines.edge_1 - across, lines.edge_2 - across, camera.z, rest)
    half = radius * math.cos(slant) / (camera.z - height)  # the sine of half the angle under which it is seen
    pitch = lines.pitch * (1 - (height + radius * half * math.cos(slant)) / camera.z)
    apart = radius * abs(math.sin(slant)) / camera.z
    return 2 * radius * scale, pitch * scale, height * scale, apart


def _across(lines: Lines, camera: Camera) -> float:
    """The camera's y in the picture as the lines see it, turned by their tilt."""
    turn = math.radians(lines.tilt)
    return lines.y + (camera.y - lines.y) * math.cos(turn) - (camera.x - lines.x) * math.sin(turn)


def _circle(left: float, right: float, z: float, rest: float | None) -> tuple[float, float, float]:
    """Radius, height of the axis and slant of the view, of the circle that fills the view between two points of the
    table as seen from z above the origin.

    It lies on the table, or its axis is ``rest`` above it.
    """
    low, high = sorted((math.atan2(left, z), math.atan2(right, z)))
    half, slant = (high - low) / 2, (high + low) / 2
    if rest is not None and rest >= z / 2:
        raise SpecError(Problem("rest", rest, Message("measure-rest-wrong")))
    away = z / (math.cos(slant) + math.sin(half)) if rest is None else (z - rest) / math.cos(slant)
    radius, height = away * math.sin(half), z - away * math.cos(slant)
    return radius, height, slant
