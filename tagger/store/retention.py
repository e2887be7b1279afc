"""How long what is kept of people stays: contacts of order requests, photos, who reported a fitting.

Erasing takes nothing from an assembly's record: orders, tags, history, days, machines and hours stay. A scan
keeps nothing of who scanned.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any, Final, Protocol

from sqlalchemy import JSON, ColumnElement, Select, delete, exists, func, or_, select, type_coerce
from sqlalchemy.orm import Session

from tagger.store.customers import ERASED, Customers, erase_contact_of
from tagger.store.fitted import FittedReports, FittedState, erase_report
from tagger.store.models import AssemblyRow, FittedReportRow, OrderEventRow, OrderRow, PhotoRow
from tagger.store.values import OrderState
from tagger.store.withdrawals import matches_a_holding_one

_AT_ONCE: Final = 100  # in one transaction: other writers come in between
_ENDED: Final = tuple(str(state) for state in OrderState if not state.next)


class SetDays(Protocol):
    """The settings of the shop that say for how many days."""

    @property
    def keep_contacts_days(self) -> int: ...
    @property
    def keep_photos_days(self) -> int: ...
    @property
    def keep_reports_days(self) -> int: ...


@dataclass(frozen=True)
class Keep:
    """For how many days each is kept; 0: for ever.

    ``contacts``: after the last step of an order request that is done or declined, and as long as a withdrawal
    holds one of its assemblies: whom to call must stay known. ``photos``: the same, and after a report was
    decided. ``reports``: who made a report, and its photo, after it was decided.
    """

    contacts: int = 0
    photos: int = 0
    reports: int = 0

    @classmethod
    def of(cls, settings: SetDays) -> Keep:
        """As the shop set it."""
        return cls(settings.keep_contacts_days, settings.keep_photos_days, settings.keep_reports_days)


@dataclass(frozen=True)
class Old:
    """How many contacts of order requests, photos and persons of reports have been kept long enough."""

    contacts: int
    photos: int
    reports: int


class Retention(FittedReports, Customers):
    """The part of the store that erases what was kept long enough."""

    def old(self, keep: Keep) -> Old:
        """How much ``erase_old`` would erase now."""
        with self.reading() as session:
            return Old(*(_count(session, query) for query in _queries(keep, self.now())))

    def erase_old(self, keep: Keep) -> Old:
        """Erases what was kept long enough, a part at a time; how much that was."""
        contacts, photos, reports = _queries(keep, self.now())
        return Old(
            sum(
                self._erase(
                    contacts, lambda s, one: erase_contact_of(s, s.get_one(OrderRow, one), self.now())
                )
            ),
            sum(self._erase(photos, lambda s, one: s.execute(delete(PhotoRow).where(PhotoRow.id == one)))),
            sum(self._erase(reports, lambda s, one: erase_report(s, s.get_one(FittedReportRow, one)))),
        )

    def _erase(self, query: Select[Any] | None, act: Any) -> Iterator[int]:
        """Acts on all that the query finds; how many each time."""
        while query is not None:
            with self.writing() as session:
                found = list(session.scalars(query.limit(_AT_ONCE)))
                for one in found:
                    act(session, one)
            yield len(found)
            if len(found) < _AT_ONCE:
                return


def _count(session: Session, query: Select[Any] | None) -> int:
    return 0 if query is None else session.scalar(select(func.count()).select_from(query.subquery())) or 0


def _queries(keep: Keep, now: datetime) -> tuple[Select[Any] | None, Select[Any] | None, Select[Any] | None]:
    """The keys of what was kept long enough: order requests, photos, reports; None: kept for ever."""

    def since(days: int) -> datetime:
        return now - timedelta(days=days)

    person = or_(*(type_coerce(OrderRow.contact, JSON)[name].as_string() != "" for name in ERASED))
    contacts = select(OrderRow.reference).where(_ended(since(keep.contacts)), person, ~_held())
    of_order = PhotoRow.order_reference.in_(
        select(OrderRow.reference).where(_ended(since(keep.photos)), ~_held())
    )
    of_report = PhotoRow.fitted_report_id.in_(select(FittedReportRow.id).where(_decided(since(keep.photos))))
    photo = exists().where(PhotoRow.fitted_report_id == FittedReportRow.id)
    named = or_(FittedReportRow.fitted_by.is_not(None), photo)
    reports = select(FittedReportRow.id).where(_decided(since(keep.reports)), named)
    return (
        contacts if keep.contacts else None,
        select(PhotoRow.id).where(or_(of_order, of_report)) if keep.photos else None,
        reports if keep.reports else None,
    )


def _ended(before: datetime) -> ColumnElement[bool]:
    """A condition on order requests: done or declined, and nothing happened to them since."""
    later = exists().where(OrderEventRow.reference == OrderRow.reference, OrderEventRow.at >= before)
    return OrderRow.state.in_(_ENDED) & ~later


def _held() -> ColumnElement[bool]:
    """A condition on order requests: a withdrawal holds the tag they come from, or what was built for them."""
    held = exists().where(
        or_(AssemblyRow.number == OrderRow.number, AssemblyRow.order_reference == OrderRow.reference),
        matches_a_holding_one(),
    )
    return held


def _decided(before: datetime) -> ColumnElement[bool]:
    waits = FittedReportRow.state == str(FittedState.WAITING)
    return ~waits & (FittedReportRow.decided_at < before)
