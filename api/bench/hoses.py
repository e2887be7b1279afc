"""The shop's own hoses: the list, and a form for one of them."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from fastapi import APIRouter, Request
from starlette.datastructures import UploadFile
from starlette.responses import Response

from api.bench.page import NOT_FOUND, go, refused, render
from api.shared import shop_files, spreadsheets
from api.web.identity import Builder, Manager, OwnForm
from api.web.state import store_of, tables_of
from tagger import shop_lists
from tagger.errors import Problem, SpecError, TaggerError
from tagger.messages import Message
from tagger.spec import Fluid
from tagger.trade import own_hoses
from tagger.trade.own_hoses import OwnHose, read_own_hose
from tagger.trade.tables import compact_name
from tagger.units import whole_number

router = APIRouter()
BLANK = dict.fromkeys((name for name in OwnHose.model_fields if name != "fluids"), "")


@router.get("/hoses")
def hoses_page(request: Request, me: Builder, part: str = "", dash: str = "") -> Response:
    """The list; with ``part`` and ``dash`` that hose in the form."""
    wanted = (compact_name(part), whole_number(dash))
    found = next((hose for hose in store_of(request).own_hoses() if hose.key == wanted), None)
    if found is None:
        return _page(request, BLANK, ())
    data = found.model_dump(mode="json")
    return _page(request, BLANK | {n: f"{data[n]}" for n in BLANK if data[n] is not None}, found.fluids)


def _page(
    request: Request,
    fields: dict[str, str],
    chosen: Sequence[str],
    problems: Sequence[Problem] = (),
    status: int = 200,
) -> Response:
    tables = tables_of(request)
    return render(
        request,
        "hoses.html",
        title=Message("bench-hoses-title"),
        here="shop",
        status=status,
        problems=problems,
        wrong={problem.field: problem for problem in problems},
        hoses=[(hose, own_hoses.said(hose, tables)) for hose in store_of(request).own_hoses()],
        fields=fields,
        chosen=chosen,
        fluids=list(Fluid),
        standards=list(tables.standards),
        columns=shop_lists.HOSE_COLUMNS,
    )


@router.post("/hoses/keep")
def keep(request: Request, me: Manager, form: OwnForm) -> Response:
    """A hose of the form, kept under its part number and dash."""
    fields = {name: str(form.get(name) or "").strip() for name in BLANK}
    chosen = [str(name) for name in form.getlist("fluids")]
    given: dict[str, Any] = {name: value for name, value in fields.items() if value}
    try:
        hose = read_own_hose(given | {"fluids": chosen}, tables_of(request))
        store_of(request).keep_own_hose(hose, by=me.person.name)
    except TaggerError as error:
        return _page(request, fields, chosen, error.problems, 422)
    return go("/bench/hoses?note=saved")


@router.post("/hoses/import")
def import_list(request: Request, me: Manager, form: OwnForm) -> Response:
    """A CSV or XLSX list: all of its rows, or none."""
    file = form.get("file")
    try:
        if not isinstance(file, UploadFile) or not file.filename:
            raise SpecError(Problem("file", None, Message("bench-no-file")))
        hoses = shop_lists.read_own_hoses(shop_files.cells_of(file), tables_of(request))
        store_of(request).keep_own_hoses(hoses, by=me.person.name)
    except TaggerError as error:
        return _page(request, BLANK, (), error.problems, 422)
    return go("/bench/hoses?note=saved")


@router.get("/hoses/list.{form}")
def hoses_file(request: Request, me: Builder, form: str) -> Response:
    """The list as a file, which can be imported again."""
    if form not in spreadsheets.FORMS:
        return refused(request, 404, NOT_FOUND, Message("bench-form-of-files"))
    return shop_files.own_hoses(store_of(request), form)


@router.post("/hoses/drop")
def drop(request: Request, me: Manager, form: OwnForm) -> Response:
    part, dash = str(form.get("part") or ""), whole_number(str(form.get("dash") or ""))
    try:
        store_of(request).drop_own_hose(part, dash or 0, str(form.get("reason") or ""), by=me.person.name)
    except TaggerError as error:
        return _page(request, BLANK, (), error.problems, 422)
    return go("/bench/hoses?note=saved")
