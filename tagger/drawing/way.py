"""Where an elbow's port points once it is turned about the hose: what a side view shows of it."""

from __future__ import annotations

import math
from dataclasses import dataclass

from tagger.spec import End


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


def way_of(end: End, turn_deg: int, *, places: int = 6) -> Way:
    """Where an end's port points.

    ``turn_deg``: how far the elbow is turned about the hose, from pointing down towards the viewer.
    ``places``: decimals that are kept.
    """
    bend, turn = math.radians(end.angle_deg), math.radians(turn_deg)
    aside = math.sin(bend)
    parts = (math.cos(bend), aside * math.cos(turn), aside * math.sin(turn))
    return Way(*(round(part, places) for part in parts))
