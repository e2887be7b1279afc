"""Codes of a phone: asking for one at signing in, and setting them up on one's own page."""

from __future__ import annotations

from typing import Any

from fastapi import APIRouter, Request
from markupsafe import Markup
from starlette.responses import Response

from api.bench.own_account import me_with, own_password
from api.bench.page import go, render
from api.bench.sign_in import OF_A_NAME, too_many_tries
from api.web import codes
from api.web.identity import (
    Builder,
    OwnForm,
    SameSiteForm,
    cookie_of,
    open_session,
    own_address,
    who_awaits_code,
)
from api.web.limits import asker
from api.web.security_log import tell
from api.web.state import settings_of, store_of
from tagger.errors import Problem, StoreError, TaggerError
from tagger.messages import Message
from tagger.store import SignedIn

router = APIRouter()


@router.get("/sign-in/code")
def code_page(request: Request, next: str = "/bench") -> Response:
    if who_awaits_code(request) is None:
        return go("/bench/sign-in")
    return _code_page(request, next)


def _code_page(request: Request, back: str, problem: Problem | None = None) -> Response:
    return render(
        request,
        "code.html",
        title=Message("bench-code"),
        status=403 if problem else 200,
        next=own_address(back),
        problems=[problem] if problem else [],
        narrow=True,
    )


@router.post("/sign-in/code")
def give_code(request: Request, form: SameSiteForm) -> Response:
    """The second half of signing in."""
    person, back = who_awaits_code(request), own_address(form.get("next"))
    if person is None:
        return go("/bench/sign-in")
    store, browser = store_of(request), cookie_of(request, "browser")
    own = f" at {browser}" if store.knows_browser(browser, person.id) else ""  # nobody keeps the owner out
    counted = f"sign-in code {person.id}{own}"
    if wait := store.try_now({counted: OF_A_NAME}):
        tell(request, "phone-code-slowed", person=person.name)
        return _code_page(request, back, Problem("phone_code", None, too_many_tries(wait)))
    how = codes.accepted(store, person, str(form.get("phone_code", "")), address=asker(request)[:64])
    if how is None:
        tell(request, "phone-code-wrong", person=person.name)
        return _code_page(request, back, Problem("phone_code", None, Message("bench-code-wrong")))
    store.give_back(counted)
    tell(request, "signed-in", person=person.name, how=how)
    response = go(back)
    open_session(request, response, person)
    return response


@router.get("/me/codes")
def set_up_page(request: Request, me: Builder) -> Response:
    return _set_up_page(request, me, codes.new_secret())


def _set_up_page(request: Request, me: SignedIn, secret: str, problems: Any = ()) -> Response:
    address = codes.address(secret, me.person.name, settings_of(request).shop_name)
    return render(
        request,
        "codes.html",
        title=Message("bench-codes"),
        status=422 if problems else 200,
        problems=problems,
        secret=secret,
        picture=Markup(codes.picture(address)),
        recovery=[],
        narrow=True,
    )


@router.post("/me/codes")
def set_up(request: Request, me: Builder, form: OwnForm) -> Response:
    """Asks for codes from now on, once the password and a first code show that the phone makes them."""
    store, secret = store_of(request), str(form.get("secret", ""))
    try:
        own_password(request, me.person, str(form.get("old", "")))
        step = codes.step_of(secret, str(form.get("phone_code", "")))
        if step is None or not codes.is_secret(secret):
            raise StoreError(Problem("phone_code", None, Message("bench-code-wrong")))
    except TaggerError as error:
        return _set_up_page(
            request, me, secret if codes.is_secret(secret) else codes.new_secret(), error.problems
        )
    recovery = codes.new_recovery_codes()
    store.ask_codes(me.person.id, secret, step=step, recovery=map(codes.plain, recovery))
    tell(request, "codes-on", person=me.person.name)
    return render(
        request,
        "codes.html",
        title=Message("bench-codes"),
        recovery=recovery,
        secret="",
        picture="",
        narrow=True,
    )


@router.post("/me/codes/off")
def take_off(request: Request, me: Builder, form: OwnForm) -> Response:
    try:
        own_password(request, me.person, str(form.get("old", "")))
    except TaggerError as error:
        return me_with(request, me, error.problems)
    store_of(request).ask_no_codes(me.person.id)
    tell(request, "codes-off", person=me.person.name)
    return go("/bench/me?note=saved")
