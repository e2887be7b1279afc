"""A working pressure entered for the whole assembly: when it counts, and what is refused as a slip of the unit."""

from __future__ import annotations

from typing import Any

import pytest

from tagger.errors import TradeError
from tagger.spec import AssemblySpec
from tagger.trade import assess, present
from tagger.trade.tables import tables
from tests.trade.specs import both, end


def _override(
    bar: float,
    hose: str = "EN 853 2SN",
    connection: str = "sae_37_flare",
    material: str = "carbon_steel",
    **more: Any,
) -> AssemblySpec:
    size = "M20x1.5 cone" if connection == "other" else 12
    form = "male" if connection == "other" else "female_swivel"
    given = {"value_bar": bar, "source": "data sheet 9", **more}
    return both(hose, 12, end(connection, size, form, material=material), working_pressure=given)


def test_a_working_pressure_that_no_hose_of_the_tables_can_have_is_refused_whoever_confirms_it() -> None:
    for ticked in (False, True):
        with pytest.raises(TradeError) as refused:
            assess(_override(1500, confirmed=ticked))
        assert [p.field for p in refused.value.problems] == ["working_pressure.value_bar"]
    assert assess(_override(1500, "a jack hose", "other", confirmed=True)).working_pressure.value_bar == 1500


def test_a_working_pressure_above_every_rating_of_a_part_counts_only_when_confirmed() -> None:
    jack = _override(700, "a jack hose", "other")
    found = assess(jack)
    assert found.working_pressure.value_bar is None
    assert str(found.working_pressure.why).startswith("The working pressure entered, 700 bar (10150 psi)")
    assert found.content_of(jack).spec.working_pressure is None, "no tag says a pressure that does not count"
    ticked = assess(_override(700, "a jack hose", "other", confirmed=True))
    assert ticked.working_pressure.value_bar == 700
    assert assess(_override(400, "a jack hose", "other")).working_pressure.value_bar == 400


def test_a_working_pressure_above_a_known_part_says_which_figure_holds() -> None:
    found = assess(_override(700))
    assert (found.working_pressure.value_bar, found.working_pressure.limited_by) == (206.8, "end_a")
    assert "pressure_given_too_high" in {w.code for w in found.warnings}


def test_an_unknown_end_of_a_family_is_not_raised_above_its_family_without_a_tick() -> None:
    brass = _override(500, "EN 856 4SP", material="brass")
    found = assess(brass)
    assert found.working_pressure.value_bar is None
    assert "this kind of part: end A" in str(found.working_pressure.why)
    assert found.working_pressure.at_most_bar == 350, "the hose's own"


def test_what_was_registered_before_ticks_keeps_its_pressure_but_not_one_that_cannot_be() -> None:
    ticked = _override(700, "a jack hose", "other", confirmed=True)
    content = assess(ticked).content_of(ticked)
    assert content.spec.working_pressure is not None and content.spec.working_pressure.confirmed is None
    assert present.overrated(content, tables()) is None
    slip = content.model_copy(update={"spec": _override(1500).carried(), "working_pressure_bar": 1500.0})
    high = present.overrated(slip, tables())
    assert high is not None and high.now_bar == 206.8, "what the known parts allow"
