"""Signing in and out, and the first start."""

from __future__ import annotations

from math import ceil
from typing import Final

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.page import go, render
from api.web.identity import (
    COOKIE,
    OwnForm,
    SameSiteForm,
    check_password,
    hash_password,
    open_session,
    own_address,
    who,
)
from api.web.limits import asker
from api.web.state import store_of
from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.store import Allowance
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
    counted = _counted_for(request, name)
    # Counted before the slow check of the password: many tries at once must not all get in beside it.
    if wait := store.try_now(counted):
        return _sign_in_page(request, back, name, Problem("password", None, _too_many(wait)))
    person = check_password(store, name, password)
    if person is None:
        problem = Problem("sign_in", None, Message("bench-sign-in-wrong"))
        return _sign_in_page(request, back, name, problem)
    store.give_back(*counted)
    response = go(back)
    open_session(request, response, person)
    return response


def _counted_for(request: Request, name: str) -> dict[str, Allowance]:
    """What a wrong password is counted under: the account and the address."""
    return {
        f"sign-in name {fold(' '.join(name.split()))}": OF_A_NAME,
        f"sign-in from {asker(request)}": OF_AN_ADDRESS,
    }


def _too_many(wait_s: float) -> Message:
    """When to try again, rounded up."""
    if wait_s > 90:
        return Message("bench-too-many-tries-min", minutes=ceil(wait_s / 60))
    return Message("bench-too-many-tries", seconds=ceil(wait_s))


@router.post("/sign-out")
def sign_out(request: Request, form: OwnForm) -> Response:
    store = store_of(request)
    me = who(request)
    if form.get("everywhere") and me is not None:
        store.sign_out_everywhere(me.person.id)
    elif cookie := request.cookies.get(COOKIE):
        store.sign_out(cookie)
    response = go("/bench/sign-in")
    response.delete_cookie(COOKIE, path="/")
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
            raise StoreError(Problem("code", None, _too_many(wait)))
        hashed = hash_password(str(form.get("password", "")))
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
    response = go("/bench")
    open_session(request, response, person)
    return response
