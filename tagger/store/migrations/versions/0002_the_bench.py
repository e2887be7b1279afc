"""What the bench needs: people, sessions, tokens, recipes, crimp diameters, messages to send."""

import sqlalchemy as sa
from alembic import op

from tagger.store.migrations.append_only import guard
from tagger.store.models import Json, Moment

revision = "0002"
down_revision = "0001"


def upgrade() -> None:
    op.create_table(
        "crimp",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("hose_standard", sa.String(length=40), nullable=False),
        sa.Column("hose_dash", sa.Integer(), nullable=False),
        sa.Column("shell", sa.String(length=60), nullable=False),
        sa.Column("diameter_mm", sa.Double(), nullable=False),
        sa.Column("minus_mm", sa.Double(), nullable=False),
        sa.Column("plus_mm", sa.Double(), nullable=False),
        sa.Column("source", sa.String(length=120), nullable=False),
        sa.Column("at", Moment(), nullable=False),
        sa.Column("by", sa.String(length=80), nullable=True),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_crimp")),
    )
    op.create_index("ix_crimp_hose_standard_hose_dash", "crimp", ["hose_standard", "hose_dash"])
    op.create_table(
        "message",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("channel", sa.String(length=12), nullable=False),
        sa.Column("target", sa.String(length=255), nullable=False),
        sa.Column("body", Json, nullable=False),
        sa.Column("created_at", Moment(), nullable=False),
        sa.Column("attempts", sa.Integer(), nullable=False),
        sa.Column("next_at", Moment(), nullable=False),
        sa.Column("delivered_at", Moment(), nullable=True),
        sa.Column("last_error", sa.Text(), nullable=True),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_message")),
    )
    op.create_index("ix_message_delivered_at_next_at", "message", ["delivered_at", "next_at"])
    op.create_table(
        "person",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("name", sa.String(length=80), nullable=False),
        sa.Column("password_hash", sa.String(length=255), nullable=False),
        sa.Column("role", sa.String(length=12), nullable=False),
        sa.Column("active", sa.Boolean(), nullable=False),
        sa.Column("created_at", Moment(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_person")),
        sa.UniqueConstraint("name", name=op.f("uq_person_name")),
    )
    op.create_table(
        "recipe",
        sa.Column("name", sa.String(length=80), nullable=False),
        sa.Column("spec", Json, nullable=False),
        sa.Column("saved_at", Moment(), nullable=False),
        sa.Column("saved_by", sa.String(length=80), nullable=True),
        sa.PrimaryKeyConstraint("name", name=op.f("pk_recipe")),
    )
    op.create_table(
        "sign_in_code",
        sa.Column("hash", sa.String(length=64), nullable=False),
        sa.Column("created_at", Moment(), nullable=False),
        sa.PrimaryKeyConstraint("hash", name=op.f("pk_sign_in_code")),
    )
    op.create_table(
        "token",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("hash", sa.String(length=64), nullable=False),
        sa.Column("name", sa.String(length=80), nullable=False),
        sa.Column("role", sa.String(length=12), nullable=False),
        sa.Column("created_at", Moment(), nullable=False),
        sa.Column("created_by", sa.String(length=80), nullable=True),
        sa.Column("revoked_at", Moment(), nullable=True),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_token")),
        sa.UniqueConstraint("hash", name=op.f("uq_token_hash")),
    )
    op.create_table(
        "session",
        sa.Column("id", sa.String(length=64), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("csrf", sa.String(length=64), nullable=False),
        sa.Column("created_at", Moment(), nullable=False),
        sa.Column("expires_at", Moment(), nullable=False),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name=op.f("fk_session_person_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_session")),
    )
    op.create_index(op.f("ix_session_person_id"), "session", ["person_id"])
    guard("crimp")
