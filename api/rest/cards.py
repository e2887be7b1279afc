"""The fitter's card: of a registered hose assembly, and of a spec that is not registered."""

from __future__ import annotations

from datetime import UTC, datetime

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.rest.problem import RESPONSES
from api.rest.shared import (
    AsBuilder,
    AsDevice,
    SpecIn,
    TheStore,
    answers_with,
    assembly_at,
    assess_of,
    pdf,
    spec_of,
)
from api.web.language import paper_language
from api.web.state import settings_of, tables_of
from tagger.papers import fitters_card
from tagger.record_tag import preview, tags_of
from tagger.store import Registration

router = APIRouter(responses=RESPONSES, tags=["tags"])


@router.get(
    "/assemblies/{number}/fitters-card.pdf",
    summary="Get the fitter's card that goes into the bag with the hose assembly",
    responses=answers_with("application/pdf", words="The guide for both ends, on A6."),
    response_class=Response,
)
def card(request: Request, store: TheStore, token: AsBuilder, number: str) -> Response:
    settings, made = settings_of(request), assembly_at(store, number)
    store.refuse_blocked([made.number])
    [tag] = tags_of(store, [made], settings)
    body = fitters_card.of_tag(tag, settings, tables_of(request), paper_language(request))
    return pdf(body, f"fitters-card-{tag.shown_number}")


@router.post(
    "/check/fitters-card.pdf",
    summary="Preview the fitter's card of a spec without registering it",
    responses=answers_with("application/pdf", words="The card; its number is given to nobody."),
    response_class=Response,
)
def preview_card(request: Request, store: TheStore, token: AsDevice, spec: SpecIn) -> Response:
    settings, wanted, assessed = settings_of(request), spec_of(store, spec), assess_of(request, spec)
    tag = preview(Registration(wanted, assessed, built_on=datetime.now(UTC).date()), settings)
    body = fitters_card.of_tag(tag, settings, tables_of(request), paper_language(request))
    return pdf(body, "fitters-card")
