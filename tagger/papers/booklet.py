"""The pocket booklet: what must be known before, how to measure, thread tables, flats, and where it all comes from.

Its pages are a quarter of the sheet: A6 of A4, 108 x 140 mm of Letter. ``imposition`` puts them on sheets to be
folded; one by one they are read on a screen.
"""

from __future__ import annotations

import io
from collections.abc import Sequence
from functools import partial
from html import escape
from itertools import zip_longest
from typing import Any, Final

from reportlab.lib import colors
from reportlab.lib.pagesizes import A4, LETTER
from reportlab.lib.styles import ParagraphStyle
from reportlab.lib.units import mm
from reportlab.pdfgen.canvas import Canvas
from reportlab.platypus import (
    BaseDocTemplate,
    Flowable,
    Frame,
    KeepTogether,
    NextPageTemplate,
    PageBreak,
    PageTemplate,
    Paragraph,
    Spacer,
    Table,
)

from tagger import phrases, units
from tagger.drawing.measuring import inside_picture, outside_picture, pitch_picture, seat_picture
from tagger.drawing.section import joint_section
from tagger.errors import Problem, TradeError
from tagger.i18n import Translator
from tagger.messages import Message
from tagger.papers import document
from tagger.papers.chart_cards import wide
from tagger.papers.connection_facts import (
    ALIKE_SIGN,
    UNVERIFIED_SIGN,
    Facts,
    Marks,
    all_facts,
    cited,
    flange_figures,
    numbered,
)
from tagger.papers.flats_chart import Count, counts
from tagger.papers.imposition import BookletCanvas
from tagger.papers.wall_chart import RED
from tagger.settings import ShopSettings
from tagger.spec import Sizing
from tagger.trade.steps import source_of
from tagger.trade.tables import Tables

PAPERS: Final = {"A4": A4, "Letter": LETTER}
TEXT_PT: Final = 6.6  # capitals of 1.7 mm: the smallest letters of the booklet
_BODY_PT, _HEAD_PT = 7.4, 11.0
_MARGIN, _FOOT = 6.0, 9.0  # mm
_SCREENS = ("safe", "injection")
_ALSO = ("leak_look", "leak_stop")  # steps of later screens that belong to the cautions
_Cells = list[tuple[str, ...]]
_AIR = 0.4  # ems between two headings


def of_shop(
    settings: ShopSettings,
    tables: Tables,
    language: str | None = None,
    *,
    paper: str = "A4",
    page_by_page: bool = False,
) -> bytes:
    """The booklet as PDF, on sheets to be folded, or ``page_by_page``. Raises TradeError for another paper."""
    if paper not in PAPERS:
        raise TradeError(
            Problem("paper", paper, Message("charts-not-a-paper", paper=paper, papers=tuple(PAPERS)))
        )
    t = Translator(language or settings.language)
    shop = (settings.shop_name, settings.shop_address, settings.shop_phone, settings.shop_email)
    key = ("booklet", paper, page_by_page, t.language, shop)
    return tables.once(key, lambda: _made(settings, tables, t, PAPERS[paper], page_by_page=page_by_page))


def _made(
    settings: ShopSettings, tables: Tables, t: Translator, sheet: tuple[float, float], *, page_by_page: bool
) -> bytes:
    page, out = (sheet[0] / 2, sheet[1] / 2), io.BytesIO()
    made = BaseDocTemplate(
        out,
        pagesize=page,
        title=t("charts-booklet-title"),
        author=settings.shop_name,
        pageTemplates=_templates(page),
    )
    maker = Canvas if page_by_page else partial(BookletCanvas, sheet=sheet)
    made.build(_Story(settings, tables, t, page).story(), canvasmaker=maker)
    return out.getvalue()


def _templates(page: tuple[float, float]) -> list[PageTemplate]:
    """Cover and back cover without a number, and the pages between them."""
    found = []
    for name in ("cover", "inner", "back"):
        frame = Frame(
            _MARGIN * mm, _FOOT * mm, page[0] - 2 * _MARGIN * mm, page[1] - (_MARGIN + _FOOT) * mm, 0, 0, 0, 0
        )  # fmt: skip
        found.append(
            PageTemplate(name, [frame], onPage=_foot if name == "inner" else _nothing, pagesize=page)
        )
    return found


def _foot(canvas: Any, made: Any) -> None:
    canvas.setFont("Paper", TEXT_PT)
    canvas.setFillGray(0)
    canvas.drawCentredString(canvas._pagesize[0] / 2, 4.5 * mm, str(made.page))


def _nothing(canvas: Any, made: Any) -> None:
    """For a page without a number."""


class _Story:
    """The pages' content, in the order in which it is read."""

    def __init__(
        self, settings: ShopSettings, tables: Tables, t: Translator, page: tuple[float, float]
    ) -> None:
        document.register_fonts()
        self.settings, self.tables, self.t = settings, tables, t
        self.width = page[0] / mm - 2 * _MARGIN
        self.page = page
        self.marks = Marks()
        self.every = all_facts(tables)

    def story(self) -> list[Flowable]:
        tables = [flowable for one in self.every for flowable in self._family(one)]
        flats = self._flats()
        t = self.t
        return [
            *self._cover(),
            NextPageTemplate("inner"),
            PageBreak(),
            *self._cautions(),
            PageBreak(),
            *self._measuring(),
            PageBreak(),
            _text(t("charts-booklet-tables"), _HEAD_PT, bold=True),
            _text(t("charts-tables-about"), _BODY_PT),
            _text(t("charts-unverified", sign=UNVERIFIED_SIGN), _BODY_PT),
            _text(t("charts-alike-means", sign=ALIKE_SIGN), _BODY_PT, bold=True, red=True),
            Spacer(1, 2 * mm),
            *tables,
            *flats,
            PageBreak(),
            *self._sources(),
            NextPageTemplate("back"),
            PageBreak(),
            *self._back(),
        ]

    def _cover(self) -> list[Flowable]:
        t, shop = self.t, self.settings
        lines = [shop.shop_address, shop.shop_phone, shop.shop_email]
        return [
            Spacer(1, 12 * mm),
            _text(t("charts-booklet-title"), 20, bold=True),
            _text(t("charts-booklet-sub"), 10),
            Spacer(1, 8 * mm),
            document.picture(joint_section(self.every[0].family, self.width, self.width * 0.5)),
            Spacer(1, 10 * mm),
            _text(shop.shop_name, 14, bold=True),
            *(_text(line, 9) for line in lines if line),
        ]

    def _cautions(self) -> list[Flowable]:
        """What keeps somebody whole comes first, in the words of the fit guide, with where it comes from."""
        steps = [s for s in self.tables.steps if s.screen in _SCREENS or s.step_id in _ALSO]
        t = self.t
        sources = tuple(dict.fromkeys(t(source_of(step, {})) for step in steps))
        return [
            _text(t("charts-booklet-cautions"), _HEAD_PT, bold=True),
            Spacer(1, 1.5 * mm),
            *(_text(f"\u26a0 {t(Message(step.message))}", _BODY_PT, bold=True, after=4) for step in steps),
            _text(t("charts-sources-of", sources=sources), TEXT_PT),
        ]

    def _measuring(self) -> list[Flowable]:
        t = self.t
        drawn = (
            ("charts-measure-outside", outside_picture()),
            ("charts-measure-inside", inside_picture()),
            ("charts-measure-pitch", pitch_picture()),
            ("charts-measure-seat", seat_picture()),
        )
        return [
            _text(t("charts-booklet-measure"), _HEAD_PT, bold=True),
            Spacer(1, 1 * mm),
            _text(t("charts-measure-clean"), _BODY_PT, after=3),
            *(
                self._beside(document.picture(one), 27, [_text(t(Message(id)), _BODY_PT)])
                for id, one in drawn
            ),
            _text(t("charts-measure-nose"), _BODY_PT, after=3),
            _text(t("charts-measure-compare"), _BODY_PT, bold=True),
        ]

    def _beside(self, picture: Flowable, left: float, text: list[Flowable]) -> Table:
        widths = [left * mm, (self.width - left) * mm]
        return Table([[picture, text]], colWidths=widths, hAlign="LEFT", style=[*_TIGHT, ("BOTTOMPADDING", (0, 0), (-1, -1), 5)])  # fmt: skip

    def _family(self, one: Facts) -> list[Flowable]:
        """A family on one page: its name, its section and how it seals, what it is taken for, its sizes."""
        t = self.t
        name = t("charts-numbered", number=one.number, family=phrases.connection(one.family))
        seals: list[Flowable] = [
            _text(f"{t(seal.message)} {self.marks.mark(*seal.cited)}", TEXT_PT) for seal in one.seals
        ]
        what = dict.fromkeys(row.what for size in one.sizes for row in size.plain)
        seals += [_text(t("charts-measured", what=Message(f"charts-what-{kind}")), TEXT_PT) for kind in what]
        picture = document.picture(joint_section(one.family, 34.0, 18.0))
        alike = tuple(numbered(other, self.every) for other in one.alike)
        block = [
            _band(name, self.width),
            self._beside(picture, 36, seals),
            *([_text(t("charts-alike", sign=ALIKE_SIGN, families=alike), TEXT_PT, bold=True, red=True)] if alike else []),
            self._sizes(one),
            Spacer(1, 3 * mm),
        ]  # fmt: skip
        return [KeepTogether(block)]

    def _sizes(self, one: Facts) -> Table:
        if one.family.is_flange:
            return self._table(*self._flange_cells(one))
        if all(size.plain for size in one.sizes):
            return self._table(*self._plain_cells(one))
        return self._table(*self._thread_cells(one))

    def _thread_cells(self, one: Facts) -> tuple[_Cells, _Cells]:
        t, rows = self.t, _Cells()
        sized = one.family.sized_by not in (Sizing.PIPE, Sizing.THREAD)
        for size in one.sizes:
            thread = size.thread
            assert thread is not None
            pitch = (_number(thread.pitch_mm, 2, t), _tpi(thread.tpi, thread.pitch_mm, t))
            cells = (
                size.name, thread.thread, *_pair(thread.thread_od_mm, t), *_pair(thread.female_minor_mm, t), *pitch,
                _dashes(size.dashes), self.marks.mark(cited(thread)),
            )  # fmt: skip
            rows.append(cells if sized else cells[1:])
        top = ("charts-column-size", "charts-column-thread", "charts-column-male", "", "charts-column-female", "", "charts-column-pitch", "", "charts-column-dash", "")  # fmt: skip
        first = tuple(t(Message(id)) if id else "" for id in top)
        second = ("", "", "mm", "in", "mm", "in", "mm", t("charts-column-tpi"), "", "")
        return [first, second] if sized else [first[1:], second[1:]], rows

    def _plain_cells(self, one: Facts) -> tuple[_Cells, _Cells]:
        t, rows = self.t, _Cells()
        for size in one.sizes:
            for row in size.plain:
                low, high = row.diameter_min_mm, row.diameter_max_mm
                name = f"{size.name} {row.series}".rstrip()
                shown = (t("charts-not-known"), "") if low is None else tuple(
                    a if a == b else f"{a} \N{EN DASH} {b}" for a, b in zip(_pair(low, t), _pair(high or low, t), strict=True)
                )  # fmt: skip
                rows.append(
                    (name, *shown, _dashes(row.hose_dashes or size.dashes), self.marks.mark(cited(row)))
                )
        heading = (t("charts-column-size"), "mm", "in", t("charts-column-dash"), "")
        return [heading], rows

    def _flange_cells(self, one: Facts) -> tuple[_Cells, _Cells]:
        """Millimetres with their source, inches below."""
        t, rows = self.t, _Cells()
        for size in one.sizes:
            said = dict.fromkeys(_FLANGE, "")
            for row in flange_figures(size):
                mark = self.marks.mark(cited(row))
                if row.what.startswith("screw"):
                    said[row.what] = f"{row.value} {mark}"
                else:
                    si, us = _pair(float(row.value), t)
                    said[row.what] = f"{si} mm {mark}\n{us} in"
            rows.append((size.name, *said.values()))
        heading = (
            t("charts-column-size"),
            t("charts-column-head"),
            t("charts-column-bolts"),
            "",
            t("charts-column-screws"),
            "",
        )
        return [heading], rows

    def _table(self, heading: _Cells, rows: _Cells, bold: Sequence[int] = (), *, spare: float = 1.0) -> Table:
        """Each column as broad as its longest cell; what is left over goes between them."""
        cells = [*heading, *rows]
        natural = [broad * TEXT_PT / mm for broad in _natural(heading, rows)]
        gap = max(0.0, (self.width - sum(natural)) / len(natural)) * spare
        style: list[Any] = [
            *_TIGHT,
            ("FONT", (0, 0), (-1, -1), "Paper", TEXT_PT, TEXT_PT * 1.15),
            ("FONT", (0, 0), (-1, len(heading) - 1), "Paper-Bold", TEXT_PT, TEXT_PT * 1.15),
            ("LINEBELOW", (0, len(heading) - 1), (-1, -1), 0.25, colors.black),
            ("BOTTOMPADDING", (0, 0), (-1, -1), 1.2),
            *(
                ("FONT", (0, len(heading) + row), (-1, len(heading) + row), "Paper-Bold", TEXT_PT)
                for row in bold
            ),
        ]
        return Table(
            cells, colWidths=[(one + gap) * mm for one in natural], style=style, repeatRows=len(heading), hAlign="LEFT"
        )  # fmt: skip

    def _flats(self) -> list[Flowable]:
        """Flats by dash, each with the start of its count and its source; first what our tags carry."""
        t = self.t
        story: list[Flowable] = [
            PageBreak(),
            _text(t("charts-booklet-flats"), _HEAD_PT, bold=True),
            _text(t("charts-flats-about"), _BODY_PT, after=2),
            _text(f"\u26a0 {t('charts-flats-method')}", _BODY_PT, bold=True, after=4),
        ]
        heading = (t("charts-flats-dash"), t("charts-flats-count"), t("charts-flats-start"), "")
        for one in self.every:
            found = counts(one, self.tables)
            if found:
                name = t("charts-numbered", number=one.number, family=phrases.connection(one.family))
                rows = [self._count(count) for count in found]
                shown = [place for place, count in enumerate(found) if count.shown]
                story.append(self._table([(name, "", "", ""), heading], rows, shown))
                story.append(Spacer(1, 3 * mm))
        return [*story, _text(t("charts-flats-none"), _BODY_PT)]

    def _count(self, count: Count) -> tuple[str, ...]:
        t = self.t
        size = count.size or t("charts-any-size")
        flats = t.figure(count.flats)
        return size, flats, t(phrases.basis(count.basis)), self.marks.mark(count.cited)

    def _sources(self) -> list[Flowable]:
        listed = [
            _text(self.t("charts-source", number=f"[{number}]", source=source), TEXT_PT)
            for number, source in self.marks.listed()
        ]
        half = (len(listed) + 1) // 2
        rows = [[left, right] for left, right in zip_longest(listed[:half], listed[half:], fillvalue="")]
        two = Table(rows, colWidths=[self.width / 2 * mm] * 2, style=_TIGHT, hAlign="LEFT")
        return [
            _text(self.t("charts-sources"), _HEAD_PT, bold=True),
            _text(self.t("charts-unverified", sign=UNVERIFIED_SIGN), TEXT_PT, bold=True, after=3),
            two,
        ]

    def _back(self) -> list[Flowable]:
        t = self.t
        return [
            _text(t("charts-care"), _BODY_PT, bold=True, after=8),
            _text(t("charts-fold-title"), _BODY_PT, bold=True),
            _text(t("charts-fold"), _BODY_PT),
        ]


_FLANGE = ("head_mm", "bolt_long_mm", "bolt_short_mm", "screw_inch", "screw_metric")
_TIGHT: list[Any] = [
    ("VALIGN", (0, 0), (-1, -1), "TOP"),
    *((f"{side}PADDING", (0, 0), (-1, -1), 0) for side in ("LEFT", "RIGHT", "TOP", "BOTTOM")),
]


def _text(words: str, size: float, *, bold: bool = False, red: bool = False, after: float = 0.0) -> Paragraph:
    style = ParagraphStyle(
        "b",
        fontName="Paper-Bold" if bold else "Paper",
        fontSize=size,
        leading=size * 1.25,
        textColor=RED if red else colors.black,
        spaceAfter=after,
    )
    return Paragraph(escape(words), style)


def _band(name: str, width: float) -> Table:
    """A family's name, white on black."""
    style = [
        ("BACKGROUND", (0, 0), (-1, -1), colors.black),
        ("TEXTCOLOR", (0, 0), (-1, -1), colors.white),
        ("FONT", (0, 0), (-1, -1), "Paper-Bold", _BODY_PT),
        ("LEFTPADDING", (0, 0), (-1, -1), 3),
        ("TOPPADDING", (0, 0), (-1, -1), 1),
        ("BOTTOMPADDING", (0, 0), (-1, -1), 2.5),
    ]
    return Table([[name]], colWidths=[width * mm], style=style, hAlign="LEFT")


def _natural(heading: _Cells, rows: _Cells) -> list[float]:
    """How many ems each column needs, bold or not; a heading over empty cells has their columns too."""
    found = [
        max(wide(line, True) for row in rows for line in row[place].split("\n"))
        for place in range(len(rows[0]))
    ]
    for row in heading:
        for place, text in enumerate(row):
            over = place + 1
            while over < len(row) and not row[over]:
                over += 1
            lacking = wide(text, True) + _AIR - sum(found[place:over])
            found[place] += max(0.0, lacking) if text else 0.0
    return found


def _number(value: float, places: int, t: Translator) -> str:
    return t.decimal(units.number_text(value, places))


def _pair(millimetres: float, t: Translator) -> tuple[str, str]:
    """A diameter in mm and in inches."""
    return _number(millimetres, 2, t), t.decimal(f"{millimetres / units.MM_PER_INCH:.3f}")


def _tpi(tpi: float | None, pitch_mm: float, t: Translator) -> str:
    """Threads per inch: as the thread is named by, or computed from a metric pitch."""
    return _number(tpi if tpi is not None else units.MM_PER_INCH / pitch_mm, 1, t)


def _dashes(dashes: Sequence[int]) -> str:
    return ", ".join(f"-{dash}" for dash in dashes)
