"""Checking, registering, finding and proving assemblies, and their tags."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from typing import Annotated, Any, Literal

from fastapi import APIRouter, Query, Request
from pydantic import Field
from starlette.responses import Response

from api.bench.tags import pdf_of, tags_of, template_of
from api.rest.problem import RESPONSES, there
from api.rest.shared import (
    Answer,
    AsBuilder,
    AssemblyOut,
    EventOut,
    IdempotencyKey,
    RegisterOut,
    Request_,
    SpecIn,
    TheStore,
    assess_of,
    own_key,
    spec_of,
)
from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError, TaggerError
from tagger.printing import raster
from tagger.store import Filter, Kind, ProofTest, Registration

router = APIRouter(responses=RESPONSES, tags=["assemblies"])


class RegisterIn(Request_):
    """One spec and how many assemblies are built to it."""

    spec: SpecIn
    count: Annotated[int, Field(ge=1, le=10_000)] = 1
    built_on: date | None = None
    customer: str | None = None
    machine: str | None = None
    position: str | None = None
    replaces: str | None = None
    order_reference: str | None = None


class RunIn(Request_):
    """A whole list: registered as one, or not at all."""

    rows: Annotated[list[RegisterIn], Field(min_length=1, max_length=5000)]


class PageOut(Answer):
    """One page, newest first; send ``after`` to get the next."""

    assemblies: list[AssemblyOut]
    after: str | None


class EventIn(Request_):
    """Something seen or done: fitted, inspected, or taken off for good."""

    kind: Literal["fitted", "inspected", "removed"]
    data: Annotated[dict[str, Any], Field(default_factory=dict)]


class CrimpIn(Request_):
    """A crimp as measured; it is held against the diameter the shop keeps for that hose and shell."""

    end: Literal["a", "b"]
    measured_mm: Annotated[float, Field(ge=1, le=300)]
    shell: str


class CrimpsIn(Request_):
    crimps: Annotated[list[CrimpIn], Field(min_length=1, max_length=2)]


class PrintIn(Request_):
    """Which tags to print."""

    numbers: Annotated[list[str], Field(min_length=1, max_length=5000)]
    template: str | None = None
    reason: str = ""


@router.post("/assemblies", status_code=201, summary="Register one or several assemblies to one spec")
def register(
    request: Request, store: TheStore, token: AsBuilder, body: RegisterIn, key: IdempotencyKey = None
) -> RegisterOut:
    made = store.register_many([_row(request, body)], by=token.name, key=own_key(key, token.id))
    return RegisterOut(run=made[0].run, numbers=[tag_number.format(item.number) for item in made])


@router.post("/runs", status_code=201, summary="Register a whole list: all of it, or nothing")
def register_run(
    request: Request, store: TheStore, token: AsBuilder, body: RunIn, key: IdempotencyKey = None
) -> RegisterOut:
    rows: list[Registration] = []
    problems: list[Problem] = []
    for place, row in enumerate(body.rows, 1):
        try:
            rows.append(_row(request, row))
        except TaggerError as error:
            problems += error.within(f"rows.{place}").problems
    if problems:
        raise StoreError(problems)
    made = store.register_many(rows, by=token.name, key=own_key(key, token.id))
    return RegisterOut(run=made[0].run, numbers=[tag_number.format(item.number) for item in made])


def _row(request: Request, body: RegisterIn) -> Registration:
    given = body.model_dump(exclude={"spec", "built_on"})
    spec = spec_of(body.spec)
    today = datetime.now(UTC).date()
    if body.built_on and body.built_on > today + timedelta(days=1):  # somewhere it is already tomorrow
        mend = "Give the day it was built, or leave it out."
        raise StoreError(Problem("built_on", body.built_on, "is in the future", mend))
    return Registration(spec, assess_of(request, body.spec), built_on=body.built_on or today, **given)


@router.get("/assemblies", summary="Find assemblies, newest first")
def find(
    request: Request,
    store: TheStore,
    token: AsBuilder,
    number: str | None = None,
    customer: str | None = None,
    machine: str | None = None,
    position: str | None = None,
    lot: str | None = None,
    connection: str | None = None,
    hose_standard: str | None = None,
    dash: int | None = None,
    pressure_min_bar: float | None = None,
    pressure_max_bar: float | None = None,
    built_from: date | None = None,
    built_to: date | None = None,
    order_reference: str | None = None,
    printed: bool | None = None,
    withdrawn: bool | None = None,
    limit: Annotated[int, Query(ge=1, le=500)] = 50,
    after: str | None = None,
) -> PageOut:
    wanted = Filter(
        number, customer, machine, position, lot, connection, hose_standard, dash, pressure_min_bar,
        pressure_max_bar, built_from, built_to, order_reference, printed, withdrawn,
    )  # fmt: skip
    page = store.find(wanted, limit=limit, after=after)
    return PageOut(assemblies=[AssemblyOut.of(a, request) for a in page.assemblies], after=page.after)


@router.get("/assemblies/{number}", summary="One assembly by its tag number, typed in any way")
def one(request: Request, store: TheStore, token: AsBuilder, number: str) -> AssemblyOut:
    try:
        return AssemblyOut.of(store.assembly(number), request)
    except TaggerError as error:
        raise there(error) from None


@router.get("/assemblies/{number}/history", summary="What happened to it, oldest first")
def history(store: TheStore, token: AsBuilder, number: str) -> list[EventOut]:
    try:
        return [EventOut.of(event) for event in store.history(number)]
    except TaggerError as error:
        raise there(error) from None


@router.post("/assemblies/{number}/history", status_code=201, summary="Add a line to its history")
def add_event(store: TheStore, token: AsBuilder, number: str, body: EventIn) -> EventOut:
    return EventOut.of(store.record(number, body.kind, body.data, by=token.name))


@router.post("/assemblies/{number}/proof-tests", status_code=201, summary="Record a proof test")
def add_proof_test(
    request: Request, store: TheStore, token: AsBuilder, number: str, body: ProofTest
) -> EventOut:
    called_for = store.assembly(number).assessment.test_pressure_bar
    least = request.app.state.tables.rule("proof_hold_min").value
    test = body.model_copy(update={"called_for_bar": called_for, "called_for_s": least})
    return EventOut.of(store.record_proof_test(number, test, by=token.name))


@router.post("/assemblies/{number}/crimps", status_code=201, summary="Record measured crimp diameters")
def add_crimps(store: TheStore, token: AsBuilder, number: str, body: CrimpsIn) -> EventOut:
    hose = store.assembly(number).spec.hose
    measured = [
        store.crimp(hose.standard, hose.dash, crimp.shell, field=f"crimps.{place}.shell").measured(
            crimp.end, crimp.measured_mm
        )
        for place, crimp in enumerate(body.crimps, 1)
    ]
    return EventOut.of(store.record_crimps(number, measured, by=token.name))


_FILES: dict[int | str, dict[str, Any]] = {
    200: {"content": {"application/pdf": {}, "image/png": {}}, "description": "The tag."}
}


@router.get("/assemblies/{number}/tag.{form}", tags=["tags"], summary="Its tag as it prints, not counted as a print",
            responses=_FILES, response_class=Response)  # fmt: skip
def tag(
    request: Request,
    store: TheStore,
    token: AsBuilder,
    number: str,
    form: Literal["pdf", "png"],
    template: str | None = None,
) -> Response:
    settings = request.app.state.settings
    try:
        tags = tags_of(store, [store.assembly(number)], settings)
    except TaggerError as error:
        raise there(error) from None
    wanted = template_of(template or settings.label_template, settings)
    if form == "png":
        return Response(raster.png(tags[0], wanted, settings.printer_dpi), media_type="image/png")
    return Response(pdf_of(tags, wanted, settings.printer_dpi), media_type="application/pdf")


@router.post("/prints", tags=["tags"], summary="Tags to print, as one PDF; counted and logged", responses=_FILES,
             response_class=Response)  # fmt: skip
def print_tags(request: Request, store: TheStore, token: AsBuilder, body: PrintIn) -> Response:
    settings = request.app.state.settings
    made = store.assemblies(body.numbers)
    wanted = template_of(body.template or settings.label_template, settings)
    store.refuse_blocked([item.number for item in made])
    pdf = pdf_of(tags_of(store, made, settings), wanted, settings.printer_dpi)
    data = {"template": wanted.name, "as": "pdf", "reason": body.reason}
    store.record_many([item.number for item in made], Kind.PRINTED, data, by=token.name)
    return Response(pdf, media_type="application/pdf")
