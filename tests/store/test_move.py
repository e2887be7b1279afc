"""Everything moves into another database: every row compared, in one transaction, and the old one is closed."""

from __future__ import annotations

import sqlite3
from pathlib import Path

import pytest
from sqlalchemy import create_engine, inspect, text
from sqlalchemy.engine import Connection

from tagger.errors import StoreError
from tagger.store import Kind, Store
from tagger.store import move as moving
from tagger.store.move import move
from tests.store.samples import assessment, spec
from tests.store.test_audit import _busy


def _tables(url: str) -> list[str]:
    engine = create_engine(url.replace("postgresql:", "postgresql+psycopg:"))
    try:
        return inspect(engine).get_table_names()
    finally:
        engine.dispose()


def test_every_record_moves_to_postgresql_and_the_chain_goes_on(
    sqlite_url: str, empty_postgresql_url: str, tmp_path: Path
) -> None:
    with Store.open(sqlite_url) as old:
        number, reference = _busy(old)
        old.add_printer("Bench 1", "ipp://192.0.2.7/ipp/print", 203)
        history, order, head = old.history(number), old.order(reference), old.head()
        held = old.backup(tmp_path / "tags.copy")
        moved = move(old.database, empty_postgresql_url)
    assert (moved.rows, moved.digests, moved.digest, moved.head) == (
        held.rows, held.digests, held.digest, head,
    )  # fmt: skip
    with Store.open(empty_postgresql_url) as new:
        assert new.history(number) == history and new.order(reference) == order
        new.record(number, Kind.SCANNED)  # ids go on after those that came
        [made] = new.register(spec(), assessment())
        found = new.audit(head)
        assert found.broken is None and found.head.links == head.links + 4, (
            "a design, an assembly and two lines"
        )
        assert new.assembly(made.number).number == made.number
    with pytest.raises(StoreError, match=r"were moved to another one.*Set TAGGER_DATABASE_URL"):
        Store.open(sqlite_url)


def test_a_target_that_is_not_empty_is_refused_and_left_alone(
    sqlite_url: str, postgresql_url: str, empty_postgresql_url: str
) -> None:
    foreign = empty_postgresql_url.replace("postgresql:", "postgresql+psycopg:")
    engine = create_engine(foreign)
    with engine.begin() as connection:
        connection.execute(text("CREATE TABLE invoices (id int)"))
    engine.dispose()
    with Store.open(postgresql_url) as used:
        used.withdraw("blisters", hose_lot="H-1")
    with Store.open(sqlite_url) as old:
        number, _ = _busy(old)
        for url, tables in ((postgresql_url, "withdrawal"), (empty_postgresql_url, "invoices")):
            with pytest.raises(StoreError, match=f"into an empty database only.*{tables}"):
                move(old.database, url)
        assert old.assembly(number).number == number
    assert _tables(empty_postgresql_url) == ["invoices"]
    with Store.open(postgresql_url) as used:
        assert (used.count(), len(used.withdrawals())) == (0, 1)


def test_a_row_that_differs_leaves_nothing_in_the_new_database(
    sqlite_url: str, empty_postgresql_url: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The new database itself changes what it is given, as a fault of its disk or memory would."""
    whole = moving.set_sequences

    def damaged(target: Connection) -> None:
        whole(target)
        target.execute(text("ALTER TABLE design DISABLE TRIGGER USER"))
        target.execute(text("UPDATE design SET spec = jsonb_set(spec, '{length_mm}', '1251')"))

    monkeypatch.setattr(moving, "set_sequences", damaged)
    with Store.open(sqlite_url) as old:
        number, _ = _busy(old)
        with pytest.raises(StoreError, match=r"Table design differs.*Nothing was kept"):
            move(old.database, empty_postgresql_url)
        assert old.history(number), "the old one goes on"
    assert _tables(empty_postgresql_url) == []


def test_a_database_that_is_in_use_or_the_target_itself_is_refused(
    sqlite_url: str, empty_postgresql_url: str
) -> None:
    file = sqlite_url.removeprefix("sqlite:///")
    with Store.open(sqlite_url) as old:
        number, _ = _busy(old)
        server = sqlite3.connect(file)  # a server that is idle
        server.execute("SELECT count(*) FROM assembly").fetchone()
        with pytest.raises(StoreError, match=r"Another program has the database open.*Stop the server"):
            move(old.database, empty_postgresql_url)
        server.close()
        with pytest.raises(StoreError, match="into the database they are in"):
            move(old.database, f"sqlite:///{Path(file).parent}/./{Path(file).name}")
        old.record(number, Kind.SCANNED)
    assert _tables(empty_postgresql_url) == []


def test_every_record_moves_from_postgresql_too_but_not_from_under_a_server(
    postgresql_url: str, empty_postgresql_url: str, tmp_path: Path
) -> None:
    """Into another PostgreSQL, and from there into a SQLite file."""
    file = f"sqlite:///{tmp_path / 'new.sqlite3'}"
    with Store.open(postgresql_url) as old:
        number, reference = _busy(old)
        history, order, head = old.history(number), old.order(reference), old.head()
        with (
            Store.open(postgresql_url) as server,
            server.reading() as session,
            pytest.raises(StoreError, match="Another program has the database open"),
        ):
            session.connection()
            move(old.database, file)
        assert not (tmp_path / "new.sqlite3").exists()
        first = move(old.database, empty_postgresql_url)
    with Store.open(empty_postgresql_url) as between:
        second = move(between.database, file)
    assert (first.rows, first.digests, first.digest) == (second.rows, second.digests, second.digest)
    for left in (postgresql_url, empty_postgresql_url):
        with pytest.raises(StoreError, match="were moved to another one"):
            Store.open(left)
    with Store.open(file) as new:
        assert new.history(number) == history and new.order(reference) == order and new.head() == head
        new.record(number, Kind.SCANNED)
        assert new.audit(head).broken is None
