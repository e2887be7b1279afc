"""What stands on a label, and where."""

from itertools import pairwise

import numpy as np
import pytest

from tagger.drawing import Grid, Text
from tagger.printing import raster, template
from tagger.printing.layout import lay_out
from tagger.printing.sizing import dot_mm, qr_size
from tagger.printing.textfit import fit


def texts(page):
    return [item.text for item in page.drawing.items if isinstance(item, Text)]


def codes(page):
    return [placed for placed in page.symbols if placed.symbol.kind == "qr"]


@pytest.mark.parametrize("dpi", [203, 300, 600])
@pytest.mark.parametrize("name", template.names())
def test_modules_and_bars_are_whole_dots(name, dpi, tag):
    label = template.load(name)
    page = lay_out(tag, label, dpi)
    for placed in page.symbols:
        for length in (placed.x, placed.y, placed.module_mm):
            assert length / dot_mm(dpi) == pytest.approx(round(length / dot_mm(dpi)), abs=1e-6)
    for placed in codes(page):
        assert placed.dots >= 3
        small = (
            label.box[placed.box].holds == "number"
        )  # the code round thin hoses: label_templates/README.md
        assert placed.module_mm >= (0.338 if small else 0.368)


@pytest.mark.parametrize("name", template.names())
def test_every_module_is_printed_as_its_symbol_has_it(name, tag):
    """The dots of the whole label, read back module by module."""
    page = lay_out(tag, template.load(name))
    dots = np.asarray(raster.draw(page.drawing, 203).convert("L")) < 128
    for placed in codes(page):
        size, step = placed.symbol.size, placed.dots
        left, top = round(placed.x / dot_mm(203)), round(placed.y / dot_mm(203))
        seen = dots[top : top + size * step, left : left + size * step].reshape(size, step, size, step)
        assert np.array_equal(seen.all(axis=(1, 3)), seen.any(axis=(1, 3)))
        modules = np.rot90(seen.all(axis=(1, 3)), placed.turn // 90)
        assert np.array_equal(modules, placed.symbol.modules)


def test_the_highest_level_whose_modules_stay_large_enough_is_taken(tag):
    assert qr_size(tag.link, 30.6, ("H", "Q", "M"), 0.37, 203).level == "H"
    middle = qr_size(tag.link, 19.5, ("H", "Q", "M"), 0.37, 203)
    assert middle.level in "QM"
    assert middle.dots == 3
    assert qr_size(tag.link, 12.0, ("H", "Q", "M"), 0.37, 203) is None


def test_the_largest_module_comes_before_the_largest_version(tag):
    size = qr_size(tag.link, 30.6, ("H",), 0.37, 203)
    assert size.dots == 4
    assert size.side_mm <= 30.62
    assert qr_size(tag.link, 30.6, ("H",), 0.37, 203, grow=False).version <= size.version <= 9


def test_hang_tag_carries_the_symbol_twice_and_apart(tag):
    first, second = codes(lay_out(tag, template.load("hang_tag")))
    assert first.symbol.level == second.symbol.level == "H"
    bottom = first.y + first.symbol.size * first.module_mm
    assert second.y - bottom > 8


def test_wrap_label_repeats_the_symbol_round_the_hose(tag):
    """Three columns, a third of their pitch apart."""
    columns: dict[float, list[float]] = {}
    for placed in codes(lay_out(tag, template.load("wrap_label"))):
        columns.setdefault(placed.x, []).append(placed.y)
    assert [len(tops) for tops in columns.values()] == [8, 8, 8]
    pitch = (max(columns[min(columns)]) - min(columns[min(columns)])) / 7
    starts = [min(tops) for _, tops in sorted(columns.items())]
    assert [after - before for before, after in pairwise(starts)] == pytest.approx([pitch / 3] * 2, abs=0.2)


def test_hang_tag_says_what_it_must(tag, make_tag):
    shown = " ".join(texts(lay_out(tag, template.load("hang_tag"))))
    for part in (
        tag.shown_number, "Max. working pressure", "207 bar", "3000 psi", "SAE 100R2 -12 (3/4 in)", "End A: -12",
        "End B: -12 37° flare", "drop 56 mm (2.20 in)", "1250 mm (49.21 in)", "Tighten A: 103–115 N·m",
        "1 to 1 1/4 flats from finger-tight", "2026-11-25", "Release pressure before loosening",
    ):  # fmt: skip
        assert part in shown, part


def test_clocking_is_said_and_drawn_only_where_it_means_something(make_tag):
    label = template.load("hang_tag")
    with_angle = texts(lay_out(make_tag(), label))
    assert "135°" in with_angle
    assert any(text.startswith("135° counter-clockwise") for text in with_angle)
    from tests.printing.conftest import STRAIGHT

    assert not any("clockwise" in text for text in texts(lay_out(make_tag(STRAIGHT), label)))


def test_what_is_not_known_says_so(make_tag):
    unknown = make_tag(working_pressure_bar=None, tighten_a=None, tighten_b=None)
    shown = " ".join(texts(lay_out(unknown, template.load("hang_tag"))))
    assert shown.count("not known: use the fitting manufacturer's value") == 3
    assert " bar" not in shown
    assert "N·m" not in shown


def test_pressure_is_the_largest_text_of_the_spec(tag):
    page = lay_out(tag, template.load("hang_tag"))
    sizes = {item.text: item.size for item in page.drawing.items if isinstance(item, Text)}
    others = [size for text, size in sizes.items() if text not in ("207 bar", "3000 psi", tag.shown_number)]
    assert sizes["207 bar"] >= 1.7 * max(others)
    capitals = 0.729  # of the em, from the font's own OS/2 table
    assert sizes["207 bar"] * capitals > 3


@pytest.mark.parametrize("name", template.names())
def test_text_stays_on_its_label(name, tag):
    from tagger.printing.fonts import text_width

    page = lay_out(tag, template.load(name))
    for item in page.drawing.items:
        if isinstance(item, Text) and item.turn == 0:
            width = text_width(item.text, item.size, item.bold)
            left = item.x - {"start": 0, "middle": 0.5, "end": 1}[item.anchor] * width
            assert left >= -0.05
            assert left + width <= page.drawing.width + 0.05
            assert item.y <= page.drawing.height


def test_a_figure_is_never_parted_from_its_fraction_or_unit():
    line = "Tighten A: 103–115 N·m (76–85 lbf·ft); 1 to 1 1/4 flats, drop 56 mm, up to 3000 psi"
    for width in np.arange(20, 90, 0.5):
        found = fit((line,), float(width), 60.0, 3.0, 1.7, False)
        for part in ("115 N·m", "85 lbf·ft", "1 1/4", "56 mm", "3000 psi"):
            assert any(part in piece for piece in found.lines), (width, part, found.lines)


def test_no_word_is_lost_when_text_wraps():
    line = "one two three four five six seven eight nine ten"
    assert " ".join(fit((line,), 22.0, 30.0, 3.0, 1.7, False).lines) == line


def test_text_shrinks_before_it_wraps_but_not_for_a_crumb():
    assert len(fit(("just a little too long",), 26.0, 9.0, 3.0, 1.7, False).lines) == 1
    assert len(fit(("a good deal too long for one line of this box",), 26.0, 9.0, 3.0, 1.7, False).lines) > 1


def test_grids_are_the_symbols_themselves(tag):
    page = lay_out(tag, template.load("hang_tag"))
    grids = [item for item in page.drawing.items if isinstance(item, Grid)]
    assert len(grids) == len(page.symbols) == 3
