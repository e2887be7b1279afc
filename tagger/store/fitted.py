"""Reports that an assembly was fitted: by whoever stands at the machine, until the shop agrees a claim.

The history of an assembly has a line only for what the shop agreed to. The earliest day counts: fitting
starts a service life, and a later report must not lengthen it.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta
from enum import StrEnum
from typing import Any

from sqlalchemy import Text, cast, delete, func, select
from sqlalchemy.orm import Session

from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.store.base import compact, fingerprint, in_chunks, not_registered
from tagger.store.folding import fold
from tagger.store.history import History
from tagger.store.models import AnswerRow, AssemblyRow, EventRow, FittedReportRow, PhotoRow
from tagger.store.photos import add_photos
from tagger.store.values import Kind
from tagger.store.voids import voids
from tagger.store.withdrawals import holding

MOST_WAITING = 20
"""Reports of one tag that may wait for the shop: whoever means harm fills no list."""
MOST_HOURS = 1_000_000.0
"""No machine has run longer: above it the value is a slip."""


_ERASED = ""
"""The fingerprint of a report whose person is erased: a digest of the name would tell a guessed one."""


class FittedState(StrEnum):
    WAITING = "waiting"
    AGREED = "agreed"
    REFUSED = "refused"


@dataclass(frozen=True)
class FittedReport:
    """One report. ``elsewhere``: other machines that this number is said to be on, or was registered for.

    ``before_built``: the day is before the assembly was built. ``photo``: the id of its photo. ``withdrawn``:
    why the assembly must not be used, where it is withdrawn and yet said to be on a machine; ``void``: why its
    record is void, where it is.
    """

    id: int
    number: str
    fitted_on: date
    machine: str | None
    machine_hours: float | None
    fitted_by: str | None
    at: datetime
    state: FittedState
    decided_at: datetime | None
    decided_by: str | None
    why: str | None
    photo: int | None = None
    elsewhere: tuple[str, ...] = ()
    before_built: bool = False
    withdrawn: tuple[str, ...] = ()
    void: str | None = None


class FittedReports(History):
    """The part of the store that keeps reports of fitting."""

    def report_fitted(
        self,
        number: str,
        *,
        fitted_on: date,
        machine: str | None = None,
        machine_hours: float | None = None,
        fitted_by: str | None = None,
        photos: Mapping[str, bytes] | None = None,
        key: str | None = None,
    ) -> FittedReport:
        """Keeps a report, once: a second call with the same ``key`` returns the first one's.

        ``machine_hours``: the hour meter of the machine, in hours. Raises StoreError for a day to come,
        or for a number without a record. One of a withdrawn or void record is kept: its hose must come off.
        """
        number = compact(number)
        asked = [number, fitted_on, _text(machine), machine_hours, _text(fitted_by)]
        mark = fingerprint(asked)
        _check(fitted_on, self.now().date(), machine_hours)

        def keep(session: Session) -> FittedReport:
            row = session.scalar(select(FittedReportRow).where(FittedReportRow.key == key)) if key else None
            if row is not None and row.fingerprint not in (mark, _ERASED):
                raise StoreError(Problem("key", key, Message("store-key-of-other", what="request")))
            if row is None:
                if session.get(AssemblyRow, number) is None:
                    raise StoreError(not_registered(number))
                _refuse_more(session, number)
                row = FittedReportRow(
                    key=key,
                    fingerprint=mark,
                    number=number,
                    fitted_on=fitted_on,
                    machine=_text(machine),
                    machine_hours=machine_hours,
                    fitted_by=_text(fitted_by),
                    at=self.now(),
                    state=str(FittedState.WAITING),
                )
                session.add(row)
                session.flush()
                add_photos(session, photos or {}, self.now(), fitted_report_id=row.id)
                session.flush()
            return _values(session, [row])[0]

        return self.act(keep)

    def fitted_report(self, id: int) -> FittedReport:
        """One report. Raises StoreError where there is none."""
        with self.reading() as session:
            return _values(session, [_row(session, id)])[0]

    def fitted_reports(
        self,
        state: FittedState | None = None,
        *,
        number: str | None = None,
        limit: int | None = 500,
        after: int | None = None,
    ) -> list[FittedReport]:
        """Reports, newest first; those in one state, or of one tag, when asked; ``after``: the id of the last seen."""
        query = select(FittedReportRow).order_by(FittedReportRow.id.desc()).limit(limit)
        if after is not None:
            query = query.where(FittedReportRow.id < after)
        if state is not None:
            query = query.where(FittedReportRow.state == str(state))
        if number is not None:
            query = query.where(FittedReportRow.number == compact(number))
        with self.reading() as session:
            return _values(session, list(session.scalars(query)))

    def count_fitted_waiting(self) -> int:
        """How many reports wait for the shop."""
        query = select(func.count()).where(FittedReportRow.state == str(FittedState.WAITING))
        with self.reading() as session:
            return session.scalar(query) or 0

    def decide_fitted(
        self, id: int, *, agree: bool, by: str | None = None, why: str | None = None
    ) -> FittedReport:
        """Agrees to a report, or refuses it with a reason. Only an agreed one is a line of history.

        Raises StoreError for a report that is decided already, is refused without a reason, or is of a void record:
        that can only be refused, once its hose is off the machine.
        """
        with self.writing() as session:
            row = _row(session, id, lock=True)
            if row.state != FittedState.WAITING:
                raise StoreError(Problem("report", str(id), Message("store-fitted-decided", id=id)))
            if not agree and not _text(why):
                raise StoreError(Problem("why", None, Message("store-fitted-reason-missing")))
            if agree and voids(session, [row.number]):
                shown = tag_number.format(row.number)
                raise StoreError(Problem("number", shown, Message("store-fitted-void", number=shown)))
            row.state = str(FittedState.AGREED if agree else FittedState.REFUSED)
            row.decided_at, row.decided_by, row.why = self.now(), by, _text(why)
            session.flush()
            if agree:
                self.record(row.number, Kind.FITTED, _line(row), by=by)
            return _values(session, [row])[0]

    def erase_fitted(self, id: int) -> bool:
        """Erases who made a report, and its photo; whether there was anything to erase.

        Day, machine and hours stay, and so does the line of history: it names no person. Raises StoreError.
        """
        with self.writing() as session:
            return erase_report(session, _row(session, id))

    def fitted_on(self, numbers: Sequence[str]) -> dict[str, date]:
        """By number the earliest day of fitting that the shop has recorded or agreed to."""
        found: dict[str, date] = {}
        with self.reading() as session:
            for chunk in in_chunks([compact(number) for number in numbers]):
                lines = select(EventRow.number, EventRow.at, EventRow.data)
                lines = lines.where(EventRow.number.in_(chunk), EventRow.kind == str(Kind.FITTED))
                for number, at, data in session.execute(lines):
                    day = _day_of(data, at)
                    found[number] = min(day, found.get(number, day))
        return found


def erase_report(session: Session, row: FittedReportRow) -> bool:
    """Erases the person and the photo of a report, in kept answers as well; whether there was anything to erase."""
    photos = session.execute(
        delete(PhotoRow).where(PhotoRow.fitted_report_id == row.id).returning(PhotoRow.id)
    )
    erased = bool(photos.all()) or row.fitted_by is not None
    row.fitted_by, row.fingerprint = None, _ERASED
    told = select(AnswerRow).where(cast(AnswerRow.answer, Text).contains('"fitted_by"'))
    for answer in session.scalars(told):
        answer.answer = _without_person(answer.answer, row.id)
    return erased


def _without_person(kept: Any, report: int) -> Any:
    """A kept answer without who made this report, and without its photo."""
    if isinstance(kept, list):
        return [_without_person(one, report) for one in kept]
    if not isinstance(kept, dict):
        return kept
    gone = {"fitted_by": None, "photo": False} if "fitted_by" in kept and kept.get("id") == report else {}
    return {name: _without_person(value, report) for name, value in kept.items()} | gone


def _row(session: Session, id: int, *, lock: bool = False) -> FittedReportRow:
    """The row, locked until the transaction ends where ``lock`` says so. Raises StoreError where there is none."""
    row = None
    if id < 2**31:  # what both databases hold
        row = session.get(FittedReportRow, id, populate_existing=lock, with_for_update=lock or None)
    if row is None:
        raise StoreError(Problem("report", str(id), Message("store-fitted-not-found", id=str(id))))
    return row


def _day_of(data: Mapping[str, Any], at: datetime) -> date:
    """The day that a line of history names, else its own."""
    try:
        return date.fromisoformat(str(data["fitted_on"]))
    except (KeyError, ValueError):
        return at.date()


def _line(row: FittedReportRow) -> dict[str, Any]:
    """What the history keeps of an agreed report: no person, for a line of history is never erased."""
    said = {
        "fitted_on": row.fitted_on.isoformat(),
        "machine": row.machine,
        "machine_hours": row.machine_hours,
        "report": row.id,
    }
    return {name: value for name, value in said.items() if value is not None}


def _refuse_more(session: Session, number: str) -> None:
    waiting = select(func.count()).where(
        FittedReportRow.number == number, FittedReportRow.state == str(FittedState.WAITING)
    )
    if (session.scalar(waiting) or 0) >= MOST_WAITING:
        wrong = Message("store-fitted-many", most=MOST_WAITING)
        raise StoreError(Problem("number", tag_number.format(number), wrong))


def _check(fitted_on: date, today: date, hours: float | None) -> None:
    problems = []
    if fitted_on > today + timedelta(days=1):  # somewhere it is tomorrow already
        problems.append(Problem("fitted_on", str(fitted_on), Message("store-fitted-to-come", day=fitted_on)))
    if hours is not None and not (math.isfinite(hours) and 0 <= hours <= MOST_HOURS):
        wrong = Message("store-fitted-hours", given=str(hours), most=int(MOST_HOURS))
        problems.append(Problem("machine_hours", str(hours), wrong))
    if problems:
        raise StoreError(problems)


def _text(text: str | None) -> str | None:
    return " ".join((text or "").split()) or None


def _values(session: Session, rows: Sequence[FittedReportRow]) -> list[FittedReport]:
    numbers = list({row.number for row in rows})
    machines: dict[str, dict[str, str]] = {number: {} for number in numbers}
    built: dict[str, date | None] = {}
    reasons: dict[str, tuple[str, ...]] = {}
    void = voids(session, numbers)
    photos: dict[int, int] = {}
    for chunk in in_chunks(numbers):
        owned = list(session.scalars(select(AssemblyRow).where(AssemblyRow.number.in_(chunk))))
        for number, held in holding(session, owned).items():
            reasons[number] = tuple(withdrawal.reason for withdrawal in held)
        for one in owned:
            built[one.number] = one.built_on
            machines[one.number][fold(one.machine) or ""] = one.machine or ""
        lines = select(EventRow.number, EventRow.data).where(
            EventRow.number.in_(chunk), EventRow.kind == str(Kind.FITTED)
        )
        for number, data in session.execute(lines):
            machine = _text(str(data.get("machine") or ""))
            if "report" not in data:  # those of reports are below
                machines[number].setdefault(fold(machine) or "", machine or "")
        said = select(FittedReportRow.number, FittedReportRow.machine).where(
            FittedReportRow.number.in_(chunk), FittedReportRow.state != str(FittedState.REFUSED)
        )
        for number, machine in session.execute(said):
            machines[number].setdefault(fold(machine) or "", machine or "")
    for start in range(0, len(rows), 500):
        ids = [row.id for row in rows[start : start + 500]]
        found = select(PhotoRow.fitted_report_id, PhotoRow.id).where(PhotoRow.fitted_report_id.in_(ids))
        photos.update((int(report or 0), photo) for report, photo in session.execute(found))
    return [
        replace(
            _value(row),
            photo=photos.get(row.id),
            elsewhere=_elsewhere(machines[row.number], row.machine),
            before_built=bool((day := built.get(row.number)) and row.fitted_on < day),
            withdrawn=reasons.get(row.number, ()),
            void=void[row.number].reason if row.number in void else None,
        )
        for row in rows
    ]


def _elsewhere(machines: Mapping[str, str], own: str | None) -> tuple[str, ...]:
    """The machines named for a number beside its own; a report that names none contradicts nothing."""
    if own is None:
        return ()
    return tuple(sorted(name for key, name in machines.items() if key and key != fold(own)))


def _value(row: FittedReportRow) -> FittedReport:
    return FittedReport(
        row.id,
        row.number,
        row.fitted_on,
        row.machine,
        row.machine_hours,
        row.fitted_by,
        row.at,
        FittedState(row.state),
        row.decided_at,
        row.decided_by,
        row.why,
    )
