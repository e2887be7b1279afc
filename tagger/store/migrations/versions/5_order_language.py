"""The language of an order request: its customer is answered in it. None: the shop's language."""

import sqlalchemy as sa
from alembic import op

revision = "5"
down_revision = "4"


def upgrade() -> None:
    op.add_column("order_request", sa.Column("language", sa.String(length=12), nullable=True))


def downgrade() -> None:
    op.drop_column("order_request", "language")
