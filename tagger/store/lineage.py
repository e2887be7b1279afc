"""Which assembly takes another's place, and since when.

A replacement is built before it is fitted. Until somebody says that it is fitted the old assembly is on
its machine, and both records say that a replacement is built.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import ColumnElement, and_, exists, select
from sqlalchemy.orm import Session, aliased

from tagger.store.base import in_chunks
from tagger.store.models import AssemblyRow, EventRow
from tagger.store.values import Kind
from tagger.store.voids import is_void


@dataclass(frozen=True)
class Lineage:
    """``replaced_by``: by old number the newest that was fitted in its place; ``built``: the newest not fitted yet."""

    replaced_by: dict[str, str]
    built: dict[str, str]
    fitted: frozenset[str]


def lineage(session: Session, numbers: Sequence[str]) -> Lineage:
    """What took, or is to take, the place of each of these; and which of these were fitted."""
    followers: dict[str, list[str]] = defaultdict(list)
    for chunk in in_chunks(list(numbers)):
        query = select(AssemblyRow.replaces, AssemblyRow.number).where(AssemblyRow.replaces.in_(chunk))
        query = query.where(~is_void(AssemblyRow.number))
        query = query.order_by(AssemblyRow.registration_id, AssemblyRow.place)
        for old, new in session.execute(query):
            followers[str(old)].append(new)
    fitted = _fitted(session, [*numbers, *(new for found in followers.values() for new in found)])
    replaced_by: dict[str, str] = {}
    built: dict[str, str] = {}
    for old, found in followers.items():
        for new in found:
            (replaced_by if new in fitted else built)[old] = new
    return Lineage(replaced_by, built, frozenset(fitted))


def replaced() -> ColumnElement[bool]:
    """A condition on AssemblyRow: another was fitted in its place."""
    newer = aliased(AssemblyRow)
    on_it = and_(EventRow.number == newer.number, EventRow.kind == str(Kind.FITTED))
    return exists().where(newer.replaces == AssemblyRow.number, exists().where(on_it))


def taking_effect(
    session: Session, numbers: Sequence[str], at: datetime, by: str | None
) -> list[dict[str, Any]]:
    """The lines for those that these replace, now that these are fitted: each once."""
    lines: list[dict[str, Any]] = []
    for chunk in in_chunks(list(numbers)):
        query = select(AssemblyRow.number, AssemblyRow.replaces).where(
            AssemblyRow.number.in_(chunk),
            AssemblyRow.replaces.in_(select(AssemblyRow.number)),
        )
        for new, old in session.execute(query):
            said = select(EventRow.data).where(EventRow.number == old, EventRow.kind == str(Kind.REPLACED))
            if all(data.get("by_number") != new for data in session.scalars(said)):
                data = {"by_number": new}
                lines.append({"number": old, "kind": str(Kind.REPLACED), "at": at, "by": by, "data": data})
    return lines


def _fitted(session: Session, numbers: Sequence[str]) -> set[str]:
    found: set[str] = set()
    for chunk in in_chunks(list(numbers)):
        query = select(EventRow.number).where(EventRow.number.in_(chunk), EventRow.kind == str(Kind.FITTED))
        found.update(session.scalars(query))
    return found
