"""``tagger tables check``: proves that the tables hold together.

Every finding is a sentence. Thread arithmetic is that of ASME B1.1 and ISO 68-1
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

from tagger.spec import Connection, Form
from tagger.trade import rows as row
from tagger.trade.identifying.readings import SEATS
from tagger.trade.steps import CONDITIONS, PHASES, STEP_FIGURES
from tagger.trade.tables import KEYS, Tables, size_order
from tagger.trade.tables import tables as our_tables

UNIQUE = {
    **{name: KEYS[name] for name in ("families", "connections", "hose_standards", "hose_editions", "bores", "rules", "fit_steps")},
    "seats": ("family", "form", "seat"),
    "cones": ("family", "form"),
    "look_alikes": ("family", "other"),
    "hexes": ("family", "size", "hex_mm", "source"),
    "flanges": ("family", "size", "what"),
    "connection_pressure": ("family", "size", "forms", "shapes", "material", "applies_to", "source"),
    "hose_pressure": ("standard", "edition", "dash", "source", "printed"),
    "hose_bend": ("standard", "dash", "source", "printed"),
    "hose_size": ("standard", "dash", "source", "outside_diameter_mm"),
    "hose_fluids": ("standard", "fluid"),
    "tightening": ("family", "size", "part", "end_type", "material", "screw", "basis", "source"),
    "length_bands": ("bands", "over_mm", "from_bore_mm"),
}  # fmt: skip
FIGURES = {
    "connections": ("thread_od_mm", "pitch_mm", "female_minor_mm"),
    "hexes": ("hex_mm",),
    "flanges": ("value",),
    "connection_pressure": ("max_working_bar",),
    "hose_pressure": ("max_working_bar",),
    "hose_bend": ("bend_radius_mm",),
    "hose_size": ("bore_mm", "outside_diameter_mm", "mass_kg_m"),
    "hose_standards": ("min_temperature_c", "max_temperature_c"),
    "hose_fluids": ("min_temperature_c", "max_temperature_c"),
    "tightening": ("torque_min_nm", "torque_max_nm", "flats_min", "flats_max", "turns_min", "turns_max"),
    "bores": ("bore_mm",),
    "length_bands": ("minus", "plus"),
    "rules": ("value",),
}
"""The columns that hold figures; of these the share from memory is counted."""


def findings(tables: Tables | None = None) -> list[str]:
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
    """The share of figures that are from memory, 0 to 1."""
    counted = figures(tables)
    return counted["memory"] / sum(counted.values())


def summary(tables: Tables | None = None) -> str:
    """How many figures there are, and how sure they are."""
    counted = figures(tables)
    parts = ", ".join(f"{counted[c]} {c}" for c in row.CONFIDENCE if counted[c])
    return f"{sum(counted.values())} figures ({parts}; {memory_share(tables):.1%} from memory)"


def _duplicates(tables: Tables) -> Iterator[str]:
    for name, columns in UNIQUE.items():
        seen = Counter(tuple(getattr(item, c) for c in columns) for item in tables.raw[name])
        for key, count in seen.items():
            if count > 1:
                yield f"{name}: {count} rows for {_said(key)}"


def _sources(tables: Tables) -> Iterator[str]:
    for name, items in tables.raw.items():
        for item in items:
            if not item.source:
                yield f"{name}: a row has no source: {_said(_cells(item)[:3])}"
            confidence = getattr(item, "confidence", "published")
            if confidence not in row.CONFIDENCE:
                yield f"{name}: confidence {confidence!r} is not known: {_said(_cells(item)[:3])}"
            if confidence == "memory" and not item.source.startswith("memory"):
                yield f"{name}: a row from memory must say so in its source: {_said(_cells(item)[:3])}"


def _cells(item: Any) -> list[object]:
    return [getattr(item, f.name) for f in fields(item)]


def _threads(tables: Tables) -> Iterator[str]:
    for t in tables.threads.values():
        name = f"connections: {t.family} {t.size}"
        od, tpi = _designation(t.thread)
        if od is not None and abs(od - t.thread_od_mm) > 0.002:
            yield f"{name}: {t.thread} is {od:.3f} mm, the row says {t.thread_od_mm}"
        if tpi is not None and abs(25.4 / tpi - t.pitch_mm) > 0.001:
            yield f"{name}: {t.thread} has a pitch of {25.4 / tpi:.4f} mm, the row says {t.pitch_mm}"
        if t.tpi is not None and abs(25.4 / t.tpi - t.pitch_mm) > 0.001:
            yield f"{name}: {t.tpi:g} threads per inch and {t.pitch_mm} mm do not agree"
        height = {"un": 1.082532, "metric": 1.082532, "g": 1.280654, "r": 1.280654}.get(t.thread_form)
        if height and abs(t.thread_od_mm - height * t.pitch_mm - t.female_minor_mm) > 0.005:
            yield f"{name}: female minor {t.female_minor_mm} is not D - {height} P"
        if not 0 < t.female_minor_mm < t.thread_od_mm:
            yield f"{name}: female minor {t.female_minor_mm} is not below {t.thread_od_mm}"


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


def _pressures(tables: Tables) -> Iterator[str]:
    for name in ("connection_pressure", "hose_pressure"):
        for item in tables.raw[name]:
            figure, _, unit = item.printed.partition(" ")
            bar = float(figure) * (0.0689476 if unit == "psi" else 1.0)
            if abs(bar - item.max_working_bar) > 0.051:
                yield f"{name}: {item.printed} is {bar:.1f} bar, the row says {item.max_working_bar}"


def _monotone(tables: Tables) -> Iterator[str]:
    """Bigger sizes have bigger threads and bigger bends and never more pressure, in one source."""
    for family in tables.families:
        rising = [tables.threads[family, s] for s in tables.sizes(family) if (family, s) in tables.threads]
        for a, b in pairwise(rising):
            if not (
                a.thread_od_mm < b.thread_od_mm and size_order(family, a.size) < size_order(family, b.size)
            ):
                yield f"connections: {family} {b.size} is not larger than {a.size}"
    ends = [r for rows in tables.end_pressures.values() for r in rows if r.use == "rating"]
    yield from _rising(
        "connection_pressure",
        [
            ((r.family, r.forms, r.shapes, r.applies_to.split(",")[0], r.source), size_order(r.family, r.size),
             -r.max_working_bar)
            for r in ends
        ],
    )  # fmt: skip
    hoses = [r for rows in tables.hose_pressures.values() for r in rows]
    yield from _rising(
        "hose_pressure",
        [
            ((r.standard, r.edition, r.source, r.note), int(r.dash), -r.max_working_bar)
            for r in hoses if r.dash != "all" and r.in_standard == "yes" and r.confidence != "memory"
        ],
    )  # fmt: skip
    bends = [r for rows in tables.hose_bends.values() for r in rows if r.confidence != "memory"]
    yield from _rising("hose_bend", [((r.standard, r.source), int(r.dash), r.bend_radius_mm) for r in bends])
    bodies = [r for rows in tables.hose_sizes.values() for r in rows]
    yield from _rising(
        "hose_size", [((r.standard, r.source), int(r.dash), r.outside_diameter_mm) for r in bodies]
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
            ((r.family, r.end_type, r.material, r.source), size_order(r.family, r.size), r.torque_max_nm or 0.0)
            for r in torques if not r.note.startswith("out of order")
        ],
    )  # fmt: skip


def _bends(tables: Tables) -> Iterator[str]:
    """What is shown of a hose, the largest radius of all sources, does not fall as the hose grows.

    An exception needs two published sources that agree on the smaller figure.
    """
    for standard, rows in tables.hose_bends.items():
        found: dict[int, list[row.HoseBendRow]] = {}
        for r in rows:
            found.setdefault(int(r.dash), []).append(r)
        largest = {dash: max(r.bend_radius_mm for r in of) for dash, of in sorted(found.items())}
        for (small, before), (large, radius) in pairwise(largest.items()):
            published = [r for r in found[large] if r.confidence == "published"]
            agree = sum(abs(r.bend_radius_mm - radius) <= 0.01 * radius for r in published) > 1
            if radius < before and not agree:
                yield f"hose_bend: {standard} -{large} bends to {radius:g} mm, -{small} only to {before:g} mm"


def _rising(name: str, items: Iterable[tuple[object, float, float]]) -> Iterator[str]:
    """Within one source, figures rise with size or stay (pressures come negative); 1 % is rounding."""
    groups: dict[object, list[tuple[float, float]]] = {}
    for key, size, value in items:
        groups.setdefault(key, []).append((size, value))
    for key, pairs in groups.items():
        pairs.sort()
        for (before, low), (size, high) in pairwise(pairs):
            if size > before and high < low - 0.01 * abs(low):
                yield f"{name}: {_said((key,))} goes the wrong way at size {size:g}: {abs(low)} to {abs(high)}"


def _tightening(tables: Tables) -> Iterator[str]:
    for rows in tables.tightening.values():
        for r in rows:
            name = f"tightening: {r.family} {r.size} {r.end_type}, {r.source}"
            for low, high in (
                (r.torque_min_nm, r.torque_max_nm),
                (r.flats_min, r.flats_max),
                (r.turns_min, r.turns_max),
            ):
                if low is not None and high is not None and low > high:
                    yield f"{name}: {low} is above {high}"
            if r.family.is_taper and r.flats_max is not None:
                yield f"{name}: taper threads are not turned by flats"
            if r.flats_max is not None and not 0 < r.flats_max <= 6:
                yield f"{name}: {r.flats_max} flats"
            if r.basis not in ("finger_tight", "wrench_resistance", "not_stated", "torque"):
                yield f"{name}: basis {r.basis!r} is not known"


def _references(tables: Tables) -> Iterator[str]:
    """Every row speaks of a family, size, standard, form and seat that exists."""
    for name in ("hexes", "flanges", "connection_pressure", "tightening"):
        for item in tables.raw[name]:
            if item.size != "all" and item.size not in tables.sizes(item.family):
                yield f"{name}: {item.size} is not a size of {item.family}"
    for name in ("hose_pressure", "hose_bend", "hose_size", "hose_fluids", "hose_editions"):
        for item in tables.raw[name]:
            if item.standard not in tables.standards:
                yield f"{name}: {item.standard} is not among the standards"
    for standard in tables.standards:
        if standard not in tables.hose_pressures:
            yield f"hose_standards: {standard} has no pressure"
    for family in Connection:
        if family not in tables.families:
            yield f"families: {family} is missing"
    for item in tables.families.values():
        if bool(item.tighten_by) == item.family.is_taper:
            yield f"families: {item.family} needs what is turned, unless its thread is a taper"
        for form in item.forms:
            if form not in set(Form):
                yield f"families: {form} is not a form"
            shares = sum(s.share for s in tables.seats if s.family is item.family and s.form == form)
            if abs(shares - 1) > 1e-9:
                yield f"seats: the shares of {item.family} {form} are {shares}, not 1"
    for s in tables.seats:
        if s.seat not in SEATS:
            yield f"seats: {s.seat} is not a seat"


def _steps(tables: Tables) -> Iterator[str]:
    known = {"all", *Connection}
    for step in tables.steps:
        name = f"fit_steps: {step.step_id}"
        if step.condition not in CONDITIONS:
            yield f"{name}: condition {step.condition!r} is not known"
        if unknown := set(step.figures) - STEP_FIGURES:
            yield f"{name}: figures {_said(sorted(unknown))} are not known"
        if unknown := set(step.families) - known:
            yield f"{name}: families {_said(sorted(unknown))} are not known"
        if step.phase not in PHASES:
            yield f"{name}: phase {step.phase!r} is not known"


def _said(key: Iterable[object]) -> str:
    return ", ".join(" ".join(map(str, part)) if isinstance(part, tuple) else str(part) for part in key)
