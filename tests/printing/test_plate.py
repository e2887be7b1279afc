"""A plate for an engraver: lines alone, which cut what the tag says."""

from __future__ import annotations

import io
import math
import xml.etree.ElementTree as ElementTree
from dataclasses import replace
from itertools import pairwise
from typing import Any

import ezdxf
import numpy as np
import pytest
import zxingcpp
from PIL import Image, ImageDraw

from tagger.drawing import Drawing, Line, Shape
from tagger.drawing.primitives import rectangle
from tagger.errors import SymbolError
from tagger.printing import painter, plate, template
from tagger.printing.layout import lay_out
from tagger.printing.readers import qr_readers
from tagger.spec import Danger
from tests.printing.conftest import TWO_ELBOWS, a_tag

LABEL = template.load("metal_plate")
LINE = LABEL.engraved or 0.0
FINE = 12  # dots a mm, as a camera sees a plate


def drawn(chains: list[list[tuple[float, float]]]) -> np.ndarray:
    """What a tool leaves that follows these chains of points, mm with y down."""
    image = Image.new("L", (round(LABEL.size[0] * FINE * 4), round(LABEL.size[1] * FINE * 4)), 255)
    pen = ImageDraw.Draw(image)
    for chain in chains:
        pen.line([(x * FINE * 4, y * FINE * 4) for x, y in chain], fill=0, width=round(LINE * FINE * 4))
    return np.pad(np.asarray(image.reduce(4)), 24, constant_values=255)


@pytest.fixture(scope="module")
def strokes() -> list[plate.Stroke]:
    return plate.plate(a_tag(TWO_ELBOWS, dangers=(Danger.FLUID,)), LABEL)


def test_the_dxf_holds_open_and_closed_lines_in_mm_that_three_readers_read(
    strokes: list[plate.Stroke],
) -> None:
    """ezdxf reads it back and audits it; nothing is a hatch, a solid or a text."""
    read = ezdxf.read(io.StringIO(plate.dxf(strokes, LABEL.size)))  # type: ignore[attr-defined]
    assert read.units == ezdxf.units.MM and not read.audit().errors
    lines: list[Any] = list(read.modelspace())
    assert {line.dxftype() for line in lines} == {"LWPOLYLINE"}
    xs = [point[0] for line in lines for point in line.get_points()]
    ys = [point[1] for line in lines for point in line.get_points()]
    assert (
        min(xs) >= 0 and max(xs) <= LABEL.size[0] + 0.01 and min(ys) >= 0 and max(ys) <= LABEL.size[1] + 0.01
    )
    chains = []
    for line in lines:
        if line.dxf.layer == "SYMBOL":
            points = [(x, LABEL.size[1] - y) for x, y, *_ in line.get_points()]
            chains.append([*points, points[0]] if line.closed else points)
    picture, tag = drawn(chains), a_tag(TWO_ELBOWS, dangers=(Danger.FLUID,))
    for name, reads in qr_readers(frames=1).items():
        assert reads(picture) == {tag.link}, name
    bars = zxingcpp.read_barcodes(picture, formats=zxingcpp.BarcodeFormats(zxingcpp.BarcodeFormat.Code128))
    assert [one.text for one in bars] == [tag.number]


def test_an_elbow_is_cut_as_the_two_sides_of_its_tube() -> None:
    """A broad line and a white one upon it were cut as one thin line: the bend's edge, mitred, is six corners."""
    items = lay_out(a_tag(TWO_ELBOWS), LABEL, plate.DPI).drawing.items
    cut = [one for item in items for one in plate._strokes(item, LINE) if one.layer == "LINES"]
    tubes = [one.points for one in cut if one.closed and len(one.points) == 6]
    assert tubes
    for a, b, c, d, e, f in tubes:
        widths = [math.dist(a, f), math.dist(c, d)]
        assert widths[0] == pytest.approx(widths[1]) and widths[0] > 3 * LINE
        for side, other in (((a, b), (f, e)), ((b, c), (e, d))):
            ways = [math.atan2(q[1] - p[1], q[0] - p[0]) for p, q in (side, other)]
            assert math.cos(ways[0] - ways[1]) == pytest.approx(1)


@pytest.mark.parametrize("angle", [45, 90, 270, 300])
def test_lines_are_cut_only_where_the_printed_label_has_ink(angle: int) -> None:
    """What lies behind a nut or an eye was cut through it, and the dashed elbow of end B as a full one like that of A."""
    tag = a_tag({**TWO_ELBOWS, "clocking_deg": angle})
    page = lay_out(tag, LABEL, plate.DPI)
    dark = np.asarray(painter.draw(page.drawing, plate.DPI).convert("L")) < 128
    per_mm, near = plate.DPI / 25.4, 8  # dots: a third of a millimetre
    looked = 0
    for one in plate.plate(tag, LABEL):
        chain = [*one.points, *one.points[: int(one.closed)]]
        for (ax, ay), (bx, by) in pairwise(chain if one.layer == "LINES" else ()):
            x, y = round((ax + bx) / 2 * per_mm), round((ay + by) / 2 * per_mm)
            assert dark[max(0, y - near) : y + near + 1, max(0, x - near) : x + near + 1].any(), (one, x, y)
            looked += 1
    assert looked > 200


def test_a_dashed_line_is_cut_dash_by_dash_and_what_lies_under_a_white_part_is_not() -> None:
    size, part = (30.0, 10.0), rectangle(10, 2, 6, 6, fill="white")
    drawing = Drawing(*size, (Line(1, 5, 29, 5, 0.2), Line(1, 9, 29, 9, 0.2, dash=2.0), part))
    lines = [one for one in plate.engraved(drawing, 0.1).items if isinstance(one, Shape)]
    spans = sorted(
        (round(p[0], 6), round(q[0], 6)) for p, *_, q in (one.points for one in lines if not one.closed)
    )
    assert spans == sorted([(1, 10), (16, 29), *((float(x), min(x + 2.0, 29.0)) for x in range(1, 29, 4))])


def test_the_svg_is_the_plate_at_true_size_and_fills_nothing(strokes: list[plate.Stroke]) -> None:
    root = ElementTree.fromstring(plate.svg(strokes, LABEL.size, LINE))
    assert (root.get("width"), root.get("height")) == ("101.6mm", "50.8mm")
    [group] = root
    assert group.get("fill") == "none" and float(group.get("stroke-width", 0)) == LINE
    paths = {path.get("id"): path.get("d", "") for path in group}
    assert set(paths) == {"PLATE", "LINES", "TEXT", "SYMBOL"}
    assert all("fill" not in path.attrib for path in group)
    assert sum(chains.count("M") for chains in paths.values()) == len(strokes)


def test_a_plate_whose_hatch_would_not_cut_the_symbol_is_refused() -> None:
    """A tool's line as broad as most of a module leaves no light module beside a dark one."""
    tag = a_tag(TWO_ELBOWS)
    sound = plate.plate(tag, LABEL)
    page = lay_out(tag, LABEL, plate.DPI)
    plate._prove_cut(tag, page, sound, LINE)
    for spoilt in (
        [one for n, one in enumerate(sound) if n % 5],
        [replace(one, points=tuple((x + 0.4, y) for x, y in one.points)) for one in sound],
    ):
        with pytest.raises(SymbolError, match=tag.shown_number):
            plate._prove_cut(tag, page, spoilt, LINE)
