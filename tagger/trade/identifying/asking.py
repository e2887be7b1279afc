"""What to measure next: what separates the candidates that remain, of what the builder can measure."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from tagger.messages import Message
from tagger.spec import Connection
from tagger.trade.identifying import likelihood
from tagger.trade.identifying.likelihood import Array, Errors, Pool
from tagger.trade.identifying.readings import ASKED, Measurements
from tagger.trade.tables import Tables

WORTH_MEASURING = 0.02  # bits
_PICTURES = {"seat": "seat_gauge", "cone": "cone", "tpi": "thread_gauge", "flank": "thread_gauge"}
"""The rest takes a caliper."""


@dataclass(frozen=True)
class Next:
    """The measurement that separates the candidates best; ``bits`` is what it is expected to tell."""

    feature: str
    what: Message
    why: Message
    picture: str
    bits: float


def most_telling(
    pool: Pool, among: Array, weights: Array, measured: Measurements, errors: Errors
) -> tuple[str, float] | None:
    """The feature to measure, and what it is expected to tell in bits; None where nothing helps.

    ``among`` and ``weights``: the candidates worth separating. What was read more roughly than is usual, as said
    beside the reading, is worth measuring again.
    """
    usual = replace(errors, said=())
    rough = {feature for feature, slip in measured.slips if slip > usual.of(feature)}
    closed = {*(measured.readings().keys() - rough), *measured.cannot, "series"}
    told = {f: likelihood.information(pool, f, among, weights, usual) for f in ASKED if f not in closed}
    if not told or max(told.values()) < WORTH_MEASURING:
        return None
    best = max(told, key=lambda f: told[f])
    return best, told[best]


def asked(found: tuple[str, float], names: list[Message]) -> Next:
    """The question in words; ``names`` are the candidates that it separates."""
    feature, bits = found
    why = Message("identify-ask-why", names=tuple(names))
    return Next(feature, Message(f"identify-ask-{feature}"), why, _picture(feature), round(bits, 3))


def series(pool: Pool, place: int, measured: Measurements, tables: Tables) -> Next | None:
    """Which series a stud is, where one thread is made in two: no thread gauge tells it."""
    family = pool.families[place]
    several = series_of(family, pool.sizes[place], tables)
    known = measured.series is not None or "series" in measured.cannot
    if known or len(several) < 2 or pool.forms[place].is_female_thread:
        return None
    bits = float(np.log2(len(several)))
    return Next("series", Message("identify-ask-series"), Message("identify-ask-series-why"), "none", bits)


def series_of(family: Connection, size: str, tables: Tables) -> tuple[str, ...]:
    """The series that a size of a family is made in: a plain tube of some diameters in one only."""
    plain = {r.series for r in tables.plain_ends.get((family, size), ()) if r.series}
    return tuple(sorted(plain)) or tables.families[family].series


def _picture(feature: str) -> str:
    return _PICTURES.get(feature, "caliper")
