"""Printers in the network, and print jobs that survive a restart."""

import sqlalchemy as sa
from alembic import op

from tagger.store.models import Moment
from tagger.store.texts import Json

revision = "2"
down_revision = "1"


def upgrade() -> None:
    op.create_table(
        "printer",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("name", sa.String(length=40), nullable=False),
        sa.Column("uri", sa.String(length=255), nullable=False),
        sa.Column("dpi", sa.Integer(), nullable=False),
        sa.Column("template", sa.String(length=80), nullable=True),
        sa.Column("added_at", Moment(), nullable=False),
        sa.Column("added_by", sa.String(length=80), nullable=True),
        sa.Column("retired_at", Moment(), nullable=True),
        sa.Column("retired_by", sa.String(length=80), nullable=True),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_printer")),
        sa.UniqueConstraint("name", name=op.f("uq_printer_name")),
    )
    op.create_table(
        "print_job",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("key", sa.String(length=120), nullable=True),
        sa.Column("fingerprint", sa.String(length=64), nullable=False),
        sa.Column("printer_id", sa.Integer(), nullable=False),
        sa.Column("numbers", Json, nullable=False),
        sa.Column("template", sa.String(length=80), nullable=False),
        sa.Column("reason", sa.String(length=120), nullable=False),
        sa.Column("state", sa.String(length=12), nullable=False),
        sa.Column("why", sa.Text(), nullable=True),
        sa.Column("attempts", sa.Integer(), nullable=False),
        sa.Column("printer_job", sa.Integer(), nullable=True),
        sa.Column("created_at", Moment(), nullable=False),
        sa.Column("created_by", sa.String(length=80), nullable=True),
        sa.Column("changed_at", Moment(), nullable=False),
        sa.Column("changed_by", sa.String(length=80), nullable=True),
        sa.ForeignKeyConstraint(["printer_id"], ["printer.id"], name=op.f("fk_print_job_printer_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_print_job")),
        sa.UniqueConstraint("key", name=op.f("uq_print_job_key")),
    )
    op.create_index("ix_print_job_state_printer_id", "print_job", ["state", "printer_id"])


def downgrade() -> None:
    op.drop_table("print_job")
    op.drop_table("printer")
