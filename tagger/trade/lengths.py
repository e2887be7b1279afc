"""Lengths that go together: from one basis to another, the length to cut, and bends that fit.

A length basis says where on each end the tape is held. Dimensions of the ends are the
fitting maker's and come from who asks; none is assumed.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from tagger.errors import Problem, TradeError
from tagger.messages import Message, length
from tagger.spec import AssemblySpec, End, LengthBasis
from tagger.trade.results import Warning_
from tagger.trade.tables import Tables
from tagger.trade.tables import tables as our_tables

Reaches = tuple[float | None, float | None]
"""How far ends A and B reach from where the overall length is measured to the mouth of the shell, in mm."""


@dataclass(frozen=True)
class EndDimensions:
    """Where an end's measuring points lie along the hose, in mm from where the hose butts.

    ``None`` where the fitting maker's figure is not at hand. On a straight end there is no
    elbow's centreline; on an elbow the thread lies across the hose and has no end along it.
    """

    sealing_face: float | None = None
    thread_end: float | None = None
    elbow_centreline: float | None = None

    def at(self, basis: LengthBasis, end: End) -> float | None:
        """The point that a basis measures to: an elbow is measured to its centreline on every basis."""
        if end.is_elbow:
            return self.elbow_centreline
        if basis is LengthBasis.THREAD_END:
            return self.thread_end
        return self.sealing_face


def converted_length(spec: AssemblySpec, basis: LengthBasis, a: EndDimensions, b: EndDimensions) -> float:
    """The overall length by another basis, in mm.

    Raises TradeError naming the dimension that is missing.
    """
    cut = cut_length(spec, a, b)
    return round(cut + _point("end_a", spec.end_a, basis, a) + _point("end_b", spec.end_b, basis, b), 1)


def cut_length(spec: AssemblySpec, a: EndDimensions, b: EndDimensions) -> float:
    """The length to cut the hose to: overall length less what each end adds, in mm.

    Public engineering note on overall length of hose assemblies: OAL - C1 - C2.
    Raises TradeError where a dimension is missing or the ends are longer than the assembly.
    """
    adds = _point("end_a", spec.end_a, spec.length_basis, a) + _point(
        "end_b", spec.end_b, spec.length_basis, b
    )
    if adds >= spec.length_mm:
        raise TradeError(
            Problem("length_mm", spec.length_mm, Message("trade-length-too-short", ends=length(adds)))
        )
    return round(spec.length_mm - adds, 1)


def _point(name: str, end: End, basis: LengthBasis, dimensions: EndDimensions) -> float:
    found = dimensions.at(basis, end)
    if found is None:
        what = "elbow_centreline" if end.is_elbow else basis.replace("elbow_centreline", "sealing_face")
        raise TradeError(Problem(f"{name}.{what}", None, Message("trade-dimension-missing")))
    return found


@dataclass(frozen=True)
class Fit:
    """Whether a hose is long enough: the length it needs, and what is left over (negative: short)."""

    ok: bool
    needed_mm: float
    spare_mm: float


def u_bend_length(straight_a: float, straight_b: float, radius: float, travel: float = 0.0) -> float:
    """The least length of a U bend: both straight ends, half a circle, and the whole travel.

    ``straight_*`` is an end with the straight hose behind it, ``radius`` is to the hose's
    middle line, ``travel`` the movement of one end against the other; all mm.

    >>> round(u_bend_length(100, 100, 200, 300))
    1128
    """
    return straight_a + straight_b + math.pi * radius + travel


def u_bend_fit(
    length_mm: float,
    bend_radius_mm: float,
    hose_od_mm: float,
    ends_mm: tuple[float, float],
    travel_mm: float = 0.0,
    *,
    tables: Tables | None = None,
) -> Fit:
    """Whether a hose bent to a U at its least radius is long enough, its travel included.

    ``bend_radius_mm`` is to the inside of the bend, as hose standards give it; each end is
    followed by the straight hose that ``rules.csv`` asks for before a bend.
    """
    straight = (tables or our_tables()).rule("straight_before_bend").value * hose_od_mm
    needed = u_bend_length(
        ends_mm[0] + straight, ends_mm[1] + straight, bend_radius_mm + hose_od_mm / 2, travel_mm
    )
    return Fit(length_mm >= needed, round(needed, 1), round(length_mm - needed, 1))


def quarter_bend_length(bend_radius_mm: float, hose_od_mm: float, straight: float) -> float:
    """The hose a quarter circle takes, with straight hose at either side, in mm."""
    return math.pi / 2 * (bend_radius_mm + hose_od_mm / 2) + 2 * straight * hose_od_mm


def problems(spec: AssemblySpec, hose_od_mm: float | None, tables: Tables) -> list[Problem]:
    """Why the overall length cannot be: shorter than two crimped ends, or over 100 m and not confirmed."""
    found = []
    least = 2 * crimped_end_mm(spec, hose_od_mm, tables)
    if spec.length_mm < least:
        rule = tables.rule("crimped_end_least")
        short = Message("trade-length-under-ends", ends=length(round(least)), source=rule.source)
        found.append(Problem("length_mm", spec.length_mm, short))
    longest = tables.rule("length_unconfirmed_most").value
    if spec.length_mm > longest and not spec.length_confirmed:
        long = Message("trade-length-unconfirmed", length=length(spec.length_mm), most=length(longest))
        found.append(Problem("length_confirmed", None, long))
    return found


def crimped_end_mm(spec: AssemblySpec, hose_od_mm: float | None, tables: Tables) -> float:
    """What a crimped end takes of the length at least, in mm; by the bore where the outside is not known."""
    across = hose_od_mm if hose_od_mm is not None else tables.nominal_bore_mm(spec.hose)
    return tables.rule("crimped_end_least").value * across


def _free_hose(
    spec: AssemblySpec, hose_od_mm: float | None, tables: Tables, reaches_mm: Reaches
) -> list[Warning_]:
    """Said where less hose is left between the ends than the straight piece that each of them needs."""
    if hose_od_mm is None:
        return []
    rule = tables.rule("straight_before_bend")
    least = crimped_end_mm(spec, hose_od_mm, tables)
    free = spec.length_mm - sum(least if reach is None else reach for reach in reaches_mm)
    needed = 2 * rule.value * hose_od_mm
    if free >= needed:
        return []
    message = Message(
        "trade-little-free-hose", free=length(round(free)), needed=length(round(needed)), source=rule.source
    )
    return [Warning_(code="little_free_hose", field="length_mm", message=message)]


def warnings(
    spec: AssemblySpec,
    bend_radius_mm: float | None,
    hose_od_mm: float | None,
    tables: Tables,
    reaches_mm: Reaches = (None, None),
) -> list[Warning_]:
    """A hose too short to bend at all is said to be: it can only be fitted straight; so is too little free hose."""
    if found := _free_hose(spec, hose_od_mm, tables, reaches_mm):
        return found
    if bend_radius_mm is None or hose_od_mm is None:
        return []
    rule = tables.rule("straight_before_bend")
    needed = quarter_bend_length(bend_radius_mm, hose_od_mm, rule.value)
    if spec.length_mm >= needed:
        return []
    message = Message(
        "trade-too-short-to-bend",
        needed=length(round(needed)),
        length=length(spec.length_mm),
        source=rule.source,
    )
    return [Warning_(code="too_short_to_bend", field="length_mm", message=message, severity="note")]
