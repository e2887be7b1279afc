"""Recipes that the shop keeps."""

from __future__ import annotations

import pytest
from sqlalchemy import update

from tagger.store import RecipeKept, Role, Store
from tagger.store.models import RecipeRow
from tests.store.samples import spec


def test_a_recipe_keeps_the_spec_without_its_lots(store: Store) -> None:
    store.save_recipe("  boom  hose ", spec(), by="anna")
    kept = store.recipe("boom hose").spec
    assert kept.hose.lot is None and kept.note == spec().note and kept.carried() == spec().carried()
    store.save_recipe("boom hose", spec(length_mm=900))
    assert [recipe.spec.length_mm for recipe in store.recipes()] == [900]
    store.drop_recipe("boom hose")
    assert store.recipes() == []


def test_a_recipe_is_not_replaced_unasked_and_a_managers_by_a_manager_alone(store: Store) -> None:
    store.save_recipe("boom", spec(), by="anna", role=Role.MANAGER)
    same = store.save_recipe("boom", spec(), by="bela", role=Role.BUILDER, replace=False)
    assert same.saved_by == "anna", "the same spec: nothing to refuse, and it stays the manager's"
    other = spec(length_mm=900)
    with pytest.raises(RecipeKept, match="manager"):
        store.save_recipe("boom", other, by="bela", role=Role.COUNTER)
    with pytest.raises(RecipeKept, match="different spec"):
        store.save_recipe("boom", other, by="cora", role=Role.MANAGER, replace=False)
    kept = store.recipe("boom")
    assert (kept.spec.length_mm, kept.saved_by) == (spec().length_mm, "anna")
    assert store.save_recipe("boom", other, by="cora", role=Role.MANAGER).spec.length_mm == 900

    store.save_recipe("arm", spec(), by="bela", role=Role.BUILDER)
    assert store.save_recipe("arm", other, by="dora", role=Role.BUILDER).saved_by == "dora"
    with store.writing() as session:  # as kept before anybody wrote down who it was
        session.execute(update(RecipeRow).values(saved_role=None))
    with pytest.raises(RecipeKept, match="manager"):
        store.save_recipe("arm", spec(), by="bela", role=Role.BUILDER)
