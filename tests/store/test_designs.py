"""What is remembered of designs that were read is bounded, in megabytes too."""

from __future__ import annotations

import gc
import tracemalloc
from collections.abc import Iterator
from datetime import date

import pytest

from tagger.store import Registration, Store, designs
from tagger.trade import assess
from tests.speed.samples import tags


@pytest.fixture
def numbers(store: Store) -> Iterator[list[str]]:
    """Tag numbers of 40 assemblies of as many designs, none of which was read yet."""
    day = date(2026, 11, 2)
    rows = [Registration(tag.spec, assess(tag.spec), 1, day) for tag in tags(40)]
    found = [one.number for one in store.register_many(rows)]
    designs._READ.clear()
    designs.content_of.cache_clear()
    yield found
    designs._READ.clear()


def test_what_a_server_remembers_of_records_has_200_mb_at_most(store: Store, numbers: list[str]) -> None:
    tracemalloc.start()
    try:
        for number in numbers:
            store.assembly(number)
        gc.collect()
        everything, _ = tracemalloc.get_traced_memory()
        contents = designs.content_of.cache_parameters()["maxsize"]
        designs._READ.clear()
        gc.collect()
        without, _ = tracemalloc.get_traced_memory()
    finally:
        tracemalloc.stop()
    most = (everything - without) * designs._MOST + without * (contents or 0)
    assert most / len(numbers) < 200e6


def test_a_run_of_more_designs_than_are_remembered_is_read_whole_and_leaves_no_more(
    store: Store, numbers: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(designs, "_MOST", 10)
    assert len({str(one.spec) for one in store.assemblies(numbers)}) == 40
    assert len(designs._READ) <= 10
