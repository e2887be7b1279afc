"""What belongs to one place of an assembly in one place of the label: an end, and what lies between the ends."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import NamedTuple

from tagger.drawing import Group, Text, clocking_picture, moved
from tagger.drawing.ends import one_end
from tagger.drawing.primitives import rectangle
from tagger.drawing.way import Look
from tagger.errors import TemplateError
from tagger.printing import fields
from tagger.printing.fields import Said
from tagger.printing.part import Job, Part, too_small
from tagger.printing.template import SMALLEST_TEXT_MM, BetweenBox, EndBox
from tagger.printing.textfit import (
    TOP,
    Fitted,
    Paragraph,
    block_height,
    look,
    read_back,
    stack,
    stack_height,
)

_GAP = 1.0  # mm between a picture and the text beside it
_LETTER = 7.0  # side of the plate with A or B, at most
_Forms = tuple[tuple[Said, ...], ...]
_FIGURE = 6.6  # ems that a usual range of torque takes: "103–115 N·m"


def end_block(box: EndBox, index: int, job: Job) -> Part:
    """The end's letter and picture on its outer side (A left, B right), what is said of it beside or below them."""
    spec, content = job.tag.spec, job.tag.content
    end, values = (spec.end_a, content.tighten_a) if box.end == "a" else (spec.end_b, content.tighten_b)
    said = fields.end_said(end, values, job.template.languages)
    frame, text = _end_told(box, said)
    if text is None:
        raise _refused(said, frame.rooms[0], index, job)
    turn = (spec.clocking_deg or 0) if box.end == "b" else 0
    picture = (_end_picture(frame, box.end, Look.of(end), turn),) if box.picture else ()
    return Part([], [], (frame.plate, *picture, text))


@lru_cache(maxsize=512)  # ends alike have the same texts
def _end_told(box: EndBox, said: _Forms) -> tuple[_Frame, Group | None]:
    """The frame in which most is large, and the texts in it; None where they do not fit."""
    frame, text = _end_text(box, _looks(said))
    return frame, Group(tuple(text.told(said))) if text else None


@lru_cache(maxsize=192)  # elbows that are turned are hardly met again
def _end_picture(frame: _Frame, name: str, look: Look, turn: int) -> Group:
    """The picture of an end, in its place."""
    return Group(tuple(moved(one_end(look, name, turn, *frame.picture).items, *frame.picture_at)))


@lru_cache(maxsize=512)
def _end_text(box: EndBox, looks: _Forms) -> tuple[_Frame, _Set | None]:
    """The frame in which most is large, and what is said of the end in its place; None where it does not fit."""
    frame, found = _best(box, looks, len(looks))
    if _least(found) < box.text * 0.97:
        closer, fit = _best(box, looks, found.form + 1 if found else len(looks), close=True)
        if _least(fit) > _least(found) + 0.1:
            frame, found = closer, fit
    return frame, None if found is None else _Set.of(found, frame.rooms)


def _best(box: EndBox, looks: _Forms, forms: int, *, close: bool = False) -> tuple[_Frame, _Fit | None]:
    """The frame in which most is large, of those as large and as full the one with the widest picture.

    ``forms``: how many there are to choose from; ``close``: the lines closer together, and what belongs to a value
    on its line where that has room.
    """
    spare = 1 if forms == len(looks) else 0
    fitted = [
        (frame, _fits(looks[:forms], frame.rooms, box, spare=spare, close=close)) for frame in _frames(box)
    ]
    return max(fitted, key=lambda each: _liking(each[1], len(looks), box))


def _looks(forms: _Forms) -> _Forms:
    """The same as it looks, whatever its digits are: most labels of a run differ in nothing else."""
    return tuple([tuple([Said(look(text), *how) for text, *how in said]) for said in forms])


class _Room(NamedTuple):
    """Where texts stand in a box, in mm."""

    left: float
    top: float
    width: float
    height: float


_Rooms = tuple[_Room, ...]  # one, or one for what an end is and one for its tightening


@dataclass(frozen=True, slots=True)
class _Fit:
    """A form that fits, by its place among the forms: each of its texts as it is set."""

    form: int
    said: tuple[tuple[Said, Fitted], ...]


@dataclass(frozen=True, slots=True)
class _Set:
    """The looks of a form's texts in their place; ``form``: which of the forms it is."""

    form: int
    items: tuple[Text, ...]

    @classmethod
    def of(cls, fit: _Fit, rooms: _Rooms) -> _Set:
        first = _first_room([one for one, _ in fit.said], rooms)
        parts = zip((fit.said[:first], fit.said[first:]), rooms, strict=False)
        return cls(fit.form, tuple(item for part, room in parts for item in _text(part, room)))

    def told(self, forms: _Forms) -> list[Text]:
        """The texts of the form as they are."""
        lines = read_back([item.text for item in self.items], [one.text for one in forms[self.form]])
        return [
            item if item.text == line else Text(item.x, item.y, line, item.size, item.bold)
            for item, line in zip(self.items, lines, strict=True)
        ]


@dataclass(frozen=True, slots=True)
class _Frame:
    """Where in an end's box its parts stand: left and top, width and height in mm."""

    plate: Group
    picture_at: tuple[float, float]
    picture: tuple[float, float]
    rooms: _Rooms


_PICTURES = (1.0, 0.85, 0.7)  # shares of a picture's width, where the text beside it wants the room


def _liking(fitted: _Fit | None, forms: int, box: EndBox) -> tuple[bool, float, int]:
    """Whether it is legible and more is said than in the last form, which is for where no other fits; of what is read
    at arm's length the smallest em, in steps that make a difference; how much is said."""
    if fitted is None:
        return False, 0.0, 0
    size = round(_least(fitted) / 0.2) * 0.2
    return fitted.form < forms - 1 and _legible(fitted, box), size, -fitted.form


def _least(fitted: _Fit | None) -> float:
    """The smallest em of what is read at arm's length; 0 where it does not fit."""
    return min((its.size for one, its in fitted.said if one.main), default=10.0) if fitted else 0.0


@lru_cache(maxsize=64)
def _frames(box: EndBox) -> tuple[_Frame, ...]:
    """The block's frame, those with a narrower picture, and of a wide box those with the tightening under it."""
    shares = _PICTURES if box.picture else (1.0,)
    frames = [_frame(box, share) for share in shares]
    if _is_wide(box):
        frames += [_frame_under(box, lines, share) for lines in _HEAD_LINES for share in shares]
    return tuple(dict.fromkeys(frames))


def _is_wide(box: EndBox) -> bool:
    width, height = box.inner
    return width >= 1.35 * height


_HEAD_LINES = (4, 3, 2)  # lines of the smallest text, of what an end is


def _frame_under(box: EndBox, lines: int, share: float) -> _Frame:
    """What an end is beside its letter and picture, its tightening under them as broad as the box."""
    width, height = box.inner
    outer = box.end == "b"
    tall = round(block_height(lines, SMALLEST_TEXT_MM) + 0.1, 3)
    side = min(_LETTER, tall, width * 0.12)
    across = round(min(width * 0.2, tall * 1.4) * share, 3) if box.picture else 0.0
    taken = side + _GAP + (across + _GAP if box.picture else 0.0)
    head = _Room(0.0 if outer else taken, 0.0, width - taken, tall)
    picture_at = (width - side - _GAP - across if outer else side + _GAP, 0.0)
    plate = _plate(box.end.upper(), width - side if outer else 0.0, side)
    return _Frame(
        plate, picture_at, (across, tall), (head, _Room(0.0, tall + 0.3, width, height - tall - 0.3))
    )


def _frame(box: EndBox, share: float) -> _Frame:
    """Picture beside the text where the box is wide, above it where it is tall."""
    width, height = box.inner
    outer = box.end == "b"
    side = min(_LETTER, height * 0.3, width * 0.25)
    plate = _plate(box.end.upper(), width - side if outer else 0.0, side)
    if not _is_wide(box):
        row = max(side, min(11.0, height * 0.24)) if box.picture else side
        row = round(row * share, 3)
        side = min(side, row)
        plate = _plate(box.end.upper(), width - side if outer else 0.0, side)
        across = round(min(width - side - _GAP, row * 1.8), 3)
        left = width - side - _GAP - across if outer else side + _GAP
        room = _Room(0.0, row + 0.7, width, height - row - 0.7)
        return _Frame(plate, (left, 0.0), (across, row), (room,))
    beside = min(width * 0.3, width - _GAP - box.text * _FIGURE) if box.picture else 0.0
    column = max(side, beside * share)
    picture = (round(column, 3), round(min(height - side - 0.4, column * 1.3), 3))
    room = _Room(0.0 if outer else column + _GAP, 0.0, width - column - _GAP, height)
    return _Frame(plate, (width - column if outer else 0.0, side + 0.4), picture, (room,))


def between(box: BetweenBox, index: int, job: Job) -> Part:
    """Hose and length; of two elbows the angle with its picture, beside or below them.

    How the angle is counted stands with it where that makes nothing else smaller; the picture shows it anyway.
    """
    above = fields.between_said(job.tag, job.template.languages)
    angles = fields.clocking_said(job.tag, job.template.languages)
    frame, said, angle = _between(box, _looks(above), _looks(angles))
    if said is None:
        raise _refused(above, frame.room, index, job, 1 - _ANGLE_SHARE if angles else 1.0)
    if not angles:
        return Part([*said.told(above)], [])
    if angle is None:
        raise _refused(angles, frame.angle_room, index, job)
    degrees = job.tag.spec.clocking_deg
    assert degrees is not None
    picture = _clocking(degrees, frame.picture, frame.picture_at)
    return Part([*said.told(above), *angle.told(angles)], [], (picture,))


@lru_cache(maxsize=512)
def _between(box: BetweenBox, above: _Forms, angles: _Forms) -> tuple[_AngleFrame, _Set | None, _Set | None]:
    """The frame that is liked best; the looks of hose and length in it, and of the angle; None for what does not fit."""
    if not angles:
        whole = _Room(0.0, 0.0, *box.inner)
        frame = _AngleFrame(whole, whole, 0.0, (0.0, 0.0))
        alone = _fits(above, (frame.room,), box)
        return frame, _Set.of(alone, (frame.room,)) if alone else None, None
    frames = _angle_frames(box)
    said, angle = _fits(above, (frames[0].room,), box), _fits(angles[-1:], (frames[0].angle_room,), box)
    if said is None or angle is None:
        return frames[0], _Set.of(said, (frames[0].room,)) if said else None, None
    plain = _Between(frames[0], said, _Fit(len(angles) - 1, angle.said))
    best = next(_fuller(plain, frames, above, angles[:-1], box), plain)
    frame = best.frame
    return (
        frame,
        _Set.of(best.said, (frame.room,)),
        _Set.of(best.angle, (frame.angle_room,)),
    )


@dataclass(frozen=True, slots=True)
class _AngleFrame:
    """Where in a box between the ends the texts, the angle and its picture stand: places and sizes in mm."""

    room: _Room
    angle_room: _Room
    picture: float
    picture_at: tuple[float, float]


@dataclass(frozen=True, slots=True)
class _Between:
    """The texts of such a box, fitted in a frame."""

    frame: _AngleFrame
    said: _Fit
    angle: _Fit


def _fuller(
    plain: _Between, frames: tuple[_AngleFrame, ...], above: _Forms, angles: _Forms, box: BetweenBox
) -> Iterator[_Between]:
    """The same with more said of the angle, the most first, where all else stays as it is."""
    fitted: dict[_AngleFrame, _Fit | None] = {}
    for place, angle in enumerate(angles):
        for frame in frames:
            told = _fits((angle,), (frame.angle_room,), box)
            if told is None or not _no_smaller(told, plain.angle):
                continue
            if frame not in fitted:
                fitted[frame] = _fits(above, (frame.room,), box)
            if (said := fitted[frame]) is not None and _no_smaller(said, plain.said):
                yield _Between(frame, said, _Fit(place, told.said))


def _no_smaller(mine: _Fit, others: _Fit) -> bool:
    """Whether nothing of the others is left out, and what is read at arm's length is hardly smaller."""
    sizes = {one.text: found.size for one, found in mine.said}
    return all(
        sizes.get(one.text, 0.0) >= (found.size * 0.97 if one.main else 0.1) for one, found in others.said
    )


_ANGLE_SHARE = 0.45  # of a box's width, that the angle's column takes at most
_LEAST_PICTURE = 9.4  # mm: below it the letters of a clocking picture cover its elbows
_ASIDE = (
    12.2,
    18.6,
    27.0,
)  # mm: columns for how the angle is counted: in few words, in several lines, in two


@lru_cache(maxsize=64)
def _angle_frames(box: BetweenBox) -> tuple[_AngleFrame, ...]:
    """Where the parts may stand; what is liked best first."""
    width, height = box.inner
    if height > width:
        return tuple(_underneath(box))
    return tuple(_in_a_row(box) if width > 3 * height else _in_a_column(box))


def _underneath(box: BetweenBox) -> Iterator[_AngleFrame]:
    """The picture with the angle beside it under the text, where the box is tall; the picture smallest first."""
    width, height = box.inner
    for size in (_LEAST_PICTURE, _LEAST_PICTURE * 1.15, _LEAST_PICTURE * 1.3):
        size = round(size, 3)
        top = height - size
        beside = _Room(size + _GAP, top, width - size - _GAP, size)
        yield _AngleFrame(_Room(0.0, 0.0, width, top - _GAP), beside, size, (0.0, top))


def _in_a_column(box: BetweenBox) -> Iterator[_AngleFrame]:
    """The angle under its picture, right of the rest; the picture largest first."""
    width, height = box.inner
    gap = _GAP * (2 if width > 30 else 1)  # where there is width, a length is not read on into the angle
    least = max(min(height * 0.6, width * 0.36), min(width * _ANGLE_SHARE, box.text * 2.45))  # "270°"
    for beside in (least, *(each for each in _ASIDE if least < each < width * 0.5)):
        largest, left = min(beside, height * 0.65), width - beside
        for share in (1.0, 0.95, 0.9, 0.85, 0.8, 0.75, 0.7):
            size = round(largest * share, 3)
            if share == 1.0 or size >= _LEAST_PICTURE:
                below = _Room(left, size + 0.4, beside, height - size - 0.4)
                middle = left + (beside - size) / 2 if share < 1.0 else left
                yield _AngleFrame(_Room(0.0, 0.0, left - gap, height), below, size, (middle, 0.0))


def _in_a_row(box: BetweenBox) -> Iterator[_AngleFrame]:
    """Text, picture and angle side by side, where the box is low; the angle's part narrowest first.

    The picture stands between: "-12 (3/4 in) 315°" on one line reads as one.
    """
    width, height = box.inner
    least = box.text * 2.45  # "270°"
    for figure in (least, *(each for each in _ASIDE if least < each < width * 0.5)):
        wide = width - height - figure - 2 * _GAP
        room = _Room(width - figure, 0.0, figure, height)
        yield _AngleFrame(_Room(0.0, 0.0, wide, height), room, round(height, 3), (wide + _GAP, 0.0))


def _refused(forms: _Forms, room: _Room, index: int, job: Job, share: float = 1.0) -> TemplateError:
    texts = (one.text for one in forms[-1])
    return too_small(texts, (room.width, room.height), SMALLEST_TEXT_MM, index, job, share)


def _fits(
    forms: _Forms, rooms: _Rooms, box: EndBox | BetweenBox, spare: int = 0, *, close: bool = False
) -> _Fit | None:
    """The fullest form that fits at about full size, else a short one as large as it can be; None where none fits.

    The last ``spare`` forms are for where no other fits, or its values would be too small to read.
    """
    usual = len(forms) - spare
    found: _Fit | None = None
    for place, said in enumerate(forms):
        if place >= usual and found and _legible(found, box):
            break
        if (stacked := _stacked(said, rooms, box, close=close)) is None:
            continue
        found = _Fit(place, tuple(zip(said, stacked, strict=True)))
        if all(_large(each, its, box, round(rooms[-1].width, 3)) for each, its in found.said):
            break
    return found


def _stacked(
    said: tuple[Said, ...], rooms: _Rooms, box: EndBox | BetweenBox, *, close: bool
) -> list[Fitted] | None:
    """The texts set in their rooms; None where they do not fit."""
    found: list[Fitted] = []
    first = _first_room(said, rooms)
    for part, room in zip((said[:first], said[first:]), rooms, strict=False):
        paragraphs = tuple([_paragraph(one, box, close=close) for one in part])
        fitted = stack(paragraphs, round(room.width, 3), round(room.height, 3))
        if fitted is None:
            return None
        found += fitted
    return found


def _first_room(said: Sequence[Said], rooms: _Rooms) -> int:
    """How many of the texts stand in the first room: with two, the first read at arm's length begins the second."""
    if len(rooms) == 1:
        return len(said)
    return next((place for place, one in enumerate(said) if one.main), len(said))


_LEGIBLE = 3.0  # em in mm: capitals of 2.2 mm


def _legible(found: _Fit, box: EndBox | BetweenBox) -> bool:
    """Whether what is read at arm's length can be read without a glass in oily light."""
    return all(its.size >= min(_LEGIBLE, box.text) - 1e-9 for each, its in found.said if each.main)


def _large(said: Said, found: Fitted, box: EndBox | BetweenBox, width: float) -> bool:
    """Whether it is hardly smaller than its width alone asks for."""
    alone = stack((_paragraph(said, box),), width, 1e3) if said.main else None
    return alone is None or found.size >= alone[0].size * 0.9


def _paragraph(said: Said, box: EndBox | BetweenBox, *, close: bool = False) -> Paragraph:
    largest = box.text if said.main else box.small * (1.15 if said.head else 1.0)
    follows = said.follows or (close and said.head)
    return Paragraph(
        said.text, largest, SMALLEST_TEXT_MM, said.main or said.head, said.main, follows, close=close
    )


def _text(stacked: Sequence[tuple[Said, Fitted]], room: _Room) -> list[Text]:
    """The fitted texts below one another; what room is left is shared out between them."""
    spare = room.height - stack_height([found for _, found in stacked])
    gap = min(0.8, max(0.0, spare) / max(sum(not found.beside for _, found in stacked), 1))
    items: list[Text] = []
    y = 0.0
    for said, found in stacked:
        if found.beside:
            bold = said.main or said.head
            items.append(Text(room.left + found.beside, items[-1].y, found.lines[0], found.size, bold))
            continue
        for line in found.lines:
            baseline = y + TOP * found.size + room.top
            items.append(Text(room.left, baseline, line, found.size, said.main or said.head))
            y += found.leading * found.size
        y += gap
    return items


@lru_cache(maxsize=64)
def _plate(letter: str, x: float, side: float) -> Group:
    """The end's letter, white on black."""
    em = side * 1.02
    text = Text(x + side / 2, side / 2 + em * 0.365, letter, em, True, "middle", "white")
    return Group((rectangle(x, 0.0, side, side, fill="black"), text))


@lru_cache(maxsize=512)
def _clocking(degrees: int, size: float, at: tuple[float, float]) -> Group:
    return Group(tuple(moved(clocking_picture(degrees, size, angle_text="").items, *at)))
