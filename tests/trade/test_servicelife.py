"""Storage and service dates: guidance with sources, soonest first."""

from __future__ import annotations

from datetime import date

import pytest

from tagger.i18n import LANGUAGES, Translator
from tagger.trade.servicelife import NOT_A_PERMISSION, guidance, replace_by, years_after
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


def test_fitting_makes_a_life_shorter_and_never_longer() -> None:
    ours = made_up(rules=rule("assembly_life_years_din", 7))
    shelf = min(years("assembly_storage_years_din"), years("assembly_storage_years_iso"))
    built = date(2025, 3, 1)

    def until(built_on: date | None, fitted_on: date | None) -> date | None:
        found = replace_by(built_on, fitted_on, ours)
        return found and found.until

    assert until(None, None) is None
    assert until(built, None) == date(2032, 3, 1)
    for fitted in (built, date(2026, 1, 1), date(2030, 1, 1)):
        assert until(built, fitted) == date(2032, 3, 1), "storage is part of the life"
    assert until(built, date(2024, 9, 1)) == date(2031, 9, 1), "a slip in one of the two: the earlier day"
    assert until(None, built) == date(2032 - shelf, 3, 1), (
        "the storage is not known: the longest is taken off"
    )
    stored = [replace_by(built, date(2025 + shelf, 3, day), ours) for day in (1, 2)]
    assert [one and one.stored_years for one in stored] == [None, shelf]
