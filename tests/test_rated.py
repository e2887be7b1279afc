"""What is said of a working pressure: never a bare "not known" where part of the truth is known."""

from __future__ import annotations

from typing import Any

import pytest

from tagger import rated
from tagger.code import payload
from tagger.i18n import LANGUAGES, Translator
from tagger.messages import english
from tagger.spec import Danger, End, TagContent
from tests.trade.specs import both, end

SPEC = both("SAE 100R2", 4, end("sae_37_flare", 4)).model_copy(
    update={"end_b": End.model_validate(end("npt", "1/4", "male"))}
)


def carried(**more: Any) -> TagContent:
    """As a phone reads it from the tag's own digits."""
    return payload.decode(payload.encode(TagContent(spec=SPEC, **more)))


def said(**more: Any) -> str:
    return english(rated.message(carried(**more)))


def test_an_unknown_end_leaves_what_the_known_parts_allow_and_whose_value_to_use() -> None:
    assert said(at_most_bar=190, unknown_parts=("end_b",)) == (
        "Hose and end A: 190 bar (2755 psi) at most. End B, 1/4 NPT taper thread: use the fitting manufacturer's value."
    )
    assert said(at_most_bar=190, unknown_parts=("end_a", "end_b")) == (
        "Hose: 190 bar (2755 psi) at most. End A, -4 37° flare (JIC): use the fitting manufacturer's value. "
        "End B, 1/4 NPT taper thread: use the fitting manufacturer's value."
    )


def test_an_unknown_hose_is_its_manufacturers_to_rate() -> None:
    assert said(at_most_bar=190, unknown_parts=("hose",)) == (
        "Both ends: 190 bar (2755 psi) at most. Hose, SAE 100R2 -4 (1/4 in): use the hose manufacturer's value."
    )


def test_where_no_part_is_known_each_is_asked_for_and_nothing_is_at_most() -> None:
    assert said(unknown_parts=rated.PARTS).count("manufacturer's value") == 3
    assert "at most" not in said(unknown_parts=rated.PARTS)


def test_what_an_unverified_part_allows_at_most_is_marked() -> None:
    text = said(at_most_bar=190, unknown_parts=("end_a", "end_b"), unverified_parts=("hose",))
    assert text.endswith("Hose unverified: no published source at hand.")


def test_an_unverified_part_is_named_beside_the_figure() -> None:
    assert said(working_pressure_bar=190, unverified_parts=("end_b",)) == (
        "190 bar (2755 psi), end B unverified: no published source at hand"
    )
    assert said(working_pressure_bar=190) == "190 bar (2755 psi)"


def test_a_tag_that_does_not_say_which_part_is_unknown_says_no_more_than_it_did() -> None:
    assert said() == "not known: use the fitting manufacturer's value"


@pytest.mark.parametrize("language", LANGUAGES)
def test_each_danger_is_told_in_every_language(language: str) -> None:
    t, spec = Translator(language), both("SAE 100R2", 4, end("npt", "1/4", "male"), fluid="phosphate_ester")
    found = [t(line) for line in rated.dangers(TagContent(spec=spec, dangers=tuple(Danger)))]
    assert len(set(found)) == len(Danger)
    assert all(line.startswith(t("report-danger", text="").strip(" :\u00a0")) for line in found)
    assert t("words-fluid-phosphate_ester") in found[0]
