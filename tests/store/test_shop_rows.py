"""The shop's own rows: kept once, replaced, withdrawn, never deleted; seen by every process."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from typing import Any

import pytest

from tagger.errors import StoreError, TradeError
from tagger.spec import AssemblySpec
from tagger.store import Store
from tagger.trade import assess, keeping
from tagger.trade.keeping import ShopRow
from tagger.trade.own_hoses import OwnHose, read_own_hose
from tagger.trade.tables import Tables, tables
from tests.trade.specs import both, end

LETTER = {"value_bar": 210, "source": "fitting catalogue, page 7"}


def spec(rating: dict[str, Any] | None = None, **more: Any) -> AssemblySpec:
    """A hose with two ends that no source rates."""
    given: dict[str, Any] = {"rating": rating} if rating else {}
    return both("EN 853 2SN", 8, end("jis_30", "M22x1.5", **given), **more)


def row(bar: float = 210, **rating: Any) -> ShopRow:
    [found] = keeping.rows_of(spec({**LETTER, "value_bar": bar, **rating}), tables())
    return found


def rated(store: Store, wanted: AssemblySpec) -> float | None:
    found = assess(wanted, Tables.load(kept=store.held_rows())).working_pressure
    return next(part.value_bar for part in found.parts if part.part == "end_a")


def test_a_kept_figure_rates_every_later_end_of_the_same_kind_and_no_other(store: Store) -> None:
    assert rated(store, spec()) is None
    store.keep_shop_row(row(), by="Mara")
    assert rated(store, spec()) == 210
    for other in (
        end("jis_30", "M22x1.5", material="stainless_steel"),
        end("jis_30", "M22x1.5", form="male"),
        end("jis_30", "M22x1.5", shape="elbow_90"),
        end("jis_30", "M24x1.5", hose_dash=8),
    ):
        clocking = {"clocking_deg": 0} if other.get("shape") == "elbow_90" else {}
        assert rated(store, both("EN 853 2SN", 8, other, **clocking)) is None, other


def test_a_figure_kept_anew_takes_the_place_of_the_old_one_which_stays_in_the_history(store: Store) -> None:
    first = store.keep_shop_row(row(210), by="Mara")
    second = store.keep_shop_row(row(190), by="Bela")
    assert rated(store, spec()) == 190
    assert [(r.id, r.by, r.replaced_by) for r in store.shop_rows(ended=True)] == [
        (first.id, "Mara", second.id),
        (second.id, "Bela", None),
    ]
    assert [r.id for r in store.shop_rows()] == [second.id]


def test_the_same_figure_again_changes_nothing(store: Store) -> None:
    kept = store.keep_shop_row(row())
    before = store.shop_revision()
    assert store.keep_shop_row(row()) == kept and store.shop_revision() == before


def test_a_withdrawn_figure_rates_nothing_and_says_who_and_why(store: Store) -> None:
    kept = store.keep_shop_row(row())
    with pytest.raises(StoreError):
        store.withdraw_shop_row(kept.id, " ")
    ended = store.withdraw_shop_row(kept.id, "read from the wrong column", by="Bela")
    assert (ended.ended_by, ended.why) == ("Bela", "read from the wrong column")
    assert rated(store, spec()) is None
    for id in (kept.id, 99):
        with pytest.raises(StoreError):
            store.withdraw_shop_row(id, "again")
    store.keep_shop_row(row())
    assert rated(store, spec()) == 210


def test_every_act_changes_the_revision(store: Store) -> None:
    seen = [store.shop_revision()]
    kept = store.keep_shop_row(row(210))
    seen.append(store.shop_revision())
    store.keep_shop_row(row(190))
    seen.append(store.shop_revision())
    store.withdraw_shop_row(store.shop_rows()[0].id, "wrong")
    seen.append(store.shop_revision())
    assert len(set(seen)) == 4 and kept.id


def test_two_who_keep_the_same_part_at_once_leave_one_figure(store: Store) -> None:
    with ThreadPoolExecutor(4) as hands:
        list(hands.map(lambda bar: store.keep_shop_row(row(bar)), [150, 160, 170, 180]))
    assert len(store.shop_rows()) == 1 and len(store.shop_rows(ended=True)) == 4


def test_a_row_that_contradicts_itself_is_not_kept(store: Store) -> None:
    wrong = ShopRow("connection_pressure", {**row().cells, "printed": "210 psi"})
    with pytest.raises(TradeError):
        store.keep_shop_row(wrong)
    assert store.shop_rows(ended=True) == []


def test_it_is_in_a_backup(store: Store, tmp_path: Any) -> None:
    store.keep_shop_row(row(210))
    store.keep_shop_row(row(190))
    copied = store.backup(tmp_path / "copy")
    assert copied.rows["shop_row"] == 2
    with Store.open(f"sqlite:///{tmp_path}/other.sqlite3") as other:
        other.restore(tmp_path / "copy")
        assert rated(other, spec()) == 190


def own_hose(**more: Any) -> OwnHose:
    given = {
        "part": "TW 2W 8",
        "standard": "EN 853 2SN",
        "dash": 8,
        "max_working_bar": 200,
        "source": "data sheet 7",
    }
    return read_own_hose(given | more, tables())


def test_an_own_hose_that_is_kept_again_takes_the_place_of_all_that_was_kept_of_it(store: Store) -> None:
    other = own_hose(dash=12, max_working_bar=150)
    first = own_hose(bend_radius_mm=180, max_temperature_c=90, fluids=["water_glycol"])
    for hose in (other, first):
        store.keep_own_hose(hose, by="Mara")
    assert store.own_hoses() == [first, other]
    again = own_hose(part="TW-2W-8", edition="", outside_diameter_mm=22, source="data sheet 8")
    store.keep_own_hose(again, by="Mara")
    assert store.own_hoses() == [again, other]
    assert {row.table for row in store.shop_rows()} == {"hose_pressure", "hose_size"}
    assert {row.by for row in store.shop_rows()} == {"Mara"}
    assert [str(row.message) for row in store.shop_rows() if row.table == "hose_size"]
    Tables.load(kept=store.held_rows())


def test_an_own_hose_that_is_withdrawn_rates_nothing_and_stays_in_the_record(store: Store) -> None:
    store.keep_own_hose(own_hose(bend_radius_mm=180))
    with pytest.raises(StoreError) as error:
        store.drop_own_hose("TW 2W 8", 8, " ")
    assert error.value.problems[0].field == "reason"
    with pytest.raises(StoreError) as error:
        store.drop_own_hose("TW 2W 8", 12, "not stocked")
    assert error.value.problems[0].message.id == "store-own-hose-not-kept"
    store.drop_own_hose("tw2w8", 8, "not stocked")
    assert store.own_hoses() == [] == store.shop_rows()
    assert {row.why for row in store.shop_rows(ended=True)} == {"not stocked"}
