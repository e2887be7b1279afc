"""The answers of the trade in words: both unit systems, rounded to the safe side, in the reader's language."""

from __future__ import annotations

import pytest

from tagger.cli.report import assessment_text, comparison_text, identification_text
from tagger.i18n import Translator
from tagger.trade import assess, likeforlike
from tagger.trade.identifying.identify import Measurements, identify
from tests.trade.specs import both, end, example

ENGLISH = Translator("en")


def test_check_in_words_shows_both_unit_systems() -> None:
    text = assessment_text(example(), assess(example()), ENGLISH)
    assert "155 bar (2250 psi)" in text
    assert "96 to 106 N·m (71 to 78 lbf·ft)" in text
    assert "1 to 1 1/2 flats from wrench resistance" in text


@pytest.mark.parametrize(
    ("language", "said"),
    [("en", "A: or 1 to"), ("fr", "A : ou 1 à"), ("es", "A: o 1 a"), ("de", "A: oder 1 bis")],
)
def test_check_says_of_a_count_of_flats_that_it_takes_the_place_of_the_torque(
    language: str, said: str
) -> None:
    lines = (
        assessment_text(example(), assess(example()), Translator(language))
        .replace("\u00a0", " ")
        .splitlines()
    )
    at = next(place for place, line in enumerate(lines) if "96 " in line and "N·m" in line)
    assert said in lines[at + 1]


def test_a_minimum_is_not_shown_lower_by_rounding() -> None:
    text = assessment_text(example(), assess(example()), ENGLISH)
    assert "Maximum working pressure: 155 bar (2250 psi), limited by the hose" in text
    assert "Proof pressure: 311 bar (4500 psi)\nMinimum burst pressure: 621 bar (9000 psi)" in text


def test_the_same_figures_stand_in_every_language_with_its_decimal_sign() -> None:
    text = assessment_text(example(), assess(example()), Translator("de"))
    assert "Max. Betriebsdruck: 155 bar (2250 psi), begrenzt durch den Schlauch" in text
    assert "Länge: 1250 mm (49,21 in)" in text and "+12,5 / -12,5 mm" in text


def test_what_is_not_known_is_said_where_its_value_would_stand() -> None:
    spec = both("EN 853 2SN", 8, end("bspp", "7/8", hose_dash=8))
    found = assess(spec)
    text = assessment_text(spec, found, ENGLISH)
    assert found.working_pressure.why is not None
    partly = "not known. Hose: 275 bar (3990 psi) at most. End A, 7/8 BSPP (BSP parallel): use the fitting manufacturer's"
    assert f"Maximum working pressure: {partly}" in text
    assert "End A: tightening torque not known: use the fitting manufacturer's value" in text


def test_identify_in_words_names_look_alikes_and_what_to_measure_next() -> None:
    found = identify(Measurements.read(form="male", thread_od="21", tpi=14))
    text = identification_text(found, ENGLISH)
    assert "Look-alikes:" in text
    assert "Measure next:" in text


def test_compare_in_words_begins_with_the_verdict() -> None:
    shorter = example().model_copy(update={"length_mm": 900.0})
    text = comparison_text(likeforlike.compare(example(), shorter), ENGLISH)
    assert text.startswith("The new assembly does not replace the old one.")
    assert "Length (DANGER): " in text
