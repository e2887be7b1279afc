"""Printing what is registered: a run or a single tag, counted, re-prints with their reason."""

from __future__ import annotations

from datetime import UTC, datetime

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.page import refused, render, settings_of, store_of
from api.bench.tags import pdf_of, tags_of, template_of
from api.identity import Builder, OwnForm
from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError, TaggerError
from tagger.printing import raster, template
from tagger.store import Assembly, Kind

router = APIRouter()
PDF, PNG = "application/pdf", "image/png"


@router.get("/run/{run}")
def run_page(request: Request, me: Builder, run: int) -> Response:
    """Everything registered in one act, ready to print."""
    try:
        made = store_of(request).run(run)
    except TaggerError as error:
        return refused(request, 404, "Not found", str(error))
    return page(request, made)


def page(
    request: Request, made: list[Assembly], status: int = 200, problems: tuple[Problem, ...] = ()
) -> Response:
    settings, store = settings_of(request), store_of(request)
    printed = store.last([a.number for a in made], Kind.PRINTED)
    names = template.names(settings.label_template_dirs)
    chosen = request.query_params.get("template") or settings.label_template
    return render(
        request, "run.html", title="Print", status=status, problems=problems, made=made, printed=printed,
        run=made[0].run, chosen=chosen, blocked=store.blocked([a.number for a in made]),
        templates=[(n, template.load(n, settings.label_template_dirs).title) for n in names],
    )  # fmt: skip


@router.post("/print")
def print_tags(request: Request, me: Builder, form: OwnForm) -> Response:
    """The tags as a PDF (any number) or PNG (one), written into their history as printed."""
    settings, store = settings_of(request), store_of(request)
    numbers = [str(n) for n in form.getlist("number")]
    made: list[Assembly] = []
    try:
        made = store.assemblies(numbers) if numbers else store.run(int(str(form.get("run") or 0)))
        if form.get("only_new"):
            done = store.last([a.number for a in made], Kind.PRINTED)
            made = [a for a in made if a.number not in done] or made
        wanted = template_of(str(form.get("template") or settings.label_template), settings)
        store.refuse_blocked([a.number for a in made])
        as_png = form.get("as") == "png"
        if as_png and len(made) > 1:
            raise StoreError(Problem("as", "png", "holds one tag only", "Take the PDF for several."))
        tags = tags_of(store, made, settings)
        body = (
            raster.png(tags[0], wanted, settings.printer_dpi)
            if as_png
            else pdf_of(tags, wanted, settings.printer_dpi)
        )
    except TaggerError as error:
        return (
            page(request, made, 422, error.problems)
            if made
            else refused(request, 404, "Not found", str(error))
        )
    # Written down before the paper exists: a tag that may have been printed counts as printed.
    data = {
        "template": wanted.name,
        "as": "png" if as_png else "pdf",
        "reason": str(form.get("reason") or ""),
    }
    store.record_many([a.number for a in made], Kind.PRINTED, data, by=me.person.name)
    name = tag_number.format(made[0].number) if len(made) == 1 else f"tags-{datetime.now(UTC):%Y%m%d-%H%M}"
    headers = {
        "Content-Disposition": f'inline; filename="{name}.{"png" if as_png else "pdf"}"',
        "Cache-Control": "no-store",
    }
    return Response(body, media_type=PNG if as_png else PDF, headers=headers)
