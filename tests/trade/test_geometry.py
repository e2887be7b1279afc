"""Length bands, clocking tolerance, bend radius. Figures here are made up."""

from __future__ import annotations

import pytest

from tagger.messages import length
from tagger.spec import Hose
from tagger.trade import assess, geometry
from tagger.trade.tables import Tables
from tests.trade.made_up import HOSE, assembly, band, bend, body, made_up, rule, standard
from tests.trade.specs import both, end

BOTH = [band(5, 10), band(2, 4, bands="din")]


def tolerance(length_mm: float, tables: Tables, dash: int = 12) -> tuple[float, float] | None:
    found = geometry.length_tolerance(length_mm, Hose(standard=HOSE, dash=dash), tables)
    return found and (found.minus, found.plus)


def test_the_bands_are_those_of_the_hose_standard_unless_chosen() -> None:
    sae = made_up(length_bands=BOTH)
    assert tolerance(1000, sae) == (5, 10)
    assert tolerance(1000, made_up(length_bands=BOTH, hose_standards=[standard(bands="din")])) == (2, 4)
    chosen = assess(assembly(), sae, length_bands="din").length_tolerance
    assert chosen is not None and (chosen.minus, chosen.plus) == (2, 4)
    of_shop = Tables.of(sae.raw, bands="din")
    assert tolerance(1000, of_shop) == (2, 4)
    back = assess(assembly(), of_shop, length_bands="sae").length_tolerance
    assert back is not None and (back.minus, back.plus) == (5, 10)


def test_a_band_is_found_by_length_and_bore() -> None:
    found = made_up(
        length_bands=[
            band(1, 2, to_mm=500.0, to_bore_mm=25.0),
            band(3, 4, to_mm=500.0, from_bore_mm=25.0, to_bore_mm=50.0),
            band(1, 2, over_mm=500.0, to_mm=2000.0, unit="percent"),
            band(0.5, 1, over_mm=2000.0, unit="in"),
        ],
        hose_size=[body(19, 30), body(38, 55, dash=24)],
    )
    assert (tolerance(500, found), tolerance(500, found, dash=24)) == ((1, 2), (3, 4))
    assert tolerance(501, found) == (5.0, 10.0), "in percent of the length"
    assert tolerance(2001, found) == (12.7, 25.4), "in inches"


def test_an_empty_cell_of_the_bands_is_not_guessed() -> None:
    found = made_up(length_bands=[band(1, 2, to_bore_mm=10.0)])
    assert tolerance(1000, found) is None
    assert "length_tolerance_not_known" in {w.code for w in assess(assembly(), found).warnings}


@pytest.mark.parametrize(("length_mm", "degrees"), [(600, "short"), (700, "short"), (701, "long")])
def test_clocking_is_closer_on_short_hoses(length_mm: float, degrees: str) -> None:
    ours = made_up(rules=rule("clocking_short_mm", 700))
    elbow = end("sae_37_flare", 12, shape="elbow_90")
    pair = both(HOSE, 12, elbow, clocking_deg=90, length_mm=length_mm)
    assert assess(pair, ours).clocking_tolerance_deg == ours.rule(f"clocking_{degrees}_deg").value
    assert assess(assembly(), ours).clocking_tolerance_deg is None


def test_the_larger_bend_radius_is_shown_with_its_own_source() -> None:
    remembered = bend(240, source="an old chart", confidence="memory")
    shown, warnings = geometry.bend_radius(
        Hose(standard=HOSE, dash=12), made_up(hose_bend=[bend(200), remembered, bend(180)])
    )
    assert (shown.mm, shown.source, shown.printed) == (240, "an old chart", "240 mm")
    assert [(w.code, w.message.values["source"]) for w in warnings] == [("bend_from_memory", "an old chart")]


def test_between_equal_radii_a_published_one_is_shown() -> None:
    remembered = bend(200, source="an old chart", confidence="memory")
    shown, warnings = geometry.bend_radius(
        Hose(standard=HOSE, dash=12), made_up(hose_bend=[remembered, bend(200)])
    )
    assert not shown.source.startswith("memory") and warnings == []


def test_a_bend_radius_no_source_gives_is_none() -> None:
    shown, warnings = geometry.bend_radius(Hose(standard=HOSE, dash=16), made_up())
    assert (shown.mm, shown.source) == (None, "")
    assert [w.code for w in warnings] == ["bend_not_known"]


def test_the_outside_diameter_is_the_median_and_says_of_how_many() -> None:
    bodies = [body(19, 30), body(19, 33), body(19, 31)]
    found = geometry.outside_diameter(Hose(standard=HOSE, dash=12), made_up(hose_size=bodies))
    assert found.mm == 31 and found.source
    assert found.basis is not None
    assert found.basis.values == {"count": 3, "low": length(30), "high": length(33)}
    alone = geometry.outside_diameter(Hose(standard=HOSE, dash=12), made_up())
    assert (alone.mm, alone.basis) == (30, None)
