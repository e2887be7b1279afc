"""What a label was measured to survive, and whether that is the label of today.

``label_templates/survival.csv`` is written by ``python -m tests.speed.survive --only whole --keep``: a row a layout, with
the day, the trials a wound, and the share in % from which the specification was had; with ``signed`` "yes" of a shop
that signs its tags. A layout is known by its digest: the label's size and every symbol's version, level, module and
place, for the sample at 203 dpi, or as an engraver's tool cuts it; of a heat-shrink sleeve its two diameters too.
"""

from __future__ import annotations

import csv
import hashlib
import json
from dataclasses import dataclass
from datetime import date
from functools import lru_cache
from importlib import resources

from tagger.printing import plate
from tagger.printing.layout import lay_out
from tagger.printing.sample import sample
from tagger.printing.sizing import dot_mm
from tagger.printing.template import PACKAGE, Template

DPI = 203
WOUNDS = ("torn_corner", "torn_edge", "rubbed_band", "scratches", "faded", "oil", "burnt_half", "all")
COLUMNS = ("template", "layout", "signed", "measured_on", "trials", *WOUNDS)


@dataclass(frozen=True)
class Survival:
    """Shares in % of damaged labels that were still read, by wound."""

    measured_on: date
    trials: int
    shares: dict[str, float]


def measured(template: Template) -> Survival | None:
    """What was measured of this very layout; None where nothing was."""
    wanted = digest(template)
    for row in rows():
        if row["layout"] == wanted and row["signed"] == "no":
            shares = {wound: float(row[wound]) for wound in WOUNDS}
            return Survival(date.fromisoformat(row["measured_on"]), int(row["trials"]), shares)
    return None


@lru_cache(maxsize=64)
def digest(template: Template) -> str:
    """The layout in twelve hexadecimal digits."""
    dpi = plate.DPI if template.engraved else DPI
    page, dot = lay_out(sample(), template, dpi), dot_mm(dpi)
    symbols = [
        (
            placed.symbol.kind,
            placed.symbol.version,
            placed.symbol.level,
            placed.dots,
            round(placed.x / dot),
            round(placed.y / dot),
            placed.turn,
        )
        for placed in page.symbols
    ]
    sizes = [round(side, 2) for side in template.size]
    if sleeve := template.sleeve:
        sizes += [sleeve.supplied_mm, sleeve.recovered_mm]
    said = json.dumps([sizes, symbols])
    return hashlib.sha256(said.encode()).hexdigest()[:12]


@lru_cache(maxsize=1)
def rows() -> list[dict[str, str]]:
    """The file's rows; none where it is not there yet."""
    file = resources.files(PACKAGE) / "survival.csv"
    if not file.is_file():
        return []
    return list(csv.DictReader(file.read_text(encoding="utf-8").splitlines()))
