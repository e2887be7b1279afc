"""Readings from connections that the tables once lacked: each ended as another connection, at 92 to 100 %.

Diameters and pitches: a public hose manufacturer's reference sheet for measuring fittings (European families),
public tables of SAE J512 and J514, ISO 7241 and DIN 2353 sizes; where those were not at hand, from memory
(flush couplers, flareless, very light series). A male reads a tenth below nominal.
"""

from __future__ import annotations

import pytest

from tagger.trade.identifying.identify import Measurements, identify


@pytest.mark.parametrize(
    ("family", "size", "given"),
    [
        ("metric_60_cone", "M18x1.5", {"form": "male", "thread_od": 17.9, "pitch": 1.5, "seat": "60"}),
        (
            "metric_60_cone",
            "M26x1.5",
            {"form": "female_swivel", "thread_id": 24.5, "pitch": 1.5, "seat": "30"},
        ),
        ("metric_60_cone", "M30x1.5", {"form": "male", "thread_od": 29.9, "pitch": 1.5, "seat": "30"}),
        ("french_gas", "13.25", {"form": "male", "thread_od": 19.9, "pitch": 1.5, "seat": "24"}),
        ("french_gas", "16.75", {"form": "female_swivel", "thread_id": 22.5, "pitch": 1.5, "seat": "24"}),
        ("french_gas", "21.25", {"form": "male", "thread_od": 29.9, "pitch": 1.5, "seat": "24"}),
        ("sae_inverted_flare", "8", {"form": "male", "thread_od": "3/4 in", "tpi": 18, "seat": "45"}),
        ("sae_inverted_flare", "6", {"form": "male", "thread_od": "5/8 in", "tpi": 18, "seat": "45"}),
        ("metric_flat_stud", "M22x1.5", {"form": "male", "thread_od": 21.9, "pitch": 1.5, "seat": "flat"}),
        ("sae_flareless", "8", {"form": "male", "thread_od": "3/4 in", "tpi": 16, "seat": "24"}),
        ("sae_flareless", "12", {"form": "female_swivel", "thread_id": "1 in", "tpi": 12, "seat": "24"}),
        ("banjo_metric", "M18x1.5", {"form": "eye", "nose": 18.1}),
        ("qd_iso7241_a", "6", {"form": "coupler_male", "nose": 17.25}),
        ("qd_iso16028", "8", {"form": "coupler_male", "nose": 24.5}),
        ("din24_very_light", "8", {"form": "male", "thread_od": 11.9, "pitch": 1, "seat": "24"}),
    ],
)
def test_it_is_among_what_matches_and_whatever_else_matches_is_asked_apart(
    family: str, size: str, given: dict[str, object]
) -> None:
    found = identify(Measurements.read(**given))  # type: ignore[arg-type]
    matches = [(str(c.connection), c.size) for c in found.candidates[: found.remaining]]
    assert (family, size) in matches
    assert (found.measure_next is not None) == (len(matches) > 1)


@pytest.mark.parametrize(
    "given",
    [
        {
            "form": "male",
            "thread_od": 26.9,
            "pitch": 1.5,
            "seat": "24",
        },  # French millimetric, 18 and 20 mm tube
        {"form": "female_swivel", "thread_id": 31.4, "pitch": 1.5, "seat": "24"},  # the same, 25 mm tube
        {"form": "male", "thread_od": 38.9, "pitch": 1.5, "seat": "24"},  # the same, 30 mm tube
        {"form": "male", "thread_od": 23.9, "pitch": 2},  # screw-to-connect coupler, ISO 14541, M24x2
    ],
)
def test_what_the_tables_still_lack_matches_nothing_and_nothing_is_offered(given: dict[str, object]) -> None:
    found = identify(Measurements.read(**given))  # type: ignore[arg-type]
    assert found.summary.id in ("identify-closest", "identify-other-seat")
    assert all(c.contradicts for c in found.candidates)
