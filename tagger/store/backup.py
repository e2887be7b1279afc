"""A consistent copy of everything, verified; and reading it back.

The copy is one SQLite file with the same tables, whatever database it was taken from. So a copy
of a PostgreSQL database can be opened on any machine, and restored into either kind. It is sealed
(``sealed.py``): a file of which one bit changed is refused before a row of it is read.
"""

from __future__ import annotations

import hashlib
import json
import re
import shutil
import sqlite3
import tempfile
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Any, Final

from sqlalchemy import Connection, LargeBinary, column, func, insert, select, text, update
from sqlalchemy import Table as SqlTable
from sqlalchemy import table as light_table

from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.store import sealed
from tagger.store.base import Part
from tagger.store.chain import START, Head, head_of
from tagger.store.database import Database
from tagger.store.models import PrintJobRow, Table
from tagger.store.texts import unchecked
from tagger.store.values import PrintState

_NOT_COPIED = frozenset(
    {"session", "sign_in_code", "try", "known_browser"}
)  # they belong to the running program
_SEALED: Final = 0x7467_5331  # SQLite's "application id" of a copy that must end in a seal
_KEPT: Final = re.compile(r"tags-\d{8}-\d{6}\.copy")


@dataclass(frozen=True)
class Copied:
    """What a copy holds: rows by table, a digest of each table, one over all, and the head of the chain."""

    rows: dict[str, int]
    digests: dict[str, str]
    digest: str
    head: Head


class Backup(Part):
    """The part of the store that copies itself."""

    def backup(self, path: Path | str) -> Copied:
        """Writes a copy to ``path``, reads it back, compares the two, and seals it.

        The file appears only when it is whole, and never in place of another; its digest stands
        beside it as ``path``.sha256. Both are readable by their owner only. Raises StoreError for a
        file that is there already or belongs to the database, for a folder that is not there, and
        when the copy does not read back.
        """
        path = Path(path)
        part = path.with_name(path.name + ".part")
        self._refuse_own_files("backup", path, part)
        _refuse_taken(path)
        if not path.parent.is_dir():
            folder = str(path.parent)
            raise StoreError(Problem("backup", folder, Message("store-backup-no-folder", path=folder)))
        for old in _files(part):
            old.unlink(missing_ok=True)
        held = self._written(path, part)
        line = sealed.seal(part, path.name)
        try:
            _refuse_taken(path)  # somebody else's, since we looked
        except StoreError:
            part.unlink()
            raise
        part.replace(path)
        sealed.beside(path).touch(mode=0o600)
        sealed.beside(path).write_text(line, encoding="ascii")
        return held

    def _written(self, path: Path, part: Path) -> Copied:
        """Everything, in one SQLite file ``part``, read back and compared."""
        with self.reading() as session:
            source = session.connection()
            copy = Database(f"sqlite:///{part}")
            try:
                with copy.engine.execution_options(writes=True).begin() as target:
                    copy_rows(source, target)
                with copy.engine.connect() as written:
                    taken, held = digest_rows(source), digest_rows(written)
            finally:
                copy.close()
        _single_file(part)
        if taken != held:
            part.unlink()
            raise StoreError(
                Problem("backup", str(path), Message("store-backup-not-verified", path=str(path)))
            )
        return held

    def backup_and_keep(self, folder: Path | str, keep: int) -> tuple[Path, Copied, list[Path]]:
        """Writes a copy named after the present second into ``folder``; removes all but the latest ``keep``.

        Returns the copy, what it holds, and the copies that were removed. Only files named as this
        act names them are ever removed, and only after the new copy was read back.
        """
        folder = Path(folder)
        path = folder / f"tags-{datetime.now(UTC):%Y%m%d-%H%M%S}.copy"
        copied = self.backup(path)
        ours = sorted(file for file in folder.iterdir() if _KEPT.fullmatch(file.name))
        removed = [file for file in ours[: -max(1, keep)] if file != path]
        for file in removed:
            file.unlink()
            sealed.beside(file).unlink(missing_ok=True)
        return path, copied, removed

    def restore(self, path: Path | str, *, unsealed: bool = False) -> Copied:
        """Reads a copy into this database, which must be empty, and compares the two.

        All of it, or nothing. A copy made by an older version is brought up to date on the way;
        the file itself is not touched. Raises StoreError for a copy of which a bit changed; with
        ``unsealed``, a copy of a version that did not seal them is read unproved.
        """
        self._refuse_own_files("restore", Path(path))
        with tempfile.TemporaryDirectory() as folder:
            file = _checked_copy(Path(path), Path(folder), unsealed=unsealed)
            source_database = Database(f"sqlite:///{file}")
            try:
                with source_database.engine.connect() as source, _empty(self.database) as target:
                    copy_rows(source, target)
                    set_sequences(target)
                    if (held := digest_rows(target)) != digest_rows(source):
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


def drill(path: Path | str, url: str | None = None) -> Copied:
    """Restores the copy ``path`` into a scratch database and compares them: would it serve today?

    The scratch database is a SQLite file that is removed afterwards, or the empty one at ``url``.
    Raises StoreError as ``restore`` does.
    """
    with tempfile.TemporaryDirectory() as folder:
        scratch = Backup(Database(url or f"sqlite:///{folder}/scratch.sqlite3"))
        try:
            return scratch.restore(path)
        finally:
            scratch.database.close()


def head_in(path: Path) -> Head:
    """The head of the chain as the copy ``path`` carries it. Raises StoreError as ``restore`` does."""
    with tempfile.TemporaryDirectory() as folder:
        file = _checked_copy(path, Path(folder), unsealed=False)
        with closing(sqlite3.connect(file)) as connection:
            if not connection.execute("SELECT 1 FROM sqlite_master WHERE name = 'chain'").fetchone():
                wrong = Message("store-audit-no-head", path=str(path))
                raise StoreError(Problem("--backup", str(path), wrong))
            last = connection.execute("SELECT id, link FROM chain ORDER BY id DESC LIMIT 1").fetchone()
    return Head(*last) if last else Head(0, START)


def _refuse_taken(path: Path) -> None:
    for one in (path, sealed.beside(path)):
        if one.exists() or one.is_symlink():
            raise StoreError(Problem("backup", str(one), Message("store-backup-exists", path=str(one))))


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


def copy_rows(source: Connection, target: Connection) -> None:
    """Every row that is kept, from one database into another whose tables are empty."""
    for table in _tables():
        kept = light_table(table.name, *(column(c.name, unchecked(c.type)) for c in table.columns))
        for rows in _rows(source, table):
            target.execute(insert(kept), rows)


def _rows(source: Connection, table: SqlTable) -> Iterator[list[dict[str, Any]]]:
    keys = list(table.primary_key.columns)
    size = 10 if any(isinstance(c.type, LargeBinary) for c in table.columns) else 500
    result = source.execute(select(table).order_by(*keys), execution_options={"yield_per": size})
    for chunk in result.mappings().partitions(size):
        yield [dict(row) for row in chunk]


def digest_rows(connection: Connection) -> Copied:
    """Equal for equal content in either database, whatever the order of the rows.

    The databases sort text keys by rules of their own, so the rows' digests are added up: nothing is
    sorted, and no table is held in memory.
    """
    whole, counts, digests = hashlib.sha256(), {}, {}
    for table in _tables():
        total = count = 0
        for rows in _rows(connection, table):
            for row in rows:
                line = json.dumps(row, sort_keys=True, default=str, ensure_ascii=False)
                total += int.from_bytes(hashlib.sha256(line.encode()).digest(), "big")
            count += len(rows)
        counts[table.name], digests[table.name] = count, f"{total % 2**256:064x}"
        whole.update(f"{table.name} {count} {digests[table.name]}\n".encode())
    return Copied(counts, digests, whole.hexdigest(), head_of(connection))


def _single_file(path: Path) -> None:
    """Folds the write-ahead log into the file, so that one file is the whole copy."""
    connection = sqlite3.connect(path)
    try:
        connection.execute("PRAGMA journal_mode=DELETE")
        connection.execute(f"PRAGMA application_id={_SEALED}")
    finally:
        connection.close()


def _files(path: Path) -> list[Path]:
    return [path, *(path.with_name(path.name + end) for end in ("-wal", "-shm", "-journal"))]


def _checked_copy(path: Path, folder: Path, *, unsealed: bool) -> Path:
    """The SQLite file in the copy ``path``, in ``folder``, whose every bit is as it was written."""
    if not path.is_file():
        raise StoreError(Problem("restore", str(path), Message("store-restore-no-file", path=str(path))))
    file = folder / "copy.sqlite3"
    if sealed.is_sealed(path) or sealed.beside(path).exists():
        try:
            sealed.unsealed(path, file)
        except sealed.SealBroken:
            raise StoreError(
                Problem("restore", str(path), Message("store-restore-changed", path=str(path)))
            ) from None
    else:
        shutil.copyfile(path, file)
    must_be_sealed = _sound(path, file)
    if not sealed.is_sealed(path):
        if must_be_sealed:
            raise StoreError(Problem("restore", str(path), Message("store-restore-changed", path=str(path))))
        if not unsealed:
            raise StoreError(Problem("restore", str(path), Message("store-restore-unsealed", path=str(path))))
    return file


def _sound(path: Path, file: Path) -> bool:
    """Whether the copy must end in a seal. Raises StoreError where ``file`` is no whole database of ours."""
    connection = sqlite3.connect(file)
    try:
        sound = connection.execute("PRAGMA integrity_check").fetchone()[0] == "ok"
        ours = connection.execute("SELECT 1 FROM sqlite_master WHERE name = 'assembly'").fetchone()
        named = bool(connection.execute("PRAGMA application_id").fetchone()[0] == _SEALED)
    except sqlite3.DatabaseError:
        sound, ours, named = False, None, False
    finally:
        connection.close()
    if not sound or ours is None:
        raise StoreError(Problem("restore", str(path), Message("store-restore-not-a-backup", path=str(path))))
    return named


def _hold_prints(target: Connection) -> None:
    """Mark print jobs of the copy for a decision: they may have been printed since it was taken."""
    on_the_way = PrintJobRow.state.in_((PrintState.WAITING, PrintState.SENDING))
    why = (Message("store-print-restored"),)
    held = update(PrintJobRow).where(on_the_way).values(state=PrintState.FAILED, why=why)
    target.execute(held)


def set_sequences(target: Connection) -> None:
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
