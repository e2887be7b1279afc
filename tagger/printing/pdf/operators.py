"""A drawing as PDF page operators, in whole hundredths of a millimetre, symbols as 1-bit image masks."""

from __future__ import annotations

from collections.abc import Callable, Iterable

import numpy as np

from tagger.drawing import Circle, Drawing, Grid, Group, Item, Line, Shape, Text
from tagger.printing.fonts import text_width
from tagger.printing.pdf.fonts import FontCodes

POINTS_PER_MM = 72 / 25.4
_STEPS = 100  # of a mm: a quarter of a dot at 600 dpi; whole figures take fewer letters
_ROUND = 0.5522847  # control-point distance of a quarter circle drawn as a Bezier curve
_BEFORE = {"start": 0.0, "middle": 0.5, "end": 1.0}  # of a text, of what stands before its place
_TURN = {0: (1, 0, 0, 1), 90: (0, -1, 1, 0), 180: (-1, 0, 0, -1), 270: (0, 1, -1, 0)}


Cut = Callable[
    [Drawing], Iterable[tuple[Item | Group, ...] | str]
]  # parts, and names of form objects among them


def page_code(
    drawings: Iterable[tuple[Drawing, float, float]],
    height: float,
    fonts: FontCodes,
    cut: Cut = lambda drawing: [drawing.parts],
) -> str:
    """The operators that draw each drawing at (left, top) on a page ``height`` mm high."""
    scale = POINTS_PER_MM / _STEPS
    code = [f"{scale:.9f} 0 0 {scale:.9f} 0 0 cm 1 j"]
    for drawing, left, top in drawings:
        code.append(f"q 1 0 0 1 {_n(left)} {_n(height - top - drawing.height)} cm")
        writer = _Writer(drawing.height, fonts)
        for part in cut(drawing):
            if isinstance(part, str):
                writer.form(part)
                continue
            for item in part:
                writer.add(item)
        code += writer.code
        code.append("Q")
    return "\n".join(code)


def parts_code(parts: Iterable[Item | Group], height: float, fonts: FontCodes) -> str:
    """The operators of a form object: parts of a drawing ``height`` mm high."""
    writer = _Writer(height, fonts)
    for part in parts:
        writer.add(part)
    return "\n".join(writer.code)


def _n(value: float) -> str:
    """A figure in mm as whole hundredths."""
    return str(round(value * _STEPS))


class _Writer:
    """Keeps the graphics state, so that nothing is said twice."""

    def __init__(self, height: float, fonts: FontCodes) -> None:
        self.code: list[str] = []
        self.height, self.fonts = height, fonts
        self.width = self.dash = -1.0
        self.stroke = self.fill = "black"
        self.font: tuple[str, float] = ("", 0.0)

    def add(self, item: Item | Group) -> None:
        if isinstance(item, Group):
            for one in item.items:
                self.add(one)
        elif isinstance(item, Text):
            self._text(item)
        elif isinstance(item, Line):
            self._pen(item.width, item.ink, item.dash)
            start = f"{_n(item.x1)} {_n(self.height - item.y1)} m"
            self.code.append(f"{start} {_n(item.x2)} {_n(self.height - item.y2)} l S")
        elif isinstance(item, Shape):
            self._shape(item)
        elif isinstance(item, Circle):
            self._circle(item)
        else:
            self._grid(item)

    def form(self, name: str) -> None:
        """Draws a form object, which begins in black."""
        self._brush("black")
        if self.stroke != "black":
            self.code.append("0 G")
            self.stroke = "black"
        self.code.append(f"/{name} Do")

    def _pen(self, width: float, ink: str, dash: float = 0.0) -> None:
        if width != self.width:
            self.code.append(f"{_n(width)} w")
            self.width = width
        if dash != self.dash:
            self.code.append(f"[{_n(dash)}] 0 d" if dash else "[] 0 d")
            self.dash = dash
        if ink != self.stroke:
            self.code.append("0 G" if ink == "black" else "1 G")
            self.stroke = ink

    def _brush(self, ink: str) -> None:
        if ink != self.fill:
            self.code.append("0 g" if ink == "black" else "1 g")
            self.fill = ink

    def _finish(self, fill: str | None, width: float, ink: str, closed: bool) -> str:
        """Sets pen and brush and answers the painting operator."""
        if fill:
            self._brush(fill)
        if width:
            self._pen(width, ink)
        if fill and width:
            return "b" if closed else "B"
        return "f" if fill else ("s" if closed else "S")

    def _shape(self, item: Shape) -> None:
        paint = self._finish(item.fill, item.width, item.ink, item.closed)
        high = self.height
        steps = [f"{round(x * _STEPS)} {round((high - y) * _STEPS)}" for x, y in item.points]
        self.code.append(f"{steps[0]} m " + " ".join(f"{step} l" for step in steps[1:]) + f" {paint}")

    def _circle(self, item: Circle) -> None:
        paint = self._finish(item.fill, item.width, item.ink, True)
        x, y, r = item.x, self.height - item.y, item.radius
        k = r * _ROUND
        quarters = (
            (x + r, y + k, x + k, y + r, x, y + r),
            (x - k, y + r, x - r, y + k, x - r, y),
            (x - r, y - k, x - k, y - r, x, y - r),
            (x + k, y - r, x + r, y - k, x + r, y),
        )
        curves = " ".join(" ".join(map(_n, quarter)) + " c" for quarter in quarters)
        self.code.append(f"{_n(x + r)} {_n(y)} m {curves} {paint}")

    def _text(self, item: Text) -> None:
        x, y, text, size, bold, anchor, ink, turn = item
        self._brush(ink)
        y = self.height - y
        if share := _BEFORE[anchor]:
            shift = share * text_width(text, size, bold)
            a, b = _TURN[turn][:2]
            x, y = x - shift * a, y - shift * b
        place = f"{_n(x)} {_n(y)} Td"
        if turn:
            a, b, c, d = _TURN[turn]
            place = f"{a} {b} {c} {d} {_n(x)} {_n(y)} Tm"
        shows = ""
        for name, shown in self.fonts.encode(text, bold):
            if self.font != (name, size):
                self.font = (name, size)
                shows += f" {name} {_n(size)} Tf"
            shows += f" ({shown})Tj"
        self.code.append(f"BT {place}{shows} ET")

    def _grid(self, item: Grid) -> None:
        self._brush("black")
        rows, columns = item.modules.shape
        width, height = columns * item.pitch_x, rows * item.pitch_y
        data = np.packbits(~item.modules, axis=1).tobytes().hex()
        left, below = item.x, self.height - item.y - height
        # Symbols stand on whole dots: to a ten thousandth of a mm.
        place = " ".join(f"{figure * _STEPS:.6g}" for figure in (width, 0, 0, height, left, below))
        self.code.append(f"q {place} cm BI/W {columns}/H {rows}/IM true/F/AHx ID {data}>\nEI Q")
