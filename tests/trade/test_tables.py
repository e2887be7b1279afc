"""The tables hold together, every figure has a source, and a shop can add its own."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from tagger.errors import TradeError
from tagger.spec import Connection, Hose
from tagger.trade import assess, geometry, validate
from tagger.trade.tables import Tables, size_order, tables
from tests.trade.made_up import HOSE, bend, hose, made_up, standard, tables_with, tight
from tests.trade.specs import example


def test_the_validator_finds_nothing() -> None:
    assert validate.findings() == []


def test_less_than_a_quarter_of_the_figures_is_from_memory() -> None:
    assert validate.memory_share() < 0.25


def test_a_wrong_minor_diameter_is_found() -> None:
    ours = tables()
    key = (Connection("sae_37_flare"), "12")
    wrong = ours.threads[key].female_minor_mm - 0.5
    found = validate.findings(
        replace(ours, threads={**ours.threads, key: replace(ours.threads[key], female_minor_mm=wrong)})
    )
    assert [(f.id, f.values["given"]) for f in found] == [("trade-check-minor", wrong)]


@pytest.mark.parametrize(
    ("column", "off", "told"),
    [
        ("pitch_mm", 0.002, {"trade-check-pitch", "trade-check-tpi"}),
        ("pitch_mm", -0.002, {"trade-check-pitch", "trade-check-tpi"}),
        ("thread_od_mm", 0.004, {"trade-check-diameter"}),
        ("thread_od_mm", -0.004, {"trade-check-diameter"}),
        ("pitch_mm", 0.0002, set()),
    ],
)
def test_a_thread_that_is_not_what_its_name_says_is_found(column: str, off: float, told: set[str]) -> None:
    """1 1/16-12 UN: 26.9875 mm and 12 threads an inch, within what rounding explains."""
    ours, key = tables(), (Connection("sae_37_flare"), "12")
    row = replace(ours.threads[key], **{column: getattr(ours.threads[key], column) + off})
    found = validate._threads(replace(ours, threads={key: row}))
    assert {f.id for f in found} == told


def test_a_bore_as_wide_as_the_thread_itself_is_found() -> None:
    ours, key = tables(), (Connection("npt"), "1/2")
    for minor, wrong in (
        (ours.threads[key].thread_od_mm, True),
        (ours.threads[key].thread_od_mm - 0.1, False),
    ):
        row = replace(ours.threads[key], female_minor_mm=minor)
        found = validate.findings(replace(ours, threads={**ours.threads, key: row}))
        assert [f.id for f in found] == ["trade-check-minor-size"] * wrong


def test_seats_of_a_form_that_are_not_the_whole_of_it_are_found() -> None:
    ours = tables()
    flare = [r for r in ours.seats if (r.family, r.form) == ("sae_37_flare", "male")]
    halved = tables_with(seats=[replace(r, share=r.share / 2) if r in flare else r for r in ours.seats])
    found = [f for f in validate.findings(halved) if f.id == "trade-check-shares"]
    assert [(f.values["row"], f.values["sum"]) for f in found] == [("seats sae_37_flare male", 0.5)]


def test_a_wrong_bar_figure_and_a_missing_source_are_found() -> None:
    rows = [hose(100, printed="110 bar"), hose(90, dash=16, source="")]
    found = validate.findings(tables_with(hose_pressure=rows, hose_standards=[standard()]))
    assert {
        ("trade-check-pressure", f"hose_pressure {HOSE}  12"),
        ("trade-check-no-source", f"hose_pressure {HOSE}  16"),
    } <= {(f.id, f.values["row"]) for f in found}


def test_a_bar_figure_that_is_not_the_psi_beside_it_is_told_in_tenths() -> None:
    rows = [hose(bar, dash=dash, printed="1600 psi") for dash, bar in ((4, 110.35), (6, 110.27), (8, 110))]
    found = validate.findings(tables_with(hose_pressure=rows, hose_standards=[standard()]))
    told = [f.values for f in found if f.id == "trade-check-pressure"]
    assert [(v["row"], v["found"], v["given"]) for v in told] == [(f"hose_pressure {HOSE}  8", 110.3, 110)]


def test_more_than_a_whole_turn_of_flats_and_none_at_all_are_found() -> None:
    flats = {"4": 0.0, "6": 0.5, "8": 6.0, "10": 6.5}
    rows = [
        tight(size=size, flats_min=0.0, flats_max=most, basis="finger_tight") for size, most in flats.items()
    ]
    found = validate.findings(made_up(tightening=rows))
    assert [f.values["flats"] for f in found if f.id == "trade-check-flats"] == [0.0, 6.5]


@pytest.mark.parametrize(
    ("family", "size", "number"),
    [
        ("sae_37_flare", "12", 12), ("bspp", "3/4", 12), ("npt", "1 1/4", 20), ("din24_light", "12", 12),
        ("din24_heavy", "6", 6), ("metric_orb", "M22x1.5", 22), ("flange_code61", "16", 16), ("french_gas", "13.25", 13.25),
    ],
)  # fmt: skip
def test_sizes_are_sorted_by_dash_tube_or_diameter(family: str, size: str, number: float) -> None:
    """A pipe size by its dash: 3/4 in is -12."""
    assert size_order(Connection(family), size) == number


def test_a_rating_that_rises_with_size_is_found() -> None:
    rows = [hose(100), hose(90, dash=16), hose(120, dash=32)]
    found = validate.findings(tables_with(hose_pressure=rows))
    assert [f.values["size"] for f in found if f.id == "trade-check-wrong-way"] == [32]


def test_a_torque_that_falls_with_size_is_found() -> None:
    rows = [tight(size=size, torque_max_nm=nm) for size, nm in (("8", 60.0), ("12", 50.0), ("16", 90.0))]
    found = [f for f in validate.findings(made_up(tightening=rows)) if f.id == "trade-check-wrong-way"]
    assert [(f.values["size"], f.values["before"], f.values["after"]) for f in found] == [(12, 60, 50)]


def test_a_larger_hose_that_is_said_to_bend_tighter_is_found_unless_two_sources_agree() -> None:
    def bends(*rows: object) -> list[object]:
        found = validate.findings(tables_with(hose_bend=list(rows), hose_standards=[standard()]))
        return [f.values["row"] for f in found if f.id == "trade-check-bend"]

    assert bends(bend(200), bend(150, dash=16)) == [f"hose_bend {HOSE} 16"]
    assert bends(bend(200), bend(150, dash=16), bend(150, dash=16, source="another")) == []
    assert bends(bend(200), bend(150, dash=16), bend(140, dash=16, source="another")) == [
        f"hose_bend {HOSE} 16"
    ], "they do not agree"
    unsure = bend(150, dash=16, source="another", confidence="memory")
    assert bends(bend(200), bend(150, dash=16), unsure) == [f"hose_bend {HOSE} 16"]


def test_a_shop_adds_its_own_hose_and_its_row_is_the_shops(tmp_path: Path) -> None:
    header = "standard,edition,dash,max_working_bar,printed,in_standard,source,confidence,note"
    (tmp_path / "hose_pressure.csv").write_text(
        f"{header}\nSAE 100R2,S,12,190,190 bar,yes,our supplier's sheet 7,shop,\n"
    )
    part = assess(example(hose__edition="S"), Tables.load(extra=tmp_path)).working_pressure.parts[0]
    assert (part.value_bar, part.confidence) == (190, "shop")
    assert "supplier's sheet 7" in part.source


def test_a_shops_bore_holds_where_the_standard_prints_none(tmp_path: Path) -> None:
    (tmp_path / "bores.csv").write_text("dash,bore_mm,source,confidence\n12,17.5,our chart,shop\n")
    own = Hose(standard="own make", dash=12)
    assert geometry.bore_mm(own, tables()) == tables().bores["bore", 12].bore_mm
    assert geometry.bore_mm(own, Tables.load(extra=tmp_path)) == 17.5


def test_what_nothing_is_turned_to_tighten_is_a_taper_thread_or_pushed_together() -> None:
    """What is turned stands in the table; what a tag's digits mean by it, in the spec."""
    assert {f for f, about in tables().families.items() if not about.tighten_by} == {
        family for family in Connection if family.is_taper or family.is_latched
    }


def test_every_rule_is_read_somewhere() -> None:
    code = "".join(p.read_text() for root in ("tagger", "api") for p in Path(root).rglob("*.py"))
    assert [key for key in tables().rules if f'"{key}"' not in code] == []


@pytest.mark.parametrize("bore", ["nan", "inf", "1/0", "wide"])
def test_a_shops_figure_that_is_no_number_is_refused(tmp_path: Path, bore: str) -> None:
    (tmp_path / "bores.csv").write_text(f"dash,bore_mm,source,confidence\n12,{bore},our chart,shop\n")
    with pytest.raises(TradeError, match=r"bores\.csv, line 2, bore_mm"):
        Tables.load(extra=tmp_path)


def test_a_shop_file_of_another_name_or_shape_is_refused(tmp_path: Path) -> None:
    (tmp_path / "prices.csv").write_text("a,b\n1,2\n")
    with pytest.raises(TradeError, match="is not one of the tables"):
        Tables.load(extra=tmp_path)
    (tmp_path / "prices.csv").unlink()
    (tmp_path / "rules.csv").write_text("key,value\nx,1\n")
    with pytest.raises(TradeError, match="has the wrong columns"):
        Tables.load(extra=tmp_path)
