"""A consistent copy of everything, verified; and reading it back.

The copy is one SQLite file with the same tables, whatever database it was taken from. So a copy
of a PostgreSQL database can be opened on any machine, and restored into either kind.
"""

from __future__ import annotations

import hashlib
import json
import shutil
import sqlite3
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, column, func, insert, select, text, update
from sqlalchemy import Table as SqlTable
from sqlalchemy import table as light_table

from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.store.base import Part
from tagger.store.database import Database
from tagger.store.models import PrintJobRow, Table
from tagger.store.texts import unchecked
from tagger.store.values import PrintState

_NOT_COPIED = frozenset({"session", "sign_in_code"})  # they end with the running program


@dataclass(frozen=True)
class Copied:
    """What a copy holds: rows by table, and one digest over all of them."""

    rows: dict[str, int]
    digest: str


class Backup(Part):
    """The part of the store that copies itself."""

    def backup(self, path: Path | str) -> Copied:
        """Writes a copy to ``path``, reads it back, and compares the two.

        The file appears only when it is whole, and never in place of another. Raises StoreError for
        a file that is there already or belongs to the database, for a folder that is not there, and
        when the copy does not read back.
        """
        path = Path(path)
        part = path.with_name(path.name + ".part")
        self._refuse_own_files("backup", path, part)
        if path.exists() or path.is_symlink():
            raise StoreError(Problem("backup", str(path), Message("store-backup-exists", path=str(path))))
        if not path.parent.is_dir():
            folder = str(path.parent)
            raise StoreError(Problem("backup", folder, Message("store-backup-no-folder", path=folder)))
        for old in _files(part):
            old.unlink(missing_ok=True)
        with self.reading() as session:
            source = session.connection()
            copy = Database(f"sqlite:///{part}")
            try:
                with copy.engine.execution_options(writes=True).begin() as target:
                    _copy(source, target)
                with copy.engine.connect() as written:
                    taken, held = _digest(source), _digest(written)
            finally:
                copy.close()
        _single_file(part)
        if taken != held:
            part.unlink()
            raise StoreError(
                Problem("backup", str(path), Message("store-backup-not-verified", path=str(path)))
            )
        if path.exists():  # somebody else's, since we looked
            part.unlink()
            raise StoreError(Problem("backup", str(path), Message("store-backup-meanwhile", path=str(path))))
        part.replace(path)
        return held

    def restore(self, path: Path | str) -> Copied:
        """Reads a copy into this database, which must be empty, and compares the two.

        All of it, or nothing. A copy made by an older version is brought up to date on the way;
        the file itself is not touched.
        """
        self._refuse_own_files("restore", Path(path))
        with tempfile.TemporaryDirectory() as folder:
            file = _checked_copy(Path(path), Path(folder))
            source_database = Database(f"sqlite:///{file}")
            try:
                with source_database.engine.connect() as source, _empty(self.database) as target:
                    _copy(source, target)
                    _set_sequences(target)
                    if (held := _digest(target)) != _digest(source):
                        raise StoreError(Problem("restore", str(path), Message("store-restore-incomplete")))
                    _hold_prints(target)
                    return held
            finally:
                source_database.close()

    def _refuse_own_files(self, field: str, *paths: Path) -> None:
        """Refuses the database's own file and those SQLite keeps beside it, under whatever name."""
        url = self.database.engine.url
        if url.get_backend_name() != "sqlite" or not url.database or url.database == ":memory:":
            return
        own = [file.resolve() for file in _files(Path(url.database))]
        for path in paths:
            if any(path.resolve() == file or _same(path, file) for file in own):
                wrong = Message("store-backup-own-file", path=str(path))
                raise StoreError(Problem(field, str(path), wrong))


def _same(one: Path, other: Path) -> bool:
    return one.exists() and other.exists() and one.samefile(other)


@contextmanager
def _empty(database: Database) -> Iterator[Connection]:
    """A transaction in a database in which nothing could be mixed up."""
    with database.engine.execution_options(writes=True).begin() as connection:
        used = [t.name for t in _tables() if connection.scalar(select(func.count()).select_from(t))]
        if used:
            raise StoreError(Problem("restore", None, Message("store-restore-not-empty", tables=tuple(used))))
        yield connection


def _tables() -> list[SqlTable]:
    return [table for table in Table.metadata.sorted_tables if table.name not in _NOT_COPIED]


def _copy(source: Connection, target: Connection) -> None:
    for table in _tables():
        kept = light_table(table.name, *(column(c.name, unchecked(c.type)) for c in table.columns))
        for rows in _rows(source, table):
            target.execute(insert(kept), rows)


def _rows(source: Connection, table: SqlTable, size: int = 1000) -> Iterator[list[dict[str, Any]]]:
    keys = list(table.primary_key.columns)
    result = source.execute(select(table).order_by(*keys), execution_options={"yield_per": size})
    for chunk in result.mappings().partitions(size):
        yield [dict(row) for row in chunk]


def _digest(connection: Connection) -> Copied:
    """Row by row in the order of the keys; equal for equal content in either database."""
    whole, counts = hashlib.sha256(), {}
    for table in _tables():
        lines = []
        for rows in _rows(connection, table):
            lines += [json.dumps(row, sort_keys=True, default=str, ensure_ascii=False) for row in rows]
        counts[table.name] = len(lines)
        for line in sorted(lines):  # the databases sort text keys by rules of their own
            whole.update(line.encode() + b"\n")
    return Copied(counts, whole.hexdigest())


def _single_file(path: Path) -> None:
    """Folds the write-ahead log into the file, so that one file is the whole copy."""
    connection = sqlite3.connect(path)
    try:
        connection.execute("PRAGMA journal_mode=DELETE")
    finally:
        connection.close()


def _files(path: Path) -> list[Path]:
    return [path, *(path.with_name(path.name + end) for end in ("-wal", "-shm", "-journal"))]


def _checked_copy(path: Path, folder: Path) -> Path:
    if not path.is_file():
        raise StoreError(Problem("restore", str(path), Message("store-restore-no-file", path=str(path))))
    file = folder / "copy.sqlite3"
    shutil.copyfile(path, file)
    connection = sqlite3.connect(file)
    try:
        sound = connection.execute("PRAGMA integrity_check").fetchone()[0] == "ok"
        ours = connection.execute("SELECT 1 FROM sqlite_master WHERE name = 'assembly'").fetchone()
    except sqlite3.DatabaseError:
        sound, ours = False, None
    finally:
        connection.close()
    if not sound or ours is None:
        raise StoreError(Problem("restore", str(path), Message("store-restore-not-a-backup", path=str(path))))
    return file


def _hold_prints(target: Connection) -> None:
    """Mark print jobs of the copy for a decision: they may have been printed since it was taken."""
    on_the_way = PrintJobRow.state.in_((PrintState.WAITING, PrintState.SENDING))
    why = (Message("store-print-restored"),)
    held = update(PrintJobRow).where(on_the_way).values(state=PrintState.FAILED, why=why)
    target.execute(held)


def _set_sequences(target: Connection) -> None:
    """PostgreSQL counts ids apart from the rows; without this the next id would be taken."""
    if target.dialect.name != "postgresql":
        return
    for table in _tables():
        key = next(iter(table.primary_key.columns))
        if key.type.python_type is int:
            target.execute(
                text(
                    f"SELECT setval(pg_get_serial_sequence('{table.name}', '{key.name}'), "
                    f"COALESCE((SELECT max({key.name}) FROM {table.name}), 0) + 1, false)"
                )
            )
