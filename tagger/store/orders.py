"""Order requests: a customer wants the same assembly again."""

from __future__ import annotations

import re
import secrets
from collections.abc import Mapping, Sequence
from datetime import date, timedelta
from typing import Any, Final

from pydantic import ValidationError
from sqlalchemy import func, select, tuple_
from sqlalchemy.orm import Session

from tagger.code import number as tag_number
from tagger.code.number import ALPHABET
from tagger.errors import Problem, StoreError, problems_of
from tagger.messages import Message
from tagger.spec import MAX_COUNT, AssemblySpec
from tagger.store.base import compact, fingerprint, in_chunks
from tagger.store.history import add_events
from tagger.store.locks import Turn, take
from tagger.store.models import AssemblyRow, DesignRow, OrderEventRow, OrderRow, VoidRow
from tagger.store.outbox import Outbox, Target
from tagger.store.photos import Photos, add_photos
from tagger.store.proving import Proving
from tagger.store.texts import clean
from tagger.store.values import Contact, Kind, OrderRequest, OrderState, OrderStep
from tagger.store.voids import is_void

MAX_CHANGES = 2000
MAIL_TO_ONE: Final = 5
"""How many arrived orders a day are confirmed to one address by mail; those after them are kept all the same."""
MAIL_A_DAY: Final = 500
"""The same for all addresses together."""


class Orders(Outbox, Proving, Photos):
    """The part of the store that keeps order requests and queues their notifications."""

    mail_customers = False
    """Whether a customer who gave an e-mail address is told of each step."""

    def request_order(
        self,
        *,
        number: str | None = None,
        spec: AssemblySpec | None = None,
        quantity: int = 1,
        needed_by: date | None = None,
        reference: str | None = None,
        contact: Contact | Mapping[str, Any],
        changes: str | None = None,
        language: str | None = None,
        photos: Mapping[str, bytes] | None = None,
        key: str | None = None,
    ) -> OrderRequest:
        """Keeps an order request and gives it a short reference of ours.

        ``number``: the tag it comes from; it may be another shop's, then ``spec`` must be given
        too. ``spec``: what is wanted, by default the tag's own. ``reference``: the customer's own
        word for it. ``changes``: what should be different, in the customer's words.
        ``language``: the one the customer is answered in, by default the shop's. ``photos``: JPEG
        files by what they show. A second call with the same ``key`` returns the first one's order,
        with the first one's photos. Raises StoreError, NumberError.
        """
        number = compact(number) if number else None
        person = _contact(contact)
        _check(quantity, changes, reference)
        _check_lines(person, reference)
        asked = (
            number,
            spec and spec.as_dict(),
            quantity,
            needed_by,
            reference,
            person.model_dump(),
            changes,
        )
        mark = fingerprint(asked)

        def keep(session: Session) -> OrderRequest:
            row = _already(session, key, mark)
            if row is None:
                row = self._keep(session, number, spec, key, mark)
                row.quantity, row.needed_by, row.contact = quantity, needed_by, person.model_dump()
                row.customer_reference, row.changes = _text(reference), _text(changes)
                row.language = language
                session.add(row)
                session.flush()
                add_photos(session, photos or {}, self.now(), order_reference=row.reference)
                self._step(session, row, None, None)
                self._tell_tag(session, row)
            return _values(session, [row])[0]

        return self.act(keep)

    def request_orders(
        self,
        numbers: Sequence[str],
        *,
        needed_by: date | None = None,
        reference: str | None = None,
        contact: Contact | Mapping[str, Any],
        language: str | None = None,
        key: str | None = None,
    ) -> list[OrderRequest]:
        """An order request for each of these tags: all of them, or none. Sent twice, kept once."""
        known = list(dict.fromkeys(compact(number) for number in numbers))
        with self.writing():
            return [
                self.request_order(
                    number=number,
                    needed_by=needed_by,
                    reference=reference,
                    contact=contact,
                    language=language,
                    key=f"{key} {number}" if key else None,
                )
                for number in known
            ]

    def _keep(
        self, session: Session, number: str | None, spec: AssemblySpec | None, key: str | None, mark: str
    ) -> OrderRow:
        ours = session.get(AssemblyRow, number) if number else None
        if ours is not None and session.get(VoidRow, number) is not None:
            wrong = Message("store-order-tag-void", number=tag_number.format(ours.number))
            raise StoreError(Problem("number", number, wrong))
        wanted = spec.as_dict() if spec else None
        if wanted is None and ours is not None:
            wanted = session.get_one(DesignRow, ours.design_id).spec
        if wanted is None:
            raise StoreError(Problem("number", number, _no_spec(number)))
        return OrderRow(
            reference=_make_reference(),
            key=key,
            fingerprint=mark,
            number=number,
            spec=wanted,
            state=str(OrderState.RECEIVED),
            created_at=self.now(),
        )

    def _step(self, session: Session, row: OrderRow, by: str | None, note: str | None) -> None:
        now = self.now()
        session.add(OrderEventRow(reference=row.reference, state=row.state, at=now, by=by, note=_text(note)))
        session.flush()
        customer = row.contact.get("email")
        told = bool(customer) and self.mail_customers and self._may_be_told(session, row)
        also = [Target("email", customer, to_customer=True)] if customer and told else []
        body = {
            "event": "order_request",
            "reference": row.reference,
            "state": row.state,
            "at": now.isoformat(),
            "note": _text(note),
            "number": row.number,
            "quantity": row.quantity,
            "spec": row.spec,
            "needed_by": row.needed_by.isoformat() if row.needed_by else None,
            "changes": row.changes,
            "customer_reference": row.customer_reference,
            "contact": row.contact,
            "known": bool(row.number and session.get(AssemblyRow, row.number)),
            "language": row.language,
        }
        self.tell(session, body, also)

    def _may_be_told(self, session: Session, row: OrderRow) -> bool:
        """Whether this step may be mailed to the address that stands in the order: anybody may have typed it.

        What the shop itself does is always told; that an order has arrived only so often a day.
        """
        if row.state != OrderState.RECEIVED:
            return True
        lately = select(OrderRow.contact).where(OrderRow.created_at > self.now() - timedelta(days=1))
        contacts = list(session.scalars(lately.limit(MAIL_A_DAY + 1)))
        address = row.contact["email"].casefold()
        same = [one for one in contacts if one.get("email", "").casefold() == address]
        return len(contacts) <= MAIL_A_DAY and len(same) <= MAIL_TO_ONE

    def _tell_tag(self, session: Session, row: OrderRow) -> None:
        if row.number and session.get(AssemblyRow, row.number):
            data = {"order_reference": row.reference, "quantity": row.quantity}
            event = {"number": row.number, "kind": str(Kind.ORDERED), "at": row.created_at, "data": data}
            add_events(session, [event])

    def order(self, reference: str) -> OrderRequest:
        """One order request by our reference, typed in any case."""
        with self.reading() as session:
            return _values(session, [_row(session, reference)])[0]

    def orders(
        self,
        *states: OrderState | str,
        number: str | None = None,
        limit: int | None = 200,
        after: str | None = None,
    ) -> list[OrderRequest]:
        """Order requests, newest first; of these states, or from one tag, when asked.

        ``after``: the reference of the last one already seen; ``limit``: None for all there are.
        """
        query = select(OrderRow).order_by(OrderRow.created_at.desc(), OrderRow.reference.desc()).limit(limit)
        if states:
            query = query.where(OrderRow.state.in_([str(_state(state)) for state in states]))
        if number is not None:
            query = query.where(OrderRow.number == compact(number))
        with self.reading() as session:
            if after is not None:
                last = _row(session, after)
                mark = tuple_(OrderRow.created_at, OrderRow.reference)
                query = query.where(mark < tuple_(last.created_at, last.reference))
            return _values(session, list(session.scalars(query)))

    def count_orders(self, state: OrderState) -> int:
        """How many order requests are in a state."""
        with self.reading() as session:
            return session.scalar(select(func.count()).where(OrderRow.state == str(state))) or 0

    def set_order_state(
        self, reference: str, state: OrderState | str, *, by: str | None = None, note: str | None = None
    ) -> OrderRequest:
        """Moves an order request on. Raises StoreError for a step that cannot follow.

        In a shop that tests first, for one that is done while an assembly built for it has not passed.
        """
        wanted = _state(state)
        with self.writing() as session:
            take(session, Turn.EVENTS)
            row = _row(session, reference, lock=True)
            now = OrderState(row.state)
            if wanted is not now and wanted not in now.next:
                raise StoreError(Problem("state", str(wanted), _not_after(wanted, now)))
            if wanted is OrderState.ASKED and not (note or "").strip():
                raise StoreError(Problem("note", None, Message("store-order-question-missing")))
            if wanted is OrderState.DONE and now is not wanted:
                self._refuse_untested(session, row)
            row.state = str(wanted)
            session.flush()
            self._step(session, row, by, note)
            return _values(session, [row])[0]

    def _refuse_untested(self, session: Session, row: OrderRow) -> None:
        """Raises StoreError where the shop tests first, and something of this order is not tested."""
        if not self.proof_first:
            return
        built = list(_values(session, [row])[0].built)
        if not built:
            raise StoreError(Problem("state", str(OrderState.DONE), Message("store-order-nothing-built")))
        if untested := self.untested(built):
            numbers = tuple(tag_number.format(number) for number in untested)
            raise StoreError(
                Problem("state", str(OrderState.DONE), Message("store-order-untested", numbers=numbers))
            )


def _make_reference() -> str:
    """Return a reference short enough to read out; random, so that orders cannot be enumerated."""
    return "R-" + "".join(secrets.choice(ALPHABET) for _ in range(7))


def _row(session: Session, reference: str, *, lock: bool = False) -> OrderRow:
    """Return the row. ``lock``: lock it until this transaction ends."""
    row = session.get(
        OrderRow, reference.strip().upper(), populate_existing=lock, with_for_update=lock or None
    )
    if row is None:
        raise StoreError(
            Problem("reference", reference, Message("store-order-not-found", reference=reference))
        )
    return row


def _already(session: Session, key: str | None, mark: str) -> OrderRow | None:
    row = session.scalar(select(OrderRow).where(OrderRow.key == key)) if key else None
    if row is not None and row.fingerprint not in (mark, ""):  # none where its contact is erased
        raise StoreError(Problem("key", key, Message("store-key-of-other", what="order")))
    return row


def _contact(given: Contact | Mapping[str, Any]) -> Contact:
    if isinstance(given, Contact):
        return given
    try:
        return Contact.model_validate(dict(given))
    except ValidationError as error:
        raise StoreError(problems_of(error)).within("contact") from None


def _check(quantity: int, changes: str | None, reference: str | None) -> None:
    problems = []
    if not 1 <= quantity <= MAX_COUNT:
        wrong = Message("store-quantity-not-valid", count=quantity, most=MAX_COUNT)
        problems.append(Problem("quantity", quantity, wrong))
    if len(changes or "") > MAX_CHANGES:
        problems.append(Problem("changes", None, Message("store-too-long", most=MAX_CHANGES)))
    if len(reference or "") > 80:
        problems.append(Problem("reference", None, Message("store-too-long", most=80)))
    if problems:
        raise StoreError(problems)


def _check_lines(person: Contact, reference: str | None) -> None:
    """What stands on one line, or in a mail's header, holds nothing that would begin another."""
    lines = {f"contact.{name}": str(text) for name, text in person.model_dump().items()}
    lines["reference"] = (reference or "").strip()
    problems = [
        Problem(field, clean(text)[:40], Message("store-hidden-character"))
        for field, text in lines.items()
        if not text.isprintable()
    ]
    if not problems and person.email and not _ADDRESS.match(person.email):
        wrong = Message("store-email-not-valid", email=person.email)
        problems.append(Problem("contact.email", person.email, wrong))
    if problems:
        raise StoreError(problems)


_ADDRESS = re.compile(r'[^\s@,;:<>()"\[\]\\]+@[^\s@,;:<>()"\[\]\\]+\Z')


def _state(state: OrderState | str) -> OrderState:
    try:
        return OrderState(state)
    except ValueError:
        states = tuple(str(one) for one in OrderState)
        wrong = Message("store-order-not-a-state", state=str(state), states=states)
        raise StoreError(Problem("state", str(state), wrong)) from None


def _no_spec(number: str | None) -> Message:
    if number is None:
        return Message("store-order-of-nothing")
    return Message("store-order-tag-unknown", number=tag_number.format(number))


def _not_after(wanted: OrderState, now: OrderState) -> Message:
    if not now.next:
        return Message("store-order-finished", now=now.words)
    next_states = tuple(state.words for state in now.next)
    return Message("store-order-not-after", wanted=wanted.words, now=now.words, next=next_states)


def _text(text: str | None) -> str | None:
    return (text or "").strip() or None


def _values(session: Session, rows: list[OrderRow]) -> list[OrderRequest]:
    references = [row.reference for row in rows]
    steps: dict[str, list[OrderStep]] = {reference: [] for reference in references}
    built: dict[str, list[str]] = {reference: [] for reference in references}
    for chunk in in_chunks(references):
        events = select(OrderEventRow).where(OrderEventRow.reference.in_(chunk)).order_by(OrderEventRow.id)
        for event in session.scalars(events):
            step = OrderStep(OrderState(event.state), event.at, event.by, event.note)
            steps[event.reference].append(step)
        made = select(AssemblyRow.order_reference, AssemblyRow.number)
        made = made.where(AssemblyRow.order_reference.in_(chunk), ~is_void(AssemblyRow.number))
        for reference, number in session.execute(
            made.order_by(AssemblyRow.registration_id, AssemblyRow.place)
        ):
            built[str(reference)].append(number)
    return [
        OrderRequest(
            row.reference,
            row.number,
            AssemblySpec.read(row.spec),
            row.quantity,
            row.needed_by,
            row.customer_reference,
            Contact.model_construct(**row.contact),  # kept as it was checked; an erased one is empty
            row.changes,
            OrderState(row.state),
            row.created_at,
            tuple(steps[row.reference]),
            tuple(built[row.reference]),
            row.language,
        )
        for row in rows
    ]


def refuse_past(needed_by: date | None, asked_on: date) -> None:
    """Raises StoreError for a day before the one on which it was asked for."""
    if needed_by is not None and needed_by < asked_on - timedelta(days=1):  # somewhere it is still yesterday
        wrong = Message("store-order-past", day=needed_by)
        raise StoreError(Problem("needed_by", needed_by.isoformat(), wrong))
