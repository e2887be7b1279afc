"""Print jobs that survive a restart, and what "printed" means.

A job is written down before anything is sent (waiting), and again before its first octet leaves
(sending). What follows decides the history of its tags, in the same transaction:

- the printer took it (printing): each tag is logged as printed, and the job is followed to its end;
- it was certainly not taken (failed): nothing is logged; the reason stays in sight until somebody
  sends it again or drops it;
- nobody can tell (unknown): the line broke while it was sent, or this program was killed then. A
  tag that may have been printed counts as printed, so each is logged, and the job is never sent
  again by itself: somebody looks, then sends it again or says that it is printed.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import timedelta
from typing import Any

from sqlalchemy import ColumnElement, func, select
from sqlalchemy.exc import IntegrityError
from sqlalchemy.orm import Session

from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.store.base import Part, compact, fingerprint
from tagger.store.history import add_alike
from tagger.store.models import PrinterRow, PrintJobRow
from tagger.store.printers import printer_row
from tagger.store.said import Said
from tagger.store.values import Kind, PrintJob, PrintState

LEASE = timedelta(minutes=2)
"""How long the sender of a job may be silent, and its printer away, before it counts as interrupted."""

BUSY_FOR = timedelta(seconds=3)
"""How long a printer that took no job is left alone."""

_S = PrintState
INTERRUPTED = Message("store-print-interrupted")
_STUCK = (_S.FAILED, _S.UNKNOWN)
_UNDER_WAY = (_S.WAITING, _S.SENDING, _S.PRINTING)


class Prints(Part):
    """The part of the store that keeps print jobs."""

    def ask_print(
        self,
        printer: int | str,
        numbers: Sequence[str],
        template: str,
        *,
        reason: str = "",
        key: str | None = None,
        by: str | None = None,
    ) -> PrintJob:
        """Writes a job down. A second call with the same ``key`` returns what the first one wrote.

        Raises StoreError for a printer not in use, and for a key used for something else.
        """
        known = [compact(number) for number in numbers]
        asked = (printer, known, template, reason, key, by)
        try:
            return self._ask(*asked)
        except IntegrityError:  # another process took the key meanwhile: it has written this very job
            return self._ask(*asked)

    def _ask(
        self,
        printer: int | str,
        known: list[str],
        template: str,
        reason: str,
        key: str | None,
        by: str | None,
    ) -> PrintJob:
        mark = fingerprint([printer, known, template])
        with self.writing() as session:
            if key is not None and (row := session.scalar(select(PrintJobRow).where(PrintJobRow.key == key))):
                if row.fingerprint != mark:
                    raise StoreError(Problem("key", key, Message("store-key-of-other", what="print")))
                return _value(session, row)
            now = self.now()
            row = PrintJobRow(
                key=key,
                fingerprint=mark,
                printer_id=printer_row(session, printer).id,
                numbers=known,
                template=template,
                reason=reason,
                state=_S.WAITING,
                attempts=0,
                created_at=now,
                created_by=by,
                changed_at=now,
                changed_by=by,
            )
            session.add(row)
            session.flush()
            return _value(session, row)

    def print_job(self, job: int) -> PrintJob:
        """Raises StoreError for a job that is not there."""
        with self.reading() as session:
            return _value(session, _row(session, job))

    def print_jobs(self, *, open_only: bool = False, limit: int = 50) -> list[PrintJob]:
        """The newest jobs first; with ``open_only`` those that are under way or stuck."""
        query = select(PrintJobRow).order_by(PrintJobRow.id.desc()).limit(limit)
        if open_only:
            query = query.where(PrintJobRow.state.in_((*_UNDER_WAY, *_STUCK)))
        with self.reading() as session:
            return [_value(session, row) for row in session.scalars(query)]

    def is_asked_for(self, key: str) -> bool:
        """Whether a job was written down with this key."""
        with self.reading() as session:
            return session.scalar(select(PrintJobRow.id).where(PrintJobRow.key == key)) is not None

    def count_stuck_prints(self) -> int:
        """Return the number of jobs that wait for a decision."""
        with self.reading() as session:
            return session.scalar(select(func.count()).where(PrintJobRow.state.in_(_STUCK))) or 0

    def next_print(self) -> PrintJob | None:
        """The oldest waiting job of a printer that is free, for this caller alone: it is now sending.

        One printer is sent one job at a time, whoever asks, so that runs come out in order.
        """
        with self.reading() as session:  # a look costs other writers nothing
            if session.scalar(select(PrintJobRow.id).where(self._free()).limit(1)) is None:
                return None
        with self.writing() as session:
            waiting = select(PrintJobRow.printer_id).where(self._free()).order_by(PrintJobRow.id)
            for printer in dict.fromkeys(session.scalars(waiting)):
                lock = select(PrinterRow.id).where(PrinterRow.id == printer).with_for_update(skip_locked=True)
                if session.scalar(lock) is None:  # another process looks after it
                    continue
                first = select(PrintJobRow).where(self._free(), PrintJobRow.printer_id == printer)
                row = session.scalar(first.order_by(PrintJobRow.id).limit(1))
                if row is not None:
                    row.state, row.why, row.printer_job = _S.SENDING, Said(), None
                    row.attempts, row.changed_at, row.changed_by = row.attempts + 1, self.now(), None
                    session.flush()
                    return _value(session, row)
        return None

    def print_taken(self, job: PrintJob, printer_job: int) -> None:
        """The printer took this attempt: its tags are printed, as far as their history goes.

        A sender that was only slow counts even after its job was given up.
        """
        with self.writing() as session:
            row = _row(session, job.id, lock=True)
            if row.attempts != job.attempts or row.state not in (_S.SENDING, _S.UNKNOWN, _S.FAILED):
                return
            if row.state == _S.FAILED and row.printer_job is not None:  # taken before, and given up
                return
            if row.state != _S.UNKNOWN:
                self._log(session, row, sure=True)
            self._change(row, _S.PRINTING, Said())
            row.printer_job = printer_job

    def print_waits(self, job: PrintJob, why: Iterable[Message]) -> None:
        """The printer took no job just now, as ``why`` says: this one keeps its place."""
        with self.writing() as session:
            row = _row(session, job.id, lock=True)
            if row.attempts == job.attempts and row.state == _S.SENDING:
                self._change(row, _S.WAITING, why)

    def print_failed(self, job: PrintJob, why: Iterable[Message], *, unsure: bool = False) -> None:
        """This attempt did not reach the printer; or, ``unsure``, it may have."""
        with self.writing() as session:
            row = _row(session, job.id, lock=True)
            if row.attempts != job.attempts or row.state not in (_S.SENDING, _S.PRINTING):
                return
            if unsure and row.state == _S.SENDING:
                self._log(session, row, sure=False)
            self._change(row, _S.UNKNOWN if unsure else _S.FAILED, why)

    def print_told(self, job: PrintJob, why: Iterable[Message] = (), *, done: bool = False) -> None:
        """What the printer says of a job it took; ``done`` when all of it is printed."""
        why = Said(why)
        with self.writing() as session:
            row = _row(session, job.id, lock=True)
            if row.attempts == job.attempts and row.state == _S.PRINTING and (done or row.why != why):
                self._change(row, _S.DONE if done else _S.PRINTING, why)

    def printing_jobs(self) -> list[PrintJob]:
        """Jobs that a printer took and has not finished."""
        query = select(PrintJobRow).where(PrintJobRow.state == _S.PRINTING).order_by(PrintJobRow.id)
        with self.reading() as session:
            return [_value(session, row) for row in session.scalars(query)]

    def sending_jobs(self) -> list[PrintJob]:
        """Jobs that are on their way, whoever sends them."""
        query = select(PrintJobRow).where(PrintJobRow.state == _S.SENDING).order_by(PrintJobRow.id)
        with self.reading() as session:
            return [_value(session, row) for row in session.scalars(query)]

    def print_goes_on(self, jobs: Iterable[PrintJob]) -> None:
        """Their sender is alive: others leave these jobs alone."""
        with self.writing() as session:
            for job in jobs:
                row = _row(session, job.id, lock=True)
                if row.attempts == job.attempts and row.state == _S.SENDING:
                    row.changed_at = self.now()

    def printed_before(self, job: PrintJob) -> list[int]:
        """The printer's own numbers of the jobs that it took from here before this one, newest first."""
        query = (
            select(PrintJobRow.printer_job)
            .where(PrintJobRow.printer_id == job.printer_id, PrintJobRow.id != job.id)
            .where(PrintJobRow.printer_job.is_not(None))
            .order_by(PrintJobRow.changed_at.desc())
            .limit(50)
        )
        with self.reading() as session:
            return [number for number in session.scalars(query) if number is not None]

    def find_interrupted_prints(self) -> int:
        """Mark jobs whose sender has been silent for LEASE as possibly printed; return how many."""
        lost = (PrintJobRow.state == _S.SENDING, PrintJobRow.changed_at <= self.now() - LEASE)
        with self.reading() as session:
            if session.scalar(select(PrintJobRow.id).where(*lost).limit(1)) is None:
                return 0
        with self.writing() as session:
            rows = list(session.scalars(select(PrintJobRow).where(*lost).with_for_update(skip_locked=True)))
            for row in rows:
                self._log(session, row, sure=False)
                self._change(row, _S.UNKNOWN, (INTERRUPTED,))
        return len(rows)

    def print_again(self, job: int, *, by: str | None = None) -> PrintJob:
        """Somebody looked, and it is to be sent (again). Raises StoreError where it cannot be."""
        return self._decide(job, _STUCK, _S.WAITING, by)

    def print_dropped(self, job: int, *, by: str | None = None) -> PrintJob:
        """It is not wanted any more. Raises StoreError for one that is already on its way."""
        return self._decide(job, (_S.WAITING, _S.FAILED), _S.DROPPED, by)

    def print_seen(self, job: int, *, by: str | None = None) -> PrintJob:
        """Somebody looked: what may have been printed is printed."""
        return self._decide(job, (_S.UNKNOWN,), _S.DONE, by)

    def _decide(self, job: int, may_be: Sequence[PrintState], to: PrintState, by: str | None) -> PrintJob:
        with self.writing() as session:
            row = _row(session, job, lock=True)
            if row.state not in may_be:
                now = PrintState(row.state).words
                moved = Message("store-print-job-moved", job=job, state=now)
                raise StoreError(Problem("print job", job, moved))
            if to is _S.WAITING:
                printer_row(session, row.printer_id)
            self._change(row, to, row.why if to is _S.DROPPED else Said(), by)
            session.flush()
            return _value(session, row)

    def _free(self) -> ColumnElement[bool]:
        """Waiting for a printer that nothing is on its way to, and that has not just been busy."""
        just_busy = PrintJobRow.why.is_not(None) & (PrintJobRow.changed_at > self.now() - BUSY_FOR)
        not_free = select(PrintJobRow.printer_id).where(
            (PrintJobRow.state == _S.SENDING) | ((PrintJobRow.state == _S.WAITING) & just_busy)
        )
        return (PrintJobRow.state == _S.WAITING) & PrintJobRow.printer_id.not_in(not_free)

    def _change(
        self, row: PrintJobRow, state: PrintState, why: Iterable[Message], by: str | None = None
    ) -> None:
        row.state, row.why = state, Said(why)
        row.changed_at, row.changed_by = self.now(), by

    def _log(self, session: Session, row: PrintJobRow, *, sure: bool) -> None:
        printer = session.get_one(PrinterRow, row.printer_id)
        data: dict[str, Any] = {
            "template": row.template,
            "as": "printer",
            "printer": printer.name,
            "job": row.id,
            "reason": row.reason,
        }
        if not sure:
            data["unconfirmed"] = True
        add_alike(session, list(row.numbers), Kind.PRINTED, data, row.created_by, self.now())


def _row(session: Session, job: int, *, lock: bool = False) -> PrintJobRow:
    row = session.get(PrintJobRow, job, with_for_update=lock or None)
    if row is None:
        raise StoreError(Problem("print job", job, Message("store-print-job-not-found", job=job)))
    return row


def _value(session: Session, row: PrintJobRow) -> PrintJob:
    printer = session.get_one(PrinterRow, row.printer_id)
    return PrintJob(
        id=row.id,
        printer_id=row.printer_id,
        printer=printer.name,
        uri=printer.uri,
        dpi=printer.dpi,
        numbers=tuple(row.numbers),
        template=row.template,
        reason=row.reason,
        state=PrintState(row.state),
        why=row.why,
        attempts=row.attempts,
        printer_job=row.printer_job,
        created_at=row.created_at,
        created_by=row.created_by,
        changed_at=row.changed_at,
        changed_by=row.changed_by,
    )
