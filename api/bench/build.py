"""The build page: a spec under the hands, what the trade says of it, and the tag as it will print."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from typing import Any
from urllib.parse import urlencode

from fastapi import APIRouter, Request
from starlette.responses import JSONResponse, Response

from api.bench import form as forms
from api.bench import identify, starts
from api.bench.page import go, render
from api.settings import ClockingSense
from api.shared.label_files import template_of, template_titles
from api.shared.registering import register
from api.web.identity import Builder, OwnForm
from api.web.state import settings_of, store_of, tables_of, templates_of, words_of
from tagger import drawing, spec, units, words
from tagger.code import payload
from tagger.errors import Problem, TaggerError
from tagger.printing import layout
from tagger.record_tag import preview
from tagger.spec import AssemblySpec, Cover, Fluid, LengthBasis, Material
from tagger.store import OrderRequest, Registration
from tagger.trade import assess
from tagger.trade.likeforlike import Comparison, compare
from tagger.trade.results import Assessment

router = APIRouter()


@dataclass(frozen=True)
class View:
    """What the page shows of a spec; empty where the fields do not say one yet."""

    fields: dict[str, Any]
    problems: tuple[Problem, ...] = ()
    spec: AssemblySpec | None = None
    assessment: Assessment | None = None
    ends: str = ""
    tag: str = ""
    tag_problems: tuple[Problem, ...] = field(default=())
    instead: Comparison | None = None  # held against the tag it replaces


def view(request: Request, fields: dict[str, Any], template_name: str) -> View:
    """Reads the fields as far as they go: spec, then what the trade says, then the tag."""
    settings, tables = settings_of(request), tables_of(request)
    fields = forms.settled(fields, tables)
    try:
        wanted = forms.spec_of(fields, settings.clocking_sense)
    except TaggerError as error:
        return View(fields, error.problems)
    ends = drawing.svg(
        drawing.ends_picture(wanted, 120, 26, length_text=units.show_length(wanted.length_mm)),
        title="The assembly from the side, end A left",
    )
    try:
        found = assess(wanted, tables)
        row = _row(forms.record_of(fields, date.today()), wanted, found)
        payload.encode(found.content_of(wanted, row.built_on))
    except TaggerError as error:
        return View(fields, tuple(map(forms.on_the_page, error.problems)), wanted, ends=ends)
    instead = _against_the_old_one(request, fields["replaces"], wanted)
    try:
        label = template_of(template_name, settings)
        page = layout.lay_out(preview(row, settings), label, settings.printer_dpi)
        picture = drawing.svg(
            page.drawing, title="The tag as it will print; its number is given when it is registered"
        )
    except TaggerError as error:
        return View(fields, (), wanted, found, ends, tag_problems=error.problems, instead=instead)
    return View(fields, (), wanted, found, ends, picture, instead=instead)


def _row(record: forms.Record, wanted: AssemblySpec, found: Assessment) -> Registration:
    """What will be registered."""
    return Registration(
        wanted, found, record.count, record.built_on, record.customer, record.machine, record.position,
        record.replaces, record.order_reference,
    )  # fmt: skip


def _against_the_old_one(request: Request, replaces: str, wanted: AssemblySpec) -> Comparison | None:
    """Whether what is being built may take the place of the tag it replaces, field by field."""
    try:
        return (
            compare(store_of(request).assembly(replaces).spec, wanted, tables_of(request))
            if replaces
            else None
        )
    except TaggerError:  # another shop's tag, or a number half typed: registering will say so
        return None


def choices(request: Request) -> dict[str, Any]:
    """Everything the page's lists offer, in the trade's words."""
    tables, said = tables_of(request), words_of(request)
    families = list(tables.families)
    settings = settings_of(request)
    return {
        "standards": [(s.standard, s.construction) for s in tables.standards.values()],
        "connections": [(str(c), said.connection(c)) for c in families],
        "forms": {str(c): forms.forms_of(c, tables) for c in families},
        "form_words": {str(f): said.form(f) for f in spec.Form},
        "sizes": {str(c): tables.sizes(c) for c in families},
        "materials": [(str(m), said.material(m)) for m in Material],
        "bases": [(str(b), said.t(words.LENGTH_BASES[b])) for b in LengthBasis],
        "fluids": [(str(f), said.fluid(f)) for f in Fluid],
        "covers": [(str(c), said.cover(c)) for c in Cover],
        "templates": template_titles(settings),
        "clockwise": settings.clocking_sense is ClockingSense.CLOCKWISE,
    }


@router.get("/build")
def build_page(request: Request, me: Builder) -> Response:
    """Blank, or begun from a tag, an order request, a recipe or an earlier hose."""
    try:
        fields = starts.begin(request)
    except TaggerError as error:
        return _page(request, forms.blank(date.today()), error.problems, status=404)
    return _page(request, fields)


@router.post("/build/preview")
def build_preview(request: Request, me: Builder, form: OwnForm) -> Response:
    """Asked at every key: the page's right side, and the fields that followed from others."""
    shown = view(request, forms.sent(form), str(form.get("template") or settings_of(request).label_template))
    templates = templates_of(request)
    html = templates.get_template("bench/_view.html").render(view=shown, **_shared(request, shown))
    return JSONResponse(
        {
            "html": html,
            "settled": {k: v for k, v in shown.fields.items() if k not in ("key", "covers", "end_b.same")},
            "problems": [_named(p, words_of(request)) for p in shown.problems],
            "clocking": bool(shown.fields["end_a.shape"] != "straight" != shown.fields["end_b.shape"]),
        }
    )


def _named(problem: Problem, names: words.Words) -> dict[str, Any]:
    return problem.as_dict() | {"why": names.named(problem.why), "mend": names.named(problem.mend)}


@router.get("/build/dial.svg")
def dial(request: Request, me: Builder, degrees: int = 0) -> Response:
    """The clocking picture for an angle in the shop's own sense."""
    return Response(_dial(request, degrees % 360), media_type="image/svg+xml")


@router.post("/build")
def build(request: Request, me: Builder, form: OwnForm) -> Response:
    """Registers, and goes on to printing; or shows what is wrong where it is wrong."""
    fields = forms.sent(form)
    chosen = str(form.get("template") or settings_of(request).label_template)
    shown = view(request, fields, chosen)
    if shown.problems or shown.spec is None or shown.assessment is None:
        return _page(request, fields, shown.problems, status=422, chosen=chosen)
    if form.get("save_recipe"):
        return _save_recipe(request, fields, shown.spec, str(form.get("recipe_name", "")), me.person.name)
    try:
        record = forms.record_of(fields, date.today())
        row = _row(record, shown.spec, shown.assessment)
        made = register(store_of(request), [row], by=me.person.name, key=record.key)
    except TaggerError as error:
        return _page(request, fields, error.problems, status=422, chosen=chosen)
    return go(f"/bench/run/{made[0].run}?{urlencode({'template': chosen})}")


def _save_recipe(
    request: Request, fields: dict[str, Any], wanted: AssemblySpec, name: str, by: str
) -> Response:
    try:
        kept = store_of(request).save_recipe(name, wanted, by=by)
    except TaggerError as error:
        return _page(request, fields, error.problems, status=422)
    return go(f"/bench/build?{urlencode({'recipe': kept.name, 'note': 'saved'})}")


def _page(
    request: Request, fields: dict[str, Any], problems: Any = (), *, status: int = 200, chosen: str = ""
) -> Response:
    chosen = chosen or settings_of(request).label_template
    shown = view(request, fields, chosen)
    wrong = {p.field: p for p in problems}
    return render(
        request, "build.html", title="Build", here="/bench/build", status=status, view=shown, fields=shown.fields,
        problems=problems, wrong=wrong, **identify.offered(request), chosen=chosen, choices=choices(request), recipes=store_of(request).recipes(),
        order=_order(request, shown.fields["order_reference"]), **_shared(request, shown),
    )  # fmt: skip


def _order(request: Request, reference: str) -> OrderRequest | None:
    """The order that is built for: what its customer wants changed must stand before the builder."""
    try:
        return store_of(request).order(reference) if reference else None
    except TaggerError:
        return None


def _shared(request: Request, shown: View) -> dict[str, Any]:
    """What the right side of the page needs, at first and at every key."""
    sense = settings_of(request).clocking_sense
    said = forms.shown_clocking(shown.spec.clocking_deg if shown.spec else None, sense)
    return {
        "words": words_of(request),
        "units": units,
        "dial": _dial(request, said or 0),
        "clockwise": sense is ClockingSense.CLOCKWISE,
    }


def _dial(request: Request, said: int) -> str:
    sense = settings_of(request).clocking_sense
    standard = forms.shown_clocking(said, sense) or 0
    clockwise = sense is ClockingSense.CLOCKWISE
    return drawing.svg(drawing.clocking_picture(standard, 40, clockwise=clockwise, angle_text=f"{said}°"))
