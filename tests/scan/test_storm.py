"""A scan writes nothing: whoever holds the database's only lock slows no page, and no count is lost for it."""

from __future__ import annotations

import subprocess
import sys
import time
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager

import httpx
from fastapi.testclient import TestClient

from api.app import create_app
from api.settings import Settings
from tagger.code import number as tag_number
from tagger.store import Kind, Store
from tagger.store.locks import Turn
from tests.bench.served import serving
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


def test_while_another_process_writes_every_scan_page_is_answered_and_counted_later(url: str) -> None:
    """The lock is held until the last page has been answered; a page that waits for it never is."""
    with Store.open(url) as store:
        made = register(store)

        def scan(_: int) -> float:
            start = time.monotonic()
            assert client.get(path(made)).status_code == 200
            return time.monotonic() - start

        with (
            serving(SETTINGS, store) as served,
            httpx.Client(base_url=served.url, timeout=10, verify=False) as client,
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
