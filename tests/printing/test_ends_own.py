"""What stands at an end is that end's own."""

from __future__ import annotations

from collections.abc import Callable

from tagger.drawing import Item
from tagger.printing import template
from tagger.printing.blocks import end_block
from tagger.printing.content import Tag
from tagger.printing.fields import tightening_lines
from tagger.printing.part import Job
from tagger.printing.template import EndBox
from tagger.spec import Tightening
from tests.printing.conftest import TWO_ELBOWS

FIRM = Tightening(torque_min_nm=57, torque_max_nm=63)


def test_the_line_of_each_end_has_the_torque_of_that_end(make_tag: Callable[..., Tag]) -> None:
    tag = make_tag(tighten_b=FIRM)
    one, other = tightening_lines(tag, "both", ("en",))[0]
    assert "103–115" in one and "103–115" not in other
    assert "57–63" in other and "57–63" not in one
    assert tightening_lines(tag, "b", ("en",))[0] == (other,)


def test_two_elbows_are_turned_in_the_picture_of_end_b_alone(make_tag: Callable[..., Tag]) -> None:
    label = template.load("hang_tag")
    places: dict[str, int] = {
        box.end: index for index, box in enumerate(label.box) if isinstance(box, EndBox)
    }

    def pictures(end: str) -> list[tuple[Item, ...]]:
        made = []
        for turn in (90, 135):
            job = Job(make_tag({**TWO_ELBOWS, "clocking_deg": turn}), label, 203)
            box = label.box[places[end]]
            assert isinstance(box, EndBox)
            made.append(end_block(box, places[end], job).shared[1].items)
        return made

    (a_first, a_second), (b_first, b_second) = pictures("a"), pictures("b")
    assert a_first == a_second
    assert b_first != b_second
