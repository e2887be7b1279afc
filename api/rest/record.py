"""What happens to one assembly: its history, proof tests with their certificate, measured crimps."""

from __future__ import annotations

import json
from typing import Annotated, Any, Literal

from fastapi import APIRouter, Request
from pydantic import Field, field_validator
from starlette.responses import Response

from api.rest.once import DoOnce
from api.rest.problem import RESPONSES, there
from api.rest.shared import AsBuilder, EventOut, Request_, TheStore, answers_with, assembly_at, pdf
from api.shared.papers.certificate import of_last_test
from api.web.language import paper_language
from api.web.state import settings_of, tables_of
from tagger.errors import TaggerError
from tagger.store import ProofTest

router = APIRouter(responses=RESPONSES, tags=["assemblies"])
MOST_DATA = 4000  # characters of JSON


class EventIn(Request_):
    """Something seen or done: fitted, inspected, or taken off for good."""

    kind: Literal["fitted", "inspected", "removed"]
    data: Annotated[
        dict[str, Any], Field(default_factory=dict, description="At most 4,000 characters of JSON.")
    ]

    @field_validator("data")
    @classmethod
    def _short(cls, data: dict[str, Any]) -> dict[str, Any]:
        if len(json.dumps(data)) > MOST_DATA:
            raise ValueError(f"is longer than {MOST_DATA} characters of JSON")
        return data


class CrimpIn(Request_):
    """A crimp as measured; it is held against the diameter the shop keeps for that hose and shell."""

    end: Literal["a", "b"]
    measured_mm: Annotated[float, Field(ge=1, le=300)]
    shell: str


class CrimpsIn(Request_):
    crimps: Annotated[list[CrimpIn], Field(min_length=1, max_length=2)]


@router.get("/assemblies/{number}/history", summary="List the history of an assembly, oldest first")
def history(store: TheStore, token: AsBuilder, number: str) -> list[EventOut]:
    return [EventOut.of(event) for event in store.history(assembly_at(store, number).number)]


@router.post("/assemblies/{number}/history", status_code=201, summary="Add an event to the history")
def add_event(store: TheStore, token: AsBuilder, number: str, body: EventIn, once: DoOnce) -> EventOut:
    known = assembly_at(store, number).number
    return once(EventOut, lambda: EventOut.of(store.record(known, body.kind, body.data, by=token.name)))


@router.post("/assemblies/{number}/proof-tests", status_code=201, summary="Record a proof test")
def add_proof_test(
    request: Request, store: TheStore, token: AsBuilder, number: str, body: ProofTest, once: DoOnce
) -> EventOut:
    known = assembly_at(store, number)
    least, most = (tables_of(request).rule(f"proof_hold_{end}").value for end in ("min", "max"))
    called_for = {"called_for_bar": known.assessment.test_pressure_bar, "called_for_s": least}
    test = body.model_copy(update=called_for | {"called_for_most_s": most})
    return once(EventOut, lambda: EventOut.of(store.record_proof_test(known.number, test, by=token.name)))


@router.get(
    "/assemblies/{number}/certificate.pdf",
    summary="Get the certificate of the last proof test",
    responses=answers_with("application/pdf", words="The certificate, on A4."),
    response_class=Response,
)
def certificate(request: Request, store: TheStore, token: AsBuilder, number: str) -> Response:
    try:
        return pdf(
            of_last_test(store, number, settings_of(request), paper_language(request)),
            f"certificate-{number}",
        )
    except TaggerError as error:
        raise there(error) from None


@router.post("/assemblies/{number}/crimps", status_code=201, summary="Record measured crimp diameters")
def add_crimps(store: TheStore, token: AsBuilder, number: str, body: CrimpsIn, once: DoOnce) -> EventOut:
    known = assembly_at(store, number)
    hose = known.spec.hose

    def act() -> EventOut:
        measured = [
            store.crimp(hose.standard, hose.dash, crimp.shell, field=f"crimps.{place}.shell").measured(
                crimp.end, crimp.measured_mm
            )
            for place, crimp in enumerate(body.crimps, 1)
        ]
        return EventOut.of(store.record_crimps(known.number, measured, by=token.name))

    return once(EventOut, act)
