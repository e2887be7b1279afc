"""A withdrawal finds every hose that was built from its lot, however the lot was typed, on both databases."""

from __future__ import annotations

import random

import pytest
from sqlalchemy import select

from tagger.spec import AssemblySpec
from tagger.store import Registration, Scope, Store
from tagger.store.database import migrate
from tagger.store.lot_names import bare
from tagger.store.models import AssemblyRow, FormerLotRow
from tests.store.samples import assessment, spec
from tests.volume import volume

LOTS = ("{0}2310", "{0} 2310", "{0}-2310", "{0}.23-10", "{0}\N{NON-BREAKING HYPHEN}2310", "{0}2311", "{0}-231", "--", "\uff282310")  # fmt: skip


def _lot(chance: random.Random) -> str:
    return chance.choice(LOTS).format(chance.choice("hHfF"))


def _built(chance: random.Random) -> Registration:
    data = spec().as_dict()
    for part in ("hose", "end_a", "end_b"):
        data[part]["lot"] = _lot(chance) if chance.random() < 0.8 else None
    return Registration(AssemblySpec.read(data), assessment())


def _by_reading_all(store: Store, scope: Scope, lot: str) -> set[str]:
    row, former = AssemblyRow, FormerLotRow
    columns = (row.hose_lot,) if scope is Scope.HOSE_LOT else (row.fitting_lot_a, row.fitting_lot_b)
    with store.reading() as session:
        named = [
            *session.execute(select(former.number, former.value).where(former.scope == str(scope))).all(),
            *(one for column in columns for one in session.execute(select(row.number, column)).all()),
        ]
    return {number for number, kept in named if kept and bare(kept) == bare(lot)}


@pytest.fixture
def chance() -> random.Random:
    return random.Random(19)


def test_what_a_withdrawal_touches_is_what_reading_every_hose_finds(
    store: Store, url: str, chance: random.Random
) -> None:
    made = store.register_many([_built(chance) for _ in range(volume(60, 600))])
    store.lift(store.withdraw("blisters", hose_lot="F2310").id, "tested again")
    for item in chance.sample(made, 20):
        field = chance.choice(("hose.lot", "end_a.lot", "end_b.lot"))
        part = field.partition(".")[0]
        wanted = _lot(chance)
        if wanted != getattr(item.spec, part).lot:
            store.correct(item.number, {field: wanted}, "read again")
    asked = [(scope, _lot(chance)) for scope in (Scope.HOSE_LOT, Scope.FITTING_LOT) for _ in range(12)]
    expected = [_by_reading_all(store, *one) for one in asked]
    assert all(expected) and len({*map(frozenset, expected)}) > 6
    assert [{*store.affected(*one)} for one in asked] == expected
    for step in ("18", "16"):  # kept from before, and made anew
        with store.database.engine.execution_options(writes=True).begin() as connection:
            migrate(connection, step)
        with Store.open(url) as again:
            assert [{*again.affected(*one)} for one in asked] == expected
    for scope, lot in asked[::6]:
        store.withdraw("cracks", **{str(scope): lot})
    held = set().union(*expected[::6])
    assert {*store.withdrawn_numbers()} == held
