"""People and devices: who may sign in, with which role; and the tokens that programs send.

Only a token of the role manager may do any of this, and it can make nothing above its own role. A
person's own password is changed by the person, signed in, who must give the old one: a device has
neither. A manager's token may give a new one to somebody who has forgotten theirs.
"""

from __future__ import annotations

import base64
import hashlib
import hmac
import secrets
from datetime import datetime
from typing import Annotated

from fastapi import APIRouter, Request
from pydantic import BeforeValidator, Field, SecretStr

from api.rest.once import DoOnce
from api.rest.problem import RESPONSES, RoleTooLow, there
from api.rest.shared import Answer, AsManager, Id, Request_, TheStore
from api.web import passphrases
from api.web.identity import bearer, hash_password
from api.web.security_log import tell
from api.web.state import settings_of
from tagger.errors import Problem, StoreError, TaggerError
from tagger.messages import Message
from tagger.store import Person, Role, Token

router = APIRouter(responses=RESPONSES)


def _as_typed(value: object) -> object:
    """Its blanks are part of it: signing in takes none away."""
    return SecretStr(value) if isinstance(value, str) else value


Password = Annotated[
    SecretStr,
    BeforeValidator(_as_typed),
    Field(
        max_length=passphrases.MOST,
        description="At least 12 characters, and none of the commonest passwords.",
    ),
]


class PersonOut(Answer):
    """``active``: whether they may sign in."""

    id: int
    name: str
    role: Role
    active: bool

    @classmethod
    def of(cls, item: Person) -> PersonOut:
        return cls(id=item.id, name=item.name, role=item.role, active=item.active)


class PersonIn(Request_):
    name: str
    role: Role
    password: Password


class PersonChange(Request_):
    """What is to change; whatever it is, all of that person's sessions end."""

    role: Role | None = None
    active: bool | None = None
    password: Password | None = None


class TokenOut(Answer):
    id: int
    name: str
    role: Role
    created_at: datetime
    created_by: str | None
    revoked_at: datetime | None

    @classmethod
    def of(cls, item: Token) -> TokenOut:
        return cls(**vars(item))


class TokenIn(Request_):
    name: str
    role: Role


class TokenMade(Answer):
    """``token`` is what the device sends from now on. It is kept nowhere: this answer alone has it."""

    device: TokenOut
    token: str


class _Kept(Answer):
    """What is stored of TokenMade: only the caller, who has the ``salt``, can derive the token again."""

    device: TokenOut
    salt: str


@router.get("/people", tags=["people"], summary="List all users, active and blocked, by name")
def people(store: TheStore, token: AsManager) -> list[PersonOut]:
    return [PersonOut.of(item) for item in store.people()]


@router.get("/people/{person}", tags=["people"], summary="Get a user")
def one_person(store: TheStore, token: AsManager, person: Id) -> PersonOut:
    try:
        return PersonOut.of(store.person_by_id(person))
    except TaggerError as error:
        raise there(error) from None


@router.post("/people", status_code=201, tags=["people"], summary="Add a user")
def add_person(
    request: Request, store: TheStore, token: AsManager, body: PersonIn, once: DoOnce
) -> PersonOut:
    _refuse_above(token, body.role)
    shop = settings_of(request).shop_name
    made = once.prepared(
        PersonOut,
        lambda: hash_password(body.password.get_secret_value(), body.name, shop),
        lambda hashed: PersonOut.of(store.add_person(body.name, hashed, body.role)),
    )
    tell(request, "person-added", person=made.name, by=token.name, role=str(made.role))
    return made


@router.patch("/people/{person}", tags=["people"], summary="Change role or password; block or unblock")
def change_person(
    request: Request, store: TheStore, token: AsManager, person: Id, body: PersonChange
) -> PersonOut:
    known = one_person(store, token, person)
    if body == PersonChange():
        raise StoreError(Problem("body", None, Message("rest-nothing-to-change")))
    _refuse_above(token, body.role or known.role)
    hashed = None
    if body.password is not None:
        own = known.name, settings_of(request).shop_name
        hashed = hash_password(body.password.get_secret_value(), *own)
    changed = store.change_person(
        person, role=body.role, active=body.active, password_hash=hashed, by=token.name
    )
    what = " ".join(
        f"{name} {value}" if name != "password" else name
        for name, value in body.model_dump(mode="json", exclude_none=True).items()
    )
    tell(request, "person-changed", person=known.name, by=token.name, change=what)
    return PersonOut.of(changed)


@router.post("/people/{person}/sign-out", tags=["people"], summary="End all sessions of a user")
def sign_out(store: TheStore, token: AsManager, person: Id, once: DoOnce) -> PersonOut:
    known = one_person(store, token, person)

    def act() -> PersonOut:
        store.sign_out_everywhere(person)
        return known

    return once(PersonOut, act)


@router.get("/tokens", tags=["people"], summary="List device tokens (secrets are not shown)")
def tokens(store: TheStore, token: AsManager) -> list[TokenOut]:
    return [TokenOut.of(item) for item in store.tokens()]


@router.post("/tokens", status_code=201, tags=["people"], summary="Create a device token (shown once)")
def make_token(request: Request, store: TheStore, token: AsManager, body: TokenIn, once: DoOnce) -> TokenMade:
    _refuse_above(token, body.role)
    own = bearer(request)

    def act() -> _Kept:
        salt = secrets.token_urlsafe(32)
        made, _ = store.make_token(body.name, body.role, by=token.name, secret=_text_of(own, salt))
        return _Kept(device=TokenOut.of(made), salt=salt)

    kept = once(_Kept, act)
    tell(request, "token-made", by=token.name, device=kept.device.name, role=str(kept.device.role))
    return TokenMade(device=kept.device, token=_text_of(own, kept.salt))


@router.delete("/tokens/{token_id}", tags=["people"], summary="Revoke a device token")
def revoke(request: Request, store: TheStore, token: AsManager, token_id: Id) -> TokenOut:
    try:
        ended = store.revoke_token(token_id)
    except TaggerError as error:
        raise there(error) from None
    tell(request, "token-revoked", by=token.name, device=ended.name)
    return TokenOut.of(ended)


def _text_of(own: str, salt: str) -> str:
    """A token that follows from the asker's own, which is not in the database, and a salt, which is.

    So a repeat of the request has the same answer, yet the database alone tells no token.
    """
    made = hmac.digest(own.encode(), salt.encode(), hashlib.sha256)
    return "tag_" + base64.urlsafe_b64encode(made).rstrip(b"=").decode()


def _refuse_above(token: Token, role: Role) -> None:
    if not token.role.may(role):
        raise RoleTooLow(role)
