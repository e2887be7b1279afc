"""Registering, reading back, finding: on SQLite and on PostgreSQL."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from datetime import date

import pytest
from sqlalchemy import text
from sqlalchemy.exc import DBAPIError

from tagger.code import number as tag_number
from tagger.code import payload
from tagger.errors import StoreError
from tagger.store import Filter, Kind, Registration, Store
from tests.store.samples import assessment, spec

DAY = date(2026, 3, 2)


def test_a_registered_assembly_reads_back_whole(store: Store) -> None:
    [made] = store.register(spec(), assessment(), built_on=DAY, by="anna", customer=" Quarry  North ", machine="L4",
                            position="boom")  # fmt: skip
    read = store.assembly(tag_number.format(made.number).lower())
    assert read == made
    assert (read.spec, read.customer, read.machine, read.position) == (spec(), "Quarry North", "L4", "boom")
    assert read.content.spec == spec().carried()
    assert read.content.working_pressure_bar == 172.0
    assert payload.decode(read.digits) == read.content
    assert [event.kind for event in store.history(read.number)] == [Kind.REGISTERED]


def test_a_run_gets_different_numbers_in_order(store: Store) -> None:
    made = store.register(spec(), assessment(), count=200, built_on=DAY)
    numbers = [assembly.number for assembly in made]
    assert len(set(numbers)) == 200
    assert [a.number for a in store.assemblies(numbers)] == numbers


def test_the_same_key_registers_once(store: Store) -> None:
    first = store.register(spec(), assessment(), count=3, built_on=DAY, key="bench-1")
    again = store.register(spec(), assessment(), count=3, built_on=date(2026, 3, 3), key="bench-1")
    assert [a.number for a in again] == [a.number for a in first]
    assert store.count() == 3


def test_a_key_used_for_something_else_is_refused(store: Store) -> None:
    store.register(spec(), assessment(), key="bench-1")
    with pytest.raises(StoreError, match="already used"):
        store.register(spec(length_mm=1300), assessment(), key="bench-1")
    assert store.count() == 1


def test_two_benches_with_one_key_register_once(store: Store) -> None:
    def act(_: int) -> list[str]:
        return [a.number for a in store.register(spec(), assessment(), count=5, key="same")]

    with ThreadPoolExecutor(8) as pool:
        answers = list(pool.map(act, range(8)))
    assert all(answer == answers[0] for answer in answers)
    assert store.count() == 5


def test_many_benches_at_once_lose_nothing(store: Store) -> None:
    with ThreadPoolExecutor(8) as pool:
        made = list(pool.map(lambda i: store.register(spec(), assessment(), count=5, key=f"k{i}"), range(16)))
    numbers = {a.number for run in made for a in run}
    assert len(numbers) == store.count() == 80


def test_a_number_already_given_is_never_given_again(store: Store) -> None:
    [first] = store.register(spec(), assessment())
    coming = iter([first.number, first.number, tag_number.make()])
    [second] = store.register(spec(), assessment(), make_number=lambda: next(coming))
    assert second.number != first.number


def test_a_run_with_one_bad_row_registers_nothing(store: Store) -> None:
    store.withdraw("cover blisters", hose_lot="H-13")
    rows = [
        Registration(spec(), assessment(), 10),
        Registration(spec(hose={"standard": "SAE 100R2", "dash": 12, "lot": "h-13"}), assessment()),
    ]
    with pytest.raises(StoreError, match=r"row 2\.hose\.lot: Hose lot .* is withdrawn \(“cover blisters"):
        store.register_many(rows)
    assert store.count() == 0


def test_the_problems_of_all_rows_are_told_at_once(store: Store) -> None:
    rows = [Registration(spec(), assessment(), 0), Registration(spec(), assessment(), customer="x" * 121)]
    with pytest.raises(StoreError) as refused:
        store.register_many(rows)
    assert [problem.field for problem in refused.value.problems] == ["row 1.count", "row 2.customer"]


def test_a_replacement_is_known_from_both_sides(store: Store) -> None:
    [old] = store.register(spec(), assessment())
    [new] = store.register(spec(), assessment(), replaces=old.number)
    assert store.assembly(new.number).replaces == old.number
    assert store.assembly(old.number).replacement_built == new.number
    assert store.assembly(old.number).replaced_by is None
    built = store.history(old.number)[-1]
    assert (built.kind, built.data) == (Kind.REPLACEMENT_BUILT, {"by_number": new.number})


def test_lineage_takes_effect_when_somebody_says_fitted(store: Store) -> None:
    [old] = store.register(spec(), assessment())
    first, second = store.register(spec(), assessment(), count=2, replaces=old.number)
    store.record(first.number, Kind.INSPECTED)
    assert store.assembly(old.number).replaced_by is None
    for _ in range(2):
        store.record(first.number, Kind.FITTED, by="bela")
    assert store.assembly(old.number).replaced_by == first.number
    told = [event for event in store.history(old.number) if event.kind is Kind.REPLACED]
    assert [(event.data, event.by) for event in told] == [({"by_number": first.number}, "bela")]
    assert store.assembly(old.number).replacement_built == second.number
    assert [store.assembly(n.number).fitted for n in (old, first, second)] == [False, True, False]


def test_the_old_one_stays_on_its_machine_until_its_replacement_is_fitted(store: Store) -> None:
    place = {"customer": "Quarry", "machine": "Loader 4"}
    [old] = store.register(spec(), assessment(), **place)
    [new] = store.register(spec(), assessment(), replaces=old.number, **place)
    assert [item.number for item in store.on_machine("quarry", "loader 4")] == [old.number]
    store.record(new.number, Kind.FITTED)
    assert [item.number for item in store.on_machine("quarry", "loader 4")] == [new.number]


def test_a_replacement_is_on_the_machine_once_the_old_one_was_taken_off(store: Store) -> None:
    [old] = store.register(spec(), assessment(), machine="Loader 4")
    [new] = store.register(spec(), assessment(), machine="Loader 4", replaces=old.number)
    store.record(old.number, Kind.REMOVED)
    assert [item.number for item in store.on_machine("", "Loader 4")] == [new.number]


def test_history_cannot_be_changed_in_the_database_itself(store: Store) -> None:
    [made] = store.register(spec(), assessment())
    for statement in (
        "UPDATE event SET kind = 'fitted'",
        "DELETE FROM event",
        "DELETE FROM assembly",
        "UPDATE assembly SET digits = 'x'",
        "UPDATE assembly SET built_on = NULL",
        "UPDATE assembly SET reason = 'x'",
    ):
        with pytest.raises(DBAPIError, match="append-only"), store.writing() as session:
            session.execute(text(statement))
    assert [e.kind for e in store.history(made.number)] == [Kind.REGISTERED]


def test_an_unknown_kind_of_event_is_refused_by_name(store: Store) -> None:
    [made] = store.register(spec(), assessment())
    with pytest.raises(StoreError, match="polished"):
        store.record(made.number, "polished", {}, by="anna")


def test_prints_are_counted(store: Store) -> None:
    [made] = store.register(spec(), assessment())
    assert store.times_printed(made.number) == 0
    store.record(made.number, Kind.PRINTED, {"template": "hang"}, by="anna")
    store.record(made.number, Kind.PRINTED, {"template": "hang"}, by="bela")
    assert store.times_printed(made.number) == 2
    assert store.last([made.number], Kind.PRINTED)[made.number].by == "bela"


def test_find_meets_every_condition(store: Store) -> None:
    [one] = store.register(spec(), assessment(172), built_on=DAY, customer="Quarry North", machine="L4")
    [two] = store.register(spec(), assessment(90), built_on=date(2026, 4, 1), customer="Harbour 100%")
    store.record(two.number, Kind.PRINTED, {}, by=None)

    def numbers(**wanted: object) -> list[str]:
        return [a.number for a in store.find(Filter(**wanted)).assemblies]  # type: ignore[arg-type]

    assert numbers() == [two.number, one.number]
    assert numbers(customer="quarry") == [one.number]
    assert numbers(customer="100%") == [two.number]
    assert numbers(customer="_") == []
    assert numbers(pressure_min_bar=100) == [one.number]
    assert numbers(pressure_max_bar=100) == [two.number]
    assert numbers(lot="f-119", built_from=date(2026, 3, 15)) == [two.number]
    assert numbers(connection="orfs") == []
    assert numbers(printed=False) == [one.number]
    assert numbers(number=tag_number.format(one.number)[:7].lower()) == [one.number]
    store.withdraw("seat cracked", tag=one.number)
    assert numbers(withdrawn=True) == [one.number]
    assert numbers(withdrawn=False) == [two.number]


def test_pages_hold_every_assembly_once(store: Store) -> None:
    for _ in range(3):
        store.register(spec(), assessment(), count=7)
    seen, after = [], None
    while True:
        page = store.find(limit=4, after=after)
        seen += [a.number for a in page.assemblies]
        after = page.after
        if after is None:
            break
    assert len(seen) == len(set(seen)) == 21


def test_an_unregistered_number_is_told_with_what_to_do(store: Store) -> None:
    with pytest.raises(StoreError, match="is not registered"):
        store.assembly(tag_number.make())


def test_more_in_one_run_than_can_be_meant_is_refused(store: Store) -> None:
    rows = [Registration(spec(), assessment(), count=10_000)] * 11
    with pytest.raises(StoreError, match="more than one batch"):
        store.register_many(rows)
    assert store.count() == 0


@pytest.mark.parametrize("typed", ["Écluse", "écluse", "ÉCLUSE", "clus"])
def test_text_outside_ascii_is_found_in_any_case(store: Store, typed: str) -> None:
    [made] = store.register(
        spec(), assessment(), customer="Écluse Nord", machine="Écluse 2", position="écluse"
    )
    for wanted in (Filter(customer=typed), Filter(machine=typed), Filter(position=typed)):
        assert [found.number for found in store.find(wanted).assemblies] == [made.number]
    assert [found.number for found in store.on_machine("écluse nord", "ÉCLUSE 2")] == [made.number]
