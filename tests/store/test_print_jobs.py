"""Print jobs: nothing is printed twice silently, nothing is lost, and "printed" means what it says."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from datetime import timedelta
from pathlib import Path

import pytest
from sqlalchemy import text

from tagger.errors import StoreError
from tagger.i18n import Translator
from tagger.messages import Message, as_is
from tagger.store import Kind, PrintJob, PrintState, Store
from tagger.store.print_jobs import BUSY_FOR, LEASE
from tests.store.samples import assessment, spec

URI = "ipp://192.0.2.7/ipp/print"


@pytest.fixture
def printer(store: Store) -> int:
    return store.add_printer("Bench 1", URI, 203, template="hang_tag", by="Mara").id


@pytest.fixture
def numbers(store: Store) -> list[str]:
    return [a.number for a in store.register(spec(), assessment(), count=3)]


def _sending(store: Store, printer: int, numbers: list[str]) -> PrintJob:
    store.ask_print(printer, numbers, "hang_tag", by="Bela")
    job = store.next_print()
    assert job is not None and job.state is PrintState.SENDING
    return job


def _state(store: Store, job: PrintJob) -> PrintState:
    return store.print_job(job.id).state


def _later(store: Store, by: timedelta) -> None:
    now = store.now
    store.now = lambda: now() + by


def test_a_tag_is_printed_when_the_printer_took_it_and_not_before(
    store: Store, printer: int, numbers: list[str]
) -> None:
    job = _sending(store, printer, numbers)
    assert store.last(numbers, Kind.PRINTED) == {}
    store.print_taken(job, 77)
    store.print_taken(job, 77)  # told twice: counted once
    assert [store.times_printed(number) for number in numbers] == [1, 1, 1]
    event = store.last(numbers, Kind.PRINTED)[numbers[0]]
    assert event.by == "Bela"
    assert event.data == {
        "template": "hang_tag", "as": "printer", "printer": "Bench 1", "job": job.id, "reason": "",
    }  # fmt: skip
    store.print_told(job, [Message("store-print-status", said=(as_is("it is out of labels or paper"),))])
    assert str(store.print_job(job.id).why) == "Printer status: it is out of labels or paper."
    store.print_told(job, done=True)
    done = store.print_job(job.id)
    assert (done.state, done.why, done.printer_job) == (PrintState.DONE, (), 77)


def test_what_was_not_taken_is_not_printed_and_waits_for_a_decision(
    store: Store, printer: int, numbers: list[str]
) -> None:
    job = _sending(store, printer, numbers)
    store.print_failed(job, [as_is("The printer cannot be reached: Connection refused.")])
    assert _state(store, job) is PrintState.FAILED
    assert store.count_stuck_prints() == 1
    assert store.next_print() is None, "nothing is sent again by itself"
    assert store.last(numbers, Kind.PRINTED) == {}
    store.print_again(job.id, by="Mara")
    again = store.next_print()
    assert again is not None and (again.id, again.attempts, again.why) == (job.id, 2, ())
    store.print_taken(job, 1)  # the first attempt's answer, much too late
    assert _state(store, job) is PrintState.SENDING
    store.print_failed(again, [as_is("off")])
    assert store.print_dropped(job.id, by="Mara").state is PrintState.DROPPED
    assert store.count_stuck_prints() == 0


def test_what_may_have_been_printed_counts_as_printed(store: Store, printer: int, numbers: list[str]) -> None:
    job = _sending(store, printer, numbers)
    store.print_failed(job, [as_is("The printer broke off.")], unsure=True)
    assert _state(store, job) is PrintState.UNKNOWN
    assert [store.times_printed(number) for number in numbers] == [1, 1, 1]
    assert store.last(numbers, Kind.PRINTED)[numbers[0]].data["unconfirmed"] is True
    assert store.next_print() is None
    assert store.print_seen(job.id, by="Mara").state is PrintState.DONE
    assert [store.times_printed(number) for number in numbers] == [1, 1, 1]
    with pytest.raises(StoreError, match="now has the status “printed”"):
        store.print_again(job.id)


def test_an_interrupted_job_is_found_after_its_lease_and_a_late_answer_still_counts(
    store: Store, printer: int, numbers: list[str]
) -> None:
    job = _sending(store, printer, numbers)
    assert store.find_interrupted_prints() == 0
    _later(store, LEASE)
    assert store.find_interrupted_prints() == 1
    assert store.find_interrupted_prints() == 0
    assert _state(store, job) is PrintState.UNKNOWN
    store.print_taken(job, 5)  # its sender was only slow
    assert _state(store, job) is PrintState.PRINTING
    assert [store.times_printed(number) for number in numbers] == [1, 1, 1]


def test_a_job_given_up_by_the_printer_is_printed_once_and_failed(
    store: Store, printer: int, numbers: list[str]
) -> None:
    job = _sending(store, printer, numbers)
    store.print_taken(job, 5)
    store.print_failed(job, [as_is("The printer took job 5 but gave it up.")])
    assert _state(store, job) is PrintState.FAILED
    assert [store.times_printed(number) for number in numbers] == [1, 1, 1]


def test_one_printer_gets_one_job_at_a_time_in_order_and_a_busy_one_is_asked_again(
    store: Store, printer: int, numbers: list[str]
) -> None:
    other = store.add_printer("Bench 2", URI, 300).id
    jobs = [store.ask_print(which, numbers, "hang_tag") for which in (printer, printer, other)]
    first, third = store.next_print(), store.next_print()
    assert first is not None and third is not None
    assert (first.id, third.id, store.next_print()) == (jobs[0].id, jobs[2].id, None)
    store.print_waits(first, [as_is("The printer is busy.")])
    assert store.next_print() is None, "the one behind does not overtake it"
    _later(store, BUSY_FOR)
    again = store.next_print()
    assert again is not None and (again.id, again.attempts) == (first.id, 2)
    store.print_taken(again, 1)
    second = store.next_print()
    assert second is not None and second.id == jobs[1].id


def test_many_hands_never_send_one_job_twice(store: Store, printer: int, numbers: list[str]) -> None:
    jobs = {store.ask_print(printer, numbers[:1], "hang_tag").id for _ in range(12)}

    def hand(_: int) -> list[int]:
        sent = []
        while len(store.print_jobs(open_only=True)) > len(store.printing_jobs()):
            if job := store.next_print():
                sent.append(job.id)
                store.print_taken(job, job.id)
        return sent

    with ThreadPoolExecutor(4) as pool:
        sent = [job for each in pool.map(hand, range(4)) for job in each]
    assert sorted(sent) == sorted(jobs)
    assert store.times_printed(numbers[0]) == 12


def test_the_same_key_asks_once(store: Store, printer: int, numbers: list[str]) -> None:
    first = store.ask_print(printer, numbers, "hang_tag", key="k")
    assert store.ask_print(printer, numbers, "hang_tag", key="k").id == first.id
    with pytest.raises(StoreError, match="already used"):
        store.ask_print(printer, numbers[:1], "hang_tag", key="k")
    assert len(store.print_jobs()) == 1
    with ThreadPoolExecutor(8) as pool:
        same = list(pool.map(lambda _: store.ask_print(printer, numbers, "hang_tag", key="two"), range(8)))
    assert len({job.id for job in same}) == 1


def test_a_printers_name_is_its_own_and_comes_back_with_it(
    store: Store, printer: int, numbers: list[str]
) -> None:
    with pytest.raises(StoreError, match=r"name: A printer already has the name"):
        store.add_printer("bench  1", URI, 203)
    with pytest.raises(StoreError, match="must have 1 to 40 characters"):
        store.add_printer("  ", URI, 203)
    job = store.ask_print("BENCH 1", numbers, "hang_tag")
    store.retire_printer(printer, by="Mara")
    assert store.printers() == [] and len(store.printers(retired=True)) == 1
    assert "was removed" in str(store.print_job(job.id).why)
    for act in (lambda: store.print_again(job.id), lambda: store.ask_print(printer, numbers, "hang_tag")):
        with pytest.raises(StoreError, match="is not a printer in use"):
            act()
    back = store.add_printer("Bench 1", "ipp://192.0.2.8/ipp/print", 300)
    assert (back.id, back.uri, back.dpi, back.template) == (printer, "ipp://192.0.2.8/ipp/print", 300, None)
    assert store.print_again(job.id).uri == back.uri


def test_a_restored_copy_prints_nothing_by_itself(
    store: Store, printer: int, numbers: list[str], tmp_path: Path
) -> None:
    jobs = [store.ask_print(printer, numbers, "hang_tag") for _ in range(3)]
    taken = store.next_print()
    assert taken is not None
    store.print_taken(taken, 5)
    store.next_print()
    store.backup(tmp_path / "copy.sqlite3")
    with Store.open(f"sqlite:///{tmp_path / 'new.sqlite3'}") as restored:
        restored.restore(tmp_path / "copy.sqlite3")
        assert restored.next_print() is None
        states = [restored.print_job(job.id).state for job in jobs]
        assert states == [PrintState.PRINTING, PrintState.FAILED, PrintState.FAILED]
        assert "restored from a backup" in str(restored.print_job(jobs[2].id).why)


def test_what_keeps_a_job_is_read_in_any_language_and_an_older_sentence_as_it_is(store: Store) -> None:
    printer = store.add_printer("desk", "ipp://desk", 203)
    [made] = store.register(spec(), assessment())
    job = store.ask_print(printer.id, [made.number], "hang_tag")
    store.retire_printer(printer.id)
    kept = store.print_job(job.id).why
    assert kept.text(Translator("de")).startswith("Der Drucker wurde entfernt")
    assert kept.as_json() == [{"id": "store-print-retired", "values": {}}]
    with store.writing() as session:
        session.execute(text("UPDATE print_job SET why = 'The printer was away.'"))
    assert str(store.print_job(job.id).why) == "The printer was away."
