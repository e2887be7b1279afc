"""Does B replace A: field by field, and the verdict."""

from __future__ import annotations

import re

import pytest

from tagger.i18n import LANGUAGES, Translator
from tagger.spec import AssemblySpec
from tagger.trade.likeforlike import Comparison, compare
from tagger.trade.report import comparison
from tests.trade.made_up import HOSE, assembly, edition, fluid, hose, made_up, standard
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


RAISED = {
    "hose_pressure": [hose(100, edition="older"), hose(110, edition="newer")],
    "hose_editions": [edition("A", "older"), edition("N", "newer")],
}


def of_edition(name: str) -> AssemblySpec:
    return assembly(hose={"standard": HOSE, "dash": 12, "edition": name})


def test_a_lower_rating_does_not_replace_and_a_higher_one_is_better() -> None:
    lower = compare(of_edition("N"), of_edition("A"), made_up(**RAISED))
    assert (lower.verdict, verdicts(lower)["working_pressure"]) == ("does not replace", "dangerous")
    higher = compare(of_edition("A"), of_edition("N"), made_up(**RAISED))
    assert (higher.verdict, verdicts(higher)["working_pressure"]) == ("replaces", "better")


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
    """Of 1000 mm, 5 shorter or 10 longer are allowed."""

    def against(length_mm: float) -> str:
        return verdicts(compare(assembly(), assembly(length_mm=length_mm), made_up()))["length_mm"]

    assert [against(mm) for mm in (1010, 995, 994, 1011)] == ["same", "same", "dangerous", "differs"]


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
    standards = [standard(duty="suction"), standard("MADE 2")]
    two = made_up(hose_standards=standards, hose_pressure=[hose(100), hose(100, standard="MADE 2")])
    found = compare(of_standard(HOSE), of_standard("MADE 2"), two)
    assert verdicts(found)["hose.standard"] == "dangerous"
    back = compare(of_standard("MADE 2"), of_standard(HOSE), two)
    assert verdicts(back)["hose.standard"] == "differs"


TWO = [standard(), standard("MADE 2", max_temperature_c=80.0)]


def of_standard(name: str, **more: object) -> AssemblySpec:
    return both(name, 12, end("sae_37_flare", 12), **more)


def test_a_hose_for_less_heat_does_not_replace() -> None:
    two = made_up(hose_standards=TWO, hose_pressure=[hose(100), hose(100, standard="MADE 2")])
    found = compare(of_standard(HOSE, max_temperature_c=90), of_standard("MADE 2"), two)
    assert verdicts(found)["max_temperature_c"] == "dangerous"
    back = compare(of_standard("MADE 2", max_temperature_c=70), of_standard(HOSE), two)
    assert verdicts(back)["max_temperature_c"] == "same"


def test_a_fluid_the_hose_is_not_for_does_not_replace() -> None:
    found = compare(in_fluid(None), in_fluid("synthetic_ester"), FLUIDS)
    assert verdicts(found)["fluid"] == "dangerous"


FLUIDS = made_up(hose_fluids=[fluid("water_glycol", -20, 70), fluid("synthetic_ester")])
"""A hose that a source allows water glycol in and no ester; of other fluids no source speaks."""


def in_fluid(name: str | None) -> AssemblySpec:
    return assembly(**({} if name is None else {"fluid": name}))


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
    found = compare(in_fluid(old), in_fluid(new), FLUIDS)
    assert verdicts(found)["fluid"] == "dangerous" and found.verdict == "does not replace"


def test_an_unlike_fluid_a_source_speaks_for_asks_for_a_look() -> None:
    found = compare(in_fluid("water_glycol"), in_fluid("mineral_oil"), FLUIDS)
    assert verdicts(found)["fluid"] == "differs"


def test_the_same_fluid_without_a_source_never_replaces() -> None:
    found = compare(in_fluid("phosphate_ester"), in_fluid("phosphate_ester"), FLUIDS)
    assert found.verdict == "does not replace"
    known = compare(in_fluid("water_glycol"), in_fluid("water_glycol"), FLUIDS)
    assert known.verdict == "replaces"


def test_the_fluid_of_the_old_hose_is_what_the_new_hose_must_bear() -> None:
    found = compare(in_fluid("synthetic_ester"), in_fluid(None), FLUIDS)
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
