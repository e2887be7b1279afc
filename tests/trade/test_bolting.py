"""Flange screws: a torque is that of each screw, and holds for its property class."""

from __future__ import annotations

from typing import Any

import pytest

from tagger.code.payload import points
from tagger.messages import torque
from tagger.spec import Connection, Tightening
from tagger.trade import assess
from tagger.trade import rows as row
from tagger.trade.results import EndAdvice, Warning_, carried_tightening
from tagger.trade.tables import tables
from tagger.trade.tightening import advice, steps_for
from tests.trade.made_up import bolt, made_up, nm
from tests.trade.specs import an_end, both, end, example

CODE_62 = Connection("flange_code62")


def test_flange_torque_is_that_of_each_screw() -> None:
    flange = Connection("flange_code61")
    bolts = nm(60, 80, family=flange, size="24", part=("cap_screw",), screw="1/2 in")
    found, _ = advice("end_a", an_end(flange, "24", "flange_head"), made_up(tightening=[bolts]))
    assert found.torque is not None
    assert (found.torque.part, found.torque.max) == ("cap_screw", 80)
    assert found.torque.basis.id == "trade-torque-basis-screw"
    assert found.torque.basis.values["screw"] == "1/2 in"


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


@pytest.mark.parametrize("material", ["brass", "aluminium"])
def test_a_soft_flange_head_has_no_halved_screw_torque(material: str) -> None:
    found = assess(both("SAE 100R2", 16, end("flange_code61", 16, "flange_head", material=material)))
    assert found.end_a.torque is None
    assert "trade-tightening-soft-flange" in {w.message.id for w in found.warnings}
