"""The cleanliness that is asked for of an assembly; and crimp cards that were deleted."""

import sqlalchemy as sa
from alembic import op

from tagger.store.migrations.append_only import refuse_to_forget

revision = "12"
down_revision = "11"


def upgrade() -> None:
    op.add_column("assembly", sa.Column("cleanliness", sa.String(length=120), nullable=True))
    op.add_column("crimp", sa.Column("dropped", sa.Boolean(), nullable=False, server_default=sa.false()))


def downgrade() -> None:
    refuse_to_forget("crimp", sa.text("dropped"))  # the cards would hold again
    op.drop_column("crimp", "dropped")
    op.drop_column("assembly", "cleanliness")
