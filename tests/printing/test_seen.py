"""What was seen to be wrong on labels looked at one by one, in every language: each a rule now."""

from __future__ import annotations

import math

import pytest

from tagger import phrases
from tagger.drawing import Text
from tagger.i18n import LANGUAGES, Translator
from tagger.messages import Message
from tagger.printing import template
from tagger.printing.content import Tag
from tagger.printing.fonts import text_width
from tagger.printing.layout import lay_out
from tagger.printing.textfit import fit
from tagger.rated import dangers as rated_dangers
from tagger.spec import Danger
from tests.printing.conftest import RATED, STRAIGHT, TWO_ELBOWS, a_tag

SHOPS = (
    ("Größmüller & Söhne Hydraulik Überlingen", "Tel. +49 7551 555 0100"),
    ("Établissements Préfontaine", "Tél. 01 55 50 10 00"),
)


def words(tag: Tag, name: str, language: str) -> list[Text]:
    page = lay_out(tag, template.load(name).in_languages([language]))
    return [item for item in page.drawing.items if isinstance(item, Text)]


def packed(text: str) -> str:
    return "".join(text.split())


def said(items: list[Text]) -> str:
    return packed(" ".join(item.text for item in items))


def reach(item: Text) -> tuple[float, float]:
    """From where to where it goes across, as it is read; upside down from right to left."""
    width = text_width(item.text, item.size, item.bold)
    start = -{"start": 0.0, "middle": 0.5, "end": 1.0}[item.anchor] * width
    ends = [item.x + math.cos(math.radians(item.turn)) * x for x in (start, start + width)]
    return min(ends), max(ends)


@pytest.mark.parametrize("name", ["metal_plate", "roll_4x2", "sleeve_tag", "shrink_sleeve", "traveller_a5"])
@pytest.mark.parametrize("language", LANGUAGES)
def test_no_length_stands_without_the_points_between_which_it_is_measured(
    name: str, language: str, longest: list[Tag], assessed: list[Tag]
) -> None:
    """A length to the elbows' middles taken for one to the sealing faces is a hose too short."""
    t = Translator(language)
    for tag in (*longest[::5], *assessed):
        basis = tag.spec.length_basis
        forms = (phrases.length_basis(basis), Message(f"printing-between-{basis}"))
        told = said(words(tag, name, language))
        assert any(packed(t(form)) in told for form in forms), tag.spec


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_danger_on_a_shrunk_sleeve_is_bold_and_says_more_than_its_name(language: str) -> None:
    """Regular letters of 2.8 mm; where other languages said what is wrong, French and Spanish said "heat" alone."""
    t, hot = Translator(language), {**RATED["known"], "dangers": (Danger.HEAT,)}
    for rated in (hot, RATED["a fluid and a heat beyond the limits"]):
        tag = a_tag(STRAIGHT, **rated)
        items = words(tag, "shrink_sleeve", language)
        bold = said([item for item in items if item.bold])
        dangers = tuple(Message(f"printing-danger-{danger}") for danger in tag.content.dangers)
        in_full = [packed(t(danger)) in bold for danger in rated_dangers(tag.content)]
        assert all(in_full) or (
            rated is not hot and packed(t(Message("printing-dangers", dangers=dangers))) in bold
        )
        assert packed(t(Message("printing-caution-least"))) in bold


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_stands_beside_a_line_to_write_on_cannot_be_read_as_its_value(
    language: str, longest: list[Tag]
) -> None:
    """ "bar" and "455 mm" of the next column stood 1 mm apart on the sleeve, torque and temperature on the strip."""
    for name in ("shrink_sleeve", "sleeve_tag", "metal_plate", "traveller_a5"):
        for tag in (a_tag(TWO_ELBOWS, **RATED["not known"]), *longest[::5]):
            items = words(tag, name, language)
            for item in items:
                start, end = reach(item)
                for other in items:
                    left, _ = reach(other)
                    level = abs(item.y - other.y) < 0.6 * min(item.size, other.size)
                    if other is not item and level and item.turn == other.turn and left >= start:
                        gap = 1.53 if name == "traveller_a5" else 1.6 if "_" in item.text else 0.6
                        assert left >= end + gap or other.text == item.text, (item.text, other.text)


@pytest.mark.parametrize("name", ["metal_plate", "sleeve_tag", "shrink_sleeve"])
@pytest.mark.parametrize("shop", SHOPS)
def test_a_long_shop_name_keeps_its_telephone_and_the_day_where_there_is_room_beside(
    name: str, shop: tuple[str, str]
) -> None:
    tag = a_tag(TWO_ELBOWS, shop=", ".join(shop), shop_name=shop[0])
    for language in LANGUAGES:
        told = said(words(tag, name, language))
        for part in (*shop, "2026-11-25"):
            assert packed(part) in told, (language, part)


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_hose_is_named_with_its_size_on_one_line_of_the_strip(language: str, longest: list[Tag]) -> None:
    """ "SAE / 100R13 / -16 (1 in)" stood on three lines beside the clocking angle."""
    for tag in (tag for tag in longest[::5] if not tag.spec.hose.edition):
        name = f"{tag.spec.hose.standard} -{tag.spec.hose.dash}"
        assert any(name in item.text for item in words(tag, "sleeve_tag", language)), name


@pytest.mark.parametrize("language", LANGUAGES)
def test_hose_and_length_are_not_small_beside_the_empty_paper_of_a_job_card(
    language: str, longest: list[Tag]
) -> None:
    """Letters of 2.2 mm, below one another, where the card has 80 mm of white beside them."""
    for tag in longest[::5]:
        items = words(tag, "traveller_a5", language)
        hose = next(item for item in items if item.text.startswith(tag.spec.hose.standard))
        beside = [item for item in items if "in" in item.text and item.bold and item.y > hose.y]
        basis = Translator(language)(phrases.length_basis(tag.spec.length_basis))
        [between] = [item for item in items if item.text == basis]
        assert hose.size >= 2.75 and between.size >= 2.6 and beside, (hose, between)


@pytest.mark.parametrize("to", ["to", "bis", "à", "a"])
def test_a_range_of_turns_is_not_parted_after_its_first_figure(to: str) -> None:
    """ "(...); 1" at a line's end reads as one flat."""
    text = f"Tighten A: 170.5–182.5 N·m (threads lubricated); 1 {to} 1 1/4 flats from finger-tight"
    for width in range(30, 120):
        found = fit((text,), float(width), 60.0, 4.0, 2.2, False)
        assert found is None or not any(line.endswith(" 1") for line in found.lines), (width, found)


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_stub_of_a_job_card_says_between_which_points_the_length_is(
    language: str, longest: list[Tag]
) -> None:
    for tag in longest[::5]:
        stub = said([item for item in words(tag, "traveller_stub", language) if item.y > 211])
        assert packed(Translator(language)(phrases.overall_length(tag.spec))) in stub


def test_a_line_stands_between_the_blocks_of_the_two_ends_that_stand_side_by_side() -> None:
    """ "1 bis 1 1/4 Flächen 1 bis 1 1/4 Flächen" stood on one line of a job card as one text."""
    for name in ("traveller_a5", "metal_plate", "sleeve_tag", "shrink_sleeve"):
        boxes = template.load(name).box
        lines = [box.at[0] for box in boxes if box.kind == "line" and box.size[1] > 15]
        b = next(box for box in boxes if getattr(box, "end", getattr(box, "ends", "")) == "b")
        sides = (b.at[0], b.at[0] + b.size[0])
        assert any(0.4 <= abs(side - x) <= 1.3 for side in sides for x in lines), name


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_line_of_a_job_card_begins_with_a_space(language: str, assessed: list[Tag]) -> None:
    """The French mark of a warning had the no-break space that belongs before a mark at a sentence's end."""
    for tag in assessed:
        for item in words(tag, "traveller_a5", language):
            assert item.text == item.text.strip(), repr(item.text)
            assert "  " not in item.text.replace("\u00a0", " "), repr(item.text)
