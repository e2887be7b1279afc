"""Customers: their contacts, as their order requests have them, and erasing one.

A contact stands in order requests alone. Erasing it leaves orders, assemblies and tags as they are.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import ColumnElement, Text, cast, or_, select
from sqlalchemy.orm import Session

from tagger.store.base import in_chunks
from tagger.store.fitted import erase_report
from tagger.store.folding import fold, folded
from tagger.store.locks import Turn, take
from tagger.store.models import AnswerRow, AssemblyRow, FittedReportRow, MessageRow, OrderRow
from tagger.store.orders import Orders
from tagger.store.photos import erase_photos
from tagger.store.recorded_texts import spelled
from tagger.store.values import Assembly, Contact, OrderRequest

ERASED = {"name": "", "company": "", "phone": "", "email": ""}
"""What stands in the place of a contact that was erased."""


@dataclass(frozen=True)
class KnownContact:
    """A contact of a customer, and the newest order request that has it."""

    contact: Contact
    reference: str
    at: datetime


class Customers(Orders):
    """The part of the store that knows customers by the name on their assemblies, in any case."""

    def customer_orders(self, customer: str) -> list[OrderRequest]:
        """The order requests from a customer's tags, or for which something was built for it; newest first."""
        with self.reading() as session:
            named = AssemblyRow.customer.in_(spelled(session, "customer", customer))
            references = list(session.scalars(select(OrderRow.reference).where(_is_of(named))))
        found = [self.order(reference) for reference in references]
        return sorted(found, key=lambda order: (order.created_at, order.reference), reverse=True)

    def contacts(self, customer: str) -> list[KnownContact]:
        """The contacts of a customer, each once, the newest first."""
        found: dict[Contact, KnownContact] = {}
        for order in self.customer_orders(customer):
            if order.contact.phone or order.contact.email:
                known = KnownContact(order.contact, order.reference, order.created_at)
                found.setdefault(order.contact, known)
        return list(found.values())

    def machines(self, customer: str) -> list[str]:
        """The machines that a customer's assemblies name, in order."""
        with self.reading() as session:
            named = AssemblyRow.customer.in_(spelled(session, "customer", customer))
            query = select(AssemblyRow.machine).where(named, AssemblyRow.machine.is_not(None)).distinct()
            return sorted(machine for machine in session.scalars(query) if machine)

    def positions(self, customer: str) -> dict[str, list[str]]:
        """The positions of each machine of a customer, both in order; a machine without one has none."""
        found: dict[str, list[str]] = {machine: [] for machine in self.machines(customer)}
        with self.reading() as session:
            named = AssemblyRow.customer.in_(spelled(session, "customer", customer))
            query = select(AssemblyRow.machine, AssemblyRow.position).where(named).distinct()
            for machine, position in session.execute(query):
                if machine and position:
                    found[machine].append(position)
        return {machine: sorted(positions) for machine, positions in found.items()}

    def contacts_of(self, items: Sequence[Assembly]) -> dict[str, Contact]:
        """Whom to call about each of these assemblies, by its number: the newest contact of its own orders,
        else of its customer's. One with a telephone number comes before one without."""
        own = self._of_the_tags([item.number for item in items])
        of_customer: dict[str, Contact | None] = {}
        found: dict[str, Contact] = {}
        for item in items:
            name = fold(item.customer) or ""
            if item.number not in own and name and name not in of_customer:
                of_customer[name] = _reachable(known.contact for known in self.contacts(name))
            contact = own.get(item.number) or of_customer.get(name)
            if contact is not None:
                found[item.number] = contact
        return found

    def _of_the_tags(self, numbers: list[str]) -> dict[str, Contact]:
        """The contacts of the orders that these tags come from or were built for."""
        found: dict[str, list[Contact]] = {}
        with self.reading() as session:
            for chunk in in_chunks(numbers):
                asked = select(OrderRow.number, OrderRow.contact, OrderRow.created_at)
                built = select(AssemblyRow.number, OrderRow.contact, OrderRow.created_at)
                built = built.join(OrderRow, OrderRow.reference == AssemblyRow.order_reference)
                rows = [
                    *session.execute(asked.where(OrderRow.number.in_(chunk))),
                    *session.execute(built.where(AssemblyRow.number.in_(chunk))),
                ]
                for number, contact, _ in sorted(rows, key=lambda row: row[2], reverse=True):
                    found.setdefault(str(number), []).append(Contact.model_construct(**contact))
        reachable = {number: _reachable(contacts) for number, contacts in found.items()}
        return {number: contact for number, contact in reachable.items() if contact is not None}

    def erase_contact(self, reference: str) -> list[str]:
        """Erases the contact of an order request wherever it stands; tells the order requests that had it.

        It goes out of order requests, messages and kept answers, and the orders' photos with it, and so does who
        reported a fitting under the contact's name on one of its customer's tags; orders, assemblies and tags stay.
        """
        contact = self.order(reference).contact.model_dump()
        with self.writing() as session:
            rows = [row for row in session.scalars(select(OrderRow)) if row.contact == contact]
            if contact == ERASED:
                return []
            for report in _reports_by(session, contact["name"], rows):
                erase_report(session, report)
            for row in rows:
                erase_contact_of(session, row, self.now())
            return sorted(row.reference for row in rows)


def erase_contact_of(session: Session, row: OrderRow, now: datetime) -> None:
    """Erases the contact of one order request, its photos, and what was told and answered with it."""
    email = row.contact["email"]
    take(session, Turn.EVENTS)
    row.contact, row.fingerprint = dict(ERASED), ""  # whose digest would tell a guessed contact
    erase_photos(session, row.reference)
    _erase_copies(session, row.reference, email, now)


def _reports_by(session: Session, name: str, orders: Sequence[OrderRow]) -> list[FittedReportRow]:
    """The reports that somebody of this name made on the tags of these orders, or of their customers."""
    person = fold(" ".join(name.split()))
    if not person:
        return []
    tag, references = AssemblyRow, [row.reference for row in orders]
    own = or_(
        tag.number.in_([row.number for row in orders if row.number]), tag.order_reference.in_(references)
    )
    customers = {fold(one) for one in session.scalars(select(tag.customer).where(own).distinct()) if one}
    tags = select(tag.number).where(or_(own, folded(tag.customer).in_(customers)))
    made = select(FittedReportRow).where(folded(FittedReportRow.fitted_by) == person)
    return list(session.scalars(made.where(FittedReportRow.number.in_(tags))))


def _is_of(customer: ColumnElement[bool]) -> ColumnElement[bool]:
    """A condition on order requests: from a tag of the customer, or built for it."""
    tags = select(AssemblyRow.number).where(customer)
    built = select(AssemblyRow.order_reference).where(customer, AssemblyRow.order_reference.is_not(None))
    return or_(OrderRow.number.in_(tags), OrderRow.reference.in_(built))


def _reachable(contacts: Iterable[Contact]) -> Contact | None:
    """The first with a telephone number, else the first with an address."""
    known = [contact for contact in contacts if contact.phone or contact.email]
    return next((contact for contact in known if contact.phone), known[0] if known else None)


def _erase_copies(session: Session, reference: str, email: str, now: datetime) -> None:
    """What was told of an order and answered about it; what is not yet sent to the contact is not sent."""
    for message in session.scalars(select(MessageRow).where(cast(MessageRow.body, Text).contains(reference))):
        message.body = {**message.body, "contact": dict(ERASED)}
        if message.channel == "email" and email and message.target == email:
            message.target = ""
            message.delivered_at = message.delivered_at or now
    for answer in session.scalars(select(AnswerRow).where(cast(AnswerRow.answer, Text).contains(reference))):
        answer.answer = _without(answer.answer)


def _without(kept: Any) -> Any:
    """The same with every contact erased."""
    if isinstance(kept, list):
        return [_without(one) for one in kept]
    if isinstance(kept, dict):
        return {
            name: dict(ERASED) if name == "contact" and isinstance(value, dict) else _without(value)
            for name, value in kept.items()
        }
    return kept
