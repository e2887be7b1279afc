"""Crimp diameters that the shop keeps."""

from __future__ import annotations

import pytest

from tagger.errors import StoreError
from tagger.store import CrimpValue, Store

R2 = CrimpValue("SAE 100R2", 12, "two-wire shell", 33.4, 0.1, 0.2, "shop's own trial of 2 March")


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
