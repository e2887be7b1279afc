"""A shop's own hose: its rows rate, bend and limit it, and no other hose."""

from __future__ import annotations

import json
from typing import Any

import pytest

from tagger.errors import SpecError
from tagger.spec import Hose
from tagger.trade import assess, geometry
from tagger.trade.own_hoses import OwnHose, above_published, own_hoses, read_own_hose, rows_of, said
from tagger.trade.results import Assessment
from tagger.trade.tables import Tables, shop_row, tables
from tests.trade.made_up import HOSE as MADE
from tests.trade.made_up import assembly, fluid, hose, made_up
from tests.trade.specs import example

HOSE: dict[str, Any] = {
    "part": "TW 2W 12", "manufacturer": "an invented one", "standard": "2sn", "dash": 12, "max_working_bar": "150 bar",
    "source": "data sheet 7",
}  # fmt: skip
PUBLISHED = assess(example(hose__standard="EN 853 2SN"), tables()).working_pressure.parts[0].value_bar


def kept(**more: Any) -> Tables:
    rows = rows_of(read_own_hose({**HOSE, **more}, tables()))
    return Tables.load(kept=[(row.table, shop_row(row.table, row.cells, "kept")) for row in rows])


def rated(of: Tables, part: str | None = "tw-2w-12", **spec: Any) -> float | None:
    spec = {"hose__standard": "EN 853 2SN", "hose__part": part} | spec
    return assess(example(**spec), of).working_pressure.parts[0].value_bar


def test_an_own_hose_is_rated_by_its_own_figure_and_no_other_hose_by_it() -> None:
    assert (rated(kept()), rated(kept(), part=None), rated(kept(), part="other")) == (
        150,
        PUBLISHED,
        PUBLISHED,
    )


def test_a_hose_of_an_edition_that_the_row_does_not_name_keeps_its_own_lower_rating() -> None:
    for edition in tables().editions.get("EN 853 2SN", ()):
        assert rated(kept(), hose__edition=edition.edition) == 150


def test_an_own_figure_above_every_published_one_says_so() -> None:
    assert PUBLISHED is not None
    spec = example(hose__standard="EN 853 2SN", hose__part="TW 2W 12")
    found = assess(spec, kept(max_working_bar=PUBLISHED + 35))
    hose = found.working_pressure.parts[0]
    assert (hose.value_bar, hose.above_published_bar) == (PUBLISHED + 35, PUBLISHED)
    (told,) = found.above_published
    assert told.id == "trade-rating-above-published"
    kept_as = Assessment.model_validate_json(json.dumps(found.kept()))
    assert kept_as.above_published == (told,), "a record that is read again says so too"


def test_the_hose_itself_is_said_to_be_rated_above_every_published_figure_only_where_it_is() -> None:
    def told(**more: Any) -> tuple[str, float | None]:
        own = read_own_hose({**HOSE, **more}, tables())
        return said(own, tables()).id, above_published(own, tables())

    assert PUBLISHED is not None
    assert told(max_working_bar=PUBLISHED) == ("trade-own-hose-rating", None)
    assert told(max_working_bar=PUBLISHED * 1.004) == ("trade-own-hose-above", PUBLISHED)
    assert told(standard="own line", max_working_bar=900) == ("trade-own-hose-rating", None), (
        "nothing to be above"
    )


def test_a_hose_that_is_rated_up_to_a_heat_has_no_rating_above_it_nor_that_of_its_standard() -> None:
    limited = kept(max_temperature_c=80)
    assert (rated(limited, max_temperature_c=80), rated(limited, max_temperature_c=90), rated(limited)) == (
        150, None, None,
    )  # fmt: skip
    assert rated(limited, part=None, max_temperature_c=90) == PUBLISHED


def test_a_hose_that_is_rated_for_one_fluid_up_to_a_heat_has_no_rating_above_it_nor_that_of_its_standard() -> (
    None
):
    """The standard may carry it, and hotter: what the part number's own manufacturer says of it goes before."""
    own = hose(80, part="TW", fluid="water_glycol", max_temperature_c=60.0, confidence="shop")
    made = made_up(hose_pressure=[hose(100), own], hose_fluids=[fluid("water_glycol", -20, 90)])
    for hottest, bar in ((60, 80), (61, None), (None, None)):
        more = {} if hottest is None else {"max_temperature_c": hottest}
        spec = assembly(hose={"standard": MADE, "dash": 12, "part": "TW"}, fluid="water_glycol", **more)
        assert assess(spec, made).working_pressure.parts[0].value_bar == bar, hottest


def test_the_larger_of_its_bend_radius_and_the_standards_holds_and_its_own_diameter() -> None:
    plain, own = Hose(standard="EN 853 2SN", dash=12), Hose(standard="EN 853 2SN", dash=12, part="TW 2W 12")
    standard = geometry.bend_radius(plain, tables())[0].mm
    assert standard is not None
    for given, shown in ((standard + 60, standard + 60), (standard - 60, standard)):
        of = kept(bend_radius_mm=given, outside_diameter_mm=31.7)
        assert geometry.bend_radius(own, of)[0].mm == shown
        assert geometry.bend_radius(plain, of)[0].mm == standard
        assert geometry.outside_diameter(own, of).mm == 31.7
        assert geometry.outside_diameter(plain, of).mm == geometry.outside_diameter(plain, tables()).mm


def test_what_is_kept_is_read_back_whole() -> None:
    hose = read_own_hose(
        {**HOSE, "bend_radius_mm": "9 in", "outside_diameter_mm": 31.7, "max_temperature_c": 90}
        | {"fluids": ["water_glycol"]},
        tables(),
    )
    assert own_hoses(rows_of(hose)) == [hose]
    assert (hose.standard, hose.bend_radius_mm) == ("EN 853 2SN", 228.6)


@pytest.mark.parametrize(
    "field, change",
    [
        ("source", {"source": " "}),
        ("max_temperature_c", {"fluids": ["water_glycol"]}),
        ("max_working_bar", {"max_working_bar": "lots"}),
        ("part", {"part": "--"}),
        ("edition", {"edition": "XZ"}),
        ("bend_radius_mm", {"bend_radius_mm": 0}),
        ("bend_radius_mm", {"bend_radius_mm": 9.5}),  # in, typed as mm
        ("bend_radius_mm", {"bend_radius_mm": 25, "outside_diameter_mm": 31.7, "standard": "own line"}),
        ("outside_diameter_mm", {"outside_diameter_mm": "1,25"}),
    ],
)
def test_what_is_missing_or_wrong_is_named(field: str, change: dict[str, Any]) -> None:
    with pytest.raises(SpecError) as error:
        read_own_hose({**HOSE, **change}, tables())
    assert [problem.field for problem in error.value.problems] == [field]
    assert not error.value.problems[0].message.id.startswith("words-"), "another's words, in one language"


def test_two_hoses_of_one_part_number_in_two_sizes_are_two() -> None:
    two = [OwnHose.model_validate({**HOSE, "standard": "EN 853 2SN", "max_working_bar": bar, "dash": dash, "bend_radius_mm": bend})
           for dash, bar, bend in ((8, 200, 130), (12, 150, 240))]  # fmt: skip
    assert own_hoses([row for hose in two for row in rows_of(hose)]) == two
