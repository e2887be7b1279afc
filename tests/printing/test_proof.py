"""Every label that is printed is proved from its dots; a kind of label is simulated once."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from tagger.code import link, symbol
from tagger.drawing import Circle, Drawing, Grid, Group, Line, Part, Text
from tagger.errors import SymbolError
from tagger.printing import boxes, layout, painter, pdf, raster, template
from tagger.printing.content import Tag
from tagger.printing.kinds import LONGEST_LINK, Kind, Kinds
from tagger.printing.layout import Page, lay_out
from tagger.printing.proof import prove, prove_symbol
from tagger.trade import assess

MakeTag = Callable[..., Tag]


def _with(page: Page, old: object, *new: object) -> Page:
    items = [one for item in page.drawing.items for one in (new if item is old else (item,))]
    return replace(page, drawing=replace(page.drawing, parts=tuple(items)))  # type: ignore[arg-type]


@pytest.mark.parametrize("dpi", [203, 300, 600])
def test_every_label_of_every_template_is_proved(make_tag: MakeTag, dpi: int) -> None:
    """A J, the one letter that reaches left of where it is set, may stand beside a code's quiet zone."""
    tag = make_tag(seed=23, shop="Jetty Hose, 555-0142")
    assert tag.number.startswith("J")
    for name in template.names():
        prove(tag, lay_out(tag, template.load(name), dpi))


def test_one_wrong_dot_module_or_place_of_any_symbol_is_caught(make_tag: MakeTag) -> None:
    tag = make_tag()
    page = lay_out(tag, template.load("hang_tag"))
    for grid in [item for item in page.drawing.items if isinstance(item, Grid)]:
        flipped = grid.modules.copy()
        flipped[0, 10] ^= True
        moved_by_a_dot = replace(grid, x=grid.x + 25.4 / 203)
        speck = Circle(grid.x + 3.5 * grid.pitch_x, grid.y + 0.5 * grid.pitch_y, 0.2, "white", 0.0)
        scratch = Line(grid.x - 1.0, grid.y + 1.0, grid.x - 0.8, grid.y + 1.0, 0.13)
        for changed in ((replace(grid, modules=flipped),), (moved_by_a_dot,), (grid, speck), (scratch, grid)):
            with pytest.raises(SymbolError, match=tag.shown_number):
                prove(tag, _with(page, grid, *changed))
        prove(tag, _with(page, grid, scratch, grid), forced=True)  # a phone may read it all the same
    prove(tag, page)
    first, *others = page.symbols
    grid = next(item for item in page.drawing.items if isinstance(item, Grid))
    for x, y in ((-60.0, 1.0), (-1.0, 1.0), (90.0, 1.0), (300.0, 1.0), (60.0, 900.0)):
        beside = _with(page, grid, replace(grid, x=x, y=y))
        with pytest.raises(SymbolError, match=tag.shown_number):
            prove(tag, replace(beside, symbols=(replace(first, x=x, y=y), *others)), forced=True)


def test_a_symbol_that_says_another_thing_or_is_made_with_one_wrong_module_is_caught(
    make_tag: MakeTag,
) -> None:
    tag, other = make_tag(seed=1), make_tag(seed=2)
    page = lay_out(tag, template.load("hang_tag"))
    with pytest.raises(SymbolError, match=r"does not say what the tag says"):
        prove(replace(tag, link=other.link), page)
    with pytest.raises(SymbolError, match=r"bar code does not say what the tag says"):
        prove(replace(tag, number=other.number), page)
    placed = next(one for one in page.symbols if one.symbol.kind == "qr")
    grid = next(item for item in page.drawing.items if isinstance(item, Grid) and item.modules.shape[0] > 1)
    modules = placed.symbol.modules.copy()
    modules[-9, -9] ^= True  # the decoder's error correction mends it
    wrong = replace(placed, symbol=replace(placed.symbol, modules=modules))
    drawn = _with(page, grid, replace(grid, modules=modules))
    symbols = tuple(wrong if one is placed else one for one in page.symbols)
    with pytest.raises(SymbolError, match=r"does not say what the tag says"):
        prove(tag, replace(drawn, symbols=symbols))


def test_digits_of_another_spec_under_the_same_number_and_no_text_at_all_are_caught(
    make_tag: MakeTag,
) -> None:
    tag, stronger = make_tag(), make_tag(working_pressure_bar=350.0)
    assert tag.number == stronger.number and tag.link != stronger.link
    prove_symbol(tag, symbol.qr(tag.link))
    prove_symbol(tag, symbol.qr(link.number_only(tag.link)))
    for text in (stronger.link, ""):
        with pytest.raises(SymbolError, match=tag.shown_number):
            prove_symbol(tag, symbol.qr(text))


def test_a_quiet_zone_that_the_labels_edge_cuts_off_is_caught(make_tag: MakeTag) -> None:
    """Beyond the edge lies whatever the label is stuck on."""
    tag = make_tag()
    page = lay_out(tag, template.load("hang_tag"))
    placed, grid = next(
        both
        for both in zip(
            page.symbols, (one for one in page.drawing.items if isinstance(one, Grid)), strict=True
        )
        if both[0].symbol.kind == "qr"
    )
    module, side = placed.module_mm, placed.symbol.size * placed.module_mm
    whole = side + 2 * placed.symbol.quiet * module
    for left, top, width, height, held in (
        (4, 4, whole, whole, True),
        (3, 4, whole, whole, False),
        (4, 3, whole, whole, False),
        (4, 4, whole - module, whole, False),
        (4, 4, whole, whole - module, False),
    ):
        x, y = left * module, top * module
        drawing = Drawing(width, height, (replace(grid, x=x, y=y),))
        label = replace(page, drawing=drawing, symbols=(replace(placed, x=x, y=y),))
        prove(tag, label, forced=True)
        if held:
            prove(tag, label)
        else:
            with pytest.raises(SymbolError, match=tag.shown_number):
                prove(tag, label)


@pytest.mark.parametrize("version", [1, 2, 6, 7, 14, 27, 40])
def test_no_module_of_a_symbol_is_free_to_be_wrong(version: int) -> None:
    chance = np.random.default_rng(version)
    for level in "LMQH":
        made = symbol.qr("1234567", level, version=version)
        assert symbol.whole(made)
        for row, column in chance.integers(0, made.size, (25, 2)):
            modules = made.modules.copy()
            modules[row, column] ^= True
            assert not symbol.whole(replace(made, modules=modules)), (level, row, column)


def test_a_part_of_a_page_is_drawn_as_the_whole_page_has_it(assessed: list[Tag]) -> None:
    for name, dpi in (("hang_tag", 203), ("roll_4x6", 300), ("flag_label", 203)):
        page = lay_out(assessed[1], template.load(name), dpi)
        whole = np.asarray(painter.draw(page.drawing, dpi))
        for left, top in ((0, 0), (37, 61), (150, 90)):
            near = np.asarray(painter.draw_near(page.drawing, [(left, top, left + 160, top + 120)], dpi))
            part = (slice(top, top + 120), slice(left, left + 160))
            assert np.array_equal(near[part], whole[part])


def test_no_dot_of_a_letter_is_missed_where_a_line_only_just_reaches_into_a_part() -> None:
    """Letters with accents above and below, in every small size, beside parts one dot high."""
    for size in (1.2, 1.5, 1.7, 2.2, 2.6, 7.1):
        for line in ("ÅÇŞ|j", "-12 (3/4 in)", "°–·", "acne", "ŷḜ,"):
            for bold, dpi in ((False, 203), (True, 203), (False, 300), (True, 600)):
                drawing = Drawing(40.0, 20.0, (Text(3.0, 10.0, line, size, bold),))
                whole = np.asarray(painter.draw(drawing, dpi))
                for top in range(whole.shape[0]):
                    near = painter.draw_near(drawing, [(0, top, whole.shape[1], top + 1)], dpi)
                    assert np.array_equal(np.asarray(near)[top], whole[top]), (line, size, bold, dpi, top)


def test_a_run_whose_tag_k_has_a_wrong_symbol_is_refused_by_its_number_and_leaves_no_file(
    make_tag: MakeTag, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    tags = [make_tag(seed=n) for n in range(8)]
    make, draw = boxes._code, layout._grid

    def one_module_wrong(text: str, level: str, version: int) -> symbol.Symbol:
        made = make(text, level, version)
        if text == tags[5].link:
            modules = made.modules.copy()
            modules[20, 20] ^= True
            return replace(made, modules=modules)
        return made

    def a_dot_aside(placed: boxes.Placed, box: template.Box) -> Grid:
        drawn = draw(placed, box)
        return replace(drawn, y=drawn.y + 25.4 / 203) if placed.symbol.text == tags[5].link else drawn

    for room, name, broken in ((boxes, "_code", one_module_wrong), (layout, "_grid", a_dot_aside)):
        with monkeypatch.context() as patch:
            patch.setattr(room, name, broken)
            with pytest.raises(SymbolError, match=tags[5].shown_number):
                pdf.write(tags, template.load("hang_tag"), tmp_path / "run.pdf")
            with pytest.raises(SymbolError, match=tags[5].shown_number):
                raster.write(tags[4:], template.load("roll_2x1"), tmp_path / "run.png")
    assert not list(tmp_path.iterdir())
    assert pdf.write(tags, template.load("hang_tag"), tmp_path / "run.pdf") == 8


def test_labels_of_a_kind_are_simulated_once_on_the_thinnest_and_the_thickest_hose(
    assessed: list[Tag],
) -> None:
    kinds, label = Kinds(), template.load("flag_label")
    tags = [replace(tag, link=assessed[0].link) for tag in assessed if tag.assessment]
    for tag in tags:
        kinds.add(tag, lay_out(tag, label))
    diameters = sorted(tag.assessment.hose_od_mm or 0.0 for tag in tags if tag.assessment)
    worst = list(kinds.worst(bends=True))
    found = sorted(tag.assessment.hose_od_mm or 0.0 for tag in worst if tag.assessment)
    assert (found[0], found[-1]) == (diameters[0], diameters[-1])
    assert len(worst) < len(tags)
    assert len(list(kinds.worst(bends=False))) == len(kinds.met)
    for order in (tags, tags[::-1]):  # each chunk of a run has kinds of its own, put together as they come
        of_the_run = Kinds()
        for tag in order:
            of_one = Kinds()
            of_one.add(tag, lay_out(tag, label))
            of_the_run.merge(of_one)
        assert {*map(_round, of_the_run.worst(bends=True))} == {*map(_round, worst)}


def _round(tag: Tag) -> float | None:
    return tag.assessment.hose_od_mm if tag.assessment else None


def test_labels_are_of_one_kind_only_where_all_that_decides_how_they_scan_is_alike(make_tag: MakeTag) -> None:
    tag = make_tag()
    page = lay_out(tag, template.load("hang_tag"))
    first, *others = page.symbols
    small = Text(1.0, 1.0, "small", 1.6)

    def with_first(**changes: object) -> Page:
        changed = replace(first, symbol=replace(first.symbol, **changes))  # type: ignore[arg-type]
        return replace(page, symbols=(changed, *others))

    def with_part(*parts: Part) -> Page:
        return replace(page, drawing=replace(page.drawing, parts=(*page.drawing.parts, *parts)))

    long = replace(tag, link=tag.link + "0" * (LONGEST_LINK + 1 - len(tag.link)))
    rated = replace(tag, assessment=assess(tag.spec))
    others_of = {
        "version": Kind.of(tag, with_first(version=first.symbol.version + 1)),
        "level": Kind.of(tag, with_first(level="L")),
        "bars or code": Kind.of(tag, with_first(kind="other")),
        "dots": Kind.of(tag, replace(page, symbols=(replace(first, dots=first.dots + 1), *others))),
        "one symbol less": Kind.of(tag, replace(page, symbols=tuple(others))),
        "small text": Kind.of(tag, with_part(small)),
        "link": Kind.of(long, page),
        "diameter": Kind.of(rated, page),
    }
    assert rated.assessment is not None and rated.assessment.hose_od_mm
    kinds = {Kind.of(tag, page), *others_of.values()}
    assert len(kinds) == 1 + len(others_of), others_of
    assert Kind.of(tag, with_part(Group((small, Text(1.0, 1.0, "large", 4.0))))) == others_of["small text"]
    assert Kind.of(tag, with_part(Text(1.0, 1.0, "other words", 2.0))) == Kind.of(tag, page)
    assert Kind.of(make_tag(seed=2), page) == Kind.of(tag, page)
