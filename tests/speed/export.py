"""Speed of a long export, and what a kept answer costs, as ratios in one run on one machine.

``python -m tests.speed.export`` writes 100,000 assemblies (5,000 specs, 20 each) as CSV, the way
the bench and the JSON API do, and compares that with the floor: the same tables read by plain SQL,
each spec's JSON parsed once a row, and written by the csv module, without links between tags,
withdrawals or checks. Then it registers over HTTP with and without an Idempotency-Key.
"""

from __future__ import annotations

import argparse
import csv
import io
import json
import resource
import statistics
import sys
import tempfile
import time
from collections.abc import Iterator
from typing import Any

import httpx
from sqlalchemy import text
from tqdm import tqdm

from api.rest.shared import EXAMPLE_SPEC
from api.settings import Settings
from api.shared import spreadsheets
from tagger.store import Role, Store
from tests.bench.served import serving
from tests.speed.live_preview import fill
from tests.speed.table import Row

_PLAIN = (
    "SELECT a.number, a.created_at, a.built_on, a.working_pressure_bar, a.replaces, a.order_reference, a.digits, "
    "a.customer, a.machine, a.position, d.spec FROM assembly a JOIN design d ON d.id = a.design_id "
    "ORDER BY a.registration_id DESC, a.place DESC"
)


def ours(store: Store) -> tuple[float, int]:
    """(seconds of one core, bytes)"""
    start, size = time.process_time(), 0
    for part in spreadsheets.csv_lines(spreadsheets.heading(), spreadsheets.rows(store)):
        size += len(part)
    return time.process_time() - start, size


def floor(store: Store) -> tuple[float, int]:
    """The same for the least that can be."""
    start, out = time.process_time(), io.StringIO()
    writer = csv.writer(out)
    with store.reading() as session:
        for *own, spec in session.execute(text(_PLAIN)):
            writer.writerow([*own, *_flat(json.loads(spec))])
    return time.process_time() - start, len(out.getvalue())


def _flat(data: dict[str, Any]) -> Iterator[Any]:
    for value in data.values():
        if isinstance(value, dict):
            yield from _flat(value)
        else:
            yield value


def rows(small: bool) -> Iterator[Row]:
    """For the table of all benchmarks."""
    count, times = (5_000, 20) if small else (100_000, 200)
    with tempfile.TemporaryDirectory() as folder, Store.open(f"sqlite:///{folder}/tags.sqlite3") as store:
        fill(store, count)
        least, _ = floor(store)
        took, _ = ours(store)
        yield Row(f"CSV of {count:,} assemblies beside plain SQL", took, "s", took / least)
        keyed, plain = keys(store, times)
        yield Row("registering over HTTP with a key beside without", keyed, "ms", keyed / plain)


def export(store: Store) -> None:
    least, least_size = floor(store)
    first, size = ours(store)
    again, _ = ours(store)
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / (
        1024 if sys.platform != "darwin" else 1 << 20
    )
    print(f"CSV of {store.count()} assemblies, one core")
    print(f"  ours, first  {first:6.1f} s {size / 1e6:6.1f} MB")
    print(f"  ours, again  {again:6.1f} s        (specs read before)")
    print(f"  floor        {least:6.1f} s {least_size / 1e6:6.1f} MB")
    print(f"  ours / floor: {first / least:.1f} first, {again / least:.1f} again   peak memory {peak:.0f} MB")


def keys(store: Store, times: int) -> tuple[float, float]:
    """Median ms of registering one assembly over HTTP: with a key, and without."""
    _, secret = store.make_token("tablet", Role.MANAGER)
    with serving(Settings(), store) as served:
        headers = {"Authorization": f"Bearer {secret}"}
        with httpx.Client(base_url=f"{served.url}/api/v1", headers=headers, timeout=30) as api:
            found: dict[bool, list[float]] = {True: [], False: []}
            for turn in tqdm(range(times), unit="request", disable=not sys.stderr.isatty()):
                for keyed in (True, False):
                    own = {"Idempotency-Key": str(turn)} if keyed else {}
                    start = time.perf_counter()
                    answer = api.post("/assemblies", json={"spec": EXAMPLE_SPEC}, headers=own)
                    found[keyed].append((time.perf_counter() - start) * 1000)
                    assert answer.status_code == 201, answer.text
    return statistics.median(found[True]), statistics.median(found[False])


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--count", type=int, default=100_000, help="assemblies, at least 5000")
    parser.add_argument("--times", type=int, default=200, help="requests with and without a key")
    asked = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder, Store.open(f"sqlite:///{folder}/tags.sqlite3") as store:
        fill(store, asked.count)
        export(store)
        keyed, plain = keys(store, asked.times)
        print(f"registering one assembly over HTTP, median of {asked.times}")
        print(
            f"  with a key   {keyed:6.2f} ms    without {plain:6.2f} ms    with / without: {keyed / plain:.2f}"
        )


if __name__ == "__main__":
    main()
