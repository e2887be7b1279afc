"""Days and moments that come from outside as text, as RFC 3339 writes them."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import date, datetime
from typing import Annotated

from pydantic import BeforeValidator
from pydantic_core import PydanticKnownError

_DAY = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")
_MOMENT = re.compile(_DAY.pattern + r"([Tt ][0-9]{2}:[0-9]{2}.*)?")


def _as(pattern: re.Pattern[str], kind: type[date]) -> Callable[[object], object]:
    def read(value: object) -> object:
        if value is None or isinstance(value, kind) or (isinstance(value, str) and pattern.fullmatch(value)):
            return value
        raise PydanticKnownError("date_type")

    return read


Day = Annotated[date, BeforeValidator(_as(_DAY, date))]
"""2026-03-09. Without this pydantic reads any number as seconds since 1970: 0 would be a day of that year."""
Moment = Annotated[datetime, BeforeValidator(_as(_MOMENT, datetime))]
"""2026-03-09T14:30:00Z, or a day alone: its first moment."""
