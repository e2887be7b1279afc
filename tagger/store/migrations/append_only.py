"""Triggers with which the database refuses to change or delete what is history."""

from collections.abc import Sequence

import sqlalchemy as sa
from alembic import op

from tagger.errors import Problem, StoreError
from tagger.messages import Message

_POSTGRESQL_FUNCTION = """
CREATE OR REPLACE FUNCTION refuse_change() RETURNS trigger AS $$
BEGIN
    RAISE EXCEPTION 'history is append-only: % of % is refused', TG_OP, TG_TABLE_NAME;
END $$ LANGUAGE plpgsql
"""


def guard(table: str) -> None:
    """From now on ``table`` takes new rows only."""
    if op.get_context().dialect.name == "postgresql":
        op.execute(_POSTGRESQL_FUNCTION)
        op.execute(
            f"CREATE TRIGGER {table}_append_only BEFORE UPDATE OR DELETE ON {table} "
            "FOR EACH ROW EXECUTE FUNCTION refuse_change()"
        )
        return
    for verb in ("update", "delete"):
        op.execute(
            f"CREATE TRIGGER {table}_no_{verb} BEFORE {verb.upper()} ON {table} "
            f"BEGIN SELECT RAISE(ABORT, 'history is append-only: {verb} of {table} is refused'); END"
        )


def fix(table: str, columns: Sequence[str]) -> None:
    """From now on a row of a guarded table is never deleted, and these columns of it never change."""
    named = ", ".join(columns)
    if op.get_context().dialect.name == "postgresql":
        op.execute(f"DROP TRIGGER IF EXISTS {table}_append_only ON {table}")
        op.execute(f"DROP TRIGGER IF EXISTS {table}_fixed ON {table}")
        for name, verb in (("append_only", "DELETE"), ("fixed", f"UPDATE OF {named}")):
            op.execute(
                f"CREATE TRIGGER {table}_{name} BEFORE {verb} ON {table} "
                "FOR EACH ROW EXECUTE FUNCTION refuse_change()"
            )
        return
    op.execute(f"DROP TRIGGER IF EXISTS {table}_no_update")
    op.execute(
        f"CREATE TRIGGER {table}_no_update BEFORE UPDATE OF {named} ON {table} "
        f"BEGIN SELECT RAISE(ABORT, 'history is append-only: update of {table} is refused'); END"
    )


def unguard(table: str) -> None:
    """From now on ``table`` may be changed in every way again; on the way down to an older version only."""
    if op.get_context().dialect.name == "postgresql":
        for name in ("append_only", "fixed"):
            op.execute(f"DROP TRIGGER IF EXISTS {table}_{name} ON {table}")
        return
    for verb in ("update", "delete"):
        op.execute(f"DROP TRIGGER IF EXISTS {table}_no_{verb}")


def refuse_to_forget(table: str, which: sa.TextClause | None = None) -> None:
    """Raises StoreError on the way down where rows say that a hose is held back, which an older version cannot know."""
    query = sa.select(sa.func.count()).select_from(sa.table(table))
    if op.get_bind().scalar(query if which is None else query.where(which)):
        raise StoreError(Problem("database", None, Message("store-database-older", table=table)))
