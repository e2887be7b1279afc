"""A label on a hose: what its overlap hides, from which sides a code reads, what a flag's middle reaches round.

Lengths in mm, angles in degrees round the hose, counted from where the label begins.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass

from tagger.printing.boxes import Placed
from tagger.printing.curvature import widest_turn_deg
from tagger.printing.template import Box, ClearBox, FieldBox, QrBox, RuleBox, Template

TURN = 360
QUARTER = 90


@dataclass(frozen=True)
class Sides:
    """Which of the 360 sides of a hose show a code that reads, side 0 where the label begins."""

    reads: tuple[bool, ...]
    end: int  # the side where the label's print ends, over what lies below

    @property
    def share(self) -> float:
        """Of all sides, 0 to 1."""
        return sum(self.reads) / TURN

    @property
    def gaps(self) -> list[tuple[int, int]]:
        """Runs of sides that show none: (first side, number of sides)."""
        if all(self.reads):
            return []
        if not any(self.reads):
            return [(0, TURN)]
        starts = [side for side in range(TURN) if not self.reads[side] and self.reads[side - 1]]
        return [(start, _run(self.reads, start)) for start in starts]

    @property
    def only_at_the_end(self) -> bool:
        """Whether all sides but those about the label's end show a code."""
        return len(self.gaps) == 1 and all(
            (self.end - start) % TURN <= wide or (start - self.end) % TURN <= 1 for start, wide in self.gaps
        )


def _run(reads: tuple[bool, ...], start: int) -> int:
    return next(step for step in range(TURN) if reads[(start + step) % TURN])


def printed_mm(template: Template) -> float:
    """How far the opaque part of a label that goes round the hose reaches, along the side that does."""
    axis = _axis(template)
    tails = [box.at[axis] for box in template.box if isinstance(box, ClearBox)]
    return min([template.size[axis], *tails])


def hidden_mm(template: Template, od: float) -> float:
    """So much of the label's beginning lies under its printed end."""
    return max(0.0, printed_mm(template) - math.pi * od)


def sides(codes: Iterable[Placed], od: float, template: Template) -> Sides:
    """From which sides one of ``codes`` reads, those left out that the overlap cuts or covers."""
    axis, round_hose = _axis(template), math.pi * od
    below = hidden_mm(template, od)
    reads = [False] * TURN
    for placed in codes:
        start, side = (placed.x, placed.y)[axis], placed.symbol.size * placed.module_mm
        turn = widest_turn_deg(placed.symbol.version, placed.symbol.level, round(side, 2), round(od, 1))
        if turn is None or start < below + placed.module_mm:
            continue
        middle = (start + side / 2) / round_hose * TURN
        for step in range(math.ceil(middle - turn), math.floor(middle + turn) + 1):
            reads[step % TURN] = True
    return Sides(tuple(reads), round(printed_mm(template) / round_hose * TURN) % TURN)


def serves(found: Sides) -> bool:
    """Whether a code reads from every side, or from all but a quarter about the label's end at most."""
    return not found.gaps or (found.only_at_the_end and max(wide for _, wide in found.gaps) <= QUARTER)


def thinnest_served_mm(codes: list[Placed], template: Template, at_least: int) -> int | None:
    """The thinnest hose, in whole mm from ``at_least``, that the label serves; None if it serves none up to 100."""
    return next((od for od in range(at_least, 101) if serves(sides(codes, od, template))), None)


def lost_boxes(template: Template, od: float) -> list[int]:
    """Boxes that the overlap hides, wholly or in part, and that are not printed again where they show."""
    axis, below = _axis(template), hidden_mm(template, od)
    texts = [
        (i, box) for i, box in enumerate(template.box) if not isinstance(box, QrBox | RuleBox | ClearBox)
    ]
    shown = [box for _, box in texts if box.at[axis] >= below]
    said = {(box.kind, what) for box in shown for what in _says(box)}
    return [
        i for i, box in texts if box.at[axis] < below and any((box.kind, w) not in said for w in _says(box))
    ]


def thinnest_whole_mm(template: Template) -> int:
    """The thinnest hose, in whole mm, on which the overlap hides no text that stands nowhere else."""
    thickest = math.ceil(printed_mm(template) / math.pi)
    return next(od for od in range(1, thickest + 1) if not lost_boxes(template, od))


def _says(box: Box) -> tuple[str, ...]:
    if isinstance(box, FieldBox):
        return box.fields
    return (str(getattr(box, "ends", getattr(box, "end", getattr(box, "say", "")))),)


def thickest_flag_mm(template: Template, codes: Iterable[Placed]) -> float:
    """The thickest hose round which a flag label reaches without a code of its wings lying on the hose."""
    assert template.flag is not None
    first, last = template.flag
    spare = math.inf
    for placed in codes:
        side = placed.symbol.full_size * placed.module_mm
        left = placed.x - placed.symbol.quiet * placed.module_mm
        spare = min(spare, first - left - side if left < first else left - last)
    return max(0.0, last - first + 2 * spare) / math.pi


def _axis(template: Template) -> int:
    return 0 if template.wraps == "across" else 1
