"""A printer that speaks IPP: single labels as PWG Raster where it takes that, else all as PDF."""

from __future__ import annotations

import io
from collections.abc import Callable, Sequence

from tagger.errors import Problem
from tagger.messages import Message
from tagger.printing import pdf, raster
from tagger.printing.content import Tag
from tagger.printing.ipp import client, pwg
from tagger.printing.ipp.client import Description
from tagger.printing.ipp.reasons import remarks_of
from tagger.printing.kinds import Kinds
from tagger.printing.printer import TIMEOUT_S, Job, Listed, Status
from tagger.printing.sheets import page_size
from tagger.printing.template import Template

PDF, PWG = "application/pdf", "image/pwg-raster"
_FORMATS = ((PWG, "PWG Raster"), (PDF, "PDF"))


class IppPrinter:
    """The printer at an ipp:// or ipps:// address; see `tagger.printing.printer.Printer`."""

    def __init__(self, address: str) -> None:
        self.address = address

    def status(self, *, timeout: float = TIMEOUT_S) -> Status:
        return _status(self.address, client.printer(self.address, timeout=timeout))

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
        told = client.printer(self.address)
        _status(self.address, told).check(dpi)
        media_type, document = _document(
            told, tags, template, dpi, start, forced, accept or (lambda kinds: None)
        )
        size = page_size(template)
        return client.print_job(
            self.address,
            document,
            media_type,
            name=name or f"{template.name} ({len(tags)})",
            scaling="none" if "none" in told.scalings else None,
            media_mm=size if told.takes_media(*size) else None,
        )

    def job(self, job_id: int) -> Job:
        return client.job(self.address, job_id)

    def jobs(self) -> list[Listed]:
        return client.jobs(self.address)


def _status(address: str, told: Description) -> Status:
    return Status(
        address=address,
        model=told.model,
        state=told.state,
        remarks=remarks_of(told.reasons),
        accepts_jobs=told.accepts_jobs,
        takes=tuple(words for kind, words in _FORMATS if kind in told.formats),
        dots=_dots(told),
        media=told.media_words,
        unfit=_unfit(address, told),
    )


def _unfit(address: str, told: Description) -> Problem | None:
    if PDF in told.formats or _raster_kinds(told):
        return None
    message = (
        Message("printing-printer-formats", formats=told.formats[:12])
        if told.formats
        else Message("printing-printer-no-formats")
    )
    return Problem("printer", address, message)


def _dots(told: Description) -> tuple[int, ...]:
    """The dots an inch at which it prints what is sent to it; empty where it does not say."""
    by_pdf = told.dpi if PDF in told.formats else ()
    by_raster = (told.raster_dpi or told.dpi) if _raster_kinds(told) else ()
    return tuple(sorted({*by_pdf, *by_raster}))


def _raster_kinds(told: Description) -> list[pwg.Kind]:
    """The kinds of raster that are written here and taken there, best first."""
    kinds: tuple[pwg.Kind, ...] = ("black_1", "sgray_8")
    return [kind for kind in kinds if kind in told.raster_kinds] if PWG in told.formats else []


def _document(
    told: Description,
    tags: Sequence[Tag],
    template: Template,
    dpi: int,
    start: int,
    forced: bool,
    accept: Callable[[Kinds], object],
) -> tuple[str, bytes]:
    """A single label goes out as the printer's own dots, so that every module keeps its whole dots.

    A sheet goes as PDF where it can: it is a page for an office printer, and large as dots.
    """
    kinds = _raster_kinds(told)
    fits = bool(kinds) and (not told.raster_dpi or dpi in told.raster_dpi)
    if fits and (template.sheet is None or PDF not in told.formats):
        of_labels = Kinds()
        pages = raster.pages(tags, template, dpi, start, forced=forced, seen=of_labels.add)
        document = b"".join(pwg.stream(pages, dpi, kinds[0]))
        accept(of_labels)
        return PWG, document
    out = io.BytesIO()
    pdf.write(tags, template, out, dpi=dpi, start=start, forced=forced, accept=accept)
    return PDF, out.getvalue()
