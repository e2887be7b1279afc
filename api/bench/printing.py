"""Print what is registered: a run or a single tag; prints are counted, reprints have a reason."""

from __future__ import annotations

import secrets
from datetime import UTC, datetime

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.page import NOT_FOUND, go, pdf, refused, render
from api.bench.reprints import REPRINTS
from api.shared.label_files import (
    MEDIA,
    sent_already,
    stopping_templates,
    tags_printed,
    template_of,
    template_titles,
    to_print,
    travellers,
)
from api.shared.papers.traveller import of_run
from api.web.identity import Builder, OwnForm
from api.web.language import language_of, paper_language
from api.web.state import queue_of, settings_of, store_of, tables_of
from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError, TaggerError
from tagger.messages import Message
from tagger.record_tag import tags_of
from tagger.store import Assembly, Kind, Printer

router = APIRouter()
HERE = "tagger_printer"
"""The cookie that holds where this browser printed last: there it prints at Enter the next time."""


@router.get("/run/{run}")
def run_page(request: Request, me: Builder, run: int, number: str = "") -> Response:
    """Everything registered in one act, ready to print; with ``number`` that one tag alone."""
    try:
        made = store_of(request).run(run)
        made = [one for one in made if one.number == tag_number.compact(number)] or made
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    return page(request, made)


@router.get("/run/{run}/traveller.pdf")
def traveller(request: Request, me: Builder, run: int) -> Response:
    """The sheet that goes with the parts of a run through the workshop."""
    store, settings = store_of(request), settings_of(request)
    try:
        body = of_run(store, run, settings, tables_of(request), paper_language(request))
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    return pdf(body, f"traveller-{run}")


def page(
    request: Request,
    made: list[Assembly],
    status: int = 200,
    problems: tuple[Problem, ...] = (),
    *,
    asking: str = "",
) -> Response:
    """The page to print from. ``asking``: the label on which tags that were printed may be printed again."""
    settings, store = settings_of(request), store_of(request)
    numbers = [a.number for a in made]
    untested, for_shop = store.untested(numbers), travellers(settings)
    chosen = asking or request.query_params.get("template")
    printers, last = store.printers(), request.cookies.get(HERE)
    first = next((p for p in printers if str(p.id) == last), None)
    loaded = first.template if first else None
    stopping = stopping_templates(settings)
    stopped = bool(store.stops(numbers))
    open_jobs = store.print_jobs(open_only=True, limit=200)
    return render(
        request,
        "run.html",
        title=Message("bench-print"),
        status=status,
        problems=problems,
        made=made,
        printed={n: events[-1] for n, events in tags_printed(store, numbers, settings).items()},
        run=made[0].run,
        blocked=store.blocked(numbers, traveller=True),
        untested=untested,
        stopping=stopped and chosen in stopping,
        chosen=(
            next(iter(for_shop), None)
            if untested and chosen not in (*for_shop, *stopping)
            else chosen or loaded
        )
        or settings.label_template,
        templates=[
            one
            for one in template_titles(settings, language_of(request))
            if stopped or one[0] not in stopping
        ],
        first=first,
        others=[p for p in printers if p is not first],
        jobs=[job for job in open_jobs if not set(numbers).isdisjoint(job.numbers)],
        asking=asking,
        sent=sent_already(store, numbers, settings),
        reprints=REPRINTS,
        key=secrets.token_urlsafe(12),
    )


@router.post("/print")
def print_tags(request: Request, me: Builder, form: OwnForm) -> Response:
    """The tags as a PDF (any number), or one as PNG, SVG or DXF, written into their history as printed; or a job."""
    settings, store = settings_of(request), store_of(request)
    numbers = [str(n) for n in form.getlist("number")]
    place, reason = str(form.get("as") or "pdf"), str(form.get("reason") or "")[:120]
    made: list[Assembly] = []
    try:
        made = store.assemblies(numbers) if numbers else store.run(int(str(form.get("run") or 0)))
        if form.get("only_new"):
            done = tags_printed(store, [a.number for a in made], settings)
            made = [a for a in made if a.number not in done] or made
        wanted = template_of(str(form.get("template") or settings.label_template), settings)
        store.refuse_print([a.number for a in made], wanted.purpose)
        printer = store.printer(_id(place.removeprefix("printer "))) if place.startswith("printer ") else None
        key = _key(str(form.get("key") or ""), printer, wanted.name)
        repeated = key is not None and store.is_asked_for(key)  # the same press twice is one print
        asked = bool(form.get("again")) or not wanted.is_tag or repeated
        if not asked and sent_already(store, [a.number for a in made], settings):
            return page(request, made, 409, asking=wanted.name)
        if printer is not None:
            job = queue_of(request).ask(printer, made, wanted, reason=reason, key=key, by=me.person.name)
            return _remembered(go(f"/bench/prints/{job.id}"), printer, secure=settings.secure)
        form_of = place if place in MEDIA else "pdf"
        if form_of != "pdf" and len(made) > 1:
            raise StoreError(
                Problem("as", form_of.upper(), Message("bench-file-one-tag", form=form_of.upper()))
            )
        tags = tags_of(store, made, settings)
        body = to_print(tags, wanted, settings.printer_dpi, form_of)
    except TaggerError as error:
        return page(request, made, 422, error.problems) if made else refused(request, 404, NOT_FOUND, error)
    # Written down before the paper exists: a tag that may have been printed counts as printed.
    data = {"template": wanted.name, "as": form_of, "reason": reason}
    store.record_many([a.number for a in made], Kind.PRINTED, data, by=me.person.name)
    name = tag_number.format(made[0].number) if len(made) == 1 else f"tags-{datetime.now(UTC):%Y%m%d-%H%M}"
    headers = {
        "Content-Disposition": f'inline; filename="{name}.{form_of}"',
        "Cache-Control": "no-store",
    }
    response = Response(body, media_type=MEDIA[form_of], headers=headers)
    response.delete_cookie(HERE, path="/bench")
    return response


def _key(key: str, printer: Printer | None, template: str) -> str | None:
    """What one press of one button is known by in the print jobs."""
    return f"bench {key} {printer.id} {template}"[:120] if key and printer else None


def _remembered(response: Response, printer: Printer, *, secure: bool) -> Response:
    response.set_cookie(
        HERE,
        str(printer.id),
        max_age=365 * 86400,
        path="/bench",
        secure=secure,
        httponly=True,
        samesite="lax",
    )
    return response


def _id(text: str) -> int:
    """A printer's id from the form. Raises StoreError for anything else."""
    if not text.isdecimal() or len(text) > 9:
        raise StoreError(Problem("as", text, Message("bench-not-a-printer", value=text)))
    return int(text)
