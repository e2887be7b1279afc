"""Temperature and fluid: only what a source says."""

from __future__ import annotations

import pytest

from tagger.messages import Message
from tagger.trade import assess
from tests.trade.specs import both, end


def codes(**more: object) -> dict[str, str]:
    found = assess(both("EN 853 2SN", 8, end("sae_37_flare", 8), **more))
    return {w.code: w.severity for w in found.warnings}


def test_above_the_standards_range_no_table_pressure_holds() -> None:
    assert codes(max_temperature_c=110)["too_hot"] == "danger"
    hot = assess(both("SAE 100R2", 8, end("sae_37_flare", 8), max_temperature_c=150))
    assert hot.working_pressure.value_bar is None and hot.test_pressure_bar is None
    why = hot.working_pressure.parts[0].why
    assert why is not None and why.id == "trade-unfit-hot"
    assert hot.working_pressure.why == Message("trade-pressure-unfit", why=why)
    assert (hot.working_pressure.source, hot.working_pressure.parts[0].source) == ("", "")
    assert hot.working_pressure.at_most_bar is None
    assert hot.warnings[0].code == "too_hot" and hot.warnings[0].severity == "danger"
    cool = assess(both("SAE 100R2", 8, end("sae_37_flare", 8), max_temperature_c=100))
    assert cool.working_pressure.value_bar is not None


@pytest.mark.parametrize("asked", [{"fluid": "phosphate_ester"}, {"fluid": "water", "max_temperature_c": 85}])
def test_a_fluid_the_hose_is_not_for_leaves_no_table_pressure(asked: dict[str, object]) -> None:
    found = assess(both("EN 853 2SN", 8, end("sae_37_flare", 8), **asked))
    assert found.working_pressure.value_bar is None
    why = found.working_pressure.parts[0].why
    assert why is not None and "EN 853:2015" in str(why.values["source"])
    assert found.warnings[0].severity == "danger" and "EN 853 2SN" in found.warnings[0].text


def test_the_makers_own_figure_still_lets_it_be_built_and_the_danger_stays() -> None:
    given = {"value_bar": 150, "source": "the hose maker's letter"}
    hot = both("SAE 100R2", 8, end("sae_37_flare", 8), max_temperature_c=150, working_pressure=given)
    found = assess(hot)
    assert found.working_pressure.value_bar == 150
    assert found.warnings[0].code == "too_hot"


def test_a_figure_given_beyond_the_hoses_limits_is_never_above_its_rating_within_them() -> None:
    given = {"value_bar": 340, "source": "a letter"}
    plain = assess(both("SAE 100R2", 16, end("flange_code62", 16, "flange_head")))
    hot = assess(
        both("SAE 100R2", 16, end("flange_code62", 16, "flange_head"), max_temperature_c=150, working_pressure=given)
    )  # fmt: skip
    assert plain.working_pressure.limited_by == "hose"
    assert hot.working_pressure.value_bar == plain.working_pressure.value_bar
    assert "pressure_given_too_high" in {w.code for w in hot.warnings}


def test_water_based_fluids_have_a_lower_limit() -> None:
    assert codes(fluid="water_glycol", max_temperature_c=80)["too_hot_for_fluid"] == "danger"
    assert "too_hot_for_fluid" not in codes(fluid="water_glycol", max_temperature_c=70)


def test_the_lowest_temperature_is_told_with_its_source() -> None:
    found = assess(both("EN 853 2SN", 8, end("sae_37_flare", 8)))
    assert (found.min_temperature_c, found.min_temperature_source) == (-40, "EN 853:2015 abstract")
    wet = assess(both("2SN", 8, end("sae_37_flare", 8), fluid="water"))
    assert wet.min_temperature_c == 0
    assert codes(fluid="water")["cold_limit_of_fluid"] == "care"
    assert "cold_limit_of_fluid" not in codes(fluid="water_glycol")


def test_colder_than_the_hose_goes_is_a_danger() -> None:
    assert codes(max_temperature_c=-50)["too_cold"] == "danger"
    assert "too_cold" not in codes(max_temperature_c=-40)


def test_esters_are_not_for_en_853_hose() -> None:
    assert codes(fluid="synthetic_ester")["fluid_not_suited"] == "danger"


def test_a_fluid_no_source_speaks_of_is_said_to_be_unknown() -> None:
    found = assess(both("SAE 100R17", 8, end("sae_37_flare", 8), fluid="phosphate_ester"))
    assert "fluid_not_known" in {w.code for w in found.warnings}
    assert "fluid_not_known" not in codes(fluid="mineral_oil")


@pytest.mark.parametrize("standard", ["EN 854 2TE", "EN 856 4SH", "EN 856 R13", "EN 857 2SC"])
def test_esters_are_not_for_the_other_en_hoses_either(standard: str) -> None:
    found = assess(both(standard, 12, end("sae_37_flare", 12), fluid="synthetic_ester"))
    assert found.working_pressure.value_bar is None
    assert standard.split()[1] in next(w.text for w in found.warnings if w.code == "fluid_not_suited")
