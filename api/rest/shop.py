"""What the shop keeps: recipes and crimp diameters; and its figures."""

from __future__ import annotations

from datetime import date, datetime
from typing import Annotated, Any, Literal

from fastapi import APIRouter, File, Path, Query, Request, UploadFile
from pydantic import Field
from starlette.responses import Response

from api.rest.once import DoOnce
from api.rest.problem import RESPONSES, there
from api.rest.shared import (
    MOST_ID,
    Answer,
    AsBuilder,
    AsManager,
    Request_,
    SpecIn,
    TheStore,
    answers_with,
    paged,
    spec_of,
)
from api.shared import figures, shop_files, spreadsheets
from api.web.language import translator_of
from api.web.state import tables_of
from tagger import crimp_cards
from tagger.code import number as tag_number
from tagger.errors import TaggerError
from tagger.store import CrimpValue, Recipe
from tagger.trade.servicelife import NOT_A_PERMISSION

router = APIRouter(responses=RESPONSES)


class RecipeOut(Answer):
    name: str
    spec: dict[str, Any]
    saved_at: datetime
    saved_by: str | None

    @classmethod
    def of(cls, item: Recipe) -> RecipeOut:
        return cls(**{**vars(item), "spec": item.spec.as_dict()})


class CrimpValueIn(Request_):
    """A crimp card with its band, from the fitting manufacturer's chart, which ``source`` names.

    ``hose_part``: the hose's own part number; a card without one is for the standard alone, and approves no
    hose and fitting series together. ``shell``: the fitting series.
    """

    hose_standard: str
    hose_dash: Annotated[int, Field(ge=1, le=63)]
    shell: str
    diameter_mm: float
    minus_mm: float
    plus_mm: float
    source: str
    hose_part: str = ""
    die: str | None = None
    skive_outside_mm: float | None = None
    skive_inside_mm: float | None = None
    insertion_depth_mm: float | None = None
    machine_setting: str | None = None


class CrimpValueOut(CrimpValueIn):
    id: int
    by: str | None


class DayOut(Answer):
    day: date
    count: int


class OldestOut(Answer):
    """A hose in use and the next date that a source names for it; never a permission."""

    number: str
    built_on: date | None
    customer: str | None
    machine: str | None
    position: str | None
    guidance: str | None
    until: date | None
    source: str | None


class FiguresOut(Answer):
    first: date
    last: date
    totals: dict[str, int]
    by_day: dict[str, list[DayOut]]
    oldest: list[OldestOut]
    caution: str


@router.get("/recipes", tags=["recipes"], summary="List the saved specs, by name")
def recipes(
    request: Request,
    response: Response,
    store: TheStore,
    token: AsBuilder,
    limit: Annotated[int, Query(ge=1, le=500)] = 100,
    after: Annotated[str | None, Query(description="Name of the last item received.")] = None,
) -> list[RecipeOut]:
    found = store.recipes(limit=limit + 1, after=after)
    return [RecipeOut.of(item) for item in paged(request, response, found, limit, lambda r: r.name)]


@router.get("/recipes/{name:path}", tags=["recipes"], summary="Get a saved spec")
def recipe(store: TheStore, token: AsBuilder, name: str) -> RecipeOut:
    try:
        return RecipeOut.of(store.recipe(name))
    except TaggerError as error:
        raise there(error) from None


@router.put(
    "/recipes/{name:path}",
    tags=["recipes"],
    summary="Save a spec under a name (without lots)",
    responses={409: {"description": "A manager saved another spec under this name."}},
)
def save_recipe(store: TheStore, token: AsBuilder, name: str, spec: SpecIn) -> RecipeOut:
    """Another spec of that name is replaced; one that a manager saved is refused (409) to anybody else."""
    return RecipeOut.of(store.save_recipe(name, spec_of(store, spec), by=token.name, role=token.role))


@router.delete("/recipes/{name:path}", tags=["recipes"], summary="Delete a saved spec and return it")
def drop_recipe(store: TheStore, token: AsManager, name: str) -> RecipeOut:
    dropped = recipe(store, token, name)
    store.drop_recipe(name)
    return dropped


@router.get(
    "/crimp-diameters", tags=["crimps"], summary="List current crimp diameters, optionally for one hose"
)
def crimps(
    request: Request,
    response: Response,
    store: TheStore,
    token: AsBuilder,
    hose_standard: str | None = None,
    hose_dash: Annotated[int | None, Query(ge=1, le=63)] = None,
    limit: Annotated[int, Query(ge=1, le=500)] = 100,
    after: Annotated[int | None, Query(ge=0, le=MOST_ID, description="ID of the last item received.")] = None,
) -> list[CrimpValueOut]:
    hose = crimp_cards.standard_of(tables_of(request), hose_standard) if hose_standard is not None else None
    found = store.crimps(hose, hose_dash, limit=limit + 1, after=after)
    return [CrimpValueOut(**vars(value)) for value in paged(request, response, found, limit, lambda c: c.id)]


@router.put(
    "/crimp-diameters", tags=["crimps"], summary="Set the crimp diameter of a hose and ferrule (shell)"
)
def keep_crimp(request: Request, store: TheStore, token: AsManager, body: CrimpValueIn) -> CrimpValueOut:
    given = body.model_dump() | {
        "hose_standard": crimp_cards.standard_of(tables_of(request), body.hose_standard)
    }
    return CrimpValueOut(**vars(store.keep_crimp(CrimpValue(**given), by=token.name)))


@router.post(
    "/crimp-diameters/import",
    status_code=201,
    tags=["crimps"],
    summary="Import crimp cards (all rows or none)",
)
def import_crimps(
    request: Request,
    store: TheStore,
    token: AsManager,
    file: Annotated[UploadFile, File(description="CSV or XLSX with a header row.")],
    once: DoOnce,
) -> list[CrimpValueOut]:
    tables = tables_of(request)

    def read() -> dict[int, CrimpValue]:
        return crimp_cards.read_cards(shop_files.cells_of(file), tables)

    def keep(cards: dict[int, CrimpValue]) -> list[CrimpValueOut]:
        return [CrimpValueOut(**vars(card)) for card in store.keep_crimps(cards, by=token.name)]

    return once.prepared(list[CrimpValueOut], read, keep)


@router.delete("/crimp-diameters/{card:int}", tags=["crimps"], summary="Delete a crimp card and return it")
def drop_crimp(
    store: TheStore, token: AsManager, card: Annotated[int, Path(ge=0, le=MOST_ID)]
) -> CrimpValueOut:
    """What was measured against it keeps its band."""
    try:
        return CrimpValueOut(**vars(store.drop_crimp(card, by=token.name)))
    except TaggerError as error:
        raise there(error) from None


@router.get(
    "/crimp-diameters.{form}",
    tags=["crimps"],
    summary="Export the crimp cards as CSV or XLSX; the file can be imported again",
    responses=answers_with("text/csv", spreadsheets.SHEET, words="The list."),
    response_class=Response,
)
def crimps_file(store: TheStore, token: AsBuilder, form: Literal["csv", "xlsx"]) -> Response:
    return shop_files.crimp_cards_file(store, form)


@router.get("/figures", tags=["figures"], summary="Get prints, scans and orders by day, and the oldest hoses")
def shop_figures(
    request: Request,
    store: TheStore,
    token: AsManager,
    days: Annotated[int, Query(ge=figures.LEAST_DAYS, le=figures.MOST_DAYS)] = figures.DAYS,
) -> FiguresOut:
    found, t = figures.collect(store, tables_of(request), days), translator_of(request)
    by_day = {str(k): [DayOut(day=d, count=n) for d, n in counts] for k, counts in found.by_day.items()}
    oldest = [
        OldestOut(
            number=tag_number.format(item.number),
            built_on=item.built_on,
            customer=item.customer,
            machine=item.machine,
            position=item.position,
            guidance=t(g.message) if g else None,
            until=g.until if g else None,
            source=g.source if g else None,
        )
        for item, g in found.oldest
    ]
    return FiguresOut(
        first=found.first,
        last=found.today,
        totals=vars(found.totals),
        by_day=by_day,
        oldest=oldest,
        caution=t(NOT_A_PERMISSION),
    )
