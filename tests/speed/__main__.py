"""``python -m tests.speed``: every benchmark, one table, kept in ``results/`` and held against the newest earlier one.

``--small`` takes a few of everything, in about five minutes, and keeps nothing: it shows that the benchmarks run.
One that fails takes no other with it, and then nothing is kept.
"""

from __future__ import annotations

import argparse
import subprocess
import sys
import tempfile
from datetime import date
from pathlib import Path

from tests.speed import table
from tests.speed.benches import BENCHES
from tests.speed.table import Row


def measured(bench: str, small: bool) -> list[Row] | None:
    """What one benchmark measures in a process of its own; None where it failed, which it says itself."""
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "rows.csv"
        command = (
            sys.executable,
            "-m",
            "tests.speed.benches",
            bench,
            str(file),
            *(("--small",) if small else ()),
        )
        done = subprocess.run(command, check=False, stdout=sys.stderr)
        return table.read(file) if done.returncode == 0 else None


def main() -> int:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--only", nargs="+", choices=BENCHES, default=BENCHES, help="these alone; not kept")
    parser.add_argument("--small", action="store_true", help="a few of everything; not kept")
    asked = parser.parse_args()
    kept = table.earlier(table.RESULTS, table.machine())
    before = table.read(kept) if kept and not asked.small else []
    rows: list[Row] = []
    failed = False
    for bench in asked.only:
        print(f"{bench} ...", file=sys.stderr, flush=True)
        found = measured(bench, asked.small)
        failed = failed or found is None  # the others' figures are not lost for it
        rows += found or []
        print(
            table.shown(found or []), file=sys.stderr, flush=True
        )  # what is had, should the rest be stopped
    print(f"\n{date.today()}, {table.machine()}; before: {kept.stem if before and kept else 'nothing'}\n")
    print(table.shown(rows, before))
    if asked.only == BENCHES and not asked.small and not failed:
        print(f"\nkept as {table.keep(rows, table.RESULTS, date.today(), table.machine())}")
    return int(failed)


if __name__ == "__main__":
    raise SystemExit(main())
