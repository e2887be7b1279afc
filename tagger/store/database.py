"""One database: open it, migrate it, and allow one writer at a time."""

from __future__ import annotations

import os
import random
import sqlite3
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from functools import cache
from pathlib import Path
from typing import Any, TypeVar

import psycopg
from alembic import command
from alembic.config import Config
from alembic.runtime.migration import MigrationContext
from alembic.script import ScriptDirectory
from platformdirs import user_data_path
from sqlalchemy import Connection, Engine, create_engine, event
from sqlalchemy.engine import URL, ExceptionContext, make_url
from sqlalchemy.exc import ArgumentError, DataError, DBAPIError, IntegrityError, OperationalError
from sqlalchemy.orm import Session
from sqlalchemy.pool import QueuePool

from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.store import chain, folding, texts
from tagger.store.locks import Turn, take

MIGRATIONS = Path(__file__).parent / "migrations"
MOVED = "moved"
"""The step of a database whose records live in another one now."""
_TRIES = 5
_PAUSE_S = 0.05  # at most, before the first new try; longer before later ones
_BROKEN_OFF = ("40P01", "40001")  # deadlock_detected, serialization_failure: PostgreSQL, appendix A
_DEAD_AFTER = {
    "connect_timeout": 5,  # s
    "keepalives_idle": 10,  # s
    "keepalives_interval": 5,  # s
    "keepalives_count": 3,
    "tcp_user_timeout": 15_000,  # ms
}
"""When a server that says nothing at all is gone (libpq, parameter key words): the system's own word comes after
a quarter of an hour, and whoever asked would wait for it. What the address says itself holds.
"""
T = TypeVar("T")


def default_url() -> str:
    """TAGGER_DATABASE_URL, or a SQLite file in the user's data folder."""
    given = os.environ.get("TAGGER_DATABASE_URL")
    if given:
        return given
    folder = user_data_path("tagger", appauthor=False, ensure_exists=True)
    return f"sqlite:///{folder / 'tagger.sqlite3'}"


def exists(url: str | None = None) -> bool:
    """Whether there is a database at the address; a SQLite file that is not there holds nothing yet."""
    parsed = _readable(url or default_url())
    return parsed.get_backend_name() != "sqlite" or Path(str(parsed.database)).is_file()


class Database:
    """Return an engine with migrated tables, and its two session factories."""

    def __init__(self, url: str | None = None) -> None:
        self.url = _readable(url or default_url())
        self.engine = _engine(self.url)
        try:
            self._upgrade()
        except OperationalError as error:
            self.engine.dispose()
            raise StoreError(
                Problem(
                    "database", shown(self.url), Message("store-database-cannot-open", why=str(error.orig))
                )
            ) from error
        self._writer = self.engine.execution_options(writes=True)
        self._reader = self.engine
        if self.engine.dialect.name == "postgresql":
            self._reader = self.engine.execution_options(
                isolation_level="REPEATABLE READ", postgresql_readonly=True
            )
        self._here = threading.local()

    @contextmanager
    def reading(self) -> Iterator[Session]:
        """One consistent view, however many questions it is asked; nothing is written.

        What reads within it, in the same thread, has the same view. Within ``writing`` it is that
        transaction's own: what it wrote is seen.
        """
        if (outer := self._outer() or self._view()) is not None:
            yield outer
            return
        with Session(self._reader, expire_on_commit=False) as session, session.begin():
            self._here.view = session
            try:
                yield session
            finally:
                self._here.view = None

    @contextmanager
    def writing(self) -> Iterator[Session]:
        """One transaction: all of it, or, on any error, nothing.

        Acts within one another in a thread are one transaction, which the outermost ends; what fails
        within is taken back by itself, so that the outer one may go on.
        """
        if (outer := self._outer()) is not None:
            noted = chain.pending(outer)
            try:
                with outer.begin_nested():
                    noted = chain.pending(outer)
                    yield outer
            except BaseException:
                chain.forget(outer, noted)
                raise
            return
        with chain.Recording(self._writer, expire_on_commit=False) as session, session.begin():
            self._here.session = session
            try:
                yield session
                chain.link_pending(session)
            finally:
                self._here.session = None

    def act(self, work: Callable[[Session], T]) -> T:
        """``work`` in one transaction, which is done anew where others came in between.

        They took a key, a number or a reference (all the same within another act), or each waited
        for the other: then the database breaks one off, and only the outermost act can begin anew.
        """
        for turn in range(1, _TRIES):
            try:
                with self.writing() as session:
                    return work(session)
            except IntegrityError:
                pass
            except OperationalError as error:
                if self._outer() is not None or getattr(error.orig, "sqlstate", None) not in _BROKEN_OFF:
                    raise
                time.sleep(
                    random.uniform(0, _PAUSE_S * turn)
                )  # so that the same two do not meet again at once
        with self.writing() as session:
            return work(session)

    def _view(self) -> Session | None:
        """The view that this thread is reading in."""
        found: Session | None = getattr(self._here, "view", None)
        return found

    def _outer(self) -> Session | None:
        """The transaction that this thread is writing in."""
        found: Session | None = getattr(self._here, "session", None)
        return found

    def close(self) -> None:
        self.engine.dispose()

    def connect_anew(self) -> None:
        """Ends the connections that nobody uses now: what comes next opens its own, in place of one that may be dead."""
        self.engine.dispose()

    def revision(self) -> str | None:
        with self.engine.connect() as connection:
            return MigrationContext.configure(connection).get_current_revision()

    def _upgrade(self) -> None:
        """Runs the migrations that are missing; of several processes starting at once, one does."""
        if self._is_current():
            return
        with self.engine.execution_options(writes=True).begin() as connection:
            migrate(connection)

    def _is_current(self) -> bool:
        known, head = steps()
        current = self.revision()
        if current == MOVED:
            raise StoreError(Problem("database", shown(self.url), Message("store-database-moved")))
        if current is not None and current not in known:
            wrong = Message("store-database-newer", step=current)
            raise StoreError(Problem("database", shown(self.url), wrong))
        return current == head


@cache
def steps() -> tuple[frozenset[str], str]:
    """The revisions of all migrations, and the last of them; their files are read once a process."""
    script = ScriptDirectory(str(MIGRATIONS))
    head = script.get_current_head()
    assert head is not None
    return frozenset(step.revision for step in script.walk_revisions()), head


class Unopened:
    """The address of a database, and its engine, of which nothing is read or migrated yet. Raises StoreError."""

    def __init__(self, url: str) -> None:
        self.url = _readable(url)
        self.shown = shown(self.url)
        self.engine = _engine(self.url)

    def is_file(self, path: str | None) -> bool:
        """Whether it is the SQLite file ``path``, under whatever name."""
        if self.url.get_backend_name() != "sqlite" or not path:
            return False
        return Path(str(self.url.database)).resolve() == Path(path).resolve()


def migrate(connection: Connection, to: str = "head") -> None:
    """Brings the tables up to a step, or down to it, in the transaction of ``connection``.

    Down: raises StoreError where the older version would forget that hoses are held back.
    """
    take(connection, Turn.MIGRATION)
    config = Config()
    config.set_main_option("script_location", str(MIGRATIONS).replace("%", "%%"))
    config.attributes["connection"] = connection
    current = MigrationContext.configure(connection).get_current_revision()
    down = to != "head" and current is not None and int(to) < int(current)
    (command.downgrade if down else command.upgrade)(config, to)


def shown(url: URL) -> str:
    """The address without its password."""
    return url.render_as_string(hide_password=True)


def _readable(url: str) -> URL:
    try:
        parsed = make_url(url)
    except ArgumentError:
        raise StoreError(Problem("database", url, Message("store-database-address", address=url))) from None
    if parsed.drivername in ("postgresql", "postgres"):
        return parsed.set(drivername="postgresql+psycopg")
    if parsed.get_backend_name() not in ("sqlite", "postgresql"):
        raise StoreError(Problem("database", shown(parsed), Message("store-database-kind")))
    return parsed


def _engine(url: URL) -> Engine:
    if url.get_backend_name() != "sqlite":
        engine = create_engine(
            url,
            connect_args={name: value for name, value in _DEAD_AFTER.items() if name not in url.query},
            pool_pre_ping=True,
            pool_size=10,
            max_overflow=20,
            json_serializer=texts.as_json,
        )
        event.listen(engine, "checkin", _as_the_server_says)
        return engine
    if url.database in (None, "", ":memory:"):
        raise StoreError(Problem("database", shown(url), Message("store-database-in-memory")))
    path = Path(str(url.database))
    path.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
    _make_private(path)
    engine = create_engine(
        url,
        poolclass=QueuePool,
        connect_args={"timeout": 30},
        pool_size=10,
        json_serializer=texts.as_json,
    )
    event.listen(engine, "connect", _prepare_sqlite)
    event.listen(engine, "begin", _begin_sqlite)
    event.listen(engine, "handle_error", _as_postgresql_says)
    return engine


def _as_postgresql_says(context: ExceptionContext) -> DataError | None:
    """A number of more than 64 bits is data that cannot be kept, and no error of the program."""
    error = context.original_exception
    if isinstance(error, OverflowError):
        return DataError(context.statement, None, error)
    return None


def _as_the_server_says(connection: psycopg.Connection | None, _: Any) -> None:
    """Whether a connection may write is the server's word again; SQLAlchemy leaves READ WRITE, which overrides
    a database that was made read-only.
    """
    if connection is not None and not connection.closed:
        connection.read_only = None


def _make_private(path: Path) -> None:
    """Let nobody but its owner read the database: it names customers. SQLite's files beside it follow it."""
    with suppress(OSError):  # a folder that is not there or is read-only: SQLite says so in its own words
        os.close(os.open(path, os.O_RDWR | os.O_CREAT, 0o600))
        if path.stat().st_mode & 0o077:
            path.chmod(0o600)


def _prepare_sqlite(connection: sqlite3.Connection, _: Any) -> None:
    """WAL, so that readers never wait; FULL, so that a number once given survives a power cut."""
    connection.isolation_level = None  # we say BEGIN ourselves, see below
    folding.teach(connection)
    for pragma in ("journal_mode=WAL", "synchronous=FULL", "foreign_keys=ON", "busy_timeout=30000"):
        connection.execute(f"PRAGMA {pragma}").close()


def _begin_sqlite(connection: Connection) -> None:
    """A writer takes the lock at once: it must not read something and find it changed later."""
    writes = connection.get_execution_options().get("writes")
    connection.exec_driver_sql("BEGIN IMMEDIATE" if writes else "BEGIN")


__all__ = ["DBAPIError", "Database", "default_url", "shown"]
