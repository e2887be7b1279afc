"""One page of a gauge sheet to draw on: millimetres, the origin top left, y points down.

Edges that are measured are the edges of fills, without an outline, so that a line's own thickness adds nothing.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, Literal

from reportlab.lib.units import mm
from reportlab.lib.utils import simpleSplit
from reportlab.pdfbase import pdfmetrics

from tagger.code.symbol import Symbol
from tagger.papers import document

Point = tuple[float, float]
BLACK, DARK, LIGHT, FAINT = 0.0, 0.45, 0.82, 0.9
"""How much light an ink leaves: words, a tolerance, a gauge, and the room beside one."""
LEADING = 1.25  # of the em, from line to line
SMALLEST = 1.75  # mm, the em of the smallest words on a sheet
_HAIR = 0.15  # mm


class Board:
    """Draws on reportlab's canvas, whose y points up, at the page it has open."""

    def __init__(self, canvas: Any, width: float, height: float) -> None:
        document.register_fonts()
        self.canvas, self.width, self.height = canvas, width, height

    def fill(self, points: Sequence[Point], grey: float) -> None:
        """A closed shape without an outline."""
        self._path(points, close=True)
        self.canvas.setFillGray(grey)
        self.canvas.drawPath(self._open, stroke=0, fill=1)

    def rectangle(self, x: float, y: float, across: float, down: float, grey: float) -> None:
        """A filled rectangle without an outline."""
        self.fill(((x, y), (x + across, y), (x + across, y + down), (x, y + down)), grey)

    def disc(self, x: float, y: float, diameter: float, grey: float) -> None:
        """A filled circle without an outline, about (x, y)."""
        self.canvas.setFillGray(grey)
        self.canvas.circle(x * mm, (self.height - y) * mm, diameter / 2 * mm, stroke=0, fill=1)

    def line(self, points: Sequence[Point], *, width: float = _HAIR, dash: float = 0.0, grey: float = BLACK) -> None:  # fmt: skip
        """A chain of straight lines; the measured place is the middle of a line."""
        self._path(points, close=False)
        self._pen(width, dash, grey)
        self.canvas.drawPath(self._open, stroke=1, fill=0)

    def outline(self, x: float, y: float, across: float, down: float, *, dash: float = 0.0) -> None:
        """The outline of a rectangle."""
        corners = ((x, y), (x + across, y), (x + across, y + down), (x, y + down))
        self._path(corners, close=True)
        self._pen(_HAIR, dash, BLACK)
        self.canvas.drawPath(self._open, stroke=1, fill=0)

    def ring(self, x: float, y: float, diameter: float) -> None:
        """The outline of a circle."""
        self._pen(_HAIR, 0.0, BLACK)
        self.canvas.circle(x * mm, (self.height - y) * mm, diameter / 2 * mm, stroke=1, fill=0)

    def text(self, x: float, y: float, words: str, size: float, *, bold: bool = False,
             anchor: Literal["start", "middle", "end"] = "start") -> None:  # fmt: skip
        """One line; ``y`` is its baseline, ``size`` the em in mm."""
        self.canvas.setFillGray(BLACK)
        self.canvas.setFont(_face(bold), size * mm)
        show = {
            "start": self.canvas.drawString,
            "middle": self.canvas.drawCentredString,
            "end": self.canvas.drawRightString,
        }
        show[anchor](x * mm, (self.height - y) * mm, words)

    def paragraph(self, x: float, y: float, across: float, down: float, words: str, size: float, *,
                  bold: bool = False) -> float:  # fmt: skip
        """Words within a box, made smaller until they fit. Returns the height that they took.

        Raises ValueError where the smallest size does not fit: a fault of the sheet, never of what is typed.
        """
        lines, size = fitted(words, across, down, size, bold=bold)
        for place, line in enumerate(lines):
            self.text(x, y + size * (0.8 + LEADING * place), line, size, bold=bold)
        return float(len(lines) * size * LEADING)

    def symbol(self, x: float, y: float, side: float, symbol: Symbol) -> None:
        """A QR symbol with its quiet zone, ``side`` mm across."""
        module = side / symbol.full_size
        path = self.canvas.beginPath()
        for row, line in enumerate(symbol.modules):
            for column, dark in enumerate(line):
                if dark:
                    top = y + (symbol.quiet + row + 1) * module
                    left = x + (symbol.quiet + column) * module
                    path.rect(left * mm, (self.height - top) * mm, module * mm, module * mm)
        self.canvas.setFillGray(BLACK)
        self.canvas.drawPath(path, stroke=0, fill=1)

    def _path(self, points: Sequence[Point], *, close: bool) -> None:
        self._open = self.canvas.beginPath()
        for place, (x, y) in enumerate(points):
            to = self._open.lineTo if place else self._open.moveTo
            to(x * mm, (self.height - y) * mm)
        if close:
            self._open.close()

    def _pen(self, width: float, dash: float, grey: float) -> None:
        self.canvas.setLineWidth(width * mm)
        self.canvas.setStrokeGray(grey)
        self.canvas.setDash([dash * mm] if dash else [])


def width_of(words: str, size: float, *, bold: bool = False) -> float:
    """How wide one line of words is, mm; ``size``: the em in mm."""
    document.register_fonts()
    return float(pdfmetrics.stringWidth(words, _face(bold), size * mm) / mm)


def fitted(words: str, across: float, down: float, size: float, *, bold: bool = False) -> tuple[list[str], float]:  # fmt: skip
    """The lines that words take in a box, and the size at which they fit, ``size`` or less."""
    document.register_fonts()
    while True:
        lines = [str(line) for line in simpleSplit(words, _face(bold), size * mm, across * mm)]
        if len(lines) * size * LEADING <= down and all(width_of(one, size, bold=bold) <= across for one in lines):  # fmt: skip
            return lines, size
        if size <= SMALLEST:
            raise ValueError(f"does not fit in {across} by {down} mm: {words}")
        size = max(SMALLEST, size * 0.96)


def _face(bold: bool) -> str:
    return "Paper-Bold" if bold else "Paper"
