"""Withdrawing a tag or a whole lot, lifting that, and telling which assemblies it touches."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from datetime import datetime
from typing import Any, Final

from sqlalchemy import ColumnElement, Select, and_, select, union
from sqlalchemy.orm import Session

from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.store.base import Part, compact, in_chunks, not_registered
from tagger.store.history import add_events
from tagger.store.locks import Turn, take
from tagger.store.lot_names import bare, lot_key
from tagger.store.models import AssemblyRow, FormerLotRow, WithdrawalRow
from tagger.store.recorded_texts import lots_spelled
from tagger.store.values import Kind, Registration, Scope, Withdrawal

_FEW = 100


class Withdrawals(Part):
    """The part of the store that says what must not be used."""

    def withdraw(
        self,
        reason: str,
        *,
        tag: str | None = None,
        hose_lot: str | None = None,
        fitting_lot: str | None = None,
        by: str | None = None,
    ) -> Withdrawal:
        """Withdraws one tag, one hose lot or one fitting lot: give exactly one of them.

        A lot stays withdrawn for assemblies not built yet: they cannot be registered. Every
        assembly it touches gets a line in its history. Raises StoreError, NumberError.
        """
        scope, value = _named(tag, hose_lot, fitting_lot)
        if not reason.strip():
            raise StoreError(Problem("reason", None, Message("store-withdraw-reason-missing")))
        with self.writing() as session:
            take(session, Turn.WITHDRAWALS)
            if scope is Scope.TAG and session.get(AssemblyRow, value) is None:
                raise StoreError(not_registered(value, "tag"))
            same = and_(WithdrawalRow.scope == str(scope), WithdrawalRow.value == value)
            if session.scalar(select(WithdrawalRow).where(same, WithdrawalRow.lifted_at.is_(None))):
                wrong = Message("store-withdrawn-already", scope=str(scope), value=_shown(scope, value))
                raise StoreError(Problem(str(scope), value, wrong))
            now = self.now()
            row = WithdrawalRow(scope=str(scope), value=value, reason=reason.strip(), at=now, by=by)
            session.add(row)
            session.flush()
            _note_spellings(session, scope, value)
            data = {"withdrawal": row.id, "scope": str(scope), "value": value, "reason": row.reason}
            _tell(session, row, Kind.WITHDRAWN, now, by, data)
            return _value(row)

    def lift(self, withdrawal: int, reason: str, *, by: str | None = None) -> Withdrawal:
        """Ends a withdrawal; it stays in the record with who ended it and why."""
        if not reason.strip():
            raise StoreError(Problem("reason", None, Message("store-lift-reason-missing")))
        with self.writing() as session:
            take(session, Turn.WITHDRAWALS)
            row = session.get(WithdrawalRow, withdrawal)
            if row is None:
                raise StoreError(_not_found(withdrawal))
            if row.lifted_at is not None:
                wrong = Message("store-withdrawal-lifted", withdrawal=withdrawal)
                raise StoreError(Problem("withdrawal", withdrawal, wrong))
            row.lifted_at, row.lifted_by, row.lifted_why = self.now(), by, reason.strip()
            session.flush()
            data = {"withdrawal": row.id, "reason": row.lifted_why}
            _tell(session, row, Kind.WITHDRAWAL_LIFTED, row.lifted_at, by, data)
            return _value(row)

    def withdrawals(
        self, *, holds: bool | None = None, limit: int | None = None, after: int | None = None
    ) -> list[Withdrawal]:
        """All withdrawals, newest first; only those that hold, or do not, when asked.

        With ``limit`` so many of them, from the one that follows the one with the id ``after``.
        """
        query = select(WithdrawalRow).order_by(WithdrawalRow.id.desc()).limit(limit)
        if after is not None:
            query = query.where(WithdrawalRow.id < after)
        if holds is not None:
            open_ = WithdrawalRow.lifted_at.is_(None)
            query = query.where(open_ if holds else ~open_)
        with self.reading() as session:
            return [_value(row) for row in session.scalars(query)]

    def withdrawal(self, withdrawal: int) -> Withdrawal:
        with self.reading() as session:
            row = session.get(WithdrawalRow, withdrawal)
            if row is None:
                raise StoreError(_not_found(withdrawal))
            return _value(row)

    def withdrawn_lots(self, lot: str) -> list[Withdrawal]:
        """The withdrawals of this lot, however it is spelled, that hold: of hose or of fittings, oldest first."""
        with self.reading() as session:
            held = session.scalars(_held_lots().order_by(WithdrawalRow.id))
            return [_value(row) for row in held if bare(row.value) == bare(lot)]

    def withdrawn_numbers(self) -> list[str]:
        """The tag number of every hose assembly that some withdrawal holds back now, in order."""
        query = select(AssemblyRow.number).where(matches_a_holding_one()).order_by(AssemblyRow.number)
        with self.reading() as session:
            return list(session.scalars(query))

    def affected(self, scope: Scope, value: str) -> list[str]:
        """The tag numbers a withdrawal of this touches, oldest first; nothing is changed."""
        value = compact(value) if scope is Scope.TAG else str(lot_key(value))
        with self.reading() as session:
            named = {value, *_spellings(session, scope, value)}
            query = select(AssemblyRow.number).where(_touched(scope, sorted(named)))
            return list(session.scalars(query.order_by(AssemblyRow.registration_id, AssemblyRow.place)))


def withdrawn_spellings(session: Session, scope: Scope, lot: str) -> list[str]:
    """The lots of withdrawals that hold, spelled otherwise than this one, and yet it."""
    held = session.scalars(_held_lots().where(WithdrawalRow.scope == str(scope)))
    return [row.value for row in held if bare(row.value) == bare(lot) and row.value != lot_key(lot)]


def _spellings(session: Session, scope: Scope, value: str) -> list[str]:
    """The other spellings under which hose assemblies were built from a lot."""
    if scope is Scope.TAG:
        return []
    return [lot for lot in lots_spelled(session, scope, value) if lot != value]


def _note_spellings(session: Session, scope: Scope, value: str) -> None:
    """Gives hose assemblies built from another spelling of a lot this name of it as well: the withdrawal holds them."""
    others = _spellings(session, scope, value)
    if not others:
        return
    touched = select(AssemblyRow.number).where(_touched(scope, others))
    numbers = session.scalars(touched.where(~_touched(scope, [value])))
    session.add_all(FormerLotRow(number=number, scope=str(scope), value=value) for number in numbers)
    session.flush()


def _held_lots() -> Select[WithdrawalRow]:
    return select(WithdrawalRow).where(
        WithdrawalRow.scope != str(Scope.TAG), WithdrawalRow.lifted_at.is_(None)
    )


def holding(session: Session, rows: Sequence[AssemblyRow]) -> dict[str, list[Withdrawal]]:
    """The withdrawals that hold for each of these assemblies, oldest first."""
    query = select(WithdrawalRow).where(WithdrawalRow.lifted_at.is_(None))
    if len(rows) <= _FEW:  # for a long list, reading all that hold is less work than naming each lot
        earlier = _former(session, [row.number for row in rows]).values()
        named = {value for row in rows for _, value in _keys(row)}
        named |= {value for pairs in earlier for _, value in pairs}
        query = query.where(WithdrawalRow.value.in_(named))
    held = {(row.scope, row.value): _value(row) for row in session.scalars(query)}
    if not held:
        return {row.number: [] for row in rows}
    former = _former(session, [row.number for row in rows])
    keys = {row.number: [*_keys(row), *former.get(row.number, ())] for row in rows}
    found: dict[str, list[Withdrawal]] = defaultdict(list)
    for number, pairs in keys.items():
        found[number] = sorted({held[pair] for pair in pairs if pair in held}, key=lambda w: w.id)
    return found


def _former(session: Session, numbers: list[str]) -> dict[str, list[tuple[str, str]]]:
    """The lots that were corrected away, by tag number."""
    found: dict[str, list[tuple[str, str]]] = defaultdict(list)
    for chunk in in_chunks(numbers):
        for row in session.scalars(select(FormerLotRow).where(FormerLotRow.number.in_(chunk))):
            found[row.number].append((row.scope, row.value))
    return found


def refuse_withdrawn_lots(session: Session, rows: Sequence[Registration]) -> None:
    """Raises StoreError for every row built from a lot that must not be used.

    No lot is withdrawn from now until this registration has ended: the withdrawal then finds it.
    """
    take(session, Turn.WITHDRAWALS, shared=True)
    held: dict[tuple[str, str], str] = {}
    if any(_lots(row) for row in rows):
        held = {(row.scope, bare(row.value)): row.reason for row in session.scalars(_held_lots())}
    problems = [
        Problem(
            f"row {place}.{field}" if len(rows) > 1 else field,
            lot,
            Message("store-lot-withdrawn", scope=str(scope), lot=lot, reason=held[str(scope), bare(lot)]),
        )
        for place, row in enumerate(rows, 1)
        for field, scope, lot in _lots(row)
        if (str(scope), bare(lot)) in held
    ]
    if problems:
        raise StoreError(problems)


def matches_a_holding_one() -> ColumnElement[bool]:
    """A condition on AssemblyRow: some withdrawal that holds names it or one of its lots."""

    def held(scope: Scope) -> Select[str]:
        return select(WithdrawalRow.value).where(
            WithdrawalRow.scope == str(scope), WithdrawalRow.lifted_at.is_(None)
        )

    lots = (part for scope in _LOT_COLUMNS for part in built_from(scope, held(scope)))
    return AssemblyRow.number.in_(union(held(Scope.TAG), *lots))


_LOT_COLUMNS: Final = {
    Scope.HOSE_LOT: ("hose_lot",),
    Scope.FITTING_LOT: ("fitting_lot_a", "fitting_lot_b"),
}
_OTHER: Final = AssemblyRow.__table__.alias("other").c
"""Assemblies that stand for themselves within a question about assemblies."""


def built_from(scope: Scope, lots: Sequence[str] | Select[str]) -> list[Select[str]]:
    """The tag numbers of what was built from these lots, under any name of them: questions to be united.

    Each is answered by an index. In one question with OR, PostgreSQL reads every assembly.
    """
    former = select(FormerLotRow.number).where(FormerLotRow.scope == str(scope), FormerLotRow.value.in_(lots))
    own = (_OTHER[name] for name in _LOT_COLUMNS[scope])
    return [*(select(_OTHER.number).where(column.in_(lots)) for column in own), former]


def _named(tag: str | None, hose_lot: str | None, fitting_lot: str | None) -> tuple[Scope, str]:
    named = [
        (scope, value)
        for scope, value in ((Scope.TAG, tag), (Scope.HOSE_LOT, hose_lot), (Scope.FITTING_LOT, fitting_lot))
        if value and value.strip()
    ]
    if len(named) != 1:
        raise StoreError(Problem("withdraw", None, Message("store-withdraw-which")))
    scope, value = named[0]
    return scope, compact(value) if scope is Scope.TAG else str(lot_key(value))


def _shown(scope: Scope, value: str) -> str:
    return tag_number.format(value) if scope is Scope.TAG else value


def _not_found(withdrawal: int) -> Problem:
    return Problem("withdrawal", withdrawal, Message("store-withdrawal-not-found", withdrawal=withdrawal))


def _keys(row: AssemblyRow) -> list[tuple[str, str]]:
    pairs = [
        (Scope.TAG, row.number),
        (Scope.HOSE_LOT, row.hose_lot),
        (Scope.FITTING_LOT, row.fitting_lot_a),
        (Scope.FITTING_LOT, row.fitting_lot_b),
    ]
    return [(scope.value, value) for scope, value in pairs if value]


def _lots(row: Registration) -> list[tuple[str, Scope, str]]:
    spec = row.spec
    named = [
        ("hose.lot", Scope.HOSE_LOT, spec.hose.lot),
        ("end_a.lot", Scope.FITTING_LOT, spec.end_a.lot),
        ("end_b.lot", Scope.FITTING_LOT, spec.end_b.lot),
    ]
    return [(field, scope, lot) for field, scope, lot in named if lot and lot.strip()]


def _touched(scope: Scope, values: Sequence[str]) -> ColumnElement[bool]:
    """A condition on assemblies: one of these is its number, or a lot that it was built from."""
    if scope is Scope.TAG:
        return AssemblyRow.number.in_(values)
    return AssemblyRow.number.in_(union(*built_from(scope, values)))


def _tell(
    session: Session, row: WithdrawalRow, kind: Kind, at: datetime, by: str | None, data: dict[str, Any]
) -> None:
    """One line of history for every assembly the withdrawal touches."""
    numbers = session.scalars(select(AssemblyRow.number).where(_touched(Scope(row.scope), [row.value])))
    events = [{"number": n, "kind": str(kind), "at": at, "by": by, "data": data} for n in numbers]
    add_events(session, events)


def _value(row: WithdrawalRow) -> Withdrawal:
    return Withdrawal(
        row.id,
        Scope(row.scope),
        row.value,
        row.reason,
        row.at,
        row.by,
        row.lifted_at,
        row.lifted_by,
        row.lifted_why,
    )
