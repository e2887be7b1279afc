"""The tables. Only this package sees them; everyone else gets the values of values.py.

Nothing here is ever deleted: history and order events are append-only (triggers in the database
refuse anything else), an assembly row changes only where it is corrected, and a withdrawal ends by being lifted.
"""

from __future__ import annotations

from datetime import UTC, date, datetime
from typing import Any, ClassVar

from sqlalchemy import (
    BigInteger,
    DateTime,
    ForeignKey,
    Index,
    Integer,
    MetaData,
    TypeDecorator,
    UniqueConstraint,
    false,
    text,
)
from sqlalchemy.engine import Dialect
from sqlalchemy.orm import DeclarativeBase, Mapped, mapped_column

from tagger.record import MAX_LENGTH
from tagger.store.said import Said, Told
from tagger.store.texts import Json, Line


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
    type_annotation_map: ClassVar[dict[Any, Any]] = {
        datetime: Moment,
        dict[str, Any]: Json(),
        list[Any]: Json(),
    }


class RegistrationRow(Table):
    """One act of registering: one assembly or a whole run. Its key makes a repeat harmless."""

    __tablename__ = "registration"

    id: Mapped[int] = mapped_column(primary_key=True)
    key: Mapped[str | None] = mapped_column(Line(80, "key"), unique=True)
    fingerprint: Mapped[str] = mapped_column(Line(64, "fingerprint"))
    created_at: Mapped[datetime]


class DesignRow(Table):
    """A spec and what the tables said of it when it was registered; ``id`` is the hash of both.

    Kept apart from the assemblies because it is many times their size, and a run shares one.
    """

    __tablename__ = "design"

    id: Mapped[str] = mapped_column(Line(64, "id"), primary_key=True)
    spec: Mapped[dict[str, Any]]
    assessment: Mapped[dict[str, Any]]


class AssemblyRow(Table):
    """One finished assembly; the last columns are copies of the design's, to search by.

    Customer, place, lots and the design's lots and note may be corrected (correcting.py), nothing else.
    """

    __tablename__ = "assembly"
    __table_args__ = (
        Index("ix_assembly_machine_position", "machine", "position"),
        UniqueConstraint("registration_id", "place"),
    )

    number: Mapped[str] = mapped_column(Line(11, "number"), primary_key=True)
    registration_id: Mapped[int] = mapped_column(ForeignKey("registration.id"))
    place: Mapped[int]  # position within its registration
    design_id: Mapped[str] = mapped_column(ForeignKey("design.id"))
    digits: Mapped[str] = mapped_column(Line(None, "digits"))
    built_on: Mapped[date | None] = mapped_column(index=True)
    customer: Mapped[str | None] = mapped_column(Line(MAX_LENGTH, "customer"), index=True)
    machine: Mapped[str | None] = mapped_column(Line(MAX_LENGTH, "machine"))
    position: Mapped[str | None] = mapped_column(Line(MAX_LENGTH, "position"))
    reason: Mapped[str | None] = mapped_column(Line(MAX_LENGTH, "reason"))
    cleanliness: Mapped[str | None] = mapped_column(Line(MAX_LENGTH, "cleanliness"))
    replaces: Mapped[str | None] = mapped_column(Line(11, "replaces"), index=True)
    order_reference: Mapped[str | None] = mapped_column(Line(12, "order_reference"), index=True)
    registered_by: Mapped[str | None] = mapped_column(Line(80, "registered_by"))
    created_at: Mapped[datetime] = mapped_column(index=True)
    hose_standard: Mapped[str] = mapped_column(Line(40, "hose_standard"))
    hose_dash: Mapped[int]
    hose_lot: Mapped[str | None] = mapped_column(Line(40, "hose_lot"), index=True)
    fitting_lot_a: Mapped[str | None] = mapped_column(Line(40, "fitting_lot_a"), index=True)
    fitting_lot_b: Mapped[str | None] = mapped_column(Line(40, "fitting_lot_b"), index=True)
    connection_a: Mapped[str] = mapped_column(Line(20, "connection_a"))
    connection_b: Mapped[str] = mapped_column(Line(20, "connection_b"))
    working_pressure_bar: Mapped[float | None]


class RecordedTextRow(Table):
    """A text that some assembly has, or had, in a column, once.

    ``folded``: as it is compared, in any case (folding.py), or a lot by its letters and digits alone (lot_names.py).
    PostgreSQL has an index over its parts of three letters (``text_parts``), SQLite a table of them
    (``recorded_part``), each made by a migration.
    """

    __tablename__ = "recorded_text"
    __table_args__ = (
        UniqueConstraint("field", "text"),
        Index("ix_recorded_text_field_folded", "field", "folded"),
        Index(
            "ix_recorded_text_parts",
            text("text_parts(folded)"),
            postgresql_using="gin",
            postgresql_with={"fastupdate": "off"},
        ).ddl_if(dialect="postgresql"),
    )

    id: Mapped[int] = mapped_column(primary_key=True)
    field: Mapped[str] = mapped_column(Line(24, "field"))
    text: Mapped[str] = mapped_column(Line(None, "text"))
    folded: Mapped[str] = mapped_column(Line(None, "text"))


class VoidRow(Table):
    """A record that was made void before anything came of it: its hose must not be fitted."""

    __tablename__ = "void"

    number: Mapped[str] = mapped_column(ForeignKey("assembly.number"), primary_key=True)
    reason: Mapped[str] = mapped_column(Line(None, "reason"))
    at: Mapped[datetime]
    by: Mapped[str | None] = mapped_column(Line(80, "by"))


class FormerLotRow(Table):
    """Another name of an assembly's lot: one that was corrected away, or the spelling under which it was withdrawn.

    A withdrawal of that name holds the assembly.
    """

    __tablename__ = "former_lot"
    __table_args__ = (Index("ix_former_lot_scope_value", "scope", "value"),)

    id: Mapped[int] = mapped_column(primary_key=True)
    number: Mapped[str] = mapped_column(ForeignKey("assembly.number"), index=True)
    scope: Mapped[str] = mapped_column(Line(12, "scope"))
    value: Mapped[str] = mapped_column(Line(40, "lot"))


class EventRow(Table):
    """One line of an assembly's history."""

    __tablename__ = "event"
    __table_args__ = (Index("ix_event_number_id", "number", "id"), Index("ix_event_kind_at", "kind", "at"))

    id: Mapped[int] = mapped_column(primary_key=True)
    number: Mapped[str] = mapped_column(ForeignKey("assembly.number"))
    kind: Mapped[str] = mapped_column(Line(24, "kind"))
    at: Mapped[datetime]
    by: Mapped[str | None] = mapped_column(Line(80, "by"))
    data: Mapped[dict[str, Any]]


_NO_EVENT = text("table_name <> 'event'")


class LinkRow(Table):
    """One link of the chain over what is recorded, see chain.py; ids are counted without a gap.

    ``salt``: None once the row has a newer link.
    """

    __tablename__ = "chain"
    __table_args__ = (
        Index(
            "ix_chain_table_name_row_key",
            "table_name",
            "row_key",
            postgresql_where=_NO_EVENT,
            sqlite_where=_NO_EVENT,
        ),
    )

    id: Mapped[int] = mapped_column(
        BigInteger().with_variant(Integer, "sqlite"), primary_key=True, autoincrement=False
    )
    table: Mapped[str] = mapped_column("table_name", Line(24, "table"))
    key: Mapped[str] = mapped_column("row_key", Line(64, "key"))
    salt: Mapped[str | None] = mapped_column(Line(32, "salt"))
    digest: Mapped[str] = mapped_column(Line(64, "digest"))
    link: Mapped[str] = mapped_column(Line(64, "link"))


class OrderRow(Table):
    """One order request. Its state is the last of its events."""

    __tablename__ = "order_request"

    reference: Mapped[str] = mapped_column(Line(12, "reference"), primary_key=True)
    key: Mapped[str | None] = mapped_column(Line(80, "key"), unique=True)
    fingerprint: Mapped[str] = mapped_column(Line(64, "fingerprint"))
    number: Mapped[str | None] = mapped_column(Line(11, "number"), index=True)  # may be another shop's tag
    spec: Mapped[dict[str, Any]]
    quantity: Mapped[int]
    needed_by: Mapped[date | None]
    customer_reference: Mapped[str | None] = mapped_column(Line(80, "customer_reference"))
    contact: Mapped[dict[str, Any]] = mapped_column(Json("contact"))
    changes: Mapped[str | None] = mapped_column(Line(None, "changes"))
    state: Mapped[str] = mapped_column(Line(16, "state"), index=True)
    created_at: Mapped[datetime] = mapped_column(index=True)
    language: Mapped[str | None] = mapped_column(Line(12, "language"))


class OrderEventRow(Table):
    """One step of an order request."""

    __tablename__ = "order_event"

    id: Mapped[int] = mapped_column(primary_key=True)
    reference: Mapped[str] = mapped_column(ForeignKey("order_request.reference"), index=True)
    state: Mapped[str] = mapped_column(Line(16, "state"))
    at: Mapped[datetime]
    by: Mapped[str | None] = mapped_column(Line(80, "by"))
    note: Mapped[str | None] = mapped_column(Line(None, "note"))


class FittedReportRow(Table):
    """Somebody says that an assembly was fitted. It counts once the shop agrees (fitted.py)."""

    __tablename__ = "fitted_report"

    id: Mapped[int] = mapped_column(primary_key=True)
    key: Mapped[str | None] = mapped_column(Line(80, "key"), unique=True)
    fingerprint: Mapped[str] = mapped_column(Line(64, "fingerprint"))
    number: Mapped[str] = mapped_column(ForeignKey("assembly.number"), index=True)
    fitted_on: Mapped[date]
    machine: Mapped[str | None] = mapped_column(Line(120, "machine"))
    machine_hours: Mapped[float | None]
    fitted_by: Mapped[str | None] = mapped_column(Line(120, "fitted_by"))
    at: Mapped[datetime]
    state: Mapped[str] = mapped_column(Line(12, "state"), index=True)
    decided_at: Mapped[datetime | None]
    decided_by: Mapped[str | None] = mapped_column(Line(80, "decided_by"))
    why: Mapped[str | None] = mapped_column(Line(None, "reason"))


class TagPinRow(Table):
    """The PIN that the shop tells whoever may see the other hoses of a tag's machine."""

    __tablename__ = "tag_pin"

    number: Mapped[str] = mapped_column(ForeignKey("assembly.number"), primary_key=True)
    pin: Mapped[str] = mapped_column(Line(6, "pin"))
    at: Mapped[datetime]


class PhotoRow(Table):
    """A photo that came with an order request or with a report, a JPEG without metadata.

    Erased with the contact of its order request; never changed.
    """

    __tablename__ = "photo"

    id: Mapped[int] = mapped_column(primary_key=True)
    order_reference: Mapped[str | None] = mapped_column(ForeignKey("order_request.reference"), index=True)
    fitted_report_id: Mapped[int | None] = mapped_column(ForeignKey("fitted_report.id"), index=True)
    what: Mapped[str] = mapped_column(Line(12, "what"))
    image: Mapped[bytes]
    at: Mapped[datetime]


_OPEN = text("lifted_at IS NULL")


class WithdrawalRow(Table):
    """A withdrawal of one tag, or of everything made from a hose lot or a fitting lot."""

    __tablename__ = "withdrawal"
    __table_args__ = (
        Index("ix_withdrawal_scope_value", "scope", "value"),
        Index(
            "uq_withdrawal_open", "scope", "value", unique=True, postgresql_where=_OPEN, sqlite_where=_OPEN
        ),
    )

    id: Mapped[int] = mapped_column(primary_key=True)
    scope: Mapped[str] = mapped_column(Line(12, "scope"))
    value: Mapped[str] = mapped_column(Line(40, "lot"))
    reason: Mapped[str] = mapped_column(Line(None, "reason"))
    at: Mapped[datetime]
    by: Mapped[str | None] = mapped_column(Line(80, "by"))
    lifted_at: Mapped[datetime | None]
    lifted_by: Mapped[str | None] = mapped_column(Line(80, "lifted_by"))
    lifted_why: Mapped[str | None] = mapped_column(Line(None, "lifted_why"))


class PersonRow(Table):
    """Somebody who signs in. ``name`` is compared in any case, see folding.py.

    ``code_secret``: what the phone makes codes from (base32, RFC 6238), None where no code is asked for;
    ``code_step``: the step of 30 s of the last code, which is good once; ``untold``: something happened to the
    account (AccountNoteRow) that its owner has not seen yet.
    """

    __tablename__ = "person"

    id: Mapped[int] = mapped_column(primary_key=True)
    name: Mapped[str] = mapped_column(Line(80, "name"), unique=True)
    password_hash: Mapped[str] = mapped_column(Line(255, "password_hash"))
    role: Mapped[str] = mapped_column(Line(12, "role"))
    active: Mapped[bool]
    created_at: Mapped[datetime]
    code_secret: Mapped[str | None] = mapped_column(Line(64, "code_secret"))
    code_step: Mapped[int] = mapped_column(server_default="0")
    untold: Mapped[bool] = mapped_column(server_default=false())


class AccountNoteRow(Table):
    """What happened to somebody's account, such as a new password; ``by``: who did it, None for themselves."""

    __tablename__ = "account_note"

    id: Mapped[int] = mapped_column(primary_key=True)
    person_id: Mapped[int] = mapped_column(ForeignKey("person.id"), index=True)
    at: Mapped[datetime]
    what: Mapped[str] = mapped_column(Line(24, "what"))
    by: Mapped[str | None] = mapped_column(Line(80, "by"))
    address: Mapped[str | None] = mapped_column(Line(64, "address"))


class RecoveryCodeRow(Table):
    """A code that stands once for the phone which makes somebody's codes; ``hash`` is that of the code."""

    __tablename__ = "recovery_code"

    hash: Mapped[str] = mapped_column(Line(64, "hash"), primary_key=True)
    person_id: Mapped[int] = mapped_column(ForeignKey("person.id"), index=True)


class KnownBrowserRow(Table):
    """A browser at which somebody has signed in before; ``hash`` is that of what its cookie holds."""

    __tablename__ = "known_browser"

    hash: Mapped[str] = mapped_column(Line(64, "hash"), primary_key=True)
    person_id: Mapped[int] = mapped_column(ForeignKey("person.id"), primary_key=True)
    at: Mapped[datetime]


class SessionRow(Table):
    """One browser that is signed in, or still has to give a code; ``id`` is the hash of what its cookie holds.

    ``address``: where it asked from, an IPv6 one by its /64; ``phone``: whether it says that it is one.
    """

    __tablename__ = "session"

    id: Mapped[str] = mapped_column(Line(64, "id"), primary_key=True)
    person_id: Mapped[int] = mapped_column(ForeignKey("person.id"), index=True)
    csrf: Mapped[str] = mapped_column(Line(64, "csrf"))
    created_at: Mapped[datetime]
    expires_at: Mapped[datetime]
    seen_at: Mapped[datetime | None]
    awaits_code: Mapped[bool] = mapped_column(server_default=false())
    address: Mapped[str | None] = mapped_column(Line(64, "address"))
    phone: Mapped[bool | None]


class TokenRow(Table):
    """One device or program that uses the JSON API; ``hash`` is that of its token."""

    __tablename__ = "token"

    id: Mapped[int] = mapped_column(primary_key=True)
    hash: Mapped[str] = mapped_column(Line(64, "hash"), unique=True)
    name: Mapped[str] = mapped_column(Line(80, "name"))
    role: Mapped[str] = mapped_column(Line(12, "role"))
    created_at: Mapped[datetime]
    created_by: Mapped[str | None] = mapped_column(Line(80, "created_by"))
    revoked_at: Mapped[datetime | None]


class TryRow(Table):
    """One act that is counted, such as a wrong password; ``key``: the hash of what it is counted under."""

    __tablename__ = "try"
    __table_args__ = (Index("ix_try_key_at", "key", "at"),)

    id: Mapped[int] = mapped_column(primary_key=True)
    key: Mapped[str] = mapped_column(Line(64, "key"))
    at: Mapped[datetime] = mapped_column(index=True)


class SignInCodeRow(Table):
    """A one-time code with which the first manager is made."""

    __tablename__ = "sign_in_code"

    hash: Mapped[str] = mapped_column(Line(64, "hash"), primary_key=True)
    created_at: Mapped[datetime]


class RecipeRow(Table):
    """A spec kept under a name, to start from; ``saved_role``: that of whoever saved it, None where not known."""

    __tablename__ = "recipe"

    name: Mapped[str] = mapped_column(Line(80, "name"), primary_key=True)
    spec: Mapped[dict[str, Any]]
    saved_at: Mapped[datetime]
    saved_by: Mapped[str | None] = mapped_column(Line(80, "saved_by"))
    saved_role: Mapped[str | None] = mapped_column(Line(12, "saved_role"))


class CrimpRow(Table):
    """The crimp card that the shop keeps for one hose and fitting series (shell); the newest row holds.

    ``hose_part``: the manufacturer's part number of the hose; empty where it is for the standard alone.
    ``dropped``: the card that the row repeats is deleted.
    """

    __tablename__ = "crimp"
    __table_args__ = (Index("ix_crimp_hose_standard_hose_dash", "hose_standard", "hose_dash"),)

    id: Mapped[int] = mapped_column(primary_key=True)
    hose_standard: Mapped[str] = mapped_column(Line(40, "hose_standard"))
    hose_dash: Mapped[int]
    hose_part: Mapped[str] = mapped_column(Line(40, "hose_part"), server_default="")
    shell: Mapped[str] = mapped_column(Line(60, "shell"))
    diameter_mm: Mapped[float]
    minus_mm: Mapped[float]
    plus_mm: Mapped[float]
    die: Mapped[str | None] = mapped_column(Line(60, "die"))
    skive_outside_mm: Mapped[float | None]
    skive_inside_mm: Mapped[float | None]
    insertion_depth_mm: Mapped[float | None]
    machine_setting: Mapped[str | None] = mapped_column(Line(120, "machine_setting"))
    source: Mapped[str] = mapped_column(Line(120, "source"))
    dropped: Mapped[bool] = mapped_column(server_default=false())
    at: Mapped[datetime]
    by: Mapped[str | None] = mapped_column(Line(80, "by"))


_HOLDS = text("ended_at IS NULL")


class ShopRowRow(Table):
    """A row of the shop's own for one of the trade's tables; of each key the one that has not ended holds.

    ``key``: the cells that name the row. ``replaced_by``: the row that took its place.
    """

    __tablename__ = "shop_row"
    __table_args__ = (
        Index(
            "uq_shop_row_holds",
            "table_name",
            "key",
            unique=True,
            postgresql_where=_HOLDS,
            sqlite_where=_HOLDS,
        ),
    )

    id: Mapped[int] = mapped_column(primary_key=True)
    table: Mapped[str] = mapped_column("table_name", Line(40, "table"))
    key: Mapped[str] = mapped_column(Line(400, "key"))
    cells: Mapped[dict[str, Any]] = mapped_column(Json("cells"))
    at: Mapped[datetime]
    by: Mapped[str | None] = mapped_column(Line(80, "by"))
    ended_at: Mapped[datetime | None]
    ended_by: Mapped[str | None] = mapped_column(Line(80, "ended_by"))
    why: Mapped[str | None] = mapped_column(Line(200, "reason"))
    replaced_by: Mapped[int | None]


class FittingRow(Table):
    """A fitting of the shop as it was entered; of one ``key`` the newest row holds.

    ``key``: the stock number in capitals; ``kept`` is None where it was taken out of the list;
    ``words``: what it is looked for by.
    """

    __tablename__ = "fitting"

    id: Mapped[int] = mapped_column(primary_key=True)
    key: Mapped[str] = mapped_column(Line(40, "stock_number"), index=True)
    words: Mapped[str] = mapped_column(Line(None, "fitting"))
    kept: Mapped[dict[str, Any] | None] = mapped_column(Json("fitting"))
    at: Mapped[datetime]
    by: Mapped[str | None] = mapped_column(Line(80, "by"))


class MessageRow(Table):
    """Something to tell another system or person; kept until it is delivered."""

    __tablename__ = "message"
    __table_args__ = (Index("ix_message_delivered_at_next_at", "delivered_at", "next_at"),)

    id: Mapped[int] = mapped_column(primary_key=True)
    channel: Mapped[str] = mapped_column(Line(12, "channel"))
    target: Mapped[str] = mapped_column(Line(255, "target"))
    body: Mapped[dict[str, Any]]
    created_at: Mapped[datetime]
    attempts: Mapped[int]
    next_at: Mapped[datetime]
    delivered_at: Mapped[datetime | None]
    last_error: Mapped[str | None] = mapped_column(Line(None, "last_error"))


class PrinterRow(Table):
    """A printer of the shop, in the network by IPP. Never deleted: jobs and history name it."""

    __tablename__ = "printer"

    id: Mapped[int] = mapped_column(primary_key=True)
    name: Mapped[str] = mapped_column(Line(40, "name"), unique=True)
    uri: Mapped[str] = mapped_column(Line(255, "uri"))
    dpi: Mapped[int]
    template: Mapped[str | None] = mapped_column(Line(80, "template"))
    added_at: Mapped[datetime]
    added_by: Mapped[str | None] = mapped_column(Line(80, "added_by"))
    retired_at: Mapped[datetime | None]
    retired_by: Mapped[str | None] = mapped_column(Line(80, "retired_by"))


class PrintJobRow(Table):
    """Tags sent to one printer, kept after they are printed as well."""

    __tablename__ = "print_job"
    __table_args__ = (Index("ix_print_job_state_printer_id", "state", "printer_id"),)

    id: Mapped[int] = mapped_column(primary_key=True)
    key: Mapped[str | None] = mapped_column(Line(120, "key"), unique=True)
    fingerprint: Mapped[str] = mapped_column(Line(64, "fingerprint"))
    printer_id: Mapped[int] = mapped_column(ForeignKey("printer.id"))
    numbers: Mapped[list[Any]]
    template: Mapped[str] = mapped_column(Line(80, "template"))
    reason: Mapped[str] = mapped_column(Line(120, "reason"))
    state: Mapped[str] = mapped_column(Line(12, "state"))
    why: Mapped[Said] = mapped_column(Told(), nullable=True)
    attempts: Mapped[int]
    printer_job: Mapped[int | None]
    created_at: Mapped[datetime]
    created_by: Mapped[str | None] = mapped_column(Line(80, "created_by"))
    changed_at: Mapped[datetime]
    changed_by: Mapped[str | None] = mapped_column(Line(80, "changed_by"))


class AnswerRow(Table):
    """What was answered to a request with a key of its own, written with what the request did.

    ``fingerprint`` tells whether a repeat asks for the same; ``answer`` holds no secret in clear.
    """

    __tablename__ = "answer"

    key: Mapped[str] = mapped_column(Line(120, "key"), primary_key=True)
    fingerprint: Mapped[str] = mapped_column(Line(64, "fingerprint"))
    answer: Mapped[dict[str, Any]]
    at: Mapped[datetime]


APPEND_ONLY = (
    "registration", "design", "assembly", "event", "order_event", "crimp", "fitting", "void", "former_lot",
)  # fmt: skip
"""Tables in which the database itself refuses UPDATE and DELETE."""
