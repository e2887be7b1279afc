"""The fitter's card: A6 pages that go into the bag with the hose assembly, for who installs it.

Its steps are those of the phone's guide (``tagger.trade.guide``), its figures those of the tag, each with where it
comes from. The QR code is that of the tag.
"""

from __future__ import annotations

import io
from collections.abc import Sequence
from typing import Any

from reportlab.lib.pagesizes import A6
from reportlab.lib.units import mm
from reportlab.platypus import Flowable, KeepTogether, SimpleDocTemplate, Table, TableStyle

from tagger import phrases, rated
from tagger.code.symbol import Symbol, qr
from tagger.drawing import Drawing, Text, clocking_picture, end_picture, ends_picture, moved, nut_picture
from tagger.i18n import Translator
from tagger.messages import Message, length, temperature
from tagger.papers import document
from tagger.printing.content import Tag
from tagger.printing.proof import prove_symbol
from tagger.settings import ClockingSense, ShopSettings
from tagger.trade import guide
from tagger.trade.guide import Line, Screen
from tagger.trade.tables import Tables

_MARGIN, _CODE, _SIDE, _GAP = 6.0, 27.0, 17.0, 2.0  # mm; the side is that of a picture, the gap before it
_WIDTH = A6[0] / mm - 2 * _MARGIN
_LETTER = 3.4  # mm: the em of the letter over an end's picture
_TEXT, _SMALL = 8, 6.6  # points: capitals of 2.1 and 1.7 mm
_WHOLE_TURN = 6  # flats: a longer turn is not drawn


def of_tag(tag: Tag, settings: ShopSettings, tables: Tables, language: str | None = None) -> bytes:
    """The card of a tag as PDF, in ``language`` (default: the shop's).

    Whoever makes it out for a registered hose refuses one that must not be used first (``refuse_blocked``).
    """
    t = Translator(language or settings.language)
    radius = tag.assessment.bend_radius_mm if tag.assessment else None
    advice = (tag.assessment.end_a, tag.assessment.end_b) if tag.assessment else None
    screens = guide.screens(tag.content, radius, advice, tables)
    clockwise = settings.clocking_sense is ClockingSense.CLOCKWISE
    story = [*_front(tag, settings, t)]
    for place, screen in enumerate(screens, 1):
        story += _screen(place, screen, tag, clockwise, t)
    return _to_pdf(story, tag, t)


def _front(tag: Tag, settings: ShopSettings, t: Translator) -> list[Any]:
    """What it is, what it may be used for, and the code that leads to what has changed since."""
    spec, text = tag.spec, document.text
    pressures = [
        text(t(line), 11 if not n else _TEXT, bold=not n) for n, line in enumerate(rated.lines(tag.content))
    ]
    dangers = [_careful(t(line)) for line in rated.dangers(tag.content)]
    hottest = spec.max_temperature_c or (tag.assessment.max_temperature_c if tag.assessment else None)
    fluid = phrases.fluid_of(spec)
    duty = (
        fluid if hottest is None else Message("printing-duty", fluid=fluid, temperature=temperature(hottest))
    )
    heading = [
        text(t("papers-card-title"), 12, bold=True),
        text(tag.shown_number, 14, bold=True),
        text(tag.shop or settings.shop_name, _SMALL),
        *([text(t("printing-specimen"), 14, bold=True)] if tag.specimen else []),
    ]
    arrow = t.figure(length(spec.length_mm))
    return [
        _columns(heading, _Code(_symbol(tag)), _CODE),
        document.gap(1),
        text(t("printing-field-working_pressure"), _SMALL),
        *pressures,
        *dangers,
        text(t(duty), _TEXT),
        text(t(phrases.hose(spec.hose)), _TEXT),
        text(t("papers-card-end", end="A", what=phrases.end(spec.end_a)), _TEXT),
        text(t("papers-card-end", end="B", what=phrases.end(spec.end_b)), _TEXT),
        text(t(phrases.overall_length(spec)), _TEXT),
        document.gap(1),
        document.picture(ends_picture(spec, _WIDTH, 17, length_text=arrow)),
        document.gap(1),
        _careful(t("papers-card-scan")),
    ]


def _screen(place: int, screen: Screen, tag: Tag, clockwise: bool, t: Translator) -> list[Any]:
    """The steps of one place and one set of tools, each with its picture beside it; their sources below.

    No step goes over the end of a page, nor does a heading stand without its first step.
    """
    title = Message(f"fit-screen-{screen.name}")
    heading = (
        t("papers-card-screen", n=place, title=title)
        if screen.ends == "AB"
        else t("papers-card-screen-end", n=place, title=title, end=screen.ends)
    )
    rows = [
        (
            _line(line, screen, guide.said(line.step, tag.content, clockwise=clockwise), t),
            _pictures(line, screen, tag, clockwise),
        )
        for line in screen.lines
    ]
    wide = not any(pictures for _, pictures in rows)
    steps = [_columns([step], pictures, 0.1 if wide else _SIDE) for step, pictures in rows]
    sources = tuple(dict.fromkeys(line.source for line in screen.lines))
    last = document.text(t("papers-card-sources", sources=sources), _SMALL)
    head = [document.gap(2), document.text(heading, 9.5, bold=True), steps[0]]
    if len(steps) == 1:
        return [KeepTogether([*head, last])]
    return [KeepTogether(head), *steps[1:-1], KeepTogether([steps[-1], last])]


def _line(line: Line, screen: Screen, message: Message, t: Translator) -> Any:
    said = t(message)
    if screen.ends == "AB" and line.ends != "AB":
        said = t("papers-card-end", end=line.ends, what=message)
    return _careful(said) if line.step.caution else document.text(said, _TEXT)


def _careful(words: str) -> Any:
    """A step that keeps somebody whole: bold, with the sign of a warning."""
    return document.text(f"\u26a0 {words}", _TEXT, bold=True)


def _pictures(line: Line, screen: Screen, tag: Tag, clockwise: bool) -> list[Any]:
    """What a step speaks of, drawn: the end, the turn of its nut, the angle of two elbows."""
    found: list[Drawing] = []
    if screen.name == "match" and line is screen.lines[0]:
        found += [_end(tag, end, lettered=screen.ends == "AB") for end in screen.ends]
    if line.step.picture == "clocking" and tag.spec.clocking_deg is not None:
        found.append(_clocking(tag.spec.clocking_deg, clockwise))
    values = line.tightening
    turned = values.flats_max if values is not None and values.flats_basis is not None else None
    if line.step.picture == "nut_flats" and values is not None and turned and turned < _WHOLE_TURN:
        found.append(nut_picture(values.flats_min, turned, _SIDE - 1))
    return [part for one in found for part in (document.picture(one), document.gap(1))][:-1]


def _end(tag: Tag, end: str, *, lettered: bool) -> Drawing:
    """The end by itself, below its letter where the heading names both ends."""
    drawn = end_picture(tag.spec, end.lower(), _SIDE - 1, 12)
    if not lettered:
        return drawn
    letter = Text(drawn.width / 2, _LETTER * 0.8, end, _LETTER, bold=True, anchor="middle")
    return Drawing(drawn.width, drawn.height + _LETTER, (letter, *moved(drawn.items, 0, _LETTER)))


def _clocking(degrees: int, clockwise: bool) -> Drawing:
    """The angle as the shop counts it, and the assembly as its step has it held."""
    if not clockwise:
        return clocking_picture(degrees, _SIDE - 1)
    turned = f"{(360 - degrees) % 360}°"
    return clocking_picture(degrees, _SIDE - 1, angle_text=turned, clockwise=True, up=True)


def _columns(left: Sequence[Any], right: Any, width: float) -> Table:
    """A stack of paragraphs, and at its right what is ``width`` mm wide."""
    made = Table([[list(left), right]], colWidths=[(_WIDTH - width) * mm, width * mm])
    style: list[Any] = [(f"{side}PADDING", (0, 0), (-1, -1), 0) for side in ("LEFT", "RIGHT", "TOP")]
    style.append(("RIGHTPADDING", (0, 0), (0, -1), _GAP * mm if width > _GAP else 0))
    made.hAlign = "LEFT"
    made.setStyle(
        TableStyle([("VALIGN", (0, 0), (-1, -1), "TOP"), *style, ("BOTTOMPADDING", (0, 0), (-1, -1), 2)])
    )
    return made


def _symbol(tag: Tag) -> Symbol:
    """The tag's own code, proved to say what the tag says."""
    symbol = qr(tag.signed_link or tag.link, "Q")
    prove_symbol(tag, symbol)
    return symbol


class _Code(Flowable):  # type: ignore[misc]
    """A QR symbol with its quiet zone, ``_CODE`` mm wide: runs of dark modules as rectangles."""

    def __init__(self, symbol: Symbol) -> None:
        super().__init__()
        self.symbol = symbol
        self.width = self.height = _CODE * mm

    def wrap(self, *_: float) -> tuple[float, float]:
        return self.width, self.height

    def draw(self) -> None:
        module = self.width / self.symbol.full_size
        pen, quiet = self.canv, self.symbol.quiet
        path = pen.beginPath()
        for row, line in enumerate(self.symbol.modules):
            for column, dark in enumerate(line):
                if dark:
                    top = self.height - (quiet + row + 1) * module
                    path.rect((quiet + column) * module, top, module, module)
        pen.setFillColorRGB(0, 0, 0)
        pen.drawPath(path, stroke=0, fill=1)


def _to_pdf(story: list[Any], tag: Tag, t: Translator) -> bytes:
    out = io.BytesIO()
    title = t("papers-card-file-title", number=tag.shown_number)

    def foot(canvas: Any, made: Any) -> None:
        document.register_fonts()
        canvas.setFont("Paper", _SMALL)
        canvas.drawString(_MARGIN * mm, 4 * mm, tag.shown_number)
        canvas.drawRightString(A6[0] - _MARGIN * mm, 4 * mm, str(made.page))

    SimpleDocTemplate(
        out,
        pagesize=A6,
        leftMargin=_MARGIN * mm,
        rightMargin=_MARGIN * mm,
        topMargin=5 * mm,
        bottomMargin=8 * mm,
        title=title,
        author=tag.shop,
    ).build(story, onFirstPage=foot, onLaterPages=foot)
    return out.getvalue()
