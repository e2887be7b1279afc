"""A second thing to sign in with: codes of a phone, and recovery codes for when it is lost; and known browsers.

How a code follows from the secret is the web application's business; here a secret is a text and a code's step a number.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import timedelta

from sqlalchemy import delete, select, update
from sqlalchemy.engine import CursorResult

from tagger.store.base import Part, hashed
from tagger.store.models import KnownBrowserRow, PersonRow, RecoveryCodeRow, SessionRow
from tagger.store.own_account import Noted, note

BROWSER_KNOWN = timedelta(days=180)
"""How long a browser is known after the last time somebody signed in there."""


class SecondFactor(Part):
    """The part of the store for what is asked beside a password."""

    def ask_codes(self, person: int, secret: str, *, step: int, recovery: Iterable[str]) -> None:
        """From now on a code is asked for. ``step``: that of the code which was just given; it is used up."""
        with self.writing() as session:
            kept = update(PersonRow).where(PersonRow.id == person)
            session.execute(kept.values(code_secret=secret, code_step=step))
            session.execute(delete(RecoveryCodeRow).where(RecoveryCodeRow.person_id == person))
            session.add_all(RecoveryCodeRow(hash=hashed(code), person_id=person) for code in recovery)
            note(session, person, Noted.CODES_ON, self.now())

    def ask_no_codes(self, person: int, *, by: str | None = None) -> None:
        """From now on the password alone will do. ``by``: who does it, where that is somebody else; that ends the
        person's sessions."""
        with self.writing() as session:
            if by is not None:
                session.execute(delete(SessionRow).where(SessionRow.person_id == person))
            note(session, person, Noted.CODES_OFF, self.now(), by=by)
            session.execute(update(PersonRow).where(PersonRow.id == person).values(code_secret=None))
            session.execute(delete(RecoveryCodeRow).where(RecoveryCodeRow.person_id == person))

    def code_secret(self, person: int) -> str | None:
        """What this person's codes are made from; None where none is asked for."""
        with self.reading() as session:
            return session.scalar(select(PersonRow.code_secret).where(PersonRow.id == person))

    def use_step(self, person: int, step: int) -> bool:
        """Whether a code of this step is good: it is newer than the last one, and is used up now."""
        with self.writing() as session:
            newer = update(PersonRow).where(PersonRow.id == person, PersonRow.code_step < step)
            done = session.execute(newer.values(code_step=step))
            return isinstance(done, CursorResult) and done.rowcount == 1

    def use_recovery_code(self, person: int, code: str) -> bool:
        """Whether it is one of this person's; it is used up now."""
        with self.writing() as session:
            one = delete(RecoveryCodeRow).where(
                RecoveryCodeRow.person_id == person, RecoveryCodeRow.hash == hashed(code)
            )
            done = session.execute(one)
            used = isinstance(done, CursorResult) and done.rowcount == 1
            if used:
                note(session, person, Noted.RECOVERY_CODE, self.now())
            return used

    def know_browser(self, browser: str, person: int) -> None:
        """This person has signed in at the browser that holds this cookie."""
        with self.writing() as session:
            session.execute(delete(KnownBrowserRow).where(KnownBrowserRow.at < self.now() - BROWSER_KNOWN))
            session.merge(KnownBrowserRow(hash=hashed(browser), person_id=person, at=self.now()))

    def knows_browser(self, browser: str, person: int | None = None) -> bool:
        """Whether this person, or anybody, has signed in there before."""
        wanted = select(KnownBrowserRow.hash).where(
            KnownBrowserRow.hash == hashed(browser), KnownBrowserRow.at > self.now() - BROWSER_KNOWN
        )
        if person is not None:
            wanted = wanted.where(KnownBrowserRow.person_id == person)
        with self.reading() as session:
            return session.scalar(wanted.limit(1)) is not None
