"""Identifying a hose whose tag is lost: measure each end, pick what it is, say the hose, order it.

What has been picked so far stands in the address, so that going back works and nothing is kept.
"""

from __future__ import annotations

import json
from collections import defaultdict
from dataclasses import dataclass
from typing import Any
from urllib.parse import urlencode

from fastapi import APIRouter, Request
from fastapi.responses import RedirectResponse, Response
from markupsafe import Markup
from pydantic import ValidationError

from api.scan import looks, view
from api.scan.order_form import order_form
from api.scan.pages import page, render
from api.scan.visitor import Reader, reader_of
from api.shared import gauge_sheets, layers, looking
from api.web.state import settings_of
from tagger import phrases, units
from tagger.errors import Problem, SpecError, TaggerError, UnitError, problems_of
from tagger.i18n import Translator
from tagger.messages import Figure, Message, angle, length
from tagger.spec import AssemblySpec, Connection, Cover, End, Form, LengthBasis, Series, Sizing
from tagger.trade import assess
from tagger.trade.identifying import guided, marks, readings
from tagger.trade.identifying.identify import Candidate, Errors, Identification, Measurements, identify

router = APIRouter()

SEATS = {
    "": Message("scan-seat-not_sure"),
    **{
        seat: Message(f"scan-seat-{seat}")
        for seat in ("37", "45", "30", "60", "24", "face", "boss", "flat", "taper")
    },
}
CONES = {
    "": Message("scan-cone-not_sure"),
    "outside": Message("scan-cone-outside"),
    "inside": Message("scan-cone-inside"),
}
FLANKS = {
    "": Message("scan-flank-not_sure"),
    **{flank: Message(f"scan-flank-{flank}") for flank in readings.FLANKS},
}
SERIES = {"": Message("scan-series-not_sure"), **{str(one): Message(f"scan-series-{one}") for one in Series}}
ORIGINS = {
    "": Message("scan-origin-not_sure"),
    **{origin: Message(f"scan-origin-{origin}") for origin in readings.ORIGINS},
}
FORMS = {form: phrases.form(form) for form in Form}
_OFFERED: dict[str, Any] = {
    "seats": SEATS,
    "cones": CONES,
    "flanks": FLANKS,
    "series": SERIES,
    "origins": ORIGINS,
    "forms": FORMS,
    "looks": looks,
}
"""What both pages offer beside the questions: the server's and the one that a phone keeps."""
BASES = {basis: phrases.length_basis(basis) for basis in LengthBasis}
COVERS = {cover: phrases.cover(cover) for cover in Cover}
FIELD = {"thread": "diameter"}  # where the form's field has another name than the feature
MEASURED = (
    *("form", "diameter", "tpi", "pitch", "seat", "cone", "flank", "nose", "tube_od", "hex"),
    *("flange_od", "bolt_spacing", "series", "origin", "cannot", *readings.SAID),
    *("found", "scale"),
)
_DIAMETERS = {"thread_od": "diameter", "thread_id": "diameter"}
SHAPES = {
    "straight": Message("words-shape-straight"),
    "elbow_45": Message("words-shape-elbow", angle=angle(45)),
    "elbow_90": Message("words-shape-elbow", angle=angle(90)),
}


@dataclass(frozen=True)
class Picked:
    """An end that was chosen: family, size, form and series; its shape is asked for later."""

    connection: str
    size: str
    form: str
    series: str = ""

    @classmethod
    def read(cls, text: str) -> Picked | None:
        """From the address; None where it is not there. Raises SpecError where it is none of ours."""
        if not text:
            return None
        parts = text.split("~")
        if len(parts) not in (3, 4):
            raise SpecError(Problem("end", text, Message("scan-picked-wrong", given=text)))
        found = cls(*parts)
        found.end({})
        return found

    def end(self, more: dict[str, Any]) -> End:
        """As a spec's end. Raises SpecError."""
        by = Connection(self.connection).sized_by if self.connection in set(Connection) else Sizing.DASH
        size: dict[str, Any] = {"size": self.size}
        if by is Sizing.DASH:
            number = units.whole_number(self.size)
            size = {"dash": self.size if number is None else number}
        try:
            series = {"series": self.series} if self.series else {}
            known = {"connection": self.connection, "form": self.form, **size, **series}
            return End.model_validate({**known, **more})
        except ValidationError as error:
            raise SpecError(problems_of(error)) from None

    def __str__(self) -> str:
        parts = (self.connection, self.size, self.form, self.series)
        return "~".join(part for part in parts if part)


_MOST = 100  # characters of an answer or a reading that the links of a page repeat


@router.get("/identify/look", include_in_schema=False)
def look(request: Request) -> Response:
    """One question after another, with pictures, each narrowing what the end can be."""
    reader = reader_of(request)
    asked = {key: request.query_params.get(key, "").strip()[:_MOST] for key in (*MEASURED, "a", "b")}
    keeps = {key: value for key, value in asked.items() if key not in guided.STEPS}
    problems: tuple[Problem, ...] = ()
    values: dict[str, Any] = {}
    try:
        at = looking.Addresses("/identify/look", "/identify", keeps)
        values = looking.shown(guided.read(asked), at, reader.tables, reader.t)
    except TaggerError as error:
        problems = error.problems
    return page(
        request,
        "identify_look.html",
        status=422 if problems else 200,
        title=reader.t("identify-looking-title"),
        problems=problems,
        **values,
    )


@router.get("/identify/layers", include_in_schema=False)
def hose_layers(request: Request) -> Response:
    """Which standards a hose cannot be, by its layers, its diameters and its lay line."""
    reader = reader_of(request)
    unit = settings_of(request).length_unit
    values, problems = layers.shown(request.query_params, unit, reader.tables, reader.t)
    return page(
        request,
        "identify_layers.html",
        status=422 if problems else 200,
        title=reader.t("identify-hose-title"),
        problems=problems,
        action="/identify/layers",
        **values,
    )


@router.get("/identify", include_in_schema=False)
def measure(request: Request) -> Response:
    """The form for one end and, once it is filled in, what that end can be; for a sheet of hoses what they leave."""
    if request.query_params.get("sheet") == "hoses":
        return RedirectResponse("/gauges/hose", 303)
    reader = reader_of(request)
    t = reader.t
    asked = {key: request.query_params.get(key, "").strip() for key in (*MEASURED, "a", "b")}
    problems: tuple[Problem, ...] = ()
    found: Identification | None = None
    a = b = None
    try:
        a, b = Picked.read(asked["a"]), Picked.read(asked["b"])
        if any(asked[key] for key in MEASURED):
            marked, errors = _with_marks(_in_unit(asked, settings_of(request).length_unit))
            found = identify(_measurements(marked), reader.tables, errors)
    except TaggerError as error:
        problems = error.problems
    wanted = found.measure_next.feature if found and found.measure_next else ""
    state = {key: str(end) for key, end in (("a", a), ("b", b)) if end}
    which = "b" if a and not b else "a"
    return page(
        request,
        "identify.html",
        status=422 if problems else 200,
        title=t("scan-no_tag"),
        asked=asked,
        problems=problems,
        **gauge_sheets.found_on(asked, request.query_params, reader.tables),
        **_OFFERED,
        kept=False,
        which=which,
        wanted=wanted,
        state=state,
        picked=[(key.upper(), t(phrases.end(end.end({})))) for key, end in (("a", a), ("b", b)) if end],
        same=_address(state | {"b": str(a)}) if a and not b else None,
        complete=f"/identify/hose?{urlencode(state)}" if a and b else None,
        next_words=t(f"scan-ask-{wanted}") if wanted else None,
        next_field=FIELD.get(wanted, wanted),
        without=_without(asked, wanted, state),
        summary=t(found.summary) if found else "",
        tie=t(found.tie) if found and found.tie else "",
        lacks=t(found.lacks) if found else "",
        candidates=[_shown(c, which, state, reader) for c in found.candidates] if found else None,
        look=looking.address("/identify/look", asked),
        **_seen(asked, reader),
    )


def _seen(asked: dict[str, str], reader: Reader) -> dict[str, Any]:
    """What the eye said already: in words, to be kept in the form, and the forms that it leaves."""
    said = {name: asked[name] for name in readings.SAID if asked[name] in readings.SAID[name]}
    answers = {name: word for name, word in said.items() if name in ("side", "swivels")}
    left = {
        kind.form for kind in guided.kinds(reader.tables) if all(kind.allows(*one) for one in answers.items())
    }
    return {
        "said": said,
        "said_words": [reader.t(guided.told(name, (word,))) for name, word in said.items()],
        "left": left,
    }


def kept_page(request: Request, lang: str, version: str) -> str:
    """The page that a phone fills by itself when the network is gone."""
    nothing = dict.fromkeys((*MEASURED, "a", "b"), "")

    def address(name: str) -> str:
        return f"/scan/{version}/{name}"

    return render(
        request,
        "identify_kept.html",
        lang,
        title=Translator(lang)("scan-no_tag"),
        script=address("identify.js"),
        tables=address("tables.json"),
        words=address(f"words-{lang}.json"),
        candidates=address("candidates.json"),
        more=address(f"more-{lang}.json"),
        asked=nothing,
        marks=(),
        from_sheet=False,
        **_OFFERED,
        kept=True,
        wanted="",
        state={},
        said={},
        said_words=[],
        left=set(Form),
        look="/identify/look",
        pictures=looking.pictures(),
    )


def _without(asked: dict[str, str], wanted: str, state: dict[str, str]) -> str:
    """The address of the same question, where what is ``wanted`` cannot be measured."""
    known = {key: asked[key] for key in MEASURED if asked[key]}
    cannot = ",".join(word for word in (asked["cannot"], wanted) if word)
    return f"/identify?{urlencode({**state, **known, 'cannot': cannot})}"


_LENGTHS = ("diameter", "tube_od", "hex", "flange_od", "bolt_spacing", "nose")
_HOSE_LENGTHS = ("length", "drop_a", "drop_b")


def _in_unit(asked: dict[str, str], unit: str, names: tuple[str, ...] = _LENGTHS) -> dict[str, str]:
    """What was typed, with the unit of the shop at each length that has none."""
    return asked | {name: units.with_unit(asked.get(name, ""), unit) for name in names}


def _readings(asked: dict[str, str]) -> dict[str, Figure]:
    """How the lengths of the hose were read; none where they cannot be."""
    found = {}
    for name in _HOSE_LENGTHS:
        try:
            if asked[name]:
                found[name] = length(units.read_length_mm(asked[name]))
        except UnitError:
            continue
    return found


def _with_marks(asked: dict[str, str]) -> tuple[dict[str, str], Errors | None]:
    """What was typed, with what was found on a gauge sheet, corrected, in its fields; and how far off it may be.

    Raises SpecError where a mark cannot be read or is not one of such an end.
    """
    fields = {name: _DIAMETERS.get(name, name) for name in marks.FIELDS.values()}
    read = marks.read(asked["found"], asked["scale"], {name: asked[field] for name, field in fields.items()})
    found = {
        name: value for name, value in read.values.items() if not isinstance(value, str) or name == "seat"
    }
    side = asked["side"].lower()
    if asked["form"] in set(Form):
        form = Form(asked["form"])
        side = "male" if form.is_male_thread else "female" if form.is_female_thread else "none"
    for name, is_one in (("thread_od", side == "male"), ("thread_id", side == "female")):
        if name in found and not is_one and not readings.unknown(side):
            raise SpecError(Problem("found", asked["found"], Message("identify-mark-other-end", thread=name)))
    return asked | {fields[n]: v if isinstance(v, str) else f"{v} mm" for n, v in found.items()}, read.errors


def _measurements(asked: dict[str, str]) -> Measurements:
    """Raises SpecError naming every field that cannot be read."""
    form, side = asked["form"], asked["side"].lower()
    if readings.unknown(form) and readings.unknown(side):
        raise SpecError(Problem("form", None, Message("scan-form-missing")))
    if form in set(Form):
        side = "male" if Form(form).is_male_thread else "female" if Form(form).is_female_thread else "none"
    return Measurements.read(
        form=form,
        thread_id=asked["diameter"] if side == "female" else None,
        thread_od=asked["diameter"] if side == "male" else None,
        tpi=asked["tpi"],
        pitch=asked["pitch"],
        seat=asked["seat"],
        cone=asked["cone"],
        tube_od=asked["tube_od"],
        hex=asked["hex"],
        flange_od=asked["flange_od"],
        bolt_spacing=asked["bolt_spacing"],
        flank=asked["flank"],
        nose=asked["nose"],
        series=asked["series"],
        origin=asked["origin"],
        cannot=asked["cannot"],
        **{name: asked[name] for name in readings.SAID},
    )


def _shown(candidate: Candidate, which: str, state: dict[str, str], reader: Reader) -> dict[str, Any]:
    """One candidate for the page. What contradicts a measurement cannot be picked."""
    t = reader.t
    picked = Picked(candidate.connection.value, candidate.size, candidate.form.value, candidate.series or "")
    end = picked.end({})
    return {
        "words": t(phrases.end_family(end)),
        "thread": candidate.thread,
        "likelihood": t("scan-identify-likelihood", percent=_percent(candidate.likelihood)),
        "contradicts": _contradicted(candidate, t),
        "look_alikes": [t(alike) for alike in candidate.look_alikes],
        "pick": None if candidate.contradicts else _address(state | {which: str(picked)}),
    }


def _percent(likelihood: float) -> str:
    return (
        f"{likelihood * 100:.0f}\N{NO-BREAK SPACE}%"
        if likelihood >= 0.01
        else "<\N{NO-BREAK SPACE}1\N{NO-BREAK SPACE}%"
    )


def _contradicted(candidate: Candidate, t: Translator) -> str:
    """What was measured and does not fit; empty where everything does."""
    features = tuple(Message(f"scan-feature-{name}") for name in candidate.contradicts)
    return t("scan-identify-contradicts", features=features) if features else ""


def _address(state: dict[str, str]) -> str:
    if "a" in state and "b" in state:
        return f"/identify/hose?{urlencode(state)}"
    return f"/identify?{urlencode(state)}"


@router.get("/identify/hose", include_in_schema=False)
def hose(request: Request) -> Response:
    """The form for the hose between the ends and, once it is filled in, the whole spec to order."""
    reader = reader_of(request)
    t = reader.t
    asked = defaultdict(str, {key: value.strip() for key, value in request.query_params.items()})
    problems: tuple[Problem, ...] = ()
    unit = settings_of(request).length_unit
    in_unit = _in_unit(asked, unit, _HOSE_LENGTHS)
    spec = assessed = None
    ends: list[tuple[str, str]] = []
    try:
        a, b = Picked.read(asked.get("a", "")), Picked.read(asked.get("b", ""))
        if not a or not b:
            raise SpecError(Problem("end", None, Message("scan-picked-missing")))
        ends = [("A", t(phrases.end(a.end({})))), ("B", t(phrases.end(b.end({}))))]
        if "standard" in asked:
            spec = _spec(a, b, in_unit, request.query_params.getlist("covers"))
            assessed = assess(spec, reader.tables)
    except TaggerError as error:
        problems, spec = error.problems, None
    values = view.spec_only(spec, assessed, reader) if spec and assessed else None
    return page(
        request,
        "identify_hose.html",
        status=422 if problems else 200,
        title=t("scan-hose-title"),
        asked=asked,
        problems=problems,
        ends=ends,
        shapes=SHAPES,
        bases=BASES,
        covers=COVERS,
        readings=_readings(in_unit),
        unit=unit,
        chosen_covers=request.query_params.getlist("covers"),
        standards=list(reader.tables.standards),
        values=values,
        order_form=Markup(order_form(spec, t, spec_json=json.dumps(spec.as_dict()))) if spec else "",
    )


def _spec(a: Picked, b: Picked, asked: dict[str, str], covers: list[str]) -> AssemblySpec:
    """Raises SpecError naming every field that is missing or cannot be read."""

    def end(picked: Picked, letter: str) -> dict[str, Any]:
        more: dict[str, Any] = {"shape": asked.get(f"shape_{letter}") or "straight"}
        if asked.get(f"drop_{letter}") and more["shape"] != "straight":
            more["drop_mm"] = asked[f"drop_{letter}"]
        if asked.get(f"jump_{letter}"):
            more["hose_dash"] = asked.get("dash")
        return picked.end(more).model_dump(mode="json", exclude_none=True)

    return AssemblySpec.read(
        {
            "hose": {"standard": asked.get("standard", ""), "dash": asked.get("dash") or None},
            "end_a": end(a, "a"),
            "end_b": end(b, "b"),
            "length_mm": asked.get("length") or None,
            "length_basis": asked.get("length_basis") or LengthBasis.SEALING_FACE,
            "clocking_deg": asked.get("clocking") or None,
            "covers": covers,
        }
    )
