"""The inbox of order requests: accept, ask the customer, build, mark as done."""

from __future__ import annotations

from collections.abc import Iterable

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.page import NOT_FOUND, go, refused, render
from api.web.identity import Builder, Counter, OwnForm
from api.web.state import store_of
from tagger.errors import Problem, TaggerError
from tagger.messages import Message
from tagger.store import OrderRequest, OrderState

router = APIRouter()
OPEN = (OrderState.RECEIVED, OrderState.ASKED, OrderState.ACCEPTED, OrderState.BUILDING)
BY_BUTTON = (OrderState.ACCEPTED, OrderState.ASKED, OrderState.DECLINED, OrderState.DONE)
"""The states that the shop sets by a button; an order is being built once a hose is registered for it."""


@router.get("/orders")
def orders_page(request: Request, me: Builder, show: str = "open") -> Response:
    """Every open one; the newest of all when asked."""
    store = store_of(request)
    shown = store.orders(limit=500) if show == "all" else store.orders(*OPEN, limit=None)
    title = Message("bench-orders-title")
    return render(
        request,
        "orders.html",
        title=title,
        here="orders",
        orders=shown,
        show=show,
        fitted=store.count_fitted_waiting(),
    )


@router.get("/orders/{reference}")
def order_page(request: Request, me: Builder, reference: str) -> Response:
    try:
        order = store_of(request).order(reference)
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    return _page(request, order)


def _page(
    request: Request, order: OrderRequest, problems: Iterable[Problem] = (), status: int = 200
) -> Response:
    store = store_of(request)
    ours = bool(order.number and store.known(order.number))
    return render(
        request,
        "order.html",
        title=Message("bench-order-title", order=order.reference),
        here="orders",
        status=status,
        order=order,
        problems=problems,
        ours=ours,
        reasons=tuple(held.reason for held in store.assembly(order.number or "").withdrawals) if ours else (),
        photos=store.order_photos(order.reference),
        next_states=[state for state in order.state.next if state in BY_BUTTON],
    )


@router.post("/orders/{reference}")
def move(request: Request, me: Counter, form: OwnForm, reference: str) -> Response:
    """Moves an order request on; the customer sees the state and the note on the tag's page."""
    store = store_of(request)
    try:
        order = store.order(reference)
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    try:
        store.set_order_state(
            reference, str(form.get("state")), by=me.person.name, note=str(form.get("note") or "")
        )
    except TaggerError as error:
        return _page(request, order, error.problems, 422)
    return go(f"/bench/orders/{order.reference}?note=saved")
