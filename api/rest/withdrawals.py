"""Withdrawals: what must not be used, what that touches, whom to call, and lifting it again."""

from __future__ import annotations

from datetime import date
from typing import Annotated

from fastapi import APIRouter, Query, Request
from starlette.responses import Response

from api.rest.once import DoOnce
from api.rest.problem import RESPONSES, NotThere, there
from api.rest.shared import (
    MOST_ID,
    Answer,
    AsBuilder,
    AsCounter,
    AsManager,
    Id,
    Request_,
    TheStore,
    WithdrawalOut,
    answers_with,
    paged,
    pdf,
)
from api.shared import call_list as calls
from api.shared import spreadsheets
from api.shared.papers.withdrawal_letters import letters
from api.web.language import paper_language
from api.web.state import settings_of
from tagger.code import number as tag_number
from tagger.errors import Problem, TaggerError
from tagger.messages import Message
from tagger.store import Scope, Store, Withdrawal

router = APIRouter(responses=RESPONSES, tags=["withdrawals"])


class WithdrawIn(Request_):
    """Exactly one of the three."""

    reason: str
    tag: str | None = None
    hose_lot: str | None = None
    fitting_lot: str | None = None


class LiftIn(Request_):
    reason: str


class AffectedOut(Answer):
    affected: list[str]


class CallOut(Answer):
    """One hose that a withdrawal touches, and whose it is."""

    customer: str | None
    number: str
    machine: str | None
    position: str | None
    hose: str
    lots: str
    built_on: date | None
    replaced_by: str | None
    contact: str | None
    phone: str | None
    email: str | None


class WithdrawalDone(Answer):
    """The withdrawal, and the tag numbers it touches now."""

    withdrawal: WithdrawalOut
    affected: list[str]


@router.get("/withdrawals", summary="List withdrawals, newest first")
def all_withdrawals(
    request: Request,
    response: Response,
    store: TheStore,
    token: AsBuilder,
    holds: bool | None = None,
    limit: Annotated[int, Query(ge=1, le=500)] = 100,
    after: Annotated[int | None, Query(ge=0, le=MOST_ID, description="ID of the last item received.")] = None,
) -> list[WithdrawalOut]:
    found = store.withdrawals(holds=holds, limit=limit + 1, after=after)
    return [WithdrawalOut.of(item) for item in paged(request, response, found, limit, lambda w: w.id)]


@router.get("/affected", summary="Preview the assemblies affected by a withdrawal")
def affected(
    store: TheStore, token: AsBuilder, scope: Scope, value: Annotated[str, Query(min_length=1, max_length=40)]
) -> AffectedOut:
    return AffectedOut(affected=_numbers(store, scope, value))


@router.get("/withdrawals/{withdrawal}", summary="Get a withdrawal and the assemblies it affects")
def one_withdrawal(store: TheStore, token: AsBuilder, withdrawal: Id) -> WithdrawalDone:
    return _done(store, _known(store, withdrawal))


@router.get("/withdrawals/{withdrawal}/call-list", summary="List affected hoses by customer")
def call_list(store: TheStore, token: AsBuilder, withdrawal: Id) -> list[CallOut]:
    rows = calls.rows(store, calls.touched(store, _known(store, withdrawal)))
    return [CallOut(**dict(zip(calls.HEADING, row, strict=True))) for row in rows]


@router.get(
    "/withdrawals/{withdrawal}/call-list.csv",
    summary="Export affected hoses by customer as CSV",
    response_class=Response,
    responses=answers_with("text/csv", words="A heading, and a row for each hose."),
)
def call_list_file(store: TheStore, token: AsBuilder, withdrawal: Id) -> Response:
    rows = calls.rows(store, calls.touched(store, _known(store, withdrawal)))
    return spreadsheets.file("csv", f"withdrawn-{withdrawal}", calls.HEADING, rows)


@router.get(
    "/withdrawals/{withdrawal}/letters.pdf",
    summary="Get a letter for each customer",
    response_class=Response,
    responses=answers_with("application/pdf", words="The letters, on A4; each begins on a new page."),
)
def letters_pdf(request: Request, store: TheStore, token: AsCounter, withdrawal: Id) -> Response:
    known = _known(store, withdrawal)
    items = calls.touched(store, known)
    if not items:
        raise NotThere(Problem("withdrawal", withdrawal, Message("rest-nobody-affected")))
    return pdf(
        letters(known, items, settings_of(request), paper_language(request)), f"withdrawn-{withdrawal}"
    )


@router.post("/withdrawals", status_code=201, summary="Withdraw a tag or a lot")
def withdraw(store: TheStore, token: AsCounter, body: WithdrawIn, once: DoOnce) -> WithdrawalDone:
    given = body.model_dump(exclude={"reason"})
    return once(WithdrawalDone, lambda: _done(store, store.withdraw(body.reason, by=token.name, **given)))


@router.post("/withdrawals/{withdrawal}/lift", summary="Lift a withdrawal")
def lift(store: TheStore, token: AsManager, withdrawal: Id, body: LiftIn, once: DoOnce) -> WithdrawalDone:
    _known(store, withdrawal)
    return once(WithdrawalDone, lambda: _done(store, store.lift(withdrawal, body.reason, by=token.name)))


def _known(store: Store, withdrawal: int) -> Withdrawal:
    try:
        return store.withdrawal(withdrawal)
    except TaggerError as error:
        raise there(error) from None


def _done(store: Store, known: Withdrawal) -> WithdrawalDone:
    numbers = _numbers(store, known.scope, known.value)
    return WithdrawalDone(withdrawal=WithdrawalOut.of(known), affected=numbers)


def _numbers(store: Store, scope: Scope, value: str) -> list[str]:
    return [tag_number.format(number) for number in store.affected(scope, value)]
