"""Why the database did not do what it was asked for, told from its error."""

from __future__ import annotations

import sqlite3
from enum import StrEnum

from sqlalchemy.exc import DBAPIError
from sqlalchemy.exc import TimeoutError as NoConnectionFree

from tagger.errors import Problem
from tagger.messages import Message


class Trouble(StrEnum):
    """What is wrong with the database, not with the request. ``message`` says it and its mend."""

    FULL = "full"
    READ_ONLY = "read-only"
    BUSY = "busy"
    AWAY = "away"

    @property
    def retry_after_s(self) -> int:
        """When it makes sense to ask again: soon where others are in the way, later where somebody must come."""
        return {Trouble.BUSY: 5, Trouble.AWAY: 10}.get(self, 60)

    @property
    def message(self) -> Message:
        return Message(f"store-database-{self.value}")

    @property
    def problem(self) -> Problem:
        return Problem("database", None, self.message)


_SQLITE = {
    sqlite3.SQLITE_FULL: Trouble.FULL,
    sqlite3.SQLITE_READONLY: Trouble.READ_ONLY,
    sqlite3.SQLITE_PERM: Trouble.READ_ONLY,
    sqlite3.SQLITE_BUSY: Trouble.BUSY,
    sqlite3.SQLITE_LOCKED: Trouble.BUSY,
    sqlite3.SQLITE_IOERR: Trouble.AWAY,
    sqlite3.SQLITE_CANTOPEN: Trouble.AWAY,
}
"""By the low byte of SQLite's result codes, https://www.sqlite.org/rescode.html"""
_NO_WRITE = (sqlite3.SQLITE_IOERR_WRITE, sqlite3.SQLITE_IOERR_FSYNC, sqlite3.SQLITE_IOERR_TRUNCATE)
"""A file that cannot grow: a quota, or a largest file size."""
_POSTGRESQL = {
    "53100": Trouble.FULL,  # disk_full
    "25006": Trouble.READ_ONLY,  # read_only_sql_transaction
    "53300": Trouble.BUSY,  # too_many_connections
    "55P03": Trouble.BUSY,  # lock_not_available
    "40P01": Trouble.BUSY,  # deadlock_detected, after all tries
    "40001": Trouble.BUSY,  # serialization_failure, after all tries
}
"""By SQLSTATE, https://www.postgresql.org/docs/current/errcodes-appendix.html"""
_AWAY = ("08", "57")  # connection exception, operator intervention: classes of SQLSTATE


def trouble_of(error: Exception) -> Trouble | None:
    """What is wrong with the database; None where the error is of another kind, such as a bad value.

    SQLite takes a whole transaction back when the disk is full. What then fails is to take back an act
    within it; the error behind that one says why.
    """
    found, behind = _of_one(error), error.__context__
    return trouble_of(behind) if found is None and isinstance(behind, DBAPIError) else found


def _of_one(error: Exception) -> Trouble | None:
    if isinstance(error, NoConnectionFree):
        return Trouble.BUSY
    if not isinstance(error, DBAPIError):
        return None
    if isinstance(error.orig, sqlite3.Error):
        code = getattr(error.orig, "sqlite_errorcode", 0)
        return Trouble.FULL if code in _NO_WRITE else _SQLITE.get(code & 0xFF)
    state = getattr(error.orig, "sqlstate", None)
    if state is None:  # the driver's own word: no server, or it hung up
        return Trouble.AWAY if error.connection_invalidated or _no_server(error) else None
    return _POSTGRESQL.get(state) or (Trouble.AWAY if state[:2] in _AWAY else None)


def _no_server(error: DBAPIError) -> bool:
    return type(error.orig).__name__ in ("OperationalError", "ConnectionTimeout")
