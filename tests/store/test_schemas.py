"""Every released shape of the tables goes up to today's and back down, with what it holds."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

import pytest
from sqlalchemy import Connection, Engine, inspect, text

from tagger.errors import StoreError
from tagger.store import Kind, Store
from tagger.store.database import Unopened, migrate
from tests.store.samples import assessment, spec
from tests.store.test_audit import ANNA, CARD, figure
from tests.store.test_fittings import ROW
from tests.volume import volume

FIRST = 1


@contextmanager
def _writing(engine: Engine) -> Iterator[Connection]:
    with engine.execution_options(writes=True).begin() as connection:
        yield connection


def _released(connection: Connection) -> int:
    return int(connection.scalar(text("SELECT version_num FROM alembic_version")) or 0)


def _shape(connection: Connection) -> dict[str, Any]:
    """Tables with columns, indexes and references, and the triggers that keep history as it is."""
    found = inspect(connection)
    server = connection.dialect.name == "postgresql"
    triggers = (
        "SELECT DISTINCT pg_get_triggerdef(oid) FROM pg_trigger WHERE NOT tgisinternal"
        if server
        else "SELECT name || ' ' || sql FROM sqlite_master WHERE type = 'trigger'"
    )
    return {"triggers": sorted(" ".join(one.split()) for one in connection.scalars(text(triggers)))} | {
        table: (
            sorted((c["name"], str(c["type"]), c["nullable"]) for c in found.get_columns(table)),
            sorted((str(i["name"]), i["column_names"], bool(i["unique"])) for i in found.get_indexes(table)),
            sorted((f["constrained_columns"], f["referred_table"]) for f in found.get_foreign_keys(table)),
        )
        for table in found.get_table_names()
    }


def _rows(connection: Connection, shape: dict[str, Any]) -> dict[str, list[str]]:
    """All rows of the tables and columns of a shape."""
    held = {}
    for table, parts in shape.items():
        if table not in ("triggers", "alembic_version", "chain"):  # the chain is made anew on the way up
            columns = ", ".join(f'"{name}"' for name, _, _ in parts[0])
            held[table] = sorted(map(repr, connection.execute(text(f'SELECT {columns} FROM "{table}"'))))
    return held


def _fill(url: str) -> None:
    """What every version since the first one that had it keeps."""
    with Store.open(url) as store:
        first, second = store.register(spec(), assessment(), count=2, customer="Quarry Nørd", key="k-1")
        order = store.request_order(number=first.number, contact=ANNA, language="fr")
        store.set_order_state(order.reference, "accepted", by="Bo")
        store.record(first.number, Kind.FITTED, {"machine": "Digger 4", "machine_hours": 4210.5}, by="Anna")
        store.correct(second.number, {"machine": "Digger 5"}, "wrong machine", by="Bo")
        store.lift(store.withdraw("blisters", hose_lot="H-1").id, "tested again")
        store.withdraw("cracked", tag=second.number)
        store.keep_crimp(CARD)
        store.keep_fitting(ROW)
        store.keep_shop_row(figure())
        printer = store.add_printer("Bench 1", "ipp://192.0.2.7/ipp/print", 203)
        store.ask_print(printer.id, [first.number], "hang_tag")


def test_every_released_shape_goes_up_with_its_data_and_back_down(new_url: str) -> None:
    """Each step down and up; and from the first and the last shape, with ``make prove`` from each, straight to today's."""
    opened, shapes = Unopened(new_url), {}
    try:
        with _writing(opened.engine) as connection:
            migrate(connection)
            today = _released(connection)
        for version in range(today, FIRST - 1, -1):
            with _writing(opened.engine) as connection:
                migrate(connection, str(version))
                shapes[version] = _shape(connection)
        for version in range(FIRST, today + 1):  # each step up makes what the way down left
            with _writing(opened.engine) as connection:
                migrate(connection, str(version))
                assert _shape(connection) == shapes[version], version
        _fill(new_url)
        for version in range(today - 1, FIRST - 1, -1):
            with _writing(opened.engine) as connection:
                held = _rows(connection, shapes[version])
                migrate(connection, str(version))
                assert (_rows(connection, shapes[version]), _shape(connection)) == (held, shapes[version])
            if version not in volume((FIRST, today - 1), range(today)):
                continue
            with _writing(opened.engine) as connection:
                migrate(connection)
                assert _rows(connection, shapes[version]) == held, version
                assert _shape(connection) == shapes[today], version
            with Store.open(new_url) as store:
                assert store.audit().broken is None, version
                assert [one.value for one in store.withdrawals(holds=True)] != []
        assert sum(map(len, held.values())) > 10
    finally:
        opened.engine.dispose()


@pytest.mark.parametrize("what", ["void", "former_lot", "crimp"])
def test_a_step_down_that_would_free_a_held_hose_is_refused_and_changes_nothing(
    store: Store, what: str
) -> None:
    first, second = store.register(spec(), assessment(), count=2)
    if what == "void":
        store.void(first.number, "registered twice")
    elif what == "former_lot":
        store.correct(second.number, {"hose.lot": "H-9"}, "wrong reel")
    else:
        store.drop_crimp(store.keep_crimp(CARD).id or 0)
    with (
        pytest.raises(StoreError, match=f"cannot keep what table {what} says"),
        _writing(store.database.engine) as connection,
    ):
        migrate(connection, "1")
    assert store.audit().broken is None
    with store.writing():
        assert len(store.register(spec(), assessment())) == 1
