"""The room's README names every table, word and figure it promises."""

from __future__ import annotations

from pathlib import Path

import tagger.trade
from tagger.trade.identifying import likelihood
from tagger.trade.steps import CONDITIONS, STEP_FIGURES
from tagger.trade.tables import FILES, tables
from tagger.trade.validate import figures, memory_share

README = (Path(tagger.trade.__file__).parent / "README.md").read_text(encoding="utf-8")


def test_every_table_is_described() -> None:
    assert [name for name in FILES if f"`{name}.csv`" not in README] == []


def test_every_word_of_the_fit_guide_is_described() -> None:
    pictures = {step.picture for step in tables().steps}
    assert [word for word in CONDITIONS | pictures if word and f"`{word}`" not in README] == []
    assert [word for word in STEP_FIGURES if f"`{word}`" not in README] == []


def test_the_number_of_figures_and_the_share_from_memory_are_those_stated() -> None:
    assert f"Of {sum(figures().values())} figures {memory_share():.1%}".replace("%", " %") in README


def test_every_family_has_its_accuracy() -> None:
    measured = dict.fromkeys(likelihood.pool(tables()).families)
    assert [family for family in measured if f"| `{family}` |" not in README] == []
