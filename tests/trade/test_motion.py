"""What turns the hose is connected first, what swivels last, and two rigid ends are told how to be fitted."""

from __future__ import annotations

from typing import Any

import pytest

from tagger.spec import AssemblySpec, Form
from tagger.trade import assess, motion
from tagger.trade.tables import tables
from tests.trade.specs import end, example

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
    free = ("eye", "coupler_male", "coupler_female", "staple_male", "staple_female", "standpipe")
    for (_, form), about in tables().motions.items():
        assert (Form(form).swivels or form in free) == (about.motion == "swivel")
        assert (form == "flange_head") == (about.motion == "flange")


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
    assert {"torque_fixed", "flats_fixed", "rigid_first"} <= steps
    assert not steps & {"torque_nut", "flats", "mark_finger", "mark_wrench", "by_hand", "two_wrenches"}


@pytest.mark.parametrize(
    ("connection", "size", "step"), [("orfs", 12, "anti_galling"), ("npt", "3/4", "sealant_stainless")]
)
def test_stainless_threads_are_kept_from_seizing(connection: str, size: Any, step: str) -> None:
    form = "female_swivel" if connection == "orfs" else "male"
    for material in ("stainless_steel", "carbon_steel"):
        found = assess(between(end(connection, size, form, material=material), SWIVEL)).end_a.steps
        assert (step in found) == (material == "stainless_steel")


def test_a_flange_stays_loose_before_it_is_tightened() -> None:
    steps = assess(between(FLANGE, SWIVEL)).end_a.steps
    assert steps.index("flange_seat") < steps.index("flange_loose") < steps.index("flange_cross")
