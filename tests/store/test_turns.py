"""Two at once: on either database it is as if one had come after the other."""

from __future__ import annotations

import threading
import time
from collections.abc import Callable
from concurrent.futures import Future, ThreadPoolExecutor

import pytest
from sqlalchemy import text
from sqlalchemy.exc import IntegrityError, InternalError
from sqlalchemy.orm import Session

from tagger.errors import StoreError
from tagger.store import Kind, OrderState, Registration, Role, Store
from tagger.store.locks import Turn, take
from tests.store.samples import assessment, spec

_WAITS = text("SELECT count(*) FROM pg_locks WHERE NOT granted")
_HOLD = text("SELECT 1 FROM order_request WHERE reference = :reference FOR UPDATE")


def while_open(store: Store, first: Callable[[], object], second: Callable[[], object]) -> Future[object]:
    """``second`` begins when ``first`` has done its part but has not committed; what became of it."""
    with ThreadPoolExecutor(1) as pool:
        with store.writing() as session:
            first()
            late = pool.submit(second)
            _until_done_or_waiting(session, late)
        late.exception(timeout=30)
    return late


def _until_done_or_waiting(session: Session, late: Future[object]) -> None:
    if session.connection().dialect.name == "sqlite":
        time.sleep(0.2)  # it cannot begin before we end
        return
    end = time.monotonic() + 30
    while not late.done() and not session.scalar(_WAITS):
        assert time.monotonic() < end
        time.sleep(0.01)


def refused(late: Future[object], words: str) -> bool:
    return isinstance(late.exception(), StoreError) and words in str(late.exception())


def test_an_order_request_being_declined_is_not_built(store: Store) -> None:
    order = store.request_order(spec=spec(), quantity=1, contact={"phone": "1"})
    late = while_open(
        store,
        lambda: store.set_order_state(order.reference, OrderState.DECLINED),
        lambda: store.set_order_state(order.reference, OrderState.BUILDING),
    )
    assert refused(late, "“declined”, which can no longer change")
    assert [step.state for step in store.order(order.reference).steps] == ["received", "declined"]


def test_the_last_two_managers_are_not_both_demoted(store: Store) -> None:
    anna, bela = (store.add_person(name, "hash", Role.MANAGER) for name in ("Anna", "Bela"))
    late = while_open(
        store,
        lambda: store.change_person(anna.id, role=Role.BUILDER),
        lambda: store.change_person(bela.id, active=False),
    )
    assert refused(late, "last manager")


def test_one_code_makes_one_manager(store: Store) -> None:
    code = store.make_first_code() or ""
    late = while_open(
        store,
        lambda: store.make_first_manager(code, "Anna", "hash"),
        lambda: store.make_first_manager(code, "Bela", "hash"),
    )
    assert refused(late, "is not the current code")
    assert [person.name for person in store.people()] == ["Anna"]


def test_a_name_is_taken_by_one(store: Store) -> None:
    late = while_open(
        store,
        lambda: store.add_person("Anna", "hash", Role.BUILDER),
        lambda: store.add_person("anna", "hash", Role.BUILDER),
    )
    assert refused(late, "already in use")


def test_a_lot_is_withdrawn_once(store: Store) -> None:
    late = while_open(
        store, lambda: store.withdraw("x", hose_lot="H-1"), lambda: store.withdraw("y", hose_lot="h-1")
    )
    assert refused(late, "already withdrawn")
    assert len(store.withdrawals(holds=True)) == 1
    with pytest.raises(IntegrityError), store.writing() as session:  # the database itself refuses it too
        session.execute(
            text(
                "INSERT INTO withdrawal (scope, value, reason, at)"
                " SELECT scope, value, reason, at FROM withdrawal"
            )
        )


def test_a_withdrawal_is_lifted_once(store: Store) -> None:
    held = store.withdraw("x", hose_lot="H-1")
    late = while_open(store, lambda: store.lift(held.id, "a"), lambda: store.lift(held.id, "b"))
    assert refused(late, "already lifted")
    assert store.withdrawal(held.id).lifted_why == "a"


def test_a_lot_withdrawn_while_a_run_registers_reaches_the_run(store: Store) -> None:
    while_open(
        store,
        lambda: store.register(spec(), assessment(), count=3),
        lambda: store.withdraw("blisters", hose_lot="H-2291"),
    )
    for made in store.find().assemblies:
        assert made.withdrawn
        assert [event.kind for event in store.history(made.number)] == [Kind.REGISTERED, Kind.WITHDRAWN]


def test_a_run_registered_while_its_lot_is_withdrawn_is_refused(store: Store) -> None:
    late = while_open(
        store,
        lambda: store.withdraw("blisters", fitting_lot="F-119"),
        lambda: store.register(spec(), assessment()),
    )
    assert refused(late, "is withdrawn (“blisters")
    assert store.count() == 0


def test_two_runs_are_registered_at_once(postgresql_url: str) -> None:
    """A registration that looks for withdrawn lots does not make another wait."""
    with Store.open(postgresql_url) as store, ThreadPoolExecutor(1) as pool, store.writing() as session:
        take(session, Turn.WITHDRAWALS, shared=True)
        assert len(pool.submit(store.register, spec(), assessment()).result(timeout=30)) == 1


def test_runs_with_the_same_specs_in_opposite_order_do_not_block_each_other(postgresql_url: str) -> None:
    rows = [Registration(spec(length_mm=1000 + n), assessment()) for n in range(3)]

    def register(order: list[Registration]) -> int:
        with store.writing():  # nothing is done anew here: a deadlock would come out
            return len(store.register_many(order))

    with Store.open(postgresql_url) as store, ThreadPoolExecutor(2) as pool:
        with store.writing() as session:  # both wait for the one in the middle, then go on at once
            store.register_many([rows[1]])
            late = [pool.submit(register, order) for order in (rows, rows[::-1])]
            while (session.scalar(_WAITS) or 0) < 2 and not any(one.done() for one in late):
                time.sleep(0.01)
        assert [one.result(timeout=30) for one in late] == [3, 3]


def test_an_act_broken_off_by_a_deadlock_is_done_anew(postgresql_url: str) -> None:
    with Store.open(postgresql_url) as store, ThreadPoolExecutor(2) as pool:
        one, two = (
            store.request_order(spec=spec(), quantity=1, contact={"phone": "1"}).reference for _ in range(2)
        )
        both_hold_one, tries = threading.Barrier(2), []

        def accept(first: str, second: str) -> None:
            tried: list[str] = []

            def both(session: Session) -> None:
                tries.append(first)
                session.execute(_HOLD, {"reference": first})
                if not tried:
                    tried.append(first)
                    both_hold_one.wait(30)
                for reference in (first, second):
                    store.set_order_state(reference, OrderState.ACCEPTED, note=f"{first} first")

            store.act(both)

        for done in (pool.submit(accept, one, two), pool.submit(accept, two, one)):
            done.result(timeout=60)
        assert len(tries) > 2, "one of them was broken off"
        for reference in (one, two):
            notes = [step.note for step in store.order(reference).steps[1:]]
            assert sorted(notes, key=str) == sorted([f"{one} first", f"{two} first"])


def test_who_follows_the_history_misses_no_line(store: Store) -> None:
    one, two = (made.number for made in store.register(spec(), assessment(), count=2))
    seen = [event.id for event in store.events()]

    def follow() -> None:
        seen.extend(event.id for event in store.events(after=seen[-1]))

    def write_and_follow() -> None:
        store.record(two, Kind.SCANNED)
        follow()

    with ThreadPoolExecutor(1) as pool:
        with store.writing() as session:
            store.record(one, Kind.PRINTED)
            late = pool.submit(write_and_follow)
            _until_done_or_waiting(session, late)
        late.result(timeout=30)
    follow()
    assert seen == [event.id for event in store.events()]


def test_one_view_stays_as_it_was(store: Store) -> None:
    store.register(spec(), assessment())
    with store.reading(), ThreadPoolExecutor(1) as pool:
        assert store.count() == 1
        pool.submit(store.register, spec(), assessment()).result(timeout=30)
        assert store.count() == len(store.find().assemblies) == 1
        assert store.events() and len(store.events()) == 1
    assert store.count() == len(store.events()) == 2


def test_a_view_writes_nothing(postgresql_url: str) -> None:
    refused = pytest.raises(InternalError, match="read-only")
    with Store.open(postgresql_url) as store, refused, store.reading() as session:
        session.execute(text("DELETE FROM token"))
