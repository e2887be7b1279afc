"""Photos of an order: kept with it once, in the copy too, and erased with its contact."""

from __future__ import annotations

import random
from pathlib import Path

import pytest

from tagger.errors import StoreError
from tagger.store import Store
from tests.store.samples import assessment, spec

ANNA = {"name": "Anna", "phone": "555 0101"}
HOSE, ROUTING = (random.Random(seed).randbytes(3000) for seed in (1, 2))


def test_photos_come_once_with_their_order_are_in_the_copy_and_go_with_the_contact(
    store: Store, tmp_path: Path
) -> None:
    number = store.register(spec(), assessment())[0].number
    photos = {"hose": HOSE, "routing": ROUTING}
    order = store.request_order(number=number, contact=ANNA, photos=photos, key="k1")
    store.request_order(number=number, contact=ANNA, photos=photos, key="k1")
    other = store.request_order(number=number, contact={"phone": "555 0202"}, photos={"hose": ROUTING})
    kept = store.order_photos(order.reference)
    assert [photo.what for photo in kept] == ["hose", "routing"]
    assert [store.photo(photo.id) for photo in kept] == [HOSE, ROUTING]
    assert len(list(store.every_photo())) == 3
    copied = store.backup(tmp_path / "tags.copy")
    with Store.open(f"sqlite:///{tmp_path}/again.sqlite3") as again:
        assert again.restore(tmp_path / "tags.copy") == copied
        assert [again.photo(photo.id) for photo in again.order_photos(order.reference)] == [HOSE, ROUTING]
    store.erase_contact(order.reference)
    assert store.order_photos(order.reference) == []
    with pytest.raises(StoreError, match="no photo"):
        store.photo(kept[0].id)
    assert [store.photo(photo.id) for photo in store.order_photos(other.reference)] == [ROUTING]
