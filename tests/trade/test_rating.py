"""Working pressure: the least part, what is not known, what is given. Figures here are made up."""

from __future__ import annotations

import pytest

from tagger import phrases
from tagger.errors import TradeError
from tagger.messages import Message, pressure, temperature
from tagger.spec import AssemblySpec, Connection, Form, Hose
from tagger.trade import assess
from tagger.trade import rows as row
from tagger.trade.rating import end_rating, hose_rating
from tagger.trade.results import Assessment
from tagger.trade.tables import Tables, tables
from tests.trade.made_up import HOSE, SOURCE, assembly, edition, ending, fluid, hose, made_up, rule, standard
from tests.trade.specs import an_end, both, end, example

EDITIONS = {
    "hose_pressure": [hose(100, edition="older"), hose(150, edition="newer")],
    "hose_editions": [edition("A", "older"), edition("N", "newer", from_year=2004)],
}
"""A hose whose rating rose: 100 bar in edition A, 150 bar in edition N, from 2004."""


FLARE = Connection("sae_37_flare")


def codes(found: Assessment) -> set[str]:
    return {w.code for w in found.warnings}


def flare(tables: Tables, form: str = "female_swivel", **more: object) -> float | None:
    return end_rating("end_a", an_end(Connection("sae_37_flare"), "12", form, **more), tables).value_bar


def test_the_least_part_limits_and_the_margin_is_that_to_the_next() -> None:
    found = assess(assembly(), made_up(connection_pressure=[ending(120)])).working_pressure
    assert (found.value_bar, found.limited_by, found.margin_bar) == (100, "hose", 20)
    assert (found.source, found.printed, found.why) == (SOURCE, "100 bar", None)
    two = both(HOSE, 12, end("sae_37_flare", 12)).model_copy(update={"end_b": an_end(FLARE, "12", "male")})
    apart = made_up(connection_pressure=[ending(120, forms=("female_swivel",)), ending(150, forms=("male",))])
    assert assess(two, apart).working_pressure.margin_bar == 20, "to the next, not to the last"
    other = assess(assembly(), made_up(connection_pressure=[ending(90)])).working_pressure
    assert (other.value_bar, other.limited_by) == (90, "end_a")


def test_of_several_sources_the_least_is_shown() -> None:
    several = made_up(hose_pressure=[hose(110), hose(95, source="another"), hose(130)])
    found = assess(assembly(), several).working_pressure
    assert (found.value_bar, found.source) == (95, "another")


def test_of_equal_figures_the_better_grade_of_source_is_shown() -> None:
    grades = {"a reposted chart": "secondary", "a manual": "document", "a listing": "secondary"}
    sources = [row.Source(name, grade, name, name) for name, grade in grades.items()]
    equal = [hose(95, source=name) for name in grades]
    found = assess(assembly(), made_up(hose_pressure=equal, sources=sources)).working_pressure
    assert (found.value_bar, found.source) == (95, "a manual")
    lower = [hose(90, source="a listing"), *equal]
    least = assess(assembly(), made_up(hose_pressure=lower, sources=sources)).working_pressure
    assert (least.value_bar, least.source) == (90, "a listing"), "the least holds, whatever its grade"


def test_only_what_is_one_figure_in_two_units_gives_way_to_a_better_source() -> None:
    """2500 psi are 172.37 bar, printed as 172.4 and as 172: 0.3 % apart at most."""
    for published, shown in ((100.29, 100.29), (100.31, 100), (103, 100)):
        rows = [hose(100, confidence="memory", source="an old chart"), hose(published)]
        assert hose_rating(Hose(standard=HOSE, dash=12), made_up(hose_pressure=rows))[0].value_bar == shown
        ends = [ending(100, confidence="memory", source="an old chart"), ending(published)]
        assert flare(made_up(connection_pressure=ends)) == shown


def test_one_figure_in_two_units_is_shown_in_the_unit_of_its_standard() -> None:
    twice = [hose(172.0, printed="172 bar"), hose(172.4, printed="2500 psi")]
    ends = [ending(300)]
    sae = assess(assembly(), made_up(hose_pressure=twice, connection_pressure=ends)).working_pressure
    assert sae.printed == "2500 psi"
    metric = [standard(bands="din")]
    din = made_up(hose_pressure=twice, hose_standards=metric, connection_pressure=ends)
    assert assess(assembly(), din).working_pressure.printed == "172 bar"
    rounded = [hose(172.0, printed="2495 psi"), hose(172.4, printed="172.4 bar")]
    bar_first = made_up(hose_pressure=rounded, hose_standards=metric, connection_pressure=ends)
    assert assess(assembly(), bar_first).working_pressure.printed == "172.4 bar", (
        "in bar, though the other is less"
    )


def test_without_the_edition_the_lower_figure_applies_and_the_warning_names_both() -> None:
    found = assess(assembly(), made_up(**EDITIONS))
    assert found.working_pressure.value_bar == 100
    (said,) = [w.message for w in found.warnings if w.code == "edition_not_given"]
    assert said.values["ratings"] == (
        Message("trade-edition-rating", edition="newer", pressure=pressure(150)),
        Message("trade-edition-rating", edition="older", pressure=pressure(100)),
    )


@pytest.mark.parametrize(
    ("named", "bar"), [("A", 100), ("a", 100), ("N", 150), ("2003", 100), ("2004", 150), ("2010", 150)]
)
def test_an_edition_or_a_year_names_the_figures(named: str, bar: float) -> None:
    rated, warnings = hose_rating(Hose(standard=HOSE, dash=12, edition=named), made_up(**EDITIONS))
    assert rated.value_bar == bar and warnings == []


def test_a_year_names_the_edition_in_force_then_of_several_that_are_dated() -> None:
    figures = {"older": 100, "newer": 150, "newest": 130}
    years = {"older": None, "newer": 2004, "newest": 2010}
    dated = made_up(
        hose_pressure=[hose(bar, edition=name) for name, bar in figures.items()],
        hose_editions=[edition(name, name, from_year=year) for name, year in years.items()],
        rules=rule("edition_year_known", 2015),
    )
    for year, bar in ((2003, 100), (2004, 150), (2009, 150), (2010, 130), (2015, 130)):
        assert hose_rating(Hose(standard=HOSE, dash=12, edition=str(year)), dated)[0].value_bar == bar, year


def test_no_raised_figure_holds_for_a_hose_of_2003_or_before() -> None:
    """SAE J517 of July 2003 still has the older figures: its preview, named in the rows."""
    dated = {name: [item for item in of if item.from_year] for name, of in tables().editions.items()}
    assert sum(map(len, dated.values())) >= 2
    for name, items in dated.items():
        for item in items:
            assert item.from_year is not None and item.from_year > 2003, (name, item.edition)
        for dash in (4, 8, 16) if items else ():
            rated = [
                hose_rating(Hose(standard=name, dash=dash, edition=year), tables())[0].value_bar
                for year in ("1990", "2003", None)
            ]
            assert len(set(rated)) == 1, (name, dash)


def test_a_year_later_than_any_known_edition_raises_no_rating() -> None:
    dated = made_up(rules=rule("edition_year_known", 2011), **EDITIONS)
    hose_rating(Hose(standard=HOSE, dash=12, edition="2011"), dated)
    with pytest.raises(TradeError) as refused:
        hose_rating(Hose(standard=HOSE, dash=12, edition="2012"), dated)
    (found,) = refused.value.problems
    assert (found.field, found.message) == (
        "hose.edition",
        Message("trade-edition-too-new", year="2012", newest="2011"),
    )


def test_an_unknown_edition_is_refused_with_the_known_ones() -> None:
    with pytest.raises(TradeError) as refused:
        hose_rating(Hose(standard=HOSE, dash=12, edition="XZ"), made_up(**EDITIONS))
    (found,) = refused.value.problems
    assert (found.field, found.message.values["editions"]) == ("hose.edition", ("A", "N"))


def test_form_shape_and_material_each_have_their_own_rating() -> None:
    found = made_up(
        connection_pressure=[
            ending(120, forms=("female_swivel",)),
            ending(140, forms=("male",), shapes=("straight",)),
            ending(130, forms=("male",), shapes=("elbow",)),
            ending(60, material="brass"),
        ]
    )
    assert flare(found) == 120
    assert (flare(found, "male"), flare(found, "male", shape="elbow_90")) == (140, 130)
    assert flare(found, material="brass") == 60


def test_the_highest_heat_that_a_source_rates_an_end_at_is_told_where_it_is_hotter() -> None:
    brass = [ending(bar, material="brass", max_temperature_c=most) for bar, most in ((90, 60.0), (60, 80.0))]
    made, soft = made_up(connection_pressure=brass), an_end(FLARE, "12", "female_swivel", material="brass")
    found = {c: end_rating("end_a", soft, made, c) for c in (60.0, 61.0, 80.0, 81.0)}
    assert [part.value_bar for part in found.values()] == [60, 60, 60, None]
    assert found[81.0].why is not None and found[81.0].why.values["limit"] == temperature(80.0)


def test_an_ends_rating_for_one_fluid_rates_it_with_that_fluid_alone() -> None:
    made = made_up(
        connection_pressure=[ending(120, fluid="water_glycol")], hose_fluids=[fluid("water_glycol", -20, 70)]
    )
    for flows, bar in (("water_glycol", 120), ("engine_oil", None), (None, None)):
        found = assess(assembly(**({"fluid": flows} if flows else {})), made).working_pressure
        assert [p.value_bar for p in found.parts] == [100, bar, bar], flows


def test_published_ratings_are_for_steel_and_the_reason_says_so() -> None:
    stainless = an_end(Connection("sae_37_flare"), "12", "female_swivel", material="stainless_steel")
    rating = end_rating("end_a", stainless, made_up())
    assert (rating.value_bar, rating.source) == (None, "")
    assert rating.why is not None and rating.why.id == "trade-why-end-steel"


def test_a_ceiling_of_the_family_is_told_and_rates_nothing() -> None:
    found = made_up(connection_pressure=[ending(630, size="all", use="ceiling")])
    rating = end_rating("end_a", assembly().end_a, found)
    assert rating.value_bar is None
    assert rating.why is not None and rating.why.id == "trade-why-end-ceiling"
    assert rating.why.values["ceiling"] == pressure(630)


def test_another_metal_is_told_of_ratings_for_steel_only_where_there_are_some() -> None:
    ceiling = ending(630, size="all", use="ceiling")
    stainless = an_end(FLARE, "12", "female_swivel", material="stainless_steel")
    for rows, told in (
        ([ceiling], "trade-why-end-ceiling"),
        ([ceiling, ending(120)], "trade-why-end-steel-ceiling"),
    ):
        why = end_rating("end_a", stainless, made_up(connection_pressure=rows)).why
        assert why is not None and (why.id, why.values["ceiling"]) == (told, pressure(630))


def test_an_unknown_part_leaves_the_whole_unknown_and_says_at_most_in_one_sentence() -> None:
    mixed = AssemblySpec.read(
        {
            "hose": {"standard": HOSE, "dash": 12},
            "end_a": end("sae_37_flare", 12),
            "end_b": end("bspp", "3/4"),
            "length_mm": 1000,
        }
    )
    found = assess(mixed, made_up())
    why = Message(
        "trade-pressure-at-most",
        parts=(phrases.part("end_b"),),
        pressure=pressure(100),
        part=phrases.part("hose"),
    )
    assert found.working_pressure.value_bar is None and found.working_pressure.limited_by is None
    assert (found.working_pressure.at_most_bar, found.working_pressure.why) == (100, why)
    assert found.test_pressure_bar is None
    assert why in [w.message for w in found.warnings if w.code == "pressure_not_known"]
    assert str(why) == (
        "The working pressure is not known because the rating of end B is not known. "
        "It cannot exceed 100 bar (1450 psi), the rating of the hose. Use the manufacturer's value."
    )


def test_a_pressure_given_stands_for_parts_not_known() -> None:
    given = {"value_bar": 80, "source": "data sheet 7"}
    found = assess(assembly(working_pressure=given), made_up(connection_pressure=[]))
    assert (found.working_pressure.value_bar, found.working_pressure.limited_by) == (80, "override")
    assert found.working_pressure.source == "data sheet 7"
    (said,) = [w for w in found.warnings if w.code == "pressure_given"]
    assert said.message.values["parts"] == (phrases.part("end_a"), phrases.part("end_b"))
    assert (said.message.id, said.severity) == ("trade-pressure-entered-for", "care")


def test_a_pressure_given_below_every_part_is_only_noted() -> None:
    found = assess(assembly(working_pressure={"value_bar": 80, "source": "data sheet 7"}), made_up())
    assert found.working_pressure.value_bar == 80
    (said,) = [w for w in found.warnings if w.code == "pressure_given"]
    assert (said.message.id, said.severity) == ("trade-pressure-entered", "note")


def test_a_pressure_given_above_a_part_does_not_raise_it() -> None:
    found = assess(assembly(working_pressure={"value_bar": 400, "source": "hope"}), made_up())
    assert found.working_pressure.value_bar == 100
    loud = [w for w in found.warnings if w.code == "pressure_given_too_high"]
    assert [(w.severity, w.message.id) for w in loud] == [("danger", "trade-pressure-too-high")]


def test_an_unknown_hose_needs_a_pressure_given() -> None:
    with pytest.raises(TradeError) as refused:
        assess(example(hose__standard="XYZ 900"))
    assert refused.value.problems[0].field == "hose.standard"
    found = assess(
        example(hose__standard="XYZ 900", working_pressure={"value_bar": 9, "source": "data sheet 7"})
    )
    assert found.working_pressure.value_bar == 9
    assert found.bend_radius_mm is None
    assert "standard_not_known" in codes(found)


def test_test_and_burst_follow_from_the_working_pressure_by_the_rules() -> None:
    found = assess(assembly(), made_up(rules=rule("proof_factor", 3)))
    assert (found.test_pressure_bar, found.burst_pressure_bar) == (
        300,
        100 * tables().rule("burst_factor").value,
    )
    exact = assess(assembly(), made_up(hose_pressure=[hose(100.13)]))
    assert (exact.test_pressure_bar, exact.burst_pressure_bar) == (200.3, 400.5), (
        "in tenths, as a tag has them"
    )


def test_every_end_is_rated_or_said_to_be_not_known() -> None:
    all_tables = tables()
    for family, about in all_tables.families.items():
        for form in about.forms:
            for size in all_tables.sizes(family):
                rating = end_rating("end_a", an_end(family, size, form), all_tables)
                known = rating.value_bar is not None
                assert (bool(rating.source), rating.why is None) == (known, known)


def test_a_rating_from_memory_is_said_to_be_unverified() -> None:
    remembered = hose(100, source="an old chart", confidence="memory")
    found = assess(assembly(), made_up(hose_pressure=[remembered]))
    (said,) = [w.message for w in found.warnings if w.code == "rating_from_memory"]
    assert (said.id, said.values["source"]) == ("trade-rating-unverified", "an old chart")


def test_a_rating_by_judgement_is_unverified_and_named_as_one() -> None:
    taken_over = ending(90, source="judgement: a like part", confidence="judgement")
    found = assess(assembly(), made_up(connection_pressure=[taken_over]))
    assert found.working_pressure.value_bar == 90
    assert [p.standing for p in found.working_pressure.parts] == ["verified", "unverified", "unverified"]
    (a, _) = [w for w in found.warnings if w.code == "rating_by_judgement"]
    assert (a.field, a.message.id) == ("end_a", "trade-rating-unverified")


@pytest.mark.parametrize("confidence", ["memory", "judgement"])
def test_an_unverified_figure_never_raises_what_a_published_one_allows(confidence: str) -> None:
    unsure = {"source": f"{confidence}: somebody", "confidence": confidence}
    higher = made_up(connection_pressure=[ending(90), ending(200, **unsure)])
    assert flare(higher) == 90
    ceiling = ending(80, use="ceiling", size="all")
    capped = end_rating(
        "end_a",
        an_end(FLARE, "12", "female_swivel"),
        made_up(connection_pressure=[ceiling, ending(200, **unsure)]),
    )
    assert (capped.value_bar, capped.printed, capped.standing) == (80, "80 bar", "unverified")
    published = made_up(connection_pressure=[ceiling, ending(90)])
    assert flare(published) == 90, "a general limit does not overrule a figure for the size"


def test_unknown_verified_and_unverified_are_told_of_each_part() -> None:
    parts = assess(both("EN 853 2SN", 8, end("jis_30", "M22x1.5"))).working_pressure.parts
    assert [p.standing for p in parts] == ["verified", "unknown", "unknown"]


@pytest.mark.parametrize(
    ("family", "size", "form", "material", "bar", "standing"),
    [
        ("npt", "1/4", "male", "carbon_steel", 275.8, "verified"),  # the NPTF column, one thread to a gauge
        ("bspt", "1/4", "male", "carbon_steel", 275.8, "unverified"),
        ("bspp", "1", "female_swivel", "carbon_steel", 200, "unverified"),
        ("bspp", "1/4", "female_fixed", "carbon_steel", 275.8, "unverified"),
        ("din24_heavy", "14", "male", "carbon_steel", 630, "verified"),
        ("din24_very_light", "6", "male", "carbon_steel", 100, "verified"),
        ("flange_code62", "40", "flange_head", "carbon_steel", 172.4, "unverified"),
        ("flange_code61", "16", "flange_head", "stainless_steel", 338.3, "verified"),
        ("din24_light", "12", "male", "stainless_steel", 250, "unverified"),
        (
            "qd_iso16028",
            "4",
            "coupler_male",
            "carbon_steel",
            300,
            "unverified",
        ),  # 315 remembered, listed up to 300
        ("staple", "8", "staple_male", "carbon_steel", 240, "unverified"),
        ("qd_iso7241_a", "8", "coupler_male", "carbon_steel", None, "unknown"),
        ("jis_60", "1/2", "female_swivel", "carbon_steel", None, "unknown"),
        ("sae_37_flare", "8", "female_swivel", "stainless_steel", None, "unknown"),
    ],
)
def test_the_end_is_rated_as_surely_as_its_source(
    family: str, size: str, form: str, material: str, bar: float | None, standing: str
) -> None:
    part = end_rating("end_a", an_end(Connection(family), size, form, material=material), tables())
    assert (part.value_bar, part.standing) == (bar, standing)


def test_a_plain_tube_takes_the_lower_series_and_of_one_series_its_own() -> None:
    def rated(size: str, series: str | None = None) -> float | None:
        tube = an_end(Connection("din_standpipe"), size, "standpipe", series=series)
        return end_rating("end_a", tube, tables()).value_bar

    assert (rated("12", "S"), rated("12", "L"), rated("12")) == (630, 250, 250)
    assert (rated("15"), rated("20")) == (250, 400), "made in one series only"


def test_no_burst_pressure_is_told_of_a_coupler() -> None:
    """Dealers list couplers that burst at 3 times their working pressure; 4 times was told."""
    found = assess(both("EN 853 2SN", 8, end("qd_iso16028", 8, "coupler_male")))
    assert found.working_pressure.value_bar is not None and found.test_pressure_bar is not None
    assert found.burst_pressure_bar is None
    assert {w.field for w in found.warnings if w.code == "burst_not_known"} == {"end_a", "end_b"}


@pytest.mark.parametrize("spelling", ["R2", "100R2AT", "sae 100r2", "SAE J517 100R2"])
def test_close_spellings_of_a_standard_are_read(spelling: str) -> None:
    plain = assess(example(hose__standard="SAE 100R2")).working_pressure
    assert assess(example(hose__standard=spelling)).working_pressure == plain


def test_forms_are_those_of_the_spec() -> None:
    for about in tables().families.values():
        assert set(about.forms) <= set(Form)


def test_a_makers_size_outside_the_standard_is_said_to_be() -> None:
    assert "outside_standard" in codes(
        assess(assembly(), made_up(hose_pressure=[hose(100, in_standard="no")]))
    )
    assert "outside_standard" not in codes(assess(assembly(), made_up()))


def test_a_note_beside_a_figure_decides_nothing_and_is_kept() -> None:
    beside = ending(20, use="note", source="an article", note="treats all sizes alike")
    found = assess(assembly(), made_up(connection_pressure=[ending(120), beside]))
    (part,) = [p for p in found.working_pressure.parts if p.part == "end_a"]
    assert part.value_bar == 120 and "an article: 20 bar, treats all sizes alike" in part.note


def test_the_published_hose_of_two_jis_ends_says_what_is_missing() -> None:
    found = assess(both("EN 853 2SN", 8, end("jis_30", "M22x1.5")))
    assert {"pressure_not_known", "rating_not_known"} <= codes(found)
