"""The chain over what is recorded: a link for each row that was written or changed, none ever taken out.

A link holds a digest of its row with a salt, and a digest of that and of the link before it. So a row
that was changed, deleted, put in another's place or slipped in past the program is found
(``audit.py``), and who knows the last link, the head, finds that links were cut off after it.

A row that is changed by the program, such as a withdrawal that is lifted or a contact that is erased,
gets a new link; the salt of its older one is thrown away, after which nobody can tell from the older
digest what the row held, and the chain is whole all the same.
"""

from __future__ import annotations

import hashlib
import os
import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime
from itertools import islice
from json.encoder import encode_basestring
from typing import Any, Final, NamedTuple

from sqlalchemy import Column, Connection, event, inspect, select, update
from sqlalchemy.orm import ORMExecuteState, Session

from tagger.store.locks import Turn, take
from tagger.store.models import (
    AssemblyRow,
    CrimpRow,
    DesignRow,
    EventRow,
    FittingRow,
    FormerLotRow,
    LinkRow,
    OrderEventRow,
    OrderRow,
    ShopRowRow,
    Table,
    VoidRow,
    WithdrawalRow,
)
from tagger.store.texts import Written, as_digested, whole

CHAINED: Final[tuple[type[Table], ...]] = (
    DesignRow, AssemblyRow, EventRow, FormerLotRow, VoidRow, WithdrawalRow, OrderRow, OrderEventRow, CrimpRow,
    FittingRow, ShopRowRow,
)  # fmt: skip
UNCHAINED_COLUMNS: Final = {"order_request": frozenset({"state"})}
"""Columns that say again what other rows say: an order request's state is that of its last step."""
START: Final = "0" * 64
"""What the first link names as the one before it."""
_BY_NAME: Final = {row.__tablename__: row for row in CHAINED}
_HEAD: Final = re.compile(r"\s*(\d{1,18})\s*:\s*([0-9a-f]{16,64})\s*", re.IGNORECASE)
_AS_IT_IS: Final = frozenset((str, int, bool, type(None)))
_SALT: Final = 16  # bytes
_AT_ONCE: Final = 1000  # links of a statement
_CHAIN: Final = Table.metadata.tables[LinkRow.__tablename__]


@dataclass(frozen=True)
class Head:
    """How many links there are, and the digest of the last one in hexadecimal.

    >>> str(Head.read("12:" + "AB" * 32)) == "12:" + "ab" * 32
    True
    """

    links: int
    digest: str

    def __str__(self) -> str:
        return f"{self.links}:{self.digest}"

    @property
    def short(self) -> str:
        """As it stands on paper; the digits that are left out add nothing against a forger."""
        return f"{self.links}:{self.digest[:32]}"

    @classmethod
    def read(cls, text: str) -> Head | None:
        """A head as it is written, with at least 16 digits of its digest; None for any other text."""
        found = _HEAD.fullmatch(text)
        return cls(int(found[1]), found[2].lower()) if found else None


class _Salted(NamedTuple):
    """A row that was written past the unit of work: its salt, and its digest with it."""

    table: str
    key: str
    salted: bytes


class Recording(Session):
    """A session that notes which chained rows it writes, and links them at its end (``link_pending``)."""


def model_of(table: str) -> type[Table] | None:
    """The model of a chained table; None for another."""
    return _BY_NAME.get(table)


def digest_of(table: str, values: Mapping[str, Any], salt: str) -> str:
    """The digest of a row with its salt, in hexadecimal.

    An empty column counts as none, so that a column added later, empty in old rows, changes no digest.
    """
    return _digest(table, values, bytes.fromhex(salt)).hex()


def _digest(table: str, values: Mapping[str, Any], salt: bytes) -> bytes:
    left_out = UNCHAINED_COLUMNS.get(table, frozenset())
    kept = {
        name: _digested(value) for name, value in values.items() if value is not None and name not in left_out
    }
    columns = ",".join([f"{encode_basestring(name)}:{kept[name]}" for name in sorted(kept)])
    text = f"[{as_digested(table)},{{{columns}}}]"
    return hashlib.sha256(salt + text.encode()).digest()


def _digested(value: Any) -> str:
    if type(value) is str:  # as most are
        return encode_basestring(value)
    return "".join(value.digested) if type(value) is Written else as_digested(_plain(value))


def link_of(before: str, id: int, table: str, key: str, digest: str) -> str:
    """The digest of a link; ``before``: that of the link before it."""
    return hashlib.sha256(f"{before}\n{id}\n{table}\n{key}\n{digest}".encode()).hexdigest()


def links_after(head: Head, rows: Iterable[tuple[str, str, bytes]]) -> Iterator[dict[str, Any]]:
    """The links that follow ``head``, as rows of the chain, of rows by table, key, and salt with digest."""
    id, before = head.links, head.digest
    for table, key, salted in rows:
        id, salt, digest = id + 1, salted[:_SALT].hex(), salted[_SALT:].hex()
        before = link_of(before, id, table, key, digest)
        yield {"id": id, "table_name": table, "row_key": key, "salt": salt, "digest": digest, "link": before}


def head_of(where: Session | Connection) -> Head:
    """The last link. Whoever goes on from it has taken the turn of history."""
    last = where.execute(select(LinkRow.id, LinkRow.link).order_by(LinkRow.id.desc()).limit(1)).first()
    return Head(last.id, last.link) if last else Head(0, START)


def pend(session: Session, row: type[Table], values: Sequence[Mapping[str, Any]]) -> None:
    """Notes rows that are written many at a time, past the unit of work, with all their values.

    Their digests are taken at once, so that a long run holds none of its rows until it ends.
    """
    table = row.__tablename__
    pend_salted(session, row, ((_key_of(row, one), salted(table, one)) for one in values))


def pend_salted(session: Session, row: type[Table], keyed: Iterable[tuple[str, bytes]]) -> None:
    """The same of rows whose digests are taken already (``salted``), by their keys."""
    table = row.__tablename__
    _pending(session).extend(_Salted(table, key, digest) for key, digest in keyed)


def pending(session: Session) -> int:
    """How many rows are noted, so that those of an act that failed can be forgotten (``forget``)."""
    return len(_pending(session))


def forget(session: Session, after: int) -> None:
    """Forgets the rows that were noted since there were ``after``."""
    del _pending(session)[after:]


def link_pending(session: Session) -> None:
    """Writes the links of all that this transaction wrote; the last thing before it ends."""
    session.flush()
    noted = _pending(session)
    if not noted:
        return
    rows: dict[tuple[str, str], bytes] = {}  # as each was written last
    again: set[tuple[str, str]] = set()
    noted.reverse()
    while noted:  # a long run has many: none is held twice
        one = noted.pop()
        if isinstance(one, Table):
            values = _values_of(one)
            name = (one.__tablename__, _key_of(type(one), values))
            rows[name] = salted(one.__tablename__, values)
            if one not in _new(session):
                again.add(name)
        else:
            rows[one.table, one.key] = one.salted
    take(session, Turn.EVENTS)
    for table, key in again:
        older = update(LinkRow).where(LinkRow.table == table, LinkRow.key == key, LinkRow.salt.is_not(None))
        session.execute(older.values(salt=None))
    links = links_after(head_of(session), ((*name, last) for name, last in rows.items()))
    while some := list(islice(links, _AT_ONCE)):
        session.execute(_CHAIN.insert(), some)
    _new(session).clear()


def key_column(model: type[Table]) -> Column[Any]:
    """The column that names a row of a chained table: each has one."""
    table = model.metadata.tables[model.__tablename__]
    [key] = table.primary_key.columns
    return key


def _pending(session: Session) -> list[Table | _Salted]:
    found: list[Table | _Salted] = session.info.setdefault("chain.pending", [])
    return found


def _new(session: Session) -> set[Table]:
    """The rows that this transaction added: they have no older link."""
    found: set[Table] = session.info.setdefault("chain.new", set())
    return found


def salted(table: str, values: Mapping[str, Any]) -> bytes:
    """A new salt, and the digest of a row with it."""
    salt = os.urandom(_SALT)
    return salt + _digest(table, values, salt)


def _values_of(row: Table) -> dict[str, Any]:
    mapper = inspect(type(row))
    return {column.name: getattr(row, mapper.get_property_by_column(column).key) for column in mapper.columns}


def _key_of(model: type[Table], values: Mapping[str, Any]) -> str:
    return str(values[key_column(model).name])


def _plain(value: Any) -> Any:
    """The same for what is written and for what either database gives back: PostgreSQL knows one kind of
    number in JSON, SQLite forgets the zone of a moment."""
    if type(value) in _AS_IT_IS:
        return value
    if isinstance(value, float):
        return whole(value)
    if isinstance(value, datetime):
        return (value.replace(tzinfo=UTC) if value.tzinfo is None else value.astimezone(UTC)).isoformat()
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, Mapping):
        return {str(name): _plain(one) for name, one in value.items()}
    if isinstance(value, list | tuple):
        return [_plain(one) for one in value]
    return value


@event.listens_for(Recording, "after_flush")
def _note(session: Session, _: Any) -> None:
    """Notes the chained rows that the unit of work has written."""
    for row in session.new:
        if isinstance(row, CHAINED):
            _pending(session).append(row)
            _new(session).add(row)
    _pending(session).extend(row for row in session.dirty if isinstance(row, CHAINED) and _is_changed(row))


def _is_changed(row: Table) -> bool:
    """Whether a chained row differs in a column that is."""
    left_out, attributes = UNCHAINED_COLUMNS.get(row.__tablename__, frozenset()), inspect(row).attrs
    return any(one.history.has_changes() for one in attributes if one.key not in left_out)


@event.listens_for(Recording, "do_orm_execute")
def _refuse_unnoted(state: ORMExecuteState) -> None:
    """A chained table is written through the unit of work, or with ``pend``: nothing goes past the chain."""
    if not (state.is_insert or state.is_update or state.is_delete):
        return
    mapper = state.bind_mapper
    if mapper and mapper.class_ in CHAINED and not state.execution_options.get("pended"):
        raise RuntimeError(f"{mapper.class_.__name__} is written past the chain: see tagger/store/chain.py")
