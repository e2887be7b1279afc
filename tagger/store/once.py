"""Doing something once, however often it is asked for.

A caller whose line breaks cannot know whether its request was done. It sends it again with the same
key: then what was answered the first time is answered again. The key, the fingerprint of the
request and the answer are written in the transaction of the act itself, so a process that dies
leaves both or neither.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from sqlalchemy import Connection
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.orm import Session

from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.store.base import Part
from tagger.store.models import AnswerRow

MAX_KEY = 120


class KeyUsed(StoreError):
    """A key that was used before, for another request."""


class Once(Part):
    """The part of the store that remembers what it has answered."""

    def once(self, key: str, fingerprint: str, act: Callable[[], dict[str, Any]]) -> dict[str, Any]:
        """What ``act`` answers, as plain JSON values; for a key used before, what it answered then.

        All that ``act`` writes through this store is one transaction with the key. Of two at once
        with one key, the second waits for the first, and then has its answer, or, where that
        failed, does the act itself. An act that raises keeps nothing: its key may be used again.
        ``fingerprint``: at most 64 characters that are equal for equal requests. Raises KeyUsed.
        """
        if not 1 <= len(key) <= MAX_KEY:
            raise StoreError(Problem("key", key, Message("store-key-length", most=MAX_KEY)))

        def kept(session: Session) -> dict[str, Any]:
            row = {"key": key, "fingerprint": fingerprint, "answer": {}, "at": self.now()}
            if not _claimed(session.connection(), row):
                return _same(session.get_one(AnswerRow, key), fingerprint)
            answer = act()
            session.get_one(AnswerRow, key).answer = answer
            return answer

        return self.act(kept)

    def answered(self, key: str, fingerprint: str) -> dict[str, Any] | None:
        """What was answered to this request before, or None. Raises KeyUsed."""
        with self.reading() as session:
            row = session.get(AnswerRow, key)
            return None if row is None else _same(row, fingerprint)


def _same(row: AnswerRow, fingerprint: str) -> dict[str, Any]:
    if row.fingerprint != fingerprint:
        raise KeyUsed(Problem("key", None, Message("store-key-of-other", what="request")))
    return row.answer


def _claimed(connection: Connection, row: dict[str, Any]) -> bool:
    """Whether the key was free. Another transaction that holds it is waited for by the database."""
    dialect = postgresql if connection.dialect.name == "postgresql" else sqlite
    claim = dialect.insert(AnswerRow).values(row).on_conflict_do_nothing().returning(AnswerRow.key)
    return connection.execute(claim).first() is not None
