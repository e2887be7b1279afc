"""The shop's fittings by stock number: find, keep, import, delete."""

from __future__ import annotations

from typing import Annotated, Any, Literal

from fastapi import APIRouter, Body, File, Query, Request, UploadFile
from starlette.responses import Response

from api.rest.once import DoOnce
from api.rest.problem import RESPONSES, there
from api.rest.shared import Answer, AsBuilder, AsManager, TheStore, answers_with, paged
from api.shared import shop_files, spreadsheets
from api.web.state import tables_of
from tagger import shop_lists
from tagger.errors import TaggerError
from tagger.trade.fittings import Fitting, read_fitting

router = APIRouter(responses=RESPONSES, tags=["fittings"])
FittingIn = Annotated[
    dict[str, Any],
    Body(
        description="The fitting without its stock number: `fitting_series`, `end` (as the end of a spec), "
        "`swivel`, `cut_off_mm`, `cut_off_kind` (`seat_to_hose_butt` or `seat_to_shell_mouth`), "
        "`insertion_depth_mm`, `source` of these, `rating_bar`, `rating_source`, "
        "`rating_confirmed` (it is right although it is above every rating of its family), `note`. "
        "Lengths are mm, or a text with a unit.",
    ),
]


class ImportedOut(Answer):
    """``fittings``: the stock numbers of the list, which now hold."""

    fittings: list[str]


@router.get("/fittings", summary="List the shop's fittings by stock number, or find them by a few letters")
def fittings(
    request: Request,
    response: Response,
    store: TheStore,
    token: AsBuilder,
    text: Annotated[str, Query(max_length=200, description="Parts of the number, series or end.")] = "",
    limit: Annotated[int, Query(ge=1, le=500)] = 100,
    after: Annotated[str | None, Query(description="Stock number of the last item received.")] = None,
) -> list[Fitting]:
    found = store.fittings(text, limit=limit + 1, after=after)
    return list(paged(request, response, found, limit, lambda one: one.stock_number))


@router.get(
    "/fittings.{form}",
    summary="Export the fittings as CSV or XLSX; the file can be imported again",
    responses=answers_with("text/csv", spreadsheets.SHEET, words="The list."),
    response_class=Response,
)
def fittings_file(store: TheStore, token: AsBuilder, form: Literal["csv", "xlsx"]) -> Response:
    return shop_files.fittings(store, form)


@router.post("/fittings/import", status_code=201, summary="Import a list of fittings (all rows or none)")
def import_fittings(
    request: Request,
    store: TheStore,
    token: AsManager,
    file: Annotated[UploadFile, File(description="CSV or XLSX with a header row.")],
    once: DoOnce,
) -> ImportedOut:
    def read() -> list[Fitting]:
        return shop_lists.read_fittings(shop_files.cells_of(file), tables_of(request))

    def keep(rows: list[Fitting]) -> ImportedOut:
        return ImportedOut(fittings=[one.stock_number for one in store.keep_fittings(rows, by=token.name)])

    return once.prepared(ImportedOut, read, keep)


@router.get("/fittings/{stock_number:path}", summary="Get a fitting by its stock number (any case)")
def fitting(store: TheStore, token: AsBuilder, stock_number: str) -> Fitting:
    try:
        return store.fitting(stock_number)
    except TaggerError as error:
        raise there(error) from None


@router.put("/fittings/{stock_number:path}", summary="Keep a fitting under its stock number")
def keep_fitting(
    request: Request, store: TheStore, token: AsManager, stock_number: str, body: FittingIn
) -> Fitting:
    given = read_fitting({**body, "stock_number": stock_number})
    shop_lists.refuse_unsound(given, tables_of(request))
    return store.keep_fitting(given, by=token.name)


@router.delete("/fittings/{stock_number:path}", summary="Delete a fitting from the list and return it")
def drop_fitting(store: TheStore, token: AsManager, stock_number: str) -> Fitting:
    try:
        return store.drop_fitting(stock_number, by=token.name)
    except TaggerError as error:
        raise there(error) from None
