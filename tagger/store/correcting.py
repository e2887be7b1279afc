"""Slips of the record: a record made void before anything came of it, and values that are corrected.

Neither alarms anybody as a withdrawal does. The history keeps the old value and the new one.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from typing import Any, Final

from sqlalchemy import select
from sqlalchemy.orm import Session

from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.spec import AssemblySpec
from tagger.store import designs
from tagger.store.assemblies import Assemblies
from tagger.store.base import compact, not_registered
from tagger.store.history import add_events
from tagger.store.locks import Turn, take
from tagger.store.lot_names import lot_key
from tagger.store.lots import refuse_other_hoses
from tagger.store.models import AssemblyRow, EventRow, FormerLotRow, OrderRow, VoidRow
from tagger.store.prepared import text_of
from tagger.store.recorded_texts import keep_texts
from tagger.store.values import Assembly, Kind, OrderState, Registration, Scope
from tagger.store.withdrawals import withdrawn_spellings

LOTS: Final = {"hose.lot": "hose_lot", "end_a.lot": "fitting_lot_a", "end_b.lot": "fitting_lot_b"}
PLACE: Final = ("customer", "machine", "position", "cleanliness")
CORRECTABLE: Final = (*PLACE, *LOTS, "note")
_NOTHING_CAME_OF_IT = frozenset(
    map(
        str,
        (Kind.REGISTERED, Kind.CRIMPED, Kind.FLUSHED, Kind.PRINTED, Kind.CORRECTED, Kind.REPLACEMENT_BUILT),
    )
)
Changes = Mapping[str, str | None]


class Correcting(Assemblies):
    """The part of the store that mends slips of the record."""

    def void(self, number: str, reason: str, *, by: str | None = None) -> Assembly:
        """Makes a record void: its hose must not be fitted.

        Raises StoreError where the hose was scanned, fitted, proof-tested or handed over, or anything
        else came of it: then it can only be withdrawn.
        """
        number, reason = compact(number), reason.strip()
        if not reason:
            raise StoreError(Problem("reason", None, Message("store-void-reason-missing")))
        with self.writing() as session:
            take(session, Turn.EVENTS)
            row = _open_row(session, number)
            _refuse_what_came_of_it(session, row)
            now = self.now()
            session.add(VoidRow(number=number, reason=reason, at=now, by=by))
            session.flush()
            add_events(session, [_line(number, Kind.VOIDED, now, by, {"reason": reason})])
        return self.assembly(number)

    def correct(
        self,
        number: str,
        changes: Changes,
        reason: str,
        *,
        lot_reason: str | None = None,
        by: str | None = None,
    ) -> Assembly:
        """Corrects customer, machine, position, cleanliness, lots or note (CORRECTABLE), each by its name; None removes.

        A lot that is corrected away still counts in withdrawals, beside the new one. Raises StoreError
        for another field, where nothing differs, and for a reel lot that is known as another hose.
        """
        number, reason = compact(number), reason.strip()
        if unknown := [name for name in changes if name not in CORRECTABLE]:
            wrong = Message("store-not-correctable", fields=CORRECTABLE)
            raise StoreError(Problem(name, changes[name], wrong) for name in unknown)
        if not reason:
            raise StoreError(Problem("reason", None, Message("store-correct-reason-missing")))
        with self.writing() as session:
            take(session, Turn.WITHDRAWALS, shared=True)
            take(session, Turn.EVENTS)
            row = _open_row(session, number)
            known = self.assembly(number)
            wanted = {name: text_of(name, text) for name, text in changes.items()}
            old = {name: _now(known, name) for name in wanted}
            differing = [name for name in wanted if wanted[name] != old[name]]
            if not differing:
                shown = tag_number.format(number)
                raise StoreError(Problem("number", shown, Message("store-nothing-corrected", number=shown)))
            spec = _with(known.spec, {name: wanted[name] for name in differing})
            if "hose.lot" in differing and spec.hose.lot:
                refuse_other_hoses(session, [Registration(spec, known.assessment, lot_reason=lot_reason)])
            now = self.now()
            design = designs.as_row(spec, known.assessment)
            designs.keep(session, {design["id"]: 0}, [designs.Ready.of(design)])
            row.design_id = design["id"]
            for name in differing:
                _put(session, row, name, wanted[name])
            session.flush()
            keep_texts(session, [{column: getattr(row, column) for column in (*PLACE, *LOTS.values())}])
            said: dict[str, Any] = {
                "reason": reason,
                "fields": {name: {"old": old[name], "new": wanted[name]} for name in differing},
            }
            if lot_reason:
                said["lot_reason"] = lot_reason
            add_events(session, [_line(number, Kind.CORRECTED, now, by, said)])
        return self.assembly(number)


def _open_row(session: Session, number: str) -> AssemblyRow:
    """The row of a record that is not void, held until the transaction ends."""
    row = session.scalar(select(AssemblyRow).where(AssemblyRow.number == number).with_for_update())
    if row is None:
        raise StoreError(not_registered(number))
    if session.get(VoidRow, number) is not None:
        shown = tag_number.format(number)
        raise StoreError(Problem("number", shown, Message("store-void-already", number=shown)))
    return row


def _refuse_what_came_of_it(session: Session, row: AssemblyRow) -> None:
    query = select(EventRow).where(EventRow.number == row.number, EventRow.kind.not_in(_NOTHING_CAME_OF_IT))
    shown = tag_number.format(row.number)
    if (first := session.scalar(query.order_by(EventRow.id))) is not None:
        wrong = Message("store-void-too-late", number=shown, kind=first.kind, day=first.at.date())
        raise StoreError(Problem("number", shown, wrong))
    order = session.get(OrderRow, row.order_reference) if row.order_reference else None
    if order is not None and order.state == OrderState.DONE:
        wrong = Message("store-void-handed-over", number=shown, reference=order.reference)
        raise StoreError(Problem("number", shown, wrong))


def correctable(known: Assembly) -> dict[str, str | None]:
    """What can be corrected of a record, as it is now."""
    return {name: _now(known, name) for name in CORRECTABLE}


def _now(known: Assembly, name: str) -> str | None:
    if name in LOTS:
        part = name.partition(".")[0]
        lot: str | None = getattr(known.spec, part).lot
        return lot
    value: str | None = known.spec.note if name == "note" else getattr(known, name)
    return value


def _with(spec: AssemblySpec, wanted: Changes) -> AssemblySpec:
    """The spec with its lots and note as they should be. Raises SpecError."""
    data = spec.as_dict()
    for name, value in wanted.items():
        if name in LOTS:
            data[name.partition(".")[0]]["lot"] = value
        elif name == "note":
            data["note"] = value
    return AssemblySpec.read(data)


def _put(session: Session, row: AssemblyRow, name: str, value: str | None) -> None:
    if name in PLACE:
        setattr(row, name, value)
    elif name in LOTS:
        column = LOTS[name]
        scope = Scope.HOSE_LOT if column == "hose_lot" else Scope.FITTING_LOT
        former = getattr(row, column)
        names = [former] if former else []
        names += withdrawn_spellings(session, scope, value) if value else []
        session.add_all(FormerLotRow(number=row.number, scope=str(scope), value=one) for one in names)
        setattr(row, column, lot_key(value))


def _line(number: str, kind: Kind, at: datetime, by: str | None, data: dict[str, Any]) -> dict[str, Any]:
    return {"number": number, "kind": str(kind), "at": at, "by": by, "data": data}
