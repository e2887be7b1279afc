"""The build form: its fields as a spec's JSON, and a spec as its fields.

Fields are named as the spec's are ("end_a.form"). They differ from the JSON where that is quicker
to fill in: one size field serves every family; end B is "the same as A" where that is ticked; a size left
empty is the one that belongs to the hose; clocking is read in the shop's own sense.
"""

from __future__ import annotations

import secrets
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from datetime import date, timedelta
from typing import Any

from pydantic import ValidationError

from api.settings import ClockingSense
from tagger.errors import Problem, SpecError, UnitError
from tagger.messages import Figure, Message, length, pressure
from tagger.record import RECORD_FIELDS, Record
from tagger.spec import MAX_COUNT, AssemblySpec, Connection, Cover, Form, Hose, Sizing
from tagger.trade import layline
from tagger.trade.tables import Tables
from tagger.units import read_length_mm, read_pressure_bar, whole_number, with_unit

_END = (
    "connection",
    "size",
    "series",
    "form",
    "shape",
    "angle",
    "drop_mm",
    "material",
    "hose_dash",
    "fitting",
    "lot",
)
_ENDS = ("end_a", "end_b")
_RATING = ("value_bar", "source", "fluid", "max_temperature_c", "confirmed")
_APPROVAL = ("max_temperature_c", "source")  # its fluid is the assembly's
LENGTHS = ("length_mm", "end_a.drop_mm", "end_b.drop_mm")
BLANK: dict[str, Any] = {
    **{f"{part}.rating.{name}": "" for part in ("hose", *_ENDS) for name in _RATING},
    **{f"hose.approval.{name}": "" for name in _APPROVAL}, "keep": "",
    "hose.standard": "", "hose.dash": "", "hose.edition": "", "hose.part": "", "hose.lot": "", "lot_reason": "", "changes_considered": "",
    **{f"{end}.{name}": "" for end in _ENDS for name in _END},
    **{f"{end}.{name}": value for end in _ENDS for name, value in (
        ("shape", "straight"), ("material", "carbon_steel"))},
    "end_b.same": "",
    "length_mm": "", "length_confirmed": "", "length_basis": "sealing_face", "clocking_deg": "", "max_temperature_c": "", "vacuum_bar": "", "fluid": "",
    "covers": [], "working_pressure.value_bar": "", "working_pressure.source": "", "working_pressure.confirmed": "", "note": "",
    **dict.fromkeys(RECORD_FIELDS, ""), "replaces": "", "order_reference": "", "count": "1",
    "built_on": "", "key": "",
}  # fmt: skip
"""Every field of the page with what it holds at first: no connection, form or size is chosen for anybody."""


@dataclass(frozen=True)
class Asked(Record):
    """What the page asks to be registered, beside the spec."""

    replaces: str | None
    order_reference: str | None
    lot_reason: str | None
    changes_considered: bool
    count: int
    built_on: date
    key: str | None


def blank(today: date) -> dict[str, Any]:
    """A page to begin on, with a key of its own: sending it twice registers once."""
    return {**BLANK, "built_on": today.isoformat(), "key": secrets.token_urlsafe(12)}


def fields_of(spec: AssemblySpec, sense: ClockingSense) -> dict[str, Any]:
    """The fields of the page that stand for a spec."""
    data = spec.as_dict()
    fields: dict[str, Any] = {}
    for name in ("standard", "dash", "edition", "part", "lot"):
        fields[f"hose.{name}"] = _text(data["hose"].get(name))
    for end in _ENDS:
        fields |= {f"{end}.{name}": value for name, value in end_fields(data[end]).items()}
    fields["end_b.same"] = ""  # a change of end A is one of end B only where somebody asks for it
    for name in ("length_mm", "length_basis", "max_temperature_c", "vacuum_bar", "fluid", "note"):
        fields[name] = _text(data.get(name))
    fields["length_confirmed"] = "1" if data.get("length_confirmed") else ""
    fields["clocking_deg"] = _text(shown_clocking(spec.clocking_deg, sense))
    fields["covers"] = list(data.get("covers", []))
    for name in ("value_bar", "source"):
        fields[f"working_pressure.{name}"] = _text(data.get("working_pressure", {}).get(name))
    for part in ("hose", *_ENDS):
        rating = data[part].get("rating", {})
        fields |= {f"{part}.rating.{name}": _text(rating.get(name)) for name in _RATING}
        fields[f"{part}.rating.confirmed"] = ""  # the next hose is confirmed anew
    approval = data["hose"].get("approval", {})
    fields |= {f"hose.approval.{name}": _text(approval.get(name)) for name in _APPROVAL}
    fields["working_pressure.confirmed"] = "1" if data.get("working_pressure", {}).get("confirmed") else ""
    return fields


def end_fields(end: Mapping[str, Any]) -> dict[str, str]:
    """The fields of one end, without its name before them, from the JSON of a spec's end."""
    shape = end.get("shape", "straight")
    return {name: _text(end.get(name)) for name in _END} | {
        "size": _text(end.get("dash", end.get("size", end.get("description")))),
        "shape": shape if isinstance(shape, str) else "angle",
        "angle": "" if isinstance(shape, str) else str(shape),
    }


def shown_clocking(degrees: int | None, sense: ClockingSense) -> int | None:
    """The standard's angle in the shop's sense; the way back is the same.

    >>> shown_clocking(90, ClockingSense.CLOCKWISE), shown_clocking(0, ClockingSense.CLOCKWISE)
    (270, 0)
    """
    if degrees is None or sense is ClockingSense.STANDARD:
        return degrees
    return (360 - degrees) % 360


def sent(form: Any) -> dict[str, Any]:
    """What was sent, as the page's fields; those not sent are empty, so that nothing sticks."""
    fields: dict[str, Any] = {name: str(form.get(name) or "").strip() for name in BLANK if name != "covers"}
    fields["covers"] = [cover for cover in form.getlist("covers") if cover in set(Cover)]
    return fields


def settled(fields: Mapping[str, Any], tables: Tables) -> dict[str, Any]:
    """The same fields with the ones that follow from others filled in: what the page should show."""
    found = dict(fields)
    found["hose.dash"] = found["hose.dash"].lstrip("-")
    _settle_hose(found, tables)
    if found["end_b.same"]:
        lot = found["end_b.lot"]
        same = (*_END, *(f"rating.{name}" for name in _RATING))
        found |= {f"end_b.{name}": found[f"end_a.{name}"] for name in same}
        found["end_b.lot"] = lot
    for end in _ENDS:
        _settle_end(found, end, tables)
    if any(found[f"{end}.shape"] == "straight" for end in _ENDS):
        found["clocking_deg"] = ""
    return found


def _settle_hose(found: dict[str, Any], tables: Tables) -> None:
    """A standard by its one name; or the whole lay line, whose size, type and pressure fill what is empty.

    A pressure that no hose can have is filled in too: the field then says what is wrong with it.
    """
    standard = tables.standard_of(found["hose.standard"]) if found["hose.standard"] else None
    if standard is not None:
        found["hose.standard"] = standard.standard
        return
    line = layline.read(found["hose.standard"], tables)
    if not line.standards or layline.jetting(line.named, tables):
        return
    hose = layline.hose_of(replace(line, dash=whole_number(found["hose.dash"]) or line.dash), tables)
    rating = {"value_bar": line.printed_bar, "source": layline.PRINTED} if hose and line.printed_bar else {}
    said = {f"hose.{name}": value for name, value in (hose or {}).items() if name != "rating"}
    said |= {f"hose.rating.{name}": value for name, value in rating.items()}
    found["hose.standard"] = said.pop("hose.standard", line.standards[0])
    found |= {name: _text(value) for name, value in said.items() if found.get(name) == ""}


def _settle_end(found: dict[str, Any], end: str, tables: Tables) -> None:
    try:
        family = Connection(found[f"{end}.connection"])
    except ValueError:
        return
    forms = forms_of(family, tables)
    if found[f"{end}.form"] not in forms:
        found[f"{end}.form"] = forms[0] if len(forms) == 1 else ""
    if found[f"{end}.series"] not in tables.families[family].series:
        found[f"{end}.series"] = ""
    if family.sized_by is Sizing.DASH:
        found[f"{end}.size"] = found[f"{end}.size"].lstrip("-")
    if not found[f"{end}.size"]:
        found[f"{end}.size"] = size_for_hose(
            family, found["hose.standard"], found[f"{end}.hose_dash"] or found["hose.dash"], tables
        )
    if found[f"{end}.shape"] == "straight":
        found[f"{end}.drop_mm"] = ""
    if found[f"{end}.shape"] != "angle":
        found[f"{end}.angle"] = ""


def forms_of(family: Connection, tables: Tables) -> list[str]:
    """The forms of a family, the hose shop's usual one (a female swivel) first."""
    forms = [str(form) for form in tables.families[family].forms if form in set(Form)]
    return sorted(forms, key=lambda form: form != Form.FEMALE_SWIVEL)


def size_for_hose(family: Connection, standard: str, dash: str, tables: Tables) -> str:
    """The one size of a family that is made for this hose; empty where there is none, or a choice."""
    number = whole_number(dash)
    if number is None or not 1 <= number <= 63:
        return ""
    try:
        hose = Hose(standard=standard or "-", dash=number)
    except ValidationError:  # the field itself says what is wrong
        return ""
    fitting = [size for size in tables.sizes(family) if tables.is_natural(family, size, hose)]
    return fitting[0] if len(fitting) == 1 else ""


def in_unit(fields: Mapping[str, Any], unit: str) -> dict[str, Any]:
    """The same fields with the unit of the shop at each length that has none."""
    return {**fields, **{name: with_unit(fields[name], unit) for name in LENGTHS if fields.get(name)}}


def readings(fields: Mapping[str, Any]) -> dict[str, Figure]:
    """How the figures that are being typed are read, by field; none where they cannot be."""
    found: dict[str, Figure] = {}
    for name, read, figure in _READ:
        try:
            if fields[name]:
                found[name] = figure(read(fields[name]))
        except UnitError:
            continue
    return found


_READ: tuple[tuple[str, Callable[[object], float], Callable[[float], Figure]], ...] = (
    ("working_pressure.value_bar", read_pressure_bar, pressure),
    *((f"{part}.rating.value_bar", read_pressure_bar, pressure) for part in ("hose", *_ENDS)),
    *((name, read_length_mm, length) for name in LENGTHS),
)


def spec_of(fields: Mapping[str, Any], sense: ClockingSense) -> AssemblySpec:
    """The spec that settled fields say. Raises SpecError naming the fields of the page."""
    data: dict[str, Any] = {
        "hose": _given({name: fields[f"hose.{name}"] for name in ("standard", "edition", "part", "lot")}),
        "length_basis": fields["length_basis"] or "sealing_face",
        "covers": fields["covers"],
        **_given(
            {
                name: fields[name]
                for name in (
                    "length_mm",
                    "length_confirmed",
                    "max_temperature_c",
                    "vacuum_bar",
                    "fluid",
                    "note",
                )
            }
        ),
    }
    data["hose"] |= _given({"dash": _whole(fields["hose.dash"])})
    data["hose"] |= _approval(fields)
    for end in _ENDS:
        data[end] = _end(fields, end)
    for part in ("hose", *_ENDS):
        data[part] |= _rating(fields, part)
    if clocking := fields["clocking_deg"].rstrip("° "):
        turned = _whole(clocking)
        data["clocking_deg"] = (
            shown_clocking(turned, sense) if isinstance(turned, int) and 0 <= turned < 360 else turned
        )
    override = _given({name: fields[f"working_pressure.{name}"] for name in ("value_bar", "source")})
    if override:
        data["working_pressure"] = override | _given({"confirmed": fields["working_pressure.confirmed"]})
    try:
        return AssemblySpec.read(data)
    except SpecError as error:
        raise SpecError(on_the_page(problem) for problem in error.problems) from None


def _rating(fields: Mapping[str, Any], part: str) -> dict[str, Any]:
    """The manufacturer's rating of a part, where a figure or a source of it is given."""
    given = _given({name: fields[f"{part}.rating.{name}"] for name in _RATING})
    return {"rating": given} if "value_bar" in given or "source" in given else {}


def _approval(fields: Mapping[str, Any]) -> dict[str, Any]:
    """The manufacturer's approval of the assembly's fluid."""
    given = _given({name: fields[f"hose.approval.{name}"] for name in _APPROVAL})
    return {"approval": given | _given({"fluid": fields["fluid"]})} if given else {}


def _end(fields: Mapping[str, Any], end: str) -> dict[str, Any]:
    plain = ("connection", "series", "form", "drop_mm", "material", "fitting", "lot")
    given = _given({name: fields[f"{end}.{name}"] for name in plain})
    shape, size = fields[f"{end}.shape"], fields[f"{end}.size"]
    given |= _given({"shape": _whole(fields[f"{end}.angle"]) if shape == "angle" else shape})
    given |= _given({"hose_dash": _whole(fields[f"{end}.hose_dash"].lstrip("-"))})
    sized = {str(c): c.sized_by for c in Connection}.get(given.get("connection", ""))
    key = {Sizing.DASH: "dash", Sizing.WORDS: "description"}.get(sized, "size") if sized else "size"
    given |= _given({key: _whole(size) if key == "dash" else size})
    return given


def asked_of(fields: Mapping[str, Any], today: date) -> Asked:
    """What is to be registered, beside the spec. Raises SpecError for a count or a day that is none."""
    problems = []
    count, built_on = whole_number(fields["count"] or "1"), fields["built_on"]
    if count is None or not 1 <= count <= MAX_COUNT:
        what = Message("bench-not-a-quantity", value=fields["count"], most=MAX_COUNT)
        problems.append(Problem("count", fields["count"], what))
        count = 1
    try:
        day = date.fromisoformat(built_on) if built_on else today
    except ValueError:
        problems.append(Problem("built_on", built_on, Message("bench-not-a-date", value=built_on)))
        day = today
    if day > today + timedelta(days=1):  # somewhere it is already tomorrow
        problems.append(Problem("built_on", built_on, Message("bench-future", day=day)))
    if problems:
        raise SpecError(problems)
    return Asked(
        replaces=fields["replaces"] or None,
        order_reference=fields["order_reference"] or None,
        lot_reason=fields["lot_reason"] or None,
        changes_considered=bool(fields["changes_considered"]),
        count=count,
        built_on=day,
        key=fields["key"] or None,
        **{name: fields[name] or None for name in RECORD_FIELDS},
    )


def on_the_page(problem: Problem) -> Problem:
    """A problem of the spec under the name of the page's field."""
    field = problem.field
    if field.startswith("end_"):
        field = field.replace(".dash", ".size").replace(".description", ".size")
    if field.endswith(".shape") and whole_number(str(problem.value)) is not None:
        field = field.replace(".shape", ".angle")
    message = problem.message
    if message.id == "trade-end-for-another-hose":  # whose mend names the spec's field
        message = Message("bench-build-jump", **message.values)
    return Problem(field, problem.value, message)


def _given(values: Mapping[str, Any]) -> dict[str, Any]:
    return {name: value for name, value in values.items() if value not in ("", None)}


def _whole(text: str) -> int | str:
    """A whole number where it is one; otherwise as typed, for the spec to refuse by name."""
    number = whole_number(text)
    return text if number is None else number


def _text(value: Any) -> str:
    return "" if value is None else f"{value:.10g}" if isinstance(value, float) else str(value)
