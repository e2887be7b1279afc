"""What stands on every page of a gauge sheet: its title, how to hold it to the part, the check lines, a bank
card's outline, the cautions, and the code that opens identify.
"""

from __future__ import annotations

import io
from dataclasses import dataclass, field
from typing import Any, Final

from reportlab.lib.units import mm
from reportlab.pdfgen.canvas import Canvas

from tagger.code.symbol import Symbol, qr
from tagger.errors import Problem, SpecError
from tagger.gauges import PAPERS
from tagger.gauges.board import BLACK, Board, width_of
from tagger.i18n import Translator
from tagger.messages import Message
from tagger.settings import ShopSettings
from tagger.trade import grades
from tagger.trade.tables import Tables
from tagger.units import MM_PER_INCH

CARD: Final = (85.60, 53.98)
"""A bank card: ISO/IEC 7810, ID-1."""
CHECK_MM, CHECK_IN = 100.0, 4 * MM_PER_INCH
MARGIN: Final = 8.0
_USE, _FOOT, _CODE, _NAME = (
    19.0,
    CARD[1] + 3,
    29.0,
    40.0,
)  # mm: how it is used, the foot, its code, the shop's name


@dataclass(frozen=True)
class Head:
    """What a sheet is called, how it is used, and what the code opens: the query of ``/identify``."""

    title: Message
    use: Message
    query: str
    scan: Message = field(default_factory=lambda: Message("gauges-scan"))


class Book:
    """The pages of a sheet, one after the other.

    ``top``, ``bottom``, ``left`` and ``right`` bound what a sheet may draw on, mm; ``notes`` is what is left below
    it for where the figures come from.
    """

    def __init__(self, paper: str, settings: ShopSettings, tables: Tables, t: Translator, *, title: str, notes: float, wide: bool = False) -> None:  # fmt: skip
        if paper not in PAPERS:
            raise SpecError(Problem("paper", paper, Message("gauges-paper", known=tuple(PAPERS))))
        across, down = PAPERS[paper]
        self.width, self.height = (down, across) if wide else (across, down)
        self.settings, self.tables, self.t = settings, tables, t
        self._notes, self.top = notes, MARGIN + _USE
        self._out = io.BytesIO()
        # A viewer that heeds it prints at 100 % without being told to.
        self._canvas: Any = Canvas(self._out, pagesize=(self.width * mm, self.height * mm), pageCompression=1)
        self._canvas.setTitle(title)
        self._canvas.setAuthor(settings.shop_name)
        self._canvas.setViewerPreference("PrintScaling", "None")
        self._pages, self.sources = 0, _Sources(tables, t)
        self.board = Board(self._canvas, self.width, self.height)

    @property
    def left(self) -> float:
        return MARGIN

    @property
    def right(self) -> float:
        return self.width - MARGIN

    @property
    def bottom(self) -> float:
        return self.height - MARGIN - _FOOT - self._notes

    def new_page(self, head: Head) -> None:
        """Begins a page, after the one that is open; with its head and foot."""
        if self._pages:
            self._end_page()
        self._pages += 1
        self._head(head)
        self._foot(qr(f"{self.settings.base_url.rstrip('/')}/identify?{head.query}", "Q"), head.scan)

    def to_pdf(self) -> bytes:
        """The whole sheet."""
        self._end_page()
        self._canvas.save()
        return self._out.getvalue()

    def _end_page(self) -> None:
        self.sources.draw(self.board, self.left, self.bottom + 1, self.right - self.left, self._notes - 2)
        self._canvas.showPage()

    def _head(self, head: Head) -> None:
        across = self.right - self.left
        self.board.paragraph(self.left, MARGIN, across - _NAME, 6, self.t(head.title), 4.6, bold=True)
        name = self.settings.shop_name
        size = 2.4 * min(1.0, (_NAME - 2) / max(width_of(name, 2.4), 1.0))
        self.board.text(self.right, MARGIN + 3.6, name, size, anchor="end")
        self.board.text(self.right, MARGIN + 7, str(self._pages), 2.4, anchor="end")
        used = self.board.paragraph(self.left, MARGIN + 7.5, across - 12, _USE, self.t(head.use), 2.6)
        self.top = MARGIN + 7.5 + used + 3.5

    def _foot(self, code: Symbol, scan: Message) -> None:
        board, t = self.board, self.t
        x, y = self.left, self.height - MARGIN - CARD[1]
        board.outline(x, y, *CARD)
        board.paragraph(x + 3, y + 2, CARD[0] - 6, 16, t("gauges-card"), 2.4)
        board.symbol(x + 2, y + CARD[1] - _CODE - 2, _CODE, code)
        beside = CARD[0] - _CODE - 7
        board.paragraph(x + _CODE + 4, y + CARD[1] - _CODE, beside, _CODE - 3, t(scan), 2.6, bold=True)  # fmt: skip
        x += CARD[0] + 4
        self._check_line(x, y + 5, CHECK_MM, 10, t("gauges-check-mm"))
        self._check_line(x, y + 14, CHECK_IN, 4, t("gauges-check-in"))
        board.paragraph(x, y + 17, self.right - x, 12, t("gauges-check"), 2.5, bold=True)
        board.paragraph(x, y + 30, self.right - x, CARD[1] - 30, t("gauges-cautions"), 2.5)

    def _check_line(self, x: float, y: float, length: float, parts: int, words: str) -> None:
        """A line between two ticks whose outer middles are ``length`` apart."""
        self.board.line(((x, y), (x + length, y)), width=0.25)
        for part in range(parts + 1):
            at, up = x + length * part / parts, 3.0 if part in (0, parts) else 1.2
            self.board.line(((at, y - up), (at, y)))
        self.board.text(x + length / 2, y - 1.8, words, 2.4, bold=True, anchor="middle")


class _Sources:
    """Where the figures of the open page come from: numbered as they are first named."""

    def __init__(self, tables: Tables, t: Translator) -> None:
        self.tables, self.t = tables, t
        self._named: dict[str, int] = {}

    def note(self, source: str, confidence: str) -> str:
        """The number that stands behind a figure, "[2]"."""
        grade = grades.of_source(source, confidence, self.tables)
        told = self.t(Message("trade-graded", source=source, grade=grades.said(grade))) if grade else source
        return f"[{self._named.setdefault(told, len(self._named) + 1)}]"

    def draw(self, board: Board, x: float, y: float, across: float, down: float) -> None:
        """All that were named on the page, and none for the next."""
        if not self._named:
            return
        board.line(((x, y), (x + across, y)), grey=BLACK)
        told = "   ".join(f"[{number}] {words}." for words, number in self._named.items())
        board.paragraph(x, y + 0.8, across, down, told, 2.2)
        self._named.clear()
