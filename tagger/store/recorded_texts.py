"""The texts that records have, each once: a name is looked for among these, and then its records by an index.

Looked for in the records themselves, every one of them is read and folded. A text stays when its last record is
corrected: it finds nothing then, but a lot still leads to whatever was built from it. A name is found by the parts of
three letters that it has: PostgreSQL has an index over them, SQLite a table that it keeps itself, by triggers (migration
20). Fewer than three letters are looked for in every text of the field.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from typing import Any, Final

from sqlalchemy import ColumnElement, Select, exists, false, func, select
from sqlalchemy import column as named_column
from sqlalchemy import table as light_table
from sqlalchemy import text as sql
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.orm import InstrumentedAttribute, Session

from tagger.record import MAX_LENGTH, RECORD_FIELDS
from tagger.store import chain
from tagger.store.base import in_chunks
from tagger.store.folding import fold
from tagger.store.lot_names import bare, kept_as
from tagger.store.models import AssemblyRow, FormerLotRow, RecordedTextRow, WithdrawalRow
from tagger.store.texts import refuse_control
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
_PART: Final = 3  # letters
PARTS: Final = light_table("recorded_part", *map(named_column, ("field", "part", "text_id")))
"""Which texts of a field have a part in them; on SQLite alone, and no row of it is written from here."""
_RAREST: Final = sql(
    "SELECT asked.value FROM json_each(:parts) AS asked ORDER BY (SELECT count(*) FROM "
    "(SELECT 1 FROM recorded_part WHERE field = :field AND part = asked.value LIMIT 1000)) LIMIT 2"
)
_PART_MISSING: Final = sql(
    "WITH RECURSIVE letter(at) AS (SELECT 1 UNION ALL SELECT at + 1 FROM letter WHERE at < "
    "(SELECT max(length(folded)) FROM recorded_text)) "
    "SELECT kept.text FROM recorded_text AS kept JOIN letter ON at <= length(kept.folded) - 2 "
    "WHERE kept.field NOT IN ('hose_lot', 'fitting_lot') AND NOT EXISTS (SELECT 1 FROM recorded_part "
    "WHERE field = kept.field AND part = substr(kept.folded, at, 3) AND text_id = kept.id) LIMIT 1"
)
_LONGEST: Final = 3 * MAX_LENGTH  # in upper case and back no letter becomes more than three
_INDEXED: Final = frozenset({"customer", "machine"})
"""The columns by which an assembly is found without reading all of them."""
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
    """A text of some record, or a lot that it had once, that the list has not or does not compare as it should:
    changed past the program, it would hide a record from a search, or a hose from a withdrawal. None: all are there."""
    row = RecordedTextRow
    for name, field in _KEPT.items():
        column: InstrumentedAttribute[str] = getattr(AssemblyRow, name)
        there = exists().where(row.field == field, row.text == column)
        missing = session.scalar(select(column).where(column != "", ~there).limit(1))
        if missing is not None:
            return missing
    return (
        _former_missing(session)
        or _compared_wrongly(session)
        or (session.scalar(_PART_MISSING) if _in_table(session) else None)
    )


def _former_missing(session: Session) -> str | None:
    """A lot that was corrected away and is not in the list.

    Among an assembly's other names is also the spelling under which its lot was withdrawn, which no hose need have had.
    """
    row, former, withdrawn = RecordedTextRow, FormerLotRow, WithdrawalRow
    there = exists().where(row.field == former.scope, row.text == former.value)
    for scope, lot in session.execute(select(former.scope, former.value).where(~there).distinct()).all():
        a_withdrawals = select(exists().where(withdrawn.scope == scope, withdrawn.value == lot))
        if not (session.scalar(a_withdrawals) and lots_spelled(session, Scope(scope), lot)):
            return str(lot)
    return None


def _compared_wrongly(session: Session) -> str | None:
    """A text that the list folds in another way than it should."""
    row = RecordedTextRow
    for field, text, folded in session.execute(select(row.field, row.text, row.folded)):
        if folded not in (kept_as(bare(text)) if field in _LOTS.values() else (fold(text),)):
            return str(text)
    return None


def _in_table(session: Session) -> bool:
    """Whether the parts of texts stand in a table of their own."""
    return session.get_bind().dialect.name == "sqlite"


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
    """The texts of a field that have this one in them, in any case. Raises StoreError for one that cannot be kept."""
    row, wanted = RecordedTextRow, _wanted(field, text)
    if not _PART <= len(wanted) <= _LONGEST:
        return _read_through(field, text)
    if not _in_table(session):
        in_parts = func.text_parts(row.folded).op("@>")(func.text_parts(wanted))
        return _read_through(field, text).where(in_parts)
    also, (rarest, *next_to_it) = PARTS.alias("also"), _rarest(session, field, wanted)
    with_part = select(row.text).join(PARTS, PARTS.c.text_id == row.id)
    with_part = with_part.where(PARTS.c.field == field, PARTS.c.part == rarest)
    for part in next_to_it:
        has_it_too = exists().where(
            also.c.field == field, also.c.part == part, also.c.text_id == PARTS.c.text_id
        )
        with_part = with_part.where(has_it_too)
    return with_part.where(row.folded.contains(wanted, autoescape=True))


def _read_through(field: str, text: str) -> Select[Any]:
    """As ``having``, by reading every text of the field."""
    row, wanted = RecordedTextRow, _wanted(field, text)
    has_it = row.folded.contains(wanted, autoescape=True) if len(wanted) <= _LONGEST else false()
    return select(row.text).where(row.field == field, has_it)


def _wanted(field: str, text: str) -> str:
    refuse_control(field, text)
    return str(fold(text.strip()))


def _rarest(session: Session, field: str, wanted: str) -> list[str]:
    """Those two parts of a text which the fewest texts of the field have, as far as they need be counted; or its only one."""
    known: dict[tuple[str, str], list[str]] = session.info.setdefault("rarest parts", {})
    if (field, wanted) not in known:
        parts = sorted({wanted[at : at + _PART] for at in range(len(wanted) - _PART + 1)})
        asked = {"field": field, "parts": json.dumps(parts)}
        known[field, wanted] = list(session.scalars(_RAREST, asked))
    return known[field, wanted]


def first_having(session: Session, field: str, text: str, most: int) -> list[str]:
    """The texts of a field that have this one in them; of more than ``most`` the first ones in order."""
    few = _some_having(session, field, text)
    if len(few) <= min(most, _FEW_TEXTS):
        return few
    many = _read_through(field, text) if _in_table(session) else having(session, field, text)
    return list(session.scalars(many.order_by(RecordedTextRow.text).limit(most)))


def has_in_it(session: Session, field: str, text: str, *, newest_first: bool) -> ColumnElement[bool]:
    """A condition on assemblies: a field has this text in it, in any case.

    Few records are found by the index of the field; ``newest_first``: of many, the newest are met soonest by
    going through them from the end.
    """
    column: InstrumentedAttribute[Any] = getattr(AssemblyRow, field)
    texts = _some_having(session, field, text)
    if not texts:
        return false()
    few, having_it = len(texts) <= _FEW_TEXTS, having(session, field, text)
    named = column.in_(texts) if few else column.in_(having_it)
    if not newest_first or _are_few(session, field, named if few else having_it):
        return named
    if few:
        return func.coalesce(column, "").in_(texts)  # which no index holds
    # Looked up by itself for each record: joined to them, PostgreSQL reads and sorts them all.
    this_one = _read_through(field, text).where(RecordedTextRow.text == column)
    return this_one.scalar_subquery().is_not(None)


def _are_few(session: Session, field: str, named: ColumnElement[bool] | Select[Any]) -> bool:
    """Whether the records that meet a condition, or have one of these texts, are better sorted than gone through."""
    if isinstance(named, ColumnElement):
        records = select(AssemblyRow.number).where(named)
    elif field in _INDEXED and _in_table(session):  # PostgreSQL reads more for it than it saves
        kept = named.subquery()
        records = select(AssemblyRow.number).join(kept, kept.c.text == getattr(AssemblyRow, field))
    else:
        return False
    found = records.limit(_FEW_RECORDS + 1).subquery()
    return (session.scalar(select(func.count()).select_from(found)) or 0) <= _FEW_RECORDS


def _some_having(session: Session, field: str, text: str) -> list[str]:
    """The texts of a field that have this one in them, or so many that it is known to be more than few.

    They are looked for once in a view: a page and its count are asked for together.
    """
    if isinstance(session, chain.Recording):  # where one may have been written since
        return list(session.scalars(having(session, field, text).limit(_FEW_TEXTS + 1)))
    seen: dict[tuple[str, str], list[str]] = session.info.setdefault("recorded texts", {})
    if (field, text) not in seen:
        seen[field, text] = list(session.scalars(having(session, field, text).limit(_FEW_TEXTS + 1)))
    return seen[field, text]
