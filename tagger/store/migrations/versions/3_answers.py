"""Answers kept by the key of their request, so that a repeat does nothing twice."""

import sqlalchemy as sa
from alembic import op

from tagger.store.models import Moment
from tagger.store.texts import Json

revision = "3"
down_revision = "2"


def upgrade() -> None:
    op.create_table(
        "answer",
        sa.Column("key", sa.String(length=120), nullable=False),
        sa.Column("fingerprint", sa.String(length=64), nullable=False),
        sa.Column("answer", Json, nullable=False),
        sa.Column("at", Moment(), nullable=False),
        sa.PrimaryKeyConstraint("key", name=op.f("pk_answer")),
    )


def downgrade() -> None:
    op.drop_table("answer")
