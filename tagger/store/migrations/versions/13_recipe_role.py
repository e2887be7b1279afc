"""Who saved a recipe, by role: one of a manager is replaced by a manager alone."""

import sqlalchemy as sa
from alembic import op

revision = "13"
down_revision = "12"


def upgrade() -> None:
    op.add_column("recipe", sa.Column("saved_role", sa.String(length=12), nullable=True))


def downgrade() -> None:
    op.drop_column("recipe", "saved_role")
