"""Storage and service dates: guidance with sources, soonest first."""

from __future__ import annotations

from datetime import date

import pytest

from tagger.i18n import LANGUAGES, Translator
from tagger.trade.servicelife import NOT_A_PERMISSION, guidance, years_after
from tagger.trade.tables import tables
from tests.trade.made_up import made_up, rule


def years(key: str) -> int:
    return int(tables().rule(key).value)


def test_dates_follow_from_the_build_date_with_their_sources() -> None:
    found = guidance(date(2026, 11, 25))
    keys = {"assembly_storage_years_din", "assembly_storage_years_iso", "assembly_life_years_din"}
    assert {g.key: g.until for g in found} == {key: date(2026 + years(key), 11, 25) for key in keys}
    assert [g.until for g in found] == sorted(g.until for g in found)
    assert all(g.source for g in found)


def test_bulk_hose_dates_need_the_date_on_the_hose_and_the_soonest_is_marked() -> None:
    made, ours = date(2025, 3, 1), made_up(rules=rule("bulk_hose_years_iso", 1))
    found = {g.key: g for g in guidance(date(2026, 11, 25), hose_made_on=made, tables=ours)}
    assert found["bulk_hose_years_iso"].until == date(2026, 3, 1)
    assert [key for key, g in found.items() if g.earliest and key.startswith("bulk")] == [
        "bulk_hose_years_iso"
    ]


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_rule_of_guidance_is_said_in_every_language(language: str) -> None:
    t = Translator(language)
    said = [t(g.message) for g in guidance(date(2026, 11, 25), hose_made_on=date(2026, 1, 1))]
    assert len(said) == len(set(said)) == 7


def test_the_end_of_february_is_the_end_of_february() -> None:
    assert years_after(date(2024, 2, 29), 4) == date(2028, 2, 29)
    assert years_after(date(2024, 2, 29), 6) == date(2030, 2, 28)


def test_guidance_says_that_it_permits_nothing() -> None:
    assert "Guidance only" in str(NOT_A_PERMISSION)
