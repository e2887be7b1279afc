"""Temperature and fluid: only what a source says. Figures here are made up."""

from __future__ import annotations

import pytest

from tagger import phrases
from tagger.messages import Message, temperature
from tagger.trade import assess
from tagger.trade.results import Assessment
from tests.trade.made_up import HOSE, SOURCE, assembly, fluid, made_up, standard

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


def test_the_makers_own_figure_still_lets_it_be_built_and_the_danger_stays() -> None:
    given = {"value_bar": 80, "source": "the manufacturer's letter"}
    found = checked(max_temperature_c=150, working_pressure=given)
    assert found.working_pressure.value_bar == 80
    assert found.warnings[0].code == "too_hot"


def test_a_figure_given_beyond_the_hoses_limits_is_never_above_its_rating_within_them() -> None:
    found = checked(max_temperature_c=150, working_pressure={"value_bar": 340, "source": "a letter"})
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


def test_a_fluid_no_source_speaks_of_is_said_to_be_unknown_unless_it_is_mineral_oil() -> None:
    assert codes(fluid="phosphate_ester")["fluid_not_known"] == "care"
    assert "fluid_not_known" not in codes(fluid="mineral_oil")


def test_a_hose_of_another_range_has_other_limits() -> None:
    hotter = made_up(hose_standards=[standard(max_temperature_c=150.0)])
    assert "too_hot" not in {w.code for w in assess(assembly(max_temperature_c=140), hotter).warnings}
