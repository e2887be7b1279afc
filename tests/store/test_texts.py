"""Text that cannot be kept is refused in words, on either database alike."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from sqlalchemy import text

from tagger.errors import StoreError
from tagger.store import CrimpValue, Filter, Kind, Role, Store
from tests.store.samples import assessment, spec

ANNA = {"phone": "1"}
CRIMP = {"hose_standard": "SAE 100R2", "hose_dash": 12, "diameter_mm": 30.0, "minus_mm": 0.1, "plus_mm": 0.1}


def _crimp(store: Store, **texts: str) -> object:
    return store.keep_crimp(CrimpValue(**{**CRIMP, "shell": "S", "source": "chart", **texts}))  # type: ignore[arg-type]


_LONG: dict[str, Callable[[Store], object]] = {
    "key 80": lambda s: s.register(spec(), assessment(), key="k" * 81),
    "key 80 ": lambda s: s.request_order(spec=spec(), contact=ANNA, key="k" * 81),
    "lot 40": lambda s: s.withdraw("x", hose_lot="L" * 41),
    "source 120": lambda s: _crimp(s, source="s" * 121),
    "shell 60": lambda s: _crimp(s, shell="s" * 61),
    "by 80": lambda s: s.withdraw("x", hose_lot="L", by="b" * 81),
    "registered_by 80": lambda s: s.register(spec(), assessment(), by="b" * 81),
}


@pytest.mark.parametrize("case", _LONG)
def test_text_too_long_is_refused(store: Store, case: str) -> None:
    field, most = case.split()
    with pytest.raises(StoreError) as refused:
        _LONG[case](store)
    [problem] = refused.value.problems
    assert (problem.field, problem.why) == (field, f"The text is longer than {most} characters.")
    assert problem.mend == f"Use at most {most} characters."
    assert store.count() == 0 and store.withdrawals() == [] and store.orders() == []


_CONTROL: dict[str, Callable[[Store, str], object]] = {
    "key": lambda s, bad: s.register(spec(), assessment(), key=bad),
    "machine": lambda s, bad: s.register(spec(), assessment(), machine=bad),
    "changes": lambda s, bad: s.request_order(spec=spec(), contact=ANNA, changes=bad),
    "contact.name": lambda s, bad: s.request_order(spec=spec(), contact={**ANNA, "name": bad}),
    "reason": lambda s, bad: s.withdraw(bad, hose_lot="L"),
    "source": lambda s, bad: _crimp(s, source=bad),
    "name": lambda s, bad: s.add_person(bad, "hash", Role.BUILDER),
    "reference": lambda s, bad: s.order(bad),
    "hose_lot": lambda s, bad: s.find(Filter(lot=bad)),
    "where.note": lambda s, bad: s.record(
        s.register(spec(), assessment())[0].number, Kind.INSPECTED, {"where": {"note": [bad]}}
    ),
}


@pytest.mark.parametrize("bad", ["Q\x00X", "Q\x1bX"])
@pytest.mark.parametrize("field", _CONTROL)
def test_a_control_character_is_refused_in_any_text(store: Store, field: str, bad: str) -> None:
    with pytest.raises(StoreError) as refused:
        _CONTROL[field](store, bad)
    problem = refused.value.problems[0]
    assert (problem.field, str(problem.value).upper()) == (field, "Q�X")
    one_line = field == "contact.name"  # goes into a mail's lines, and is held to more
    assert (
        problem.why
        == f"The text contains a {'line break or a hidden character' if one_line else 'control character'}."
    )


def test_half_a_character_is_refused(store: Store) -> None:
    with pytest.raises(StoreError, match="changes: The text contains a control character"):
        store.request_order(spec=spec(), contact=ANNA, changes="Q\ud800X")


def test_no_text_of_an_assessment_is_taken_for_a_part_that_is_written_already(store: Store) -> None:
    for bad in ("\0", 'x "\0"', "\0\0"):
        found = assessment().model_copy(update={"hose_od_source": bad})
        with pytest.raises(StoreError, match="hose_od_source: The text contains a control character"):
            store.register(spec(), found)
    assert store.count() == 0


def test_line_ends_and_tabs_are_kept(store: Store) -> None:
    order = store.request_order(spec=spec(), contact=ANNA, changes="longer:\r\n\t100 mm")
    assert store.order(order.reference).changes == "longer:\r\n\t100 mm"


def test_a_text_looked_for_may_be_longer_than_any_kept(store: Store) -> None:
    assert store.find(Filter(lot="L" * 100, customer="c" * 500)).assemblies == ()
    assert store.person("p" * 100) is None


def test_a_copy_is_made_of_texts_longer_than_are_taken_today(sqlite_url: str, tmp_path: Path) -> None:
    with Store.open(sqlite_url) as store:
        _crimp(store)
        with store.writing() as session:
            session.execute(text("INSERT INTO recipe (name, spec, saved_at) VALUES (:n, '{}', '2026-01-01')"),
                            {"n": "n" * 90})  # fmt: skip
        assert store.backup(tmp_path / "copy").rows["recipe"] == 1
