"""Reading what is printed along a hose: nothing guessed, the lower figure where two stand there."""

from __future__ import annotations

import pytest

from tagger.spec import Hose
from tagger.trade import assess, layline
from tagger.trade.layline import LayLine
from tagger.trade.rating import hose_rating
from tagger.trade.tables import tables
from tests.trade.specs import both, end


def of(text: str) -> LayLine:
    return layline.read(text, tables())


def test_standards_size_type_and_pressure_are_read() -> None:
    found = of("SAE 100R2AT / EN 853 2SN -12 WP 215 BAR 2Q22")
    assert (found.standards, found.dash, found.dn) == (("SAE 100R2", "EN 853 2SN"), 12, 19)
    assert (found.edition, found.printed_bar, found.date_code) == ("AT", 215, "2Q22")


@pytest.mark.parametrize(
    ("text", "dash"),
    [
        ("EN 853 2SN DN 12", 8), ("EN 853 2SN 12,5", 8), ("EN 853 2SN 12", None), ("EN 853 2SN | 12,5 | 2Q20", 8), ("EN 853 2SN 1/2\"", 8),
        ("DIN EN 857 2SC DN16", 10), ("EN 856 4SH 1 1/4 in", 20), ("SAE 100R15-16", 16), ("EN 853 2SN SIZE 06", 6),
    ],
)  # fmt: skip
def test_sizes_are_read_in_every_way_they_are_printed(text: str, dash: int | None) -> None:
    assert of(text).dash == dash


def test_of_two_sizes_that_differ_neither_is_taken() -> None:
    found = of("SAE 100R2AT-12 EN 853 2SN DN16")
    assert (found.dash, found.dn, [note.id for note in found.notes]) == (None, None, ["trade-layline-sizes"])


@pytest.mark.parametrize(
    "text",
    ["SAE 100R1AT-8 -12", "SAE 100R1AT-8/-12", "SAE 100R2AT-8 / EN 853 2SN-12", "SAE 100R1AT-8 SIZE 12"],
)
def test_of_two_dashes_that_differ_neither_is_taken(text: str) -> None:
    assert (of(text).dash, [note.id for note in of(text).notes]) == (None, ["trade-layline-sizes"])


@pytest.mark.parametrize(
    "text",
    ["SAE 100R1AT-8 -40 °C", "SAE 100R1AT-8 -40/+100C", "SAE 100R1AT-8 -40 TO 212 F", "SAE 100R1AT -8 -40°C"],
)
def test_a_temperature_printed_is_no_dash(text: str) -> None:
    assert of(text).dash == 8


@pytest.mark.parametrize("size", ["1", '7/8"', "DN 22"])
def test_where_the_dash_names_the_tube_no_bore_becomes_a_dash(size: str) -> None:
    assert of(f"SAE 100R5 {size}").dash is None
    assert (of("SAE 100R5-16").dash, of("SAE 100R5-16").dn) == (16, 22)


def test_the_lower_of_two_printed_pressures_holds_and_burst_is_none_of_them() -> None:
    found = of("SAE 100R15-16 42.0 MPa 6000 PSI WP BURST 1656 BAR")
    assert found.printed_bar == pytest.approx(413.7)
    assert [note.id for note in found.notes] == ["trade-layline-pressures"]
    assert of("EN 853 2SN DN 12 BURST 1100 BAR").printed_bar is None


def test_a_printed_pressure_above_every_rating_of_the_hose_is_told_and_not_offered() -> None:
    size = Hose(standard="EN 853 2SN", dash=12)
    rated = hose_rating(size, tables())[0].value_bar or 0
    right, high, slip = (of(f"EN 853 2SN DN 19 WP {bar:g} BAR") for bar in (rated, rated + 60, 3100))
    assert (right.offered, right.notes) == (True, ())
    assert (high.offered, [n.id for n in high.notes]) == (False, ["trade-layline-pressure-above"])
    (most,) = of("EN 853 2SN DN 19 WP 1000 BAR").notes
    assert most.id == "trade-layline-pressure-above", "no more than a hose can have"
    assert (slip.offered, [n.id for n in slip.notes]) == (False, ["trade-layline-pressure-impossible"])
    assert "rating" not in (layline.hose_of(slip, tables()) or {})


def test_a_jetting_hose_gives_no_hydraulic_hose_and_offers_no_pressure() -> None:
    for text in (
        "JETTING HOSE 3/4 250 BAR",
        "EN 853 2SN JETTING HOSE DN 19 WP 250 BAR",
        "WATER BLAST -12 400 BAR",
    ):
        found = of(text)
        assert (found.offered, layline.hose_of(found, tables())) == (False, None), text
        assert "trade-jetting-hose" in [note.id for note in found.notes], text


def test_a_pressure_of_a_line_without_a_standard_is_offered_for_nothing() -> None:
    assert (of("MAKER -12 WP 250 BAR").printed_bar, of("MAKER -12 WP 250 BAR").offered) == (250, False)
    assert of("LPG HOSE -8 WP 25 BAR").offered, "rated by its manufacturer alone"


def test_a_pressure_without_a_unit_is_not_read() -> None:
    assert of("SAE 100R2AT-8 4000 Max. Working Pressure").printed_bar is None


def test_a_model_number_that_looks_like_a_type_is_no_standard() -> None:
    found = of("NO SKIVE | MODEL-1SN-10 | SAE100R2AT-10 | EN853/2SN/16/DIN")
    assert found.standards == ("SAE 100R2", "EN 853 2SN")
    assert of("MODEL-2SN DN 12").standards == ()
    for by_itself in ("2SN DN 12", "2SN-12", "2 SN-12", "2 SN DN 12"):
        assert of(by_itself).standards == ("EN 853 2SN",), by_itself
    for part_of_more in ("2SN-A 7", "2 SN-A 7", "R2-SN", "X-2 SN"):
        assert of(part_of_more).standards == (), part_of_more


def test_of_two_standards_the_printed_pressure_tells_else_the_lower_is_taken() -> None:
    plain, printed = "EN 856 4SP - SAE 100R12 -12", "EN 856 4SP - SAE 100R12 -12 WP 350 BAR"
    rated = {s: hose_rating(Hose(standard=s, dash=12), tables())[0].value_bar for s in of(plain).standards}
    lower, higher = sorted(rated, key=lambda s: rated[s] or 0)
    assert (rated[lower] or 0) < 350 <= (rated[higher] or 0)
    assert (layline.hose_of(of(plain), tables()) or {})["standard"] == lower
    hose = layline.hose_of(of(printed), tables())
    assert hose == {
        "standard": higher, "dash": 12, "rating": {"value_bar": 350.0, "source": "printed on the hose"}
    }  # fmt: skip
    spec = both(higher, 12, end("orfs", 12), hose=hose)
    (part,) = [p for p in assess(spec).working_pressure.parts if p.part == "hose"]
    assert (part.value_bar, part.source) == (350, "printed on the hose")


def test_a_printed_pressure_above_the_tables_raises_nothing() -> None:
    hose = layline.hose_of(of("EN 853 1SN DN 25 WP 200 BAR"), tables())
    spec = both("EN 853 1SN", 16, end("orfs", 16), hose=hose)
    (part,) = [p for p in assess(spec).working_pressure.parts if p.part == "hose"]
    assert part.value_bar == hose_rating(Hose(standard="EN 853 1SN", dash=16), tables())[0].value_bar


def test_a_class_of_iso_18752_is_bar_unless_the_printed_pressure_says_mpa() -> None:
    assert of("ISO 18752 AC 35 DN 12").standards == ("ISO 18752 35",)
    assert of("ISO 18752 AC 35 DN 12 35,0 MPa").standards == ("ISO 18752 350",)
    assert of("ISO 18752-420-DC -16").standards == ("ISO 18752 420",)


@pytest.mark.parametrize("text", ["SAE 10OR2AT-8", "EN 853 2NS", "EN 583 2SN/"])
def test_three_standards_at_most_are_proposed_for_a_misspelling(text: str) -> None:
    found = layline.nearest(text, tables())
    assert 1 <= len(found) <= 3
    assert found[0] in ("SAE 100R2", "EN 853 2SN")


@pytest.mark.parametrize("text", ["10012", "MAKER 85312 7", "boom", "ROD SIDE"])
def test_no_standard_is_proposed_for_a_bare_number_or_a_word(text: str) -> None:
    """10012 is as near to 100R12 as a slip of the pen, and most numbers of a machine are as near to some standard."""
    assert layline.nearest(text, tables()) == ()


def test_a_misspelling_is_found_behind_the_words_of_a_manufacturer() -> None:
    text = "MAKER HIGH PRESSURE LINE NO 7 SAE 10OR2AT-8"
    assert layline.nearest(text, tables())[0] == "SAE 100R2"
    assert of(text).nearest == layline.nearest(text, tables())


def test_a_hose_that_is_no_hydraulic_one_is_named_and_never_taken_for_one() -> None:
    found = of("MAKER | USCG TYPE A1-15 | style R2")
    assert (found.standards, found.named) == ((), ("SAE J1527",))
    assert layline.hose_of(found, tables()) is None


def test_nothing_is_read_of_what_is_no_lay_line() -> None:
    assert of("boom cylinder, rod side") == LayLine()
