"""What belongs to one place of an assembly in one place of the label: an end, and what lies between the ends."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

from tagger.drawing import Item, Text, clocking_picture, end_picture, moved
from tagger.drawing.primitives import rectangle
from tagger.printing import fields
from tagger.printing.fields import Said
from tagger.printing.part import Job, Part, too_small
from tagger.printing.template import SMALLEST_TEXT_MM, BetweenBox, EndBox
from tagger.printing.textfit import LEADING, TOP, Fitted, Paragraph, stack, stack_height

_GAP = 1.0  # mm between a picture and the text beside it
_LETTER = 7.0  # side of the plate with A or B, at most
_FIGURE = 6.6  # ems that a usual range of torque takes: "103–115 N·m"


def end_block(box: EndBox, index: int, job: Job) -> Part:
    """The end's letter and picture on its outer side (A left, B right), what is said of it beside or below them."""
    spec, content = job.tag.spec, job.tag.content
    end, values = (spec.end_a, content.tighten_a) if box.end == "a" else (spec.end_b, content.tighten_b)
    said = fields.end_said(end, values, job.template.languages)
    frame = _frame(box)
    drawn = list(frame.plate)
    if box.picture:
        drawn += moved(end_picture(spec, box.end, *frame.picture).items, *frame.picture_at)
    text = _text(_fitting(said, frame.room, box, index, job, spare=1), frame.room[1])
    return Part([*drawn, *moved(text, *frame.text_at)], [])


@dataclass(frozen=True, slots=True)
class _Frame:
    """Where in an end's box its parts stand: left and top, width and height in mm."""

    plate: tuple[Item, ...]
    picture_at: tuple[float, float]
    picture: tuple[float, float]
    text_at: tuple[float, float]
    room: tuple[float, float]


@lru_cache(maxsize=64)
def _frame(box: EndBox) -> _Frame:
    """Picture beside the text where the box is wide, above it where it is tall."""
    width, height = box.inner
    outer = box.end == "b"
    side = min(_LETTER, height * 0.3, width * 0.25)
    plate = tuple(_plate(box.end.upper(), width - side if outer else 0.0, side))
    if width < 1.35 * height:
        row = max(side, min(11.0, height * 0.24)) if box.picture else side
        across = round(min(width - side - _GAP, row * 1.8), 3)
        left = width - side - _GAP - across if outer else side + _GAP
        room = (width, height - row - 0.4)
        return _Frame(plate, (left, 0.0), (across, round(row, 3)), (0.0, row + 0.4), room)
    beside = min(width * 0.3, width - _GAP - box.text * _FIGURE) if box.picture else 0.0
    column = max(side, beside)
    picture = (round(column, 3), round(min(height - side - 0.4, column * 1.3), 3))
    text_at = (0.0 if outer else column + _GAP, 0.0)
    room = (width - column - _GAP, height)
    return _Frame(plate, (width - column if outer else 0.0, side + 0.4), picture, text_at, room)


def between(box: BetweenBox, index: int, job: Job) -> Part:
    """Hose and length; below them, of two elbows, the angle with its picture."""
    width, height = box.inner
    angle = fields.clocking_said(job.tag, job.template.languages)
    above = fields.between_said(job.tag, job.template.languages)
    if not angle:
        said = _fitting(above, (width, height), box, index, job)
        return Part(_text(said, height), [])
    degrees = job.tag.spec.clocking_deg
    assert degrees is not None
    if width > 3 * height:
        return _in_a_row(box, above, angle, degrees, index, job)
    beside = max(min(height * 0.6, width * 0.36), min(width * 0.45, box.text * 2.45))  # "270°"
    wide = width - beside - _GAP
    said = _fitting(above, (wide, height), box, index, job)
    size = min(beside, height * 0.65)
    figure = _fitting((angle, angle[:1]), (beside, height - size - 0.4), box, index, job)
    items = _text(said, height) + moved(_clocking(degrees, round(size, 3)), wide + _GAP, 0)
    return Part([*items, *moved(_text(figure, height - size - 0.4), wide + _GAP, size + 0.4)], [])


def _in_a_row(
    box: BetweenBox,
    above: tuple[tuple[Said, ...], ...],
    angle: tuple[Said, ...],
    degrees: int,
    index: int,
    job: Job,
) -> Part:
    """Text, angle and picture side by side, where the box is low."""
    width, height = box.inner
    figure = box.text * 2.45  # "270°"
    wide = width - height - figure - 2 * _GAP
    items = _text(_fitting(above, (wide, height), box, index, job), height)
    said = _fitting((angle, angle[:1]), (figure, height), box, index, job)
    items += moved(_text(said, height), wide + _GAP, 0)
    return Part([*items, *moved(_clocking(degrees, round(height, 3)), width - height, 0)], [])


def _fitting(
    forms: Sequence[Sequence[Said]],
    room: tuple[float, float],
    box: EndBox | BetweenBox,
    index: int,
    job: Job,
    spare: int = 0,
) -> list[tuple[Said, Fitted]]:
    """The fullest form that fits at about full size, else a short one as large as it can be.

    The last ``spare`` forms are for where no other fits at all.
    """
    width, height = (round(length, 3) for length in room)
    usual = len(forms) - spare
    found: list[tuple[Said, Fitted]] = []
    for place, said in enumerate(forms):
        if place >= usual and found:
            break
        stacked = stack(tuple([_paragraph(one, box) for one in said]), width, height)
        if stacked is None:
            continue
        found = list(zip(said, stacked, strict=True))
        if all(_large(each, its, box, width) for each, its in found):
            break
    if not found:
        raise too_small((one.text for one in forms[-1]), (width, height), SMALLEST_TEXT_MM, index, job)
    return found


def _large(said: Said, found: Fitted, box: EndBox | BetweenBox, width: float) -> bool:
    """Whether it is hardly smaller than its width alone asks for."""
    alone = stack((_paragraph(said, box),), width, 1e3) if said.main else None
    return alone is None or found.size >= alone[0].size * 0.9


def _paragraph(said: Said, box: EndBox | BetweenBox) -> Paragraph:
    largest = box.text if said.main else box.small * (1.15 if said.head else 1.0)
    return Paragraph(said.text, largest, SMALLEST_TEXT_MM, said.main or said.head, said.main)


def _text(stacked: list[tuple[Said, Fitted]], height: float) -> list[Item]:
    """The fitted texts below one another; what room is left is shared out between them."""
    spare = height - stack_height([found for _, found in stacked])
    gap = min(0.8, max(0.0, spare) / max(len(stacked), 1))
    items: list[Item] = []
    y = 0.0
    for said, found in stacked:
        for line in found.lines:
            items.append(Text(0.0, y + TOP * found.size, line, found.size, said.main or said.head))
            y += LEADING * found.size
        y += gap
    return items


def _plate(letter: str, x: float, side: float) -> list[Item]:
    """The end's letter, white on black."""
    em = side * 1.02
    text = Text(x + side / 2, side / 2 + em * 0.365, letter, em, True, "middle", "white")
    return [rectangle(x, 0.0, side, side, fill="black"), text]


@lru_cache(maxsize=512)
def _clocking(degrees: int, size: float) -> tuple[Item, ...]:
    return clocking_picture(degrees, size, angle_text="").items
