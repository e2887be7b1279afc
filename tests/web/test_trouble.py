"""A database that is full or read-only: said in words with 503 and when to ask again, and nothing is lost."""

from __future__ import annotations

import json
import os
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from html import unescape
from pathlib import Path

import httpx
import psycopg
import pytest
from sqlalchemy import event
from sqlalchemy.exc import DBAPIError

from api.settings import Settings
from tagger.store import Kind, Role, Store
from tagger.store.trouble import Trouble, trouble_of
from tests import processes
from tests.bench.served import HOSE, PASSWORD, Bench, serving
from tests.databases import postgresql_server, postgresql_template, postgresql_url, sqlite_url
from tests.passwords import QUICK
from tests.passwords import quick_passwords as quick_passwords
from tests.scan.conftest import path, register
from tests.test_spec import EXAMPLE

__all__ = ["postgresql_server", "postgresql_template", "postgresql_url", "sqlite_url"]

FULL = "disk is full"
READ_ONLY = "database is read-only"


@contextmanager
def sqlite_that(store: Store, pragma: str) -> Iterator[None]:
    """From now on every connection has this pragma, until the end."""

    def prepare(connection: sqlite3.Connection, _: object) -> None:
        connection.execute(f"PRAGMA {pragma}").close()

    engine = store.database.engine
    event.listen(engine, "connect", prepare)
    engine.dispose()
    yield
    event.remove(engine, "connect", prepare)
    engine.dispose()


@contextmanager
def full_sqlite(store: Store, number: str) -> Iterator[None]:
    """The file may not have one page more, and the last one of the history is full."""
    with store.reading() as session:
        pages = session.connection().exec_driver_sql("PRAGMA page_count").scalar()
    with sqlite_that(store, f"max_page_count={pages}"):
        for at_once in (100, 1):
            with pytest.raises(DBAPIError) as failed:
                while True:
                    store.record_many([number] * at_once, Kind.INSPECTED)
            assert trouble_of(failed.value) is Trouble.FULL
        yield


@contextmanager
def postgresql_that(store: Store, url: str, on: str, off: str) -> Iterator[None]:
    for statement in (on, off):
        with psycopg.connect(url, autocommit=True) as connection:
            connection.execute("SET default_transaction_read_only = off")
            connection.execute(statement)  # type: ignore[call-overload]
        store.database.engine.dispose()
        if statement == on:
            yield


_FULL_POSTGRESQL = """
CREATE FUNCTION no_space() RETURNS trigger LANGUAGE plpgsql AS
$$ BEGIN RAISE SQLSTATE '53100' USING MESSAGE = 'could not extend file'; END $$;
CREATE TRIGGER no_space BEFORE INSERT ON event EXECUTE FUNCTION no_space()
"""
"""The server's own error for a full disk, raised by the server; filling its disk would end it."""


@contextmanager
def trouble(case: str, url: str, store: Store, number: str) -> Iterator[str]:
    name = url.rpartition("/")[2]
    read_only = f"ALTER DATABASE {name} SET default_transaction_read_only = "
    match case:
        case "sqlite full":
            with full_sqlite(store, number):
                yield FULL
        case "sqlite read-only":
            with sqlite_that(store, "query_only=ON"):
                yield READ_ONLY
        case "postgresql full":
            with postgresql_that(store, url, _FULL_POSTGRESQL, "DROP TRIGGER no_space ON event"):
                yield FULL
        case _:
            with postgresql_that(store, url, read_only + "on", read_only + "off"):
                yield READ_ONLY


@pytest.mark.parametrize(
    "case", ["sqlite full", "sqlite read-only", "postgresql full", "postgresql read-only"]
)
def test_pages_are_shown_and_what_cannot_be_saved_is_told(case: str, request: pytest.FixtureRequest) -> None:
    url: str = request.getfixturevalue(f"{case.split()[0]}_url")
    settings = Settings(base_url="http://tags.example.com", public_requests_per_minute=1000)
    with Store.open(url) as store:
        store.add_person("manager", QUICK.hash(PASSWORD), Role.MANAGER)
        made = register(store)
        _, secret = store.make_token("scanner", Role.MANAGER)
        headers = {"Authorization": f"Bearer {secret}", "Idempotency-Key": "once"}
        with (
            serving(settings, store) as served,
            httpx.Client(base_url=served.url, timeout=30, verify=False) as visitor,
            Bench(served.url, store, "manager") as bench,
        ):
            with trouble(case, url, store, made.number) as words:
                before = store.count()
                assert "boom cylinder" in visitor.get(path(made)).text
                assert made.number in bench.get("/bench/find").text.replace("-", "")

                answer = bench.submit("/bench/build", HOSE)
                assert (answer.status_code, answer.headers["retry-after"]) == (503, "60")
                assert words in answer.text and "check what was saved" in answer.text
                assert "<h1>Server problem</h1>" in answer.text and "sqlalchemy" not in answer.text.lower()
                german = bench.submit("/bench/build", HOSE, headers={"Accept-Language": "de"})
                assert "<h1>Problem mit dem Server</h1>" in german.text

                body = {"spec": EXAMPLE}
                refused = visitor.post("/api/v1/assemblies", json=body, headers=headers)
                assert (refused.status_code, refused.headers["retry-after"]) == (503, "60")
                assert (
                    refused.json()["id"].startswith("store-database-") and words in refused.json()["detail"]
                )

                order = {"number": made.number, "quantity": "1", "phone": "020 7946 0000"}
                for accept in ("application/json", "text/html"):  # a phone sends it again
                    late = visitor.post("/order", data=order, headers={"Accept": accept})
                    assert (late.status_code, late.headers["retry-after"]) == (503, "60")
                    assert words in unescape(late.text), late.text
                assert (store.count(), len(store.orders())) == (before, 0)
            assert visitor.post("/api/v1/assemblies", json=body, headers=headers).status_code == 201
        scans = [one for one in store.history(made.number) if one.kind is Kind.SCANNED]
        assert len(scans) == 1, "the scan waited until it could be written"


_LIMITED = """
import resource, sys
from tagger.cli import main
resource.setrlimit(resource.RLIMIT_FSIZE, (60_000, 60_000))
sys.exit(main(sys.argv[1:]))
"""


def test_the_command_line_says_that_the_disk_is_full(tmp_path: Path, sqlite_url: str) -> None:
    """Files may not grow above 60 kB, as under a quota."""
    (tmp_path / "spec.json").write_text(json.dumps(EXAMPLE), encoding="utf-8")
    env = {name: value for name, value in os.environ.items() if not name.startswith("TAGGER_")}
    done = processes.run(
        ("-c", _LIMITED, "register", "spec.json", "--count", "400"),
        cwd=tmp_path,
        env=env | {"TAGGER_DATABASE_URL": sqlite_url},
    )
    assert done.returncode == 1, done.stderr
    assert FULL in done.stderr and "Traceback" not in done.stderr
    with Store.open(sqlite_url) as store:
        assert store.count() == 0
