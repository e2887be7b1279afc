"""What the trade says: identifying an end, checking a spec, comparing two; nothing is registered."""

from __future__ import annotations

from typing import Annotated, Any

from fastapi import APIRouter, Request
from pydantic import Field

from api.rest.problem import RESPONSES
from api.rest.shared import AsBuilder, AsDevice, Request_, SpecIn, TheStore, spec_of
from api.shared.scan_look_up import signed_state, spec_on
from api.web.language import translator_of
from api.web.state import keys_of, tables_of
from tagger.code import link
from tagger.errors import TaggerError
from tagger.signing import Keys
from tagger.spec import AssemblySpec
from tagger.store import Store
from tagger.store.crimps import inserted
from tagger.trade import assess, layline, likeforlike, report
from tagger.trade.cutting import cut, reaches_mm
from tagger.trade.identifying import by_layers
from tagger.trade.identifying import identify as identifying

router = APIRouter(responses=RESPONSES, tags=["trade"])
Measured = Annotated[str | float | None, Field(description="In mm, or a text with its unit: `1 1/16 in`.")]


class MeasuredIn(Request_):
    """What is known of an end; give at least one."""

    form: str | None = None
    seat: str | None = None
    cone: str | None = None
    thread_od: Measured = None
    thread_id: Measured = None
    tpi: str | float | None = None
    pitch: Measured = None
    hex: Measured = None
    tube_od: Measured = None
    flange_od: Measured = None
    bolt_spacing: Measured = None
    flank: str | int | None = Field(default=None, description="Angle of the thread flanks: `55` or `60`.")
    nose: Annotated[
        str | float | None,
        Field(description="Diameter of the nose, or of the socket that takes it; in mm, or with its unit."),
    ] = None
    series: str | None = Field(default=None, description="Of a stud: `S` heavy or `L` light.")
    origin: str | None = Field(default=None, description="Where the machine was made; it only breaks ties.")
    cannot: list[str] = Field(default=[], max_length=20, description="What cannot be measured.")
    side: str | None = Field(default=None, description="Where the thread is: `male`, `female` or `none`.")
    swivels: str | None = Field(
        default=None, description="Whether the threaded part turns on the end: `yes` or `no`."
    )
    shape: str | None = Field(default=None, description="Of the thread: `parallel` or `taper`.")
    seals: str | None = Field(
        default=None, description="What seals: `cone`, `face`, `boss`, `flat` or `thread`; a seat says more."
    )


SpecOrTag = Annotated[
    dict[str, Any] | str, Field(description="A spec, a tag number, or the link in the QR code.")
]


class CompareIn(Request_):
    """Whether ``b`` may take the place of ``a``."""

    a: SpecOrTag
    b: SpecOrTag


@router.post("/identify", summary="Identify a connection from measurements")
def identify(request: Request, token: AsBuilder, body: MeasuredIn) -> dict[str, Any]:
    measured = identifying.Measurements.read(**body.model_dump())
    return report.identification(identifying.identify(measured, tables_of(request)), translator_of(request))


class HoseSeenIn(Request_):
    """What is known of a hose; give at least one."""

    od: Measured = None
    bore: Measured = None
    kind: str | None = Field(
        default=None, description="Of the layers: `wire_braid`, `wire_spiral`, `wire_helix` or `fibre`."
    )
    layers: int | str | None = Field(default=None, description="How many of that kind: 1 to 8.")
    lay_line: str | None = Field(default=None, max_length=300, description="As it is printed on the hose.")


@router.post("/hose-by-layers", summary="Exclude hose standards by layers and diameters; rates nothing")
def identify_hose(request: Request, token: AsBuilder, body: HoseSeenIn) -> dict[str, Any]:
    tables = tables_of(request)
    found = by_layers.exclude(by_layers.HoseSeen.read(**body.model_dump()), tables)
    return report.hose_exclusion(found, tables, translator_of(request))


class LayLineIn(Request_):
    """The line printed along a hose, as it stands there."""

    text: str = Field(min_length=1, max_length=300)


@router.post("/lay-line", summary="Read the line printed along a hose")
def lay_line(request: Request, token: AsDevice, body: LayLineIn) -> dict[str, Any]:
    tables = tables_of(request)
    return report.lay_line(layline.read(body.text, tables), tables, translator_of(request))


@router.post("/check", summary="Assess a spec without registering it")
def check(request: Request, store: TheStore, token: AsBuilder, spec: SpecIn) -> dict[str, Any]:
    t, wanted = translator_of(request), spec_of(store, spec)
    fittings = store.fittings_of(wanted)
    cards = store.crimp_cards(wanted, fittings)
    deep = inserted(fittings, cards, wanted)
    answer = report.assessment(
        wanted, assess(wanted, tables_of(request), reaches_mm=reaches_mm(wanted, deep)), t
    )
    answer["cut_length"] = report.cut(cut(wanted, deep), t)
    answer["crimp_cards"] = {c.end[-1]: c.as_dict(t) for c in cards}
    return answer


@router.post("/compare", summary="Check whether one assembly can replace another")
def compare(request: Request, store: TheStore, token: AsBuilder, body: CompareIn) -> dict[str, Any]:
    """`signatures`: how the tag that each came from stands to the shop's keys; with a broken one, trust nothing said of it."""
    a, b = _spec("a", body.a, store), _spec("b", body.b, store)
    answer = report.comparison(likeforlike.compare(a, b, tables_of(request)), translator_of(request))
    keys = keys_of(request)
    return answer | {"signatures": {"a": _signature(body.a, keys), "b": _signature(body.b, keys)}}


def _signature(given: dict[str, Any] | str, keys: Keys) -> dict[str, Any] | None:
    """None for a spec, a number alone, and where nothing is to be said."""
    if not isinstance(given, str):
        return None
    tag = link.parse(given)
    signed = signed_state(keys, tag.number, tag.digits)
    return signed.as_dict() if signed else None


def _spec(name: str, given: dict[str, Any] | str, store: Store) -> AssemblySpec:
    try:
        return spec_on(store, given)[0] if isinstance(given, str) else spec_of(store, given)
    except TaggerError as error:
        raise error.within(name) from None
