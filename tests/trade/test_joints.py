"""A family with studs and nuts: a stud takes up to 2.3 times the torque of a nut on a cone, so neither stands for the other."""

from __future__ import annotations

import pytest

from tagger.spec import Connection, Tightening
from tagger.spec import End as AnEnd
from tagger.trade import assess, joints, tightened
from tagger.trade.tables import tables
from tagger.trade.tightening import advice, steps_for
from tests.trade.made_up import flats, made_up, nm
from tests.trade.specs import an_end, both, end, example


@pytest.mark.parametrize(("form", "shown"), [("female_swivel", 24), ("male", 34), ("female_fixed", 34)])
def test_a_bspp_end_has_the_torque_of_its_form_and_never_that_of_the_other_joint(
    form: str, shown: float
) -> None:
    """Each figure alone, too: the nut's is not lent to a stud, nor the stud's to a nut."""
    bspp = Connection.BSPP
    nut = nm(24, 24, family=bspp, size="1/4")
    stud = nm(34, 34, family=bspp, size="1/4", part=("washer_stud",))
    an = an_end(bspp, "1/4", form)
    found = advice("end_a", an, made_up(tightening=[nut, stud]))[0].torque
    assert found is not None and found.max == shown
    other = stud if form == "female_swivel" else nut
    assert advice("end_a", an, made_up(tightening=[other]))[0].torque is None


def test_flats_of_a_plain_stud_and_of_one_with_a_washer_are_never_taken_together() -> None:
    bspp = Connection.BSPP
    rows = [
        flats(low, high, family=bspp, size="1/4", part=(part,))
        for part, low, high in (("stud", 1, 1.5), ("washer_stud", 1.25, 1.75))
    ]
    found, warnings = advice("end_a", an_end(bspp, "1/4", "male"), made_up(tightening=rows))
    assert found.flats is not None and (found.flats.min, found.flats.max) == (1, 1.5)
    assert "flats_sources_disagree" not in {w.code for w in warnings}


def test_an_older_tag_with_a_nuts_torque_on_a_bspp_stud_never_has_the_stud_tightened_to_it() -> None:
    """Tags printed before carried 24.5 N·m, the nut's, on a male end; a stud in a port takes 34 N·m."""
    male = an_end(Connection.BSPP, "1/4", "male")
    for nm_carried, wanted in ((24.5, "torque_bspp_of_nut"), (34.0, "torque_bspp_stud")):
        told = Tightening(torque_min_nm=nm_carried, torque_max_nm=nm_carried)
        ids = {step.step_id for step in steps_for(male, told, spec=example(), name="end_a")}
        assert ids & {"torque_bspp_of_nut", "torque_bspp_stud", "torque_nut"} == {wanted}


def test_the_torque_of_a_bspp_stud_or_of_a_nut_on_one_is_never_told_without_saying_whose_it_is() -> None:
    """A stud takes up to 2.3 times the torque of a nut on a cone of the same size."""
    ends = [end("bspp", "1/4", form) for form in ("male", "female_fixed", "female_swivel")]
    male, fixed, swivel = (AnEnd.model_validate(each) for each in ends)
    said = {
        (one.form.value, nm_carried): tightened.lines(
            Tightening(torque_min_nm=nm_carried, torque_max_nm=nm_carried), one, tables()
        )[0].id
        for one in (male, fixed, swivel)
        for nm_carried in (24.5, 34.0)
    }
    stud, of_nut, plain = "words-torque-stud", "words-torque-of-nut", "words-as-is"
    assert said == {
        ("male", 24.5): of_nut, ("male", 34.0): stud,
        ("female_fixed", 24.5): of_nut, ("female_fixed", 34.0): stud,
        ("female_swivel", 24.5): plain, ("female_swivel", 34.0): plain,
    }  # fmt: skip


def test_a_bspp_stud_is_told_that_its_torque_is_not_a_nuts() -> None:
    ids = {
        form: assess(both("SAE 100R2", 4, end("bspp", "1/4", form))).end_a.steps
        for form in ("female_swivel", "male")
    }
    assert "torque_bspp_nut" in ids["female_swivel"] and "torque_bspp_stud" not in ids["female_swivel"]
    assert "torque_bspp_stud" in ids["male"] and not {"torque_nut", "torque_bspp_nut"} & set(ids["male"])
    codes = {w.code for w in assess(both("SAE 100R2", 4, end("bspp", "1/4", "male"))).warnings}
    assert "stud_not_nut" in codes


def test_every_torque_of_a_nut_is_known_again_on_a_stud_as_a_tag_carries_it() -> None:
    """In tenths: 58.84 N·m of the tables are 58.8 on a tag. A stud tightened to them is loose in its port."""
    for key, ranges in joints.nuts().items():
        family, size = key.split("|")
        stud = an_end(Connection(family), size, "male")
        for low, high in ranges:
            carried = Tightening(torque_min_nm=low and round(low, 1), torque_max_nm=round(high, 1))
            assert joints.is_of_nut(carried, stud), (key, low, high)
            more = carried.model_copy(update={"torque_max_nm": round(high + 0.1, 1)})
            assert joints.is_of_nut(more, stud) == ((low, round(high + 0.1, 1)) in ranges), (key, low, high)


@pytest.mark.parametrize(
    ("family", "size", "form", "said"),
    [
        ("bspp", "1/2", "male", True),
        ("bspp", "1/2", "female_swivel", False),
        ("orfs", "12", "male", False),
    ],
)
def test_a_stud_of_a_family_that_has_nuts_too_is_said_to_have_the_torque_of_a_stud(
    family: str, size: str, form: str, said: bool
) -> None:
    found, warnings = advice("end_a", an_end(Connection(family), size, form), tables())
    assert found.torque is not None
    assert ("stud_not_nut" in {w.code for w in warnings}) is said
