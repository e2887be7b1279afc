"""Signing in, roles, and what a stranger or a foreign page cannot do."""

from __future__ import annotations

import json
import logging
import re
import time
from concurrent.futures import ThreadPoolExecutor
from datetime import UTC, datetime, timedelta
from html import unescape
from pathlib import Path

import httpx
import pyotp
import pytest
import zxingcpp
from argon2 import extract_parameters
from argon2.profiles import RFC_9106_LOW_MEMORY
from PIL import Image

from api.app import create_app
from api.settings import Settings, SettingsError
from api.web import codes, identity
from api.web.identity import check_password, hash_password
from tagger.store import Role, Store
from tests.bench.served import HOSE, PASSWORD, Bench, Served, serving
from tests.databases import fresh_sqlite
from tests.passwords import AS_INSTALLED, NOBODY_AS_INSTALLED, QUICK


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


def test_wrong_passwords_are_refused_and_slow_down_and_shut_nobody_out(
    stranger: httpx.Client, store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    _stop_the_clock(store, monkeypatch)
    wrong, right = ({"name": "builder", "password": word} for word in ("wrong", PASSWORD))
    for _ in range(5):
        answer = stranger.post("/bench/sign-in", data=wrong)
        assert answer.status_code == 403 and "do not match" in answer.text
    answer = stranger.post("/bench/sign-in", data=right)
    assert answer.status_code == 403 and "Try again in 1 s" in answer.text
    later = store.now() + timedelta(seconds=1.05)
    monkeypatch.setattr(store, "now", lambda: later)
    assert stranger.post("/bench/sign-in", data=right).status_code == 303


def test_wrong_passwords_sent_all_at_once_are_counted_too(
    served: Served, store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(identity, "_HASHER", AS_INSTALLED)  # as slow as in a shop: many are under way at once
    _stop_the_clock(store, monkeypatch)
    builder = store.person("builder")
    assert builder is not None
    store.change_person(builder.id, password_hash=hash_password(PASSWORD))

    def attempt(place: int) -> str:
        form = {"name": "builder", "password": f"wrong {place}"}
        return httpx.post(f"{served.url}/bench/sign-in", data=form, timeout=60).text

    with ThreadPoolExecutor(30) as pool:
        said = list(pool.map(attempt, range(30)))
    checked = sum("do not match" in page for page in said)
    assert checked == 5, "no time passes: none of the others has waited long enough"
    assert sum("too many failed attempts" in page for page in said) == 30 - checked


def test_the_owners_own_browser_gets_in_whatever_others_try(
    served: Served, store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    _stop_the_clock(store, monkeypatch)
    wrong, right = ({"name": "builder", "password": word} for word in ("wrong", PASSWORD))
    with _client(served) as owner, _client(served) as other:
        planted = {"Cookie": f"tagger_browser={'p' * 43}"}
        given = owner.post("/bench/sign-in", data=right, headers=planted)
        assert given.status_code == 303 and "pppp" not in given.headers["set-cookie"], (
            "a planted cookie is not kept"
        )
        for place in range(25):
            other.post("/bench/sign-in", data={**wrong, "name": f"nobody {place}"})
        for _ in range(5):
            other.post("/bench/sign-in", data=wrong)
        assert other.post("/bench/sign-in", data=right).status_code == 403
        assert owner.post("/bench/sign-in", data=right).status_code == 303
        assert owner.post("/bench/sign-in", data={**right, "name": "counter"}).status_code == 403, (
            "its own account"
        )

        for _ in range(5):
            owner.post("/bench/sign-in", data=wrong)
        slowed = owner.post("/bench/sign-in", data=right)
        assert slowed.status_code == 403 and "Try again in" in slowed.text, "it may not guess for ever either"
        builder = store.person("builder")
        assert builder is not None
        browser = owner.cookies["tagger_browser"]
        assert store.knows_browser(browser, builder.id)
        store.change_person(builder.id, password_hash=builder.password_hash)
        assert not store.knows_browser(browser, builder.id), "a new password: no browser is known"


def _stop_the_clock(store: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    """A slow machine takes longer over its tries; how many are let through is not to depend on that."""
    moment = store.now()
    monkeypatch.setattr(store, "now", lambda: moment)


def _client(served: Served) -> httpx.Client:
    return httpx.Client(base_url=served.url, verify=False, timeout=30)


def test_passwords_that_are_tried_first_are_refused(bench: Bench, store: Store) -> None:
    weak = ["password1234", "PassWord!!!!", "qwertyuiop12", "111111111111", "abcdefghijklm", "letmeinletmein",
            "ababababababab", "manager 2026", "ridgehose 17", "Ridge-Hose!!!", "short words"]  # fmt: skip
    for word in weak:
        answer = bench.submit("/bench/me", {"old": PASSWORD, "password": word})
        assert answer.status_code == 422, word
    assert "tried first" in bench.submit("/bench/me", {"old": PASSWORD, "password": weak[0]}).text
    assert "too long" in bench.submit("/bench/me", {"old": PASSWORD, "password": "ten words " * 13}).text
    for word in (
        "the crane swings left",
        "Läuft nie trocken",
        "fourteen wet hoses",
        "ten words " * 12,
        "🔧 🔩 oil on my shoes",
    ):
        hash_password(word, "manager", "Ridge Hose")
    assert (
        bench.submit("/bench/me", {"old": PASSWORD, "password": "the crane swings left"}).status_code == 200
    )
    assert check_password(store, "manager", "the crane swings left") is not None


def test_a_session_ends_when_nothing_is_asked_for(tmp_path: Path) -> None:
    moment = datetime(2026, 3, 2, tzinfo=UTC)
    with Store.open(fresh_sqlite(tmp_path), now=lambda: moment) as store:
        store.add_person("builder", QUICK.hash(PASSWORD), Role.BUILDER)
        with (
            serving(Settings(session_idle_minutes=30), store) as served,
            Bench(served.url, store, "builder") as bench,
        ):
            for _ in range(4):  # two hours of work
                moment += timedelta(minutes=29)
                assert bench.get("/bench/find", follow_redirects=False).status_code == 200
            for _ in range(4):  # a page that asks by itself is no work
                moment += timedelta(minutes=10)
                asked = bench.get("/bench/prints/7/state", follow_redirects=False).status_code
            assert asked == 303
            assert bench.get("/bench/find", follow_redirects=False).status_code == 303


def test_over_https_the_cookies_are_of_this_host_alone(store: Store) -> None:
    with (
        serving(Settings(base_url="https://tags.example.com"), store) as served,
        _client(served) as client,
    ):
        form = {"name": "builder", "password": PASSWORD}
        given = client.post("/bench/sign-in", data=form).headers.get_list("set-cookie")
        names = {line.partition("=")[0] for line in given}
        assert names == {"__Host-tagger_session", "__Host-tagger_browser"}
        for line in given:
            parts = {part.strip().lower() for part in line.split(";")[1:]}
            assert {"secure", "httponly", "path=/", "samesite=lax"} <= parts
            assert not any(part.startswith("domain") for part in parts)
        value = next(line for line in given if "session" in line).partition("=")[2].partition(";")[0]
        plain, host = ({"Cookie": f"{name}={value}"} for name in ("tagger_session", "__Host-tagger_session"))
        assert client.get("/bench/find", headers=host).status_code == 200
        assert client.get("/bench/find", headers=plain).status_code == 303


def test_a_manager_may_ask_for_a_phones_code_beside_the_password(
    served: Served, store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    with Bench(served.url, store, "manager") as bench, _client(served) as thief:
        _stop_the_clock(store, monkeypatch)
        page = bench.get("/bench/me/codes").text
        secret = _secret(page)
        totp = pyotp.TOTP(secret)
        drawn = re.search(r"<svg.*?</svg>", page, re.DOTALL)
        assert drawn is not None and _read(drawn[0]).startswith(
            f"otpauth://totp/Ridge%20Hose:manager?secret={secret}"
        )
        form = {"secret": secret, "old": PASSWORD, "phone_code": totp.now()}
        for wrong in ({"old": "wrong"}, {"phone_code": "12"}, {"secret": "A"}):
            assert bench.submit("/bench/me/codes", {**form, **wrong}).status_code == 422
        now = totp.now()
        on = bench.submit("/bench/me/codes", {**form, "phone_code": now})
        recovery = re.findall(r"<code>((?:\w{4}-){5}\w{4})</code>", on.text)
        assert len(set(recovery)) == 10

        password = {"name": "manager", "password": PASSWORD}
        asked = thief.post("/bench/sign-in", data=password)
        assert asked.headers["location"].startswith("/bench/sign-in/code")
        assert thief.get("/bench/find").status_code == 303, "the password alone opens nothing"
        assert thief.get("/bench/sign-in/code").status_code == 200
        used = thief.post("/bench/sign-in/code", data={"phone_code": now})
        assert used.status_code == 403, "a code is good once, and that one was"
        for typed in ("", "000 000 000", "x" * 3000, recovery[0][:-1]):
            assert thief.post("/bench/sign-in/code", data={"phone_code": typed}).status_code == 403
        late = thief.post("/bench/sign-in/code", data={"phone_code": recovery[0]})
        assert late.status_code == 403 and "Try again in" in late.text, "guesses slow down"
        owner = {
            "Cookie": f"tagger_session={thief.cookies['tagger_session']}; tagger_browser={bench.cookies['tagger_browser']}"
        }
        guess = httpx.post(f"{served.url}/bench/sign-in/code", data={"phone_code": "000000"}, headers=owner)
        assert "The code is not valid" in guess.text, "the owner's browser does not wait for others' guesses"
        later = store.now() + timedelta(seconds=1.05)
        monkeypatch.setattr(store, "now", lambda: later)
        right = thief.post("/bench/sign-in/code", data={"phone_code": f" {recovery[0].upper()}"})
        assert right.status_code == 303 and thief.get("/bench/find").status_code == 200
        manager = store.person("manager")
        assert manager is not None and manager.asks_code
        assert not codes.accepted(store, manager, recovery[0]), "used up"
        step = codes.step_of(secret, totp.at(int(time.time()) + 30))
        code = totp.at(int(time.time()) + 30)
        tried = [codes.accepted(store, manager, code, address="192.0.2.7") for _ in range(2)]
        assert tried == ["code", None] and step
        told = store.account_notes(manager.id)[0]
        assert (told.what, told.address) == ("repeated-code", "192.0.2.7"), "the owner learns of it"

        assert bench.submit("/bench/me/codes/off", {"old": "wrong"}).status_code == 422
        bench.submit(f"/bench/shop/people/{manager.id}", {"do": "codes"})
        assert (
            thief.get("/bench/find").status_code
            == 303
            == bench.get("/bench/find", follow_redirects=False).status_code
        )
        assert _client(served).post("/bench/sign-in", data=password).headers["location"] == "/bench"


def _secret(page: str) -> str:
    found = re.search(r'name="secret" value="(\w+)"', page)
    assert found is not None
    return found[1]


def _read(svg: str) -> str:
    """The text of a symbol drawn as squares of one unit, read by an independent reader."""
    side = int(re.search(r'viewBox="0 0 (\d+)', svg)[1])  # type: ignore[index]
    picture = Image.new("L", (side, side), 255)
    for x, y in re.findall(r"M(\d+) (\d+)h1v1h-1z", svg):
        picture.putpixel((int(x), int(y)), 0)
    [read] = zxingcpp.read_barcodes(picture.resize((side * 4, side * 4), Image.Resampling.NEAREST))
    return str(read.text)


def test_who_signs_in_and_who_changes_roles_is_logged_without_secrets(
    served: Served, store: Store, caplog: pytest.LogCaptureFixture
) -> None:
    caplog.set_level(logging.INFO, "tagger.security")
    typed = "my secret pass phrase typed as a name"
    with _client(served) as stranger:
        for name in (typed, "BUILDER"):
            stranger.post("/bench/sign-in", data={"name": name, "password": "wrong secret"})
    with Bench(served.url, store, "manager") as bench:
        builder = store.person("builder")
        assert builder is not None
        bench.submit(f"/bench/shop/people/{builder.id}", {"do": "role", "role": "counter"})
        bench.submit(
            "/bench/shop/people", {"name": "Cora", "role": "builder", "password": "the crane swings left"}
        )
        shown = bench.submit("/bench/shop/tokens", {"name": "scanner", "role": "manager"}).text
        token = re.search(r"tag_[\w-]{20,}", shown)
        assert token is not None
        with _client(served) as api:
            api.headers["Authorization"] = f"Bearer {token[0]}"
            api.patch(
                f"/api/v1/people/{builder.id}", json={"role": "builder", "password": "left swings the crane"}
            )
        bench.submit("/bench/sign-out")
    lines = [json.loads(record.message) for record in caplog.records if record.name == "tagger.security"]
    assert [line["event"] for line in lines] == [
        "sign-in-failed", "sign-in-failed", "signed-in", "person-changed", "person-added", "token-made",
        "person-changed", "signed-out",
    ]  # fmt: skip
    assert all(line["from"] == "127.0.0.1" and line["at"] for line in lines)
    assert "person" not in lines[0] and lines[1]["person"] == "builder"
    assert lines[3] | {"person": "builder", "by": "manager", "change": "role counter"} == lines[3]
    assert lines[6] | {"person": "builder", "by": "scanner", "change": "role builder password"} == lines[6]
    told = caplog.text
    for secret in (typed, "wrong secret", PASSWORD, "crane", token[0], bench.csrf):
        assert secret not in told


def test_what_is_refused_to_a_person_or_a_device_is_logged(
    served: Served, store: Store, caplog: pytest.LogCaptureFixture
) -> None:
    caplog.set_level(logging.INFO, "tagger.security")
    _, secret = store.make_token("scales", Role.DEVICE)
    with Bench(served.url, store, "builder") as bench, _client(served) as api:
        bench.get("/bench/shop")
        bench.post("/bench/me", data={"csrf": "guessed"})
        for shown in (secret, "tag_invented"):
            api.get("/api/v1/people", headers={"Authorization": f"Bearer {shown}"})
        api.get("/api/v1/people")
    lines = [json.loads(record.message) for record in caplog.records if record.name == "tagger.security"]
    told = [(line["event"], line.get("path"), line.get("person") or line.get("device")) for line in lines]
    assert told[1:] == [
        ("not-allowed", "/bench/shop", "builder"), ("form-refused", "/bench/me", "builder"),
        ("not-allowed", "/api/v1/people", "scales"), ("token-unknown", "/api/v1/people", None),
    ]  # fmt: skip
    assert not any(hidden in caplog.text for hidden in (secret, "tag_invented", "guessed"))


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
    for wrong in ("wrong", "", "\u00e9", "\U0001f600"):
        assert bench.post("/bench/build", data={**HOSE, "csrf": wrong}).status_code == 403
    assert bench.post("/bench/build", data=HOSE, headers={"x-csrf": b"\xe9\xff"}).status_code == 403  # type: ignore[dict-item]
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


def test_somebody_sees_where_they_are_signed_in_and_ends_the_others(served: Served, store: Store) -> None:
    with Bench(served.url, store, "builder") as bench, _client(served) as phone, _client(served) as lost:
        for client in (phone, lost):
            client.headers["User-Agent"] = "Mozilla/5.0 (a telephone) Mobile"
            client.post("/bench/sign-in", data={"name": "builder", "password": PASSWORD})
        page = bench.get("/bench/me").text
        assert (
            page.count("since ") >= 3
            and page.count("Phone, 127.0.0.1") == 2
            and page.count("This browser") == 1
        )
        theirs = re.findall(r'name="session" value="(\w{64})"', page)
        assert len(theirs) == 2 and "Signed in with a new browser." in page
        bench.submit("/bench/me/sessions", {"session": theirs[0]})
        assert sorted(client.get("/bench/find").status_code for client in (phone, lost)) == [200, 303]
        bench.submit("/bench/me/sessions", {})
        assert [client.get("/bench/find").status_code for client in (phone, lost, bench)] == [303, 303, 200]


def test_a_password_that_a_manager_gave_is_told_to_its_owner_on_every_page_until_seen(
    served: Served, store: Store
) -> None:
    told, new = "Something was changed in how you sign in", "left swings the crane"
    with Bench(served.url, store, "manager") as bench, _client(served) as owner:
        person = store.person("builder")
        assert person is not None
        bench.submit(f"/bench/shop/people/{person.id}", {"do": "password", "password": new})
        owner.post("/bench/sign-in", data={"name": "builder", "password": new})
        assert told in owner.get("/bench/find").text and told not in bench.get("/bench/find").text
        page = owner.get("/bench/me").text
        assert "The password was changed. By: manager." in unescape(page)
        csrf = re.search(r'data-csrf="([^"]+)"', page)
        assert csrf is not None
        owner.post("/bench/me/told", data={"csrf": csrf[1]})
        assert told not in owner.get("/bench/find").text
        assert "The password was changed. By: manager." in owner.get("/bench/me").text, "it stays in the list"


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
