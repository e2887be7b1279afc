"""What the store hands out: frozen values, with no connection to a database behind them."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from datetime import date, datetime
from enum import StrEnum
from typing import Annotated, Any

from pydantic import ConfigDict, Field, model_validator

from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.record import Record
from tagger.spec import AssemblySpec, TagContent
from tagger.store.said import Said
from tagger.trade.results import Assessment
from tagger.trimmed import Trimmed


class Kind(StrEnum):
    """What can happen to an assembly."""

    REGISTERED = "registered"
    CRIMPED = "crimped"  # crimp diameters measured
    FLUSHED = "flushed"  # cleaned inside, by a method and somebody
    PROOF_TESTED = "proof_tested"
    PROOF_ALLOWED = "proof_allowed"  # the manufacturers allow a test that was too high
    PRINTED = "printed"
    FITTED = "fitted"
    INSPECTED = "inspected"
    SCANNED = "scanned"
    ORDERED = "ordered"
    REPLACEMENT_BUILT = "replacement_built"  # another is to take its place
    REPLACED = "replaced"  # another was fitted in its place
    REMOVED = "removed"  # taken off the machine for good
    CORRECTED = "corrected"  # a value of the record; the line keeps the old and the new
    VOIDED = "voided"  # the record is void: the hose must not be fitted
    WITHDRAWN = "withdrawn"
    WITHDRAWAL_LIFTED = "withdrawal_lifted"


class Scope(StrEnum):
    """What a withdrawal names."""

    TAG = "tag"
    HOSE_LOT = "hose_lot"
    FITTING_LOT = "fitting_lot"


class LotReason(StrEnum):
    """Why a reel lot is used although it is known as another hose."""

    DATE_CODE = "date_code"  # the lot is only a date: it spans sizes
    OTHER_MANUFACTURER = "other_manufacturer"  # two manufacturers use the same lot number
    EARLIER_RECORD_WRONG = "earlier_record_wrong"

    @property
    def words(self) -> Message:
        """The reason as the builder reads it."""
        return Message(f"store-lot-reason-{self}")


class OrderState(StrEnum):
    RECEIVED = "received"
    ASKED = "asked"  # the shop asked something back
    ACCEPTED = "accepted"
    BUILDING = "building"
    DONE = "done"
    DECLINED = "declined"

    @property
    def next(self) -> tuple[OrderState, ...]:
        """The states that may follow."""
        return _NEXT[self]

    @property
    def words(self) -> Message:
        """The state as the shop and the customer read it."""
        return Message(f"store-order-state-{self}")


_S = OrderState
_NEXT: dict[OrderState, tuple[OrderState, ...]] = {
    _S.RECEIVED: (_S.ACCEPTED, _S.ASKED, _S.BUILDING, _S.DECLINED),
    _S.ASKED: (_S.ACCEPTED, _S.BUILDING, _S.DECLINED),
    _S.ACCEPTED: (_S.BUILDING, _S.ASKED, _S.DECLINED),
    _S.BUILDING: (_S.DONE, _S.ASKED, _S.DECLINED),
    _S.DONE: (),
    _S.DECLINED: (),
}


class PrintState(StrEnum):
    """How far a print job is; what each means for the history of its tags: print_jobs.py."""

    WAITING = "waiting"
    SENDING = "sending"
    PRINTING = "printing"  # the printer took it
    DONE = "done"
    FAILED = "failed"
    UNKNOWN = "unknown"  # it may have been printed
    DROPPED = "dropped"

    @property
    def words(self) -> Message:
        """The state as people read it."""
        return Message(f"store-print-state-{self}")

    @property
    def under_way(self) -> bool:
        return self in (PrintState.WAITING, PrintState.SENDING, PrintState.PRINTING)

    @property
    def stuck(self) -> bool:
        """Somebody must look at it and decide."""
        return self in (PrintState.FAILED, PrintState.UNKNOWN)


@dataclass(frozen=True)
class Printer:
    """A printer of the shop; ``dpi`` dots an inch, ``template`` the label it is loaded with."""

    id: int
    name: str
    uri: str
    dpi: int
    template: str | None
    added_at: datetime
    added_by: str | None
    retired_at: datetime | None = None


@dataclass(frozen=True)
class PrintJob:
    """Tags to one printer. ``why`` says what keeps it, or what became of it.

    ``attempts`` counts how often it was sent; ``printer_job`` is the printer's own number for it.
    """

    id: int
    printer_id: int
    printer: str
    uri: str
    dpi: int
    numbers: tuple[str, ...]
    template: str
    reason: str
    state: PrintState
    why: Said
    attempts: int
    printer_job: int | None
    created_at: datetime
    created_by: str | None
    changed_at: datetime
    changed_by: str | None


@dataclass(frozen=True)
class Withdrawal:
    """Why something must not be used; ``lifted_at`` is None while it holds."""

    id: int
    scope: Scope
    value: str
    reason: str
    at: datetime
    by: str | None = None
    lifted_at: datetime | None = None
    lifted_by: str | None = None
    lifted_why: str | None = None

    @property
    def holds(self) -> bool:
        return self.lifted_at is None


@dataclass(frozen=True)
class Void:
    """Why a record is void, since when and by whom."""

    reason: str
    at: datetime
    by: str | None


@dataclass(frozen=True)
class Event:
    """One line of history; ``at`` is in UTC."""

    id: int
    number: str
    kind: Kind
    at: datetime
    by: str | None
    data: dict[str, Any] = field(default_factory=dict)


@dataclass(frozen=True)
class Assembly(Record):
    """One registered assembly.

    ``number`` is the compact 11 characters. ``content`` and ``digits`` are frozen as registered:
    they are what the symbol on the printed tag says, whatever the tables say today. ``run`` names
    the registration it came from, ``place`` its place there, counted from 1. ``replaced_by`` was
    fitted in its place; ``replacement_built`` is built to take it and not fitted yet.
    """

    number: str
    spec: AssemblySpec
    assessment: Assessment
    content: TagContent
    digits: str
    built_on: date | None
    replaces: str | None
    replaced_by: str | None
    replacement_built: str | None
    fitted: bool
    order_reference: str | None
    withdrawals: tuple[Withdrawal, ...]  # those that hold, oldest first
    registered_by: str | None
    created_at: datetime
    run: int
    place: int
    void: Void | None = None

    @property
    def withdrawn(self) -> bool:
        return bool(self.withdrawals)


class Contact(Trimmed):
    """The customer's contact: a phone number or an email address at least."""

    model_config = ConfigDict(frozen=True)

    name: Annotated[str, Field(max_length=120)] = ""
    company: Annotated[str, Field(max_length=120)] = ""
    phone: Annotated[str, Field(max_length=40)] = ""
    email: Annotated[str, Field(max_length=120)] = ""

    @model_validator(mode="after")
    def _reachable(self) -> Contact:
        if self.email and ("@" not in self.email or " " in self.email):
            wrong = Message("store-email-not-valid", email=self.email)
            raise _ContactError(Problem("email", self.email, wrong))
        if self.phone and not _PHONE.fullmatch(self.phone):
            wrong = Message("store-phone-not-valid", phone=self.phone)
            raise _ContactError(Problem("phone", self.phone, wrong))
        if not (self.phone or self.email):
            raise _ContactError(Problem("phone", None, Message("store-contact-missing")))
        return self


_PHONE = re.compile(r"[+(]*\d[\d\s()./\-]*(?:[,;]?\s*[^\W\d]{1,12}\.?\s*\d{1,6})?")
"""Digits with the usual marks between them, and perhaps a word and the digits of an extension."""


class _ContactError(StoreError, ValueError):
    """A StoreError that pydantic collects with its own."""


@dataclass(frozen=True)
class OrderStep:
    state: OrderState
    at: datetime
    by: str | None
    note: str | None


@dataclass(frozen=True)
class OrderRequest:
    """Somebody wants the same assembly again, or one like it.

    ``number`` is the tag it came from (it may be another shop's), ``spec`` what is wanted,
    ``built`` the tag numbers made for it, ``customer_reference`` the customer's own word for it,
    ``language`` the one the customer is answered in (None: the shop's).
    """

    reference: str
    number: str | None
    spec: AssemblySpec
    quantity: int
    needed_by: date | None
    customer_reference: str | None
    contact: Contact
    changes: str | None
    state: OrderState
    created_at: datetime
    steps: tuple[OrderStep, ...] = ()
    built: tuple[str, ...] = ()
    language: str | None = None


@dataclass(frozen=True)
class Registration(Record):
    """One row of a run: ``count`` assemblies to one spec.

    ``lot_reason``: why the hose's lot is used although it is known as another hose (LotReason).
    ``changes_considered``: somebody read the change its order asks for, and it needs none in the spec.
    ``listed_row``: its row in the spreadsheet, header and blank rows counted, by which problems of a run name it.
    """

    spec: AssemblySpec
    assessment: Assessment
    count: int = 1
    built_on: date | None = None
    replaces: str | None = None
    order_reference: str | None = None
    lot_reason: str | None = None
    changes_considered: bool = False
    listed_row: int | None = None
