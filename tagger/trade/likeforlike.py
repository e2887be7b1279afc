"""Does a new assembly replace an old one? A verdict field by field, and one for all, with reasons.

``same`` and ``better`` stand in the way of nothing; ``differs`` asks for a look;
``dangerous`` means it does not replace. A figure that is not known is never ``same``.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final, Literal

from tagger import phrases
from tagger.errors import TradeError
from tagger.messages import Message, Value, angle, length
from tagger.spec import AssemblySpec, Cover, End, LengthBasis
from tagger.trade import alike, duty, geometry
from tagger.trade.assess import assess
from tagger.trade.results import Assessment
from tagger.trade.tables import Tables
from tagger.trade.tables import tables as our_tables
from tagger.trade.verdict import Field, both, values

Verdict = Literal["replaces", "replaces with care", "does not replace"]

_VERDICTS: Final[dict[Verdict, Message]] = {
    "replaces": Message("trade-verdict-replaces"),
    "replaces with care": Message("trade-verdict-with-care"),
    "does not replace": Message("trade-verdict-does-not-replace"),
}
_PROTECT_PEOPLE = {Cover.FIRE_SLEEVE, Cover.BURST_SLEEVE}


@dataclass(frozen=True)
class Comparison:
    verdict: Verdict
    fields: tuple[Field, ...]

    @property
    def message(self) -> Message:
        """The verdict for people."""
        return _VERDICTS[self.verdict]

    @property
    def obstacles(self) -> tuple[int, int]:
        """How many fields are dangerous, and how many differ: the fewer, the better it replaces."""
        verdicts = [f.verdict for f in self.fields]
        return verdicts.count("dangerous"), verdicts.count("differs")


def compare(a: AssemblySpec, b: AssemblySpec, tables: Tables | None = None) -> Comparison:
    """Whether assembly ``b`` may take the place of assembly ``a``, as it is or turned end for end.

    Raises TradeError, its fields under "a" or "b", for a spec whose parts cannot exist.
    """
    tables = tables or our_tables()
    as_it_is = _compared(a, b, tables)
    if as_it_is.verdict == "replaces":
        return as_it_is
    turned = _compared(a, end_for_end(b), tables)
    if turned.obstacles >= as_it_is.obstacles:
        return as_it_is
    note = Field("ends", "same", Message("trade-compare-turned"))
    return Comparison(turned.verdict, (note, *turned.fields))


def end_for_end(spec: AssemblySpec) -> AssemblySpec:
    """The same assembly with its ends called the other way round.

    The clocking angle stays: counter-clockwise from the near end equals clockwise from the far end
    (MIL-DTL-83796-5), and both the direction of view and the elbow that is counted from change.
    """
    return spec.model_copy(update={"end_a": spec.end_b, "end_b": spec.end_a})


def _compared(a: AssemblySpec, b: AssemblySpec, tables: Tables) -> Comparison:
    was, new = _assessed("a", a, tables), _assessed("b", b, tables)
    fields = (
        duty.pressures(a, b, was, new, tables),
        _hose_dash(a, b, tables),
        _construction(a, b, tables),
        *alike.compared("end_a", a.end_a, b.end_a, tables),
        *alike.compared("end_b", a.end_b, b.end_b, tables),
        _length(a, b, tables),
        _clocking(a, b, was),
        _bend(a, b, was, new, tables),
        duty.temperatures(a, b, was, tables),
        duty.fluids(a, b, new, tables),
        *duty.vacuums(a, b, new, tables),
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
        return assess(spec, tables, made=True)
    except TradeError as error:
        raise error.within(name) from None


def _hose_dash(a: AssemblySpec, b: AssemblySpec, tables: Tables) -> Field:
    """The bores: by dash or, where one of the dashes names the tube and the other the bore, in mm."""
    old, new = a.hose.dash, b.hose.dash
    if tables.names_tube(a.hose) != tables.names_tube(b.hose):
        was, to_come = geometry.bore_mm(a.hose, tables), geometry.bore_mm(b.hose, tables)
        bores = Message("trade-compare-bore", old=length(was), new=length(to_come))
        return Field("hose.dash", "dangerous" if to_come < was else "differs", bores)
    if old == new:
        return Field("hose.dash", "same", both(f"-{old}"))
    if new < old:
        return Field("hose.dash", "dangerous", Message("trade-compare-dash-smaller", old=old, new=new))
    return Field("hose.dash", "differs", Message("trade-compare-dash-larger", old=old, new=new))


def _construction(a: AssemblySpec, b: AssemblySpec, tables: Tables) -> Field:
    name = "hose.standard"
    old, new = tables.standard_of(a.hose.standard), tables.standard_of(b.hose.standard)
    if old is None or new is None:
        same = duty.standard_name(a, tables) == duty.standard_name(b, tables)
        return Field(name, "same" if same else "differs", values(a.hose.standard, b.hose.standard))
    if old is new:
        return Field(name, "same", both(old.standard))
    if old.duty == "suction" and new.duty != "suction":
        suction = Message("trade-compare-suction", old=old.standard, new=new.standard)
        return Field(name, "dangerous", suction)
    return Field(name, "differs", values(old.standard, new.standard))


def _length(a: AssemblySpec, b: AssemblySpec, tables: Tables) -> Field:
    name = "length_mm"
    if not _same_points(a, b):
        old, new = phrases.length_basis(a.length_basis), phrases.length_basis(b.length_basis)
        return Field(name, "dangerous", Message("trade-compare-length-basis", old=old, new=new))
    off = b.length_mm - a.length_mm
    was, to_come = length(a.length_mm), length(b.length_mm)
    tolerance = geometry.length_tolerance(a.length_mm, a.hose, tables)
    if off == 0:
        return Field(name, "same", values(was, to_come))
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


def _same_points(a: AssemblySpec, b: AssemblySpec) -> bool:
    """Whether both lengths are measured between the same points of the ends.

    An elbow is measured to its centreline on every basis, and a flange head to its face; only a
    straight thread has its end elsewhere than its sealing face, by a figure of the fitting's.
    """
    pairs = ((a.end_a, b.end_a), (a.end_b, b.end_b))
    return a.length_basis is b.length_basis or all(
        _point(a.length_basis, old) == _point(b.length_basis, new) for old, new in pairs
    )


def _point(basis: LengthBasis, end: End) -> str:
    if end.is_elbow:
        return "elbow_centreline"
    by_thread = basis is LengthBasis.THREAD_END and not end.connection.is_flange
    return "thread_end" if by_thread else "sealing_face"


def _clocking(a: AssemblySpec, b: AssemblySpec, was: Assessment) -> Field:
    name = "clocking_deg"
    if a.clocking_deg is None and b.clocking_deg is None:
        return Field(name, "same", Message("trade-compare-clocking-none"))
    old, new = _degrees(a), _degrees(b)
    if a.clocking_deg is None or b.clocking_deg is None:
        return Field(name, "differs", values(old, new))
    off = abs((b.clocking_deg - a.clocking_deg + 180) % 360 - 180)
    allowed = was.clocking_tolerance_deg or 0.0
    if off <= allowed:
        within = Message("trade-compare-clocking-within", old=old, new=new, allowed=angle(allowed))
        return Field(name, "same", within)
    return Field(name, "dangerous", Message("trade-compare-clocking-off", old=old, new=new, off=angle(off)))


def _degrees(spec: AssemblySpec) -> Value:
    return Message("trade-compare-none") if spec.clocking_deg is None else angle(spec.clocking_deg)


def _bend(a: AssemblySpec, b: AssemblySpec, was: Assessment, new: Assessment, tables: Tables) -> Field:
    name = "bend_radius_mm"
    old_mm, new_mm = was.bend_radius_mm, new.bend_radius_mm
    same_hose = duty.standard_name(a, tables) == duty.standard_name(b, tables) and a.hose.dash == b.hose.dash
    if old_mm is None and new_mm is None and same_hose:
        return Field(name, "same", Message("trade-compare-bend-same-hose"))
    if old_mm is None or new_mm is None:
        return Field(name, "differs", Message("trade-compare-bend-not-known"))
    old, to_come = length(old_mm), length(new_mm)
    if new_mm > old_mm:
        return Field(name, "differs", Message("trade-compare-bend-larger", old=old, new=to_come))
    return Field(name, "same" if new_mm == old_mm else "better", values(old, to_come))


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
