"""A label as lines for an engraver: SVG or DXF, in mm, nothing filled.

A tool follows lines. Letters and pictures are outlines; every run of dark modules is a rectangle with its hatch
in it, in one chain, laid so that a tool whose line is ``engraved`` mm wide covers the modules and nothing beside them.
"""

from __future__ import annotations

import io
import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import cache
from itertools import pairwise
from typing import Any, Literal, get_args

import numpy as np
from PIL import Image, ImageDraw

from tagger.drawing import Circle, Drawing, Grid, Item, Line, Shape, Text
from tagger.drawing.primitives import Point, rectangle
from tagger.errors import Problem, SymbolError, TemplateError
from tagger.messages import Message
from tagger.printing.content import Tag
from tagger.printing.fonts import FILES, text_width
from tagger.printing.layout import Page, lay_out
from tagger.printing.proof import prove
from tagger.printing.template import Template

Layer = Literal["PLATE", "LINES", "TEXT", "SYMBOL"]
Form = Literal["svg", "dxf"]
FORMS: tuple[Form, ...] = get_args(Form)
DPI = 600  # modules stand on whole dots of it: 0.042 mm
_CIRCLE = 48  # corners of what is drawn as a circle
_CURVE = 3  # straight pieces of a letter's curve: 0.02 mm beside it at most, in a letter of 5 mm
_FINE = 40  # dots a mm of the proof


@dataclass(frozen=True, slots=True)
class Stroke:
    """A chain of straight lines that a tool follows: points in mm, y down."""

    layer: Layer
    points: tuple[Point, ...]
    closed: bool = True


def plate(tag: Tag, template: Template) -> list[Stroke]:
    """The lines of one tag's plate, proved: its symbols as dots, and then as the tool cuts them.

    Raises SymbolError and TemplateError.
    """
    page = lay_out(tag, template, DPI)
    prove(tag, page)
    width = template.engraved or 0.1
    edge = rectangle(0, 0, *template.size)
    strokes = [Stroke("PLATE", edge.points)]
    for item in page.drawing.items:
        strokes = [*_in_sight(strokes, item, width), *_strokes(item, width)]
    _prove_cut(tag, page, strokes, width)
    return strokes


def file(tag: Tag, template: Template, form: Form) -> str:
    """One tag's plate as SVG or DXF. Raises SymbolError, and TemplateError for a label that is not for an engraver."""
    if template.engraved is None:
        raise TemplateError(Problem("template", template.name, Message("printing-plate-not-engraved")))
    strokes = plate(tag, template)
    return svg(strokes, template.size, template.engraved) if form == "svg" else dxf(strokes, template.size)


def engraved(drawing: Drawing, line_mm: float) -> Drawing:
    """What the tool leaves, for looking at: letters and pictures as lines, symbols as their dark modules. Not proved."""
    strokes: list[Stroke] = []
    for item in drawing.items:
        if not isinstance(item, Grid):
            strokes = [*_in_sight(strokes, item, line_mm), *_strokes(item, line_mm)]
    lines = [Shape(one.points, None, line_mm, one.closed) for one in strokes]
    grids = [item for item in drawing.items if isinstance(item, Grid)]
    return Drawing(drawing.width, drawing.height, (*lines, *grids))


def svg(strokes: Iterable[Stroke], size: tuple[float, float], line_mm: float) -> str:
    """The lines as SVG, a path a layer, at true size."""
    paths: dict[Layer, list[str]] = {}
    for one in strokes:
        chain = "L".join(f"{x:.4f} {y:.4f}" for x, y in one.points)
        paths.setdefault(one.layer, []).append(f"M{chain}{'Z' if one.closed else ''}")
    width, height = size
    body = "".join(f'<path id="{layer}" d="{"".join(chains)}"/>' for layer, chains in paths.items())
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{width:g}mm" height="{height:g}mm" '
        f'viewBox="0 0 {width:g} {height:g}"><g fill="none" stroke="#000" stroke-width="{line_mm:g}">{body}</g></svg>\n'
    )


def dxf(strokes: Iterable[Stroke], size: tuple[float, float]) -> str:
    """The lines as DXF (R2010, mm), each kind on a layer of its own; y points up there."""
    import ezdxf
    from ezdxf import units

    drawing = ezdxf.new("R2010")  # type: ignore[attr-defined]
    drawing.units = units.MM
    space = drawing.modelspace()
    for one in strokes:
        points = [(x, size[1] - y) for x, y in one.points]
        if one.layer not in drawing.layers:
            drawing.layers.add(one.layer)
        space.add_lwpolyline(points, close=one.closed, dxfattribs={"layer": one.layer})
    out = io.StringIO()
    drawing.write(out)
    return out.getvalue()


def _strokes(item: Item, width: float) -> Iterator[Stroke]:
    if isinstance(item, Line):
        yield from _dashes(item)
    elif tube := _tube(item, width):
        if tube.ink == "black":  # its edge is enough
            yield Stroke("LINES", _edge(tube.points, tube.width / 2))
    elif isinstance(item, Shape):
        yield Stroke("LINES", item.points, closed=item.closed)
    elif isinstance(item, Circle):
        yield Stroke("LINES", _ring(item))
    elif isinstance(item, Text):
        yield from _text(item)
    else:
        yield from _grid(item, width)


def _tube(item: Item, width: float) -> Shape | None:
    """The item, if it is a broad line: a tube is one, and a white one on it."""
    return item if isinstance(item, Shape) and not item.closed and item.width > 4 * width else None


def _ring(circle: Circle) -> tuple[Point, ...]:
    turns = [math.tau * step / _CIRCLE for step in range(_CIRCLE)]
    return tuple(
        (circle.x + circle.radius * math.cos(a), circle.y + circle.radius * math.sin(a)) for a in turns
    )


def _dashes(line: Line) -> Iterator[Stroke]:
    """A full line in one, a dashed one dash by dash: what is dashed lies behind."""
    long = math.dist((line.x1, line.y1), (line.x2, line.y2))
    step = 2 * line.dash if line.dash > 0 else math.inf
    for count in range(max(1, math.ceil(long / step))):
        ends = (count * step if count else 0.0, min(long, count * step + line.dash) if line.dash else long)
        points = [
            (line.x1 + (line.x2 - line.x1) * at / long, line.y1 + (line.y2 - line.y1) * at / long)
            for at in ends
            if long
        ]
        if points:
            yield Stroke("LINES", tuple(points), closed=False)


def _in_sight(strokes: list[Stroke], item: Item, width: float) -> list[Stroke]:
    """What is left of the lines below when a white part or a tube is laid upon them."""
    if isinstance(item, Circle) and item.fill == "white":
        over = _ring(item)
    elif isinstance(item, Shape) and item.closed and item.fill == "white":
        over = item.points
    elif tube := _tube(item, width):
        over = _edge(_longer(tube.points, width), tube.width / 2)
    else:
        return strokes
    return [part for one in strokes for part in (_beside(one, over) if one.layer == "LINES" else (one,))]


def _longer(points: tuple[Point, ...], more: float) -> tuple[Point, ...]:
    """A chain longer by so many mm at both ends: a tube's own end is open."""
    (ax, ay), (bx, by), (cx, cy), (dx, dy) = points[1], points[0], points[-2], points[-1]
    start, stop = (
        more / (math.dist(points[0], points[1]) or 1),
        more / (math.dist(points[-2], points[-1]) or 1),
    )
    first = (bx + (bx - ax) * start, by + (by - ay) * start)
    return (first, *points[1:-1], (dx + (dx - cx) * stop, dy + (dy - cy) * stop))


def _beside(stroke: Stroke, over: tuple[Point, ...]) -> Iterator[Stroke]:
    """The parts of a chain that lie outside a polygon, or the chain itself where all of it does."""
    chain = [*stroke.points, *stroke.points[: int(stroke.closed)]]
    parts: list[list[Point]] = []
    whole = True
    for a, b in pairwise(chain):
        for start, stop in pairwise(_crossed(a, b, over)):
            if _covers(over, ((start[0] + stop[0]) / 2, (start[1] + stop[1]) / 2)):
                whole = False
            elif parts and parts[-1][-1] == start:
                parts[-1].append(stop)
            else:
                parts.append([start, stop])
    if whole:
        yield stroke
    else:
        yield from (Stroke(stroke.layer, tuple(part), closed=False) for part in parts)


def _crossed(a: Point, b: Point, over: tuple[Point, ...]) -> list[Point]:
    """A line's ends, and between them in their order the points in which it crosses a polygon's sides."""
    at = {0.0, 1.0}
    for c, d in pairwise((*over, over[0])):
        across = (b[0] - a[0]) * (d[1] - c[1]) - (b[1] - a[1]) * (d[0] - c[0])
        if abs(across) > 1e-12:
            t = ((c[0] - a[0]) * (d[1] - c[1]) - (c[1] - a[1]) * (d[0] - c[0])) / across
            u = ((c[0] - a[0]) * (b[1] - a[1]) - (c[1] - a[1]) * (b[0] - a[0])) / across
            if 0 < t < 1 and 0 <= u <= 1:
                at.add(t)
    inner = [(a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t) for t in sorted(at)[1:-1]]
    return [a, *inner, b]


def _covers(over: tuple[Point, ...], point: Point) -> bool:
    """Whether a polygon covers a point: a ray from it crosses its sides an odd number of times."""
    x, y = point
    inside = False
    for (ax, ay), (bx, by) in pairwise((*over, over[0])):
        if (ay > y) != (by > y) and x < (bx - ax) * (y - ay) / (by - ay) + ax:
            inside = not inside
    return inside


def _edge(points: tuple[Point, ...], half: float) -> tuple[Point, ...]:
    """The outline of a broad line of ``half`` mm to either side, mitred where it bends; straight across at its ends."""
    ways = [math.atan2(b[1] - a[1], b[0] - a[0]) for a, b in pairwise(points) if a != b]
    corners = [points[0], *(b for a, b in pairwise(points) if a != b)]
    sides: tuple[list[Point], list[Point]] = ([], [])
    for (x, y), before, after in zip(corners, (ways[0], *ways), (*ways, ways[-1]), strict=True):
        bend = math.remainder(after - before, math.tau) / 2
        out, way = half / max(math.cos(bend), 0.2), before + bend
        for side, sign in zip(sides, (1, -1), strict=True):
            side.append((x - sign * out * math.sin(way), y + sign * out * math.cos(way)))
    return (*sides[0], *reversed(sides[1]))


def _grid(grid: Grid, width: float) -> Iterator[Stroke]:
    """Each run of dark modules as one chain: its outline half a line inside, then to and fro across it."""
    half = width / 2
    for row, line in enumerate(grid.modules):
        top, bottom = grid.y + row * grid.pitch_y + half, grid.y + (row + 1) * grid.pitch_y - half
        edges = np.flatnonzero(np.diff(np.concatenate(([0], line.astype(np.int8), [0]))))
        count = math.ceil((bottom - top) / width - 1e-9)
        across = [top + (bottom - top) * step / count for step in range(1, count)]
        for start, stop in zip(edges[::2], edges[1::2], strict=True):
            left, right = grid.x + start * grid.pitch_x + half, grid.x + stop * grid.pitch_x - half
            outline = rectangle(left, top, right - left, bottom - top).points
            hatch = [
                (x, y)
                for step, y in enumerate(across)
                for x in ((right, left) if step % 2 else (left, right))
            ]
            yield Stroke("SYMBOL", (*outline, outline[0], *hatch), closed=False)


def _text(item: Text) -> Iterator[Stroke]:
    """The outlines of a line of text, from the same widths the layout used."""
    x = -{"start": 0.0, "middle": 0.5, "end": 1.0}[item.anchor] * text_width(item.text, item.size, item.bold)
    turn = math.radians(item.turn)
    for letter in item.text:
        for contour in _contours(item.bold, letter):
            points = [(x + px * item.size, -py * item.size) for px, py in contour]
            yield Stroke("TEXT", tuple(_placed(point, item, turn) for point in points))
        x += text_width(letter, item.size, item.bold)


def _placed(point: Point, item: Text, turn: float) -> Point:
    x, y = point
    return (
        item.x + x * math.cos(turn) - y * math.sin(turn),
        item.y + x * math.sin(turn) + y * math.cos(turn),
    )


@cache
def _contours(bold: bool, letter: str) -> tuple[tuple[Point, ...], ...]:
    """The outlines of a letter, in ems, y up; its curves as straight pieces."""
    from fontTools.pens.recordingPen import (  # type: ignore[import-untyped]
        DecomposingRecordingPen,
    )

    glyphs, names, em = _face(bold)
    name = names.get(ord(letter))
    if name is None:
        return ()
    pen = DecomposingRecordingPen(glyphs)
    glyphs[name].draw(pen)
    found: list[list[Point]] = []
    for act, points in pen.value:
        if act == "moveTo":
            found.append([points[0]])
        elif act == "lineTo":
            found[-1].append(points[0])
        elif act == "qCurveTo":
            found[-1] += _curve(found[-1][-1], points)
    return tuple(tuple((x / em, y / em) for x, y in contour) for contour in found)


def _curve(start: Point, points: tuple[Point, ...]) -> list[Point]:
    """A TrueType curve: control points with a point of the curve half way between each two."""
    controls, made = points[:-1], list[Point]()
    for place, control in enumerate(controls):
        last = place == len(controls) - 1
        after = controls[place + 1] if not last else control
        end = points[-1] if last else ((control[0] + after[0]) / 2, (control[1] + after[1]) / 2)
        for step in range(1, _CURVE + 1):
            s = step / _CURVE
            a, b, c = (1 - s) ** 2, 2 * s * (1 - s), s * s
            made.append(
                (a * start[0] + b * control[0] + c * end[0], a * start[1] + b * control[1] + c * end[1])
            )
        start = end
    return made


@cache
def _face(bold: bool) -> tuple[Any, dict[int, str], int]:
    from fontTools.ttLib import TTFont  # type: ignore[import-untyped]

    font = TTFont(str(FILES[bold]))
    return font.getGlyphSet(), font.getBestCmap(), font["head"].unitsPerEm


def cut(
    strokes: Iterable[Stroke],
    size: tuple[float, float],
    line_mm: float,
    layers: tuple[Layer, ...] = get_args(Layer),
) -> Image.Image:
    """What a tool leaves that follows the lines of these layers, ``_FINE`` dots a mm: dark where it went."""
    image = Image.new("L", (round(size[0] * _FINE), round(size[1] * _FINE)), 255)
    pen = ImageDraw.Draw(image)
    for one in strokes:
        if one.layer in layers:
            chain = [(x * _FINE, y * _FINE) for x, y in (*one.points, *one.points[: int(one.closed)])]
            for a, b in pairwise(chain):  # from the left: a line drawn leftwards lies a dot beside
                pen.line([min(a, b), max(a, b)], fill=0, width=max(1, round(line_mm * _FINE)))
    return image


def _prove_cut(tag: Tag, page: Page, strokes: list[Stroke], width: float) -> None:
    """Every module as the tool leaves it: its middle dark or light as the symbol has it."""
    dark = np.asarray(cut(strokes, (page.drawing.width, page.drawing.height), width, ("SYMBOL",))) < 128
    for grid in (item for item in page.drawing.items if isinstance(item, Grid)):
        rows, columns = grid.modules.shape
        y = ((grid.y + (np.arange(rows) + 0.5) * grid.pitch_y) * _FINE).astype(int)
        for share in (0.2, 0.5, 0.8):
            x = ((grid.x + (np.arange(columns) + share) * grid.pitch_x) * _FINE).astype(int)
            if not np.array_equal(dark[np.ix_(y, x)], grid.modules):
                raise SymbolError(
                    Problem("number", tag.shown_number, Message("printing-proof-drawn", kind="qr"))
                )
