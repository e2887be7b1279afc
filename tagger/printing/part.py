"""What a box of a template is laid out from, and what it puts on the label."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np

from tagger.code.symbol import Modules, Symbol
from tagger.drawing import Group, Item
from tagger.errors import Problem, TemplateError
from tagger.messages import Message
from tagger.printing.content import Tag
from tagger.printing.template import SMALLEST_TEXT_MM, Template
from tagger.printing.textfit import needed


@dataclass(frozen=True, slots=True)
class Placed:
    """A symbol on the page: its left and top without the quiet zone, in mm, and its module."""

    symbol: Symbol
    x: float
    y: float
    dots: int
    module_mm: float
    box: int  # index in the template
    turn: int = 0

    @property
    def modules(self) -> Modules:
        """Those of the symbol, as it is turned."""
        return np.rot90(self.symbol.modules, -self.turn // 90) if self.turn else self.symbol.modules


@dataclass(frozen=True, eq=False, slots=True)
class Job:
    """What is being laid out, and for which printer. Equal to itself alone."""

    tag: Tag
    template: Template
    dpi: int


@dataclass(frozen=True, slots=True)
class Part:
    """What one box puts on the page, in the box's own coordinates (its left top is 0, 0).

    ``shared`` lies lowest: what many labels have there.
    """

    items: list[Item]
    symbols: list[Placed]
    shared: tuple[Group, ...] = ()


def too_small(
    texts: Iterable[str], room: tuple[float, float], smallest: float, index: int, job: Job, share: float = 1.0
) -> TemplateError:
    """That texts do not fit in the ``room`` a box gives them, with the size at which the box would hold them.

    ``share``: of each millimetre that the box is made wider, how much the texts get at least.
    """
    texts, inner = tuple(texts), job.template.box[index].inner
    need = needed(texts, room[0], smallest)
    grown = (1.0 / share, 1.0)
    across, down = (up(inner[side] + max(0.0, need[side] - room[side]) * grown[side]) for side in (0, 1))
    message = Message(
        "printing-box-text",
        width=round(inner[0], 1),
        height=round(inner[1], 1),
        text=smallest,
        need_width=across,
        need_height=down,
        least=SMALLEST_TEXT_MM,
    )
    return TemplateError(Problem(f"{job.template.where(index)}, size", " / ".join(texts), message))


def up(mm: float) -> float:
    """A least size as it is told: never shown as less."""
    return math.ceil(mm * 10 - 1e-6) / 10
