"""Small changes made to the trade, the code and preflight, and how many of them a test notices.

``python -m tests.mutants [--most 600] [--folder build/mutants] [--again]``: the first changes of the sample, two at
a time, each tried by the tests that run its line, quickest first, until one fails. Results are kept as they come, so
that a run that was broken off goes on where it ended (``--again`` begins anew). Exits with 1 when fewer than 95 of a
hundred are noticed, or one that is not has no line in ``explained.csv``.
"""

from __future__ import annotations

import argparse
import csv
import json
import os
import shutil
import sys
import time
from functools import partial
from pathlib import Path
from typing import Any

import pytest

from tests.mutants import covering, swapping, trying
from tests.mutants.changes import ROOT, Change, sample

EXPLAINED = Path(__file__).parent / "explained.csv"
AT_ONCE = 2
AT_LEAST = 0.95


def main() -> int:
    parser = argparse.ArgumentParser(prog="python -m tests.mutants")
    parser.add_argument("--most", type=int, default=600)
    parser.add_argument("--folder", type=Path, default=ROOT / "build" / "mutants")
    parser.add_argument("--again", action="store_true")
    parser.add_argument("--at-once", type=int, default=AT_ONCE)
    asked = parser.parse_args()
    if asked.again:
        shutil.rmtree(asked.folder, ignore_errors=True)
    asked.folder.mkdir(parents=True, exist_ok=True)
    os.chdir(ROOT)
    _covered(asked.folder)
    begun = time.monotonic()
    changes = sample(asked.most)
    _try_all(changes, covering.read(asked.folder), asked.folder, asked.at_once)
    return _told(changes, asked.folder, time.monotonic() - begun)


def _covered(folder: Path) -> None:
    """Measure once, in a process of its own: ours must not have imported what is going to be changed."""
    if (folder / "took.json").exists():
        return
    child = os.fork()
    if child == 0:
        covering.measure(folder)
        os._exit(0)
    _, status = os.waitpid(child, 0)
    assert status == 0, "the tests fail without any change, or cannot be measured"


def _try_all(changes: list[Change], covered: covering.Covering, folder: Path, at_once: int) -> None:
    """Those within functions in forks of one process; the others, such as a constant, by an import each."""
    known = _results(folder)
    left = [(change, swapping.new_codes(change)) for change in changes if change.rank not in known]
    within = [(change, codes) for change, codes in left if codes is not None]
    if within and os.fork() == 0:
        try:
            _in_forks(within, covered, folder, at_once)
        finally:
            os._exit(0)
    elif within:
        os.wait()
    _import_each([change for change, codes in left if codes is None], covered, folder, at_once)


def _in_forks(within: list[swapping.Changed], covered: covering.Covering, folder: Path, at_once: int) -> None:
    plugin = swapping.Swapping(within, covered, partial(_keep, folder), at_once)
    asked = sorted({where for near in covering.NEAR.values() for where in near})
    options = ["-q", "-s", "-p", "no:cacheprovider", "-p", "no:xdist", "-p", "no:cov", "--hypothesis-seed=0"]
    pytest.main([*options, *asked], plugins=[plugin])


def _import_each(changes: list[Change], covered: covering.Covering, folder: Path, at_once: int) -> None:
    trying.warm()
    for at, change in enumerate(changes):
        if at >= at_once:
            os.wait()
        print(f"{at + 1} of {len(changes)} by an import", file=sys.stderr, flush=True)
        if os.fork() == 0:
            try:
                result = trying.tried(change, covered, folder)
                _keep(folder, change, result.noticed, result.by)
            finally:
                os._exit(0)
    for _ in range(min(at_once, len(changes))):
        os.wait()


def _keep(folder: Path, change: Change, noticed: bool, by: str) -> None:
    with (folder / "results.jsonl").open("a") as file:
        file.write(json.dumps({"rank": change.rank, "noticed": noticed, "by": by}) + "\n")


def _results(folder: Path) -> dict[str, dict[str, Any]]:
    file = folder / "results.jsonl"
    lines = file.read_text().splitlines() if file.exists() else []
    return {result["rank"]: result for result in map(json.loads, lines)}


def _told(changes: list[Change], folder: Path, took_s: float) -> int:
    """Print what no test noticed, and the counts."""
    results = _results(folder)
    tried = [change for change in changes if change.rank in results]
    passed = [change for change in tried if not results[change.rank]["noticed"]]
    reasons = explained()
    unexplained = 0
    for change in sorted(passed, key=lambda change: (change.file, change.line)):
        reason = reasons.get((change.file, change.function, change.after()), "")
        unexplained += not reason
        print(f"{change.file}:{change.line} {change.function} {change.operator}")
        print(f"    {change.before()}\n    {change.after()}\n    {reason or 'not explained'}")
    noticed = len(tried) - len(passed)
    share = noticed / max(len(tried), 1)
    print(
        f"{len(tried)} changes tried, {noticed} noticed ({share:.1%}), {len(passed) - unexplained} explained, "
        f"{unexplained} not; {took_s / 60:.0f} min"
    )
    return int(share < AT_LEAST or unexplained > 0 or len(tried) < len(changes))


def explained() -> dict[tuple[str, str, str], str]:
    """Why a change makes no difference, by file, function and the changed line."""
    with EXPLAINED.open(encoding="utf-8", newline="") as file:
        return {(row["file"], row["function"], row["changed"]): row["why"] for row in csv.DictReader(file)}


if __name__ == "__main__":
    sys.exit(main())
