"""What stands against its fluid, heat, cold or vacuum is not registered without a written reason."""

from __future__ import annotations

from typing import Any

import pytest

from tagger.errors import StoreError
from tagger.store import Kind, Registration, Store
from tagger.trade import assess
from tests.store.samples import spec

# EN 856 4SP with water glycol is for 70 °C, EN 857 2SC is not for vegetable oil (hose_fluids.csv)
HOT = {"hose": {"standard": "EN 856 4SP", "dash": 12}, "fluid": "water_glycol", "max_temperature_c": 80}
FLUID = {"hose": {"standard": "EN 857 2SC", "dash": 12}, "fluid": "vegetable_oil"}


def _row(changes: dict[str, Any], **record: str) -> Registration:
    asked = spec(**changes)
    return Registration(asked, assess(asked), **record)


@pytest.mark.parametrize("changes", [HOT, FLUID, {"max_temperature_c": 150}, {"max_temperature_c": -60}])
def test_a_danger_is_registered_only_with_a_reason(store: Store, changes: dict[str, Any]) -> None:
    for record in ({}, {"reason": "  "}, {"reason": " - "}, {"reason": "x."}):
        with pytest.raises(StoreError, match=r"reason.*registered only with a written reason"):
            store.register_many([_row(changes, **record)])
    assert store.count() == 0
    [made] = store.register_many([_row(changes, reason="asked for in writing")])
    [first] = store.history(made.number)
    assert first.kind is Kind.REGISTERED and first.data["reason"] == made.reason == "asked for in writing"


def test_the_row_of_a_run_that_needs_a_reason_is_named(store: Store) -> None:
    with pytest.raises(StoreError, match=r"row 2\.reason"):
        store.register_many([_row({}), _row(HOT)])
    assert store.count() == 0


def test_a_pressure_that_is_only_not_known_needs_no_reason(store: Store) -> None:
    jis = {"connection": "jis_30", "size": "M22x1.5", "form": "female_swivel", "hose_dash": 12}
    row = _row({"end_a": jis})
    assert row.assessment.working_pressure.value_bar is None
    store.register_many([row])


@pytest.mark.parametrize(("hottest", "needed"), [(60, False), (50, True)])
def test_a_source_that_names_fluid_and_heat_is_a_reason(store: Store, hottest: int, needed: bool) -> None:
    """The manufacturer's letter for this fluid and temperature is what the tables lack."""
    given = {"value_bar": 100, "source": "the manufacturer's letter", "fluid": "vegetable_oil"}
    row = _row(FLUID | {"max_temperature_c": 60, "working_pressure": given | {"max_temperature_c": hottest}})
    if needed:
        with pytest.raises(StoreError, match="written reason"):
            store.register_many([row])
    else:
        store.register_many([row])


@pytest.mark.parametrize("changes", [{"max_temperature_c": -60}, {"vacuum_bar": 0.5}])
def test_a_source_for_fluid_and_heat_is_no_reason_for_cold_or_vacuum(
    store: Store, changes: dict[str, Any]
) -> None:
    given = {"value_bar": 100, "source": "a letter", "fluid": "mineral_oil", "max_temperature_c": 100}
    with pytest.raises(StoreError, match="written reason"):
        store.register_many([_row(changes | {"working_pressure": given})])
    assert store.count() == 0
