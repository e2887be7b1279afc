"""Taking turns. SQLite has one writer at a time; PostgreSQL needs to be told who waits for whom.

A lock is held until the transaction ends. Where several are taken in one transaction it is in the
order of this list, then rows; a deadlock that is left is broken by the database and done again
(``Database.act``).
"""

from __future__ import annotations

from enum import IntEnum

from sqlalchemy import Connection, text
from sqlalchemy.orm import Session


class Turn(IntEnum):
    """What is done in turns; the numbers must be the same in every process."""

    MIGRATION = 0x7A66E12
    TRIES = 0x7A66E16  # counted one after the other, so that no two are both the last that is allowed
    PEOPLE = 0x7A66E13  # who is a manager, and which names are taken
    WITHDRAWALS = 0x7A66E14  # withdrawing waits until registrations under way have ended, and they for it
    EVENTS = 0x7A66E15  # the ids of history follow the order in which it becomes visible


def take(where: Session | Connection, turn: Turn, *, shared: bool = False) -> None:
    """Waits for the turn; ``shared`` with all others who share it."""
    connection = where.connection() if isinstance(where, Session) else where
    if connection.dialect.name == "postgresql":
        kind = "pg_advisory_xact_lock_shared" if shared else "pg_advisory_xact_lock"
        connection.execute(text(f"SELECT {kind}(:turn)"), {"turn": int(turn)})
