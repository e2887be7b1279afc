"""Every figure of the published files is kept, and nothing is shown that is bolder than its source."""

from __future__ import annotations

import pytest

from tests.outside.trade.comparing import FINE, outcomes


@pytest.mark.parametrize(("where", "outcome"), list(outcomes()), ids=lambda value: str(value)[:120])
def test_the_tables_agree_with_the_published_figure(where: str, outcome: str) -> None:
    assert outcome in FINE, where
