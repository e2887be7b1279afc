"""What is wrong with a database is told apart from what is wrong with a request, by real errors of both."""

from __future__ import annotations

import socket
import sqlite3
from contextlib import closing

import pytest
from sqlalchemy import create_engine, text
from sqlalchemy.exc import DBAPIError
from sqlalchemy.exc import TimeoutError as NoConnectionFree

from tagger.store import Store
from tagger.store.trouble import Trouble, trouble_of


def error_of(url: str, statement: str, **options: object) -> Exception:
    engine = create_engine(url.replace("postgresql:", "postgresql+psycopg:"), **options)
    with pytest.raises(DBAPIError) as caught, engine.begin() as connection:
        connection.execute(text(statement))
    engine.dispose()
    return caught.value


def test_a_locked_a_missing_and_a_wrongly_asked_sqlite(sqlite_url: str) -> None:
    with closing(sqlite3.connect(sqlite_url.removeprefix("sqlite:///"), isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        locked = error_of(sqlite_url, "DELETE FROM person", connect_args={"timeout": 0})
    assert trouble_of(locked) is Trouble.BUSY
    assert trouble_of(error_of("sqlite:////no/such/folder/a.sqlite3", "SELECT 1")) is Trouble.AWAY
    assert trouble_of(error_of(sqlite_url, "SELECT nothing")) is None
    engine = create_engine(sqlite_url, pool_size=1, max_overflow=0, pool_timeout=0.01)
    with engine.connect(), pytest.raises(NoConnectionFree) as none_free:
        engine.connect()
    assert trouble_of(none_free.value) is Trouble.BUSY
    assert trouble_of(ValueError()) is None


def test_a_postgresql_that_is_gone_or_wrongly_asked(postgresql_url: str) -> None:
    with socket.socket() as nobody:
        nobody.bind(("127.0.0.1", 0))  # bound, not listening
        port = nobody.getsockname()[1]
        assert trouble_of(error_of(f"postgresql://a@127.0.0.1:{port}/a", "SELECT 1")) is Trouble.AWAY
    for statement in ("SELECT nothing", "SELECT 1/0", "SELECT CAST('x' AS integer)"):
        assert trouble_of(error_of(postgresql_url, statement)) is None, statement
    killed = "SELECT pg_terminate_backend(pg_backend_pid())"
    assert trouble_of(error_of(postgresql_url, killed)) is Trouble.AWAY
    with (
        Store.open(postgresql_url) as store,
        pytest.raises(DBAPIError) as written,
        store.reading() as session,
    ):
        session.execute(text("DELETE FROM person"))
    assert trouble_of(written.value) is Trouble.READ_ONLY
