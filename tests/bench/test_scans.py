"""Scans are counted from strangers only, in memory first."""

from __future__ import annotations

import time

import httpx
import pytest

from api.workers import scan_counts
from tagger.store import Kind, Store
from tests.bench.served import HOSE, Bench


def _scans(store: Store, number: str) -> int:
    return [event.kind for event in store.history(number)].count(Kind.SCANNED)


def test_a_strangers_scan_is_written_into_the_history(
    bench: Bench, stranger: httpx.Client, store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(scan_counts, "EVERY_S", 0.1)
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
    deadline = time.monotonic() + 60
    while _scans(store, item.number) < 3 and time.monotonic() < deadline:
        time.sleep(0.02)
    time.sleep(0.2)
    assert _scans(store, item.number) == 3
    assert "Scans: 3 from" in bench.get("/bench/figures").text


def test_a_record_whose_scan_still_waits_to_be_written_is_not_made_void(
    bench: Bench, stranger: httpx.Client, store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(scan_counts, "EVERY_S", 600.0)
    bench.submit("/bench/build", HOSE)
    [item] = store.find().assemblies
    assert stranger.get(f"/T/{item.number}").status_code == 200
    assert _scans(store, item.number) == 0  # it waits
    answer = bench.submit(f"/bench/tag/{item.number}/void", {"void_reason": "entered twice"})
    assert answer.status_code == 422
    assert not store.assembly(item.number).void
    assert _scans(store, item.number) == 1
