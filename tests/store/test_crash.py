"""A process killed between register and print: no number is lost, none is given twice."""

from __future__ import annotations

import signal
import textwrap

import pytest

from tagger.store import Filter, Kind, Store
from tests import processes
from tests.store.samples import assessment, spec

_VICTIM = textwrap.dedent("""
    import os, signal, sys
    from tagger.store import Store
    from tests.store.samples import assessment, spec
    from tagger.store import assemblies

    url, when = sys.argv[1:]
    if when == "within":  # after the rows are written, before the transaction ends
        insert = assemblies.Assemblies._insert
        def dying(*given):
            insert(*given)
            os.kill(os.getpid(), signal.SIGKILL)
        assemblies.Assemblies._insert = dying
    store = Store.open(url)
    made = store.register(spec(), assessment(), count=200, key="run-1")
    print(" ".join(a.number for a in made), flush=True)
    os.kill(os.getpid(), signal.SIGKILL)  # the printer has not been reached
""")


def _die(url: str, when: str) -> str:
    done = processes.run(("-c", _VICTIM, url, when))
    assert done.returncode == -signal.SIGKILL, done.stderr
    return done.stdout


def test_killed_after_register_the_numbers_are_kept_and_wait_to_be_printed(url: str) -> None:
    numbers = _die(url, "after").split()
    assert len(numbers) == 200
    with Store.open(url) as store:
        waiting = store.find(Filter(printed=False), limit=500).assemblies
        assert {a.number for a in waiting} == set(numbers)
        again = store.register(spec(), assessment(), count=200, key="run-1")
        assert [a.number for a in again] == numbers
        store.record_many(numbers, Kind.PRINTED, {"template": "hang"})
        assert store.count(Filter(printed=False)) == 0
        assert store.count() == 200


@pytest.mark.parametrize("times", [1, 3])
def test_killed_within_register_nothing_is_half_done(url: str, times: int) -> None:
    for _ in range(times):
        assert _die(url, "within") == ""
    with Store.open(url) as store:
        assert store.count() == 0
        assert len(store.register(spec(), assessment(), count=200, key="run-1")) == 200
