"""The shop's printers: network address, resolution, loaded labels."""

from __future__ import annotations

from sqlalchemy import func, select, update
from sqlalchemy.orm import Session

from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.store.base import Part
from tagger.store.models import PrinterRow, PrintJobRow
from tagger.store.values import Printer, PrintState

RETIRED = Message("store-print-retired")


class Printers(Part):
    """The part of the store that knows the shop's printers."""

    def add_printer(
        self, name: str, uri: str, dpi: int, *, template: str | None = None, by: str | None = None
    ) -> Printer:
        """Adds a printer; under the name of one that is retired, it comes back with the new address.

        ``template``: the label it is loaded with, None where that changes. The address is not
        asked here. Raises StoreError for a name that is none, or is taken.
        """
        name = " ".join(name.split())
        if not 1 <= len(name) <= 40:
            raise StoreError(Problem("name", name, Message("store-name-length", most=40)))
        with self.writing() as session:
            row = session.scalar(select(PrinterRow).where(func.lower(PrinterRow.name) == name.lower()))
            if row is not None and row.retired_at is None:
                raise StoreError(Problem("name", name, Message("store-printer-name-used", name=name)))
            row = row or PrinterRow()
            row.name, row.uri, row.dpi, row.template = name, uri, dpi, template
            row.added_at, row.added_by, row.retired_at, row.retired_by = self.now(), by, None, None
            session.add(row)
            session.flush()
            return _value(row)

    def printers(self, *, retired: bool = False) -> list[Printer]:
        """The printers by name; with ``retired`` also those that are not used any more."""
        query = select(PrinterRow).order_by(PrinterRow.name)
        if not retired:
            query = query.where(PrinterRow.retired_at.is_(None))
        with self.reading() as session:
            return [_value(row) for row in session.scalars(query)]

    def printer(self, which: int | str) -> Printer:
        """A printer in use, by its id or its name. Raises StoreError for one that is not."""
        with self.reading() as session:
            return _value(printer_row(session, which))

    def retire_printer(self, printer: int, *, by: str | None = None) -> Printer:
        """It takes no more jobs; those that still wait for it are shown as failed."""
        with self.writing() as session:
            row, now = printer_row(session, printer), self.now()
            row.retired_at, row.retired_by = now, by
            session.execute(
                update(PrintJobRow)
                .where(PrintJobRow.printer_id == printer, PrintJobRow.state == PrintState.WAITING)
                .values(state=PrintState.FAILED, why=(RETIRED,), changed_at=now, changed_by=by)
            )
            return _value(row)


def printer_row(session: Session, which: int | str) -> PrinterRow:
    """Raises StoreError for a printer that is not there, or is retired."""
    if isinstance(which, int):
        row = session.get(PrinterRow, which)
    else:
        row = session.scalar(select(PrinterRow).where(func.lower(PrinterRow.name) == which.strip().lower()))
    if row is None or row.retired_at is not None:
        raise StoreError(Problem("printer", which, Message("store-printer-not-found", printer=which)))
    return row


def _value(row: PrinterRow) -> Printer:
    return Printer(
        row.id, row.name, row.uri, row.dpi, row.template, row.added_at, row.added_by, row.retired_at
    )
