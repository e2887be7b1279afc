"""One customer: contacts, machines, assemblies and orders; and erasing a contact."""

from __future__ import annotations

from typing import Annotated, Any

from fastapi import APIRouter, Query

from api.rest.once import DoOnce
from api.rest.problem import RESPONSES, there
from api.rest.shared import Answer, AsCounter, AsManager, TheStore
from tagger.customer_export import of_customer
from tagger.errors import TaggerError

router = APIRouter(responses=RESPONSES, tags=["customers"])


class CustomerOut(Answer):
    """All that is kept of a customer; each assembly with its history, ``positions`` by machine."""

    customer: str
    contacts: list[dict[str, str]]
    machines: list[str]
    positions: dict[str, list[str]]
    assemblies: list[dict[str, Any]]
    orders: list[dict[str, Any]]
    fitted: list[dict[str, Any]]


class ErasedOut(Answer):
    """The order requests whose contact is erased; none where there was none left."""

    orders: list[str]


@router.get("/customer", summary="Export everything kept of one customer")
def customer(
    store: TheStore,
    token: AsCounter,
    name: Annotated[str, Query(min_length=1, max_length=200, description="Whole, in any case.")],
) -> CustomerOut:
    return CustomerOut(**of_customer(store, name))


@router.post(
    "/orders/{reference}/erase-contact",
    status_code=201,
    summary="Erase the contact of an order request wherever it stands",
)
def erase_contact(store: TheStore, token: AsManager, reference: str, once: DoOnce) -> ErasedOut:
    """Orders, assemblies and tags stay as they are; what is not yet sent to the contact is not sent."""
    try:
        store.order(reference)
    except TaggerError as error:
        raise there(error) from None
    return once(ErasedOut, lambda: ErasedOut(orders=store.erase_contact(reference)))
