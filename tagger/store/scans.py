"""Scans of tags, written into the history many at a time."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from typing import Any

from sqlalchemy import select

from tagger.store.base import Part, in_chunks
from tagger.store.history import add_events
from tagger.store.models import AssemblyRow
from tagger.store.values import Kind


class Scans(Part):
    """The part of the store that takes in the scans that a server has gathered."""

    def record_scans(self, scans: Sequence[tuple[str, datetime]]) -> int:
        """Adds a line for each scan, a whole tag number and when it was, in one transaction; how many.

        Numbers not known here are left out. Without one that is known nothing is written, and no
        writer is waited for.
        """
        known: set[str] = set()
        with self.reading() as session:
            for chunk in in_chunks(sorted({number for number, _ in scans})):
                known.update(session.scalars(select(AssemblyRow.number).where(AssemblyRow.number.in_(chunk))))
        values: list[dict[str, Any]] = [
            {"number": number, "kind": str(Kind.SCANNED), "at": at, "by": None, "data": {}}
            for number, at in scans
            if number in known
        ]
        if values:
            with self.writing() as session:
                add_events(session, values)
        return len(values)
