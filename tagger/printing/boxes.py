"""What one box of a template puts on a label, in the box's own coordinates (its left top is 0, 0)."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace
from functools import lru_cache
from itertools import product

from tagger.code import link
from tagger.code.symbol import CODE128_QUIET, Symbol, code128, qr
from tagger.drawing import (
    Circle,
    Group,
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
from tagger.drawing.sign import do_not_use_sign
from tagger.errors import Problem, TemplateError
from tagger.messages import Message
from tagger.printing import fields, rating, sizing
from tagger.printing.blocks import between, end_block
from tagger.printing.fonts import missing
from tagger.printing.part import Job, Part, too_small, up
from tagger.printing.part import Placed as Placed
from tagger.printing.template import (
    SMALLEST_TEXT_MM,
    BetweenBox,
    Box,
    CautionBox,
    ClearBox,
    ClockingBox,
    Code128Box,
    EndBox,
    EndsBox,
    FieldBox,
    FlatsBox,
    HoleBox,
    PressureBox,
    QrBox,
    RuleBox,
    SignBox,
    Template,
    TextBox,
    TighteningBox,
    WordsBox,
    own_text,
)
from tagger.printing.textfit import LEADING, LEADING_DENSE, TOP, Fitted, Paragraph, fit, stack, stack_height
from tagger.printing.words import once, voices
from tagger.spec import AssemblySpec

_PAD = 0.6  # mm between a frame or a black ground and its text


# Text ---------------------------------------------------------------------------------------


def _fitted(
    lines: tuple[str, ...], width: float, height: float, box: TextBox, index: int, job: Job, *, bold: bool
) -> Fitted:
    _refuse_strange(lines, index, job)
    fitted = fit(lines, round(width, 3), round(height, 3), box.text, min(box.text, box.text_min), bold)
    if fitted is None:
        raise too_small(lines, (width, height), box.text_min, index, job)
    return fitted


def _refuse_strange(lines: tuple[str, ...], index: int, job: Job) -> None:
    """Raises TemplateError for letters that the fonts do not have."""
    if strange := missing("".join(lines)):
        where = job.template.where(index)
        raise TemplateError(Problem(where, strange, Message("printing-box-letters", letters=strange)))


def _fullest(
    forms: Iterable[tuple[str, ...]],
    width: float,
    height: float,
    box: TextBox,
    index: int,
    job: Job,
    *,
    bold: bool,
) -> Fitted:
    """The first of the forms that fits in letters that the fonts have; the last is refused where it does not.

    No form is made before those ahead of it are tried.
    """
    lines: tuple[str, ...] = ()
    for lines in forms:
        fitted = fit(lines, round(width, 3), round(height, 3), box.text, box.text_min, bold)
        if fitted and not missing("".join(lines)):
            return fitted
    return _fitted(lines, width, height, box, index, job, bold=bold)


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


def _of_forms(forms: Iterable[tuple[str, ...]], box: TextBox, index: int, job: Job) -> Part:
    """The fullest of the forms for which there is room; nothing where that says nothing."""
    width, height = box.inner
    pad = _PAD if box.inverse or box.frame else 0.0
    width, height = width - 2 * pad, height - 2 * pad
    fitted = _fullest(forms, width, height, box, index, job, bold=box.bold)
    if not fitted.lines:
        return Part([], [])
    ink: Ink = "white" if box.inverse else "black"
    items = _set(fitted, width, height, align=box.align, middle=box.middle, bold=box.bold, ink=ink)
    ground: list[Item] = [rectangle(0, 0, *box.inner, fill="black", width=0.0)] if box.inverse else []
    return Part(ground + moved(items, pad, pad), [])


def _field(box: FieldBox, index: int, job: Job) -> Part:
    forms = fields.forms_of(box.fields, job.tag, job.template.languages, box.caption, box.keep)
    if box.keep is None:
        return _of_forms(forms, box, index, job)
    width, height = box.inner
    dangers = fields.told_dangers(job.tag, job.template.languages)
    form: tuple[str, ...] = ()
    for leading, form in product((LEADING, LEADING_DENSE), forms):
        led = tuple(  # what must stay leads: bold, and larger where there is room; dangers are bold
            Paragraph(
                text,
                box.text * (1.0 if place else 1.3),
                box.text_min,
                box.bold or not place or text in dangers,
                not place,
                leading=leading,
            )
            for place, text in enumerate(form)
        )
        if (found := _stacked(led, width, height)) is not None and not missing("".join(form)):
            return Part(_column(found, width, height, align=box.align), [])
    _refuse_strange(form, index, job)
    raise too_small(form, (width, height), box.text_min, index, job)


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
    untold = not any(_has_line_for_dangers(other) for other in job.template.box)
    forms = fields.caution_lines(job.tag, job.template.languages, short=box.short, dangers=untold)
    bold = box.bold or (untold and bool(job.tag.content.dangers))
    width, height = box.inner
    room = width - _sign_side(box) - 1.0
    fitted = _fullest(forms, room, height, box, index, job, bold=bold)
    return Part([], [], (_caution_marks(box, fitted, bold),))


def tells_dangers(template: Template) -> bool:
    """Whether some box says what dangers an assembly has; caution and pressure do where no other does."""
    return any(
        isinstance(box, CautionBox | PressureBox) or _has_line_for_dangers(box) for box in template.box
    )


def _has_line_for_dangers(box: Box) -> bool:
    return (isinstance(box, PressureBox) and box.duty) or (
        isinstance(box, FieldBox) and "dangers" in box.fields
    )


def _sign_side(box: CautionBox) -> float:
    return min(box.inner[1], 7.0, box.inner[0] * 0.2)


@lru_cache(maxsize=256)  # most labels of a run have the same caution
def _caution_marks(box: CautionBox, fitted: Fitted, bold: bool) -> Group:
    """The sign, and the text beside it."""
    (width, height), sign = box.inner, _sign_side(box)
    text = _set(fitted, width - sign - 1.0, height, align="left", middle=True, bold=bold)
    return Group((*_caution_sign(sign, height), *moved(text, sign + 1.0, 0)))


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
    """A black plate with the figures, their mark below them; a white one with what is known, to be written on.

    With ``duty`` the dangers, fluid and temperature stand under it.
    """
    untold = not box.duty and not any(isinstance(other, CautionBox) for other in job.template.box)
    said = rating.plate(job.tag, job.template.languages, dangers=untold)
    duty = fields.duty_forms(job.tag, job.template.languages) if box.duty else None
    fitted = _pressure_marks(box, said, duty)
    if fitted is None and box.stacked and said.figures:  # side by side they take a line less
        fitted = _pressure_marks(box.model_copy(update={"stacked": False}), said, duty)
    if fitted is None:
        width, height = box.inner
        under = (one.text for one in _duty_forms(duty, box, bool(said.figures))[-1])
        least = (said.captions[0], *said.figures, *said.forms[-1], *under)
        raise too_small(least, (width - 2 * _PAD, height - 2 * _PAD - 0.8), SMALLEST_TEXT_MM, index, job)
    return Part([], [], (fitted,))


@lru_cache(maxsize=512)  # most hoses of a run have the pressure and the duty of others
def _pressure_marks(box: PressureBox, said: rating.Plate, duty: fields.Duty | None) -> Group | None:
    """The plate and what stands under it; None where they do not fit.

    Where what is said of the pressure finds no room in full, it gives way before the dangers do.
    """
    width, height = box.inner
    edge = _PAD if box.frame else 0.0  # between the box's own frame and what stands under the plate
    found = [
        (plate, under, room)
        for told, form in product(_duty_forms(duty, box, bool(said.figures)), said.forms)
        if (under := _stacked(told, width - 2 * edge, height * 0.75 if told else 0.0)) is not None
        and (room := height - (_height(under) + 0.8 + edge if under else 0.0)) > 2 * _PAD
        and (plate := _plate(said, form, box, (width - 2 * _PAD, room - 2 * _PAD))) is not None
    ]
    if not found:
        return None
    if not said.figures:  # a line that is too small to write on is said in fewer words, a danger never
        found = [each for each in found if each[1] == found[0][1]]
    plate, under, room = max(found, key=lambda each: _largest(each[0]))  # the first of those as large
    inverse = box.inverse and bool(said.figures)
    align = box.align if said.figures else "left"
    tall = min(room, _height(plate) + 2 * _PAD + 2.5) if box.duty and said.figures else room
    ground = (
        rectangle(0, 0, width, tall, fill="black") if inverse else rectangle(0, 0, width, tall, width=0.25)
    )
    items: list[Item] = [ground] if inverse or not said.figures else []
    inner = (width - 2 * _PAD, tall - 2 * _PAD)
    column = _column(
        plate, *inner, align=align, ink="white" if inverse else "black", middle=bool(said.figures)
    )
    items += moved(column, _PAD, _PAD)
    items += moved(_column(under, width, height - tall - 0.8 - edge, align="left"), edge, tall + 0.8)
    return Group(tuple(items))


Stacked = list[tuple[Paragraph, Fitted]]


def _plate(
    said: rating.Plate, form: tuple[str, ...], box: PressureBox, room: tuple[float, float]
) -> Stacked | None:
    """Caption, figures and what is said of them; None where they do not fit."""
    small = _small(box)
    figures = said.figures if box.stacked else (" / ".join(said.figures),)
    main = tuple(Paragraph(text, box.text, box.text_min, box.bold, main=True) for text in figures if text)
    largest = small if said.figures else max(small, _TO_WRITE_ON)
    told = tuple(Paragraph(text, largest, SMALLEST_TEXT_MM, bool(said.figures)) for text in form)
    caption = Paragraph(" / ".join(said.captions), small, SMALLEST_TEXT_MM)
    return _stacked((caption, *main, *told), *room)


_TO_WRITE_ON = 3.2  # em in mm, at most, of what a value is written beside: without figures there is room
_WRITABLE = 2.6  # em in mm: a line to write on and its neighbour are 3 mm apart


def _small(box: PressureBox) -> float:
    """The em of what is not a figure, at most."""
    return SMALLEST_TEXT_MM if box.text < 6 else max(SMALLEST_TEXT_MM, box.text * 0.36)


def _duty_forms(
    duty: fields.Duty | None, box: PressureBox, figures: bool
) -> tuple[tuple[Paragraph, ...], ...]:
    """Dangers first, then fluid and temperature: the fuller form first; one empty form without ``duty``.

    Between dangers and a plate to write on fluid and temperature are small, so that both have room.
    """
    if duty is None:
        return ((),)
    dangers, always = duty
    largest = max(_small(box), 2.6)
    usual = largest if figures or not dangers[0] else SMALLEST_TEXT_MM
    return tuple(
        (
            *(Paragraph(text, bold, SMALLEST_TEXT_MM, True) for text in form),
            *(Paragraph(text, plain, SMALLEST_TEXT_MM) for text in always),
        )
        for form, (bold, plain) in product(dangers, ((largest, usual), (SMALLEST_TEXT_MM,) * 2))
    )


def _stacked(paragraphs: tuple[Paragraph, ...], width: float, height: float) -> Stacked | None:
    found = stack(paragraphs, round(width, 3), round(height, 3)) if height > 0 or not paragraphs else None
    return None if found is None else list(zip(paragraphs, found, strict=True))


def _height(stacked: Stacked) -> float:
    return stack_height([found for _, found in stacked])


def _largest(stacked: Stacked) -> float:
    """Size of the figures; where there are none, of the lines to write on, as far as a hand asks for it."""
    figures = [found.size for one, found in stacked if one.main]
    lines = [min(found.size, _WRITABLE) for one, found in stacked if "_" in one.text]
    return round(min(figures or lines or [0.0]), 1)


def _column(
    stacked: Stacked, width: float, height: float, *, align: str, ink: Ink = "black", middle: bool = False
) -> list[Item]:
    """Fitted paragraphs below one another, what room is left shared out between them; more of it all round in the middle."""
    x = {"left": 0.0, "centre": width / 2, "right": width}[align]
    anchor = {"left": "start", "centre": "middle", "right": "end"}[align]
    spare, count = max(0.0, height - _height(stacked)), max(len(stacked), 1)
    gap = min(0.8, spare / count)
    items: list[Item] = []
    y = (spare - gap * (count - 1)) / 2 if middle else gap / 2
    for one, found in stacked:
        for line in found.lines:
            baseline = y + TOP * found.size
            items.append(Text(x, baseline, line, found.size, one.bold, anchor, ink))  # type: ignore[arg-type]
            y += found.leading * found.size
        y += gap
    return items


# Symbols ------------------------------------------------------------------------------------


def _qr(box: QrBox, index: int, job: Job) -> Part:
    width, height = box.inner
    side = min(width, height, box.largest or 1e9)
    chosen = _qr_sizes(job)[index]
    if chosen is None:
        need = sizing.least_side_mm(_texts(box, job)[-1], box.levels[-1], box.least_module, job.dpi)
        message = Message(
            "printing-box-qr",
            side=round(side, 1),
            dpi=job.dpi,
            dots=sizing.LEAST_DOTS,
            module=box.least_module,
            need=up(need),
        )
        raise TemplateError(Problem(f"{job.template.where(index)}, size", round(side, 1), message))
    text, size = chosen
    symbol = _code(text, size.level, size.version)
    pieces = []
    for x, y in _places(box, width, height, size.side_mm):
        left = sizing.snap(x, job.dpi) + symbol.quiet * size.module_mm
        top = sizing.snap(y, job.dpi) + symbol.quiet * size.module_mm
        pieces.append(Placed(symbol, left, top, size.dots, size.module_mm, index))
    return Part([], pieces)


def _texts(box: QrBox, job: Job) -> tuple[str, ...]:
    """What the symbol may say, from what is liked best: a signature is left out where it finds no room."""
    tag = job.tag
    if box.holds == "number":
        return (link.number_only(tag.link),)
    return (tag.signed_link, tag.link) if tag.signed_link and box.holds == "all" else (tag.link,)


_Sized = tuple[str, sizing.QrSize]


@lru_cache(maxsize=2)  # asked for each symbol of a label
def _qr_sizes(job: Job) -> dict[int, _Sized | None]:
    """What each symbol of a label says and its size, by its box; None where nothing fits.

    Two that say the same have one version: one symbol, drawn twice.
    """
    grow = not (job.template.wraps or job.template.sleeve)  # round a hose the narrowest symbol reads best
    boxes = ((index, box) for index, box in enumerate(job.template.box) if isinstance(box, QrBox))
    alone = {index: _alone(box, job, grow=grow) for index, box in boxes}
    if not grow:
        return alone
    least: dict[tuple[str, str], int] = {}
    for text, size in filter(None, alone.values()):
        least[text, size.level] = min(size.version, least.get((text, size.level), size.version))
    return {
        index: found and (found[0], replace(found[1], version=least[found[0], found[1].level]))
        for index, found in alone.items()
    }


def _alone(box: QrBox, job: Job, *, grow: bool) -> tuple[str, sizing.QrSize] | None:
    side = min(*box.inner, box.largest or 1e9)
    for text in _texts(box, job):
        if size := sizing.qr_size(text, side, box.levels, box.least_module, job.dpi, grow=grow):
            return text, size
    return None


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
        need = sizing.least_bars_mm(symbol.size, box.least_module, job.dpi)
        message = Message("printing-box-bars", width=round(width, 1), dpi=job.dpi, need=up(need))
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


def _sign(box: SignBox, index: int, job: Job) -> Part:
    size = min(box.inner)
    left, top = ((side - size) / 2 for side in box.inner)
    return Part(moved(do_not_use_sign(size).items, left, top), [])


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
    SignBox: _sign,
    HoleBox: _hole,
    RuleBox: _rule,
    ClearBox: _clear,
    EndBox: end_block,
    BetweenBox: between,
}
