"""Hoses by name: what the old and the international names equal, and what is no hydraulic hose at all."""

from __future__ import annotations

from typing import Any

import pytest

from tagger.errors import TaggerError
from tagger.spec import Hose
from tagger.trade import assess
from tagger.trade.rating import hose_rating
from tagger.trade.tables import tables
from tests.trade.specs import both, end

GIVEN = {"value_bar": 20.0, "source": "hose data sheet"}


@pytest.mark.parametrize(
    ("name", "standard"),
    [
        ("EN ISO 1436 2SN", "EN 853 2SN"), ("ISO 11237 2SC", "EN 857 2SC"), ("EN ISO 3862 4SH", "EN 856 4SH"),
        ("EN ISO 4079 3TE", "EN 854 3TE"), ("ISO 4079 R6", "SAE 100R6"), ("ISO 3949 R8", "SAE 100R8"),
        ("EN ISO 3949 R18", "SAE 100R18"), ("SAE 100R14B", "SAE 100R14"), ("ISO 18752 420 DC", "ISO 18752 420"),
        ("ISO 18752 35-CS", "ISO 18752 35"), ("ISO 18752 CS 350", "ISO 18752 350"), ("iso 18752-dc-70", "ISO 18752 70"), ("EN 857 R17", "SAE 100R17"),
    ],
)  # fmt: skip
def test_a_name_is_that_of_the_hose_it_equals(name: str, standard: str) -> None:
    found = tables().standard_of(name)
    assert found is not None and found.standard == standard


@pytest.mark.parametrize(
    ("standard", "dash", "psi"),
    [("SAE 100R9", 16, 3000), ("SAE 100R10", 8, 6250), ("SAE 100R11", 8, 7500), ("SAE 100R14", 16, 600), ("SAE 100R18", 8, 3000)],
)  # fmt: skip
def test_hoses_that_no_public_source_rates_are_unverified(standard: str, dash: int, psi: int) -> None:
    rated, _ = hose_rating(Hose(standard=standard, dash=dash), tables())
    assert rated.value_bar == pytest.approx(psi * 0.0689476, abs=0.05)
    assert rated.confidence == "memory"


def spec(standard: str, **more: Any) -> Any:
    return both(standard, 8, end("sae_37_flare", 8), **more)


def refused(standard: str, **more: Any) -> list[str]:
    with pytest.raises(TaggerError) as error:
        assess(spec(standard, **more))
    return [problem.message.id for problem in error.value.problems]


def test_a_name_without_its_class_is_told_every_class_there_is() -> None:
    for name in ("ISO 18752 CS", "ISO 18752"):
        with pytest.raises(TaggerError) as error:
            assess(spec(name))
        [problem] = error.value.problems
        assert all(f"ISO 18752 {bar}" in problem.mend for bar in (35, 70, 210, 350, 560)), problem.mend


@pytest.mark.parametrize(
    ("standard", "fluid", "other"),
    [
        ("SAE J1402", "air", "mineral_oil"), ("SAE J30 R7", "petrol", "mineral_oil"), ("EN 1762:2018", "lpg", "air"),
        ("EN ISO 6134 type 2", "steam", "mineral_oil"), ("SAE J2064", "refrigerant", "air"),
        ("SAE J190", "transmission_fluid", "air"),
    ],
)  # fmt: skip
def test_a_hose_for_something_else_is_rated_by_its_manufacturer_alone_and_for_what_it_carries(
    standard: str, fluid: str, other: str
) -> None:
    assert refused(standard, fluid=fluid) == ["trade-other-hose"]
    rating = {**GIVEN, "fluid": other, "max_temperature_c": 60}
    hose = {"standard": standard, "dash": 8, "rating": rating}
    assert refused(standard, hose=hose, fluid=other, max_temperature_c=60) == ["trade-other-hose-fluid"]
    rating = {**GIVEN, "fluid": fluid, "max_temperature_c": 60}
    found = assess(spec(standard, hose={**hose, "rating": rating}, fluid=fluid, max_temperature_c=60))
    (part,) = [p for p in found.working_pressure.parts if p.part == "hose"]
    assert (part.value_bar, found.working_pressure.value_bar) == (20.0, 20.0)


def test_a_working_pressure_alone_rates_a_hose_for_something_else_with_what_it_carries() -> None:
    given = {**GIVEN, "fluid": "air", "max_temperature_c": 60}
    more = {"fluid": "air", "max_temperature_c": 60, "working_pressure": given}
    assert assess(spec("SAE J1402", **more)).working_pressure.value_bar == 20
    assert refused("SAE J1402", **more | {"fluid": None}) == ["trade-other-hose-fluid"], (
        "taken for mineral oil"
    )


def test_a_water_jetting_hose_is_never_rated() -> None:
    rating = {
        "value_bar": 1000.0,
        "source": "hose data sheet",
        "confirmed": True,
        "fluid": "water",
        "max_temperature_c": 60,
    }
    hose = {"standard": "EN 1829-2", "dash": 8, "rating": rating}
    assert refused("EN 1829-2", hose=hose, fluid="water", max_temperature_c=60) == ["trade-jetting-hose"]
    assert refused("EN 1829-2") == ["trade-jetting-hose"]
