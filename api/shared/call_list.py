"""The call list of a withdrawal: every hose assembly it affects, by customer, machine and position."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from tagger.code import number as tag_number
from tagger.i18n import Translator
from tagger.store import Assembly, Contact, Store, Withdrawal

HEADING = (
    "customer",
    "number",
    "machine",
    "position",
    "hose",
    "lots",
    "built_on",
    "replaced_by",
    "contact",
    "phone",
    "email",
)


def touched(store: Store, withdrawal: Withdrawal) -> list[Assembly]:
    """The assemblies that the withdrawal touches now."""
    found = store.assemblies(store.affected(withdrawal.scope, withdrawal.value))
    return sorted(found, key=lambda a: (a.customer or "", a.machine or "", a.position or ""))


def heading(t: Translator) -> list[str]:
    """The columns' captions."""
    return [t(f"papers-call-{name}") for name in HEADING]


def rows(store: Store, items: Sequence[Assembly]) -> list[list[Any]]:
    """One line for each, in the order of the heading, with whom to call."""
    contacts = store.contacts_of(items)
    return [
        [
            item.customer,
            tag_number.format(item.number),
            item.machine,
            item.position,
            f"{item.spec.hose.standard} -{item.spec.hose.dash}",
            ", ".join(lot for lot in (item.spec.hose.lot, item.spec.end_a.lot, item.spec.end_b.lot) if lot),
            item.built_on,
            tag_number.format(item.replaced_by) if item.replaced_by else None,
            *_reached(contacts.get(item.number)),
        ]
        for item in items
    ]


def callers(store: Store, items: Sequence[Assembly]) -> list[tuple[str | None, Contact | None]]:
    """Whom to call, each once, with the customer; None for a customer of whom no contact is known."""
    contacts = store.contacts_of(items)
    return list(dict.fromkeys((item.customer, contacts.get(item.number)) for item in items))


def _reached(contact: Contact | None) -> tuple[str | None, str | None, str | None]:
    """Name, telephone and address of a contact."""
    if contact is None:
        return None, None, None
    return contact.name or contact.company or None, contact.phone or None, contact.email or None
