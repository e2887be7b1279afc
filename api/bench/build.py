"""The build page: the form of a spec, what the trade says of it, and the tag as it will print."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from datetime import date
from typing import Any
from urllib.parse import urlencode

from fastapi import APIRouter, Request
from starlette.datastructures import FormData
from starlette.responses import JSONResponse, Response

from api.bench import form as forms
from api.bench import identify, reel_lots, starts
from api.bench.page import go, render, spoken
from api.settings import ClockingSense
from api.shared.label_files import template_of, template_titles
from api.web.identity import Builder, OwnForm
from api.web.language import translator_of
from api.web.state import settings_of, store_of, tables_of, templates_of
from tagger import drawing, phrases, spec
from tagger.code import payload
from tagger.errors import Problem, TaggerError
from tagger.i18n import Translator
from tagger.messages import Figure, Message, angle, length
from tagger.printing import layout, plate
from tagger.record import RECORD_FIELDS, recorded
from tagger.record_tag import preview
from tagger.spec import AssemblySpec, Cover, Fluid, LengthBasis, Material
from tagger.store import OrderRequest, Person, Registration, Store
from tagger.store.crimps import EndCard, inserted
from tagger.store.registering import register
from tagger.trade import assess, given, grades, keeping
from tagger.trade.cutting import Cut, cut, reaches_mm
from tagger.trade.fittings import problems as fitting_problems
from tagger.trade.fittings import with_ratings
from tagger.trade.likeforlike import Comparison, compare
from tagger.trade.results import Assessment
from tagger.trade.tables import Tables

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
    instead: Comparison | None = None  # held against the tag it replaces, or against what was ordered
    cut: Cut | None = None  # the length to cut, where the spec is read
    cards: tuple[EndCard, ...] = ()  # the crimp card of each end
    stops: tuple[Problem, ...] = ()  # what stops registering, said at once: lots, a change not made
    ask_lot_reason: bool = False


def view(request: Request, fields: dict[str, Any], template_name: str) -> View:
    """What the fields say so far, and what stops registering, however little is filled in."""
    store = store_of(request)
    found = _read(request, fields, template_name)
    return replace(
        found,
        stops=(*reel_lots.problems(store, found.fields), *_change_not_made(store, found)),
        ask_lot_reason=reel_lots.another_hose(store, found.fields) is not None,
    )


def _change_not_made(store: Store, found: View) -> tuple[Problem, ...]:
    """The problem of an order whose change is neither made nor considered."""
    reference = found.fields["order_reference"]
    if found.spec is None or not reference or found.fields["changes_considered"]:
        return ()
    problem = store.change_not_made(reference, found.spec)
    return (problem,) if problem else ()


def _read(request: Request, fields: dict[str, Any], template_name: str) -> View:
    """Reads the fields as far as they go: spec, then what the trade says, then the tag."""
    settings, tables, t = settings_of(request), tables_of(request), translator_of(request)
    fields = forms.settled(fields, tables)
    try:
        wanted = forms.spec_of(forms.in_unit(fields, settings.length_unit), settings.clocking_sense)
    except TaggerError as error:
        return View(fields, error.problems)
    ends = drawing.svg(
        drawing.ends_picture(wanted, 120, 26, length_text=t.figure(length(wanted.length_mm))),
        title=t("bench-view-ends"),
    )
    store = store_of(request)
    fittings = store.fittings_of(wanted)
    if others := fitting_problems(wanted, fittings):
        return View(fields, tuple(others), wanted, ends=ends)
    wanted = with_ratings(wanted, fittings)
    try:
        cards = store.crimp_cards(wanted, fittings)
        deep = inserted(fittings, cards, wanted)
        found = assess(wanted, tables, reaches_mm=reaches_mm(wanted, deep))
        to_cut = cut(wanted, deep)
        row = _row(forms.asked_of(fields, date.today()), wanted, found)
        payload.encode(found.content_of(wanted, row.built_on))
    except TaggerError as error:
        return View(fields, tuple(map(forms.on_the_page, error.problems)), wanted, ends=ends)
    instead = _against_the_old_one(request, fields, wanted)
    try:
        label = template_of(template_name, settings)
        page = layout.lay_out(preview(row, settings), label, settings.printer_dpi)
        seen = plate.engraved(page.drawing, label.engraved) if label.engraved else page.drawing
        picture = drawing.svg(seen, title=t("bench-view-tag-picture"))
    except TaggerError as error:
        return View(
            fields,
            (),
            wanted,
            found,
            ends,
            tag_problems=error.problems,
            instead=instead,
            cut=to_cut,
            cards=cards,
        )
    return View(fields, (), wanted, found, ends, picture, instead=instead, cut=to_cut, cards=cards)


def _row(asked: forms.Asked, wanted: AssemblySpec, found: Assessment) -> Registration:
    """What will be registered."""
    return Registration(
        wanted,
        found,
        asked.count,
        asked.built_on,
        asked.replaces,
        asked.order_reference,
        asked.lot_reason,
        asked.changes_considered,
        listed_row=None,
        **recorded(asked),
    )


def _against_the_old_one(
    request: Request, fields: Mapping[str, Any], wanted: AssemblySpec
) -> Comparison | None:
    """Whether what is being built may take the place of the tag it replaces, field by field; of an order, of what
    was ordered: beside the change that was asked for, one that was not would pass unseen."""
    store, replaces, order = store_of(request), fields["replaces"], fields["order_reference"]
    try:
        if replaces:
            return compare(store.assembly(replaces).spec, wanted, tables_of(request))
        return _against_the_order(store.order(order).spec, wanted, tables_of(request)) if order else None
    except TaggerError:  # another shop's tag, or a number half typed: registering will say so
        return None


def _against_the_order(ordered: AssemblySpec, wanted: AssemblySpec, tables: Tables) -> Comparison:
    """What is different from what was ordered; not what stands against the order as it came, such as a pressure that
    nobody knows since what a manufacturer said of a part is asked anew."""
    as_it_came = compare(ordered, ordered.to_build_again(), tables).fields
    found = compare(ordered, wanted, tables)
    return replace(found, fields=tuple(each for each in found.fields if each not in as_it_came))


def choices(request: Request) -> dict[str, Any]:
    """Everything the page's lists offer, in the reader's language."""
    tables, t = tables_of(request), translator_of(request)
    families = list(tables.families)
    settings = settings_of(request)
    return {
        "standards": [(s.standard, s.construction) for s in tables.standards.values()],
        "connections": [
            (str(c), t("bench-build-connection", connection=phrases.connection(c))) for c in families
        ],
        "forms": {str(c): forms.forms_of(c, tables) for c in families},
        "form_words": {str(f): t(phrases.form(f)) for f in spec.Form},
        "sizes": {str(c): tables.sizes(c) for c in families},
        "lot_reasons": [(str(reason), t(reason.words)) for reason in reel_lots.REASONS],
        "series": [(str(s), str(s)) for s in spec.Series],
        "materials": [(str(m), t(phrases.material(m))) for m in Material],
        "bases": [(str(b), t(phrases.length_basis(b))) for b in LengthBasis],
        "fluids": [(str(f), t(phrases.fluid(f))) for f in Fluid],
        "shapes": _shapes(t),
        "covers": [(str(c), t(phrases.cover(c))) for c in Cover],
        "templates": template_titles(settings, t.language),
        "clockwise": settings.clocking_sense is ClockingSense.CLOCKWISE,
    }


def _shapes(t: Translator) -> list[tuple[str, str]]:
    elbows = [(f"elbow_{degrees}", t("bench-build-elbow", angle=angle(degrees))) for degrees in (45, 90)]
    return [("straight", t("bench-build-straight")), *elbows, ("angle", t("bench-build-other-angle"))]


def _settled(fields: dict[str, Any]) -> dict[str, Any]:
    """The fields that may follow from others: no ticks, and not the page's own key."""
    return {
        name: value
        for name, value in fields.items()
        if name not in ("key", "covers", "end_b.same", "keep", "length_confirmed")
        and not name.endswith(".confirmed")
    }


def _asks(shown: View) -> dict[str, Message]:
    """What only a manufacturer knows of this assembly, by the field that takes it; of like ends the first."""
    asked = given.asks(shown.assessment) if shown.assessment else []
    same = bool(shown.fields["end_b.same"])
    return {ask.field: ask.message for ask in asked if not (same and ask.field == "end_b.rating")}


def _readings(request: Request, shown: View) -> dict[str, Figure]:
    """How the lengths and pressures of the page are read, in both systems of units."""
    return forms.readings(forms.in_unit(shown.fields, settings_of(request).length_unit))


@router.get("/build")
def build_page(request: Request, me: Builder) -> Response:
    """Blank, or begun from a tag, an order request, a recipe or an earlier hose."""
    try:
        fields = starts.begin(request)
    except TaggerError as error:
        return _page(request, forms.blank(date.today()), error.problems, status=404)
    return _page(request, fields, starts.doubts(request))


@router.post("/build/preview")
def build_preview(request: Request, me: Builder, form: OwnForm) -> Response:
    """Answer every key: the right side of the page, and the fields that follow from others."""
    shown = view(request, forms.sent(form), str(form.get("template") or settings_of(request).label_template))
    templates, t = templates_of(request), translator_of(request)
    html = templates.get_template("bench/_view.html").render(
        **spoken(request), view=shown, **_shared(request, shown)
    )
    return JSONResponse(
        {
            "html": html,
            "settled": _settled(shown.fields),
            "asks": {field: t(message) for field, message in _asks(shown).items()},
            "readings": {name: t.figure(figure) for name, figure in _readings(request, shown).items()},
            "problems": [problem.as_dict(t) for problem in (*shown.stops, *shown.problems)],
            "ask_lot_reason": shown.ask_lot_reason,
            "clocking": bool(shown.fields["end_a.shape"] != "straight" != shown.fields["end_b.shape"]),
        }
    )


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
        return _save_recipe(request, fields, shown.spec, form, me.person)
    try:
        asked = forms.asked_of(fields, date.today())
        tables = tables_of(request)
        keep = keeping.rows_of(shown.spec, tables) if fields["keep"] else []
        rated = shown.assessment
        if keep:
            reaches = reaches_mm(shown.spec, store_of(request).fittings_of(shown.spec))
            rated = assess(shown.spec, keeping.tables_with(tables, keep), reaches_mm=reaches)
        row = _row(asked, shown.spec, rated)
        made = register(store_of(request), [row], by=me.person.name, key=asked.key, keep=keep)
    except TaggerError as error:
        return _page(request, fields, error.problems, status=422, chosen=chosen)
    return go(f"/bench/run/{made[0].run}?{urlencode({'template': chosen})}")


def _save_recipe(
    request: Request, fields: dict[str, Any], wanted: AssemblySpec, form: FormData, me: Person
) -> Response:
    name, replace = str(form.get("recipe_name", "")), bool(form.get("recipe_replace"))
    try:
        kept = store_of(request).save_recipe(name, wanted, by=me.name, role=me.role, replace=replace)
    except TaggerError as error:
        return _page(request, fields, error.problems, status=422, recipe_name=name)
    return go(f"/bench/build?{urlencode({'recipe': kept.name, 'note': 'saved'})}")


def _page(
    request: Request,
    fields: dict[str, Any],
    problems: Any = (),
    *,
    status: int = 200,
    chosen: str = "",
    recipe_name: str = "",
) -> Response:
    chosen = chosen or settings_of(request).label_template
    shown = view(request, fields, chosen)
    wrong = {p.field: p for p in problems}
    return render(
        request,
        "build.html",
        title=Message("bench-build"),
        here="build",
        status=status,
        view=shown,
        fields=shown.fields,
        record_fields=RECORD_FIELDS,
        problems=problems,
        wrong=wrong,
        **identify.offered(request),
        chosen=chosen,
        choices=choices(request),
        asks=_asks(shown),
        recipes=store_of(request).recipes(),
        recipe_name=recipe_name,
        order=_order(request, shown.fields["order_reference"]),
        **_shared(request, shown),
    )


def _order(request: Request, reference: str) -> OrderRequest | None:
    """The order that is built for: the page shows the changes its customer wants."""
    try:
        return store_of(request).order(reference) if reference else None
    except TaggerError:
        return None


def _shared(request: Request, shown: View) -> dict[str, Any]:
    """What the right side of the page needs, at first and at every key."""
    sense = settings_of(request).clocking_sense
    said = forms.shown_clocking(shown.spec.clocking_deg if shown.spec else None, sense)
    return {
        "part": phrases.part,
        "cited": grades.cited,
        "where_from": tables_of(request).where_from,
        "readings": _readings(request, shown),
        "dial": _dial(request, said or 0),
        "clockwise": sense is ClockingSense.CLOCKWISE,
    }


def _dial(request: Request, said: int) -> str:
    sense = settings_of(request).clocking_sense
    standard = forms.shown_clocking(said, sense) or 0
    clockwise = sense is ClockingSense.CLOCKWISE
    return drawing.svg(drawing.clocking_picture(standard, 40, clockwise=clockwise, angle_text=f"{said}°"))
