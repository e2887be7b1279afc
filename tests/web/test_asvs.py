"""``api/asvs.csv`` has a line for each requirement of the standard, and each test that it names is there.

Source of the requirements: OWASP Application Security Verification Standard 4.0.3, those of level 2 (the list in
its repository, ``4.0/docs_en``); the words of the table are ours.
"""

from __future__ import annotations

import csv
import re
from collections import Counter
from pathlib import Path

ROOT = Path(__file__).parents[2]
LEVEL_2 = {
    "1.1": "1-7", "1.2": "1-4", "1.4": "1 4 5", "1.5": "1-4", "1.6": "1-4", "1.7": "1 2", "1.8": "1 2", "1.9": "1 2",
    "1.10": "1", "1.11": "1 2", "1.12": "2", "1.14": "1-6",
    "2.1": "1-12", "2.2": "1-3", "2.3": "1-3", "2.4": "1-6", "2.5": "1-7", "2.6": "1-3", "2.7": "1-6", "2.8": "1-7",
    "2.9": "1-3", "2.10": "1-4",
    "3.1": "1", "3.2": "1-4", "3.3": "1-4", "3.4": "1-5", "3.5": "1-3", "3.7": "1",
    "4.1": "1 2 3 5", "4.2": "1 2", "4.3": "1-3",
    "5.1": "1-5", "5.2": "1-8", "5.3": "1-10", "5.4": "1-3", "5.5": "1-4",
    "6.1": "1-3", "6.2": "1-6", "6.3": "1 2", "6.4": "1 2",
    "7.1": "1-4", "7.2": "1 2", "7.3": "1 3 4", "7.4": "1-3",
    "8.1": "1-4", "8.2": "1-3", "8.3": "1-8",
    "9.1": "1-3", "9.2": "1-4",
    "10.2": "1 2", "10.3": "1-3",
    "11.1": "1-8",
    "12.1": "1-3", "12.2": "1", "12.3": "1-6", "12.4": "1 2", "12.5": "1 2", "12.6": "1",
    "13.1": "1 3 4 5", "13.2": "1 2 3 5 6", "13.3": "1 2", "13.4": "1 2",
    "14.1": "1-4", "14.2": "1-6", "14.3": "2 3", "14.4": "1-7", "14.5": "1-4",
}  # fmt: skip
"""The sections of the standard, and which of their requirements are of level 2."""


def _requirements() -> list[str]:
    found = []
    for section, which in LEVEL_2.items():
        first, _, last = which.partition("-")
        places = range(int(first), int(last) + 1) if last else map(int, which.split())
        found += [f"{section}.{place}" for place in places]
    return found


def test_every_requirement_has_a_line_and_every_test_it_names_is_there() -> None:
    with (ROOT / "api" / "asvs.csv").open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    assert [row["requirement"] for row in rows] == _requirements()
    assert {row["state"] for row in rows} == {"met", "not applicable", "open"} and all(
        row["how"] for row in rows
    )
    readme = (ROOT / "api" / "README.md").read_text(encoding="utf-8")
    states = Counter(row["state"] for row in rows)
    assert (
        f"{states['met']} are met, {states['not applicable']} not applicable, {states['open']} open" in readme
    )
    tests = "\n".join(path.read_text(encoding="utf-8") for path in (ROOT / "tests").rglob("test_*.py"))
    there = set(re.findall(r"def (test_\w+)\(", tests))
    named = {row["test"] for row in rows if row["test"]}
    section = readme.partition("## Security")[2].partition("\n## ")[0]
    said = set(re.findall(r"`(test_\w+)`", section))
    assert said and named | said <= there, (named | said) - there
