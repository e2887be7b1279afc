"""All records into another database: every row compared, in one transaction there, the old one closed after it."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

from sqlalchemy import Connection, func, inspect, select, text

from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.store.backup import Copied, copy_rows, digest_rows, set_sequences
from tagger.store.database import MOVED, Database, Unopened, migrate
from tagger.store.models import Table
from tagger.store.recorded_texts import PARTS

_KEPT_ITSELF = ("alembic_version", PARTS.name)
"""Tables of ours that are never written from here."""
_OTHERS = """
SELECT count(*) FROM pg_stat_activity
WHERE datname = current_database() AND backend_type = 'client backend' AND pid <> pg_backend_pid()
"""


def move(source: Database, url: str) -> Copied:
    """Moves everything into the empty database at ``url``; afterwards ``source`` opens no more.

    Sessions stay behind: everybody signs in again. Raises StoreError, and leaves both databases as they
    were, for a source that is in use, a target that is not empty, and any row that differs.
    """
    _refuse_in_use(source)
    target = Unopened(url)
    try:
        if target.url == source.url or target.is_file(source.url.database):
            raise StoreError(Problem("to", target.shown, Message("store-move-itself")))
        with _closed_to_writers(source) as old:
            with target.engine.execution_options(writes=True).begin() as new:
                _refuse_not_empty(new, target.shown)
                migrate(new)
                copy_rows(old, new)
                set_sequences(new)
                moved = _compared(old, new)
            old.execute(text("UPDATE alembic_version SET version_num = :moved"), {"moved": MOVED})
        return moved
    finally:
        target.engine.dispose()


def _refuse_in_use(source: Database) -> None:
    """SQLite gives the file to one connection alone only where no other has it open; PostgreSQL lists them."""
    source.engine.dispose()
    if source.engine.dialect.name == "postgresql":
        with source.engine.connect() as connection:
            if connection.scalar(text(_OTHERS)):
                raise StoreError(Problem("database", source.url.database, Message("store-move-in-use")))
        return
    with closing(sqlite3.connect(str(source.url.database), timeout=0)) as alone:
        try:
            alone.execute("PRAGMA locking_mode=EXCLUSIVE")
            alone.execute("BEGIN EXCLUSIVE")
        except sqlite3.OperationalError as error:
            if error.sqlite_errorcode & 0xFF != sqlite3.SQLITE_BUSY:
                raise
            wrong = Message("store-move-in-use")
            raise StoreError(Problem("database", Path(str(source.url.database)).name, wrong)) from None
        alone.rollback()


@contextmanager
def _closed_to_writers(source: Database) -> Iterator[Connection]:
    """A transaction in which nobody else can write: what is read is all there is."""
    with source.engine.execution_options(writes=True).begin() as connection:
        if connection.dialect.name == "postgresql":
            names = ", ".join(f'"{table.name}"' for table in Table.metadata.sorted_tables)
            connection.execute(text(f"LOCK TABLE {names} IN EXCLUSIVE MODE"))
        yield connection


def _refuse_not_empty(target: Connection, shown: str) -> None:
    """A table of somebody else's counts whatever it holds, one of ours where it has a row."""
    ours = {table.name: table for table in Table.metadata.sorted_tables}
    there = [name for name in inspect(target).get_table_names() if name not in _KEPT_ITSELF]
    used = [
        name
        for name in there
        if name not in ours or target.scalar(select(func.count()).select_from(ours[name]))
    ]
    if used:
        wrong = Message("store-move-not-empty", tables=tuple(sorted(used)))
        raise StoreError(Problem("to", shown, wrong))


def _compared(old: Connection, new: Connection) -> Copied:
    """What both hold. Raises StoreError naming the first table whose rows or digests differ."""
    kept, moved = digest_rows(old), digest_rows(new)
    for table, digest in kept.digests.items():
        if (moved.rows[table], moved.digests[table]) != (kept.rows[table], digest):
            raise StoreError(Problem("to", table, Message("store-move-differs", table=table)))
    return moved
