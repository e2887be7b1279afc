"""Reports that an assembly was fitted: kept once, a claim until the shop agrees, the earliest day counts."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta

import pytest

from tagger.errors import StoreError
from tagger.store import FittedState, Kind, Store
from tests.store.samples import assessment, spec

DAY = date(2026, 3, 4)


def made(store: Store, **record: object) -> str:
    return store.register(spec(), assessment(), **record)[0].number  # type: ignore[arg-type]


def test_a_report_counts_once_the_shop_agrees_and_the_earliest_day_holds(store: Store) -> None:
    number = made(store, machine="Loader 4")
    first = store.report_fitted(number, fitted_on=DAY, machine="LOADER  4", machine_hours=812.5, key="k1")
    assert (
        store.report_fitted(number, fitted_on=DAY, machine="LOADER 4", machine_hours=812.5, key="k1") == first
    )
    with pytest.raises(StoreError, match="key"):
        store.report_fitted(number, fitted_on=DAY + timedelta(days=1), key="k1")
    assert store.count_fitted_waiting() == 1
    assert store.fitted_on([number]) == {} and not store.assembly(number).fitted
    agreed = store.decide_fitted(first.id, agree=True, by="Bela")
    assert (agreed.state, agreed.decided_by, agreed.elsewhere) == (FittedState.AGREED, "Bela", ())
    assert store.assembly(number).fitted
    line = store.history(number)[-1]
    assert line.kind is Kind.FITTED
    assert line.data["fitted_on"] == "2026-03-04" and line.data["machine_hours"] == 812.5
    later = store.report_fitted(number, fitted_on=DAY + timedelta(days=9))
    store.decide_fitted(later.id, agree=True)
    assert store.fitted_on([number]) == {number: DAY}, "a later report makes nothing longer"
    with pytest.raises(StoreError, match="decided already"):
        store.decide_fitted(first.id, agree=False, why="no")


def test_a_report_that_is_refused_leaves_no_line_and_needs_a_reason(store: Store) -> None:
    number = made(store)
    report = store.report_fitted(number, fitted_on=DAY)
    with pytest.raises(StoreError, match="reason"):
        store.decide_fitted(report.id, agree=False, why="  ")
    store.decide_fitted(report.id, agree=False, by="Bela", why="never left the shop")
    assert [event.kind for event in store.history(number)] == [Kind.REGISTERED]
    assert store.fitted_on([number]) == {}


def test_a_number_that_is_said_to_be_on_two_machines_is_flagged(store: Store) -> None:
    number, plain = made(store), made(store, machine="Loader 4")
    store.report_fitted(number, fitted_on=DAY, machine="Loader 4")
    assert store.fitted_reports(number=number)[0].elsewhere == ()
    store.report_fitted(number, fitted_on=DAY)  # no machine named: contradicts nothing
    other = store.report_fitted(number, fitted_on=DAY, machine="Crusher")
    assert [r.elsewhere for r in store.fitted_reports(number=number)] == [("Loader 4",), (), ("Crusher",)]
    store.decide_fitted(other.id, agree=False, why="a copied tag")
    assert store.fitted_reports(number=number)[-1].elsewhere == ()
    assert store.report_fitted(plain, fitted_on=DAY, machine="Crusher").elsewhere == ("Loader 4",)


def test_what_cannot_be_is_refused_and_what_is_odd_is_told(store: Store) -> None:
    number = made(store, built_on=DAY)
    tomorrow = datetime.now(UTC).date() + timedelta(days=2)
    for wrong in (
        {"fitted_on": tomorrow},
        {"machine_hours": -1.0},
        {"machine_hours": float("nan")},
        {"machine_hours": 2e6},
    ):
        with pytest.raises(StoreError):
            store.report_fitted(number, **{"fitted_on": DAY, **wrong})  # type: ignore[arg-type]
    with pytest.raises(StoreError, match="7K3MQ-9XW2R1"):
        store.report_fitted("7K3MQ9XW2R1", fitted_on=DAY)
    assert store.fitted_reports() == []
    assert store.report_fitted(number, fitted_on=DAY - timedelta(days=1)).before_built


def test_a_report_of_a_void_or_withdrawn_hose_is_kept_and_flagged_and_a_void_one_is_never_history(
    store: Store,
) -> None:
    void, withdrawn = made(store), made(store)
    store.void(void, "typed twice")
    store.withdraw("burst low", tag=withdrawn)
    report = store.report_fitted(void, fitted_on=DAY, machine="Crusher")
    assert (report.void, report.withdrawn) == ("typed twice", ())
    assert store.report_fitted(withdrawn, fitted_on=DAY).withdrawn == ("burst low",)
    assert store.count_fitted_waiting() == 2
    with pytest.raises(StoreError, match="must come off"):
        store.decide_fitted(report.id, agree=True)
    assert store.fitted_report(report.id).state is FittedState.WAITING
    store.decide_fitted(report.id, agree=False, why="came off on Friday")
    assert Kind.FITTED not in [event.kind for event in store.history(void)]


def test_the_replaced_hose_is_replaced_once_the_shop_agrees(store: Store) -> None:
    old = made(store)
    new = made(store, replaces=old)
    report = store.report_fitted(new, fitted_on=DAY)
    assert store.assembly(old).replaced_by is None
    store.decide_fitted(report.id, agree=True)
    assert store.assembly(old).replaced_by == new


def test_so_many_reports_of_a_tag_wait_and_no_more(store: Store) -> None:
    number, other = made(store), made(store)
    reports = [store.report_fitted(number, fitted_on=DAY) for _ in range(20)]
    with pytest.raises(StoreError, match="20"):
        store.report_fitted(number, fitted_on=DAY)
    store.report_fitted(other, fitted_on=DAY)
    store.decide_fitted(reports[0].id, agree=False, why="sent twice")
    store.report_fitted(number, fitted_on=DAY)
