"""Every figure of the published files is kept, and nothing is shown that is bolder than its source."""

from __future__ import annotations

from pathlib import Path

import tagger.trade
from tests.outside.trade.comparing import FINE, counts, outcomes


def test_the_tables_agree_with_every_published_figure() -> None:
    found = list(outcomes())
    assert len(found) > 1700
    off = [f"{where}: {outcome}" for where, outcome in found if outcome not in FINE]
    assert not off, "\n".join(off)


def test_the_counts_are_those_that_the_readme_states() -> None:
    readme = (Path(tagger.trade.__file__).parent / "README.md").read_text(encoding="utf-8")
    assert counts() in " ".join(readme.split())
