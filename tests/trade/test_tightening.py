"""Torque, flats and turns: chosen with care, the spread kept, steps structured."""

from __future__ import annotations

import pytest

from tagger.spec import Basis, Connection, End, Material
from tagger.trade import assess
from tagger.trade.results import EndAdvice
from tagger.trade.tables import tables
from tagger.trade.tightening import advice, steps_for
from tests.trade.specs import an_end, both, end, example


def of(connection: Connection, size: str, form: str = "female_swivel", **more: object) -> EndAdvice:
    return advice("end_a", an_end(connection, size, form, **more), tables())[0]


def test_a_12_swivel_nut_has_torque_and_flats_with_basis_and_source() -> None:
    found = of(Connection.SAE_37_FLARE, "12")
    assert found.torque is not None and (found.torque.min, found.torque.max) == (96, 106)
    assert found.flats is not None and (found.flats.min, found.flats.max) == (1, 1.5)
    assert found.flats.basis is Basis.WRENCH_RESISTANCE
    assert found.torque.source and found.flats.source


def test_common_practice_of_a_12_stands_beside_the_published_figures() -> None:
    rows = [
        r
        for r in tables().tightening[Connection.SAE_37_FLARE]
        if r.size == "12" and r.confidence == "practice"
    ]
    assert [(r.flats_min, r.flats_max, r.basis) for r in rows] == [(1, 1.5, "finger_tight")]
    assert any("common practice, no source" in str(said) for said in of(Connection.SAE_37_FLARE, "12").spread)


def test_sources_that_disagree_are_named_in_the_spread() -> None:
    spread = of(Connection.SAE_37_FLARE, "8").spread
    assert any("57 to 63 N·m" in str(said) for said in spread)
    assert any("43 to 57 N·m" in str(said) for said in spread)


def test_aviation_and_tube_rows_are_never_shown_for_a_hose_nut() -> None:
    for size in tables().sizes(Connection.SAE_37_FLARE):
        found = of(Connection.SAE_37_FLARE, size)
        for figure in (found.torque, found.flats):
            assert figure is None or "TM 55-1730" not in figure.source


@pytest.mark.parametrize("family", [Connection.NPT, Connection.NPTF, Connection.BSPT])
def test_taper_threads_have_turns_and_never_flats(family: Connection) -> None:
    found = of(family, "1/2", "male")
    assert found.flats is None and found.torque is None
    assert found.turns is not None and found.turns.basis is Basis.FINGER_TIGHT
    steps = steps_for(an_end(family, "1/2", "male"), None, spec=example(), turns=found.turns)
    said = " ".join(str(step.message) for step in steps)
    assert "2 to 3 turns more" in said or "1 1/2 to 3 turns more" in said
    assert "fit-never_back" in {step.message.id for step in steps}


def test_flange_torque_is_that_of_each_screw() -> None:
    found = of(Connection.FLANGE_CODE61, "24", "flange_head")
    assert found.torque is not None
    assert found.torque.part == "cap_screw"
    assert (found.torque.min, found.torque.max) == (62.4, 78.6)  # 46-58 lbf·ft
    assert found.torque.basis.values["screw"] == "1/2 in"


def test_brass_takes_its_own_figure_or_half_of_steel() -> None:
    own = of(Connection.SAE_37_FLARE, "8", material=Material.BRASS)
    assert own.torque is not None and own.torque.max == 33
    half = of(Connection.DIN24_LIGHT, "12", material=Material.BRASS)
    assert half.torque is not None and half.torque.max == 27
    assert half.torque.basis.values["percent"] == 50
    assert half.flats is None


def test_what_no_source_gives_is_none_with_a_warning() -> None:
    found, warnings = advice("end_a", an_end(Connection.DIN24_HEAVY, "14", "female_swivel"), tables())
    assert (found.torque, found.flats) == (None, None)
    assert [w.code for w in warnings] == ["tightening_not_known"]


def test_steps_of_every_end_are_filled_and_begin_with_cautions() -> None:
    all_tables = tables()
    for family, about in all_tables.families.items():
        for form in about.forms:
            for shape in ("straight", "elbow_90"):
                size = all_tables.sizes(family)[2]
                an = an_end(family, size, form, shape=shape)
                found = advice("end_a", an, all_tables)[0]
                steps = steps_for(an, None, spec=example(), turns=found.turns, pressure_bar=100.0)
                texts = [str(step.message) for step in steps]
                assert not any("{" in text for text in texts)
                assert [step.phase for step in steps] == sorted(
                    (s.phase for s in steps), key=["before", "check", "route", "tighten", "prove"].index
                )
                assert any("lock the machine out" in text for text in texts)
                assert any("cardboard" in text for text in texts)
                assert any("emergency surgical treatment" in text for text in texts)
                assert any(step.phase == "tighten" for step in steps)


def test_flares_are_told_that_two_seats_do_not_seal() -> None:
    found = assess(example())
    assert "seat_37_45" in found.end_a.steps
    assert "flats" in found.end_a.steps and found.end_a.figures["flats"] == "1 to 1 1/2 flats"


def test_the_clocking_step_needs_two_elbows() -> None:
    pair = both("SAE 100R17", 12, end("sae_37_flare", 12, shape="elbow_90"), clocking_deg=90)
    found = assess(pair)
    assert "clocking" in found.end_a.steps and found.end_a.figures["clocking"] == "90°"
    assert "clocking" not in assess(example()).end_a.steps


def test_no_steel_figure_is_shown_for_stainless() -> None:
    one = End(connection="sae_37_flare", dash=12, form="female_swivel", material="stainless_steel")
    found, warnings = advice("end_a", one, tables())
    assert (found.torque, found.flats) == (None, None)
    assert any("N·m" in str(line) for line in found.spread)
    assert [warning.code for warning in warnings] == ["tightening_not_known"]


@pytest.mark.parametrize("material", ["brass", "aluminium"])
def test_a_soft_flange_head_has_no_halved_screw_torque(material: str) -> None:
    found = assess(both("SAE 100R2", 16, end("flange_code61", 16, "flange_head", material=material)))
    assert found.end_a.torque is None
    assert "trade-tightening-soft-flange" in {w.message.id for w in found.warnings}
