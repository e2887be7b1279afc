"""In which order candidates are told: by likelihood and, where measurements cannot tell, by the machine's origin.

Origin never makes a candidate more or less likely. It only says which of two that are as likely stands
first, and the answer says so. It never decides between a 37 and a 45 degree flare.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
import numpy.typing as npt

from tagger.spec import Connection
from tagger.trade.identifying.likelihood import Array, Pool
from tagger.trade.tables import Tables

TIE = 2.0  # times as likely: less than that and measurements cannot tell
FLARES = ("sae_37_flare", "sae_45_flare")


@dataclass(frozen=True)
class Order:
    """Places best first, and why: ``first`` stand before ``behind`` by their origin only, not by a measurement.

    ``origin``: where those are usual that stand first (``there``), or else where only the others are; empty
    where origin decided nothing of the first place.
    """

    places: npt.NDArray[np.int_]
    first: tuple[int, ...] = ()
    behind: tuple[int, ...] = ()
    origin: str = ""
    there: bool = False


def order(pool: Pool, among: Array, weights: Array, origin: str | None, tables: Tables) -> Order:
    """The candidates ``among`` in the order in which they are told, as places in ``weights``."""
    steps = in_steps(weights)
    by_likelihood = np.argsort(-steps, kind="stable")
    count = int((steps >= steps.max() - in_steps(np.array(TIE))).sum())
    tied = [int(n) for n in by_likelihood[:count]]
    families = {n: pool.families[int(among[n])] for n in tied}
    found = _by_origin(tied, families, origin, tables) if origin else _as_usual(tied, families, tables)
    return replace(found, places=np.concatenate([found.places, by_likelihood[count:]]))


def in_steps(weights: Array) -> Array:
    """Likelihoods as whole steps of their logarithm, a billionth each: what only rounding tells apart is as likely."""
    with np.errstate(divide="ignore"):
        found: Array = np.round(np.log(weights) * 1e9)
    return found


def _by_origin(tied: list[int], families: dict[int, Connection], origin: str, tables: Tables) -> Order:
    """Those first that are usual where the machine was made, and last those that are usual elsewhere only."""
    ranks = {n: _rank(families[n], origin, tables) for n in tied}
    places = np.array(sorted(tied, key=lambda n: ranks[n]))
    first = tuple(int(n) for n in places if ranks[int(n)] == min(ranks.values()))
    behind = tuple(int(n) for n in places[len(first) :])
    return Order(places, first, behind, origin if behind else "", there=True)


def _rank(family: Connection, origin: str, tables: Tables) -> int:
    usual = {r.origin for r in tables.origins if r.family is family}
    if family in FLARES or not usual:
        return 1
    return 0 if origin in usual else 2


def _as_usual(tied: list[int], families: dict[int, Connection], tables: Tables) -> Order:
    """As they come, but a family that is usual in one place only stands behind the one it is taken for."""
    places = list(tied)
    why = Order(np.array(tied))
    for row in (r for r in tables.origins if r.behind):
        before = tuple(n for n in tied if families[n] is row.behind)
        after = tuple(n for n in tied if families[n] is row.family)
        if not before or not after:
            continue
        places = [n for n in places if n not in after]
        last = max(places.index(n) for n in before) + 1
        places[last:last] = after
        if places[0] in before:
            why = Order(why.places, before, after, row.origin)
    return replace(why, places=np.array(places))
