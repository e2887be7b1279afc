"""Which joint a carried torque is of, in a family that is made with a nut on a cone and as a stud (BSPP).

Tags printed by an earlier version carry the nut's torque on a stud too, which leaves a stud in a port loose.
The range tells it: it is looked up among the nut's. A phone does the same with ``nuts``.
"""

from __future__ import annotations

from functools import cache

from tagger.spec import Connection, End, Form, Tightening
from tagger.trade.tables import Tables, tables

Range = tuple[float | None, float]


WITHOUT_NUT = (Form.MALE, Form.FEMALE_FIXED)


def studs(tables: Tables) -> tuple[Connection, ...]:
    """The families that are made with a nut on a cone and as a stud; not ends of no family, of which nothing is known."""
    both = {"nut", "stud"}
    return tuple(
        name for name, about in tables.families.items() if both <= set(about.tighten_by) and name != "other"
    )


def is_stud_of_two(end: End, tables: Tables) -> bool:
    """Whether a torque on this end is that of a stud, and too high for the nut of the same family."""
    return end.form in WITHOUT_NUT and end.connection in studs(tables)


def is_of_nut(tightening: Tightening, end: End) -> bool:
    """Whether an end without a nut carries the torque of a nut.

    >>> male = End(connection="bspp", size="1/4", form="male")
    >>> is_of_nut(Tightening(torque_min_nm=24.5, torque_max_nm=24.5), male)
    True
    >>> is_of_nut(Tightening(torque_min_nm=34, torque_max_nm=34), male)
    False
    """
    if end.form not in WITHOUT_NUT or tightening.torque_max_nm is None:
        return False
    carried = _tenths(tightening.torque_min_nm), _tenths(tightening.torque_max_nm)
    ranges = nuts().get(f"{end.connection}|{end.size_key}", ())
    return any((_tenths(low), _tenths(high)) == carried for low, high in ranges)


@cache
def nuts() -> dict[str, tuple[Range, ...]]:
    """The torques of the nuts in N·m, by "family|size", where a family is made with a nut and as a stud."""
    found: dict[str, dict[Range, None]] = {}
    for about in tables().families.values():
        if not {"nut", "stud"} <= set(about.tighten_by):
            continue
        for r in tables().tightening.get(about.family, ()):
            if "nut" in r.part and r.use == "hose" and r.torque_max_nm is not None:
                found.setdefault(f"{r.family}|{r.size}", {})[(r.torque_min_nm, r.torque_max_nm)] = None
    return {key: tuple(ranges) for key, ranges in found.items()}


def _tenths(torque_nm: float | None) -> int | None:
    """As the payload carries it."""
    return None if torque_nm is None else round(torque_nm * 10)
