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
from tagger.spec import AssemblySpec, TagContent
from tagger.store.base import fingerprint_of, in_chunks
from tagger.store.chain import pend
from tagger.store.models import DesignRow
from tagger.store.texts import written
from tagger.trade.results import Assessment


@dataclass(frozen=True)
class Design:
    spec: AssemblySpec
    assessment: Assessment


_READ: dict[str, Design] = {}  # a design never changes, so what was read once stays true
_MOST = 20_000


def as_row(spec: AssemblySpec, assessment: Assessment) -> dict[str, Any]:
    """The row of a design; the same spec and assessment give the same id."""
    said, found = written(spec.as_dict()), written(assessment.kept(to_write=True))
    return {"id": fingerprint_of(f"[{said.text}, {found.text}]"), "spec": said, "assessment": found}


class Rows(Protocol):
    """Rows of designs by their place."""

    def __getitem__(self, place: int, /) -> dict[str, Any]: ...


def keep(session: Session, places: Mapping[str, int], rows: Rows) -> None:
    """Insert the designs that are missing; safe against concurrent writers. ``places``: of each id among the rows."""
    dialect = postgresql if session.get_bind().dialect.name == "postgresql" else sqlite
    query = dialect.insert(DesignRow).on_conflict_do_nothing().returning(DesignRow.id)
    for chunk in in_chunks(sorted(places)):  # in order: two runs must not wait for each other's
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
