"""Who is asking: passwords, sessions and roles for people, tokens for devices."""

from __future__ import annotations

import secrets
from collections.abc import Callable
from contextlib import suppress
from datetime import timedelta
from typing import Annotated, Any
from urllib.parse import quote, urlsplit

from argon2 import PasswordHasher
from argon2.exceptions import Argon2Error, InvalidHashError
from fastapi import Depends, Request
from sqlalchemy.exc import DBAPIError
from starlette.datastructures import FormData
from starlette.responses import Response

from api.web.limits import asker
from api.web.passphrases import refuse_weak
from api.web.state import settings_of, store_of
from tagger.store import Person, Role, SignedIn, Store, Token
from tagger.store.own_account import Noted
from tagger.store.second_factor import BROWSER_KNOWN

_CODE_S = 300
"""How long a phone's code may be given after the password."""
_HASHER = PasswordHasher()  # argon2id with the library's parameters (RFC 9106, low memory)
_NOBODY = _HASHER.hash(secrets.token_urlsafe())  # compared when there is no such name: takes as long


class SignInNeeded(Exception):
    """Nobody is signed in at this browser."""


class NotAllowed(Exception):
    """Somebody is, but may not do this."""

    def __init__(self, needed: Role) -> None:
        super().__init__(str(needed))
        self.needed = needed


class BadForm(Exception):
    """A form that did not come from our own page in this session."""


def hash_password(password: str, *own: str) -> str:
    """The hash of a new password. Raises StoreError for one that is easily guessed.

    ``own``: words that anybody would try here, such as the person's name and the shop's.
    """
    refuse_weak(password, *own)
    return _HASHER.hash(password)


def check_password(store: Store, name: str, password: str) -> Person | None:
    """The person, when name and password fit and they may sign in."""
    person = store.person(name)
    try:
        _HASHER.verify(person.password_hash if person else _NOBODY, password)
    except (Argon2Error, InvalidHashError):
        return None
    if person is None or not person.active:
        return None
    if _HASHER.check_needs_rehash(person.password_hash):
        return store.renew_hash(person.id, _HASHER.hash(password))
    return person


def cookie_name(request: Request, what: str) -> str:
    """A cookie of ours. Over HTTPS no other site of the same domain can set it (RFC 6265bis, __Host-)."""
    return f"__Host-tagger_{what}" if settings_of(request).secure else f"tagger_{what}"


def cookie_of(request: Request, what: str) -> str:
    """What the browser's cookie holds; empty where it has none."""
    return request.cookies.get(cookie_name(request, what), "")


def _give(request: Request, response: Response, what: str, value: str, seconds: int) -> None:
    response.set_cookie(
        cookie_name(request, what),
        value,
        max_age=seconds,
        path="/",
        secure=settings_of(request).secure,
        httponly=True,
        samesite="lax",
    )


def open_session(request: Request, response: Response, person: Person) -> None:
    """Signs this browser in, and knows it from now on as one of this person's."""
    store, hours = store_of(request), settings_of(request).session_hours
    if earlier := cookie_of(request, "session"):
        store.sign_out(earlier)
    address, phone = asker(request)[:64], is_phone(request)
    cookie = store.sign_in(person.id, hours, address=address, phone=phone)
    _give(request, response, "session", cookie, hours * 3600)
    browser = cookie_of(request, "browser")
    if not store.knows_browser(browser):  # none, or one that somebody else put there
        browser = secrets.token_urlsafe(32)
    if not store.knows_browser(browser, person.id):
        store.note(person.id, Noted.NEW_BROWSER, address=address)
    store.know_browser(browser, person.id)
    _give(request, response, "browser", browser, int(BROWSER_KNOWN.total_seconds()))


def is_phone(request: Request) -> bool:
    """Whether the browser says that it is a phone's ("Mobi", as browsers have agreed)."""
    return "Mobi" in request.headers.get("user-agent", "")


def await_code(request: Request, response: Response, person: Person) -> None:
    """The password was right; this browser has some minutes to give the phone's code."""
    cookie = store_of(request).sign_in(person.id, _CODE_S / 3600, awaits_code=True)
    _give(request, response, "session", cookie, _CODE_S)


def who_awaits_code(request: Request) -> Person | None:
    """Who has given the password at this browser, and has to give the code."""
    found = store_of(request).signed_in(cookie_of(request, "session"), awaits_code=True)
    return found.person if found else None


def end_session(request: Request, response: Response) -> None:
    """Signs this browser out; it stays known."""
    store_of(request).sign_out(cookie_of(request, "session"))
    settings = settings_of(request)
    response.delete_cookie(cookie_name(request, "session"), path="/", secure=settings.secure, httponly=True)


def who(request: Request) -> SignedIn | None:
    """Whoever is signed in at this browser; asked once a request."""
    if not hasattr(request.state, "who"):
        cookie = cookie_of(request, "session")
        request.state.who = _signed_in(request, cookie) if cookie else None
    found: SignedIn | None = request.state.who
    return found


def _signed_in(request: Request, cookie: str) -> SignedIn | None:
    """Whoever holds the cookie; that they ask keeps the session open, unless a page asks by itself."""
    store = store_of(request)
    idle = timedelta(minutes=settings_of(request).session_idle_minutes)
    found = store.signed_in(cookie, idle=idle)
    by_itself = request.url.path.endswith("/state")  # a print job's state, asked each second
    if found and not by_itself and store.now() - found.seen_at > idle / 20:
        with suppress(DBAPIError):  # a full disk says so where something is kept
            store.seen(cookie)
    return found


def at_least(role: Role) -> Callable[[Request], SignedIn]:
    """Return a dependency that requires a signed-in person with this role or a higher one."""

    def needed(request: Request) -> SignedIn:
        person = who(request)
        if person is None:
            raise SignInNeeded
        if not person.person.role.may(role):
            raise NotAllowed(role)
        return person

    return needed


async def own_form(request: Request) -> FormData:
    """The form just sent, once it is sure that our own page in this session sent it."""
    form = await request.form(max_fields=500, max_part_size=16_000_000)  # a list travels in one field
    person = who(request)
    given = request.headers.get("x-csrf") or form.get("csrf")
    if person is None:
        raise SignInNeeded
    # as bytes: of text, compare_digest takes ASCII alone
    if not isinstance(given, str) or not secrets.compare_digest(
        given.encode(errors="replace"), person.csrf.encode()
    ):
        raise BadForm
    return form


def from_elsewhere(request: Request) -> bool:
    """Whether the browser says that a page of another site sent this. A program that says nothing is no browser."""
    site = request.headers.get("sec-fetch-site")
    if (
        site is not None
    ):  # no page can write this one; "Origin" is "null" for a form of a page without referrer
        return site not in ("same-origin", "none")
    origin = request.headers.get("origin")
    ours = (request.headers.get("host"), urlsplit(settings_of(request).base_url).netloc)
    try:
        return origin is not None and urlsplit(origin).netloc not in ours
    except ValueError:  # no address at all
        return True


async def same_site_form(request: Request) -> FormData:
    """A form sent before anybody is signed in: the browser must say it comes from this site."""
    if from_elsewhere(request):
        raise BadForm
    return await request.form(max_fields=20)


def bearer(request: Request) -> str:
    """The token in the Authorization header, or ""."""
    scheme, _, secret = request.headers.get("authorization", "").partition(" ")
    return secret.strip() if scheme.lower() == "bearer" else ""


def device(request: Request) -> Token | None:
    """The device whose token came in the Authorization header; asked once a request."""
    if not hasattr(request.state, "device"):
        secret = bearer(request)
        request.state.device = store_of(request).token(secret) if secret else None
    found: Token | None = request.state.device
    return found


def sign_in_address(request: Request) -> str:
    """Where to sign in, and come back here afterwards."""
    back = request.url.path + (f"?{request.url.query}" if request.url.query else "")
    if request.method != "GET":
        back = "/bench"
    return f"/bench/sign-in?next={quote(back, safe='')}"


def own_address(address: Any) -> str:
    """An address of ours to go on to; anything else becomes the bench."""
    text = str(address or "")
    return text if text.startswith("/bench") and "//" not in text and "\\" not in text else "/bench"


Builder = Annotated[SignedIn, Depends(at_least(Role.BUILDER))]
Counter = Annotated[SignedIn, Depends(at_least(Role.COUNTER))]
Manager = Annotated[SignedIn, Depends(at_least(Role.MANAGER))]
OwnForm = Annotated[FormData, Depends(own_form)]
SameSiteForm = Annotated[FormData, Depends(same_site_form)]
