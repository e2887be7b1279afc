"""The trade's answers as plain JSON values, in the contract's shapes."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from tagger import rated
from tagger.errors import Speaks
from tagger.messages import Message, english
from tagger.spec import AssemblySpec
from tagger.trade import given, grades, layline
from tagger.trade.layline import LayLine
from tagger.trade.results import (
    Assessment,
    EndAdvice,
    Flats,
    PartRating,
    Torque,
    Turns,
    Warning_,
    WorkingPressure,
)
from tagger.trade.tables import Tables

if TYPE_CHECKING:  # identifying needs numpy, which takes a tenth of a second to load
    from tagger.trade.cutting import Cut
    from tagger.trade.identifying.by_layers import Exclusion
    from tagger.trade.identifying.identify import Candidate, Identification
    from tagger.trade.likeforlike import Comparison


def _in(t: Speaks | None, message: Message) -> str:
    """The text of a message in the language of ``t``; English without one."""
    return t(message) if t else english(message)


def _said(message: Message, t: Speaks | None) -> dict[str, Any]:
    """A message for programs and people: ``{"id", "values", "text"}``."""
    return message.as_json() | {"text": _in(t, message)}


def identification(found: Identification, t: Speaks | None = None) -> dict[str, Any]:
    """``{"candidates": [...], "measure_next": {"what", "why"} or null, ...}``, best first.

    Texts are in the language of ``t``; beside each stands its message with id and values.
    """
    following = found.measure_next
    return {
        "summary": _in(t, found.summary),
        "summary_message": found.summary.as_json(),
        "tie": found.tie and _said(found.tie, t),
        "lacks": _said(found.lacks, t),
        "candidates": [_candidate(c, t) for c in found.candidates],
        "measure_next": None
        if following is None
        else {
            "what": _in(t, following.what),
            "what_message": following.what.as_json(),
            "why": _in(t, following.why),
            "why_message": following.why.as_json(),
            "feature": following.feature,
            "picture": following.picture,
            "bits": following.bits,
        },
    }


def hose_exclusion(found: Exclusion, tables: Tables, t: Speaks | None = None) -> dict[str, Any]:
    """Which standards remain and which are excluded: ``{"remaining", "excluded", "lay_line", "notes", "never_rates"}``.

    No pressure is among it, but for what is printed in a lay line.
    """
    return {
        "remaining": [
            {
                "standard": one.standard,
                "construction": one.construction,
                "sizes": [
                    {
                        "dash": size.dash,
                        "outside_diameter_mm": size.outside_mm and list(size.outside_mm),
                        "sources": [_in(t, s) if isinstance(s, Message) else s for s in size.sources],
                    }
                    for size in one.sizes
                ],
                "unchecked": list(one.unchecked),
            }
            for one in found.remaining
        ],
        "excluded": [{"standard": one.standard, "why": _said(one.why, t)} for one in found.excluded],
        "lay_line": found.line and lay_line(found.line, tables, t),
        "notes": [_said(note, t) for note in found.notes],
        "never_rates": _said(found.never_rates, t),
    }


def lay_line(line: LayLine, tables: Tables, t: Speaks | None = None) -> dict[str, Any]:
    """What a lay line says: ``{"standards", "dash", "dn", "edition", "printed_bar", "nearest", ...}``.

    ``hose``: the hose of a spec with that line, null where a standard of the tables or the size is missing.
    """
    return {
        "standards": list(line.standards),
        "named": list(line.named),
        "dash": line.dash,
        "dn": line.dn,
        "edition": line.edition,
        "printed_bar": line.printed_bar,
        "date_code": line.date_code,
        "nearest": list(line.nearest),
        "hose": layline.hose_of(line, tables),
        "notes": [_said(note, t) for note in line.notes],
    }


def _candidate(c: Candidate, t: Speaks | None) -> dict[str, Any]:
    name, size = c.size_key
    return {
        "connection": str(c.connection),
        name: size,
        "form": str(c.form),
        "series": None if c.series is None else str(c.series),
        "likelihood": round(c.likelihood, 4),
        "match": not c.contradicts,
        "reasons": [_in(t, reason) for reason in c.reasons],
        "reason_messages": [reason.as_json() for reason in c.reasons],
        "thread": c.thread,
        "contradicts": list(c.contradicts),
        "look_alikes": [_in(t, alike) for alike in c.look_alikes],
        "look_alike_messages": [alike.as_json() for alike in c.look_alikes],
    }


def assessment(spec: AssemblySpec, found: Assessment, t: Speaks | None = None) -> dict[str, Any]:
    """The contract's answer of ``check``, its texts in the language of ``t``; a figure not known is null."""
    length = found.length_tolerance
    return {
        "working_pressure": {
            **_working_pressure(found.working_pressure, t),
            "message": _said(rated.message(found.content_of(spec)), t),
        },
        "test_pressure_bar": found.test_pressure_bar,
        "burst_pressure_bar": found.burst_pressure_bar,
        "length_tolerance_mm": None if length is None else length.model_dump(mode="json"),
        "clocking_tolerance_deg": found.clocking_tolerance_deg,
        "clocking_tolerance_source": found.clocking_tolerance_source,
        "bend_radius_mm": found.bend_radius_mm,
        "bend_radius_source": found.bend_radius_source,
        "bend_radius_printed": found.bend_radius_printed,
        "min_temperature_c": found.min_temperature_c,
        "min_temperature_source": found.min_temperature_source,
        "hose_od_mm": found.hose_od_mm,
        "hose_od_source": found.hose_od_source,
        "hose_od_basis": found.hose_od_basis and _said(found.hose_od_basis, t),
        "hose_mass_kg": found.hose_mass_kg,
        "content_l": found.content_l,
        "ends": {"a": _end(found.end_a, t), "b": _end(found.end_b, t)},
        "warnings": [_warning(warning, t) for warning in found.warnings],
        "asks": [{"field": ask.field, **_said(ask.message, t)} for ask in given.asks(found)],
    }


def _working_pressure(pressure: WorkingPressure, t: Speaks | None) -> dict[str, Any]:
    return {
        "value_bar": pressure.value_bar,
        "limited_by": pressure.limited_by,
        "source": pressure.source,
        "printed": pressure.printed,
        "why": pressure.why and _said(pressure.why, t),
        "at_most_bar": pressure.at_most_bar,
        "margin_bar": pressure.margin_bar,
        "parts": [_part(part, t) for part in pressure.parts],
    }


def _part(part: PartRating, t: Speaks | None) -> dict[str, Any]:
    grade = _said(grades.said(part.grade), t) if part.grade else None
    said = {"standing": part.standing, "why": part.why and _said(part.why, t), "grade_message": grade}
    return part.model_dump(mode="json") | said


def _warning(warning: Warning_, t: Speaks | None) -> dict[str, Any]:
    return {
        "code": warning.code,
        "field": warning.field,
        "severity": warning.severity,
        **_said(warning.message, t),
    }


def _end(advice: EndAdvice, t: Speaks | None) -> dict[str, Any]:
    def dumped(figure: Flats | Turns | None) -> dict[str, Any] | None:
        return None if figure is None else figure.model_dump(mode="json")

    return {
        "torque_nm": _torque(advice.torque, t),
        "flats": dumped(advice.flats),
        "turns": dumped(advice.turns),
        "spread": [_in(t, message) for message in advice.spread],
        "spread_messages": [message.as_json() for message in advice.spread],
        "steps": list(advice.steps),
        "figures": dict(advice.figures),
    }


def _torque(torque: Torque | None, t: Speaks | None) -> dict[str, Any] | None:
    if torque is None:
        return None
    said = {"basis": _in(t, torque.basis), "basis_message": torque.basis.as_json()}
    return torque.model_dump(mode="json") | said


def comparison(found: Comparison, t: Speaks | None = None) -> dict[str, Any]:
    """``{"verdict", "fields": [{"field", "verdict", "reason"}]}``, its texts in the language of ``t``."""
    return {
        "verdict": found.verdict,
        **_said(found.message, t),
        "fields": [
            {"field": f.field, "verdict": f.verdict, "reason": _in(t, f.reason), **_said(f.reason, t)}
            for f in found.fields
        ],
    }


def cut(found: Cut, t: Speaks | None = None) -> dict[str, Any]:
    """``{"length_mm", "arithmetic", "unknown": [...], "ends": {"a", "b"}}``; null where not known."""
    return found.figures() | {
        "arithmetic": _said(found.arithmetic, t) if found.arithmetic else None,
        "unknown": [_said(message, t) for message in found.unknown],
    }
