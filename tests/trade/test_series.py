"""Heavy and light studs of one thread, and two threads that no gauge tells apart. Figures are made up."""

from __future__ import annotations

from collections import Counter
from typing import Any

import pytest

from tagger.spec import AssemblySpec, Connection, End, Form
from tagger.trade import assess, likeforlike
from tagger.trade.compatibility import end_problems
from tagger.trade.rating import end_rating
from tagger.trade.tables import tables
from tagger.trade.tightening import advice
from tests.trade.made_up import ending, tables_with, tight
from tests.trade.specs import example

STUD = Connection("metric_orb")
SIZE = "M22x1.5"


def stud(series: str | None = None, connection: str = "metric_orb", **more: Any) -> End:
    size = {"dash": 8} if connection == "sae_orb" else {"size": SIZE}
    return End.model_validate({"connection": connection, "form": "male", "series": series, **size, **more})


def rated(end: End, *rows: Any) -> float | None:
    return end_rating("end_a", end, tables_with(connection_pressure=list(rows))).value_bar


def test_a_series_has_its_own_rating_and_without_one_the_lower_holds() -> None:
    both = [ending(400, SIZE, family=STUD, series="S"), ending(250, SIZE, family=STUD, series="L")]
    assert [rated(stud(series), *both) for series in ("S", "L", None)] == [400, 250, 250]


def test_without_the_series_a_rating_of_the_heavy_one_alone_is_none() -> None:
    heavy = ending(400, SIZE, family=STUD, series="S")
    assert (rated(stud("S"), heavy), rated(stud(), heavy), rated(stud("L"), heavy)) == (400, None, None)


def test_a_torque_is_shown_only_for_its_own_series() -> None:
    rows = [
        tight(family=STUD, size=SIZE, part=("stud",), series=series, torque_max_nm=torque)
        for series, torque in (("S", 110.0), ("L", 60.0), ("", 80.0))
    ]
    made = tables_with(tightening=rows)
    shown = {series: advice("end_a", stud(series), made) for series in ("S", "L", None)}
    torques = {series: found.torque and found.torque.max for series, (found, _) in shown.items()}
    assert torques == {"S": 110, "L": 60, None: None}
    assert "series_not_given" in {w.code for w in shown[None][1]}
    assert len(shown[None][0].spread) == 3


@pytest.mark.parametrize("connection", ["metric_orb", "sae_orb"])
def test_no_stud_whose_series_is_not_given_has_a_torque_or_flats(connection: str) -> None:
    ours = tables()
    for size in ours.sizes(Connection(connection)):
        named = {"dash": int(size)} if connection == "sae_orb" else {"size": size}
        for shape in ("straight", "elbow_90"):
            end = End.model_validate({"connection": connection, "form": "male", "shape": shape, **named})
            found = advice("end_a", end, ours)[0]
            assert (found.torque, found.flats) == (None, None)


def test_flats_are_shown_only_for_their_own_series() -> None:
    rows = [
        tight(
            family=STUD, size=SIZE, part=("stud",), series=series, flats_min=1.0, flats_max=count,
            basis="finger_tight",
        )
        for series, count in (("S", 2.0), ("L", 1.5), ("", 1.0))
    ]  # fmt: skip
    made = tables_with(tightening=rows)
    shown = {series: advice("end_a", stud(series), made)[0].flats for series in ("S", "L", None)}
    assert {series: found and found.max for series, found in shown.items()} == {"S": 2, "L": 1.5, None: None}


def test_a_shop_keeps_its_own_torque_for_both_series() -> None:
    own = tight(family=STUD, size=SIZE, part=("stud",), torque_max_nm=90.0, confidence="shop", scope="family")
    found, _ = advice("end_a", stud(), tables_with(tightening=[own]))
    assert found.torque is not None and found.torque.max == 90


def test_a_shops_torque_for_one_series_is_not_shown_for_the_other_nor_where_none_is_given() -> None:
    own = tight(family=STUD, size=SIZE, part=("stud",), series="S", torque_max_nm=110.0, confidence="shop")
    shown = {s: advice("end_a", stud(s), tables_with(tightening=[own]))[0].torque for s in ("S", "L", None)}
    assert {series: found and found.max for series, found in shown.items()} == {
        "S": 110,
        "L": None,
        None: None,
    }


def test_a_row_for_one_series_says_so_in_the_words_of_its_source_too() -> None:
    """The letter alone, typed wrong, would give a light stud the heavy one's torque or rating."""
    ours, seen = tables(), Counter[str]()
    rows = [(r.series, f"{r.end_type} {r.source} {r.note}") for of in ours.tightening.values() for r in of]
    rows += [
        (r.series, f"{r.applies_to} {ours.where_from(r.source)} {r.note}")
        for of in ours.end_pressures.values()
        for r in of
        if r.family != "din_standpipe"  # a plain tube: its rows are held against the cones' below
    ]
    for series, text in rows:
        if series:
            words = {word for word in ("light", "heavy") if word in text.casefold()}
            assert words == {{"L": "light", "S": "heavy"}[series]}, text
            seen[series] += 1
    assert min(seen["L"], seen["S"]) > 30


def test_a_plain_tube_of_a_series_has_the_rating_of_the_cone_of_that_series() -> None:
    cones, seen = {"L": "din24_light", "S": "din24_heavy"}, 0
    for size in tables().sizes(Connection("din_standpipe")):
        for series in tables().series_of(Connection("din_standpipe"), size):
            tube = End.model_validate(
                {"connection": "din_standpipe", "size": size, "form": "standpipe", "series": series}
            )
            nut = End.model_validate({"connection": cones[series], "size": size, "form": "female_swivel"})
            bars = [end_rating("end_a", one, tables()).value_bar for one in (tube, nut)]
            assert bars[0] == bars[1], (size, series)
            seen += bars[0] is not None
    assert seen > 10


def test_a_series_is_refused_where_the_family_has_none() -> None:
    flare = End.model_validate({"connection": "sae_37_flare", "dash": 8, "form": "male", "series": "S"})
    (problem,) = end_problems("end_a", flare, tables())
    assert (problem.field, problem.message.id) == ("end_a.series", "trade-not-a-series")


def test_a_heavy_stud_does_not_replace_a_light_one() -> None:
    def with_stud(series: str | None) -> AssemblySpec:
        spec = AssemblySpec.read(example())
        return spec.model_copy(update={"end_a": stud(series, hose_dash=spec.hose.dash)})

    light, heavy, unknown = (with_stud(series) for series in ("L", "S", None))
    verdicts = {
        (old.end_a.series, new.end_a.series): next(
            f.verdict for f in likeforlike.compare(old, new).fields if f.field == "end_a"
        )
        for old, new in ((light, heavy), (heavy, light), (light, unknown), (heavy, heavy))
    }
    assert verdicts == {
        ("L", "S"): "dangerous",
        ("S", "L"): "dangerous",
        ("L", None): "differs",
        ("S", "S"): "same",
    }


def test_npt_and_nptf_take_the_lower_figure_of_either_and_say_so() -> None:
    rows = [
        ending(200, "1/2", family=Connection("nptf")),
        ending(150, "1/2", family=Connection("npt")),
    ]
    made = tables_with(connection_pressure=rows)
    for connection in ("npt", "nptf"):
        end = End(connection=Connection(connection), size="1/2", form=Form.MALE)
        assert end_rating("end_a", end, made).value_bar == 150
    found = assess(
        AssemblySpec.read(example()).model_copy(
            update={"end_a": End(connection=Connection("npt"), size="3/4", form=Form.MALE)}
        )
    )
    assert "same_thread" in {w.code for w in found.warnings}
