"""A manufacturer's figure of one part: what it stands for, and what it never does. Figures here are made up."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

from tagger.errors import SpecError, TradeError
from tagger.messages import pressure
from tagger.spec import AssemblySpec, Connection, Form, Hose
from tagger.trade import assess, given, likeforlike
from tagger.trade.rating import hose_rating
from tagger.trade.results import Assessment, PartRating
from tagger.trade.tables import Tables
from tests.trade.made_up import HOSE, assembly, edition, ending, fluid, hose, made_up, tables_with
from tests.trade.specs import both, end, example

BSPP = Connection("bspp")
CHART = {"value_bar": 110, "source": "fitting catalogue, page 7"}
STEEL_THERE: dict[str, list[Any]] = {
    "hose_pressure": [hose(100)],
    "connection_pressure": [ending(120), ending(400, size="4")],
}


def spec(part: str, rating: dict[str, Any], **more: Any) -> AssemblySpec:
    """The made-up assembly with a figure for one part."""
    data = assembly(**more).as_dict()
    data[part]["rating"] = rating
    return AssemblySpec.read(data)


def part(found: Assessment, name: str) -> PartRating:
    return next(p for p in found.working_pressure.parts if p.part == name)


def codes(found: Assessment) -> set[str]:
    return {w.code for w in found.warnings}


def test_it_stands_for_a_part_that_is_not_known() -> None:
    data = both(HOSE, 12, end("bspp", "3/4")).as_dict()
    for name in ("end_a", "end_b"):
        data[name]["rating"] = {"value_bar": 80, "source": "fitting catalogue, page 7"}
    found = assess(AssemblySpec.read(data), made_up())
    assert (found.working_pressure.value_bar, found.working_pressure.limited_by) == (80, "end_a")
    assert (part(found, "end_a").confidence, part(found, "end_a").source) == (
        "given",
        "fitting catalogue, page 7",
    )
    assert given.asks(found) == []


def test_what_is_not_known_or_unverified_is_asked_for_by_its_field() -> None:
    memory = made_up(connection_pressure=[ending(120, confidence="memory")])
    asked = given.asks(assess(spec("end_a", CHART), memory))
    assert [ask.field for ask in asked] == ["end_b.rating"]
    assert "end B" in str(asked[0].message).replace("End B", "end B")
    assert given.asks(assess(assembly(), made_up())) == []


def test_it_takes_the_place_of_an_unverified_figure_even_of_a_lower_one() -> None:
    memory = made_up(connection_pressure=[ending(90, confidence="memory"), ending(400, size="4")])
    found = assess(spec("end_a", CHART), memory)
    assert (part(found, "end_a").value_bar, part(found, "end_b").value_bar) == (110, 90)
    assert found.working_pressure.value_bar == 90
    assert {w.field for w in found.warnings if w.code == "rating_from_memory"} == {"end_b"}


def test_it_raises_no_published_rating_and_may_lower_one() -> None:
    high = assess(spec("end_a", {**CHART, "value_bar": 300}), made_up(**STEEL_THERE))
    assert part(high, "end_a").value_bar == 120 and "rating_given_too_high" in codes(high)
    low = assess(spec("end_a", {**CHART, "value_bar": 60}), made_up(**STEEL_THERE))
    assert (low.working_pressure.value_bar, low.working_pressure.limited_by) == (60, "end_a")
    hose_high = assess(
        spec("hose", {**CHART, "value_bar": 100.5}), made_up(hose_pressure=[hose(100), hose(200, dash=4)])
    )
    assert part(hose_high, "hose").value_bar == 100


def test_above_every_figure_of_that_kind_of_part_it_counts_only_when_confirmed() -> None:
    unknown = made_up(connection_pressure=[ending(120, size="4")])
    slip = {**CHART, "value_bar": 500}
    found = assess(spec("end_a", slip), unknown)
    assert part(found, "end_a").value_bar is None and "rating_not_used" in codes(found)
    sure = assess(spec("end_a", {**slip, "confirmed": True}), unknown)
    assert part(sure, "end_a").value_bar == 500


def test_above_every_published_figure_of_that_very_part_it_counts_only_when_confirmed() -> None:
    """The family goes to 400 bar in its smallest size, the standard to 200: neither is this part."""
    tables = made_up(
        hose_pressure=[hose(60, edition="Y", confidence="memory"), hose(100, edition="X"), hose(200, dash=4)],
        hose_editions=[edition("X", "X"), edition("Y", "Y")],
        **{"connection_pressure": STEEL_THERE["connection_pressure"]},
    )
    for name, known, highest in (("hose", 60, "100 bar"), ("end_a", None, "120 bar")):
        of_y = {"hose": {"standard": HOSE, "dash": 12, "edition": "Y"}}
        more = of_y if name == "hose" else {"end_a": end("sae_37_flare", 12, material="stainless_steel")}
        figure = {**CHART, "value_bar": 180}
        found = assess(spec(name, figure, **more), tables)
        [said] = [w for w in found.warnings if w.code == "rating_not_used"]
        assert part(found, name).value_bar == known and highest in str(said.message)
        assert f"{name}.rating" in [ask.field for ask in given.asks(found)]
        sure = assess(spec(name, {**figure, "confirmed": True}, **more), tables)
        assert part(sure, name).value_bar == 180 and "rating_above_published" in codes(sure)


@pytest.mark.parametrize("name", ["hose", "end_a", "end_b"])
def test_above_1000_bar_it_is_refused_for_parts_of_the_tables_whoever_confirms_it(name: str) -> None:
    with pytest.raises(TradeError) as refused:
        assess(spec(name, {**CHART, "value_bar": 3000, "confirmed": True}), made_up())
    assert [p.field for p in refused.value.problems] == [f"{name}.rating.value_bar"]


@pytest.mark.parametrize("bar", [0, -5, "0 bar", 3001])
def test_no_part_works_at_nothing_or_below(bar: object) -> None:
    with pytest.raises(SpecError) as refused:
        spec("end_a", {**CHART, "value_bar": bar})
    assert [p.field for p in refused.value.problems] == ["end_a.rating.value_bar"]


def test_up_to_1000_bar_a_figure_that_is_confirmed_counts() -> None:
    """A jack hose of 1000 bar there is; above it the figure is psi."""
    for bar, refused in ((1000, False), (1000.1, True)):
        figure = {**CHART, "value_bar": bar, "confirmed": True}
        entered = assembly(working_pressure=figure)
        assert bool(given.problems(spec("hose", figure), made_up())) is refused
        assert bool(given.problems(entered, made_up())) is refused


BSPP_TOO = {
    "connection_pressure": [
        ending(120, forms=("female_swivel",)),
        ending(90, forms=("male",)),
        ending(630, use="ceiling"),
        ending(400, size="4"),
        ending(900, size="4", **{"confidence": "shop", "source": "our catalogue"}),
        ending(250, size="3/4", family=BSPP),
        ending(350, size="1", family=BSPP),
    ],
    "hose_pressure": [hose(100), hose(200, dash=4), hose(900, dash=4, confidence="shop")],
}
UNLIKE = AssemblySpec.read({**assembly().as_dict(), "end_b": end("bspp", "3/4", "male")})


def test_a_figure_is_held_against_its_own_part_and_never_against_the_other_end() -> None:
    """A ceiling of a family, another form's figure and a shop's own row are no published rating of the part."""
    tables = made_up(**BSPP_TOO)
    parts = ("hose", "end_a", "end_b")
    assert [given.highest_bar(name, UNLIKE, tables) for name in parts] == [200, 400, 350]
    assert [given.highest_published(name, UNLIKE, tables) for name in parts] == [100, 120, 250]
    turned = likeforlike.end_for_end(UNLIKE)
    assert [given.highest_bar(name, turned, tables) for name in parts] == [200, 350, 400]
    assert [given.highest_published(name, turned, tables) for name in parts] == [100, 250, 120]
    male = UNLIKE.model_copy(update={"end_a": UNLIKE.end_a.model_copy(update={"form": Form.MALE})})
    assert given.highest_published("end_a", male, tables) == 90


def test_an_end_of_no_family_may_be_rated_above_1000_bar_and_the_other_end_may_not() -> None:
    block = {"connection": "other", "description": "Block M20x1.5", "form": "male"}
    figure = {**CHART, "value_bar": 1500, "confirmed": True}
    for name, other in (("end_a", "end_b"), ("end_b", "end_a")):
        data = {**assembly().as_dict(), name: {**block, "rating": figure}}
        assert given.problems(AssemblySpec.read(data), made_up()) == []
        data[other] = {**data[other], "rating": figure}
        [problem] = given.problems(AssemblySpec.read(data), made_up())
        assert problem.field == f"{other}.rating.value_bar"


def test_a_fittings_own_rating_is_asked_about_above_every_one_of_its_family() -> None:
    """The family goes to 400 bar in its smallest size."""
    tables, flare = made_up(**STEEL_THERE), assembly().end_a
    for bar, asked in ((110, False), (400, False), (401, False), (402, True), (5800, True)):
        found = given.problem_with_fitting(flare, bar, tables, confirmed=False)
        assert (found is not None) is asked, bar
        assert given.problem_with_fitting(flare, bar, tables, confirmed=True) is None


def test_it_has_a_source() -> None:
    with pytest.raises(SpecError) as refused:
        spec("end_a", {"value_bar": 100})
    assert [p.field for p in refused.value.problems] == ["end_a.rating.source"]


UNNAMED = {"hose_fluids": [fluid("phosphate_ester")]}
BEYOND = {"fluid": "phosphate_ester", "max_temperature_c": 60}


@pytest.mark.parametrize("named", [{}, {"fluid": "phosphate_ester"}, {"max_temperature_c": 90},
                                   {"fluid": "water", "max_temperature_c": 90},
                                   {"fluid": "phosphate_ester", "max_temperature_c": 50}])  # fmt: skip
def test_it_lifts_no_limit_of_fluid_or_heat_unless_its_source_names_both(named: dict[str, Any]) -> None:
    found = assess(
        spec("hose", {"value_bar": 80, "source": "a letter", **named}, **BEYOND), made_up(**UNNAMED)
    )
    assert found.working_pressure.value_bar is None and "rating_not_used" in codes(found)


def test_it_lifts_the_limit_for_the_fluid_and_heat_that_its_source_names_and_never_above_the_range() -> None:
    named = {"value_bar": 80, "source": "a letter", "fluid": "phosphate_ester", "max_temperature_c": 60}
    assert assess(spec("hose", named, **BEYOND), made_up(**UNNAMED)).working_pressure.value_bar == 80
    high = made_up(**UNNAMED, hose_pressure=[hose(100), hose(200, dash=4)])
    found = assess(spec("hose", {**named, "value_bar": 150}, **BEYOND), high)
    assert part(found, "hose").value_bar == 100
    without = {"fluid": "phosphate_ester"}
    assert assess(spec("hose", named, **without), made_up(**UNNAMED)).working_pressure.value_bar is None


def test_a_pressure_beyond_a_limit_that_nobody_confirmed_leaves_no_figure_that_could_be_worked_at() -> None:
    """The ends bear 120 bar; said as "at most" it could be read as what the hose bears with that fluid."""
    entered = {"value_bar": 500, "source": "a letter", "fluid": "phosphate_ester", "max_temperature_c": 60}
    for more in ({}, {"confirmed": True}):
        found = assess(
            assembly(**BEYOND, working_pressure=entered | more), made_up(**UNNAMED)
        ).working_pressure
        assert found.at_most_bar is None
        assert found.value_bar == (100 if more else None), "confirmed, and never above the hose's own"


def test_a_figure_for_another_fluid_or_less_heat_is_not_used_inside_the_limits_either() -> None:
    unknown = made_up(connection_pressure=[ending(400, size="4")])
    for named in ({"fluid": "water_glycol"}, {"max_temperature_c": 60}):
        found = assess(spec("end_a", {**CHART, **named}, max_temperature_c=80), unknown)
        assert part(found, "end_a").value_bar is None and "rating_not_used" in codes(found)
    within = assess(spec("end_a", {**CHART, "max_temperature_c": 90}, max_temperature_c=80), unknown)
    assert part(within, "end_a").value_bar == 110


def test_a_rating_that_a_source_bounds_by_heat_is_not_lifted_by_a_bare_figure() -> None:
    bounded = made_up(connection_pressure=[ending(120, max_temperature_c=70.0), ending(400, size="4")])
    bare = assess(spec("end_a", CHART, max_temperature_c=90), bounded)
    assert part(bare, "end_a").value_bar is None and "rating_not_used" in codes(bare)
    named = assess(spec("end_a", {**CHART, "max_temperature_c": 90}, max_temperature_c=90), bounded)
    assert part(named, "end_a").value_bar == 110


def test_an_approval_lets_the_fluid_flow_up_to_its_temperature_and_says_whose_hose_it_is() -> None:
    def with_approval(hottest: float, **named: Any) -> Assessment:
        data = assembly(fluid="synthetic_ester", max_temperature_c=hottest).as_dict()
        data["hose"]["approval"] = {
            "fluid": "synthetic_ester", "max_temperature_c": 80, "source": "a letter", **named}  # fmt: skip
        return assess(AssemblySpec.read(data), made_up())

    asked = given.asks(assess(assembly(fluid="synthetic_ester"), made_up()))
    assert [ask.field for ask in asked] == ["hose.approval"], "its rating is known but for the fluid"
    held = with_approval(80)
    assert held.working_pressure.value_bar == 100 and "fluid_approved" in codes(held)
    assert given.asks(held) == []
    assert with_approval(90).working_pressure.value_bar is None
    assert with_approval(80, fluid="water").working_pressure.value_bar is None
    assert (
        with_approval(110, max_temperature_c=120).working_pressure.value_bar is None
    )  # the standard's limit


def test_a_hose_that_no_table_knows_is_rated_by_its_manufacturers_figure() -> None:
    data = both("XYZ 900", 12, end("sae_37_flare", 12)).as_dict()
    data["hose"]["rating"] = {"value_bar": 60, "source": "data sheet 7"}
    assert assess(AssemblySpec.read(data), made_up()).working_pressure.value_bar == 60


def test_a_shops_rating_of_an_edition_of_its_own_hose_is_for_that_edition() -> None:
    own = [
        hose(80, standard="XYZ 900", edition="2nd", **SHOP),
        hose(70, standard="XYZ 900", edition="1st", **SHOP),
    ]
    tables = made_up(hose_pressure=[hose(100), *own], connection_pressure=[ending(400)])
    for named, bar in (("2ND", 80), ("1st", 70), ("3rd", None), (None, 70)):
        xyz = Hose(standard="xyz-900", dash=12, edition=named)
        assert hose_rating(xyz, tables)[0].value_bar == bar, named


def test_an_approval_for_a_hose_of_no_standard_holds_up_to_its_own_temperature() -> None:
    data = both("XYZ 900", 12, end("sae_37_flare", 12), fluid="water_glycol").as_dict()
    letter = {"source": "a letter", "fluid": "water_glycol", "max_temperature_c": 80}
    data["hose"] |= {"rating": {"value_bar": 60, "source": "data sheet 7"}, "approval": letter}
    for hottest, bar in ((79, 60), (80, 60), (81, None), (None, None)):
        asked = data | ({} if hottest is None else {"max_temperature_c": hottest})
        assert assess(AssemblySpec.read(asked), made_up()).working_pressure.value_bar == bar, hottest


def test_an_approval_is_said_to_go_beyond_every_source_only_where_it_does() -> None:
    two = [fluid("water_glycol", -20, 60), replace(fluid("water_glycol", -20, 80), source="another table")]
    for most, said in (
        (70, "trade-fluid-approved"),
        (80, "trade-fluid-approved"),
        (81, "trade-fluid-approved-beyond"),
    ):
        data = assembly(fluid="water_glycol").as_dict()
        data["hose"]["approval"] = {"fluid": "water_glycol", "max_temperature_c": most, "source": "a letter"}
        found = assess(AssemblySpec.read(data), made_up(hose_fluids=two))
        assert [w.message.id for w in found.warnings if w.code == "fluid_approved"] == [said], most


def test_an_edition_from_memory_does_not_lift_a_figure_above_the_verified_edition() -> None:
    """Of a hose without its edition: 60 bar from memory in one, 100 published in the other."""
    editions = made_up(
        hose_pressure=[
            hose(60, edition="older", confidence="memory"),
            hose(100, edition="newer"),
            hose(400, dash=4, edition="newer"),
        ],
        hose_editions=[edition("A", "older"), edition("N", "newer")],
        connection_pressure=[ending(400)],
    )
    for given_bar, bar in ((390, 100), (90, 90)):
        found = assess(spec("hose", {"value_bar": given_bar, "source": "data sheet 7"}), editions)
        assert part(found, "hose").value_bar == bar
        assert ("rating_given_too_high" in codes(found)) == (given_bar > bar)


def test_of_several_verified_editions_the_least_holds_against_a_figure_above_it() -> None:
    """60 bar from memory in one edition, 100 and 130 published in two others: which it is nobody knows."""
    rows = [
        hose(60, edition="oldest", confidence="memory"),
        *(hose(bar, edition=name) for bar, name in ((130, "newest"), (100, "newer"))),
        hose(400, dash=4, edition="newest"),
    ]
    names = [edition("A", "oldest"), edition("N", "newer"), edition("P", "newest")]
    editions = made_up(hose_pressure=rows, hose_editions=names, connection_pressure=[ending(400)])
    for given_bar, bar in ((120, 100), (100, 100), (90, 90)):
        found = assess(spec("hose", {"value_bar": given_bar, "source": "data sheet 7"}), editions)
        assert part(found, "hose").value_bar == bar
        assert ("rating_given_too_high" in codes(found)) == (given_bar > bar)


@pytest.mark.parametrize("bars", [(80,), (80, 95), (95, 80), (150, 80)])
def test_of_a_shops_ratings_beyond_a_limit_the_least_holds_and_never_above_the_standards_own(
    bars: tuple[float, ...],
) -> None:
    """The standard's 100 bar do not apply to phosphate ester at 60 °C; the shop's rows for it do."""
    own = [
        hose(bar, fluid="phosphate_ester", max_temperature_c=60.0, **(SHOP | {"source": f"sheet {bar}"}))
        for bar in bars
    ]
    rows = {"hose_fluids": [fluid("water_glycol", -20, 70)], "connection_pressure": [ending(400)]}
    asked = assembly(**BEYOND)
    assert part(assess(asked, made_up(hose_pressure=[hose(100)], **rows)), "hose").value_bar is None
    assert part(assess(asked, made_up(hose_pressure=[hose(100), *own], **rows)), "hose").value_bar == 80
    only_high = made_up(hose_pressure=[hose(100), own[0]], **rows)
    assert part(assess(asked, only_high), "hose").value_bar == min(bars[0], 100)


@pytest.mark.parametrize(
    "more", [{}, {"fluid": "water_glycol"}, {"fluid": "mineral_oil", "max_temperature_c": 60}]
)
def test_a_figure_that_does_not_count_raises_nothing(more: dict[str, Any]) -> None:
    """700 bar that nobody had confirmed was "not used", and took a hose of an unnamed edition from 155 to 207 bar;
    so did a figure for another fluid, or for less heat."""
    data = example().as_dict()
    plain = assess(AssemblySpec.read(data))
    figure = {"value_bar": 250 if more else 700, "source": "a letter", **more}
    found = assess(AssemblySpec.read({**data, "hose": {**data["hose"], "rating": figure}}))
    assert "rating_not_used" in codes(found)
    assert part(found, "hose") == part(plain, "hose") and part(plain, "hose").confidence == "memory"
    assert found.working_pressure.value_bar == plain.working_pressure.value_bar == 155.1


def _of_a_test(bar: float, *parts: str, confirmed: bool = False) -> object:
    """What speaks against a rating in bar that is given with a proof test of the made-up assembly: the highest told."""
    tables = made_up(
        hose_pressure=[hose(100), hose(200, dash=4)],
        connection_pressure=[ending(400, size="4"), ending(90, size="6")],
    )
    found = given.problem_with_test(bar, parts, assembly(), tables, confirmed=confirmed)
    return found and found.message.values["highest"]


def test_a_rating_given_with_a_test_is_asked_about_above_the_published_one_of_that_part() -> None:
    """100 bar are published for the hose in that size, 200 for another size of its standard."""
    assert [_of_a_test(bar, "hose") for bar in (100, 100.29)] == [None, None], (
        "the same figure rounded otherwise"
    )
    assert _of_a_test(100.31, "hose") == _of_a_test(150, "hose", "end_a") == pressure(100)
    assert _of_a_test(150, "hose", confirmed=True) is None


def test_a_rating_given_with_a_test_of_an_end_that_nothing_rates_is_asked_about_above_its_whole_family() -> (
    None
):
    assert [_of_a_test(bar, "end_a", "end_b") for bar in (80, 399, 400)] == [None, None, None]
    assert _of_a_test(401, "end_b") == pressure(400)
    assert _of_a_test(401, "end_b", confirmed=True) is None
    assert _of_a_test(401) is None, "of no part there is nothing to ask"


def test_no_tag_carries_it() -> None:
    carried = spec("end_a", CHART).carried()
    assert carried.end_a.rating is None and carried == assembly().carried()


def test_a_new_end_with_a_figure_is_another_part_than_one_without() -> None:
    old = both(HOSE, 12, end("bspp", "3/4"))
    data = old.as_dict()
    data["end_a"]["rating"] = {"value_bar": 10, "source": "a weak one"}
    data["end_b"]["rating"] = {"value_bar": 10, "source": "a weak one"}
    held = likeforlike.compare(old, AssemblySpec.read(data), made_up())
    assert {f.field: f.verdict for f in held.fields}["working_pressure"] == "dangerous"


SHOP = {"confidence": "shop", "source": "our catalogue"}


def test_a_shops_row_above_every_published_one_is_said_to_be_with_the_figure() -> None:
    published = made_up(connection_pressure=[ending(120, forms=("female_swivel",))])
    own = [ending(180, forms=("female_swivel",), shapes=("straight",), **SHOP)]
    raised = Tables.of({**published.raw, "connection_pressure": tuple(own)}, published=published.raw)
    found = assess(assembly(), raised)
    assert (part(found, "end_a").value_bar, part(found, "end_a").above_published_bar) == (180, 120)
    said = [w for w in found.warnings if w.code == "rating_above_published"]
    assert [(w.field, w.severity) for w in said] == [("end_a", "care"), ("end_b", "care")]
    lower = Tables.of(
        {**published.raw, "connection_pressure": (ending(110, **SHOP),)}, published=published.raw
    )
    assert "rating_above_published" not in codes(assess(assembly(), lower))


def test_a_shops_row_stands_for_an_unverified_one_of_the_same_part() -> None:
    rows = [ending(90, confidence="memory"), ending(150, shapes=("straight",), **SHOP)]
    found = assess(assembly(), tables_with(**{**_raw(), "connection_pressure": rows}))
    assert (part(found, "end_a").value_bar, part(found, "end_a").confidence) == (150, "shop")


def _raw() -> dict[str, Any]:
    return {name: list(rows) for name, rows in made_up().raw.items()}


def test_a_folders_row_above_the_published_ones_is_said_on_the_real_tables(tmp_path: Path) -> None:
    (tmp_path / "hose_pressure.csv").write_text(
        "standard,edition,dash,max_working_bar,printed,in_standard,source,confidence,note\n"
        "EN 853 2SN,,12,400,,yes,data sheet 7,shop,\n"
    )

    found = assess(example(hose__standard="EN 853 2SN"), Tables.load(extra=tmp_path))
    assert part(found, "hose").value_bar == 400 and part(found, "hose").above_published_bar is not None
    assert "rating_above_published" in codes(found)
