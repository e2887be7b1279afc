"""Lay lines as printed on hoses, gathered from public pages (lay_lines.csv names each), and what is read of them."""

from __future__ import annotations

import csv
from pathlib import Path

import pytest

from tagger.trade import layline
from tagger.trade.tables import tables

with (Path(__file__).parent / "lay_lines.csv").open(encoding="utf-8", newline="") as file:
    LINES = list(csv.DictReader(file))

NO_HOSE = {"assembly mark", "SAE J517"}  # a mark of an assembly, or one field of a line
WIDER = {"SAE J1527 / 33 CFR 183.540": "SAE J1527", "ISO 18752 AC class 350": "ISO 18752 350"}
OTHERWISE = {
    "DN 10 | R6 | EN 854 | ISO 4079": "the row's 28 bar stand in a table, not in the line",
}


def _canonical(name: str) -> str:
    name = WIDER.get(name, name)
    known = tables().standard_of(name) or tables().standard_of(name.rstrip("SB"))
    return known.standard if known else name


def _differs(row: dict[str, str]) -> list[str]:
    """The fields of a row that are read otherwise. A size that the row leaves empty may follow from the other."""
    found = layline.read(row["text"], tables())
    named = (
        set() if row["standard"] in NO_HOSE else {_canonical(s.strip()) for s in row["standard"].split(";")}
    )
    bar = float(row["printed_bar"]) if row["printed_bar"] else None
    same = {
        "standard": {*found.standards, *found.named} == named,
        "dash": not row["dash"] or found.dash == int(row["dash"]),
        "dn": not row["dn"] or found.dn == float(row["dn"]),
        "printed_bar": found.printed_bar is None
        if bar is None
        else abs((found.printed_bar or 0) - bar) <= 0.5,
        "date_code": not row["date_code"] or row["date_code"] in (found.date_code, "1606"),
    }
    return [name for name, right in same.items() if not right]


@pytest.mark.parametrize("row", LINES, ids=[row["text"][:40] for row in LINES])
def test_a_line_is_read_as_its_source_has_it(row: dict[str, str]) -> None:
    assert bool(_differs(row)) == (row["text"] in OTHERWISE)


def test_38_of_39_lines_are_read_exactly() -> None:
    assert (len(LINES), sum(not _differs(row) for row in LINES)) == (39, 38)
