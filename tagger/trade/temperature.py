"""Temperature and fluid, as far as a source speaks of them. Nothing is derated by guess."""

from __future__ import annotations

from tagger.messages import as_is
from tagger.spec import AssemblySpec, Fluid, Hose
from tagger.trade import rows as row
from tagger.trade.results import Warning_
from tagger.trade.tables import Tables
from tagger.units import show_temperature


def lowest(spec: AssemblySpec, tables: Tables) -> tuple[float | None, str]:
    """The lowest temperature of the hose in °C with the spec's fluid, and its source."""
    standard = tables.standard_of(spec.hose.standard)
    if standard is None:
        return None, ""
    least, source = standard.min_temperature_c, standard.source
    entry = _entry(spec.fluid, standard, tables)
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
        return []
    found = _temperature(spec, standard) + _cold(spec, standard, tables)
    if spec.fluid is not None:
        found += fluid_warnings(spec.fluid, spec.max_temperature_c, spec.hose, tables)
    return found


def unfit(spec: AssemblySpec, tables: Tables) -> str | None:
    """Why no table pressure holds for what the spec asks of the hose; None where nothing stands against it."""
    standard = tables.standard_of(spec.hose.standard)
    if standard is None:
        return None
    given, why = spec.max_temperature_c, None
    entry = _entry(spec.fluid, standard, tables)
    if given is not None and given > standard.max_temperature_c:
        limit = show_temperature(standard.max_temperature_c)
        why = f"no source rates {standard.standard} above {limit}: {standard.source}"
    elif entry is not None and entry.max_temperature_c is None:
        words = entry.fluid.replace("_", " ")
        why = f"no source rates {standard.standard} for {words}: {entry.source}: {entry.note}"
    elif entry is not None and given is not None and given > (entry.max_temperature_c or 0):
        words = entry.fluid.replace("_", " ")
        limit = show_temperature(entry.max_temperature_c or 0)
        why = f"no source rates {standard.standard} with {words} above {limit}: {entry.source}"
    return why


def _entry(fluid: Fluid | None, standard: row.HoseStandard, tables: Tables) -> row.HoseFluidRow | None:
    return next((r for r in tables.hose_fluids.get(standard.standard, ()) if r.fluid == fluid), None)


def _temperature(spec: AssemblySpec, standard: row.HoseStandard) -> list[Warning_]:
    given = spec.max_temperature_c
    if given is None or given <= standard.max_temperature_c:
        return []
    text = (
        f"{show_temperature(given)} is above the {show_temperature(standard.max_temperature_c)} of {standard.standard} "
        f"({standard.source}). No published table derates it there: use a hose made for that temperature."
    )
    return [Warning_(code="too_hot", field="max_temperature_c", message=as_is(text), severity="danger")]


def _cold(spec: AssemblySpec, standard: row.HoseStandard, tables: Tables) -> list[Warning_]:
    least, source = lowest(spec, tables)
    if least is None:
        return []
    given = spec.max_temperature_c
    if given is not None and given < least:
        text = (
            f"{show_temperature(given)} is below the {show_temperature(least)} that {standard.standard} goes down to "
            f"({source}): use a hose made for that cold."
        )
        return [Warning_(code="too_cold", field="max_temperature_c", message=as_is(text), severity="danger")]
    if spec.fluid is not None and least > standard.min_temperature_c:
        words = spec.fluid.replace("_", " ")
        text = (
            f"With {words}, {standard.standard} goes down to {show_temperature(least)} only ({source}): "
            "keep it from colder places."
        )
        return [Warning_(code="cold_limit_of_fluid", field="fluid", message=as_is(text))]
    return []


def speaks_of(fluid: Fluid, hose: Hose, tables: Tables) -> bool:
    """Whether a source speaks of this fluid in a hose of that standard."""
    standard = tables.standard_of(hose.standard)
    return standard is not None and _entry(fluid, standard, tables) is not None


def fluid_warnings(fluid: Fluid, hottest_c: float | None, hose: Hose, tables: Tables) -> list[Warning_]:
    """What stands against a fluid of at most ``hottest_c`` in that hose, or that no source speaks of it."""
    standard = tables.standard_of(hose.standard)
    if standard is None:
        return []
    words = fluid.replace("_", " ")
    entry = _entry(fluid, standard, tables)
    if entry is None:
        if fluid is Fluid.MINERAL_OIL:
            return []
        text = f"No source here says whether {standard.standard} suits {words}: ask the hose maker."
        return [Warning_(code="fluid_not_known", field="fluid", message=as_is(text))]
    if entry.max_temperature_c is None:
        text = f"{standard.standard} is not for {words} ({entry.source}: {entry.note})."
        return [Warning_(code="fluid_not_suited", field="fluid", message=as_is(text), severity="danger")]
    if hottest_c is not None and hottest_c > entry.max_temperature_c:
        text = (
            f"With {words}, {standard.standard} goes to {show_temperature(entry.max_temperature_c)} "
            f"({entry.source}), and the spec says {show_temperature(hottest_c)}."
        )
        return [
            Warning_(
                code="too_hot_for_fluid", field="max_temperature_c", message=as_is(text), severity="danger"
            )
        ]
    return []
