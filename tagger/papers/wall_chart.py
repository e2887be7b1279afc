"""The wall chart: every family of the tables, or of the shop's stock, as a card on one A3 or A2 page.

The letters are as large as the page allows: columns of cards are tried, and the size at which all cards just fit is
taken. Below ``LEAST_CAP_MM`` the chart is refused. Capitals of 2 mm are read at 1 m: a normal eye tells letters of
5 minutes of arc, 1.5 mm at that distance.
"""

from __future__ import annotations

import io
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise, product
from typing import Final

from reportlab.lib.colors import Color
from reportlab.lib.pagesizes import A2, A3, landscape
from reportlab.lib.units import mm
from reportlab.pdfgen.canvas import Canvas

from tagger import units
from tagger.drawing.section import joint_section
from tagger.errors import Problem, TradeError
from tagger.i18n import Translator
from tagger.messages import Message
from tagger.papers import document
from tagger.papers.chart_cards import Card, Lines, card_text
from tagger.papers.connection_facts import (
    ALIKE_SIGN,
    UNVERIFIED_SIGN,
    Facts,
    Marks,
    all_facts,
)
from tagger.settings import ShopSettings
from tagger.trade.fittings import Fitting
from tagger.trade.tables import Tables

PAPERS: Final = {"A3": landscape(A3), "A2": landscape(A2)}
LEAST_CAP_MM: Final = 1.4
CAP: Final = 0.729  # height of a capital of the face, in ems
RED: Final = Color(0.75, 0, 0.05)
_MARGIN, _GUTTER = 8.0, 2.2  # mm
_RED_EMS = (6.5, 8.0, 5.0, 11.0)  # how broad the column of look-alikes may be
_COLUMNS = (7, 6, 5, 8, 4, 3, 2, 9)  # the likeliest first: what follows is only tried where it may be better
_STEP = 0.02  # mm: between two sizes of letters that are tried
_SMALL = 0.8  # the sources at the foot, to the letters of the cards: nobody reads them from afar


@dataclass(frozen=True)
class Chart:
    """The page with its cards, each where its top left is."""

    width: float
    height: float
    cap_mm: float
    cards: tuple[tuple[float, float, Card], ...]


def of_shop(
    settings: ShopSettings,
    tables: Tables,
    language: str | None = None,
    *,
    paper: str = "A3",
    stock: Sequence[Fitting] | None = None,
    numbers: bool = False,
) -> bytes:
    """The chart as PDF. ``stock``: only the families of these fittings; ``numbers``: with their stock numbers.

    Raises TradeError where the paper is not known, the stock has no family of the tables, or the letters would be
    too small to be read.
    """
    t = Translator(language or settings.language)

    def made() -> bytes:
        chart = laid_out(settings, tables, t, paper=paper, stock=stock, numbers=numbers)
        title = t("charts-wall-title" if stock is None else "charts-wall-stock-title")
        return drawn(chart, title, settings.shop_name)

    if stock is not None:
        return made()
    return tables.once(("wall_chart", paper, t.language, settings.shop_name), made)


def drawn(chart: Chart, title: str, author: str) -> bytes:
    """The chart as PDF."""
    out = io.BytesIO()
    canvas = Canvas(out, pagesize=(chart.width * mm, chart.height * mm))
    canvas.setTitle(title)
    canvas.setAuthor(author)
    for x, y, card in chart.cards:
        _paint(canvas, chart, x, y, card)
    canvas.save()
    return out.getvalue()


def laid_out(
    settings: ShopSettings,
    tables: Tables,
    t: Translator,
    *,
    paper: str = "A3",
    stock: Sequence[Fitting] | None = None,
    numbers: bool = False,
) -> Chart:
    """The chart before it is drawn: what its tests look at."""
    if paper not in PAPERS:
        raise TradeError(
            Problem("paper", paper, Message("charts-not-a-paper", paper=paper, papers=tuple(PAPERS)))
        )
    document.register_fonts()
    every = all_facts(tables)
    chosen = every if stock is None else _of_stock(every, stock)
    title = t("charts-wall-title" if stock is None else "charts-wall-stock-title")
    page = _Page(t, paper, every, chosen, stock or () if numbers else (), title, settings.shop_name)
    return page.largest()


def _of_stock(every: Sequence[Facts], stock: Sequence[Fitting]) -> tuple[Facts, ...]:
    mine = {fitting.end.connection for fitting in stock}
    chosen = tuple(one for one in every if one.family in mine)
    if not chosen:
        raise TradeError(Problem("stock", None, Message("charts-no-stock")))
    return chosen


class _Page:
    """Tries columns and sizes of letters until all cards stand on the page."""

    def __init__(
        self,
        t: Translator,
        paper: str,
        every: Sequence[Facts],
        chosen: Sequence[Facts],
        stock: Sequence[Fitting],
        title: str,
        shop: str,
    ) -> None:
        self.t, self.paper, self.every, self.chosen = t, paper, every, chosen
        self.width, self.height = (side / mm for side in PAPERS[paper])
        self.inner = self.width - 2 * _MARGIN
        self.title, self.shop = title, shop
        self.marks = Marks()
        shown = frozenset(one.family for one in chosen)
        self.texts = [card_text(one, every, shown, stock, self.marks, t) for one in chosen]

    def largest(self) -> Chart:
        best = Chart(self.width, self.height, 0.0, ())
        for columns, red_ems in product(_COLUMNS, _RED_EMS):
            best = self._better(columns, red_ems, best)
        if best.cap_mm < LEAST_CAP_MM:
            raise TradeError(
                Problem(
                    "paper",
                    self.paper,
                    Message(
                        "charts-too-full",
                        paper=self.paper,
                        cap=self.t.decimal(units.number_text(best.cap_mm)),
                        least=self.t.decimal(units.number_text(LEAST_CAP_MM)),
                    ),
                )
            )
        return best

    def _better(self, columns: int, red_ems: float, best: Chart) -> Chart:
        """The largest letters with which the cards fit in so many columns, where they are larger than the best so far."""
        low, high = max(best.cap_mm / CAP, 0.4), 9.0
        while high - low > _STEP:
            em = low + _STEP if low * CAP == best.cap_mm and high == 9.0 else (low + high) / 2
            made = self._try(columns, red_ems, em)
            if made is None:
                if em == low + _STEP:
                    return best
                high = em
            else:
                low, best = em, made
        return best

    def _try(self, columns: int, red_ems: float, em: float) -> Chart | None:
        across = (self.inner - (columns - 1) * _GUTTER) / columns
        head, foot = self._head(em), self._foot(em)
        top = _MARGIN + head.height + _GUTTER
        room = self.height - _MARGIN - foot.height - _GUTTER - top
        cards = [card for text in self.texts if (card := text.card(across, em, red_ems)) is not None]
        if len(cards) < len(self.texts) or room <= 0:
            return None
        filled = _filled([card.height for card in cards], columns, room)
        if filled is None:
            return None
        placed = [(_MARGIN, _MARGIN, head), (_MARGIN, self.height - _MARGIN - foot.height, foot)]
        for column, (first, last) in enumerate(pairwise(filled)):
            mine = cards[first:last]
            spare = room - sum(card.height for card in mine)
            gap = min(spare / max(len(mine) - 1, 1), _GUTTER * 3)
            y = top
            for card in mine:
                placed.append((_MARGIN + column * (across + _GUTTER), y, card))
                y += card.height + gap
        return Chart(self.width, self.height, em * CAP, tuple(placed))

    def _head(self, em: float) -> Card:
        """The title, the shop, how to read the chart, and what the red sign means."""
        t, lines = self.t, Lines(self.inner, em)
        lines.text(self.title, scale=2.2, bold=True)
        lines.text(f"{self.shop}", scale=1.2)
        lines.text(t("charts-how"))
        lines.text(t("charts-alike-means", sign=ALIKE_SIGN), bold=True, ink="red")
        return lines.card(None)

    def _foot(self, em: float) -> Card:
        """What comes first, and where every figure comes from."""
        t, lines = self.t, Lines(self.inner, em)
        lines.text(t("charts-care"), bold=True)
        lines.text(t("charts-unverified", sign=UNVERIFIED_SIGN))
        sources = [
            t("charts-source", number=f"[{number}]", source=source) for number, source in self.marks.listed()
        ]
        lines.flow([t("charts-sources"), *sources], scale=_SMALL)
        return lines.card(None)


def _filled(heights: Sequence[float], columns: int, room: float) -> list[int] | None:
    """Where each column begins, cards in their order and the fullest column as low as can be; None if too full."""

    def packed(limit: float) -> list[int]:
        starts, used = [0], 0.0
        for place, height in enumerate(heights):
            needed = height + (_GUTTER if used else 0.0)
            if used + needed > limit:
                starts.append(place)
                used, needed = 0.0, height
            used += needed
        return [*starts, len(heights)]

    if max(heights) > room or len(packed(room)) - 1 > columns:
        return None
    low, high = max(heights), room
    while high - low > 0.5:
        middle = (low + high) / 2
        low, high = (low, middle) if len(packed(middle)) - 1 <= columns else (middle, high)
    return packed(high)


def _paint(canvas: Canvas, chart: Chart, x: float, y: float, card: Card) -> None:
    def up(down: float) -> float:
        return float((chart.height - down) * mm)

    if card.family is not None:
        canvas.setFillGray(0)
        canvas.rect(x * mm, up(y + card.band), card.width * mm, card.band * mm, stroke=0, fill=1)
        canvas.setLineWidth(0.25 * mm)
        canvas.rect(x * mm, up(y + card.height), card.width * mm, card.height * mm, stroke=1, fill=0)
    if card.picture is not None and card.family is not None:
        dx, dy, width, height = card.picture
        drawing = joint_section(card.family, width, height)
        document.picture(drawing).drawOn(canvas, (x + dx) * mm, up(y + dy + height))
    for word in card.words:
        canvas.setFillColor(RED if word.ink == "red" else Color(*[float(word.ink == "white")] * 3))
        canvas.setFont("Paper-Bold" if word.bold else "Paper", word.em * mm)
        canvas.drawString((x + word.x) * mm, up(y + word.y), word.text)
