"""Parts that cannot exist or do not go together are refused with the mend."""

from __future__ import annotations

import pytest

from tagger.errors import TradeError
from tagger.trade import assess
from tests.trade.specs import both, end, example


def problem_of(**changes: object) -> tuple[str, str, str]:
    with pytest.raises(TradeError) as refused:
        assess(example(**changes))
    (found,) = refused.value.problems
    return found.field, found.why, found.mend


def test_a_size_the_family_does_not_have_is_refused_with_its_sizes() -> None:
    field, why, mend = problem_of(end_b__dash=7)
    assert (field, why) == ("end_b.dash", "7 is not a size of sae_37_flare")
    assert mend.startswith("Sizes are 2, 3, 4, 5, 6, 8")


def test_a_small_end_on_a_large_hose_needs_its_jump_size_stated() -> None:
    field, why, mend = problem_of(end_a__dash=6)
    assert field == "end_a.hose_dash"
    assert "made for -6 hose" in why
    assert "hose_dash: 12" in mend


def test_a_jump_size_stated_is_accepted_and_noted() -> None:
    found = assess(example(end_a__dash=10, end_a__hose_dash=12))
    assert [w.severity for w in found.warnings if w.code == "jump_size"] == ["note"]


def test_a_tail_for_another_hose_is_refused() -> None:
    field, why, _ = problem_of(end_a__hose_dash=10)
    assert field == "end_a.hose_dash"
    assert "-10 hose" in why


def test_a_swivel_npt_is_npsm() -> None:
    with pytest.raises(TradeError) as refused:
        assess(both("SAE 100R17", 8, end("npt", "1/2", "female_swivel")))
    assert "npsm" in refused.value.problems[0].mend


def test_metric_ends_have_a_set_of_natural_hoses() -> None:
    for dash in (5, 6):
        assess(both("EN 853 1SN", dash, end("din24_light", "12")))
    with pytest.raises(TradeError):
        assess(both("EN 853 1SN", 10, end("din24_light", "12")))


def test_a_hose_size_the_standard_does_not_have_is_refused() -> None:
    field, why, mend = problem_of(hose__standard="SAE 100R13", hose__dash=8, end_a__dash=8, end_b__dash=8)
    assert (field, why) == ("hose.dash", "8 is not a size of SAE 100R13")
    assert "12, 16, 20" in mend


def test_all_problems_are_named_at_once() -> None:
    with pytest.raises(TradeError) as refused:
        assess(example(end_a__dash=7, end_b__dash=9))
    assert [p.field for p in refused.value.problems] == ["end_a.dash", "end_b.dash"]
