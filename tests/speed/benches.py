"""The benchmarks of the table, in the order in which they are run.

``python -m tests.speed.benches NAME FILE`` measures one and writes its rows: what ``python -m tests.speed`` starts
for each, so that none finds another's caches or peak of memory.
"""

from __future__ import annotations

import argparse
import importlib
from pathlib import Path

from tests.speed import table

BENCHES = (
    "run_10000",
    "ipp",
    "bench_identify",
    "scan_storm",
    "scan_slow_3g",
    "live_preview",
    "export",
    "large",
    "survive",
)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("name", choices=BENCHES)
    parser.add_argument("file", type=Path)
    parser.add_argument("--small", action="store_true", help="a few of everything")
    asked = parser.parse_args()
    bench = importlib.import_module(f"tests.speed.{asked.name}")
    table.write(bench.rows(asked.small), asked.file)


if __name__ == "__main__":
    main()
