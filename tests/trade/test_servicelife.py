"""Storage and service dates: guidance with sources, soonest first."""

from __future__ import annotations

from datetime import date

from tagger.trade.servicelife import NOT_A_PERMISSION, guidance, years_after


def test_dates_follow_from_the_build_date_with_their_sources() -> None:
    found = guidance(date(2026, 11, 25))
    assert [(g.key, g.until) for g in found] == [
        ("assembly_storage_years_din", date(2028, 11, 25)),
        ("assembly_storage_years_iso", date(2028, 11, 25)),
        ("assembly_life_years_din", date(2032, 11, 25)),
    ]
    assert all(g.source for g in found)


def test_bulk_hose_dates_need_the_date_on_the_hose_and_disagree_openly() -> None:
    found = {g.key: g for g in guidance(date(2026, 11, 25), hose_made_on=date(2025, 3, 1))}
    assert found["bulk_hose_years_iso"].until == date(2029, 3, 1)
    assert found["bulk_hose_years_tr17165"].until == date(2035, 3, 1)
    assert found["bulk_hose_years_iso"].earliest and not found["bulk_hose_years_tr17165"].earliest


def test_the_end_of_february_is_the_end_of_february() -> None:
    assert years_after(date(2024, 2, 29), 4) == date(2028, 2, 29)
    assert years_after(date(2024, 2, 29), 6) == date(2030, 2, 28)


def test_guidance_says_that_it_permits_nothing() -> None:
    assert "Guidance only" in str(NOT_A_PERMISSION)
