"""Recipes and crimp diameters."""

from __future__ import annotations

import pytest

from tagger.errors import StoreError
from tagger.store import CrimpValue, Store
from tests.store.samples import spec

R2 = CrimpValue("SAE 100R2", 12, "two-wire shell", 33.4, 0.1, 0.2, "shop's own trial of 2 March")


def test_a_recipe_keeps_the_spec_without_its_lots(store: Store) -> None:
    store.save_recipe("  boom  hose ", spec(), by="anna")
    kept = store.recipe("boom hose").spec
    assert kept.hose.lot is None and kept.note == spec().note and kept.carried() == spec().carried()
    store.save_recipe("boom hose", spec(length_mm=900))
    assert [recipe.spec.length_mm for recipe in store.recipes()] == [900]
    store.drop_recipe("boom hose")
    assert store.recipes() == []


def test_the_newest_crimp_diameter_holds(store: Store) -> None:
    store.keep_crimp(R2)
    newer = CrimpValue("SAE 100R2", 12, "two-wire shell", 33.5, 0.1, 0.1, "shell maker's chart 7")
    store.keep_crimp(newer)
    assert store.crimps("SAE 100R2", 12) == [newer]
    assert store.crimps("SAE 100R2", 8) == []


@pytest.mark.parametrize(("measured", "holds"), [(33.3, True), (33.6, True), (33.29, False), (33.61, False)])
def test_a_measured_diameter_is_held_against_its_band(measured: float, holds: bool) -> None:
    assert R2.measured("a", measured).holds is holds


def test_a_crimp_diameter_without_source_is_refused(store: Store) -> None:
    with pytest.raises(StoreError, match="source"):
        store.keep_crimp(CrimpValue("SAE 100R2", 12, "shell", 33.4, 0.1, 0.1, " "))
