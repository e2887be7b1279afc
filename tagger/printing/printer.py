"""A printer in the network, whatever protocol it speaks.

``printer_at`` picks the protocol by the scheme of the printer's address. Whoever prints imports
this module alone: what a protocol is called, and how it says things, stays in its own room.
"""

from __future__ import annotations

import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from enum import StrEnum
from typing import Protocol
from urllib.parse import urlsplit

from tagger.errors import Problem, TaggerError
from tagger.messages import Message
from tagger.printing.content import Tag
from tagger.printing.kinds import Kinds
from tagger.printing.template import Template

TIMEOUT_S = 10.0


class PrinterError(TaggerError):
    """A printer that cannot be reached, or does not print: nothing was printed."""


class Unsure(PrinterError):
    """The job went out, but whether the printer took it is not known: it may have been printed."""


class Busy(PrinterError):
    """The printer takes no job now, but may soon."""


class NotKnown(PrinterError):
    """The printer has nothing under this address, or knows of no such job."""


class PrinterState(StrEnum):
    """What a printer is doing."""

    IDLE = "idle"
    PROCESSING = "processing"
    STOPPED = "stopped"


class JobState(StrEnum):
    """How far a printer is with a job."""

    PENDING = "pending"
    HELD = "held"
    PROCESSING = "processing"
    STOPPED = "stopped"
    CANCELED = "canceled"
    ABORTED = "aborted"
    COMPLETED = "completed"

    @property
    def given_up(self) -> bool:
        return self in (JobState.CANCELED, JobState.ABORTED)


@dataclass(frozen=True)
class Job:
    """A job as the printer last told of it.

    ``reasons`` are the printer's own keywords and ``remarks`` what they mean; ``notable``
    are those remarks that are more than the usual course of a job. ``name`` is None where the
    printer does not say it.
    """

    id: int
    state: JobState
    reasons: tuple[str, ...] = ()
    remarks: tuple[Message, ...] = ()
    notable: tuple[Message, ...] = ()
    name: str | None = None

    @property
    def words(self) -> str:
        """The remarks in English, for logs and tests."""
        return "; ".join(map(str, self.remarks))


@dataclass(frozen=True)
class Listed:
    """A job in a printer's list."""

    id: int
    name: str


@dataclass(frozen=True)
class Status:
    """What a printer says of itself.

    ``remarks``: why it stands still, or what it warns of. ``takes``: the formats that it shares with
    this program, as words. ``dots``: the dots an inch at which it prints what is sent to it, rising;
    empty where it does not say. ``media``: the sizes that are loaded, as words. ``unfit``: why no
    tag can be printed there at all.
    """

    address: str
    model: str
    state: PrinterState | None
    remarks: tuple[Message, ...]
    accepts_jobs: bool
    takes: tuple[str, ...]
    dots: tuple[int, ...]
    media: tuple[str, ...]
    unfit: Problem | None = None

    @property
    def words(self) -> str:
        """The remarks in English, for logs and tests."""
        return "; ".join(map(str, self.remarks))

    def dpi(self, wanted: int = 203) -> int:
        """``wanted`` where the printer has it or does not say; else its next finer one, else its finest."""
        if not self.dots or wanted in self.dots:
            return wanted
        return next((dots for dots in self.dots if dots > wanted), self.dots[-1])

    def check(self, dpi: int) -> None:
        """Raises PrinterError where tags of these dots cannot be printed there, naming what is in the way."""
        if self.unfit is not None:
            raise PrinterError(self.unfit)
        if self.dots and dpi not in self.dots:
            # Another number of dots would blur the modules: better refused than printed badly.
            message = Message("printing-printer-dpi", dpi=dpi, address=self.address, dots=self.dots)
            raise PrinterError(Problem("dpi", dpi, message))


class Printer(Protocol):
    """One printer, by its address."""

    address: str

    def status(self, *, timeout: float = TIMEOUT_S) -> Status:
        """What it says of itself now; ``timeout`` in seconds. Raises PrinterError where it does not answer."""

    def send(
        self,
        tags: Sequence[Tag],
        template: Template,
        *,
        dpi: int = 203,
        start: int = 1,
        name: str = "",
        forced: bool = False,
        accept: Callable[[Kinds], object] | None = None,
    ) -> Job:
        """Hands the tags over, each label proved (``proof``; ``forced`` as there); the job as it was taken.

        ``start``: the first free label of a part-used sheet. ``name``: what the printer's own list
        of jobs shows. ``accept``: asked with the kinds of labels once all are made, before anything is
        sent; where it raises, nothing is. Raises PrinterError where nothing is printed: the printer cannot be reached,
        takes none of our formats, has not these dots; Busy where it takes no job now; Unsure where
        the job may have been taken; TemplateError where a tag does not fit.
        """

    def job(self, job_id: int) -> Job:
        """One job as it is now. Raises PrinterError; NotKnown where the printer forgot it."""

    def jobs(self) -> list[Listed]:
        """The jobs that it lists, ended ones too as long as it keeps them. Raises PrinterError."""


def printer_at(address: str) -> Printer:
    """The printer at an address, such as ipp://192.0.2.7/ipp/print. It is not asked anything yet.

    Raises PrinterError for an address of no protocol that is spoken here.
    """
    try:
        scheme = urlsplit(address).scheme
    except ValueError:
        scheme = ""
    if scheme not in _PROTOCOLS:
        raise no_address(address)
    return _PROTOCOLS[scheme](address)


def _ipp(address: str) -> Printer:
    from tagger.printing.ipp.printer import IppPrinter

    return IppPrinter(address)


_PROTOCOLS: dict[str, Callable[[str], Printer]] = {"ipp": _ipp, "ipps": _ipp}
"""By scheme. Each is loaded when it is needed: a command that prints to a file needs none."""


def no_address(address: str) -> PrinterError:
    """What to raise for a text that is not a printer's address."""
    return PrinterError(Problem("printer", address, Message("printing-printer-address", address=address)))


def wait(printer: Printer, begun: Job, *, patience_s: float = 30.0) -> Job:
    """The job when it has ended, stands still, or ``patience_s`` is over.

    Raises PrinterError when the printer gave it up. A printer that falls silent after it took the
    job may well print it: then the last known state is returned.
    """
    now, until = begun, time.monotonic() + patience_s
    while now.state in (JobState.PENDING, JobState.PROCESSING) and time.monotonic() < until:
        time.sleep(0.25)
        try:
            now = printer.job(begun.id)
        except PrinterError:
            break
    if now.state.given_up:
        raise PrinterError(given_up(printer.address, now))
    return now


def given_up(address: str, job: Job) -> Problem:
    """What to say of a job that the printer took and did not finish."""
    message = (
        Message("printing-job-cancelled-because", job=job.id, remarks=job.remarks)
        if job.remarks
        else Message("printing-job-cancelled", job=job.id)
    )
    return Problem("printer", address, message)
