"""A customer's page: contacts, machines, assemblies, orders; its data as a file; erasing a contact."""

from __future__ import annotations

import json
from urllib.parse import quote

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.page import NOT_FOUND, go, refused, render
from api.web.identity import Builder, Counter, Manager, OwnForm
from api.web.state import store_of
from tagger.customer_export import of_customer
from tagger.errors import TaggerError
from tagger.messages import Message
from tagger.store import Filter

router = APIRouter()
_SHOWN = 50


@router.get("/customer")
def customer_page(request: Request, me: Builder, name: str = "") -> Response:
    store = store_of(request)
    orders = store.customer_orders(name) if name.strip() else []
    found = store.find(Filter(customer=name), limit=_SHOWN) if name.strip() else None
    if found is None or not (found.assemblies or orders):
        return refused(request, 404, NOT_FOUND, Message("bench-customer-none", name=name))
    return render(
        request,
        "customer.html",
        title=name,
        here="find",
        name=name,
        contacts=store.contacts(name),
        machines=store.positions(name),
        orders=orders,
        items=found.assemblies,
        count=store.count(Filter(customer=name)),
    )


@router.get("/customer.json")
def customer_file(request: Request, me: Counter, name: str) -> Response:
    """All that is kept of the customer."""
    body = json.dumps(of_customer(store_of(request), name), ensure_ascii=False, indent=2)
    headers = {"Content-Disposition": 'attachment; filename="customer.json"', "Cache-Control": "no-store"}
    return Response(body, media_type="application/json", headers=headers)


@router.post("/customer/erase")
def erase(request: Request, me: Manager, form: OwnForm) -> Response:
    """Erases a contact wherever it stands; orders and tags stay."""
    try:
        store_of(request).erase_contact(str(form.get("reference") or ""))
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    return go(f"/bench/customer?name={quote(str(form.get('name') or ''))}&note=saved")
