"""Reads the published figures beside this file: one CSV a source or table, the source in each row."""

from __future__ import annotations

import csv
from pathlib import Path

FOLDER = Path(__file__).parent


def rows(name: str) -> list[dict[str, str]]:
    """The rows of one file of published figures."""
    with (FOLDER / name).open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))
