"""A scan writes nothing: whoever holds the database's only lock slows no page, and no count is lost for it.

A page is made once for as long as nothing changes, and shows a withdrawal within 2 s on every server.
"""

from __future__ import annotations

import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager

import httpx
import pytest
from fastapi import FastAPI, Request
from fastapi.responses import PlainTextResponse, Response
from fastapi.testclient import TestClient

from api.app import create_app
from api.scan.page_cache import PageCache
from api.scan.pages import kept
from api.settings import Settings
from api.web.keys import ShopKeys
from api.workers import scan_counts
from api.workers.scan_counts import ScanCounts
from api.workers.watcher import Watcher
from tagger.code import number as tag_number
from tagger.store import Kind, Store
from tagger.store.locks import Turn
from tests.bench.served import Served, serving
from tests.databases import (
    postgresql_server,
    postgresql_template,
    postgresql_url,
    sqlite_url,
    url,
)
from tests.scan.conftest import path, register
from tests.volume import volume

__all__ = ["postgresql_server", "postgresql_template", "postgresql_url", "sqlite_url", "url"]

_SQLITE = """
import sqlite3, sys
writer = sqlite3.connect(sys.argv[1].removeprefix("sqlite:///"), isolation_level=None)
writer.execute("BEGIN IMMEDIATE")
"""
_POSTGRESQL = f"""
import psycopg, sys
writer = psycopg.connect(sys.argv[1])
writer.execute("SELECT pg_advisory_xact_lock({int(Turn.EVENTS)})")
writer.execute("LOCK TABLE event IN EXCLUSIVE MODE")
"""
_HELD = "print('held', flush=True)\nsys.stdin.read()\n"
SCANS = 60  # more than the threads that a server answers with
SETTINGS = Settings(base_url="http://tags.example.com", public_requests_per_minute=10_000)


@contextmanager
def writer(url: str) -> Iterator[None]:
    """Another process that writes: nobody else can, until it ends."""
    program = (_SQLITE if url.startswith("sqlite") else _POSTGRESQL) + _HELD
    with subprocess.Popen(
        (sys.executable, "-c", program, url), stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True
    ) as other:
        assert other.stdout is not None and other.stdout.readline() == "held\n"
        try:
            yield
        finally:
            other.kill()


def test_while_another_process_writes_every_scan_page_is_answered_and_counted_later(
    url: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The lock is held until the last page has been answered; a page that waits for it never is."""
    monkeypatch.setattr(scan_counts, "EVERY_S", 600.0)  # not before the lock is held
    with Store.open(url) as store:
        made = register(store)

        def scan(turn: int) -> float:
            made_anew = "?units=metric" if turn % 2 else ""
            start = time.monotonic()
            assert client.get(path(made) + made_anew).status_code == 200
            return time.monotonic() - start

        with (
            serving(SETTINGS, store) as served,
            httpx.Client(
                base_url=served.url, timeout=25, verify=False
            ) as client,  # SQLite waits 30 s for a lock
            ThreadPoolExecutor(20) as visitors,
        ):
            scan(0)
            with writer(url):
                until = time.monotonic() + volume(0, 12)
                took = list(visitors.map(scan, range(SCANS)))
                while time.monotonic() < until:
                    took += visitors.map(scan, range(SCANS))
                written = [event.kind for event in store.history(made.number)].count(Kind.SCANNED)
                assert written == 0, "nothing could be written"
        # The server has ended, and wrote the rest as it did.
        counted = [event for event in store.history(made.number) if event.kind is Kind.SCANNED]
        assert len(counted) == 1 + len(took)
    print(f"{len(took)} scans while the lock was held; the slowest took {max(took):.2f} s")


def test_scans_are_written_when_the_server_ends_with_their_own_moments(store: Store) -> None:
    made = register(store)
    with TestClient(create_app(SETTINGS, store=store)) as client:
        before = store.now()
        assert client.get(path(made)).status_code == 200
        after = store.now()
        unknown = tag_number.make()
        client.get(f"/T/{unknown}")
        client.get("/T/00000000001")
    [scan] = [event for event in store.history(made.number) if event.kind is Kind.SCANNED]
    assert before <= scan.at <= after
    assert store.totals(before).scans == 1


def _until(done: Callable[[], bool]) -> None:
    end = time.monotonic() + 60
    while not done():
        assert time.monotonic() < end
        time.sleep(0.02)


def test_a_page_is_made_once_until_any_process_commits(url: str, monkeypatch: pytest.MonkeyPatch) -> None:
    made: list[str] = []
    monkeypatch.setattr(
        "api.workers.watcher.FRESH_S", 600.0
    )  # a loaded machine may look later than it should
    with Store.open(url) as store, Store.open(url) as other:
        watcher, scans = Watcher(store), ScanCounts(store)
        app = FastAPI()
        app.state.settings = SETTINGS

        @app.get("/T/{number}")
        def page(request: Request, number: str) -> Response:
            made.append(number)
            return kept(request, PlainTextResponse(f"page {len(made)}"))

        client = TestClient(PageCache(app, watcher=watcher, scans=scans, keys=ShopKeys(SETTINGS)))
        assert [client.get("/T/1").text for _ in range(2)] == ["page 1", "page 2"], "it watches nothing yet"
        watcher.start()
        _until(lambda: watcher.now() is not None)
        again = [client.get("/T/1") for _ in range(3)]
        assert [one.text for one in again] == ["page 3"] * 3
        assert all(one.headers == again[0].headers for one in again)
        same = client.get("/T/1", headers={"If-None-Match": again[0].headers["etag"]})
        assert (same.status_code, same.content) == (304, b"")
        asked = [{"Accept-Language": "de"}, {"Accept": "application/json"}, {"Cookie": "units=inch"}]
        for headers in (*asked, {"Accept-Encoding": "identity"}):
            before = len(made)
            assert client.get("/T/1", headers=headers).text == f"page {before + 1}", headers
            assert client.get("/T/1", headers=headers).text == f"page {before + 1}", headers
        for address, headers in (("/T/1?lang=de", {}), ("/T/1", {"Cookie": "units=inch; tagger_session=1"})):
            before = len(made)
            assert {client.get(address, headers=headers).text for _ in range(2)} == {
                f"page {before + 1}",
                f"page {before + 2}",
            }
        old = client.get("/T/1").text
        other.withdraw("blisters", hose_lot="H-1")
        _until(lambda: client.get("/T/1").text != old)
        watcher.stop()
        assert client.get("/T/1").text != client.get("/T/1").text, "it watches no more"


def test_a_withdrawal_shows_within_two_seconds_on_every_server(url: str) -> None:
    with Store.open(url) as one, Store.open(url) as two, Store.open(url) as shop:
        item = register(shop)
        with serving(SETTINGS, one) as first, serving(SETTINGS, two) as second:
            scanned = 0

            def alarmed(served: Served) -> bool:
                nonlocal scanned
                scanned += 1
                answer = httpx.get(served.url + path(item), headers={"Accept-Language": "de"})
                assert answer.status_code == 200
                return "Gesperrt: nicht verwenden" in answer.text

            for served in (first, second) * 3:
                assert not alarmed(served)
            held = shop.withdraw("blisters", hose_lot="H-2291")
            for change, wanted in ((lambda: None, True), (lambda: shop.lift(held.id, "wrong lot"), False)):
                change()
                end = time.monotonic() + 2
                for served in (first, second):
                    asked = time.monotonic()
                    while alarmed(served) is not wanted:
                        assert asked < end, "a page asked for two seconds later is still the old one"
                        time.sleep(0.05)
                        asked = time.monotonic()
        assert [event.kind for event in shop.history(item.number)].count(Kind.SCANNED) == scanned
