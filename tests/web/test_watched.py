"""Whoever watches the server is told how it does; too many requests at once are sent away, and the tag is still read."""

from __future__ import annotations

import contextlib
import json
import os
import socket
import time
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from threading import Thread
from typing import Any
from urllib.parse import urlsplit

import httpx
import psycopg
import pytest
from fastapi.testclient import TestClient
from sqlalchemy import text

from api.app import create_app
from api.settings import Settings, SettingsError
from api.web import health
from tagger.store import Store, readiness
from tests import processes
from tests.bench.served import serving
from tests.databases import postgresql_server, postgresql_template, postgresql_url, sqlite_url, url
from tests.ports import free_port
from tests.scan.conftest import path, register
from tests.scan.test_storm import writer

__all__ = ["postgresql_server", "postgresql_template", "postgresql_url", "sqlite_url", "url"]


def _ready(client: TestClient) -> tuple[int, dict[str, Any]]:
    client.app.state.ready.__init__()  # type: ignore[attr-defined]  # what was found a moment ago is forgotten
    answer = client.get("/ready")
    return answer.status_code, answer.json()


def _hanging(url: str, client: TestClient) -> None:
    """The database takes connections and answers nothing about its tables: 503 all the same, however many ask."""
    nothing = {"ok": False, "database": False, "schema": False, "disk": False}
    with psycopg.connect(url.replace("+psycopg", "")) as other:
        other.execute("LOCK TABLE alembic_version IN ACCESS EXCLUSIVE MODE")
        assert _ready(client) == (503, nothing)
        with ThreadPoolExecutor(8) as watchers:
            told = list(watchers.map(lambda _: client.get("/ready").status_code, range(8)))
        assert told == [503] * 8
        waiting = "SELECT count(*) FROM pg_locks WHERE NOT granted AND relation = 'alembic_version'::regclass"
        assert other.execute(waiting).fetchone() == (1,), "one question waits, not one of each watcher"
        other.rollback()


def test_ready_says_what_does_not_hold_and_health_needs_nothing(
    url: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    whole = {"ok": True, "database": True, "schema": True, "disk": True}
    within_s = health.WITHIN_S
    monkeypatch.setattr(health, "WITHIN_S", 60.0)  # a loaded machine takes its time over what does answer
    with Store.open(url) as store:
        client = TestClient(create_app(Settings(public_requests_per_minute=3), store=store))
        assert _ready(client) == (200, whole)
        if url.startswith("postgresql"):
            assert within_s < 2, "who watches is answered within two seconds"
            with monkeypatch.context() as hanging:
                hanging.setattr(health, "WITHIN_S", within_s)
                hanging.setattr(health, "GIVEN_UP_S", 600.0)
                hanging.setattr(readiness, "_MOST_MS", 600_000)
                _hanging(url, client)
            assert _ready(client) == (200, whole), "as soon as it answers again"
        with store.database.engine.execution_options(writes=True).begin() as connection:
            connection.execute(text("UPDATE alembic_version SET version_num = '1'"))
        assert _ready(client) == (503, {**whole, "ok": False, "schema": False})
        with store.database.engine.execution_options(writes=True).begin() as connection:
            head = readiness.steps()[1]
            connection.execute(text("UPDATE alembic_version SET version_num = :head"), {"head": head})
        if url.startswith("sqlite"):
            monkeypatch.setattr(readiness, "ROOM_BYTES", 10**18)  # no disk has that much room
            assert _ready(client) == (503, {**whole, "ok": False, "disk": False})
            Path(url.removeprefix("sqlite:///")).write_bytes(b"no database" * 1000)
            store.database.engine.dispose()
        else:
            with store.database.engine.begin() as connection:
                connection.execute(
                    text(f"ALTER DATABASE {url.rpartition('/')[2]} SET default_transaction_read_only = on")
                )
            store.database.engine.dispose()
            assert _ready(client) == (503, {**whole, "ok": False, "disk": False})
            store.database.engine.dispose()
            with psycopg.connect(url.rpartition("/")[0] + "/postgres", autocommit=True) as server:
                name = url.rpartition("/")[2]
                server.execute(f"ALTER DATABASE {name} WITH ALLOW_CONNECTIONS false")
        status, found = _ready(client)
        assert (status, found["database"], found["ok"]) == (503, False, False)
        assert [client.get("/health").status_code for _ in range(5)] == [200] * 5, (
            "watching counts for nobody"
        )


class _Line:
    """A line to PostgreSQL that can fall silent: what it carries then neither arrives nor breaks off."""

    def __init__(self, url: str) -> None:
        address = urlsplit(url)
        assert address.port
        self._far = (str(address.hostname), address.port)
        self._front = socket.create_server(("127.0.0.1", 0))
        self._ends: list[socket.socket] = []
        self._silent: set[socket.socket] = set()
        self.url = url.replace(f":{address.port}/", f":{self._front.getsockname()[1]}/")
        Thread(target=self._take, daemon=True).start()

    def fall_silent(self) -> None:
        """All that it carries now; who connects from now on is served."""
        self._silent |= set(self._ends)

    def _take(self) -> None:
        while True:
            near, _ = self._front.accept()
            far = socket.create_connection(self._far)
            self._ends += [near, far]
            for source, sink in ((near, far), (far, near)):
                Thread(target=self._carry, args=(source, sink), daemon=True).start()

    def _carry(self, source: socket.socket, sink: socket.socket) -> None:
        with contextlib.suppress(OSError):
            while piece := source.recv(65_536):
                if source not in self._silent:
                    sink.sendall(piece)
            if source not in self._silent:
                sink.shutdown(socket.SHUT_WR)


def test_a_connection_that_died_without_a_word_is_replaced_in_seconds(
    postgresql_url: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(health, "GIVEN_UP_S", 1.0)
    line = _Line(postgresql_url)
    with Store.open(line.url) as store:
        made = register(store)
        client = TestClient(create_app(Settings(public_requests_per_minute=1000), store=store))
        assert _ready(client)[0] == 200
        line.fall_silent()
        assert _ready(client) == (503, {"ok": False, **readiness.NOTHING})
        end = time.monotonic() + 60
        while client.get("/ready").status_code != 200:
            assert time.monotonic() < end
            time.sleep(0.1)
        assert made.number in client.get(path(made)).text.replace("-", ""), "requests have new ones too"


def test_postgresql_is_told_when_a_silent_server_is_gone(postgresql_url: str) -> None:
    """Of a connection as it is opened; a wait that the address gives itself holds."""
    with Store.open(postgresql_url) as store, store.database.engine.connect() as connection:
        driver = connection.connection.driver_connection
        assert isinstance(driver, psycopg.Connection)
        given = driver.info.get_parameters()
        assert (given["tcp_user_timeout"], given["connect_timeout"]) == ("15000", "5")
        line = socket.socket(fileno=os.dup(driver.fileno()))
        with line:
            assert line.getsockopt(socket.SOL_SOCKET, socket.SO_KEEPALIVE) == 1
            if hasattr(socket, "TCP_USER_TIMEOUT"):
                assert line.getsockopt(socket.IPPROTO_TCP, socket.TCP_USER_TIMEOUT) == 15_000
    with Store.open(f"{postgresql_url}?connect_timeout=9") as store, store.database.engine.connect() as own:
        assert isinstance(own.connection.driver_connection, psycopg.Connection)
        assert own.connection.driver_connection.info.get_parameters()["connect_timeout"] == "9"


def test_under_overload_requests_are_sent_away_at_once_and_a_tag_is_still_read(
    sqlite_url: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Two order requests wait for a writer and fill the room of the public pages."""
    monkeypatch.setattr(health, "WITHIN_S", 60.0)
    settings = Settings(
        base_url="http://tags.example.com", public_requests_per_minute=10_000, requests_at_once=2
    )
    with Store.open(sqlite_url) as store:
        made = register(store)
        with (
            serving(settings, store) as served,
            httpx.Client(base_url=served.url, timeout=120, verify=False) as client,
            ThreadPoolExecutor(2) as visitors,
        ):

            def order(_: int) -> int:
                sent, status = {"number": made.number, "phone": "1"}, 503
                with httpx.Client(base_url=served.url, timeout=120, verify=False) as mine:
                    while status == 503:  # sent away, it comes again
                        status = mine.post("/order", data=sent).status_code
                return status

            with writer(sqlite_url):
                page = client.get(path(made))  # and is kept: from now on nothing changes in the database
                end = time.monotonic() + 60
                waiting = [visitors.submit(order, n) for n in range(2)]
                while (away := client.get("/find", headers={"Accept-Language": "fr"})).status_code == 200:
                    assert time.monotonic() < end
                    time.sleep(0.2)
                assert (away.status_code, away.headers["retry-after"]) == (503, "3")
                assert "Réessayez dans quelques secondes" in away.text
                while client.get(path(made)).content != page.content:  # kept: it needs nobody ...
                    assert (
                        time.monotonic() < end
                    )  # ... once the watcher, on a busy machine too, has looked again
                    time.sleep(0.2)
                assert client.get("/health").status_code == client.get("/ready").status_code == 200
                assert client.get("/bench/sign-in").status_code == 200, "the bench has a room of its own"
                assert client.get("/api/v1/templates").status_code == 401
                assert not any(one.done() for one in waiting), "nobody waited for the writer"
            assert [one.result(120) < 400 for one in waiting] == [True, True]
            assert client.get("/find").status_code == 200


def test_the_log_is_json_with_an_id_for_each_request_and_metrics_have_their_own_address(
    tmp_path: Path,
) -> None:
    port, metrics = free_port(), free_port()
    env = {name: value for name, value in os.environ.items() if not name.startswith("TAGGER_")}
    env |= {
        "TAGGER_DATABASE_URL": f"sqlite:///{tmp_path}/tags.sqlite3",
        "TAGGER_LOG": "json",
        "TAGGER_METRICS_LISTEN": f"127.0.0.1:{metrics}",
    }
    with (tmp_path / "log").open("wb") as log:
        server = processes.start(
            ["-m", "tagger.cli", "serve", "--port", str(port)], env=env, stderr=log.fileno()
        )
    try:
        for _ in range(600):
            assert server.poll() is None, (tmp_path / "log").read_text()
            with socket.socket() as probe:
                if probe.connect_ex(("127.0.0.1", port)) == 0:
                    break
            time.sleep(0.1)
        with httpx.Client(base_url=f"http://127.0.0.1:{port}", timeout=30) as client:
            answers = [client.get(one) for one in ("/T/7K3MQ9XW2R1", "/find?q=Quarry", "/nowhere/Anna")]
            wrong = {"name": "nobody", "password": "secret-typed-here"}
            client.post("/bench/sign-in", data=wrong, headers={"X-Request-Id": "forged\r\n"[:6]})
            assert client.get("/metrics").status_code == 404
        counted = httpx.get(f"http://127.0.0.1:{metrics}/metrics", timeout=30).text
    finally:
        server.terminate()
        server.wait(60)
    text_of_log = (tmp_path / "log").read_text()
    lines = [json.loads(line) for line in text_of_log.splitlines() if line.startswith("{")]
    requests = [line for line in lines if line["logger"] == "tagger.requests"]
    ids = [answer.headers["x-request-id"] for answer in answers]
    assert [line["request"] for line in requests[:3]] == ids and len(set(ids)) == 3
    assert requests[0]["route"] == "/T/{number}" and requests[0]["ms"] > 0
    assert [line["status"] for line in requests[:3]] == [answer.status_code for answer in answers]
    security = [line for line in lines if line["logger"] == "tagger.security"]
    assert security and security[0]["request"] == requests[3]["request"], (
        "the same id on every line of a request"
    )
    for private in ("7K3MQ9XW2R1", "Quarry", "Anna", "secret-typed-here", "forged"):
        assert private not in text_of_log, private
    assert 'tagger_requests_total{method="GET",room="scan",status="4xx"}' in counted
    assert "tagger_chain_links 0.0" in counted and "tagger_request_seconds_bucket" in counted


@pytest.mark.parametrize(
    "listen", ["0.0.0.0:9464", "192.0.2.7:9464", "127.0.0.1", "127.0.0.1:0", "x:y", ":9464"]
)
def test_metrics_are_never_served_to_others(listen: str) -> None:
    with pytest.raises(SettingsError, match=r"TAGGER_METRICS_LISTEN.*this machine only"):
        Settings.from_env({"TAGGER_METRICS_LISTEN": listen})
    assert Settings.from_env({"TAGGER_METRICS_LISTEN": "[::1]:9464"}).metrics_listen == "[::1]:9464"
