"""Records made void, and what is corrected in a record: its customer, place, lots and note, nothing else.

An assembly's row was closed to every change. From now on those columns may be corrected, with a line of
history that keeps both values; all others stay closed. A lot that was corrected away is kept beside it.
"""

import sqlalchemy as sa
from alembic import op

from tagger.store.migrations.append_only import fix, guard, refuse_to_forget, unguard
from tagger.store.models import Moment

revision = "9"
down_revision = "8"

FIXED = (
    "number", "registration_id", "place", "digits", "built_on", "replaces", "order_reference", "registered_by",
    "reason", "created_at", "hose_standard", "hose_dash", "connection_a", "connection_b", "working_pressure_bar",
)  # fmt: skip


def upgrade() -> None:
    op.create_table(
        "void",
        sa.Column("number", sa.String(length=11), nullable=False),
        sa.Column("reason", sa.Text(), nullable=False),
        sa.Column("at", Moment(), nullable=False),
        sa.Column("by", sa.String(length=80), nullable=True),
        sa.ForeignKeyConstraint(["number"], ["assembly.number"], name=op.f("fk_void_number")),
        sa.PrimaryKeyConstraint("number", name=op.f("pk_void")),
    )
    op.create_table(
        "former_lot",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("number", sa.String(length=11), nullable=False),
        sa.Column("scope", sa.String(length=12), nullable=False),
        sa.Column("value", sa.String(length=40), nullable=False),
        sa.ForeignKeyConstraint(["number"], ["assembly.number"], name=op.f("fk_former_lot_number")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_former_lot")),
    )
    op.create_index("ix_former_lot_scope_value", "former_lot", ["scope", "value"])
    op.create_index(op.f("ix_former_lot_number"), "former_lot", ["number"])
    guard("void")
    guard("former_lot")
    fix("assembly", FIXED)


def downgrade() -> None:
    refuse_to_forget("void")  # its hoses would be used
    refuse_to_forget("former_lot")  # withdrawals would miss them
    unguard("assembly")
    for table in ("former_lot", "void"):
        unguard(table)
        op.drop_table(table)
    guard("assembly")
