"""Tags to a network printer: single labels as PWG Raster where it takes that, else all as PDF."""

from __future__ import annotations

import io
from collections.abc import Sequence

from tagger.errors import Problem
from tagger.printing import ipp, pdf, pwg, raster
from tagger.printing.content import Tag
from tagger.printing.sheets import page_size
from tagger.printing.template import Template

PDF, PWG = "application/pdf", "image/pwg-raster"


def send(
    uri: str, tags: Sequence[Tag], template: Template, *, dpi: int = 203, start: int = 1, name: str = ""
) -> ipp.Job:
    """Hands the tags to the printer at ``uri`` (ipp:// or ipps://); the job as it was taken.

    Raises PrinterError where nothing is printed: the printer cannot be reached, takes neither
    format, has not these dots; ipp.Unsure where the job may have been taken; TemplateError where a
    tag does not fit.
    """
    printer = ipp.printer(uri)
    check(uri, printer, dpi)
    media_type, document = _document(uri, printer, tags, template, dpi, start)
    size = page_size(template)
    return ipp.print_job(
        uri, document, media_type,
        name=name or f"{template.name}, {len(tags)} tags",
        scaling="none" if "none" in printer.scalings else None,
        media_mm=size if printer.takes_media(*size) else None,
    )  # fmt: skip


def check(uri: str, printer: ipp.Printer, dpi: int) -> None:
    """Raises PrinterError where tags of these dots cannot be printed there, naming what is in the way."""
    if PDF not in printer.formats and not _raster_kinds(printer):
        known = ", ".join(printer.formats)[:200] or "nothing"
        raise ipp.PrinterError(
            Problem("printer", uri, f"takes neither PDF nor PWG Raster, only {known}",
                    "Take the PDF and print it from a computer that knows this printer.")
        )  # fmt: skip
    dots = dots_of(printer)
    if dots and dpi not in dots:
        # Another number of dots would blur the modules: better refused than printed badly.
        raise ipp.PrinterError(
            Problem("dpi", dpi, f"is not what the printer at {uri} has",
                    f"Give {'one of: ' if len(dots) > 1 else ''}{', '.join(str(one) for one in dots)}.")
        )  # fmt: skip


def dots_of(printer: ipp.Printer) -> tuple[int, ...]:
    """The dots an inch at which it prints what is sent to it; empty where it does not say."""
    by_pdf = printer.dpi if PDF in printer.formats else ()
    by_raster = (printer.raster_dpi or printer.dpi) if _raster_kinds(printer) else ()
    return tuple(sorted({*by_pdf, *by_raster}))


def dpi_of(printer: ipp.Printer, wanted: int = 203) -> int:
    """``wanted`` where the printer has it or does not say; else its next finer one, else its finest."""
    dots = dots_of(printer)
    return wanted if not dots or wanted in dots else next((d for d in dots if d > wanted), dots[-1])


def _raster_kinds(printer: ipp.Printer) -> list[pwg.Kind]:
    """The kinds of raster that are written here and taken there, best first."""
    kinds: tuple[pwg.Kind, ...] = ("black_1", "sgray_8")
    return [kind for kind in kinds if kind in printer.raster_kinds] if PWG in printer.formats else []


def _document(
    uri: str, printer: ipp.Printer, tags: Sequence[Tag], template: Template, dpi: int, start: int
) -> tuple[str, bytes]:
    """A single label goes out as the printer's own dots, so that every module keeps its whole dots.

    A sheet goes as PDF where it can: it is a page for an office printer, and large as dots.
    """
    kinds = _raster_kinds(printer)
    fits = bool(kinds) and (not printer.raster_dpi or dpi in printer.raster_dpi)
    if fits and (template.sheet is None or PDF not in printer.formats):
        pages = raster.pages(tags, template, dpi, start)
        return PWG, b"".join(pwg.stream(pages, dpi, kinds[0]))
    out = io.BytesIO()
    pdf.write(tags, template, out, dpi=dpi, start=start)
    return PDF, out.getvalue()
