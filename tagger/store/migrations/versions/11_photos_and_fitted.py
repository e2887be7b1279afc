"""Photos that come with an order request or a report, reports that a hose assembly was fitted, PINs of tags."""

import sqlalchemy as sa
from alembic import op

from tagger.store.models import Moment

revision = "11"
down_revision = "10"


def upgrade() -> None:
    op.create_table(
        "fitted_report",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("key", sa.String(length=80), nullable=True),
        sa.Column("fingerprint", sa.String(length=64), nullable=False),
        sa.Column("number", sa.String(length=11), nullable=False),
        sa.Column("fitted_on", sa.Date(), nullable=False),
        sa.Column("machine", sa.String(length=120), nullable=True),
        sa.Column("machine_hours", sa.Double(), nullable=True),
        sa.Column("fitted_by", sa.String(length=120), nullable=True),
        sa.Column("at", Moment(), nullable=False),
        sa.Column("state", sa.String(length=12), nullable=False),
        sa.Column("decided_at", Moment(), nullable=True),
        sa.Column("decided_by", sa.String(length=80), nullable=True),
        sa.Column("why", sa.Text(), nullable=True),
        sa.ForeignKeyConstraint(["number"], ["assembly.number"], name=op.f("fk_fitted_report_number")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_fitted_report")),
        sa.UniqueConstraint("key", name=op.f("uq_fitted_report_key")),
    )
    op.create_index(op.f("ix_fitted_report_number"), "fitted_report", ["number"])
    op.create_index(op.f("ix_fitted_report_state"), "fitted_report", ["state"])
    op.create_table(
        "photo",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("order_reference", sa.String(length=12), nullable=True),
        sa.Column("fitted_report_id", sa.Integer(), nullable=True),
        sa.Column("what", sa.String(length=12), nullable=False),
        sa.Column("image", sa.LargeBinary(), nullable=False),
        sa.Column("at", Moment(), nullable=False),
        sa.ForeignKeyConstraint(
            ["order_reference"], ["order_request.reference"], name=op.f("fk_photo_order_reference")
        ),
        sa.ForeignKeyConstraint(
            ["fitted_report_id"], ["fitted_report.id"], name=op.f("fk_photo_fitted_report_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_photo")),
    )
    op.create_index(op.f("ix_photo_order_reference"), "photo", ["order_reference"])
    op.create_index(op.f("ix_photo_fitted_report_id"), "photo", ["fitted_report_id"])
    op.create_table(
        "tag_pin",
        sa.Column("number", sa.String(length=11), nullable=False),
        sa.Column("pin", sa.String(length=6), nullable=False),
        sa.Column("at", Moment(), nullable=False),
        sa.ForeignKeyConstraint(["number"], ["assembly.number"], name=op.f("fk_tag_pin_number")),
        sa.PrimaryKeyConstraint("number", name=op.f("pk_tag_pin")),
    )


def downgrade() -> None:
    for table in ("tag_pin", "photo", "fitted_report"):
        op.drop_table(table)
