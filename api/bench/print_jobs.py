"""Print jobs: the status of each, and what somebody decides about those that are stuck."""

from __future__ import annotations

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.page import NOT_FOUND, go, refused, render
from api.bench.reprints import REPRINTS
from api.shared.label_files import template_of
from api.web.identity import Builder, OwnForm
from api.web.state import queue_of, settings_of, store_of
from tagger.errors import Problem, StoreError, TaggerError
from tagger.messages import Message

router = APIRouter()


@router.get("/prints")
def jobs_page(request: Request, me: Builder) -> Response:
    """The jobs that are under way or stuck, and the last ones."""
    store = store_of(request)
    open_jobs = store.print_jobs(open_only=True, limit=200)
    ended = [job for job in store.print_jobs(limit=50) if not (job.state.under_way or job.state.stuck)]
    return render(
        request,
        "jobs.html",
        title=Message("bench-nav-prints"),
        here="prints",
        open_jobs=open_jobs,
        ended=ended,
        printers=store.printers(),
    )


@router.get("/prints/{job}")
def job_page(request: Request, me: Builder, job: int) -> Response:
    return _page(request, job)


@router.get("/prints/{job}/state")
def job_state(request: Request, me: Builder, job: int) -> Response:
    """The part of the page that changes; asked every second while something may happen."""
    return _page(request, job, "_job.html")


def _page(request: Request, job: int, name: str = "job.html", problems: tuple[Problem, ...] = ()) -> Response:
    store = store_of(request)
    try:
        found = store.print_job(job)
        made = store.assemblies(found.numbers[:200])
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    return render(
        request,
        name,
        title=Message("bench-prints-title", job=job),
        here="prints",
        job=found,
        made=made,
        problems=problems,
        reprints=REPRINTS,
        status=422 if problems else 200,
    )


@router.post("/prints/{job}")
def decide(request: Request, me: Builder, form: OwnForm, job: int) -> Response:
    """Send a job again, cancel it, or mark it as printed."""
    store, by = store_of(request), me.person.name
    try:
        match str(form.get("do")):
            case "again":
                known = store.print_job(job)
                wanted = template_of(known.template, settings_of(request))
                store.refuse_print(known.numbers, wanted.purpose)
                store.print_again(job, by=by)
                queue_of(request).wake()
            case "drop":
                store.print_dropped(job, by=by)
            case "seen":
                store.print_seen(job, by=by)
            case other:
                raise StoreError(Problem("do", other, Message("bench-not-an-action", value=other)))
    except TaggerError as error:
        return _page(request, job, problems=error.problems)
    return go(f"/bench/prints/{job}")
