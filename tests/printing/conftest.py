"""Tags to print, and the printed tag seen as a reader sees it."""

from __future__ import annotations

import io
import random
from collections.abc import Callable
from datetime import date
from typing import Any

import numpy as np
import pypdfium2
import pytest
from PIL import Image
from stdnum.iso7064 import mod_37_36

from tagger.code import link, number, payload
from tagger.printing import pdf
from tagger.printing.tag import Tag
from tagger.printing.template import Template
from tagger.spec import AssemblySpec, TagContent, Tightening

STRAIGHT: dict[str, Any] = {
    "hose": {"standard": "SAE 100R2", "dash": 12},
    "end_a": {"connection": "sae_37_flare", "dash": 12, "form": "female_swivel"},
    "end_b": {"connection": "sae_37_flare", "dash": 12, "form": "female_swivel", "shape": "elbow_90", "drop_mm": 56},
    "length_mm": 1250,
    "max_temperature_c": 100,
    "fluid": "mineral_oil",
    "covers": ["abrasion_sleeve"],
}  # fmt: skip
TWO_ELBOWS: dict[str, Any] = {
    **STRAIGHT,
    "end_a": {"connection": "orfs", "dash": 12, "form": "female_swivel", "shape": "elbow_45", "drop_mm": 26},
    "clocking_deg": 135,
    "length_basis": "elbow_centreline",
}
FIGURES = Tightening(
    torque_min_nm=103, torque_max_nm=115, flats_min=1, flats_max=1.25, flats_basis="finger_tight"
)


def a_tag(spec: dict[str, Any] = TWO_ELBOWS, *, seed: int = 1, **changes: Any) -> Tag:
    """A tag with a true number, payload and link; the same one for the same seed."""
    chosen = random.Random(seed)
    body = "".join(chosen.choice(number.ALPHABET) for _ in range(10))
    whole = body + mod_37_36.calc_check_digit(body, number.ALPHABET)
    figures = {
        "working_pressure_bar": 206.8,
        "tighten_a": FIGURES,
        "tighten_b": FIGURES,
        "built_on": date(2026, 11, 25),
    }
    content = TagContent(
        spec=AssemblySpec.read(spec),
        **{**figures, **{k: changes.pop(k) for k in list(changes) if k in figures}},
    )
    digits = payload.encode(content)
    return Tag(whole, link.build("https://tags.example-hose-shop.com", whole, digits), content, **changes)


@pytest.fixture
def make_tag() -> Callable[..., Tag]:
    return a_tag


@pytest.fixture(params=["one elbow", "two elbows"])
def tag(request: pytest.FixtureRequest) -> Tag:
    return a_tag(STRAIGHT if request.param == "one elbow" else TWO_ELBOWS)


@pytest.fixture
def rasterised_pdf() -> Callable[..., Image.Image]:
    """The PDF of one tag as an image, by PDFium."""

    def make(tag: Tag, template: Template, dpi: int = 300) -> Image.Image:
        out = io.BytesIO()
        pdf.write([tag], template, out)
        return page_image(out.getvalue(), 0, dpi)

    return make


def page_image(data: bytes, page: int, dpi: int) -> Image.Image:
    document = pypdfium2.PdfDocument(data)
    return document[page].render(scale=dpi / 72, grayscale=True).to_pil()


@pytest.fixture
def with_margin() -> Callable[[Image.Image], np.ndarray]:
    """White paper round the tag, as in a photograph."""

    def make(image: Image.Image) -> np.ndarray:
        return np.pad(np.asarray(image.convert("L"), dtype=np.uint8), 20, constant_values=255)

    return make
