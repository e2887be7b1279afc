"""Ordering the same again: the form's answer, and its confirmation."""

from __future__ import annotations

import hashlib
from datetime import UTC, date, datetime
from typing import Annotated, Any

from fastapi import APIRouter, Form, Request
from fastapi.responses import JSONResponse, RedirectResponse, Response
from pydantic import BaseModel

from api.scan import tag_page
from api.scan.i18n import Translator, choose
from api.scan.pages import page, refused, wants
from api.shared.known_tag import find
from api.web.state import store_of, tables_of
from tagger.code import number as tag_number
from tagger.errors import NumberError, Problem, StoreError, TaggerError
from tagger.spec import AssemblySpec
from tagger.store import OrderState, refuse_past
from tagger.trade import assess
from tagger.words import N_, Words

router = APIRouter()

CHANGES = (
    ("change_length", N_("Length")),
    ("change_end_a", N_("End A")),
    ("change_end_b", N_("End B")),
    ("change_cover", N_("Over the hose")),
    ("change_other", N_("Anything else")),
)
STATES = {
    OrderState.RECEIVED: N_("received"),
    OrderState.ASKED: N_("the shop has a question"),
    OrderState.ACCEPTED: N_("accepted"),
    OrderState.BUILDING: N_("being built"),
    OrderState.DONE: N_("done"),
    OrderState.DECLINED: N_("declined"),
}


class OrderForm(BaseModel):
    """The order form as it is sent; every field is text, as typed."""

    number: str = ""
    digits: str = ""
    spec: str = ""  # JSON, for a hose whose tag is lost
    key: str = ""
    quantity: str = "1"
    needed_by: str = ""
    asked_on: str = ""  # the day it was filled in; it may have waited on the phone for a signal
    reference: str = ""
    name: str = ""
    company: str = ""
    phone: str = ""
    email: str = ""
    change_length: str = ""
    change_end_a: str = ""
    change_end_b: str = ""
    change_cover: str = ""
    change_other: str = ""


@router.post("/order", include_in_schema=False)
def order(request: Request, form: Annotated[OrderForm, Form()]) -> Response:
    """Keeps the order, once: a repeat with the same key, or of the same words on a day, is the same order."""
    as_json = wants(request, "text/html", "application/json") == "application/json"
    try:
        kept = store_of(request).request_order(**asked(request, form))
    except TaggerError as error:
        t = Translator(choose(request))
        return refused(request, error, status=422, typed=form.number, title=t("This order was not sent"))
    if as_json:
        number = kept.number and tag_number.format(kept.number)
        return JSONResponse(
            {"reference": kept.reference, "number": number, "quantity": kept.quantity}, status_code=201
        )
    return RedirectResponse(f"/order/{kept.reference}", status_code=303)


def asked(request: Request, form: OrderForm) -> dict[str, Any]:
    """The form as the store takes it. Raises TaggerError naming the fields that are wrong."""
    spec: AssemblySpec | None = None
    number: str | None = None
    if form.number.strip():
        found = find(store_of(request), form.number, form.digits.strip() or None)
        number = found.number
        spec = None if found.record else found.content.spec
    elif form.spec.strip():
        spec = AssemblySpec.read(form.spec)
        assess(spec, tables_of(request))  # refuses parts that cannot go together
    else:
        raise NumberError(Problem("number", None, "is missing", "Scan the tag, or type its number."))
    return {
        "number": number,
        "spec": spec,
        "quantity": _quantity(form.quantity),
        "needed_by": _day(form.needed_by, form.asked_on),
        "reference": form.reference.strip() or None,
        "contact": {"name": form.name, "company": form.company, "phone": form.phone, "email": form.email},
        "changes": _changes(form),
        "key": form.key.strip() or _key_of(form),
    }


def _key_of(form: OrderForm) -> str:
    """Without JavaScript a double tap sends the same words twice: on one day they are one order."""
    words = f"{datetime.now(UTC).date()}|{form.model_dump_json()}"
    return f"words-{hashlib.sha256(words.encode()).hexdigest()[:40]}"


def _changes(form: OrderForm) -> str | None:
    """What must be different from the tag, a line each."""
    given = [(label, getattr(form, name).strip()) for name, label in CHANGES]
    return "\n".join(f"{label}: {text}" for label, text in given if text) or None


def _quantity(text: str) -> int:
    try:
        return int(text.strip() or "1")
    except ValueError:
        raise StoreError(Problem("quantity", text, "is not a whole number", "Give one such as 2.")) from None


def _day(text: str, asked_on: str) -> date | None:
    if not text.strip():
        return None
    try:
        day = date.fromisoformat(text.strip())
    except ValueError:
        mend = "Give year, month and day, such as 2027-03-31."
        raise StoreError(Problem("needed_by", text, "is not a date", mend)) from None
    today = datetime.now(UTC).date()
    try:
        asked = min(date.fromisoformat(asked_on), today)
    except ValueError:
        asked = today
    refuse_past(day, asked)
    return day


@router.get("/order/{reference}", include_in_schema=False)
def ordered(request: Request, reference: str) -> Response:
    """The confirmation: the reference and what was asked for; never who asked."""
    lang = choose(request)
    t = Translator(lang)
    try:
        kept = store_of(request).order(reference)
    except StoreError as error:
        return refused(request, error, status=404, title=t("This order is not here"))
    return page(
        request,
        "ordered.html",
        title=t("Order {reference}", reference=kept.reference),
        order=kept,
        state_words=STATES,
        words=Words(lang),
        number=kept.number and tag_number.format(kept.number),
        back=f"/T/{kept.number}" if kept.number and store_of(request).known(kept.number) else None,
        shop=tag_page.shop_of(request),
    )
