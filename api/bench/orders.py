"""The inbox of order requests: accept, ask back, build, done."""

from __future__ import annotations

from collections.abc import Iterable

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.page import go, refused, render
from api.web.identity import Builder, Counter, OwnForm
from api.web.state import store_of
from tagger.errors import Problem, TaggerError
from tagger.store import OrderRequest, OrderState

router = APIRouter()
OPEN = (OrderState.RECEIVED, OrderState.ASKED, OrderState.ACCEPTED, OrderState.BUILDING)
VERBS = {
    OrderState.ACCEPTED: "Accept",
    OrderState.ASKED: "Ask back",
    OrderState.DECLINED: "Decline",
    OrderState.DONE: "Done",
}


@router.get("/orders")
def orders_page(request: Request, me: Builder, show: str = "open") -> Response:
    """Every open one; the newest of all when asked."""
    store = store_of(request)
    shown = store.orders(limit=500) if show == "all" else store.orders(*OPEN, limit=None)
    return render(
        request, "orders.html", title="Order requests", here="/bench/orders", orders=shown, show=show
    )


@router.get("/orders/{reference}")
def order_page(request: Request, me: Builder, reference: str) -> Response:
    try:
        order = store_of(request).order(reference)
    except TaggerError as error:
        return refused(request, 404, "Not found", str(error))
    return _page(request, order)


def _page(
    request: Request, order: OrderRequest, problems: Iterable[Problem] = (), status: int = 200
) -> Response:
    ours = bool(order.number and store_of(request).known(order.number))
    verbs = [(state, VERBS[state]) for state in order.state.next if state in VERBS]
    return render(
        request, "order.html", title=f"Order {order.reference}", here="/bench/orders", status=status, order=order,
        problems=problems, ours=ours, verbs=verbs,
    )  # fmt: skip


@router.post("/orders/{reference}")
def move(request: Request, me: Counter, form: OwnForm, reference: str) -> Response:
    """Moves an order request on; the customer sees the state and the note on the tag's page."""
    store = store_of(request)
    try:
        order = store.order(reference)
    except TaggerError as error:
        return refused(request, 404, "Not found", str(error))
    try:
        store.set_order_state(
            reference, str(form.get("state")), by=me.person.name, note=str(form.get("note") or "")
        )
    except TaggerError as error:
        return _page(request, order, error.problems, 422)
    return go(f"/bench/orders/{order.reference}?note=saved")
