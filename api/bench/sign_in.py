"""Signing in and out, and the first start."""

from __future__ import annotations

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
from api.web.state import store_of, tries_of
from tagger.errors import Problem, StoreError
from tagger.messages import Message

router = APIRouter()


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
    tries = tries_of(request)
    named = f"name {name.strip().lower()}"
    address = f"address {asker(request)}"
    # Counted before the slow check of the password: many tries at once must not all get in beside it.
    if not tries.allow(named, address):
        problem = Problem("password", None, Message("bench-too-many-tries"))
        return _sign_in_page(request, back, name, problem)
    person = check_password(store_of(request), name, password)
    if person is None:
        problem = Problem("sign_in", None, Message("bench-sign-in-wrong"))
        return _sign_in_page(request, back, name, problem)
    tries.forget(named)
    tries.give_back(address)
    response = go(back)
    open_session(request, response, person)
    return response


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
    key = f"code {asker(request)}"
    try:
        if not tries_of(request).allow(key):
            raise StoreError(Problem("code", None, Message("bench-too-many-tries")))
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
