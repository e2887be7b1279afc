"""Ordering the same again: the form's answer, and its confirmation."""

from __future__ import annotations

import hashlib
from datetime import UTC, date, datetime
from typing import Any, Final

from fastapi import APIRouter, Request
from fastapi.responses import JSONResponse, RedirectResponse, Response
from markupsafe import Markup
from pydantic import BaseModel

from api.scan import tag_page
from api.scan.order_form import order_form
from api.scan.pages import held_off, page, refused, wants
from api.scan.received import ReceivedForm
from api.scan.view import spec_rows
from api.shared.known_tag import find
from api.web.language import language_of, translator_of
from api.web.limits import TooMany, admit
from api.web.state import settings_of, store_of, tables_of
from tagger.code import number as tag_number
from tagger.errors import NumberError, Problem, StoreError, TaggerError
from tagger.i18n import Translator
from tagger.messages import Message
from tagger.spec import AssemblySpec
from tagger.store import refuse_past
from tagger.trade import assess

router = APIRouter()

CHANGES = (
    ("change_length", "scan-length"),
    ("change_end_a", "scan-end_a"),
    ("change_end_b", "scan-end_b"),
    ("change_cover", "scan-covers"),
    ("change_other", "scan-order-other"),
)
"""Fields of the form for what must be different, and the messages that name them."""


AN_HOUR: Final = 30
"""How many orders one address may send in an hour, and how many one tag may be ordered by."""


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
def order(request: Request, received: ReceivedForm) -> Response:
    """Keeps the order, once: a repeat with the same key, or of the same words on a day, is the same order."""
    as_json = wants(request, "text/html", "application/json") == "application/json"
    form = OrderForm.model_validate(received.texts)
    try:
        given = asked(request, form)
        admit(request, "order", given["number"], AN_HOUR, received.texts)
        photos = received.photos(photo_hose="hose", photo_routing="routing")
        kept = store_of(request).request_order(**given, photos=photos)
    except TooMany as error:
        return held_off(request, error, translator_of(request)("scan-order-not_sent"))
    except TaggerError as error:
        return _not_sent(request, form, error, as_json)
    if as_json:
        number = kept.number and tag_number.format(kept.number)
        return JSONResponse(
            {"reference": kept.reference, "number": number, "quantity": kept.quantity}, status_code=201
        )
    return RedirectResponse(f"/order/{kept.reference}", status_code=303)


def _not_sent(request: Request, form: OrderForm, error: TaggerError, as_json: bool) -> Response:
    """Why it was refused; the page has the form again with what was typed, where the hose is known."""
    t = translator_of(request)
    title = t("scan-order-not_sent")
    try:
        number, spec, _ = _wanted(request, form)
    except TaggerError:
        return refused(request, error, status=422, typed=form.number, title=title)
    if as_json:
        return refused(request, error, status=422, title=title)
    digits = form.digits.strip()
    typed = form.model_dump()
    if number:
        html = order_form(spec, t, number=number, digits=digits, typed=typed)
    else:
        html = order_form(spec, t, spec_json=form.spec, typed=typed)
    return page(
        request,
        "order_again.html",
        status=422,
        title=title,
        problems=error.problems,
        form=Markup(html),
        back="/".join(filter(None, ("/T", number, digits))) if number else None,
    )


def _wanted(request: Request, form: OrderForm) -> tuple[str | None, AssemblySpec, bool]:
    """The tag's number, what is wanted, and whether the shop has a record of it. Raises TaggerError."""
    if form.number.strip():
        found = find(store_of(request), form.number, form.digits.strip() or None, tables_of(request))
        return found.number, found.content.spec, found.record is not None
    if form.spec.strip():
        spec = AssemblySpec.read(form.spec)
        assess(spec, tables_of(request))  # refuses parts that cannot go together
        return None, spec, False
    raise NumberError(Problem("number", None, Message("scan-order-nothing")))


def asked(request: Request, form: OrderForm) -> dict[str, Any]:
    """The form as the store takes it. Raises TaggerError naming the fields that are wrong."""
    number, spec, ours = _wanted(request, form)
    return {
        "number": number,
        "spec": None if ours else spec,
        "quantity": _quantity(form.quantity),
        "needed_by": _day(form.needed_by, form.asked_on),
        "reference": form.reference.strip() or None,
        "contact": {"name": form.name, "company": form.company, "phone": form.phone, "email": form.email},
        "changes": _changes(form, Translator(settings_of(request).language)),
        "language": language_of(request),
        "key": form.key.strip() or _key_of(form),
    }


def _key_of(form: OrderForm) -> str:
    """Without JavaScript a double tap sends the same words twice: on one day they are one order."""
    words = f"{datetime.now(UTC).date()}|{form.model_dump_json()}"
    return f"words-{hashlib.sha256(words.encode()).hexdigest()[:40]}"


def _changes(form: OrderForm, t: Translator) -> str | None:
    """What must be different from the tag, a line each, for the shop to read."""
    given = [(label, getattr(form, name).strip()) for name, label in CHANGES]
    return "\n".join(t("scan-line", label=t(label), text=text) for label, text in given if text) or None


def _quantity(text: str) -> int:
    try:
        return int(text.strip() or "1")
    except ValueError:
        raise StoreError(Problem("quantity", text, Message("scan-order-quantity", given=text))) from None


def _day(text: str, asked_on: str) -> date | None:
    if not text.strip():
        return None
    try:
        day = date.fromisoformat(text.strip())
    except ValueError:
        raise StoreError(Problem("needed_by", text, Message("scan-order-day", given=text))) from None
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
    t = translator_of(request)
    try:
        kept = store_of(request).order(reference)
    except StoreError:
        unknown = Problem("order", reference, Message("scan-order-unknown", number=reference))
        return refused(request, StoreError(unknown), status=404, title=t("scan-order-not_found"))
    return page(
        request,
        "ordered.html",
        title=t("scan-ordered-title", reference=kept.reference),
        order=kept,
        needed_by=t("scan-day", day=kept.needed_by) if kept.needed_by else None,
        state=t(f"scan-order_state-{kept.state}"),
        said=kept.steps[-1].note if kept.steps else None,
        spec=[(label, text) for _, label, text in spec_rows(kept.spec, t)],
        number=kept.number and tag_number.format(kept.number),
        back=f"/T/{kept.number}" if kept.number and store_of(request).known(kept.number) else None,
        shop=tag_page.shop_of(request),
        answer_days=settings_of(request).answer_days,
    )
