"""Whether anything in the database has changed, by whichever process, told without looking at it."""

from __future__ import annotations

import sqlite3
from contextlib import suppress

from sqlalchemy import Engine, text

from tagger.store.database import Database


class Watch:
    """Looks at what the database says of its own state; for one thread at a time.

    Two looks that find the same text have seen the same database. SQLite counts the commits of all other
    connections (https://www.sqlite.org/pragma.html#pragma_data_version); this one has its own and writes
    nothing. PostgreSQL names the transactions that a look sees, and so does a standby
    (https://www.postgresql.org/docs/current/functions-info.html, pg_current_snapshot).
    """

    def __init__(self, database: Database) -> None:
        self._engine: Engine = database.engine
        self._file = str(database.url.database) if self._engine.dialect.name == "sqlite" else None
        self._own: sqlite3.Connection | None = None
        self._opened = 0

    @property
    def at_once(self) -> bool:
        """Whether a look takes microseconds and asks nobody else."""
        return self._file is not None

    def look(self) -> str:
        """The state as a text. Raises the database's errors."""
        if self._file is None:
            with self._engine.connect() as connection:
                return str(connection.scalar(text("SELECT pg_current_snapshot()::text")))
        try:
            if self._own is None:
                self._own = sqlite3.connect(
                    f"file:{self._file}?mode=ro", uri=True, isolation_level=None, check_same_thread=False
                )
                self._opened += 1  # counts begin anew with a connection
            [(commits,)] = self._own.execute("PRAGMA data_version").fetchall()
        except sqlite3.Error:
            self.close()
            raise
        return f"{self._opened}:{commits}"

    def close(self) -> None:
        """Gives the connection back."""
        if self._own is not None:
            with suppress(sqlite3.Error):
                self._own.close()
        self._own = None
