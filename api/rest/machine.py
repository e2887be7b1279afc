"""A machine's hoses by position, for a service visit; and ordering all of them, or some."""

from __future__ import annotations

from typing import Annotated

from fastapi import APIRouter, Query, Request
from pydantic import Field

from api.rest.once import DoOnce
from api.rest.problem import RESPONSES
from api.rest.shared import Answer, AsBuilder, AsCounter, AssemblyOut, OrderOut, Request_, TheStore
from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.moments import Day
from tagger.store import Contact

router = APIRouter(responses=RESPONSES, tags=["machines"])
Named = Annotated[str, Query(max_length=120, description="Full name, not case-sensitive.")]


class OrderAllIn(Request_):
    """One hose of each: of all on the machine now, or of those whose ``numbers`` are given."""

    machine: Annotated[str, Field(max_length=120)]
    customer: Annotated[str, Field(max_length=120)] = ""
    numbers: Annotated[list[str] | None, Field(min_length=1, max_length=500)] = None
    needed_by: Day | None = None
    reference: Annotated[str | None, Field(max_length=80, description="Customer's reference.")] = None
    contact: Contact


class OrdersOut(Answer):
    orders: list[OrderOut]


@router.get("/machine", summary="List the hoses installed on a machine, by position")
def on_machine(
    request: Request, store: TheStore, token: AsBuilder, machine: Named, customer: Named = ""
) -> list[AssemblyOut]:
    return AssemblyOut.each(store.on_machine(customer, machine), request)


@router.post("/machine/order", status_code=201, summary="Order the hoses of a machine (all or none)")
def order_all(store: TheStore, token: AsCounter, body: OrderAllIn, once: DoOnce) -> OrdersOut:
    def act() -> OrdersOut:
        numbers = body.numbers or [item.number for item in store.on_machine(body.customer, body.machine)]
        if not numbers:
            raise StoreError(
                Problem("machine", body.machine, Message("rest-machine-without-hoses", machine=body.machine))
            )
        made = store.request_orders(
            numbers, needed_by=body.needed_by, reference=body.reference, contact=body.contact
        )
        return OrdersOut(orders=[OrderOut.of(order) for order in made])

    return once(OrdersOut, act)
