"""The scale card: where its four QR symbols, its check line and its lower edge lie, in mm of the card.

x to the right and y down, from the card's upper left corner. Each symbol says which corner it is, so that a photo
may be taken from any side. The end lies beside the lower edge.
"""

from __future__ import annotations

from typing import Final

import numpy as np
import numpy.typing as npt

from tagger.code.symbol import Symbol, qr
from tagger.errors import Problem, SpecError, UnitError
from tagger.messages import Message, length
from tagger.units import read_length_mm

Array = npt.NDArray[np.float64]

WIDTH: Final = 120.0
HEIGHT: Final = 80.0
MODULE: Final = 1.0
SYMBOL_SIDE: Final = 21.0  # version 1: 21 modules
_MARGIN = 4.0  # modules of quiet zone, ISO/IEC 18004
CORNERS: Final = {
    "TL": (_MARGIN, _MARGIN),
    "TR": (WIDTH - _MARGIN - SYMBOL_SIDE, _MARGIN),
    "BL": (_MARGIN, HEIGHT - _MARGIN - SYMBOL_SIDE),
    "BR": (WIDTH - _MARGIN - SYMBOL_SIDE, HEIGHT - _MARGIN - SYMBOL_SIDE),
}
"""The upper left corner of each symbol's modules."""
CHECK_LINE: Final = 100.0
CHECK_FROM: Final = (10.0, 42.0)
"""The left end of the check line."""
LEAST_SCALE, MOST_SCALE = 0.97, 1.03
"""What a printer may have made of it; beyond, the print is another size."""
_SAYS = "SCALE1-"


def symbol(corner: str) -> Symbol:
    """The symbol of a corner of CORNERS."""
    return qr(_SAYS + corner, "H", version=1)


def corner_of(text: str) -> str | None:
    """Which corner a symbol says it is; None for a symbol of something else."""
    corner = text.removeprefix(_SAYS)
    return corner if text.startswith(_SAYS) and corner in CORNERS else None


def outline(corner: str) -> Array:
    """The four corners of a symbol in mm: upper left, upper right, lower right, lower left."""
    x, y = CORNERS[corner]
    side = SYMBOL_SIDE
    return np.array([(x, y), (x + side, y), (x + side, y + side), (x, y + side)])


def edges(corner: str) -> tuple[Array, npt.NDArray[np.int_], Array]:
    """Where the symbol changes between dark and light: the middle of each such side of a module in mm; whether
    it is crossed along x (0) or y (1); and 1 where it turns light in that direction, else -1.
    """
    dark = np.pad(symbol(corner).modules, 1).astype(int)
    places, axes, turns = [], [], []
    for axis in (0, 1):
        change = np.diff(dark, axis=1 - axis)
        rows, columns = np.nonzero(change)
        along = (columns, rows)[axis].astype(float)
        across = (rows, columns)[axis] - 0.5
        places.append(np.stack((along, across) if axis == 0 else (across, along), axis=1) * MODULE)
        axes.append(np.full(len(rows), axis))
        turns.append(-change[rows, columns].astype(float))
    return np.concatenate(places) + CORNERS[corner], np.concatenate(axes), np.concatenate(turns)


def read_scale(text: str) -> float:
    """The print's scale from what its check line measures, as typed; 1 where nothing was. Raises SpecError."""
    if not text.strip():
        return 1.0
    try:
        measured = read_length_mm(text)
    except UnitError as error:
        raise SpecError([Problem("check", p.value, p.message) for p in error.problems]) from None
    if not LEAST_SCALE <= measured / CHECK_LINE <= MOST_SCALE:
        least, most = (length(CHECK_LINE * part) for part in (LEAST_SCALE, MOST_SCALE))
        wrong = Message("measure-check-line", value=text, least=least, most=most)
        raise SpecError(Problem("check", text, wrong))
    return measured / CHECK_LINE
