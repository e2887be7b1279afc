"""The shop's own hoses by part number and dash: list, keep, withdraw."""

from __future__ import annotations

from typing import Annotated, Any

from fastapi import APIRouter, Body, Query, Request

from api.rest.problem import RESPONSES
from api.rest.shared import Answer, AsBuilder, AsManager, TheStore
from api.web.language import translator_of
from api.web.state import tables_of
from tagger.i18n import Translator
from tagger.trade import own_hoses
from tagger.trade.own_hoses import OwnHose, read_own_hose
from tagger.trade.tables import Tables

router = APIRouter(responses=RESPONSES, tags=["hoses"])
HoseIn = Annotated[
    dict[str, Any],
    Body(
        description="`part`, `manufacturer`, `standard`, `dash`, `edition`, `max_working_bar`, `bend_radius_mm`, "
        "`outside_diameter_mm`, `max_temperature_c`, `fluids`, `source` of these. Lengths are mm and pressures bar, "
        "or a text with a unit.",
    ),
]


class OwnHoseOut(Answer):
    """A hose of the shop; ``above_published_bar``: the highest published rating, where its own is above it."""

    hose: OwnHose
    above_published_bar: float | None
    message: dict[str, Any]

    @classmethod
    def of(cls, hose: OwnHose, tables: Tables, t: Translator) -> OwnHoseOut:
        above, said = own_hoses.above_published(hose, tables), own_hoses.said(hose, tables)
        return cls(hose=hose, above_published_bar=above, message=t.as_json(said))


@router.get("/hoses", summary="List the shop's own hoses by part number and dash")
def hoses(request: Request, store: TheStore, token: AsBuilder) -> list[OwnHoseOut]:
    tables, t = tables_of(request), translator_of(request)
    return [OwnHoseOut.of(hose, tables, t) for hose in store.own_hoses()]


@router.put("/hoses", summary="Keep a hose of the shop under its part number and dash")
def keep_hose(request: Request, store: TheStore, token: AsManager, body: HoseIn) -> OwnHoseOut:
    kept = store.keep_own_hose(read_own_hose(body, tables_of(request)), by=token.name)
    return OwnHoseOut.of(kept, tables_of(request), translator_of(request))


@router.delete("/hoses", summary="Withdraw a hose of the shop and return it")
def drop_hose(
    request: Request,
    store: TheStore,
    token: AsManager,
    part: Annotated[str, Query(min_length=1, max_length=40)],
    dash: Annotated[int, Query(ge=1, le=63)],
    reason: Annotated[str, Query(min_length=1, max_length=200)],
) -> OwnHoseOut:
    dropped = store.drop_own_hose(part, dash, reason, by=token.name)
    return OwnHoseOut.of(dropped, tables_of(request), translator_of(request))
