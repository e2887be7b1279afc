"""The trade's answers as plain JSON values, in the contract's shapes, and as text for people."""

from __future__ import annotations

from typing import Any

from tagger import phrases
from tagger.errors import Speaks
from tagger.messages import Message, english
from tagger.spec import BASIS_WORDS, AssemblySpec
from tagger.trade.identifying.identify import Candidate, Identification
from tagger.trade.likeforlike import Comparison
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
from tagger.trade.steps import count_text, torque_text
from tagger.units import show_least_pressure, show_length, show_pressure, show_temperature

_MARKS = {"danger": "DANGER", "care": "Take care", "note": "Note"}


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


def _candidate(c: Candidate, t: Speaks | None) -> dict[str, Any]:
    name, size = c.size_key
    return {
        "connection": str(c.connection),
        name: size,
        "form": str(c.form),
        "likelihood": round(c.likelihood, 4),
        "match": not c.contradicts,
        "reasons": [_in(t, reason) for reason in c.reasons],
        "reason_messages": [reason.as_json() for reason in c.reasons],
        "thread": c.thread,
        "contradicts": list(c.contradicts),
        "look_alikes": [_in(t, alike) for alike in c.look_alikes],
        "look_alike_messages": [alike.as_json() for alike in c.look_alikes],
    }


def identification_text(found: Identification) -> str:
    """Ranked candidates with reasons, then what to measure next."""
    lines = [str(found.summary), ""]
    for c in found.candidates:
        size = f"-{c.size}" if c.size_key[0] == "dash" else c.size
        lines.append(f"{c.likelihood:6.1%}  {c.connection} {size}  {c.form}  {c.thread}")
        lines += [f"          {reason}" for reason in c.reasons]
    alike = list(
        dict.fromkeys(
            str(alike) for c in found.candidates[: max(1, found.remaining)] for alike in c.look_alikes
        )
    )
    if alike:
        lines += ["", "Look-alikes:"] + [f"  {text}" for text in alike]
    if found.measure_next is not None:
        lines += ["", f"Measure next: {found.measure_next.what}.", str(found.measure_next.why)]
    return "\n".join(lines)


def assessment(found: Assessment, t: Speaks | None = None) -> dict[str, Any]:
    """The contract's answer of ``check``, its texts in the language of ``t``; a figure not known is null."""
    length = found.length_tolerance
    return {
        "working_pressure": _working_pressure(found.working_pressure, t),
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
    return part.model_dump(mode="json") | {"why": part.why and _said(part.why, t)}


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


def assessment_text(spec: AssemblySpec, found: Assessment) -> str:
    """The same for people: rating by part, limits, tightening, warnings; both unit systems."""
    pressure = found.working_pressure
    lines = [f"Working pressure: {_bar(pressure.value_bar)}"]
    if pressure.limited_by:
        lines[0] += f", limited by {pressure.limited_by} ({pressure.source})"
        if pressure.margin_bar:
            lines[0] += f", {pressure.margin_bar:g} bar below the next part"
    lines += [f"  {part.part}: {_bar(part.value_bar)}  {part.source}" for part in pressure.parts]
    lines.append(
        f"Test pressure: {_least(found.test_pressure_bar)}   "
        f"least burst pressure: {_least(found.burst_pressure_bar)}"
    )
    length = found.length_tolerance
    tolerance = (
        str(phrases.NOT_KNOWN)
        if length is None
        else f"+{length.plus:g} / -{length.minus:g} mm ({length.source})"
    )
    lines.append(
        f"Length: {show_length(spec.length_mm)} to the {spec.length_basis.replace('_', ' ')}, {tolerance}"
    )
    if found.clocking_tolerance_deg is not None:
        tolerance = f"±{found.clocking_tolerance_deg:g}° ({found.clocking_tolerance_source})"
        lines.append(f"Clocking: {spec.clocking_deg}° {tolerance}")
    bend = (
        str(phrases.NOT_KNOWN)
        if found.bend_radius_mm is None
        else f"{show_length(found.bend_radius_mm)} ({found.bend_radius_source})"
    )
    lines.append(f"Least bend radius, inside: {bend}")
    if found.min_temperature_c is not None:
        lowest = f"{show_temperature(found.min_temperature_c)} ({found.min_temperature_source})"
        lines.append(f"Lowest temperature of the hose: {lowest}")
    for name, advice in (("A", found.end_a), ("B", found.end_b)):
        lines += _tightening_lines(name, advice)
    lines += [f"{_MARKS[w.severity]}: {w.text}" for w in found.warnings]
    return "\n".join(lines)


def _tightening_lines(name: str, advice: EndAdvice) -> list[str]:
    lines = []
    if advice.torque is not None:
        t = advice.torque
        lines.append(f"End {name}: {torque_text(t.min, t.max)}, {t.basis} ({t.source})")
    if advice.flats is not None:
        f = advice.flats
        lines.append(f"End {name}: {count_text(f.min, f.max)} flats {BASIS_WORDS[f.basis]} ({f.source})")
    if advice.turns is not None:
        u = advice.turns
        lines.append(f"End {name}: {count_text(u.min, u.max)} turns {BASIS_WORDS[u.basis]} ({u.source})")
    return lines or [f"End {name}: tightening {phrases.NOT_KNOWN!s}"]


def _bar(value: float | None) -> str:
    return str(phrases.NOT_KNOWN) if value is None else show_pressure(value)


def _least(value: float | None) -> str:
    return str(phrases.NOT_KNOWN) if value is None else show_least_pressure(value)


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


def comparison_text(found: Comparison) -> str:
    """The verdict, then field by field."""
    return "\n".join([found.verdict, ""] + [f"{f.verdict:10} {f.field}: {f.reason}" for f in found.fields])
