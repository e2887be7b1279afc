"""What SQLAlchemy has compiled for one engine serves the next of its kind.

A shop's server has one engine for all its life. A test has one of its own, and compiling the same statements anew
for each was a tenth of the CPU of the tests that have a database. The kinds here differ in nothing but their
address: one SQLite, one PostgreSQL, the same way of writing JSON.
"""

from __future__ import annotations

from typing import Any

from sqlalchemy import Connection, event
from sqlalchemy.dialects.postgresql.psycopg import PGDialect_psycopg
from sqlalchemy.dialects.sqlite.pysqlite import SQLiteDialect_pysqlite
from sqlalchemy.engine import Engine

_KINDS: tuple[type[Any], ...] = (SQLiteDialect_pysqlite, PGDialect_psycopg)
_COMPILED: dict[type[Any], dict[Any, Any]] = {kind: {} for kind in _KINDS}


def _same(one: object, other: object) -> bool:
    return type(one) is type(other)


def _kind(one: object) -> int:
    return hash(type(one))


def _share(connection: Connection) -> None:
    if (compiled := _COMPILED.get(type(connection.dialect))) is not None:
        connection.execution_options(compiled_cache=compiled)


def share() -> None:
    """From now on, in this process. A cache's key holds the dialect: two of one kind are the same."""
    if event.contains(Engine, "engine_connect", _share):
        return
    for kind in _KINDS:
        kind.__eq__, kind.__hash__ = _same, _kind  # type: ignore[assignment]
    event.listen(Engine, "engine_connect", _share)
