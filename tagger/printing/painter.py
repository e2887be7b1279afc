"""A drawing as printer dots: black and white, modules and bars whole dots, text hinted."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from functools import lru_cache

import numpy as np
from PIL import Image, ImageDraw, ImageFont

from tagger.drawing import Circle, Drawing, Grid, Group, Item, Line, Shape, Text, moved
from tagger.printing.fonts import FILES, text_width
from tagger.printing.sizing import dot_mm

_WHITE, _BLACK = 1, 0


def draw(drawing: Drawing, dpi: int) -> Image.Image:
    """Any drawing as a 1-bit image at ``dpi``."""
    return draw_all([(drawing, 0.0, 0.0)], (drawing.width, drawing.height), dpi)


Region = tuple[int, int, int, int]  # left, top, right and bottom in dots


def draw_near(drawing: Drawing, regions: Iterable[Region], dpi: int) -> Image.Image:
    """A drawing as ``draw`` makes it, within these regions; what can touch none of them is left out."""
    dot = dot_mm(dpi)
    edges = [
        ((left - 1) * dot, (top - 1) * dot, (right + 1) * dot, (bottom + 1) * dot)
        for left, top, right, bottom in regions
    ]
    near: list[Item] = []
    for part in drawing.parts:
        if not isinstance(part, Group):
            near += (part,) if _touches(_extent(part), edges) else ()
        elif _touches(_extent_of_all(part), edges):
            near += [item for item in part.items if _touches(_extent(item), edges)]
    return draw(Drawing(drawing.width, drawing.height, tuple(near)), dpi)


def draw_all(
    placed: Iterable[tuple[Drawing, float, float]], size: tuple[float, float], dpi: int
) -> Image.Image:
    """Drawings on a sheet of ``size`` (mm), each with its left and top, as a 1-bit image at ``dpi``."""
    width, height = (max(1, round(side / dot_mm(dpi))) for side in size)
    painter = _Painter(Image.new("1", (width, height), _WHITE), dpi)
    for drawing, left, top in placed:
        for item in drawing.items if not (left or top) else moved(drawing.items, left, top):
            painter.paint(item)
    return painter.image


class _Painter:
    def __init__(self, image: Image.Image, dpi: int) -> None:
        self.image, self.dot = image, dot_mm(dpi)
        self.pen = ImageDraw.Draw(image)
        self.pen.fontmode = "1"

    def paint(self, item: Line | Shape | Circle | Text | Grid) -> None:
        if isinstance(item, Line):
            self._line(item)
        elif isinstance(item, Shape):
            self._shape(item)
        elif isinstance(item, Circle):
            self._circle(item)
        elif isinstance(item, Text):
            self._text(item)
        else:
            self._grid(item)

    def _dots(self, width: float) -> int:
        return max(1, round(width / self.dot))

    def _at(self, x: float, y: float) -> tuple[float, float]:
        """Dot coordinates of a point: the middle of dot 0 is 0.5 dots in."""
        return x / self.dot - 0.5, y / self.dot - 0.5

    def _line(self, item: Line) -> None:
        for x1, y1, x2, y2 in _dashes(item):
            ends = (*self._at(x1, y1), *self._at(x2, y2))
            rounded = tuple(round(value) for value in ends)
            self.pen.line(rounded, fill=_ink(item.ink), width=self._dots(item.width))

    def _shape(self, item: Shape) -> None:
        points = [self._at(x, y) for x, y in item.points]
        rounded = [(round(x), round(y)) for x, y in points]
        if item.fill:
            self.pen.polygon(rounded, fill=_ink(item.fill))
        if item.width:
            chain = [*rounded, rounded[0]] if item.closed else rounded
            self.pen.line(chain, fill=_ink(item.ink), width=self._dots(item.width), joint="curve")

    def _circle(self, item: Circle) -> None:
        x, y = self._at(item.x, item.y)
        radius = item.radius / self.dot
        bounds = tuple(round(value) for value in (x - radius, y - radius, x + radius, y + radius))
        fill = _ink(item.fill) if item.fill else None
        outline = _ink(item.ink) if item.width else None
        width = self._dots(item.width) if item.width else 0
        self.pen.ellipse(bounds, fill=fill, outline=outline, width=width)

    def _text(self, item: Text) -> None:
        eighths = max(1, round(item.size / self.dot * 8))
        if item.turn:
            self._turned_text(item, _font(item.bold, eighths))
            return
        x, ink = item.x - _shift(item), _ink(item.ink)
        baseline = round(item.y / self.dot)
        for letter, offset in _letters(item):
            left = round((x + offset) / self.dot)
            shape, aside, above = _letter(item.bold, eighths, letter)
            self.pen.bitmap((left + aside, baseline + above), shape, fill=ink)

    def _turned_text(self, item: Text, font: ImageFont.FreeTypeFont) -> None:
        """Drawn level on a sheet of its own, turned, and pasted where it is black."""
        em = round(item.size / self.dot)
        width = round(text_width(item.text, item.size, item.bold) / self.dot) + 2 * em
        level = Image.new("1", (width, 3 * em), 0)
        pen = ImageDraw.Draw(level)
        pen.fontmode = "1"
        for letter, offset in _letters(item):
            pen.text((em + round(offset / self.dot), 2 * em), letter, fill=1, font=font, anchor="ls")
        turned = level.rotate(-item.turn, expand=True)
        shift = _shift(item) / self.dot
        start = _turned_point(em + shift, 2 * em, level.size, item.turn)
        corner = (round(item.x / self.dot - start[0]), round(item.y / self.dot - start[1]))
        self.image.paste(_ink(item.ink), corner, turned)

    def _grid(self, item: Grid) -> None:
        across, down = round(item.pitch_x / self.dot), round(item.pitch_y / self.dot)
        corner = (round(item.x / self.dot), round(item.y / self.dot))
        rows, columns = item.modules.shape
        bits = np.packbits(item.modules, axis=1).tobytes()
        dark = Image.frombytes("1", (columns, rows), bits)
        size = (columns * max(1, across), rows * max(1, down))
        self.image.paste(_BLACK, corner, dark.resize(size, Image.Resampling.NEAREST))


Extent = tuple[float, float, float, float]  # left, top, right, bottom in mm


@lru_cache(maxsize=512)
def _extent_of_all(group: Group) -> Extent:
    lefts, tops, rights, bottoms = zip(*map(_extent, group.items), strict=True)
    return min(lefts), min(tops), max(rights), max(bottoms)


def _touches(extent: Extent, regions: Sequence[Extent]) -> bool:
    """Whether an item of this extent can put ink in one of these regions; in doubt yes."""
    low_x, low_y, high_x, high_y = extent
    for left, top, right, bottom in regions:
        if low_x < right and left < high_x and low_y < bottom and top < high_y:
            return True
    return False


def _extent(item: Item) -> Extent:
    """Left, top, right and bottom (mm) beyond which an item puts no ink."""
    if isinstance(item, Text):
        return _text_extent(item)
    if isinstance(item, Line):
        x1, y1, x2, y2, edge = item[:5]
        if x1 > x2:
            x1, x2 = x2, x1
        if y1 > y2:
            y1, y2 = y2, y1
        return x1 - edge, y1 - edge, x2 + edge, y2 + edge
    if isinstance(item, Shape):
        xs, ys = zip(*item.points, strict=True)
        edge = item.width
        return min(xs) - edge, min(ys) - edge, max(xs) + edge, max(ys) + edge
    if isinstance(item, Circle):
        edge = item.radius + item.width
        return item.x - edge, item.y - edge, item.x + edge, item.y + edge
    rows, columns = item.modules.shape
    return item.x, item.y, item.x + columns * item.pitch_x, item.y + rows * item.pitch_y


def _text_extent(item: Text) -> tuple[float, float, float, float]:
    size = item.size
    width = text_width(item.text, size, item.bold) + size * 0.3
    if item.turn:
        reach = width + size
        return item.x - reach, item.y - reach, item.x + reach, item.y + reach
    start = item.x - _SHARE[item.anchor] * width - size * 0.3
    above, below = _reach(item.text, item.bold)
    return start, item.y - size * above, start + width + size * 0.3, item.y + size * below


@lru_cache(maxsize=4096)  # as the widths of texts are
def _reach(text: str, bold: bool) -> tuple[float, float]:
    """How far a line's letters reach above and below the baseline, in ems; in small sizes hinting adds a dot."""
    reaches = [_reach_of(letter, bold) for letter in text]
    above, below = (
        max((up for up, _ in reaches), default=0.0),
        max((down for _, down in reaches), default=0.0),
    )
    return above + 0.1, below + 0.1


@lru_cache(maxsize=2048)
def _reach_of(letter: str, bold: bool) -> tuple[float, float]:
    _, top, _, bottom = _font(bold, 64 * 8).getbbox(letter, anchor="ls")
    return -top / 64, bottom / 64


_SHARE = {"start": 0.0, "middle": 0.5, "end": 1.0}  # of a text that stands before its place


def _ink(name: str) -> int:
    return _BLACK if name == "black" else _WHITE


def _shift(item: Text) -> float:
    """How far left of its x the text begins, in mm."""
    share = _SHARE[item.anchor]
    return share * text_width(item.text, item.size, item.bold) if share else 0.0


def _letters(item: Text) -> Iterable[tuple[str, float]]:
    """Each letter with its offset in mm, from the same widths the layout used.

    Hinting would round every letter's advance to whole dots and a line would grow past its box.
    """
    offset = 0.0
    for letter in item.text:
        if not letter.isspace():
            yield letter, offset
        offset += text_width(letter, item.size, item.bold)


def _turned_point(x: float, y: float, size: tuple[int, int], turn: int) -> tuple[float, float]:
    width, height = size
    return {90: (height - y, x), 180: (width - x, height - y), 270: (y, width - x)}[turn]


def _dashes(item: Line) -> Iterable[tuple[float, float, float, float]]:
    if not item.dash:
        yield item.x1, item.y1, item.x2, item.y2
        return
    length = math.hypot(item.x2 - item.x1, item.y2 - item.y1)
    if not length:
        return
    ux, uy = (item.x2 - item.x1) / length, (item.y2 - item.y1) / length
    at = 0.0
    while at < length:
        stop = min(at + item.dash, length)
        yield item.x1 + ux * at, item.y1 + uy * at, item.x1 + ux * stop, item.y1 + uy * stop
        at += 2 * item.dash


@lru_cache(maxsize=256)
def _font(bold: bool, eighths: int) -> ImageFont.FreeTypeFont:
    return ImageFont.truetype(str(FILES[bold]), eighths / 8, layout_engine=ImageFont.Layout.BASIC)


@lru_cache(maxsize=4096)
def _letter(bold: bool, eighths: int, letter: str) -> tuple[Image.Image, int, int]:
    """A letter's dots, and how far right and below of its place on the baseline they begin."""
    font = _font(bold, eighths)
    left, top, right, bottom = (round(edge) for edge in font.getbbox(letter, mode="1", anchor="ls"))
    shape = Image.new("1", (max(1, right - left), max(1, bottom - top)), 0)
    pen = ImageDraw.Draw(shape)
    pen.fontmode = "1"
    pen.text((-left, -top), letter, fill=1, font=font, anchor="ls")
    return shape, left, top
