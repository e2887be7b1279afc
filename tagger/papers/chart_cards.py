"""The cards of the wall chart: what stands on each, and how it is set in a width and a size of letters."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property, lru_cache
from typing import Literal, NamedTuple

from reportlab.pdfbase import pdfmetrics

from tagger import phrases, units
from tagger.i18n import Translator
from tagger.messages import Message
from tagger.papers import document
from tagger.papers.connection_facts import (
    ALIKE_SIGN,
    Facts,
    Marks,
    Size,
    cited,
    flange_figures,
    numbered,
)
from tagger.spec import Connection, Sizing
from tagger.trade.fittings import Fitting
from tagger.trade.rows import FlangeRow

_LINE = 1.2  # ems from line to line
_PICTURE = 0.46  # of a card's width

Ink = Literal["black", "white", "red"]


class Word(NamedTuple):
    """A line of text, in mm from the top left of what it stands on; ``em`` in mm."""

    x: float
    y: float
    text: str
    em: float
    bold: bool = False
    ink: Ink = "black"

    @property
    def width(self) -> float:
        return wide(self.text, self.bold) * self.em


class Picture(NamedTuple):
    """Where the section of the joint stands; it is drawn only when its place is found."""

    x: float
    y: float
    width: float
    height: float


@dataclass(frozen=True)
class Card:
    """What stands of one family on the chart, from its own top left, in mm."""

    family: Connection | None
    width: float
    height: float
    words: tuple[Word, ...]
    picture: Picture | None = None
    band: float = 0.0  # height of the black band behind the name


@lru_cache(maxsize=8192)
def wide(text: str, bold: bool) -> float:
    """The width of a text in ems."""
    document.register_fonts()
    return float(pdfmetrics.stringWidth(text, "Paper-Bold" if bold else "Paper", 1))


def wrapped(text: str, ems: float, bold: bool = False) -> list[str] | None:
    """The text in lines of at most ``ems``; None where a word alone is longer."""
    lines: list[str] = []
    used, space = 0.0, wide(" ", bold)
    for word in text.split(" "):
        length = wide(word, bold)
        if length > ems:
            return None
        if lines and used + space + length <= ems:
            lines[-1] += f" {word}"
            used += space + length
        else:
            lines.append(word)
            used = length
    return lines


class Lines:
    """A stack of lines in a width, ``margin`` from the left; ``fits`` turns false where something is too broad for it."""

    def __init__(self, width: float, em: float, margin: float = 0.0) -> None:
        self.width, self.em, self.margin, self.y, self.fits = width, em, margin, 0.0, True
        self.words: list[Word] = []

    def text(
        self,
        said: str,
        *,
        scale: float = 1.0,
        bold: bool = False,
        ink: Ink = "black",
        left: float = 0.0,
        first: float | None = None,
    ) -> None:
        """The text in as many lines as it takes; ``first``: the foot of its first line, where that stands already."""
        em = self.em * scale
        lines = wrapped(said, (self.width - left) / em + 0.001, bold)
        if lines is None:
            self.fits = False
            return
        if first is not None:
            self.y = first - em * _LINE
        for line in lines:
            self.y += em * _LINE
            self.words.append(Word(self.margin + left, self.y - em * 0.3, line, em, bold, ink))

    def flow(self, items: Sequence[str], scale: float) -> None:
        """Items one behind the other, none broken where it need not be."""
        most, between = self.width / (self.em * scale), wide("   ", False)
        line: list[str] = []
        used = 0.0
        for item in items:
            length = wide(item, False)
            if line and used + between + length > most:
                self.text("   ".join(line), scale=scale)
                line, used = [], 0.0
            used += length + (between if line else 0.0)
            line.append(item)
        self.text("   ".join(line), scale=scale)

    def card(self, family: Connection | None) -> Card:
        return Card(family, self.width, self.y, tuple(self.words))


@dataclass(frozen=True)
class CardText:
    """All that is said of a family, before it is laid out."""

    facts: Facts
    name: str
    seals: str
    heading: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    red: int | None  # the column of the look-alikes
    alike: str
    stock: tuple[str, ...]

    def card(self, width: float, em: float, red_ems: float) -> Card | None:
        """The card in that width and size; None where something is too broad for it.

        ``red_ems``: how broad the column of look-alikes may be; it goes on in the next line.
        """
        pad = em * 0.5
        inner, lines = width - 2 * pad, Lines(width - 2 * pad, em, pad)
        lines.text(self.name, scale=1.25, bold=True, ink="white")
        band = lines.y + em * 0.25
        lines.y = band + em * 0.2
        top, picture = lines.y, inner * _PICTURE
        left = picture + em * 0.6
        lines.text(self.seals, left=left)
        high = max(lines.y - top, picture * 0.5)
        lines.y = top + high + em * 0.3
        self._table(lines, inner, red_ems)
        if self.alike:
            lines.text(self.alike, bold=True, ink="red")
        if self.stock:
            lines.flow(self.stock, scale=1.0)
        if not lines.fits:
            return None
        shown = Picture(pad, top, picture, high)
        return Card(self.facts.family, width, lines.y + em * 0.45, tuple(lines.words), shown, band)

    @cached_property
    def _wides(self) -> tuple[float, ...]:
        """How many ems each column needs."""
        every = (self.heading, *self.rows)
        return tuple(
            max(wide(row[place], row is self.heading or place == self.red) for row in every)
            for place in range(len(self.heading))
        )

    def _table(self, lines: Lines, inner: float, red_ems: float) -> None:
        """The rows under their heading, each column as broad as its longest cell."""
        em, every, wides = lines.em, (self.heading, *self.rows), [*self._wides]
        if self.red is not None:
            wides[self.red] = min(wides[self.red], red_ems)
        gap = min((inner / em - sum(wides)) / max(len(wides) - 1, 1), 2.5)
        if gap < 0.5:
            lines.fits = False
        for row in every:
            lines.y += em * _LINE
            x = 0.0
            for place, cell in enumerate(row):
                if place == self.red:
                    lines.text(cell, first=lines.y, left=x * em, bold=True, ink="red")
                else:
                    lines.words.append(
                        Word(lines.margin + x * em, lines.y - em * 0.3, cell, em, row is self.heading)
                    )
                x += wides[place] + gap


def card_text(
    one: Facts,
    every: Sequence[Facts],
    shown: frozenset[Connection],
    stock: Sequence[Fitting],
    marks: Marks,
    t: Translator,
) -> CardText:
    """``shown``: the families that have a card; a look-alike without one is named."""
    heading, rows, red = _rows(one, every, marks, t)
    what = dict.fromkeys(row.what for size in one.sizes for row in size.plain)
    measured = [t("charts-measured", what=Message(f"charts-what-{kind}")) for kind in what]
    named = tuple(numbered(other, every) for other in one.alike if other not in shown)
    return CardText(
        one,
        t("charts-numbered", number=one.number, family=phrases.connection(one.family)),
        " ".join([*(f"{t(seal.message)} {marks.mark(*seal.cited)}" for seal in one.seals), *measured]),
        heading,
        rows,
        red,
        t("charts-alike", sign=ALIKE_SIGN, families=named) if named else "",
        _stock(one.family, stock, t),
    )


def _stock(family: Connection, stock: Iterable[Fitting], t: Translator) -> tuple[str, ...]:
    """The shop's stock numbers for a family, each behind its size: one by one, for a list may be long."""
    mine = [fitting for fitting in stock if fitting.end.connection is family]
    items = [
        t("charts-stock-item", size=fitting.end.size_text, number=fitting.stock_number) for fitting in mine
    ]
    return (t("charts-stock"), *items) if items else ()


Rows = tuple[tuple[str, ...], tuple[tuple[str, ...], ...], int | None]


def _rows(one: Facts, every: Sequence[Facts], marks: Marks, t: Translator) -> Rows:
    of_numbers = {facts.family: facts.number for facts in every}

    def like(size: Size) -> str:
        return " ".join([ALIKE_SIGN, *(str(of_numbers[other]) for other in size.alike)]) if size.alike else ""

    if one.family.is_flange:
        return _flange_rows(one, like, marks, t)
    if all(size.plain for size in one.sizes):
        return _plain_rows(one, marks, t)
    sized = one.family.sized_by not in (Sizing.PIPE, Sizing.THREAD)  # else the thread begins with it
    rows = []
    for size in one.sizes:
        thread = size.thread
        assert thread is not None
        diameter = (_mm(thread.thread_od_mm, t), _inches(thread.thread_od_mm, t))
        cells = [size.name, thread.thread, *diameter, marks.mark(cited(thread)), like(size)]
        rows.append(tuple(cells if sized else cells[1:]))
    captions = [t("charts-column-size")] if sized else []
    captions += [t("charts-column-thread"), t("charts-column-male-mm"), "in", ""]
    captions.append(t("charts-column-alike", sign=ALIKE_SIGN))
    return tuple(captions), tuple(rows), len(captions) - 1


def _plain_rows(one: Facts, marks: Marks, t: Translator) -> Rows:
    """What a caliper reads on ends without a thread of their own; series that measure alike are one row."""
    rows: dict[tuple[str, ...], list[str]] = {}
    for size in one.sizes:
        for row in size.plain:
            low, high = row.diameter_min_mm, row.diameter_max_mm
            read = (t("charts-not-known"), "")
            if low is not None:
                read = (_span(low, high, _mm, t), _span(low, high, _inches, t))
            rows.setdefault((size.name, *read, marks.mark(cited(row))), []).append(row.series)
    captions = (t("charts-column-size"), "mm", "in", "")
    said = [
        (" ".join(filter(None, (cells[0], "/".join(series)))), *cells[1:]) for cells, series in rows.items()
    ]
    return captions, tuple(said), None


def _span(low: float, high: float | None, shown: Callable[[float, Translator], str], t: Translator) -> str:
    if high is None or high == low:
        return shown(low, t)
    return f"{shown(low, t)} \N{EN DASH} {shown(high, t)}"


def _flange_rows(one: Facts, like: Callable[[Size], str], marks: Marks, t: Translator) -> Rows:
    """Head and bolt spacing in mm with their sources; in inches in the row below."""
    rows: list[tuple[str, ...]] = []
    for size in one.sizes:
        groups = [
            [row for row in flange_figures(size) if row.what.startswith(what)] for what in ("head", "bolt")
        ]
        shown = [[_times(group, show, t) for group in groups] for show in (_mm, _inches)]
        sources = [marks.mark(*map(cited, group)) if group else "" for group in groups]
        first = [
            f"{figures} mm {mark}" if mark else "" for figures, mark in zip(shown[0], sources, strict=True)
        ]
        rows.append((size.name, *first, like(size)))
        rows.append(("", *(f"{figures} in" if figures else "" for figures in shown[1]), ""))
    ids = ("charts-column-size", "charts-column-head", "charts-column-bolts")
    captions = (*(t(Message(id)) for id in ids), t("charts-column-alike", sign=ALIKE_SIGN))
    return captions, tuple(rows), 3


def _times(rows: Sequence[FlangeRow], shown: Callable[[float, Translator], str], t: Translator) -> str:
    """ "52.4 × 26.2": the figures of one pattern."""
    return " \N{MULTIPLICATION SIGN} ".join(shown(float(row.value), t) for row in rows)


def _mm(millimetres: float, t: Translator) -> str:
    return t.decimal(units.number_text(millimetres, 2))


def _inches(millimetres: float, t: Translator) -> str:
    return t.decimal(f"{millimetres / units.MM_PER_INCH:.3f}")
