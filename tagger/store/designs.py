"""Specs with what the tables said of them: kept once, however many assemblies share them."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import lru_cache
from typing import Any, Protocol

from sqlalchemy import select
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.orm import Session

from tagger.code import payload
from tagger.messages import Message
from tagger.spec import AssemblySpec, TagContent
from tagger.store.base import fingerprint_of, in_chunks
from tagger.store.chain import pend
from tagger.store.models import DesignRow
from tagger.store.texts import SharedText, Written, written, written_round
from tagger.trade.results import Assessment


@dataclass(frozen=True)
class Design:
    spec: AssemblySpec
    assessment: Assessment


_READ: dict[str, Design] = {}  # a design never changes, so what was read once stays true
_MOST = 20_000
_SPREADS: dict[int, tuple[tuple[Message, ...], Written]] = {}
"""By the identity of the messages, which are kept here, so that it stays theirs."""
_MOST_SPREADS = 500


def as_row(spec: AssemblySpec, assessment: Assessment) -> dict[str, Any]:
    """The row of a design; the same spec and assessment give the same id."""
    said = written(spec.as_dict())
    spreads = [_spread(end.spread) for end in (assessment.end_a, assessment.end_b)]
    found = written_round(assessment.kept_without_spread(), "spread", spreads)
    return {"id": fingerprint_of(f"[{said.text}, {found.text}]"), "spec": said, "assessment": found}


def _spread(messages: tuple[Message, ...]) -> Written:
    """The sources that disagree about an end, most of what is kept of it; all ends of a kind have the same tuple."""
    known = _SPREADS.get(id(messages))
    if known is None:
        made = written([one.as_json() for one in messages])
        (kept,), (digested,) = made.kept, made.digested
        if len(_SPREADS) >= _MOST_SPREADS:
            _SPREADS.clear()
        known = _SPREADS[id(messages)] = (
            messages,
            Written((SharedText(kept),), (SharedText(digested),)),
        )
    return known[1]


class Rows(Protocol):
    """Rows of designs by their place."""

    def __getitem__(self, place: int, /) -> dict[str, Any]: ...


def keep(session: Session, places: Mapping[str, int], rows: Rows) -> None:
    """Insert the designs that are missing; safe against concurrent writers. ``places``: of each id among the rows."""
    dialect = postgresql if session.get_bind().dialect.name == "postgresql" else sqlite
    query = dialect.insert(DesignRow).on_conflict_do_nothing().returning(DesignRow.id)
    # In order: two runs must not wait for each other's. A row has some 15 kB.
    for chunk in in_chunks(sorted(places), 100):
        known = set(session.scalars(select(DesignRow.id).where(DesignRow.id.in_(chunk))))
        if missing := {id_: rows[places[id_]] for id_ in chunk if id_ not in known}:
            made = session.scalars(query, list(missing.values()), execution_options={"pended": True})
            pend(session, DesignRow, [missing[id_] for id_ in made])


def read(session: Session, ids: Iterable[str]) -> dict[str, Design]:
    """The designs of these ids."""
    wanted = set(ids)
    found = {id_: _READ[id_] for id_ in wanted if id_ in _READ}
    for chunk in in_chunks(sorted(wanted - found.keys())):
        for row in session.scalars(select(DesignRow).where(DesignRow.id.in_(chunk))):
            found[row.id] = Design(AssemblySpec.read(row.spec), Assessment.model_validate(row.assessment))
    if len(_READ) + len(found) > _MOST:
        _READ.clear()
    _READ.update(found)
    return found


@lru_cache(maxsize=_MOST)
def content_of(digits: str) -> TagContent:
    """What a tag's symbol says: its digits, which decode alike for ever."""
    return payload.decode(digits)
