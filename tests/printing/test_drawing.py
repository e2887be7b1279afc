"""Pictures of the assembly: angles are true, conventions hold, SVG is well formed."""

import math
import re
from itertools import product
from xml.etree import ElementTree

import numpy as np
import pytest

from api.scan import picture
from api.scan.visitor import Reader
from tagger.drawing import (
    Circle,
    Drawing,
    Grid,
    Group,
    Line,
    Shape,
    Text,
    clocking_picture,
    end_picture,
    ends_picture,
    nut_picture,
    svg,
)
from tagger.drawing.ends import one_end
from tagger.drawing.way import Look
from tagger.printing import raster
from tagger.spec import AssemblySpec, Form
from tagger.trade.tables import tables
from tests.printing.conftest import LONGEST, STRAIGHT, TWO_ELBOWS
from tests.volume import volume


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


@pytest.mark.parametrize("size", [9.4, 14.4, 18.0])
@pytest.mark.parametrize("degrees", range(45, 316, 15))
def test_the_arrow_of_a_clocking_ends_at_elbow_b_and_hides_neither_its_dashes_nor_its_letter(degrees, size):
    """On a hang tag it lay between the dashes and ran into the letter: at 203 dpi both were a blot."""
    drawing = clocking_picture(degrees, size, angle_text="")
    head = [item for item in drawing.items if isinstance(item, Shape)][-1].points
    middle, turn, letter = size / 2, math.radians(degrees), label(drawing, "B")
    assert letter.y - 0.729 * letter.size >= 0 and letter.y <= size
    for x, y in head:
        before = math.cos(turn) * (x - middle) - math.sin(turn) * (y - middle)  # aside from elbow B's axis
        assert abs(before) >= 0.055 * size - 1e-3
        beside, above = abs(x - letter.x) / letter.size, (letter.y - y) / letter.size
        assert beside > 0.38 or not 0 < above < 0.729


def test_a_shop_that_counts_clockwise_sees_its_own_figure_and_the_same_elbows():
    standard, other = clocking_picture(135), clocking_picture(135, angle_text="225°", clockwise=True)
    assert side(standard, "B") == side(other, "B")
    assert label(other, "225°")


@pytest.mark.parametrize("degrees", range(0, 360, 15))
def test_held_with_elbow_a_up_both_elbows_and_the_arrow_are_turned_by_half_a_turn(degrees):
    down, up = (clocking_picture(degrees, angle_text="x", clockwise=True, up=way) for way in (False, True))
    for name in "AB":
        (x, y), (turned_x, turned_y) = side(down, name), side(up, name)
        assert turned_y == pytest.approx(-y)
        beside = name == "B" and not 20 < degrees < 340  # the label stands beside that of A, on either side
        assert beside or turned_x == pytest.approx(-x, abs=0.01)
    heads = [[i for i in one.items if isinstance(i, Shape)][-1].points for one in (down, up)]
    turned = [(down.width - x, down.height - y) for x, y in heads[0]]
    assert [pytest.approx(point) for point in turned] == list(heads[1])
    figure = label(up, "x")
    for name in "AB":
        assert math.hypot(figure.x - label(up, name).x, figure.y - label(up, name).y) > 2


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


@pytest.mark.parametrize(("width", "height"), [(12.6, 11.5), (9.0, 14.1), (17.0, 7.0), (22.0, 9.5)])
def test_an_end_by_itself_stays_in_its_picture_whatever_it_is_and_however_it_is_turned(width, height):
    """Beside it on a tag are the quiet zone of a code, or the label's edge."""
    turns = range(0, 360, volume(135, 15))
    looks = [(c, Form(f)) for c, family in tables().families.items() for f in family.forms]
    for (connection, form), bend in product(looks, (0, 45, 90)):
        for turn in turns if bend else (0,):
            drawing = one_end(Look(connection, form, bend, bend > 0), "b", turn, width, height)
            for x, y in (point for item in drawing.items for point in points(item)):
                assert -0.06 <= x <= width + 0.06 and -0.06 <= y <= height + 0.06, (form, bend, turn)


@pytest.mark.parametrize(("clocking", "where"), [(0, "down"), (180, "up")])
def test_elbow_b_points_where_the_clocking_says(clocking, where):
    spec = AssemblySpec.read({**TWO_ELBOWS, "clocking_deg": clocking})
    drawing = ends_picture(spec, 47, 16)
    hose = max(
        item.y1
        for item in drawing.items
        if isinstance(item, Line) and item.x2 - item.x1 > 10 and item.width == 0.3
    )
    right = [
        y for item in drawing.items if isinstance(item, Shape) for x, y in item.points if x > 43 and y < 14
    ]
    assert (max(right) > hose + 2) is (where == "down")
    assert (min(right) < hose - 4) is (where == "up")


def test_the_length_arrow_ends_where_the_basis_says():
    """To the elbow's centreline it is shorter than the picture, to a straight sealing face it reaches its end."""
    straight = {**STRAIGHT, "end_b": STRAIGHT["end_a"]}
    faces = ends_picture(AssemblySpec.read(straight), 60, 16)
    assert arrow(faces)[0] < 1
    assert arrow(faces)[1] > 59
    centre = ends_picture(AssemblySpec.read({**TWO_ELBOWS, "clocking_deg": 0}), 47, 16)
    assert 42 < arrow(centre)[1] < 46


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


def elbows(shape: str, clocking: int) -> AssemblySpec:
    return AssemblySpec.read(
        {**TWO_ELBOWS, "end_b": {**TWO_ELBOWS["end_b"], "shape": shape}, "clocking_deg": clocking}
    )


def dots(drawing: Drawing) -> bytes:
    return raster.draw(drawing, 203).tobytes()


def on_the_page(spec: AssemblySpec) -> str:
    """The picture on the public page without its title, which tells the angle in words."""
    return re.sub("<title>.*?</title>", "", picture.assembly(spec, Reader("en", tables())))


def test_no_two_clockings_or_bends_are_drawn_alike_on_tag_bench_and_page() -> None:
    """The side view alone tells all sixteen apart: the views along the hose beside it are cut off."""
    specs = [elbows(shape, clocking) for shape in ("elbow_45", "elbow_90") for clocking in range(0, 360, 45)]
    side_views = [ends_picture(spec, 40, 16) for spec in specs]  # too narrow for the view along the hose
    blocks = [end_picture(spec, "b", 13, 11) for spec in specs]
    for drawings in (side_views, blocks):
        assert len({dots(each) for each in drawings}) == len(specs)
    assert len({on_the_page(spec) for spec in specs}) == len(specs)
    assert len({dots(clocking_picture(c)) for c in range(0, 360, 45)}) == 8


@pytest.mark.parametrize("clocking", [90, 270])
def test_a_45_degree_elbow_at_a_right_angle_to_the_view_does_not_look_straight(clocking: int) -> None:
    """Its mouth is seen, or its back; and the bend says towards the viewer or away."""
    items = ends_picture(elbows("elbow_45", clocking), 60, 16).items
    bends = [item for item in items if isinstance(item, Circle) and item.y < 9 and 40 > item.x > 25]
    mouths = [item for item in items if isinstance(item, Shape) and len(item.points) == 20]
    assert len(bends) == (2 if clocking == 90 else 1)  # a ring with its dot; a ring, with its cross as lines
    assert [item.fill for item in mouths] == (["white", "black"] if clocking == 90 else ["white", "white"])
    svg = on_the_page(elbows("elbow_45", clocking))
    assert ('class="ring"' in svg, 'class="hole"' in svg.partition("round")[0]) == (clocking == 90, True)


def cone(connection: str, form: str, **size: object) -> list[tuple[float, float]]:
    """Corners of the cone of a straight end that points right, from where its thread ends: (along, aside)."""
    end = {"connection": connection, "form": form, **size}
    spec = AssemblySpec.read({**STRAIGHT, "end_a": end, "end_b": end})
    items = end_picture(spec, "b", 20, 10).items
    found = [i for i in items if isinstance(i, Shape) and len(i.points) == 4 and i.fill != "black"]
    return [(x, y - 5) for x, y in found[-1].points]


@pytest.mark.parametrize(
    ("connection", "form", "size", "outside", "degrees"),
    [
        ("sae_37_flare", "male", {"dash": 12}, True, 37),
        ("sae_37_flare", "female_swivel", {"dash": 12}, False, 37),
        ("bspp", "male", {"size": "3/4"}, False, 30),
        ("bspp", "female_swivel", {"size": "3/4"}, True, 30),
        ("din24_heavy", "male", {"size": "25", "hose_dash": 12}, False, 12),
    ],
)
def test_a_cone_is_drawn_at_its_own_angle_outside_or_inside(connection, form, size, outside, degrees):
    """A BSPP male has a 60 degree cone inside (ISO 8434-6), a 37 degree flare a nose outside."""
    corners = cone(connection, form, **size)
    mouth, ground = sorted({(round(x, 3), round(abs(y), 3)) for x, y in corners}, reverse=True)
    assert (ground[1] > mouth[1]) is outside
    slope = math.degrees(math.atan2(abs(ground[1] - mouth[1]), mouth[0] - ground[0]))
    assert slope == pytest.approx(degrees, abs=1)
    spec = AssemblySpec.read({**STRAIGHT, "end_a": {"connection": connection, "form": form, **size}})
    seen = picture.end(spec, "end_a", Reader("en", tables()))
    (x1, y1, x2, y2) = map(float, re.findall(r'd="M([\d.]+) -([\d.]+)L([\d.]+) -([\d.]+)', seen)[0])
    assert math.degrees(math.atan2(abs(y1 - y2), abs(x1 - x2))) == pytest.approx(degrees, abs=1.5)


def test_a_swivel_nut_shows_its_bore_and_the_view_along_the_hose_stands_beside() -> None:
    nut = end_picture(AssemblySpec.read(STRAIGHT), "a", 20, 10).items
    (bore,) = [i for i in nut if isinstance(i, Shape) and not i.closed and len(i.points) == 4 and i.fill is None
               and i.points[0][0] == i.points[3][0] and i.points[0][0] == min(x for x, _ in i.points)
               and abs(i.points[0][1] - i.points[3][1]) > 4]  # fmt: skip
    assert bore.points[1][0] > bore.points[0][0]
    wide, narrow = (ends_picture(elbows("elbow_90", 45), width, 16) for width in (60, 40))
    seen = [[i.text for i in each.items if isinstance(i, Text)].count("B") for each in (wide, narrow)]
    assert seen == [2, 1]


def test_a_group_stands_in_a_drawing_as_its_items_do_and_holds_no_symbol() -> None:
    line, text = Line(0, 0, 5, 5), Text(1, 4, "A", 3)
    assert Drawing(9, 9, (Group((line, text)), line)).items == (line, text, line)
    with pytest.raises(TypeError, match="symbols"):
        Group((Grid(0, 0, 1, 1, np.ones((2, 2), dtype=np.bool_)),))
