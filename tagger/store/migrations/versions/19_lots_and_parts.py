"""The lots that hoses were built from, each once with its letters and digits alone: a withdrawal finds every spelling
among them. On PostgreSQL an index over the parts of all these texts, so that a name is found without reading each.
"""

import unicodedata
from collections.abc import Iterator, Sequence
from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "19"
down_revision = "18"

_LOTS = """
SELECT DISTINCT scope, lot FROM (
    SELECT 'hose_lot' AS scope, hose_lot AS lot FROM assembly
    UNION ALL SELECT 'fitting_lot', fitting_lot_a FROM assembly
    UNION ALL SELECT 'fitting_lot', fitting_lot_b FROM assembly
    UNION ALL SELECT scope, value FROM former_lot WHERE scope IN ('hose_lot', 'fitting_lot')
) AS named WHERE lot IS NOT NULL AND lot <> ''
AND NOT EXISTS (SELECT 1 FROM recorded_text WHERE field = scope AND text = lot)
"""
_TEXTS = sa.table("recorded_text", sa.column("field"), sa.column("text"), sa.column("folded"))
_AT_ONCE = 1000


def upgrade() -> None:
    connection = op.get_bind()
    found = connection.execute(sa.text(_LOTS)).all()
    for start in range(0, len(found), _AT_ONCE):
        connection.execute(_TEXTS.insert(), list(_rows(found[start : start + _AT_ONCE])))
    if connection.dialect.name == "postgresql":
        op.execute(
            "CREATE FUNCTION text_parts(text) RETURNS text[] LANGUAGE sql IMMUTABLE PARALLEL SAFE RETURN "
            "(SELECT array_agg(substr($1, at, 3)) FROM generate_series(1, length($1) - 2) AS at)"
        )
        op.execute(
            "CREATE INDEX ix_recorded_text_parts ON recorded_text USING gin (text_parts(folded)) WITH (fastupdate = off)"
        )


def _rows(found: Sequence[Any]) -> Iterator[dict[str, str]]:
    for scope, lot in found:
        key = " ".join(unicodedata.normalize("NFKC", lot).split()).upper()
        bare = "".join(one for one in key if one.isalnum()) or key
        yield {"field": scope, "text": lot, "folded": bare}


def downgrade() -> None:
    """The lots stay: the version before passes over them."""
    if op.get_bind().dialect.name == "postgresql":
        op.drop_index("ix_recorded_text_parts", "recorded_text")
        op.execute("DROP FUNCTION text_parts(text)")
