"""Registering assemblies, reading them back, finding them."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from datetime import date, datetime
from itertools import islice
from typing import Any

from sqlalchemy import func, insert, select
from sqlalchemy.orm import Session

from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError, TaggerError
from tagger.messages import Message
from tagger.record import recorded
from tagger.spec import AssemblySpec, Hose
from tagger.store import designs
from tagger.store.base import Part, compact, in_chunks, not_registered
from tagger.store.chain import pend
from tagger.store.changes import refuse_unread_changes
from tagger.store.designs import Design
from tagger.store.fittings import refuse_other_fittings
from tagger.store.history import add_events
from tagger.store.lineage import Lineage, lineage
from tagger.store.lots import refuse_other_hoses
from tagger.store.models import AssemblyRow, OrderRow, RegistrationRow, VoidRow
from tagger.store.prepared import Drawn, Kept, Prepared, own_columns, prepare, prepare_row, too_many
from tagger.store.recorded_texts import keep_texts
from tagger.store.spool import Spool
from tagger.store.values import Assembly, Kind, Registration, Void, Withdrawal
from tagger.store.voids import voids
from tagger.store.withdrawals import holding, refuse_withdrawn_lots
from tagger.trade.results import Assessment

MakeNumber = Callable[[], str]


class Assemblies(Part):
    """The part of the store that gives tag numbers."""

    def register(
        self,
        spec: AssemblySpec,
        assessment: Assessment,
        *,
        count: int = 1,
        built_on: date | None = None,
        by: str | None = None,
        replaces: str | None = None,
        order_reference: str | None = None,
        lot_reason: str | None = None,
        changes_considered: bool = False,
        key: str | None = None,
        make_number: MakeNumber = tag_number.make,
        **record: str | None,
    ) -> list[Assembly]:
        """Gives ``count`` assemblies their tag numbers: all of them, or none.

        ``record``: the texts of the record by name (``record.RECORD_FIELDS``). A second call with the
        same ``key`` returns what the first one registered. ``lot_reason``: why the hose's lot is used
        although it is known as another hose; ``changes_considered``: the change its order asks for needs
        none in the spec. Raises StoreError (a withdrawn lot, a key used for something else), NumberError, PayloadError.
        """
        row = Registration(
            spec,
            assessment,
            count,
            built_on,
            replaces,
            order_reference,
            lot_reason,
            changes_considered,
            listed_row=None,
            **record,
        )
        return self.register_many([row], by=by, key=key, make_number=make_number)

    def register_many(
        self,
        rows: Sequence[Registration],
        *,
        by: str | None = None,
        key: str | None = None,
        make_number: MakeNumber = tag_number.make,
    ) -> list[Assembly]:
        """Registers a whole run in one transaction; the problems of all rows are told at once.

        Problems name the row, counted from 1 or as its spreadsheet numbers it ("row 3.hose.lot"), where there is
        more than one.
        """
        prepared = prepare(rows)
        prepared.refuse()

        def registered(session: Session) -> list[str]:
            known = _already(session, key, prepared.mark)
            if not known:
                known = _fresh_numbers(session, prepared.count, make_number)
                self._insert(session, prepared, known, by, key)
            return known

        return self.assemblies(self.act(registered))

    def prepare(self, rows: Iterable[Registration]) -> Prepared:
        """A run as it would be registered, of any length: each row is worked out as it comes and kept beside the
        memory. What is wrong with them is told by ``draw``.
        """
        return prepare(rows, Spool)

    def draw(self, prepared: Prepared, *, make_number: MakeNumber = tag_number.make) -> Drawn:
        """Free tag numbers for a whole run, of which nothing is written: its tags can be made and proved first.

        Raises StoreError, PayloadError naming the row as ``register_many`` does.
        """
        prepared.refuse()
        with self.reading() as session:
            _refuse_by_the_books(session, prepared)
            numbers = _fresh_numbers(session, prepared.count, make_number)
        return Drawn(prepared, numbers)

    def register_drawn(self, drawn: Drawn, *, by: str | None = None, key: str | None = None) -> None:
        """Registers a run under the very numbers that were drawn for it, in one transaction.

        Raises StoreError where a number or the key was used in the meantime, and as ``register_many`` does.
        """

        def registered(session: Session) -> None:
            if _already(session, key, drawn.prepared.mark):
                raise StoreError(Problem("key", key, Message("store-key-of-other", what="registration")))
            if taken := _taken(session, drawn.numbers):
                raise StoreError(
                    Problem("number", one, Message("store-number-taken", number=tag_number.format(one)))
                    for one in taken
                )
            self._insert(session, drawn.prepared, drawn.numbers, by, key)

        self.act(registered)

    def registered(self, prepared: Prepared, key: str) -> list[str]:
        """The numbers of a run that was registered with this key, in order; none where it was not.

        Raises StoreError for a key that was used for other rows.
        """
        with self.reading() as session:
            return _already(session, key, prepared.mark)

    def refusals(self, rows: Sequence[Registration]) -> list[tuple[int, Problem]]:
        """All that registering these rows would be refused for, with each row's place from 0; writes nothing.

        A number drawn, a key or what others do in the meantime may still refuse it.
        """
        found: list[tuple[int, Problem]] = []
        read_back = set[tuple[object, ...]]()  # specs whose digits are proved: a list repeats them
        for place, row in enumerate(rows):
            same = (row.spec, id(row.assessment), row.built_on)
            try:
                if same in read_back:
                    own_columns(row)
                else:
                    prepare_row(row)
                    read_back.add(same)
            except TaggerError as error:
                found += ((place, problem) for problem in error.problems)
        with self.reading() as session:
            for refuse in _BY_THE_BOOKS:
                try:
                    refuse(session, rows)
                except TaggerError as error:
                    found += map(_of_row, error.problems)
        found += ((0, problem) for problem in too_many(sum(row.count for row in rows)))
        return sorted(found, key=lambda one: one[0])

    def _insert(
        self, session: Session, prepared: Prepared, numbers: Sequence[str], by: str | None, key: str | None
    ) -> None:
        said = _refuse_by_the_books(session, prepared)
        now = self.now()
        act = RegistrationRow(key=key, fingerprint=prepared.mark, created_at=now)
        session.add(act)
        session.flush()
        common = {"registration_id": act.id, "created_at": now, "registered_by": by}
        designs.keep(session, prepared.design_places, prepared.designs)
        values = (
            {"number": numbers[place], "place": place, **common, **row.columns}
            for row, places in prepared.placed()
            for place in places
        )
        for some in _in_batches(values):
            session.execute(insert(AssemblyRow), some, execution_options={"pended": True})
            pend(session, AssemblyRow, some)
        for some in _in_batches(_events(session, prepared, numbers, said, now, by)):
            add_events(session, some)
        keep_texts(session, (row.columns for row in prepared.kept))  # once it is our turn, as in a correction

    def assembly(self, number: str) -> Assembly:
        """The record of one tag number, typed in any way. Raises NumberError, StoreError."""
        return self.assemblies([compact(number)])[0]

    def assemblies(self, numbers: Sequence[str]) -> list[Assembly]:
        """Several records, in the order asked for. Raises StoreError for one that is not there."""
        wanted = [compact(number) for number in numbers]
        with self.reading() as session:
            rows: dict[str, AssemblyRow] = {}
            for chunk in in_chunks(wanted):
                found = session.scalars(select(AssemblyRow).where(AssemblyRow.number.in_(chunk)))
                rows.update((row.number, row) for row in found)
            missing = [number for number in wanted if number not in rows]
            if missing:
                raise StoreError(not_registered(number) for number in missing)
            return values_of(session, [rows[number] for number in wanted])

    def void_of(self, numbers: Sequence[str]) -> dict[str, Void]:
        """Those of these records that are void, by number as it is kept."""
        with self.reading() as session:
            return voids(session, [compact(number) for number in numbers])

    def void_numbers(self) -> list[str]:
        """The tag numbers of all records that are void, in order."""
        with self.reading() as session:
            return list(session.scalars(select(VoidRow.number).order_by(VoidRow.number)))

    def run(self, run: int) -> list[Assembly]:
        """Everything registered in one act, in order. Raises StoreError for a run not known here."""
        query = select(AssemblyRow.number).where(AssemblyRow.registration_id == run)
        with self.reading() as session:
            numbers = list(session.scalars(query.order_by(AssemblyRow.place)))
        if not numbers:
            raise StoreError(Problem("run", run, Message("store-run-not-found", run=run)))
        return self.assemblies(numbers)

    def run_size(self, run: int) -> int:
        """How many assemblies were registered in one act."""
        query = select(func.count()).where(AssemblyRow.registration_id == run)
        with self.reading() as session:
            return session.scalar(query) or 0

    def known(self, number: str) -> bool:
        """Whether this tag number is registered here."""
        with self.reading() as session:
            return session.get(AssemblyRow, compact(number)) is not None


def _in_batches(values: Iterable[dict[str, Any]], size: int = 1000) -> Iterator[list[dict[str, Any]]]:
    source = iter(values)
    while some := list(islice(source, size)):
        yield some


def _refuse_by_the_books(session: Session, prepared: Prepared) -> dict[int, dict[str, Any]]:
    """Raises StoreError for rows that what is kept forbids: lots, fittings, orders.

    By the place of a row what its history keeps of that: what its lot is known as, and of a change its order
    asks for.
    """
    places = prepared.in_the_books
    rows: list[Registration] = [prepared.labels[place][0] for place in places]
    several = len(prepared.kept) > 1
    names = [row.listed_row or place + 1 for place, row in zip(places, rows, strict=True)]
    try:
        refuse_withdrawn_lots(session, rows)
        known_as = refuse_other_hoses(session, rows)
        refuse_other_fittings(session, rows)
        _refuse_unknown_orders(session, rows)
        changes = refuse_unread_changes(session, rows)
    except TaggerError as error:
        if several:
            raise type(error)(_in_the_run(problem, names) for problem in error.problems) from None
        raise
    return {
        place: _known_as(row, other) | change
        for place, row, other, change in zip(places, rows, known_as, changes, strict=True)
    }


def _in_the_run(problem: Problem, names: Sequence[int]) -> Problem:
    """A problem of one of the rows that the books were asked about, by what its row is called (``names``)."""
    if len(names) == 1 and problem.field not in _OF_NO_ROW:
        field = f"row {names[0]}.{problem.field}" if problem.field else f"row {names[0]}"
        return Problem(field, problem.value, problem.message)
    row, dot, field = problem.field.partition(".")
    if not row.startswith("row "):
        return problem
    name = names[int(row.removeprefix("row ")) - 1]
    return Problem(f"row {name}{dot}{field}", problem.value, problem.message)


_OF_NO_ROW = ("order_reference",)  # an order that is not there is told once, whatever rows name it


def _of_row(problem: Problem) -> tuple[int, Problem]:
    """The place of a problem's row from 0, and the problem without it."""
    row, dot, field = problem.field.partition(".")
    if not dot or not row.startswith("row "):
        return 0, problem
    return int(row.removeprefix("row ")) - 1, Problem(field, problem.value, problem.message)


def _already(session: Session, key: str | None, mark: str) -> list[str]:
    if key is None:
        return []
    act = session.scalar(select(RegistrationRow).where(RegistrationRow.key == key))
    if act is None:
        return []
    if act.fingerprint != mark:
        raise StoreError(Problem("key", key, Message("store-key-of-other", what="registration")))
    numbers = select(AssemblyRow.number).where(AssemblyRow.registration_id == act.id)
    return list(session.scalars(numbers.order_by(AssemblyRow.place)))


def _fresh_numbers(session: Session, count: int, make_number: MakeNumber) -> list[str]:
    """Return unused tag numbers. A collision is improbable; the database is checked all the same."""
    fresh: dict[str, None] = {}
    for _ in range(100):
        fresh.update((compact(make_number()), None) for _ in range(count - len(fresh)))
        for taken in _taken(session, list(fresh)):
            del fresh[taken]
        if len(fresh) == count:
            return list(fresh)
    raise StoreError(Problem("number", None, Message("store-numbers-used-up")))


def _taken(session: Session, numbers: list[str]) -> list[str]:
    """Those of these numbers that are registered."""
    taken: list[str] = []
    for chunk in in_chunks(numbers):
        taken += session.scalars(select(AssemblyRow.number).where(AssemblyRow.number.in_(chunk)))
    return taken


def _refuse_unknown_orders(session: Session, rows: Sequence[Registration]) -> None:
    named = {row.order_reference for row in rows if row.order_reference}
    known = set(session.scalars(select(OrderRow.reference).where(OrderRow.reference.in_(named))))
    if missing := sorted(named - known):
        raise StoreError(
            Problem("order_reference", name, Message("store-order-not-found", reference=name))
            for name in missing
        )


_BY_THE_BOOKS: tuple[Callable[[Session, Sequence[Registration]], object], ...] = (
    refuse_withdrawn_lots, refuse_other_hoses, refuse_other_fittings, _refuse_unknown_orders, refuse_unread_changes,
)  # fmt: skip
"""What ``_refuse_by_the_books`` asks, each by itself: a dry run tells all of it at once."""


def _said(row: Kept) -> dict[str, Any]:
    """What the first line of history keeps of how it was registered."""
    return {k: v for k in ("replaces", "order_reference", "reason") if (v := row.columns[k])}


def _known_as(row: Registration, others: Sequence[Hose]) -> dict[str, Any]:
    """What it keeps of a reel lot that is known as other hoses."""
    if not others:
        return {}
    known = [hose.model_dump(mode="json", exclude_none=True) for hose in others]
    return {"lot_reason": row.lot_reason, "lot_known_as": known}


def _events(
    session: Session,
    prepared: Prepared,
    numbers: Sequence[str],
    said: Mapping[int, dict[str, Any]],
    at: datetime,
    by: str | None,
) -> Iterator[dict[str, Any]]:
    """The lines of history of a run that is registered, row by row."""
    for place, (row, places) in enumerate(prepared.placed()):
        data = _said(row) | said.get(place, {})
        for one in places:
            yield _event(numbers[one], Kind.REGISTERED, at, by, data)
        if row.replaces:
            yield from _replaced(session, row, [numbers[one] for one in places], at, by)


def _event(number: str, kind: Kind, at: datetime, by: str | None, data: dict[str, Any]) -> dict[str, Any]:
    return {"number": number, "kind": str(kind), "at": at, "by": by, "data": data}


def _replaced(
    session: Session, row: Kept, new: Iterable[str], at: datetime, by: str | None
) -> list[dict[str, Any]]:
    """The old tag's history says what is built to take its place, where the old tag is ours."""
    old = row.columns["replaces"]
    if session.get(AssemblyRow, old) is None:
        return []
    return [_event(old, Kind.REPLACEMENT_BUILT, at, by, {"by_number": number}) for number in new]


def values_of(session: Session, rows: Sequence[AssemblyRow]) -> list[Assembly]:
    numbers = [row.number for row in rows]
    known, void = lineage(session, numbers), voids(session, numbers)
    holds = holding(session, rows)
    drawn = designs.read(session, (row.design_id for row in rows))
    return [_value(row, drawn[row.design_id], known, holds[row.number], void.get(row.number)) for row in rows]


def _value(
    row: AssemblyRow,
    design: Design,
    known: Lineage,
    withdrawals: Iterable[Withdrawal],
    void: Void | None,
) -> Assembly:
    return Assembly(
        number=row.number,
        spec=design.spec,
        assessment=design.assessment,
        content=designs.content_of(row.digits),
        digits=row.digits,
        built_on=row.built_on,
        replaces=row.replaces,
        replaced_by=known.replaced_by.get(row.number),
        replacement_built=known.built.get(row.number),
        fitted=row.number in known.fitted,
        order_reference=row.order_reference,
        withdrawals=tuple(withdrawals),
        registered_by=row.registered_by,
        created_at=row.created_at,
        run=row.registration_id,
        place=row.place + 1,
        void=void,
        **recorded(row),
    )
