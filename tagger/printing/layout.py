"""Template and tag to a page: every text fitted, every symbol sized. Knows dots, but no device."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import lru_cache

from tagger.drawing import (
    Circle,
    Drawing,
    Grid,
    Group,
    Item,
    Line,
    Shape,
    Text,
    moved,
)
from tagger.drawing.primitives import rectangle
from tagger.errors import Problem, TemplateError
from tagger.messages import Message
from tagger.printing import sizing
from tagger.printing.boxes import DRAW, tells_dangers
from tagger.printing.content import Tag
from tagger.printing.part import Job, Part, Placed
from tagger.printing.template import (
    Box,
    FieldBox,
    PressureBox,
    Template,
)
from tagger.printing.words import voices


@dataclass(frozen=True, slots=True)
class Page:
    """One label laid out for a printer of ``dpi``."""

    drawing: Drawing
    symbols: tuple[Placed, ...]
    dpi: int


def lay_out(tag: Tag, template: Template, dpi: int = 203) -> Page:
    """The label of one tag; raises TemplateError where something does not fit, or would leave out a danger.

    Symbols stand on whole dots of a ``dpi`` printer, counted from the label's top left.
    """
    if tag.content.dangers and template.purpose != "do_not_use" and not tells_dangers(template):
        raise TemplateError(Problem(template.file, None, Message("printing-dangers-untold")))
    job = Job(tag, template, dpi)
    parts: list[Item | Group] = []
    symbols: list[Placed] = []
    for index, box in enumerate(template.box):
        part = DRAW[type(box)](box, index, job)
        x, y = sizing.snap(box.at[0], dpi), sizing.snap(box.at[1], dpi)
        if box.turn:
            part = _turned(part, box.turn, box.inner)
        if box.frame:
            parts.append(rectangle(box.at[0], box.at[1], *box.size, width=0.25))
        parts += [_in_place(group, x, y) for group in part.shared]
        parts += moved(part.items, x, y)
        for placed in part.symbols:
            left, top = sizing.snap(placed.x + x, dpi), sizing.snap(placed.y + y, dpi)
            placed = replace(placed, x=left, y=top)
            symbols.append(placed)
            parts.append(_grid(placed, box))
    if tag.specimen:
        parts += _specimen(template)
    return Page(Drawing(*template.size, tuple(parts)), tuple(symbols), dpi)


@lru_cache(maxsize=256)
def _in_place(group: Group, x: float, y: float) -> Group:
    """The same object on every label that has it there."""
    return Group(tuple(moved(group.items, x, y)))


def _specimen(template: Template) -> list[Item]:
    """The word across the label from corner to corner, a letter a step; none stands on the pressure's digits."""
    width, height = template.size
    word = voices(template.languages)[0](Message("printing-specimen"))
    em = min(width / len(word), height / 2.5, 9.0)
    items: list[Item] = []
    for place, letter in enumerate(word):
        share = (place + 0.5) / len(word)
        x, y = width * share, em * 0.6 + (height - em * 1.2) * share
        y = _beside_pressure(x, y, em * 0.6, template)
        items.append(Circle(x, y, em * 0.55, fill="white", width=0.3))
        items.append(Text(x, y + em * 0.29, letter, em * 0.8, bold=True, anchor="middle"))
    return items


def _beside_pressure(x: float, y: float, radius: float, template: Template) -> float:
    """The nearest height to ``y`` at which a letter leaves every pressure readable; ``y`` where there is none."""
    shown = [box for box in template.box if _shows_pressure(box)]
    hit = [box for box in shown if box.at[0] - radius < x < box.at[0] + box.size[0] + radius]
    edges = [edge for box in hit for edge in (box.at[1] - radius, box.at[1] + box.size[1] + radius)]
    free = [
        at
        for at in (y, *edges)
        if radius <= at <= template.size[1] - radius
        and all(not box.at[1] - radius < at < box.at[1] + box.size[1] + radius for box in hit)
    ]
    return min(free, key=lambda at: abs(at - y), default=y)


def _shows_pressure(box: Box) -> bool:
    return isinstance(box, PressureBox) or (isinstance(box, FieldBox) and "working_pressure" in box.fields)


def _grid(placed: Placed, box: Box) -> Grid:
    modules = placed.modules
    pitch_x = pitch_y = placed.module_mm
    if placed.symbol.kind == "code128":
        height = box.inner[1]
        pitch_x, pitch_y = (height, pitch_y) if placed.turn in (90, 270) else (pitch_x, height)
    return Grid(placed.x, placed.y, pitch_x, pitch_y, modules)


def _turned(part: Part, turn: int, inner: tuple[float, float]) -> Part:
    """The part turned clockwise by 90, 180 or 270 degrees; ``inner``: its size before."""
    width, height = inner

    def put(x: float, y: float) -> tuple[float, float]:
        return {90: (height - y, x), 180: (width - x, height - y), 270: (y, width - x)}[turn]

    symbols = []
    for placed in part.symbols:
        across = placed.symbol.size * placed.module_mm
        tall = height if placed.symbol.kind == "code128" else across
        corners = (put(placed.x, placed.y), put(placed.x + across, placed.y + tall))
        x, y = min(c[0] for c in corners), min(c[1] for c in corners)
        symbols.append(replace(placed, x=x, y=y, turn=turn))
    items = [item for group in part.shared for item in group.items] + part.items
    return Part([_turned_item(item, turn, put) for item in items], symbols)


def _turned_item(item: Item, turn: int, put: Callable[[float, float], tuple[float, float]]) -> Item:
    if isinstance(item, Line):
        (x1, y1), (x2, y2) = put(item.x1, item.y1), put(item.x2, item.y2)
        return Line(x1, y1, x2, y2, item.width, item.dash, item.ink)
    if isinstance(item, Shape):
        points = tuple([put(x, y) for x, y in item.points])
        return Shape(points, item.fill, item.width, item.closed, item.ink)
    x, y = put(item.x, item.y)
    if isinstance(item, Text):
        return item._replace(x=x, y=y, turn=(item.turn + turn) % 360)
    if isinstance(item, Circle):
        return item._replace(x=x, y=y)
    return replace(item, x=x, y=y)
