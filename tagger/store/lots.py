"""Reel lots: which hose a lot is known as. A lot is one hose of one manufacturer.

A lot that is known as another hose is a wrong reel, or a wrong scan: it is registered only with a reason.
A lot that is only a date code spans sizes, and stops nobody.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence

from sqlalchemy import select
from sqlalchemy.orm import Session

from tagger import phrases
from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.spec import Hose
from tagger.store import designs
from tagger.store.base import Part, in_chunks
from tagger.store.lot_names import bare, kept_as, lot_key
from tagger.store.models import AssemblyRow, EventRow, RecordedTextRow
from tagger.store.recorded_texts import lots_spelled
from tagger.store.values import Kind, LotReason, Registration, Scope
from tagger.store.voids import is_void
from tagger.trade.one_hose import is_date_code, one_hose
from tagger.trade.tables import tables


class Lots(Part):
    """The part of the store that knows which hose a reel's lot is."""

    def hoses_of_lot(self, lot: str) -> list[Hose]:
        """The hoses that have been built from this lot, each once, in the order of their names."""
        with self.reading() as session:
            return known_hoses(session, [lot]).get(bare(lot), [])

    def another_hose(self, hose: Hose) -> Message | None:
        """What the lot of this hose is known as, where that is another hose; None: nothing is wrong."""
        with self.reading() as session:
            key = lot_key(hose.lot)
            known = known_hoses(session, [key])[bare(key)] if key else []
            return _another(session, hose, known)


def one_lot(one: str | None, other: str | None) -> bool:
    """Whether two texts are one lot, however they are spelled. A date code is no lot with the same digits."""
    if not one or not other:
        return False
    if lot_key(one) == lot_key(other):
        return True
    return bare(one) == bare(other) and not is_date_code(one) and not is_date_code(other)


def lot_reason_of(text: str | None) -> LotReason | None:
    """The reason by its name. Raises StoreError for one that is none."""
    if not text:
        return None
    try:
        return LotReason(text)
    except ValueError:
        reasons = tuple(str(one) for one in LotReason)
        wrong = Message("store-lot-reason-not-known", value=str(text), reasons=reasons)
        raise StoreError(Problem("lot_reason", str(text), wrong)) from None


def known_hoses(session: Session, lots: Iterable[str]) -> dict[str, list[Hose]]:
    """By the letters and digits of each lot the hoses that were built from it, however it was spelled, each once.

    A date code under another spelling ("2/26" for 226) is another lot.
    """
    keys = {key for lot in lots if (key := lot_key(lot))}
    spelled = {
        lot: key
        for lot, key in _spelled(session, {*map(bare, keys)}).items()
        if lot in keys or not is_date_code(lot)
    }
    drawn: dict[str, set[str]] = defaultdict(set)
    for chunk in in_chunks(sorted(spelled)):
        query = select(AssemblyRow.hose_lot, AssemblyRow.design_id).where(AssemblyRow.hose_lot.in_(chunk))
        query = query.where(~is_void(AssemblyRow.number))
        for lot, design in session.execute(query.distinct()):
            drawn[spelled[str(lot)]].add(design)
    read = designs.read(session, {one for ids in drawn.values() for one in ids})
    found: dict[str, list[Hose]] = defaultdict(list)
    for key, ids in drawn.items():
        found[key] = sorted({_plain(read[one].spec.hose) for one in ids}, key=_order)
    return found


def _spelled(session: Session, wanted: set[str]) -> dict[str, str]:
    """The lots of hoses that have these letters and digits, each with them."""
    row = RecordedTextRow
    found: dict[str, str] = {}
    for chunk in in_chunks(sorted({kept for lot in wanted for kept in kept_as(lot)})):
        query = select(row.text).where(row.field == str(Scope.HOSE_LOT), row.folded.in_(chunk))
        found |= {text: bare(text) for text in session.scalars(query)}
    return {text: key for text, key in found.items() if key in wanted}


def refuse_other_hoses(session: Session, rows: Sequence[Registration]) -> list[tuple[Hose, ...]]:
    """For each row what its lot is known as although the row goes on with a reason; mostly nothing.

    Raises StoreError for every row whose lot is known as another hose and that gives no reason.
    """
    known = known_hoses(session, (row.spec.hose.lot for row in rows if row.spec.hose.lot))
    problems: list[Problem] = []
    gone_on: list[tuple[Hose, ...]] = []
    for place, row in enumerate(rows, 1):
        within = f"row {place}." if len(rows) > 1 else ""
        hose = row.spec.hose
        key = bare(hose.lot) if lot_key(hose.lot) and hose.lot else ""
        here = known[key] if key else []
        other = _another(session, hose, here)
        try:
            reason = lot_reason_of(row.lot_reason)
        except StoreError as error:
            problems += (Problem(within + p.field, p.value, p.message) for p in error.problems)
            continue
        if other is not None and reason is None:
            problems.append(Problem(f"{within}hose.lot", hose.lot, other))
        gone_on.append(tuple(here) if other is not None else ())
        if key and _plain(hose) not in here:
            here.append(_plain(hose))
    if problems:
        raise StoreError(problems)
    return gone_on


def named(hose: Hose) -> Message:
    """A hose with its part number, where it has one."""
    if hose.part is None:
        return phrases.hose(hose)
    return Message("store-hose-with-part", hose=phrases.hose(hose), part=hose.part)


def _another(session: Session, hose: Hose, known: Sequence[Hose]) -> Message | None:
    if not known or not hose.lot or is_date_code(hose.lot):
        return None
    if any(one_hose(hose, one, tables()) for one in known) or _ticked_as_date(session, hose.lot):
        return None
    return Message("store-lot-of-another-hose", lot=hose.lot, known=tuple(map(named, known)))


def _ticked_as_date(session: Session, lot: str) -> bool:
    """Whether somebody said before that this lot is only a date code."""
    query = select(EventRow.data).join(AssemblyRow, AssemblyRow.number == EventRow.number)
    spelled = lots_spelled(session, Scope.HOSE_LOT, lot)
    query = query.where(AssemblyRow.hose_lot.in_(spelled), EventRow.kind == str(Kind.REGISTERED))
    return any(data.get("lot_reason") == LotReason.DATE_CODE for data in session.scalars(query))


def _plain(hose: Hose) -> Hose:
    return hose.model_copy(update={"lot": None})


def _order(hose: Hose) -> tuple[str, int, str, str]:
    return hose.standard, hose.dash, hose.edition or "", hose.part or ""
