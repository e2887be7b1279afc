"""The shop's own values: what manufacturers said of a part, kept once for every later assembly."""

from __future__ import annotations

from datetime import datetime
from typing import Annotated, Any

from fastapi import APIRouter, Query, Request
from pydantic import Field

from api.rest.once import DoOnce
from api.rest.problem import RESPONSES, there
from api.rest.shared import Answer, AsBuilder, AsManager, Id, Request_, SpecIn, TheStore, spec_of
from api.web.language import translator_of
from api.web.state import tables_of
from tagger.code import number as tag_number
from tagger.errors import TaggerError
from tagger.i18n import Translator
from tagger.store import KeptRow
from tagger.store.overrated import every_overrated
from tagger.trade import keeping

router = APIRouter(responses=RESPONSES, tags=["shop values"])


class ShopValueOut(Answer):
    """A row of the shop's own: its table and cells as text, who kept it, and what became of it.

    ``ended_at`` is null while it holds; then it was replaced by another, or withdrawn, with ``why``.
    """

    id: int
    table: str
    cells: dict[str, str]
    at: datetime
    by: str | None
    ended_at: datetime | None
    ended_by: str | None
    why: str | None
    replaced_by: int | None
    message: dict[str, Any]

    @classmethod
    def of(cls, item: KeptRow, t: Translator) -> ShopValueOut:
        return cls(**item.as_dict(t))


class KeepIn(Request_):
    """A spec with a manufacturer's rating of a part (`end_a.rating`, `hose.rating`), or its approval of a fluid."""

    spec: SpecIn


class WithdrawValueIn(Request_):
    """Why the value is not to be used any more."""

    reason: Annotated[str, Field(min_length=1, max_length=200)]


class OverratedOut(Answer):
    """An assembly rated above what the tables of today allow; ``now_bar`` null: no pressure applies."""

    number: str
    was_bar: float
    now_bar: float | None
    customer: str | None
    machine: str | None
    message: dict[str, Any]


@router.get("/overrated", tags=["assemblies"], summary="List assemblies rated above today's tables")
def overrated(request: Request, store: TheStore, token: AsBuilder) -> list[OverratedOut]:
    t = translator_of(request)
    return [
        OverratedOut(
            number=tag_number.format(item.number),
            was_bar=found.was_bar,
            now_bar=found.now_bar,
            customer=item.customer,
            machine=item.machine,
            message=t.as_json(found.message),
        )
        for item, found in every_overrated(store, tables_of(request))
    ]


@router.get("/shop-values", summary="List the shop's own values")
def shop_values(
    request: Request,
    store: TheStore,
    token: AsBuilder,
    ended: Annotated[bool, Query(description="Also those that were replaced or withdrawn.")] = False,
) -> list[ShopValueOut]:
    t = translator_of(request)
    return [ShopValueOut.of(row, t) for row in store.shop_rows(ended=ended)]


@router.post(
    "/shop-values", status_code=201, summary="Keep the manufacturers' values in a spec as the shop's own"
)
def keep_values(
    request: Request, store: TheStore, token: AsBuilder, body: KeepIn, once: DoOnce
) -> list[ShopValueOut]:
    t = translator_of(request)

    def kept() -> list[ShopValueOut]:
        rows = keeping.rows_of(spec_of(store, body.spec), tables_of(request))
        return [ShopValueOut.of(row, t) for row in store.keep_shop_rows(rows, by=token.name)]

    return once(list[ShopValueOut], kept)


@router.post("/shop-values/{value}/withdraw", summary="Withdraw one of the shop's own values")
def withdraw_value(
    request: Request, store: TheStore, token: AsManager, value: Id, body: WithdrawValueIn, once: DoOnce
) -> ShopValueOut:
    t = translator_of(request)

    def withdrawn() -> ShopValueOut:
        try:
            return ShopValueOut.of(store.withdraw_shop_row(value, body.reason, by=token.name), t)
        except TaggerError as error:
            raise there(error) from None

    return once(ShopValueOut, withdrawn)
