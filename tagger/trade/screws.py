"""Which screw a flange's torque belongs to.

One flange size is made with several screws, and a tag names the one its torque is for. An older tag
carries the torque alone: its range is looked up among the rows of the same family and size. A phone does
the same with ``table``.
"""

from __future__ import annotations

from functools import cache

from tagger.spec import End, Tightening
from tagger.trade.tables import tables

Entry = tuple[float | None, float, str]
"""Least and most torque in N·m, and the screw's thread."""


def screw_for(tightening: Tightening, end: End) -> str | None:
    """The screw a tag names, with its property class where one is known: "M10 10.9"; else the one its range tells."""
    if tightening.screw or tightening.torque_max_nm is None:
        return tightening.screw
    return screw_of(end, tightening.torque_min_nm, tightening.torque_max_nm)


def screw_of(end: End, torque_min_nm: float | None, torque_max_nm: float) -> str | None:
    """The screw that this range belongs to on this flange; None where no row, or rows of two screws, have it.

    >>> end = End(connection="flange_code62", dash=20, form="flange_head")
    >>> screw_of(end, 141.3, 172.7), screw_of(end, 85.5, 104.5)
    ('M14', None)
    """
    found = {
        screw
        for low, high, screw in table().get(f"{end.connection}|{end.size_key}", ())
        if _tenths(low) == _tenths(torque_min_nm) and _tenths(high) == _tenths(torque_max_nm)
    }
    return found.pop() if len(found) == 1 else None


@cache
def table() -> dict[str, tuple[Entry, ...]]:
    """The ranges of every flange, by "family|size"."""
    found: dict[str, dict[Entry, None]] = {}
    for family, rows in tables().tightening.items():
        for r in rows:
            if "cap_screw" in r.part and r.use == "hose" and r.screw and r.torque_max_nm is not None:
                entries = found.setdefault(f"{family}|{r.size}", {})
                entries[(r.torque_min_nm, r.torque_max_nm, r.screw)] = None
    return {key: tuple(entries) for key, entries in found.items()}


def _tenths(torque_nm: float | None) -> int | None:
    """As the payload carries it."""
    return None if torque_nm is None else round(torque_nm * 10)
