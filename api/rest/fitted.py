"""Reports that an assembly was fitted: agree, refuse, and erase who made one; what was kept long enough."""

from __future__ import annotations

from datetime import date, datetime
from typing import Annotated

from fastapi import APIRouter, Query, Request
from pydantic import Field
from starlette.responses import Response

from api.rest.once import DoOnce
from api.rest.problem import RESPONSES, there
from api.rest.shared import (
    MOST_ID,
    Answer,
    AsBuilder,
    AsManager,
    Id,
    Request_,
    TheStore,
    answers_with,
    paged,
)
from api.web.state import settings_of
from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError, TaggerError
from tagger.messages import Message
from tagger.store import FittedReport, FittedState, Keep, Old, Store

router = APIRouter(responses=RESPONSES)


class FittedOut(Answer):
    """A report. ``elsewhere``: other machines that the number is said to be on: a tag may have been copied or moved.

    ``withdrawn``: why the assembly must not be used, where it is withdrawn and yet said to be on a machine.
    ``void``: why its record is void, where it is; such a report can only be refused.
    ``before_built``: the day is before the assembly was built. ``photo``: whether there is one.
    """

    id: int
    number: str
    fitted_on: date
    machine: str | None
    machine_hours: float | None
    fitted_by: str | None
    at: datetime
    state: FittedState
    decided_at: datetime | None
    decided_by: str | None
    why: str | None
    photo: bool
    elsewhere: list[str]
    withdrawn: list[str]
    void: str | None
    before_built: bool

    @classmethod
    def of(cls, item: FittedReport) -> FittedOut:
        lists = {"elsewhere": list(item.elsewhere), "withdrawn": list(item.withdrawn)}
        shown = {"number": tag_number.format(item.number), "photo": item.photo is not None}
        return cls(**{**vars(item), **lists, **shown})


class RefuseIn(Request_):
    reason: Annotated[str, Field(min_length=1, max_length=500)]


class ReportErasedOut(Answer):
    """``erased``: whether there was anything to erase."""

    erased: bool


class Days(Answer):
    """Days for which each is kept; 0: for ever."""

    contacts: int
    photos: int
    reports: int


class OldOut(Answer):
    """Contacts of order requests, photos, and persons of reports of fitting."""

    contacts: int
    photos: int
    reports: int

    @classmethod
    def of(cls, old: Old) -> OldOut:
        return cls(**vars(old))


class RetentionOut(Answer):
    """``days``: as the settings say; ``due``: how many have been kept long enough, and are erased next."""

    days: Days
    due: OldOut


@router.get("/fitted-reports", tags=["assemblies"], summary="List reports of fitting, newest first")
def reports(
    request: Request,
    response: Response,
    store: TheStore,
    token: AsBuilder,
    state: FittedState | None = None,
    number: str | None = None,
    limit: Annotated[int, Query(ge=1, le=500)] = 100,
    after: Annotated[int | None, Query(ge=0, le=MOST_ID, description="Id of the last item received.")] = None,
) -> list[FittedOut]:
    found = store.fitted_reports(state, number=number, limit=limit + 1, after=after)
    return [FittedOut.of(one) for one in paged(request, response, found, limit, lambda one: one.id)]


@router.get("/fitted-reports/{report}", tags=["assemblies"], summary="Get a report of fitting")
def one(store: TheStore, token: AsBuilder, report: Id) -> FittedOut:
    return FittedOut.of(_report(store, report))


def _report(store: Store, id: int) -> FittedReport:
    try:
        return store.fitted_report(id)
    except TaggerError as error:
        raise there(error) from None


@router.get(
    "/fitted-reports/{report}/photo.jpg",
    tags=["assemblies"],
    summary="Get the photo of a report of fitting",
    responses=answers_with("image/jpeg", words="The photo."),
    response_class=Response,
)
def photo(store: TheStore, token: AsBuilder, report: Id) -> Response:
    known = _report(store, report)
    if known.photo is None:
        wrong = Message("store-fitted-no-photo", id=report)
        raise there(StoreError(Problem("report", str(report), wrong)))
    headers = {"Cache-Control": "private, no-store"}
    return Response(store.photo(known.photo), media_type="image/jpeg", headers=headers)


@router.post(
    "/fitted-reports/{report}/agree",
    status_code=201,
    tags=["assemblies"],
    summary="Confirm a report of fitting: the assembly's history then says so",
)
def agree(store: TheStore, token: AsBuilder, report: Id, once: DoOnce) -> FittedOut:
    _report(store, report)  # not there: 404
    return once(FittedOut, lambda: FittedOut.of(store.decide_fitted(report, agree=True, by=token.name)))


@router.post(
    "/fitted-reports/{report}/refuse",
    status_code=201,
    tags=["assemblies"],
    summary="Reject a report of fitting, with the reason",
)
def refuse(store: TheStore, token: AsBuilder, report: Id, body: RefuseIn, once: DoOnce) -> FittedOut:
    _report(store, report)
    return once(
        FittedOut,
        lambda: FittedOut.of(store.decide_fitted(report, agree=False, by=token.name, why=body.reason)),
    )


@router.post(
    "/fitted-reports/{report}/erase",
    status_code=201,
    tags=["customers"],
    summary="Erase who made a report of fitting, and its photo",
)
def erase(store: TheStore, token: AsManager, report: Id, once: DoOnce) -> ReportErasedOut:
    """Day, machine and hours stay, and so does the line of history."""
    _report(store, report)
    return once(ReportErasedOut, lambda: ReportErasedOut(erased=store.erase_fitted(report)))


@router.get("/retention", tags=["customers"], summary="Get for how long people's data are kept")
def retention(request: Request, store: TheStore, token: AsManager) -> RetentionOut:
    keep = Keep.of(settings_of(request))
    return RetentionOut(days=Days(**vars(keep)), due=OldOut.of(store.old(keep)))


@router.post(
    "/retention",
    status_code=201,
    tags=["customers"],
    summary="Erase what has been kept long enough now",
)
def erase_old(request: Request, store: TheStore, token: AsManager, once: DoOnce) -> OldOut:
    """The server does the same by itself every six hours. Answers how much was erased."""
    keep = Keep.of(settings_of(request))
    return once(OldOut, lambda: OldOut.of(store.erase_old(keep)))
