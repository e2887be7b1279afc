"""Text compared in any case; and of one tag or lot only one withdrawal that holds."""

import sqlalchemy as sa
from alembic import op

revision = "4"
down_revision = "3"

_OPEN = sa.text("lifted_at IS NULL")
_ICU = sa.text("SELECT count(*) FROM pg_collation WHERE collname = 'und-x-icu'")
_TWICE = """
UPDATE withdrawal SET lifted_at = at, lifted_why = 'the same was withdrawn twice at once: the first holds'
WHERE lifted_at IS NULL AND EXISTS (
    SELECT 1 FROM withdrawal AS first WHERE first.scope = withdrawal.scope AND first.value = withdrawal.value
    AND first.lifted_at IS NULL AND first.id < withdrawal.id
)
"""


def upgrade() -> None:
    connection = op.get_bind()
    if connection.dialect.name == "postgresql":  # SQLite is given the function when it is opened
        # A server built without ICU knows the case of what its locale knows.
        collation = 'COLLATE "und-x-icu"' if connection.scalar(_ICU) else ""
        op.execute(
            "CREATE FUNCTION folded(text) RETURNS text LANGUAGE sql IMMUTABLE PARALLEL SAFE "
            f"RETURN lower(upper($1 {collation}) {collation})"
        )
    op.execute(_TWICE)
    op.create_index(
        "uq_withdrawal_open",
        "withdrawal",
        ["scope", "value"],
        unique=True,
        postgresql_where=_OPEN,
        sqlite_where=_OPEN,
    )


def downgrade() -> None:
    op.drop_index("uq_withdrawal_open", "withdrawal")
    if op.get_bind().dialect.name == "postgresql":
        op.execute("DROP FUNCTION folded(text)")
