"""Where somebody is signed in, and what happened to their account."""

import sqlalchemy as sa
from alembic import op

revision = "18"
down_revision = "17"


def upgrade() -> None:
    op.add_column("person", sa.Column("untold", sa.Boolean(), nullable=False, server_default=sa.false()))
    op.add_column("session", sa.Column("address", sa.String(length=64), nullable=True))
    op.add_column("session", sa.Column("phone", sa.Boolean(), nullable=True))
    op.create_table(
        "account_note",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("what", sa.String(length=24), nullable=False),
        sa.Column("by", sa.String(length=80), nullable=True),
        sa.Column("address", sa.String(length=64), nullable=True),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name=op.f("fk_account_note_person_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_account_note")),
    )
    op.create_index(op.f("ix_account_note_person_id"), "account_note", ["person_id"])


def downgrade() -> None:
    op.drop_table("account_note")
    for table, column in (("session", "phone"), ("session", "address"), ("person", "untold")):
        op.drop_column(table, column)
