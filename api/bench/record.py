"""One tag's record on the bench: the assembly, its history, crimp measurements and proof tests."""

from __future__ import annotations

from typing import Any

from fastapi import APIRouter, Request
from pydantic import ValidationError
from starlette.responses import Response

from api.bench.page import NOT_FOUND, go, refused, render
from api.bench.reprints import REPRINTS
from api.shared.papers.certificate import of_last_test
from api.web.identity import Builder, OwnForm
from api.web.language import paper_language
from api.web.state import settings_of, store_of, tables_of
from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError, TaggerError, problems_of
from tagger.messages import Message
from tagger.spec import Hose
from tagger.store import MEDIA, Assembly, CrimpMeasured, Kind, ProofTest, Store
from tagger.trade.rows import Rule
from tagger.units import read_length_mm, read_pressure_bar

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
    store = store_of(request)
    return render(
        request,
        "record.html",
        title=Message("bench-record-title", number=tag_number.format(known.number)),
        status=status,
        problems=problems,
        item=known,
        history=store.history(known.number)[::-1],
        blocked=store.blocked([known.number]).get(known.number),
        crimps=store.crimps(known.spec.hose.standard, known.spec.hose.dash),
        media=MEDIA,
        reprints=REPRINTS,
        times_printed=store.times_printed(known.number),
        by_hand=BY_HAND,
        fields=fields or {},
        hold=_hold(request),
        wrong={p.field: p for p in problems},
    )


@router.post("/tag/{number}/proof")
def proof(request: Request, me: Builder, form: OwnForm, number: str) -> Response:
    """Records a proof test; a failed one blocks the tag."""
    store, given = store_of(request), _texts(form)
    try:
        known = store.assembly(number)
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    try:
        test = _proof_test(known, given, me.person.name, _hold(request))
        store.record_proof_test(known.number, test, by=me.person.name)
    except TaggerError as error:
        return _page(request, known, error.problems, given, 422)
    return go(f"/bench/tag/{known.number}?note=recorded")


def _hold(request: Request) -> tuple[Rule, Rule]:
    """The minimum and the maximum hold time of a proof test."""
    tables = tables_of(request)
    return tables.rule("proof_hold_min"), tables.rule("proof_hold_max")


def _proof_test(known: Assembly, given: dict[str, str], by: str, hold: tuple[Rule, Rule]) -> ProofTest:
    if given.get("result") not in ("passed", "failed"):
        raise StoreError(Problem("result", None, Message("bench-no-result")))
    try:
        return ProofTest.model_validate(
            {
                "pressure_bar": read_pressure_bar(given.get("pressure_bar", "")),
                "hold_s": given.get("hold_s", ""),
                "medium": given.get("medium", ""),
                "passed": given["result"] == "passed",
                "tester": given.get("tester") or by,
                "called_for_bar": known.assessment.test_pressure_bar,
                "called_for_s": hold[0].value,
                "called_for_most_s": hold[1].value,
                "note": given.get("note", ""),
            }
        )
    except ValidationError as error:
        raise StoreError(problems_of(error)) from None
    except TaggerError as error:
        raise error.within("pressure_bar") from None


@router.post("/tag/{number}/crimp")
def crimp(request: Request, me: Builder, form: OwnForm, number: str) -> Response:
    """Records measured crimp diameters against the value the shop keeps for that hose and shell."""
    store, given = store_of(request), _texts(form)
    try:
        known = store.assembly(number)
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    try:
        measured = [
            _measured(end, given, known.spec.hose, store) for end in ("a", "b") if given.get(f"crimp_{end}")
        ]
        if not measured:
            raise StoreError(Problem("crimp_a", None, Message("bench-no-crimp")))
        store.record_crimps(known.number, measured, by=me.person.name)
    except TaggerError as error:
        return _page(request, known, error.problems, given, 422)
    return go(f"/bench/tag/{known.number}?note=recorded")


def _measured(end: str, given: dict[str, str], hose: Hose, store: Store) -> CrimpMeasured:
    name = f"crimp_{end}"
    value = store.crimp(hose.standard, hose.dash, given.get(f"shell_{end}", ""), field=f"shell_{end}")
    try:
        return value.measured(end, read_length_mm(given[name]))
    except ValidationError as error:
        raise StoreError(Problem(name, given[name], p.message) for p in problems_of(error)) from None
    except TaggerError as error:
        raise error.within(name) from None


@router.post("/tag/{number}/event")
def event(request: Request, me: Builder, form: OwnForm, number: str) -> Response:
    """Record that a hose was installed, inspected or removed."""
    kind = str(form.get("kind") or "")
    if kind not in set(BY_HAND):
        why = Message("bench-not-by-hand", value=kind)
        return refused(request, 422, Message("bench-event-refused"), why)
    try:
        data = {"note": note} if (note := str(form.get("note") or "").strip()[:500]) else {}
        store_of(request).record(number, kind, data, by=me.person.name)
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    return go(f"/bench/tag/{tag_number.compact(number)}?note=recorded")


@router.get("/tag/{number}/certificate.pdf")
def certificate_pdf(request: Request, me: Builder, number: str) -> Response:
    """The certificate of the last proof test."""
    try:
        body = of_last_test(store_of(request), number, settings_of(request), paper_language(request))
    except TaggerError as error:
        return refused(request, 404, Message("bench-no-certificate"), error)
    name = f"certificate-{tag_number.format(tag_number.compact(number))}.pdf"
    headers = {"Content-Disposition": f'inline; filename="{name}"', "Cache-Control": "no-store"}
    return Response(body, media_type="application/pdf", headers=headers)


def _texts(form: Any) -> dict[str, str]:
    return {name: str(value).strip() for name, value in form.multi_items() if name != "csrf"}
