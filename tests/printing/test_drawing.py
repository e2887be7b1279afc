"""Pictures of the assembly: angles are true, conventions hold, SVG is well formed."""

import math
from xml.etree import ElementTree

import pytest

from tagger.drawing import (
    Circle,
    Drawing,
    Grid,
    Line,
    Shape,
    Text,
    clocking_picture,
    ends_picture,
    nut_picture,
    svg,
)
from tagger.spec import AssemblySpec
from tests.printing.conftest import LONGEST, STRAIGHT, TWO_ELBOWS


def label(drawing, text):
    (found,) = [item for item in drawing.items if isinstance(item, Text) and item.text == text]
    return found


def side(drawing, text):
    """Where a label stands as seen from the middle: right and up positive."""
    found, middle = label(drawing, text), drawing.width / 2
    return found.x - middle, middle - (found.y - found.size * 0.36)


@pytest.mark.parametrize(
    ("degrees", "right", "up"), [(90, 1, 0), (180, 0, 1), (270, -1, 0), (135, 1, 1), (225, -1, 1)]
)
def test_clocking_runs_counter_clockwise_from_a_at_six_o_clock(degrees, right, up):
    drawing = clocking_picture(degrees)
    x, y = side(drawing, "B")
    far = math.hypot(x, y)
    assert side(drawing, "A")[0] == pytest.approx(0, abs=0.01)
    assert side(drawing, "A")[1] < -5
    assert (round(x / far * 1.2), round(y / far * 1.2)) == (right, up)


@pytest.mark.parametrize("degrees", range(0, 360, 5))
def test_clocking_labels_never_cover_one_another(degrees):
    drawing = clocking_picture(degrees)
    a, b = label(drawing, "A"), label(drawing, "B")
    assert math.hypot(a.x - b.x, a.y - b.y) > 0.75 * a.size


def test_a_shop_that_counts_clockwise_sees_its_own_figure_and_the_same_elbows():
    standard, other = clocking_picture(135), clocking_picture(135, angle_text="225°", clockwise=True)
    assert side(standard, "B") == side(other, "B")
    assert label(other, "225°")


def span(basis, connection="sae_orb", **size):
    """How far the length arrow of two males reaches."""
    end = {"connection": connection, "form": "male", **(size or {"dash": 12})}
    spec = {**STRAIGHT, "end_a": end, "end_b": end, "length_basis": basis}
    drawing = ends_picture(AssemblySpec.read(spec), 60, 16)
    (arrow,) = [i for i in drawing.items if isinstance(i, Line) and i.y1 == i.y2 > 14 and i.width == 0.2]
    return arrow.x2 - arrow.x1


@pytest.mark.parametrize(("family", "size"), [("sae_orb", {"dash": 12}), ("metric_orb", {"size": "M27x2"})])
def test_a_boss_stud_is_measured_to_its_shoulder_and_to_its_tip_where_that_is_asked(family, size):
    threads = 2 * 16 * 0.15 * 1.6  # both studs, as drawn
    assert span("thread_end", family, **size) - span("sealing_face", family, **size) == pytest.approx(threads)
    assert span("sealing_face", "sae_37_flare") == span("thread_end", "sae_37_flare")


@pytest.mark.parametrize("spec", [STRAIGHT, TWO_ELBOWS, *LONGEST.values()])
@pytest.mark.parametrize("clocking", [0, 60, 90, 135, 180, 270, 300])
def test_the_ends_stay_in_their_picture(spec, clocking):
    if "clocking_deg" in spec:
        spec = {**spec, "clocking_deg": clocking}
    drawing = ends_picture(AssemblySpec.read(spec), 38, 15, length_text="12750.5 mm (501.99 in)")
    slack = 0.6
    for item in drawing.items:
        for x, y in points(item):
            assert -slack <= x <= drawing.width + slack
            assert -slack <= y <= drawing.height + slack


def points(item):
    if isinstance(item, Line):
        return [(item.x1, item.y1), (item.x2, item.y2)]
    if isinstance(item, Shape):
        return item.points
    if isinstance(item, Circle):
        return [(item.x - item.radius, item.y - item.radius), (item.x + item.radius, item.y + item.radius)]
    return [(item.x, item.y)]


@pytest.mark.parametrize(("clocking", "where"), [(0, "down"), (180, "up")])
def test_elbow_b_points_where_the_clocking_says(clocking, where):
    spec = AssemblySpec.read({**TWO_ELBOWS, "clocking_deg": clocking})
    drawing = ends_picture(spec, 60, 16)
    hose = max(
        item.y1
        for item in drawing.items
        if isinstance(item, Line) and item.x2 - item.x1 > 10 and item.width == 0.3
    )
    right = [
        y for item in drawing.items if isinstance(item, Shape) for x, y in item.points if x > 56 and y < 14
    ]
    assert (max(right) > hose + 2) is (where == "down")
    assert (min(right) < hose - 4) is (where == "up")


def test_the_length_arrow_ends_where_the_basis_says():
    """To the elbow's centreline it is shorter than the picture, to a straight sealing face it reaches its end."""
    straight = {**STRAIGHT, "end_b": STRAIGHT["end_a"]}
    faces = ends_picture(AssemblySpec.read(straight), 60, 16)
    assert arrow(faces)[0] < 1
    assert arrow(faces)[1] > 59
    centre = ends_picture(AssemblySpec.read({**TWO_ELBOWS, "clocking_deg": 0}), 60, 16)
    assert 55 < arrow(centre)[1] < 59


def arrow(drawing):
    level = [
        item for item in drawing.items if isinstance(item, Line) and item.y1 == item.y2 and not item.dash
    ]
    lowest = max(level, key=lambda item: item.y1)
    return lowest.x1, lowest.x2


@pytest.mark.parametrize(("low", "high", "marks"), [(1, 1.25, 2), (2, 2, 1), (None, 1.5, 1)])
def test_the_nut_is_turned_clockwise_by_sixths(low, high, marks):
    drawing = nut_picture(low, high, 20)
    middle = 10
    ticks = [item for item in drawing.items if isinstance(item, Line) and item.width == 0.2]
    assert len(ticks) == marks
    angles = sorted(math.degrees(math.atan2(tick.x2 - middle, middle - tick.y2)) % 360 for tick in ticks)
    wanted = sorted({60 * flats for flats in (low, high) if flats is not None})
    assert angles == pytest.approx(wanted, abs=0.1)


def test_svg_is_well_formed_and_names_itself():
    picture = svg(clocking_picture(135), title="Elbow B at 135° & more")
    root = ElementTree.fromstring(picture)
    assert root.attrib["role"] == "img"
    assert next(iter(root)).text == "Elbow B at 135° & more"
    assert "aria-hidden" in ElementTree.fromstring(svg(nut_picture(1, 2))).attrib


def test_a_symbol_in_svg_is_one_path_of_its_dark_modules():
    import re

    from tagger.code.symbol import qr

    symbol = qr("HELLO", "M")
    drawing = Drawing(30, 30, (Grid(4, 4, 1, 1, symbol.modules),))
    (path,) = [part for part in ElementTree.fromstring(svg(drawing)) if part.tag.endswith("path")]
    runs = re.findall(r"M(\d+) (\d+)h(\d+)v1", path.attrib["d"])
    assert sum(int(length) for _, _, length in runs) == symbol.modules.sum()
    assert all(symbol.modules[int(y), int(x) : int(x) + int(length)].all() for x, y, length in runs)
