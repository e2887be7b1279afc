"""Does a new assembly replace an old one? A verdict field by field, and one for all, with reasons.

``same`` and ``better`` stand in the way of nothing; ``differs`` asks for a look;
``dangerous`` means it does not replace. A figure that is not known is never ``same``.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final, Literal

from tagger import phrases
from tagger.errors import TradeError
from tagger.messages import Message, Value, angle, length, pressure
from tagger.messages import temperature as celsius
from tagger.spec import AssemblySpec, Connection, Cover, End, Fluid
from tagger.trade import geometry, temperature
from tagger.trade.assess import assess
from tagger.trade.results import Assessment
from tagger.trade.tables import Tables
from tagger.trade.tables import tables as our_tables

FieldVerdict = Literal["same", "better", "differs", "dangerous"]
Verdict = Literal["replaces", "replaces with care", "does not replace"]

_VERDICTS: Final[dict[Verdict, Message]] = {
    "replaces": Message("trade-verdict-replaces"),
    "replaces with care": Message("trade-verdict-with-care"),
    "does not replace": Message("trade-verdict-does-not-replace"),
}
_FLARES = {Connection("sae_37_flare"), Connection("sae_45_flare")}
_PROTECT_PEOPLE = {Cover.FIRE_SLEEVE, Cover.BURST_SLEEVE}


@dataclass(frozen=True)
class Field:
    field: str
    verdict: FieldVerdict
    reason: Message


@dataclass(frozen=True)
class Comparison:
    verdict: Verdict
    fields: tuple[Field, ...]

    @property
    def message(self) -> Message:
        """The verdict for people."""
        return _VERDICTS[self.verdict]


def compare(a: AssemblySpec, b: AssemblySpec, tables: Tables | None = None) -> Comparison:
    """Whether assembly ``b`` may take the place of assembly ``a``.

    Raises TradeError, its fields under "a" or "b", for a spec whose parts cannot exist.
    """
    tables = tables or our_tables()
    was, new = _assessed("a", a, tables), _assessed("b", b, tables)
    fields = (
        _pressure(a, b, was, new),
        _hose_dash(a, b, tables),
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


def _values(old: Value, new: Value) -> Message:
    return Message("trade-compare-values", old=old, new=new)


def _both(what: Value) -> Message:
    return Message("trade-compare-both", both=what)


def _pressure(a: AssemblySpec, b: AssemblySpec, was: Assessment, new: Assessment) -> Field:
    old_bar, new_bar = was.working_pressure.value_bar, new.working_pressure.value_bar
    name = "working_pressure"
    if old_bar is None and new_bar is None and _parts(a) == _parts(b):
        return Field(name, "same", Message("trade-compare-pressure-same-parts"))
    if old_bar is None or new_bar is None:
        which = "both" if old_bar is None and new_bar is None else ("old" if old_bar is None else "new")
        return Field(name, "dangerous", Message("trade-compare-pressure-not-known", which=which))
    old, to_come = pressure(old_bar), pressure(new_bar)
    if new_bar < old_bar - 0.05:
        lower = Message("trade-compare-pressure-lower", old=old, new=to_come)
        return Field(name, "dangerous", lower)
    return Field(name, "same" if abs(new_bar - old_bar) <= 0.05 else "better", _values(old, to_come))


def _parts(spec: AssemblySpec) -> tuple[object, ...]:
    """All that a rating depends on."""
    hose = spec.hose.standard.casefold(), spec.hose.dash, spec.hose.edition
    ends = [
        (e.connection, e.size_key, e.series, e.form, e.shape, e.material) for e in (spec.end_a, spec.end_b)
    ]
    return (*hose, *ends)


def _hose_dash(a: AssemblySpec, b: AssemblySpec, tables: Tables) -> Field:
    """The bores: by dash or, where one of the dashes names the tube and the other the bore, in mm."""
    old, new = a.hose.dash, b.hose.dash
    if tables.names_tube(a.hose) != tables.names_tube(b.hose):
        was, to_come = geometry.bore_mm(a.hose, tables), geometry.bore_mm(b.hose, tables)
        bores = Message("trade-compare-bore", old=length(was), new=length(to_come))
        return Field("hose.dash", "dangerous" if to_come < was else "differs", bores)
    if old == new:
        return Field("hose.dash", "same", _both(f"-{old}"))
    if new < old:
        return Field("hose.dash", "dangerous", Message("trade-compare-dash-smaller", old=old, new=new))
    return Field("hose.dash", "differs", Message("trade-compare-dash-larger", old=old, new=new))


def _construction(a: AssemblySpec, b: AssemblySpec, tables: Tables) -> Field:
    name = "hose.standard"
    old, new = tables.standard_of(a.hose.standard), tables.standard_of(b.hose.standard)
    if old is None or new is None:
        same = a.hose.standard.casefold() == b.hose.standard.casefold()
        return Field(name, "same" if same else "differs", _values(a.hose.standard, b.hose.standard))
    if old is new:
        return Field(name, "same", _both(old.standard))
    if old.duty == "suction" and new.duty != "suction":
        suction = Message("trade-compare-suction", old=old.standard, new=new.standard)
        return Field(name, "dangerous", suction)
    return Field(name, "differs", _values(old.standard, new.standard))


def _end(name: str, old: End, new: End) -> list[Field]:
    was, to_come = phrases.end_family(old), phrases.end_family(new)
    if (old.connection, old.size_key, old.form) == (new.connection, new.size_key, new.form):
        fields = [Field(name, "same", _both(to_come))]
        if old.series is not new.series:
            series = Message("trade-compare-series", old=was, new=to_come)
            unlike = old.series is not None and new.series is not None
            fields = [Field(name, "dangerous" if unlike else "differs", series)]
    elif {old.connection, new.connection} == _FLARES:
        fields = [Field(name, "dangerous", Message("trade-compare-flares", old=was, new=to_come))]
    else:
        fields = [Field(name, "dangerous", _values(was, to_come))]
    fields.append(_shape(name, old, new))
    if old.material is not new.material:
        metals = Message(
            "trade-compare-material", old=phrases.material(old.material), new=phrases.material(new.material)
        )
        fields.append(Field(f"{name}.material", "differs", metals))
    return fields


def _shape(name: str, old: End, new: End) -> Field:
    field = f"{name}.shape"
    was, to_come = phrases.shape(old), phrases.shape(new)
    if old.angle_deg != new.angle_deg:
        return Field(field, "differs", Message("trade-compare-shape", old=was, new=to_come))
    if old.drop_mm != new.drop_mm:
        return Field(field, "differs", _values(was, to_come))
    return Field(field, "same", _both(to_come))


def _length(a: AssemblySpec, b: AssemblySpec, tables: Tables) -> Field:
    name = "length_mm"
    if a.length_basis is not b.length_basis:
        old, new = phrases.length_basis(a.length_basis), phrases.length_basis(b.length_basis)
        return Field(name, "differs", Message("trade-compare-length-basis", old=old, new=new))
    off = b.length_mm - a.length_mm
    was, to_come = length(a.length_mm), length(b.length_mm)
    tolerance = geometry.length_tolerance(a.length_mm, a.hose, tables)
    if off == 0:
        return Field(name, "same", _values(was, to_come))
    if tolerance is None:
        unknown = Message("trade-compare-length-no-tolerance", old=was, new=to_come)
        return Field(name, "differs", unknown)
    if -tolerance.minus <= off <= tolerance.plus:
        plus, minus = length(tolerance.plus), length(tolerance.minus)
        within = Message("trade-compare-length-within", old=was, new=to_come, plus=plus, minus=minus)
        return Field(name, "same", within)
    if off < 0:
        return Field(name, "dangerous", Message("trade-compare-length-short", old=was, new=to_come))
    return Field(name, "differs", Message("trade-compare-length-long", old=was, new=to_come))


def _clocking(a: AssemblySpec, b: AssemblySpec, was: Assessment) -> Field:
    name = "clocking_deg"
    if a.clocking_deg is None and b.clocking_deg is None:
        return Field(name, "same", Message("trade-compare-clocking-none"))
    old, new = _degrees(a), _degrees(b)
    if a.clocking_deg is None or b.clocking_deg is None:
        return Field(name, "differs", _values(old, new))
    off = abs((b.clocking_deg - a.clocking_deg + 180) % 360 - 180)
    allowed = was.clocking_tolerance_deg or 0.0
    if off <= allowed:
        within = Message("trade-compare-clocking-within", old=old, new=new, allowed=angle(allowed))
        return Field(name, "same", within)
    return Field(name, "dangerous", Message("trade-compare-clocking-off", old=old, new=new, off=angle(off)))


def _degrees(spec: AssemblySpec) -> Value:
    return Message("trade-compare-none") if spec.clocking_deg is None else angle(spec.clocking_deg)


def _bend(was: Assessment, new: Assessment) -> Field:
    name = "bend_radius_mm"
    old_mm, new_mm = was.bend_radius_mm, new.bend_radius_mm
    if old_mm is None or new_mm is None:
        return Field(name, "differs", Message("trade-compare-bend-not-known"))
    old, to_come = length(old_mm), length(new_mm)
    if new_mm > old_mm:
        return Field(name, "differs", Message("trade-compare-bend-larger", old=old, new=to_come))
    return Field(name, "same" if new_mm == old_mm else "better", _values(old, to_come))


def _temperature(a: AssemblySpec, b: AssemblySpec, tables: Tables) -> Field:
    name = "max_temperature_c"
    new = tables.standard_of(b.hose.standard)
    limit = new.max_temperature_c if new else b.max_temperature_c
    if a.max_temperature_c is None:
        return Field(name, "same", Message("trade-compare-temperature-none"))
    old = celsius(a.max_temperature_c)
    if limit is None:
        return Field(name, "differs", Message("trade-compare-temperature-not-known", old=old))
    said = Message("trade-compare-temperature", old=old, new=celsius(limit))
    return Field(name, "dangerous" if limit < a.max_temperature_c else "same", said)


def _fluid(a: AssemblySpec, b: AssemblySpec, new: Assessment, tables: Tables) -> Field:
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
        return Field("fluid", "differs", _values(old, other))
    duty = temperature.fluid_warnings(a.fluid, a.max_temperature_c, b.hose, tables)
    if any(w.severity == "danger" for w in duty):
        return Field("fluid", "dangerous", duty[0].message)
    known = temperature.speaks_of(a.fluid, b.hose, tables)
    if a.fluid is b.fluid:
        if known or a.fluid is Fluid.MINERAL_OIL:
            return Field("fluid", "same", _both(old))
        unsure = Message("trade-compare-fluid-no-source", fluid=old, standard=b.hose.standard)
        return Field("fluid", "differs", unsure)
    if known or (b.fluid is None and a.fluid is Fluid.MINERAL_OIL):
        return Field("fluid", "differs", Message("trade-compare-fluid-ask", old=old, new=other))
    return Field("fluid", "dangerous", Message("trade-compare-fluid-unknown", old=old, new=other))


def _named_fluid(fluid: Fluid | None) -> Message:
    return Message("trade-compare-not-specified") if fluid is None else phrases.fluid(fluid)


def _covers(a: AssemblySpec, b: AssemblySpec) -> Field:
    missing = [c for c in a.covers if c not in b.covers]
    extra = [c for c in b.covers if c not in a.covers]
    if missing:
        lacks = Message("trade-compare-covers-missing", covers=tuple(phrases.cover(c) for c in missing))
        return Field("covers", "dangerous" if _PROTECT_PEOPLE & set(missing) else "differs", lacks)
    if extra:
        adds = Message("trade-compare-covers-added", covers=tuple(phrases.cover(c) for c in extra))
        return Field("covers", "better", adds)
    return Field("covers", "same", Message("trade-compare-covers-same"))
