"""Published limits of boss studs by series, and what a dash of SAE 100R5 and 100R14 names."""

from __future__ import annotations

import pytest

from tagger.spec import Connection, Hose
from tagger.trade import geometry
from tagger.trade.tables import tables

CEILINGS = {
    ("S", "straight"): 630,  # SAE J2244-2, equal to ISO 6149-2 (public engineering summary)
    ("S", "elbow"): 400,
    ("L", "straight"): 400,  # ISO 6149-3 (catalogue abstract)
    ("L", "elbow"): 315,
}


@pytest.mark.parametrize(("series", "shape"), CEILINGS)
def test_no_metric_stud_is_rated_above_the_ceiling_of_its_series(series: str, shape: str) -> None:
    ratings = [
        r.max_working_bar
        for r in tables().raw["connection_pressure"]
        if r.family is Connection("metric_orb")
        and r.use == "rating"
        and r.series == series
        and shape in r.shapes
    ]
    assert ratings and max(ratings) <= CEILINGS[series, shape]


def test_16_of_100r14_and_of_100r5_is_metric_size_22() -> None:
    """The marking clause of SAE J517 (public page, 2019); two manufacturers' charts for 100R5."""
    for standard in ("SAE 100R14", "SAE 100R5"):
        assert geometry.bore_mm(Hose(standard=standard, dash=16), tables()) == 22
