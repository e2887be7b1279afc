"""Specs with what the tables said of them: kept once, however many assemblies share them."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import lru_cache
from typing import Any, NamedTuple, Protocol

from pydantic import BaseModel
from sqlalchemy import select
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.orm import Session

from tagger.code import payload
from tagger.messages import Message
from tagger.spec import AssemblySpec, TagContent
from tagger.store.base import fingerprint_of, in_chunks
from tagger.store.chain import pend_salted, salted
from tagger.store.models import DesignRow
from tagger.store.texts import SharedText, ToKeep, Written, written, written_with
from tagger.trade.results import Assessment, EndAdvice


@dataclass(frozen=True)
class Design:
    spec: AssemblySpec
    assessment: Assessment


_READ: dict[str, Design] = {}  # a design never changes, so what was read once stays true
_MOST = 20_000
_PARTS: dict[object, tuple[object, Written]] = {}
"""Parts of assessments that many have, by their identity, which is theirs as long as they are kept here beside it."""
_MOST_PARTS = 1_000


def as_row(spec: AssemblySpec, assessment: Assessment) -> dict[str, Any]:
    """The row of a design; the same spec and assessment give the same id."""
    return row_of(written(spec.as_dict()), assessment)


def row_of(said: Written, assessment: Assessment) -> dict[str, Any]:
    """The same of a spec that is written already."""
    ends = {"end_a": _end(assessment.end_a), "end_b": _end(assessment.end_b)}
    found = written_with(assessment.kept_without_ends(), ends)
    return {"id": fingerprint_of(f"[{said.text}, {found.text}]"), "spec": said, "assessment": found}


def _end(advice: EndAdvice) -> Written:
    """What is said of an end, its texts in pieces: ends of a kind have the same torque, steps and sources."""
    parts = {name: _part(value) for name, value in advice if name != "figures"}
    return written_with({"figures": advice.figures}, parts)


def _part(part: Any) -> Written:
    """A part as it is written, once for all assessments that have the same one."""
    key = part if type(part) is tuple and part and type(part[0]) is str else id(part)
    known = _PARTS.get(key)
    if known is None:
        (kept,), (digested,) = (made := written(_as_json(part))).kept, made.digested
        if len(_PARTS) >= _MOST_PARTS:
            _PARTS.clear()
        known = _PARTS[key] = part, Written((SharedText(kept),), (SharedText(digested),))
    return known[1]


def _as_json(part: Any) -> Any:
    if isinstance(part, Message):
        return part.as_json()
    if isinstance(part, BaseModel):
        return part.model_dump(mode="json")
    return [_as_json(one) for one in part] if isinstance(part, tuple) else part


class Ready(NamedTuple):
    """A design as it is written: its texts in pieces, and its digest for the chain, with a salt."""

    id: str
    spec: ToKeep
    assessment: ToKeep
    salted: bytes

    @classmethod
    def of(cls, row: Mapping[str, Any]) -> Ready:
        """Of what ``as_row`` answered: of each text the other way to write it is needed no more."""
        digest = salted(DesignRow.__tablename__, row)
        return cls(row["id"], row["spec"].to_keep, row["assessment"].to_keep, digest)

    @property
    def columns(self) -> dict[str, Any]:
        return {"id": self.id, "spec": self.spec, "assessment": self.assessment}


class Rows(Protocol):
    """Designs by their place."""

    def __getitem__(self, place: int, /) -> Ready: ...


def keep(session: Session, places: Mapping[str, int], rows: Rows) -> None:
    """Insert the designs that are missing; safe against concurrent writers. ``places``: of each id among the rows."""
    dialect = postgresql if session.get_bind().dialect.name == "postgresql" else sqlite
    query = dialect.insert(DesignRow).on_conflict_do_nothing().returning(DesignRow.id)
    # In order: two runs must not wait for each other's. A row has some 15 kB.
    for chunk in in_chunks(sorted(places), 100):
        known = set(session.scalars(select(DesignRow.id).where(DesignRow.id.in_(chunk))))
        if missing := {id_: rows[places[id_]] for id_ in chunk if id_ not in known}:
            values = [one.columns for one in missing.values()]
            made = session.scalars(query, values, execution_options={"pended": True})
            pend_salted(session, DesignRow, ((id_, missing[id_].salted) for id_ in made))


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
