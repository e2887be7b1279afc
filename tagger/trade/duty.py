"""What an assembly bears, compared: pressure, temperature and fluid of the old one against the new one."""

from __future__ import annotations

from tagger import phrases
from tagger.messages import Message, pressure
from tagger.messages import temperature as celsius
from tagger.spec import AssemblySpec, Fluid
from tagger.trade import temperature
from tagger.trade.results import Assessment
from tagger.trade.tables import Tables, compact_name
from tagger.trade.verdict import Field, FieldVerdict, both, values

EQUAL_BAR = 0.05  # closer than a tag tells apart


def standard_name(spec: AssemblySpec, tables: Tables) -> str:
    """The hose's standard in one spelling."""
    known = tables.standard_of(spec.hose.standard)
    return compact_name(known.standard if known else spec.hose.standard)


def pressures(a: AssemblySpec, b: AssemblySpec, was: Assessment, new: Assessment, tables: Tables) -> Field:
    """Whether the new assembly is rated as high as the old one.

    Where the rating of a part is not known, part by part: the same unknown part is as strong as itself.
    """
    name = "working_pressure"
    old_bar, new_bar = was.working_pressure.value_bar, new.working_pressure.value_bar
    if old_bar is None:
        return Field(name, *_part_by_part(a, b, was, new, tables))
    if new_bar is None:
        return Field(name, "dangerous", Message("trade-compare-pressure-not-known", which="new"))
    old, to_come = pressure(old_bar), pressure(new_bar)
    if new_bar < old_bar - EQUAL_BAR:
        lower = Message("trade-compare-pressure-lower", old=old, new=to_come)
        return Field(name, "dangerous", lower)
    return Field(name, "same" if new_bar <= old_bar + EQUAL_BAR else "better", values(old, to_come))


def _part_by_part(
    a: AssemblySpec, b: AssemblySpec, was: Assessment, new: Assessment, tables: Tables
) -> tuple[FieldVerdict, Message]:
    """The old rating is not known: it is at most the least of its known parts, and each of its parts bears it.

    So each part of the new assembly has to be one of the old one's, or rated at least as high as that.
    """
    most = was.working_pressure.at_most_bar
    old_parts, new_parts = _parts(a, tables), _parts(b, tables)
    if old_parts == new_parts:
        return "same", Message("trade-compare-pressure-same-parts")
    new_bar = new.working_pressure.value_bar
    if new_bar is not None and (most is None or new_bar < most - EQUAL_BAR):
        return "dangerous", Message("trade-compare-pressure-not-known", which="old")
    rated = {part.part: part.value_bar for part in new.working_pressure.parts}
    for part, made_of in new_parts.items():
        bar = rated.get(part)
        strong = bar is not None and most is not None and bar >= most - EQUAL_BAR
        if new_bar is None and not strong and made_of not in old_parts.values():
            return "dangerous", Message("trade-compare-pressure-not-known", which="both")
    return "better", Message("trade-compare-pressure-by-part")


def _parts(spec: AssemblySpec, tables: Tables) -> dict[str, tuple[object, ...]]:
    """All that each part's rating depends on."""
    hose = spec.hose
    found: dict[str, tuple[object, ...]] = {
        "hose": (standard_name(spec, tables), hose.dash, compact_name(hose.edition or ""), hose.rating)
    }
    for name, end in (("end_a", spec.end_a), ("end_b", spec.end_b)):
        made_of = (end.connection, end.size_key, end.series, end.form, end.shape, end.material)
        found[name] = (*made_of, end.rating)
    return found


def temperatures(a: AssemblySpec, b: AssemblySpec, was: Assessment, tables: Tables) -> Field:
    """Whether the new assembly bears the heat of the old one.

    A temperature that is not stated is the hose's own limit with the fluid of the old assembly.
    """
    name = "max_temperature_c"
    old_c, new_c = was.max_temperature_c, _bears(a, b, tables)
    if old_c is None and standard_name(a, tables) == standard_name(b, tables):
        return Field(name, "same", Message("trade-compare-temperature-same-hose"))
    if old_c is None:
        return Field(name, "differs", Message("trade-compare-temperature-none"))
    stated = a.max_temperature_c is not None
    old = celsius(old_c)
    if new_c is None:
        return Field(name, "differs", Message("trade-compare-temperature-not-known", old=old))
    which = "trade-compare-temperature" if stated else "trade-compare-temperature-limits"
    return Field(name, "dangerous" if new_c < old_c else "same", Message(which, old=old, new=celsius(new_c)))


def _bears(a: AssemblySpec, b: AssemblySpec, tables: Tables) -> float | None:
    """The most that the new assembly bears in °C: its hose's limit with the old one's fluid, and its tag's."""
    limit, _ = temperature.limit_of(b.hose, a.fluid, tables)
    known = [figure for figure in (limit, b.max_temperature_c) if figure is not None]
    return min(known, default=None)


def fluids(a: AssemblySpec, b: AssemblySpec, new: Assessment, tables: Tables) -> Field:
    """Whether the new hose suits the old one's fluid by a source; without one it never plainly replaces."""
    unfit = [
        w for w in new.warnings if w.code in ("fluid_not_suited", "fluid_not_named", "too_hot_for_fluid")
    ]
    if unfit:
        return Field("fluid", "dangerous", unfit[0].message)
    if a.fluid is None and b.fluid is None:
        return Field("fluid", "same", Message("trade-compare-fluid-none"))
    old, other = _named_fluid(a.fluid), _named_fluid(b.fluid)
    if a.fluid is None:
        return Field("fluid", "differs", values(old, other))
    duty = temperature.fluid_warnings(a.fluid, a.max_temperature_c, b.hose, tables)
    if any(w.severity == "danger" for w in duty):
        return Field("fluid", "dangerous", duty[0].message)
    known = temperature.speaks_of(a.fluid, b.hose, tables)
    if a.fluid is b.fluid:
        if known or a.fluid is Fluid.MINERAL_OIL:
            return Field("fluid", "same", Message("trade-compare-both", both=old))
        unsure = Message("trade-compare-fluid-no-source", fluid=old, standard=b.hose.standard)
        return Field("fluid", "differs", unsure)
    if known or (b.fluid is None and a.fluid is Fluid.MINERAL_OIL):
        return Field("fluid", "differs", Message("trade-compare-fluid-ask", old=old, new=other))
    return Field("fluid", "dangerous", Message("trade-compare-fluid-unknown", old=old, new=other))


def vacuums(a: AssemblySpec, b: AssemblySpec, new: Assessment, tables: Tables) -> list[Field]:
    """Whether the new assembly stands the vacuum of the old one; no field where the old one has none.

    A new assembly whose tag states less does not replace, whatever its hose would stand.
    """
    asked, stated = a.vacuum_bar, b.vacuum_bar
    if asked is None:
        return []
    name, old = "vacuum_bar", phrases.vacuum(asked)
    told = Message("trade-compare-not-specified") if stated is None else phrases.vacuum(stated)
    if stated is None or stated < asked:
        return [Field(name, "dangerous", Message("trade-compare-vacuum", old=old, new=told))]
    unfit = [w for w in new.warnings if w.code in ("vacuum_too_deep", "vacuum_not_known")]
    same_hose = (standard_name(a, tables), a.hose.dash) == (standard_name(b, tables), b.hose.dash)
    if unfit and not (same_hose and stated == asked):
        return [Field(name, "dangerous", unfit[0].message)]
    if stated == asked:
        return [Field(name, "same", both(told))]
    return [Field(name, "better", values(old, told))]


def _named_fluid(fluid: Fluid | None) -> Message:
    return Message("trade-compare-not-specified") if fluid is None else phrases.fluid(fluid)
