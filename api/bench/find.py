"""Finding assemblies; a machine's hoses by position; ordering all of them for a service visit."""

from __future__ import annotations

import secrets
from datetime import date
from typing import Any

from fastapi import APIRouter, Request
from starlette.datastructures import QueryParams
from starlette.responses import Response

from api.bench.page import go, refused, render
from api.shared import spreadsheets
from api.web.identity import Builder, Counter, OwnForm
from api.web.state import store_of, tables_of, words_of
from tagger import units
from tagger.errors import Problem, StoreError, TaggerError
from tagger.store import Filter
from tagger.units import read_pressure_bar, whole_number

router = APIRouter()
TEXTS = ("number", "customer", "machine", "position", "lot", "connection", "hose_standard", "order_reference")
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
                found[name] = date.fromisoformat(text)
            except ValueError:
                problems.append(Problem(name, text, "is not a day", "Give it as 2026-03-02."))
    if text := asked.get("dash", "").strip().lstrip("-"):
        found["dash"] = whole_number(text)
        if found["dash"] is None:
            problems.append(
                Problem("dash", text, "is not a dash size", "Give sixteenths of an inch, such as 12.")
            )
    for name in ("printed", "withdrawn"):
        if asked.get(name) in ("yes", "no"):
            found[name] = asked[name] == "yes"
    if problems:
        raise StoreError(problems)
    return Filter(**found)


@router.get("/find")
def find_page(request: Request, me: Builder) -> Response:
    """By anything that is known of it; the address holds the question, so it can be kept."""
    asked, store = request.query_params, store_of(request)
    problems: tuple[Problem, ...] = ()
    try:
        wanted = filter_of(asked)
        page = store.find(wanted, limit=_PAGE, after=asked.get("after"))
        count = store.count(wanted)
    except TaggerError as error:
        problems, page, count = error.problems, store.find(Filter(number="none"), limit=1), 0
    words = words_of(request)
    families = [(str(family), words.connection(family)) for family in tables_of(request).families]
    question = "&".join(part for part in str(request.url.query).split("&") if not part.startswith("after="))
    return render(
        request, "find.html", title="Find", here="/bench/find", problems=problems, asked=asked, items=page.assemblies,
        after=page.after, count=count, families=families, question=question, units=units,
        status=422 if problems else 200,
    )  # fmt: skip


@router.get("/find.{form}")
def find_file(request: Request, me: Builder, form: str) -> Response:
    """Everything that meets the conditions, as CSV or XLSX."""
    try:
        wanted = filter_of(request.query_params)
    except TaggerError as error:
        return refused(request, 422, "Cannot be looked for", str(error))
    if form not in spreadsheets.FORMS:
        return refused(request, 404, "Not found", "Lists come as .csv or .xlsx.")
    rows = (spreadsheets.row(item) for item in store_of(request).every(wanted))
    return spreadsheets.file(form, "assemblies", spreadsheets.heading(), rows)


@router.get("/machine")
def machine_page(request: Request, me: Builder, machine: str = "", customer: str = "") -> Response:
    """All hoses of one machine, for a service visit."""
    items = store_of(request).on_machine(customer, machine)
    return render(
        request, "machine.html", title=f"Machine {machine}", here="/bench/find", machine=machine, customer=customer,
        items=items, key=secrets.token_urlsafe(9),
    )  # fmt: skip


@router.post("/machine/order")
def order_all(request: Request, me: Counter, form: OwnForm) -> Response:
    """An order request for each hose that was ticked."""
    contact = {name: str(form.get(name) or "") for name in ("name", "company", "phone", "email")}
    numbers = [str(number) for number in form.getlist("number")]
    try:
        needed = date.fromisoformat(str(form["needed_by"])) if form.get("needed_by") else None
        if not numbers:
            raise StoreError(Problem("hoses", None, "are not ticked", "Tick those to order."))
        store_of(request).request_orders(
            numbers, needed_by=needed,
            reference=str(form.get("reference") or ""), contact=contact, key=str(form.get("key")),
        )  # fmt: skip
    except (TaggerError, ValueError) as error:
        return refused(request, 422, "Not ordered", str(error))
    return go("/bench/orders?note=sent")
