"""Codes of a phone at signing in, browsers that are known, and sessions that end when idle."""

import sqlalchemy as sa
from alembic import op

revision = "15"
down_revision = "14"


def upgrade() -> None:
    op.add_column("person", sa.Column("code_secret", sa.String(length=64), nullable=True))
    op.add_column("person", sa.Column("code_step", sa.Integer(), nullable=False, server_default="0"))
    op.add_column("session", sa.Column("seen_at", sa.DateTime(timezone=True), nullable=True))
    op.add_column(
        "session", sa.Column("awaits_code", sa.Boolean(), nullable=False, server_default=sa.false())
    )
    op.create_table(
        "recovery_code",
        sa.Column("hash", sa.String(length=64), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name=op.f("fk_recovery_code_person_id")),
        sa.PrimaryKeyConstraint("hash", name=op.f("pk_recovery_code")),
    )
    op.create_index(op.f("ix_recovery_code_person_id"), "recovery_code", ["person_id"])
    op.create_table(
        "known_browser",
        sa.Column("hash", sa.String(length=64), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name=op.f("fk_known_browser_person_id")),
        sa.PrimaryKeyConstraint("hash", "person_id", name=op.f("pk_known_browser")),
    )


def downgrade() -> None:
    op.drop_table("known_browser")
    op.drop_table("recovery_code")
    for table, column in (
        ("session", "awaits_code"),
        ("session", "seen_at"),
        ("person", "code_step"),
        ("person", "code_secret"),
    ):
        op.drop_column(table, column)
