"""Working pressure: the least part, what is not known, what is given."""

from __future__ import annotations

import pytest

from tagger.errors import TradeError
from tagger.messages import Message
from tagger.spec import Connection, Form, Hose, Material
from tagger.trade import assess
from tagger.trade.rating import end_rating, hose_rating
from tagger.trade.tables import tables
from tests.trade.specs import an_end, both, end, example


def codes(found: object) -> set[str]:
    return {w.code for w in found.warnings}  # type: ignore[attr-defined]


def test_the_hose_of_an_unnamed_edition_limits_the_example() -> None:
    found = assess(example())
    assert found.working_pressure.value_bar == 155.1
    assert found.working_pressure.limited_by == "hose"
    assert found.working_pressure.margin_bar == 51.7
    assert "edition_not_given" in codes(found)


def test_with_the_edition_named_the_swivel_nut_limits_the_example() -> None:
    found = assess(example(hose__edition="S"))
    assert found.working_pressure.value_bar == 206.8
    assert found.working_pressure.limited_by == "end_a"
    assert "edition_not_given" not in codes(found)


@pytest.mark.parametrize(("edition", "bar"), [("2003", 155.1), ("AT", 155.1), ("s", 213.7), ("2010", 213.7)])
def test_an_edition_or_a_year_names_the_figures(edition: str, bar: float) -> None:
    hose = example(hose__edition=edition).hose
    assert hose_rating(hose, tables())[0].value_bar == bar


@pytest.mark.parametrize("year", ["2021", "2050"])
def test_a_year_later_than_any_known_edition_raises_no_rating(year: str) -> None:
    with pytest.raises(TradeError) as refused:
        assess(example(hose__edition=year))
    (found,) = refused.value.problems
    newest = f"{tables().rule('edition_year_known').value:g}"
    assert (found.field, found.message) == (
        "hose.edition",
        Message("trade-edition-too-new", year=year, newest=newest),
    )


def test_an_unknown_edition_is_refused_with_the_known_ones() -> None:
    with pytest.raises(TradeError) as refused:
        assess(example(hose__edition="XZ"))
    assert refused.value.problems[0].field == "hose.edition"
    known = tuple(item.edition for item in tables().editions["SAE 100R2"])
    assert refused.value.problems[0].message.values["editions"] == known


def test_a_swivel_nut_is_rated_below_the_tube_end_of_its_size() -> None:
    for size in ("4", "6", "8", "12", "16", "32"):
        swivel = end_rating("end_a", an_end(Connection.SAE_37_FLARE, size, "female_swivel"), tables())
        male = end_rating("end_a", an_end(Connection.SAE_37_FLARE, size, "male"), tables())
        assert swivel.value_bar is not None and male.value_bar is not None
        assert swivel.value_bar < male.value_bar


def test_an_elbow_boss_stud_is_adjustable_and_rated_lower() -> None:
    straight = end_rating("end_a", an_end(Connection.SAE_ORB, "8", "male"), tables())
    elbow = end_rating("end_a", an_end(Connection.SAE_ORB, "8", "male", shape="elbow_90"), tables())
    assert (straight.value_bar, elbow.value_bar) == (310.3, 275.8)


def test_a_family_without_a_published_rating_is_not_known_and_says_at_most() -> None:
    found = assess(both("EN 853 2SN", 8, end("bspp", "1/2")))
    assert found.working_pressure.value_bar is None
    assert found.working_pressure.limited_by is None
    assert found.working_pressure.at_most_bar == 275
    assert found.test_pressure_bar is None
    assert {"pressure_not_known", "rating_not_known"} <= codes(found)


def test_published_ratings_hold_for_steel_and_not_for_stainless() -> None:
    stainless = an_end(Connection.SAE_37_FLARE, "12", "female_swivel", material=Material.STAINLESS_STEEL)
    rating = end_rating("end_a", stainless, tables())
    assert rating.value_bar is None
    assert rating.why is not None and rating.why.id == "trade-why-end-steel"


def test_a_pressure_given_stands_for_parts_not_known() -> None:
    given = {"value_bar": 200, "source": "maker's data sheet"}
    found = assess(both("EN 853 2SN", 8, end("bspp", "1/2"), working_pressure=given))
    assert found.working_pressure.value_bar == 200
    assert found.working_pressure.limited_by == "override"
    assert found.working_pressure.source == "maker's data sheet"
    assert found.test_pressure_bar == 400


def test_a_pressure_given_above_a_part_does_not_raise_it() -> None:
    found = assess(example(working_pressure={"value_bar": 400, "source": "hope"}))
    assert found.working_pressure.value_bar == 155.1
    loud = [w for w in found.warnings if w.code == "pressure_given_too_high"]
    assert [w.severity for w in loud] == ["danger"]


def test_an_unknown_hose_needs_a_pressure_given() -> None:
    with pytest.raises(TradeError) as refused:
        assess(example(hose__standard="XYZ 900"))
    assert refused.value.problems[0].field == "hose.standard"
    found = assess(
        example(hose__standard="XYZ 900", working_pressure={"value_bar": 90, "source": "maker's data sheet"})
    )
    assert found.working_pressure.value_bar == 90
    assert found.bend_radius_mm is None
    assert "standard_not_known" in codes(found)


def test_test_and_burst_follow_from_the_working_pressure() -> None:
    found = assess(example())
    assert (found.test_pressure_bar, found.burst_pressure_bar) == (310.2, 620.4)


def test_every_end_is_rated_or_said_to_be_not_known() -> None:
    all_tables = tables()
    for family, about in all_tables.families.items():
        for form in about.forms:
            for size in all_tables.sizes(family):
                rating = end_rating("end_a", an_end(family, size, form), all_tables)
                known = rating.value_bar is not None
                assert (bool(rating.source), rating.why is None) == (known, known)


def test_a_rating_from_memory_is_said_to_be() -> None:
    assert "rating_from_memory" in codes(assess(example()))


@pytest.mark.parametrize("spelling", ["R2", "100R2AT", "sae 100r2", "SAE J517 100R2"])
def test_close_spellings_of_a_standard_are_read(spelling: str) -> None:
    assert assess(example(hose__standard=spelling)).working_pressure.value_bar == 155.1


def test_forms_are_those_of_the_spec() -> None:
    for about in tables().families.values():
        assert set(about.forms) <= set(Form)


def test_a_makers_size_outside_the_standard_is_said_to_be() -> None:
    assert "outside_standard" in codes(assess(both("EN 853 2SN", 40, end("sae_37_flare", 40))))


@pytest.mark.parametrize(("dash", "bar"), [(3, 25), (4, 25), (5, 20), (6, 20), (8, 16), (10, 16)])
def test_en_854_1te_is_not_rated_as_sae_100r6(dash: int, bar: float) -> None:
    rated, _ = hose_rating(Hose(standard="EN 854 1TE", dash=dash), tables())
    assert rated.value_bar == bar and rated.confidence == "memory"
    assert "SAE 100R6" in rated.note


@pytest.mark.parametrize("dash", [12, 14, 16])
def test_larger_1te_is_one_makers_and_outside_the_standard(dash: int) -> None:
    _, warnings = hose_rating(Hose(standard="EN 854 1TE", dash=dash), tables())
    assert "outside_standard" in {w.code for w in warnings}
