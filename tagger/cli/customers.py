"""The commands over a customer: all that is kept of one as a file, and erasing a contact."""

from __future__ import annotations

import argparse
import json
from typing import Any

from tagger.cli.commands import Answer, open_store
from tagger.i18n import Translator
from tagger.messages import Message


def customer(a: argparse.Namespace, t: Translator) -> Answer:
    """All that is kept of one customer, to the screen or into a file."""
    from tagger.customer_export import of_customer
    from tagger.errors import Problem, StoreError
    from tagger.intake import unusable

    with open_store() as store:
        found = of_customer(store, a.name)
    if not (found["assemblies"] or found["orders"]):
        raise StoreError(Problem("customer", a.name, Message("cli-customer-none", name=a.name)))
    if a.out:
        try:
            a.out.write_text(json.dumps(found, ensure_ascii=False, indent=2), encoding="utf-8")
        except OSError as error:
            raise StoreError(Problem("--out", str(a.out), unusable(error))) from None
    return found, _text(found, t)


def _text(found: dict[str, Any], t: Translator) -> str:
    assemblies, orders = len(found["assemblies"]), len(found["orders"])
    lines = [t("cli-customer", name=found["customer"], assemblies=assemblies, orders=orders)]
    lines += [", ".join(filter(None, contact.values())) for contact in found["contacts"]]
    return "\n".join([*lines, *found["machines"]])


def erase_contact(a: argparse.Namespace, t: Translator) -> Answer:
    """Erases the contact of an order request wherever it stands; orders and tags stay."""
    with open_store() as store:
        erased = store.erase_contact(a.reference)
    return {"orders": erased}, t("cli-contact-erased", count=len(erased))
