"""The shop's own rows of the trade's tables; of each key one holds."""

import sqlalchemy as sa
from alembic import op

from tagger.store.models import Moment
from tagger.store.texts import Json

revision = "6"
down_revision = "5"

_HOLDS = sa.text("ended_at IS NULL")


def upgrade() -> None:
    op.create_table(
        "shop_row",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("table_name", sa.String(length=40), nullable=False),
        sa.Column("key", sa.String(length=400), nullable=False),
        sa.Column("cells", Json(), nullable=False),
        sa.Column("at", Moment(), nullable=False),
        sa.Column("by", sa.String(length=80), nullable=True),
        sa.Column("ended_at", Moment(), nullable=True),
        sa.Column("ended_by", sa.String(length=80), nullable=True),
        sa.Column("why", sa.String(length=200), nullable=True),
        sa.Column("replaced_by", sa.Integer(), nullable=True),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_shop_row")),
    )
    op.create_index(
        "uq_shop_row_holds",
        "shop_row",
        ["table_name", "key"],
        unique=True,
        postgresql_where=_HOLDS,
        sqlite_where=_HOLDS,
    )


def downgrade() -> None:
    op.drop_table("shop_row")
