"""Lengths by each basis, the length to cut, and bends that fit."""

from __future__ import annotations

import math
from pathlib import Path

import pytest

from tagger.errors import TradeError
from tagger.spec import LengthBasis
from tagger.trade import assess, lengths
from tagger.trade.lengths import EndDimensions
from tagger.trade.tables import Tables
from tests.trade.made_up import assembly, body, made_up, rule
from tests.trade.specs import example

STRAIGHT = EndDimensions(sealing_face=40, thread_end=52)
ELBOW = EndDimensions(elbow_centreline=61)


def test_the_cut_length_is_the_overall_length_less_what_the_ends_add() -> None:
    assert lengths.cut_length(example(), STRAIGHT, ELBOW) == 1250 - 40 - 61


def test_lengths_are_told_in_tenths_of_a_millimetre() -> None:
    straight = EndDimensions(sealing_face=40.12, thread_end=52.26)
    assert lengths.cut_length(example(), straight, ELBOW) == 1148.9
    assert lengths.converted_length(example(), LengthBasis.THREAD_END, straight, ELBOW) == 1262.2


def test_a_length_converts_from_one_basis_to_another_and_back() -> None:
    to_thread = lengths.converted_length(example(), LengthBasis.THREAD_END, STRAIGHT, ELBOW)
    assert to_thread == 1262
    back = example(length_mm=to_thread, length_basis="thread_end")
    assert lengths.converted_length(back, LengthBasis.SEALING_FACE, STRAIGHT, ELBOW) == 1250


def test_a_missing_dimension_is_named_and_never_assumed() -> None:
    with pytest.raises(TradeError) as refused:
        lengths.cut_length(example(), EndDimensions(), ELBOW)
    assert refused.value.problems[0].field == "end_a.sealing_face"


def test_ends_longer_than_the_assembly_are_refused() -> None:
    with pytest.raises(TradeError, match="not longer than its two ends"):
        lengths.cut_length(example(length_mm=90), STRAIGHT, ELBOW)


def test_a_u_bend_takes_both_ends_half_a_circle_and_the_travel() -> None:
    ours = made_up(rules=rule("straight_before_bend", 1.5))
    needed = lengths.u_bend_fit(1000, 180, 22, (60, 60), travel_mm=100, tables=ours)
    by_hand = 2 * (60 + 33) + math.pi * 191 + 100
    assert needed.needed_mm == pytest.approx(by_hand, abs=0.06)
    assert needed.ok and needed.spare_mm == pytest.approx(1000 - by_hand, abs=0.06)
    assert not lengths.u_bend_fit(800, 180, 22, (60, 60), travel_mm=100, tables=ours).ok


def test_a_shops_rule_for_straight_hose_holds_in_a_u_bend(tmp_path: Path) -> None:
    (tmp_path / "rules.csv").write_text(
        "key,value,unit,text,source,confidence\n"
        "straight_before_bend,3,x outside diameter,Straight hose,our own rule,shop\n"
    )
    plain = made_up(rules=rule("straight_before_bend", 1.5))
    ours = lengths.u_bend_fit(1000, 180, 22, (60, 60), tables=plain)
    theirs = lengths.u_bend_fit(1000, 180, 22, (60, 60), tables=Tables.load(extra=tmp_path))
    assert theirs.needed_mm - ours.needed_mm == pytest.approx(2 * 1.5 * 22)


def test_an_assembly_too_short_for_a_quarter_bend_is_noted() -> None:
    # radius 200 inside and 15 to the middle line, 1 x outside diameter straight at either side
    ours = made_up(rules=rule("straight_before_bend", 1))
    needed = math.pi / 2 * (200 + 15) + 2 * 30
    short = assess(assembly(length_mm=math.floor(needed)), ours)
    assert "too_short_to_bend" in {w.code for w in short.warnings}
    long = assess(assembly(length_mm=math.ceil(needed)), ours)
    assert "too_short_to_bend" not in {w.code for w in long.warnings}


def test_mass_and_content_follow_from_the_tables() -> None:
    found = assess(assembly(), made_up(hose_size=[body(20, 30, 1.0), body(20, 30, 1.5)]))
    assert found.hose_mass_kg == 1.25, "the median over one metre"
    assert found.content_l == pytest.approx(math.pi / 4 * 2**2 * 100 / 1000, abs=0.001)
