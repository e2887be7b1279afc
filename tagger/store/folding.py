"""Comparing text in any case: "Écluse", "écluse" and "ÉCLUSE" are one.

Databases' own lower() will not do: SQLite's knows ASCII only, PostgreSQL's what its locale knows.
``folded`` is a function in either database: here in SQLite, by a migration in PostgreSQL.
"""

from __future__ import annotations

import sqlite3
from typing import Any

from sqlalchemy import ColumnElement, func
from sqlalchemy.orm import InstrumentedAttribute

from tagger.store.texts import Line


def fold(text: str | None) -> str | None:
    """Upper case, then lower: so "ß" is "ss", and PostgreSQL can do the same."""
    return None if text is None else text.upper().lower()


def folded(column: InstrumentedAttribute[Any]) -> ColumnElement[str]:
    """A column in the database, folded; compare it with text that went through ``fold``."""
    return func.folded(column, type_=Line(None, column.key))


def teach(connection: sqlite3.Connection) -> None:
    """Gives a SQLite connection the function."""
    connection.create_function("folded", 1, fold, deterministic=True)
