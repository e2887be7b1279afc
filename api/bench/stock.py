"""The shop's fittings: the list, a form for one of them, a list to import; found by a few letters."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from fastapi import APIRouter, Request
from starlette.datastructures import UploadFile
from starlette.responses import JSONResponse, Response

from api.bench import form as forms
from api.bench.build import choices
from api.bench.page import NOT_FOUND, go, refused, render
from api.shared import shop_files, spreadsheets
from api.web.identity import Builder, Manager, OwnForm
from api.web.language import translator_of
from api.web.state import store_of, tables_of
from tagger import phrases, shop_lists
from tagger.errors import Problem, SpecError, TaggerError
from tagger.messages import Message
from tagger.spec import Connection, Sizing
from tagger.trade.fittings import CutOff, Fitting, read_fitting

router = APIRouter()
OFFERED, SHOWN = 12, 500
_PLAIN = ("stock_number", "fitting_series", "swivel", "cut_off_mm", "cut_off_kind", "insertion_depth_mm", "source",
          "rating_bar", "rating_source", "rating_confirmed")  # fmt: skip
_END = ("connection", "size", "series", "form", "shape", "angle", "drop_mm", "material", "hose_dash")
BLANK = dict.fromkeys((*_PLAIN, *(f"end.{name}" for name in _END)), "") | {"end.shape": "straight"}


@router.get("/stock")
def stock_page(request: Request, me: Builder, text: str = "", number: str = "") -> Response:
    """The list, or what is found of it; with ``number`` that fitting in the form."""
    try:
        fields = _fields_of(store_of(request).fitting(number)) if number else BLANK
    except TaggerError as error:
        return _page(request, text, BLANK, error.problems, 404)
    return _page(request, text, fields)


def _page(
    request: Request, text: str, fields: dict[str, str], problems: Sequence[Problem] = (), status: int = 200
) -> Response:
    return render(
        request,
        "stock.html",
        title=Message("bench-stock-title"),
        here="shop",
        status=status,
        problems=problems,
        wrong={problem.field: problem for problem in problems},
        fittings=store_of(request).fittings(text, limit=SHOWN),
        text=text,
        fields=fields,
        kinds=list(CutOff),
        choices=choices(request),
        columns=shop_lists.FITTING_COLUMNS,
    )


@router.get("/stock/find")
def find(request: Request, me: Builder, text: str = "") -> Response:
    """What the build page offers for a few letters: stock numbers, each with the fields of its end."""
    t = translator_of(request)
    found = store_of(request).fittings(text, limit=OFFERED)
    return JSONResponse(
        [
            {
                "stock_number": one.stock_number,
                "said": t(phrases.end(one.end)),
                "fields": {k: v for k, v in forms.end_fields(one.spec_end()).items() if k != "lot"},
            }
            for one in found
        ]
    )


@router.get("/stock/fittings.{form}")
def fittings_file(request: Request, me: Builder, form: str) -> Response:
    """The list as a file, which can be imported again."""
    if form not in spreadsheets.FORMS:
        return refused(request, 404, NOT_FOUND, Message("bench-form-of-files"))
    return shop_files.fittings(store_of(request), form)


@router.post("/stock/keep")
def keep(request: Request, me: Manager, form: OwnForm) -> Response:
    """A fitting of the form, kept under its stock number."""
    fields = {name: str(form.get(name) or "").strip() for name in BLANK}
    try:
        fitting = read_fitting(_data_of(fields))
        shop_lists.refuse_unsound(fitting, tables_of(request))
        store_of(request).keep_fitting(fitting, by=me.person.name)
    except TaggerError as error:
        return _page(request, "", fields, [_on_the_page(problem) for problem in error.problems], 422)
    return go("/bench/stock?note=saved")


@router.post("/stock/drop")
def drop(request: Request, me: Manager, form: OwnForm) -> Response:
    try:
        store_of(request).drop_fitting(str(form.get("number") or ""), by=me.person.name)
    except TaggerError as error:
        return _page(request, "", BLANK, error.problems, 404)
    return go("/bench/stock?note=saved")


@router.post("/stock/import")
def import_list(request: Request, me: Manager, form: OwnForm) -> Response:
    """A CSV or XLSX list: all of its rows, or none."""
    file = form.get("file")
    try:
        if not isinstance(file, UploadFile) or not file.filename:
            raise SpecError(Problem("file", None, Message("bench-no-file")))
        rows = shop_lists.read_fittings(shop_files.cells_of(file), tables_of(request))
        store_of(request).keep_fittings(rows, by=me.person.name)
    except TaggerError as error:
        return _page(request, "", BLANK, error.problems, 422)
    return go("/bench/stock?note=saved")


def _fields_of(fitting: Fitting) -> dict[str, str]:
    data = fitting.as_dict()
    end = forms.end_fields(data["end"])
    plain = {name: "" if (value := data.get(name)) is None else f"{value}" for name in _PLAIN}
    plain["swivel"] = {True: "yes", False: "no"}.get(data.get("swivel"), "")  # type: ignore[arg-type]
    plain["rating_confirmed"] = "1" if data.get("rating_confirmed") else ""
    return plain | {f"end.{name}": end[name] for name in _END}


def _data_of(fields: dict[str, str]) -> dict[str, Any]:
    """The form as a fitting's JSON; what is empty is not given."""
    given: dict[str, Any] = {name: fields[name] for name in _PLAIN if fields[name]}
    end: dict[str, Any] = {name: value for name in _END if (value := fields[f"end.{name}"])}
    angle, size = end.pop("angle", ""), end.pop("size", None)
    if end.get("shape") == "angle":
        end["shape"] = int(angle) if angle.isdecimal() else angle
    if size is not None:
        end[_size_key(end.get("connection", ""))] = size
    return given | {"end": end}


def _size_key(connection: str) -> str:
    sized = {str(family): family.sized_by for family in Connection}.get(connection)
    return {Sizing.DASH: "dash", Sizing.WORDS: "description"}.get(sized, "size") if sized else "size"


def _on_the_page(problem: Problem) -> Problem:
    """A problem of the fitting under the name of the form's field."""
    field = problem.field
    for name in ("dash", "description"):
        field = "end.size" if field == f"end.{name}" else field
    return Problem(field, problem.value, problem.message)
