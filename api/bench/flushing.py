"""Flushing of a whole run, or of ticked members: how they were cleaned inside, and by whom."""

from __future__ import annotations

from fastapi import APIRouter, Request
from pydantic import ValidationError
from starlette.responses import Response

from api.bench.page import NOT_FOUND, go, refused, render
from api.web.identity import Builder, OwnForm
from api.web.state import store_of
from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError, TaggerError, problems_of
from tagger.messages import Message
from tagger.store import MOST_OF_A_BATCH, Assembly, Flushing

router = APIRouter()


@router.get("/run/{run}/flush")
def flush_page(request: Request, me: Builder, run: int, number: str = "") -> Response:
    """The members of a run, each ticked that was not flushed yet; with ``number`` that one alone."""
    try:
        made = store_of(request).run(run)
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    flushed = store_of(request).flushed([one.number for one in made])
    ticked = [tag_number.compact(number)] if number else [n.number for n in made if n.number not in flushed]
    return _page(request, made, ticked, {"flushed_by": me.person.name})


def _page(
    request: Request,
    made: list[Assembly],
    ticked: list[str],
    fields: dict[str, str],
    problems: tuple[Problem, ...] = (),
    status: int = 200,
) -> Response:
    shown = [one for one in made if one.void is None][:MOST_OF_A_BATCH]
    return render(
        request,
        "flush.html",
        title=Message("bench-flush-title"),
        status=status,
        problems=problems,
        wrong={problem.field: problem for problem in problems},
        run=made[0].run,
        made=shown,
        flushed=store_of(request).flushed([one.number for one in shown]),
        ticked=ticked,
        fields=fields,
    )


@router.post("/run/{run}/flush")
def flush(request: Request, me: Builder, form: OwnForm, run: int) -> Response:
    """Records that the ticked members were flushed: all of them, or none."""
    store = store_of(request)
    try:
        made = store.run(run)
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    fields = {name: str(form.get(name) or "").strip() for name in Flushing.model_fields}
    own = {one.number for one in made}
    ticked = [n for n in map(tag_number.compact, map(str, form.getlist("numbers"))) if n in own]
    try:
        store.record_flushing(ticked, _read(fields), by=me.person.name)
    except TaggerError as error:
        return _page(request, made, ticked, fields, error.problems, 422)
    return go(f"/bench/run/{run}/flush?note=recorded")


def _read(fields: dict[str, str]) -> Flushing:
    try:
        return Flushing.model_validate(fields)
    except ValidationError as error:
        raise StoreError(problems_of(error)) from None
