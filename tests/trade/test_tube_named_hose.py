"""Hose whose dash names the tube and not the bore: SAE 100R5 and 100R14 (SAE J517)."""

from __future__ import annotations

import pytest

from tagger import phrases
from tagger.connection import names_tube
from tagger.spec import AssemblySpec, Connection, Hose
from tagger.trade import assess, geometry, likeforlike
from tagger.trade.tables import tables
from tests.trade.specs import both, end


def test_the_bore_follows_what_the_dash_names() -> None:
    bores = {
        name: geometry.bore_mm(Hose(standard=name, dash=16), tables())
        for name in ("SAE 100R5", "SAE 100R14", "SAE 100R2")
    }
    assert bores == {"SAE 100R5": 22, "SAE 100R14": 22, "SAE 100R2": 25}


def test_the_builder_is_told_that_the_fittings_are_its_own() -> None:
    found = assess(both("SAE 100R5", 16, end("sae_37_flare", 16)))
    (said,) = [w.message for w in found.warnings if w.code == "dash_names_tube"]
    assert said.values["standard"] == "SAE 100R5"
    usual = assess(both("SAE 100R2", 16, end("sae_37_flare", 16)))
    assert "dash_names_tube" not in {w.code for w in usual.warnings}


@pytest.mark.parametrize(
    ("family", "size", "dash", "natural"),
    [
        ("sae_37_flare", "12", 12, True),
        ("npt", "3/4", 12, True),
        ("din24_light", "18", 8, False),
        ("din24_light", "12", 8, True),
        ("metric_orb", "M16x1.5", 8, True),
        ("metric_orb", "M20x1.5", 8, False),
    ],
)
def test_natural_ends_go_by_the_tube_or_by_the_bore(family: str, size: str, dash: int, natural: bool) -> None:
    hose = Hose(standard="100R5", dash=dash)
    assert tables().is_natural(Connection(family), size, hose) is natural


def test_of_one_dash_the_smaller_bore_does_not_replace_the_larger() -> None:
    def spec(standard: str) -> AssemblySpec:
        return both(standard, 16, end("sae_37_flare", 16))

    def verdict(old: str, new: str) -> str:
        fields = likeforlike.compare(spec(old), spec(new)).fields
        return next(f.verdict for f in fields if f.field == "hose.dash")

    assert verdict("SAE 100R2", "SAE 100R5") == "dangerous"
    assert verdict("SAE 100R5", "SAE 100R2") == "differs"
    assert verdict("SAE 100R5", "SAE 100R5") == "same"


def test_a_line_of_such_a_hose_says_that_the_size_is_the_tubes() -> None:
    assert names_tube("SAE 100R14")
    assert phrases.hose(Hose(standard="SAE 100R5", dash=16)).id == "words-hose-tube"
