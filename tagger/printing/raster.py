"""A page as printer dots: black and white, modules and bars whole dots, text hinted.

``image`` is what a thermal printer gets and what a PNG file holds.
"""

from __future__ import annotations

import io
import math
from collections.abc import Iterable, Iterator
from functools import lru_cache
from pathlib import Path
from typing import BinaryIO

import numpy as np
from PIL import Image, ImageDraw, ImageFont

from tagger.drawing import Circle, Drawing, Grid, Line, Shape, Text, moved
from tagger.printing.content import Tag
from tagger.printing.fonts import FILES, text_width
from tagger.printing.layout import lay_out
from tagger.printing.sheets import Placed, laid_out, page_size, sheets
from tagger.printing.sizing import dot_mm
from tagger.printing.template import Template

_WHITE, _BLACK = 1, 0


def image(tag: Tag, template: Template, dpi: int = 203) -> Image.Image:
    """One label as a 1-bit image of the printer's dots; raises TemplateError where a text does not fit."""
    return draw(lay_out(tag, template, dpi).drawing, dpi)


def png(tag: Tag, template: Template, dpi: int = 203) -> bytes:
    """One label as the bytes of a PNG file that knows its own resolution."""
    out = io.BytesIO()
    _save(image(tag, template, dpi), out, dpi)
    return out.getvalue()


def pages(tags: Iterable[Tag], template: Template, dpi: int = 203, start: int = 1) -> Iterator[Image.Image]:
    """The same pages as the PDF has, as 1-bit images."""
    for page in sheets(tags, template, start):
        yield _drawn(laid_out(page, template, dpi), page_size(template), dpi)


def write(
    tags: Iterable[Tag], template: Template, out: str | Path, *, dpi: int = 203, start: int = 1
) -> list[Path]:
    """Writes PNG files, one a page: ``out`` itself, and for more pages out-2.png, out-3.png and so on.

    Raises TemplateError where a tag does not fit; then no file is left behind, nor one there before
    written over.
    """
    first = Path(out)
    files: dict[Path, Path] = {}  # each beside itself first, so that all are whole or not there
    try:
        for number, page in enumerate(pages(tags, template, dpi, start), 1):
            file = first if number == 1 else first.with_stem(f"{first.stem}-{number}")
            part = files[file] = Path(f"{file}.part")
            _save(page, part, dpi)
        for file, part in files.items():
            part.replace(file)
    finally:
        for part in files.values():
            part.unlink(missing_ok=True)
    return list(files)


def draw(drawing: Drawing, dpi: int) -> Image.Image:
    """Any drawing as a 1-bit image at ``dpi``."""
    return _drawn([(drawing, 0.0, 0.0)], (drawing.width, drawing.height), dpi)


def _drawn(placed: Iterable[Placed], size: tuple[float, float], dpi: int) -> Image.Image:
    width, height = (max(1, round(side / dot_mm(dpi))) for side in size)
    painter = _Painter(Image.new("1", (width, height), _WHITE), dpi)
    for drawing, left, top in placed:
        for item in drawing.items if not (left or top) else moved(drawing.items, left, top):
            painter.paint(item)
    return painter.image


def _save(image: Image.Image, out: Path | BinaryIO, dpi: int) -> None:
    image.save(out, format="PNG", dpi=(dpi, dpi), optimize=True)


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
        font = _font(item.bold, max(1, round(item.size / self.dot * 8)))
        if item.turn:
            self._turned_text(item, font)
            return
        x = item.x - _shift(item)
        baseline = round(item.y / self.dot)
        for letter, offset in _letters(item):
            left = round((x + offset) / self.dot)
            self.pen.text((left, baseline), letter, fill=_ink(item.ink), font=font, anchor="ls")

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
        dark = np.kron(item.modules, np.ones((max(1, down), max(1, across)), dtype=np.bool_))
        corner = (round(item.x / self.dot), round(item.y / self.dot))
        self.image.paste(_BLACK, corner, Image.fromarray(dark))


def _ink(name: str) -> int:
    return _BLACK if name == "black" else _WHITE


def _shift(item: Text) -> float:
    """How far left of its x the text begins, in mm."""
    share = {"start": 0.0, "middle": 0.5, "end": 1.0}[item.anchor]
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
