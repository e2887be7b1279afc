"""The vacuum of a suction line: asked of the hose, told on the tag. Figures are made up."""

from __future__ import annotations

from typing import Any

import pytest

from tagger.code import payload
from tagger.errors import SpecError
from tagger.rated import dangers
from tagger.spec import Danger
from tagger.trade import assess
from tagger.trade import rows as row
from tagger.trade.tables import tables
from tests.trade.made_up import HOSE, SOURCE, assembly, hose, made_up
from tests.trade.specs import both, end


def said(asked: float, *rated: float, **more: Any) -> dict[str, str]:
    cells: dict[str, Any] = {"source": SOURCE, "confidence": "published", "note": ""} | more
    rows = [row.HoseVacuumRow(standard=HOSE, dash="12", vacuum_bar=bar, **cells) for bar in rated]
    found = assess(assembly(vacuum_bar=asked), made_up(hose_vacuum=rows))
    return {w.code: w.severity for w in found.warnings if w.field == "vacuum_bar"}


def test_a_vacuum_deeper_than_the_least_source_is_a_danger() -> None:
    assert said(0.85, 0.9, 0.8) == {"vacuum_too_deep": "danger"}
    assert said(0.8, 0.9, 0.8) == {}


def test_a_vacuum_is_that_of_the_hoses_own_size() -> None:
    """A wider hose collapses sooner."""
    rows = [
        row.HoseVacuumRow(HOSE, dash, bar, SOURCE, "published", "")
        for dash, bar in (("12", 0.9), ("16", 0.4))
    ]
    made = made_up(hose_vacuum=rows, hose_pressure=[hose(100), hose(100, dash=16), hose(100, dash=20)])
    for dash, codes in ((12, set()), (16, {"vacuum_too_deep"}), (20, {"vacuum_not_known"})):
        spec = both(HOSE, dash, end("sae_37_flare", 12, hose_dash=dash), vacuum_bar=0.5)
        assert {w.code for w in assess(spec, made).warnings if w.field == "vacuum_bar"} == codes, dash


def test_a_vacuum_is_what_its_row_prints_in_inches_of_mercury_and_a_wider_hose_stands_no_more() -> None:
    """1 inHg is 3386.389 Pa (NIST SP 811, appendix B); a row has hundredths of a bar."""
    by_standard: dict[str, list[tuple[int, float]]] = {}
    for (name, dash), rows in tables().hose_vacuums.items():
        for one in rows:
            assert one.vacuum_bar == pytest.approx(float(one.note.split(" inHg")[0]) * 0.03386389, abs=0.005)
            by_standard.setdefault(name, []).append((int(dash), one.vacuum_bar))
    for sizes in by_standard.values():
        bars = [bar for _, bar in sorted(sizes)]
        assert len(bars) > 5 and bars == sorted(bars, reverse=True)


def test_a_vacuum_that_no_source_or_only_memory_gives_is_said() -> None:
    assert said(0.5) == {"vacuum_not_known": "danger"}
    remembered = said(0.5, 0.8, source="memory: an old chart", confidence="memory")
    assert remembered == {"vacuum_from_memory": "care"}


def test_a_tag_never_tells_a_vacuum_that_no_source_allows_without_its_danger() -> None:
    """A pressure hose on a suction line: it may collapse inwards. The mark is carried, and read from the tag alone."""
    for asked, rated in ((0.5, None), (0.85, 0.8)):
        rows = [row.HoseVacuumRow(HOSE, "12", rated, SOURCE, "published", "")] if rated else []
        spec = assembly(vacuum_bar=asked)
        content = assess(spec, made_up(hose_vacuum=rows)).content_of(spec)
        assert content.dangers == (Danger.VACUUM,)
        assert payload.decode(payload.encode(content)).dangers == (Danger.VACUUM,)
        assert [m.id for m in dangers(content)] == ["words-danger-vacuum"]


def test_pressure_hose_has_no_vacuum_rating_of_its_own() -> None:
    assert {standard for standard, _ in tables().hose_vacuums} == {"SAE 100R4"}


@pytest.mark.parametrize("bar", [0, -0.5, 1.1])
def test_a_vacuum_is_between_nothing_and_one_bar(bar: float) -> None:
    with pytest.raises(SpecError):
        assembly(vacuum_bar=bar)
