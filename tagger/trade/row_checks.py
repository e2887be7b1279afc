"""A shop's own row that contradicts itself: said by column, before any figure of it is used.

A figure in bar against the figure as its source prints it, a minimum above its maximum, a figure that is
negative or typed in another unit, a row without a source. ``validate`` checks the tables as a whole.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator
from typing import Any

from tagger.errors import UnitError
from tagger.messages import Message
from tagger.spec import Basis, Sizing
from tagger.units import read_length_mm, read_pressure_bar

SLIP_BAR = 1000.0  # above this no hose or end of the tables works: a figure in another unit
MOST_BAR = 3000.0  # what a tag can carry
_SAME = 0.003  # one figure printed in two units

_POSITIVE = {
    "connections": ("thread_od_mm", "pitch_mm", "female_minor_mm"),
    "hexes": ("hex_mm",),
    "connection_pressure": ("max_working_bar",),
    "hose_pressure": ("max_working_bar",),
    "hose_bend": ("bend_radius_mm",),
    "hose_size": ("bore_mm", "outside_diameter_mm", "mass_kg_m"),
    "hose_vacuum": ("vacuum_bar",),
    "hose_layers": ("layers_min", "layers_max"),
    "bores": ("bore_mm",),
    "tightening": ("torque_min_nm", "torque_max_nm", "flats_min", "flats_max", "turns_min", "turns_max"),
    "screw_torques": ("torque_min_nm", "torque_max_nm"),
}
_RANGES = {
    "tightening": (
        ("torque_min_nm", "torque_max_nm"),
        ("flats_min", "flats_max"),
        ("turns_min", "turns_max"),
    ),
    "screw_torques": (("torque_min_nm", "torque_max_nm"),),
    "hose_standards": (("min_temperature_c", "max_temperature_c"),),
    "hose_fluids": (("min_temperature_c", "max_temperature_c"),),
    "hose_size": (("bore_mm", "outside_diameter_mm"),),
    "hose_layers": (("layers_min", "layers_max"),),
    "connections": (("female_minor_mm", "thread_od_mm"),),
    "length_bands": (("over_mm", "to_mm"), ("from_bore_mm", "to_bore_mm")),
}
_MOST = {"torque_max_nm": 1600.0, "flats_max": 6.0, "vacuum_bar": 1.0, "max_temperature_c": 400.0}
"""The most that can be meant; more is a figure in another unit."""
_PRINTED: dict[str, tuple[str, Callable[[object], float]]] = {
    "connection_pressure": ("max_working_bar", read_pressure_bar),
    "hose_pressure": ("max_working_bar", read_pressure_bar),
    "hose_bend": ("bend_radius_mm", read_length_mm),
}


def wrong(table: str, row: Any, standards: Collection[str] = ()) -> Iterator[tuple[str, Message]]:
    """What is wrong with a row of a table, by its column; ``standards``: the hose standards of the tables."""
    for column in _POSITIVE.get(table, ()):
        if (figure := getattr(row, column)) is not None and figure <= 0:
            yield column, Message("trade-row-not-above-zero")
    for low, high in _RANGES.get(table, ()):
        least, most = getattr(row, low), getattr(row, high)
        if least is not None and most is not None and least > most:
            yield low, Message("trade-row-range", low=least, high=most)
    for column, limit in _MOST.items():
        if (figure := getattr(row, column, None)) is not None and figure > limit:
            yield column, Message("trade-row-above-possible", limit=limit)
    if not getattr(row, "source", "a table without sources"):
        yield "source", Message("trade-row-no-source")
    if table == "length_bands":
        yield from (
            (name, Message("trade-row-negative")) for name in ("minus", "plus") if getattr(row, name) < 0
        )
    if table == "tightening":
        yield from _tightening(row)
    if table in ("connection_pressure", "hose_pressure"):
        yield from _too_high(row, standards)
    if table in _PRINTED:
        yield from _against_printed(row, *_PRINTED[table])


def printed_agrees(given: float, printed: float) -> bool:
    """Whether a figure is the one that is printed, in another unit or to a tenth."""
    return abs(given - printed) <= max(0.051, _SAME * printed)


def _against_printed(row: Any, column: str, read: Callable[[object], float]) -> Iterator[tuple[str, Message]]:
    if not row.printed:
        return
    try:
        printed = read(row.printed)
    except UnitError:
        yield "printed", Message("trade-row-printed-not-read")
        return
    given = getattr(row, column)
    if not printed_agrees(given, printed):
        found = round(printed, 1)
        yield (
            column,
            Message("trade-row-printed", column=column, printed=row.printed, found=found, given=given),
        )


def _too_high(row: Any, standards: Collection[str]) -> Iterator[tuple[str, Message]]:
    family = getattr(row, "family", None)
    known = row.standard in standards if family is None else family.sized_by is not Sizing.WORDS
    limit = SLIP_BAR if known else MOST_BAR
    if row.max_working_bar > limit:
        yield "max_working_bar", Message("trade-row-above-possible", limit=limit)


def _tightening(row: Any) -> Iterator[tuple[str, Message]]:
    if row.torque_min_nm is not None and row.torque_max_nm is None:
        yield "torque_max_nm", Message("trade-row-no-maximum")
    if row.family.is_taper and row.flats_max is not None:
        yield "flats_max", Message("trade-row-taper-flats")
    if row.basis not in set(Basis):
        yield "basis", Message("trade-row-unknown-word", words=tuple(map(str, Basis)))
