"""Speed of the bench with many assemblies in the database, as ratios in one run on one machine.

``python -m tests.speed.live_preview`` asks a real server over HTTP for the live preview of the build
page, with an empty database and with 100,000 assemblies, and prints both and their ratio; then the
same for finding. The assemblies share 5,000 specs, 20 each, with 50 reel lots and 100 fitting lots.
"""

from __future__ import annotations

import argparse
import os
import statistics
import tempfile
import time
from collections.abc import Callable, Iterator
from datetime import date
from typing import Any

import httpx

from api.settings import Settings
from api.web.identity import hash_password
from tagger.spec import AssemblySpec
from tagger.store import Registration, Role, Store
from tagger.trade import assess
from tests.bench.served import HOSE, PASSWORD, Bench, serving
from tests.speed.table import Row

ELBOWS = {
    **HOSE, "end_a.shape": "elbow_90", "end_a.drop_mm": "56", "clocking_deg": "90", "max_temperature_c": "100",
    "covers": "abrasion_sleeve",
}  # fmt: skip
END = {"connection": "sae_37_flare", "dash": 12, "form": "female_swivel"}
SPEC: dict[str, Any] = {
    "hose": {"standard": "SAE 100R2", "dash": 12},
    "end_a": END,
    "end_b": {**END, "shape": "elbow_90", "drop_mm": 56},
}
QUESTIONS = {
    "find, no condition": "",
    "find by customer": "customer=Customer 7",
    "find by lot": "lot=F-7",
    "find what is not there": "connection=orfs",
    "find withdrawn": "withdrawn=yes",
}


def fill(store: Store, count: int) -> None:
    """Registers ``count`` assemblies, as fifty runs would."""
    each = max(1, count // 5000)
    for reel in range(50):
        rows = []
        for place in range(100):
            spec = AssemblySpec.read(
                {
                    "hose": {**SPEC["hose"], "lot": f"H-{reel}"},
                    "end_a": {**END, "lot": f"F-{place}"},
                    "end_b": SPEC["end_b"],
                    "length_mm": 500 + 10 * reel + place,
                }
            )
            assessment = assess(spec) if not rows else rows[0].assessment
            day = date(2020 + reel % 6, 1 + place % 12, 1)
            whose = {"customer": f"Customer {place}", "machine": f"Machine {reel}"}
            rows.append(Registration(spec, assessment, each, day, **whose))
        store.register_many(rows)


Times = list[tuple[float, float]]
"""Milliseconds of each answer: by the clock, and of one core (server and client together)."""


def timed(ask: Callable[[int], httpx.Response], times: int) -> Times:
    found: Times = []
    for turn in range(times):
        start, busy = time.perf_counter(), time.process_time()
        answer = ask(turn)
        spent = time.perf_counter() - start, time.process_time() - busy
        found.append((spent[0] * 1000, spent[1] * 1000))
        assert answer.status_code == 200, answer.text
    return found


def measure(count: int, times: int) -> dict[str, Times]:
    """Milliseconds by question, with ``count`` assemblies in a new SQLite database."""
    with tempfile.TemporaryDirectory() as folder, Store.open(f"sqlite:///{folder}/tags.sqlite3") as store:
        store.add_person("manager", hash_password(PASSWORD), Role.MANAGER)
        if count:
            fill(store, count)
        spec = AssemblySpec.read({**SPEC, "length_mm": 640})
        old = store.register(spec, assess(spec))[0].number
        with serving(Settings(), store) as served, Bench(served.url, store, "manager") as bench:

            def preview(turn: int, **more: str) -> httpx.Response:
                fields = {**ELBOWS, "length_mm": str(500 + turn), **more}
                return bench.submit("/bench/build/preview", fields)

            timed(preview, 20)  # the first answers load tables and fonts
            found = {"live preview": timed(preview, times)}
            found["preview, replacing a tag"] = timed(lambda turn: preview(turn, replaces=old), times)
            lots = {"hose.lot": "H-7", "end_a.lot": "F-7", "end_b.lot": "F-8"}
            found["preview, with lots"] = timed(lambda turn: preview(turn, **lots), times)
            for name, question in QUESTIONS.items():
                found[name] = timed(lambda _, q=question: bench.get(f"/bench/find?{q}"), 20)  # type: ignore[misc]
        return found


def rows(small: bool) -> Iterator[Row]:
    """For the table of all benchmarks: 95th percentiles by the clock, beside those with an empty database."""
    count, times = (5_000, 20) if small else (100_000, 300)
    empty, full = measure(0, times), measure(count, times)
    for name in full:
        (_, none), (_, many) = (_median_and_p95(found[name], 0) for found in (empty, full))
        yield Row(f"bench among {count:,}: {name}, p95", many, "ms", many / none)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--count", type=int, default=100_000)
    parser.add_argument("--times", type=int, default=300)
    given = parser.parse_args()
    empty, full = measure(0, given.times), measure(given.count, given.times)
    for place, kind in enumerate(("by the clock, over HTTP", "of one core, server and client")):
        print(f"{kind}: median / 95th percentile of one answer; load of the machine {os.getloadavg()[0]:.1f}")
        print(f"{'':26}{'empty':>18}{f'{given.count} assemblies':>24}{'ratio of p95':>14}")
        for name in full:
            (m0, p0), (m1, p1) = (_median_and_p95(found[name], place) for found in (empty, full))
            print(f"{name:26}{f'{m0:.1f} / {p0:.1f} ms':>18}{f'{m1:.1f} / {p1:.1f} ms':>24}{p1 / p0:>14.1f}")


def _median_and_p95(times: Times, place: int) -> tuple[float, float]:
    ms = sorted(one[place] for one in times)
    return statistics.median(ms), ms[int(0.95 * len(ms))]


if __name__ == "__main__":
    main()
