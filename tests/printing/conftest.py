"""Tags to print, and the printed tag seen as a reader sees it."""

from __future__ import annotations

import io
import random
from collections.abc import Callable
from dataclasses import replace
from datetime import date
from typing import Any

import numpy as np
import pypdfium2
import pytest
from PIL import Image
from stdnum.iso7064 import mod_37_36

from tagger.code import link, number, payload
from tagger.messages import Message
from tagger.printing import pdf
from tagger.printing.content import Tag
from tagger.printing.template import Template
from tagger.spec import AssemblySpec, Danger, TagContent, Tightening
from tagger.trade import assess

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
# The longest texts that tables and words give: names, drops with both units, jump sizes, long bases.
LONGEST: dict[str, dict[str, Any]] = {
    "two flare elbows, stainless, jump size": {
        "hose": {"standard": "EN 857 2SC", "dash": 16, "edition": "2015"},
        "end_a": {"connection": "sae_37_flare", "dash": 16, "form": "female_swivel", "shape": "elbow_90",
                  "drop_mm": 56.5, "material": "stainless_steel", "hose_dash": 16},
        "end_b": {"connection": "orfs", "dash": 12, "form": "female_swivel", "shape": "elbow_45",
                  "drop_mm": 26.5, "material": "stainless_steel", "hose_dash": 16},
        "length_mm": 12750.5, "length_basis": "elbow_centreline", "clocking_deg": 275,
        "max_temperature_c": 100, "fluid": "water_oil_emulsion", "covers": ["abrasion_sleeve", "spring_guard"],
    },
    "boss and 24 degree cone": {
        "hose": {"standard": "EN 857 2SC", "dash": 16, "edition": "2015"},
        "end_a": {"connection": "sae_orb", "dash": 16, "form": "male"},
        "end_b": {"connection": "din24_heavy", "size": "25", "form": "female_swivel", "shape": "elbow_90",
                  "drop_mm": 67.5},
        "length_mm": 12750.5,
    },
    "two flanges": {
        "hose": {"standard": "SAE 100R13", "dash": 16},
        "end_a": {"connection": "flange_code62", "dash": 16, "form": "flange_head", "shape": "elbow_90",
                  "drop_mm": 88.5},
        "end_b": {"connection": "flange_code61", "dash": 16, "form": "flange_head", "shape": "elbow_90",
                  "drop_mm": 88.5},
        "length_mm": 12750.5, "length_basis": "elbow_centreline", "clocking_deg": 275,
    },
    "metric": {
        "hose": {"standard": "SAE 100R17", "dash": 16},
        "end_a": {"connection": "metric_orb", "size": "M33x2", "form": "male"},
        "end_b": {"connection": "jis_30", "size": "M33x1.5", "form": "female_swivel", "shape": "elbow_90",
                  "drop_mm": 70},
        "length_mm": 12750.5, "length_basis": "thread_end",
    },
}  # fmt: skip
RATED: dict[str, dict[str, Any]] = {
    "known": {"working_pressure_bar": 413.7},
    "not known": {"working_pressure_bar": None},
    "an end not known": {"working_pressure_bar": None, "at_most_bar": 413.7, "unknown_parts": ("end_b",)},
    "only an unverified hose known": {
        "working_pressure_bar": None,
        "at_most_bar": 413.7,
        "unknown_parts": ("end_a", "end_b"),
        "unverified_parts": ("hose",),
    },
    "unverified": {"working_pressure_bar": 413.7, "unverified_parts": ("hose", "end_a", "end_b")},
    "a fluid and a heat beyond the limits": {
        "working_pressure_bar": None,
        "unknown_parts": ("hose",),
        "dangers": (Danger.FLUID, Danger.HEAT),
    },
}
SERIAL = Message("printing-serial", place=13, of=120)
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
        "at_most_bar": None,
        "unknown_parts": (),
        "unverified_parts": (),
        "dangers": (),
    }
    content = TagContent(
        spec=AssemblySpec.read(spec),
        **{**figures, **{k: changes.pop(k) for k in list(changes) if k in figures}},
    )
    digits = payload.encode(content)
    return Tag(whole, link.build("https://tags.example-hose-shop.com", whole, digits), content, **changes)


@pytest.fixture(scope="session")
def longest() -> list[Tag]:
    """Tags with the longest texts: pressure known and not, in part, unverified, with dangers."""
    oiled = "threads_fluid_or_grease"
    figures = Tightening(
        torque_min_nm=103.4, torque_max_nm=115.6, flats_min=1.5, flats_max=1.75, flats_basis="not_stated",
        lubrication=oiled,
    )  # fmt: skip
    screws = Tightening(torque_min_nm=130, torque_max_nm=150.5, lubrication=oiled)
    shop = "Example Hose Shop, 12 Dock Road, tel. 555 0100"
    tags = []
    for name, spec in LONGEST.items():
        known = screws if "flanges" in name else figures
        for rated in RATED.values():
            for other in (known, None):
                figures_of = {"tighten_a": known, "tighten_b": other}
                tags.append(a_tag(spec, serial=SERIAL, shop=shop, **rated, **figures_of))
    return tags


@pytest.fixture(scope="session")
def assessed() -> list[Tag]:
    """Tags as the shop's records give them: the trade's own figures, sources and warnings."""
    paper = {"customer": "Northfield Quarry and Aggregates", "machine": "Wheel loader 7, serial 1234567",
             "position": "boom cylinder, rod side, left", "order": "PO 4711-2", "note": "deliver by Friday"}  # fmt: skip
    tags = []
    for data in (STRAIGHT, TWO_ELBOWS, *LONGEST.values()):
        data = {**data, "hose": {key: value for key, value in data["hose"].items() if key != "edition"}}
        if data["end_b"]["connection"] == "din24_heavy":
            data["end_b"] = {**data["end_b"], "hose_dash": data["hose"]["dash"]}
        spec = AssemblySpec.read(data)
        found = assess(spec)
        tag = a_tag(
            data, assessment=found, serial=SERIAL, extra=paper, shop="Example Hose Shop, tel. 555 0100"
        )
        tags.append(replace(tag, content=found.content_of(spec, date(2026, 11, 25))))
    return tags


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
