"""What a phone keeps for when it has no signal: it has a new name whenever anything of it changes."""

from __future__ import annotations

import re

from fastapi.testclient import TestClient

from api.app import create_app
from api.settings import Settings
from tagger.store import Store
from tagger.trade import keeping
from tagger.trade.tables import tables
from tests.trade.specs import both, end


def _limits(client: TestClient) -> tuple[str, dict[str, float]]:
    """The version of what the service worker fetches, and the highest pressures of ends in it."""
    found = re.search(r"[\"'/]([0-9a-f]{12})[\"'/]", client.get("/scan-worker.js").text)
    assert found is not None
    version = found[1]
    kit = client.get(f"/scan/{version}/kit.json").json()
    ceilings: dict[str, float] = kit[f"/scan/{version}/tables.json"]["text"]["ceilings"]["ends"]
    return version, ceilings


def test_what_a_phone_keeps_has_a_new_name_when_the_shop_has_a_new_address(store: Store) -> None:
    """A phone that kept the old shell would go on sending orders to the old address."""
    found = set()
    for changed in ({}, {"shop_name": "New name"}, {"shop_phone": "1"}, {"shop_email": "a@b.example"}):
        worker = TestClient(create_app(Settings(**changed), store=store)).get("/scan-worker.js").text
        again = TestClient(create_app(Settings(**changed), store=store)).get("/scan-worker.js").text
        assert worker == again
        found.add(worker)
    assert len(found) == 4


def test_what_a_phone_keeps_is_new_when_the_shop_keeps_or_withdraws_a_value(
    client: TestClient, store: Store
) -> None:
    """By the tables of before a phone would hide a true pressure, or show one that the shop has withdrawn."""
    rating = {"value_bar": 210, "source": "fitting catalogue, page 7"}
    [row] = keeping.rows_of(both("EN 853 2SN", 8, end("jis_30", "M22x1.5", rating=rating)), tables())
    before, without = _limits(client)
    kept = store.keep_shop_row(row)
    meanwhile, held = _limits(client)
    assert {*held.items()} - {*without.items()} == {("jis_30|M22x1.5|female_swivel", 210.0)}
    store.withdraw_shop_row(kept.id, "read from the wrong column")
    after, again = _limits(client)
    assert again == without and len({before, meanwhile}) == 2 and after == before
