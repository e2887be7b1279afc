"""The cleanliness that is asked for of an assembly; and crimp cards that were deleted."""

import sqlalchemy as sa
from alembic import op

revision = "12"
down_revision = "11"


def upgrade() -> None:
    op.add_column("assembly", sa.Column("cleanliness", sa.String(length=120), nullable=True))
    op.add_column("crimp", sa.Column("dropped", sa.Boolean(), nullable=False, server_default=sa.false()))
