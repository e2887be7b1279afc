"""Order requests and withdrawals."""

from __future__ import annotations

from datetime import date
from typing import Annotated

from fastapi import APIRouter, Query
from pydantic import Field

from api.rest.problem import RESPONSES, there
from api.rest.shared import (
    Answer,
    AsBuilder,
    AsCounter,
    AsManager,
    IdempotencyKey,
    OrderOut,
    Request_,
    SpecIn,
    TheStore,
    WithdrawalOut,
    own_key,
    spec_of,
)
from tagger.code import number as tag_number
from tagger.errors import TaggerError
from tagger.store import Contact, OrderState

router = APIRouter(responses=RESPONSES)


class OrderIn(Request_):
    """The same assembly again (``number``), or one to a spec, or both for another shop's tag."""

    number: str | None = None
    spec: SpecIn | None = None
    quantity: Annotated[int, Field(ge=1, le=10_000)] = 1
    needed_by: date | None = None
    reference: Annotated[str | None, Field(max_length=80, description="The customer's own word for it.")] = (
        None
    )
    contact: Contact
    changes: Annotated[str | None, Field(max_length=2000)] = None


class StepIn(Request_):
    state: OrderState
    note: Annotated[str | None, Field(max_length=1000)] = None


class WithdrawIn(Request_):
    """Exactly one of the three."""

    reason: str
    tag: str | None = None
    hose_lot: str | None = None
    fitting_lot: str | None = None


class LiftIn(Request_):
    reason: str


class WithdrawalDone(Answer):
    """The withdrawal, and the tag numbers it touches now."""

    withdrawal: WithdrawalOut
    affected: list[str]


@router.post("/orders", status_code=201, tags=["orders"], summary="Keep an order request")
def add(store: TheStore, token: AsBuilder, body: OrderIn, key: IdempotencyKey = None) -> OrderOut:
    order = store.request_order(
        number=body.number, spec=spec_of(body.spec) if body.spec else None, quantity=body.quantity,
        needed_by=body.needed_by, reference=body.reference, contact=body.contact, changes=body.changes,
        key=own_key(key, token.id),
    )  # fmt: skip
    return OrderOut.of(order)


@router.get("/orders", tags=["orders"], summary="Order requests, newest first")
def all_orders(
    store: TheStore,
    token: AsBuilder,
    state: OrderState | None = None,
    number: str | None = None,
    limit: Annotated[int, Query(ge=1, le=500)] = 100,
    after: Annotated[str | None, Query(description="The reference of the last one you have.")] = None,
) -> list[OrderOut]:
    try:
        return [OrderOut.of(o) for o in store.orders(state, number=number, limit=limit, after=after)]
    except TaggerError as error:
        raise there(error) from None


@router.get("/orders/{reference}", tags=["orders"], summary="One order request")
def one(store: TheStore, token: AsBuilder, reference: str) -> OrderOut:
    try:
        return OrderOut.of(store.order(reference))
    except TaggerError as error:
        raise there(error) from None


@router.post(
    "/orders/{reference}/steps", status_code=201, tags=["orders"], summary="Move an order request on"
)
def step(store: TheStore, token: AsCounter, reference: str, body: StepIn) -> OrderOut:
    return OrderOut.of(store.set_order_state(reference, body.state, by=token.name, note=body.note))


@router.get("/withdrawals", tags=["withdrawals"], summary="What is withdrawn, newest first")
def all_withdrawals(store: TheStore, token: AsBuilder, holds: bool | None = None) -> list[WithdrawalOut]:
    return [WithdrawalOut.of(item) for item in store.withdrawals(holds=holds)]


@router.get("/withdrawals/{withdrawal}", tags=["withdrawals"], summary="One withdrawal and what it touches")
def one_withdrawal(store: TheStore, token: AsBuilder, withdrawal: int) -> WithdrawalDone:
    try:
        return _done(store, withdrawal)
    except TaggerError as error:
        raise there(error) from None


@router.post("/withdrawals", status_code=201, tags=["withdrawals"], summary="Withdraw a tag or a lot")
def withdraw(store: TheStore, token: AsCounter, body: WithdrawIn) -> WithdrawalDone:
    given = body.model_dump(exclude={"reason"})
    return _done(store, store.withdraw(body.reason, by=token.name, **given).id)


@router.post("/withdrawals/{withdrawal}/lift", tags=["withdrawals"], summary="Lift a withdrawal")
def lift(store: TheStore, token: AsManager, withdrawal: int, body: LiftIn) -> WithdrawalDone:
    return _done(store, store.lift(withdrawal, body.reason, by=token.name).id)


def _done(store: TheStore, withdrawal: int) -> WithdrawalDone:
    known = store.withdrawal(withdrawal)
    affected = [tag_number.format(number) for number in store.affected(known.scope, known.value)]
    return WithdrawalDone(withdrawal=WithdrawalOut.of(known), affected=affected)
