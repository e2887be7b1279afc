"""Labels on pages: one a page, or as many as the template's sheet holds."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from itertools import islice

from tagger.drawing import Drawing, Item, Line
from tagger.errors import Problem, TemplateError
from tagger.messages import Message
from tagger.printing.content import Tag
from tagger.printing.layout import Page, lay_out
from tagger.printing.proof import prove
from tagger.printing.sizing import snap
from tagger.printing.template import Template

Slot = tuple[Tag, int]  # a tag and its place on the page, counted from 0 row by row
Placed = tuple[Drawing, float, float]  # a label's drawing, its left and its top on the page in mm
Seen = Callable[[Tag, Page], object]  # told of each label that is laid out and proved


def page_size(template: Template) -> tuple[float, float]:
    """Width and height of a page in mm."""
    return template.sheet.page_size if template.sheet else template.size


def refuse_place(template: Template, start: int) -> None:
    """Raises TemplateError where a page has no place ``start``, counted from 1 row by row."""
    places = template.sheet.per_page if template.sheet else 1
    if not 1 <= start <= places:
        message = (
            Message("printing-start-one", start=start)
            if template.sheet is None
            else Message("printing-start", start=start, places=places)
        )
        raise TemplateError(Problem("start", start, message))


def sheets(tags: Iterable[Tag], template: Template, start: int = 1) -> Iterator[list[Slot]]:
    """The tags page by page; ``start`` is the first free place of a part-used sheet, from 1.

    Raises TemplateError where the sheet has no such place.
    """
    refuse_place(template, start)
    per_page = template.sheet.per_page if template.sheet else 1
    source, place = iter(tags), start - 1
    while page := [(tag, place + offset) for offset, tag in enumerate(islice(source, per_page - place))]:
        yield page
        place = 0


def laid_out(
    page: list[Slot], template: Template, dpi: int, *, forced: bool = False, seen: Seen | None = None
) -> list[Placed]:
    """Every label of a page, drawn and proved, with its place on whole dots; cut marks where the sheet wants them.

    ``forced``: see ``proof.prove``, which raises SymbolError for a label that does not say what its tag says.
    """
    placed = [(_cut_marks(template), 0.0, 0.0)] if template.sheet and template.sheet.cut_marks else []
    for tag, place in page:
        try:
            label = lay_out(tag, template, dpi)
        except TemplateError as error:
            error.number = tag.number
            raise
        prove(tag, label, forced=forced)
        if seen:
            seen(tag, label)
        placed.append((label.drawing, *_corner(template, place, dpi)))
    return placed


def _corner(template: Template, place: int, dpi: int) -> tuple[float, float]:
    sheet = template.sheet
    if sheet is None:
        return 0.0, 0.0
    row, column = divmod(place, sheet.columns)
    return (
        snap(sheet.first[0] + column * sheet.pitch[0], dpi),
        snap(sheet.first[1] + row * sheet.pitch[1], dpi),
    )


def _cut_marks(template: Template) -> Drawing:
    """Short lines outside the labels, in line with their edges."""
    sheet = template.sheet
    assert sheet is not None
    edges = []
    for axis, count in ((0, sheet.columns), (1, sheet.rows)):
        starts = [sheet.first[axis] + step * sheet.pitch[axis] for step in range(count)]
        edges.append(
            sorted({round(start + side, 3) for start in starts for side in (0.0, template.size[axis])})
        )
    items: list[Item] = []
    (xs, ys), gap, tick = edges, 1.0, 3.0
    for x in xs:
        for near, far in ((ys[0] - gap, ys[0] - gap - tick), (ys[-1] + gap, ys[-1] + gap + tick)):
            items.append(Line(x, near, x, far, 0.15))
    for y in ys:
        for near, far in ((xs[0] - gap, xs[0] - gap - tick), (xs[-1] + gap, xs[-1] + gap + tick)):
            items.append(Line(near, y, far, y, 0.15))
    return Drawing(*sheet.page_size, tuple(items))
