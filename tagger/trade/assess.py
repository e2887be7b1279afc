"""assess(): everything the trade derives from a spec, in one answer."""

from __future__ import annotations

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
    warnings = compatibility.check_parts(spec, tables) + temperature.warnings(spec, tables)
    warnings += vacuum.warnings(spec, tables)
    pressure, more = rating.rate(spec, tables)
    pressure = grades.graded(pressure, tables)
    warnings += more
    tolerance = geometry.length_tolerance(spec.length_mm, spec.hose, tables, length_bands)
    warnings += _tolerance_warnings(tolerance) + _standard_warnings(tables, spec)
    bend, more = geometry.bend_radius(spec.hose, tables)
    warnings += more
    diameter = geometry.outside_diameter(spec.hose, tables)
    if not made and (impossible := lengths.problems(spec, diameter.mm, tables)):
        raise TradeError(impossible)
    warnings += lengths.warnings(spec, bend.mm, diameter.mm, tables, reaches_mm)
    warnings += motion.warnings(spec, tables)
    advice: list[EndAdvice] = []
    for name, end in zip(motion.NAMES, (spec.end_a, spec.end_b), strict=True):
        found, more = tightening.advice(name, end, tables)
        advice.append(_with_steps(name, found, spec, pressure, bend.mm, tables))
        warnings += more
    clocking = geometry.clocking_tolerance(spec, tables)
    coldest, cold_source = temperature.lowest(spec, tables)
    hottest, hot_source = temperature.hottest(spec, tables)
    proof, burst = _test_pressures(pressure.value_bar, tables)
    if latched := [
        n for n, e in zip(motion.NAMES, (spec.end_a, spec.end_b), strict=True) if e.connection.is_latched
    ]:
        burst = None  # couplers are listed at 3 times their working pressure, too
        warnings += [_burst_not_known(name) for name in latched]
    return Assessment(
        working_pressure=pressure,
        test_pressure_bar=proof,
        burst_pressure_bar=burst,
        length_tolerance=tolerance,
        clocking_tolerance_deg=clocking.value if clocking else None,
        clocking_tolerance_source=clocking.source if clocking else "",
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
        hose_mass_kg=geometry.hose_mass_kg(spec.length_mm, spec.hose, tables),
        content_l=geometry.content_l(spec.length_mm, spec.hose, tables),
        end_a=advice[0],
        end_b=advice[1],
        warnings=tuple(sorted(warnings, key=lambda w: w.severity != "danger")),
    )


def _with_steps(
    name: motion.Name,
    found: EndAdvice,
    spec: AssemblySpec,
    pressure: WorkingPressure,
    bend_mm: float | None,
    tables: Tables,
) -> EndAdvice:
    """The advice with its steps and figures; found once for ends alike, but for those set at an angle of their own."""

    def with_steps() -> EndAdvice:
        bar, at_most = pressure.value_bar, pressure.at_most_bar
        chosen, figures = steps.for_end(name, found, spec, bar, bend_mm, tables, at_most)
        return found.model_copy(update={"steps": chosen, "figures": figures})

    if spec.clocking_deg is not None:
        return with_steps()
    ends = tightening.bare(spec.end_a), tightening.bare(spec.end_b)
    return tables.once(
        ("steps of", name, *ends, pressure.value_bar, pressure.at_most_bar, bend_mm), with_steps
    )


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
