"""Every figure of the published files is kept, and nothing is shown that is bolder than its source."""

from __future__ import annotations

from pathlib import Path

import pytest

import tagger.trade
from tests.outside.trade.comparing import FINE, counts, outcomes


@pytest.mark.parametrize(("where", "outcome"), list(outcomes()), ids=lambda value: str(value)[:120])
def test_the_tables_agree_with_the_published_figure(where: str, outcome: str) -> None:
    assert outcome in FINE, where


def test_the_counts_are_those_that_the_readme_states() -> None:
    readme = (Path(tagger.trade.__file__).parent / "README.md").read_text(encoding="utf-8")
    assert counts() in " ".join(readme.split())
