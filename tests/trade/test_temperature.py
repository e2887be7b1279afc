"""Temperature and fluid: only what a source says. Figures here are made up."""

from __future__ import annotations

from typing import Any

import pytest

from tagger import phrases
from tagger.messages import Message, temperature
from tagger.trade import assess
from tagger.trade.results import Assessment
from tests.trade.made_up import HOSE, SOURCE, assembly, ending, fluid, hose, made_up, standard

FLUIDS = [fluid("water_glycol", -20, 70), fluid("water", 0, 60), fluid("synthetic_ester")]
"""Water glycol to 70 °C, water from 0 to 60 °C, esters not at all; the hose goes from -40 to 100 °C."""


def checked(**more: object) -> Assessment:
    return assess(assembly(**more), made_up(hose_fluids=FLUIDS))


def codes(**more: object) -> dict[str, str]:
    return {w.code: w.severity for w in checked(**more).warnings}


def test_above_the_standards_range_no_table_pressure_applies() -> None:
    hot = checked(max_temperature_c=101)
    assert hot.working_pressure.value_bar is None and hot.test_pressure_bar is None
    why = hot.working_pressure.parts[0].why
    assert why == Message("trade-unfit-hot", standard=HOSE, limit=temperature(100), source=SOURCE)
    assert hot.working_pressure.why == Message("trade-pressure-unfit", why=why)
    assert (hot.working_pressure.source, hot.working_pressure.parts[0].source) == ("", "")
    assert hot.working_pressure.at_most_bar is None, "it could be read as a pressure that applies"
    assert hot.warnings[0].code == "too_hot" and hot.warnings[0].severity == "danger"
    assert checked(max_temperature_c=100).working_pressure.value_bar == 100


@pytest.mark.parametrize("asked", [{"fluid": "synthetic_ester"}, {"fluid": "water", "max_temperature_c": 61}])
def test_a_fluid_the_hose_is_not_for_leaves_no_table_pressure(asked: dict[str, object]) -> None:
    found = checked(**asked)
    assert found.working_pressure.value_bar is None
    why = found.working_pressure.parts[0].why
    assert why is not None and why.values["fluid"] == phrases.fluid(str(asked["fluid"]))
    assert found.warnings[0].severity == "danger"


LETTER = {
    "value_bar": 80,
    "source": "the manufacturer's letter",
    "fluid": "mineral_oil",
    "max_temperature_c": 150,
}


def test_a_figure_whose_source_names_fluid_and_heat_lets_it_be_built_and_the_danger_stays() -> None:
    found = checked(max_temperature_c=150, working_pressure=LETTER)
    assert found.working_pressure.value_bar == 80
    assert found.warnings[0].code == "too_hot"


@pytest.mark.parametrize(
    "named", [{"fluid": None}, {"max_temperature_c": None}, {"max_temperature_c": 140}, {"fluid": "water"}]
)
def test_a_figure_given_lifts_no_limit_that_its_source_does_not_name(named: dict[str, Any]) -> None:
    found = checked(max_temperature_c=150, working_pressure=LETTER | named)
    assert found.working_pressure.value_bar is None
    assert "pressure_not_lifted" in {w.code for w in found.warnings if w.severity == "danger"}


@pytest.mark.parametrize(
    "wanted", ["phosphate_ester", "petrol", "refrigerant", "oxygen", "steam", "synthetic_ester"]
)
def test_a_fluid_that_no_source_names_has_no_pressure_but_one_entered_for_it(wanted: str) -> None:
    bare = {"value_bar": 80, "source": "a letter"}
    assert checked(fluid=wanted).working_pressure.value_bar is None
    assert checked(fluid=wanted, working_pressure=bare).working_pressure.value_bar is None
    named = LETTER | {"fluid": wanted, "max_temperature_c": 60}
    assert (
        checked(fluid=wanted, max_temperature_c=60, working_pressure=named).working_pressure.value_bar == 80
    )


def test_a_hose_in_no_table_carries_such_a_fluid_only_where_the_source_names_it() -> None:
    hose = {"standard": "A hose of its own", "dash": 12}
    bare = {"value_bar": 80, "source": "a letter"}
    assert checked(hose=hose, working_pressure=bare).working_pressure.value_bar == 80
    assert checked(hose=hose, fluid="petrol", working_pressure=bare).working_pressure.value_bar is None
    named = LETTER | {"fluid": "petrol", "max_temperature_c": 60}
    assert checked(hose=hose, fluid="petrol", working_pressure=named).working_pressure.value_bar == 80


def test_engine_oil_is_treated_as_oil_and_said_so() -> None:
    found = checked(fluid="engine_oil")
    assert found.working_pressure.value_bar == 100
    assert codes(fluid="engine_oil")["fluid_not_known"] == "care"


def test_the_maximum_temperature_is_the_one_entered_else_the_hoses_with_that_fluid() -> None:
    assert (
        checked(max_temperature_c=60).max_temperature_c,
        checked(max_temperature_c=60).max_temperature_source,
    ) == (60, "")
    assert (checked().max_temperature_c, checked().max_temperature_source) == (100, SOURCE)
    assert checked(fluid="water_glycol").max_temperature_c == 70
    assert checked(fluid="petrol").max_temperature_c is None


def test_a_figure_given_beyond_the_hoses_limits_is_never_above_its_rating_within_them() -> None:
    found = checked(max_temperature_c=150, working_pressure=LETTER | {"value_bar": 340, "confirmed": True})
    assert found.working_pressure.value_bar == 100
    (said,) = [w.message for w in found.warnings if w.message.id == "trade-pressure-beyond-hose"]
    assert "100 bar" in str(said) and "340 bar" in str(said)


def test_a_fluid_has_its_own_upper_limit() -> None:
    assert codes(fluid="water_glycol", max_temperature_c=71)["too_hot_for_fluid"] == "danger"
    assert "too_hot_for_fluid" not in codes(fluid="water_glycol", max_temperature_c=70)


def test_the_lowest_temperature_is_the_fluids_where_that_is_higher() -> None:
    plain = checked()
    assert (plain.min_temperature_c, plain.min_temperature_source) == (-40, SOURCE)
    assert checked(fluid="water").min_temperature_c == 0
    assert codes(fluid="water")["cold_limit_of_fluid"] == "care"
    milder = assess(assembly(fluid="water"), made_up(hose_fluids=[fluid("water", -60, 60)]))
    assert milder.min_temperature_c == -40
    assert "cold_limit_of_fluid" not in {w.code for w in milder.warnings}


def test_colder_than_the_hose_goes_is_a_danger() -> None:
    assert codes(max_temperature_c=-41)["too_cold"] == "danger"
    assert "too_cold" not in codes(max_temperature_c=-40)


def test_a_fluid_that_no_source_names_is_a_danger_unless_it_is_mineral_oil() -> None:
    assert codes(fluid="phosphate_ester")["fluid_not_named"] == "danger"
    assert "fluid_not_named" not in codes(fluid="mineral_oil")


def test_a_hose_of_another_range_has_other_limits() -> None:
    hotter = made_up(hose_standards=[standard(max_temperature_c=150.0)])
    assert "too_hot" not in {w.code for w in assess(assembly(max_temperature_c=140), hotter).warnings}


@pytest.mark.parametrize(("asked", "bar"), [(None, 100), ("mineral_oil", 100), ("water", 60)])
def test_ratings_for_a_fluid_hold_for_that_fluid_and_oil_is_meant_where_none_is_named(
    asked: str | None, bar: float
) -> None:
    by_fluid = (("mineral_oil", 100), ("water", 60))
    hoses = made_up(
        hose_pressure=[hose(b, fluid=f) for f, b in by_fluid], hose_fluids=[fluid("water", 0, 60)]
    )
    ends = made_up(
        connection_pressure=[ending(b, fluid=f) for f, b in by_fluid],
        hose_pressure=[hose(150)], hose_fluids=[fluid("water", 0, 60)],
    )  # fmt: skip
    for found, limit in ((hoses, "hose"), (ends, "end_a")):
        rated = assess(assembly(fluid=asked), found).working_pressure
        assert (rated.value_bar, rated.limited_by) == (bar, limit)
