"""Working pressure: the least of the hose and both ends (SAE J517, SAE J516 previews).

A rating is the least of what the sources print for that very part: family, size, form, shape
and material. Where no source does, it is None and the assembly's is None too, unless the
spec brings a figure with its source; even then no known part is exceeded. Where the spec asks
more heat or another fluid of the hose than a source allows, no table figure holds for the hose.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Literal, TypeVar

from tagger.messages import as_is
from tagger.spec import AssemblySpec, End, Hose, Material
from tagger.trade import rows as row
from tagger.trade import temperature
from tagger.trade.results import NOT_KNOWN, PartRating, Warning_, WorkingPressure
from tagger.trade.tables import Tables
from tagger.units import show_pressure

_STEEL_ONLY = "published fitting pressures hold for low carbon steel only"


def rate(spec: AssemblySpec, tables: Tables) -> tuple[WorkingPressure, list[Warning_]]:
    """The working pressure of the assembly, in bar, part by part, with its warnings."""
    printed, warnings = hose_rating(spec.hose, tables)
    unfit = temperature.unfit(spec, tables)
    hose = printed
    if unfit is not None:
        hose = _not_known("hose", unfit)
        warnings = [w for w in warnings if w.code != "edition_not_given"]
    parts = [hose]
    for name, end in (("end_a", spec.end_a), ("end_b", spec.end_b)):
        parts.append(end_rating(name, end, tables))
    warnings += _part_warnings(parts)
    if spec.working_pressure is not None:
        given = spec.working_pressure
        bar = given.value_bar
        if hose is not printed and printed.value_bar is not None and bar > printed.value_bar:
            warnings.append(_beyond_limits_warning(bar, printed.value_bar, printed.source))
            bar = printed.value_bar
        parts.append(PartRating(part="override", value_bar=bar, source=given.source, confidence="given"))
    answer, more = _together(parts, unfit)
    return answer, warnings + more


def hose_rating(hose: Hose, tables: Tables) -> tuple[PartRating, list[Warning_]]:
    """The hose's own rating: the least printed for its standard, edition and dash.

    Without an edition, the least over all editions.
    """
    standard = tables.standard_of(hose.standard)
    if standard is None:
        return _not_known("hose", f"{hose.standard} is not in the tables"), []
    edition = tables.edition_of(hose, standard.standard)
    found = [
        r
        for r in tables.hose_pressures.get(standard.standard, ())
        if r.dash in (str(hose.dash), "all") and (edition is None or r.edition == edition.figures)
    ]
    if not found:
        return _not_known("hose", f"no source gives {standard.standard} -{hose.dash}"), []
    low = _least_printed(found, psi=standard.bands == "sae")
    warnings = _edition_warning(hose, standard, found, low) if edition is None else []
    if low.in_standard == "no":
        text = (
            f"-{hose.dash} is not a size of {standard.standard} itself: the rating is that of one maker's hose. "
            f"Confirm it with the maker's data."
        )
        warnings.append(Warning_(code="outside_standard", field="hose.dash", message=as_is(text)))
    return _rating("hose", low.max_working_bar, low.printed, low.source, low.confidence, low.note), warnings


def end_rating(name: str, end: End, tables: Tables) -> PartRating:
    """The rating of one end by family, size, form, shape and material."""
    every = (
        *tables.end_pressures.get((end.connection, end.size_key), ()),
        *tables.end_pressures.get((end.connection, "all"), ()),
    )
    fitting = [r for r in every if _fits(r, end)]
    rated = [r for r in fitting if r.use == "rating" and r.material == end.material]
    ceilings = [r for r in fitting if r.use == "ceiling"]
    if not rated:
        why = f"no source gives a {end.form} {end.connection} {end.size_text} in {_words(end.material)}"
        if end.material is not Material.CARBON_STEEL and any(r.use == "rating" for r in fitting):
            why += f" ({_STEEL_ONLY})"
        if ceilings:
            top = min(ceilings, key=lambda r: r.max_working_bar)
            why += f"; the family ends at {top.printed} ({top.source})"
        return _not_known(name, why)
    low = _least_printed(rated)
    notes = [low.applies_to, low.note] + [
        f"{r.source}: {r.printed}, {r.note}" for r in fitting if r.use == "note"
    ]
    return _rating(
        name, low.max_working_bar, low.printed, low.source, low.confidence, "; ".join(filter(None, notes))
    )


Printed = TypeVar("Printed", row.HosePressureRow, row.PressureRow)


def _least_printed(found: Sequence[Printed], *, psi: bool = True) -> Printed:
    """The row with the least figure.

    Figures within 0.3 % are one figure printed in two units (2500 psi, 172 bar): of those the
    published one is shown, in the unit of its standard.
    """
    least = min(r.max_working_bar for r in found)
    same = [r for r in found if r.max_working_bar <= least * 1.003]
    return min(
        same, key=lambda r: (r.confidence == "memory", not _in_unit(r.printed, psi), r.max_working_bar)
    )


def _in_unit(printed: str, psi: bool) -> bool:
    """Whether a figure is printed in bar, or in the round psi that standards print."""
    figure, _, unit = printed.partition(" ")
    return unit == "psi" and int(figure) % 25 == 0 if psi else unit == "bar"


def _fits(item: row.PressureRow, end: End) -> bool:
    shape = "elbow" if end.is_elbow else "straight"
    return (not item.forms or end.form in item.forms) and (not item.shapes or shape in item.shapes)


def _together(parts: list[PartRating], unfit: str | None) -> tuple[WorkingPressure, list[Warning_]]:
    known = [p for p in parts if p.value_bar is not None]
    unknown = [p for p in parts if p.value_bar is None]
    given = next((p for p in parts if p.part == "override"), None)
    if unfit is not None and given is None:
        return _outside_limits(parts, unfit)
    if unknown and given is None:
        return _nothing_shown(parts, known, unknown)
    low = _lowest(known)
    answer = WorkingPressure(
        value_bar=low.value_bar,
        limited_by=low.part,
        source=low.source,
        parts=tuple(parts),
        margin_bar=_margin(low, known),
    )
    return answer, [] if given is None else [_override_warning(given, low, unknown)]


def _margin(low: PartRating, known: list[PartRating]) -> float | None:
    others = [p.value_bar for p in known if p is not low and p.value_bar is not None]
    return None if low.value_bar is None or not others else round(min(others) - low.value_bar, 1)


def _outside_limits(parts: list[PartRating], unfit: str) -> tuple[WorkingPressure, list[Warning_]]:
    """No "at most" is said here: it could be read as a pressure that holds."""
    answer = WorkingPressure(
        value_bar=None, limited_by=None, source=f"{NOT_KNOWN}: {unfit}", parts=tuple(parts)
    )
    text = f"Working pressure: {NOT_KNOWN}, because {unfit}."
    return answer, [
        Warning_(code="pressure_not_known", field="working_pressure", message=as_is(text), severity="danger")
    ]


def _nothing_shown(
    parts: list[PartRating], known: list[PartRating], unknown: list[PartRating]
) -> tuple[WorkingPressure, list[Warning_]]:
    names = " and ".join(_named(p.part) for p in unknown)
    text = f"Working pressure: {NOT_KNOWN}, because that of {names} is not known."
    low = _lowest(known) if known else None
    if low is not None and low.value_bar is not None:
        text += f" It cannot be more than {show_pressure(low.value_bar)}, the rating of {_named(low.part)}."
    answer = WorkingPressure(
        value_bar=None,
        limited_by=None,
        source=NOT_KNOWN,
        parts=tuple(parts),
        at_most_bar=low.value_bar if low else None,
    )
    return answer, [
        Warning_(code="pressure_not_known", field="working_pressure", message=as_is(text), severity="danger")
    ]


def _override_warning(given: PartRating, low: PartRating, unknown: list[PartRating]) -> Warning_:
    assert given.value_bar is not None and low.value_bar is not None
    names = " and ".join(_named(p.part) for p in unknown)
    stands = f" It stands for {names}, whose rating is not in the tables." if unknown else ""
    if low is given:
        text = f"The working pressure is the one given, from {given.source!r}.{stands}"
        severity: Literal["care", "note"] = "care" if unknown else "note"
        return Warning_(
            code="pressure_given", field="working_pressure", message=as_is(text), severity=severity
        )
    text = (
        f"The pressure given, {show_pressure(given.value_bar)} from {given.source!r}, is above the rating of "
        f"{_named(low.part)}, {show_pressure(low.value_bar)}. The lower one holds.{stands}"
    )
    return Warning_(
        code="pressure_given_too_high", field="working_pressure", message=as_is(text), severity="danger"
    )


def _beyond_limits_warning(given_bar: float, limit_bar: float, source: str) -> Warning_:
    text = (
        f"The pressure given, {show_pressure(given_bar)}, is above {show_pressure(limit_bar)}, what the hose is "
        f"rated at within its limits ({source}). The lower one holds."
    )
    return Warning_(
        code="pressure_given_too_high", field="working_pressure", message=as_is(text), severity="danger"
    )


def _part_warnings(parts: Iterable[PartRating]) -> list[Warning_]:
    found = []
    for part in parts:
        if part.value_bar is None:
            text = f"The rating of {_named(part.part)} is {NOT_KNOWN}: {part.note}."
            found.append(Warning_(code="rating_not_known", field=part.part, message=as_is(text)))
        elif part.confidence == "memory":
            text = (
                f"The rating of {_named(part.part)}, {show_pressure(part.value_bar)}, is from memory "
                f"({part.source.removeprefix('memory: ')}): confirm it with the maker's data."
            )
            found.append(Warning_(code="rating_from_memory", field=part.part, message=as_is(text)))
    return found


def _edition_warning(
    hose: Hose, standard: row.HoseStandard, found: list[row.HosePressureRow], low: row.HosePressureRow
) -> list[Warning_]:
    best: dict[str, float] = {}
    for r in found:
        best[r.edition] = min(r.max_working_bar, best.get(r.edition, r.max_working_bar))
    if len(best) < 2:
        return []
    figures = ", ".join(f"{name}: {show_pressure(bar)}" for name, bar in sorted(best.items()))
    text = (
        f"{standard.standard} -{hose.dash} is rated differently by edition ({figures}) and the spec names none. "
        f"The lower figure, {show_pressure(low.max_working_bar)}, holds; the edition is printed on the hose."
    )
    return [Warning_(code="edition_not_given", field="hose.edition", message=as_is(text))]


def _lowest(parts: Iterable[PartRating]) -> PartRating:
    """The least; between equals the hose or the earlier end, and a table's before one given."""
    return min(parts, key=lambda p: p.value_bar if p.value_bar is not None else float("inf"))


def _rating(name: str, bar: float, printed: str, source: str, confidence: str, note: str) -> PartRating:
    said = f"{source}, printed {printed}"
    kind = confidence if confidence in ("published", "memory", "shop") else "none"
    return PartRating(part=name, value_bar=bar, source=said, confidence=kind, note=note)  # type: ignore[arg-type]


def _not_known(name: str, why: str) -> PartRating:
    return PartRating(part=name, value_bar=None, source=NOT_KNOWN, confidence="none", note=why)


def _named(part: str) -> str:
    return {"hose": "the hose", "end_a": "end A", "end_b": "end B", "override": "the figure given"}[part]


def _words(material: Material) -> str:
    return material.replace("_", " ")
