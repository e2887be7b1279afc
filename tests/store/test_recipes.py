"""Recipes that the shop keeps."""

from __future__ import annotations

from tagger.store import Store
from tests.store.samples import spec


def test_a_recipe_keeps_the_spec_without_its_lots(store: Store) -> None:
    store.save_recipe("  boom  hose ", spec(), by="anna")
    kept = store.recipe("boom hose").spec
    assert kept.hose.lot is None and kept.note == spec().note and kept.carried() == spec().carried()
    store.save_recipe("boom hose", spec(length_mm=900))
    assert [recipe.spec.length_mm for recipe in store.recipes()] == [900]
    store.drop_recipe("boom hose")
    assert store.recipes() == []
