"""Length bands, clocking tolerance, bend radius."""

from __future__ import annotations

import pytest

from tagger.spec import Hose
from tagger.trade import assess, geometry
from tagger.trade.tables import tables
from tests.trade.specs import both, end, example


def test_the_bands_are_those_of_the_hose_standard_unless_chosen() -> None:
    sae = assess(example()).length_tolerance
    din = assess(example(), length_bands="din").length_tolerance
    assert sae is not None and (sae.minus, sae.plus) == (12.5, 12.5)
    assert din is not None and (din.minus, din.plus) == (4, 12)
    en = assess(both("EN 853 2SN", 8, end("sae_37_flare", 8))).length_tolerance
    assert en is not None and (en.minus, en.plus) == (4, 12)


@pytest.mark.parametrize(
    ("length", "dash", "minus", "plus"),
    [
        (630, 16, 3, 7),
        (631, 16, 4, 12),
        (630, 20, 4, 12),
        (2500, 32, 6, 25),
        (3000, 12, 15, 45),
        (9000, 12, 90, 270),
    ],
)
def test_din_bands_by_length_and_bore(length: float, dash: int, minus: float, plus: float) -> None:
    hose = example(hose__standard="EN 853 2SN", hose__dash=dash).hose
    found = geometry.length_tolerance(length, hose, tables())
    assert found is not None and (found.minus, found.plus) == (minus, plus)


def test_an_empty_cell_of_the_bands_is_not_guessed() -> None:
    hose = example(hose__standard="EN 853 2SN", hose__dash=40).hose
    assert geometry.length_tolerance(1000, hose, tables()) is None


@pytest.mark.parametrize(("length", "degrees"), [(600, 3), (610, 3), (611, 5)])
def test_clocking_is_closer_on_short_hoses(length: float, degrees: float) -> None:
    pair = both(
        "SAE 100R17", 12, end("sae_37_flare", 12, shape="elbow_90"), clocking_deg=90, length_mm=length
    )
    assert assess(pair).clocking_tolerance_deg == degrees
    assert assess(example()).clocking_tolerance_deg is None


def test_the_larger_bend_radius_is_shown() -> None:
    # Makers bend SAE 100R4 -16 to 75 mm; the standard as remembered has 6 in.
    hose = example(hose__standard="SAE 100R4", hose__dash=16).hose
    bend, _ = geometry.bend_radius(hose, tables())
    assert bend.mm == 152.4
    assert bend.source.startswith("memory")


def test_a_bend_radius_no_source_gives_is_none() -> None:
    bend, warnings = geometry.bend_radius(example(hose__standard="ISO 18752 210").hose, tables())
    assert (bend.mm, bend.source) == (None, "")
    assert [w.code for w in warnings] == ["bend_not_known"]


def test_the_lone_small_radius_of_100r8_5_is_not_shown() -> None:
    shown = {
        dash: geometry.bend_radius(Hose(standard="SAE 100R8", dash=dash), tables())[0].mm
        for dash in (4, 5, 6)
    }
    assert shown == {4: 101.6, 5: 127, 6: 127}
