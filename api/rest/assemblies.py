"""Registering and finding assemblies, and their tags."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Annotated, Any, Literal

from fastapi import APIRouter, Depends, Query, Request
from pydantic import Field
from starlette.responses import JSONResponse, Response

from api.rest import shared
from api.rest.once import DoOnce
from api.rest.printers import PrintJobOut
from api.rest.problem import RESPONSES, PrintedAlready, RoleTooLow, there
from api.rest.shared import (
    Answer,
    AsBuilder,
    AsDevice,
    AssemblyOut,
    Id,
    RegisterOut,
    Request_,
    SpecIn,
    TheStore,
    answers_with,
    assembly_at,
    spec_of,
)
from api.shared import spreadsheets
from api.shared.label_files import MEDIA, Form, sent_already, template_of, to_print
from api.shared.papers import traveller
from api.web.language import paper_language
from api.web.state import queue_of, settings_of, store_of, tables_of
from tagger.code import number as tag_number
from tagger.errors import Problem, SpecError, StoreError, TaggerError
from tagger.messages import Message
from tagger.moments import Day
from tagger.record import Record
from tagger.record_tag import tags_of
from tagger.spec import MAX_COUNT, AssemblySpec
from tagger.store import Filter, Kind, LotReason, Registration, Role, registering
from tagger.trade import assess, keeping
from tagger.trade.cutting import reaches_mm
from tagger.trade.keeping import ShopRow
from tagger.trade.lengths import Reaches
from tagger.trade.tables import Tables

router = APIRouter(responses=RESPONSES, tags=["assemblies"])


class RegisterIn(Request_, Record):  # type: ignore[misc]  # pydantic takes the fields of Record alone
    """One spec and how many assemblies are built to it.

    ``lot_reason``: why the hose's lot is used although it is known as another hose.
    ``changes_considered``: the change that its order asks for was read, and needs none in the spec.
    """

    spec: SpecIn
    count: Annotated[int, Field(ge=1, le=MAX_COUNT)] = 1
    built_on: Day | None = None
    replaces: str | None = None
    order_reference: str | None = None
    keep: Annotated[
        bool,
        Field(
            description="Keep the manufacturers' values in the spec as the shop's own, for every later assembly."
        ),
    ] = False
    lot_reason: LotReason | None = None
    changes_considered: bool = False


class RunIn(Request_):
    """A whole list: registered as one, or not at all."""

    rows: Annotated[list[RegisterIn], Field(min_length=1, max_length=5000)]


class PageOut(Answer):
    """One page, newest first; send ``after`` to get the next."""

    assemblies: list[AssemblyOut]
    after: str | None


class PrintIn(Request_):
    """Which tags to print, and on which of the shop's printers, by its name; without one, as a file.

    ``form``: of the file; other than PDF it is of one tag, and SVG and DXF are of a plate for an engraver.
    ``again``: also those whose tag was printed before, or stands in a print job; without it they are refused.
    """

    numbers: Annotated[list[str], Field(min_length=1, max_length=5000)]
    template: str | None = None
    reason: Annotated[str, Field(max_length=120)] = ""
    printer: str | None = None
    again: bool = False
    form: Form = "pdf"


@router.post("/assemblies", status_code=201, summary="Register one or more assemblies of one spec")
def register(
    request: Request, store: TheStore, token: AsBuilder, body: RegisterIn, once: DoOnce
) -> RegisterOut:
    return once.prepared(
        RegisterOut, lambda: [_prepared(request, body)], lambda rows: _registered(store, rows, token.name)
    )


@router.post("/runs", status_code=201, summary="Register a list (all rows or none)")
def register_run(
    request: Request, store: TheStore, token: AsBuilder, body: RunIn, once: DoOnce
) -> RegisterOut:
    return once.prepared(
        RegisterOut, lambda: _rows(request, body), lambda rows: _registered(store, rows, token.name)
    )


@router.get("/runs/{run}", summary="List the assemblies of one registration run")
def one_run(request: Request, store: TheStore, token: AsBuilder, run: Id) -> list[AssemblyOut]:
    try:
        return AssemblyOut.each(store.run(run), request)
    except TaggerError as error:
        raise there(error) from None


Prepared = tuple[
    Registration, list[ShopRow]
]  # what is registered, and what is kept as the shop's own with it


@router.get(
    "/runs/{run}/traveller.pdf",
    summary="Get the traveller of a registration run: what to cut, crimp and prove, with boxes for each tag",
    responses=answers_with("application/pdf", words="A sheet for each spec, on A4."),
    response_class=Response,
)
def run_traveller(request: Request, store: TheStore, token: AsBuilder, run: Id) -> Response:
    settings, language = settings_of(request), paper_language(request)
    try:
        sheet = traveller.of_run(store, run, settings, tables_of(request), language)
    except TaggerError as error:
        raise there(error) from None
    return shared.pdf(sheet, f"traveller-{run}")


def _registered(store: TheStore, rows: list[Prepared], by: str) -> RegisterOut:
    keep = [row for _, kept in rows for row in kept]
    return RegisterOut.of(registering.register(store, [row for row, _ in rows], by=by, keep=keep))


def _rows(request: Request, body: RunIn) -> list[Prepared]:
    rows: list[Prepared] = []
    problems: list[Problem] = []
    for place, row in enumerate(body.rows, 1):
        try:
            rows.append(_prepared(request, row))
        except TaggerError as error:
            problems += error.within(f"rows.{place}").problems
    if problems:
        raise StoreError(problems)
    return rows


def _prepared(request: Request, body: RegisterIn) -> Prepared:
    tables, spec = tables_of(request), spec_of(store_of(request), body.spec)
    kept = keeping.rows_of(spec, tables) if body.keep else []
    reaches = reaches_mm(spec, store_of(request).fittings_of(spec))
    return _row(body, spec, keeping.tables_with(tables, kept), reaches), kept


def _row(body: RegisterIn, spec: AssemblySpec, tables: Tables, reaches: Reaches) -> Registration:
    given = body.model_dump(exclude={"spec", "built_on", "keep"})
    today = datetime.now(UTC).date()
    if body.built_on and body.built_on > today + timedelta(days=1):  # somewhere it is already tomorrow
        raise StoreError(
            Problem("built_on", body.built_on, Message("rest-built-in-future", date=body.built_on))
        )
    return Registration(
        spec, assess(spec, tables, reaches_mm=reaches), built_on=body.built_on or today, **given
    )


Wanted = Annotated[Filter, Depends()]  # each condition is a parameter of the address


@router.get("/assemblies", summary="Find assemblies, newest first")
def find(
    request: Request,
    store: TheStore,
    token: AsBuilder,
    wanted: Wanted,
    limit: Annotated[int, Query(ge=1, le=500)] = 50,
    after: str | None = None,
) -> PageOut:
    page = store.find(wanted, limit=limit, after=after)
    return PageOut(assemblies=AssemblyOut.each(page.assemblies, request), after=page.after)


@router.get(
    "/assemblies.{form}",
    summary="Export matching assemblies as CSV or XLSX, newest first",
    responses=answers_with("text/csv", spreadsheets.SHEET, words="The list: a heading, and a row for each."),
    response_class=Response,
)
def find_file(
    request: Request, store: TheStore, token: AsBuilder, wanted: Wanted, form: Literal["csv", "xlsx"]
) -> Response:
    rows = spreadsheets.rows(store, wanted, tables_of(request))
    return spreadsheets.file(form, "assemblies", spreadsheets.heading(), rows)


@router.get("/assemblies/{number}", summary="Get an assembly by tag number (any spelling)")
def one(request: Request, store: TheStore, token: AsBuilder, number: str) -> AssemblyOut:
    return AssemblyOut.of(assembly_at(store, number), request)


_FILES = answers_with(*MEDIA.values(), words="The tag; SVG and DXF of a plate for an engraver.")


@router.get(
    "/assemblies/{number}/tag.{form}",
    tags=["tags"],
    summary="Preview the tag without recording a print",
    responses=_FILES,
    response_class=Response,
)
def tag(
    request: Request,
    store: TheStore,
    token: AsBuilder,
    number: str,
    form: Form,
    template: str | None = None,
) -> Response:
    settings, made = settings_of(request), assembly_at(store, number)
    [known] = tags_of(store, [made], settings)
    wanted = template_of(template or settings.label_template, settings)
    store.refuse_print([made.number], wanted.purpose)  # a file of it is as good as the tag
    return Response(to_print([known], wanted, settings.printer_dpi, form), media_type=MEDIA[form])


_PRINTED: dict[int | str, dict[str, Any]] = {
    200: {"content": {one: {} for one in MEDIA.values()}, "description": "The tags, where no printer is named."},
    202: {"model": PrintJobOut, "description": "The print job, where one is."},
    409: {"description": "Or a tag was printed before, and `again` is not true."},
}  # fmt: skip


@router.post(
    "/prints",
    tags=["tags"],
    summary="Print tags as a file or on a printer; recorded in the history",
    responses=_PRINTED,
    response_class=Response,
)
def print_tags(request: Request, store: TheStore, token: AsDevice, body: PrintIn, once: DoOnce) -> Response:
    settings = settings_of(request)
    made = store.assemblies(body.numbers)
    wanted = template_of(body.template or settings.label_template, settings)
    store.refuse_print([item.number for item in made], wanted.purpose)
    if not wanted.is_tag and not token.role.may(Role.BUILDER):
        raise RoleTooLow(Role.BUILDER)  # it names the customer, or who stopped the hose
    may_repeat = body.again or not wanted.is_tag

    def refuse_a_second() -> None:
        numbers = [item.number for item in made]
        if not may_repeat and (sent := sent_already(store, numbers, settings)):
            shown = tuple(tag_number.format(number) for number in numbers if number in sent)
            raise PrintedAlready(Problem("again", False, Message("rest-printed-already", numbers=shown)))

    if body.printer is not None:
        queue, printer = queue_of(request), store.printer(body.printer)

        def ask() -> PrintJobOut:
            refuse_a_second()
            return PrintJobOut.of(
                queue.ask(printer, made, wanted, reason=body.reason, key=None, by=token.name)
            )

        job = once(PrintJobOut, ask)
        queue.wake()  # now that the job is committed
        return JSONResponse(job.model_dump(mode="json"), 202)
    if body.form != "pdf" and len(made) > 1:
        raise SpecError(Problem("form", body.form, Message("rest-form-one-tag")))
    tags = tags_of(store, made, settings)
    paper = to_print(tags, wanted, settings.printer_dpi, body.form)
    data = {"template": wanted.name, "as": body.form, "reason": body.reason}

    # A repeat of the request makes the paper again, without counting it; what is blocked by then is refused.
    def record() -> int:
        refuse_a_second()
        return len(store.record_many([i.number for i in made], Kind.PRINTED, data, by=token.name))

    once(int, record)
    return Response(paper, media_type=MEDIA[body.form])
