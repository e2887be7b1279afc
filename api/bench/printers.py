"""The shop's printers: added, looked at and retired by a manager.

The server itself speaks to the address that is typed here, so nobody else may type one; what it
refuses to speak to is decided where the printer is reached (tagger/printing).
"""

from __future__ import annotations

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.management import shop_with
from api.bench.page import NOT_FOUND, go, refused, render
from api.shared.label_files import template_of
from api.web.identity import Manager, OwnForm
from api.web.state import settings_of, store_of
from tagger.errors import Problem, StoreError, TaggerError
from tagger.messages import Message
from tagger.printing.printer import printer_at

router = APIRouter()
_CHECK_TIMEOUT_S = 5.0


@router.post("/shop/printers")
def add_printer(request: Request, me: Manager, form: OwnForm) -> Response:
    """Asks the printer first: one that could not print tags is refused with the reason."""
    given = {name: str(form.get(name) or "").strip() for name in ("name", "uri", "dpi", "template")}
    try:
        if given["template"]:
            template_of(given["template"], settings_of(request))
        dpi = _dpi(given["dpi"])
        found = printer_at(given["uri"]).status(timeout=_CHECK_TIMEOUT_S)
        dpi = dpi or found.dpi()
        found.check(dpi)
        added = store_of(request).add_printer(
            given["name"], given["uri"], dpi, template=given["template"] or None, by=me.person.name
        )
    except TaggerError as error:
        return shop_with(request, error.problems, printer_given=given)
    return go(f"/bench/shop/printers/{added.id}?note=saved")


def _dpi(text: str) -> int | None:
    if not text:
        return None
    if not (text.isdigit() and 100 <= int(text) <= 1200):
        raise StoreError(Problem("dpi", text, Message("bench-not-a-resolution", value=text)))
    return int(text)


@router.get("/shop/printers/{printer}")
def look_at_printer(request: Request, me: Manager, printer: int) -> Response:
    """What the printer says of itself now; nothing of it is kept."""
    try:
        known = store_of(request).printer(printer)
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    found, problems = None, tuple[Problem, ...]()
    try:
        found = printer_at(known.uri).status(timeout=_CHECK_TIMEOUT_S)
        found.check(known.dpi)
    except TaggerError as error:
        problems = error.problems
    return render(
        request, "printer.html", title=known.name, here="shop", problems=problems, printer=known, found=found
    )


@router.post("/shop/printers/{printer}/retire")
def retire_printer(request: Request, me: Manager, form: OwnForm, printer: int) -> Response:
    try:
        store_of(request).retire_printer(printer, by=me.person.name)
    except TaggerError as error:
        return shop_with(request, error.problems)
    return go("/bench/shop?note=saved")
