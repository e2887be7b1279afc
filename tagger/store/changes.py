"""An order is built as it was asked for: with its change, or without one. Otherwise somebody considered it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from sqlalchemy import select
from sqlalchemy.orm import Session

from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.spec import AssemblySpec
from tagger.store.base import Part, in_chunks
from tagger.store.models import OrderRow
from tagger.store.values import Registration
from tagger.trade.one_hose import one_hose
from tagger.trade.tables import tables

_ASKED_FOR = frozenset(
    ("length_mm", "length_basis", "clocking_deg", "covers", "fluid", "max_temperature_c", "vacuum_bar", "dash",
     "size", "description", "connection", "form", "shape", "drop_mm", "material", "standard")
)  # fmt: skip
"""What a customer asks to be different; an edition or a part number read off the reel is no such change."""


class Changes(Part):
    """The part of the store that knows which orders ask for a change."""

    def change_not_made(self, reference: str, spec: AssemblySpec) -> Problem | None:
        """The problem of building this spec for an order whose change is not in it; None: nothing is wrong."""
        with self.reading() as session:
            order = session.get(OrderRow, reference)
            return None if order is None else _wrong(order, changed(AssemblySpec.read(order.spec), spec))


def changed(ordered: AssemblySpec, built: AssemblySpec) -> tuple[str, ...]:
    """The fields that a customer may have asked to change and that differ, in their order."""
    old, new = (_flat(one.carried().model_dump(mode="json")) for one in (ordered, built))
    differing = [
        name
        for name in new
        if name.removeprefix("hose.").removeprefix("end_a.").removeprefix("end_b.") in _ASKED_FOR
        and old.get(name) != new.get(name)
    ]
    if one_hose(ordered.carried().hose, built.carried().hose, tables()):
        differing = [name for name in differing if name != "hose.standard"]
    return tuple(differing)


def refuse_unread_changes(session: Session, rows: Sequence[Registration]) -> list[dict[str, Any]]:
    """For each row what its history keeps of the change its order asks for; mostly nothing.

    Raises StoreError for every row that is built as ordered though the order asks for a change, or otherwise
    than ordered though it asks for none, where nobody said that it was considered.
    """
    wanted = sorted({row.order_reference for row in rows if row.order_reference})
    asking: dict[str, OrderRow] = {}
    for chunk in in_chunks(wanted):
        query = select(OrderRow).where(OrderRow.reference.in_(chunk))
        asking.update((order.reference, order) for order in session.scalars(query))
    problems: list[Problem] = []
    kept: list[dict[str, Any]] = []
    for place, row in enumerate(rows, 1):
        order = asking.get(row.order_reference or "")
        if order is None:
            kept.append({})
            continue
        fields = changed(AssemblySpec.read(order.spec), row.spec)
        problem = _wrong(order, fields)
        if problem is not None and not row.changes_considered:
            within = f"row {place}." if len(rows) > 1 else ""
            problems.append(Problem(within + problem.field, problem.value, problem.message))
        how: dict[str, Any] = {"changed": list(fields)} if fields else {"changes_considered": True}
        asked = {"order_changes": order.changes} if order.changes else {}
        kept.append(asked | how if asked or fields else {})
    if problems:
        raise StoreError(problems)
    return kept


def _wrong(order: OrderRow, differing: Sequence[str]) -> Problem | None:
    """A change that is asked for and not made, or one that is made and not asked for."""
    if order.changes:
        if differing:
            return None
        wrong = Message("store-order-change-not-made", reference=order.reference, changes=order.changes)
        return Problem("changes_considered", None, wrong)
    told = _flat(AssemblySpec.read(order.spec).carried().model_dump(mode="json"))
    otherwise = tuple(name for name in differing if told.get(name) not in (None, []))
    if not otherwise:  # what the order left open may be filled in
        return None
    wrong = Message("store-order-otherwise", reference=order.reference, fields=otherwise)
    return Problem("changes_considered", None, wrong)


def _flat(data: Mapping[str, Any], prefix: str = "") -> dict[str, Any]:
    found: dict[str, Any] = {}
    for name, value in data.items():
        if isinstance(value, Mapping):
            found |= _flat(value, f"{prefix}{name}.")
        else:
            found[prefix + name] = value
    return found
