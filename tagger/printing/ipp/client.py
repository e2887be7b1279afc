"""Asks and feeds a network printer by IPP: the meaning of RFC 8011.

Three operations are all a label needs, so this is the standard library's HTTP and a small encoder.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass, replace

from tagger.errors import Problem
from tagger.messages import Message
from tagger.printing.ipp.encoding import Attribute, Attributes, Broken, Resolution, Tag, Value, decode, encode
from tagger.printing.ipp.http import post
from tagger.printing.ipp.reasons import notable, remarks_of
from tagger.printing.printer import (
    TIMEOUT_S,
    Busy,
    Job,
    JobState,
    Listed,
    NotKnown,
    PrinterError,
    PrinterState,
    Unsure,
)

PRINT_TIMEOUT_S = 60.0
PRINT_JOB, GET_JOB_ATTRIBUTES, GET_JOBS, GET_PRINTER_ATTRIBUTES = 0x0002, 0x0009, 0x000A, 0x000B
NOT_FOUND, BUSY = 0x0406, 0x0507
_REFUSALS = {  # RFC 8011, appendix B
    0x0401: Message("printing-refused-forbidden"),
    0x0402: Message("printing-refused-sign-in"),
    0x0403: Message("printing-refused-forbidden"),
    NOT_FOUND: Message("printing-refused-not-found"),
    0x0408: Message("printing-refused-too-large"),
    0x040A: Message("printing-refused-format"),
    0x040B: Message("printing-refused-job"),
    0x0506: Message("printing-refused-not-accepting"),
    BUSY: Message("printing-refused-busy"),
}
# RFC 8011, 5.4.11 and 5.3.7.
_PRINTER_STATES: dict[int, PrinterState] = dict(enumerate(PrinterState, 3))
_JOB_STATES: dict[int, JobState] = dict(enumerate(JobState, 3))


@dataclass(frozen=True)
class Description:
    """What a printer says of itself; resolutions in dots an inch, media sizes in mm.

    A media size is (smallest, largest) across and (smallest, largest) along the feed.
    """

    model: str
    state: PrinterState | None
    reasons: tuple[str, ...]
    accepts_jobs: bool
    formats: tuple[str, ...]
    raster_kinds: tuple[str, ...]
    raster_dpi: tuple[int, ...]
    dpi: tuple[int, ...]
    scalings: tuple[str, ...]
    media_ready: tuple[str, ...]
    media_sizes: tuple[tuple[tuple[float, float], tuple[float, float]], ...]

    @property
    def media_words(self) -> tuple[str, ...]:
        """The sizes that are loaded, from their self-describing names (PWG 5101.1, 5): "8.5 x 11 in"."""
        found = (re.search(r"_([\d.]+)x([\d.]+)(in|mm)$", name) for name in self.media_ready)
        return tuple(
            f"{m[1]} x {m[2]} {m[3]}" if m else name for m, name in zip(found, self.media_ready, strict=True)
        )

    def takes_media(self, width: float, height: float) -> bool:
        """Whether it lists this size of media, in mm."""
        near = 0.5  # sizes named in inches and in millimetres differ by less
        return any(
            x[0] - near <= width <= x[1] + near and y[0] - near <= height <= y[1] + near
            for x, y in self.media_sizes
        )


def printer(uri: str, *, timeout: float = TIMEOUT_S) -> Description:
    """Get-Printer-Attributes. Raises PrinterError where the printer does not answer so."""
    answer = _ask(uri, GET_PRINTER_ATTRIBUTES, [], timeout=timeout)
    state = next(iter(answer.get("printer-state", [])), None)
    return Description(
        model=" ".join(_texts(answer, "printer-make-and-model") or _texts(answer, "printer-name"))[:120],
        state=_PRINTER_STATES.get(state) if isinstance(state, int) else None,
        reasons=_reasons(answer, "printer-state-reasons"),
        accepts_jobs=answer.get("printer-is-accepting-jobs", [True]) != [False],
        formats=_texts(answer, "document-format-supported"),
        raster_kinds=_texts(answer, "pwg-raster-document-type-supported"),
        raster_dpi=_dots(answer, "pwg-raster-document-resolution-supported"),
        dpi=_dots(answer, "printer-resolution-supported"),
        scalings=_texts(answer, "print-scaling-supported"),
        media_ready=_texts(answer, "media-ready"),
        media_sizes=tuple(_media_sizes(answer)),
    )


def print_job(
    uri: str,
    document: bytes,
    media_type: str,
    *,
    name: str,
    scaling: str | None = None,
    media_mm: tuple[float, float] | None = None,
    timeout: float = PRINT_TIMEOUT_S,
) -> Job:
    """Print-Job: hands the whole document over. Raises PrinterError when it is not taken, and Unsure
    when it may have been.

    ``scaling``: a value of print-scaling (PWG 5100.16); "none" keeps modules as large as they were
    drawn. ``media_mm``: width and height of the media, sent as media-col (PWG 5100.7). The document
    holds every tag, each with its own number, so "copies" is never sent.
    """
    operation: list[Attribute] = [
        ("job-name", Tag.NAME, name[:255]),
        ("document-format", Tag.MIME, media_type),
    ]
    job: list[Attribute] = [("print-scaling", Tag.KEYWORD, scaling)] if scaling else []
    if media_mm:
        width, height = (round(side * 100) for side in media_mm)
        size: list[Attribute] = [("x-dimension", Tag.INTEGER, width), ("y-dimension", Tag.INTEGER, height)]
        job.append(("media-col", Tag.COLLECTION, [("media-size", Tag.COLLECTION, size)]))
    answer = _ask(uri, PRINT_JOB, operation, job, document, timeout=timeout)
    return replace(_job(uri, answer, Unsure), name=name[:255])


def job(uri: str, job_id: int, *, timeout: float = TIMEOUT_S) -> Job:
    """Get-Job-Attributes of one job. Raises PrinterError; NotKnown where the printer forgot it."""
    asked: list[Attribute] = [("job-id", Tag.INTEGER, job_id)]
    return _job(uri, _ask(uri, GET_JOB_ATTRIBUTES, asked, timeout=timeout), PrinterError)


def jobs(uri: str, *, timeout: float = TIMEOUT_S) -> list[Listed]:
    """Get-Jobs: those that wait or print, and those that the printer has ended and still lists.

    Raises PrinterError.
    """
    found = []
    for which in ("not-completed", "completed"):
        asked: list[Attribute] = [
            ("which-jobs", Tag.KEYWORD, which),
            ("requested-attributes", Tag.KEYWORD, "job-id"),
            ("", Tag.KEYWORD, "job-name"),
        ]
        answer = _ask(uri, GET_JOBS, asked, timeout=timeout)
        numbers = [value for value in answer.get("job-id", []) if isinstance(value, int)]
        names = _texts(answer, "job-name")
        if len(numbers) != len(names):  # a job without its name: which is whose is not told
            raise _broken(uri, PrinterError)
        found += [Listed(*one) for one in zip(numbers, names, strict=True)]
    return found


def _job(uri: str, answer: Attributes, kind: type[PrinterError]) -> Job:
    try:
        number, state = answer["job-id"][0], _JOB_STATES[int(str(answer["job-state"][0]))]
        name = next(iter(_texts(answer, "job-name")), None)
        reasons = _reasons(answer, "job-state-reasons")
        return Job(int(str(number)), state, reasons, remarks_of(reasons), remarks_of(notable(reasons)), name)
    except (KeyError, IndexError, ValueError):
        raise _broken(uri, kind) from None


def _texts(answer: Attributes, name: str) -> tuple[str, ...]:
    return tuple(value for value in answer.get(name, []) if isinstance(value, str))


def _reasons(answer: Attributes, name: str) -> tuple[str, ...]:
    return tuple(reason for reason in _texts(answer, name) if reason != "none")


def _dots(answer: Attributes, name: str) -> tuple[int, ...]:
    """Resolutions with square dots; modules would be stretched by others."""
    found = [v for v in answer.get(name, []) if isinstance(v, Resolution) and v.across == v.along]
    return tuple(sorted({v.across for v in found}))


def _media_sizes(answer: Attributes) -> Iterable[tuple[tuple[float, float], tuple[float, float]]]:
    for size in answer.get("media-size-supported", []):
        if isinstance(size, dict):
            sides = [_bounds(size.get(name, [])) for name in ("x-dimension", "y-dimension")]
            if sides[0] and sides[1]:
                yield sides[0], sides[1]


def _bounds(values: list[Value]) -> tuple[float, float] | None:
    """Hundredths of a millimetre, a figure or a range, in mm."""
    for value in values:
        if isinstance(value, range):
            return value.start / 100, (value.stop - 1) / 100
        if isinstance(value, int):
            return value / 100, value / 100
    return None


def _ask(
    uri: str,
    operation: int,
    attributes: list[Attribute],
    job: list[Attribute] | None = None,
    document: bytes = b"",
    *,
    timeout: float,
) -> Attributes:
    # RFC 8011, 4.2.1: a job's own attributes follow its target; the user's name follows both.
    target = [one for one in attributes if one[0] == "job-id"]
    rest = [one for one in attributes if one[0] != "job-id"]
    first: list[Attribute] = [
        ("attributes-charset", Tag.CHARSET, "utf-8"),
        ("attributes-natural-language", Tag.LANGUAGE, "en"),
        ("printer-uri", Tag.URI, uri),
        *target,
        ("requesting-user-name", Tag.NAME, "tagger"),
        *rest,
    ]
    body = encode(operation, [(Tag.OPERATION, first), *([(Tag.JOB, job)] if job else [])])
    prints = operation == PRINT_JOB
    try:
        status, answer = decode(post(uri, body + document, timeout=timeout, prints=prints))
    except Broken:
        raise _broken(uri, Unsure if prints else PrinterError) from None
    if status >= 0x0100:
        kind = {NOT_FOUND: NotKnown, BUSY: Busy}.get(status, PrinterError)
        raise kind(Problem("printer", uri, _refusal(status, answer)))
    return answer


def _refusal(status: int, answer: Attributes) -> Message:
    """Why the printer refuses, with its own words where it has any."""
    why = _REFUSALS.get(status) or Message("printing-refused-status", status=f"0x{status:04x}")
    told = " ".join(_texts(answer, "status-message"))[:200]
    return Message("printing-refused-told", why=why, told=told) if told else why


def _broken(uri: str, kind: type[PrinterError]) -> PrinterError:
    return kind(Problem("printer", uri, Message("printing-printer-not-ipp")))
