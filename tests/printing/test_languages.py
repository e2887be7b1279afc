"""A tag in one language and in two: one decimal sign, and each value once."""

from __future__ import annotations

import re
from itertools import permutations

import pytest

from tagger.drawing import Text
from tagger.i18n import LANGUAGES, Translator
from tagger.printing import fields, rating, template
from tagger.printing.content import Tag
from tagger.printing.layout import lay_out

PAIRS = [*permutations(LANGUAGES, 2)]
WORDLESS = (
    "number",
    "built_on",
    "dash",
    "temperature",
    "tolerance",
    "bend_radius",
    "test_pressure",
    "working_pressure",
)
"""Fields whose line is the same in every language but for its decimal sign."""
DECIMAL = re.compile(r"\d([.,])\d+ (?:mm|in|N·m|lbf·ft|bar)")


def signs_on(tag: Tag, name: str, languages: tuple[str, ...]) -> set[str]:
    """The decimal signs of all values on the label."""
    page = lay_out(tag, template.load(name).in_languages(languages))
    return {
        sign for item in page.drawing.items if isinstance(item, Text) for sign in DECIMAL.findall(item.text)
    }


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_tag_writes_decimals_as_its_language_does(language: str, assessed: list[Tag]) -> None:
    for tag in assessed:
        assert signs_on(tag, "hang_tag", (language,)) == {Translator(language).decimal_sign}


@pytest.mark.parametrize("languages", PAIRS, ids="-".join)
def test_a_tag_in_two_languages_has_one_decimal_sign(languages: tuple[str, str], assessed: list[Tag]) -> None:
    signs = {Translator(language).decimal_sign for language in languages}
    wanted = signs if len(signs) == 1 else {"."}
    for tag in assessed:
        assert signs_on(tag, "hang_tag_two", languages) == wanted


@pytest.mark.parametrize("languages", PAIRS, ids="-".join)
def test_a_line_without_words_stands_once_with_the_captions_of_both(
    languages: tuple[str, str], assessed: list[Tag]
) -> None:
    for tag in assessed:
        for name in WORDLESS:
            carried = tag.content
            if name == "working_pressure" and (not carried.working_pressure_bar or carried.unverified_parts):
                continue  # then it has words
            alone = [fields.lines_of((name,), tag, (language,), caption=False) for language in languages]
            both = fields.lines_of((name,), tag, languages, caption=False)
            assert len(both) == len(alone[0]) <= 1, (name, both)
        said = rating.plate(tag, languages, dangers=False)
        assert len(said.captions) == 2
        assert len(said.figures) == (0 if tag.content.working_pressure_bar is None else 2)  # bar and psi
        assert said.figures or len(said.forms[0]) % 2 == 0  # each line in both languages
    (line,) = fields.lines_of(("built_on",), assessed[0], ("en", "de"), caption=True)
    assert line == "Built on / Hergestellt am: 2026-11-25"


def test_what_is_words_stands_in_both_languages(assessed: list[Tag]) -> None:
    lines = fields.tightening_lines(assessed[0], "a", ("en", "de"))[0]
    assert [line.partition(":")[0] for line in lines] == ["Tighten A", "Anziehen A"]
    torque = re.compile(r"[\d–.]+ N·m \([\d–.]+ lbf·ft\)")
    assert torque.findall(lines[0]) == torque.findall(lines[1]) != []


def test_warnings_stand_in_the_first_language_only(assessed: list[Tag]) -> None:
    for tag in assessed:
        assert fields.lines_of(("warnings",), tag, ("fr", "de"), caption=False) == fields.lines_of(
            ("warnings",), tag, ("fr",), caption=False
        )
