"""The texts that records have, each once: a name is looked for among these, and then its records by an index.

Looked for in the records themselves, every one of them is read and folded. A text stays when its last record is
corrected: it finds nothing then, but a lot still leads to whatever was built from it. PostgreSQL has an index over the
parts of three letters that these texts have; SQLite reads them through, each in less than a microsecond.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any, Final

from sqlalchemy import ColumnElement, Select, exists, false, func, select, true
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.orm import InstrumentedAttribute, Session

from tagger.record import RECORD_FIELDS
from tagger.store import chain
from tagger.store.base import in_chunks
from tagger.store.folding import fold
from tagger.store.lot_names import bare, kept_as
from tagger.store.models import AssemblyRow, RecordedTextRow
from tagger.store.values import Scope

FIELDS: Final = (*RECORD_FIELDS, "hose_standard")
"""The columns of an assembly whose texts are found by any part of them."""
_LOTS: Final = {
    "hose_lot": str(Scope.HOSE_LOT),
    "fitting_lot_a": str(Scope.FITTING_LOT),
    "fitting_lot_b": str(Scope.FITTING_LOT),
}
"""The columns of lots, and the field of the list in which their texts stand."""
_KEPT: Final = {**{name: name for name in FIELDS}, **_LOTS}
_PART: Final = 3  # letters: what PostgreSQL's index holds
_FEW_TEXTS: Final = 200
_FEW_RECORDS: Final = 2_000


def keep_texts(session: Session, rows: Iterable[Mapping[str, Any]]) -> None:
    """Keeps the texts of these columns of assemblies that are not kept yet; safe against concurrent writers."""
    wanted = {(field, text) for row in rows for column, field in _KEPT.items() if (text := row.get(column))}
    row = RecordedTextRow
    for field in {*_KEPT.values()}:
        texts = sorted(text for named, text in wanted if named == field)
        for chunk in in_chunks(texts):
            known = session.scalars(select(row.text).where(row.field == field, row.text.in_(chunk)))
            wanted -= {(field, text) for text in known}
    if wanted:
        dialect = postgresql if session.get_bind().dialect.name == "postgresql" else sqlite
        values = [
            {"field": field, "text": text, "folded": bare(text) if field in _LOTS.values() else fold(text)}
            for field, text in sorted(wanted)
        ]
        session.execute(dialect.insert(row).on_conflict_do_nothing(), values)


def first_missing(session: Session) -> str | None:
    """A text of some record that the list has not, or a lot that it does not compare as it should: changed past the
    program, it would hide a record from a search, or a hose from a withdrawal. None: all are there."""
    row = RecordedTextRow
    for name, field in _KEPT.items():
        column: InstrumentedAttribute[str] = getattr(AssemblyRow, name)
        there = exists().where(row.field == field, row.text == column)
        missing = session.scalar(select(column).where(column != "", ~there).limit(1))
        if missing is not None:
            return missing
    lots = session.execute(select(row.text, row.folded).where(row.field.in_({*_LOTS.values()})))
    return next((text for text, folded in lots if folded != bare(text)), None)


def spelled(session: Session, field: str, text: str) -> list[str]:
    """The texts of a field that are this one, in any case."""
    row = RecordedTextRow
    found = select(row.text).where(row.field == field, row.folded == fold(" ".join(text.split())))
    return list(session.scalars(found))


def lots_spelled(session: Session, scope: Scope, lot: str) -> list[str]:
    """The lots from which something was built, now or before a correction, that are this one however it is spelled."""
    row = RecordedTextRow
    found = select(row.text).where(row.field == str(scope), row.folded.in_(kept_as(bare(lot))))
    return sorted(session.scalars(found))


def having(session: Session, field: str, text: str) -> Select[Any]:
    """The texts of a field that have this one in them, in any case."""
    row, wanted = RecordedTextRow, str(fold(text.strip()))
    indexed = session.get_bind().dialect.name == "postgresql" and len(wanted) >= _PART
    in_parts = func.text_parts(row.folded).op("@>")(func.text_parts(wanted)) if indexed else true()
    return select(row.text).where(row.field == field, in_parts, row.folded.contains(wanted, autoescape=True))


def has_in_it(session: Session, field: str, text: str, *, newest_first: bool) -> ColumnElement[bool]:
    """A condition on assemblies: a field has this text in it, in any case.

    Few records are found by the index of the field; ``newest_first``: of many, the newest are met soonest by
    going through them from the end.
    """
    column: InstrumentedAttribute[Any] = getattr(AssemblyRow, field)
    texts = _some_having(session, field, text)
    if not texts:
        return false()
    few = len(texts) <= _FEW_TEXTS
    named = column.in_(texts) if few else column.in_(having(session, field, text))
    if not newest_first or (few and _count(session, named) <= _FEW_RECORDS):
        return named
    whole = func.coalesce(column, "")  # which no index holds
    return whole.in_(texts) if few else whole.in_(having(session, field, text))


def _some_having(session: Session, field: str, text: str) -> list[str]:
    """The texts of a field that have this one in them, or so many that it is known to be more than few.

    Every text is read for it, once in a view: a page and its count are asked for together.
    """
    if isinstance(session, chain.Recording):  # where one may have been written since
        return list(session.scalars(having(session, field, text).limit(_FEW_TEXTS + 1)))
    seen: dict[tuple[str, str], list[str]] = session.info.setdefault("recorded texts", {})
    if (field, text) not in seen:
        seen[field, text] = list(session.scalars(having(session, field, text).limit(_FEW_TEXTS + 1)))
    return seen[field, text]


def _count(session: Session, named: ColumnElement[bool]) -> int:
    """How many records that is, as far as it matters."""
    found = select(AssemblyRow.number).where(named).limit(_FEW_RECORDS + 1).subquery()
    return session.scalar(select(func.count()).select_from(found)) or 0
