"""The wall chart: every family with the tables' own figures, nothing cut or overlapping, look-alikes in words and red."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache

import pypdfium2
import pytest

from tagger import phrases, units
from tagger.errors import TradeError
from tagger.i18n import LANGUAGES, Translator
from tagger.papers import wall_chart
from tagger.papers.chart_cards import Card
from tagger.papers.wall_chart import CAP, Chart
from tagger.settings import ShopSettings
from tagger.spec import Connection, Sizing
from tagger.trade import alike
from tagger.trade.cones import cone_of
from tagger.trade.fittings import Fitting, read_fitting
from tagger.trade.rows import UNVERIFIED
from tagger.trade.tables import tables

SHOP = ShopSettings(shop_name="Example Hose Shop")
FAMILIES = [family for family in tables().families if family.sized_by is not Sizing.WORDS]


@cache
def a_chart(language: str, paper: str = "A3") -> Chart:
    return wall_chart.laid_out(SHOP, tables(), Translator(language), paper=paper)


def stock(*ends: tuple[str, str]) -> list[Fitting]:
    return [
        read_fitting({"stock_number": f"N-{n}", "end": {"connection": family, "form": form, **size}})
        for n, (family, form) in enumerate(ends, 1)
        for size in [{"dash": 12} if Connection(family).sized_by is Sizing.DASH else {"size": "3/4"}]
    ]


def cards(chart: Chart) -> dict[Connection, Card]:
    return {card.family: card for _, _, card in chart.cards if card.family is not None}


def rows(card: Card) -> Iterator[list[str]]:
    """The words that stand on one line, from left to right."""
    lines: dict[float, list[tuple[float, str]]] = {}
    for word in card.words:
        lines.setdefault(round(word.y, 3), []).append((word.x, word.text))
    yield from ([text for _, text in sorted(line)] for line in lines.values())


def said(card: Card) -> str:
    return " ".join(word.text for word in card.words)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_family_stands_on_the_chart_with_the_figures_of_the_tables(language: str) -> None:
    t, found = Translator(language), cards(a_chart(language))
    assert list(found) == FAMILIES
    for number, (family, card) in enumerate(found.items(), 1):
        assert said(card).startswith(f"{number} {t(phrases.connection(family))}")
        lines = list(rows(card))
        for size in tables().sizes(family):
            thread = tables().threads.get((family, size))
            if thread is None or (family, size) in tables().plain_ends:
                continue
            mm = t.decimal(units.number_text(thread.thread_od_mm, 2))
            inches = t.decimal(f"{thread.thread_od_mm / 25.4:.3f}")
            [line] = [line for line in lines if thread.thread in line]
            assert line[line.index(thread.thread) + 1 :][:2] == [mm, inches], (family, size)
            assert ("\N{DAGGER}" in " ".join(line)) == (thread.confidence in UNVERIFIED), (family, size)
        for end in (row for (of, _), group in tables().plain_ends.items() if of is family for row in group):
            for figure in {end.diameter_min_mm, end.diameter_max_mm} - {None}:
                assert t.decimal(units.number_text(figure or 0, 2)) in said(card), (family, end.size)
        for flange in (row for row in tables().flanges if row.family is family and row.what.endswith("mm")):
            assert t.decimal(units.number_text(float(flange.value), 2)) in said(card), flange


@pytest.mark.parametrize(("paper", "language"), [*(("A3", one) for one in LANGUAGES), ("A2", "en")])
def test_nothing_is_cut_or_stands_on_something_else_and_letters_are_large_enough(
    paper: str, language: str
) -> None:
    chart = a_chart(language, paper)
    assert chart.cap_mm >= {"A3": wall_chart.LEAST_CAP_MM, "A2": 2.0}[paper]
    boxes = [(x, y, x + card.width, y + card.height) for x, y, card in chart.cards]
    for box in boxes:
        assert box[0] >= 8 and box[1] >= 8, box
        assert box[2] <= chart.width - 7.9 and box[3] <= chart.height - 7.9, box
    assert_apart(boxes, "cards")
    for _, _, card in chart.cards:
        words = [(w.x, w.y - w.em * 0.75, w.x + w.width, w.y + w.em * 0.2) for w in card.words]
        for box, word in zip(words, card.words, strict=True):
            inside = box[0] >= 0 and box[1] >= 0 and box[2] <= card.width + 0.01 and box[3] <= card.height
            assert inside, (card.family, word)
            assert word.em * CAP >= chart.cap_mm * 0.79, (
                "only the sources are smaller than the cards' letters"
            )
        if card.picture is not None:
            x, y, width, height = card.picture
            words.append((x, y, x + width, y + height))
        assert_apart(words, str(card.family))


def assert_apart(boxes: list[tuple[float, float, float, float]], what: str) -> None:
    for place, a in enumerate(boxes):
        for b in boxes[place + 1 :]:
            across, down = min(a[2], b[2]) - max(a[0], b[0]), min(a[3], b[3]) - max(a[1], b[1])
            assert across <= 0.01 or down <= 0.01, (what, a, b)


def test_look_alikes_are_told_in_red_with_a_sign_and_their_numbers_and_of_each_other() -> None:
    numbers = {family: str(number) for number, family in enumerate(FAMILIES, 1)}
    found = cards(a_chart("en"))
    pairs = set()
    for family, card in found.items():
        red = [word for word in card.words if word.ink == "red"]
        assert all(word.bold for word in red), "heavier in a print without colour too"
        told = set(re.findall(r"\d+", " ".join(word.text for word in red)))
        shared = {o for size in tables().sizes(family) for o, _ in alike.sharing(family, size, tables())}
        assert told == {numbers[other] for other in shared}, family
        assert not told or any(word.text.startswith("\N{NOT EQUAL TO}") for word in red)
        pairs |= {(family, other) for other in shared}
    assert all((other, family) in pairs for family, other in pairs)
    for row in tables().look_alikes:
        assert (row.family, row.other) in pairs, f"{row.family} and {row.other} are taken for each other"


def test_a_thread_that_two_families_share_names_both_in_its_row() -> None:
    card = cards(a_chart("en"))[Connection.SAE_37_FLARE]
    [line] = [line for line in rows(card) if "3/4-16 UNF" in line]
    flare_45, boss, flareless = (
        str(FAMILIES.index(f) + 1)
        for f in (Connection.SAE_45_FLARE, Connection.SAE_ORB, Connection.SAE_FLARELESS)
    )
    assert line[-1].split() == ["\N{NOT EQUAL TO}", flare_45, boss, flareless]


def test_each_cone_is_told_with_its_half_and_its_included_angle_and_which_form_has_the_nose() -> None:
    t = Translator("en")
    for family, card in cards(a_chart("en")).items():
        for form in tables().families[family].forms:
            cone = cone_of(family, form, tables())  # type: ignore[arg-type]
            if cone is None:
                continue
            text = said(card)
            assert f"{cone.half_angle}° to the axis ({2 * cone.half_angle}° included)" in text, family
            nose = re.search(r"Nose, stands out: ([^.]*)\.", text)
            funnel = re.search(r"Funnel, lies inside: ([^.]*)\.", text)
            own, other = (nose, funnel) if cone.outside else (funnel, nose)
            word = re.compile(rf"(^|, | and ){t(phrases.form(form))}(,|$| and )")
            assert own and word.search(own[1]), (family, form)
            assert not (other and word.search(other[1])), (family, form)


def test_every_mark_is_listed_at_the_foot_and_every_source_of_a_shown_figure_is_marked() -> None:
    chart = a_chart("en")
    foot = next(said(card) for _, _, card in chart.cards if "Sources" in said(card))
    listed = dict(re.findall(r"\[(\d+)\] (.*?)(?=\s+\[\d+\]|$)", foot))
    used = {n for card in cards(chart).values() for mark in re.findall(r"\[([\d,\u2020]+)\]", said(card))
            for n in mark.replace("\u2020", "").split(",")}  # fmt: skip
    assert used == set(listed)
    named = {" ".join(source.split()) for source in listed.values()}
    for row in (*tables().threads.values(), *tables().seats, *tables().cones):
        if row.family in (Connection.BANJO_METRIC, Connection.BANJO_BSP, Connection.OTHER):
            continue  # the hole of the ring is shown, not the bolt's thread
        assert row.source in named, row
    assert "unverified" in foot and "take precedence" in foot


def test_the_stock_has_its_own_families_and_numbers_and_names_look_alikes_without_a_card() -> None:
    mine = stock(("sae_37_flare", "female_swivel"), ("bspp", "female_swivel"), ("bspp", "male"))
    t = Translator("en")
    made = wall_chart.laid_out(SHOP, tables(), t, stock=mine, numbers=True)
    found = cards(made)
    assert set(found) == {Connection.SAE_37_FLARE, Connection.BSPP}
    assert made.cap_mm >= 2.0, "readable at 1 m"
    assert "-12 N-1" in said(found[Connection.SAE_37_FLARE])
    assert "3/4 N-2" in said(found[Connection.BSPP]) and "3/4 N-3" in said(found[Connection.BSPP])
    red = " ".join(word.text for word in found[Connection.SAE_37_FLARE].words if word.ink == "red")
    assert "2 45° flare" in red and "4 SAE O-ring boss" in red
    assert "N-1" not in said(
        cards(wall_chart.laid_out(SHOP, tables(), t, stock=mine))[Connection.SAE_37_FLARE]
    )


def test_a_long_list_of_stock_numbers_is_printed_to_its_last() -> None:
    """A list in one sentence ends at 2,500 letters without a word; these are told one by one."""
    mine = stock(*[("sae_37_flare", "female_swivel")] * 400)
    made = wall_chart.laid_out(SHOP, tables(), Translator("en"), stock=mine, numbers=True)
    printed = set(said(cards(made)[Connection.SAE_37_FLARE]).split())
    assert printed >= {one.stock_number for one in mine}


def test_an_empty_stock_too_much_text_and_another_paper_are_refused_with_what_to_do() -> None:
    t = Translator("en")
    with pytest.raises(TradeError) as refused:
        wall_chart.laid_out(SHOP, tables(), t, stock=[])
    assert refused.value.problems[0].message.id == "charts-no-stock"
    with pytest.raises(TradeError) as refused:
        wall_chart.laid_out(SHOP, tables(), t, paper="A5")
    assert refused.value.problems[0].message.id == "charts-not-a-paper"
    much = [
        one.model_copy(update={"stock_number": f"{one.stock_number}-{'9' * 30}"})
        for one in stock(*[("sae_37_flare", "female_swivel")] * 1500)
    ]
    with pytest.raises(TradeError) as refused:
        wall_chart.laid_out(SHOP, tables(), t, stock=much, numbers=True)
    assert refused.value.problems[0].message.id == "charts-too-full"


def test_the_pdf_is_one_page_of_letters_and_lines_that_says_what_was_laid_out() -> None:
    body = wall_chart.of_shop(SHOP, tables(), "en", paper="A3")
    [page] = pypdfium2.PdfDocument(body)
    assert [round(side / 72 * 25.4) for side in page.get_size()] == [420, 297]
    assert b"/Subtype /Image" not in body and not list(page.get_objects([pypdfium2.raw.FPDF_PAGEOBJ_IMAGE]))
    printed = "".join(page.get_textpage().get_text_range().split())
    for _, _, card in a_chart("en").cards:
        for word in card.words:
            assert "".join(word.text.split()) in printed, word.text
