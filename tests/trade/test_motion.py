"""What turns the hose is connected first, what swivels last, and two rigid ends are told how to be fitted."""

from __future__ import annotations

from typing import Any

import pytest

from tagger.spec import AssemblySpec, Form
from tagger.trade import assess, motion
from tagger.trade.steps import steps_for
from tagger.trade.tables import tables
from tests.trade.specs import an_end, end, example

RIGID = end("npt", "3/4", "male")
STUD = end("sae_orb", 12, "male")
MATING = end("sae_37_flare", 12, "male")
SWIVEL = end("sae_37_flare", 12)
FLANGE = end("flange_code61", 12, "flange_head")


def between(a: dict[str, Any], b: dict[str, Any]) -> AssemblySpec:
    return AssemblySpec.read({**example().as_dict(), "end_a": a, "end_b": b})


def codes(spec: AssemblySpec) -> set[str]:
    return {w.code for w in assess(spec).warnings}


def test_every_form_of_every_family_has_a_motion() -> None:
    wanted = {(family, form) for family, about in tables().families.items() for form in about.forms}
    assert set(tables().motions) == wanted


def test_no_thread_without_a_nut_is_said_to_swivel() -> None:
    for (family, form), about in tables().motions.items():
        assert (Form(form).swivels or form == "standpipe") == (about.motion == "swivel")
        assert (form in ("flange_head", "eye")) == (about.motion == "flange")
        assert family.is_latched == (about.motion == "free")


@pytest.mark.parametrize(
    ("a", "b", "first"),
    [
        (SWIVEL, RIGID, "end_b"),
        (RIGID, SWIVEL, "end_a"),
        (SWIVEL, STUD, "end_b"),
        (SWIVEL, MATING, "end_b"),
        (MATING, RIGID, "end_b"),
        (FLANGE, RIGID, "end_b"),
        (SWIVEL, FLANGE, "end_b"),
        (SWIVEL, SWIVEL, "end_a"),
        (RIGID, STUD, "end_a"),
    ],
)
def test_the_rigid_end_is_connected_first_and_the_swivel_last(a: Any, b: Any, first: str) -> None:
    assert motion.first_end(between(a, b), tables()) == first


@pytest.mark.parametrize(
    ("a", "b", "loose"),
    [(FLANGE, SWIVEL, True), (SWIVEL, FLANGE, True), (FLANGE, FLANGE, True), (RIGID, FLANGE, False), (FLANGE, RIGID, False),
     (SWIVEL, RIGID, False), (SWIVEL, SWIVEL, False)],
)  # fmt: skip
def test_the_end_connected_first_stays_loose_where_it_is_a_flange(a: Any, b: Any, loose: bool) -> None:
    assert motion.stays_loose(between(a, b), tables()) is loose


COUPLER = end("qd_iso16028", 12, "coupler_male")


@pytest.mark.parametrize(
    ("earlier", "later", "told_earlier", "told_later"),
    [
        (RIGID, STUD, {"rigid_first", "rigid_pair"}, {"rigid_second"}),
        (RIGID, MATING, {"rigid_first"}, {"mating_second"}),
        (RIGID, FLANGE, {"rigid_first"}, {"flange_loose"}),
        (RIGID, SWIVEL, {"rigid_first"}, {"swivel_last"}),
        (RIGID, COUPLER, {"rigid_first"}, {"free_last"}),
        (MATING, MATING, {"mating_first"}, {"mating_second"}),
        (MATING, FLANGE, {"mating_first"}, {"flange_loose"}),
        (MATING, SWIVEL, {"mating_first"}, {"swivel_last"}),
        (MATING, COUPLER, {"mating_first"}, {"free_last"}),
        (FLANGE, FLANGE, {"flange_loose"}, {"flange_loose"}),
        (FLANGE, SWIVEL, {"flange_loose"}, {"swivel_last"}),
        (FLANGE, COUPLER, {"flange_loose"}, {"free_last"}),
        (SWIVEL, SWIVEL, set(), set()),
        (SWIVEL, COUPLER, set(), {"free_last"}),
        (COUPLER, COUPLER, set(), set()),
    ],
)
def test_each_end_is_told_its_turn_by_what_turns_at_both(
    earlier: Any, later: Any, told_earlier: set[str], told_later: set[str]
) -> None:
    spec = between(earlier, later)
    assert motion.conditions(spec, "end_a", tables()) == told_earlier
    assert motion.conditions(spec, "end_b", tables()) == told_later
    if motion.motion(spec.end_a, tables()) != motion.motion(spec.end_b, tables()):
        turned = between(later, earlier)
        assert motion.conditions(turned, "end_b", tables()) == told_earlier
        assert motion.conditions(turned, "end_a", tables()) == told_later


def test_two_rigid_ends_are_built_with_a_warning_that_says_how_they_are_fitted() -> None:
    assert "two_rigid_ends" in codes(between(RIGID, STUD))
    for pair in ((RIGID, SWIVEL), (RIGID, FLANGE), (SWIVEL, SWIVEL), (MATING, FLANGE)):
        assert not {"two_rigid_ends", "mating_nut_needed"} & codes(between(*pair))


def test_an_end_without_a_nut_asks_for_one_on_the_part_it_connects_to() -> None:
    assert "mating_nut_needed" in codes(between(MATING, MATING))
    found = [w for w in assess(between(RIGID, MATING)).warnings if w.code == "mating_nut_needed"]
    assert [w.field for w in found] == ["end_b"]


def test_a_rigid_end_is_never_screwed_in_after_the_other_end() -> None:
    found = assess(between(RIGID, STUD))
    assert "rigid_first" in found.end_a.steps and "rigid_first" not in found.end_b.steps
    assert "rigid_second" in found.end_b.steps and "rigid_second" not in found.end_a.steps
    assert "rigid_pair" in found.end_a.steps and "rigid_pair" not in found.end_b.steps
    turned = assess(between(SWIVEL, RIGID))
    assert "rigid_pair" not in {*turned.end_a.steps, *turned.end_b.steps}
    assert "rigid_first" in turned.end_b.steps and "swivel_last" in turned.end_a.steps


def test_every_pair_of_ends_is_told_one_order() -> None:
    """Of two ends one at most is told to go first, and none that turns the hose goes in after a tight end."""
    ends = (RIGID, STUD, MATING, SWIVEL, FLANGE)
    for a in ends:
        for b in ends:
            found = assess(between(a, b))
            steps = {"end_a": found.end_a.steps, "end_b": found.end_b.steps}
            first = motion.first_end(between(a, b), tables())
            for name, chosen in steps.items():
                if {"rigid_first", "mating_first"} & set(chosen):
                    assert name == first
                if {"rigid_second", "mating_second"} & set(chosen):
                    assert name != first


def test_no_guide_speaks_of_a_nut_where_the_end_turns_the_hose() -> None:
    """A fixed female flare is turned by its own hexagon: there is no nut, and no line to draw across one."""
    fixed = end("sae_37_flare", 12, "female_fixed")
    steps = set(assess(between(fixed, SWIVEL)).end_a.steps)
    assert {"torque_fixed", "flats_fixed_instead", "rigid_first"} <= steps
    assert not steps & {
        "torque_nut",
        "flats",
        "flats_instead",
        "mark_finger",
        "mark_wrench",
        "by_hand",
        "two_wrenches",
    }


@pytest.mark.parametrize(
    ("connection", "size", "step"), [("orfs", 12, "anti_galling"), ("npt", "3/4", "sealant_stainless")]
)
def test_stainless_threads_are_kept_from_seizing(connection: str, size: Any, step: str) -> None:
    form = "female_swivel" if connection == "orfs" else "male"
    for material in ("stainless_steel", "carbon_steel"):
        found = assess(between(end(connection, size, form, material=material), SWIVEL)).end_a.steps
        assert (step in found) == (material == "stainless_steel")


LATCHED = [end("qd_iso16028", 12, "coupler_male"), end("staple", 12, "staple_male")]
BANJO = end("banjo_metric", "M26x1.5", "eye")


@pytest.mark.parametrize("latched", LATCHED, ids=["coupler", "staple"])
def test_what_is_pushed_together_comes_last_and_is_not_tightened(latched: dict[str, Any]) -> None:
    for other in (SWIVEL, RIGID, MATING, FLANGE, BANJO):
        found = assess(between(latched, other))
        assert motion.first_end(between(latched, other), tables()) == "end_b"
        steps = set(found.end_a.steps)
        assert {"free_last", "latch_clean"} <= steps
        assert not steps & {
            "no_figures",
            "swivel_last",
            "rigid_first",
            "rigid_second",
            "two_wrenches",
            "oring",
        } - {"oring"}
        assert "swivel_last" not in found.end_b.steps
        assert not {w.code for w in found.warnings if w.field == "end_a"} & {"tightening_not_known"}


def test_a_banjo_is_held_at_its_angle_with_new_rings_and_stays_loose_like_a_flange() -> None:
    steps = assess(between(BANJO, SWIVEL)).end_a.steps
    assert steps.index("banjo_rings") < steps.index("banjo_loose") < steps.index("banjo_hold")
    assert not set(steps) & {"swivel_last", "flange_loose", "rigid_first", "two_wrenches"}


def test_a_standpipe_is_tightened_by_turns_from_its_source_and_not_told_that_nothing_is_known() -> None:
    pipe = end("din_standpipe", "20", "standpipe", series="S", hose_dash=12)
    steps = assess(between(pipe, SWIVEL)).end_a.steps
    assert {"standpipe_in", "standpipe_nut", "two_wrenches"} <= set(steps) and "no_figures" not in steps


def test_an_inverted_flare_is_turned_by_its_nut_only_where_it_has_one() -> None:
    fixed, swivel = (end("sae_inverted_flare", 12, form) for form in ("male", "male_swivel"))
    assert {"by_hand", "two_wrenches"} <= set(assess(between(swivel, FLANGE)).end_a.steps)
    steps = set(assess(between(fixed, SWIVEL)).end_a.steps)
    assert "rigid_first" in steps and not steps & {
        "by_hand",
        "two_wrenches",
        "two_wrenches_fixed",
        "torque_nut",
    }


def test_every_end_is_told_how_it_is_joined() -> None:
    """No family of the tables has a guide whose part on tightening speaks of the order only."""
    order = {
        "rigid_first",
        "rigid_second",
        "mating_first",
        "mating_second",
        "swivel_last",
        "free_last",
        "no_figures",
    }
    ours = tables()
    phases = {step.step_id: step.phase for step in ours.steps}
    for family, about in ours.families.items():
        size = ours.sizes(family)[2] if ours.sizes(family) else "Block M20x1.5"
        more = {"series": "L"} if family == "din_standpipe" else {}
        for form in about.forms:
            hose = {} if family.is_flange else {"hose_dash": 12}
            found = steps_for(an_end(family, size, form, **hose, **more), None, spec=example(), name="end_a")
            told = {step.step_id for step in found if phases[step.step_id] == "tighten"}
            assert told - order, (family, form)


def test_a_flange_stays_loose_before_it_is_tightened() -> None:
    steps = assess(between(FLANGE, SWIVEL)).end_a.steps
    assert steps.index("flange_seat") < steps.index("flange_loose") < steps.index("flange_cross")


ELBOWS = {"shape": "elbow_90"}


@pytest.mark.parametrize(
    ("a", "b", "kept_free_by"),
    [
        (SWIVEL | ELBOWS, SWIVEL | ELBOWS, "clocking_nut"),
        (SWIVEL | ELBOWS, FLANGE | ELBOWS, "clocking_nut"),
        (FLANGE | ELBOWS, FLANGE | ELBOWS, "clocking_screws"),
        (RIGID | ELBOWS, FLANGE | ELBOWS, "clocking_screws"),
        (RIGID | ELBOWS, SWIVEL | ELBOWS, "clocking_nut"),
        (RIGID | ELBOWS, RIGID | ELBOWS, None),
        (end("sae_orb", 12, "male") | ELBOWS, end("sae_orb", 12, "male") | ELBOWS, "clocking_locknut"),
    ],
)
def test_the_angle_of_two_elbows_is_set_by_what_is_still_free(
    a: Any, b: Any, kept_free_by: str | None
) -> None:
    """Never "by its nut" for a flange, whose screws must still be loose, or a rigid end, which has nothing free."""
    spec = AssemblySpec.read({**example().as_dict(), "end_a": a, "end_b": b, "clocking_deg": 90})
    every = {"clocking_nut", "clocking_screws", "clocking_locknut"}
    for name, an in (("end_a", spec.end_a), ("end_b", spec.end_b)):
        steps = {step.step_id for step in steps_for(an, None, spec=spec, name=name)}  # type: ignore[arg-type]
        assert steps & every == ({kept_free_by} if kept_free_by else set())
