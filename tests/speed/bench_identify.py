"""How often ``identify`` is right, and how fast: ``python -m tests.speed.bench_identify``.

Prints the table of tagger/trade/README.md. ``--each N`` simulates N measurements a family and
way of measuring; chance starts alike each time, so the table comes out the same.
"""

from __future__ import annotations

import argparse
import time

import numpy as np

from tagger.trade.identifying import likelihood, simulate
from tagger.trade.identifying.identify import identify
from tagger.trade.identifying.likelihood import Errors, Pool
from tagger.trade.tables import tables

WAYS = {
    "diameter, pitch, seat": {"pitch": True, "seat": True},
    "diameter, seat": {"pitch": False, "seat": True},
    "diameter, pitch": {"pitch": True, "seat": False},
    "diameter, pitch, seat, cone, tube": {"pitch": True, "seat": True, "cone": True, "tube": True},
}
SEED = 7
Rates = tuple[float, float]


def rates(pool: Pool, family: str, each: int, rng: np.random.Generator, **way: bool) -> Rates:
    """How often a family's parts come first, and among the first three."""
    places = [n for n in range(len(pool)) if pool.families[n] == family]
    first = third = 0
    for n, place in enumerate(places):
        count = each // len(places) + (n < each % len(places))
        among = np.array([m for m in range(len(pool)) if pool.forms[m] is pool.forms[place]])
        found = likelihood.likelihoods(
            pool, simulate.readings(pool, place, count, rng, Errors(), **way), Errors(), among
        )
        order = np.argsort(-found, axis=1, kind="stable")[:, :3]
        hits = among[order] == place
        first += int(hits[:, 0].sum())
        third += int(hits.any(axis=1).sum())
    return first / each, third / each


def accuracy(each: int) -> list[str]:
    """The table as lines of Markdown."""
    pool = likelihood.pool(tables())
    lines = [
        "| family | " + " | ".join(f"{way}: first | first three" for way in WAYS) + " |",
        "|---|" + "---|" * (2 * len(WAYS)),
    ]
    for family in tables().families:
        if family not in pool.families:
            continue  # nothing on it to measure
        cells = []
        for way in WAYS.values():
            if family.is_flange and not (way["pitch"] and way["seat"]):
                cells += ["", ""]
                continue
            found = rates(pool, family, each, np.random.default_rng(SEED), **way)
            cells += [f"{rate:.1%}" for rate in found]
        lines.append(f"| `{family}` | {' | '.join(cells)} |")
    return lines


def speed(count: int) -> str:
    """Identifications a minute on one core: parsing aside, reasons and next measurement included."""
    pool = likelihood.pool(tables())
    rng = np.random.default_rng(SEED)
    measured = [simulate.measurement(pool, int(n), rng, Errors()) for n in rng.integers(0, len(pool), count)]
    start = time.process_time()
    for one in measured:
        identify(one)
    return f"{count / (time.process_time() - start) * 60:,.0f} identifications a minute on one core"


def main() -> None:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument(
        "--each", type=int, default=10_000, help="measurements a family and way (default 10000)"
    )
    arguments = parser.parse_args()
    print("\n".join(accuracy(arguments.each)))
    print()
    print(speed(2000))


if __name__ == "__main__":
    main()
