"""Does B replace A: field by field, and the verdict."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from tagger.i18n import LANGUAGES, Translator
from tagger.messages import Message, angle
from tagger.spec import AssemblySpec, Connection, LengthBasis
from tagger.trade import alike
from tagger.trade import rows as row
from tagger.trade.likeforlike import Comparison, compare, end_for_end
from tagger.trade.report import comparison
from tagger.trade.tables import tables
from tests.trade.made_up import HOSE, SOURCE, assembly, edition, fluid, hose, made_up, standard, tables_with
from tests.trade.specs import an_end, both, end, example


def verdicts(found: Comparison) -> dict[str, str]:
    return {f.field: f.verdict for f in found.fields}


def test_the_same_spec_replaces_itself_with_every_field_the_same() -> None:
    found = compare(example(), example())
    assert found.verdict == "replaces"
    assert set(verdicts(found).values()) == {"same"}


def test_the_same_parts_of_unknown_pressure_replace_each_other() -> None:
    spec = both("EN 853 2SN", 8, end("jis_30", "M22x1.5"))
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


@pytest.mark.parametrize(
    ("new_bar", "verdict"),
    [(99, "dangerous"), (99.9, "dangerous"), (99.96, "same"), (100.04, "same"), (100.1, "better")],
)
def test_what_a_tag_tells_apart_is_another_rating(new_bar: float, verdict: str) -> None:
    two = made_up(hose_standards=TWO, hose_pressure=[hose(100), hose(new_bar, standard="MADE 2")])
    assert verdicts(compare(of_standard(HOSE), of_standard("MADE 2"), two))["working_pressure"] == verdict


@pytest.mark.parametrize(
    ("part", "change"),
    [
        ("hose", {"edition": "A"}),
        ("hose", {"rating": {"value_bar": 60, "source": "a letter"}}),
        ("end_b", {"shape": "elbow_45"}),
        ("end_b", {"material": "brass"}),
        ("end_b", {"form": "male"}),
        ("end_b", {"series": "L"}),
        ("end_b", {"rating": {"value_bar": 60, "source": "a letter"}}),
    ],
)
def test_an_unknown_part_that_differs_in_anything_its_rating_depends_on_is_another_part(
    part: str, change: dict[str, object]
) -> None:
    """Nothing rates the ends; the same parts bear what they bore, and no other is known to."""
    made = made_up(
        **RAISED | {"connection_pressure": [], "hose_pressure": [*RAISED["hose_pressure"], hose(110, dash=4)]}
    )
    stud = end("metric_orb", "M27x2", "male", series="S") if "series" in change else end("sae_37_flare", 12)
    old = {**both(HOSE, 12, stud).as_dict(), "hose": {"standard": HOSE, "dash": 12, "edition": "N"}}
    new = old | {part: old[part] | change}
    verdict = {
        name: verdicts(compare(AssemblySpec.read(old), AssemblySpec.read(data), made))["working_pressure"]
        for name, data in (("same", old), ("other", new))
    }
    assert verdict == {"same": "same", "other": "dangerous"}


def test_a_figure_entered_for_other_unknown_ends_holds_where_it_is_no_lower_than_the_known_hose() -> None:
    """The old hose bears 100 bar and nobody knows of its ends: it was used at no more."""
    made = made_up(connection_pressure=[])
    for bar, verdict in ((100, "better"), (99, "dangerous")):
        entered = {"value_bar": bar, "source": "a catalogue"}
        other = both(HOSE, 12, end("orfs", 12), working_pressure=entered)
        assert verdicts(compare(assembly(), other, made))["working_pressure"] == verdict


def test_an_unknown_rating_does_not_replace() -> None:
    found = compare(example(), example(end_a__material="stainless_steel"))
    assert verdicts(found)["working_pressure"] == "dangerous"


def test_a_45_degree_flare_never_replaces_a_37() -> None:
    one = both("SAE 100R17", 8, end("sae_37_flare", 8))
    other = both("SAE 100R17", 8, end("sae_45_flare", 8))
    field = next(f for f in compare(one, other).fields if f.field == "end_a")
    assert field.verdict == "dangerous"
    assert field.reason.id == "trade-compare-alike"
    assert field.reason.values["how"].id == "fit-alike-flares"


def test_length_within_tolerance_is_the_same_and_shorter_is_dangerous() -> None:
    """Of 1000 mm, 5 shorter or 10 longer are allowed."""

    def against(length_mm: float) -> str:
        return verdicts(compare(assembly(), assembly(length_mm=length_mm), made_up()))["length_mm"]

    assert [against(mm) for mm in (1010, 995, 994, 1011)] == ["same", "same", "dangerous", "differs"]


MIXED = {"end_a": end("sae_37_flare", 12, shape="elbow_90"), "end_b": end("orfs", 12, shape="elbow_45")}


def test_the_same_hose_turned_end_for_end_replaces_itself() -> None:
    old = AssemblySpec.read({**assembly().as_dict(), **MIXED, "clocking_deg": 90})
    turned = AssemblySpec.read(
        {**old.as_dict(), "end_a": old.as_dict()["end_b"], "end_b": old.as_dict()["end_a"]}
    )
    found = compare(old, turned, made_up())
    assert found.verdict == "replaces"
    assert found.fields[0].reason.id == "trade-compare-turned"
    assert end_for_end(turned) == old


def test_a_turned_hose_of_another_clocking_angle_does_not_replace() -> None:
    old = AssemblySpec.read({**assembly().as_dict(), **MIXED, "clocking_deg": 90})
    turned = end_for_end(old).model_copy(update={"clocking_deg": 270})
    found = compare(old, turned, made_up())
    assert (found.verdict, verdicts(found)["clocking_deg"]) == ("does not replace", "dangerous")


def test_lengths_between_other_points_cannot_be_compared() -> None:
    found = compare(assembly(), assembly(length_basis="thread_end"), made_up())
    assert (found.verdict, verdicts(found)["length_mm"]) == ("does not replace", "dangerous")


def test_lengths_between_the_same_points_are_compared_whatever_the_basis_is_called() -> None:
    """A straight end is measured to its sealing face on both bases, an elbow to its centreline on all."""
    centreline = compare(assembly(), assembly(length_basis="elbow_centreline"), made_up())
    assert centreline.verdict == "replaces"
    flanges = both(HOSE, 12, end("flange_code61", 12, "flange_head"), length_basis="thread_end")
    assert verdicts(compare(flanges, assembly(), made_up()))["length_mm"] == "same", (
        "a flange has no thread to measure to"
    )
    elbows = both(HOSE, 12, end("sae_37_flare", 12, shape="elbow_90"), clocking_deg=0)
    by_thread = elbows.model_copy(update={"length_basis": LengthBasis.THREAD_END})
    assert compare(elbows, by_thread, made_up()).verdict == "replaces"
    short = by_thread.model_copy(update={"length_mm": 900.0})
    assert verdicts(compare(elbows, short, made_up()))["length_mm"] == "dangerous"


def test_the_same_unknown_ends_on_a_stronger_hose_are_no_weaker() -> None:
    two = made_up(
        hose_standards=TWO, hose_pressure=[hose(100), hose(150, standard="MADE 2")], connection_pressure=[]
    )
    stronger = compare(of_standard(HOSE), of_standard("MADE 2"), two)
    assert verdicts(stronger)["working_pressure"] == "better"
    weaker = compare(of_standard("MADE 2"), of_standard(HOSE), two)
    assert verdicts(weaker)["working_pressure"] == "dangerous"


def test_another_unknown_end_is_not_known_to_be_as_strong() -> None:
    made = made_up(connection_pressure=[])
    other = both(HOSE, 12, end("orfs", 12))
    assert verdicts(compare(assembly(), other, made))["working_pressure"] == "dangerous"


def test_an_unknown_end_does_not_replace_one_whose_pressure_was_entered() -> None:
    made = made_up(connection_pressure=[])
    old = assembly(working_pressure={"value_bar": 90, "source": "a catalogue"})
    assert verdicts(compare(old, assembly(), made))["working_pressure"] == "dangerous"


@pytest.mark.parametrize(("old", "new"), [("100r2at", "SAE 100R2"), ("A.B. 12", "ab 12")])
def test_spellings_of_one_standard_are_one(old: str, new: str) -> None:
    given = {"working_pressure": {"value_bar": 90, "source": "a catalogue"}} if new == "ab 12" else {}
    ends = end("bspp", "3/4")
    found = compare(both(old, 12, ends, **given), both(new, 12, ends, **given))
    assert verdicts(found)["hose.standard"] == verdicts(found)["working_pressure"] == "same"
    assert found.verdict == "replaces"


@pytest.mark.parametrize(
    ("old", "new", "how"),
    [
        (("bspp", "1/2"), ("jis_60", "1/2"), "fit-alike-bspp_jis"),
        (("din24_light", "15"), ("din24_heavy", "14"), "fit-alike-tube_sizes"),
        (("sae_37_flare", 4), ("sae_45_flare", 4), "fit-alike-flares"),
        (("din24_light", "12"), ("jis_30", "M18x1.5"), "fit-alike-metric_cone_flare"),
        (("metric_60_cone", "M30x1.5"), ("jis_30", "M30x1.5"), "fit-alike-reversed_cone"),
        (("metric_60_cone", "M18x1.5"), ("din24_light", "12"), "fit-alike-cones_60_24"),
        (("french_gas", "13.25"), ("din24_heavy", "12"), "fit-alike-tube_bore"),
        (("sae_flareless", 8), ("sae_37_flare", 8), "fit-alike-flareless"),
    ],
)
def test_ends_that_share_a_thread_say_how_they_differ(
    old: tuple[str, str | int], new: tuple[str, str | int], how: str
) -> None:
    fields = alike.compared(
        "end_a",
        an_end(Connection(old[0]), str(old[1]), "female_swivel"),
        an_end(Connection(new[0]), str(new[1]), "female_swivel"),
        tables(),
    )
    assert (fields[0].verdict, fields[0].reason.id) == ("dangerous", "trade-compare-alike")
    assert fields[0].reason.values["how"].id == how


def test_a_pair_that_no_row_speaks_of_is_told_by_its_shared_thread() -> None:
    made = tables_with(look_alikes=[])
    one = an_end(Connection.BSPP, "1/2", "female_swivel")
    other = an_end(Connection.JIS_60, "1/2", "female_swivel")
    assert alike.compared("end_a", one, other, made)[0].reason.values["how"].id == "fit-alike-thread"
    male = an_end(Connection.JIS_60, "1/2", "male")
    assert alike.compared("end_a", one, male, made)[0].reason.id == "trade-compare-values"


def test_a_banjo_eye_shows_no_thread_and_a_male_swivel_shows_one() -> None:
    eye = an_end(Connection("banjo_metric"), "M14x1.5", "eye")
    nut = an_end(Connection("din24_light"), "8", "female_swivel")
    assert not alike.same_thread(eye, nut, tables())
    swivel = an_end(Connection("sae_inverted_flare"), "6", "male_swivel")
    assert alike.same_thread(swivel, an_end(Connection("sae_45_flare"), "6", "male"), tables())
    assert not alike.same_thread(swivel, an_end(Connection("sae_45_flare"), "6", "female_swivel"), tables())


def test_clocking_is_compared_round_the_circle() -> None:
    def at(angle: int) -> object:
        return both("SAE 100R17", 12, end("sae_37_flare", 12, shape="elbow_90"), clocking_deg=angle)

    assert verdicts(compare(at(358), at(1)))["clocking_deg"] == "same"  # type: ignore[arg-type]
    assert verdicts(compare(at(90), at(270)))["clocking_deg"] == "dangerous"  # type: ignore[arg-type]


def test_an_angle_that_only_one_of_two_hoses_has_is_told_as_it_is() -> None:
    elbows = end("sae_37_flare", 12, shape="elbow_90")
    turned = both("SAE 100R17", 12, elbows, clocking_deg=90)
    plain = AssemblySpec.read(turned.as_dict() | {"end_b": end("sae_37_flare", 12), "clocking_deg": None})
    none, right = Message("trade-compare-none"), angle(90)
    for old, new, told in ((plain, turned, (none, right)), (turned, plain, (right, none))):
        (field,) = [f for f in compare(old, new).fields if f.field == "clocking_deg"]
        assert field.verdict == "differs"
        assert (field.reason.values["old"], field.reason.values["new"]) == told


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


@pytest.mark.parametrize(
    ("old", "new", "verdict"),
    [
        (0.5, None, "dangerous"),
        (0.5, 0.3, "dangerous"),
        (0.5, 0.5, "same"),
        (0.5, 0.7, "better"),
        (0.5, 0.9, "dangerous"),
    ],
)
def test_a_tag_for_less_vacuum_does_not_replace_nor_a_hose_that_does_not_stand_it(
    old: float, new: float | None, verdict: str
) -> None:
    rated = made_up(hose_vacuum=[row.HoseVacuumRow(HOSE, "12", 0.8, SOURCE, "published", "")])
    found = compare(assembly(vacuum_bar=old), assembly(vacuum_bar=new), rated)
    assert verdicts(found)["vacuum_bar"] == verdict
    assert (found.verdict == "does not replace") == (verdict == "dangerous")
    assert "vacuum_bar" not in verdicts(compare(assembly(), assembly(vacuum_bar=new), rated))


def test_another_hose_of_unknown_vacuum_does_not_replace_a_suction_line_and_the_same_one_does() -> None:
    two = made_up(
        hose_standards=[standard(), standard("MADE 2")],
        hose_pressure=[hose(100), hose(100, standard="MADE 2")],
    )
    line = assembly(vacuum_bar=0.5)
    assert verdicts(compare(line, line, two))["vacuum_bar"] == "same"
    jumped = end("sae_37_flare", 12, hose_dash=16)
    wide = assembly(vacuum_bar=0.5, hose={"standard": HOSE, "dash": 16}, end_a=jumped, end_b=jumped)
    sized = made_up(hose_pressure=[hose(100), hose(100, dash=16)])
    assert verdicts(compare(line, wide, sized))["vacuum_bar"] == "dangerous", "a wider hose of the standard"
    other = line.model_copy(update={"hose": line.hose.model_copy(update={"standard": "MADE 2"})})
    assert verdicts(compare(line, other, two))["vacuum_bar"] == "dangerous"


def test_of_two_ends_in_words_a_male_never_replaces_a_female() -> None:
    male, female = (
        assembly(end_a={"connection": "other", "description": "Block M20x1.5", "form": form})
        for form in ("male", "female_swivel")
    )
    assert verdicts(compare(female, male, made_up()))["end_a"] == "dangerous"
    assert verdicts(compare(female, female, made_up()))["end_a"] == "differs"


def test_a_hose_for_less_heat_does_not_replace() -> None:
    two = made_up(hose_standards=TWO, hose_pressure=[hose(100), hose(100, standard="MADE 2")])
    found = compare(of_standard(HOSE, max_temperature_c=90), of_standard("MADE 2"), two)
    assert verdicts(found)["max_temperature_c"] == "dangerous"
    back = compare(of_standard("MADE 2", max_temperature_c=70), of_standard(HOSE), two)
    assert verdicts(back)["max_temperature_c"] == "same"


def test_a_temperature_that_is_not_stated_is_the_hoses_own_limit() -> None:
    two = made_up(hose_standards=TWO, hose_pressure=[hose(100), hose(100, standard="MADE 2")])
    found = compare(of_standard(HOSE), of_standard("MADE 2"), two)
    assert verdicts(found)["max_temperature_c"] == "dangerous"
    assert verdicts(compare(of_standard("MADE 2"), of_standard(HOSE), two))["max_temperature_c"] == "same"


def test_the_new_hose_has_to_bear_the_heat_of_the_old_assembly_with_its_fluid() -> None:
    """Water glycol up to 70 °C in the old hose, to 50 in the new one, whose tag names no fluid and no heat."""
    two = made_up(
        hose_standards=[standard(), standard("MADE 2")],
        hose_pressure=[hose(100), hose(100, standard="MADE 2")],
        hose_fluids=[
            fluid("water_glycol", -20, 70),
            replace(fluid("water_glycol", -20, 50), standard="MADE 2"),
        ],
    )
    new = of_standard("MADE 2")
    for hottest, of_fluid in ((None, "differs"), (60, "dangerous"), (50, "differs")):
        old = of_standard(HOSE, fluid="water_glycol", **({"max_temperature_c": hottest} if hottest else {}))
        found = verdicts(compare(old, new, two))
        assert found["fluid"] == of_fluid, hottest
        assert found["max_temperature_c"] == ("same" if hottest == 50 else "dangerous"), hottest


def test_what_a_source_says_of_a_fluid_in_the_old_hose_is_not_said_of_the_new_one() -> None:
    two = made_up(
        hose_standards=[standard(), standard("MADE 2")],
        hose_pressure=[hose(100), hose(100, standard="MADE 2")],
        hose_fluids=[fluid("engine_oil", -20, 100)],
    )
    oil = {"fluid": "engine_oil"}
    to_other = compare(of_standard(HOSE, **oil), of_standard("MADE 2", **oil), two)
    assert verdicts(to_other)["fluid"] == "differs"
    back = compare(of_standard("MADE 2", **oil), of_standard(HOSE, **oil), two)
    assert verdicts(back)["fluid"] == "same"


def test_a_heat_that_is_stated_is_told_as_one_and_a_limit_as_a_limit() -> None:
    for stated, said in (
        ({"max_temperature_c": 90}, "trade-compare-temperature"),
        ({}, "trade-compare-temperature-limits"),
    ):
        found = compare(assembly(**stated), assembly(), made_up())
        [field] = [field for field in found.fields if field.field == "max_temperature_c"]
        assert (field.verdict, field.reason.id) == ("same", said)


def test_a_tag_for_less_heat_does_not_replace_though_its_hose_would_bear_it() -> None:
    found = compare(assembly(max_temperature_c=90), assembly(max_temperature_c=60), made_up())
    assert verdicts(found)["max_temperature_c"] == "dangerous"


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


@pytest.mark.parametrize(
    ("old", "new", "verdict"),
    [
        ("mineral_oil", "mineral_oil", "same"),
        ("mineral_oil", None, "differs"),
        ("engine_oil", "engine_oil", "differs"),
        ("mineral_oil", "engine_oil", "dangerous"),
        ("engine_oil", None, "dangerous"),
        (None, "mineral_oil", "differs"),
        (None, None, "same"),
    ],
)
def test_hydraulic_oil_needs_no_source_that_names_it_and_any_other_oil_does(
    old: str | None, new: str | None, verdict: str
) -> None:
    """No row of the hose's speaks of an oil; a tag without a fluid is taken for mineral oil, and asked about."""
    assert verdicts(compare(in_fluid(old), in_fluid(new), FLUIDS))["fluid"] == verdict


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
