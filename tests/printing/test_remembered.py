"""What is remembered from label to label never shows: a label is what it would be as the first of all."""

from __future__ import annotations

import gc
import random
from dataclasses import replace
from datetime import date
from functools import _lru_cache_wrapper
from typing import Any

from tagger.code import link, payload, symbol
from tagger.drawing import Circle, Grid, Line, Shape, Text
from tagger.i18n import LANGUAGES
from tagger.messages import Message
from tagger.printing import template
from tagger.printing.content import Tag
from tagger.printing.layout import lay_out
from tagger.printing.proof import prove
from tagger.printing.words import Voice
from tagger.spec import AssemblySpec
from tagger.store import designs
from tagger.trade import assess
from tagger.trade.tables import Tables, tables
from tests.speed.samples import ADDRESS, tags
from tests.volume import volume

TEMPLATES = ("hang_tag", "roll_4x6", "roll_continuous", "traveller_a5")


def bounded() -> list[Any]:
    """What remembers a limited number of answers; tables, catalogues and what a QR version is made of stay."""
    of_symbols = {one for one in vars(symbol).values() if isinstance(one, _lru_cache_wrapper)} - {
        symbol._segments
    }
    return [
        one
        for one in gc.get_objects()
        if isinstance(one, _lru_cache_wrapper)
        and one.__module__.startswith("tagger.")
        and one.cache_parameters()["maxsize"] not in (None, 1)
        and one not in of_symbols
    ]


def made(spec: AssemblySpec, number: str, looks: tuple[str, str, int], known: Tables) -> list[object]:
    """All that becomes of a spec: what is kept of it, what its symbols say, and every mark on its label."""
    name, language, dpi = looks
    found = assess(spec, known)
    content = found.content_of(spec, date(2026, 11, 2))
    digits = payload.encode(content)
    tag = Tag(number, link.build(ADDRESS, number, digits), payload.decode(digits), found)
    page = lay_out(tag, template.load(name).in_languages([language]), dpi)
    prove(tag, page)
    items = [(*one_grid(one),) if isinstance(one, Grid) else (type(one), *one) for one in page.drawing.items]
    return [designs.as_row(spec, found), digits, tag.content, items]


def one_grid(grid: Grid) -> tuple[object, ...]:
    return grid.x, grid.y, grid.pitch_x, grid.pitch_y, grid.modules.tobytes()


def test_a_label_of_a_run_is_what_it_would_be_alone() -> None:
    forgetful = bounded()
    assert len(forgetful) > 20
    chance = random.Random(11)
    differing = given = 0
    for seed in range(volume(6, 200)):
        looks = chance.choice(TEMPLATES), chance.choice([*LANGUAGES]), chance.choice((203, 300))
        rows = [(tag.spec, tag.number) for tag in tags(5, seed)]
        spec, number = rows[0]
        lots = {"lot": f"L{seed}", "rating": None}
        rows.append((spec.model_copy(update={"end_a": spec.end_a.model_copy(update=lots)}), rows[1][1]))
        rows.append((spec.model_copy(update={"end_a": spec.end_b, "end_b": spec.end_a}), number))
        rows.append((spec.model_copy(update={"length_mm": 777.0, "note": "by hand"}), number))
        in_the_run = [made(*row, looks, tables()) for row in rows]
        for row, expected in zip(rows, in_the_run, strict=True):
            for one in forgetful:
                one.cache_clear()
            assert made(*row, looks, replace(tables())) == expected
        differing += len({str(one) for one in in_the_run})
        given += len({str(row) for row in rows})  # the ends of a straight hose are alike, and may be swapped
    assert differing == given > 7 * volume(6, 200)  # none was shown what is another's


def test_tables_remember_for_themselves_alone() -> None:
    spec = next(tags(1)).spec
    known = assess(spec, tables())
    without = replace(tables(), tightening={})
    assert known.end_a.torque is not None
    assert assess(spec, without).end_a.torque is None
    assert assess(spec, tables()).end_a == known.end_a


def test_no_two_kinds_of_marks_have_as_many_values() -> None:
    """Tuples of one length would be equal, and one drawn for the other."""
    lengths = [len(kind._fields) for kind in (Line, Shape, Circle, Text)]
    assert len(set(lengths)) == 4


def test_equal_messages_that_are_shown_otherwise_are_not_taken_for_one_another() -> None:
    said = [Voice("en")(Message("printing-end-jump", dash=dash)) for dash in (True, 1, "1", 1.0)]
    assert said == [f"jump size: -{dash}\u00a0hose tail" for dash in (True, 1, 1, 1)]
    looks = [Message("words-as-is", text=(figure,)).look for figure in (12, 12.0, True, 1, 0.0, -0.0)]
    assert len({*looks}) == 6
    assert looks[1] == Message("words-as-is", text=(12.0,)).look
