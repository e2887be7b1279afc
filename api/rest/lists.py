"""A customer's list as CSV or XLSX: run dry, then registered as a whole."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC, datetime
from typing import Annotated, Literal

from fastapi import APIRouter, File, Form, Request, UploadFile
from starlette.responses import Response

from api.rest.once import DoOnce
from api.rest.problem import RESPONSES, FieldProblem
from api.rest.shared import Answer, AsCounter, RegisterOut, TheStore, answers_with
from api.shared import list_import, list_words, spreadsheets
from api.web.language import translator_of
from api.web.state import store_of, tables_of
from tagger import list_columns, lists
from tagger.errors import Problem, SpecError
from tagger.messages import Message
from tagger.store import Registration, registering

router = APIRouter(responses=RESPONSES, tags=["lists"])
TheFile = Annotated[UploadFile, File(description="CSV or XLSX with a header row.")]
Match = Annotated[
    list[str] | None,
    Form(
        description=(
            "Field name for each file column, or empty: the column is left out. If omitted, columns are matched"
            " automatically, and a filled column that is none of ours is refused."
        )
    ),
]

Words = Annotated[
    str | None,
    Form(
        description='What words of the file mean, as JSON: `{"their word": "our value"}`, as a dry run names '
        "both. Words that are not given here are read as the dry run proposes."
    ),
]


class ColumnOut(Answer):
    theirs: str
    ours: str


class CellProblem(FieldProblem):
    """A problem and the cell it sits in."""

    cell: str


class WordOut(Answer):
    """A word of the file and the value it is read as; "" for none, then ``nearest`` proposes three."""

    column: str
    theirs: str
    ours: str
    nearest: list[str]


class DryOut(Answer):
    """``rows`` and ``pieces`` are those that are right; with no problems, what a run would register."""

    columns: list[ColumnOut]
    rows: int
    pieces: int
    problems: list[CellProblem]
    words: list[WordOut]


@router.post("/lists/dry-run", summary="Check a list and return every problem with its cell (dry run)")
def dry_run(
    request: Request, token: AsCounter, file: TheFile, match: Match = None, words: Words = None
) -> DryOut:
    cells, ours, dry = _read(request, file, match, words)
    t = translator_of(request)
    columns = [ColumnOut(theirs=str(t or ""), ours=o) for t, o in zip(cells[0], ours, strict=True)]
    problems = [
        CellProblem(cell=cell, **FieldProblem.of(problem, t).model_dump()) for cell, problem in dry.problems
    ]
    read = [
        WordOut(column=w.column, theirs=w.theirs, ours=w.ours, nearest=list(w.nearest)) for w in dry.words
    ]
    return DryOut(columns=columns, rows=len(dry.rows), pieces=dry.pieces, problems=problems, words=read)


@router.post("/lists/run", status_code=201, summary="Register a list file (all rows or none)")
def run(
    request: Request,
    store: TheStore,
    token: AsCounter,
    file: TheFile,
    once: DoOnce,
    match: Match = None,
    words: Words = None,
) -> RegisterOut:
    def act(rows: Sequence[Registration]) -> RegisterOut:
        return RegisterOut.of(registering.register(store, rows, by=token.name))

    return once.prepared(RegisterOut, lambda: _right_rows(request, file, match, words), act)


@router.get(
    "/lists/empty.{form}",
    summary="Get a list template with one example row",
    responses=answers_with("text/csv", spreadsheets.SHEET, words="The list."),
    response_class=Response,
)
def empty(token: AsCounter, form: Literal["csv", "xlsx"]) -> Response:
    return spreadsheets.file(form, "list", lists.columns(), [list_import.example_row()])


def _right_rows(
    request: Request, file: UploadFile, match: list[str] | None, words: str | None
) -> Sequence[Registration]:
    _, _, dry = _read(request, file, match, words)
    if dry.problems:
        raise SpecError(Problem(f"{cell} {p.field}", p.value, p.message) for cell, p in dry.problems)
    return dry.rows


def _read(
    request: Request, file: UploadFile, match: list[str] | None, words: str | None
) -> tuple[list_import.Cells, list[str], list_import.Dry]:
    cells = list_import.read(file.filename or "list.csv", file.file.read(list_import.MAX_BYTES + 1))
    ours = list_columns.guess(cells[0]) if match is None else match
    known = {*lists.columns(), ""}
    problems = [
        Problem("match", name, Message("rest-not-a-column", name=name, columns=tuple(lists.columns())))
        for name in ours
        if name not in known
    ]
    if len(ours) != len(cells[0]):
        problems.append(
            Problem(
                "match",
                len(ours),
                Message("rest-columns-do-not-match", given=len(ours), columns=len(cells[0])),
            )
        )
    if problems:
        raise SpecError(problems)
    today, chosen = datetime.now(UTC).date(), _chosen(words, ours)
    dry = list_import.dry_run(cells, ours, tables_of(request), today, store_of(request), chosen)
    if match is None:
        dry = replace(dry, problems=(*list_import.not_read(cells, ours), *dry.problems))
    return cells, ours, dry


def _chosen(words: str | None, columns: Sequence[str]) -> list_words.Choices:
    """What each word means, in every column that may have that value. Raises SpecError for another value."""
    try:
        given = json.loads(words) if words else {}
    except (ValueError, RecursionError):
        given = None
    if not isinstance(given, dict):
        raise SpecError(Problem("words", words, Message("rest-words-not-read")))
    found: dict[tuple[str, str], str] = {}
    problems: list[Problem] = []
    for theirs, ours in given.items():
        fits = [column for column in columns if ours in list_words.values_of(column)]
        found |= {(column, theirs): ours for column in fits}
        if not fits:
            wrong = Message("rest-words-not-a-value", word=theirs, value=str(ours))
            problems.append(Problem("words", theirs, wrong))
    if problems:
        raise SpecError(problems)
    return found
