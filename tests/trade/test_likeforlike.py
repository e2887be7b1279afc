"""Does B replace A: field by field, and the verdict."""

from __future__ import annotations

import re

import pytest

from tagger.i18n import LANGUAGES, Translator
from tagger.spec import AssemblySpec
from tagger.trade.likeforlike import Comparison, compare
from tagger.trade.report import comparison
from tests.trade.specs import both, end, example


def verdicts(found: Comparison) -> dict[str, str]:
    return {f.field: f.verdict for f in found.fields}


def test_the_same_spec_replaces_itself_with_every_field_the_same() -> None:
    found = compare(example(), example())
    assert found.verdict == "replaces"
    assert set(verdicts(found).values()) == {"same"}


def test_the_same_parts_of_unknown_pressure_replace_each_other() -> None:
    spec = both("EN 853 2SN", 8, end("bspp", "1/2"))
    assert compare(spec, spec).verdict == "replaces"


def test_a_lower_rating_does_not_replace() -> None:
    found = compare(example(hose__edition="S"), example())
    assert found.verdict == "does not replace"
    assert verdicts(found)["working_pressure"] == "dangerous"


def test_a_higher_rating_is_better() -> None:
    found = compare(example(), example(hose__edition="S"))
    assert verdicts(found)["working_pressure"] == "better"
    assert found.verdict == "replaces"


def test_an_unknown_rating_does_not_replace() -> None:
    found = compare(example(), example(end_a__material="stainless_steel"))
    assert verdicts(found)["working_pressure"] == "dangerous"


def test_a_45_degree_flare_never_replaces_a_37() -> None:
    one = both("SAE 100R17", 8, end("sae_37_flare", 8))
    other = both("SAE 100R17", 8, end("sae_45_flare", 8))
    field = next(f for f in compare(one, other).fields if f.field == "end_a")
    assert field.verdict == "dangerous"
    assert field.reason.id == "trade-compare-flares"


def test_length_within_tolerance_is_the_same_and_shorter_is_dangerous() -> None:
    assert verdicts(compare(example(), example(length_mm=1260)))["length_mm"] == "same"
    assert verdicts(compare(example(), example(length_mm=1230)))["length_mm"] == "dangerous"
    assert verdicts(compare(example(), example(length_mm=1300)))["length_mm"] == "differs"


def test_clocking_is_compared_round_the_circle() -> None:
    def at(angle: int) -> object:
        return both("SAE 100R17", 12, end("sae_37_flare", 12, shape="elbow_90"), clocking_deg=angle)

    assert verdicts(compare(at(358), at(1)))["clocking_deg"] == "same"  # type: ignore[arg-type]
    assert verdicts(compare(at(90), at(270)))["clocking_deg"] == "dangerous"  # type: ignore[arg-type]


def test_another_construction_and_fewer_covers_ask_for_care() -> None:
    found = compare(example(), example(hose__standard="SAE 100R17", covers=[]))
    assert verdicts(found)["hose.standard"] == "differs"
    assert verdicts(found)["covers"] == "differs"
    assert found.verdict == "replaces with care"


def test_a_pressure_hose_does_not_replace_a_suction_hose() -> None:
    suction = both("SAE 100R4", 16, end("sae_37_flare", 16))
    pressure = both("SAE 100R17", 16, end("sae_37_flare", 16))
    assert verdicts(compare(suction, pressure))["hose.standard"] == "dangerous"


def test_a_hose_for_less_heat_does_not_replace() -> None:
    hot = both("SAE 100R12", 12, end("sae_37_flare", 12), max_temperature_c=115)
    cool = both("SAE 100R17", 12, end("sae_37_flare", 12))
    assert verdicts(compare(hot, cool))["max_temperature_c"] == "dangerous"


def test_a_fluid_the_hose_is_not_for_does_not_replace() -> None:
    oil = both("SAE 100R17", 8, end("sae_37_flare", 8), fluid="synthetic_ester")
    ester = both("EN 853 2SN", 8, end("sae_37_flare", 8), fluid="synthetic_ester")
    assert verdicts(compare(oil, ester))["fluid"] == "dangerous"


def in_fluid(standard: str, fluid: str | None) -> AssemblySpec:
    more = {} if fluid is None else {"fluid": fluid}
    return both(standard, 8, end("sae_37_flare", 8), **more)


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("mineral_oil", "phosphate_ester"),
        ("mineral_oil", "air"),
        ("phosphate_ester", "mineral_oil"),
        ("water", None),
    ],
)
def test_an_unlike_fluid_no_source_speaks_of_does_not_replace(old: str, new: str | None) -> None:
    found = compare(in_fluid("SAE 100R2", old), in_fluid("SAE 100R2", new))
    assert verdicts(found)["fluid"] == "dangerous" and found.verdict == "does not replace"


def test_an_unlike_fluid_a_source_speaks_for_asks_for_a_look() -> None:
    found = compare(in_fluid("EN 853 2SN", "water_glycol"), in_fluid("EN 853 2SN", "mineral_oil"))
    assert verdicts(found)["fluid"] == "differs"


def test_the_same_fluid_without_a_source_replaces_at_most_with_care() -> None:
    found = compare(in_fluid("SAE 100R2", "phosphate_ester"), in_fluid("SAE 100R2", "phosphate_ester"))
    assert found.verdict == "replaces with care"
    known = compare(in_fluid("EN 853 2SN", "water_glycol"), in_fluid("EN 853 2SN", "water_glycol"))
    assert known.verdict == "replaces"


def test_the_fluid_of_the_old_hose_is_what_the_new_hose_must_bear() -> None:
    found = compare(in_fluid("SAE 100R17", "phosphate_ester"), in_fluid("EN 853 2SN", None))
    assert verdicts(found)["fluid"] == "dangerous"


def test_the_answer_has_the_contracts_shape() -> None:
    answer = comparison(compare(example(), example()))
    said = {"id", "values", "text"}
    assert set(answer) == {"verdict", "fields"} | said
    assert all(set(field) == {"field", "verdict", "reason"} | said for field in answer["fields"])
    assert all(field["reason"] == field["text"] for field in answer["fields"])


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_two_assemblies_are_told_as_old_and_new_and_never_as_a_and_b(language: str) -> None:
    """A and B are the ends of one assembly."""
    other = example(hose__dash=16, hose__standard="SAE 100R17", end_b__dash=16, end_a__dash=16, length_mm=900,
                    covers=[], fluid="water", max_temperature_c=None)  # fmt: skip
    t = Translator(language)
    for field in compare(example(), other).fields:
        assert not re.search(r"\b[AB]\b", t(field.reason)), field
