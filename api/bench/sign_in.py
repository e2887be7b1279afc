"""Signing in and out, and the first start."""

from __future__ import annotations

from math import ceil
from typing import Final
from urllib.parse import urlencode

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.page import go, render
from api.web.identity import (
    OwnForm,
    SameSiteForm,
    await_code,
    check_password,
    cookie_of,
    end_session,
    hash_password,
    open_session,
    own_address,
    who,
)
from api.web.limits import asker
from api.web.security_log import tell
from api.web.state import settings_of, store_of
from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.store import Allowance, Person
from tagger.store.folding import fold

router = APIRouter()

OF_A_NAME: Final = Allowance(5, 24 * 3600, longest_s=900)
"""Wrong passwords for one account: five, then slower and slower, some 110 a day at most. Nobody is shut out for good."""
OF_AN_ADDRESS: Final = Allowance(20, 3600, longest_s=900)
"""Wrong passwords from one address, for whichever accounts: a shop's people may share one."""
OF_A_CODE: Final = Allowance(10, 600)


@router.get("/sign-in")
def sign_in_page(request: Request, next: str = "/bench") -> Response:
    if who(request) is not None:
        return go(own_address(next))
    return _sign_in_page(request, next)


def _sign_in_page(request: Request, back: str, name: str = "", problem: Problem | None = None) -> Response:
    return render(
        request,
        "sign_in.html",
        title=Message("bench-sign-in"),
        status=403 if problem else 200,
        next=own_address(back),
        name=name,
        first=not store_of(request).people(),
        problems=[problem] if problem else [],
        narrow=True,
    )


@router.post("/sign-in")
def sign_in(request: Request, form: SameSiteForm) -> Response:
    name, password = str(form.get("name", "")), str(form.get("password", ""))
    back = own_address(form.get("next"))
    store = store_of(request)
    known = store.person(name)
    told = known.name if known else None
    counted = _counted_for(request, name, known)
    # Counted before the slow check of the password: many tries at once must not all get in beside it.
    if wait := store.try_now(counted):
        tell(request, "sign-in-slowed", person=told)
        return _sign_in_page(request, back, name, Problem("password", None, too_many_tries(wait)))
    person = check_password(store, name, password)
    if person is None:
        tell(request, "sign-in-failed", person=told)
        problem = Problem("sign_in", None, Message("bench-sign-in-wrong"))
        return _sign_in_page(request, back, name, problem)
    store.give_back(*counted)
    if person.asks_code:
        response = go(f"/bench/sign-in/code?{urlencode({'next': back})}")
        await_code(request, response, person)
        return response
    tell(request, "signed-in", person=person.name, how="password")
    response = go(back)
    open_session(request, response, person)
    return response


def _counted_for(request: Request, name: str, known: Person | None) -> dict[str, Allowance]:
    """What a wrong password is counted under: the account and the address.

    A browser at which this person has signed in before is counted by itself: whatever others try for the account or
    from the same address, its owner gets in.
    """
    browser = cookie_of(request, "browser")
    if known and store_of(request).knows_browser(browser, known.id):
        return {f"sign-in {known.id} at {browser}": OF_A_NAME}
    return {
        f"sign-in name {fold(' '.join(name.split()))}": OF_A_NAME,
        f"sign-in from {asker(request)}": OF_AN_ADDRESS,
    }


def too_many_tries(wait_s: float) -> Message:
    """When to try again, rounded up."""
    if wait_s > 90:
        return Message("bench-too-many-tries-min", minutes=ceil(wait_s / 60))
    return Message("bench-too-many-tries", seconds=ceil(wait_s))


@router.post("/sign-out")
def sign_out(request: Request, form: OwnForm) -> Response:
    me = who(request)
    response = go("/bench/sign-in")
    if form.get("everywhere") and me is not None:
        store_of(request).sign_out_everywhere(me.person.id)
    end_session(request, response)
    tell(request, "signed-out", person=me.person.name if me else None)
    return response


@router.get("/first")
def first_page(request: Request) -> Response:
    if store_of(request).people():
        return go("/bench/sign-in")
    return render(request, "first.html", title=Message("bench-first"), name="", narrow=True)


@router.post("/first")
def first(request: Request, form: SameSiteForm) -> Response:
    name = str(form.get("name", ""))
    try:
        if wait := store_of(request).try_now({f"code from {asker(request)}": OF_A_CODE}):
            raise StoreError(Problem("code", None, too_many_tries(wait)))
        hashed = hash_password(str(form.get("password", "")), name, settings_of(request).shop_name)
        person = store_of(request).make_first_manager(str(form.get("code", "")), name, hashed)
    except StoreError as error:
        return render(
            request,
            "first.html",
            title=Message("bench-first"),
            status=403,
            problems=error.problems,
            name=name,
            narrow=True,
        )
    tell(request, "first-manager", person=person.name)
    response = go("/bench")
    open_session(request, response, person)
    return response
