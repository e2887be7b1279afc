"""The shop's printers, and the print jobs sent to them."""

from __future__ import annotations

from datetime import datetime

from fastapi import APIRouter

from api.rest.problem import RESPONSES, there
from api.rest.shared import Answer, AsDevice, Id, TheStore
from tagger.code import number as tag_number
from tagger.errors import TaggerError
from tagger.store import Printer, PrintJob

router = APIRouter(responses=RESPONSES, tags=["tags"])


class PrinterOut(Answer):
    """A printer in use. ``template`` is the label it is loaded with, null where that changes."""

    name: str
    dpi: int
    template: str | None

    @classmethod
    def of(cls, item: Printer) -> PrinterOut:
        return cls(name=item.name, dpi=item.dpi, template=item.template)


class PrintJobOut(Answer):
    """Tags on their way to a printer.

    ``state``: waiting, sending, printing, done; failed, with the reason in ``why``; unknown, when
    it may have been printed and somebody has to look; or dropped. A tag counts as printed once the
    printer took it, or may have.
    """

    id: int
    printer: str
    numbers: list[str]
    template: str
    reason: str
    state: str
    why: str | None
    attempts: int
    printer_job: int | None
    created_at: datetime
    created_by: str | None
    changed_at: datetime

    @classmethod
    def of(cls, item: PrintJob) -> PrintJobOut:
        values = {name: getattr(item, name) for name in cls.model_fields}
        return cls(
            **values
            | {
                "numbers": [tag_number.format(number) for number in item.numbers],
                "why": str(item.why) or None,
            }
        )


@router.get("/printers", summary="List the printers")
def printers(store: TheStore, token: AsDevice) -> list[PrinterOut]:
    return [PrinterOut.of(item) for item in store.printers()]


@router.get("/print-jobs/{job}", summary="Get the status of a print job")
def print_job(store: TheStore, token: AsDevice, job: Id) -> PrintJobOut:
    try:
        return PrintJobOut.of(store.print_job(job))
    except TaggerError as error:
        raise there(error) from None
