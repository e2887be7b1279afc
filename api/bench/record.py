"""One tag's record on the bench: the assembly, its history, crimp measurements and proof tests."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType

from fastapi import APIRouter, Request
from pydantic import ValidationError
from starlette.datastructures import FormData
from starlette.responses import JSONResponse, Response

from api.bench import reel_lots
from api.bench.page import NOT_FOUND, go, pdf, refused, render
from api.bench.readings import crimps_of, proof_test, texts_of
from api.bench.reprints import REPRINTS
from api.shared.label_files import tags_printed
from api.shared.scan_look_up import signed_state
from api.web.identity import Builder, Manager, OwnForm
from api.web.language import paper_language, translator_of
from api.web.state import keys_of, scans_of, settings_of, store_of, tables_of
from tagger import phrases
from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError, TaggerError, problems_of
from tagger.messages import Message, least_pressure, pressure
from tagger.papers.certificate import of_last_test
from tagger.store import (
    CORRECTABLE,
    MEDIA,
    Assembly,
    Kind,
    ProofAllowance,
    proof_required,
    verdict,
)
from tagger.store.correcting import correctable
from tagger.store.overrated import as_of_today
from tagger.trade import present
from tagger.trade.proof import Required
from tagger.units import read_pressure_bar

router = APIRouter()
BY_HAND = (Kind.FITTED, Kind.INSPECTED, Kind.REMOVED)


@router.get("/tag/{number}")
def record_page(request: Request, me: Builder, number: str) -> Response:
    try:
        known = store_of(request).assembly(number)
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    return _page(request, known)


def _page(
    request: Request,
    known: Assembly,
    problems: tuple[Problem, ...] = (),
    fields: dict[str, str] | None = None,
    status: int = 200,
) -> Response:
    store, tables = store_of(request), tables_of(request)
    [now] = as_of_today([known], tables)
    return render(
        request,
        "record.html",
        title=Message("bench-record-title", number=tag_number.format(known.number)),
        status=status,
        problems=problems,
        item=known,
        now=now,
        signed=signed_state(keys_of(request), known.number, request.query_params.get("digits")),
        overrated=present.overrated(known.content, tables, known.spec),
        history=store.history(known.number)[::-1],
        blocked=store.blocked([known.number]).get(known.number),
        stopped=bool(store.stops([known.number])),
        crimps=store.crimps_of(known.spec.hose.standard, known.spec.hose.dash, known.spec.hose.part),
        media=MEDIA,
        pin=store.tag_pin(known.number)
        if settings_of(request).machine_hoses == "pin" and known.machine
        else None,
        last_test=store.last_proof_test(),
        batch=store.proof_batch(known.number),
        reprints=REPRINTS,
        times_printed=len(tags_printed(store, [known.number], settings_of(request)).get(known.number, ())),
        by_hand=BY_HAND,
        correctable=correctable(known),
        lot_reasons=reel_lots.REASONS,
        fields=fields or {},
        required=proof_required(known, tables),
        proved=store.proved(known.number),
        held=known.number in store.held([known.number]),
        verdict=verdict,
        named_parts=lambda names: tuple(phrases.part(name) for name in names),
        wrong={p.field: p for p in problems},
    )


def _recorded(
    request: Request,
    number: str,
    form: FormData,
    act: Callable[[Assembly, dict[str, str]], object],
    on_the_page: Mapping[str, str] = MappingProxyType({}),
) -> Response:
    """Does something with a record and shows it anew; or says what was wrong, beside the form as it was sent.

    ``on_the_page``: what the page calls a field that a problem names.
    """
    given = texts_of(form)
    try:
        known = store_of(request).assembly(number)
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    try:
        act(known, given)
    except ValidationError as error:
        problems = tuple(problems_of(error))
    except TaggerError as error:
        problems = error.problems
    else:
        return go(f"/bench/tag/{known.number}?note=recorded")
    named = tuple(Problem(on_the_page.get(p.field, p.field), p.value, p.message) for p in problems)
    return _page(request, known, named, given, 422)


@router.post("/tag/{number}/proof")
def proof(request: Request, me: Builder, form: OwnForm, number: str) -> Response:
    """Records a proof test; one that failed or was too high blocks the tag."""
    store, tables, by = store_of(request), tables_of(request), me.person.name

    def act(known: Assembly, given: dict[str, str]) -> None:
        store.record_proof_test(known.number, proof_test(given, by), tables=tables, by=by)

    return _recorded(request, number, form, act)


@router.get("/tag/{number}/proof/read")
def proof_read(
    request: Request, me: Builder, number: str, pressure_bar: str = "", rating_bar: str = ""
) -> Response:
    """How a pressure that is being typed is read, and what it means for the assembly."""
    t = translator_of(request)
    try:
        known = store_of(request).assembly(number)
        given = read_pressure_bar(rating_bar) if rating_bar else None
        asked = proof_required(known, tables_of(request), given)
        bar = read_pressure_bar(pressure_bar)
    except TaggerError as error:
        [problem, *_] = error.problems
        return JSONResponse({"read": "", "say": t(problem.message) if pressure_bar else "", "tone": "danger"})
    tone, say = _what_it_means(bar, asked)
    return JSONResponse({"read": t.figure(pressure(bar)), "say": t(say), "tone": tone})


def _what_it_means(bar: float, asked: Required) -> tuple[str, Message]:
    """The tone and the words for a test pressure in bar."""
    if asked.is_slip(bar) and asked.burst_bar is not None:
        return "danger", Message("bench-record-proof-slip", burst=least_pressure(asked.burst_bar))
    if asked.is_over(bar) and asked.most_bar is not None:
        return "danger", Message("bench-record-proof-over", most=pressure(asked.most_bar))
    if asked.rating_missing or asked.pressure_bar is None:
        return "care", Message("bench-record-proof-no-rating")
    if not asked.is_enough(bar):
        return "care", Message("bench-record-proof-low", called=least_pressure(asked.pressure_bar))
    return "good", Message("bench-record-proof-enough")


@router.post("/tag/{number}/allow")
def allow(request: Request, me: Manager, form: OwnForm, number: str) -> Response:
    """Records the manufacturers' written allowance for an assembly that is held."""

    def act(known: Assembly, given: dict[str, str]) -> None:
        names = ("allowed_by", "allowed_on", "document")
        allowance = ProofAllowance.model_validate({name: given.get(name, "") for name in names})
        store_of(request).allow_proof_test(known.number, allowance, by=me.person.name)

    return _recorded(request, number, form, act)


@router.post("/tag/{number}/crimp")
def crimp(request: Request, me: Builder, form: OwnForm, number: str) -> Response:
    """Records measured crimp diameters against the value the shop keeps for that hose and shell."""
    store = store_of(request)

    def act(known: Assembly, given: dict[str, str]) -> None:
        found = crimps_of(known, given, store)
        if not found:
            raise StoreError(Problem("crimp_a", None, Message("bench-no-crimp")))
        store.record_crimps(known.number, found, by=me.person.name)

    return _recorded(request, number, form, act)


@router.post("/tag/{number}/event")
def event(request: Request, me: Builder, form: OwnForm, number: str) -> Response:
    """Record that a hose was installed, inspected or removed."""
    kind = texts_of(form).get("kind", "")
    if kind not in set(BY_HAND):
        why = Message("bench-not-by-hand", value=kind)
        return refused(request, 422, Message("bench-event-refused"), why)

    def act(known: Assembly, given: dict[str, str]) -> None:
        data = {"note": note} if (note := given.get("note", "")[:500]) else {}
        store_of(request).record(known.number, kind, data, by=me.person.name)

    return _recorded(request, number, form, act)


@router.post("/tag/{number}/void")
def void(request: Request, me: Builder, form: OwnForm, number: str) -> Response:
    """Makes a record void, as long as nothing came of it."""

    def act(known: Assembly, given: dict[str, str]) -> None:
        scans_of(request).write()  # one that waits counts too
        store_of(request).void(known.number, given.get("void_reason", ""), by=me.person.name)

    return _recorded(request, number, form, act, {"reason": "void_reason"})


@router.post("/tag/{number}/correct")
def correct(request: Request, me: Builder, form: OwnForm, number: str) -> Response:
    """Corrects what the form has otherwise than the record; both values stay in the history."""

    def act(known: Assembly, given: dict[str, str]) -> None:
        changes = {name: given[name] or None for name in CORRECTABLE if name in given}
        why, lot_reason = given.get("correct_reason", ""), given.get("lot_reason") or None
        store_of(request).correct(known.number, changes, why, lot_reason=lot_reason, by=me.person.name)

    return _recorded(request, number, form, act, {"reason": "correct_reason"})


@router.get("/tag/{number}/certificate.pdf")
def certificate_pdf(request: Request, me: Builder, number: str) -> Response:
    """The certificate of the last proof test."""
    try:
        body = of_last_test(
            store_of(request), number, settings_of(request), tables_of(request), paper_language(request)
        )
    except TaggerError as error:
        return refused(request, 404, Message("bench-no-certificate"), error)
    return pdf(body, f"certificate-{tag_number.format(tag_number.compact(number))}")
