"""``tagger tables check``: prove that the tables are consistent.

Every finding is a message. Thread arithmetic is that of ASME B1.1 and ISO 68-1
(D1 = D - 1.082532 P) and ISO 228-1 (D1 = D - 1.280654 P).
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import fields
from fractions import Fraction
from itertools import pairwise
from typing import Any

from tagger.messages import Message
from tagger.spec import Basis, Connection, Form, Sizing
from tagger.trade import rows as row
from tagger.trade.identifying.readings import ORIGINS, SEATS
from tagger.trade.steps import CONDITIONS, PHASES, SCREENS, STEP_FIGURES
from tagger.trade.tables import KEYS, Tables, size_order
from tagger.trade.tables import tables as our_tables
from tagger.units import read_pressure_bar

UNIQUE = {
    **{name: KEYS[name] for name in ("families", "connections", "plain_ends", "hose_standards", "hose_editions", "bores", "rules", "fit_steps")},
    "seats": ("family", "form", "seat"),
    "cones": ("family", "form"),
    "origins": ("origin", "family"),
    "motions": ("family", "form"),
    "look_alikes": ("family", "other"),
    "hexes": ("family", "size", "hex_mm", "source"),
    "flanges": ("family", "size", "what"),
    "connection_pressure": ("family", "size", "series", "forms", "shapes", "material", "applies_to", "source", "fluid"),
    "hose_pressure": ("standard", "edition", "dash", "source", "printed", "part", "fluid"),
    "hose_bend": ("standard", "dash", "source", "printed"),
    "hose_size": ("standard", "dash", "source", "outside_diameter_mm"),
    "hose_fluids": ("standard", "fluid", "part"),
    "same_hose": ("standard", "other"),
    "hose_vacuum": ("standard", "dash", "source"),
    "hose_layers": ("standard", "kind", "source"),
    "tightening": ("family", "size", "series", "part", "end_type", "material", "screw", "screw_class",
                   "basis", "source"),
    "screw_classes": ("family", "screw_class"),
    "screw_torques": ("screw", "screw_class", "torque_min_nm", "source", "condition"),
    "length_bands": ("bands", "over_mm", "from_bore_mm"),
}  # fmt: skip
FIGURES = {
    "connections": ("thread_od_mm", "pitch_mm", "female_minor_mm"),
    "plain_ends": ("diameter_min_mm",),
    "hexes": ("hex_mm",),
    "flanges": ("value",),
    "connection_pressure": ("max_working_bar",),
    "hose_pressure": ("max_working_bar",),
    "hose_bend": ("bend_radius_mm",),
    "hose_size": ("bore_mm", "outside_diameter_mm", "mass_kg_m"),
    "hose_standards": ("min_temperature_c", "max_temperature_c"),
    "hose_fluids": ("min_temperature_c", "max_temperature_c"),
    "tightening": ("torque_min_nm", "torque_max_nm", "flats_min", "flats_max", "turns_min", "turns_max"),
    "screw_torques": ("torque_min_nm", "torque_max_nm"),
    "hose_vacuum": ("vacuum_bar",),
    "bores": ("bore_mm",),
    "length_bands": ("minus", "plus"),
    "rules": ("value",),
}
"""The columns that hold figures; of these the share from memory is counted."""


def findings(tables: Tables | None = None) -> list[Message]:
    """What is wrong with the tables; empty when nothing is."""
    tables = tables or our_tables()
    return [
        *_duplicates(tables),
        *_sources(tables),
        *_threads(tables),
        *_pressures(tables),
        *_monotone(tables),
        *_bends(tables),
        *_tightening(tables),
        *_references(tables),
        *_steps(tables),
    ]


def figures(tables: Tables | None = None) -> Counter[str]:
    """How many figures the tables hold, by confidence."""
    tables = tables or our_tables()
    counted: Counter[str] = Counter()
    for name, columns in FIGURES.items():
        for item in tables.raw[name]:
            counted[item.confidence] += sum(getattr(item, c) not in (None, "") for c in columns)
    return counted


def memory_share(tables: Tables | None = None) -> float:
    """The share of figures that are from memory or by judgement, 0 to 1."""
    counted = figures(tables)
    return sum(counted[c] for c in row.UNVERIFIED) / sum(counted.values())


def summary(tables: Tables | None = None) -> str:
    """How many figures there are, and how sure they are."""
    counted = figures(tables)
    parts = ", ".join(f"{counted[c]} {c}" for c in row.CONFIDENCE if counted[c])
    return (
        f"{sum(counted.values())} figures ({parts}; {memory_share(tables):.1%} from memory or by judgement)"
    )


def _duplicates(tables: Tables) -> Iterator[Message]:
    for name, columns in UNIQUE.items():
        seen = Counter(tuple(getattr(item, c) for c in columns) for item in tables.raw[name])
        for key, count in seen.items():
            if count > 1:
                yield Message("trade-check-duplicate", row=_row(name, *key), count=count)


def _sources(tables: Tables) -> Iterator[Message]:
    for name, items in tables.raw.items():
        for item in items:
            at = _row(name, *_cells(item)[:3])
            if not item.source:
                yield Message("trade-check-no-source", row=at)
            confidence = getattr(item, "confidence", "published")
            if confidence not in row.CONFIDENCE:
                yield _unknown(at, "confidence", confidence)
            if confidence in row.UNVERIFIED and not item.source.startswith(confidence):
                yield Message("trade-check-memory-source", row=at)


def _cells(item: Any) -> list[object]:
    return [getattr(item, f.name) for f in fields(item)]


def _threads(tables: Tables) -> Iterator[Message]:
    for t in tables.threads.values():
        at = _row("connections", t.family, t.size)
        od, tpi = _designation(t.thread)
        if od is not None and abs(od - t.thread_od_mm) > 0.002:
            yield Message("trade-check-diameter", row=at, thread=t.thread, found=od, given=t.thread_od_mm)
        if tpi is not None and abs(25.4 / tpi - t.pitch_mm) > 0.001:
            yield Message("trade-check-pitch", row=at, thread=t.thread, found=25.4 / tpi, given=t.pitch_mm)
        if t.tpi is not None and abs(25.4 / t.tpi - t.pitch_mm) > 0.001:
            yield Message("trade-check-tpi", row=at, tpi=t.tpi, given=t.pitch_mm)
        height = {"un": 1.082532, "metric": 1.082532, "g": 1.280654, "r": 1.280654}.get(t.thread_form)
        if height and abs(t.thread_od_mm - height * t.pitch_mm - t.female_minor_mm) > 0.005:
            yield Message("trade-check-minor", row=at, given=t.female_minor_mm, height=str(height))
        if not 0 < t.female_minor_mm < t.thread_od_mm:
            yield Message("trade-check-minor-size", row=at, given=t.female_minor_mm, od=t.thread_od_mm)


def _designation(thread: str) -> tuple[float | None, float | None]:
    """Diameter in mm and threads per inch that a thread's name says; pipe names say no diameter.

    >>> _designation("1 1/16-12 UN"), _designation("M22x1.5")[0], _designation("G1/2-14")
    ((26.9875, 12.0), 22.0, (None, 14.0))
    """
    if match := re.match(r"M(\d+)x([\d.]+)$", thread):
        return float(match[1]), 25.4 / float(match[2])
    if match := re.match(r"([GR])?([\d /]+)-(\d+)( 1/2)?", thread):
        tpi = float(match[3]) + (0.5 if match[4] else 0.0)
        pipe = match[1] or "NP" in thread
        inches = sum(Fraction(part) for part in match[2].split())
        return (None if pipe else float(inches * 254 / 10)), tpi
    return None, None


def _pressures(tables: Tables) -> Iterator[Message]:
    for name in ("connection_pressure", "hose_pressure"):
        for item in tables.raw[name]:
            if item.confidence == "shop":  # checked when it was loaded
                continue
            bar = read_pressure_bar(item.printed)
            if abs(bar - item.max_working_bar) > 0.051:
                yield Message(
                    "trade-check-pressure",
                    row=_row(name, *_cells(item)[:3]),
                    printed=item.printed,
                    found=round(bar, 1),
                    given=item.max_working_bar,
                )


def _monotone(tables: Tables) -> Iterator[Message]:
    """Bigger sizes have bigger threads and bigger bends and never more pressure, in one source."""
    for family in tables.families:
        rising = [tables.threads[family, s] for s in tables.sizes(family) if (family, s) in tables.threads]
        for a, b in pairwise(rising):
            if not (
                a.thread_od_mm < b.thread_od_mm and size_order(family, a.size) < size_order(family, b.size)
            ):
                yield Message(
                    "trade-check-not-larger", row=_row("connections", family, b.size), smaller=a.size
                )
    ends = [
        r
        for rows in tables.end_pressures.values()
        for r in rows
        if r.use == "rating" and r.confidence != "shop"
    ]
    yield from _rising(
        "connection_pressure",
        [
            (
                (r.family, r.series, r.forms, r.shapes, r.applies_to.split(",")[0], r.source),
                size_order(r.family, r.size),
                -r.max_working_bar,
            )
            for r in ends
        ],
    )
    hoses = [r for rows in tables.hose_pressures.values() for r in rows]
    yield from _rising(
        "hose_pressure",
        [
            ((r.standard, r.edition, r.source, r.note), int(r.dash), -r.max_working_bar)
            for r in hoses
            if r.dash != "all" and r.in_standard == "yes" and r.confidence not in ("memory", "shop")
        ],
    )
    bends = [r for rows in tables.hose_bends.values() for r in rows if r.confidence != "memory"]
    yield from _rising(
        "hose_bend", [((r.standard, r.source, r.part), int(r.dash), r.bend_radius_mm) for r in bends]
    )
    bodies = [r for rows in tables.hose_sizes.values() for r in rows]
    yield from _rising(
        "hose_size", [((r.standard, r.source, r.part), int(r.dash), r.outside_diameter_mm) for r in bodies]
    )
    torques = [
        r
        for rows in tables.tightening.values()
        for r in rows
        if r.size != "all" and r.torque_max_nm is not None
    ]
    yield from _rising(
        "tightening",
        [
            (
                (r.family, r.end_type, r.material, r.source),
                size_order(r.family, r.size),
                r.torque_max_nm or 0.0,
            )
            for r in torques
            if not r.note.startswith("out of order")
        ],
    )


def _bends(tables: Tables) -> Iterator[Message]:
    """What is shown of a hose, the largest radius of all sources, does not fall as the hose grows.

    An exception needs two published sources that agree on the smaller figure.
    """
    for standard, rows in tables.hose_bends.items():
        found: dict[int, list[row.HoseBendRow]] = {}
        for r in rows:
            if not r.part:
                found.setdefault(int(r.dash), []).append(r)
        largest = {dash: max(r.bend_radius_mm for r in of) for dash, of in sorted(found.items())}
        for (small, before), (large, radius) in pairwise(largest.items()):
            published = [r for r in found[large] if r.confidence == "published"]
            agree = sum(abs(r.bend_radius_mm - radius) <= 0.01 * radius for r in published) > 1
            if radius < before and not agree:
                at = _row("hose_bend", standard, large)
                yield Message("trade-check-bend", row=at, radius=radius, small=small, before=before)


def _rising(name: str, items: Iterable[tuple[object, float, float]]) -> Iterator[Message]:
    """Within one source, figures rise with size or stay (pressures come negative); 1 % is rounding."""
    groups: dict[object, list[tuple[float, float]]] = {}
    for key, size, value in items:
        groups.setdefault(key, []).append((size, value))
    for key, pairs in groups.items():
        pairs.sort()
        for (before, low), (size, high) in pairwise(pairs):
            if size > before and high < low - 0.01 * abs(low):
                at = _row(name, key)
                yield Message("trade-check-wrong-way", row=at, size=size, before=abs(low), after=abs(high))


def _tightening(tables: Tables) -> Iterator[Message]:
    for rows in tables.tightening.values():
        for r in rows:
            at = _row("tightening", r.family, r.size, r.end_type, r.source)
            for low, high in (
                (r.torque_min_nm, r.torque_max_nm),
                (r.flats_min, r.flats_max),
                (r.turns_min, r.turns_max),
            ):
                if low is not None and high is not None and low > high:
                    yield Message("trade-check-range", row=at, low=low, high=high)
            if r.family.is_taper and r.flats_max is not None:
                yield Message("trade-check-taper-flats", row=at)
            if r.flats_max is not None and not 0 < r.flats_max <= 6:
                yield Message("trade-check-flats", row=at, flats=r.flats_max)
            if r.basis not in set(Basis):
                yield _unknown(at, "basis", r.basis)


def _references(tables: Tables) -> Iterator[Message]:
    """Every row speaks of a family, size, standard, form and seat that exists."""
    for name in ("hexes", "flanges", "connection_pressure", "tightening"):
        for item in tables.raw[name]:
            in_words = item.family.sized_by is Sizing.WORDS
            if not in_words and item.size != "all" and item.size not in tables.sizes(item.family):
                yield Message("trade-check-not-a-size", row=_row(name, item.family), size=item.size)
    for name in ("hose_pressure", "hose_bend", "hose_size", "hose_fluids", "hose_editions"):
        for item in tables.raw[name]:
            if item.standard not in tables.standards and item.confidence != "shop":
                yield Message("trade-check-not-a-standard", row=_row(name, item.standard))
    for pair in tables.raw["same_hose"]:
        for standard in {pair.standard, pair.other} - tables.standards.keys():
            yield Message("trade-check-not-a-standard", row=_row("same_hose", standard))
    for standard in tables.standards:
        if standard not in tables.hose_pressures:
            yield Message("trade-check-no-pressure", row=_row("hose_standards", standard))
    yield from _families(tables)
    for s in tables.seats:
        if s.seat not in SEATS:
            yield _unknown(_row("seats", s.family, s.form), "seat", s.seat)
    for r in tables.origins:
        if r.origin not in ORIGINS:
            yield _unknown(_row("origins", r.family), "origin", r.origin)


def _families(tables: Tables) -> Iterator[Message]:
    """Every family is there, with what is turned, known forms, and seats that add up."""
    for family in Connection:
        if family not in tables.families:
            yield Message("trade-check-no-family", row=_row("families", family))
    for item in tables.families.values():
        at = _row("families", item.family)
        if bool(item.tighten_by) == (item.family.is_taper or item.family.is_latched):
            yield Message("trade-check-tighten-by", row=at)
        for form in item.forms:
            if form not in set(Form):
                yield _unknown(at, "forms", form)
            if not item.family.is_flange and not any(f is item.family for f, _ in tables.threads):
                continue  # no seat to gauge: a coupler, a staple, a plain tube, or no family at all
            shares = sum(s.share for s in tables.seats if s.family is item.family and s.form == form)
            if abs(shares - 1) > 1e-9:
                yield Message("trade-check-shares", row=_row("seats", item.family, form), sum=shares)


def _steps(tables: Tables) -> Iterator[Message]:
    known = {"all", *Connection}
    for step in tables.steps:
        at = _row("fit_steps", step.step_id)
        if step.condition not in CONDITIONS:
            yield _unknown(at, "condition", step.condition)
        for figure in sorted(set(step.figures) - STEP_FIGURES):
            yield _unknown(at, "figures", figure)
        for family in sorted(set(step.families) - known):
            yield _unknown(at, "families", family)
        if step.phase not in PHASES:
            yield _unknown(at, "phase", step.phase)
        elif step.screen and step.screen not in SCREENS[step.phase]:
            yield _unknown(at, "screen", step.screen)


def _unknown(at: str, column: str, given: str) -> Message:
    return Message("trade-check-unknown-word", row=at, column=column, given=given)


def _row(table: str, *key: object) -> str:
    """A row by its table and the cells that name it: "connections sae_37_flare 12"."""
    return " ".join([table, *(_cell(part) for part in key)])


def _cell(part: object) -> str:
    return " ".join(_cell(each) for each in part) if isinstance(part, tuple) else str(part)
