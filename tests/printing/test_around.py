"""Labels that bend with the hose: what the worst side of it shows, held against pictures of the whole label."""

from __future__ import annotations

import math

import numpy as np
import pytest

from tagger.errors import TemplateError
from tagger.printing import around, layout, raster, template
from tagger.printing.preflight import preflight
from tagger.printing.readers import grey, qr_readers
from tests.printing.test_preflight import own
from tests.speed import damage
from tests.volume import volume

ONE_COLUMN = """
title = "One column of codes"
size = [60, 250]
wraps = "down"
[[box]]
kind = "qr"
at = [0.5, 0]
size = [23, 124]
repeat = "down"
[[box]]
kind = "tightening"
at = [24.5, 4]
size = [35, 16]
[[box]]
kind = "clear"
at = [0, 124]
size = [60, 126]
"""


def found(result, code):
    return next((one for one in result.findings if one.code == code), None)


def codes_of(page):
    return [placed for placed in page.symbols if placed.symbol.kind == "qr"]


@pytest.mark.parametrize("od", [29, 39, 47, 60])
def test_one_column_of_codes_does_not_read_from_every_side(tmp_path, make_tag, od):
    """Seen from 48 sides in pictures, two of three readers read such a label from 0 of them at 29 mm,
    20 at 39 mm, 24 at 47 mm."""
    result = preflight(make_tag(), own(tmp_path, ONE_COLUMN), hose_od_mm=od)
    assert not result.ok
    assert found(result, "facing").severity == "refuse"


def test_text_that_the_overlap_hides_is_refused_unless_it_stands_elsewhere_too(tmp_path, make_tag):
    result = preflight(make_tag(), own(tmp_path, ONE_COLUMN), hose_od_mm=36)
    hidden = found(result, "hidden")
    assert hidden.severity == "refuse"
    assert "box 2 (tightening)" in hidden.text and "from 39 mm" in hidden.mend
    assert found(preflight(make_tag(), own(tmp_path, ONE_COLUMN), hose_od_mm=40), "hidden") is None
    for od in (
        30,
        33,
    ):  # a text that stands twice, both times hidden, is said to stand where the second one shows
        twice = preflight(make_tag(), template.load("wrap_label"), hose_od_mm=od)
        thinnest = found(twice, "hidden").message.as_json()["values"]["thinnest"]
        assert thinnest == 39
        assert around.lost_boxes(template.load("wrap_label"), thinnest) == []
    repeated = ONE_COLUMN + '[[box]]\nkind = "tightening"\nat = [24.5, 60]\nsize = [35, 16]\n'
    assert found(preflight(make_tag(), own(tmp_path, repeated), hose_od_mm=36), "hidden") is None


@pytest.mark.parametrize(("name", "serves"), [("thin_wrap", (22, 45)), ("wrap_label", (40, 60))])
def test_a_wrap_label_reads_from_every_side_but_its_end_on_the_hoses_it_is_for(make_tag, name, serves):
    tag, label = make_tag(), template.load(name)
    page = layout.lay_out(tag, label)
    for od in range(serves[0], serves[1] + 1):
        sides = around.sides(codes_of(page), od, label)
        assert not sides.gaps or sides.only_at_the_end, od
        assert sum(wide for _, wide in sides.gaps) <= around.QUARTER, od
        assert around.lost_boxes(label, od) == [], od
    assert f"of {serves[0]} to {serves[1]} mm" in label.media


@pytest.mark.parametrize("name", ["thin_wrap", "wrap_label"])
def test_a_second_label_with_its_end_on_the_opposite_side_shows_what_the_first_cannot(make_tag, name):
    label = template.load(name)
    codes = codes_of(layout.lay_out(make_tag(), label))
    for od in (22, 29.3, 40) if name == "thin_wrap" else (40, 50, 60):
        first = around.sides(codes, od, label).reads
        assert all(one or other for one, other in zip(first, first[180:] + first[:180], strict=True))


@pytest.mark.parametrize(("name", "od"), [("thin_wrap", 22.0), ("wrap_label", 47.0)])
def test_pictures_of_the_whole_label_round_a_hose_agree_side_by_side(make_tag, name, od):
    """Where the geometry says that a code reads, zxing-cpp or zbar reads one; at the end's middle none does."""
    tag, label = make_tag(), template.load(name)
    page = layout.lay_out(tag, label)
    surface = damage.applied(grey(raster.draw(page.drawing, 203)), 203, label, od)
    sides = around.sides(codes_of(page), od, label)
    texts = {placed.symbol.text for placed in codes_of(page)}
    readers = [read for name, read in qr_readers(1).items() if name != "OpenCV"]

    def reads(side: int) -> bool:
        seen = damage.from_side(surface, od, math.radians(side), np.random.default_rng(side))
        return any(texts & read(seen) for read in readers)

    start, wide = sides.gaps[0]
    open_sides = np.linspace(start + wide, start + 359, volume(4, 40)).astype(int) % 360
    assert [side for side in open_sides if not reads(int(side))] == []
    assert not reads((start + wide // 2) % 360)


def test_on_a_hose_too_thin_for_the_small_code_too_the_mend_is_a_flag_or_a_hang_tag(make_tag):
    result = preflight(make_tag(), template.load("thin_wrap"), hose_od_mm=13.4)
    assert not result.ok
    mend = found(result, "curvature").mend
    assert "flag label or a hang tag" in mend
    assert "from 22 mm" in mend  # where every side shows one, not where the first one scans
    for od in (13.4, 18):
        refused = preflight(make_tag(), template.load("thin_wrap"), hose_od_mm=od)
        assert "thin_wrap" not in " ".join(one.mend or "" for one in refused.findings)


def test_a_small_code_holds_the_numbers_link_and_fits_with_a_host_of_30_characters(make_tag):
    import dataclasses

    from tagger.code import link

    tag = make_tag()
    host = "https://tags.a-host-of-30-letters.com"
    assert len(host.removeprefix("https://")) == 29
    host = host.replace("tags.", "label.")
    assert len(host.removeprefix("https://")) == 30
    tag = dataclasses.replace(tag, link=link.build(host, tag.number, "1" * 90))
    page = layout.lay_out(tag, template.load("thin_wrap"))
    assert {(one.symbol.version, one.symbol.level) for one in codes_of(page)} == {(3, "M")}
    assert {one.symbol.text for one in codes_of(page)} == {link.build(host, tag.number)}


@pytest.mark.parametrize(
    ("name", "severity"), [("sleeve_tag", "refuse"), ("end_tag_a", "warn"), ("roll_2x1", "warn")]
)
def test_a_label_that_lies_on_a_thin_hose_is_refused_or_told(make_tag, name, severity):
    result = preflight(make_tag(), template.load(name), hose_od_mm=13.4)
    assert found(result, "curvature").severity == severity
    assert result.ok is (severity == "warn")
    assert found(preflight(make_tag(), template.load(name), hose_od_mm=45), "curvature").severity == "note"


def test_a_flag_whose_middle_does_not_reach_round_is_refused(make_tag):
    label = template.load("flag_label")
    page = layout.lay_out(make_tag(), label)
    thickest = around.thickest_flag_mm(label, codes_of(page))
    assert math.pi * thickest > 40  # more than the middle: part of the wings goes round too
    assert preflight(make_tag(), label, hose_od_mm=thickest - 1).ok
    result = preflight(make_tag(), label, hose_od_mm=47)
    assert found(result, "curvature").severity == "refuse"
    assert f"up to {math.floor(thickest)} mm" in found(result, "curvature").mend


def test_a_hang_tag_is_judged_flat_on_any_hose(make_tag):
    assert found(preflight(make_tag(), template.load("hang_tag"), hose_od_mm=13.4), "curvature") is None


@pytest.mark.parametrize("flag", ["[95, 55]", "[0, 40]", "[55, 200]"])
def test_a_flag_without_a_wing_on_either_side_is_refused(tmp_path, flag):
    text = f'title = "F"\nsize = [150, 44]\nflag = {flag}\n[[box]]\nkind = "qr"\nat = [0, 0]\nsize = [31, 31]'
    with pytest.raises(TemplateError, match=r"mine\.toml: flag"):
        own(tmp_path, text)


def test_a_flag_whose_code_stands_on_the_hose_serves_none(tmp_path, make_tag):
    text = (
        'title = "F"\nsize = [150, 44]\nflag = [55, 95]\n[[box]]\nkind = "qr"\nat = [40, 0]\nsize = [31, 31]'
    )
    result = preflight(make_tag(), own(tmp_path, text), hose_od_mm=10)
    assert found(result, "curvature").severity == "refuse"
    assert "up to 2 mm" in found(result, "curvature").mend
