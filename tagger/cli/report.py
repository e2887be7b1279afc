"""The answers of the trade as lines of text: check, identify, compare."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from tagger import messages as figure
from tagger import phrases, rated
from tagger.i18n import Translator
from tagger.messages import Message
from tagger.spec import AssemblySpec, End
from tagger.trade import grades
from tagger.trade.layline import LayLine
from tagger.trade.results import Assessment, EndAdvice, PartRating

if TYPE_CHECKING:  # identifying needs numpy, which takes a tenth of a second to load
    from tagger.trade.identifying.by_layers import Exclusion
    from tagger.trade.identifying.identify import Candidate, Identification
    from tagger.trade.likeforlike import Comparison


def identification_text(found: Identification, t: Translator) -> str:
    """Ranked candidates with their reasons, then what to measure next, in the language of ``t``."""
    lines = [t(found.summary), *([t(found.tie)] if found.tie else []), ""]
    for c in found.candidates:
        percent = t(Message("report-percent", percent=round(c.likelihood * 100, 1)))
        lines.append(f"{percent:>7}  {t(_candidate_line(c))}")
        lines += [f"         {t(reason)}" for reason in c.reasons]
    first = found.candidates[: max(1, found.remaining)]
    alike = list(dict.fromkeys(t(text) for c in first for text in c.look_alikes))
    if alike:
        lines += ["", t(Message("report-look-alikes")), *(f"  {text}" for text in alike)]
    if found.measure_next is not None:
        what = Message("report-measure-next", what=found.measure_next.what)
        lines += ["", t(what), t(found.measure_next.why)]
    return "\n".join([*lines, "", t(found.lacks)])


def lay_line_text(line: LayLine, t: Translator) -> str:
    """What a lay line says, a line of text each, in the language of ``t``."""
    said = [
        line.standards and Message("report-lay-line-standards", standards=line.standards),
        line.named and Message("report-lay-line-named", names=line.named),
        not (line.standards or line.named) and Message("report-lay-line-none"),
        line.nearest and Message("report-lay-line-nearest", standards=line.nearest),
        line.dash and Message("report-lay-line-dash", dash=str(line.dash)),
        line.dn and Message("report-lay-line-dn", dn=line.dn),
        line.edition and Message("report-lay-line-edition", edition=line.edition),
        line.printed_bar and _printed_pressure(line, line.printed_bar),
        line.date_code and Message("report-lay-line-date", date=line.date_code),
        *line.notes,
    ]
    return "\n".join(t(message) for message in said if message)


def exclusion_text(found: Exclusion, t: Translator) -> str:
    """What a hose can be and cannot be by its layers, a line of text each; first that nothing of it is a rating."""
    lines = [t(found.never_rates), *map(t, found.notes)]
    lines.append(t(Message("identify-hose-count", count=len(found.remaining))))
    lines += [f"{one.standard}: {' '.join(map(t, one.in_words()))}" for one in found.remaining]
    lines.append(t("identify-hose-excluded"))
    lines += [f"{one.standard}: {t(one.why)}" for one in found.excluded]
    return "\n".join(lines)


def _printed_pressure(line: LayLine, bar: float) -> Message:
    which = "report-lay-line-pressure" if line.offered else "report-lay-line-pressure-only"
    return Message(which, pressure=figure.pressure(bar))


def _candidate_line(c: Candidate) -> Message:
    return Message(
        "report-candidate",
        size=c.size_text,
        connection=phrases.connection(c.connection),
        form=phrases.form(c.form),
        thread=c.thread,
    )


def assessment_text(spec: AssemblySpec, found: Assessment, t: Translator) -> str:
    """Rating by part, limits, tightening and warnings, one line each, in the language of ``t``."""
    lines = [t(_pressure_line(spec, found)), *_doubts(spec, found, t)]
    lines += [f"  {t(_rating_line(part))}" for part in found.working_pressure.parts]
    lines.append(t("words-adapter"))
    limits = [
        Message("report-proof-pressure", pressure=_least(found.test_pressure_bar)),
        Message("report-burst-pressure", pressure=_least(found.burst_pressure_bar)),
        _length_line(spec, found),
        *_clocking_line(spec, found),
        _bend_line(found),
        *_temperature_line(found),
    ]
    tightening = [
        *_tightening_lines("A", spec.end_a, found.end_a),
        *_tightening_lines("B", spec.end_b, found.end_b),
    ]
    warnings = [Message(f"report-{w.severity}", text=w.message) for w in found.warnings]
    return "\n".join([*lines, *(t(message) for message in (*limits, *tightening, *warnings))])


def _pressure_line(spec: AssemblySpec, assessed: Assessment) -> Message:
    found = assessed.working_pressure
    if found.value_bar is None and found.at_most_bar is not None:
        return Message("report-pressure-partly", known=rated.message(assessed.content_of(spec)))
    if found.value_bar is None:
        return Message("report-pressure-unknown", why=found.why or Message("report-unknown"))
    shown = figure.pressure(found.value_bar)
    if not found.limited_by:
        return Message("report-pressure", pressure=shown)
    part, source = phrases.part(found.limited_by), _cited(found.source, found.printed)
    if not found.margin_bar:
        return Message("report-pressure-limited", pressure=shown, part=part, source=source)
    return Message(
        "report-pressure-limited-margin",
        pressure=shown,
        part=part,
        source=source,
        margin=found.margin_bar,
    )


def _doubts(spec: AssemblySpec, found: Assessment, t: Translator) -> list[str]:
    """That no published source rates a part, and what the tag says for whom."""
    content = found.content_of(spec)
    doubts = (
        [rated.unverified(content)] if content.unverified_parts and found.working_pressure.value_bar else []
    )
    return [t(Message("report-doubt", doubt=doubt)) for doubt in doubts]


def _rating_line(part: PartRating) -> Message:
    if part.value_bar is None:
        return Message(f"report-unrated-{part.part}", why=part.why or Message("report-unknown"))
    rating = figure.pressure(part.value_bar)
    source = _cited(part.source, part.printed)
    if part.grade is not None:
        source = Message("trade-graded", source=source, grade=grades.said(part.grade))
    return Message(f"report-rating-{part.part}", pressure=rating, source=source)


def _cited(source: str, printed: str) -> str | Message:
    return Message("report-cited", source=source, printed=printed) if printed else source


def _length_line(spec: AssemblySpec, found: Assessment) -> Message:
    length, basis = figure.length(spec.length_mm), phrases.length_basis(spec.length_basis)
    allowed = found.length_tolerance
    if allowed is None:
        return Message("report-length-without-tolerance", length=length, basis=basis)
    return Message(
        "report-length",
        length=length,
        basis=basis,
        plus=allowed.plus,
        minus=allowed.minus,
        source=allowed.source,
    )


def _clocking_line(spec: AssemblySpec, found: Assessment) -> Iterator[Message]:
    if found.clocking_tolerance_deg is not None and spec.clocking_deg is not None:
        yield Message(
            "report-clocking",
            angle=figure.angle(spec.clocking_deg),
            tolerance=figure.angle(found.clocking_tolerance_deg),
            source=found.clocking_tolerance_source,
        )


def _bend_line(found: Assessment) -> Message:
    if found.bend_radius_mm is None:
        return Message("report-bend-radius-unknown")
    radius = figure.length(found.bend_radius_mm)
    source = _cited(found.bend_radius_source, found.bend_radius_printed)
    return Message("report-bend-radius", radius=radius, source=source)


def _temperature_line(found: Assessment) -> Iterator[Message]:
    if found.min_temperature_c is not None:
        lowest = figure.temperature(found.min_temperature_c)
        yield Message("report-minimum-temperature", temperature=lowest, source=found.min_temperature_source)


def _tightening_lines(name: str, end: End, advice: EndAdvice) -> list[Message]:
    if end.connection.is_latched:
        return [Message("report-nothing-to-tighten", end=name)]
    lines = []
    if (torque := advice.torque) is not None:
        shown = figure.torque(torque.min, torque.max)
        if torque.part == "cap_screw":
            lines.append(
                Message(
                    "report-torque-screw", end=name, torque=shown, basis=torque.basis, source=torque.source
                )
            )
        else:
            lines.append(
                Message("report-torque", end=name, torque=shown, basis=torque.basis, source=torque.source)
            )
    for found, count in ((advice.flats, phrases.flats), (advice.turns, phrases.turns)):
        if found is not None:
            basis = phrases.basis(found.basis)
            counted = Message("words-counted", count=count(found.min, found.max), basis=basis)
            counted = phrases.or_counted(counted) if lines else counted
            lines.append(Message("report-counted", end=name, counted=counted, source=found.source))
    return lines or [Message("report-tightening-unknown", end=name)]


def _least(bar: float | None) -> Message | figure.Figure:
    return Message("report-unknown") if bar is None else figure.least_pressure(bar)


def comparison_text(found: Comparison, t: Translator) -> str:
    """The verdict, then field by field, in the language of ``t``."""
    lines = [
        Message(
            "report-compared",
            field=Message(f"report-about-{f.field.replace('.', '-')}"),
            verdict=Message(f"report-field-{f.verdict}"),
            reason=f.reason,
        )
        for f in found.fields
    ]
    return "\n".join([t(found.message), "", *(t(line) for line in lines)])
