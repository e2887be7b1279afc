"""Which fluids a hose standard may carry, and how hot: the scopes of the standards themselves.

Sources stand beside each figure: EN 853, EN 854, EN 856:2015 abstracts; EN 857:2015 scope; ISO 11237:2017
abstract; EN ISO 3949:2020 scope; SAE J517 JUL2020 rationale.
"""

from __future__ import annotations

from itertools import product

import pytest

from tagger.spec import Fluid, Hose
from tagger.trade import assess
from tagger.trade.tables import tables
from tests.trade.made_up import assembly

T = tables()
DASH = {
    name: min(int(r.dash) for r in rows if r.dash != "all") if rows[0].dash != "all" else 8
    for name, rows in T.hose_pressures.items()
}


def rated(standard: str, fluid: str | None, celsius: float | None = None, **more: object) -> float | None:
    """The rating of the hose alone, in bar."""
    hose = {"standard": standard, "dash": DASH[standard]}
    spec = assembly(hose=hose, fluid=fluid, max_temperature_c=celsius, **more)
    ends = {
        "end_a": spec.end_a.model_copy(update={"hose_dash": hose["dash"]}),
        "end_b": spec.end_b.model_copy(update={"hose_dash": hose["dash"]}),
    }
    found = assess(spec.model_copy(update=ends), T).working_pressure
    return next(part.value_bar for part in found.parts if part.part == "hose")


LIMITS = [
    ("EN 853 2SN", "water_glycol", 70, "EN 853:2015 abstract"),
    ("EN 853 1SN", "water", 70, "EN 853:2015 abstract"),
    ("EN 854 3TE", "water_oil_emulsion", 70, "EN 854:2015 abstract"),
    ("EN 856 4SP", "water_glycol", 70, "EN 856:2015 abstract"),
    ("EN 856 R12", "mineral_oil", 120, "EN 856:2015 abstract"),
    ("EN 856 R13", "mineral_oil", 120, "EN 856:2015 abstract"),
    ("EN 857 2SC", "water_glycol", 60, "ISO 11237:2017 abstract: lower than the 70 °C of EN 857:2015"),
    ("SAE 100R7", "mineral_oil", 93, "EN ISO 3949:2020 scope"),
    ("SAE 100R8", "water", 60, "EN ISO 3949:2020 scope"),
    ("SAE 100R12", "mineral_oil", 120, "SAE J517 JUL2020 rationale"),
    ("SAE 100R2", "water", 70, "guide to SAE J517 names water-based fluids; held to the 70 °C of EN 853"),
]


@pytest.mark.parametrize(("standard", "fluid", "celsius", "source"), LIMITS)
def test_a_fluid_is_rated_to_its_limit_and_not_above(
    standard: str, fluid: str, celsius: int, source: str
) -> None:
    assert rated(standard, fluid, celsius) is not None, source
    assert rated(standard, fluid, celsius + 1) is None, source


EXCLUDED = [
    (standard, fluid)
    for standard in ("EN 853 1SN", "EN 853 2SN", "EN 854 2TE", "EN 856 4SH", "EN 857 1SC")
    for fluid in ("phosphate_ester", "synthetic_ester", "vegetable_oil")
]


@pytest.mark.parametrize(("standard", "fluid"), EXCLUDED)
def test_the_en_scopes_exclude_esters(standard: str, fluid: str) -> None:
    """EN 853, 854, 856 and 857 (2015): not for castor-oil or ester based fluids nor HFD-R."""
    assert rated(standard, fluid) is None


def test_no_fluid_but_oil_is_rated_without_a_row_that_names_it() -> None:
    off = []
    for standard, fluid in product(T.standards, Fluid):
        row = next((r for r in T.hose_fluids.get(standard, ()) if r.fluid == fluid), None)
        allowed = row is not None and row.max_temperature_c is not None
        if T.fluids[fluid].kind in ("oil", "other_oil"):
            allowed = row is None or allowed
        if (rated(standard, str(fluid)) is not None) != allowed:
            off.append((standard, str(fluid)))
    assert off == []


@pytest.mark.parametrize(
    "fluid",
    [
        "petrol",
        "diesel",
        "biodiesel",
        "lpg",
        "air",
        "nitrogen",
        "oxygen",
        "refrigerant",
        "steam",
        "phosphate_ester",
        "brake_fluid",
    ],
)
def test_gas_fuel_steam_and_esters_are_rated_in_no_hose_of_the_tables(fluid: str) -> None:
    """Nothing in hand names one of these for a hydraulic hose standard: the manufacturer's value only."""
    assert [standard for standard in T.standards if rated(standard, fluid) is not None] == []


def test_every_fluid_has_its_kind() -> None:
    assert set(T.fluids) == {str(fluid) for fluid in Fluid}


def test_brass_45_flare_is_rated_below_73_degrees_only() -> None:
    """A brass fitting manufacturer's sheet: below 73 °C. A spec has whole degrees."""
    end = {"connection": "sae_45_flare", "dash": 6, "form": "female_swivel", "material": "brass"}
    hose = Hose(standard="SAE 100R6", dash=6)
    hot, cool, not_said = (
        assess(assembly(hose=hose, end_a=end, end_b=end, max_temperature_c=c), T).working_pressure.value_bar
        for c in (73, 72, None)
    )
    assert (hot, cool, not_said) == (None, cool, None)
    assert cool is not None
