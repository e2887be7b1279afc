"""Whether a database can be worked with now: it answers, has the tables of this version, and takes what is written."""

from __future__ import annotations

import shutil
import tempfile
from pathlib import Path
from typing import Final

from alembic.runtime.migration import MigrationContext
from sqlalchemy import text
from sqlalchemy.exc import SQLAlchemyError

from tagger.store.database import Database, steps

ROOM_BYTES: Final = 50_000_000
"""What must be free where SQLite's file is: some thousand registrations, with what SQLite keeps beside it."""
NOTHING: Final = {"database": False, "schema": False, "disk": False}
_MOST_MS: Final = 5_000  # after which PostgreSQL gives an answer up, so that no question waits without end
_WRITES = text("SELECT NOT pg_is_in_recovery() AND current_setting('default_transaction_read_only') = 'off'")


def readiness(database: Database) -> dict[str, bool]:
    """By name what holds: ``database`` answers, ``schema`` is this version's, ``disk`` can be written.

    Of PostgreSQL ``disk`` says that its server takes writes: its disk is its own.
    """
    try:
        with database.engine.connect() as connection:
            connection.execute(text("SELECT 1"))
            if connection.dialect.name == "postgresql":
                connection.execute(text(f"SET LOCAL statement_timeout = {_MOST_MS}"))
                takes_writes = bool(connection.scalar(_WRITES))
            else:
                takes_writes = _room_beside(database)
            step = MigrationContext.configure(connection).get_current_revision()
        current = step == steps()[1]
    except SQLAlchemyError:
        return dict(NOTHING)
    return {"database": True, "schema": current, "disk": takes_writes}


def _room_beside(database: Database) -> bool:
    """Whether a file can be written beside SQLite's, and there is room."""
    folder = Path(str(database.url.database)).parent
    try:
        with tempfile.NamedTemporaryFile(dir=folder, prefix=".ready-") as file:
            file.write(b"x" * 4096)
            file.flush()
        return shutil.disk_usage(folder).free >= ROOM_BYTES
    except OSError:
        return False
