"""The shop's crimp cards: the list, a form for one of them, a list to import."""

from __future__ import annotations

from collections.abc import Sequence

from fastapi import APIRouter, Request
from starlette.datastructures import UploadFile
from starlette.responses import Response

from api.bench.page import NOT_FOUND, go, refused, render
from api.shared import shop_files, spreadsheets
from api.web.identity import Builder, Manager, OwnForm
from api.web.state import store_of, tables_of
from tagger import crimp_cards
from tagger.errors import Problem, SpecError, TaggerError
from tagger.messages import Message
from tagger.store import CrimpValue

router = APIRouter(prefix="/shop/crimps")
BLANK = dict.fromkeys(crimp_cards.COLUMNS, "")


@router.get("")
def cards_page(request: Request, me: Builder, card: int | None = None) -> Response:
    """The list; with ``card`` that one in the form."""
    if card is None:
        return _page(request, BLANK)
    try:
        return _page(request, _fields_of(store_of(request).crimp_card(card)))
    except TaggerError as error:
        return _page(request, BLANK, error.problems, 404)


def _fields_of(card: CrimpValue) -> dict[str, str]:
    given = dict(zip(crimp_cards.COLUMNS, crimp_cards.row_of(card), strict=True))
    return {name: "" if value is None else f"{value}" for name, value in given.items()}


def _page(
    request: Request, fields: dict[str, str], problems: Sequence[Problem] = (), status: int = 200
) -> Response:
    return render(
        request,
        "crimps.html",
        title=Message("bench-crimps-title"),
        here="shop",
        status=status,
        problems=problems,
        wrong={problem.field: problem for problem in problems},
        cards=store_of(request).crimps(),
        fields=fields,
        standards=list(tables_of(request).standards),
        columns=crimp_cards.COLUMNS,
    )


@router.post("")
def keep(request: Request, me: Manager, form: OwnForm) -> Response:
    """A crimp card of the form: it holds from now on for its hose and fitting series."""
    fields = {name: str(form.get(name) or "").strip() for name in BLANK}
    try:
        store_of(request).keep_crimp(crimp_cards.card_of(fields, tables_of(request)), by=me.person.name)
    except TaggerError as error:
        return _page(request, fields, error.problems, 422)
    return go("/bench/shop/crimps?note=saved")


@router.post("/drop")
def drop(request: Request, me: Manager, form: OwnForm) -> Response:
    given = str(form.get("card") or "")
    try:
        store_of(request).drop_crimp(int(given) if given.isdecimal() else 0, by=me.person.name)
    except TaggerError as error:
        return _page(request, BLANK, error.problems, 404)
    return go("/bench/shop/crimps?note=saved")


@router.post("/import")
def import_list(request: Request, me: Manager, form: OwnForm) -> Response:
    """A CSV or XLSX list of crimp cards: all of its rows, or none."""
    file = form.get("file")
    try:
        if not isinstance(file, UploadFile) or not file.filename:
            raise SpecError(Problem("file", None, Message("bench-no-file")))
        cards = crimp_cards.read_cards(shop_files.cells_of(file), tables_of(request))
        store_of(request).keep_crimps(cards, by=me.person.name)
    except TaggerError as error:
        return _page(request, BLANK, error.problems, 422)
    return go("/bench/shop/crimps?note=saved")


@router.get("/cards.{form}")
def cards_file(request: Request, me: Builder, form: str) -> Response:
    """The list as a file, which can be imported again."""
    if form not in spreadsheets.FORMS:
        return refused(request, 404, NOT_FOUND, Message("bench-form-of-files"))
    return shop_files.crimp_cards_file(store_of(request), form)
