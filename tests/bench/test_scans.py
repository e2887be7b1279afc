"""Scans are counted from strangers only."""

from __future__ import annotations

import time

import httpx

from tagger.store import Kind, Store
from tests.bench.served import HOSE, Bench


def _scans(store: Store, number: str) -> int:
    return [event.kind for event in store.history(number)].count(Kind.SCANNED)


def test_a_strangers_scan_is_written_into_the_history(
    bench: Bench, stranger: httpx.Client, store: Store
) -> None:
    bench.submit("/bench/build", HOSE)
    [item] = store.find().assemblies
    for address in (
        f"/T/{item.number}/{item.digits}",
        f"/t/{item.number.lower()}",
        f"/01/09506000134352/21/{item.number}",
    ):
        assert stranger.get(address).status_code == 200
    assert bench.get(f"/T/{item.number}").status_code == 200  # the shop looking at its own page
    stranger.get("/T/00000000001")  # nobody's number
    deadline = time.monotonic() + 5
    while _scans(store, item.number) < 3 and time.monotonic() < deadline:
        time.sleep(0.02)
    time.sleep(0.2)
    assert _scans(store, item.number) == 3
    assert "Scans: 3 from" in bench.get("/bench/figures").text
