"""Parts that cannot exist or do not go together are refused with the mend."""

from __future__ import annotations

import pytest

from tagger import phrases
from tagger.errors import Problem, TradeError
from tagger.messages import Message
from tagger.spec import Connection
from tagger.trade import assess
from tagger.trade.tables import tables
from tests.trade.specs import both, end, example


def problem_of(**changes: object) -> Problem:
    with pytest.raises(TradeError) as refused:
        assess(example(**changes))
    (found,) = refused.value.problems
    return found


def test_a_size_the_family_does_not_have_is_refused_with_its_sizes() -> None:
    found = problem_of(end_b__dash=7)
    assert (found.field, found.message.id) == ("end_b.dash", "trade-not-a-size")
    assert found.message.values["sizes"] == tuple(tables().sizes(Connection.SAE_37_FLARE))
    assert found.why == "7 is not a size of this connection: 37° flare (JIC)."


def test_a_small_end_on_a_large_hose_needs_its_jump_size_stated() -> None:
    found = problem_of(end_a__dash=6)
    assert found.field == "end_a.hose_dash"
    assert "made for -6 hose" in found.why
    assert "(hose_dash) to 12" in found.mend


def test_a_jump_size_stated_is_accepted_and_noted() -> None:
    found = assess(example(end_a__dash=10, end_a__hose_dash=12))
    assert [w.severity for w in found.warnings if w.code == "jump_size"] == ["note"]


def test_a_tail_for_another_hose_is_refused() -> None:
    found = problem_of(end_a__hose_dash=10)
    assert found.field == "end_a.hose_dash"
    assert found.message == Message("trade-tail-for-another-hose", tail=10, hose=12)


def test_a_swivel_npt_is_npsm() -> None:
    with pytest.raises(TradeError) as refused:
        assess(both("SAE 100R17", 8, end("npt", "1/2", "female_swivel")))
    found = refused.value.problems[0]
    assert found.message.values["instead"] == phrases.connection("npsm")


def test_metric_ends_have_a_set_of_natural_hoses() -> None:
    for dash in (5, 6):
        assess(both("EN 853 1SN", dash, end("din24_light", "12")))
    with pytest.raises(TradeError):
        assess(both("EN 853 1SN", 10, end("din24_light", "12")))


def test_a_hose_size_the_standard_does_not_have_is_refused() -> None:
    found = problem_of(hose__standard="SAE 100R13", hose__dash=8, end_a__dash=8, end_b__dash=8)
    assert (found.field, found.why) == ("hose.dash", "8 is not a size of SAE 100R13.")
    assert "12, 16, 20" in found.mend


def test_all_problems_are_named_at_once() -> None:
    with pytest.raises(TradeError) as refused:
        assess(example(end_a__dash=7, end_b__dash=9))
    assert [p.field for p in refused.value.problems] == ["end_a.dash", "end_b.dash"]
