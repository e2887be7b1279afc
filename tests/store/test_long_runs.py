"""A run of any length: its rows are kept beside the memory, and are registered as they were given."""

from __future__ import annotations

import gc
from datetime import date

import pytest

from tagger.code import payload
from tagger.errors import StoreError
from tagger.messages import Message
from tagger.spec import AssemblySpec
from tagger.store import Registration, Store
from tagger.store.spool import Spool
from tagger.trade import assess
from tests.speed.samples import tags


def rows(count: int, seed: int = 3) -> list[Registration]:
    specs = [tag.spec for tag in tags(count, seed)]
    return [Registration(spec, assess(spec), built_on=date(2026, 11, 2)) for spec in specs]


def with_lot(row: Registration, lot: str) -> Registration:
    hose = row.spec.hose.model_copy(update={"lot": lot})
    return Registration(row.spec.model_copy(update={"hose": hose}), row.assessment)


def test_what_is_read_from_a_spool_is_what_was_added_as_often_as_it_is_read() -> None:
    spool: Spool[Registration] = Spool()
    given = rows(5)
    for row in given:
        spool.append(row)
    assert [list(spool), list(spool), spool[3]] == [given, given, given[3]]
    first, again = spool[0], spool[0]
    assert first is not again
    assert first.assessment.end_a.spread[0] is again.assessment.end_a.spread[0]


def test_a_spool_shares_no_more_messages_than_it_may(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("tagger.store.spool._MOST_SHARED", 2)
    spool: Spool[tuple[Message, ...]] = Spool()
    given = [(Message("words-as-is", text=f"{n}"), Message("words-as-is", text=n)) for n in range(5)]
    for one in given:
        spool.append(one)
    assert list(spool) == given


def test_a_spool_takes_no_message_for_one_that_is_shown_otherwise() -> None:
    spool: Spool[Message] = Spool()
    for value in (12, 12.0, "12", True, 1):
        spool.append(Message("words-as-is", text=value))
    assert [repr(one.values["text"]) for one in spool] == ["12", "12.0", "'12'", "True", "1"]


def test_a_run_holds_none_of_its_rows(store: Store) -> None:
    def specs_held() -> int:
        gc.collect()
        return sum(isinstance(one, AssemblySpec) for one in gc.get_objects())

    before = specs_held()
    given = rows(60)
    given.reverse()
    prepared = store.prepare(given.pop() for _ in range(60))
    assert specs_held() - before < 5
    drawn = store.draw(prepared)
    assert specs_held() - before < 5
    store.register_drawn(drawn, key="long")
    assert [(one.spec, one.assessment) for one in store.assemblies(drawn.numbers)] == [
        (row.spec, row.assessment) for row in rows(60)
    ]
    assert store.registered(store.prepare(rows(60)), "long") == drawn.numbers


def test_a_run_drawn_and_one_registered_at_once_are_the_same_to_the_books(store: Store) -> None:
    """Only some rows name a lot: each problem has the row's own place in the run."""
    plain = rows(5)
    named = [with_lot(row, lot) for row, lot in zip(plain, ("H-1", "H-2", "H-3", "H-4", "H-5"), strict=True)]
    for lot in ("H-2", "H-4"):
        store.withdraw("a recall", hose_lot=lot)
    for run, places in (
        ([plain[0], named[1], plain[2], named[3], plain[4]], ["row 2.hose.lot", "row 4.hose.lot"]),
        ([plain[0], plain[1], named[1], named[2]], ["row 3.hose.lot"]),
        ([plain[0], named[1]], ["row 2.hose.lot"]),
        ([named[1]], ["hose.lot"]),
    ):
        for register in (lambda: store.draw(store.prepare(run)), lambda: store.register_many(run)):  # noqa: B023
            with pytest.raises(StoreError) as refused:
                register()
            assert [problem.field for problem in refused.value.problems] == places
    assert not store.find().assemblies


def test_equal_specs_of_a_long_run_are_kept_once_and_the_rest_in_order(store: Store) -> None:
    one, other = rows(2)
    run = [Registration(one.spec, one.assessment, 700), other, Registration(one.spec, one.assessment, 800)]
    drawn = store.draw(store.prepare(iter(run)))
    store.register_drawn(drawn)
    made = store.assemblies(drawn.numbers)
    assert [assembly.spec for assembly in made] == [one.spec] * 700 + [other.spec] + [one.spec] * 800
    assert [assembly.place for assembly in made] == list(range(1, 1502))
    assert [line.kind for line in store.history(drawn.numbers[1400])] == ["registered"]


def test_a_run_keeps_a_spec_once_where_the_tag_carries_all_of_it(store: Store) -> None:
    whole = rows(2)
    run = [whole[0], with_lot(whole[1], "L7")]
    (asked, said), (with_more, said_less) = store.prepare(iter(run)).labels
    assert said.spec is asked.spec
    assert said == payload.decode(payload.encode(said))
    assert (with_more.spec.hose.lot, said_less.spec.hose.lot) == ("L7", None)


def test_the_last_bad_row_of_a_long_run_registers_nothing(store: Store) -> None:
    """The problems of the rows are told together, and nothing is drawn."""
    run = rows(40)
    short = run[38].spec.model_copy(update={"note": "half a character \ud800"})
    run[38] = Registration(short, run[38].assessment)
    run[39] = Registration(run[39].spec, run[39].assessment, 0)
    prepared = store.prepare(iter(run))
    with pytest.raises(StoreError) as refused:
        store.draw(prepared)
    assert [problem.field for problem in refused.value.problems] == ["row 39.note", "row 40.count"]
    assert not store.find().assemblies
