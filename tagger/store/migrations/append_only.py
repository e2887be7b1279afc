"""Triggers with which the database refuses to change or delete what is history."""

from alembic import op

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
