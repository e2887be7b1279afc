"""Finding by the list of recorded texts finds what reading every record would find, on both databases."""

from __future__ import annotations

import random
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings, strategies
from sqlalchemy import event, func, select, text

from tagger.errors import StoreError
from tagger.record import RECORD_FIELDS
from tagger.store import Filter, Registration, Scope, Store, recorded_texts
from tagger.store.database import migrate
from tagger.store.folding import fold, folded
from tagger.store.locks import Turn
from tagger.store.models import AssemblyRow
from tests.speed.large import fill
from tests.store.samples import assessment, spec
from tests.volume import volume

PIECES = (
    "Loader",
    "LOADER",
    "Écluse",
    "écluse",
    "Straße",
    "STRASSE",
    "İ",
    "100%",
    "a_b",
    "a\\b",
    "x",
    "4",
    "ﬁ",
    "'",
    '"',
)
CODES = ("18/16/13", "20/18/15")


def _text(chance: random.Random) -> str:
    return " ".join(chance.choices(PIECES, k=chance.randint(1, 3)))


def _row(chance: random.Random) -> Registration:
    fields = {name: _text(chance) for name in RECORD_FIELDS if chance.random() < 0.7}
    fields["cleanliness"] = chance.choice(CODES)
    return Registration(spec(), assessment(), **fields)


def _wanted(chance: random.Random) -> dict[str, str]:
    field = chance.choice(RECORD_FIELDS)
    whole = chance.choice((*CODES, "16")) if field == "cleanliness" else _text(chance)
    start = chance.randrange(len(whole))
    part = chance.choice(
        (whole, whole.lower(), whole.upper(), whole[start : start + chance.randint(1, 6)], "zz")
    )
    both = {"position": "x"} if chance.random() < 0.2 else {}
    return {field: part} | both


def _by_reading_all(store: Store, wanted: dict[str, str]) -> list[str]:
    row = AssemblyRow
    query = select(row.number).order_by(row.registration_id.desc(), row.place.desc())
    for field, part in wanted.items():
        if part.strip():
            query = query.where(folded(getattr(row, field)).contains(fold(part.strip()), autoescape=True))
    with store.reading() as session:
        return list(session.scalars(query))


def _on_machine_by_reading_all(store: Store, customer: str, machine: str) -> set[str]:
    row = AssemblyRow
    query = select(row.number).where(
        folded(row.machine) == fold(" ".join(machine.split())),
        func.coalesce(folded(row.customer), "") == fold(" ".join(customer.split())),
    )
    with store.reading() as session:
        return set(session.scalars(query))


@pytest.mark.parametrize("few", [(200, 2000), (2, 3)], ids=["few records", "many records"])
def test_it_finds_what_reading_every_record_finds(
    store: Store, monkeypatch: pytest.MonkeyPatch, few: tuple[int, int]
) -> None:
    monkeypatch.setattr(recorded_texts, "_FEW_TEXTS", few[0])
    monkeypatch.setattr(recorded_texts, "_FEW_RECORDS", few[1])
    chance = random.Random(f"{few}")
    made = store.register_many([_row(chance) for _ in range(120)])
    for item in chance.sample(made, 12):
        store.correct(item.number, {"customer": f"{_text(chance)} new", "machine": _text(chance)}, "a slip")
    for turn in range(volume(60, 3000)):
        wanted = _wanted(chance)
        expected = _by_reading_all(store, wanted)
        filter_: Any = Filter(**wanted)
        page = store.find(filter_, limit=7)
        found = [item.number for item in page.assemblies]
        assert found == expected[:7], wanted
        assert store.count(filter_) == len(expected), wanted
        assert (page.after is not None) == (len(expected) > 7)
        if turn % 10 == 0:
            assert [item.number for item in store.every(filter_)] == expected, wanted
    for item in store.find(limit=30).assemblies:
        if item.machine:
            machine, customer = item.machine.upper(), (item.customer or "").lower()
            here = {one.number for one in store.on_machine(customer, machine)}
            assert item.number in here
            assert here == _on_machine_by_reading_all(store, customer, machine)


@pytest.mark.parametrize("names", [200, 3])
def test_names_are_offered_as_they_were(store: Store, monkeypatch: pytest.MonkeyPatch, names: int) -> None:
    monkeypatch.setattr("tagger.store.finding._NAMES", names)
    chance = random.Random(names)
    made = store.register_many([_row(chance) for _ in range(60)])
    for item in made[:20]:  # texts of which no record is left
        store.correct(item.number, {"machine": f"Z {_text(chance)}", "customer": None}, "a slip")
    row = AssemblyRow
    for part in ("x", "loader", "É", "ss", "%", "_", "zz", "4"):
        customer, machine = (
            func.coalesce(row.customer, "").label("c"),
            func.coalesce(row.machine, "").label("m"),
        )
        query = select(customer, machine).distinct().order_by(machine, customer).limit(5)
        query = query.where(folded(row.machine).contains(fold(part), autoescape=True))
        with store.reading() as session:
            expected = [tuple(one) for one in session.execute(query)]
        assert store.named("machine", part, 5) == expected, part
        assert all(machine == "" for _, machine in store.named("customer", part, 5))


def test_the_texts_of_records_from_before_are_found_and_the_list_may_go_again(store: Store, url: str) -> None:
    """Down to the step before and up again, with records in it."""
    chance = random.Random(7)
    store.register_many([_row(chance) for _ in range(30)])
    with store.reading() as session:
        kept = set(session.execute(text("SELECT field, text, folded FROM recorded_text")).all())
    assert kept
    with store.database.engine.execution_options(writes=True).begin() as connection:
        migrate(connection, "16")
    with Store.open(url) as again, again.reading() as session:
        anew = set(session.execute(text("SELECT field, text, folded FROM recorded_text")).all())
        assert anew == kept
        assert (
            again.count(Filter(customer="loader")) == len(_by_reading_all(again, {"customer": "loader"})) > 0
        )


@contextmanager
def _asked(store: Store) -> Iterator[list[tuple[str, Any]]]:
    """The statements that the database is sent meanwhile, with their values."""
    engine, asked = store.database.engine, list[tuple[str, Any]]()

    def note(_: Any, __: Any, statement: str, values: Any, *___: Any) -> None:
        asked.append((statement, values))

    event.listen(engine, "before_cursor_execute", note)
    try:
        yield asked
    finally:
        event.remove(engine, "before_cursor_execute", note)


def _plan(store: Store, statement: str, values: Any) -> str:
    server = store.database.engine.dialect.name == "postgresql"
    with store.reading() as session:
        if server:  # a few thousand are read in no time; of many more it reads none that it need not
            session.execute(text("SET LOCAL enable_seqscan = off"))
        explained = ("EXPLAIN " if server else "EXPLAIN QUERY PLAN ") + statement
        return "\n".join(
            str(line[-1]) for line in session.connection().exec_driver_sql(explained, values).all()
        )


def test_lots_and_names_are_found_by_indexes(store: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    """By the plans of the databases for their own questions, among some thousand assemblies."""
    fill(store, 4_000)
    server = store.database.engine.dialect.name == "postgresql"
    with _asked(store) as asked:
        for wanted in (Filter(lot="h-40"), Filter(lot=" F-20 "), Filter(lot="nobody's")):
            found = {item.number for item in store.find(wanted, limit=100).assemblies}
            assert store.count(wanted) == len(found) == {"h-40": 50, " F-20 ": 80}.get(str(wanted.lot), 0)
    assert store.count(Filter(lot=" ")) == store.count(), "blanks ask nothing"
    questions = [one for one in asked if "UNION" in one[0]]
    assert len(questions) == 6
    for question in questions:
        plan = _plan(store, *question)
        for name in ("hose_lot", "fitting_lot_a", "fitting_lot_b"):
            assert (f"Index Cond: (({name})" if server else f" ({name}=?)") in plan, plan
        assert server or "SCAN assembly" not in plan

    with _asked(store) as asked:
        assert len(store.affected(Scope.HOSE_LOT, "h 40")) == 50
        assert len(store.affected(Scope.FITTING_LOT, "F.20")) == 80
    assert len(asked) >= 4
    for question in asked:
        plan = _plan(store, *question)
        assert "Seq Scan" not in plan and ("SCAN" not in plan or server), plan

    with _asked(store) as asked:
        assert store.count(Filter(customer="harbour", machine="01")) > 0
    [by_three, by_two] = [one for one in asked if "recorded_text" in one[0]]
    plans = _plan(store, *by_three), _plan(store, *by_two)
    parts = (
        "ix_recorded_text_parts" if server else "SEARCH recorded_part USING PRIMARY KEY (field=? AND part=?)"
    )
    assert [parts in plan for plan in plans] == [True, False], "two letters have no part of three"
    assert server or "SEARCH recorded_text USING INTEGER PRIMARY KEY" in plans[0]

    monkeypatch.setattr(recorded_texts, "_FEW_TEXTS", 20)
    monkeypatch.setattr(recorded_texts, "_FEW_RECORDS", 30)
    with _asked(store) as asked:
        assert len(store.find(Filter(machine="loader"), limit=50).assemblies) == 50
    newest = next(one for one in asked if "LIKE" in one[0] and "ORDER BY assembly" in one[0])
    plan = _plan(store, *newest)
    sorting = ("TEMP B-TREE", "LIST SUBQUERY", "Sort", "Hash")
    assert not {one for one in sorting if one in plan}, plan  # many are gone through from the newest


_ODD_LETTERS = "ab*\"'%_\\()-^: \u0301\u0308\u202e\u200f\u05d0ßİẞıﬁΐç\u212aK\U0001f527\ufffd"
_ODD_WORDS = (
    "NEAR",
    "near(a b)",
    "OR",
    "AND NOT",
    "a*",
    '"a"',
    '""',
    "{a}",
    "e\u0301",
    "é",
    "%%",
    "__",
    "a\\",
)
_ODD = strategies.one_of(
    strategies.text(_ODD_LETTERS, max_size=8),
    strategies.lists(strategies.sampled_from(_ODD_WORDS), min_size=1, max_size=3).map(" ".join),
)


@settings(
    max_examples=volume(2, 200), deadline=None, derandomize=True,
    suppress_health_check=[HealthCheck.function_scoped_fixture],
)  # fmt: skip
@given(
    names=strategies.lists(_ODD, min_size=6, max_size=9),
    others=strategies.lists(_ODD, min_size=4, max_size=6),
)
def test_signs_that_ask_for_something_elsewhere_are_letters_here(
    store: Store, names: list[str], others: list[str]
) -> None:
    """Wildcards, quotes and words of search languages, letters of two characters, marks that turn the line around:
    what is found is what Python finds in the names themselves."""
    made = store.register_many([Registration(spec(), assessment(), machine=name) for name in names])
    kept = [(item.number, item.machine) for item in made if item.machine]
    pieces = [name[at : at + 4] for at, name in enumerate(names)]
    with store.reading():
        for asked in filter(str.strip, (*names, *others, *pieces, *(name.swapcase() for name in names[:3]))):
            found = {item.number for item in store.find(Filter(machine=asked), limit=5000).assemblies}
            here = {number for number, name in kept if str(fold(asked.strip())) in str(fold(name))}
            assert {number for number, _ in kept if number in found} == here, asked
            assert store.count(Filter(machine=asked)) == len(found), asked
        for asked in filter(str.strip, others):
            offered = {name for _, name in store.named("machine", asked, 5000)}
            within = {name for _, name in kept if str(fold(asked.strip())) in str(fold(name))}
            assert {name for _, name in kept if name in offered} == within, asked


@pytest.mark.parametrize("bad", ["a\ud800b", "a\x00b", "abc\x1b"])
def test_what_cannot_be_kept_is_no_name_to_look_for(store: Store, bad: str) -> None:
    store.register(spec(), assessment(), machine="Loader 4")
    for ask in (store.find, store.count, lambda wanted: store.named("machine", wanted.machine)):
        with pytest.raises(StoreError) as refused:
            ask(Filter(machine=bad))
        assert [(one.field, one.message.id) for one in refused.value.problems] == [
            ("machine", "store-control-character")
        ]
    for long in ("l" * 10_000, "loader 4" * 10_000, "%" * 60_000):
        assert store.count(Filter(machine=long)) == 0 and store.named("machine", long) == []


def test_texts_are_kept_when_it_is_ones_turn(store: Store) -> None:
    """Registering kept them before its turn and a correction after it: of two at once each waited for the other."""
    [made] = store.register(spec(), assessment())
    for act in (
        lambda: store.register(spec(), assessment(), customer="Tide Farm"),
        lambda: store.correct(made.number, {"customer": "Ridge Farm"}, "a slip"),
    ):
        with _asked(store) as asked:
            act()
        [kept] = [at for at, (one, _) in enumerate(asked) if one.startswith("INSERT INTO recorded_text")]
        turns = [at for at, (_, values) in enumerate(asked) if values == {"turn": int(Turn.EVENTS)}]
        assert bool(turns) == (store.database.engine.dialect.name == "postgresql")
        assert not turns or min(turns) < kept
