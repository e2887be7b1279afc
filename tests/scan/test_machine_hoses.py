"""The other hoses of a tag's machine: nobody, by the tag's PIN, or everybody, as the shop chooses."""

from __future__ import annotations

import pytest
from fastapi.testclient import TestClient

from api.app import create_app
from api.settings import Settings
from tagger.code import number as tag_number
from tagger.spec import AssemblySpec
from tagger.store import Store
from tagger.trade import assess
from tests.scan.conftest import SPEC, text


def made(store: Store, **record: object) -> str:
    spec = AssemblySpec.read(SPEC)
    return store.register(spec, assess(spec), **record)[0].number  # type: ignore[arg-type]


@pytest.fixture
def machine(store: Store) -> dict[str, str]:
    own = {"customer": "Quarry North", "machine": "Loader 4"}
    return {
        "tag": made(store, **own, position="boom"),
        "sister": made(store, **own, position="bucket"),
        "withdrawn": made(store, **own, position="steering"),
        "elsewhere": made(store, customer="Quarry North", machine="Crusher"),
        "same name": made(store, customer="Pit South", machine="Loader 4"),
    }


def client_of(store: Store, who: str) -> TestClient:
    settings = Settings(
        base_url="https://tags.example.com", machine_hoses=who, public_requests_per_minute=10_000
    )  # type: ignore[arg-type]
    return TestClient(create_app(settings, store=store), base_url="https://tags.example.com")


def numbers_in(html: str, machine: dict[str, str]) -> set[str]:
    return {
        name for name, number in machine.items() if name != "tag" and tag_number.format(number) in text(html)
    }


def test_by_default_nobody_sees_them(store: Store, machine: dict[str, str]) -> None:
    client = client_of(store, "off")
    address = f"/machine/{machine['tag']}"
    for answer in (client.get(address), client.post(address, data={"pin": store.tag_pin(machine["tag"])})):
        assert answer.status_code == 404 and not numbers_in(answer.text, machine)
    assert "/machine/" not in client.get(f"/fitted/{machine['tag']}").text


def test_with_the_tags_own_pin_they_are_listed_with_what_stands_against_each(
    store: Store, machine: dict[str, str]
) -> None:
    store.withdraw("burst", tag=machine["withdrawn"])
    client, address = client_of(store, "pin"), f"/machine/{machine['tag']}"
    assert address in client.get(f"/fitted/{machine['tag']}").text
    assert not numbers_in(client.get(address).text, machine)
    wrong = client.post(address, data={"pin": ""})
    assert not numbers_in(wrong.text, machine), "no PIN was made yet: none fits"
    pin, other = store.tag_pin(machine["tag"]), store.tag_pin(machine["sister"])
    assert store.tag_pin(machine["tag"]) == pin and len(pin) == 6
    if other != pin:
        refused = client.post(address, data={"pin": other})
        assert refused.status_code == 422 and "The PIN is not that of this tag" in text(refused.text)
    right = client.post(address, data={"pin": f" {pin} "})
    assert numbers_in(right.text, machine) == {"sister", "withdrawn"}
    assert "steering" in right.text and "Withdrawn: do not use" in right.text
    assert "Quarry North" not in right.text


def test_a_pin_cannot_be_guessed(store: Store, machine: dict[str, str]) -> None:
    client, pin = client_of(store, "pin"), store.tag_pin(machine["tag"])
    wrong = [f"{(int(pin) + 1 + n) % 1_000_000:06}" for n in range(6)]
    statuses = [client.post(f"/machine/{machine['tag']}", data={"pin": one}).status_code for one in wrong]
    assert statuses == [422] * 5 + [429]
    late = client.post(f"/machine/{machine['tag']}", data={"pin": pin})
    assert late.status_code == 429 and not numbers_in(late.text, machine)


def test_where_the_shop_opens_them_a_number_is_enough(store: Store, machine: dict[str, str]) -> None:
    answer = client_of(store, "open").get(f"/machine/{machine['tag']}")
    assert numbers_in(answer.text, machine) == {"sister", "withdrawn"}
