"""Pages of a booklet put on sheets: four on a side, so that cut, stacked and folded they follow one another.

Each sheet is cut across the middle; the stack of upper halves is laid on that of lower halves, the cover on top,
and all are folded together. Sheets are printed on both sides and turned over their long edge.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from reportlab.pdfgen.canvas import Canvas

PAGES_A_SHEET = 8
_MARK = 0.25  # points: cut and fold lines


@dataclass(frozen=True)
class Slot:
    """A page's place on a side: ``column`` 0 left, ``row`` 0 above the cut. Pages count from 1."""

    page: int
    column: int
    row: int


@dataclass(frozen=True)
class Side:
    sheet: int
    front: bool
    slots: tuple[Slot, ...]


def sides(pages: int) -> tuple[Side, ...]:
    """Which pages stand where, side by side as they are printed; ``pages`` is a whole number of sheets.

    >>> [slot.page for slot in sides(8)[0].slots]
    [8, 1, 6, 3]
    """
    if pages <= 0 or pages % PAGES_A_SHEET:
        raise ValueError(f"{pages} pages are no whole number of sheets")
    sheets = pages // PAGES_A_SHEET
    found = []
    for sheet in range(sheets):
        for front in (True, False):
            slots: list[Slot] = []
            for row, leaf in enumerate((sheet, sheets + sheet)):  # leaves from the outermost to the middle
                outer, inner = (pages - 2 * leaf, 2 * leaf + 1), (2 * leaf + 2, pages - 2 * leaf - 1)
                slots += [Slot(page, column, row) for column, page in enumerate(outer if front else inner)]
            found.append(Side(sheet + 1, front, tuple(slots)))
    return tuple(found)


class BookletCanvas(Canvas):  # type: ignore[misc]
    """Takes pages one by one and, when all are there, writes them on sheets of ``sheet`` points.

    Blank pages are put in before the last page, which is the back cover.
    """

    def __init__(self, *arguments: Any, sheet: tuple[float, float], **options: Any) -> None:
        super().__init__(*arguments, **options)
        self._sheet = sheet
        self._taken: list[list[str]] = []

    def showPage(self) -> None:
        self._taken.append(self._code)
        self._startPage()

    def save(self) -> None:
        taken = self._taken
        blanks = -len(taken) % PAGES_A_SHEET
        pages = [*taken[:-1], *([] for _ in range(blanks)), taken[-1]]
        width, height = self._sheet
        self.setPageSize(self._sheet)
        for side in sides(len(pages)):
            for slot in side.slots:
                self.saveState()
                self.translate(slot.column * width / 2, (1 - slot.row) * height / 2)
                self._code.extend(pages[slot.page - 1])
                self.restoreState()
            self._marks(width, height)
            super().showPage()
        super().save()

    def _marks(self, width: float, height: float) -> None:
        """The line to cut along, and that to fold along."""
        self.saveState()
        self.setLineWidth(_MARK)
        self.setStrokeGray(0.4)
        self.line(0, height / 2, width, height / 2)
        self.setDash([1, 3])
        self.line(width / 2, 0, width / 2, height)
        self.restoreState()
