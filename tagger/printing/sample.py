"""One tag with everything on it: two elbows and all values. What labels are measured and shown with."""

from __future__ import annotations

from datetime import date
from functools import cache

from tagger.code import link, payload
from tagger.printing.content import Tag
from tagger.spec import AssemblySpec, Basis, TagContent, Tightening

_NUMBER = "7K3MQ9XW2R1"  # the one that the documents show
_ADDRESS = "https://tags.example-hose-shop.com"
SPEC = {
    "hose": {"standard": "SAE 100R2", "dash": 12},
    "end_a": {"connection": "orfs", "dash": 12, "form": "female_swivel", "shape": "elbow_45", "drop_mm": 26},
    "end_b": {"connection": "sae_37_flare", "dash": 12, "form": "female_swivel", "shape": "elbow_90", "drop_mm": 56},
    "length_mm": 1250,
    "length_basis": "elbow_centreline",
    "clocking_deg": 135,
    "max_temperature_c": 100,
    "fluid": "mineral_oil",
    "covers": ["abrasion_sleeve"],
}  # fmt: skip
"""Invented: no hose of anybody's."""


@cache
def sample() -> Tag:
    """The tag, with a number that passes its check and invented values."""
    figures = Tightening(
        torque_min_nm=103, torque_max_nm=115, flats_min=1, flats_max=1.25, flats_basis=Basis.FINGER_TIGHT
    )
    content = TagContent(
        spec=AssemblySpec.read(SPEC),
        working_pressure_bar=206.8,
        tighten_a=figures,
        tighten_b=figures,
        built_on=date(2026, 1, 2),
    )
    return Tag(_NUMBER, link.build(_ADDRESS, _NUMBER, payload.encode(content)), content)
