"""The torque, flats or turns that are shown, chosen with care, and the spread of the others. Most figures are made up."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Any

import pytest

from tagger import phrases
from tagger.i18n import LANGUAGES, Translator
from tagger.messages import Message, as_is, torque
from tagger.spec import Basis, Connection, Material, Tightening
from tagger.trade import rows as row
from tagger.trade.results import EndAdvice, Warning_, carried_tightening
from tagger.trade.tables import tables
from tagger.trade.tightening import LUBRICATIONS, advice, steps_for
from tests.trade.made_up import flats, made_up, nm, rule, tight
from tests.trade.specs import an_end, example

FLARE = Connection("sae_37_flare")


def by(*rows: row.TighteningRow, form: str = "female_swivel", **more: object) -> EndAdvice:
    """How a -12 end of the 37 degree flare is tightened where these are all the rows there are."""
    return advised(*rows, form=form, **more)[0]


def advised(
    *rows: row.TighteningRow, form: str = "female_swivel", **more: object
) -> tuple[EndAdvice, list[Warning_]]:
    return advice("end_a", an_end(FLARE, "12", form, **more), made_up(tightening=list(rows)))


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


def test_no_steel_figure_is_shown_for_stainless() -> None:
    found, warnings = advised(nm(90, 110), flats(1, 1.5), material=Material.STAINLESS_STEEL)
    assert (found.torque, found.flats) == (None, None)
    assert len(found.spread) == 2 and "N·m" in str(found.spread[0])
    assert [warning.code for warning in warnings] == ["tightening_not_known"]


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
