"""The published figures of the folders beside this file, one file a source or table."""

from __future__ import annotations

import csv
from collections.abc import Iterator
from pathlib import Path

FOLDER = Path(__file__).parent
TO_BAR = {"bar": 1.0, "psi": 0.0689476, "MPa": 10.0, "kgf/cm2": 0.980665}
TO_NM = {"N·m": 1.0, "lbf·ft": 1.355818, "lbf·in": 0.112985}


def rows(kind: str) -> Iterator[dict[str, str]]:
    """Every row of a folder, with its file's name."""
    for path in sorted((FOLDER / kind).glob("*.csv")):
        with path.open(encoding="utf-8", newline="") as file:
            for line, row in enumerate(csv.DictReader(file), 2):
                yield {**row, "where": f"{path.stem}:{line}"}


def bar(printed: str) -> float:
    """A printed pressure in bar: "3000 psi", "41.3 MPa"."""
    figure, unit = printed.split()
    return float(figure) * TO_BAR[unit]
