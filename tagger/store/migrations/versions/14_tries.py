"""Tries that all servers count together: wrong passwords, codes and PINs, order requests and reports."""

import sqlalchemy as sa
from alembic import op

revision = "14"
down_revision = "13"


def upgrade() -> None:
    op.create_table(
        "try",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("key", sa.String(length=64), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_try")),
    )
    op.create_index("ix_try_key_at", "try", ["key", "at"])
    op.create_index(op.f("ix_try_at"), "try", ["at"])


def downgrade() -> None:
    op.drop_table("try")
