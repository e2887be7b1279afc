"""Does the chain hold: every link follows from the one before it, and every row is as it was linked."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from typing import Any

from sqlalchemy import Row, Text, cast, exists, func, select
from sqlalchemy.orm import Session

from tagger.messages import Message
from tagger.store.base import Part
from tagger.store.chain import CHAINED, START, Head, digest_of, head_of, key_column, link_of, model_of
from tagger.store.models import LinkRow, Table
from tagger.store.recorded_texts import first_missing

_STEP = 500  # links at a time; as many values as one statement may name


@dataclass(frozen=True)
class Broken:
    """The first place where the chain does not hold; ``link`` and ``key`` None where there is none to name."""

    why: Message
    link: int | None = None
    table: str | None = None
    key: str | None = None


@dataclass(frozen=True)
class Audited:
    """``rows``: how many rows of each table were held against their links."""

    head: Head
    broken: Broken | None
    rows: dict[str, int]


@dataclass
class _Walk:
    """How far the chain was followed, and what its links have shown so far."""

    at: int = 0
    before: str = START
    rows: Counter[str] = field(default_factory=Counter)


class Audit(Part):
    """The part of the store that audits itself."""

    def head(self) -> Head:
        """The last link of the chain, to be kept where nobody who can write the database can write."""
        with self.reading() as session:
            return head_of(session)

    def audit(self, known: Head | None = None) -> Audited:
        """Follows the chain from its first link and reads every row; nothing is written.

        ``known``: a head that was noted earlier, which must be in the chain still.
        """
        with self.reading() as session:
            return audited(session, known)


def audited(session: Session, known: Head | None) -> Audited:
    """As ``Audit.audit``, in a view that is open."""
    walk = _Walk()
    broken = (
        _follow(session, walk)
        or _past_the_chain(session, walk)
        or _without(session, known)
        or _not_found_any_more(session)
    )
    return Audited(head_of(session), broken, dict(walk.rows))


def _follow(session: Session, walk: _Walk) -> Broken | None:
    while links := _links(session, walk.at):
        for link in links:
            if broken := _wrong_link(walk, link):
                return broken
            walk.at, walk.before = link.id, link.link
        if broken := _wrong_rows(session, walk, links):
            return broken
    return None


def _links(session: Session, after: int) -> Sequence[Row[Any]]:
    chain = LinkRow.__table__
    return session.execute(select(chain).where(chain.c.id > after).order_by(chain.c.id).limit(_STEP)).all()


def _wrong_link(walk: _Walk, link: Row[Any]) -> Broken | None:
    if link.id != walk.at + 1:
        return Broken(Message("store-audit-link-gone", link=walk.at + 1), walk.at + 1)
    if link.link != link_of(walk.before, link.id, link.table_name, link.row_key, link.digest):
        return _broken("store-audit-link-changed", link)
    return None


def _wrong_rows(session: Session, walk: _Walk, links: Sequence[Row[Any]]) -> Broken | None:
    """The first of these links whose row is not as it was linked."""
    there = _rows(session, links)
    for link in links:
        if link.salt is None:
            if not _linked_later(session, link):
                return _broken("store-audit-salt-gone", link)
            continue
        row = there.get((link.table_name, link.row_key))
        if row is None:
            return _broken("store-audit-row-gone", link)
        if digest_of(link.table_name, row, link.salt) != link.digest:
            return _broken("store-audit-row-changed", link)
        walk.rows[link.table_name] += 1
    return None


def _rows(session: Session, links: Sequence[Row[Any]]) -> dict[tuple[str, str], dict[str, Any]]:
    keys: dict[type[Table], list[str]] = defaultdict(list)
    for link in links:
        model = model_of(link.table_name)
        if model is not None and link.salt is not None:
            keys[model].append(link.row_key)
    found: dict[tuple[str, str], dict[str, Any]] = {}
    for model, wanted in keys.items():
        key = key_column(model)
        as_kept = [int(one) if one.isdecimal() else -1 for one in wanted] if _counted(model) else wanted
        for row in session.execute(select(model.__table__).where(key.in_(as_kept))).mappings():
            found[(model.__tablename__, str(row[key.name]))] = dict(row)
    return found


def _linked_later(session: Session, link: Row[Any]) -> bool:
    same = (LinkRow.table == link.table_name, LinkRow.key == link.row_key, LinkRow.id > link.id)
    return bool(session.scalar(select(exists().where(*same))))


def _past_the_chain(session: Session, walk: _Walk) -> Broken | None:
    """A row that no link tells of, or one that two tell of."""
    for model in CHAINED:
        table = model.__tablename__
        count = session.scalar(select(func.count()).select_from(model.__table__)) or 0
        if count == walk.rows[table]:
            continue
        for key in _unlinked(session, model):
            return Broken(Message("store-audit-row-unlinked", table=table, key=key), None, table, key)
        return Broken(Message("store-audit-row-twice", table=table), None, table)
    return None


def _unlinked(session: Session, model: type[Table]) -> Iterator[str]:
    key = key_column(model)
    told = exists().where(LinkRow.table == model.__tablename__, LinkRow.key == cast(key, Text))
    yield from map(str, session.scalars(select(key).where(~told).order_by(key).limit(1)))


def _without(session: Session, known: Head | None) -> Broken | None:
    if known is None or known.links == 0:
        return None
    link = session.get(LinkRow, known.links)
    if link is None or not link.link.startswith(known.digest):
        return Broken(Message("store-audit-head-gone", head=str(known)), known.links)
    return None


def _not_found_any_more(session: Session) -> Broken | None:
    """The list of texts has no links, for it says nothing that the records do not say; but they are found by it."""
    text = first_missing(session)
    if text is None:
        return None
    return Broken(Message("store-audit-text-gone", text=text), None, "recorded_text", text)


def _broken(why: str, link: Row[Any]) -> Broken:
    said = Message(why, link=link.id, table=link.table_name, key=link.row_key)
    return Broken(said, link.id, link.table_name, link.row_key)


def _counted(model: type[Table]) -> bool:
    return key_column(model).type.python_type is int
