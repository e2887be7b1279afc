"""Grade limits against the published table of ISO/IEC 15415 parameters."""

from __future__ import annotations

import pytest

from tagger.printing import grade
from tests.outside.published import rows

LIMITS = {
    "symbol contrast": grade._CONTRAST,
    "modulation": grade._MODULATION,
    "unused error correction": grade._UNUSED,
}


@pytest.mark.parametrize(
    "row", rows("iso_15415_grades.csv"), ids=lambda row: f"{row['parameter']}-{row['grade']}"
)
def test_limits_are_the_published_ones(row: dict[str, str]) -> None:
    limits, least = LIMITS[row["parameter"]], float(row["least"])
    assert grade.LETTERS[grade._at_least(least + 0.001, limits)] == row["grade"]
    assert grade.LETTERS[grade._at_least(least - 0.001, limits)] > row["grade"]
