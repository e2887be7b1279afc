"""A request asked for twice is done once: on both databases, in threads at once, and after a kill."""

from __future__ import annotations

import signal
import textwrap
import threading
import time
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import Any

import pytest

from tagger.errors import StoreError
from tagger.store import Filter, KeyUsed, Kind, Store
from tests import processes
from tests.store.samples import assessment, spec


def _registering(store: Store, slow: float = 0) -> Any:
    def act() -> dict[str, Any]:
        made = store.register(spec(), assessment(), count=2)
        time.sleep(slow)
        return {"numbers": [item.number for item in made]}

    return act


def test_the_same_request_has_the_same_answer_and_is_done_once(store: Store) -> None:
    first = store.once("k", "f", _registering(store))
    assert store.once("k", "f", _registering(store)) == first
    assert store.count() == 2
    assert store.assembly(first["numbers"][0]).spec == spec()


def test_the_same_key_for_another_request_is_refused(store: Store) -> None:
    store.once("k", "f", _registering(store))
    with pytest.raises(KeyUsed, match="already used"):
        store.once("k", "other", _registering(store))
    store.once("another k", "other", _registering(store))
    assert store.count() == 4


def test_an_act_that_fails_keeps_nothing_and_its_key_stays_free(store: Store) -> None:
    def failing() -> dict[str, Any]:
        store.register(spec(), assessment())
        store.withdraw(" ", hose_lot="H")
        return {}

    with pytest.raises(StoreError, match="reason"):
        store.once("k", "f", failing)
    assert store.count() == 0
    assert len(store.once("k", "other", _registering(store))["numbers"]) == 2


def test_acts_within_an_act_see_each_other_and_are_one(store: Store) -> None:
    def whole() -> dict[str, Any]:
        [made] = store.register(spec(), assessment())
        event = store.record(made.number, Kind.FITTED)
        with pytest.raises(StoreError):
            store.record("00000000001", Kind.FITTED)  # taken back by itself
        order = store.request_order(number=made.number, contact={"phone": "1"})
        return {
            "events": [e.id for e in store.history(made.number)],
            "last": event.id,
            "order": order.reference,
        }

    done = store.once("k", "f", whole)
    assert len(done["events"]) == 3 and done["last"] in done["events"]
    assert store.order(done["order"]).quantity == 1 and store.count() == 1


def test_a_key_too_long_is_named(store: Store) -> None:
    with pytest.raises(StoreError, match="longer than"):
        store.once("k" * 121, "f", _registering(store))


def test_threads_with_one_key_do_it_once_and_answer_alike(store: Store) -> None:
    start = threading.Barrier(6)

    def ask() -> dict[str, Any]:
        start.wait()
        return store.once("k", "f", _registering(store, slow=0.05))

    with ThreadPoolExecutor(6) as pool:
        answers = [asked.result() for asked in [pool.submit(ask) for _ in range(6)]]
    assert all(answer == answers[0] for answer in answers)
    assert store.count() == 2


def test_the_second_does_it_where_the_first_failed(store: Store) -> None:
    inside, answers = threading.Event(), []

    def failing() -> dict[str, Any]:
        store.register(spec(), assessment())
        inside.set()
        time.sleep(0.2)
        raise StoreError([])

    def first() -> None:
        with pytest.raises(StoreError):
            store.once("k", "f", failing)

    def second() -> None:
        inside.wait()
        answers.append(store.once("k", "f", _registering(store)))

    threads = [threading.Thread(target=run) for run in (first, second)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join(30)
    assert store.count() == 2 == len(answers[0]["numbers"])


_VICTIM = textwrap.dedent("""
    import os, signal, sys
    from tagger.store import Store
    from tests.store.samples import assessment, spec

    url, when = sys.argv[1:]
    store = Store.open(url)

    def act():
        made = store.register(spec(), assessment(), count=3)
        if when == "within":
            os.kill(os.getpid(), signal.SIGKILL)
        return {"numbers": [item.number for item in made]}

    print(" ".join(store.once("k", "f", act)["numbers"]), flush=True)
    os.kill(os.getpid(), signal.SIGKILL)  # the answer has not been sent
""")


@pytest.mark.parametrize("when", ["within", "after"])
def test_killed_between_act_and_answer_the_repeat_is_right(url: str, when: str) -> None:
    died = processes.run(("-c", _VICTIM, url, when))
    assert died.returncode == -signal.SIGKILL, died.stderr
    with Store.open(url) as store:
        assert store.count() == (0 if when == "within" else 3)
        again = store.once("k", "f", _registering(store))["numbers"]
        assert again == died.stdout.split() or when == "within"
        assert store.count() == len(again) == (2 if when == "within" else 3)
        assert {a.number for a in store.find(Filter()).assemblies} == set(again)


def test_a_copy_keeps_the_answers(store: Store, tmp_path: Path) -> None:
    first = store.once("k", "f", _registering(store))
    store.backup(tmp_path / "copy.sqlite3")
    with Store.open(f"sqlite:///{tmp_path / 'copy.sqlite3'}") as copy:
        assert copy.once("k", "f", _registering(copy)) == first
