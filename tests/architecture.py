"""``python -m tests.architecture``: draws ``architecture.svg``, the rooms of the program and who imports whom, from the code.

Imports for types alone are no arrows. What can be reached by other arrows has none of its own, so that the picture
shows each room on what it stands on.
"""

from __future__ import annotations

from functools import cache
from graphlib import TopologicalSorter
from itertools import pairwise
from pathlib import Path
from xml.sax.saxutils import escape

from tests.test_house import GROUND, ROOT, imports_of

PICTURE = Path(__file__).with_suffix(".svg")
TOPS = ("tagger", "api", "examples")
THE_GROUND = "the ground"
ON_IT = sorted({name.removeprefix("tagger.") for name in GROUND} | {"intake"})
COLOURS = {"tagger": "#e8f0e4", "api": "#e4ecf5", "examples": "#f5eee0", THE_GROUND: "#eeeeee"}
ROW, WIDE, HIGH, GAP, SPAN = (
    62.0,
    156.0,
    28.0,
    7.0,
    1120.0,
)  # between two rows; a box; half a gap; the picture's width
SWEEPS = 24  # up and down by turns, until nothing moves any more
Arrows = dict[str, frozenset[str]]


def room_of(module: str) -> str | None:
    """``api.bench`` of ``api.bench.build``; None for what is no room, such as the package ``tagger`` itself."""
    parts = module.split(".")
    if parts[0] == "tagger" and len(parts) > 1 and parts[1] in ON_IT:
        return THE_GROUND
    return ".".join(parts[:2]) if len(parts) > 1 and parts[0] in TOPS else None


def arrows() -> Arrows:
    """Of each room, the rooms that it imports. The ground imports a catalogue for its logs, late: that is none."""
    found: dict[str, set[str]] = {THE_GROUND: set()}
    for top in TOPS:
        for path in sorted((ROOT / top).rglob("*.py")):
            module = ".".join(path.relative_to(ROOT).with_suffix("").parts)
            room = "examples" if top == "examples" else room_of(module)
            if room is None or module in ("tagger.__init__", "api.__init__") or room == THE_GROUND:
                continue
            others = {room_of(name) for name in imports_of(path, for_types=False)} | {THE_GROUND}
            found.setdefault(room, set()).update(other for other in others if other and other != room)
    return {room: frozenset(others & set(found)) for room, others in sorted(found.items())}


def rows_of(direct: Arrows) -> tuple[dict[str, int], Arrows]:
    """The row of each room, the ground's 0, each above all that it imports; and the arrows that are needed.

    Raises CycleError, which names them, where rooms import one another in a circle.
    """
    TopologicalSorter(direct).prepare()

    @cache
    def height(room: str) -> int:
        return 1 + max((height(other) for other in direct[room]), default=-1)

    @cache
    def reached(room: str) -> frozenset[str]:
        return frozenset().union(*({other} | reached(other) for other in direct[room]))

    needed = {
        room: frozenset(one for one in others if not any(one in reached(other) for other in others))
        for room, others in direct.items()
    }
    return {room: height(room) for room in direct}, needed


def ways_of(level: dict[str, int], needed: Arrows) -> list[list[str]]:
    """Each arrow as the points that it goes through, one in each row: rooms at its ends, gaps between.

    Those to the ground, on which all stand, are left out.
    """
    return [
        [room, *(f"{room}>{other}>{row}" for row in range(level[room] - 1, level[other], -1)), other]
        for room, others in needed.items()
        for other in sorted(others - {THE_GROUND})
    ]


def placed(level: dict[str, int], ways: list[list[str]]) -> dict[str, tuple[float, float]]:
    """Where each point stands: over the middle of what it leads to, and under what leads to it."""
    at = level | {point: level[way[0]] - step for way in ways for step, point in enumerate(way)}
    rows = [[point for point in at if at[point] == row] for row in range(1 + max(at.values()))]
    near: dict[str, list[str]] = {point: [] for point in at}
    for above, below in (pair for way in ways for pair in pairwise(way)):
        near[above].append(below)
        near[below].append(above)
    x = {point: SPAN * (place + 0.5) / len(row) for row in rows for place, point in enumerate(row)}
    for sweep in range(SWEEPS):
        up = sweep % 2 == 0
        for row in rows if up else rows[::-1]:
            for point in row:
                one_side = [other for other in near[point] if (at[other] < at[point]) == up]
                beside = one_side if sweep < SWEEPS / 2 else near[point]
                x[point] = sum(x[other] for other in beside) / len(beside) if beside else x[point]
            _apart(sorted(row, key=lambda point: (x[point], point)), x)
    return {point: (x[point], ROW * (len(rows) - at[point]) - ROW / 2) for point in at}


def _apart(row: list[str], x: dict[str, float]) -> None:
    """Moves the points of a row apart, as little as the boxes need: half of each push to either side."""
    need = [GAP if ">" in point else WIDE / 2 + 6 for point in row]
    for _ in range(3):
        for (one, half), (other, more) in pairwise(zip(row, need, strict=True)):
            push = max(0.0, half + more - (x[other] - x[one])) / 2
            x[one], x[other] = x[one] - push, x[other] + push
    right, left = SPAN, 0.0
    for point, half in zip(reversed(row), reversed(need), strict=True):
        x[point] = min(x[point], right - half)
        right = x[point] - half
    for point, half in zip(row, need, strict=True):
        x[point] = max(x[point], left + half)
        left = x[point] + half


def svg() -> str:
    """The picture."""
    level, needed = rows_of(arrows())
    ways = ways_of(level, needed)
    places, count = placed(level, ways), 1 + max(level.values())
    parts = [
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {SPAN:.0f} {ROW * count + 26:.0f}" '
        'font-family="sans-serif" font-size="12.5" text-anchor="middle">',
        '<defs><marker id="tip" viewBox="0 0 8 8" refX="8" refY="4" markerWidth="7" markerHeight="7" orient="auto">'
        '<path d="M0 0 8 4 0 8z" fill="#555"/></marker></defs><rect width="100%" height="100%" fill="#fff"/>',
    ]
    parts += [_arrow([places[point] for point in way]) for way in ways]
    parts += [
        _arrow([places[room], (places[room][0], places[THE_GROUND][1])])
        for room, others in needed.items()
        if others == {THE_GROUND}
    ]
    parts += [_box(room, *places[room]) for room in level]
    told = (
        "An arrow: imports. Left out: what other arrows lead to as well. Made by python -m tests.architecture"
    )
    parts.append(
        f'<text x="{SPAN / 2:.0f}" y="{ROW * count + 14:.0f}" font-size="12" fill="#555">{told}</text>'
    )
    return "\n".join([*parts, "</svg>"]) + "\n"


def _arrow(points: list[tuple[float, float]]) -> str:
    """From the lower edge of the first box to the upper edge of the last, upright through each gap."""
    path = f"M{points[0][0]:.0f} {points[0][1] + HIGH / 2:.0f}"
    for place, ((x1, y1), (x2, y2)) in enumerate(pairwise(points)):
        start = y1 + HIGH / 2
        end = y2 - HIGH / 2
        middle = (start + end) / 2
        path += f"L{x1:.0f} {start:.0f}" if place else ""
        path += f"C{x1:.0f} {middle:.0f} {x2:.0f} {middle:.0f} {x2:.0f} {end:.0f}"
    return f'<path d="{path}" fill="none" stroke="#555" stroke-width="1.1" marker-end="url(#tip)"/>'


def _box(room: str, x: float, y: float) -> str:
    ground = room == THE_GROUND
    wide, text = (SPAN - 8, ", ".join(ON_IT)) if ground else (WIDE, room)
    x = SPAN / 2 if ground else x
    colour = COLOURS[room if ground else room.split(".")[0]]
    return (
        f'<rect x="{x - wide / 2:.0f}" y="{y - HIGH / 2:.0f}" width="{wide:.0f}" height="{HIGH:.0f}" rx="4" '
        f'fill="{colour}" stroke="#777"/><text x="{x:.0f}" y="{y + 5:.0f}">{escape(text)}</text>'
    )


if __name__ == "__main__":
    PICTURE.write_text(svg(), encoding="utf-8")
