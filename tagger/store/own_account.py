"""What somebody is told of their own account: where it is signed in, and what was changed of how one signs in."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum
from typing import Final

from sqlalchemy import delete, select, update
from sqlalchemy.orm import Session

from tagger.store.base import Part, hashed
from tagger.store.models import AccountNoteRow, PersonRow, SessionRow

NOTES_KEPT: Final = timedelta(days=180)


class Noted(StrEnum):
    """What happened to an account."""

    PASSWORD = "password"
    ROLE = "role"
    CODES_ON = "codes-on"
    CODES_OFF = "codes-off"
    RECOVERY_CODE = "recovery-code"  # one was used
    CODE_AGAIN = "repeated-code"  # a code of the phone was given twice, and refused
    NEW_BROWSER = "new-browser"  # somebody signed in where this person had not before


@dataclass(frozen=True)
class AccountNote:
    """``by``: who did it, where that is somebody else; ``address``: from where, where that is known."""

    at: datetime
    what: Noted
    by: str | None
    address: str | None


@dataclass(frozen=True)
class OpenSession:
    """A browser that is signed in. ``phone``: whether it says that it is one; None where it was not asked."""

    id: str
    since: datetime
    seen_at: datetime
    address: str | None
    phone: bool | None


def note(
    session: Session,
    person: int,
    what: Noted,
    now: datetime,
    *,
    by: str | None = None,
    address: str | None = None,
) -> None:
    """Keeps what happened; the person is told on every page until they say that they know."""
    session.execute(delete(AccountNoteRow).where(AccountNoteRow.at < now - NOTES_KEPT))
    session.add(AccountNoteRow(person_id=person, at=now, what=str(what), by=by, address=address))
    if what is not Noted.NEW_BROWSER:
        session.execute(update(PersonRow).where(PersonRow.id == person).values(untold=True))


class OwnAccount(Part):
    """The part of the store for one's own account."""

    def note(self, person: int, what: Noted, *, by: str | None = None, address: str | None = None) -> None:
        """Keeps what happened to somebody's account."""
        with self.writing() as session:
            note(session, person, what, self.now(), by=by, address=address)

    def account_notes(self, person: int, most: int = 20) -> list[AccountNote]:
        """What happened to an account, the latest first."""
        latest = select(AccountNoteRow).where(AccountNoteRow.person_id == person)
        with self.reading() as session:
            rows = session.scalars(latest.order_by(AccountNoteRow.id.desc()).limit(most))
            return [AccountNote(row.at, Noted(row.what), row.by, row.address) for row in rows]

    def told(self, person: int) -> None:
        """The person has seen what happened."""
        with self.writing() as session:
            session.execute(update(PersonRow).where(PersonRow.id == person).values(untold=False))

    def open_sessions(self, person: int, *, idle: timedelta) -> list[OpenSession]:
        """Where this person is signed in, the latest used first. ``idle``: see ``signed_in``."""
        now = self.now()
        theirs = select(SessionRow).where(
            SessionRow.person_id == person, SessionRow.expires_at > now, ~SessionRow.awaits_code
        )
        with self.reading() as session:
            rows = [
                OpenSession(row.id, row.created_at, row.seen_at or row.created_at, row.address, row.phone)
                for row in session.scalars(theirs)
            ]
        used = [row for row in rows if row.seen_at + idle > now]
        return sorted(used, key=lambda row: row.seen_at, reverse=True)

    def end_session(self, person: int, session_id: str) -> None:
        """Ends one of this person's sessions; one of somebody else's is not touched."""
        one = delete(SessionRow).where(SessionRow.id == session_id, SessionRow.person_id == person)
        with self.writing() as session:
            session.execute(one)

    def end_other_sessions(self, person: int, cookie: str) -> None:
        """Ends all of this person's sessions but the one that holds this cookie."""
        others = delete(SessionRow).where(SessionRow.person_id == person, SessionRow.id != hashed(cookie))
        with self.writing() as session:
            session.execute(others)
