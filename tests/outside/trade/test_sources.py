"""Where figures come from: every source has its grade, a short name for tags, and words for people."""

from __future__ import annotations

import re
from collections import Counter

from tagger.trade.tables import tables

RAW = tables().raw
JARGON = re.compile(
    r"\b(OEM|maker|repository|dataset|data dump|chart [A-Z]\b|page [A-Z]\b|list [A-Z]\b)|memory:"
)


def used() -> set[str]:
    return {
        row.source
        for name, rows in RAW.items()
        if name != "sources"
        for row in rows
        if getattr(row, "source", "") and not row.source.startswith("fit-source-")
    }


def test_every_source_of_the_tables_has_a_row_and_no_row_is_unused() -> None:
    known = {row.source for row in RAW["sources"]}
    assert sorted(used() - known) == []
    assert sorted(known - used()) == []


def test_short_names_fit_a_tag_and_belong_to_one_source_each() -> None:
    shorts = Counter(row.short for row in RAW["sources"])
    assert [short for short, count in shorts.items() if count > 1 or not 3 <= len(short) <= 40] == []


def test_nobody_reads_how_we_call_a_source_among_ourselves() -> None:
    off = [row.short for row in RAW["sources"] if JARGON.search(f"{row.short} {row.full}")]
    assert off == []
    shown = [
        row
        for name in ("end_pressures", "hose_pressures", "tightening")
        for row in getattr(tables(), name).values()
    ]
    assert [r.source for rows in shown for r in rows if JARGON.search(r.source)] == []


def test_memory_and_practice_are_graded_as_such() -> None:
    for row in RAW["sources"]:
        assert (row.grade == "memory") == ("memory" in row.source), row.source
        assert (row.grade == "judgement") == row.source.startswith("judgement"), row.source
        assert (row.grade == "practice") == ("common practice" in row.source), row.source
