"""Temperature and fluid: only what a source says."""

from __future__ import annotations

from tagger.trade import assess
from tests.trade.specs import both, end


def codes(**more: object) -> dict[str, str]:
    found = assess(both("EN 853 2SN", 8, end("sae_37_flare", 8), **more))
    return {w.code: w.severity for w in found.warnings}


def test_above_the_standards_range_is_a_danger_and_nothing_is_derated() -> None:
    assert codes(max_temperature_c=110)["too_hot"] == "danger"
    hot = assess(both("EN 853 2SN", 8, end("sae_37_flare", 8), max_temperature_c=110))
    cool = assess(both("EN 853 2SN", 8, end("sae_37_flare", 8), max_temperature_c=90))
    assert hot.working_pressure.value_bar == cool.working_pressure.value_bar


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
