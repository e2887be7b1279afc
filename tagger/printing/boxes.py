"""What one box of a template puts on a label, in the box's own coordinates (its left top is 0, 0)."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache

from tagger.code import link
from tagger.code.symbol import CODE128_QUIET, Symbol, code128, qr
from tagger.drawing import (
    Circle,
    Item,
    Line,
    Shape,
    Text,
    clocking_picture,
    ends_picture,
    moved,
    nut_picture,
)
from tagger.drawing.primitives import Ink, rectangle
from tagger.errors import Problem, TemplateError
from tagger.messages import Message
from tagger.printing import fields, rating, sizing
from tagger.printing.content import Tag
from tagger.printing.fonts import missing
from tagger.printing.template import (
    SMALLEST_TEXT_MM,
    CautionBox,
    ClearBox,
    ClockingBox,
    Code128Box,
    EndsBox,
    FieldBox,
    FlatsBox,
    HoleBox,
    PressureBox,
    QrBox,
    RuleBox,
    Template,
    TextBox,
    TighteningBox,
    WordsBox,
    own_text,
)
from tagger.printing.textfit import LEADING, TOP, Fitted, fit
from tagger.printing.words import once, voices
from tagger.spec import AssemblySpec

_PAD = 0.6  # mm between a frame or a black ground and its text


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


@dataclass(frozen=True, slots=True)
class Job:
    """What is being laid out, and for which printer."""

    tag: Tag
    template: Template
    dpi: int


@dataclass(frozen=True, slots=True)
class Part:
    """What one box puts on the page, in the box's own coordinates (its left top is 0, 0)."""

    items: list[Item]
    symbols: list[Placed]


# Text ---------------------------------------------------------------------------------------


def _fitted(
    lines: tuple[str, ...], width: float, height: float, box: TextBox, index: int, job: Job, *, bold: bool
) -> Fitted:
    where = job.template.where(index)
    strange = missing("".join(lines))
    if strange:
        raise TemplateError(Problem(where, strange, Message("printing-box-letters", letters=strange)))
    fitted = fit(lines, round(width, 3), round(height, 3), box.text, min(box.text, box.text_min), bold)
    if fitted is None:
        message = Message(
            "printing-box-text",
            width=round(width, 1),
            height=round(height, 1),
            text=box.text_min,
            least=SMALLEST_TEXT_MM,
        )
        raise TemplateError(Problem(f"{where}, size", " / ".join(lines), message))
    return fitted


def _fullest(
    forms: tuple[tuple[str, ...], ...],
    width: float,
    height: float,
    box: TextBox,
    index: int,
    job: Job,
    *,
    bold: bool,
) -> Fitted:
    """The first of the forms that fits; the last is refused where it does not."""
    for lines in forms[:-1]:
        if fitted := fit(lines, round(width, 3), round(height, 3), box.text, box.text_min, bold):
            return fitted
    return _fitted(forms[-1], width, height, box, index, job, bold=bold)


def _set(
    fitted: Fitted, width: float, height: float, *, align: str, middle: bool, bold: bool, ink: Ink = "black"
) -> list[Item]:
    """The lines as text items in a rectangle."""
    size = fitted.size
    top = (height - fitted.height) / 2 if middle else 0.0
    x = {"left": 0.0, "centre": width / 2, "right": width}[align]
    anchor = {"left": "start", "centre": "middle", "right": "end"}[align]
    return [
        Text(x, top + size * (TOP + LEADING * row), line, size, bold, anchor, ink)  # type: ignore[arg-type]
        for row, line in enumerate(fitted.lines)
        if line
    ]


def _text_part(lines: tuple[str, ...], box: TextBox, index: int, job: Job) -> Part:
    return _of_forms((lines,), box, index, job)


def _of_forms(forms: tuple[tuple[str, ...], ...], box: TextBox, index: int, job: Job) -> Part:
    """The fullest of the forms for which there is room."""
    width, height = box.inner
    pad = _PAD if box.inverse or box.frame else 0.0
    if not forms[0]:
        return Part([], [])
    width, height = width - 2 * pad, height - 2 * pad
    fitted = _fullest(forms, width, height, box, index, job, bold=box.bold)
    ink: Ink = "white" if box.inverse else "black"
    items = _set(fitted, width, height, align=box.align, middle=box.middle, bold=box.bold, ink=ink)
    ground: list[Item] = [rectangle(0, 0, *box.inner, fill="black", width=0.0)] if box.inverse else []
    return Part(ground + moved(items, pad, pad), [])


def _field(box: FieldBox, index: int, job: Job) -> Part:
    forms = fields.forms_of(box.fields, job.tag, job.template.languages, box.caption)
    return _of_forms(forms, box, index, job)


def _words(box: WordsBox, index: int, job: Job) -> Part:
    languages = job.template.languages
    if isinstance(box.say, str):
        return _text_part(once(voice(own_text(box.say)) for voice in voices(languages)), box, index, job)
    said = [box.say[language] for language in languages if language in box.say]
    return _text_part(tuple(said) or (next(iter(box.say.values())),), box, index, job)


def _tightening(box: TighteningBox, index: int, job: Job) -> Part:
    forms = fields.tightening_lines(job.tag, box.ends, job.template.languages)
    return _of_forms(forms, box, index, job)


def _caution(box: CautionBox, index: int, job: Job) -> Part:
    width, height = box.inner
    sign = min(height, 7.0, width * 0.2)
    forms = fields.caution_lines(job.tag, job.template.languages, box.short)
    room, bold = width - sign - 1.0, box.bold or bool(job.tag.content.dangers)
    fitted = _fullest(forms, room, height, box, index, job, bold=bold)
    text = _set(fitted, room, height, align="left", middle=True, bold=bold)
    return Part(_caution_sign(sign, height) + moved(text, sign + 1.0, 0), [])


def _caution_sign(size: float, height: float) -> list[Item]:
    """A triangle with an exclamation mark, drawn; shape as in ISO 7010 W001."""
    top, side = (height - size * 0.9) / 2, size
    middle = side / 2
    triangle = ((middle, top), (side, top + size * 0.88), (0.0, top + size * 0.88))
    bar = size * 0.055
    return [
        Shape(triangle, fill="black", width=0.0),
        Shape(
            (
                (middle - bar, top + size * 0.3),
                (middle + bar, top + size * 0.3),
                (middle + bar * 0.6, top + size * 0.6),
                (middle - bar * 0.6, top + size * 0.6),
            ),
            fill="white",
            width=0.0,
        ),
        Circle(middle, top + size * 0.72, bar * 1.1, fill="white", width=0.0),
    ]


def _pressure(box: PressureBox, index: int, job: Job) -> Part:
    """A black plate with the figures, their mark below them; a white one with what is known, to be written on."""
    untold = not any(isinstance(other, CautionBox) for other in job.template.box)
    said = rating.plate(job.tag, job.template.languages, dangers=untold)
    width, height = box.inner[0] - 2 * _PAD, box.inner[1] - 2 * _PAD
    small = box.model_copy(
        update={"text": max(SMALLEST_TEXT_MM, box.text * 0.36), "text_min": SMALLEST_TEXT_MM}
    )
    caption = _fitted((" / ".join(said.captions),), width, height * 0.4, small, index, job, bold=False)
    top = caption.height + 0.3
    if not said.figures:
        told = _fullest(said.forms, width, height - top, small, index, job, bold=False)
        items = _set(caption, width, caption.height, align="left", middle=False, bold=False)
        items += moved(_set(told, width, height - top, align="left", middle=True, bold=False), 0, top)
        return Part([rectangle(0, 0, *box.inner, width=0.25), *moved(items, _PAD, _PAD)], [])
    lines = said.figures if box.stacked else (" / ".join(said.figures),)
    for form in said.forms:
        mark = fit(form, round(width, 3), round((height - top) * 0.5, 3), small.text, SMALLEST_TEXT_MM, True)
        room = height - top - (mark.height + 0.3 if mark and mark.lines else 0.0)
        if mark and fit(lines, round(width, 3), round(room, 3), box.text, box.text_min, box.bold):
            break
    else:
        mark = _fitted(said.forms[-1], width, (height - top) * 0.5, small, index, job, bold=True)
        room = height - top - mark.height - 0.3
    fitted = _fitted(lines, width, room, box, index, job, bold=box.bold)
    ink: Ink = "white" if box.inverse else "black"
    items = _set(caption, width, caption.height, align=box.align, middle=False, bold=False, ink=ink)
    items += moved(_set(fitted, width, room, align=box.align, middle=True, bold=box.bold, ink=ink), 0, top)
    items += moved(
        _set(mark, width, mark.height, align=box.align, middle=False, bold=True, ink=ink), 0, top + room + 0.3
    )
    ground: list[Item] = [rectangle(0, 0, *box.inner, fill="black", width=0.0)] if box.inverse else []
    return Part(ground + moved(items, _PAD, _PAD), [])


# Symbols ------------------------------------------------------------------------------------


def _qr(box: QrBox, index: int, job: Job) -> Part:
    width, height = box.inner
    side = min(width, height, box.largest or 1e9)
    text = job.tag.link if box.holds == "all" else link.number_only(job.tag.link)
    grow = job.template.wraps is None  # round a hose the narrowest symbol reads best
    size = sizing.qr_size(text, side, box.levels, box.least_module, job.dpi, grow=grow)
    if size is None:
        need = sizing.least_side_mm(text, box.levels[-1], box.least_module, job.dpi)
        message = Message(
            "printing-box-qr",
            side=round(side, 1),
            dpi=job.dpi,
            dots=sizing.LEAST_DOTS,
            module=box.least_module,
            need=_up(need),
        )
        raise TemplateError(Problem(f"{job.template.where(index)}, size", round(side, 1), message))
    symbol = _code(text, size.level, size.version)
    pieces = []
    for x, y in _places(box, width, height, size.side_mm):
        left = sizing.snap(x, job.dpi) + symbol.quiet * size.module_mm
        top = sizing.snap(y, job.dpi) + symbol.quiet * size.module_mm
        pieces.append(Placed(symbol, left, top, size.dots, size.module_mm, index))
    return Part([], pieces)


def _up(mm: float) -> float:
    """A least size as it is told: never shown as less."""
    return math.ceil(mm * 10 - 1e-6) / 10


def _places(box: QrBox, width: float, height: float, side: float) -> list[tuple[float, float]]:
    """Left and top of each symbol: one in the middle, or as many as fit, evenly spread."""
    if box.repeat is None:
        return [((width - side) / 2, (height - side) / 2)]
    room, other = (width, height) if box.repeat == "across" else (height, width)
    count = max(1, int((room + 0.02) / side))
    gap = (room - count * side) / count
    along = [gap / 2 + step * (side + gap) for step in range(count)]
    aside = (other - side) / 2
    return [(a, aside) if box.repeat == "across" else (aside, a) for a in along]


def _code128(box: Code128Box, index: int, job: Job) -> Part:
    symbol = _bars(job.tag.number)
    width, _ = box.inner
    dots = sizing.bar_dots(symbol.size, width, box.least_module, job.dpi)
    if dots is None:
        need = symbol.full_size * max(box.least_module, sizing.LEAST_DOTS_BAR * sizing.dot_mm(job.dpi))
        message = Message("printing-box-bars", width=round(width, 1), dpi=job.dpi, need=_up(need))
        raise TemplateError(Problem(f"{job.template.where(index)}, size", round(width, 1), message))
    module = dots * sizing.dot_mm(job.dpi)
    left = max(0.0, (width - symbol.full_size * module) / 2) + CODE128_QUIET * module
    return Part([], [Placed(symbol, sizing.snap(left, job.dpi), 0.0, dots, module, index)])


@lru_cache(maxsize=4)  # a tag that carries its symbol twice has it made once
def _code(text: str, level: str, version: int) -> Symbol:
    return qr(text, level, version=version)


@lru_cache(maxsize=4)
def _bars(text: str) -> Symbol:
    return code128(text)


# Pictures, marks ----------------------------------------------------------------------------


@lru_cache(maxsize=512)
def _ends_picture(spec: AssemblySpec, width: float, height: float, text: str) -> tuple[Item, ...]:
    return ends_picture(spec, width, height, length_text=text).items


def _ends(box: EndsBox, index: int, job: Job) -> Part:
    text = fields.length_text(job.tag, job.template.languages) if box.length else ""
    return Part(list(_ends_picture(job.tag.spec, *box.inner, text)), [])


@lru_cache(maxsize=512)
def _clocking_picture(degrees: int, size: float) -> tuple[Item, ...]:
    return clocking_picture(degrees, size).items


def _clocking(box: ClockingBox, index: int, job: Job) -> Part:
    degrees = job.tag.spec.clocking_deg
    if degrees is None:
        return Part([], [])
    size = min(box.inner)
    items = _clocking_picture(degrees, size)
    return Part(moved(items, (box.inner[0] - size) / 2, (box.inner[1] - size) / 2), [])


def _flats(box: FlatsBox, index: int, job: Job) -> Part:
    figures = job.tag.content.tighten_a if box.end == "a" else job.tag.content.tighten_b
    if figures is None or figures.flats_max is None:
        return Part([], [])
    size = min(box.inner)
    return Part(list(nut_picture(figures.flats_min, figures.flats_max, size).items), [])


def _hole(box: HoleBox, index: int, job: Job) -> Part:
    width, height = box.inner
    middle, centre, radius = width / 2, height / 2, min(width, height) / 2 - 0.1
    arm = radius * 0.35
    return Part(
        [
            Circle(middle, centre, radius, width=0.15),
            Line(middle - arm, centre, middle + arm, centre, 0.15),
            Line(middle, centre - arm, middle, centre + arm, 0.15),
        ],
        [],
    )


def _rule(box: RuleBox, index: int, job: Job) -> Part:
    width, height = box.inner
    x2, y2 = (width, 0.0) if width >= height else (0.0, height)
    dash = {"line": 0.0, "fold": 1.0, "cut": 2.0}[box.kind]
    return Part([Line(0, 0, x2, y2, 0.2, dash=dash)], [])


def _clear(box: ClearBox, index: int, job: Job) -> Part:
    return Part([], [])


DRAW: dict[type, Callable[..., Part]] = {
    FieldBox: _field,
    WordsBox: _words,
    PressureBox: _pressure,
    TighteningBox: _tightening,
    CautionBox: _caution,
    QrBox: _qr,
    Code128Box: _code128,
    EndsBox: _ends,
    ClockingBox: _clocking,
    FlatsBox: _flats,
    HoleBox: _hole,
    RuleBox: _rule,
    ClearBox: _clear,
}
