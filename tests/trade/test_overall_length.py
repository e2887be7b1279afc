"""Overall lengths that cannot be, or are rather a slip of the unit. The made-up hose has a made-up diameter."""

from __future__ import annotations

import pytest

from tagger.errors import TradeError
from tagger.spec import AssemblySpec
from tagger.trade import assess
from tests.trade.specs import both, end


def _long(mm: float, **more: object) -> AssemblySpec:
    return both("EN 853 2SN", 12, end("sae_37_flare", 12), length_mm=mm, **more)


def test_a_length_shorter_than_two_crimped_ends_is_refused() -> None:
    with pytest.raises(TradeError, match="two crimped ends alone are longer") as refused:
        assess(_long(49.2))
    assert [p.field for p in refused.value.problems] == ["length_mm"]
    assert "Common practice, no source" in str(refused.value)
    assess(_long(150))


def test_a_hose_that_is_not_in_the_tables_is_held_against_its_bore() -> None:
    given = {"working_pressure": {"value_bar": 100, "source": "data sheet 9"}}
    with pytest.raises(TradeError, match="two crimped ends"):
        assess(both("XYZ 900", 16, end("sae_37_flare", 16), length_mm=60, **given))
    assess(both("XYZ 900", 16, end("sae_37_flare", 16), length_mm=80, **given))


def test_too_little_free_hose_between_the_ends_warns() -> None:
    assert "little_free_hose" in {w.code for w in assess(_long(150)).warnings}
    assert "little_free_hose" not in {w.code for w in assess(_long(300)).warnings}


def test_over_100_m_asks_for_a_tick() -> None:
    assert assess(_long(100_000))
    with pytest.raises(TradeError, match="is over 100000 mm") as refused:
        assess(_long(100_000.1))
    assert [p.field for p in refused.value.problems] == ["length_confirmed"]
    assert assess(_long(104_000, length_confirmed=True))
