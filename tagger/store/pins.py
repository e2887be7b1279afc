"""PINs of tags: with one, a stranger sees the other hoses of the tag's machine. The shop tells it."""

from __future__ import annotations

import secrets

from sqlalchemy.orm import Session

from tagger.errors import StoreError
from tagger.store.base import Part, compact, not_registered
from tagger.store.models import AssemblyRow, TagPinRow

DIGITS = 6


class Pins(Part):
    """The part of the store that keeps PINs."""

    def tag_pin(self, number: str) -> str:
        """A tag's PIN, made at the first call. Raises StoreError for a number without a record."""
        number = compact(number)

        def kept(session: Session) -> str:
            row = session.get(TagPinRow, number)
            if row is None:
                if session.get(AssemblyRow, number) is None:
                    raise StoreError(not_registered(number))
                pin = f"{secrets.randbelow(10**DIGITS):0{DIGITS}}"
                row = TagPinRow(number=number, pin=pin, at=self.now())
                session.add(row)
                session.flush()
            return row.pin

        return self.act(kept)

    def is_tag_pin(self, number: str, typed: str) -> bool:
        """Whether it is the PIN of a tag; none was told for a tag whose PIN was never made."""
        with self.reading() as session:
            row = session.get(TagPinRow, compact(number))
            return row is not None and secrets.compare_digest(row.pin.encode(), typed.strip().encode())
