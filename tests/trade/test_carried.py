"""What a tag carries of an assessment: the figure or the partial truth, dangers, and how a torque was meant."""

from __future__ import annotations

import pytest

from tagger.code import payload
from tagger.spec import AssemblySpec, Danger
from tagger.trade import assess
from tagger.trade.tables import Tables
from tests.trade.made_up import HOSE, assembly, ending, fluid, hose, made_up, tight
from tests.trade.specs import both, end


def test_where_an_end_is_not_known_the_tag_says_at_most_and_which() -> None:
    spec = assembly()
    found = assess(spec, made_up(connection_pressure=[ending(120, size="10")])).content_of(spec)
    assert (found.working_pressure_bar, found.at_most_bar) == (None, 100)
    assert found.unknown_parts == ("end_a", "end_b") and found.unverified_parts == ()


def test_a_part_rated_from_memory_is_named_unverified() -> None:
    spec = assembly()
    remembered = made_up(hose_pressure=[hose(100, source="memory: an old chart", confidence="memory")])
    found = assess(spec, remembered).content_of(spec)
    assert (found.working_pressure_bar, found.at_most_bar, found.unknown_parts) == (100, None, ())
    assert found.unverified_parts == ("hose",)


RATING = {"value_bar": 80, "source": "letter 7"}
GIVEN_ENDS = both(HOSE, 12, end("bspp", "3/4", rating=RATING))
GIVEN_HOSE = AssemblySpec.read(
    both("own line", 12, end("sae_37_flare", 12), fluid="water", max_temperature_c=50).as_dict()
    | {
        "hose": {
            "standard": "own line",
            "dash": 12,
            "rating": RATING | {"fluid": "water", "max_temperature_c": 60},
        }
    }
)
HALF_GIVEN = AssemblySpec.read(GIVEN_ENDS.as_dict() | {"end_b": end("bspp", "3/4")})
SHOPS_ENDS = [ending(90, confidence="shop")]


@pytest.mark.parametrize(
    ("spec", "tables", "carried"),
    [
        (assembly(), made_up(), None),
        (GIVEN_ENDS, made_up(), (80, "maker's data sheet", None, None)),
        (assembly(), made_up(connection_pressure=SHOPS_ENDS), (90, "shop's own rule", None, None)),
        (GIVEN_HOSE, made_up(), (80, "maker's data sheet", "water", 60)),
        (HALF_GIVEN, made_up(), None),
        (
            assembly(working_pressure={"value_bar": 70, "source": "a letter"}),
            made_up(),
            (70, "a letter", None, None),
        ),
    ],
    ids=[
        "by tables",
        "by a manufacturer",
        "by the shop",
        "for a fluid and heat",
        "an end not known",
        "entered",
    ],
)
def test_a_pressure_that_rests_on_somebodys_word_says_whose(
    spec: AssemblySpec, tables: Tables, carried: tuple[object, ...] | None
) -> None:
    """Who reads the tag with other tables finds no rating for that part; the word itself stays in the record."""
    told = assess(spec, tables).content_of(spec).spec.working_pressure
    assert (told and (told.value_bar, told.source, told.fluid, told.max_temperature_c)) == carried


def test_dangers_are_carried() -> None:
    hot = assembly(max_temperature_c=150)
    assert Danger.HEAT in assess(hot, made_up()).content_of(hot).dangers
    cold = assembly(max_temperature_c=-60)
    assert assess(cold, made_up()).content_of(cold).dangers == (Danger.COLD,)
    high = assembly(working_pressure={"value_bar": 150, "source": "a letter"})
    assert assess(high, made_up()).content_of(high).dangers == (Danger.PRESSURE,)


def test_a_pressure_that_holds_up_to_a_temperature_is_never_told_without_it() -> None:
    """A letter's 80 bar for an ester up to 60 °C: with no temperature asked, the tag says 60 °C."""
    named = {"value_bar": 80, "source": "a letter", "fluid": "phosphate_ester", "max_temperature_c": 60}
    spec = assembly(fluid="phosphate_ester", working_pressure=named)
    found = assess(spec, made_up(hose_fluids=[fluid("phosphate_ester")]))
    assert (found.working_pressure.value_bar, found.max_temperature_c) == (80, 60)
    assert found.max_temperature_source == "a letter"
    content = found.content_of(spec)
    assert content.spec.max_temperature_c == 60
    read = payload.decode(payload.encode(content))
    assert (read.working_pressure_bar, read.spec.max_temperature_c) == (80, 60)


def test_a_temperature_asked_for_stays_and_the_hoses_own_limit_holds_where_it_is_lower() -> None:
    named = {"value_bar": 80, "source": "a letter", "fluid": "mineral_oil", "max_temperature_c": 140}
    assert assess(assembly(working_pressure=named), made_up()).max_temperature_c == 100
    asked = assembly(working_pressure=named, max_temperature_c=50)
    assert assess(asked, made_up()).content_of(asked).spec.max_temperature_c == 50


def test_the_lubrication_of_a_range_that_sources_share_is_carried_too() -> None:
    spec = assembly()
    rows = [
        tight(torque_min_nm=low, torque_max_nm=110.0, lubrication="lightly_oiled", source=source)
        for low, source in ((80.0, "one table"), (90.0, "another table"))
    ]
    found = assess(spec, made_up(tightening=rows))
    assert found.end_a.torque is not None and found.end_a.torque.basis.id == "trade-torque-basis-shared"
    told = found.content_of(spec).tighten_a
    assert told is not None and told.lubrication == "lightly_oiled"


def test_lubrication_and_screw_go_with_the_torque() -> None:
    spec = assembly()
    oiled = made_up(tightening=[tight(torque_max_nm=90.0, lubrication="lightly_oiled")])
    told = assess(spec, oiled).content_of(spec).tighten_a
    assert told is not None and (told.lubrication, told.screw) == ("lightly_oiled", None)
    flange = both("EN 856 4SP", 16, end("flange_code61", 16, "flange_head"))
    told = assess(flange).content_of(flange).tighten_a
    assert told is not None and told.screw is not None
