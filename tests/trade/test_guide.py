"""The fit guide of a whole assembly: each end has its own values, in the order that the ends are connected."""

from __future__ import annotations

from typing import Any

from tagger.messages import angle
from tagger.spec import TagContent, Tightening
from tagger.trade import assess, guide, motion
from tagger.trade.steps import OF_ONE_END, PHASES
from tagger.trade.tables import tables
from tests.trade.made_up import bend, ending, hose, made_up, standard
from tests.trade.specs import both, end, example

FIRST = Tightening(
    torque_min_nm=103, torque_max_nm=115, flats_min=1, flats_max=1.25, flats_basis="finger_tight"
)
OTHER = Tightening(torque_min_nm=60, torque_max_nm=70)


def _content() -> TagContent:
    spec = example(end_b=end("orfs", 12), clocking_deg=None)
    return TagContent(spec=spec, tighten_a=FIRST, tighten_b=OTHER, working_pressure_bar=172.4)


def _lines(screens: list[guide.Screen], ends: str) -> list[guide.Line]:
    return [line for screen in screens for line in screen.lines if line.ends == ends]


def test_each_end_is_tightened_to_its_own_values_and_never_to_the_others() -> None:
    screens = guide.screens(_content(), 240.0, None, tables())
    for ends, own, others in (("A", FIRST, OTHER), ("B", OTHER, FIRST)):
        lines = _lines(screens, ends)
        assert lines and {line.tightening for line in lines} == {own}
        said = " ".join(str(line.step.message) for line in lines)
        assert str(round(own.torque_max_nm or 0)) in said
        assert str(round(others.torque_max_nm or 0)) not in said


def test_what_both_ends_say_is_said_once_and_the_phases_come_in_order() -> None:
    screens = guide.screens(_content(), 240.0, None, tables())
    once = [line.said for line in _lines(screens, "AB")]
    assert once and len(once) == len(set(once))
    assert not set(once) & {line.said for line in _lines(screens, "A") + _lines(screens, "B")}
    phases = [line.step.phase for screen in screens for line in screen.lines]
    assert phases == sorted(phases, key=PHASES.index)
    for screen in screens:
        orders = [line.step.order for line in screen.lines]
        assert orders == sorted(orders), screen.name


def test_the_end_that_is_connected_first_comes_first() -> None:
    content = _content()
    screens = guide.screens(content, 240.0, None, tables())
    own = [screen.ends for screen in screens if screen.name in OF_ONE_END and screen.ends != "AB"]
    assert set(own) == {"A", "B"}
    assert own[0] == ("B" if motion.first_end(content.spec, tables()) == "end_b" else "A")


def test_what_is_remembered_of_one_assembly_is_told_of_no_other_with_the_same_ends() -> None:
    """Three hoses that differ from the first in their bend radius alone, and in their rating alone."""
    hoses = {"MADE 1": (100, 200), "MADE 2": (100, 300), "MADE 3": (90, 200)}
    files: dict[str, list[Any]] = {
        "hose_standards": [standard(name) for name in hoses],
        "hose_pressure": [hose(bar, standard=name) for name, (bar, _) in hoses.items()],
        "hose_bend": [bend(radius, standard=name) for name, (_, radius) in hoses.items()],
    }
    made = made_up(**files)
    found = [assess(both(name, 12, end("sae_37_flare", 12)), made).end_a for name in hoses]
    assert len({tuple(advice.figures.items()) for advice in found}) == 3
    unrated = made_up(**files, connection_pressure=[ending(120, size="4")])
    beyond: dict[str, Any] = {"max_temperature_c": 150}
    for more, told in (({}, "at_most"), (beyond, "no_pressure")):
        steps = assess(both("MADE 1", 12, end("sae_37_flare", 12), **more), unrated).end_a.steps
        assert {"pressure", "at_most", "no_pressure"} & set(steps) == {told}


def test_the_record_names_the_source_of_the_figure_that_a_step_uses() -> None:
    content = _content()
    found = assess(content.spec)
    assert found.end_a.torque and found.end_a.flats
    advice = found.end_a.model_copy(
        update={
            "torque": found.end_a.torque.model_copy(update={"source": "handbook 7"}),
            "flats": found.end_a.flats.model_copy(update={"source": "sheet 9"}),
        }
    )
    lines = _lines(guide.screens(content, 240.0, (advice, found.end_b), tables()), "A")
    sources = {
        line.step.figures: str(line.source) for line in lines if {"torque", "flats"} & set(line.step.figures)
    }
    assert sources
    for figures, source in sources.items():
        assert ("handbook 7" in source) == ("torque" in figures), figures
        assert ("sheet 9" in source) == ("flats" in figures), figures


def test_where_a_shop_counts_clockwise_the_clocking_step_alone_says_another_angle() -> None:
    elbow = end("sae_37_flare", 12, shape="elbow_90")
    content = TagContent(
        spec=both("SAE 100R2", 12, elbow, clocking_deg=135), tighten_a=FIRST, tighten_b=FIRST
    )
    steps = [line.step for screen in guide.screens(content, 240.0, None, tables()) for line in screen.lines]
    others = [
        guide.said(step, content, clockwise=True)
        for step in steps
        if guide.said(step, content, clockwise=True) != step.message
    ]
    assert [(message.id, message.values) for message in others] == [
        ("fit-clocking_clockwise", {"clocking": angle(225)})
    ]
    assert len({step.picture for step in steps}) > 3
    assert all(guide.said(step, content, clockwise=False) == step.message for step in steps)


def test_flats_of_a_taper_thread_are_sixths_of_a_turn() -> None:
    taper = example(end_a=end("npt", "3/4", "male"), clocking_deg=None).end_a
    tightening = Tightening(flats_min=6, flats_max=12, flats_basis="finger_tight")
    found = guide.turns_of(taper, tightening)
    assert found is not None and (found.min, found.max) == (1, 2) and found.basis == "finger_tight"
    assert guide.turns_of(taper, None) is None
    assert guide.turns_of(taper, Tightening(torque_max_nm=50)) is None
    assert guide.turns_of(example().end_a, tightening) is None
