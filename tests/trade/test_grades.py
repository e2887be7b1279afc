"""Every figure that a builder sees says how good its source is, in words."""

from __future__ import annotations

from tagger.cli.report import assessment_text
from tagger.i18n import LANGUAGES, Translator
from tagger.trade import assess, grades, report
from tagger.trade.results import PartRating
from tagger.trade.tables import tables
from tests.trade.made_up import assembly, ending, hose, made_up
from tests.trade.specs import example


def test_each_rated_part_has_the_grade_that_the_table_of_sources_gives_its_source() -> None:
    parts = assess(example()).working_pressure.parts
    assert parts
    for part in parts:
        expected = tables().sources[part.source].grade
        assert part.grade == ("unverified" if part.standing == "unverified" else expected)


def test_a_part_without_a_rating_has_no_grade_and_an_unverified_one_says_so() -> None:
    ours = made_up(
        hose_pressure=[hose(100, source="remembered", confidence="memory")],
        connection_pressure=[ending(120, size="10")],
    )
    graded = {part.part: part.grade for part in assess(assembly(), ours).working_pressure.parts}
    assert graded == {"hose": "unverified", "end_a": None, "end_b": None}


def test_a_shops_own_value_and_an_entered_one_are_named_as_that() -> None:
    ours = made_up(
        hose_pressure=[hose(100, source="our test bench", confidence="shop")],
        connection_pressure=[ending(120, source="our test bench", confidence="shop")],
    )
    spec = assembly(working_pressure={"value_bar": 90, "source": "a letter"})
    graded = {part.part: part.grade for part in assess(spec, ours).working_pressure.parts}
    assert graded == {"hose": "shop", "end_a": "shop", "end_b": "shop", "override": "given"}


def test_check_says_the_grade_beside_each_part_in_words_and_json() -> None:
    found, t = assess(example()), Translator("en")
    text, answer = assessment_text(example(), found, t), report.assessment(example(), found, t)
    for part, told in zip(found.working_pressure.parts, answer["working_pressure"]["parts"], strict=True):
        assert part.grade is not None
        words = t(grades.said(part.grade))
        assert f"; {words})" in text and told["grade_message"]["text"] == words
    assert "an adapter on the machine may be the weakest part" in text


def test_a_record_from_before_grades_shows_its_source_alone() -> None:
    old = PartRating(part="hose", value_bar=100, source="an old chart", confidence="published")
    assert grades.cited(old) == "an old chart"


def test_no_grade_is_told_alike_in_two_ways_in_any_language() -> None:
    every = ("standard", "document", "secondary", "practice", "unverified", "shop", "given")
    for language in LANGUAGES:
        t = Translator(language)
        assert len({t(grades.said(grade)) for grade in every}) == len(every)  # type: ignore[arg-type]
