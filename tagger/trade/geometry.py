"""Lengths and their tolerances, clocking, bend radius, and whether they go together.

All lengths in mm. Bend radius is measured to the inside of the bend (EN 853:2015).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from statistics import median

from tagger.messages import Message, length
from tagger.spec import AssemblySpec, Hose
from tagger.trade import rows as row
from tagger.trade.results import LengthTolerance, Warning_
from tagger.trade.tables import Bands as Bands
from tagger.trade.tables import Tables
from tagger.units import MM_PER_INCH


def bore_mm(hose: Hose, tables: Tables) -> float:
    """Nominal bore: as printed for the standard and dash, else by the dash and what it names."""
    found = [r.bore_mm for r in tables.sizes_of(hose) if r.bore_mm is not None]
    if found:
        return median(found)
    return tables.nominal_bore_mm(hose)


def length_tolerance(
    length_mm: float, hose: Hose, tables: Tables, bands: Bands | None = None
) -> LengthTolerance | None:
    """How much shorter and longer an assembly may be.

    ``bands``: SAE J517's or DIN 20066's; by default the shop's own choice, else those of the
    hose's standard.
    None where no source gives a band for that length and bore.
    """
    standard = tables.standard_of(hose.standard)
    bands = bands or tables.bands or (standard.bands if standard else "din")
    bore = bore_mm(hose, tables)
    for band in tables.length_bands:
        if band.bands == bands and _within(band, length_mm, bore):
            return LengthTolerance(
                minus=_in_mm(band.minus, band, length_mm),
                plus=_in_mm(band.plus, band, length_mm),
                source=band.source,
                confidence=band.confidence,
            )
    return None


def clocking_tolerance(spec: AssemblySpec, tables: Tables) -> row.Rule | None:
    """The rule that says how many degrees either way; None unless both ends are elbows."""
    if spec.clocking_deg is None:
        return None
    short = spec.length_mm <= tables.rule("clocking_short_mm").value
    return tables.rule("clocking_short_deg" if short else "clocking_long_deg")


@dataclass(frozen=True)
class BendRadius:
    """The minimum bend radius in mm, to the inside of the bend; None, and no source, where not known."""

    mm: float | None
    source: str = ""
    printed: str = ""


def bend_radius(hose: Hose, tables: Tables) -> tuple[BendRadius, list[Warning_]]:
    """The minimum bend radius: the larger where sources differ."""
    found = tables.bends_of(hose)
    if not found:
        unknown = Warning_(code="bend_not_known", field="hose", message=Message("trade-bend-not-known"))
        return BendRadius(None), [unknown]
    large = max(found, key=lambda r: (r.bend_radius_mm, r.confidence != "memory"))
    warnings = []
    if large.confidence == "memory":
        message = Message(
            "trade-bend-unverified",
            radius=length(large.bend_radius_mm),
            source=large.source,
        )
        warnings.append(Warning_(code="bend_from_memory", field="hose", message=message, severity="note"))
    return BendRadius(large.bend_radius_mm, large.source, large.printed), warnings


@dataclass(frozen=True)
class OutsideDiameter:
    """A hose's outside diameter in mm; ``basis`` says how it was taken from several sources."""

    mm: float | None
    source: str = ""
    basis: Message | None = None


def outside_diameter(hose: Hose, tables: Tables) -> OutsideDiameter:
    """The median of the outside diameters printed for the hose, with their sources."""
    found = tables.sizes_of(hose)
    if not found:
        return OutsideDiameter(None)
    figures = sorted(r.outside_diameter_mm for r in found)
    middle = round(median(figures), 1)
    source = "; ".join(dict.fromkeys(r.source for r in found))
    if len(figures) == 1:
        return OutsideDiameter(middle, source)
    low, high = length(figures[0]), length(figures[-1])
    return OutsideDiameter(middle, source, Message("trade-median", count=len(figures), low=low, high=high))


def _within(band: row.LengthBand, length_mm: float, bore: float) -> bool:
    longer = length_mm > band.over_mm or band.over_mm == 0
    return (
        longer
        and (band.to_mm is None or length_mm <= band.to_mm)
        and (bore > band.from_bore_mm or band.from_bore_mm == 0)
        and bore <= band.to_bore_mm
    )


def _in_mm(figure: float, band: row.LengthBand, length_mm: float) -> float:
    if band.unit == "percent":
        return round(figure * length_mm / 100, 1)
    return round(figure * MM_PER_INCH, 1) if band.unit == "in" else figure


def hose_mass_kg(length_mm: float, hose: Hose, tables: Tables) -> float | None:
    """The mass of the hose over that length, without fittings and oil; None where none is printed."""
    printed = [r.mass_kg_m for r in tables.sizes_of(hose) if r.mass_kg_m is not None]
    return round(median(printed) * length_mm / 1000, 2) if printed else None


def content_l(length_mm: float, hose: Hose, tables: Tables) -> float:
    """What the hose holds over that length, by its nominal bore, in litres."""
    return round(math.pi / 4 * bore_mm(hose, tables) ** 2 * length_mm / 1e6, 3)
