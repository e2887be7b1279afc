"""The tables. Only this package sees them; everyone else gets the values of values.py.

Nothing here is ever deleted: history and order events are append-only (triggers in the database
refuse anything else), an assembly row never changes, and a withdrawal ends by being lifted.
"""

from __future__ import annotations

from datetime import UTC, date, datetime
from typing import Any, ClassVar

from sqlalchemy import (
    JSON,
    DateTime,
    ForeignKey,
    Index,
    MetaData,
    String,
    Text,
    TypeDecorator,
    UniqueConstraint,
)
from sqlalchemy.dialects.postgresql import JSONB
from sqlalchemy.engine import Dialect
from sqlalchemy.orm import DeclarativeBase, Mapped, mapped_column

Json = JSON(none_as_null=True).with_variant(JSONB(none_as_null=True), "postgresql")


class Moment(TypeDecorator[datetime]):
    """A moment in UTC; SQLite forgets the zone, so it is put back when read."""

    impl = DateTime(timezone=True)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        return None if value is None else value.astimezone(UTC)

    def process_result_value(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        if value is None:
            return None
        return value.replace(tzinfo=UTC) if value.tzinfo is None else value.astimezone(UTC)


class Table(DeclarativeBase):
    metadata = MetaData(
        naming_convention={
            "ix": "ix_%(table_name)s_%(column_0_N_name)s",
            "uq": "uq_%(table_name)s_%(column_0_N_name)s",
            "fk": "fk_%(table_name)s_%(column_0_name)s",
            "pk": "pk_%(table_name)s",
        }
    )
    type_annotation_map: ClassVar[dict[Any, Any]] = {datetime: Moment, dict[str, Any]: Json, list[Any]: Json}


class RegistrationRow(Table):
    """One act of registering: one assembly or a whole run. Its key makes a repeat harmless."""

    __tablename__ = "registration"

    id: Mapped[int] = mapped_column(primary_key=True)
    key: Mapped[str | None] = mapped_column(String(80), unique=True)
    fingerprint: Mapped[str] = mapped_column(String(64))
    created_at: Mapped[datetime]


class DesignRow(Table):
    """A spec and what the tables said of it when it was registered; ``id`` is the hash of both.

    Kept apart from the assemblies because it is many times their size, and a run shares one.
    """

    __tablename__ = "design"

    id: Mapped[str] = mapped_column(String(64), primary_key=True)
    spec: Mapped[dict[str, Any]]
    assessment: Mapped[dict[str, Any]]


class AssemblyRow(Table):
    """One finished assembly; the last columns are copies of the design's, to search by."""

    __tablename__ = "assembly"
    __table_args__ = (
        Index("ix_assembly_machine_position", "machine", "position"),
        UniqueConstraint("registration_id", "place"),
    )

    number: Mapped[str] = mapped_column(String(11), primary_key=True)
    registration_id: Mapped[int] = mapped_column(ForeignKey("registration.id"))
    place: Mapped[int]  # position within its registration
    design_id: Mapped[str] = mapped_column(ForeignKey("design.id"))
    digits: Mapped[str] = mapped_column(Text)
    built_on: Mapped[date | None] = mapped_column(index=True)
    customer: Mapped[str | None] = mapped_column(String(120), index=True)
    machine: Mapped[str | None] = mapped_column(String(120))
    position: Mapped[str | None] = mapped_column(String(120))
    replaces: Mapped[str | None] = mapped_column(String(11), index=True)
    order_reference: Mapped[str | None] = mapped_column(String(12), index=True)
    registered_by: Mapped[str | None] = mapped_column(String(80))
    created_at: Mapped[datetime] = mapped_column(index=True)
    hose_standard: Mapped[str] = mapped_column(String(40))
    hose_dash: Mapped[int]
    hose_lot: Mapped[str | None] = mapped_column(String(40), index=True)
    fitting_lot_a: Mapped[str | None] = mapped_column(String(40), index=True)
    fitting_lot_b: Mapped[str | None] = mapped_column(String(40), index=True)
    connection_a: Mapped[str] = mapped_column(String(20))
    connection_b: Mapped[str] = mapped_column(String(20))
    working_pressure_bar: Mapped[float | None]


class EventRow(Table):
    """One line of an assembly's history."""

    __tablename__ = "event"
    __table_args__ = (Index("ix_event_number_id", "number", "id"), Index("ix_event_kind_at", "kind", "at"))

    id: Mapped[int] = mapped_column(primary_key=True)
    number: Mapped[str] = mapped_column(ForeignKey("assembly.number"))
    kind: Mapped[str] = mapped_column(String(24))
    at: Mapped[datetime]
    by: Mapped[str | None] = mapped_column(String(80))
    data: Mapped[dict[str, Any]]


class OrderRow(Table):
    """One order request. Its state is the last of its events."""

    __tablename__ = "order_request"

    reference: Mapped[str] = mapped_column(String(12), primary_key=True)
    key: Mapped[str | None] = mapped_column(String(80), unique=True)
    fingerprint: Mapped[str] = mapped_column(String(64))
    number: Mapped[str | None] = mapped_column(String(11), index=True)  # may be another shop's tag
    spec: Mapped[dict[str, Any]]
    quantity: Mapped[int]
    needed_by: Mapped[date | None]
    customer_reference: Mapped[str | None] = mapped_column(String(80))
    contact: Mapped[dict[str, Any]]
    changes: Mapped[str | None] = mapped_column(Text)
    state: Mapped[str] = mapped_column(String(16), index=True)
    created_at: Mapped[datetime] = mapped_column(index=True)


class OrderEventRow(Table):
    """One step of an order request."""

    __tablename__ = "order_event"

    id: Mapped[int] = mapped_column(primary_key=True)
    reference: Mapped[str] = mapped_column(ForeignKey("order_request.reference"), index=True)
    state: Mapped[str] = mapped_column(String(16))
    at: Mapped[datetime]
    by: Mapped[str | None] = mapped_column(String(80))
    note: Mapped[str | None] = mapped_column(Text)


class WithdrawalRow(Table):
    """A withdrawal of one tag, or of everything made from a hose lot or a fitting lot."""

    __tablename__ = "withdrawal"
    __table_args__ = (Index("ix_withdrawal_scope_value", "scope", "value"),)

    id: Mapped[int] = mapped_column(primary_key=True)
    scope: Mapped[str] = mapped_column(String(12))
    value: Mapped[str] = mapped_column(String(40))
    reason: Mapped[str] = mapped_column(Text)
    at: Mapped[datetime]
    by: Mapped[str | None] = mapped_column(String(80))
    lifted_at: Mapped[datetime | None]
    lifted_by: Mapped[str | None] = mapped_column(String(80))
    lifted_why: Mapped[str | None] = mapped_column(Text)


class PersonRow(Table):
    """Somebody who signs in. ``name`` is compared in lower case."""

    __tablename__ = "person"

    id: Mapped[int] = mapped_column(primary_key=True)
    name: Mapped[str] = mapped_column(String(80), unique=True)
    password_hash: Mapped[str] = mapped_column(String(255))
    role: Mapped[str] = mapped_column(String(12))
    active: Mapped[bool]
    created_at: Mapped[datetime]


class SessionRow(Table):
    """One browser that is signed in; ``id`` is the hash of what its cookie holds."""

    __tablename__ = "session"

    id: Mapped[str] = mapped_column(String(64), primary_key=True)
    person_id: Mapped[int] = mapped_column(ForeignKey("person.id"), index=True)
    csrf: Mapped[str] = mapped_column(String(64))
    created_at: Mapped[datetime]
    expires_at: Mapped[datetime]


class TokenRow(Table):
    """One device or program that uses the JSON API; ``hash`` is that of its token."""

    __tablename__ = "token"

    id: Mapped[int] = mapped_column(primary_key=True)
    hash: Mapped[str] = mapped_column(String(64), unique=True)
    name: Mapped[str] = mapped_column(String(80))
    role: Mapped[str] = mapped_column(String(12))
    created_at: Mapped[datetime]
    created_by: Mapped[str | None] = mapped_column(String(80))
    revoked_at: Mapped[datetime | None]


class SignInCodeRow(Table):
    """A one-time code with which the first manager is made."""

    __tablename__ = "sign_in_code"

    hash: Mapped[str] = mapped_column(String(64), primary_key=True)
    created_at: Mapped[datetime]


class RecipeRow(Table):
    """A spec kept under a name, to start from."""

    __tablename__ = "recipe"

    name: Mapped[str] = mapped_column(String(80), primary_key=True)
    spec: Mapped[dict[str, Any]]
    saved_at: Mapped[datetime]
    saved_by: Mapped[str | None] = mapped_column(String(80))


class CrimpRow(Table):
    """The crimp diameter that the shop keeps for one hose and shell; the newest row holds."""

    __tablename__ = "crimp"
    __table_args__ = (Index("ix_crimp_hose_standard_hose_dash", "hose_standard", "hose_dash"),)

    id: Mapped[int] = mapped_column(primary_key=True)
    hose_standard: Mapped[str] = mapped_column(String(40))
    hose_dash: Mapped[int]
    shell: Mapped[str] = mapped_column(String(60))
    diameter_mm: Mapped[float]
    minus_mm: Mapped[float]
    plus_mm: Mapped[float]
    source: Mapped[str] = mapped_column(String(120))
    at: Mapped[datetime]
    by: Mapped[str | None] = mapped_column(String(80))


class MessageRow(Table):
    """Something to tell another system or person; kept until it is delivered."""

    __tablename__ = "message"
    __table_args__ = (Index("ix_message_delivered_at_next_at", "delivered_at", "next_at"),)

    id: Mapped[int] = mapped_column(primary_key=True)
    channel: Mapped[str] = mapped_column(String(12))
    target: Mapped[str] = mapped_column(String(255))
    body: Mapped[dict[str, Any]]
    created_at: Mapped[datetime]
    attempts: Mapped[int]
    next_at: Mapped[datetime]
    delivered_at: Mapped[datetime | None]
    last_error: Mapped[str | None] = mapped_column(Text)


class PrinterRow(Table):
    """A printer of the shop, in the network by IPP. Never deleted: jobs and history name it."""

    __tablename__ = "printer"

    id: Mapped[int] = mapped_column(primary_key=True)
    name: Mapped[str] = mapped_column(String(40), unique=True)
    uri: Mapped[str] = mapped_column(String(255))
    dpi: Mapped[int]
    template: Mapped[str | None] = mapped_column(String(80))
    added_at: Mapped[datetime]
    added_by: Mapped[str | None] = mapped_column(String(80))
    retired_at: Mapped[datetime | None]
    retired_by: Mapped[str | None] = mapped_column(String(80))


class PrintJobRow(Table):
    """Tags to one printer, kept until somebody knows what became of them, and after."""

    __tablename__ = "print_job"
    __table_args__ = (Index("ix_print_job_state_printer_id", "state", "printer_id"),)

    id: Mapped[int] = mapped_column(primary_key=True)
    key: Mapped[str | None] = mapped_column(String(120), unique=True)
    fingerprint: Mapped[str] = mapped_column(String(64))
    printer_id: Mapped[int] = mapped_column(ForeignKey("printer.id"))
    numbers: Mapped[list[Any]]
    template: Mapped[str] = mapped_column(String(80))
    reason: Mapped[str] = mapped_column(String(120))
    state: Mapped[str] = mapped_column(String(12))
    why: Mapped[str | None] = mapped_column(Text)
    attempts: Mapped[int]
    printer_job: Mapped[int | None]
    created_at: Mapped[datetime]
    created_by: Mapped[str | None] = mapped_column(String(80))
    changed_at: Mapped[datetime]
    changed_by: Mapped[str | None] = mapped_column(String(80))


APPEND_ONLY = ("registration", "design", "assembly", "event", "order_event", "crimp")
"""Tables in which the database itself refuses UPDATE and DELETE."""
