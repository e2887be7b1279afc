"""Temperature and fluid, as far as a source speaks of them. Nothing is derated by guess.

Oil may flow in any hose of the tables. Any other fluid needs a source that names it for the hose's
standard (hose_fluids.csv); without one no pressure applies. A fluid that the spec does not name is
taken for mineral oil, and the tag says "mineral oil only".
"""

from __future__ import annotations

from tagger import phrases
from tagger.messages import Message, Value
from tagger.messages import temperature as celsius
from tagger.spec import AssemblySpec, Fluid, GivenRating, Hose, PressureOverride
from tagger.trade import rows as row
from tagger.trade.results import Warning_
from tagger.trade.tables import Tables


def lowest(spec: AssemblySpec, tables: Tables) -> tuple[float | None, str]:
    """The lowest temperature of the hose in °C with the spec's fluid, and its source."""
    standard = tables.standard_of(spec.hose.standard)
    if standard is None:
        return None, ""
    least, source = standard.min_temperature_c, standard.source
    entry = _entry(spec.fluid, spec.hose, tables)
    if entry is not None and entry.min_temperature_c is not None and entry.min_temperature_c > least:
        return entry.min_temperature_c, entry.source
    return least, source


def warnings(spec: AssemblySpec, tables: Tables) -> list[Warning_]:
    """What stands against the spec's temperature and fluid, or that no source speaks of them.

    No published table derates hydraulic hose or steel fittings within a hose standard's range,
    so a pressure is never lowered here: beyond the range no table pressure holds (``unfit``).
    """
    standard = tables.standard_of(spec.hose.standard)
    if standard is None:
        entry = _entry(spec.fluid, spec.hose, tables)
        return [] if entry is None else _by_manufacturer(entry, spec.hose.standard, tables)
    found = _temperature(spec, standard) + _cold(spec, standard, tables)
    if spec.fluid is not None:
        found += fluid_warnings(spec.fluid, spec.max_temperature_c, spec.hose, tables)
    return found


def unfit(spec: AssemblySpec, tables: Tables) -> Message | None:
    """Why no table pressure applies for what the spec asks of the hose; None where nothing stands against it."""
    standard = tables.standard_of(spec.hose.standard)
    if standard is None:
        return None
    given, name = spec.max_temperature_c, standard.standard
    entry = _entry(spec.fluid, spec.hose, tables)
    if given is not None and given > standard.max_temperature_c:
        limit = celsius(standard.max_temperature_c)
        return Message("trade-unfit-hot", standard=name, limit=limit, source=standard.source)
    if entry is None:
        if spec.fluid is None or not needs_source(spec.fluid, tables):
            return None
        return Message("trade-unfit-fluid-unnamed", standard=name, fluid=phrases.fluid(spec.fluid))
    fluid = phrases.fluid(entry.fluid)
    if entry.max_temperature_c is None:
        return Message("trade-unfit-fluid", standard=name, fluid=fluid, source=entry.source)
    if given is not None and given > entry.max_temperature_c:
        limit = celsius(entry.max_temperature_c)
        return Message("trade-unfit-hot-fluid", standard=name, fluid=fluid, limit=limit, source=entry.source)
    return None


def needs_source(fluid: Fluid, tables: Tables) -> bool:
    """Whether a hose may carry this fluid only where a source names it: all but oils.

    A fluid that is in no row of fluids.csv needs one.
    """
    known = tables.fluids.get(fluid)
    return known is None or known.kind not in ("oil", "other_oil")


def limit_of(hose: Hose, fluid: Fluid | None, tables: Tables) -> tuple[float | None, str]:
    """The highest temperature in °C that the hose may have with the fluid (oil where None), and its source.

    (None, "") for a hose that is not in the tables, or one that may not carry the fluid.
    """
    standard = tables.standard_of(hose.standard)
    if standard is None:
        return None, ""
    entry = _entry(fluid or Fluid.MINERAL_OIL, hose, tables)
    if entry is None:
        if fluid is not None and needs_source(fluid, tables):
            return None, ""
        return standard.max_temperature_c, standard.source
    if entry.max_temperature_c is None:
        return None, ""
    if entry.max_temperature_c < standard.max_temperature_c:
        return entry.max_temperature_c, entry.source
    return standard.max_temperature_c, standard.source


def hottest(spec: AssemblySpec, tables: Tables) -> tuple[float | None, str]:
    """How hot the assembly may get in °C, and the source: as entered, without one.

    Else the limit of its hose with its fluid, or the lower one that a pressure entered holds for.
    """
    if spec.max_temperature_c is not None:
        return spec.max_temperature_c, ""
    limit, source = limit_of(spec.hose, spec.fluid, tables)
    entered = spec.working_pressure
    named = entered.max_temperature_c if entered is not None else None
    if entered is None or named is None or (limit is not None and limit <= named):
        return limit, source
    return named, entered.source


def lifts(given: PressureOverride | GivenRating, spec: AssemblySpec) -> bool:
    """Whether a pressure entered counts beyond a limit of fluid or heat.

    Only where its source names the very fluid, and a temperature no lower than the spec's.
    """
    hottest = given.max_temperature_c
    if hottest is None or given.fluid != (spec.fluid or Fluid.MINERAL_OIL):
        return False
    return spec.max_temperature_c is None or hottest >= spec.max_temperature_c


def _entry(fluid: Fluid | None, hose: Hose, tables: Tables) -> row.HoseFluidRow | None:
    """What a source says of the fluid: an approval that came with the hose, else the tables' row."""
    approval = hose.approval
    if approval is not None and approval.fluid == fluid:
        return row.HoseFluidRow(
            hose.standard, fluid, None, approval.max_temperature_c, approval.source, "given", ""
        )
    return next((r for r in tables.fluids_of(hose) if r.fluid == fluid), None)


def approved(spec: AssemblySpec, tables: Tables) -> bool:
    """Whether a hose of no standard here may carry a fluid that needs a source: by an approval that names it,
    and no hotter."""
    entry = _entry(spec.fluid, spec.hose, tables)
    if entry is None or entry.max_temperature_c is None or spec.max_temperature_c is None:
        return False
    return spec.max_temperature_c <= entry.max_temperature_c


def _by_manufacturer(entry: row.HoseFluidRow, name: str, tables: Tables) -> list[Warning_]:
    """Said where a manufacturer's approval lets a fluid flow: it is that manufacturer's hose alone."""
    if entry.confidence not in ("shop", "given") or entry.max_temperature_c is None:
        return []
    values: dict[str, Value] = {
        "standard": name,
        "fluid": phrases.fluid(entry.fluid),
        "limit": celsius(entry.max_temperature_c),
        "source": entry.source,
    }
    theirs = [
        r.max_temperature_c
        for r in tables.published["hose_fluids"]
        if (r.standard, r.fluid) == (name, entry.fluid)
    ]
    if theirs and (None in theirs or entry.max_temperature_c > max(theirs)):
        message = Message("trade-fluid-approved-beyond", **values)
    else:
        message = Message("trade-fluid-approved", **values)
    return [Warning_(code="fluid_approved", field="fluid", message=message)]


def _temperature(spec: AssemblySpec, standard: row.HoseStandard) -> list[Warning_]:
    given = spec.max_temperature_c
    if given is None or given <= standard.max_temperature_c:
        return []
    message = Message(
        "trade-too-hot",
        given=celsius(given),
        limit=celsius(standard.max_temperature_c),
        standard=standard.standard,
        source=standard.source,
    )
    return [Warning_(code="too_hot", field="max_temperature_c", message=message, severity="danger")]


def _cold(spec: AssemblySpec, standard: row.HoseStandard, tables: Tables) -> list[Warning_]:
    least, source = lowest(spec, tables)
    if least is None:
        return []
    given = spec.max_temperature_c
    known: dict[str, Value] = {"limit": celsius(least), "standard": standard.standard, "source": source}
    if given is not None and given < least:
        message = Message("trade-too-cold", given=celsius(given), **known)
        return [Warning_(code="too_cold", field="max_temperature_c", message=message, severity="danger")]
    if spec.fluid is not None and least > standard.min_temperature_c:
        message = Message("trade-cold-limit-of-fluid", fluid=phrases.fluid(spec.fluid), **known)
        return [Warning_(code="cold_limit_of_fluid", field="fluid", message=message)]
    return []


def speaks_of(fluid: Fluid, hose: Hose, tables: Tables) -> bool:
    """Whether a source speaks of this fluid in a hose of that standard."""
    standard = tables.standard_of(hose.standard)
    return standard is not None and _entry(fluid, hose, tables) is not None


def fluid_warnings(fluid: Fluid, hottest_c: float | None, hose: Hose, tables: Tables) -> list[Warning_]:
    """What stands against a fluid of at most ``hottest_c`` in that hose, or that no source speaks of it."""
    standard = tables.standard_of(hose.standard)
    if standard is None:
        return []
    name, said = standard.standard, phrases.fluid(fluid)
    entry = _entry(fluid, hose, tables)
    if entry is None:
        if needs_source(fluid, tables):
            message = Message("trade-fluid-unnamed", standard=name, fluid=said)
            return [Warning_(code="fluid_not_named", field="fluid", message=message, severity="danger")]
        if tables.fluids[fluid].kind == "oil":
            return []
        message = Message("trade-fluid-as-oil", standard=name, fluid=said)
        return [Warning_(code="fluid_not_known", field="fluid", message=message)]
    if entry.max_temperature_c is None:
        message = Message("trade-fluid-not-suited", standard=name, fluid=said, source=entry.source)
        return [Warning_(code="fluid_not_suited", field="fluid", message=message, severity="danger")]
    if hottest_c is not None and hottest_c > entry.max_temperature_c:
        message = Message(
            "trade-too-hot-for-fluid",
            fluid=said,
            standard=name,
            limit=celsius(entry.max_temperature_c),
            source=entry.source,
            given=celsius(hottest_c),
        )
        return [
            Warning_(code="too_hot_for_fluid", field="max_temperature_c", message=message, severity="danger")
        ]
    return _by_manufacturer(entry, name, tables)
