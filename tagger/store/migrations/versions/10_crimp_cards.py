"""Crimp cards: beside the diameter the hose's own part number, die, skives, insertion depth, machine setting."""

from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "10"
down_revision = "9"

NEW: tuple[sa.Column[Any], ...] = (
    sa.Column("die", sa.String(length=60), nullable=True),
    sa.Column("skive_outside_mm", sa.Double(), nullable=True),
    sa.Column("skive_inside_mm", sa.Double(), nullable=True),
    sa.Column("insertion_depth_mm", sa.Double(), nullable=True),
    sa.Column("machine_setting", sa.String(length=120), nullable=True),
)


def upgrade() -> None:
    op.add_column("crimp", sa.Column("hose_part", sa.String(length=40), nullable=False, server_default=""))
    for column in NEW:
        op.add_column("crimp", column)


def downgrade() -> None:
    for name in ("hose_part", *(column.name for column in NEW)):
        op.drop_column("crimp", name)
