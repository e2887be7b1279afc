"""A customer's list as CSV or XLSX: run dry, then registered as a whole."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Annotated

from fastapi import APIRouter, File, Form, Request, UploadFile

from api.bench import matching
from api.rest.problem import RESPONSES, FieldProblem
from api.rest.shared import Answer, AsCounter, IdempotencyKey, RegisterOut, TheStore, own_key
from tagger import lists
from tagger.code import number as tag_number
from tagger.errors import Problem, SpecError

router = APIRouter(responses=RESPONSES, tags=["lists"])
TheFile = Annotated[UploadFile, File(description="CSV or XLSX, its first row the heading.")]
Match = Annotated[
    list[str] | None,
    Form(
        description="For each of their columns ours, or empty; without it, matched as far as that is plain."
    ),
]


class ColumnOut(Answer):
    theirs: str
    ours: str


class CellProblem(FieldProblem):
    """A problem and the cell it sits in."""

    cell: str


class DryOut(Answer):
    """``rows`` and ``pieces`` are those that are right; with no problems, what a run would register."""

    columns: list[ColumnOut]
    rows: int
    pieces: int
    problems: list[CellProblem]


@router.post("/lists/dry-run", summary="Every problem of a list with its cell; writes nothing")
def dry_run(request: Request, token: AsCounter, file: TheFile, match: Match = None) -> DryOut:
    cells, ours, dry = _read(request, file, match)
    columns = [ColumnOut(theirs=str(t or ""), ours=o) for t, o in zip(cells[0], ours, strict=True)]
    problems = [
        CellProblem.model_validate({"cell": cell, **problem.as_dict()}) for cell, problem in dry.problems
    ]
    return DryOut(columns=columns, rows=len(dry.rows), pieces=dry.pieces, problems=problems)


@router.post("/lists/run", status_code=201, summary="Register a list: all of it, or nothing")
def run(
    request: Request,
    store: TheStore,
    token: AsCounter,
    file: TheFile,
    match: Match = None,
    key: IdempotencyKey = None,
) -> RegisterOut:
    _, _, dry = _read(request, file, match)
    if dry.problems:
        raise SpecError(Problem(f"{cell} {p.field}", p.value, p.why, p.mend) for cell, p in dry.problems)
    made = store.register_many(dry.rows, by=token.name, key=own_key(key, token.id))
    return RegisterOut(run=made[0].run, numbers=[tag_number.format(item.number) for item in made])


def _read(
    request: Request, file: UploadFile, match: list[str] | None
) -> tuple[matching.Cells, list[str], matching.Dry]:
    cells = matching.read(file.filename or "list.csv", file.file.read(matching.MAX_BYTES + 1))
    ours = matching.guess(cells[0]) if match is None else match
    known = {*lists.columns(), ""}
    problems = [Problem("match", name, "is not a column of ours", f"Use one of: {', '.join(lists.columns())}.")
                for name in ours if name not in known]  # fmt: skip
    if len(ours) != len(cells[0]):
        problems.append(
            Problem("match", len(ours), f"must name {len(cells[0])} columns, one for each of theirs")
        )
    if problems:
        raise SpecError(problems)
    dry = matching.dry_run(cells, ours, request.app.state.tables, datetime.now(UTC).date())
    return cells, ours, dry
