"""A shop's own rows: refused where they contradict themselves, and said where they stand above every published one."""

from __future__ import annotations

from pathlib import Path

import pytest

from tagger.errors import TradeError
from tagger.trade.tables import Tables

HOSE_COLUMNS = "standard,edition,dash,max_working_bar,printed,in_standard,source,confidence,note"
END_COLUMNS = (
    "family,size,forms,shapes,material,max_working_bar,printed,max_temperature_c,use,applies_to,"
    "source,confidence,note"
)
TORQUE_COLUMNS = (
    "family,size,part,end_type,material,screw,torque_min_nm,torque_max_nm,flats_min,flats_max,turns_min,"
    "turns_max,basis,lubrication,use,scope,source,confidence,note"
)


def load(folder: Path, name: str, columns: str, *rows: str) -> Tables:
    """The tables with a shop's file of these rows."""
    (folder / f"{name}.csv").write_text("\n".join([columns, *rows]) + "\n", encoding="utf-8")
    return Tables.load(extra=folder)


def hose(bar: str, printed: str = "", source: str = "data sheet 7") -> str:
    return f"SAE 100R2,S,12,{bar},{printed},yes,{source},shop,"


def torque(low: str, high: str, basis: str = "torque") -> str:
    return (
        f"sae_37_flare,12,nut,swivel nut,carbon_steel,,{low},{high},,,,,{basis},,hose,family,our chart,shop,"
    )


CONTRADICTIONS = [
    ("hose_pressure", HOSE_COLUMNS, hose("3000", "3000 psi"), "max_working_bar", "3000 psi is 206.8"),
    ("hose_pressure", HOSE_COLUMNS, hose("190", "2000 psi"), "max_working_bar", "2000 psi is 137.9"),
    ("hose_pressure", HOSE_COLUMNS, hose("3000"), "max_working_bar", "above 1000"),
    ("hose_pressure", HOSE_COLUMNS, hose("-190"), "max_working_bar", "above 0"),
    ("hose_pressure", HOSE_COLUMNS, hose("190", "190 kilos"), "printed", "cannot be read"),
    ("hose_pressure", HOSE_COLUMNS, hose("190", source=""), "source", "no source"),
    ("tightening", TORQUE_COLUMNS, torque("120", "100"), "torque_min_nm", "above the maximum"),
    ("tightening", TORQUE_COLUMNS, torque("-5", "100"), "torque_min_nm", "above 0"),
    ("tightening", TORQUE_COLUMNS, torque("100", ""), "torque_max_nm", "needs its maximum"),
    ("tightening", TORQUE_COLUMNS, torque("90", "100", "by_feel"), "basis", "not known"),
    ("hose_bend", "standard,dash,bend_radius_mm,printed,source,confidence,note",
     "SAE 100R2,12,9.5,9 1/2 in,our chart,shop,", "bend_radius_mm", "9 1/2 in is 241.3"),
    ("hose_fluids", "standard,fluid,min_temperature_c,max_temperature_c,source,confidence,note",
     "SAE 100R2,water,80,60,our chart,shop,", "min_temperature_c", "above the maximum"),
]  # fmt: skip


@pytest.mark.parametrize(("name", "columns", "row", "column", "why"), CONTRADICTIONS)
def test_a_row_that_contradicts_itself_is_refused_where_it_is_loaded(
    tmp_path: Path, name: str, columns: str, row: str, column: str, why: str
) -> None:
    with pytest.raises(TradeError) as refused:
        load(tmp_path, name, columns, row)
    found = [p for p in refused.value.problems if p.field == f"{name}.csv, line 2, {column}"]
    assert any(why in p.why for p in found) and all(p.mend for p in found)
    assert found[0].value == dict(zip(columns.split(","), row.split(","), strict=True))[column]


def test_all_that_is_wrong_in_all_files_is_told_at_once(tmp_path: Path) -> None:
    (tmp_path / "bores.csv").write_text("dash,bore_mm,source,confidence\n12,wide,our chart,shop\n")
    with pytest.raises(TradeError) as refused:
        load(tmp_path, "hose_pressure", HOSE_COLUMNS, hose("-1"), hose("190"), hose("3000", "3000 psi"))
    assert [p.field for p in refused.value.problems] == [
        "bores.csv, line 2, bore_mm",
        "hose_pressure.csv, line 2, max_working_bar",
        "hose_pressure.csv, line 4, max_working_bar",
        "hose_pressure.csv, line 4, max_working_bar",
    ]


@pytest.mark.parametrize(
    ("bar", "printed"), [("206.8", "3000 psi"), ("207", "3000 psi"), ("21", "2.1 MPa"), ("190", "")]
)
def test_a_figure_that_is_the_printed_one_in_another_unit_is_taken(
    tmp_path: Path, bar: str, printed: str
) -> None:
    tables = load(tmp_path, "hose_pressure", HOSE_COLUMNS, hose(bar, printed))
    assert [r.max_working_bar for r in tables.hose_pressures["SAE 100R2"] if r.confidence == "shop"] == [
        float(bar)
    ]


def test_what_a_shop_writes_is_the_shops_whatever_it_calls_it(tmp_path: Path) -> None:
    row = hose("190").replace(",shop,", ",published,")
    read = load(tmp_path, "hose_pressure", HOSE_COLUMNS, row).raw["hose_pressure"]
    (own,) = [r for r in read if r.source == "data sheet 7"]
    assert (own.max_working_bar, own.confidence) == (190, "shop")


def test_a_column_that_may_be_left_out_takes_none_behind_it_along(tmp_path: Path) -> None:
    """A limit of heat is read where the columns before it, for a fluid, are missing."""
    columns = f"{HOSE_COLUMNS},max_temperature_c"
    read = load(tmp_path, "hose_pressure", columns, hose("190") + ",80").raw["hose_pressure"]
    (own,) = [r for r in read if r.source == "data sheet 7"]
    assert (own.fluid, own.max_temperature_c, own.part) == ("", 80, "")
