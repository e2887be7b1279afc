"""Tags: read from a link or a photo, how to fit what they hang on, templates, and whether they will scan."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Annotated, Any

from fastapi import APIRouter, File, Query, Request, UploadFile
from pydantic import Field
from starlette.responses import Response

from api.rest.problem import RESPONSES, there
from api.rest.shared import (
    Answer,
    AsDevice,
    Request_,
    SignatureOut,
    SpecIn,
    TheStore,
    answers_with,
    assembly_at,
    assess_of,
    spec_of,
)
from api.shared.known_tag import State, assessment_of, compared, doubts
from api.shared.known_tag import find as tag_behind
from api.shared.label_files import MEDIA, Form, picture_of, template_of
from api.shared.photos import MAX_BYTES, read_photo
from api.web.language import language_of, translator_of
from api.web.state import keys_of, settings_of, tables_of
from tagger.code import link, payload, reading
from tagger.code import number as tag_number
from tagger.errors import Problem, SpecError, TaggerError
from tagger.messages import Message
from tagger.printing import preflight as flight
from tagger.printing import template
from tagger.record_tag import preview, tags_of
from tagger.signing import state_of
from tagger.store import Registration, Store
from tagger.trade.guide import turns_of
from tagger.trade.motion import NAMES, Name, first_end
from tagger.trade.present import overrated
from tagger.trade.steps import steps_for

router = APIRouter(responses=RESPONSES, tags=["tags"])


class ReadIn(Request_):
    """Exactly one of the two: what a scanner sends, or the digits of a tag alone."""

    text: Annotated[str | None, Field(max_length=2000)] = None
    digits: Annotated[str | None, Field(max_length=1000)] = None


class FitStepOut(Answer):
    """One step of fitting. ``source`` is that of the practice."""

    step: str
    phase: str
    text: str
    caution: bool
    source: str


class FitOut(Answer):
    """``read_from``: "record", or "tag" where this shop has none. ``digits``: how those on
    the tag stand to the record, "same", "differ" or "damaged"; ``signature``: how they stand to the shop's keys
    (null where nothing is to be said). ``doubts``: why it is not to be installed yet; ask the shop first, whatever the
    steps say. ``first``: the end that is connected first."""

    number: str
    read_from: str
    digits: State | None
    signature: SignatureOut | None
    doubts: list[str]
    first: Name
    end_a: list[FitStepOut]
    end_b: list[FitStepOut]


@router.post("/read", summary="Read a tag from its link or code")
def read(request: Request, store: TheStore, token: AsDevice, body: ReadIn) -> dict[str, Any]:
    """What a tag says by itself; ``registered`` and ``digits`` say how that stands to the shop's record,
    ``signature`` whether the shop signed it (null where nothing is to be said), ``overrated`` that its pressure is above
    what the tables allow (null where it is not)."""
    if (body.text is None) == (body.digits is None):
        raise SpecError(Problem("text", body.text, Message("rest-one-of-text-and-digits")))
    if body.digits is not None:
        t, content = translator_of(request), payload.decode(body.digits)
        high = overrated(content, tables_of(request))
        told = t.as_json(high.claim) if high else None
        return {
            **reading.as_dict(content, t=t),
            "registered": None,
            "digits": None,
            "signature": None,
            "overrated": told,
        }
    return _said_by(link.parse(body.text or ""), request, store)


def _said_by(found: link.Link, request: Request, store: Store) -> dict[str, Any]:
    """What the tag says, and whether the shop has a record that says the same."""
    record = store.assembly(found.number) if store.known(found.number) else None
    content = reading.content_of(found)
    signed = state_of(keys_of(request), found.number, found.digits, content.built_on)
    t, high = translator_of(request), overrated(content, tables_of(request), record.spec if record else None)
    told = (high.message if record else high.claim) if high else None
    return {
        **reading.as_dict(content, found, t),
        "registered": record is not None,
        "digits": compared(record, found.digits)[0],
        "signature": signed.as_dict() if signed else None,
        "overrated": t.as_json(told) if told else None,
    }


@router.post("/read/photo", summary="Read a tag from a photo")
def read_from_photo(
    request: Request, store: TheStore, token: AsDevice, image: Annotated[UploadFile, File()]
) -> dict[str, Any]:
    return _said_by(read_photo(image.file.read(MAX_BYTES + 1)), request, store)


@router.get("/fit-steps", summary="Get the installation steps for each end")
def fit_steps(
    request: Request,
    store: TheStore,
    token: AsDevice,
    tag: Annotated[str, Query(description="Tag number, or the link in the QR code.")],
) -> FitOut:
    scanned = link.parse(tag)
    try:
        found = tag_behind(store, scanned.number, scanned.digits, tables_of(request), keys_of(request))
    except TaggerError as error:
        raise there(error) from None
    if found.record:  # nobody is guided to install what must not be installed
        store.refuse_blocked([found.record.number], traveller=True)
    tables, content, t = tables_of(request), found.content, translator_of(request)
    assessed = assessment_of(found, tables)
    steps: dict[str, list[FitStepOut]] = {}
    for name, tighten in zip(NAMES, (content.tighten_a, content.tighten_b), strict=True):
        end = getattr(content.spec, name)
        chosen = steps_for(
            end,
            tighten,
            spec=content.spec,
            name=name,
            pressure_bar=content.working_pressure_bar,
            at_most_bar=content.at_most_bar,
            bend_radius_mm=assessed.bend_radius_mm if assessed else None,
            turns=turns_of(end, tighten),
            tables=tables,
        )
        steps[name] = [
            FitStepOut(
                step=s.step_id, phase=s.phase, text=t(s.message), caution=s.caution, source=t(s.source)
            )
            for s in chosen
        ]
    number, origin = tag_number.format(found.number), "record" if found.record else "tag"
    return FitOut(
        number=number,
        read_from=origin,
        digits=found.digits_state,
        signature=SignatureOut.model_validate(found.signed.as_dict()) if found.signed else None,
        doubts=[t(doubt) for doubt in doubts(found)],
        first=first_end(content.spec, tables),
        end_a=steps["end_a"],
        end_b=steps["end_b"],
    )


@router.get("/templates", summary="List label templates")
def label_templates(request: Request, token: AsDevice) -> dict[str, Any]:
    return {"templates": template.catalogue(settings_of(request).label_template_dirs, language_of(request))}


@router.get("/assemblies/{number}/preflight", summary="Check whether the tag will scan (template, printer)")
def preflight(
    request: Request,
    store: TheStore,
    token: AsDevice,
    number: str,
    template: str | None = None,
    dpi: Annotated[int | None, Query(ge=72, le=1200)] = None,
    hose_od_mm: Annotated[float | None, Query(gt=0, le=500)] = None,
) -> dict[str, object]:
    settings = settings_of(request)
    [tag] = tags_of(store, [assembly_at(store, number)], settings)
    wanted = template_of(template or settings.label_template, settings)
    return flight.preflight(tag, wanted, hose_od_mm, dpi or settings.printer_dpi).as_dict(
        translator_of(request)
    )


@router.post(
    "/check/tag.{form}",
    summary="Preview the tag of a spec without registering it",
    responses=answers_with(*MEDIA.values(), words="The tag; its number is given to nobody."),
    response_class=Response,
)
def preview_tag(
    request: Request,
    store: TheStore,
    token: AsDevice,
    spec: SpecIn,
    form: Form,
    template: str | None = None,
) -> Response:
    settings, wanted, assessed = settings_of(request), spec_of(store, spec), assess_of(request, spec)
    tag = preview(Registration(wanted, assessed, built_on=datetime.now(UTC).date()), settings)
    label = template_of(template or settings.label_template, settings)
    return Response(picture_of(tag, label, settings.printer_dpi, form), media_type=MEDIA[form])
