"""What happens to one assembly: its history, proof tests with their certificate, measured crimps."""

from __future__ import annotations

import json
from typing import Annotated, Any, Literal

from fastapi import APIRouter, Request
from pydantic import Field, field_validator
from starlette.responses import Response

from api.rest.once import DoOnce
from api.rest.problem import RESPONSES, there
from api.rest.shared import (
    Answer,
    AsBuilder,
    AsManager,
    AssemblyOut,
    EventOut,
    Request_,
    TestedOut,
    TheStore,
    answers_with,
    assembly_at,
    pdf,
)
from api.web.language import paper_language, translator_of
from api.web.state import scans_of, settings_of, tables_of
from tagger.errors import TaggerError
from tagger.papers.certificate import of_last_test
from tagger.record import MAX_LENGTH
from tagger.spec import Hose
from tagger.store import (
    CrimpMeasured,
    Event,
    Kind,
    LotReason,
    ProofAllowance,
    ProofTest,
    Store,
    Verdict,
    proof_required,
)
from tagger.trade.proof import Required

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

    def held_against(self, hose: Hose, store: Store, field: str) -> CrimpMeasured:
        """With the band that the shop keeps for that hose and shell. Raises StoreError naming what is in ``field``."""
        value = store.crimp(hose.standard, hose.dash, self.shell, part=hose.part, field=f"{field}.shell")
        return value.measured(self.end, self.measured_mm)


class CrimpsIn(Request_):
    crimps: Annotated[list[CrimpIn], Field(min_length=1, max_length=2)]


class ProofTestIn(ProofTest):
    """``confirmed``: the pressure was applied although it holds the assembly; without it such a one is refused."""

    confirmed: bool = False

    def as_made(self) -> ProofTest:
        return ProofTest.model_validate(self.model_dump(exclude={"confirmed"}))


class ProofRequired(Answer):
    """What a proof test of this assembly must be: pressures in bar, times in s; null: not known.

    A test at more than ``most_bar`` holds the assembly; a pressure above ``burst_bar``, the minimum
    burst pressure of ``burst_of``, is refused. ``unknown`` and ``unverified``: the parts whose
    manufacturer's working pressure must be given as ``rating_bar`` before a test can pass.
    """

    pressure_bar: float | None
    most_bar: float | None
    burst_bar: float | None
    burst_of: str | None
    hold_min_s: float
    hold_max_s: float
    unknown: list[str]
    unverified: list[str]
    can_be_given: bool

    @classmethod
    def of(cls, asked: Required) -> ProofRequired:
        return cls(
            pressure_bar=asked.pressure_bar,
            most_bar=asked.most_bar,
            burst_bar=asked.burst_bar,
            burst_of=asked.burst_of,
            hold_min_s=asked.hold_min.value,
            hold_max_s=asked.hold_max.value,
            unknown=list(asked.unknown),
            unverified=list(asked.unverified),
            can_be_given=asked.can_be_given,
        )


class ProofOut(Answer):
    """``result`` of the last test: passed, tested (not a proof test), held (do not use), failed, outdated (a crimp
    was recorded after it: test again); null: none."""

    required: ProofRequired
    result: str | None
    why: dict[str, Any] | None
    tests: list[EventOut]

    @classmethod
    def of(
        cls,
        asked: Required,
        proved: tuple[Event, Verdict] | None,
        tests: list[EventOut],
        request: Request,
    ) -> ProofOut:
        why = proved[1].why if proved else None
        return cls(
            required=ProofRequired.of(asked),
            result=str(proved[1].result) if proved else None,
            why=translator_of(request).as_json(why) if why else None,
            tests=tests,
        )


class VoidIn(Request_):
    reason: Annotated[str, Field(max_length=500)]


class CorrectIn(Request_):
    """What is sent is corrected, null removes a value, and what is not sent stays.

    ``lot_reason``: why the new reel lot is used although it is known as another hose.
    """

    reason: Annotated[str, Field(max_length=500)]
    customer: Annotated[str | None, Field(max_length=MAX_LENGTH)] = None
    machine: Annotated[str | None, Field(max_length=MAX_LENGTH)] = None
    position: Annotated[str | None, Field(max_length=MAX_LENGTH)] = None
    cleanliness: Annotated[str | None, Field(max_length=MAX_LENGTH)] = None
    hose_lot: Annotated[str | None, Field(max_length=40)] = None
    fitting_lot_a: Annotated[str | None, Field(max_length=40)] = None
    fitting_lot_b: Annotated[str | None, Field(max_length=40)] = None
    note: Annotated[str | None, Field(max_length=200)] = None
    lot_reason: LotReason | None = None

    def changes(self) -> dict[str, str | None]:
        """Those that were sent, by their names in the record."""
        named = {"hose_lot": "hose.lot", "fitting_lot_a": "end_a.lot", "fitting_lot_b": "end_b.lot"}
        sent = self.model_dump(exclude_unset=True, exclude={"reason", "lot_reason"})
        return {named.get(name, name): value for name, value in sent.items()}


@router.post("/assemblies/{number}/void", summary="Make a record void before anything came of it")
def void(
    request: Request, store: TheStore, token: AsBuilder, number: str, body: VoidIn, once: DoOnce
) -> AssemblyOut:
    """Refused once it was scanned, fitted, proof-tested or handed over: then withdraw the tag."""
    known = assembly_at(store, number).number
    scans_of(request).write()  # one that waits counts too
    return once(AssemblyOut, lambda: AssemblyOut.of(store.void(known, body.reason, by=token.name), request))


@router.post(
    "/assemblies/{number}/corrections",
    summary="Correct customer, machine, position, cleanliness, lots or note",
)
def correct(
    request: Request, store: TheStore, token: AsBuilder, number: str, body: CorrectIn, once: DoOnce
) -> AssemblyOut:
    """The history keeps both values; a lot that was corrected away still counts in withdrawals."""
    known = assembly_at(store, number).number

    def act() -> AssemblyOut:
        done = store.correct(known, body.changes(), body.reason, lot_reason=body.lot_reason, by=token.name)
        return AssemblyOut.of(done, request)

    return once(AssemblyOut, act)


@router.get("/assemblies/{number}/history", summary="List the history of an assembly, oldest first")
def history(store: TheStore, token: AsBuilder, number: str) -> list[EventOut]:
    return [EventOut.of(event) for event in store.history(assembly_at(store, number).number)]


@router.post("/assemblies/{number}/history", status_code=201, summary="Add an event to the history")
def add_event(store: TheStore, token: AsBuilder, number: str, body: EventIn, once: DoOnce) -> EventOut:
    known = assembly_at(store, number).number
    return once(EventOut, lambda: EventOut.of(store.record(known, body.kind, body.data, by=token.name)))


@router.post("/assemblies/{number}/proof-tests", status_code=201, summary="Record a proof test")
def add_proof_test(
    request: Request, store: TheStore, token: AsBuilder, number: str, body: ProofTestIn, once: DoOnce
) -> TestedOut:
    known, tables = assembly_at(store, number).number, tables_of(request)
    test = body.as_made()

    def act() -> TestedOut:
        done = store.record_proof_test(known, test, tables=tables, by=token.name, confirmed=body.confirmed)
        return TestedOut.of_test(done, store.proof_states([known])[known])

    return once(TestedOut, act)


@router.get(
    "/assemblies/{number}/proof-tests", summary="Get what a proof test must be, and what the last one proves"
)
def proof_tests(request: Request, store: TheStore, token: AsBuilder, number: str) -> ProofOut:
    known = assembly_at(store, number)
    tests = [EventOut.of(event) for event in store.each([known.number], Kind.PROOF_TESTED)]
    return ProofOut.of(proof_required(known, tables_of(request)), store.proved(known.number), tests, request)


@router.post(
    "/assemblies/{number}/proof-allowances",
    status_code=201,
    summary="Record the manufacturers' written allowance for an assembly that is held",
)
def add_proof_allowance(
    store: TheStore, token: AsManager, number: str, body: ProofAllowance, once: DoOnce
) -> EventOut:
    known = assembly_at(store, number).number
    return once(EventOut, lambda: EventOut.of(store.allow_proof_test(known, body, by=token.name)))


@router.get(
    "/assemblies/{number}/certificate.pdf",
    summary="Get the certificate of the last proof test",
    responses=answers_with("application/pdf", words="The certificate, on A4."),
    response_class=Response,
)
def certificate(request: Request, store: TheStore, token: AsBuilder, number: str) -> Response:
    try:
        return pdf(
            of_last_test(store, number, settings_of(request), tables_of(request), paper_language(request)),
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
            crimp.held_against(hose, store, f"crimps.{place}") for place, crimp in enumerate(body.crimps, 1)
        ]
        return EventOut.of(store.record_crimps(known.number, measured, by=token.name))

    return once(EventOut, act)
