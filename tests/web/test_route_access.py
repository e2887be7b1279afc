"""Who may ask what: every route of the running application asked by every identity, held against a table.

``route_access.csv`` has a line for each method and path: the least identity that is let in. A new route fails
here until somebody has said who may ask it. ``python -m tests.web.test_route_access`` writes the table anew, to
be read line by line before it is committed.
"""

from __future__ import annotations

import csv
import re
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest
from fastapi.testclient import TestClient

from api.app import create_app
from api.settings import Settings
from tagger.store import Role, Store
from tests.databases import fresh_sqlite

TABLE = Path(__file__).with_name("route_access.csv")
IDENTITIES = ("anybody", *(str(role) for role in Role))
"""From the least to the most; each may do all that those before it may."""
Key = tuple[str, str]
WAYS_IN = {("POST", "/bench/sign-in"), ("POST", "/bench/first")}
"""Their 403 is for what was sent, not for who sent it."""


@dataclass(frozen=True)
class Door:
    """One route of the application, asked by whoever stands before it."""

    store: Store
    client: TestClient
    people: dict[str, int]
    tokens: dict[str, str]
    sessions: dict[str, str]

    def lets_in(self, method: str, path: str, identity: str, *, program: bool) -> bool:
        """Whether somebody of this identity gets past the door: what is behind may refuse what was sent."""
        headers, cookies = {}, {}
        if program and identity in self.tokens:
            headers = {"Authorization": f"Bearer {self.tokens[identity]}"}
        elif identity in self.people:
            cookie = self.sessions.get(identity) or self.store.sign_in(self.people[identity], 1)
            signed_in = self.store.signed_in(cookie)
            assert signed_in is not None
            if not path.endswith("sign-out"):
                self.sessions[identity] = cookie
            else:
                self.sessions.pop(identity, None)
            headers, cookies = {"X-CSRF": signed_in.csrf}, {"tagger_session": cookie}
        self.client.cookies.clear()
        self.client.cookies.update(cookies)
        answer = self.client.request(method, _filled(path), headers=headers, follow_redirects=False)
        assert answer.status_code < 500, f"{method} {path} as {identity}: {answer.status_code}"
        if (method, path) in WAYS_IN:
            return True
        to_sign_in = answer.headers.get("location", "").startswith("/bench/sign-in?")
        return answer.status_code not in (401, 403) and not to_sign_in


def _filled(path: str) -> str:
    """The path with a number that nothing has in place of each of its parts."""
    path = re.sub(r"\{(form|edge|kind)\}", "csv", path)
    return re.sub(r"\{[^}]*\}", "7", path)


@contextmanager
def door(folder: Path) -> Iterator[Door]:
    settings = Settings(public_requests_per_minute=100_000, base_url="http://testserver")
    with Store.open(fresh_sqlite(folder)) as store:
        app = create_app(settings, store=store)
        people, tokens = {}, {}
        for role in Role:
            people[str(role)] = store.add_person(str(role), "nobody's hash", role).id
            tokens[str(role)] = store.make_token(str(role), role)[1]
        spare = store.add_person("spare", "nobody's hash", Role.MANAGER)
        assert spare.id != 7
        yield Door(store, TestClient(app, raise_server_exceptions=False), people, tokens, {})


def routes(app: Any) -> Iterator[Key]:
    """Every method and path that the application answers; files of ``/static`` are anybody's."""

    def walk(router: Any, prefix: str) -> Iterator[Key]:
        for route in router.routes:
            if inner := getattr(route, "original_router", None):
                yield from walk(inner, prefix + route.include_context.prefix)
            elif methods := getattr(route, "methods", None):
                yield from ((method, prefix + route.path) for method in sorted(methods - {"HEAD"}))

    yield from walk(app, "")


def least_let_in(at: Door, method: str, path: str) -> str:
    """The least identity that the route lets in, having asked with all of them."""
    program = path.startswith("/api/")
    let_in = [at.lets_in(method, path, identity, program=program) for identity in IDENTITIES]
    assert let_in == sorted(let_in) and let_in[-1], f"{method} {path}: a higher role is kept out, {let_in}"
    return IDENTITIES[let_in.index(True)]


@pytest.fixture(scope="module")
def at(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Door]:
    with door(tmp_path_factory.mktemp("door")) as opened:
        yield opened


@pytest.fixture(scope="module")
def table() -> dict[Key, str]:
    with TABLE.open(encoding="utf-8", newline="") as file:
        return {(row["method"], row["path"]): row["least"] for row in csv.DictReader(file)}


def test_every_route_lets_in_exactly_whom_the_table_names(at: Door, table: dict[Key, str]) -> None:
    assert set(routes(at.client.app)) == set(table), "a new route has a line in route_access.csv"
    for (method, path), least in table.items():
        program = path.startswith("/api/")
        assert at.lets_in(method, path, least, program=program), (method, path)
        if (
            least != IDENTITIES[0]
        ):  # roles are in order (tagger/store/people.py): the one below stands for all
            below = IDENTITIES[IDENTITIES.index(least) - 1]
            assert not at.lets_in(method, path, below, program=program), (method, path, below)


def test_a_session_opens_nothing_of_the_api_and_a_token_nothing_of_the_bench(
    at: Door, table: dict[Key, str]
) -> None:
    most = str(Role.MANAGER)
    for (method, path), least in table.items():
        if least != "anybody":
            assert not at.lets_in(method, path, most, program=not path.startswith("/api/")), (method, path)


def test_no_page_that_anybody_may_ask_is_new(table: dict[Key, str]) -> None:
    """What needs no identity stands outside of bench and API, but for signing in and the API's description."""
    behind = {
        path for (_, path), least in table.items() if least == "anybody" and path[:4] in ("/ben", "/api")
    }
    ways_in = {"/bench/sign-in", "/bench/sign-in/code", "/bench/first"}
    assert behind == ways_in | {"/api/v1/openapi.json", "/api/v1/docs"}


if __name__ == "__main__":
    with tempfile.TemporaryDirectory() as folder, door(Path(folder)) as opened:
        keys = routes(opened.client.app)
        rows = sorted((path, method, least_let_in(opened, method, path)) for method, path in keys)
    with TABLE.open("w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(("method", "path", "least"))
        writer.writerows((method, path, least) for path, method, least in rows)
