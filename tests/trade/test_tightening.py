"""Torque, flats and turns: chosen with care, the spread kept, steps structured. Most figures are made up."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Any

import pytest

from tagger import phrases
from tagger.code.payload import points
from tagger.i18n import LANGUAGES, Translator
from tagger.messages import Message, as_is, torque
from tagger.spec import Basis, Connection, Material, Tightening
from tagger.spec import End as AnEnd
from tagger.trade import assess, joints, tightened
from tagger.trade import rows as row
from tagger.trade.results import EndAdvice, Warning_, carried_tightening
from tagger.trade.steps import PHASES, screen_of
from tagger.trade.tables import tables
from tagger.trade.tightening import LUBRICATIONS, advice, steps_for
from tests.trade.made_up import bolt, made_up, rule, tight
from tests.trade.specs import an_end, both, end, example

FLARE = Connection("sae_37_flare")


def by(*rows: row.TighteningRow, form: str = "female_swivel", **more: object) -> EndAdvice:
    """How a -12 end of the 37 degree flare is tightened where these are all the rows there are."""
    return advised(*rows, form=form, **more)[0]


def advised(
    *rows: row.TighteningRow, form: str = "female_swivel", **more: object
) -> tuple[EndAdvice, list[Warning_]]:
    return advice("end_a", an_end(FLARE, "12", form, **more), made_up(tightening=list(rows)))


def nm(low: float | None, high: float, **more: object) -> row.TighteningRow:
    return tight(torque_min_nm=low, torque_max_nm=high, **more)


def flats(low: float | None, high: float, basis: str = "finger_tight", **more: object) -> row.TighteningRow:
    return tight(flats_min=low, flats_max=high, basis=basis, **more)


def shown(*rows: row.TighteningRow) -> float | None:
    """The upper torque that is shown."""
    found = by(*rows).torque
    return None if found is None else found.max


def test_torque_and_flats_are_shown_with_basis_and_source() -> None:
    found = by(nm(90, 110, source="one"), flats(1, 1.5, "wrench_resistance", source="two"))
    assert found.torque is not None and found.flats is not None
    assert (found.torque.min, found.torque.max, found.torque.source) == (90, 110, "one")
    assert (found.flats.min, found.flats.max, found.flats.source) == (1, 1.5, "two")
    assert found.flats.basis is Basis.WRENCH_RESISTANCE
    assert found.spread == ()


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ({"confidence": "shop"}, {"confidence": "published"}),
        ({"confidence": "published"}, {"confidence": "practice"}),
        ({"confidence": "practice"}, {"confidence": "memory"}),
        ({}, {"size": "all"}),
        ({}, {"scope": "machine"}),
    ],
)
def test_whose_figure_comes_first(first: dict[str, str], second: dict[str, str]) -> None:
    """Each time the row that comes second has the lower figure, so that its order decides and not its size."""
    assert shown(nm(40, 50, **second), nm(90, 110, **first)) == 110


def test_a_range_comes_before_a_mere_ceiling_and_among_equals_the_lowest_upper_figure() -> None:
    assert shown(nm(None, 50), nm(90, 110)) == 110
    assert shown(nm(90, 110), nm(95, 105)) == 105


def test_of_equal_torques_the_row_that_has_flats_too_is_shown() -> None:
    """One source for both figures, whichever of the rows stands first."""
    alone = nm(90, 110, basis="finger_tight", source="alone")
    together = nm(90, 110, flats_min=1, flats_max=1.5, basis="finger_tight", source="together")
    for rows in ((alone, together), (together, alone)):
        found = by(*rows)
        assert found.torque is not None and found.flats is not None
        assert (found.torque.source, found.flats.source) == ("together", "together")


def test_a_face_seal_has_one_method_torque_and_a_37_degree_flare_lets_the_fitter_choose() -> None:
    rows = [
        tight(family=Connection(family), torque_min_nm=90, torque_max_nm=95, flats_min=0.5, flats_max=0.75,
              basis="finger_tight")
        for family in ("orfs", "sae_37_flare")
    ]  # fmt: skip
    made = made_up(tightening=rows)
    seal, _ = advice("end_a", an_end(Connection.ORFS, "12", "female_swivel"), made)
    assert seal.torque is not None and seal.flats is None
    flare, _ = advice("end_a", an_end(FLARE, "12", "female_swivel"), made)
    assert flare.torque is not None and flare.flats is not None
    alone = made_up(
        tightening=[tight(family=Connection.ORFS, flats_min=0.5, flats_max=0.75, basis="finger_tight")]
    )
    only, _ = advice("end_a", an_end(Connection.ORFS, "12", "female_swivel"), alone)
    assert only.flats is not None, "flats are better than nothing"


def a_size(family: Connection) -> str:
    """A middle size of the family; a description where it has none."""
    sizes = tables().sizes(family)
    return sizes[2] if sizes else "Block M20x1.5"


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


def test_of_equal_flats_those_from_wrench_resistance_are_shown_and_the_contradiction_is_said() -> None:
    rows = (flats(1, 1.5, "finger_tight", source="one"), flats(1, 1.5, "wrench_resistance", source="two"))
    found, warnings = advised(*rows)
    assert found.flats is not None and found.flats.basis is Basis.WRENCH_RESISTANCE
    said = [w.message for w in warnings if w.code == "flats_two_bases"]
    assert [(m.values["source"], m.values["contrary"]) for m in said] == [("two", "one")]
    _, agree = advised(flats(1, 1.5, "wrench_resistance"), flats(2, 2, "finger_tight"))
    assert not agree


def test_flats_of_sources_that_overlap_are_the_range_they_share_and_others_are_each_named() -> None:
    wrench = "wrench_resistance"
    found, warnings = advised(flats(1, 1.5, wrench, source="one"), flats(1.25, 1.75, wrench, source="two"))
    assert found.flats is not None and (found.flats.min, found.flats.max) == (1.25, 1.5)
    assert not warnings
    found, warnings = advised(flats(1.5, 1.75, wrench, source="one"), flats(2, 2, wrench, source="two"))
    assert found.flats is not None and (found.flats.min, found.flats.max) == (1.5, 1.75)
    [said] = [str(w.message) for w in warnings if w.code == "flats_sources_disagree"]
    assert "1 1/2 to 1 3/4 flats (one)" in said and "2 flats (two)" in said


@pytest.mark.parametrize("apart", [{"basis": "finger_tight"}, {"scope": "machine"}, {"size": "all"}])
def test_counts_from_another_start_or_of_another_standing_narrow_no_flats(apart: dict[str, Any]) -> None:
    one = flats(1, 1.5, "wrench_resistance", source="one")
    other = tight(
        **{"flats_min": 1.25, "flats_max": 1.75, "basis": "wrench_resistance", "source": "two", **apart}
    )
    found, warnings = advised(one, other)
    assert found.flats is not None and (found.flats.min, found.flats.max) == (1, 1.5)
    assert "flats_sources_disagree" not in {w.code for w in warnings}


def test_a_mere_ceiling_beside_a_range_is_told_as_it_is() -> None:
    found = by(nm(90, 110), nm(None, 150, source="two"))
    assert found.torque is not None and found.torque.basis.values["others"] == torque(150, 150)


def test_of_three_counts_that_share_nothing_the_one_that_ends_first_is_shown() -> None:
    """An over-tightened seat cracks: not the one that begins first."""
    counts = ((1, 2), (1.5, 1.75), (3, 4))
    found = by(*(flats(low, high, source=f"{high}") for low, high in counts)).flats
    assert found is not None and (found.min, found.max, found.source) == (1.5, 1.75, "1.75")
    rows = made_up(tightening=[taper(low, high, source=f"{high}") for low, high in counts])
    turned = advice("end_a", an_end(Connection("nptf"), "1/2", "male"), rows)[0].turns
    assert turned is not None and (turned.min, turned.max, turned.source) == (1.5, 1.75, "1.75")


def test_sources_that_overlap_are_shown_as_the_range_they_share() -> None:
    found, warnings = advised(nm(23, 26, source="one"), nm(24, 28, source="two"))
    assert found.torque is not None and (found.torque.min, found.torque.max) == (24, 26)
    assert found.torque.basis.id == "trade-torque-basis-shared" and not warnings
    found, warnings = advised(nm(23, 25, source="one"), nm(25, 28, source="two"))
    assert found.torque is not None and (found.torque.min, found.torque.max) == (25, 25) and not warnings


def test_sources_that_share_nothing_are_both_named_and_the_tag_keeps_one() -> None:
    found, warnings = advised(nm(90, 95, source="one"), nm(116, 142, source="two"))
    assert found.torque is not None and (found.torque.min, found.torque.max) == (90, 95)
    [said] = [w.message for w in warnings if w.code == "torque_sources_disagree"]
    assert [m.values["source"] for m in said.values["torques"]] == ["one", "two"]
    assert found.torque.basis.values["others"] == torque(116, 142)


@pytest.mark.parametrize(
    "apart", [{"lubrication": "lubricated"}, {"part": ("stud",)}, {"scope": "machine"}, {"screw": "M10"}]
)
def test_two_joints_or_conditions_are_never_taken_together(apart: dict[str, Any]) -> None:
    """Each time the ranges overlap, and the figure shown is that of one source."""
    one = nm(90, 100, source="one", lubrication="run_on_dry")
    found = by(one, nm(95, 120, source="two", **{"lubrication": "run_on_dry", **apart}), form="male")
    assert found.torque is not None and (found.torque.min, found.torque.max) == (90, 100)


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


@pytest.mark.parametrize(("family", "size", "part", "form"), [
    ("metric_flat_stud", "M22x1.5", "stud", "male"), ("banjo_metric", "M14x1.5", "bolt", "eye"),
])  # fmt: skip
def test_a_torque_that_depends_on_the_sealing_ring_is_named_for_each_ring_and_never_shown(
    family: str, size: str, part: str, form: str
) -> None:
    """A copper ring takes about half of what an elastomer one takes, and the end tells neither."""
    rows = [nm(low, low, family=Connection(family), size=size, part=(part,), use="ring", source=f"{low}")
            for low in (70, 130)]  # fmt: skip
    rows.append(
        nm(
            40,
            40,
            family=Connection(family),
            size=size,
            part=(part,),
            use="ring",
            material="brass",
            source="brass",
        )
    )
    an = an_end(Connection(family), size, form)
    found, warnings = advice("end_a", an, made_up(tightening=rows))
    assert found.torque is None
    [said] = [w.message for w in warnings if w.code == "tightening_not_known"]
    assert [m.values["source"] for m in said.values["torques"]] == ["70", "130"]
    own = nm(75, 75, family=Connection(family), size=size, part=(part,), confidence="shop")
    kept = advice("end_a", an, made_up(tightening=[*rows, own]))[0].torque
    assert kept is not None and kept.max == 75


def test_a_shops_own_torque_settles_what_the_sources_dispute() -> None:
    rows = (nm(90, 95, source="one"), nm(116, 142, source="two"), nm(100, 110, confidence="shop"))
    found, warnings = advised(*rows)
    assert found.torque is not None and (found.torque.min, found.torque.max) == (100, 110)
    assert not warnings and found.torque.basis.values["others"] == torque(90, 142)


def test_flats_without_a_starting_point_are_kept_aside_and_named() -> None:
    found = by(flats(1, 1.5, "not_stated"))
    assert found.flats is None
    (said,) = found.spread
    assert "a starting point the source does not state" in str(said)


def test_flats_beside_those_shown_are_told_as_a_range_or_as_at_most() -> None:
    """The spread says what each source counts: both figures, or that it gives a ceiling only."""
    ranged, ceiling = (
        by(flats(1, 1.5), flats(low, 3, "wrench_resistance", source="another")) for low in (2.5, None)
    )
    for found, told in ((ranged, "2 1/2 to 3 flats"), (ceiling, "at most 3 flats")):
        assert [told in str(line) for line in found.spread] == [True], found.spread


def test_sources_that_disagree_are_named_in_the_spread() -> None:
    found = by(nm(90, 110), nm(120, 130, source="a manual", screw="M10"), flats(2, 2, source="a page"))
    (said,) = found.spread
    assert said == Message(
        "trade-spread",
        values=(torque(120, 130),),
        joint="swivel nut",
        screw="M10",
        sizes="one",
        source="a manual",
    )
    assert str(said) == "120 to 130 N·m (89 to 96 lbf·ft) (swivel nut, M10 screw): a manual"


@pytest.mark.parametrize("use", ["tube", "aviation", "plug", "other", "doubtful"])
def test_rows_for_another_use_are_never_shown_for_a_hose_nut(use: str) -> None:
    found = by(nm(90, 110, use=use))
    assert found.torque is None and len(found.spread) == 1


def test_no_row_of_ours_for_another_use_is_shown_for_any_end() -> None:
    for family, about in tables().families.items():
        other = {r.source for r in tables().tightening.get(family, ()) if r.use != "hose"}
        hose = {r.source for r in tables().tightening.get(family, ()) if r.use == "hose"}
        for size in tables().sizes(family):
            found = advice("end_a", an_end(family, size, about.forms[0]), tables())[0]
            for figure in (found.torque, found.flats, found.turns):
                assert figure is None or figure.source not in other - hose


@pytest.mark.parametrize("family", ["npt", "nptf", "bspt"])
def test_taper_threads_have_turns_and_never_flats(family: str) -> None:
    taper = tight(family=Connection(family), size="1/2", part=("taper",), turns_min=1.5, turns_max=3.0,
                  basis="finger_tight")  # fmt: skip
    one = an_end(Connection(family), "1/2", "male")
    found, _ = advice("end_a", one, made_up(tightening=[taper]))
    assert found.flats is None and found.torque is None
    assert found.turns is not None and found.turns.basis is Basis.FINGER_TIGHT
    steps = steps_for(one, None, spec=example(), name="end_a", turns=found.turns)
    assert "1 1/2 to 3 turns more" in " ".join(str(step.message) for step in steps)
    assert "fit-never_back" in {step.message.id for step in steps}


def test_flange_torque_is_that_of_each_screw() -> None:
    flange = Connection("flange_code61")
    bolts = nm(60, 80, family=flange, size="24", part=("cap_screw",), screw="1/2 in")
    found, _ = advice("end_a", an_end(flange, "24", "flange_head"), made_up(tightening=[bolts]))
    assert found.torque is not None
    assert (found.torque.part, found.torque.max) == ("cap_screw", 80)
    assert found.torque.basis.id == "trade-torque-basis-screw"
    assert found.torque.basis.values["screw"] == "1/2 in"


CODE_62 = Connection("flange_code62")


def bolted(*rows: row.TighteningRow, **files: list[Any]) -> tuple[EndAdvice, list[Warning_]]:
    """How a -12 code 62 flange is tightened where these are all the rows there are."""
    return advice("end_a", an_end(CODE_62, "12", "flange_head"), made_up(tightening=list(rows), **files))


def screwed(
    low: float, high: float, screw: str = "M10", screw_class: str = "", **more: Any
) -> row.TighteningRow:
    return nm(low, high, family=CODE_62, part=("cap_screw",), screw=screw, screw_class=screw_class, **more)


def test_a_screws_torque_names_its_property_class_on_the_page_and_on_the_tag() -> None:
    found, warnings = bolted(screwed(70, 77, screw_class="10.9"))
    assert found.torque is not None and found.torque.basis.values["grade"] == "10.9"
    told = carried_tightening(found)
    assert told is not None and told.screw == "M10 10.9"
    [step] = [s for s in steps_for(an_end(CODE_62, "12", "flange_head"), told, spec=example(), name="end_a")
              if s.step_id == "torque_screw"]  # fmt: skip
    assert "each M10 10.9 screw" in str(step.message)
    assert "screw_class_not_stated" not in {w.code for w in warnings}


def test_every_class_of_screw_that_the_tables_know_can_stand_on_a_tag() -> None:
    """The code points are permanent: a class added to the tables needs one too."""
    ours = tables()
    screws = {f"{r.screw} {r.screw_class}" for rows in ours.screw_torques.values() for r in rows}
    screws |= {
        f"{r.screw} {r.screw_class}".strip() for r in ours.raw["tightening"] if r.screw and r.use == "hose"
    }
    assert screws <= set(points("screw"))


def test_a_torque_whose_source_names_no_class_says_what_each_class_takes() -> None:
    bolts = [bolt("M10", "8.8", 39, 39), bolt("M10", "8.8", 45, 60), bolt("M10", "10.9", 54, 78)]
    found, warnings = bolted(screwed(51, 63), screw_torques=bolts)
    assert found.torque is not None and found.torque.basis.values["grade"] == "none"
    [said] = [w.message for w in warnings if w.code == "screw_class_not_stated"]
    assert [(m.values["grade"], m.values["torque"]) for m in said.values["torques"]] == [
        ("8.8", torque(39, 60)),
        ("10.9", torque(54, 78)),
    ]
    assert carried_tightening(found) == Tightening(
        torque_min_nm=51, torque_max_nm=63, lubrication="not_stated", screw="M10"
    )


def test_a_flange_that_asks_for_a_class_never_takes_the_torque_of_a_weaker_one() -> None:
    weak, right = screwed(39, 45, screw_class="8.8"), screwed(70, 77, screw_class="10.9", confidence="memory")
    found, warnings = bolted(weak, right)
    assert found.torque is not None and found.torque.max == 77
    assert "screw_class_needed" in {w.code for w in warnings}
    assert bolted(weak)[0].torque is None


def test_torques_of_two_classes_are_never_taken_together() -> None:
    found, warnings = bolted(
        screwed(51, 63, source="one"), screwed(60, 70, screw_class="10.9", source="two", scope="family")
    )
    assert found.torque is not None and found.torque.basis.id == "trade-torque-basis-screw"
    assert not {w.code for w in warnings} & {"torque_sources_disagree"}
    [said] = [w.message for w in warnings if w.code == "other_screws"]
    assert [(m.values["screw"], m.values["grade"], m.values["source"]) for m in said.values["torques"]] == [
        ("M10", "10.9", "two")
    ]


def test_metric_and_inch_screws_of_one_flange_are_both_named() -> None:
    _, warnings = bolted(screwed(51, 63, scope="machine"), screwed(30, 37, screw="3/8 in"))
    [said] = [w.message for w in warnings if w.code == "other_screws"]
    assert said.values["screw"] == "3/8 in" and [m.values["screw"] for m in said.values["torques"]] == ["M10"]


@pytest.mark.parametrize("metal", ["brass", "aluminium"])
def test_a_soft_metal_takes_its_own_figure_or_a_share_of_steels_and_no_flats(metal: str) -> None:
    steel = (nm(90, 110), flats(1, 1.5))
    own = by(*steel, nm(20, 30, material=metal), material=metal)
    assert own.torque is not None and own.torque.max == 30
    ours = made_up(tightening=list(steel), rules=rule("soft_metal_percent", 40))
    share, warnings = advice("end_a", an_end(FLARE, "12", "female_swivel", material=metal), ours)
    assert share.torque is not None and (share.torque.min, share.torque.max) == (36, 44)
    other = made_up(tightening=[*steel, nm(100, 130, scope="machine")], rules=rule("soft_metal_percent", 40))
    beside = advice("end_a", an_end(FLARE, "12", "female_swivel", material=metal), other)[0].torque
    assert beside is not None and beside.basis.values["others"] == torque(40, 52), (
        "reduced like the one shown"
    )
    assert share.torque.basis.values["percent"] == 40
    assert share.torque.basis.values["material"] == phrases.material(metal)
    assert share.flats is None
    assert "soft_material" in {w.code for w in warnings}


def test_what_no_source_gives_is_none_with_a_warning() -> None:
    found, warnings = advised()
    assert (found.torque, found.flats) == (None, None)
    assert [w.code for w in warnings] == ["tightening_not_known"]


def test_a_torque_from_memory_is_said_to_be_unverified() -> None:
    _, warnings = advised(nm(90, 110, confidence="memory", source="an old chart"))
    assert [(w.code, w.message.values["source"]) for w in warnings] == [
        ("torque_from_memory", "an old chart")
    ]


def test_every_lubrication_of_the_tables_is_one_of_the_known_words() -> None:
    cells = {r.lubrication for rows in tables().tightening.values() for r in rows} - {""}
    assert cells | {"not_stated"} == LUBRICATIONS


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_lubrication_is_said_in_the_readers_language_and_a_shops_own_text_as_it_is(language: str) -> None:
    t = Translator(language)
    for word in LUBRICATIONS:
        found = by(nm(90, 110, lubrication="" if word == "not_stated" else word)).torque
        assert found is not None and t(Message(f"trade-lubrication-{word}")) in t(found.basis)
    found = by(nm(90, 110, lubrication="greased by the apprentice")).torque
    assert found is not None and found.basis.values["lubrication"] == as_is("greased by the apprentice")


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


def taper(low: float, high: float, **more: object) -> row.TighteningRow:
    return tight(
        family="nptf",
        size="1/2",
        part=("taper",),
        turns_min=low,
        turns_max=high,
        basis="finger_tight",
        **more,
    )


def test_turns_of_sources_that_agree_are_the_range_they_share_and_others_are_each_named() -> None:
    end_of = an_end(Connection("nptf"), "1/2", "male")

    def told(*rows: row.TighteningRow) -> tuple[tuple[float, float], str]:
        ours = made_up(tightening=list(rows))
        found = advice("end_a", end_of, ours)[0].turns
        assert found is not None
        spec = example().model_copy(update={"end_a": end_of})
        steps = steps_for(end_of, None, spec=spec, name="end_a", turns=found, tables=ours)
        disputed = [f"{s.message} | {s.source}" for s in steps if s.step_id == "turns_disputed"]
        return (found.min, found.max), "".join(disputed)

    assert told(taper(1, 2.5), taper(1.5, 3, source="another")) == ((1.5, 2.5), "")
    assert told(taper(1, 2), taper(2, 3, source="another")) == ((2, 2), "")
    for apart in ({"use": "plug"}, {"material": "brass"}, {"size": "3/4"}, {"basis": "not_stated"}):
        assert told(taper(1, 2), replace(taper(4, 5, source="another"), **apart)) == ((1, 2), ""), apart
    shown_, why = told(taper(2, 3), taper(0.5, 1.5, source="a machine's manual", scope="machine"))
    assert shown_ == (2, 3) and "2 to 3 turns or 1/2 to 1 1/2 turns" in why
    assert "a machine's manual" in why.partition("|")[2] and "invented" in why.partition("|")[2]


def test_the_guide_names_each_source_where_those_for_an_nptf_thread_disagree() -> None:
    found = assess(both("SAE 100R2", 8, end("nptf", "1/2", "male", hose_dash=8)))
    assert "turns_disputed" in found.end_a.steps


def test_the_clocking_step_needs_two_elbows() -> None:
    pair = both("SAE 100R17", 12, end("sae_37_flare", 12, shape="elbow_90"), clocking_deg=90)
    found = assess(pair)
    assert "clocking" in found.end_a.steps and found.end_a.figures["clocking"] == "90°"
    assert "clocking" not in assess(example()).end_a.steps


def test_no_steel_figure_is_shown_for_stainless() -> None:
    found, warnings = advised(nm(90, 110), flats(1, 1.5), material=Material.STAINLESS_STEEL)
    assert (found.torque, found.flats) == (None, None)
    assert len(found.spread) == 2 and "N·m" in str(found.spread[0])
    assert [warning.code for warning in warnings] == ["tightening_not_known"]


@pytest.mark.parametrize("material", ["brass", "aluminium"])
def test_a_soft_flange_head_has_no_halved_screw_torque(material: str) -> None:
    found = assess(both("SAE 100R2", 16, end("flange_code61", 16, "flange_head", material=material)))
    assert found.end_a.torque is None
    assert "trade-tightening-soft-flange" in {w.message.id for w in found.warnings}


def test_turns_without_a_starting_point_are_not_shown_whoever_says_so() -> None:
    """Two turns from where? They were shown, and a tag said so too."""
    own = replace(taper(1, 2, confidence="shop"), basis="not_stated")
    found = advice("end_a", an_end(Connection("nptf"), "1/2", "male"), made_up(tightening=[own]))[0]
    assert found.turns is None and carried_tightening(found) is None and len(found.spread) == 1
    beside = made_up(tightening=[own, taper(2, 3)])
    told = advice("end_a", an_end(Connection("nptf"), "1/2", "male"), beside)[0].turns
    assert told is not None and (told.min, told.max) == (2, 3)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_row_of_the_tables_can_be_said(language: str) -> None:
    """A message that a catalogue lacks would show its id."""
    t = Translator(language)
    for family, about in tables().families.items():
        for size in tables().sizes(family):
            found = advice("end_a", an_end(family, size, about.forms[0]), tables())[0]
            said = [t(line) for line in found.spread] + ([t(found.torque.basis)] if found.torque else [])
            assert [line for line in said if re.search(r"\b(words|trade)-", line)] == []


@pytest.mark.parametrize("basis", [Basis.FINGER_TIGHT, Basis.WRENCH_RESISTANCE])
def test_flats_are_counted_from_where_their_source_counts_them(basis: Basis) -> None:
    """The line is drawn across the nut either finger tight or where the wrench first meets resistance: not both."""
    tightening = Tightening(flats_min=1, flats_max=1.5, flats_basis=basis)
    steps = steps_for(an_end(FLARE, "12", "female_swivel"), tightening, spec=example(), name="end_a")
    marks = {"mark_finger": Basis.FINGER_TIGHT, "mark_wrench": Basis.WRENCH_RESISTANCE}
    assert {marks[s.step_id] for s in steps if s.step_id in marks} == {basis}


def test_an_end_of_which_flats_alone_are_known_carries_them_and_one_of_which_nothing_is_carries_nothing() -> (
    None
):
    assert carried_tightening(by(flats(1, 1.5))) == Tightening(
        flats_min=1, flats_max=1.5, flats_basis=Basis.FINGER_TIGHT
    )
    assert carried_tightening(by()) is None


def test_a_step_of_a_shop_that_names_no_screen_is_on_the_last_of_its_phase() -> None:
    (ours, *_) = [step for step in tables().steps if step.phase == "before"]
    assert screen_of(ours) == ours.screen
    assert [screen_of(replace(ours, phase=phase, screen="")) for phase in PHASES] == [
        "old", "match", "clocking", "tighten", "after",
    ]  # fmt: skip


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
