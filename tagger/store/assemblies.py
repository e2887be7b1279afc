"""Registering assemblies, reading them back, finding them."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from typing import Any

from sqlalchemy import func, insert, select
from sqlalchemy.orm import Session

from tagger.code import number as tag_number
from tagger.code import payload
from tagger.errors import Problem, StoreError, TaggerError
from tagger.messages import Message
from tagger.record import MAX_LENGTH, as_kept, problem_of, recorded
from tagger.spec import MAX_COUNT, AssemblySpec, Danger, Hose, TagContent
from tagger.store import designs
from tagger.store.base import Part, compact, fingerprint, in_chunks, not_registered
from tagger.store.chain import pend
from tagger.store.changes import refuse_unread_changes
from tagger.store.designs import Design
from tagger.store.fittings import refuse_other_fittings
from tagger.store.history import add_events
from tagger.store.lineage import Lineage, lineage
from tagger.store.lots import refuse_other_hoses
from tagger.store.models import AssemblyRow, OrderRow, RegistrationRow, VoidRow
from tagger.store.recorded_texts import keep_texts
from tagger.store.texts import refuse_control
from tagger.store.values import Assembly, Kind, Registration, Void, Withdrawal
from tagger.store.voids import voids
from tagger.store.withdrawals import holding, lot_key, refuse_withdrawn_lots
from tagger.trade import temperature
from tagger.trade.results import Assessment

MAX_RUN = 100_000  # in one act
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

        Problems name the row, counted from 1 ("row 3.hose.lot"), where there is more than one.
        """
        prepared = _prepare(rows)
        mark, count = _mark(rows), sum(row.count for row in rows)

        def registered(session: Session) -> list[str]:
            known = _already(session, key, mark)
            if not known:
                known = _fresh_numbers(session, count, make_number)
                self._insert(session, prepared, known, by, key, mark)
            return known

        return self.assemblies(self.act(registered))

    def draw(self, rows: Sequence[Registration], *, make_number: MakeNumber = tag_number.make) -> Drawn:
        """Free tag numbers for a whole run, of which nothing is written: its tags can be made and proved first.

        Raises StoreError, PayloadError naming the row as ``register_many`` does.
        """
        prepared = _prepare(rows)
        with self.reading() as session:
            _refuse_by_the_books(session, rows)
            numbers = _fresh_numbers(session, sum(row.count for row in rows), make_number)
        return Drawn(prepared, numbers, _mark(rows))

    def register_drawn(self, drawn: Drawn, *, by: str | None = None, key: str | None = None) -> None:
        """Registers a run under the very numbers that were drawn for it, in one transaction.

        Raises StoreError where a number or the key was used in the meantime, and as ``register_many`` does.
        """

        def registered(session: Session) -> None:
            if _already(session, key, drawn.mark):
                raise StoreError(Problem("key", key, Message("store-key-of-other", what="registration")))
            if taken := _taken(session, drawn.numbers):
                raise StoreError(
                    Problem("number", one, Message("store-number-taken", number=tag_number.format(one)))
                    for one in taken
                )
            self._insert(session, drawn.rows, drawn.numbers, by, key, drawn.mark)

        self.act(registered)

    def registered(self, rows: Sequence[Registration], key: str) -> list[str]:
        """The numbers of a run that was registered with this key, in order; none where it was not.

        Raises StoreError for a key that was used for other rows.
        """
        with self.reading() as session:
            return _already(session, key, _mark(rows))

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
                    _own_columns(row)
                else:
                    _prepared(row)
                    read_back.add(same)
            except TaggerError as error:
                found += ((place, problem) for problem in error.problems)
        with self.reading() as session:
            for refuse in _BY_THE_BOOKS:
                try:
                    refuse(session, rows)
                except TaggerError as error:
                    found += map(_of_row, error.problems)
        found += ((0, problem) for problem in _too_many(rows))
        return sorted(found, key=lambda one: one[0])

    def _insert(
        self,
        session: Session,
        rows: Sequence[_Prepared],
        numbers: Sequence[str],
        by: str | None,
        key: str | None,
        mark: str,
    ) -> None:
        known_as, changes = _refuse_by_the_books(session, [row.asked for row in rows])
        now = self.now()
        act = RegistrationRow(key=key, fingerprint=mark, created_at=now)
        session.add(act)
        session.flush()
        values: list[dict[str, Any]] = []
        events: list[dict[str, Any]] = []
        left = iter(numbers)
        for row, other, change in zip(rows, known_as, changes, strict=True):
            said = _said(row, other) | change
            for _ in range(row.asked.count):
                number = next(left)
                place = len(values)
                common = {"registration_id": act.id, "place": place, "created_at": now, "registered_by": by}
                values.append({"number": number, **common, **row.columns})
                events.append(_event(number, Kind.REGISTERED, now, by, said))
            if row.asked.replaces:
                events.extend(_replaced(session, row, values[-row.asked.count :], now, by))
        designs.keep(session, (row.design for row in rows))
        session.execute(insert(AssemblyRow), values, execution_options={"pended": True})
        pend(session, AssemblyRow, values)
        keep_texts(session, (row.columns for row in rows))
        add_events(session, events)

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


@dataclass(frozen=True)
class _Prepared:
    asked: Registration
    content: TagContent  # what its symbols say, as whoever scans them reads it
    design: dict[str, Any]
    columns: dict[str, Any]  # everything but the number and the moment


@dataclass(frozen=True)
class Drawn:
    """A run with the tag numbers drawn for it. Nothing is written yet, and nothing keeps them free."""

    rows: list[_Prepared]
    numbers: list[str]
    mark: str

    def each(self) -> Iterator[tuple[str, str, TagContent, Registration]]:
        """Number, digits of the symbol, what they say, and row of each assembly, as they will be registered."""
        left = iter(self.numbers)
        for row in self.rows:
            for _ in range(row.asked.count):
                yield next(left), row.columns["digits"], row.content, row.asked


def _prepare(rows: Sequence[Registration]) -> list[_Prepared]:
    """Each row's columns; the problems of all rows together."""
    prepared: list[_Prepared] = []
    problems: list[Problem] = []
    for place, row in enumerate(rows, 1):
        try:
            prepared.append(_prepared(row))
        except TaggerError as error:
            within = error.within(f"row {place}") if len(rows) > 1 else error
            problems.extend(within.problems)
    if not rows:
        problems.append(Problem("rows", None, Message("store-rows-none")))
    problems += _too_many(rows)
    if problems:
        raise StoreError(problems)
    return prepared


def _too_many(rows: Sequence[Registration]) -> list[Problem]:
    total = sum(row.count for row in rows)
    return (
        [Problem("rows", total, Message("store-rows-too-many", count=total, most=MAX_RUN))]
        if total > MAX_RUN
        else []
    )


def _prepared(row: Registration) -> _Prepared:
    """A row as it is kept. Raises TaggerError for what cannot be."""
    design = designs.as_row(row.spec, row.assessment)
    content, columns = _columns(row)
    return _Prepared(row, content, design, {"design_id": design["id"], **columns})


def dangers_without_reason(row: Registration) -> list[Problem]:
    """What keeps a row from being registered until somebody writes why: a danger of fluid, heat, cold or vacuum.

    A pressure whose source names that very fluid and temperature is such a reason for the two of them.
    """
    given = row.spec.working_pressure
    if row.reason and row.reason.strip():
        return []
    allowed = {None, Danger.PRESSURE}
    if given is not None and temperature.lifts(given, row.spec):
        allowed |= {Danger.FLUID, Danger.HEAT}
    return [
        Problem("reason", None, Message("store-danger-reason", danger=warning.message))
        for warning in row.assessment.warnings
        if warning.danger not in allowed
    ]


def _columns(row: Registration) -> tuple[TagContent, dict[str, Any]]:
    """What the tag's symbols say, and the columns that go with it."""
    own = _own_columns(row)
    content = row.assessment.content_of(row.spec, row.built_on)
    carried = payload.carried(content)
    digits = payload.encode_carried(carried)
    printed = payload.decode(digits)
    if printed != carried:  # a tag that would say something else must never be printed
        raise StoreError(Problem("spec", None, Message("store-read-back")))
    spec = row.spec
    return printed, {
        "digits": digits,
        **own,
        "hose_standard": spec.hose.standard,
        "hose_dash": spec.hose.dash,
        "hose_lot": lot_key(spec.hose.lot),
        "fitting_lot_a": lot_key(spec.end_a.lot),
        "fitting_lot_b": lot_key(spec.end_b.lot),
        "connection_a": str(spec.end_a.connection),
        "connection_b": str(spec.end_b.connection),
        "working_pressure_bar": row.assessment.working_pressure.value_bar,
    }


def _own_columns(row: Registration) -> dict[str, Any]:
    """What is a row's own beside its spec. Raises StoreError, also for a danger without a reason."""
    if not 1 <= row.count <= MAX_COUNT:
        wrong = Message("store-quantity-not-valid", count=row.count, most=MAX_COUNT)
        raise StoreError(Problem("count", row.count, wrong))
    if against := dangers_without_reason(row):
        raise StoreError(against)
    return {
        "built_on": row.built_on,
        **{name: text_of(name, text) for name, text in recorded(row).items()},
        "replaces": compact(row.replaces) if row.replaces else None,
        "order_reference": row.order_reference,
    }


def text_of(name: str, value: str | None) -> str | None:
    """A text of the record as it is kept: on one line, None where it is empty. Raises StoreError."""
    kept = as_kept(name, value)
    refuse_control(name, kept)
    if kept is not None and len(kept) > MAX_LENGTH:
        raise StoreError(Problem(name, kept[:20] + "...", Message("store-too-long", most=MAX_LENGTH)))
    if wrong := problem_of(name, kept):
        raise StoreError(wrong)
    return kept


def _asked(row: Registration) -> dict[str, Any]:
    """What makes two requests the same: not the day, nor what the tables said that day.

    A text of the record, or a reason, that is not given is left out: a new one must not make old requests differ.
    """
    texts = {name: text for name, text in recorded(row).items() if text is not None}
    asked = {name: getattr(row, name) for name in ("count", "replaces", "order_reference")}
    reasons: dict[str, Any] = {"lot_reason": row.lot_reason} if row.lot_reason is not None else {}
    if row.changes_considered:
        reasons["changes_considered"] = True
    return {**asked, **texts, **reasons, "spec": row.spec.as_dict()}


def _refuse_by_the_books(
    session: Session, rows: Sequence[Registration]
) -> tuple[list[tuple[Hose, ...]], list[dict[str, Any]]]:
    """Raises StoreError for rows that what is kept forbids: lots, fittings, orders.

    For each row what its lot is known as, and what its history keeps of a change its order asks for.
    """
    refuse_withdrawn_lots(session, rows)
    known_as = refuse_other_hoses(session, rows)
    refuse_other_fittings(session, rows)
    _refuse_unknown_orders(session, rows)
    return known_as, refuse_unread_changes(session, rows)


def _of_row(problem: Problem) -> tuple[int, Problem]:
    """The place of a problem's row from 0, and the problem without it."""
    row, dot, field = problem.field.partition(".")
    if not dot or not row.startswith("row "):
        return 0, problem
    return int(row.removeprefix("row ")) - 1, Problem(field, problem.value, problem.message)


def _mark(rows: Sequence[Registration]) -> str:
    return fingerprint([_asked(row) for row in rows])


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


def _said(row: _Prepared, known_as: Sequence[Hose]) -> dict[str, Any]:
    """What the first line of history keeps of how it was registered."""
    data = {k: v for k in ("replaces", "order_reference", "reason") if (v := row.columns[k])}
    if known_as:
        data["lot_reason"] = row.asked.lot_reason
        data["lot_known_as"] = [hose.model_dump(mode="json", exclude_none=True) for hose in known_as]
    return data


def _event(number: str, kind: Kind, at: datetime, by: str | None, data: dict[str, Any]) -> dict[str, Any]:
    return {"number": number, "kind": str(kind), "at": at, "by": by, "data": data}


def _replaced(
    session: Session, row: _Prepared, new: list[dict[str, Any]], at: datetime, by: str | None
) -> list[dict[str, Any]]:
    """The old tag's history says what is built to take its place, where the old tag is ours."""
    old = row.columns["replaces"]
    if session.get(AssemblyRow, old) is None:
        return []
    return [_event(old, Kind.REPLACEMENT_BUILT, at, by, {"by_number": value["number"]}) for value in new]


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
