"""Specs with what the tables said of them: kept once, however many assemblies share them."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from functools import lru_cache, partial
from typing import Any, NamedTuple, Protocol

from sqlalchemy import select
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.orm import Session

from tagger.code import payload
from tagger.spec import AssemblySpec, TagContent
from tagger.store.base import fingerprint_of, in_chunks
from tagger.store.chain import pend_salted, salted
from tagger.store.models import DesignRow
from tagger.store.texts import ToKeep, Written, members, written, written_with
from tagger.trade.results import IN_COMMON, Assessment, EndAdvice


@dataclass(frozen=True)
class Design:
    spec: AssemblySpec
    assessment: Assessment


_READ: dict[str, Design] = {}  # a design never changes, so what was read once stays true
_MOST = 1_000  # some 80 kB each
_MOST_CONTENTS = 4_000  # some 8 kB each
_PARTS: dict[tuple[int, ...], tuple[object, Written]] = {}
"""Parts of assessments that many have, by the identity of their values, which is theirs as long as they are kept here beside it."""
_MOST_PARTS = 1_000


def as_row(spec: AssemblySpec, assessment: Assessment) -> dict[str, Any]:
    """The row of a design; the same spec and assessment give the same id."""
    return row_of(written(spec.as_dict()), assessment)


def row_of(said: Written, assessment: Assessment) -> dict[str, Any]:
    """The same of a spec that is written already."""
    found = written_with({**assessment.kept_by_itself(), **_parts(assessment)})
    return {"id": fingerprint_of(f"[{said.text}, {found.text}]"), "spec": said, "assessment": found}


def _parts(assessment: Assessment) -> dict[str, Any]:
    """What many assessments have in common: written once."""
    return {
        "end_a": _end(assessment.end_a),
        "end_b": _end(assessment.end_b),
        **{
            name: _once((getattr(assessment, name),), partial(assessment.kept_of, name)) for name in IN_COMMON
        },
    }


def _end(advice: EndAdvice) -> dict[str, Any]:
    """What is said of an end: ends of a kind have all but their figures in common."""
    rest = {name: value for name, value in advice.__dict__.items() if name != "figures"}
    dump = partial(advice.model_dump, mode="json", exclude={"figures"})
    return {"figures": advice.figures, min(rest): _once(tuple(rest.values()), dump)}


def _once(values: tuple[object, ...], dump: Callable[[], dict[str, Any]]) -> Written:
    """Members as they are written, once for all that have the very same values."""
    key = tuple(map(id, values))
    known = _PARTS.get(key)
    if known is None:
        made = members(dump())
        if len(_PARTS) >= _MOST_PARTS:
            _PARTS.clear()
        known = _PARTS[key] = values, made
    return known[1]


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
    found = {id_: known for id_ in wanted if (known := _READ.get(id_)) is not None}
    for chunk in in_chunks(sorted(wanted - found.keys())):
        for row in session.scalars(select(DesignRow).where(DesignRow.id.in_(chunk))):
            found[row.id] = Design(AssemblySpec.read(row.spec), Assessment.model_validate(row.assessment))
            if len(_READ) >= _MOST:
                _READ.clear()
            _READ[row.id] = found[row.id]
    return found


@lru_cache(maxsize=_MOST_CONTENTS)
def content_of(digits: str) -> TagContent:
    """What a tag's symbol says: its digits, which decode alike for ever."""
    return payload.decode(digits)
