"""The picture of the rooms in DEVELOPERS.md is that of the code."""

from __future__ import annotations

from graphlib import CycleError

import pytest

from tests.architecture import PICTURE, THE_GROUND, arrows, rows_of, svg
from tests.test_house import MAY_IMPORT, ROOT


def test_the_picture_is_that_of_todays_imports_and_is_shown() -> None:
    assert PICTURE.read_text(encoding="utf-8") == svg(), "make it anew: python -m tests.architecture"
    assert f"]({PICTURE.relative_to(ROOT)})" in (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")


def test_every_room_of_the_layers_is_in_the_picture_and_stands_on_the_ground() -> None:
    direct = arrows()
    rooms = {room.removesuffix(".py").replace("/", ".") for room in MAY_IMPORT}
    assert {room for room in rooms if room.count(".") == 1} - set(direct) == {
        f"tagger.{name}"
        for name in [
            "connection",
            "errors",
            "intake",
            "messages",
            "moments",
            "phrases",
            "rated",
            "spec",
            "trimmed",
            "units",
            "whole_files",
        ]
    }, "the modules that make up the ground, in one box"
    level, needed = rows_of(direct)
    assert [room for room, height in level.items() if height == 0] == [THE_GROUND]
    assert all(level[room] > level[other] for room, others in needed.items() for other in others)


def test_rooms_that_import_one_another_in_a_circle_have_no_picture() -> None:
    with pytest.raises(CycleError) as refused:
        rows_of({"a": frozenset({"b"}), "b": frozenset({"c"}), "c": frozenset({"a"})})
    assert set(refused.value.args[1]) == {"a", "b", "c"}
