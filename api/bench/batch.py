"""Crimps and the proof test of a whole run, or of ticked members, in one act; the batch's certificate."""

from __future__ import annotations

from collections import Counter

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.page import NOT_FOUND, go, pdf, refused, render
from api.bench.readings import crimps_of, proof_test, texts_of
from api.web.identity import Builder, OwnForm
from api.web.language import paper_language
from api.web.state import settings_of, store_of, tables_of
from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError, TaggerError
from tagger.messages import Message
from tagger.papers.batch_certificate import of_batch
from tagger.papers.certificate import of_each
from tagger.store import (
    MEDIA,
    MOST_OF_A_BATCH,
    Assembly,
    CrimpMeasured,
    Event,
    Kind,
    Result,
    Store,
    Verdict,
    proof_required,
)

router = APIRouter()


@router.get("/run/{run}/prove")
def prove_page(request: Request, me: Builder, run: int) -> Response:
    """The members of a run to measure and to test; each is ticked that is not tested yet."""
    try:
        made = store_of(request).run(run)
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    return _page(request, made)


def _page(
    request: Request,
    made: list[Assembly],
    problems: tuple[Problem, ...] = (),
    fields: dict[str, str] | None = None,
    ticked: list[str] | None = None,
    status: int = 200,
) -> Response:
    store, tables = store_of(request), tables_of(request)
    shown = [one for one in made if one.void is None][:MOST_OF_A_BATCH]
    numbers = [one.number for one in shown]
    proved, required = store.proved_of(numbers), [proof_required(one, tables) for one in shown]
    hoses = {(one.spec.hose.standard, one.spec.hose.dash, one.spec.hose.part) for one in shown}
    batches = {test.data["batch"]: test.number for test, _ in proved.values() if "batch" in test.data}
    return render(
        request,
        "prove.html",
        title=Message("bench-batch-title"),
        status=status,
        problems=problems,
        run=made[0].run,
        made=shown,
        proved=proved,
        crimped=store.last(numbers, Kind.CRIMPED),
        ticked=[one.number for one in shown if not (_counts(proved.get(one.number)) or one.withdrawn)]
        if ticked is None
        else ticked,
        required=Counter(r for r in required if not r.rating_missing),
        unknown=sum(r.rating_missing for r in required),
        can_be_given=any(r.can_be_given for r in required),
        crimps=store.crimps_of(*hoses.pop()) if len(hoses) == 1 else [],
        one_hose=not hoses,
        media=MEDIA,
        last_test=store.last_proof_test(),
        batches=batches,
        fields=fields or {},
        wrong={p.field: p for p in problems},
    )


def _counts(proved: tuple[Event, Verdict] | None) -> bool:
    """Whether there is a proof test that was not overtaken by a crimp."""
    return proved is not None and proved[1].result is not Result.OUTDATED


@router.post("/run/{run}/prove")
def prove(request: Request, me: Builder, form: OwnForm, run: int) -> Response:
    """Records one proof test of the ticked members: of all of them, or of none."""
    store, given = store_of(request), texts_of(form)
    try:
        made = store.run(run)
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    ticked = [tag_number.compact(str(number)) for number in form.getlist("numbers")]
    try:
        test = proof_test(given, me.person.name)
        store.record_proof_batch(
            _of_the_run(made, ticked), test, tables=tables_of(request), by=me.person.name
        )
    except TaggerError as error:
        return _page(request, made, error.problems, given, ticked, 422)
    return go(f"/bench/run/{run}/prove?note=recorded")


@router.post("/run/{run}/crimps")
def crimps(request: Request, me: Builder, form: OwnForm, run: int) -> Response:
    """Records the crimp diameters that were entered, each for its own assembly."""
    store, given = store_of(request), texts_of(form)
    try:
        made = store.run(run)
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    try:
        store.record_crimp_batch(_entered(store, made, given), by=me.person.name)
    except TaggerError as error:
        return _page(request, made, error.problems, given, status=422)
    return go(f"/bench/run/{run}/prove?note=recorded")


def _entered(store: Store, made: list[Assembly], given: dict[str, str]) -> dict[str, list[CrimpMeasured]]:
    """The crimps of each member whose diameter was entered. Raises StoreError naming each wrong field."""
    found, problems = dict[str, list[CrimpMeasured]](), list[Problem]()
    for one in made:
        try:
            if crimps := crimps_of(one, given, store, f" {one.number}"):
                found[one.number] = crimps
        except TaggerError as error:
            problems += error.problems
    if problems:
        raise StoreError(problems)
    if not found:
        raise StoreError(Problem("crimps", None, Message("bench-no-crimp")))
    return found


def _of_the_run(made: list[Assembly], ticked: list[str]) -> list[str]:
    """Those that were ticked. Raises StoreError for a number that is not of this run."""
    own = {one.number for one in made}
    if strange := [number for number in ticked if number not in own]:
        raise StoreError(
            Problem("numbers", n, Message("bench-batch-not-of-run", number=n))
            for n in map(tag_number.format, strange)
        )
    return ticked


@router.get("/tag/{number}/batch.pdf")
def batch_pdf(request: Request, me: Builder, number: str, each: bool = False) -> Response:
    """The certificate of the batch in which a tag was last tested; ``each``: one for each of its members."""
    store, settings, language = store_of(request), settings_of(request), paper_language(request)
    try:
        body, batch = (
            of_batch(store, number, settings, tables_of(request), language),
            store.proof_batch(number),
        )
        if each and batch:
            body = of_each(store, batch.numbers, settings, tables_of(request), language)
    except TaggerError as error:
        return refused(request, 404, Message("bench-no-certificate"), error)
    name = batch.reference if batch else number
    return pdf(body, f"certificate-{name}")
