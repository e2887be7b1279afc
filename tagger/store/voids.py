"""Which records are void."""

from __future__ import annotations

from collections.abc import Sequence

from sqlalchemy import ColumnElement, exists, select
from sqlalchemy.orm import InstrumentedAttribute, Session

from tagger.store.base import in_chunks
from tagger.store.models import VoidRow
from tagger.store.values import Void


def voids(session: Session, numbers: Sequence[str]) -> dict[str, Void]:
    """Those of these records that are void."""
    found: dict[str, Void] = {}
    for chunk in in_chunks(list(numbers)):
        for row in session.scalars(select(VoidRow).where(VoidRow.number.in_(chunk))):
            found[row.number] = Void(row.reason, row.at, row.by)
    return found


def is_void(number: InstrumentedAttribute[str]) -> ColumnElement[bool]:
    """A condition on a column that holds a tag number."""
    return exists().where(VoidRow.number == number)
