"""A drawing as SVG text, for the web pages and for looking at."""

from __future__ import annotations

from html import escape

from tagger.drawing.primitives import Circle, Drawing, Grid, Item, Line, Shape, Text


def svg(drawing: Drawing, *, title: str = "", scale: float = 1.0) -> str:
    """A stand-alone SVG element, ``scale`` times the drawing's millimetres in size.

    ``title`` is what a screen reader says. Black is ``currentColor``, so that a page may
    show the drawing light on dark.
    """
    width, height = drawing.width * scale, drawing.height * scale
    name = f"<title>{escape(title)}</title>" if title else ""
    role = 'role="img"' if title else 'aria-hidden="true"'
    body = "".join(_element(item) for item in drawing.items)
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" {role} width="{_n(width)}mm" height="{_n(height)}mm"'
        f' viewBox="0 0 {_n(drawing.width)} {_n(drawing.height)}"'
        f' font-family="DejaVu Sans Condensed, DejaVu Sans, sans-serif">{name}{body}</svg>'
    )


def _n(value: float) -> str:
    return f"{value:.3f}".rstrip("0").rstrip(".")


def _ink(name: str | None) -> str:
    return {"black": "currentColor", "white": "#fff", None: "none"}[name]


def _stroke(ink: str, width: float) -> str:
    return f' stroke="{_ink(ink)}" stroke-width="{_n(width)}"' if width else ""


def _element(item: Item) -> str:
    if isinstance(item, Line):
        dash = f' stroke-dasharray="{_n(item.dash)}"' if item.dash else ""
        ends = f'x1="{_n(item.x1)}" y1="{_n(item.y1)}" x2="{_n(item.x2)}" y2="{_n(item.y2)}"'
        return f"<line {ends}{_stroke(item.ink, item.width)}{dash}/>"
    if isinstance(item, Shape):
        points = " ".join(f"{_n(x)},{_n(y)}" for x, y in item.points)
        tag = "polygon" if item.closed else "polyline"
        look = f' fill="{_ink(item.fill)}"{_stroke(item.ink, item.width)} stroke-linejoin="round"'
        return f'<{tag} points="{points}"{look}/>'
    if isinstance(item, Circle):
        look = f' fill="{_ink(item.fill)}"{_stroke(item.ink, item.width)}'
        return f'<circle cx="{_n(item.x)}" cy="{_n(item.y)}" r="{_n(item.radius)}"{look}/>'
    if isinstance(item, Text):
        weight = ' font-weight="bold"' if item.bold else ""
        turn = f' transform="rotate({item.turn} {_n(item.x)} {_n(item.y)})"' if item.turn else ""
        return (
            f'<text x="{_n(item.x)}" y="{_n(item.y)}" font-size="{_n(item.size)}"{weight}{turn}'
            f' text-anchor="{item.anchor}" fill="{_ink(item.ink)}">{escape(item.text)}</text>'
        )
    return _grid(item)


def _grid(item: Grid) -> str:
    """One path: runs of dark modules, row by row."""
    steps = []
    for row, line in enumerate(item.modules):
        start = None
        for column, dark in enumerate([*line.tolist(), False]):
            if dark and start is None:
                start = column
            elif not dark and start is not None:
                steps.append(f"M{start} {row}h{column - start}v1h-{column - start}z")
                start = None
    place = f"translate({_n(item.x)} {_n(item.y)}) scale({item.pitch_x:.5f} {item.pitch_y:.5f})"
    return f'<path transform="{place}" fill="#000" shape-rendering="crispEdges" d="{"".join(steps)}"/>'
