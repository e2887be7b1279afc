"""Parts that cannot exist or do not go together are refused with the mend."""

from __future__ import annotations

import pytest

from tagger import phrases
from tagger.errors import Problem, TradeError
from tagger.messages import Message
from tagger.spec import Connection
from tagger.trade import assess
from tagger.trade.compatibility import check_parts
from tagger.trade.tables import Tables, tables
from tests.trade.made_up import HOSE, assembly, hose, made_up
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
    assert str(found.message) == "7 is not a size of this connection: 37° flare (JIC)."


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


def test_an_end_made_for_several_hoses_goes_on_each_of_them_and_on_no_other() -> None:
    several, *_ = (t for t in tables().threads.values() if len(t.hose_dashes) > 1)
    size, family = several.size, str(several.family)
    form = tables().families[several.family].forms[0]
    for dash in several.hose_dashes:
        check_parts(both(HOSE, dash, end(family, size, form)), hoses(*several.hose_dashes))
    beyond = max(several.hose_dashes) + 1
    with pytest.raises(TradeError) as refused:
        check_parts(both(HOSE, beyond, end(family, size, form)), hoses(beyond))
    usual = tuple(f"-{dash}" for dash in several.hose_dashes)
    assert refused.value.problems[0].message.values["usual"] == usual


def hoses(*dashes: int) -> Tables:
    return made_up(hose_pressure=[hose(100, dash=dash) for dash in dashes])


def test_a_hose_size_the_standard_does_not_have_is_refused_with_those_it_has() -> None:
    with pytest.raises(TradeError) as refused:
        assess(assembly(), hoses(16, 8))
    (found,) = refused.value.problems
    assert (found.field, str(found.message)) == ("hose.dash", f"12 is not a size of {HOSE}.")
    assert found.message.values["sizes"] == ("8", "16")


def test_all_problems_are_named_at_once() -> None:
    with pytest.raises(TradeError) as refused:
        assess(example(end_a__dash=7, end_b__dash=9))
    assert [p.field for p in refused.value.problems] == ["end_a.dash", "end_b.dash"]
