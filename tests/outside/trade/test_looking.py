"""What published pages say of an end that is looked at leads to the families that they name, and to no other."""

from __future__ import annotations

import csv
from pathlib import Path

from tagger.trade.identifying import guided
from tagger.trade.tables import tables

ROWS = list(csv.DictReader((Path(__file__).parent / "looking.csv").open(encoding="utf-8")))


def test_what_is_seen_leads_to_the_families_that_the_page_names_and_to_no_other() -> None:
    assert len(ROWS) >= 10
    for row in ROWS:
        answers = guided.read(dict(part.split("=") for part in row["seen"].split()))
        found = {str(told.family) for told in guided.look(answers, tables()).remaining}
        assert found - {"din_standpipe"} == set(row["families"].split()), row
