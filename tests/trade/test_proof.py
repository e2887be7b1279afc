"""What a proof test must be: twice the least rating (SAE J343), by a manufacturer's word where none is verified."""

from __future__ import annotations

from typing import Any

import pytest

from tagger.trade import assess, proof
from tagger.trade.proof import Required
from tagger.trade.results import Assessment
from tests.trade.made_up import assembly, ending, hose, made_up

UNKNOWN_ENDS = {"connection_pressure": [ending(120, size="10")]}
REMEMBERED_HOSE = {"hose_pressure": [hose(100, source="memory: an old chart", confidence="memory")]}


def required(given: float | None = None, spec: dict[str, Any] | None = None, **files: Any) -> Required:
    tables = made_up(**files)
    return proof.required(assess(assembly(**spec or {}), tables), tables, given)


def bars(of: Required) -> tuple[float | None, float | None, float | None]:
    return of.pressure_bar, of.most_bar, of.burst_bar


@pytest.mark.parametrize("bar", [100, 101.7, 62.3])
def test_it_is_twice_the_rating_a_tenth_more_at_most_and_burst_is_four_times(bar: float) -> None:
    found = required(hose_pressure=[hose(bar)])
    assert bars(found) == (pytest.approx(2 * bar), pytest.approx(2.2 * bar, abs=0.05), pytest.approx(4 * bar))
    assert (found.burst_of, found.hold_min.value, found.hold_max.value) == ("hose", 30, 60)
    assert not found.rating_missing and not found.can_be_given
    assert required(hose_pressure=[hose(bar)], connection_pressure=[ending(50)]).burst_of == "end_a"


@pytest.mark.parametrize(
    ("bar", "enough", "over", "slip"),
    [
        (199.9, False, False, False), (200, True, False, False), (220, True, False, False),
        (220.1, True, True, False), (400, True, True, False), (400.1, True, True, True),
    ],
)  # fmt: skip
def test_a_pressure_is_enough_from_twice_the_rating_over_a_tenth_later_and_a_slip_beyond_burst(
    bar: float, enough: bool, over: bool, slip: bool
) -> None:
    found = required()
    assert (found.is_enough(bar), found.is_over(bar), found.is_slip(bar)) == (enough, over, slip)


def test_where_nothing_is_known_no_pressure_is_enough_over_or_a_slip() -> None:
    found = required(spec={"max_temperature_c": 150})
    assert bars(found) == (None, None, None)
    assert (found.is_enough(9), found.is_over(9), found.is_slip(9)) == (False, False, False)
    assert found.rating_missing


@pytest.mark.parametrize(("given", "asked"), [(None, None), (90, 180), (100, 200), (150, 200)])
def test_a_rating_given_stands_for_unknown_parts_and_raises_no_known_one(
    given: float | None, asked: float | None
) -> None:
    found = required(given, **UNKNOWN_ENDS)
    assert found.pressure_bar == asked and found.can_be_given
    assert found.unknown == (() if given else ("end_a", "end_b")) and found.rating_missing is (given is None)
    assert found.most_bar == pytest.approx(1.1 * (asked or 200)), "known parts allow no more, known or not"


@pytest.mark.parametrize(("given", "asked"), [(None, 200), (80, 160), (110, 220), (300, 240)])
def test_a_rating_given_stands_for_unverified_parts_up_to_the_verified_ones(
    given: float | None, asked: float
) -> None:
    found = required(given, **REMEMBERED_HOSE)
    assert (found.pressure_bar, found.can_be_given) == (asked, True)
    assert found.unverified == (() if given else ("hose",)) and found.rating_missing is (given is None)


@pytest.mark.parametrize("given", [50.0, 300.0])
def test_a_rating_given_changes_nothing_where_every_part_is_verified(given: float) -> None:
    assert required(given) == required()


def test_a_pressure_entered_for_the_whole_assembly_is_its_rating() -> None:
    found = required(
        spec={"working_pressure": {"value_bar": 80, "source": "data sheet 7"}}, **REMEMBERED_HOSE
    )
    assert (found.pressure_bar, found.unverified, found.can_be_given) == (160, (), False)


@pytest.mark.parametrize("entered", [{}, {"working_pressure": {"value_bar": 90, "source": "a letter"}}])
def test_no_rating_given_lifts_a_limit_of_heat(entered: dict[str, Any]) -> None:
    for given in (None, 90.0):
        found = required(given, spec={"max_temperature_c": 150, **entered}, **UNKNOWN_ENDS)
        assert (found.pressure_bar, found.can_be_given, found.rating_missing) == (None, False, True)


def test_a_record_without_an_at_most_has_the_burst_pressure_of_its_hose() -> None:
    """Records kept before there was an "at most" name their parts alone."""
    tables = made_up(**UNKNOWN_ENDS)
    now = assess(assembly(), tables)
    older = now.working_pressure.model_copy(update={"at_most_bar": None})
    found = proof.required(now.model_copy(update={"working_pressure": older}), tables)
    assert (*bars(found), found.burst_of) == (None, None, 400, "hose")
    without = older.model_copy(update={"parts": ()})
    assert bars(proof.required(_of(now, without), tables)) == (None, None, None)


def _of(rated: Assessment, pressure: object) -> Assessment:
    return rated.model_copy(update={"working_pressure": pressure})
