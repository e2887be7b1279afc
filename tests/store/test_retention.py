"""What is kept of people: erased with a contact, on demand, and after so many days; a hose's record loses nothing."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta

import pytest

from tagger.errors import StoreError
from tagger.store import Keep, Kind, Old, Store
from tests.store.samples import assessment, spec

DAY = date(2026, 3, 4)
ANNA = {"name": "Anna Bauer", "phone": "555 0101", "email": "anna@example.com"}
PHOTO = {"fitted": b"a picture"}


def _made(store: Store, customer: str | None = None, **more: str) -> str:
    return store.register(spec(), assessment(), customer=customer, **more)[0].number


def _at(store: Store, day: datetime) -> None:
    store.now = lambda: day


def test_who_reported_a_fitting_is_erased_with_the_contact_and_the_day_stays(store: Store) -> None:
    tag, other, stranger = (_made(store, one) for one in ("Quarry North", "quarry  north", "Harbour Cranes"))
    order = store.request_order(number=tag, contact=ANNA)
    said = {"fitted_on": DAY, "machine": "Loader 4", "machine_hours": 812.5}
    reports = [
        store.report_fitted(number, fitted_by=by, photos=PHOTO, key=f"k{place}", **said)  # type: ignore[arg-type]
        for place, (number, by) in enumerate(
            ((tag, "Anna  Bauer"), (other, "ANNA BAUER"), (tag, "Bela"), (stranger, "Anna Bauer"))
        )
    ]
    store.decide_fitted(reports[0].id, agree=True, by="Ines")
    store.erase_contact(order.reference)
    kept = [store.fitted_report(one.id) for one in reports]
    assert [one.fitted_by for one in kept] == [None, None, "Bela", "Anna Bauer"]
    assert [one.photo is None for one in kept] == [True, True, False, False]
    assert all((one.fitted_on, one.machine, one.machine_hours) == (DAY, "Loader 4", 812.5) for one in kept)
    assert "Anna" not in repr(store.history(tag)), "the line of history names no person"
    assert store.fitted_on([tag]) == {tag: DAY}
    again = store.report_fitted(tag, fitted_by="Anna Bauer", photos=PHOTO, key="k0", **said)  # type: ignore[arg-type]
    assert (again.id, again.fitted_by) == (reports[0].id, None), (
        "a phone that sends it again brings nothing back"
    )


def test_one_report_is_erased_by_itself_in_kept_answers_too(store: Store) -> None:
    report = store.report_fitted(_made(store), fitted_on=DAY, fitted_by="Bela", photos=PHOTO)
    told = {"is": [{"id": report.id, "fitted_by": "Bela", "photo": True}, {"id": 99, "fitted_by": "Ines"}]}
    store.once("a key", "mark", lambda: told)
    assert store.erase_fitted(report.id) and not store.erase_fitted(report.id)
    kept = store.fitted_report(report.id)
    assert (kept.fitted_by, kept.photo, kept.fitted_on) == (None, None, DAY)
    answer = store.answered("a key", "mark")
    assert answer is not None and "Bela" not in repr(answer) and "Ines" in repr(answer)
    for unknown in (99, -1, 10**30):
        for act in (store.erase_fitted, store.fitted_report, lambda id: store.decide_fitted(id, agree=True)):
            with pytest.raises(StoreError, match="There is no report"):
                act(unknown)


def test_what_was_kept_long_enough_is_erased_and_nothing_else(store: Store) -> None:
    began = datetime(2026, 1, 1, tzinfo=UTC)
    _at(store, began)
    tag, held = _made(store, "Quarry North"), _made(store, "Quarry North")
    photos = {"hose": b"a picture"}
    done, recent, open_, recalled = (
        store.request_order(number=number, contact=ANNA, photos=photos) for number in (tag, tag, tag, held)
    )
    decided = store.report_fitted(tag, fitted_on=DAY.replace(year=2025), fitted_by="Bela", photos=PHOTO)
    waiting = store.report_fitted(tag, fitted_on=DAY.replace(year=2025), fitted_by="Bela", photos=PHOTO)
    for order in (done, recalled):
        store.set_order_state(order.reference, "declined")
    store.decide_fitted(decided.id, agree=True)
    withdrawal = store.withdraw("cover blisters", tag=held)
    _at(store, began + timedelta(days=60))
    store.set_order_state(recent.reference, "declined")
    _at(store, began + timedelta(days=101))
    histories = [store.history(number) for number in (tag, held)]

    assert store.erase_old(Keep()) == Old(0, 0, 0) == store.old(Keep())
    assert store.old(Keep(contacts=102, photos=102, reports=102)) == Old(0, 0, 0)
    keep = Keep(contacts=100, photos=100, reports=100)
    # the decided report's photo goes with the photos, its name with the reports
    assert store.old(keep) == Old(1, 2, 1)
    assert store.erase_old(keep) == Old(1, 1, 1), "the order's photo went with its contact"
    assert store.old(keep) == Old(0, 0, 0) == store.erase_old(keep)
    named = {
        o.reference: bool(store.order(o.reference).contact.phone) for o in (done, recent, open_, recalled)
    }
    assert list(named.values()) == [False, True, True, True], "open, recent, or to call about a withdrawal"
    assert [len(store.order_photos(o.reference)) for o in (done, recent, open_, recalled)] == [0, 1, 1, 1]
    assert store.fitted_report(decided.id).fitted_by is None
    assert store.fitted_report(waiting.id).fitted_by == "Bela", "the shop has not decided yet"
    assert [store.history(number) for number in (tag, held)] == histories
    assert store.order(done.reference).state == "declined" and store.assembly(tag).customer == "Quarry North"
    store.lift(withdrawal.id, "retested")
    assert store.erase_old(keep).contacts == 1, "nobody is to be called any more"
    assert store.audit().broken is None, "what is erased breaks no chain"


def test_more_than_one_transaction_holds_is_erased_in_parts(store: Store) -> None:
    began = datetime(2026, 1, 1, tzinfo=UTC)
    _at(store, began)
    tag = _made(store)
    for _ in range(205):
        order = store.request_order(number=tag, contact=ANNA)
        store.set_order_state(order.reference, "declined")
    _at(store, began + timedelta(days=40))
    assert store.erase_old(Keep(contacts=30)) == Old(205, 0, 0)


def test_a_withdrawn_hose_that_is_said_to_be_on_a_machine_is_flagged_as_is_one_on_two(store: Store) -> None:
    number = _made(store)
    report = store.report_fitted(number, fitted_on=DAY, machine="Loader 4")
    assert (report.withdrawn, report.elsewhere) == ((), ())
    store.withdraw("burst low", tag=number)
    store.record(number, Kind.FITTED, {"machine": "Crusher"})
    flagged = store.fitted_report(report.id)
    assert (flagged.withdrawn, flagged.elsewhere) == (("burst low",), ("Crusher",))
