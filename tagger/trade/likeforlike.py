"""Does B replace A? A verdict field by field, and one for all, with reasons.

``same`` and ``better`` stand in the way of nothing; ``differs`` asks for a look;
``dangerous`` means it does not replace. A figure that is not known is never ``same``.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from tagger.errors import TradeError
from tagger.spec import AssemblySpec, End, Fluid
from tagger.trade import geometry, temperature
from tagger.trade.assess import assess
from tagger.trade.results import Assessment
from tagger.trade.tables import Tables
from tagger.trade.tables import tables as our_tables
from tagger.units import show_length, show_pressure, show_temperature

FieldVerdict = Literal["same", "better", "differs", "dangerous"]
Verdict = Literal["replaces", "replaces with care", "does not replace"]


@dataclass(frozen=True)
class Field:
    field: str
    verdict: FieldVerdict
    reason: str


@dataclass(frozen=True)
class Comparison:
    verdict: Verdict
    fields: tuple[Field, ...]


def compare(a: AssemblySpec, b: AssemblySpec, tables: Tables | None = None) -> Comparison:
    """Whether assembly ``b`` may take the place of assembly ``a``.

    Raises TradeError, its fields under "a" or "b", for a spec whose parts cannot exist.
    """
    tables = tables or our_tables()
    was, new = _assessed("a", a, tables), _assessed("b", b, tables)
    fields = (
        _pressure(a, b, was, new),
        _hose_dash(a, b),
        _construction(a, b, tables),
        *_end("end_a", a.end_a, b.end_a),
        *_end("end_b", a.end_b, b.end_b),
        _length(a, b, tables),
        _clocking(a, b, was),
        _bend(was, new),
        _temperature(a, b, tables),
        _fluid(a, b, new, tables),
        _covers(a, b),
    )
    verdicts = {f.verdict for f in fields}
    overall: Verdict = "replaces"
    if "dangerous" in verdicts:
        overall = "does not replace"
    elif "differs" in verdicts:
        overall = "replaces with care"
    return Comparison(overall, fields)


def _assessed(name: str, spec: AssemblySpec, tables: Tables) -> Assessment:
    try:
        return assess(spec, tables)
    except TradeError as error:
        raise error.within(name) from None


def _pressure(a: AssemblySpec, b: AssemblySpec, was: Assessment, new: Assessment) -> Field:
    old_bar, new_bar = was.working_pressure.value_bar, new.working_pressure.value_bar
    name = "working_pressure"
    if old_bar is None and new_bar is None and _parts(a) == _parts(b):
        return Field(name, "same", "the same parts, though their working pressure is not known")
    if old_bar is None or new_bar is None:
        which = "either" if old_bar is None and new_bar is None else ("A" if old_bar is None else "B")
        reason = f"the working pressure of {which} is not known: give it in the spec with its source"
        return Field(name, "dangerous", reason)
    shown = f"A {show_pressure(old_bar)}, B {show_pressure(new_bar)}"
    if new_bar < old_bar - 0.05:
        return Field(name, "dangerous", f"B is rated lower: {shown}")
    return Field(name, "same" if abs(new_bar - old_bar) <= 0.05 else "better", shown)


def _parts(spec: AssemblySpec) -> tuple[object, ...]:
    """All that a rating depends on."""
    hose = spec.hose.standard.casefold(), spec.hose.dash, spec.hose.edition
    ends = [(e.connection, e.size_key, e.form, e.shape, e.material) for e in (spec.end_a, spec.end_b)]
    return (*hose, *ends)


def _hose_dash(a: AssemblySpec, b: AssemblySpec) -> Field:
    if a.hose.dash == b.hose.dash:
        return Field("hose.dash", "same", f"both -{a.hose.dash}")
    if b.hose.dash < a.hose.dash:
        return Field(
            "hose.dash",
            "dangerous",
            f"B is -{b.hose.dash}, smaller than -{a.hose.dash}: less flow, more heat",
        )
    return Field(
        "hose.dash", "differs", f"B is -{b.hose.dash}, larger than -{a.hose.dash}: check that it has room"
    )


def _construction(a: AssemblySpec, b: AssemblySpec, tables: Tables) -> Field:
    name = "hose.standard"
    old, new = tables.standard_of(a.hose.standard), tables.standard_of(b.hose.standard)
    if old is None or new is None:
        same = a.hose.standard.casefold() == b.hose.standard.casefold()
        verdict: FieldVerdict = "same" if same else "differs"
        return Field(name, verdict, f"A is {a.hose.standard}, B is {b.hose.standard}")
    if old is new:
        return Field(name, "same", f"both {old.standard}")
    reason = f"A is {old.standard} ({old.construction}), B is {new.standard} ({new.construction})"
    if "suction" in old.construction and "suction" not in new.construction:
        return Field(name, "dangerous", f"{reason}: a pressure hose may collapse under suction")
    return Field(name, "differs", reason)


def _end(name: str, old: End, new: End) -> list[Field]:
    fields = []
    if (old.connection, old.size_key, old.form) == (new.connection, new.size_key, new.form):
        fields.append(Field(name, "same", f"both {_end_text(old)}"))
    else:
        reason = f"A has {_end_text(old)}, B has {_end_text(new)}"
        if {old.connection, new.connection} == {"sae_37_flare", "sae_45_flare"}:
            reason += "; they may screw together, but the two seats do not make a reliable seal"
        fields.append(Field(name, "dangerous", reason))
    fields.append(_shape(name, old, new))
    if old.material is not new.material:
        reason = f"A is {old.material}, B is {new.material}: check corrosion and the maker's rating"
        fields.append(Field(f"{name}.material", "differs", reason))
    return fields


def _shape(name: str, old: End, new: End) -> Field:
    if old.angle_deg != new.angle_deg:
        return Field(
            f"{name}.shape",
            "differs",
            f"A bends {old.angle_deg}°, B {new.angle_deg}°: the hose lies otherwise",
        )
    if old.drop_mm != new.drop_mm:
        drops = [show_length(d) if d is not None else "a drop not given" for d in (old.drop_mm, new.drop_mm)]
        return Field(f"{name}.shape", "differs", f"A has {drops[0]}, B {drops[1]}")
    return Field(f"{name}.shape", "same", f"both {old.shape}".replace("_", " "))


def _end_text(end: End) -> str:
    return f"{end.connection} {end.size_text} {end.form.replace('_', ' ')}"


def _length(a: AssemblySpec, b: AssemblySpec, tables: Tables) -> Field:
    name = "length_mm"
    if a.length_basis is not b.length_basis:
        reason = (
            f"A is measured to the {a.length_basis}, B to the {b.length_basis}: measure both the same way"
        )
        return Field(name, "differs", reason.replace("_", " "))
    off = b.length_mm - a.length_mm
    shown = f"A {show_length(a.length_mm)}, B {show_length(b.length_mm)}"
    tolerance = geometry.length_tolerance(a.length_mm, a.hose, tables)
    if off == 0:
        return Field(name, "same", shown)
    if tolerance is None:
        return Field(name, "differs", f"{shown}; no tolerance is known for A")
    if -tolerance.minus <= off <= tolerance.plus:
        return Field(
            name, "same", f"{shown}: within the tolerance, +{tolerance.plus:g} / -{tolerance.minus:g} mm"
        )
    if off < 0:
        return Field(name, "dangerous", f"{shown}: too short, it would be pulled")
    return Field(name, "differs", f"{shown}: longer than the tolerance allows, it may rub or kink")


def _clocking(a: AssemblySpec, b: AssemblySpec, was: Assessment) -> Field:
    name = "clocking_deg"
    if a.clocking_deg is None and b.clocking_deg is None:
        return Field(name, "same", "neither has two elbows")
    if a.clocking_deg is None or b.clocking_deg is None:
        return Field(name, "differs", f"A {_degrees(a)}, B {_degrees(b)}")
    off = abs((b.clocking_deg - a.clocking_deg + 180) % 360 - 180)
    allowed = was.clocking_tolerance_deg or 0.0
    shown = f"A {_degrees(a)}, B {_degrees(b)}"
    if off <= allowed:
        return Field(name, "same", f"{shown}: within ±{allowed:g}°")
    return Field(name, "dangerous", f"{shown}: {off}° apart, the hose would be twisted")


def _degrees(spec: AssemblySpec) -> str:
    return "none" if spec.clocking_deg is None else f"{spec.clocking_deg}°"


def _bend(was: Assessment, new: Assessment) -> Field:
    old_mm, new_mm = was.bend_radius_mm, new.bend_radius_mm
    if old_mm is None or new_mm is None:
        return Field("bend_radius_mm", "differs", "the least bend radius is not known for both")
    shown = f"A {show_length(old_mm)}, B {show_length(new_mm)}"
    if new_mm > old_mm:
        return Field("bend_radius_mm", "differs", f"{shown}: B must not be bent as tight as A")
    return Field("bend_radius_mm", "same" if new_mm == old_mm else "better", shown)


def _temperature(a: AssemblySpec, b: AssemblySpec, tables: Tables) -> Field:
    name = "max_temperature_c"
    new = tables.standard_of(b.hose.standard)
    limit = new.max_temperature_c if new else b.max_temperature_c
    if a.max_temperature_c is None:
        return Field(name, "same", "A names no temperature")
    if limit is None:
        return Field(
            name, "differs", f"A goes to {show_temperature(a.max_temperature_c)}; B's limit is not known"
        )
    shown = f"A goes to {show_temperature(a.max_temperature_c)}, B's hose to {show_temperature(limit)}"
    if limit < a.max_temperature_c:
        return Field(name, "dangerous", shown)
    return Field(name, "same", shown)


def _fluid(a: AssemblySpec, b: AssemblySpec, new: Assessment, tables: Tables) -> Field:
    """Whether B's hose suits A's fluid by a source; without one it never plainly replaces."""
    unfit = [w for w in new.warnings if w.code in ("fluid_not_suited", "too_hot_for_fluid")]
    if unfit:
        return Field("fluid", "dangerous", unfit[0].text)
    old, other = (f.replace("_", " ") if f else "a fluid not named" for f in (a.fluid, b.fluid))
    shown = f"both for {old}" if a.fluid is b.fluid else f"A is for {old}, B for {other}"
    if a.fluid is None:
        return Field("fluid", "same" if b.fluid is None else "differs", shown)
    duty = temperature.fluid_warnings(a.fluid, a.max_temperature_c, b.hose, tables)
    if any(w.severity == "danger" for w in duty):
        return Field("fluid", "dangerous", f"{shown}: {duty[0].text}")
    known = temperature.speaks_of(a.fluid, b.hose, tables)
    if a.fluid is b.fluid:
        sure = known or a.fluid is Fluid.MINERAL_OIL
        why = "" if sure else f"; no source says that {b.hose.standard} suits it: ask the hose maker"
        return Field("fluid", "same" if sure else "differs", shown + why)
    if known or (b.fluid is None and a.fluid is Fluid.MINERAL_OIL):
        return Field("fluid", "differs", f"{shown}: ask the hose maker")
    return Field("fluid", "dangerous", f"{shown}, and no source says that B's hose suits {old}")


def _covers(a: AssemblySpec, b: AssemblySpec) -> Field:
    missing = [str(c).replace("_", " ") for c in a.covers if c not in b.covers]
    extra = [str(c).replace("_", " ") for c in b.covers if c not in a.covers]
    if missing:
        verdict: FieldVerdict = (
            "dangerous" if any("fire" in m or "burst" in m for m in missing) else "differs"
        )
        return Field("covers", verdict, f"B lacks: {', '.join(missing)}")
    return Field(
        "covers", "better" if extra else "same", f"B adds: {', '.join(extra)}" if extra else "the same"
    )
