"""Import and export: a customer's spreadsheet is matched, checked, and registered as a whole."""

from __future__ import annotations

import secrets
from collections.abc import Iterator, Sequence
from datetime import UTC, date, datetime

from fastapi import APIRouter, Request
from starlette.datastructures import FormData, UploadFile
from starlette.responses import Response, StreamingResponse

from api.bench.page import NOT_FOUND, go, refused, render
from api.shared import list_import, list_words, spreadsheets
from api.shared.epcis import document_lines
from api.shared.full_export import archive
from api.web.identity import Counter, Manager, OwnForm
from api.web.language import translator_of
from api.web.state import settings_of, store_of, tables_of
from tagger import list_columns, lists
from tagger.errors import Problem, SpecError, TaggerError
from tagger.messages import Message
from tagger.store import Filter

router = APIRouter()


@router.get("/lists")
def lists_page(request: Request, me: Counter) -> Response:
    return _page(request)


def _page(request: Request, problems: Sequence[Problem] = ()) -> Response:
    waiting = store_of(request).count(Filter(printed=False))
    return render(
        request,
        "lists.html",
        title=Message("bench-nav-lists"),
        here="lists",
        problems=problems,
        columns=lists.columns(),
        status=422 if problems else 200,
        not_printed=waiting,
    )


@router.get("/lists/empty.{form}")
def empty_list(request: Request, me: Counter, form: str) -> Response:
    """A list with our columns and one example row."""
    if form not in spreadsheets.FORMS:
        return refused(request, 404, NOT_FOUND, Message("bench-form-of-files"))
    return spreadsheets.file(form, "list", lists.columns(), [list_import.example_row()])


@router.post("/lists/read")
def read_list(request: Request, me: Counter, form: OwnForm) -> Response:
    """The file's columns beside ours, matched as far as that is plain."""
    file = form.get("file")
    if not isinstance(file, UploadFile) or not file.filename:
        return _page(request, [Problem("file", None, Message("bench-no-file"))])
    try:
        cells = list_import.read(file.filename, file.file.read(list_import.MAX_BYTES + 1))
    except SpecError as error:
        return _page(request, error.problems)
    return _matching(request, file.filename, cells, list_columns.guess(cells[0]), secrets.token_urlsafe(12))


def _matching(
    request: Request,
    name: str,
    cells: list_import.Cells,
    match: list[str],
    key: str,
    dry: list_import.Dry | None = None,
) -> Response:
    t = translator_of(request)
    return render(
        request,
        "match.html",
        title=Message("bench-match-title"),
        here="lists",
        name=name,
        cells=cells,
        match=match,
        units=[list_columns.unit_of(theirs, ours) for theirs, ours in zip(cells[0], match, strict=False)],
        packed=list_import.pack(cells),
        columns=lists.columns(),
        key=key,
        dry=dry,
        left_out=[heading for _, heading in list_import.left_out(cells, match) if heading],
        meanings={
            word.column: sorted(
                (t(list_words.named(word.column, v)), v) for v in list_words.values_of(word.column)
            )
            for word in (dry.words if dry else ())
        },
        status=422 if dry and dry.problems else 200,
    )


@router.post("/lists/dry")
def dry_run(request: Request, me: Counter, form: OwnForm) -> Response:
    """Every problem with its row and cell, before anything is written."""
    try:
        cells, match = _sent(form)
    except SpecError as error:
        return _page(request, error.problems)
    dry = _dry(request, cells, match, _words(form))
    return _matching(request, str(form.get("name")), cells, match, str(form.get("key")), dry)


@router.post("/lists/run")
def run_list(request: Request, me: Counter, form: OwnForm) -> Response:
    """Registers the whole list, or nothing of it; sent twice, it registers once."""
    try:
        cells, match = _sent(form)
    except SpecError as error:
        return _page(request, error.problems)
    key, name = str(form.get("key")), str(form.get("name"))
    dry = _dry(request, cells, match, _words(form))
    if dry.problems:
        return _matching(request, name, cells, match, key, dry)
    try:
        made = store_of(request).register_many(dry.rows, by=me.person.name, key=key)
    except TaggerError as error:
        return _page(request, error.problems)
    return go(f"/bench/run/{made[0].run}?template={settings_of(request).label_template}")


def _dry(
    request: Request, cells: list_import.Cells, match: list[str], words: list_words.Choices
) -> list_import.Dry:
    return list_import.dry_run(cells, match, tables_of(request), date.today(), store_of(request), words)


def _words(form: FormData) -> dict[tuple[str, str], str]:
    """What was chosen for each word: the page sends its column, the word and the choice side by side."""
    columns, theirs, ours = (
        list(map(str, form.getlist(f"word_{part}"))) for part in ("column", "theirs", "ours")
    )
    return {
        (column, word): value
        for column, word, value in zip(columns, theirs, ours, strict=False)
        if value in list_words.values_of(column)
    }


def _sent(form: FormData) -> tuple[list_import.Cells, list[str]]:
    cells = list_import.unpack(str(form.get("cells") or ""))
    known = {*lists.columns(), ""}
    match = [str(value) if str(value) in known else "" for value in form.getlist("match")]
    if not cells or len(match) != len(cells[0]):
        raise SpecError(Problem("list", None, Message("bench-list-damaged")))
    return cells, match


@router.get("/lists/everything.zip")
def everything(request: Request, me: Manager) -> Response:
    """All that is kept, as open formats."""
    name = f"everything-{datetime.now(UTC):%Y%m%d-%H%M}.zip"
    headers = {"Content-Disposition": f'attachment; filename="{name}"', "Cache-Control": "no-store"}
    return StreamingResponse(
        archive(store_of(request), settings_of(request).language),
        media_type="application/zip",
        headers=headers,
    )


@router.get("/lists/epcis.json")
def epcis(request: Request, me: Manager) -> Response:
    """The history as EPCIS 2.0 events."""

    def lines() -> Iterator[str]:
        yield from document_lines(store_of(request), settings_of(request))

    headers = {"Content-Disposition": 'attachment; filename="epcis.json"', "Cache-Control": "no-store"}
    return StreamingResponse(lines(), media_type="application/ld+json", headers=headers)
