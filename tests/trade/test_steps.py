"""The steps of the fit guide: which of them an end has, in which order, with which figures."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from tagger.spec import Basis, Connection, Tightening
from tagger.trade import assess
from tagger.trade.steps import PHASES, screen_of
from tagger.trade.tables import tables
from tagger.trade.tightening import advice, steps_for
from tests.trade.specs import a_size, an_end, both, end, example


def test_the_fit_guide_never_says_whichever_comes_first() -> None:
    """A tag carries both figures: a flare has the choice, everything else goes by torque."""
    both_given = Tightening(
        torque_min_nm=90, torque_max_nm=95, flats_min=1, flats_max=1, flats_basis=Basis.FINGER_TIGHT
    )
    for family, about in tables().families.items():
        if about.method == "turns" or family.is_flange or family.is_latched:
            continue
        one = an_end(family, a_size(family), about.forms[0])
        steps = steps_for(one, both_given, spec=example(), name="end_a")
        ids = [step.step_id for step in steps]
        wanted = "choose_method" if about.method == "flats" else "torque_counts"
        assert [i for i in ids if i in ("choose_method", "torque_counts")] == [wanted], family
        assert all(
            ids.index(wanted) < ids.index(i) for i in ids if i.startswith(("mark_", "flats", "torque_nut"))
        )
        # a fitter who does each step in turn would tighten twice
        counts = [i for i in ids if i.startswith(("flats", "mark_"))]
        assert counts == (["mark_finger", "flats_instead"] if about.method == "flats" else []), family


def test_steps_of_every_end_are_filled_and_begin_with_cautions() -> None:
    all_tables = tables()
    for family, about in all_tables.families.items():
        for form in about.forms:
            for shape in ("straight", "elbow_90"):
                size = a_size(family)
                an = an_end(family, size, form, shape=shape)
                found = advice("end_a", an, all_tables)[0]
                steps = steps_for(
                    an, None, spec=example(), name="end_a", turns=found.turns, pressure_bar=100.0
                )
                texts = [str(step.message) for step in steps]
                assert not any("{" in text for text in texts)
                assert [step.phase for step in steps] == sorted(
                    (s.phase for s in steps), key=["before", "check", "route", "tighten", "prove"].index
                )
                assert any("lock the machine out" in text for text in texts)
                assert any("cardboard" in text for text in texts)
                assert any("emergency surgical treatment" in text for text in texts)
                assert any(step.phase == "tighten" for step in steps)


def test_flares_are_told_that_two_seats_do_not_seal_only_where_the_size_at_hand_shares_its_thread() -> None:
    for dash, shared in ((8, True), (12, False)):
        found = assess(both("SAE 100R2", dash, end("sae_37_flare", dash)))
        assert ("seat_37_45" in found.end_a.steps) is shared, dash


def guided(family: str, size: Any, form: str, tightening: Tightening | None = None, **more: Any) -> set[str]:
    """The steps of one end whose other end is alike."""
    an = an_end(Connection(family), size, form, **more)
    spec = example().model_copy(update={"end_a": an, "end_b": an})
    return {step.step_id for step in steps_for(an, tightening, spec=spec, name="end_a")}


def test_a_torque_says_whether_the_joint_is_dry_or_lubricated_or_that_its_source_does_not() -> None:
    for word, step in (
        ("o_ring_and_threads", "lubrication"),
        ("dry", "lubrication"),
        ("not_stated", "lubrication_unknown"),
        (None, "lubrication_not_carried"),
    ):
        tight_to = Tightening(torque_min_nm=90, torque_max_nm=95, lubrication=word)
        steps = guided("orfs", 12, "female_swivel", tight_to)
        every = {"lubrication", "lubrication_unknown", "lubrication_not_carried"}
        assert steps & every == {step}, word
    assert not guided("orfs", 12, "female_swivel") & every  # no torque, nothing to say of it


def test_what_was_missing_in_the_guide_is_asked_of_every_end_that_it_concerns() -> None:
    always = {"zero", "photo", "cap", "why", "injection"}
    for family, size, form, told in (
        ("din24_heavy", "20", "female_swivel", {"oring_cone"}),
        ("bspp", "3/4", "female_swivel", {"oring_cone"}),
        ("flange_code61", 12, "flange_head", {"flange_code61", "screw_length", "flange_loose"}),
        ("flange_code62", 12, "flange_head", {"flange_code62", "screw_length", "flange_loose"}),
        ("sae_orb", 12, "male", {"stud_mark"}),
        ("metric_orb", "M27x2", "male", {"stud_mark"}),
    ):
        steps = guided(family, size, form)
        assert always | told <= steps, (family, always | told - steps)
    assert not guided("flange_code61", 12, "flange_head") & {"flange_code62", "screw_class_62"}


def test_a_pressure_known_in_part_is_told_as_at_most_and_one_unknown_as_unknown() -> None:
    an = example().end_a
    for bar, at_most, step in (
        (100.0, None, "pressure"),
        (None, 100.0, "at_most"),
        (None, None, "no_pressure"),
    ):
        chosen = steps_for(an, None, spec=example(), name="end_a", pressure_bar=bar, at_most_bar=at_most)
        steps = {s.step_id for s in chosen}
        assert steps & {"pressure", "at_most", "no_pressure"} == {step}


def test_the_guide_names_each_source_where_those_for_an_nptf_thread_disagree() -> None:
    found = assess(both("SAE 100R2", 8, end("nptf", "1/2", "male", hose_dash=8)))
    assert "turns_disputed" in found.end_a.steps


def test_the_clocking_step_needs_two_elbows() -> None:
    pair = both("SAE 100R17", 12, end("sae_37_flare", 12, shape="elbow_90"), clocking_deg=90)
    found = assess(pair)
    assert "clocking" in found.end_a.steps and found.end_a.figures["clocking"] == "90°"
    assert "clocking" not in assess(example()).end_a.steps


def test_a_step_of_a_shop_that_names_no_screen_is_on_the_last_of_its_phase() -> None:
    (ours, *_) = [step for step in tables().steps if step.phase == "before"]
    assert screen_of(ours) == ours.screen
    assert [screen_of(replace(ours, phase=phase, screen="")) for phase in PHASES] == [
        "old", "match", "clocking", "tighten", "after",
    ]  # fmt: skip
