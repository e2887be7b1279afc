"""What of a spec may become a row of the shop's own."""

from __future__ import annotations

from typing import Any

import pytest

from tagger.errors import TradeError
from tagger.spec import AssemblySpec
from tagger.trade import assess, keeping
from tagger.trade.tables import Tables, shop_row, tables
from tests.trade.specs import both, end, example

SOURCE = "catalogue, page 7"


def refused(spec: AssemblySpec) -> dict[str, str]:
    with pytest.raises(TradeError) as error:
        keeping.rows_of(spec, tables())
    return {p.field: p.message.id for p in error.value.problems}


def kept(spec: AssemblySpec) -> Tables:
    rows = keeping.rows_of(spec, tables())
    return Tables.load(kept=[(row.table, shop_row(row.table, row.cells, "kept")) for row in rows])


def rating(bar: float, **more: Any) -> dict[str, Any]:
    return {"value_bar": bar, "source": SOURCE, **more}


def test_a_figure_above_a_published_one_is_not_kept() -> None:
    published = end("sae_37_flare", 12, rating=rating(300))
    assert refused(both("SAE 100R2", 12, published)) == {
        f"{name}.rating.value_bar": "trade-keep-not-used" for name in ("end_a", "end_b")
    }


def test_a_figure_that_may_be_psi_is_not_kept_until_it_is_confirmed() -> None:
    slip = both("EN 853 2SN", 8, end("jis_30", "M22x1.5", rating=rating(900)))
    assert set(refused(slip).values()) == {"trade-keep-not-used"}
    sure = both("EN 853 2SN", 8, end("jis_30", "M22x1.5", rating=rating(900, confirmed=True)))
    assert [row.cells["max_working_bar"] for row in keeping.rows_of(sure, tables())] == ["900"]


def test_a_boss_stud_without_its_series_is_not_kept() -> None:
    stud = end("sae_orb", 12, "male", material="stainless_steel", rating=rating(100))
    assert refused(both("SAE 100R2", 12, stud)) == {
        f"{name}.series": "trade-keep-series" for name in ("end_a", "end_b")
    }


def test_nothing_to_keep_is_said() -> None:
    assert refused(example()) == {"keep": "trade-keep-nothing"}


APPROVED = {"fluid": "synthetic_ester", "max_temperature_c": 60, "source": "the manufacturer's letter"}


def ester(**hose: Any) -> AssemblySpec:
    data = both("EN 853 2SN", 8, end("orfs", 8)).as_dict()
    data["hose"] |= hose
    return AssemblySpec.read(data | {"fluid": "synthetic_ester", "max_temperature_c": 60})


def test_an_approval_holds_for_that_manufacturers_hose_alone() -> None:
    assert refused(ester(approval=APPROVED)) == {"hose.part": "trade-keep-part"}
    assert assess(ester(part="B-8")).working_pressure.value_bar is None
    own = kept(ester(approval=APPROVED, part="B-8"))
    assert assess(ester(part="b 8"), own).working_pressure.value_bar is not None
    for other in ({}, {"part": "C-8"}):
        assert assess(ester(**other), own).working_pressure.value_bar is None


def test_a_hose_of_no_standard_here_has_its_figure_by_its_name() -> None:
    data = both("XYZ 900", 8, end("orfs", 8)).as_dict()
    data["hose"]["rating"] = rating(90)
    own = kept(AssemblySpec.read(data))
    again = assess(both("xyz-900", 8, end("orfs", 8)), own).working_pressure
    assert (again.value_bar, again.parts[0].confidence) == (90, "shop")


def test_tables_with_what_is_kept_rate_as_those_that_are_loaded_anew() -> None:
    spec = both("EN 853 2SN", 8, end("jis_30", "M22x1.5", rating=rating(200)))
    plain = both("EN 853 2SN", 8, end("jis_30", "M22x1.5"))
    assert assess(plain).working_pressure.value_bar is None
    own = keeping.tables_with(tables(), keeping.rows_of(spec, tables()))
    found = assess(plain, own).working_pressure
    assert found.value_bar == 200 and found == assess(plain, kept(spec)).working_pressure
    assert keeping.tables_with(tables(), []) is tables()


def test_a_figure_for_a_fluid_and_heat_lifts_that_limit_and_no_other() -> None:
    named = rating(120, fluid="synthetic_ester", max_temperature_c=60)
    own = kept(ester(rating=named))
    found = assess(ester(), own).working_pressure
    assert (found.value_bar, found.parts[0].confidence) == (120, "shop")
    hotter = AssemblySpec.read(ester().as_dict() | {"max_temperature_c": 80})
    assert assess(hotter, own).working_pressure.value_bar is None
    other = AssemblySpec.read(ester().as_dict() | {"fluid": "phosphate_ester"})
    assert assess(other, own).working_pressure.value_bar is None
    oil = AssemblySpec.read(ester().as_dict() | {"fluid": "mineral_oil"})
    assert assess(oil, own).working_pressure.value_bar == assess(oil).working_pressure.value_bar
