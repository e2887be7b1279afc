"""Proof tests and crimps of several assemblies in one act, and the certificate of such a batch."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Annotated, Literal

from fastapi import APIRouter, Query, Request
from pydantic import Field
from starlette.responses import Response

from api.rest.once import DoOnce
from api.rest.problem import RESPONSES, there
from api.rest.record import CrimpIn, ProofTestIn
from api.rest.shared import (
    Answer,
    AsBuilder,
    EventOut,
    Request_,
    Stands,
    TheStore,
    answers_with,
    assembly_at,
    pdf,
)
from api.web.language import paper_language
from api.web.state import settings_of, tables_of
from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError, TaggerError
from tagger.messages import Message
from tagger.papers.batch_certificate import of_batch
from tagger.papers.certificate import of_each
from tagger.store import MOST_OF_A_BATCH, Batch, CrimpMeasured, Flushing, Store

router = APIRouter(responses=RESPONSES, tags=["assemblies"])


Numbers = Annotated[list[str], Field(min_length=1, max_length=MOST_OF_A_BATCH)]


class FlushingIn(Request_, Flushing):
    """How these assemblies were cleaned inside, and by whom; the certificate and the history say so."""

    numbers: Numbers


class ProofBatchIn(Request_):
    """One proof test of several assemblies: all of it is recorded, or nothing."""

    numbers: Numbers
    test: ProofTestIn


class MemberOut(Answer):
    """``result`` of this test: passed, tested (not a proof test), held (do not use), failed; ``stands``: what the
    assembly stands at with it. One that an earlier test loaded too high stays held.
    """

    number: str
    result: Literal["passed", "tested", "held", "failed"]
    stands: Stands


class BatchOut(Answer):
    """``reference`` is the number of its certificate."""

    reference: str
    members: list[MemberOut]

    @classmethod
    def of(cls, batch: Batch, stands: Mapping[str, str]) -> BatchOut:
        members = [
            MemberOut.model_validate(
                {
                    "number": tag_number.format(test.number),
                    "result": test.data["result"],
                    "stands": stands[test.number],
                }
            )
            for test in batch.tests
        ]
        return cls(reference=batch.reference, members=members)


class NumberedCrimp(CrimpIn):
    """A crimp as measured, with the tag number of its assembly."""

    number: str


class CrimpBatchIn(Request_):
    crimps: Annotated[list[NumberedCrimp], Field(min_length=1, max_length=2 * MOST_OF_A_BATCH)]


@router.post(
    "/proof-tests", status_code=201, summary="Record one proof test of several assemblies (all or none)"
)
def add_proof_batch(
    request: Request, store: TheStore, token: AsBuilder, body: ProofBatchIn, once: DoOnce
) -> BatchOut:
    tables, test = tables_of(request), body.test.as_made()

    def act() -> BatchOut:
        confirmed = body.test.confirmed
        made = store.record_proof_batch(body.numbers, test, tables=tables, by=token.name, confirmed=confirmed)
        return BatchOut.of(made, store.proof_states(made.numbers))

    return once(BatchOut, act)


@router.post("/flushings", status_code=201, summary="Record that assemblies were flushed (all or none)")
def add_flushing(store: TheStore, token: AsBuilder, body: FlushingIn, once: DoOnce) -> list[EventOut]:
    done = Flushing(method=body.method, flushed_by=body.flushed_by)

    def act() -> list[EventOut]:
        return [EventOut.of(event) for event in store.record_flushing(body.numbers, done, by=token.name)]

    return once(list[EventOut], act)


@router.post("/crimps", status_code=201, summary="Record the crimp diameters measured on several assemblies")
def add_crimp_batch(store: TheStore, token: AsBuilder, body: CrimpBatchIn, once: DoOnce) -> list[EventOut]:
    def act() -> list[EventOut]:
        measured = _measured(store, body.crimps)
        return [EventOut.of(event) for event in store.record_crimp_batch(measured, by=token.name)]

    return once(list[EventOut], act)


def _measured(store: Store, crimps: list[NumberedCrimp]) -> dict[str, list[CrimpMeasured]]:
    """Each held against the value that the shop keeps. Raises StoreError naming the crimp by its place."""
    found = dict[str, list[CrimpMeasured]]()
    for place, crimp in enumerate(crimps, 1):
        try:
            hose = store.assembly(crimp.number).spec.hose
        except TaggerError as error:
            raise error.within(f"crimps.{place}") from None
        number, field = tag_number.compact(crimp.number), f"crimps.{place}"
        measured = crimp.held_against(hose, store, field)
        if any(one.end == crimp.end for one in found.get(number, ())):
            raise StoreError(Problem(f"{field}.end", crimp.end, Message("rest-crimp-twice")))
        found.setdefault(number, []).append(measured)
    return found


@router.get(
    "/assemblies/{number}/batch-certificate.pdf",
    summary="Get the certificate of the batch in which the assembly was last tested",
    responses=answers_with("application/pdf", words="The certificate, on A4."),
    response_class=Response,
)
def batch_certificate(
    request: Request,
    store: TheStore,
    token: AsBuilder,
    number: str,
    each: Annotated[bool, Query(description="A certificate for each assembly of the batch instead.")] = False,
) -> Response:
    known, settings, language = assembly_at(store, number), settings_of(request), paper_language(request)
    try:
        whole = of_batch(store, known.number, settings, tables_of(request), language)
        batch = store.proof_batch(known.number)
        body = (
            of_each(store, batch.numbers, settings, tables_of(request), language) if each and batch else whole
        )
    except TaggerError as error:
        raise there(error) from None
    return pdf(body, f"certificate-{batch.reference if batch else number}")
