"""All that is kept of one customer, as plain JSON values."""

from __future__ import annotations

from base64 import b64encode
from dataclasses import asdict
from datetime import date
from typing import Any

from tagger.code import number as tag_number
from tagger.record import recorded
from tagger.store import Assembly, Event, Filter, FittedReport, OrderRequest, Store


def of_customer(store: Store, customer: str) -> dict[str, Any]:
    """The customer's contacts, machines, assemblies with their history, order requests, and reports that one was fitted."""
    name = " ".join(customer.split())
    own = [one for one in store.every(Filter(customer=name)) if _same(one.customer, name)]
    return {
        "customer": name,
        "contacts": [known.contact.model_dump() for known in store.contacts(name)],
        "machines": store.machines(name),
        "positions": store.positions(name),
        "assemblies": [_assembly(one, store.history(one.number)) for one in own],
        "orders": [_order(order, store) for order in store.customer_orders(name)],
        "fitted": [
            _report(report, store)
            for one in own
            for report in store.fitted_reports(number=one.number, limit=None)
        ],
    }


def _same(customer: str | None, name: str) -> bool:
    """Whether it is the name whole, in any case; the search finds parts of names too."""
    return (customer or "").upper().lower() == name.upper().lower()


def _assembly(one: Assembly, history: list[Event]) -> dict[str, Any]:
    return {
        "number": tag_number.format(one.number),
        **recorded(one),
        "built_on": one.built_on.isoformat() if one.built_on else None,
        "order_reference": one.order_reference,
        "spec": one.spec.as_dict(),
        "working_pressure_bar": one.content.working_pressure_bar,
        "history": [
            {"kind": str(event.kind), "at": event.at.isoformat(), "by": event.by, "data": event.data}
            for event in history
        ],
    }


def _report(report: FittedReport, store: Store) -> dict[str, Any]:
    """A report that an assembly was fitted, with its photo."""
    said = asdict(report) | {"number": tag_number.format(report.number), "state": str(report.state)}
    said |= {name: value.isoformat() for name, value in said.items() if isinstance(value, date)}
    jpeg = b64encode(store.photo(report.photo)).decode() if report.photo is not None else None
    return said | {"photo": jpeg}


def _order(order: OrderRequest, store: Store) -> dict[str, Any]:
    return {
        "reference": order.reference,
        "number": tag_number.format(order.number) if order.number else None,
        "spec": order.spec.as_dict(),
        "quantity": order.quantity,
        "needed_by": order.needed_by.isoformat() if order.needed_by else None,
        "customer_reference": order.customer_reference,
        "contact": order.contact.model_dump(),
        "changes": order.changes,
        "state": str(order.state),
        "created_at": order.created_at.isoformat(),
        "steps": [
            {"state": str(step.state), "at": step.at.isoformat(), "by": step.by, "note": step.note}
            for step in order.steps
        ],
        "built": [tag_number.format(number) for number in order.built],
        "photos": [
            {"shows": photo.what, "jpeg": b64encode(store.photo(photo.id)).decode()}
            for photo in store.order_photos(order.reference)
        ],
    }
