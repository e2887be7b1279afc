"""Sends the print jobs that wait, and follows those that a printer took to their end.

What each outcome means for the history of the tags is told in tagger/store/print_jobs.py. Nothing is
sent again by itself.
"""

from __future__ import annotations

import logging
import threading
import time
from collections.abc import Callable, Iterable, Sequence
from contextlib import suppress

from api.settings import Settings
from api.shared.label_files import template_of
from tagger.errors import TaggerError
from tagger.messages import Message
from tagger.printing import preflight
from tagger.printing.kinds import Kinds
from tagger.printing.layout import lay_out
from tagger.printing.printer import (
    Busy,
    JobState,
    Listed,
    NotKnown,
    PrinterError,
    Unsure,
    given_up,
    printer_at,
)
from tagger.printing.template import Template
from tagger.record import recorded
from tagger.record_tag import tags_of
from tagger.store import Assembly, Printer, PrintJob, Store
from tagger.store.print_jobs import INTERRUPTED

_LOG = logging.getLogger(__name__)
_EVERY = 1.0
_AT_ONCE = 8  # printers that are spoken to at the same time
_RARELY = 30.0  # seconds between questions about a job that takes long
_SILENT = 4.0  # seconds without a sign of a job's sender, which gives one every _EVERY
_PATIENCE = 15.0  # seconds that a stop waits for jobs on their way
_FORGOTTEN = (Message("store-print-forgotten"),)
_OURS = "Tags, job "
_NOT_TAKEN = (Message("store-print-not-taken"),)


class PrintQueue:
    """A thread that hands out jobs; one a process is enough, several do no harm."""

    def __init__(self, store: Store, settings: Settings) -> None:
        self.store, self.settings = store, settings
        self._stop, self._wake = threading.Event(), threading.Event()
        self._thread = threading.Thread(target=self._run, name="print queue", daemon=True)
        self._slots = threading.Semaphore(_AT_ONCE)
        self._hands: set[threading.Thread] = set()
        self._ask_at: dict[int, float] = {}
        self._mine: dict[int, PrintJob] = {}  # on their way from here
        self._asking: set[int] = set()  # printers are being asked about these
        self._seen: dict[int, tuple[object, float]] = {}  # another's job: its last sign, and when it came

    def start(self) -> None:
        self._thread.start()

    def stop(self) -> None:
        """Takes no more jobs, and gives those on their way some time."""
        self._stop.set()
        self._wake.set()
        until = time.monotonic() + _PATIENCE
        for thread in (self._thread, *self._hands):
            thread.join(max(0.0, until - time.monotonic()))

    def wake(self) -> None:
        """There is something to send: it need not wait for the next look."""
        self._wake.set()

    def ask(
        self,
        printer: Printer,
        made: Sequence[Assembly],
        wanted: Template,
        *,
        reason: str,
        key: str | None,
        by: str,
    ) -> PrintJob:
        """Writes a job down, to be sent at once. Raises TemplateError for a tag that does not fit, SymbolError for
        one that would not scan.
        """
        designs = {(a.digits, *recorded(a).values()): a for a in made}
        kinds = Kinds()
        for tag in tags_of(self.store, list(designs.values()), self.settings):
            kinds.add(tag, lay_out(tag, wanted, printer.dpi))
        preflight.refuse(kinds, wanted, printer.dpi)
        numbers = [a.number for a in made]
        job = self.store.ask_print(printer.id, numbers, wanted.name, reason=reason, key=key, by=by)
        self.wake()
        return job

    def _run(self) -> None:
        while not self._stop.is_set():
            try:
                self._turn()
            except Exception as error:  # the database may be away for a while; the jobs wait in it
                _LOG.error("Print jobs wait, the queue cannot be read: %s", error)
            self._wake.wait(_EVERY)
            self._wake.clear()

    def _turn(self) -> None:
        self.store.find_interrupted_prints()
        self._look_after_others()
        while not self._stop.is_set() and self._slots.acquire(blocking=False):
            job = self.store.next_print()
            if job is None:
                self._slots.release()
                break
            self._mine[job.id] = job
            self._hand(send, job)
        now = time.monotonic()
        for job in self.store.printing_jobs():
            age = (self.store.now() - job.changed_at).total_seconds()
            if self._ask_at.get(job.id, 0) <= now and self._slots.acquire(blocking=False):
                self._ask_at[job.id] = now + min(max(_EVERY, age / 10), _RARELY)
                self._hand(follow, job)

    def _look_after_others(self) -> None:
        """Gives a sign for jobs on their way from here, and asks printers about those whose sender is gone.

        A job that its printer lists is known at once; before one that it does not list is given up, its
        sender must have been silent for a while, by the clock of this process alone.
        """
        if self._mine:
            self.store.print_goes_on(list(self._mine.values()))
        others = [job for job in self.store.sending_jobs() if job.id not in self._mine]
        now, seen = time.monotonic(), self._seen
        self._seen = {}
        for job in others:
            sign = (job.attempts, job.changed_at)
            known = seen.get(job.id)
            self._seen[job.id] = known if known and known[0] == sign else (sign, now)
            first, silent = known is None, now - self._seen[job.id][1] >= _SILENT
            if (first or silent) and job.id not in self._asking and self._slots.acquire(blocking=False):
                self._asking.add(job.id)
                self._hand(find_given_up if silent else find_taken, job)

    def _hand(self, do: Callable[[Store, Settings, PrintJob], None], job: PrintJob) -> None:
        """Does it in a thread of its own: a printer that is slow keeps no other waiting."""

        def work() -> None:
            try:
                do(self.store, self.settings, job)
            except Exception:
                _LOG.exception("Print job %s failed", job.id)
            finally:
                self._slots.release()
                self._hands.discard(thread)
                self._asking.discard(job.id)
                if do is send:
                    self._mine.pop(job.id, None)
                    self.wake()  # the printer is free for its next job, and tells of this one

        thread = threading.Thread(target=work, name=f"print job {job.id}", daemon=True)
        self._hands.add(thread)
        thread.start()


def send(store: Store, settings: Settings, job: PrintJob) -> None:
    """Sends one job that is ``sending``, and writes down what came of it."""
    try:
        made = store.assemblies(job.numbers)
        tags, wanted = tags_of(store, made, settings), template_of(job.template, settings)
        # something may have been withdrawn while the job waited
        store.refuse_print(job.numbers, wanted.purpose)

        def scans(kinds: Kinds) -> None:
            preflight.refuse(kinds, wanted, job.dpi)

        taken = printer_at(job.uri).send(tags, wanted, dpi=job.dpi, name=_name(job), accept=scans)
    except Busy as error:
        store.print_waits(job, _messages(error))
    except TaggerError as error:
        store.print_failed(job, _messages(error), unsure=isinstance(error, Unsure))
    except Exception as error:
        store.print_failed(job, [Message("store-print-crashed", error=str(error))], unsure=True)
        raise
    else:
        store.print_taken(job, taken.id)


def find_taken(store: Store, settings: Settings, job: PrintJob) -> None:
    """Writes down that the printer took a job whose sender did not say so, if its list shows it."""
    with suppress(PrinterError):
        _look_for(store, job)


def find_given_up(store: Store, settings: Settings, job: PrintJob) -> None:
    """The same for a job whose sender is gone: taken, certainly not, or nobody can tell.

    A printer's list shows that a job never came only if it still shows one that came before.
    """
    try:
        listed = _look_for(store, job)
    except PrinterError as error:
        _LOG.info("Print job %s: %s", job.id, error)  # asked again at the next turn, up to its lease
        return
    if listed is None:
        return
    before = set(store.printed_before(job))
    remembers = any(one.id in before and one.name.startswith(_OURS) for one in listed)
    store.print_failed(job, _NOT_TAKEN if remembers else (INTERRUPTED,), unsure=not remembers)


def _look_for(store: Store, job: PrintJob) -> list[Listed] | None:
    """None where the printer has the job, which is written down; else its list. Raises PrinterError."""
    listed = printer_at(job.uri).jobs()
    found = next((one for one in listed if one.name == _name(job)), None)
    if found is None:
        return listed
    store.print_taken(job, found.id)
    return None


def follow(store: Store, settings: Settings, job: PrintJob) -> None:
    """Asks the printer about one job that it took, and writes down what it says."""
    assert job.printer_job is not None
    try:
        printer = printer_at(job.uri)
        now = printer.job(job.printer_job)
        if now.name not in (
            None,
            _name(job),
            f"{_OURS}{job.id}",
        ):  # a printer that was reset counts its jobs anew
            store.print_failed(job, _FORGOTTEN, unsure=True)
        elif now.state.given_up:
            store.print_failed(job, [given_up(job.uri, now).message])
        elif now.state is JobState.COMPLETED:
            store.print_told(job, _status(now.notable), done=True)
        else:
            store.print_told(job, _status(dict.fromkeys([*now.notable, *printer.status().remarks])))
    except NotKnown:
        store.print_failed(job, _FORGOTTEN, unsure=True)
    except PrinterError as error:
        store.print_told(job, _messages(error))


def _messages(error: TaggerError) -> list[Message]:
    return [problem.message for problem in error.problems]


def _status(told: Iterable[Message]) -> list[Message]:
    """What the printer reports, as one message; none where it reports nothing."""
    said = tuple(told)
    return [Message("store-print-status", said=said)] if said else []


def _name(job: PrintJob) -> str:
    """What the printer's own display and list of jobs show; no other job, of any shop, has it."""
    return f"{_OURS}{job.id}.{job.attempts} {next(iter(job.numbers), '')}"
