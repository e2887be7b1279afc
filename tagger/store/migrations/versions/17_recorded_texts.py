"""The texts that records have, each once: names are looked for among these instead of in every record."""

import sqlalchemy as sa
from alembic import op

revision = "17"
down_revision = "16"

FIELDS = ("customer", "machine", "position", "reason", "cleanliness", "hose_standard")


def upgrade() -> None:
    op.create_table(
        "recorded_text",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("field", sa.String(length=24), nullable=False),
        sa.Column("text", sa.Text(), nullable=False),
        sa.Column("folded", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_recorded_text")),
        sa.UniqueConstraint("field", "text", name=op.f("uq_recorded_text_field_text")),
    )
    for field in FIELDS:
        op.execute(
            f"INSERT INTO recorded_text (field, text, folded) "
            f"SELECT DISTINCT '{field}', {field}, folded({field}) FROM assembly "
            f"WHERE {field} IS NOT NULL AND {field} <> ''"
        )
    op.create_index("ix_recorded_text_field_folded", "recorded_text", ["field", "folded"])


def downgrade() -> None:
    op.drop_table("recorded_text")
