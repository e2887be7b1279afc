"""Thread diameters of one family: a bar as wide as each male, and wedges to push into each female."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from tagger import phrases
from tagger.gauges import shelves
from tagger.gauges.board import DARK, LIGHT, width_of
from tagger.gauges.frame import Book, Head
from tagger.gauges.shelves import Item
from tagger.messages import Message, diameter
from tagger.spec import Connection, Form, Sizing
from tagger.trade.identifying.likelihood import zone
from tagger.trade.identifying.marks import mark
from tagger.trade.rows import ThreadRow
from tagger.trade.tables import Tables

ROW, BAR = 9.6, 7.0  # mm: from bar to bar, and how tall one is
TAPER = 16.0  # mm of length for each mm of diameter: ASME B1.20.1 and ISO 7-1, 1 in 16
SLOPE = 3.0  # mm along a wedge for each mm that it grows wider
_LONGEST, _SPARE = 92.0, 1.6  # mm: of a wedge, and how much narrower and wider than its sizes it is
_LETTERS, _BESIDE = 2.5, 16.0  # mm: words on a wedge, and the room of those beside it


def families(tables: Tables) -> tuple[Connection, ...]:
    """The families whose ends have a thread to measure, in the order of the tables."""
    found = dict.fromkeys(family for family, _ in tables.threads)
    return tuple(f for f in found if any(Form(name) is not Form.EYE for name in tables.families[f].forms))


def size_text(family: Connection, size: str) -> str:
    """The size as the trade says it: "-12", "12 mm", "3/4"."""
    if family.sized_by is Sizing.DASH:
        return f"-{size}"
    return f"{size} mm" if family.sized_by is Sizing.TUBE else size


@dataclass(frozen=True)
class Thread:
    """A size of the family: what its male measures at most and at least, and its female."""

    row: ThreadRow
    male: tuple[float, float]
    female: tuple[float, float]

    @property
    def taper(self) -> bool:
        return self.row.thread_form in ("npt", "r")


def of_family(family: Connection, tables: Tables) -> list[Thread]:
    """The sizes of a family, the smallest first."""
    rows = sorted((r for (f, _), r in tables.threads.items() if f is family), key=lambda r: r.thread_od_mm)
    return [
        Thread(
            r,
            zone(r.thread_form, r.thread_od_mm, r.female_minor_mm, r.pitch_mm, Form.MALE),
            zone(r.thread_form, r.thread_od_mm, r.female_minor_mm, r.pitch_mm, Form.FEMALE_FIXED),
        )
        for r in rows
    ]


def draw(book: Book, family: Connection) -> None:
    """The pages of one family."""
    found = of_family(family, book.tables)
    title = Message("gauges-title-threads", family=phrases.connection(family))
    query = f"sheet=threads&family={family}"
    forms = [Form(name) for name in book.tables.families[family].forms]
    if any(form.is_male_thread for form in forms):
        use = "gauges-use-males-taper" if found[0].taper else "gauges-use-males"
        _males(book, found, Head(title, Message(use), query))
    if any(form.is_female_thread for form in forms):
        _females(book, found, Head(title, Message("gauges-use-females"), query))


def _males(book: Book, found: Sequence[Thread], head: Head) -> None:
    """Bars, one a row."""
    book.new_page(head)
    y = book.top
    for one in found:
        height = (one.male[1] - one.male[0]) * TAPER if one.taper else BAR
        if y + height > book.bottom:
            book.new_page(head)
            y = book.top
        _taper(book, one, y) if one.taper else _bar(book, one, y)
        _label(book, one, y + (height - BAR) / 2)
        y += height + ROW - BAR


def _bar(book: Book, one: Thread, y: float) -> None:
    """As wide as the thread at its largest; dark where a sound thread's edge may lie."""
    low, high = one.male
    book.board.rectangle(book.left, y, low, BAR, LIGHT)
    book.board.rectangle(book.left + low, y, high - low, BAR, DARK)


def _taper(book: Book, one: Thread, y: float) -> None:
    """A taper male lying down: its small end at the top, a line where it has its nominal diameter."""
    low, high = one.male
    height, nominal = (high - low) * TAPER, one.row.thread_od_mm
    middle = book.left + high / 2
    book.board.fill(
        ((middle - low / 2, y), (middle + low / 2, y), (middle + high / 2, y + height), (middle - high / 2, y + height)),
        LIGHT,
    )  # fmt: skip
    at = y + (nominal - low) * TAPER
    book.board.line(((middle - nominal / 2, at), (middle + nominal / 2, at)))


def _label(book: Book, one: Thread, y: float) -> None:
    row, board = one.row, book.board
    x = book.left + max(one.male) + 3
    board.text(x, y + 3.0, mark("D", row.thread_od_mm), 3.2, bold=True)
    board.text(x + 17, y + 3.0, size_text(row.family, row.size), 3.2, bold=True)
    board.text(x + 36, y + 3.0, f"{row.thread} {book.sources.note(row.source, row.confidence)}", _LETTERS)
    said = Message("gauges-male", low=diameter(one.male[0]), high=diameter(one.male[1]))
    board.paragraph(x, y + 3.6, book.right - x, 6.4, book.t(said), 2.2)


def wedges(found: Sequence[Thread]) -> list[list[Thread]]:
    """The sizes of each wedge: as many as are on a length that can be cut out and held."""
    groups: list[list[Thread]] = []
    for one in found:
        if groups and (one.female[1] - groups[-1][0].female[0] + 2 * _SPARE) * SLOPE <= _LONGEST:
            groups[-1].append(one)
        else:
            groups.append([one])
    return groups


def _females(book: Book, found: Sequence[Thread], head: Head) -> None:
    """Wedges beside one another, each with a band across it where a sound bore stops it."""
    shelves.draw(book, [_item(book, group) for group in wedges(found)], head)


def _item(book: Book, group: Sequence[Thread]) -> Item:
    """A wedge with what is written beside it where it is too narrow to be written on."""
    widest = group[-1].female[1] + _SPARE
    beside = max((one.female[1] / 2 + _BESIDE for one in group if not _has_room(one)), default=0.0)
    length = (group[-1].female[1] - group[0].female[0] + 2 * _SPARE) * SLOPE
    across = widest / 2 + max(widest / 2, beside)
    return Item(across, length, lambda x, y: _wedge(book, group, x + widest / 2, y, length))


def _has_room(one: Thread) -> bool:
    return width_of(f"{_name(one)} [1]", _LETTERS, bold=True) + 2 < one.female[0]


def _name(one: Thread) -> str:
    return f"{mark('F', one.row.female_minor_mm)}  {size_text(one.row.family, one.row.size)}"


def _wedge(book: Book, group: Sequence[Thread], middle: float, y: float, length: float) -> None:
    board, narrow = book.board, group[0].female[0] - _SPARE

    def band(low: float, high: float, grey: float) -> None:
        top, bottom = y + (low - narrow) * SLOPE, y + (high - narrow) * SLOPE
        left, right = (middle - low / 2, middle - high / 2), (middle + low / 2, middle + high / 2)
        board.fill(((left[0], top), (right[0], top), (right[1], bottom), (left[1], bottom)), grey)

    band(narrow, narrow + length / SLOPE, LIGHT)
    for one in group:
        band(*one.female, DARK)
    below = [*(one.female[0] for one in group[1:]), math.inf]
    for one, following in zip(group, below, strict=True):
        close = (
            following - one.female[1]
        ) * SLOPE < _LETTERS + 0.5  # to the next band: written above its own
        edge = y + ((one.female[0] if close else one.female[1]) - narrow) * SLOPE
        _wedge_words(book, one, middle, edge, above=close)


def _wedge_words(book: Book, one: Thread, middle: float, edge: float, *, above: bool) -> None:
    """Size and mark at a band's edge, on the wedge; where that is too narrow, the size on it and the mark beside it."""
    board, note = book.board, book.sources.note(one.row.source, one.row.confidence)
    if _has_room(one):
        at = edge - 0.6 if above else edge + 2.4
        board.text(middle, at, f"{_name(one)} {note}", _LETTERS, bold=True, anchor="middle")
        return
    size, at = size_text(one.row.family, one.row.size), edge - 0.6 if above else edge + 1.9
    board.text(middle, at, size, 1.8, bold=True, anchor="middle")
    beside = f"{mark('F', one.row.female_minor_mm)} {note}"
    board.text(middle + one.female[1] / 2 + 0.8, edge - 0.1 if above else edge + 0.4, beside, 1.9, bold=True)
