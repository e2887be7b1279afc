"""How often ``identify`` is right, by what was measured: the table that the report on the tables prints.

Every connection of the tables is measured as often as another, with the slips of ``Errors``; chance starts
alike each time, so the table comes out the same. NPT and NPTF are one thread to a gauge and count as one.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from tagger.trade.identifying import likelihood, ranking, simulate
from tagger.trade.identifying.likelihood import Array, Errors, Pool
from tagger.trade.tables import Tables

SEED = 7
WAYS = tuple(
    "diameter" + more
    for more in ("", ", pitch", ", seat", ", pitch, seat", ", pitch, seat, cone", ", pitch, seat, cone, nose")
)
ASKED = "diameter, pitch, seat, and whatever is asked next"


@dataclass(frozen=True)
class Rate:
    """How often the part that was measured comes first, and among the first three; shares of 1.

    ``questions``: how many were asked and answered for it on average.
    """

    way: str
    first: float
    among_three: float
    measured: int
    questions: float = 0.0


def table(tables: Tables, each: int = 20) -> list[Rate]:
    """All ways of measuring, over all connections of the tables; ``each``: measurements a connection."""
    places = measurable(likelihood.pool(tables))
    measured = [rate(tables, places, name, each) for name in WAYS]
    return [*measured, rate_when_asked(tables, places, max(1, each // 4))]


def measurable(pool: Pool) -> list[int]:
    """The places of the pool of which the tables know a figure to measure."""
    known = np.any([~np.isnan(low).all(axis=1) for low in pool.low.values()], axis=0)
    return [int(n) for n in np.flatnonzero(known)]


def rate(tables: Tables, places: Sequence[int], way: str, each: int) -> Rate:
    """The rate of a way of measuring the connections at ``places`` of the pool."""
    pool, rng, errors = likelihood.pool(tables), np.random.default_rng(SEED), Errors()
    hits = np.zeros(2)
    for place in places:
        among = np.array([m for m in range(len(pool)) if pool.forms[m] is pool.forms[place]])
        taken = {name: name in way.split(", ") for name in ("pitch", "seat", "cone", "nose")}
        readings = simulate.readings(pool, place, each, rng, errors, **taken)
        for weights in likelihood.likelihoods(pool, readings, errors, among):
            order = ranking.order(pool, among, weights, None, tables).places
            hits += _hits(pool, place, among[order])
    count = len(places) * each
    return Rate(way, float(hits[0]) / count, float(hits[1]) / count, count)


def rate_when_asked(tables: Tables, places: Sequence[int], each: int) -> Rate:
    """The rate where diameter, pitch and seat are measured, and then all that is asked for."""
    pool, rng, errors = likelihood.pool(tables), np.random.default_rng(SEED), Errors()
    hits, questions = np.zeros(2), 0
    for place in places:
        for _ in range(each):
            begun = simulate.measurement(pool, place, rng, errors)
            order, asked = simulate.asked(pool, place, rng, errors, begun, tables)
            hits += _hits(pool, place, order)
            questions += asked
    count = len(places) * each
    return Rate(ASKED, float(hits[0]) / count, float(hits[1]) / count, count, questions / count)


def _hits(pool: Pool, place: int, order: Sequence[int] | Array) -> Array:
    """Whether ``place`` is first, and among the first three, of what a gauge tells apart."""
    ones = list(dict.fromkeys(pool.one[n] for n in order[:8]))
    return np.array([ones[0] == pool.one[place], pool.one[place] in ones[:3]], dtype=float)
