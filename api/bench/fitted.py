"""Reports that a hose was fitted, from whoever stood at the machine: the shop agrees or refuses."""

from __future__ import annotations

from collections.abc import Iterable

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.page import NOT_FOUND, go, refused, render
from api.web.identity import Builder, Manager, OwnForm
from api.web.state import store_of
from tagger.errors import Problem, StoreError, TaggerError
from tagger.messages import Message
from tagger.store import FittedState

router = APIRouter()


@router.get("/fitted")
def fitted_page(request: Request, me: Builder) -> Response:
    """Those that wait, hoses that must come off first, then the newest that are decided."""
    return _page(request)


def _page(request: Request, problems: Iterable[Problem] = (), status: int = 200) -> Response:
    reports = store_of(request).fitted_reports()
    waiting = [one for one in reports if one.state is FittedState.WAITING]
    waiting.sort(key=lambda one: not one.withdrawn and one.void is None)
    return render(
        request,
        "fitted.html",
        title=Message("fitted-bench-title"),
        here="orders",
        status=status,
        problems=problems,
        reports=waiting + [one for one in reports if one.state is not FittedState.WAITING][:100],
    )


@router.post("/fitted/{report}")
def decide(request: Request, me: Builder, form: OwnForm, report: int) -> Response:
    """Agrees to a report, which the tag's history then says; or refuses it with a reason."""
    agree = str(form.get("decision")) == "agree"
    try:
        store_of(request).decide_fitted(
            report, agree=agree, by=me.person.name, why=str(form.get("why") or "")[:500]
        )
    except TaggerError as error:
        return _page(request, error.problems, 422)
    return go("/bench/fitted?note=recorded")


@router.post("/fitted/{report}/erase")
def erase(request: Request, me: Manager, form: OwnForm, report: int) -> Response:
    """Erases who made a report, and its photo; day, machine and hours stay."""
    try:
        store_of(request).erase_fitted(report)
    except TaggerError as error:
        return _page(request, error.problems, 422)
    return go("/bench/fitted?note=saved")


@router.get("/photos/{photo}.jpg")
def photo(request: Request, me: Builder, photo: int) -> Response:
    """A photo that came with an order request or a report; for who is signed in alone."""
    try:
        image = store_of(request).photo(photo)
    except StoreError as error:
        return refused(request, 404, NOT_FOUND, error)
    headers = {"Cache-Control": "private, no-store", "Content-Disposition": f'inline; filename="{photo}.jpg"'}
    return Response(image, media_type="image/jpeg", headers=headers)
