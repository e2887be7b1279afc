"""A manufacturer's value is kept once, over the API, on both databases and in every server at once."""

from __future__ import annotations

import copy
from collections.abc import Iterator
from typing import Any

import httpx
import pytest

from api.settings import Settings
from tagger.store import Role, Store
from tests.bench.served import serving
from tests.databases import postgresql_server, postgresql_template, postgresql_url, sqlite_url, url
from tests.rest.examples import ASKED_FOR

__all__ = ["postgresql_server", "postgresql_template", "postgresql_url", "sqlite_url", "url"]
BARE = {**ASKED_FOR, "end_a": ASKED_FOR["end_b"]}


@pytest.fixture
def store(url: str) -> Iterator[Store]:
    with Store.open(url) as opened:
        yield opened


@pytest.fixture
def servers(store: Store) -> Iterator[list[dict[Role, httpx.Client]]]:
    """Two servers of one database, each asked by a builder's device and a manager's."""
    secrets = {role: store.make_token(f"a {role}", role)[1] for role in (Role.BUILDER, Role.MANAGER)}
    with serving(Settings(), store) as one, serving(Settings(), store) as two:
        yield [
            {
                role: httpx.Client(
                    base_url=f"{served.url}/api/v1",
                    headers={"Authorization": f"Bearer {secret}"},
                    timeout=30,
                )
                for role, secret in secrets.items()
            }
            for served in (one, two)
        ]


def bar(api: httpx.Client, spec: dict[str, Any]) -> float | None:
    answer = api.post("/check", json=spec)
    assert answer.status_code == 200, answer.text
    found: float | None = answer.json()["working_pressure"]["value_bar"]
    return found


def test_a_value_kept_at_one_server_is_held_by_the_other_at_its_next_answer(
    servers: list[dict[Role, httpx.Client]], store: Store
) -> None:
    here, there = servers[0][Role.BUILDER], servers[1][Role.BUILDER]
    asked = there.post("/check", json=BARE).json()
    assert asked["working_pressure"]["value_bar"] is None
    assert [ask["field"] for ask in asked["asks"]] == ["end_a.rating", "end_b.rating"]
    [kept] = here.post("/shop-values", json={"spec": ASKED_FOR}).json()
    assert (bar(here, BARE), bar(there, BARE)) == (210, 210)
    assert (kept["by"], kept["ended_at"]) == ("a builder", None)
    assert here.post(f"/shop-values/{kept['id']}/withdraw", json={"reason": "wrong"}).status_code == 403
    manager = servers[1][Role.MANAGER]
    ended = manager.post(f"/shop-values/{kept['id']}/withdraw", json={"reason": "wrong column"}).json()
    assert (ended["ended_by"], ended["why"]) == ("a manager", "wrong column")
    assert (bar(here, BARE), bar(there, BARE)) == (None, None)
    assert here.get("/shop-values").json() == []
    assert [row["id"] for row in here.get("/shop-values", params={"ended": True}).json()] == [kept["id"]]
    assert manager.post("/shop-values/99/withdraw", json={"reason": "wrong"}).status_code == 404


def test_registering_with_keep_keeps_and_a_repeat_changes_nothing(
    servers: list[dict[Role, httpx.Client]], store: Store
) -> None:
    api = servers[0][Role.BUILDER]
    body = {"spec": ASKED_FOR, "keep": True}
    for _ in range(2):
        made = api.post("/assemblies", json=body, headers={"Idempotency-Key": "k"})
        assert made.status_code == 201, made.text
    assert (store.count(), len(store.shop_rows(ended=True))) == (1, 1)
    [number] = made.json()["numbers"]
    kept = api.get(f"/assemblies/{number}").json()
    assert kept["working_pressure_bar"] == 210  # end B is of the same kind, and is rated by what was kept


@pytest.mark.parametrize(
    ("change", "field"),
    [
        ({"value_bar": 3000}, "end_a.rating.value_bar"),
        ({"value_bar": 900}, "end_a.rating.value_bar"),
        ({"value_bar": -5}, "end_a.rating.value_bar"),
        ({"source": ""}, "end_a.rating.source"),
    ],
)
def test_what_cannot_be_kept_is_refused_by_its_field(
    servers: list[dict[Role, httpx.Client]], store: Store, change: dict[str, Any], field: str
) -> None:
    spec = copy.deepcopy(ASKED_FOR)
    spec["end_a"]["rating"] |= change
    refused = servers[0][Role.BUILDER].post("/shop-values", json={"spec": spec})
    assert (refused.status_code, refused.json()["problems"][0]["field"]) == (422, field)
    assert store.shop_rows(ended=True) == []
