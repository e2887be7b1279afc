"""Withdraw a tag or a lot, list the hoses and customers it affects, and lift the withdrawal."""

from __future__ import annotations

from collections.abc import Iterable

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.page import NOT_FOUND, go, refused, render
from api.shared import call_list as calls
from api.shared import spreadsheets
from api.shared.papers.withdrawal_letters import letters
from api.web.identity import Builder, Counter, Manager, OwnForm
from api.web.language import paper_language, translator_of
from api.web.state import settings_of, store_of
from tagger.code import number as tag_number
from tagger.errors import Problem, TaggerError
from tagger.messages import Message
from tagger.store import Assembly, Scope, Withdrawal

router = APIRouter()


@router.get("/withdrawn")
def withdrawn_page(request: Request, me: Builder) -> Response:
    return _page(request)


def _page(request: Request, problems: Iterable[Problem] = (), status: int = 200) -> Response:
    """What is withdrawn; and, where the address names something, what withdrawing it would touch."""
    store, asked = store_of(request), request.query_params
    touched: list[Assembly] | None = None
    if asked.get("value") and asked.get("scope") in set(Scope):
        try:
            touched = store.assemblies(store.affected(Scope(asked["scope"]), asked["value"]))
        except TaggerError as error:
            problems, status = [*problems, *error.problems], 422
    found = store.withdrawals()
    return render(
        request,
        "withdrawn.html",
        title=Message("bench-nav-withdrawn"),
        here="withdrawn",
        problems=problems,
        status=status,
        holding=[w for w in found if w.holds],
        lifted=[w for w in found if not w.holds],
        asked=asked,
        scopes=list(Scope),
        what=what,
        touched=touched,
        settings_seconds=settings_of(request).page_cache_seconds,
    )


def what(withdrawal: Withdrawal) -> Message:
    """What is withdrawn: "Hose lot 4711"."""
    value = withdrawal.value
    if withdrawal.scope is Scope.TAG:
        value = tag_number.format(value)
    return Message("bench-withdrawn-what", scope=str(withdrawal.scope), value=value)


@router.post("/withdrawn")
def withdraw(request: Request, me: Counter, form: OwnForm) -> Response:
    scope, value = str(form.get("scope")), str(form.get("value") or "")
    try:
        known = Scope(scope)
    except ValueError:
        scopes = tuple(Message(f"bench-scope-{known}") for known in Scope)
        why = Message("bench-not-a-scope", value=scope, scopes=scopes)
        return refused(request, 422, Message("bench-not-withdrawn"), why)
    named = {known.value: value}
    try:
        made = store_of(request).withdraw(str(form.get("reason") or ""), by=me.person.name, **named)
    except TaggerError as error:
        return _page(request, error.problems, 422)
    return go(f"/bench/withdrawn/{made.id}?note=withdrawn")


@router.get("/withdrawn/{withdrawal}")
def affected_page(request: Request, me: Builder, withdrawal: int) -> Response:
    try:
        known = store_of(request).withdrawal(withdrawal)
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    items = calls.touched(store_of(request), known)
    return render(
        request,
        "affected.html",
        title=what(known),
        here="withdrawn",
        withdrawal=known,
        items=items,
        callers=calls.callers(store_of(request), items),
    )


@router.get("/withdrawn/{withdrawal}/call.csv")
def call_list(request: Request, me: Builder, withdrawal: int) -> Response:
    """Every affected hose with whom to call."""
    try:
        known = store_of(request).withdrawal(withdrawal)
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    store = store_of(request)
    rows = calls.rows(store, calls.touched(store, known))
    return spreadsheets.file("csv", f"withdrawn-{known.id}", calls.heading(translator_of(request)), rows)


@router.get("/withdrawn/{withdrawal}/letters.pdf")
def letters_pdf(request: Request, me: Counter, withdrawal: int) -> Response:
    """One letter for each customer."""
    try:
        known = store_of(request).withdrawal(withdrawal)
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    items = calls.touched(store_of(request), known)
    if not items:
        return refused(request, 404, Message("bench-no-letters"), Message("bench-nothing-affected"))
    body = letters(known, items, settings_of(request), paper_language(request))
    headers = {
        "Content-Disposition": f'inline; filename="withdrawn-{known.id}.pdf"',
        "Cache-Control": "no-store",
    }
    return Response(body, media_type="application/pdf", headers=headers)


@router.post("/withdrawn/{withdrawal}/lift")
def lift(request: Request, me: Manager, form: OwnForm, withdrawal: int) -> Response:
    try:
        store_of(request).lift(withdrawal, str(form.get("reason") or ""), by=me.person.name)
    except TaggerError as error:
        return _page(request, error.problems, 422)
    return go("/bench/withdrawn?note=lifted")
