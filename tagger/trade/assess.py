"""assess(): everything the trade derives from a spec, in one answer."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Any, TypeVar

from pydantic import BaseModel
from pydantic_core import PydanticSerializationError

from tagger import phrases
from tagger.errors import TradeError
from tagger.messages import Message
from tagger.spec import AssemblySpec
from tagger.trade import (
    compatibility,
    geometry,
    grades,
    lengths,
    motion,
    rating,
    steps,
    temperature,
    tightening,
    vacuum,
)
from tagger.trade.results import Assessment, EndAdvice, LengthTolerance, Warning_, WorkingPressure
from tagger.trade.tables import Tables
from tagger.trade.tables import tables as our_tables

T = TypeVar("T")


def assess(
    spec: AssemblySpec,
    tables: Tables | None = None,
    *,
    length_bands: geometry.Bands | None = None,
    made: bool = False,
    reaches_mm: lengths.Reaches = (None, None),
) -> Assessment:
    """Rating, limits, tolerances and tightening of a spec, with sources and warnings.

    ``length_bands``: "sae" or "din"; by default the tables' ``bands``, else the hose standard's.
    ``made``: the assembly is there already, so a length that nobody would build is not refused.
    ``reaches_mm``: how far each end takes of the length, where its fitting is known (``cutting.reaches_mm``).
    Raises TradeError for parts that cannot exist or do not go together.
    """
    tables = tables or our_tables()
    kind = _kind_of(spec, tables)
    of_kind = kind.assessment
    if not made and (impossible := lengths.problems(spec, of_kind.hose_od_mm, tables)):
        raise TradeError(impossible)
    tolerance = geometry.length_tolerance(spec.length_mm, spec.hose, tables, length_bands)
    clocking = geometry.clocking_tolerance(spec, tables)
    of_length = lengths.warnings(spec, of_kind.bend_radius_mm, of_kind.hose_od_mm, tables, reaches_mm)
    return of_kind.model_copy(
        update={
            "length_tolerance": tolerance,
            "clocking_tolerance_deg": clocking.value if clocking else None,
            "clocking_tolerance_source": clocking.source if clocking else "",
            "hose_mass_kg": geometry.hose_mass_kg(spec.length_mm, spec.hose, tables),
            "content_l": geometry.content_l(spec.length_mm, spec.hose, tables),
            "end_a": _clocked(of_kind.end_a, spec),
            "end_b": _clocked(of_kind.end_b, spec),
            "warnings": kind.warnings(tolerance, of_length, tables),
        }
    )


_OWN: Any = {
    "length_mm": True,
    "length_confirmed": True,
    "clocking_deg": True,
    "covers": True,
    "note": True,
    "hose": {"lot"},
    "end_a": {"drop_mm", "fitting", "lot"},
    "end_b": {"drop_mm", "fitting", "lot"},
}
"""What a spec has for itself: nothing that is said of its kind depends on it."""


def _kind_of(spec: AssemblySpec, tables: Tables) -> _Kind:
    """What is said of all assemblies that differ in nothing but what each has for itself. Raises TradeError."""
    try:
        # as text: 0.0 and -0.0 are equal, and are not
        key = spec.model_dump_json(exclude=_OWN, warnings=False)
    except PydanticSerializationError:  # half a character, which no record can have
        return _said_of_kind(spec, tables)
    clocked = spec.clocking_deg is not None
    return tables.once(("kind", key, clocked), lambda: _said_of_kind(spec, tables))


@dataclass(frozen=True)
class _Kind:
    """What is said of a kind of assemblies: ``assessment`` but for length and clocking, and its warnings in the
    order they are told; between them come those of the length. ``_told`` are those of lengths with nothing to say of,
    by what is said of the tolerance.
    """

    assessment: Assessment
    of_parts: tuple[Warning_, ...]
    of_bend: tuple[Warning_, ...]
    of_ends: tuple[Warning_, ...]
    _told: dict[object, tuple[Warning_, ...]] = field(default_factory=dict)

    def warnings(
        self, tolerance: LengthTolerance | None, of_length: list[Warning_], tables: Tables
    ) -> tuple[Warning_, ...]:
        """All of them, danger first; mostly one object for many."""
        said = tolerance and (tolerance.confidence, tolerance.source)
        if not of_length and said in self._told:
            return self._told[said]
        found = (*self.of_parts, *_tolerance_warnings(tolerance), *self.of_bend, *of_length, *self.of_ends)
        found = tuple(sorted(found, key=lambda w: w.severity != "danger"))
        if of_length:
            return found
        return self._told.setdefault(said, _as_one(found, found, tables))


def _as_one(value: T, parts: Iterable[BaseModel], tables: Tables) -> T:
    """One object for values that are written alike, to be kept and written once; ``parts``: what it is made of."""
    try:
        text = "".join(part.model_dump_json(exclude={"text"}) for part in parts)
    except PydanticSerializationError:
        return value
    return tables.once((type(value), text), lambda: value)


def _said_of_kind(spec: AssemblySpec, tables: Tables) -> _Kind:
    of_parts = compatibility.check_parts(spec, tables) + temperature.warnings(spec, tables)
    of_parts += vacuum.warnings(spec, tables)
    pressure, more = rating.rate(spec, tables)
    pressure = grades.graded(pressure, tables)
    pressure = _as_one(pressure, [pressure], tables)
    of_parts += more
    bend, of_bend = geometry.bend_radius(spec.hose, tables)
    diameter = geometry.outside_diameter(spec.hose, tables)
    of_ends = motion.warnings(spec, tables)
    advice: list[EndAdvice] = []
    for name, end in zip(motion.NAMES, (spec.end_a, spec.end_b), strict=True):
        found, more = tightening.advice(name, end, tables)
        advice.append(_with_steps(name, found, spec, pressure, bend.mm, tables))
        of_ends += more
    coldest, cold_source = temperature.lowest(spec, tables)
    hottest, hot_source = temperature.hottest(spec, tables)
    proof, burst = _test_pressures(pressure.value_bar, tables)
    if latched := [
        n for n, e in zip(motion.NAMES, (spec.end_a, spec.end_b), strict=True) if e.connection.is_latched
    ]:
        burst = None  # couplers are listed at 3 times their working pressure, too
        of_ends += [_burst_not_known(name) for name in latched]
    said = Assessment(
        working_pressure=pressure,
        test_pressure_bar=proof,
        burst_pressure_bar=burst,
        length_tolerance=None,
        clocking_tolerance_deg=None,
        bend_radius_mm=bend.mm,
        bend_radius_source=bend.source,
        bend_radius_printed=bend.printed,
        max_temperature_c=hottest,
        max_temperature_source=hot_source,
        min_temperature_c=coldest,
        min_temperature_source=cold_source,
        hose_od_mm=diameter.mm,
        hose_od_source=diameter.source,
        hose_od_basis=diameter.basis,
        end_a=advice[0],
        end_b=advice[1],
    )
    return _Kind(said, tuple(of_parts), (*_standard_warnings(tables, spec), *of_bend), tuple(of_ends))


def _with_steps(
    name: motion.Name,
    found: EndAdvice,
    spec: AssemblySpec,
    pressure: WorkingPressure,
    bend_mm: float | None,
    tables: Tables,
) -> EndAdvice:
    """The advice with its steps and figures; each spec of the kind has its own clocking (``_clocked``)."""
    bar, at_most = pressure.value_bar, pressure.at_most_bar
    chosen, figures = steps.for_end(name, found, spec, bar, bend_mm, tables, at_most)
    return found.model_copy(update={"steps": chosen, "figures": figures})


def _clocked(of_kind: EndAdvice, spec: AssemblySpec) -> EndAdvice:
    """An end's advice with the clocking of this spec among its figures."""
    if spec.clocking_deg is None:
        return of_kind
    figures = of_kind.figures | {"clocking": steps.clocking_text(spec.clocking_deg)}
    return of_kind.model_copy(update={"figures": figures})


def _test_pressures(working_bar: float | None, tables: Tables) -> tuple[float | None, float | None]:
    """Proof and minimum burst (SAE J343, SAE J517); None where the rating is not known."""
    if working_bar is None:
        return None, None
    factors = (tables.rule("proof_factor").value, tables.rule("burst_factor").value)
    return round(working_bar * factors[0], 1), round(working_bar * factors[1], 1)


def _burst_not_known(name: str) -> Warning_:
    message = Message("trade-burst-not-known", part=phrases.part(name))
    return Warning_(code="burst_not_known", field=name, message=message, severity="note")


def _tolerance_warnings(tolerance: LengthTolerance | None) -> list[Warning_]:
    found = []
    if tolerance is not None and tolerance.confidence == "memory":
        unsure = Message("trade-length-tolerance-unverified", source=tolerance.source)
        found.append(
            Warning_(code="length_tolerance_from_memory", field="length_mm", message=unsure, severity="note")
        )
    if tolerance is None:
        unknown = Message("trade-length-tolerance-not-known")
        found.append(Warning_(code="length_tolerance_not_known", field="length_mm", message=unknown))
    return found


def _standard_warnings(tables: Tables, spec: AssemblySpec) -> list[Warning_]:
    """That the hose's standard is another spelling of one in the tables, or in none."""
    given = spec.hose.standard
    standard = tables.standard_of(given)
    if standard is None:
        message = Message("trade-standard-not-known", given=given)
        return [Warning_(code="standard_not_known", field="hose.standard", message=message)]
    if standard.standard.casefold() != given.casefold():
        message = Message("trade-standard-read-as", given=given, standard=standard.standard)
        return [Warning_(code="standard_spelling", field="hose.standard", message=message, severity="note")]
    return []
