"""Every gauge of every sheet, as the PDF's own vectors have it, against the tables."""

from __future__ import annotations

import math
from functools import cache

import numpy as np
import pytest

from tagger.gauges import PAPERS, sheets
from tagger.gauges.threads import families
from tagger.settings import ShopSettings
from tagger.spec import Connection, Form
from tagger.trade.identifying.likelihood import zone
from tagger.trade.identifying.marks import mark
from tagger.trade.tables import tables
from tests.gauges.vectors import Page, Path, pages

SHOP = ShopSettings(base_url="https://tags.example.com", shop_name="Hose shop")
NEAR = 0.006  # mm: what the PDF's figures are rounded to
DARK, LIGHT, FAINT = (round(255 * share) for share in (0.45, 0.82, 0.9))


@cache
def sheet(kind: str, paper: str = "a4", family: str = "") -> list[Page]:
    return pages(sheets.to_pdf(kind, SHOP, tables(), paper=paper, family=family))


def shaded(page: Page, grey: int) -> list[Path]:
    return [one for one in page.fills if abs(one.grey - grey) <= 1]


def bar_beside(page: Page, words: str) -> list[Path]:
    """The fills at the left of a mark, at its height: (light, dark)."""
    [(left, top, _, bottom)] = page.places(words)
    beside = [one for one in page.fills if one.right < left and one.top - 1 < (top + bottom) / 2 < one.bottom]
    return sorted(beside, key=lambda one: one.left)


def page_of(found: list[Page], words: str) -> Page:
    [page] = [one for one in found if one.places(words)]
    return page


def cut(one: Path, y: float) -> float:
    """How wide a four-cornered fill is at a height."""
    (a, b, c, d) = one.points[:4]
    left = a[0] + (d[0] - a[0]) * (y - a[1]) / (d[1] - a[1])
    right = b[0] + (c[0] - b[0]) * (y - b[1]) / (c[1] - b[1])
    return right - left


THREADS = [(family, size) for family, size in tables().threads if family in families(tables())]
FAMILIES = families(tables())


@pytest.mark.parametrize("family", FAMILIES)
def test_every_male_bar_is_as_wide_as_its_thread_and_dark_where_a_sound_one_may_end(
    family: Connection,
) -> None:
    for row in (tables().threads[key] for key in THREADS if key[0] is family):
        low, high = zone(row.thread_form, row.thread_od_mm, row.female_minor_mm, row.pitch_mm, Form.MALE)
        words = mark("D", row.thread_od_mm)
        page = page_of(sheet("threads", family=str(family)), words)
        if row.thread_form in ("npt", "r"):
            [taper] = bar_beside(page, words)
            [line] = [one for one in page.lines if taper.top < one.top < taper.bottom + NEAR and one.right < 90 and one.down < NEAR]  # fmt: skip
            assert line.across == pytest.approx(row.thread_od_mm, abs=NEAR)
            assert cut(taper, line.top) == pytest.approx(row.thread_od_mm, abs=2 * NEAR)
            assert (cut(taper, taper.top), cut(taper, taper.bottom)) == pytest.approx((low, high), abs=NEAR)
            assert (high - low) / taper.down == pytest.approx(1 / 16, abs=1e-3)
        else:
            light, dark = bar_beside(page, words)
            assert dark.right - light.left == pytest.approx(row.thread_od_mm, abs=NEAR)
            assert dark.left - light.left == pytest.approx(low, abs=NEAR)
            assert (light.grey, dark.grey) == pytest.approx((LIGHT, DARK), abs=1)


@pytest.mark.parametrize("family", FAMILIES)
def test_every_band_of_a_wedge_stands_where_it_is_as_wide_as_a_sound_bore(family: Connection) -> None:
    forms = [Form(name) for name in tables().families[family].forms]
    found = [page for page in sheet("threads", family=str(family)) if page.places("F")]
    rows = [tables().threads[key] for key in THREADS if key[0] is family]
    if not any(form.is_female_thread for form in forms):
        assert not any(page.places(mark("F", row.female_minor_mm)) for page in found for row in rows)
        return
    for row in rows:
        low, high = zone(
            row.thread_form, row.thread_od_mm, row.female_minor_mm, row.pitch_mm, Form.FEMALE_FIXED
        )
        page = page_of(found, mark("F", row.female_minor_mm))
        [(left, top, _, bottom)] = page.places(mark("F", row.female_minor_mm))
        [wedge] = [one for one in shaded(page, LIGHT) if one.left < left - 0.5 and left < one.right + 17 and one.top < top < one.bottom and abs(cut(one, bottom) - high) < 6]  # fmt: skip
        bands = [one for one in shaded(page, DARK) if wedge.left < one.left and one.right < wedge.right]
        band = min(bands, key=lambda one: abs(cut(one, one.top) - low))
        assert (cut(band, band.top), cut(band, band.bottom)) == pytest.approx((low, high), abs=NEAR)
        assert (cut(wedge, band.top), cut(wedge, band.bottom)) == pytest.approx((low, high), abs=0.02)
        assert min(abs(band.bottom - top), abs(band.top - bottom)) < 1.7, "its mark stands at the band"


def test_every_pitch_of_the_tables_has_a_comb_whose_teeth_are_that_far_apart() -> None:
    unseen = {row.pitch_mm for row in tables().threads.values()}
    combs = [(page, one) for page in sheet("pitches") for one in page.fills if len(one.points) > 40]
    for page, comb in combs:
        tips = sorted(x for x, y in comb.points if abs(y - comb.bottom) < NEAR)
        pitch = (tips[-1] - tips[0]) / (len(tips) - 1)
        assert np.allclose(np.diff(tips), pitch, atol=NEAR)
        assert len(tips) == int(66.001 / pitch), "as many as fit"
        known = min((row.pitch_mm for row in tables().threads.values()), key=lambda one: abs(one - pitch))
        [(_, top, _, bottom)] = [box for near in {pitch, known} for box in page.places(mark("P", near))][:1]
        assert comb.top - 5 < (top + bottom) / 2 < comb.bottom, "its mark stands beside it"
        assert 0.55 < comb.down / pitch < 0.65
        # No thread of the part is off by more than a hundredth of a millimetre at the tenth.
        unseen -= {known for known in unseen if abs(known - pitch) * 10 < 0.01}
    assert not unseen


def angle_at(corner: Point, one: Point, other: Point) -> float:
    a, b = (math.atan2(point[1] - corner[1], point[0] - corner[0]) for point in (one, other))
    return abs(math.degrees(a - b)) % 360


Point = tuple[float, float]


@pytest.mark.parametrize(
    ("seat", "half", "whole"), [("24", 12, 24), ("60", 30, 60), ("37", 37, 74), ("45", 45, 90)]
)
def test_notch_and_point_have_the_seats_angle_and_say_half_and_included(
    seat: str, half: int, whole: int
) -> None:
    [page] = sheet("seats")
    [(_, top, _, _)] = page.places(f"A{seat}")
    notches = [one for one in page.fills if len(one.points) >= 7 and one.top - 1 < top < one.bottom]
    points = [one for one in page.fills if 3 <= len(one.points) < 5 and one.top - 1 < top < one.bottom and abs(one.top - notches[0].top) < NEAR and one.left > 60]  # fmt: skip
    notch, apex = notches[0], min(points, key=lambda one: one.across)
    a, b, c = notch.points[1:4]
    assert angle_at(b, a, c) == pytest.approx(whole, abs=0.05)
    a, b, c = apex.points[0], apex.points[1], apex.points[2]
    assert angle_at(a, b, c) == pytest.approx(whole, abs=0.05)
    named = [
        box for box in page.places(f"{half}° half, {whole}° included") if notch.top < box[1] < notch.bottom
    ]
    assert len(named) == 2, "both are labelled"


def test_every_flange_head_is_a_disc_within_the_pattern_of_its_screws() -> None:
    figures: dict[tuple[Connection, str], dict[str, float]] = {}
    for row in tables().flanges:
        if row.what.endswith("_mm"):
            figures.setdefault((row.family, row.size), {})[row.what] = float(row.value)
    assert len(figures) > 15
    for (_, _size), known in figures.items():
        words = mark("B", known["bolt_long_mm"])
        page = page_of(sheet("flanges"), words)
        [(left, top, right, _)] = page.places(words)
        if "head_mm" in known:
            discs = [
                one
                for one in shaded(page, LIGHT)
                if one.left < right and left < one.right and one.bottom < top + 1
            ]
            disc = max(discs, key=lambda one: one.bottom)
            assert (disc.across, disc.down) == pytest.approx((known["head_mm"],) * 2, abs=NEAR)
            assert page.places(mark("R", known["head_mm"]))
        centres = crosses(page)
        pattern = known["bolt_long_mm"], known["bolt_short_mm"]
        assert any(_is_pattern(x, y, centres, pattern) for x, y in centres), words


def crosses(page: Page) -> list[Point]:
    """The middles of the crosses: where a short line down is crossed by one as long across."""
    short = [one for one in page.lines if 5.9 < max(one.across, one.down) < 6.1]
    level = [((one.left + one.right) / 2, one.top) for one in short if one.down < NEAR]
    upright = [(one.left, (one.top + one.bottom) / 2) for one in short if one.across < NEAR]
    assert np.allclose(sorted(level), sorted(upright), atol=NEAR)
    return level


def _is_pattern(x: float, y: float, centres: list[Point], pattern: tuple[float, float]) -> bool:
    wanted = [(x + dx, y + dy) for dx in (0, pattern[0]) for dy in (0, pattern[1])]
    return all(any(math.dist(one, there) < 2 * NEAR for there in centres) for one in wanted)


def test_every_hexagon_of_the_tables_has_a_bar_as_wide_as_it_is_across_flats() -> None:
    for width in {row.hex_mm for row in tables().hexes}:
        words = mark("H", width)
        light, dark = bar_beside(page_of(sheet("hexes"), words), words)
        assert dark.right - light.left == pytest.approx(width, abs=NEAR)
        assert dark.left - light.left == pytest.approx(width - 0.3, abs=NEAR)


def test_every_hose_of_the_tables_is_on_its_standards_strip_as_far_along_as_it_is_round() -> None:
    printed: dict[str, dict[int, list[float]]] = {}
    for standard, rows in tables().hose_sizes.items():
        for row in rows:
            printed.setdefault(standard, {}).setdefault(int(row.dash), []).append(row.outside_diameter_mm)
    for standard, dashes in printed.items():
        bands: list[tuple[float, float]] = []
        rooms: list[tuple[float, float]] = []
        for piece in (1, 2):
            for page in sheet("hoses"):
                for _, _, _, bottom in page.places(f"{standard}, piece {piece}"):
                    start = 16.0 - (piece - 1) * (page.width - 24.0)
                    on = [one for one in page.fills if 0 < one.top - bottom < 6]
                    bands += [
                        (one.left - start, one.right - start) for one in on if abs(one.grey - DARK) <= 1
                    ]
                    rooms += [
                        (one.left - start, one.right - start) for one in on if abs(one.grey - FAINT) <= 1
                    ]
        rooms = joined(rooms)
        for read in dashes.values():
            round_it = math.pi * min(read), math.pi * max(read)
            assert any(band == pytest.approx(round_it, abs=3 * NEAR) for band in bands), (standard, read)
            assert any(low < round_it[0] - 3.13 and round_it[1] + 3.13 < high for low, high in rooms), (
                standard,
                read,
                rooms,
            )


def joined(rooms: list[tuple[float, float]]) -> list[tuple[float, float]]:
    """The rooms of neighbouring bands, and of one band on two pieces, as one."""
    found: list[tuple[float, float]] = []
    for low, high in sorted(rooms):
        if found and low < found[-1][1] + 0.05:
            found[-1] = found[-1][0], max(high, found[-1][1])
        else:
            found.append((low, high))
    return found


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("kind", ["threads", "pitches", "seats", "hexes", "flanges", "hoses"])
def test_every_page_has_both_check_lines_and_the_outline_of_a_bank_card(kind: str, paper: str) -> None:
    family = "sae_37_flare" if kind == "threads" else ""
    for page in sheet(kind, paper, family):
        assert sorted((page.width, page.height)) == pytest.approx(PAPERS[paper], abs=0.01)
        level = [one.across for one in page.lines if one.down < NEAR]
        assert any(length == pytest.approx(100, abs=NEAR) for length in level)
        assert any(length == pytest.approx(101.6, abs=NEAR) for length in level)
        card = [
            one for one in page.lines if (one.across, one.down) == pytest.approx((85.60, 53.98), abs=NEAR)
        ]
        assert len(card) == 1, "ISO/IEC 7810, ID-1"


@pytest.mark.parametrize(
    ("kind", "words", "across"),
    [("threads", "D26.99", 26.987), ("hexes", "H31.75", 31.75), ("pitches", "P2.117", 31 * 25.4 / 12)],
)
def test_a_printer_of_600_dots_an_inch_blackens_what_the_tables_say(
    kind: str, words: str, across: float
) -> None:
    page = page_of(sheet(kind, family="sae_37_flare" if kind == "threads" else ""), words)
    bar = bar_beside(page, words)[0]
    seen = page.seen(4, bar.top + 1, 8 + across + 1.5, bar.top + 2, 600)
    dark = np.flatnonzero((seen < 250).all(axis=0))
    assert (dark[-1] - dark[0] + 1) / 600 * 25.4 == pytest.approx(across, abs=0.06)


def test_a_printer_of_600_dots_an_inch_shows_discs_angles_bands_and_hose_bands_true() -> None:
    page = page_of(sheet("flanges"), "B52.40")
    disc = min(shaded(page, LIGHT), key=lambda one: abs(one.across - 44.4))
    seen = page.seen(disc.left - 1, disc.top - 1, disc.right + 1, disc.bottom + 1, 600) < 250
    assert seen.any(axis=0).sum() / 600 * 25.4 == pytest.approx(44.4, abs=0.1)
    assert seen.any(axis=1).sum() / 600 * 25.4 == pytest.approx(44.4, abs=0.1)

    [page] = sheet("seats")
    notch = next(one for one in page.fills if len(one.points) >= 7 and one.top > 100)
    deep, open_at = notch.points[2], notch.points[1]
    clear = page.seen(notch.left, notch.top + 1, notch.right, notch.top + 11, 600) > 250
    widths = clear.sum(axis=1) / 600 * 25.4
    half = math.degrees(math.atan((widths[0] - widths[-1]) / 2 / (10 - 25.4 / 600)))
    assert half == pytest.approx(
        math.degrees(math.atan2(deep[0] - open_at[0], deep[1] - open_at[1])), abs=0.3
    )

    page = next(one for one in sheet("hoses") if one.places("EN 856 4SP, piece 1"))
    [(_, _, _, bottom)] = page.places("EN 856 4SP, piece 1")
    seen = page.seen(16, bottom + 5.0, page.width - 9, bottom + 5.4, 600)
    dark = (np.abs(seen.astype(int) - DARK) < 3).all(axis=0)
    read = [r.outside_diameter_mm for r in tables().hose_sizes["EN 856 4SP"] if r.dash == "32"]
    at = [(16 + place / 600 * 25.4 - 16) / math.pi for place in np.flatnonzero(dark)]
    assert max(at) == pytest.approx(max(read), abs=0.05)
