"""Why an assembly was built although a source speaks of a danger of fluid, heat or cold."""

import sqlalchemy as sa
from alembic import op

revision = "7"
down_revision = "6"


def upgrade() -> None:
    op.add_column("assembly", sa.Column("reason", sa.String(length=120), nullable=True))


def downgrade() -> None:
    op.drop_column("assembly", "reason")
