"""The shop's list of fittings."""

import sqlalchemy as sa
from alembic import op

from tagger.store.migrations.append_only import guard, unguard
from tagger.store.models import Moment
from tagger.store.texts import Json

revision = "8"
down_revision = "7"


def upgrade() -> None:
    op.create_table(
        "fitting",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("key", sa.String(length=40), nullable=False),
        sa.Column("words", sa.Text(), nullable=False),
        sa.Column("kept", Json("fitting"), nullable=True),
        sa.Column("at", Moment(), nullable=False),
        sa.Column("by", sa.String(length=80), nullable=True),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_fitting")),
    )
    op.create_index(op.f("ix_fitting_key"), "fitting", ["key"])
    guard("fitting")


def downgrade() -> None:
    unguard("fitting")
    op.drop_table("fitting")
