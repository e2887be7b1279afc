"""People and devices by program: only a manager's token, nothing above its own role, no secret told twice."""

from __future__ import annotations

from collections.abc import Callable

import httpx
import pytest

from api.rest.shared import EXAMPLE_SPEC
from api.web.identity import check_password
from tagger.store import Role, Store

BELA = {"name": "Bela", "role": "builder", "password": "a long pass phrase"}


@pytest.mark.parametrize("role", [Role.BUILDER, Role.COUNTER])
@pytest.mark.parametrize(
    ("method", "path", "body"),
    [
        ("GET", "/people", None),
        ("GET", "/people/1", None),
        ("POST", "/people", BELA),
        ("PATCH", "/people/1", {"role": "manager"}),
        ("POST", "/people/1/sign-out", None),
        ("GET", "/tokens", None),
        ("POST", "/tokens", {"name": "x", "role": "builder"}),
        ("DELETE", "/tokens/1", None),
    ],
)
def test_only_a_managers_token_may(
    device: Callable[[Role], httpx.Client], store: Store, role: Role, method: str, path: str, body: object
) -> None:
    store.add_person("Anna", "not a hash", Role.MANAGER)
    assert device(role).request(method, path, json=body).status_code == 403
    assert [p.role for p in store.people()] == [Role.MANAGER]
    assert [t.revoked_at for t in store.tokens()] == [None]


def test_a_scanners_or_printers_token_reads_no_customer_and_changes_nothing_but_prints(
    api: httpx.Client, device: Callable[[Role], httpx.Client], store: Store
) -> None:
    body = {
        "spec": {**EXAMPLE_SPEC, "note": "for Quarry North"},
        "customer": "Quarry North",
        "machine": "Loader 7",
    }
    [number] = api.post("/assemblies", json=body).json()["numbers"]
    store.withdraw("blisters", hose_lot="H-2291", by="Anna Quarry")
    scanner, known = device(Role.DEVICE), api.get(f"/assemblies/{number}").json()
    assert known["customer"] == "Quarry North"
    found = scanner.get("/scans", params={"text": known["link"]})
    assert found.status_code == 200 and found.json()["record"]["withdrawals"][0]["reason"] == "blisters"
    assert found.json()["record"]["working_pressure_bar"] == known["working_pressure_bar"]
    for hidden in ("Quarry", "Loader 7"):
        assert hidden not in found.text
    for path in (f"/assemblies/{number}", "/assemblies", "/assemblies.csv", "/machine", "/orders", "/recipes",
                 f"/assemblies/{number}/history", "/withdrawals", "/customer"):  # fmt: skip
        assert scanner.get(path).status_code == 403, path
    store.lift(store.withdrawals()[0].id, "wrong lot", by="Anna")
    assert scanner.post("/prints", json={"numbers": [number], "template": "traveller_a5"}).status_code == 403
    assert scanner.post("/prints", json={"numbers": [number]}).headers["content-type"] == "application/pdf"


def test_somebody_is_added_changed_retired_and_brought_back(api: httpx.Client, store: Store) -> None:
    made = api.post("/people", json=BELA)
    assert made.status_code == 201
    assert made.json() == {"id": 1, "name": "Bela", "role": "builder", "active": True}
    assert check_password(store, "bela", BELA["password"]) is not None
    person = f"/people/{made.json()['id']}"
    cookie = store.sign_in(1, 1)
    assert api.patch(person, json={"role": "counter"}).json()["role"] == "counter"
    assert store.signed_in(cookie) is None, "a changed role ends the sessions that had the old one"
    api.patch(person, json={"password": " typed with blanks "})
    assert check_password(store, "Bela", " typed with blanks ") is not None
    assert check_password(store, "Bela", "typed with blanks") is None, (
        "signing in takes no blanks away either"
    )
    api.patch(person, json={"password": "forgotten and new"})
    assert check_password(store, "Bela", BELA["password"]) is None
    assert check_password(store, "Bela", "forgotten and new") is not None
    assert api.patch(person, json={"active": False}).json()["active"] is False
    assert check_password(store, "Bela", "forgotten and new") is None
    assert (
        api.patch(person, json={"active": True}).json()
        == api.get(person).json()
        == api.get("/people").json()[0]
    )
    cookie = store.sign_in(1, 1)
    assert api.post(f"{person}/sign-out").status_code == 200
    assert store.signed_in(cookie) is None


def test_what_is_wrong_with_a_person_is_named_without_the_password(api: httpx.Client) -> None:
    api.post("/people", json=BELA)
    for body, field in (
        ({**BELA, "name": "bela"}, "name"),
        ({**BELA, "name": "Cara", "password": "short"}, "password"),
        ({**BELA, "name": "Cara", "password": "p" * 1001}, "password"),
        ({**BELA, "name": "Cara", "role": "owner"}, "role"),
        ({"name": "Cara", "role": "builder"}, "password"),
    ):
        answer = api.post("/people", json=body)
        assert (answer.status_code, answer.headers["content-type"]) == (422, "application/problem+json")
        [problem] = answer.json()["problems"]
        assert (problem["field"], bool(problem["why"])) == (field, True)
        assert field != "password" or problem["value"] is None
    assert api.patch("/people/1", json={}).status_code == 422
    assert api.patch("/people/9", json={"active": False}).status_code == 404
    assert api.post("/people/9/sign-out").status_code == 404
    assert "hash" not in api.get("/people").text


def test_the_last_manager_stays_one(api: httpx.Client) -> None:
    api.post("/people", json={**BELA, "role": "manager"})
    assert api.patch("/people/1", json={"role": "builder"}).status_code == 422
    assert api.patch("/people/1", json={"active": False}).status_code == 422
    assert api.get("/people/1").json()["role"] == "manager"


def test_a_devices_token_works_until_it_is_revoked(api: httpx.Client, url: str) -> None:
    made = api.post("/tokens", json={"name": "scanner 2", "role": "builder"})
    assert made.status_code == 201
    secret, device = made.json()["token"], made.json()["device"]
    assert (device["role"], device["created_by"], device["revoked_at"]) == ("builder", "a manager", None)
    assert secret not in api.get("/tokens").text
    headers = {"Authorization": f"Bearer {secret}"}
    assert httpx.get(f"{url}/api/v1/recipes", headers=headers).status_code == 200
    assert httpx.get(f"{url}/api/v1/people", headers=headers).status_code == 403
    revoked = api.delete(f"/tokens/{device['id']}").json()
    assert revoked["revoked_at"] and api.get("/tokens").json()[-1] == revoked
    assert httpx.get(f"{url}/api/v1/recipes", headers=headers).status_code == 401
    assert api.delete("/tokens/99").status_code == 404


def test_each_token_is_another_and_only_its_key_gives_it_again(api: httpx.Client, store: Store) -> None:
    body = {"name": "scanner", "role": "builder"}
    kept = [
        api.post("/tokens", json=body, headers={"Idempotency-Key": key}).json() for key in ("a", "a", "b")
    ]
    plain = [api.post("/tokens", json=body).json() for _ in range(2)]
    assert kept[0] == kept[1]
    assert len({made["token"] for made in (*kept, *plain)}) == 4
    assert len(store.tokens()) == 5, "the asker's own, and four"
