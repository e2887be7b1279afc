"""The first tables.

The database itself keeps history append-only: changing or deleting a line is refused there.
"""

import sqlalchemy as sa
from alembic import op

from tagger.store.migrations.append_only import guard
from tagger.store.models import Moment
from tagger.store.texts import Json

revision = "1"
down_revision = None

APPEND_ONLY = ("registration", "design", "assembly", "event", "order_event", "crimp")


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
        "design",
        sa.Column("id", sa.String(length=64), nullable=False),
        sa.Column("spec", Json, nullable=False),
        sa.Column("assessment", Json, nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_design")),
    )
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
        "order_request",
        sa.Column("reference", sa.String(length=12), nullable=False),
        sa.Column("key", sa.String(length=80), nullable=True),
        sa.Column("fingerprint", sa.String(length=64), nullable=False),
        sa.Column("number", sa.String(length=11), nullable=True),
        sa.Column("spec", Json, nullable=False),
        sa.Column("quantity", sa.Integer(), nullable=False),
        sa.Column("needed_by", sa.Date(), nullable=True),
        sa.Column("customer_reference", sa.String(length=80), nullable=True),
        sa.Column("contact", Json, nullable=False),
        sa.Column("changes", sa.Text(), nullable=True),
        sa.Column("state", sa.String(length=16), nullable=False),
        sa.Column("created_at", Moment(), nullable=False),
        sa.PrimaryKeyConstraint("reference", name=op.f("pk_order_request")),
        sa.UniqueConstraint("key", name=op.f("uq_order_request_key")),
    )
    op.create_index(op.f("ix_order_request_created_at"), "order_request", ["created_at"])
    op.create_index(op.f("ix_order_request_number"), "order_request", ["number"])
    op.create_index(op.f("ix_order_request_state"), "order_request", ["state"])
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
        "registration",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("key", sa.String(length=80), nullable=True),
        sa.Column("fingerprint", sa.String(length=64), nullable=False),
        sa.Column("created_at", Moment(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_registration")),
        sa.UniqueConstraint("key", name=op.f("uq_registration_key")),
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
        "withdrawal",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("scope", sa.String(length=12), nullable=False),
        sa.Column("value", sa.String(length=40), nullable=False),
        sa.Column("reason", sa.Text(), nullable=False),
        sa.Column("at", Moment(), nullable=False),
        sa.Column("by", sa.String(length=80), nullable=True),
        sa.Column("lifted_at", Moment(), nullable=True),
        sa.Column("lifted_by", sa.String(length=80), nullable=True),
        sa.Column("lifted_why", sa.Text(), nullable=True),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_withdrawal")),
    )
    op.create_index("ix_withdrawal_scope_value", "withdrawal", ["scope", "value"])
    op.create_table(
        "assembly",
        sa.Column("number", sa.String(length=11), nullable=False),
        sa.Column("registration_id", sa.Integer(), nullable=False),
        sa.Column("place", sa.Integer(), nullable=False),
        sa.Column("design_id", sa.String(length=64), nullable=False),
        sa.Column("digits", sa.Text(), nullable=False),
        sa.Column("built_on", sa.Date(), nullable=True),
        sa.Column("customer", sa.String(length=120), nullable=True),
        sa.Column("machine", sa.String(length=120), nullable=True),
        sa.Column("position", sa.String(length=120), nullable=True),
        sa.Column("replaces", sa.String(length=11), nullable=True),
        sa.Column("order_reference", sa.String(length=12), nullable=True),
        sa.Column("registered_by", sa.String(length=80), nullable=True),
        sa.Column("created_at", Moment(), nullable=False),
        sa.Column("hose_standard", sa.String(length=40), nullable=False),
        sa.Column("hose_dash", sa.Integer(), nullable=False),
        sa.Column("hose_lot", sa.String(length=40), nullable=True),
        sa.Column("fitting_lot_a", sa.String(length=40), nullable=True),
        sa.Column("fitting_lot_b", sa.String(length=40), nullable=True),
        sa.Column("connection_a", sa.String(length=20), nullable=False),
        sa.Column("connection_b", sa.String(length=20), nullable=False),
        sa.Column("working_pressure_bar", sa.Double(), nullable=True),
        sa.ForeignKeyConstraint(["design_id"], ["design.id"], name=op.f("fk_assembly_design_id")),
        sa.ForeignKeyConstraint(
            ["registration_id"], ["registration.id"], name=op.f("fk_assembly_registration_id")
        ),
        sa.PrimaryKeyConstraint("number", name=op.f("pk_assembly")),
        sa.UniqueConstraint("registration_id", "place", name=op.f("uq_assembly_registration_id_place")),
    )
    op.create_index(op.f("ix_assembly_built_on"), "assembly", ["built_on"])
    op.create_index(op.f("ix_assembly_created_at"), "assembly", ["created_at"])
    op.create_index(op.f("ix_assembly_customer"), "assembly", ["customer"])
    op.create_index(op.f("ix_assembly_fitting_lot_a"), "assembly", ["fitting_lot_a"])
    op.create_index(op.f("ix_assembly_fitting_lot_b"), "assembly", ["fitting_lot_b"])
    op.create_index(op.f("ix_assembly_hose_lot"), "assembly", ["hose_lot"])
    op.create_index("ix_assembly_machine_position", "assembly", ["machine", "position"])
    op.create_index(op.f("ix_assembly_order_reference"), "assembly", ["order_reference"])
    op.create_index(op.f("ix_assembly_replaces"), "assembly", ["replaces"])
    op.create_table(
        "order_event",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("reference", sa.String(length=12), nullable=False),
        sa.Column("state", sa.String(length=16), nullable=False),
        sa.Column("at", Moment(), nullable=False),
        sa.Column("by", sa.String(length=80), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.ForeignKeyConstraint(
            ["reference"], ["order_request.reference"], name=op.f("fk_order_event_reference")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_order_event")),
    )
    op.create_index(op.f("ix_order_event_reference"), "order_event", ["reference"])
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
    op.create_table(
        "event",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("number", sa.String(length=11), nullable=False),
        sa.Column("kind", sa.String(length=24), nullable=False),
        sa.Column("at", Moment(), nullable=False),
        sa.Column("by", sa.String(length=80), nullable=True),
        sa.Column("data", Json, nullable=False),
        sa.ForeignKeyConstraint(["number"], ["assembly.number"], name=op.f("fk_event_number")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_event")),
    )
    op.create_index("ix_event_kind_at", "event", ["kind", "at"])
    op.create_index("ix_event_number_id", "event", ["number", "id"])
    for table in APPEND_ONLY:
        guard(table)
