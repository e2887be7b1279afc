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
from fastapi.responses import Response
from markupsafe import Markup
from pydantic import ValidationError

from api.scan import view
from api.scan.i18n import Reader, reader_of
from api.scan.labels import LABELS
from api.scan.pages import page
from tagger import units
from tagger.errors import Problem, SpecError, TaggerError, problems_of
from tagger.spec import AssemblySpec, Connection, End, Form, LengthBasis, Sizing
from tagger.trade import assess
from tagger.trade.identifying.identify import Candidate, Identification, Measurements, identify
from tagger.words import COVERS, FORMS, LENGTH_BASES, N_

router = APIRouter()

SEATS = {
    "": N_("do not know"),
    "37": N_("37° flare"),
    "45": N_("45° flare"),
    "30": N_("30° flare or cone"),
    "60": N_("60° cone"),
    "24": N_("24° cone"),
    "face": N_("O-ring in the flat face"),
    "boss": N_("O-ring under the hexagon (boss)"),
    "flat": N_("flat, for a washer or a flange"),
    "taper": N_("no seat: the thread gets thicker"),
}
CONES = {
    "": N_("do not know"),
    "outside": N_("stands out like a nose"),
    "inside": N_("lies inside like a funnel"),
}
FEATURES = {
    "thread": N_("thread diameter"),
    "tpi": N_("pitch"),
    "seat": N_("seat"),
    "cone": N_("cone"),
    "hex": N_("hexagon"),
    "tube_od": N_("tube diameter"),
    "flange_od": N_("flange head diameter"),
    "bolt_spacing": N_("bolt spacing"),
}
ASK = {
    "seat": N_("Look at the seat: its angle with a seat gauge, or whether it is an O-ring face, an O-ring boss, flat, or a taper thread with no seat."),
    "cone": N_("Look at the cone: does it stand out like a nose, or lie inside like a funnel?"),
    "thread": N_("Measure the thread's diameter with a caliper: outside on a male, inside on a female. Hold the caliper at an angle to the thread."),
    "tpi": N_("Count the pitch with a thread gauge: threads per inch, or millimetres."),
    "hex": N_("Measure the nut across its flats."),
    "tube_od": N_("Measure the outside diameter of the tube it goes on."),
    "flange_od": N_("Measure the diameter of the flange head."),
    "bolt_spacing": N_("Measure between the bolts, centre to centre, along the longer side."),
}  # fmt: skip
FIELD = {"thread": "diameter"}  # where the form's field has another name than the feature
MEASURED = ("form", "diameter", "tpi", "pitch", "seat", "cone", "tube_od", "hex", "flange_od", "bolt_spacing")
SHAPES = {"straight": N_("straight"), "elbow_45": N_("45° elbow"), "elbow_90": N_("90° elbow")}


@dataclass(frozen=True)
class Picked:
    """An end that somebody picked: family, size and form; its shape comes later."""

    connection: str
    size: str
    form: str

    @classmethod
    def read(cls, text: str) -> Picked | None:
        """From the address; None where it is not there. Raises SpecError where it is none of ours."""
        if not text:
            return None
        parts = text.split("~")
        if len(parts) != 3:
            raise SpecError(Problem("end", text, "is not an end picked here", "Measure it again."))
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
            return End.model_validate({"connection": self.connection, "form": self.form, **size, **more})
        except ValidationError as error:
            raise SpecError(problems_of(error)) from None

    def __str__(self) -> str:
        return f"{self.connection}~{self.size}~{self.form}"


@router.get("/identify", include_in_schema=False)
def measure(request: Request) -> Response:
    """The form for one end and, once it is filled in, what that end can be."""
    reader = reader_of(request)
    words, t = reader.words, reader.t
    asked = {key: request.query_params.get(key, "").strip() for key in (*MEASURED, "a", "b")}
    problems: tuple[Problem, ...] = ()
    found: Identification | None = None
    a = b = None
    try:
        a, b = Picked.read(asked["a"]), Picked.read(asked["b"])
        if any(asked[key] for key in MEASURED):
            found = identify(_measurements(asked), reader.tables)
    except TaggerError as error:
        problems = error.problems
    wanted = found.measure_next.feature if found and found.measure_next else ""
    state = {key: str(end) for key, end in (("a", a), ("b", b)) if end}
    which = "b" if a and not b else "a"
    return page(
        request,
        "identify.html",
        status=422 if problems else 200,
        title=t("The tag is lost: identify the hose"),
        asked=asked,
        problems=problems,
        labels=LABELS,
        seats=SEATS,
        cones=CONES,
        forms=FORMS,
        which=which,
        wanted=wanted,
        state=state,
        picked=[(key.upper(), words.end(end.end({}))) for key, end in (("a", a), ("b", b)) if end],
        same=_address(state | {"b": str(a)}) if a and not b else None,
        complete=f"/identify/hose?{urlencode(state)}" if a and b else None,
        next_words=ASK[wanted] if wanted else None,
        next_field=FIELD.get(wanted, wanted),
        candidates=[_shown(c, which, state, reader) for c in found.candidates] if found else None,
    )


def _measurements(asked: dict[str, str]) -> Measurements:
    """Raises SpecError naming every field that cannot be read."""
    form = asked["form"]
    if not form:
        raise SpecError(Problem("form", None, "is missing", "Say whether the thread is outside or inside."))
    inside = form in (Form.FEMALE_SWIVEL, Form.FEMALE_FIXED)
    return Measurements.read(
        form=form,
        thread_id=asked["diameter"] if inside else None,
        thread_od=asked["diameter"] if form == Form.MALE else None,
        tpi=asked["tpi"],
        pitch=asked["pitch"],
        seat=asked["seat"],
        cone=asked["cone"],
        tube_od=asked["tube_od"],
        hex=asked["hex"],
        flange_od=asked["flange_od"],
        bolt_spacing=asked["bolt_spacing"],
    )


def _shown(candidate: Candidate, which: str, state: dict[str, str], reader: Reader) -> dict[str, Any]:
    """One candidate for the page. What contradicts a measurement cannot be picked."""
    words = reader.words
    picked = Picked(candidate.connection.value, candidate.size, candidate.form.value)
    end = picked.end({})
    return {
        "words": f"{end.size_text} {words.connection(end.connection)}, {words.form(end.form)}",
        "thread": candidate.thread,
        "percent": f"{candidate.likelihood * 100:.0f} %" if candidate.likelihood >= 0.01 else "< 1 %",
        "contradicts": [FEATURES.get(name, name) for name in candidate.contradicts],
        "look_alikes": [reader.t.said(text) for text in candidate.look_alikes],
        "pick": None if candidate.contradicts else _address(state | {which: str(picked)}),
    }


def _address(state: dict[str, str]) -> str:
    if "a" in state and "b" in state:
        return f"/identify/hose?{urlencode(state)}"
    return f"/identify?{urlencode(state)}"


@router.get("/identify/hose", include_in_schema=False)
def hose(request: Request) -> Response:
    """The form for the hose between the ends and, once it is filled in, the whole spec to order."""
    reader = reader_of(request)
    words, t = reader.words, reader.t
    asked = defaultdict(str, {key: value.strip() for key, value in request.query_params.items()})
    problems: tuple[Problem, ...] = ()
    spec = assessed = None
    ends: list[tuple[str, str]] = []
    try:
        a, b = Picked.read(asked.get("a", "")), Picked.read(asked.get("b", ""))
        if not a or not b:
            raise SpecError(Problem("end", None, "is missing", "Measure both ends first."))
        ends = [("A", words.end(a.end({}))), ("B", words.end(b.end({})))]
        if "standard" in asked:
            spec = _spec(a, b, asked, request.query_params.getlist("covers"))
            assessed = assess(spec, reader.tables)
    except TaggerError as error:
        problems, spec = error.problems, None
    values = view.spec_only(spec, assessed, reader) if spec and assessed else None
    return page(
        request,
        "identify_hose.html",
        status=422 if problems else 200,
        title=t("The hose between the ends"),
        asked=asked,
        problems=problems,
        labels=LABELS,
        ends=ends,
        shapes=SHAPES,
        bases=LENGTH_BASES,
        covers=COVERS,
        chosen_covers=request.query_params.getlist("covers"),
        standards=list(reader.tables.standards),
        values=values,
        order_form=Markup(view.order_form(spec, words, spec_json=json.dumps(spec.as_dict()))) if spec else "",
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

    return AssemblySpec.read({
        "hose": {"standard": asked.get("standard", ""), "dash": asked.get("dash") or None},
        "end_a": end(a, "a"),
        "end_b": end(b, "b"),
        "length_mm": asked.get("length") or None,
        "length_basis": asked.get("length_basis") or LengthBasis.SEALING_FACE,
        "clocking_deg": asked.get("clocking") or None,
        "covers": covers,
    })  # fmt: skip
