"""Who may sign in, with which role; their sessions, and the tokens of devices.

Secrets are kept as hashes only. How a password is hashed is the web application's business; here
a password hash is a string. Cookies and tokens are random and long, so one SHA-256 is enough.
"""

from __future__ import annotations

import secrets
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum
from typing import Final

from sqlalchemy import delete, func, select, update
from sqlalchemy.orm import Session

from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.store.base import Part, hashed
from tagger.store.folding import fold, folded
from tagger.store.locks import Turn, take
from tagger.store.models import KnownBrowserRow, PersonRow, SessionRow, SignInCodeRow, TokenRow
from tagger.store.own_account import Noted, note

CODE_LASTS: Final = timedelta(days=1)
"""How long the one-time code of the first start is good; each start makes another."""


class Role(StrEnum):
    """Each role may do all that the ones before it may. ``device``: reads tags and prints them, and no more."""

    DEVICE = "device"
    BUILDER = "builder"
    COUNTER = "counter"
    MANAGER = "manager"

    def may(self, needed: Role) -> bool:
        """Whether this role is ``needed`` or above it."""
        order = list(Role)
        return order.index(self) >= order.index(needed)


@dataclass(frozen=True)
class Person:
    id: int
    name: str
    role: Role
    active: bool
    password_hash: str
    asks_code: bool = False  # of a phone, beside the password
    untold: bool = False  # something happened to the account that they have not seen


@dataclass(frozen=True)
class SignedIn:
    """A person at a browser; ``csrf`` must come back with every form."""

    person: Person
    csrf: str
    expires_at: datetime
    seen_at: datetime


@dataclass(frozen=True)
class Token:
    """A device's token, without the token itself."""

    id: int
    name: str
    role: Role
    created_at: datetime
    created_by: str | None
    revoked_at: datetime | None


class People(Part):
    """The part of the store that knows who is who."""

    def make_first_code(self) -> str | None:
        """Return a one-time code for creating the manager account; None when there is a person already."""
        with self.writing() as session:
            take(session, Turn.PEOPLE)
            if session.scalar(select(func.count()).select_from(PersonRow)):
                return None
            code = secrets.token_hex(5).upper()
            session.add(SignInCodeRow(hash=hashed(code), created_at=self.now()))
            return code

    def make_first_manager(self, code: str, name: str, password_hash: str) -> Person:
        """Uses the one-time code up. Raises StoreError for a wrong code, one of yesterday, or a second try."""
        with self.writing() as session:
            take(session, Turn.PEOPLE)
            known = session.get(SignInCodeRow, hashed(code.strip().upper()))
            late = known is not None and known.created_at < self.now() - CODE_LASTS
            if known is None or late or session.scalar(select(func.count()).select_from(PersonRow)):
                raise StoreError(Problem("code", None, Message("store-code-wrong")))
            session.execute(delete(SignInCodeRow))
            return self._add(session, name, password_hash, Role.MANAGER)

    def add_person(self, name: str, password_hash: str, role: Role) -> Person:
        """Raises StoreError for a name that is taken or empty."""
        with self.writing() as session:
            return self._add(session, name, password_hash, role)

    def _add(self, session: Session, name: str, password_hash: str, role: Role) -> Person:
        name = " ".join(name.split())
        if not 1 <= len(name) <= 80:
            raise StoreError(Problem("name", name, Message("store-name-length", most=80)))
        take(session, Turn.PEOPLE)
        if _by_name(session, name) is not None:
            raise StoreError(Problem("name", name, Message("store-name-used", name=name)))
        row = PersonRow(
            name=name, password_hash=password_hash, role=str(role), active=True, created_at=self.now()
        )
        session.add(row)
        session.flush()
        return _person(row)

    def person(self, name: str) -> Person | None:
        """Whoever has this name, in any case."""
        with self.reading() as session:
            row = _by_name(session, " ".join(name.split()))
            return None if row is None else _person(row)

    def people(self) -> list[Person]:
        """Everybody, by name."""
        with self.reading() as session:
            return [_person(row) for row in session.scalars(select(PersonRow).order_by(PersonRow.name))]

    def person_by_id(self, person: int) -> Person:
        """Raises StoreError for one not known here."""
        with self.reading() as session:
            return _person(_known(session, person))

    def change_person(
        self,
        person: int,
        *,
        role: Role | None = None,
        active: bool | None = None,
        password_hash: str | None = None,
        by: str | None = None,
    ) -> Person:
        """Changes what is given, and ends the person's sessions. The last manager stays one.

        ``by``: who does it, where that is somebody else: the person is told. With a new password, or blocked, no browser is known as theirs any more.
        """
        with self.writing() as session:
            take(session, Turn.PEOPLE)
            row = _known(session, person)
            managers = select(func.count()).where(PersonRow.role == str(Role.MANAGER), PersonRow.active)
            before = session.scalar(managers)
            if role is not None and str(role) != row.role:
                row.role = str(role)
                note(session, person, Noted.ROLE, self.now(), by=by)
            row.active = active if active is not None else row.active
            if password_hash:
                row.password_hash = password_hash
                note(session, person, Noted.PASSWORD, self.now(), by=by)
            session.flush()
            if before and not session.scalar(managers):
                raise StoreError(Problem("role", None, Message("store-last-manager")))
            session.execute(delete(SessionRow).where(SessionRow.person_id == person))
            if password_hash is not None or active is False:
                session.execute(delete(KnownBrowserRow).where(KnownBrowserRow.person_id == person))
            return _person(row)

    def renew_hash(self, person: int, password_hash: str) -> Person:
        """The same password, hashed anew; nothing else changes."""
        with self.writing() as session:
            row = _known(session, person)
            row.password_hash = password_hash
            return _person(row)

    def sign_in(
        self,
        person: int,
        hours: float,
        *,
        awaits_code: bool = False,
        address: str | None = None,
        phone: bool | None = None,
    ) -> str:
        """What the browser's cookie holds from now on. ``awaits_code``: it opens nothing yet.

        ``address``, ``phone``: from where, and by what, for the list of one's own sessions.
        """
        cookie, now = secrets.token_urlsafe(32), self.now()
        with self.writing() as session:
            session.execute(delete(SessionRow).where(SessionRow.expires_at < now))
            session.add(
                SessionRow(
                    id=hashed(cookie),
                    person_id=person,
                    csrf=secrets.token_urlsafe(24),
                    created_at=now,
                    expires_at=now + timedelta(hours=hours),
                    seen_at=now,
                    awaits_code=awaits_code,
                    address=address,
                    phone=phone,
                )
            )
        return cookie

    def signed_in(
        self, cookie: str, *, awaits_code: bool = False, idle: timedelta | None = None
    ) -> SignedIn | None:
        """Who holds this cookie; None when it has ended, or the person may not sign in any more.

        ``awaits_code``: who still has to give a code, instead of who has. ``idle``: how long a session lasts in
        which nothing is asked for.
        """
        with self.reading() as session:
            row = session.get(SessionRow, hashed(cookie))
            now = self.now()
            if row is None or row.expires_at <= now or row.awaits_code is not awaits_code:
                return None
            if idle is not None and (row.seen_at or row.created_at) + idle <= now:
                return None
            person = session.get(PersonRow, row.person_id)
            if person is None or not person.active:
                return None
            return SignedIn(_person(person), row.csrf, row.expires_at, row.seen_at or row.created_at)

    def seen(self, cookie: str) -> None:
        """Something was asked for in this session."""
        with self.writing() as session:
            known = update(SessionRow).where(SessionRow.id == hashed(cookie))
            session.execute(known.values(seen_at=self.now()))

    def sign_out(self, cookie: str) -> None:
        with self.writing() as session:
            session.execute(delete(SessionRow).where(SessionRow.id == hashed(cookie)))

    def sign_out_everywhere(self, person: int) -> None:
        """Ends every session of one person."""
        with self.writing() as session:
            session.execute(delete(SessionRow).where(SessionRow.person_id == person))

    def make_token(
        self, name: str, role: Role, *, by: str | None = None, secret: str | None = None
    ) -> tuple[Token, str]:
        """A new device's token, and the text to put into the device: it is shown this once.

        ``secret``: that text where the caller has made it, by default a random one.
        """
        secret = secret or "tag_" + secrets.token_urlsafe(32)
        if not 1 <= len(name.strip()) <= 80:
            raise StoreError(Problem("name", name, Message("store-name-length", most=80)))
        with self.writing() as session:
            row = TokenRow(
                hash=hashed(secret), name=name.strip(), role=str(role), created_at=self.now(), created_by=by
            )
            session.add(row)
            session.flush()
            return _token(row), secret

    def token(self, secret: str) -> Token | None:
        """The device that holds this token; None when there is none, or it is revoked."""
        with self.reading() as session:
            row = session.scalar(select(TokenRow).where(TokenRow.hash == hashed(secret)))
            return None if row is None or row.revoked_at is not None else _token(row)

    def tokens(self) -> list[Token]:
        with self.reading() as session:
            return [_token(row) for row in session.scalars(select(TokenRow).order_by(TokenRow.id))]

    def revoke_token(self, token: int) -> Token:
        """From now on the device is refused."""
        with self.writing() as session:
            row = session.get(TokenRow, token)
            if row is None:
                raise StoreError(Problem("token", token, Message("store-token-not-found", token=token)))
            row.revoked_at = row.revoked_at or self.now()
            return _token(row)


def _known(session: Session, person: int) -> PersonRow:
    row = session.get(PersonRow, person)
    if row is None:
        raise StoreError(Problem("person", person, Message("store-person-not-found", person=person)))
    return row


def _by_name(session: Session, name: str) -> PersonRow | None:
    return session.scalar(select(PersonRow).where(folded(PersonRow.name) == fold(name)))


def _person(row: PersonRow) -> Person:
    asks_code = row.code_secret is not None
    return Person(row.id, row.name, Role(row.role), row.active, row.password_hash, asks_code, row.untold)


def _token(row: TokenRow) -> Token:
    return Token(row.id, row.name, Role(row.role), row.created_at, row.created_by, row.revoked_at)
