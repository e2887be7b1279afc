"""Signing in, roles, and what a stranger or a foreign page cannot do."""

from __future__ import annotations

import re
import time
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import httpx
import pytest
from argon2 import extract_parameters
from argon2.profiles import RFC_9106_LOW_MEMORY

from api.app import create_app
from api.settings import Settings, SettingsError
from api.web import identity
from api.web.identity import check_password, hash_password
from tagger.store import Role, Store
from tests.bench.served import HOSE, PASSWORD, Bench, Served, serving
from tests.passwords import AS_INSTALLED, NOBODY_AS_INSTALLED


def test_a_stranger_is_sent_to_sign_in_and_back(stranger: httpx.Client) -> None:
    answer = stranger.get("/bench/build?recipe=x")
    assert answer.status_code == 303
    assert answer.headers["location"] == "/bench/sign-in?next=%2Fbench%2Fbuild%3Frecipe%3Dx"
    form = {"name": "Builder", "password": PASSWORD, "next": "/bench/orders"}
    signed_in = stranger.post("/bench/sign-in", data=form)
    assert signed_in.headers["location"] == "/bench/orders"
    cookie = signed_in.headers["set-cookie"].lower()
    assert "httponly" in cookie and "samesite=lax" in cookie


@pytest.mark.parametrize(
    "elsewhere", ["https://evil.example", "//evil.example", "/bench//evil.example", "/\\evil"]
)
def test_signing_in_never_leads_elsewhere(stranger: httpx.Client, elsewhere: str) -> None:
    form = {"name": "builder", "password": PASSWORD, "next": elsewhere}
    assert stranger.post("/bench/sign-in", data=form).headers["location"] == "/bench"


def test_wrong_passwords_are_refused_and_slow_down_and_shut_nobody_out(stranger: httpx.Client) -> None:
    wrong, right = ({"name": "builder", "password": word} for word in ("wrong", PASSWORD))
    for _ in range(5):
        answer = stranger.post("/bench/sign-in", data=wrong)
        assert answer.status_code == 403 and "do not match" in answer.text
    answer = stranger.post("/bench/sign-in", data=right)
    assert answer.status_code == 403 and "Try again in 1 s" in answer.text
    time.sleep(1.05)
    assert stranger.post("/bench/sign-in", data=right).status_code == 303


def test_wrong_passwords_sent_all_at_once_are_counted_too(
    served: Served, store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(identity, "_HASHER", AS_INSTALLED)  # as slow as in a shop: many are under way at once
    builder = store.person("builder")
    assert builder is not None
    store.change_person(builder.id, password_hash=hash_password(PASSWORD))

    def attempt(place: int) -> str:
        form = {"name": "builder", "password": f"wrong {place}"}
        return httpx.post(f"{served.url}/bench/sign-in", data=form, timeout=60).text

    with ThreadPoolExecutor(30) as pool:
        said = list(pool.map(attempt, range(30)))
    checked = sum("do not match" in page for page in said)
    assert 5 <= checked <= 8, "five, and one more for each second or two that it took"
    assert sum("too many failed attempts" in page for page in said) == 30 - checked


def test_signing_in_right_often_shuts_no_door(stranger: httpx.Client) -> None:
    form = {"name": "builder", "password": PASSWORD}
    for _ in range(12):
        assert stranger.post("/bench/sign-in", data=form).status_code == 303


def test_passwords_are_hashed_as_rfc_9106_advises_and_a_weaker_hash_is_renewed(
    store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    weak = store.person("builder")
    assert weak is not None
    monkeypatch.setattr(identity, "_HASHER", AS_INSTALLED)
    signed_in = check_password(store, "builder", PASSWORD)
    assert signed_in is not None and signed_in.password_hash != weak.password_hash
    for hashed in (hash_password(PASSWORD), signed_in.password_hash, NOBODY_AS_INSTALLED):
        assert extract_parameters(hashed) == RFC_9106_LOW_MEMORY
    assert check_password(store, "builder", PASSWORD) == signed_in, "renewed once, and still its password"
    assert check_password(store, "builder", PASSWORD + " ") is None


def test_a_form_from_another_site_is_refused(stranger: httpx.Client, bench: Bench, store: Store) -> None:
    form = {"name": "builder", "password": PASSWORD}
    for headers in ({"origin": "https://evil.example"}, {"sec-fetch-site": "cross-site"}):
        assert stranger.post("/bench/sign-in", data=form, headers=headers).status_code == 403
    assert bench.post("/bench/build", data=HOSE).status_code == 403
    assert bench.post("/bench/build", data={**HOSE, "csrf": "wrong"}).status_code == 403
    assert store.count() == 0


def test_roles_hold(served: Served, store: Store) -> None:
    order = store.request_order(spec=_spec(store, served), quantity=1, contact={"phone": "1"})
    with Bench(served.url, store, "builder") as builder, Bench(served.url, store, "counter") as counter:
        assert builder.submit(f"/bench/orders/{order.reference}", {"state": "accepted"}).status_code == 403
        assert counter.submit(f"/bench/orders/{order.reference}", {"state": "accepted"}).status_code == 200
        assert store.order(order.reference).state == "accepted"


def _spec(store: Store, served: Served) -> object:
    with Bench(served.url, store, "builder") as builder:
        builder.submit("/bench/build", HOSE)
    return store.find().assemblies[0].spec


def test_signing_out_ends_the_session_on_the_server(bench: Bench, store: Store) -> None:
    cookie = bench.cookies["tagger_session"]
    bench.submit("/bench/sign-out")
    assert store.signed_in(cookie) is None


def test_the_first_start_makes_one_manager_by_the_code_on_the_console(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    with Store.open(f"sqlite:///{tmp_path / 'new.sqlite3'}") as store, serving(Settings(), store) as served:
        code = re.search(r"with the code (\w+)", capsys.readouterr().out)
        assert code is not None
        with httpx.Client(base_url=served.url) as client:
            form = {"code": "0000000000", "name": "Anna", "password": PASSWORD}
            assert client.post("/bench/first", data=form).status_code == 403
            assert (
                client.post("/bench/first", data={**form, "code": code[1], "password": "short"}).status_code
                == 403
            )
            assert client.post("/bench/first", data={**form, "code": code[1]}).status_code == 303
            assert client.get("/bench/build").status_code == 200
        assert [(p.name, p.role) for p in store.people()] == [("Anna", Role.MANAGER)]
        create_app(Settings(), store=store)
        assert capsys.readouterr().out == ""


def test_the_demonstration_says_so_on_every_page(tmp_path: Path) -> None:
    with (
        Store.open(f"sqlite:///{tmp_path / 'demo.sqlite3'}") as store,
        serving(Settings(demo=True), store) as served,
        httpx.Client(base_url=served.url) as client,
    ):
        assert "demonstration with invented data" in client.get("/bench/sign-in").text
        client.post("/bench/sign-in", data={"name": "demo", "password": "demonstration"})
        assert "demonstration with invented data" in client.get("/bench/build").text


@pytest.mark.parametrize(
    "settings",
    [
        {"base_url": "https://tags.example.com"},
        {"base_url": "http://192.0.2.7:8000"},
        {"base_url": "http://127.0.0.1.example.com"},
        {"host": "0.0.0.0"},
    ],
)
def test_a_demonstration_that_others_can_reach_does_not_start(
    tmp_path: Path, settings: dict[str, str]
) -> None:
    with Store.open(f"sqlite:///{tmp_path / 'demo.sqlite3'}") as store:
        with pytest.raises(SettingsError, match="everybody knows"):
            create_app(Settings(demo=True, **settings), store=store)
        assert store.people() == []
        create_app(Settings(demo=True, host="::1", base_url="http://localhost:8000"), store=store)


def test_without_the_demonstration_its_sign_in_ends(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    with Store.open(f"sqlite:///{tmp_path / 'demo.sqlite3'}") as store:
        create_app(Settings(demo=True), store=store)
        with pytest.raises(SettingsError, match="only manager"):
            create_app(Settings(), store=store)
        store.add_person("Anna", hash_password("a long passphrase"), Role.MANAGER)
        create_app(Settings(), store=store)
        assert 'sign-in "demo"' in capsys.readouterr().out
        assert {p.name: p.active for p in store.people()} == {"Anna": True, "demo": False}
        assert check_password(store, "demo", "demonstration") is None


def test_pages_carry_their_guards(bench: Bench) -> None:
    headers = bench.get("/bench/build").headers
    assert "script-src 'self'" in headers["content-security-policy"]
    assert "unsafe-inline" not in headers["content-security-policy"]
    assert headers["x-content-type-options"] == "nosniff"
    assert headers["cache-control"] == "no-store"


def test_only_the_right_address_of_a_file_is_kept_for_ever(bench: Bench) -> None:
    page = bench.get("/bench/build").text
    found = re.search(r"/static/bench\.css\?v=\w+", page)
    assert found is not None
    assert "immutable" in bench.get(found[0]).headers["cache-control"]
    assert "immutable" not in bench.get("/static/bench.css?v=other").headers["cache-control"]
