"""The history of an assembly: lines are added, never changed."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from datetime import datetime
from typing import Any

from sqlalchemy import func, insert, select
from sqlalchemy.orm import Session

from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.store.base import Part, compact, in_chunks, not_registered
from tagger.store.chain import pend
from tagger.store.lineage import taking_effect
from tagger.store.locks import Turn, take
from tagger.store.models import AssemblyRow, EventRow
from tagger.store.values import Event, Kind
from tagger.store.voids import voids

_NOT_OF_A_VOID = frozenset((Kind.FITTED, Kind.INSPECTED, Kind.PROOF_TESTED, Kind.CRIMPED, Kind.FLUSHED))


class History(Part):
    """The part of the store that remembers what happened."""

    def record(
        self, number: str, kind: Kind | str, data: Mapping[str, Any] | None = None, by: str | None = None
    ) -> Event:
        """Adds one line to a tag's history; ``data`` is plain JSON values.

        Raises StoreError for a kind or a number not known here.
        """
        return self.record_many([number], kind, data, by)[0]

    def record_many(
        self,
        numbers: Sequence[str],
        kind: Kind | str,
        data: Mapping[str, Any] | None = None,
        by: str | None = None,
    ) -> list[Event]:
        """The same line for several tags, in one transaction.

        Those that are fitted take the place of what they replace from now on, which its history says.
        """
        try:
            known = Kind(kind)
        except ValueError:
            kinds = tuple(str(one) for one in Kind)
            wrong = Message("store-not-an-event", kind=str(kind), kinds=kinds)
            raise StoreError(Problem("kind", str(kind), wrong)) from None
        compacted, now = [compact(n) for n in numbers], self.now()
        with self.writing() as session:
            if known in _NOT_OF_A_VOID:
                refuse_void(session, compacted)
            added = add_alike(session, compacted, known, dict(data or {}), by, now)
            if known is Kind.FITTED:
                add_events(session, taking_effect(session, compacted, now, by))
            return added

    def history(self, number: str) -> list[Event]:
        """A tag's history, oldest first. Raises StoreError for a number not known here."""
        number = compact(number)
        with self.reading() as session:
            _refuse_unknown(session, [number])
            rows = session.scalars(select(EventRow).where(EventRow.number == number).order_by(EventRow.id))
            return [_value(row) for row in rows]

    def events(
        self, *, kind: Kind | None = None, since: datetime | None = None, after: int = 0, limit: int = 1000
    ) -> list[Event]:
        """Events of all tags, oldest first, for exports and counts; ``after`` an event's id.

        Whoever goes on after the last id seen misses none: ids become visible in their order.
        """
        query = select(EventRow).where(EventRow.id > after).order_by(EventRow.id).limit(limit)
        if kind is not None:
            query = query.where(EventRow.kind == str(kind))
        if since is not None:
            query = query.where(EventRow.at >= since)
        with self.reading() as session:
            return [_value(row) for row in session.scalars(query)]

    def last(self, numbers: Iterable[str], kind: Kind) -> dict[str, Event]:
        """For each of these tags the newest line of one kind, where there is one."""
        found: dict[str, Event] = {}
        with self.reading() as session:
            for chunk in in_chunks([compact(number) for number in numbers]):
                newest = (
                    select(func.max(EventRow.id))
                    .where(EventRow.number.in_(chunk), EventRow.kind == str(kind))
                    .group_by(EventRow.number)
                )
                rows = session.scalars(select(EventRow).where(EventRow.id.in_(newest)))
                found.update((row.number, _value(row)) for row in rows)
        return found

    def each(self, numbers: Iterable[str], kind: Kind) -> list[Event]:
        """All lines of one kind of these tags, oldest first of each tag."""
        found: list[Event] = []
        with self.reading() as session:
            for chunk in in_chunks([compact(number) for number in numbers]):
                query = select(EventRow).where(EventRow.number.in_(chunk), EventRow.kind == str(kind))
                found += [_value(row) for row in session.scalars(query.order_by(EventRow.id))]
        return found

    def times_printed(self, number: str) -> int:
        """How often this tag has been printed; above 1, the rest were re-prints."""
        query = select(func.count()).where(
            EventRow.number == compact(number), EventRow.kind == str(Kind.PRINTED)
        )
        with self.reading() as session:
            return session.scalar(query) or 0


def add_events(session: Session, values: Sequence[dict[str, Any]]) -> list[int]:
    """Writes lines of history, and tells their ids; the last thing a transaction does, as far as it can.

    Writers of history take turns until they have committed. So ids become visible in their order,
    and a reader who has seen one has seen all below it: what ``events(after=...)`` promises.
    """
    if not values:
        return []
    take(session, Turn.EVENTS)
    if session.get_bind().dialect.name == "sqlite":
        rows = _numbered(session, values)
        session.execute(insert(EventRow), rows, execution_options={"pended": True})
    else:
        query = insert(EventRow).returning(EventRow.id, sort_by_parameter_order=True)
        ids = session.scalars(query, values, execution_options={"pended": True})
        rows = [{"id": id, **line} for id, line in zip(ids, values, strict=True)]
    pend(session, EventRow, rows)
    return [row["id"] for row in rows]


def _numbered(session: Session, values: Sequence[dict[str, Any]]) -> list[dict[str, Any]]:
    """Lines with the ids that SQLite, which has one writer, would give them; asked, it tells them one line at a time."""
    last = session.scalar(select(func.max(EventRow.id))) or 0
    return [{"id": id, **line} for id, line in enumerate(values, last + 1)]


def add_alike(
    session: Session, numbers: list[str], kind: Kind, data: dict[str, Any], by: str | None, at: datetime
) -> list[Event]:
    """The same line for several tags, in a transaction already open."""
    _refuse_unknown(session, numbers)
    ids: list[int] = []
    for some in in_chunks(numbers, 1000):  # a long run has many, and none of their lines is held
        values = [{"number": n, "kind": str(kind), "at": at, "by": by, "data": data} for n in some]
        ids += add_events(session, values)
    return [Event(id_, number, kind, at, by, data) for id_, number in zip(ids, numbers, strict=True)]


def refuse_void(session: Session, numbers: list[str]) -> None:
    """Raises StoreError naming every record that is void: nothing is done with its hose."""
    if void := voids(session, numbers):
        shown = [tag_number.format(number) for number in void]
        raise StoreError(Problem("number", one, Message("store-void-not-used", number=one)) for one in shown)


def _refuse_unknown(session: Session, numbers: list[str]) -> None:
    known: set[str] = set()
    for chunk in in_chunks(numbers):
        known.update(session.scalars(select(AssemblyRow.number).where(AssemblyRow.number.in_(chunk))))
    if missing := [number for number in numbers if number not in known]:
        raise StoreError(not_registered(number) for number in missing)


def _value(row: EventRow) -> Event:
    return Event(row.id, row.number, Kind(row.kind), row.at, row.by, row.data)
