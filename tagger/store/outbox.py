"""What is to be told to others: written with the thing itself, kept until it is delivered.

A message is written in the same transaction as what it tells of, so that neither exists without
the other. Whoever delivers takes messages for a while (``claim``); a deliverer that dies gives
them back by that time running out. Delivery is therefore at least once: each message has an id.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any, Literal

from sqlalchemy import select
from sqlalchemy.orm import Session

from tagger.store.base import Part
from tagger.store.models import MessageRow
from tagger.store.texts import clean

Channel = Literal["webhook", "email"]
LEASE = timedelta(minutes=5)  # an e-mail takes a dozen steps, of 15 seconds at most each
_LONGEST = timedelta(hours=6)


@dataclass(frozen=True)
class Target:
    """Where to tell of order requests: a web address, or an email address, perhaps the customer's own."""

    channel: Channel
    address: str
    to_customer: bool = False


@dataclass(frozen=True)
class Message:
    """One message; ``attempts`` counts those before this one."""

    id: int
    channel: Channel
    target: str
    body: dict[str, Any]
    created_at: datetime
    attempts: int
    next_at: datetime
    delivered_at: datetime | None
    last_error: str | None


class Outbox(Part):
    """The part of the store that holds messages until they are delivered."""

    announce: tuple[Target, ...] = ()
    """Recipients of order notifications; set when the store is opened."""

    def tell(self, session: Session, body: dict[str, Any], also: Sequence[Target] = ()) -> None:
        """Writes a message to everyone who is told, in a transaction already open."""
        now = self.now()
        targets = {(target.channel, target.address): target for target in (*also, *self.announce)}
        for target in targets.values():
            told = body | {"to": "customer"} if target.to_customer else body
            session.add(
                MessageRow(
                    channel=target.channel,
                    target=target.address,
                    body=told,
                    created_at=now,
                    attempts=0,
                    next_at=now,
                )
            )

    def claim(self) -> Message | None:
        """One message that is due, for this caller alone until LEASE has passed; None when there is none."""
        now = self.now()
        waiting = (MessageRow.delivered_at.is_(None), MessageRow.next_at <= now)
        with self.reading() as session:  # a look costs other writers nothing
            if session.scalar(select(MessageRow.id).where(*waiting).limit(1)) is None:
                return None
        due = select(MessageRow).where(*waiting).order_by(MessageRow.next_at, MessageRow.id).limit(1)
        with self.writing() as session:
            row = session.scalar(due.with_for_update(skip_locked=True))
            if row is None:
                return None
            found = _value(row)
            row.next_at = now + LEASE
            row.attempts += 1
            return found

    def delivered(self, message: int) -> None:
        """It has arrived."""
        with self.writing() as session:
            row = session.get_one(MessageRow, message)
            row.delivered_at, row.last_error = self.now(), None

    def failed(self, message: int, why: str) -> None:
        """It has not: it is tried again, after longer and longer, at most six hours."""
        with self.writing() as session:
            row = session.get_one(MessageRow, message)
            wait = min(timedelta(seconds=5) * 2 ** min(row.attempts, 20), _LONGEST)
            row.next_at, row.last_error = self.now() + wait, clean(why)[:500]

    def undelivered(self) -> list[Message]:
        """What still waits, oldest first."""
        query = select(MessageRow).where(MessageRow.delivered_at.is_(None)).order_by(MessageRow.id)
        with self.reading() as session:
            return [_value(row) for row in session.scalars(query)]


def _value(row: MessageRow) -> Message:
    channel: Channel = "email" if row.channel == "email" else "webhook"
    return Message(
        row.id,
        channel,
        row.target,
        row.body,
        row.created_at,
        row.attempts,
        row.next_at,
        row.delivered_at,
        row.last_error,
    )
