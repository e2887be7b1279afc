"""The shop's own hoses by part number and dash: list, keep, withdraw."""

from __future__ import annotations

from typing import Annotated, Any, Literal

from fastapi import APIRouter, Body, File, Query, Request, UploadFile
from starlette.responses import Response

from api.rest.once import DoOnce
from api.rest.problem import RESPONSES
from api.rest.shared import Answer, AsBuilder, AsManager, TheStore, answers_with
from api.shared import shop_files, spreadsheets
from api.web.language import translator_of
from api.web.state import tables_of
from tagger import shop_lists
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


class HosesOut(Answer):
    """``hoses``: those of the list, which now hold."""

    hoses: list[OwnHoseOut]


@router.post("/hoses/import", status_code=201, summary="Import a list of the shop's hoses (all rows or none)")
def import_hoses(
    request: Request,
    store: TheStore,
    token: AsManager,
    file: Annotated[UploadFile, File(description="CSV or XLSX with a header row.")],
    once: DoOnce,
) -> HosesOut:
    tables, t = tables_of(request), translator_of(request)

    def read() -> list[OwnHose]:
        return shop_lists.read_own_hoses(shop_files.cells_of(file), tables)

    def keep(hoses: list[OwnHose]) -> HosesOut:
        kept = store.keep_own_hoses(hoses, by=token.name)
        return HosesOut(hoses=[OwnHoseOut.of(hose, tables, t) for hose in kept])

    return once.prepared(HosesOut, read, keep)


@router.get(
    "/hoses.{form}",
    summary="Export the shop's hoses as CSV or XLSX; the file can be imported again",
    responses=answers_with("text/csv", spreadsheets.SHEET, words="The list."),
    response_class=Response,
)
def hoses_file(store: TheStore, token: AsBuilder, form: Literal["csv", "xlsx"]) -> Response:
    return shop_files.own_hoses(store, form)


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
