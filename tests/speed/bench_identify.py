"""How often ``identify`` is right, and how fast: ``python -m tests.speed.bench_identify``.

Prints the tables of tagger/trade/README.md. ``--each N`` simulates N measurements a connection and
way of measuring; chance starts alike each time, so the tables come out the same.
"""

from __future__ import annotations

import argparse
import time
from collections.abc import Iterator

import numpy as np

from tagger.trade.identifying import likelihood, measuring, simulate
from tagger.trade.identifying.identify import identify
from tagger.trade.identifying.likelihood import Errors
from tagger.trade.tables import tables
from tests.speed.table import Row

SHOWN = tuple(way for way in measuring.WAYS if "seat" in way)


def accuracy(each: int) -> list[str]:
    """The tables of tagger/trade/README.md as lines of Markdown."""
    lines = ["| measured | first | first three | questions |", "|---|---|---|---|"]
    for found in measuring.table(tables(), each):
        lines.append(f"| {found.way} | {found.first:.1%} | {found.among_three:.1%} | {found.questions:.2f} |")
    return [*lines, "", *by_family(each)]


def by_family(each: int) -> list[str]:
    """How often a family's parts come first and, behind the stroke, among the first three."""
    pool = likelihood.pool(tables())
    ways = (*SHOWN, measuring.ASKED)
    lines = [f"| family | {' | '.join(ways)} |", "|---|" + "---|" * len(ways)]
    for family in tables().families:
        places = [n for n in measuring.measurable(pool) if pool.families[n] is family]
        if not places:
            continue
        rates = [measuring.rate(tables(), places, way, each) for way in SHOWN]
        rates.append(measuring.rate_when_asked(tables(), places, max(1, each // 4)))
        cells = [f"{found.first:.1%} / {found.among_three:.1%}" for found in rates]
        lines.append(f"| `{family}` | {' | '.join(cells)} |")
    return lines


def speed(count: int) -> float:
    """Identifications a minute on one core: parsing aside, reasons and next measurement included."""
    pool = likelihood.pool(tables())
    rng = np.random.default_rng(measuring.SEED)
    measured = [simulate.measurement(pool, int(n), rng, Errors()) for n in rng.integers(0, len(pool), count)]
    start = time.process_time()
    for one in measured:
        identify(one)
    return count / (time.process_time() - start) * 60


def rows(small: bool) -> Iterator[Row]:
    """For the table of all benchmarks: the shares of right answers are ratios."""
    for found in measuring.table(tables(), 2 if small else 20):
        if found.way in (*SHOWN, measuring.ASKED):
            yield Row(f"identify, first: {found.way}", 100 * found.first, "%", found.first, ">=")
    yield Row("identify, one core", speed(200 if small else 2000), "a minute", goal=">=")


def main() -> None:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--each", type=int, default=20, help="measurements a connection and way (default 20)")
    arguments = parser.parse_args()
    print("\n".join(accuracy(arguments.each)))
    print()
    print(f"{speed(2000):,.0f} identifications a minute on one core")


if __name__ == "__main__":
    main()
