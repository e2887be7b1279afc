"""The chain over what is recorded shows every change that was made past the program."""

from __future__ import annotations

import json
import weakref
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import Connection, text, update
from sqlalchemy.orm import Session

from tagger.code import number as tag_number
from tagger.errors import StoreError
from tagger.store import CrimpValue, Head, Kind, Store, designs
from tagger.store.audit import Audited, audited
from tagger.store.backup import head_in
from tagger.store.chain import CHAINED, UNCHAINED_COLUMNS, digest_of, key_column, pend
from tagger.store.models import APPEND_ONLY, DesignRow, EventRow
from tagger.trade import assess
from tests.speed.samples import tags
from tests.store.samples import assessment, spec
from tests.store.test_fittings import ROW
from tests.store.test_shop_rows import row as figure
from tests.volume import volume

ANNA = {"name": "Anna", "phone": "1"}
CARD = CrimpValue("SAE 100R2", 12, "S-12", 31.5, 0.1, 0.2, "crimp chart")


def _busy(store: Store) -> tuple[str, str]:
    """A week in the shop that writes every chained table; a tag with an order, and the order."""
    first, second, third = store.register(spec(), assessment(172.5), count=3, customer="Quarry Nørd")
    order = store.request_order(number=first.number, contact=ANNA, changes="1 m longer")
    store.set_order_state(order.reference, "asked", by="Bo", note="which end?")
    store.record(first.number, Kind.FITTED, {"machine": "Digger 4", "machine_hours": 4210.0}, by="Anna")
    store.correct(second.number, {"machine": "Digger 5", "hose.lot": "H-9"}, "wrong machine", by="Bo")
    store.void(third.number, "registered twice", by="Bo")
    held = store.withdraw("cover blisters", hose_lot="H-2291", by="Bo")
    store.lift(held.id, "tested again", by="Bo")
    store.withdraw("ferrule cracked", tag=second.number)
    store.keep_crimp(CARD)
    store.keep_fitting(ROW)
    store.keep_shop_row(figure())
    return first.number, order.reference


@contextmanager
def _past_the_program(store: Store) -> Iterator[Connection]:
    """As somebody with the password of the database, append-only or not; all is taken back at the end."""
    server = store.database.engine.dialect.name == "postgresql"
    with store.database.engine.execution_options(writes=True).connect() as connection:
        connection.execute(
            text(
                "SET LOCAL session_replication_role = replica" if server else "PRAGMA defer_foreign_keys = ON"
            )
        )
        for table in (*APPEND_ONLY, "chain") if not server else ():
            for verb in ("update", "delete"):
                connection.execute(text(f"DROP TRIGGER IF EXISTS {table}_no_{verb}"))
        yield connection
        connection.rollback()


def _after(connection: Connection, *statements: Any, known: Head | None = None) -> Audited:
    """The audit of what these statements leave, which are then taken back."""
    with connection.begin_nested() as undone:
        for statement in statements:
            connection.execute(text(statement) if isinstance(statement, str) else statement)
        with Session(connection, join_transaction_mode="create_savepoint") as session:
            found = audited(session, known)
        undone.rollback()
    return found


def _why(found: Audited) -> str | None:
    return found.broken and found.broken.why.id.removeprefix("store-audit-")


def _other(value: Any) -> Any:
    """Another value of the same kind."""
    if isinstance(value, bool):
        return not value
    if isinstance(value, int | float):
        return value + 1000
    if isinstance(value, datetime):
        return value + timedelta(microseconds=1)
    if isinstance(value, date):
        return value + timedelta(days=1)
    if isinstance(value, dict):
        return {**value, "tampered": 955.1}
    return value[:-1] + ("x" if value[-1:] != "x" else "y")


def _kind_of(column: Any) -> Any:
    """A value for a column that is empty."""
    kind = column.type.python_type if column.type.python_type is not object else column.type.impl.python_type
    if kind is datetime:
        return datetime(2026, 1, 1, tzinfo=UTC)
    return {date: date(2026, 1, 1), dict: {"a": 1}}.get(kind) or kind(7)


def test_a_change_of_any_column_is_shown_with_its_row(store: Store) -> None:
    """Each column of each chained table, changed in its newest row by SQL; an empty one is filled."""
    _busy(store)
    assert store.audit().broken is None
    tried = 0
    with _past_the_program(store) as connection:
        for model in CHAINED:
            table, key = model.metadata.tables[model.__tablename__], key_column(model)
            row = connection.execute(table.select().order_by(key.desc()).limit(1)).mappings().one()
            for column in table.columns:
                if column.name in UNCHAINED_COLUMNS.get(table.name, ()):
                    continue
                value = _kind_of(column) if row[column.name] is None else _other(row[column.name])
                tampered = update(table).where(key == row[key.name]).values({column.name: value})
                found = _after(connection, tampered)
                expected = "row-gone" if column is key else "row-changed"
                assert (_why(found), found.broken and found.broken.table) == (expected, table.name), column
                assert found.broken and found.broken.key == str(row[key.name]), column
                tried += 1
                if column.nullable and row[column.name] is not None:
                    emptied = update(table).where(key == row[key.name]).values({column.name: None})
                    assert _why(_after(connection, emptied)) == "row-changed", column
        assert tried >= 100 and _after(connection).broken is None


def test_a_row_deleted_put_in_anothers_place_or_slipped_in_is_shown(store: Store) -> None:
    number, _ = _busy(store)
    with _past_the_program(store) as connection:
        for model in CHAINED:
            table, key = model.__tablename__, key_column(model).name
            newest = f'(SELECT max("{key}") FROM "{table}")'
            found = _after(connection, f'DELETE FROM "{table}" WHERE "{key}" = {newest}')
            assert (_why(found), found.broken and found.broken.table) == ("row-gone", table)
        swap = [f"UPDATE event SET id = {new} WHERE id = {old}" for old, new in ((1, -1), (2, 1), (-1, 2))]
        found = _after(connection, *swap)
        assert (_why(found), found.broken and found.broken.key) == ("row-changed", "1")
        added = (
            "INSERT INTO event (id, number, kind, at, data) "
            "SELECT 900, number, 'proof_tested', at, data FROM event WHERE id = 1"
        )
        found = _after(connection, added)
        assert (_why(found), found.broken and found.broken.key) == ("row-unlinked", "900")
        assert number


def test_a_text_that_is_gone_from_the_list_that_records_are_found_by_is_shown(store: Store) -> None:
    """No link tells of the list: without this a hose could be hidden from the withdrawal of its lot."""
    _busy(store)
    gone = "DELETE FROM recorded_part WHERE part = 'arr'"
    for statement, text_ in (
        *([(gone, "Quarry Nørd")] if store.database.engine.dialect.name == "sqlite" else []),
        ("UPDATE recorded_text SET folded = 'quarry' WHERE text = 'Quarry Nørd'", "Quarry Nørd"),
        ("DELETE FROM recorded_text WHERE text = 'Quarry Nørd'", "Quarry Nørd"),
        ("DELETE FROM recorded_text WHERE field = 'fitting_lot' AND text = 'F-119'", "F-119"),
        ("UPDATE recorded_text SET folded = 'H22910' WHERE text = 'H-2291'", "H-2291"),
    ):
        with _past_the_program(store) as connection:
            broken = _after(connection, statement).broken
            assert broken is not None and broken.why.id == "store-audit-text-gone"
            assert (broken.table, broken.key) == ("recorded_text", text_)
    assert store.audit().broken is None


def test_a_lot_that_was_corrected_away_and_is_gone_from_the_list_is_shown(store: Store) -> None:
    """A withdrawal under another spelling would miss the hose that was recorded with it once."""
    [made] = store.register(spec(hose={**spec().as_dict()["hose"], "lot": "H-77"}), assessment())
    store.correct(made.number, {"hose.lot": "H-78"}, "wrong reel")
    with _past_the_program(store) as connection:
        broken = _after(connection, "DELETE FROM recorded_text WHERE text = 'H-77'").broken
        assert broken is not None and (broken.table, broken.key) == ("recorded_text", "H-77")
    store.withdraw("blisters", hose_lot="H 78")  # a spelling that no hose had, and that stands in no list
    assert store.audit().broken is None


def test_a_lot_that_was_kept_with_its_labels_word_is_no_break(store: Store) -> None:
    """As an older version kept it: it is found all the same."""
    store.register(spec(hose={**spec().as_dict()["hose"], "lot": "LOT: H-77"}), assessment())
    as_kept = "UPDATE recorded_text SET folded = 'LOTH77' WHERE text = 'LOT: H-77'"
    with _past_the_program(store) as connection:
        assert _after(connection, as_kept).broken is None
        assert _after(connection, as_kept.replace("LOTH77", "LOTH78")).broken is not None


def test_a_link_that_is_changed_deleted_or_moved_is_shown(store: Store) -> None:
    _busy(store)
    links = store.head().links
    other = "'" + "0" * 64 + "'"
    with _past_the_program(store) as connection:
        for column in ("digest", "link"):
            found = _after(connection, f"UPDATE chain SET {column} = {other} WHERE id = 3")
            assert (_why(found), found.broken and found.broken.link) == ("link-changed", 3)
        for column, value in (("table_name", "'void'"), ("row_key", "'9'")):
            assert (
                _why(_after(connection, f"UPDATE chain SET {column} = {value} WHERE id = 3"))
                == "link-changed"
            )
        found = _after(connection, "UPDATE chain SET salt = NULL WHERE table_name = 'event' AND id > 2")
        assert _why(found) == "salt-gone"
        assert _why(_after(connection, "DELETE FROM chain WHERE id = 5")) == "link-gone"
        swap = [f"UPDATE chain SET id = {new} WHERE id = {old}" for old, new in ((4, -4), (5, 4), (-4, 5))]
        assert _why(_after(connection, *swap)) == "link-changed"
        again = (
            "INSERT INTO chain SELECT 1 + (SELECT max(id) FROM chain), table_name, row_key, salt, digest, link "
            f"FROM chain WHERE id = {links}"
        )
        assert _why(_after(connection, again)) == "link-changed"


def test_a_tail_that_was_cut_off_is_shown_by_the_head_of_a_copy_or_on_paper(
    store: Store, tmp_path: Path
) -> None:
    """The end of the chain and its rows together: nothing that is left tells of them."""
    number, _ = _busy(store)
    store.record(number, Kind.INSPECTED, {"note": "worn at the clamp"})
    copied = store.backup(tmp_path / "tags.copy")
    assert copied.head == store.head() == head_in(tmp_path / "tags.copy")
    on_paper = Head.read(copied.head.short)
    cut = (
        f"DELETE FROM chain WHERE id = {copied.head.links}",
        "DELETE FROM event WHERE id = (SELECT max(id) FROM event)",
    )
    with _past_the_program(store) as connection:
        assert _after(connection, *cut).broken is None, "the rest holds: only its head tells"
        for known in (copied.head, on_paper):
            assert _why(_after(connection, *cut, known=known)) == "head-gone"
        assert _after(connection, known=on_paper).broken is None
    store.record(number, Kind.SCANNED)
    assert store.audit(copied.head).broken is None, "an earlier head stays in the chain"


def test_an_erased_contact_leaves_the_chain_whole_and_nothing_to_guess_it_by(store: Store, url: str) -> None:
    _, reference = _busy(store)
    before = store.head()
    with store.reading() as session:
        mark = session.scalar(text("SELECT fingerprint FROM order_request"))
    assert store.erase_contact(reference) == [reference]
    found = store.audit(before)
    assert found.broken is None and found.head.links == before.links + 1
    with store.reading() as session:
        salts = list(
            session.scalars(text("SELECT salt FROM chain WHERE table_name = 'order_request' ORDER BY id"))
        )
        held = json.dumps(
            [[str(cell) for cell in row] for row in session.execute(text("SELECT * FROM order_request"))]
        )
    assert salts[0] is None and salts[1] is not None
    assert mark and mark not in held and "Anna" not in held
    with _past_the_program(store) as connection:
        back = 'UPDATE order_request SET contact = \'{"name": "Bert"}\''
        assert _why(_after(connection, back)) == "row-changed"


def test_the_database_refuses_to_change_a_link(store: Store) -> None:
    _busy(store)
    for statement in (
        "UPDATE chain SET digest = link WHERE id = 1",
        "UPDATE chain SET id = 900 WHERE id = 1",
        "DELETE FROM chain WHERE id = 1",
    ):
        with pytest.raises(Exception, match="append-only"), store.writing() as session:
            session.execute(text(statement))
    assert store.audit().broken is None


def test_what_is_taken_back_is_not_linked(store: Store) -> None:
    """A whole act, and one within another that goes on."""
    number, _ = _busy(store)
    links = store.head().links
    with pytest.raises(StoreError), store.writing():
        store.record(number, Kind.SCANNED)
        store.record(tag_number.make(), Kind.SCANNED)
    assert store.head().links == links
    with store.writing():
        with pytest.raises(StoreError), store.writing():
            store.withdraw("blisters", fitting_lot="F-118")
            store.withdraw("blisters", fitting_lot="F-118")
        store.record(number, Kind.SCANNED)
    assert (store.head().links, store.audit().broken) == (links + 1, None)


def test_writers_at_once_make_one_chain(store: Store, url: str) -> None:
    """Eight clients register, record, withdraw and correct; every link follows from the one before it."""

    def act(place: int) -> None:
        with Store.open(url) as mine:
            for turn in range(volume(2, 16)):
                [made] = mine.register(spec(length_mm=1000 + place), assessment())
                mine.record(made.number, Kind.SCANNED)
                mine.correct(made.number, {"machine": f"Digger {turn}"}, "slip")
                if turn == 1:
                    mine.lift(mine.withdraw("blisters", tag=made.number).id, "looked at")

    with ThreadPoolExecutor(8) as pool:
        list(pool.map(act, range(8)))
    found, made = store.audit(), 8 * volume(2, 16)
    assert found.broken is None
    assert (found.rows["assembly"], found.rows["withdrawal"]) == (made, 8)
    assert found.head.links == sum(found.rows.values()) + made + 8, "a link more for each change"


def test_a_table_that_is_chained_cannot_be_written_past_the_chain_by_mistake(store: Store) -> None:
    number, _ = _busy(store)
    line = update(EventRow).where(EventRow.number == number).values(by="Bo")
    with pytest.raises(RuntimeError, match="written past the chain"), store.writing() as session:
        session.execute(line)


class _Row(dict[str, Any]):
    """A row whose end is seen."""


def test_a_transaction_holds_none_of_the_rows_that_are_written_many_at_a_time(store: Store) -> None:
    row = _Row(designs.as_row(spec(), assessment()))
    held = weakref.ref(row)
    with pytest.raises(StoreError), store.writing() as session:
        pend(session, DesignRow, [row])
        del row
        assert held() is None
        store.record(tag_number.make(), Kind.SCANNED)
    assert store.head().links == 0


def test_a_design_is_kept_and_linked_as_the_json_of_its_values() -> None:
    """Whatever texts it is put together from; a note that looks like a piece of them is none."""
    made = [tag.spec for tag in tags(volume(12, 300))]
    made[0] = made[0].model_copy(update={"note": 'a "spread": [] b'})
    for each in made:
        found = assess(each)
        if each is made[1]:
            found = found.model_copy(
                update={"bend_radius_source": 'a "\\u0000" b', "hose_od_source": "\\u0000"}
            )
        row = designs.as_row(each, found)
        values = {"id": row["id"], "spec": each.as_dict(), "assessment": found.kept()}
        for name in ("spec", "assessment"):
            assert row[name].text == json.dumps(values[name], sort_keys=True, ensure_ascii=False)
        assert digest_of("design", row, "ab" * 16) == digest_of("design", values, "ab" * 16)


def test_the_digest_of_a_row_is_what_it_always_was() -> None:
    """Another way to take it would break every chain there is."""
    data = {"a": 1e22, "b": -0.0, "c": 155.1, "f": [1.0, None, {"g": True}], "ü": "\u2028"}
    at = datetime(2026, 11, 2, 8, 30, tzinfo=UTC)
    row = {"id": 7, "number": "7K3MQ9XW2R1", "kind": "inspected", "at": at, "by": None, "data": data}
    taken = digest_of("event", row, "ab" * 16)
    assert taken == "3653703b337c356c57fd13317aa137c7a5493c266609fc65bff4f9aa92a82ae6"


def test_numbers_and_moments_are_linked_as_either_database_gives_them_back(store: Store) -> None:
    """What JSON in PostgreSQL writes otherwise: powers of ten, a zero below zero, whole numbers with a point."""
    number, _ = _busy(store)
    odd = {
        "a": 1e22,
        "b": -0.0,
        "c": 155.1,
        "d": 1e-9,
        "e": 2**53 + 1,
        "f": [1.0, None, {"g": True}],
        "ü": "\u2028",
    }
    store.record(number, Kind.INSPECTED, odd, by="Bo")
    assert store.audit().broken is None
