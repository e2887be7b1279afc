"""Order requests and their steps."""

from __future__ import annotations

from typing import Annotated

from fastapi import APIRouter, Query, Request
from pydantic import Field
from starlette.responses import Response

from api.rest.once import DoOnce
from api.rest.problem import RESPONSES, there
from api.rest.shared import AsBuilder, AsCounter, OrderOut, Request_, SpecIn, TheStore, paged, spec_of
from tagger.errors import TaggerError
from tagger.moments import Day
from tagger.spec import MAX_COUNT
from tagger.store import Contact, OrderState, refuse_past

router = APIRouter(responses=RESPONSES)


class OrderIn(Request_):
    """The same assembly again (``number``), or one to a spec, or both for another shop's tag."""

    number: str | None = None
    spec: SpecIn | None = None
    quantity: Annotated[int, Field(ge=1, le=MAX_COUNT)] = 1
    needed_by: Day | None = None
    reference: Annotated[str | None, Field(max_length=80, description="Customer's reference.")] = None
    contact: Contact
    changes: Annotated[str | None, Field(max_length=2000)] = None


class StepIn(Request_):
    state: OrderState
    note: Annotated[str | None, Field(max_length=1000)] = None


@router.post("/orders", status_code=201, tags=["orders"], summary="Create an order request")
def add(store: TheStore, token: AsBuilder, body: OrderIn, once: DoOnce) -> OrderOut:
    def act() -> OrderOut:
        refuse_past(body.needed_by, store.now().date())
        order = store.request_order(
            number=body.number,
            spec=spec_of(store, body.spec) if body.spec else None,
            quantity=body.quantity,
            needed_by=body.needed_by,
            reference=body.reference,
            contact=body.contact,
            changes=body.changes,
        )
        return OrderOut.of(order)

    return once(OrderOut, act)


@router.get("/orders", tags=["orders"], summary="List order requests, newest first")
def all_orders(
    request: Request,
    response: Response,
    store: TheStore,
    token: AsBuilder,
    state: OrderState | None = None,
    number: str | None = None,
    limit: Annotated[int, Query(ge=1, le=500)] = 100,
    after: Annotated[str | None, Query(description="Reference of the last item received.")] = None,
) -> list[OrderOut]:
    found = store.orders(*((state,) if state else ()), number=number, limit=limit + 1, after=after)
    return [OrderOut.of(o) for o in paged(request, response, found, limit, lambda o: o.reference)]


@router.get("/orders/{reference}", tags=["orders"], summary="Get an order request")
def one(store: TheStore, token: AsBuilder, reference: str) -> OrderOut:
    try:
        return OrderOut.of(store.order(reference))
    except TaggerError as error:
        raise there(error) from None


@router.post(
    "/orders/{reference}/steps",
    status_code=201,
    tags=["orders"],
    summary="Change the status of an order request",
)
def step(store: TheStore, token: AsCounter, reference: str, body: StepIn, once: DoOnce) -> OrderOut:
    one(store, token, reference)  # not there: 404
    return once(
        OrderOut,
        lambda: OrderOut.of(store.set_order_state(reference, body.state, by=token.name, note=body.note)),
    )
