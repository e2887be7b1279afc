"""One figure of a benchmark, the table of all of them, and the results that are kept to compare with.

A ratio is taken within one run on one machine, so that it says something on another machine or day as well.
Kept results are ``results/DATE-MACHINE.csv``, with the columns of ``COLUMNS``.
"""

from __future__ import annotations

import csv
import os
import platform
import re
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from pathlib import Path

RESULTS = Path(__file__).with_name("results")
COLUMNS = ("name", "figure", "unit", "ratio", "goal", "met")
WORSE = 1.15  # a ratio that is worse by this factor is told: less is the noise between two runs


@dataclass(frozen=True)
class Row:
    """A figure with its unit, and its ratio to whatever the same run measured beside it.

    ``goal`` is ``>= 4`` or ``<= 1.5``, of the ratio, or of the figure where there is no ratio; a sign alone says
    which way is better.
    """

    name: str
    figure: float
    unit: str
    ratio: float | None = None
    goal: str = "<="

    def __post_init__(self) -> None:
        if not re.fullmatch(r"[<>]=( [\d.]+)?", self.goal):
            raise ValueError(f"{self.name}: a goal is like '>= 4', not {self.goal!r}")

    @property
    def met(self) -> bool | None:
        """None without a goal."""
        sign, _, wanted = self.goal.partition(" ")
        value = self.figure if self.ratio is None else self.ratio
        return (value >= float(wanted)) == (sign == ">=") or value == float(wanted) if wanted else None

    def worse_than(self, earlier: Row) -> float:
        """By which factor the ratio is worse than the earlier one; 1 for alike, less for better."""
        if not self.ratio or not earlier.ratio:
            return 1.0
        return earlier.ratio / self.ratio if self.goal.startswith(">") else self.ratio / earlier.ratio

    def cells(self) -> tuple[str, ...]:
        """As text, in the order of ``COLUMNS``."""
        ratio = "" if self.ratio is None else f"{self.ratio:.4g}"
        met = {None: "", True: "yes", False: "NO"}[self.met]
        return self.name, f"{self.figure:.4g}", self.unit, ratio, self.goal, met


def machine() -> str:
    """The class of this machine: what kind of processor, and how many of its cores are ours."""
    cores = len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else os.cpu_count()
    return f"{platform.machine().lower()}-{cores}-cores"


def earlier(folder: Path, of: str) -> Path | None:
    """The newest results that are kept, of this class of machine where there are any."""
    kept = sorted(folder.glob("*.csv"))
    alike = [file for file in kept if file.stem[len("2026-01-01-") :] == of]
    return (alike or kept or [None])[-1]


def read(file: Path) -> list[Row]:
    with file.open(encoding="utf-8", newline="") as lines:
        return [
            Row(row["name"], float(row["figure"]), row["unit"], float(row["ratio"]) if row["ratio"] else None, row["goal"])
            for row in csv.DictReader(lines)
        ]  # fmt: skip


def write(rows: Iterable[Row], file: Path) -> None:
    with file.open("w", encoding="utf-8", newline="") as out:
        csv.writer(out, lineterminator="\n").writerows([COLUMNS, *(row.cells() for row in rows)])


def keep(rows: Iterable[Row], folder: Path, on: date, of: str) -> Path:
    """Writes the results of a day and a class of machine, in place of earlier ones of that day."""
    folder.mkdir(exist_ok=True)
    file = folder / f"{on.isoformat()}-{of}.csv"
    write(rows, file)
    return file


def shown(rows: Iterable[Row], before: Iterable[Row] = ()) -> str:
    """The table as lines of text, each ratio beside the earlier one."""
    was = {row.name: row for row in before}
    lines = [(*COLUMNS, "before", "")]
    for row in rows:
        old = was.get(row.name, row)
        told = "" if old is row or old.ratio is None else f"{old.ratio:.4g}"
        lines.append((*row.cells(), told, "WORSE" if row.worse_than(old) > WORSE else ""))
    widths = [max(len(line[place]) for line in lines) for place in range(len(lines[0]))]
    text = (
        "  ".join(cell.rjust(wide) if 0 < place < 4 or place == 6 else cell.ljust(wide)
                  for place, (cell, wide) in enumerate(zip(line, widths, strict=True))).rstrip()
        for line in lines
    )  # fmt: skip
    return "\n".join(text)
