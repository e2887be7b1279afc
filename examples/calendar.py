"""The week's days, and the clock of a store while the week is played into it."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from pathlib import Path

WEEK = Path(__file__).parent / "week"
MONDAY = date(2026, 11, 16)


class Calendar:
    """The store's clock during the week: the demonstration's days, not today's."""

    def __init__(self) -> None:
        self.moment = datetime(2026, 11, 16, 8, 0, tzinfo=UTC)

    def __call__(self) -> datetime:
        self.moment += timedelta(seconds=47)
        return self.moment

    def go_to(self, day: date, hour: int) -> None:
        self.moment = datetime(day.year, day.month, day.day, hour, 0, tzinfo=UTC)
