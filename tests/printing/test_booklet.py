"""The pocket booklet: the tables' own figures, cautions first, and pages in order once cut, stacked and folded."""

from __future__ import annotations

import re
from functools import cache

import pypdfium2
import pypdfium2.raw as raw
import pytest

from tagger import phrases, units
from tagger.errors import TradeError
from tagger.i18n import LANGUAGES, Translator
from tagger.papers import booklet
from tagger.papers.connection_facts import Facts, all_facts
from tagger.papers.flats_chart import counts
from tagger.papers.imposition import PAGES_A_SHEET, Side, sides
from tagger.settings import ShopSettings
from tagger.spec import Connection, Form, Material, Sizing
from tagger.trade.known import an_end
from tagger.trade.rows import UNVERIFIED
from tagger.trade.steps import source_of
from tagger.trade.tables import tables
from tagger.trade.tightening import advice

SHOP = ShopSettings(shop_name="Example Hose Shop", shop_phone="+44 1632 960000")
CAP = 0.729  # of the em


@cache
def pages(language: str, paper: str = "A4") -> pypdfium2.PdfDocument:
    return pypdfium2.PdfDocument(booklet.of_shop(SHOP, tables(), language, paper=paper, page_by_page=True))


@cache
def texts(language: str) -> tuple[str, ...]:
    return tuple(page.get_textpage().get_text_range() for page in pages(language))


def packed(text: str) -> str:
    return "".join(text.split())


@cache
def facts() -> dict[Connection, Facts]:
    return {one.family: one for one in all_facts(tables())}


@cache
def page_of(language: str, family: Connection) -> str:
    """The text of the page where a family stands, from its name on: how it seals follows its name."""
    t, one = Translator(language), facts()[family]
    name = f"\n{one.number} {t(phrases.connection(family))}\r\n"
    follows = packed(t(one.seals[0].message))
    found = [text[text.index(name) :] for text in texts(language) if name in text]
    return next(text for text in found if packed(text.replace(name, "", 1)).startswith(follows))


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_thread_tables_print_the_figures_of_the_tables(language: str) -> None:
    t = Translator(language)

    def shown(value: float, places: int = 2) -> str:
        return t.decimal(units.number_text(value, places))

    def inches(millimetres: float) -> str:
        return t.decimal(f"{millimetres / 25.4:.3f}")

    for (family, size), row in tables().threads.items():
        if (family, size) in tables().plain_ends:
            continue
        dashes = ", ".join(f"-{dash}" for dash in row.hose_dashes)
        tpi = shown(row.tpi or 25.4 / row.pitch_mm, 1)
        figures = " ".join([
            row.thread, shown(row.thread_od_mm), inches(row.thread_od_mm), shown(row.female_minor_mm),
            inches(row.female_minor_mm), shown(row.pitch_mm), tpi, dashes,
        ])  # fmt: skip
        [line] = [line for line in page_of(language, family).split("\r\n") if f"{figures} [" in line]
        assert line.endswith("\N{DAGGER}]") == (row.confidence in UNVERIFIED), line
        if family.sized_by is Sizing.DASH:
            assert line.startswith(f"-{size} "), line
    for (family, _), ends in tables().plain_ends.items():
        text = page_of(language, family)
        for end in ends:
            for figure in {end.diameter_min_mm, end.diameter_max_mm} - {None}:
                assert f"{shown(figure or 0)} " in text and inches(figure or 0) in text, end
    for flange in tables().flanges:
        printed = flange.value if flange.what.startswith("screw") else f"{shown(float(flange.value))} mm"
        sign = "\N{DAGGER}" if flange.confidence in UNVERIFIED else ""
        assert re.search(rf"{re.escape(printed)} \[\d+{sign}\]", page_of(language, flange.family)), flange


@pytest.mark.parametrize("language", LANGUAGES)
def test_cautions_stand_on_the_first_inner_page_with_their_sources(language: str) -> None:
    t, second = Translator(language), packed(texts(language)[1])
    chosen = {step.step_id: step for step in tables().steps}
    for name in ("depressurise", "injection", "cool", "defer", "zero", "leak_look", "leak_stop"):
        assert "\u26a0" + packed(t(chosen[name].message)) in second, name
        assert packed(t(source_of(chosen[name], {}))) in second, name
    assert "Example Hose Shop" in texts(language)[0]


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_family_has_its_look_alikes_by_name_and_how_it_seals(language: str) -> None:
    t = Translator(language)
    for one in facts().values():
        text = packed(page_of(language, one.family))
        for other in one.alike:
            assert packed(t(phrases.connection(other))) in text, (one.family, other)
        for seal in one.seals:
            assert packed(t(seal.message)) in text, one.family
        assert one.seals


def test_flats_are_those_of_the_sources_with_their_start_and_those_of_the_tags_are_marked() -> None:
    """Counts from one start are never told as if they were from another."""
    every = facts()
    t = Translator("en")
    text = packed("".join(texts("en")))
    told = {family: found for family, one in every.items() if (found := counts(one, tables()))}
    assert set(told) == {Connection.SAE_37_FLARE, Connection.SAE_45_FLARE}
    for family, found in told.items():
        for size in tables().sizes(family):
            end = an_end(family, size, Form.FEMALE_SWIVEL, material=Material.CARBON_STEEL)
            flats = advice("end_a", end, tables())[0].flats
            mine = [one for one in found if one.size == end.size_text and one.shown]
            assert [(c.flats.low, c.flats.value, c.basis, c.cited.source) for c in mine] == (
                [(flats.min, flats.max, flats.basis, flats.source)] if flats else []
            ), (family, size)
        rows = [
            row
            for row in tables().tightening[family]
            if row.use == "hose" and "nut" in row.part and row.material == "carbon_steel"
            and row.flats_max is not None and row.basis in ("finger_tight", "wrench_resistance")
        ]  # fmt: skip
        for row in rows:
            of_row = (
                row.flats_min if row.flats_min is not None else None,
                row.flats_max,
                row.basis,
                row.source,
            )
            assert of_row in [(c.flats.low, c.flats.value, c.basis, c.cited.source) for c in found], row
        for one in found:
            cells = f"{one.size or 'any'}{t.figure(one.flats)}{t(phrases.basis(one.basis))}["
            assert packed(cells) in text, one


@pytest.mark.parametrize(("language", "paper"), [*((one, "A4") for one in LANGUAGES), ("de", "Letter")])
def test_no_letter_is_small_cut_or_on_top_of_another(language: str, paper: str) -> None:
    document = pages(language, paper)
    width, height = document[0].get_size()
    assert (round(width / 72 * 25.4), round(height / 72 * 25.4)) == {"A4": (105, 149), "Letter": (108, 140)}[
        paper
    ]
    for number, page in enumerate(document, 1):
        text = page.get_textpage()
        sizes = {round(raw.FPDFText_GetFontSize(text, at), 2) for at in range(0, text.count_chars(), 3)}
        assert min(sizes - {0.0, 1.0}) / 72 * 25.4 * CAP >= 1.6, (number, sizes)
        boxes = [text.get_rect(at) for at in range(text.count_rects())]
        for left, bottom, right, top in boxes:
            assert left >= 16 and right <= width - 16 and bottom >= 10 and top <= height - 12, (number, left)
        for place, a in enumerate(boxes):
            for b in boxes[place + 1 :]:
                across, up = min(a[2], b[2]) - max(a[0], b[0]), min(a[3], b[3]) - max(a[1], b[1])
                assert across < 0.6 or up < 1.2, (
                    number,
                    a,
                    b,
                    text.get_text_bounded(*a),
                    text.get_text_bounded(*b),
                )


def read_through(made: tuple[Side, ...]) -> list[int]:
    """Prints the sides, cuts every sheet, lays upper halves on lower ones, folds, and reads leaf by leaf."""
    sheets = [(made[n], made[n + 1]) for n in range(0, len(made), 2)]
    halves = {row: [] for row in (0, 1)}  # type: dict[int, list[dict[tuple[str, int], int]]]
    for front, back in sheets:
        for row in (0, 1):
            leaf = {("front", s.column): s.page for s in front.slots if s.row == row}
            # Over the long edge left and right change places, above and below do not.
            leaf |= {("behind", 1 - s.column): s.page for s in back.slots if s.row == row}
            halves[row].append(leaf)
    stack = [*halves[0], *halves[1]]
    first_half = [page for leaf in stack for page in (leaf["front", 1], leaf["behind", 1])]
    second_half = [page for leaf in reversed(stack) for page in (leaf["behind", 0], leaf["front", 0])]
    return first_half + second_half


@pytest.mark.parametrize("count", [8, 16, 32, 40])
def test_a_folded_booklet_reads_from_first_to_last_page(count: int) -> None:
    assert read_through(sides(count)) == list(range(1, count + 1))


def test_pages_that_fill_no_sheet_are_no_booklet() -> None:
    for count in (0, 4, 33):
        with pytest.raises(ValueError, match="whole number of sheets"):
            sides(count)


@pytest.mark.parametrize("paper", booklet.PAPERS)
def test_the_printed_sheets_hold_each_page_where_the_folding_needs_it(paper: str) -> None:
    """The pages' own words at their places on the sheets, cover at the right of the first side, back cover at its left."""
    single = [packed(page.get_textpage().get_text_range()) for page in pages("en", paper)]
    made = pypdfium2.PdfDocument(booklet.of_shop(SHOP, tables(), "en", paper=paper))
    count = len(made) * PAGES_A_SHEET // 2
    padded = [*single[:-1], *[""] * (count - len(single)), single[-1]]
    width, height = made[0].get_size()
    assert (round(width / 72 * 25.4), round(height / 72 * 25.4)) == {"A4": (210, 297), "Letter": (216, 279)}[
        paper
    ]
    for side, page in zip(sides(count), made, strict=True):
        text = page.get_textpage()
        for slot in side.slots:
            left, bottom = slot.column * width / 2, (1 - slot.row) * height / 2
            found = text.get_text_bounded(left, bottom, left + width / 2, bottom + height / 2)
            assert sorted(packed(found)) == sorted(padded[slot.page - 1]), (side, slot)
    assert packed("Threads and connections") in single[0] and packed("Fold backwards") in single[-1]


def test_another_paper_is_refused() -> None:
    with pytest.raises(TradeError) as refused:
        booklet.of_shop(SHOP, tables(), "en", paper="A3")
    assert refused.value.problems[0].message.id == "charts-not-a-paper"
