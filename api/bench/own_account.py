"""One's own account: password, codes of a phone, where one is signed in, and what was changed of all that."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import timedelta

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.page import go, render
from api.bench.sign_in import OF_A_NAME, too_many_tries
from api.web.identity import Builder, OwnForm, check_password, cookie_of, hash_password
from api.web.security_log import tell
from api.web.state import settings_of, store_of
from tagger.errors import Problem, StoreError, TaggerError
from tagger.messages import Message
from tagger.store import Person, SignedIn
from tagger.store.base import hashed

router = APIRouter()


@router.get("/me")
def me_page(request: Request, me: Builder) -> Response:
    return me_with(request, me)


def me_with(request: Request, me: SignedIn, problems: Iterable[Problem] = ()) -> Response:
    """The page, with what was wrong."""
    store, refused = store_of(request), list(problems)
    idle = timedelta(minutes=settings_of(request).session_idle_minutes)
    return render(
        request,
        "me.html",
        title=me.person.name,
        status=422 if refused else 200,
        problems=refused,
        sessions=store.open_sessions(me.person.id, idle=idle),
        this=hashed(cookie_of(request, "session")),
        happened=store.account_notes(me.person.id),
        narrow=True,
    )


@router.post("/me")
def change_own_password(request: Request, me: Builder, form: OwnForm) -> Response:
    """A new password, when the old one is known; every session ends, this one too."""
    store = store_of(request)
    try:
        own_password(request, me.person, str(form.get("old") or ""))
        own = me.person.name, settings_of(request).shop_name
        new = hash_password(str(form.get("password") or ""), *own)
        store.change_person(me.person.id, password_hash=new)
    except TaggerError as error:
        return me_with(request, me, error.problems)
    tell(request, "password-changed", person=me.person.name)
    return go("/bench/sign-in")


@router.post("/me/sessions")
def end_sessions(request: Request, me: Builder, form: OwnForm) -> Response:
    """Ends one of one's own sessions, or all but this."""
    store, one = store_of(request), str(form.get("session") or "")
    if one:
        store.end_session(me.person.id, one)
    else:
        store.end_other_sessions(me.person.id, cookie_of(request, "session"))
    tell(request, "sessions-ended", person=me.person.name, change="one" if one else "others")
    return go("/bench/me?note=saved")


@router.post("/me/told")
def told(request: Request, me: Builder, form: OwnForm) -> Response:
    """What happened to the account was seen; pages do not name it any more."""
    store_of(request).told(me.person.id)
    return go("/bench/me")


def own_password(request: Request, person: Person, password: str) -> None:
    """Raises StoreError for a wrong one: an open session alone changes nothing of how one signs in."""
    store, counted = store_of(request), f"own password {person.id}"
    if wait := store.try_now({counted: OF_A_NAME}):
        raise StoreError(Problem("old", None, too_many_tries(wait)))
    if check_password(store, person.name, password) is None:
        tell(request, "own-password-wrong", person=person.name)
        raise StoreError(Problem("old", None, Message("bench-old-password-wrong")))
    store.give_back(counted)
