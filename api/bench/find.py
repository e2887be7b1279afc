"""Finding assemblies; a machine's hoses by position; ordering all of them for a service visit."""

from __future__ import annotations

import secrets
from datetime import date
from typing import Any

from fastapi import APIRouter, Request
from starlette.datastructures import QueryParams
from starlette.responses import Response

from api.bench.page import NOT_FOUND, go, refused, render
from api.shared import spreadsheets
from api.web.identity import Builder, Counter, OwnForm
from api.web.language import translator_of
from api.web.state import store_of, tables_of
from tagger import phrases
from tagger.errors import Problem, StoreError, TaggerError
from tagger.messages import Message
from tagger.record import RECORD_FIELDS
from tagger.store import Filter
from tagger.units import read_pressure_bar, whole_number

router = APIRouter()
TEXTS = ("number", *RECORD_FIELDS, "lot", "connection", "hose_standard", "order_reference")
_PAGE = 50


def filter_of(asked: QueryParams) -> Filter:
    """The conditions in an address. Raises StoreError naming those that cannot be read."""
    found: dict[str, Any] = {name: asked[name].strip() for name in TEXTS if asked.get(name, "").strip()}
    problems: list[Problem] = []
    for name in ("pressure_min_bar", "pressure_max_bar"):
        if text := asked.get(name, "").strip():
            try:
                found[name] = read_pressure_bar(text)
            except TaggerError as error:
                problems += error.within(name).problems
    for name in ("built_from", "built_to"):
        if text := asked.get(name, "").strip():
            try:
                found[name] = _day(name, text)
            except StoreError as error:
                problems += error.problems
    if text := asked.get("dash", "").strip().lstrip("-"):
        found["dash"] = whole_number(text)
        if found["dash"] is None:
            problems.append(Problem("dash", text, Message("bench-not-a-dash", value=text)))
    for name in ("printed", "withdrawn"):
        if asked.get(name) in ("yes", "no"):
            found[name] = asked[name] == "yes"
    if problems:
        raise StoreError(problems)
    return Filter(**found)


@router.get("/find")
def find_page(request: Request, me: Builder) -> Response:
    """Find assemblies; the address holds the conditions, so that it can be kept."""
    asked, store = request.query_params, store_of(request)
    problems: tuple[Problem, ...] = ()
    try:
        wanted = filter_of(asked)
        with store.reading():
            page = store.find(wanted, limit=_PAGE, after=asked.get("after"))
            count = store.count(wanted)
    except TaggerError as error:
        problems, page, count = error.problems, store.find(Filter(number="none"), limit=1), 0
    t = translator_of(request)
    families = [(str(family), t(phrases.connection(family))) for family in tables_of(request).families]
    question = "&".join(part for part in str(request.url.query).split("&") if not part.startswith("after="))
    return render(
        request,
        "find.html",
        title=Message("bench-find"),
        here="find",
        problems=problems,
        asked=asked,
        record_fields=RECORD_FIELDS,
        items=page.assemblies,
        after=page.after,
        count=count,
        families=families,
        question=question,
        status=422 if problems else 200,
    )


@router.get("/find.{form}")
def find_file(request: Request, me: Builder, form: str) -> Response:
    """Everything that meets the conditions, as CSV or XLSX."""
    try:
        wanted = filter_of(request.query_params)
    except TaggerError as error:
        return refused(request, 422, Message("bench-search-refused"), error)
    if form not in spreadsheets.FORMS:
        return refused(request, 404, NOT_FOUND, Message("bench-form-of-files"))
    rows = spreadsheets.rows(store_of(request), wanted, tables_of(request))
    return spreadsheets.file(form, "assemblies", spreadsheets.heading(), rows)


@router.get("/machine")
def machine_page(request: Request, me: Builder, machine: str = "", customer: str = "") -> Response:
    """All hoses of one machine, for a service visit."""
    items = store_of(request).on_machine(customer, machine)
    return render(
        request,
        "machine.html",
        title=Message("bench-machine-title", machine=machine) if machine else Message("bench-machine-none"),
        here="find",
        machine=machine,
        customer=customer,
        items=items,
        key=secrets.token_urlsafe(9),
    )


@router.post("/machine/order")
def order_all(request: Request, me: Counter, form: OwnForm) -> Response:
    """Send an order request for each hose selected."""
    contact = {name: str(form.get(name) or "") for name in ("name", "company", "phone", "email")}
    numbers = [str(number) for number in form.getlist("number")]
    try:
        needed = _day("needed_by", str(form.get("needed_by") or ""))
        if not numbers:
            raise StoreError(Problem("hoses", None, Message("bench-no-hoses")))
        store_of(request).request_orders(
            numbers,
            needed_by=needed,
            reference=str(form.get("reference") or ""),
            contact=contact,
            key=str(form.get("key")),
        )
    except TaggerError as error:
        return refused(request, 422, Message("bench-nothing-ordered"), error)
    return go("/bench/orders?note=sent")


def _day(field: str, text: str) -> date | None:
    """A day typed into a field; None for an empty one. Raises StoreError for one that is none."""
    try:
        return date.fromisoformat(text) if text else None
    except ValueError:
        raise StoreError(Problem(field, text, Message("bench-not-a-date", value=text))) from None
