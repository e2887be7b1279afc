"""Counts over the record: what a manager looks at."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from datetime import date, datetime, timedelta

from sqlalchemy import and_, exists, func, select
from sqlalchemy.orm import aliased

from tagger.store.assemblies import values_of
from tagger.store.base import Part
from tagger.store.lineage import replaced
from tagger.store.models import AssemblyRow, EventRow, OrderRow
from tagger.store.values import Assembly, Kind
from tagger.store.voids import is_void


@dataclass(frozen=True)
class Totals:
    """Counts since a day. ``reprints`` are prints beyond each tag's first."""

    registered: int
    printed: int
    reprints: int
    scans: int
    orders: int
    orders_from_tags: int


class Figures(Part):
    """The part of the store that counts."""

    def totals(self, since: datetime) -> Totals:
        """Everything counted from a moment on."""
        with self.reading() as session:

            def events(kind: Kind) -> int:
                wanted = select(func.count()).where(EventRow.kind == str(kind), EventRow.at >= since)
                return session.scalar(wanted) or 0

            orders = select(func.count()).select_from(OrderRow).where(OrderRow.created_at >= since)
            earlier = aliased(EventRow)
            again = select(func.count()).where(
                EventRow.kind == str(Kind.PRINTED),
                EventRow.at >= since,
                exists().where(
                    and_(
                        earlier.number == EventRow.number,
                        earlier.kind == str(Kind.PRINTED),
                        earlier.id < EventRow.id,
                    )
                ),
            )
            return Totals(
                registered=events(Kind.REGISTERED),
                printed=events(Kind.PRINTED),
                reprints=session.scalar(again) or 0,
                scans=events(Kind.SCANNED),
                orders=session.scalar(orders) or 0,
                orders_from_tags=session.scalar(orders.where(OrderRow.number.is_not(None))) or 0,
            )

    def by_day(self, kind: Kind, first: date, last: date) -> list[tuple[date, int]]:
        """How many events of a kind each day (UTC), days without any included."""
        start = datetime(first.year, first.month, first.day, tzinfo=self.now().tzinfo)
        stop = start + timedelta(days=(last - first).days + 1)
        with self.reading() as session:
            moments = session.scalars(
                select(EventRow.at).where(
                    EventRow.kind == str(kind), EventRow.at >= start, EventRow.at < stop
                )
            )
            counted = Counter(moment.date() for moment in moments)
        days = [first + timedelta(days=n) for n in range((last - first).days + 1)]
        return [(day, counted[day]) for day in days]

    def oldest(self, limit: int = 20) -> list[Assembly]:
        """The assemblies built longest ago that were neither replaced nor taken off."""
        gone = and_(EventRow.number == AssemblyRow.number, EventRow.kind == str(Kind.REMOVED))
        query = (
            select(AssemblyRow)
            .where(
                AssemblyRow.built_on.is_not(None),
                ~replaced(),
                ~is_void(AssemblyRow.number),
                ~exists().where(gone),
            )
            .order_by(AssemblyRow.built_on, AssemblyRow.number)
            .limit(limit)
        )
        with self.reading() as session:
            return values_of(session, list(session.scalars(query)))
