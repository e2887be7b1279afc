"""Find assemblies by spec, customer and history."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final, Literal

from sqlalchemy import ColumnElement, and_, exists, func, literal, or_, select, tuple_, union
from sqlalchemy.orm import Session

from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.moments import Day
from tagger.record import Record, recorded
from tagger.store.assemblies import values_of
from tagger.store.base import Part
from tagger.store.folding import fold, folded
from tagger.store.lot_names import lot_key
from tagger.store.models import AssemblyRow, EventRow
from tagger.store.recorded_texts import first_having, has_in_it, having, lots_spelled, spelled
from tagger.store.values import Assembly, Kind, Scope
from tagger.store.voids import is_void
from tagger.store.withdrawals import built_from, matches_a_holding_one

_NAMES: Final = 200


@dataclass(frozen=True)
class Filter(Record):
    """What to look for; None asks nothing. Texts match any part, in any case; lots match whole."""

    number: str | None = None
    lot: str | None = None
    connection: str | None = None
    hose_standard: str | None = None
    dash: int | None = None
    pressure_min_bar: float | None = None
    pressure_max_bar: float | None = None
    built_from: Day | None = None
    built_to: Day | None = None
    order_reference: str | None = None
    printed: bool | None = None
    withdrawn: bool | None = None


@dataclass(frozen=True)
class Page:
    """One page of assemblies, newest first; ``after`` asks for the next one, None at the end."""

    assemblies: tuple[Assembly, ...]
    after: str | None


class Finding(Part):
    """The part of the store that looks for assemblies."""

    def find(self, wanted: Filter = Filter(), *, limit: int = 50, after: str | None = None) -> Page:
        """Assemblies that meet every condition, newest first, ``limit`` at a time."""
        with self.reading() as session:
            query = select(AssemblyRow).where(*_conditions(session, wanted, newest_first=True))
            if after:
                query = query.where(
                    tuple_(AssemblyRow.registration_id, AssemblyRow.place) < tuple_(*_cursor(after))
                )
            query = query.order_by(AssemblyRow.registration_id.desc(), AssemblyRow.place.desc())
            rows = list(session.scalars(query.limit(limit + 1)))
            more = len(rows) > limit
            rows = rows[:limit]
            last = f"{rows[-1].registration_id}.{rows[-1].place}" if more else None
            return Page(tuple(values_of(session, rows)), last)

    def every(self, wanted: Filter = Filter()) -> Iterator[Assembly]:
        """All assemblies that meet every condition, newest first, read a part at a time."""
        after: str | None = None
        while True:
            page = self.find(wanted, limit=1000, after=after)
            yield from page.assemblies
            after = page.after
            if after is None:
                return

    def on_machine(self, customer: str, machine: str) -> list[Assembly]:
        """What is on a machine now, by position: not what was replaced or taken off.

        A replacement that nobody has fitted yet is left out while what it is to replace is there.
        Both names whole, in any case; a machine of nobody known has the customer "".
        """
        with self.reading() as session:
            row = AssemblyRow
            query = select(row).where(
                row.machine.in_(spelled(session, "machine", machine)),
                func.coalesce(folded(row.customer), "") == fold(" ".join(customer.split())),
            )
            removed = exists().where(and_(EventRow.number == row.number, EventRow.kind == str(Kind.REMOVED)))
            found = values_of(session, list(session.scalars(query.where(~removed))))
        left = [item for item in found if item.replaced_by is None and item.void is None]
        there = {item.number for item in left}
        here = [item for item in left if item.fitted or item.replaces not in there]
        return sorted(here, key=lambda item: (item.position or "", item.number))

    def named(
        self, kind: Literal["customer", "machine"], text: str, limit: int = 20
    ) -> list[tuple[str, str]]:
        """Customers, or machines each with its customer (else ""), whose name has the text in it, in any case.

        Answers (customer, machine), the machine of a customer is ""; by name, ``limit`` at most.
        """
        row = AssemblyRow
        wanted = getattr(row, kind)
        customer = func.coalesce(row.customer, "").label("customer_name")
        of_it = func.coalesce(row.machine, "") if kind == "machine" else literal("")
        machine = of_it.label("machine_name")
        query = select(customer, machine).distinct().order_by(machine, customer).limit(limit)
        with self.reading() as session:
            names = first_having(session, kind, text, _NAMES)
            found = session.execute(query.where(wanted.in_(names))).all()
            if len(found) < limit and len(names) == _NAMES:  # many of these have no record any more
                found = session.execute(query.where(wanted.in_(having(session, kind, text)))).all()
            return [(customer, machine) for customer, machine in found]

    def count(self, wanted: Filter = Filter()) -> int:
        """How many assemblies meet every condition."""
        with self.reading() as session:
            where = _conditions(session, wanted, newest_first=False)
            query = select(func.count()).select_from(AssemblyRow).where(*where)
            return session.scalar(query) or 0


def _cursor(after: str) -> tuple[int, int]:
    try:
        registration, place = after.split(".")
        return int(registration), int(place)
    except ValueError:
        raise StoreError(Problem("after", after, Message("store-not-a-page-mark", mark=after))) from None


def _conditions(session: Session, wanted: Filter, *, newest_first: bool) -> list[ColumnElement[bool]]:
    row = AssemblyRow
    whole = (
        (row.built_on >= wanted.built_from) if wanted.built_from else None,
        (row.built_on <= wanted.built_to) if wanted.built_to else None,
        (row.hose_dash == wanted.dash) if wanted.dash is not None else None,
        (row.order_reference == wanted.order_reference) if wanted.order_reference else None,
        (row.working_pressure_bar >= wanted.pressure_min_bar)
        if wanted.pressure_min_bar is not None
        else None,
        (row.working_pressure_bar <= wanted.pressure_max_bar)
        if wanted.pressure_max_bar is not None
        else None,
        row.number.startswith(_typed(wanted.number)) if wanted.number else None,
    )
    parts = [
        has_in_it(session, field, text, newest_first=newest_first)
        for field, text in (*recorded(wanted).items(), ("hose_standard", wanted.hose_standard))
        if text and text.strip()
    ]
    found = [*(condition for condition in whole if condition is not None), *parts]
    if lot := lot_key(wanted.lot):
        scopes = (Scope.HOSE_LOT, Scope.FITTING_LOT)
        named = (
            part for scope in scopes for part in built_from(scope, [lot, *lots_spelled(session, scope, lot)])
        )
        found.append(row.number.in_(union(*named)))
    if wanted.connection:
        found.append(or_(row.connection_a == wanted.connection, row.connection_b == wanted.connection))
    if wanted.printed is not None:
        printed = exists().where(and_(EventRow.number == row.number, EventRow.kind == str(Kind.PRINTED)))
        found.append(printed if wanted.printed else and_(~printed, ~is_void(row.number)))
    if wanted.withdrawn is not None:
        found.append(matches_a_holding_one() if wanted.withdrawn else ~matches_a_holding_one())
    return found


def _typed(number: str) -> str:
    """A number as far as it has been typed."""
    return tag_number.compact(number)
