"""The answers in the contract's JSON shapes."""

from __future__ import annotations

from tagger.trade import assess, report
from tagger.trade.identifying.identify import Measurements, identify
from tests.trade.specs import both, end, example


def test_check_answers_in_the_contracts_shape() -> None:
    answer = report.assessment(example(), assess(example()))
    assert {"value_bar", "limited_by", "source"} <= set(answer["working_pressure"])
    assert set(answer["length_tolerance_mm"]) >= {"minus", "plus", "source"}
    for name in ("a", "b"):
        assert {"min", "max", "basis", "source"} <= set(answer["ends"][name]["torque_nm"])
        assert set(answer["ends"][name]["flats"]) == {"min", "max", "basis", "source"}
    assert {"test_pressure_bar", "bend_radius_mm", "warnings"} <= set(answer)


def test_what_is_not_known_is_null_and_said_in_words() -> None:
    spec = both("EN 853 2SN", 8, end("jis_60", "1/8", hose_dash=8))
    found = assess(spec)
    answer = report.assessment(spec, found)
    assert answer["working_pressure"]["value_bar"] is None
    assert answer["ends"]["a"]["torque_nm"] is None
    assert answer["working_pressure"]["why"]["id"] == "trade-pressure-at-most"


def test_identify_answers_in_the_contracts_shape() -> None:
    found = identify(Measurements.read(form="male", thread_od="21", tpi=14))
    answer = report.identification(found)
    for candidate in answer["candidates"]:
        assert {"connection", "form", "likelihood", "reasons"} <= set(candidate)
        assert ("dash" in candidate) != ("size" in candidate)
    assert {"what", "why"} <= set(answer["measure_next"])
