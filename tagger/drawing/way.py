"""What a side view shows of an end, and where an elbow's port points once it is turned about the hose."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import NamedTuple, Protocol

from tagger.spec import Connection, End, Form


class Bent(Protocol):
    """What has a bend."""

    @property
    def angle_deg(self) -> int: ...


class Look(NamedTuple):
    """All that a picture shows of an end: whatever else they differ in, two ends of one look are drawn alike."""

    connection: Connection
    form: Form
    angle_deg: int
    is_elbow: bool

    @classmethod
    def of(cls, end: End) -> Look:
        return cls(end.connection, end.form, end.angle_deg, end.is_elbow)


@dataclass(frozen=True, slots=True)
class Way:
    """A direction, as parts of one: along the hose, down, and towards the viewer."""

    along: float
    down: float
    near: float

    @property
    def seen(self) -> float:
        """How much of its length is seen."""
        return math.hypot(self.along, self.down)


def way_of(end: Bent, turn_deg: int, *, places: int = 6) -> Way:
    """Where an end's port points.

    ``turn_deg``: how far the elbow is turned about the hose, from pointing down towards the viewer.
    ``places``: decimals that are kept.
    """
    bend, turn = math.radians(end.angle_deg), math.radians(turn_deg)
    aside = math.sin(bend)
    parts = (math.cos(bend), aside * math.cos(turn), aside * math.sin(turn))
    return Way(*(round(part, places) for part in parts))
