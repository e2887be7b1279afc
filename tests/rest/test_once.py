"""Idempotency-Key: on both databases, for every POST that writes, in threads at once and after a kill."""

from __future__ import annotations

import signal
import textwrap
import threading
import time
from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from datetime import date
from pathlib import Path
from typing import Any

import httpx
import pytest
from sqlalchemy import text

from api.rest.shared import EXAMPLE_SPEC
from api.settings import Settings
from tagger.store import Kind, Role, Store, backup
from tests import processes
from tests.bench.served import serving
from tests.databases import postgresql_server, postgresql_template, postgresql_url, sqlite_url
from tests.ports import free_port
from tests.rest.examples import ASKED_FOR, CRIMP, CRIMPS, FITTINGS, HOSES, LIST
from tests.volume import volume

__all__ = ["postgresql_server", "postgresql_template", "postgresql_url", "sqlite_url"]

BODY = {"spec": EXAMPLE_SPEC, "customer": "Quarry North", "machine": "Loader 4"}
TEST = {
    "pressure_bar": 345, "hold_s": 60, "medium": "water", "passed": False, "tester": "Bela",
    "rating_bar": 172, "rating_source": "data sheet 9",
}  # fmt: skip
CONTACT = {"phone": "555 0100"}
FILE = {"file": ("list.csv", LIST.encode(), "text/csv")}
OTHER_FILE = {"file": ("list.csv", LIST.replace("1250", "1300").encode(), "text/csv")}
WRITES_NOTHING = {
    "/hose-by-layers",
    "/identify",
    "/lay-line",
    "/check",
    "/check/tag.{form}",
    "/check/fitters-card.pdf",
    "/compare",
    "/read",
    "/read/photo",
    "/lists/dry-run",
}


@pytest.fixture(params=["sqlite", "postgresql"])
def store(request: pytest.FixtureRequest) -> Iterator[Store]:
    with Store.open(request.getfixturevalue(f"{request.param}_url")) as opened:
        yield opened


def _rated(bar: float) -> dict[str, Any]:
    """What keeps the manufacturer's rating of an end."""
    end = {**ASKED_FOR["end_a"], "rating": {**ASKED_FOR["end_a"]["rating"], "value_bar": bar}}
    return {"spec": {**ASKED_FOR, "end_a": end}}


# path: (what is sent, what else might be sent)
POSTS: dict[str, tuple[dict[str, Any], dict[str, Any]]] = {
    "/assemblies": ({"json": BODY}, {"json": {**BODY, "count": 2}}),
    "/runs": ({"json": {"rows": [BODY, BODY]}}, {"json": {"rows": [BODY]}}),
    "/crimp-diameters/import": (
        {"files": {"file": ("crimps.csv", CRIMPS.encode(), "text/csv")}},
        {"files": {"file": ("crimps.csv", CRIMPS.replace("31,0.2", "32,0.2").encode(), "text/csv")}},
    ),
    "/fittings/import": (
        {"files": {"file": ("fittings.csv", FITTINGS.encode(), "text/csv")}},
        {"files": {"file": ("fittings.csv", FITTINGS.replace("48.5", "49").encode(), "text/csv")}},
    ),
    "/lists/run": ({"files": FILE}, {"files": OTHER_FILE}),
    "/assemblies/{number}/void": ({"json": {"reason": "twice"}}, {"json": {"reason": "a slip"}}),
    "/assemblies/{number}/corrections": (
        {"json": {"reason": "wrong yard", "customer": "Harbour"}},
        {"json": {"reason": "wrong yard", "customer": "Quarry South"}},
    ),
    "/assemblies/{number}/history": ({"json": {"kind": "fitted"}}, {"json": {"kind": "inspected"}}),
    "/assemblies/{number}/proof-tests": ({"json": TEST}, {"json": {**TEST, "hold_s": 61}}),
    "/assemblies/{number}/proof-allowances": (
        {"json": {"allowed_by": "A", "allowed_on": "2026-01-05", "document": "letter 12"}},
        {"json": {"allowed_by": "A", "allowed_on": "2026-01-05", "document": "letter 13"}},
    ),
    "/assemblies/{number}/crimps": (
        {"json": {"crimps": [{"end": "a", "measured_mm": 31.1, "shell": "F-12"}]}},
        {"json": {"crimps": [{"end": "b", "measured_mm": 31.1, "shell": "F-12"}]}},
    ),
    "/flushings": (
        {"json": {"numbers": ["{number}"], "method": "filtered oil", "flushed_by": "Bela"}},
        {"json": {"numbers": ["{number}"], "method": "dry air", "flushed_by": "Bela"}},
    ),
    "/hoses/import": (
        {"files": {"file": ("hoses.csv", HOSES.encode(), "text/csv")}},
        {"files": {"file": ("hoses.csv", HOSES.replace("270", "260").encode(), "text/csv")}},
    ),
    "/proof-tests": (
        {"json": {"numbers": ["{number}"], "test": TEST}},
        {"json": {"numbers": ["{number}"], "test": {**TEST, "hold_s": 61}}},
    ),
    "/crimps": (
        {"json": {"crimps": [{"number": "{number}", "end": "a", "measured_mm": 31.1, "shell": "F-12"}]}},
        {"json": {"crimps": [{"number": "{number}", "end": "b", "measured_mm": 31.1, "shell": "F-12"}]}},
    ),
    "/orders/{reference}/erase-contact": ({}, {"json": {}}),
    "/fitted-reports/{report}/agree": ({}, {"json": {}}),
    "/fitted-reports/{report}/refuse": ({"json": {"reason": "a copy"}}, {"json": {"reason": "a slip"}}),
    "/fitted-reports/{report}/erase": ({}, {"json": {}}),
    "/retention": ({}, {"json": {}}),
    "/prints": ({"json": {"numbers": ["{number}"]}}, {"json": {"numbers": ["{number}"], "reason": "lost"}}),
    "/orders": (
        {"json": {"number": "{number}", "contact": CONTACT}},
        {"json": {"number": "{number}", "quantity": 2, "contact": CONTACT}},
    ),
    "/orders/{reference}/steps": ({"json": {"state": "accepted"}}, {"json": {"state": "declined"}}),
    "/machine/order": (
        {"json": {"machine": "Loader 4", "customer": "Quarry North", "contact": CONTACT}},
        {"json": {"machine": "Loader 4", "customer": "Quarry North", "contact": {"phone": "2"}}},
    ),
    "/withdrawals": (
        {"json": {"reason": "blisters", "fitting_lot": "F-9"}},
        {"json": {"reason": "blisters", "fitting_lot": "F-10"}},
    ),
    "/withdrawals/{withdrawal}/lift": ({"json": {"reason": "tested"}}, {"json": {"reason": "tested again"}}),
    "/shop-values": ({"json": _rated(190)}, {"json": _rated(185)}),
    "/shop-values/{value}/withdraw": ({"json": {"reason": "data sheet 10"}}, {"json": {"reason": "a slip"}}),
    "/people": (
        {"json": {"name": "Bela", "role": "builder", "password": "a long pass phrase"}},
        {"json": {"name": "Bela", "role": "builder", "password": "another pass phrase"}},
    ),
    "/people/{person}/sign-out": ({}, {"json": {}}),
    "/tokens": ({"json": {"name": "scanner", "role": "builder"}}, {"json": {"name": "x", "role": "builder"}}),
}


@pytest.fixture
def names(store: Store, api: httpx.Client) -> dict[str, str]:
    """Something of each kind, for the paths and bodies."""
    number = api.post("/assemblies", json=BODY).json()["numbers"][0]
    api.put("/crimp-diameters", json=CRIMP)
    held = api.post("/assemblies", json=BODY).json()["numbers"][0]
    api.post(
        f"/assemblies/{held}/proof-tests",
        json={**TEST, "pressure_bar": 500, "passed": True, "confirmed": True},
    )
    [kept] = api.post("/shop-values", json=_rated(200)).json()
    return {
        "number": number,
        "held": held,
        "value": str(kept["id"]),
        "reference": api.post("/orders", json={"number": number, "contact": CONTACT}).json()["reference"],
        "withdrawal": str(store.withdraw("blisters", hose_lot="H-1").id),
        "report": str(store.report_fitted(number, fitted_on=date(2026, 3, 4), fitted_by="Bela").id),
        "person": str(store.add_person("Anna", "not a hash", Role.MANAGER).id),
    }


def _named(value: Any, names: dict[str, str]) -> Any:
    if isinstance(value, str):
        return value.format(**names) if value.startswith(("{", "/")) else value
    if isinstance(value, list):
        return [_named(item, names) for item in value]
    return {k: _named(v, names) for k, v in value.items()} if isinstance(value, dict) else value


def _rows(store: Store) -> str:
    """One digest of all that a backup would keep."""
    with store.reading() as session:
        return backup.digest_rows(session.connection()).digest


def test_every_post_that_writes_takes_a_key(url: str) -> None:
    described = httpx.get(f"{url}/api/v1/openapi.json", timeout=30).json()["paths"]
    posts = {
        path.removeprefix("/api/v1"): verbs["post"] for path, verbs in described.items() if "post" in verbs
    }
    takes = {
        path for path, about in posts.items()
        if any(p["name"] == "Idempotency-Key" for p in about.get("parameters", ()))
    }  # fmt: skip
    assert takes == POSTS.keys()
    assert posts.keys() - takes == WRITES_NOTHING
    assert all("409" in posts[path]["responses"] for path in takes)


@pytest.mark.parametrize("path", POSTS)
def test_the_same_post_with_its_key_answers_alike_and_writes_nothing_more(
    api: httpx.Client, store: Store, names: dict[str, str], path: str
) -> None:
    if path.endswith("/proof-allowances"):  # only what a test loaded too high is allowed
        names = {**names, "number": names["held"]}
    if path.endswith("/void"):  # only what nothing came of
        names = {**names, "number": api.post("/assemblies", json=BODY).json()["numbers"][0]}
    same, other = (_named(sent, names) for sent in POSTS[path])
    address, key = _named(path, names), {"Idempotency-Key": "one"}
    before = _rows(store)
    first = api.post(address, headers=key, **same)
    assert first.is_success, first.text
    written = _rows(store)
    assert written != before
    again = api.post(address, headers=key, **same)
    assert again.status_code == first.status_code
    if path == "/prints":
        assert again.content.startswith(b"%PDF")  # made again, with its own date in it
        assert store.times_printed(names["number"]) == 1
    else:
        assert again.json() == first.json()
    refused = api.post(address, headers=key, **other)
    assert (refused.status_code, refused.headers["content-type"]) == (409, "application/problem+json")
    assert refused.json()["problems"][0]["why"].startswith("This key was already used")
    assert _rows(store) == written


def test_a_request_that_was_refused_may_be_mended_with_its_key(api: httpx.Client, store: Store) -> None:
    key = {"Idempotency-Key": "one"}
    assert api.post("/assemblies", json={**BODY, "count": 0}, headers=key).status_code == 422
    assert (
        api.post("/assemblies", json={"spec": {**EXAMPLE_SPEC, "length_mm": 3}}, headers=key).status_code
        == 422
    )
    assert api.post("/assemblies", json=BODY, headers=key).status_code == 201
    assert store.count() == 1


@pytest.mark.parametrize("body", [b"", b"{", b"\xff\xfe", b"[]", b'"text"', b"null"])
@pytest.mark.parametrize("media", ["application/json", "text/plain", "multipart/form-data"])
def test_a_body_that_cannot_be_read_is_refused_in_words(api: httpx.Client, body: bytes, media: str) -> None:
    headers = {"Idempotency-Key": "one", "Content-Type": media}
    answer = api.post("/assemblies", content=body, headers=headers)
    assert answer.status_code in (400, 422)
    assert answer.headers["content-type"] == "application/problem+json"


def test_a_database_that_fails_is_told_in_the_same_form(api: httpx.Client, store: Store, url: str) -> None:
    assert api.put("/recipes/boom", json={**EXAMPLE_SPEC, "note": "\x00"}).status_code == 422
    with store.writing() as session:
        session.execute(text("DROP TABLE withdrawal"))
    answer = api.get("/withdrawals")
    assert answer.status_code in (500, 503)  # the databases call it by different names
    assert answer.headers["content-type"] == "application/problem+json"
    assert httpx.get(f"{url}/T/00000000001", timeout=30).status_code in (404, 500, 503)


def test_keys_are_each_devices_own(
    api: httpx.Client, device: Callable[[Role], httpx.Client], store: Store
) -> None:
    for client in (api, device(Role.BUILDER)):
        assert client.post("/assemblies", json=BODY, headers={"Idempotency-Key": "k" * 80}).status_code == 201
    assert store.count() == 2
    assert api.post("/assemblies", json=BODY, headers={"Idempotency-Key": "k" * 81}).status_code == 422


def test_a_print_that_is_repeated_is_not_made_of_a_tag_withdrawn_since(
    api: httpx.Client, store: Store
) -> None:
    number = api.post("/assemblies", json=BODY).json()["numbers"][0]
    key = {"Idempotency-Key": "one"}
    assert api.post("/prints", json={"numbers": [number]}, headers=key).status_code == 200
    store.withdraw("blisters", tag=number)
    assert api.post("/prints", json={"numbers": [number]}, headers=key).status_code == 422


def test_requests_at_once_with_one_key_do_it_once(api: httpx.Client, store: Store) -> None:
    number = api.post("/assemblies", json=BODY).json()["numbers"][0]
    for path, body in (("/assemblies", BODY), (f"/assemblies/{number}/history", {"kind": "fitted"})):
        start = threading.Barrier(5)

        def ask(path: str = path, body: Any = body, start: threading.Barrier = start) -> httpx.Response:
            start.wait()
            return api.post(path, json=body, headers={"Idempotency-Key": path})

        with ThreadPoolExecutor(5) as pool:
            answers = [asked.result() for asked in [pool.submit(ask) for _ in range(5)]]
        assert {answer.status_code for answer in answers} == {201}
        assert all(answer.json() == answers[0].json() for answer in answers)
    assert store.count() == 2
    assert [event.kind for event in store.history(number)] == [Kind.REGISTERED, Kind.FITTED]


_SERVE = textwrap.dedent("""
    import os, signal, sys, uvicorn
    from api.app import create_app
    from api.rest.once import Once
    from api.settings import Settings

    url, port, when = sys.argv[1:]
    plain = Once.__call__

    def dying(self, answer, act):
        def acted():
            act()
            os.kill(os.getpid(), signal.SIGKILL)  # done, but neither ended nor answered
        if when == "within":
            return plain(self, answer, acted)
        plain(self, answer, act)
        os.kill(os.getpid(), signal.SIGKILL)  # done and kept, but not answered

    if when != "never":
        Once.__call__ = dying
    uvicorn.run(create_app(Settings(database_url=url)), port=int(port), log_level="error")
""")


def _serve(url: str, when: str) -> tuple[processes.Process, str]:
    port = free_port()
    process = processes.start(("-c", _SERVE, url, str(port), when))
    for _ in range(600):
        try:
            httpx.get(f"http://127.0.0.1:{port}/api/v1/templates")
            return process, f"http://127.0.0.1:{port}/api/v1"
        except httpx.TransportError:
            assert process.poll() is None, "the server did not start"
            time.sleep(0.05)
    raise AssertionError("the server did not start")


KILLS = [(d, w) for d in ("sqlite", "postgresql") for w in ("within", "after")]


@pytest.mark.parametrize(("database", "when"), volume([KILLS[1], KILLS[2]], KILLS))
def test_a_server_killed_before_it_answers_leaves_all_or_nothing(
    request: pytest.FixtureRequest, database: str, when: str
) -> None:
    database_url: str = request.getfixturevalue(f"{database}_url")
    kept = 0 if when == "within" else 1
    with Store.open(database_url) as store:
        _, secret = store.make_token("tablet", Role.MANAGER)
        headers = {"Authorization": f"Bearer {secret}", "Idempotency-Key": "one"}
        process, address = _serve(database_url, when)
        with pytest.raises(httpx.TransportError):
            httpx.post(f"{address}/assemblies", json=BODY, headers=headers, timeout=30)
        assert process.wait() == -signal.SIGKILL
        assert store.count() == kept
        process, address = _serve(database_url, "never")
        try:
            again = [
                httpx.post(f"{address}/assemblies", json=BODY, headers=headers, timeout=30) for _ in range(2)
            ]
        finally:
            process.kill()
            process.wait()
        assert [answer.status_code for answer in again] == [201, 201]
        assert again[0].json() == again[1].json() and store.count() == 1


def test_neither_a_token_nor_a_password_is_kept_in_clear(tmp_path: Path) -> None:
    file = tmp_path / "tags.sqlite3"
    with Store.open(f"sqlite:///{file}") as store, serving(Settings(), store) as served:
        _, own = store.make_token("tablet", Role.MANAGER)
        headers = {"Authorization": f"Bearer {own}", "Idempotency-Key": "one"}
        made = httpx.post(
            f"{served.url}/api/v1/tokens", json={"name": "scanner", "role": "builder"}, headers=headers
        ).json()["token"]
        person = {"name": "Bela", "role": "builder", "password": "a long pass phrase"}
        httpx.post(f"{served.url}/api/v1/people", json=person, headers={**headers, "Idempotency-Key": "two"})
        assert store.token(made) is not None and store.person("Bela") is not None
    held = b"".join(path.read_bytes() for path in tmp_path.iterdir())
    assert b"scanner" in held, "the file is readable, so what is not in it is not kept"
    for secret in (made, own, person["password"]):
        assert secret.encode() not in held
