"""The store on each of the two databases."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from tagger.store import Store
from tests.databases import (
    empty_postgresql_url,
    new_url,
    postgresql_server,
    postgresql_template,
    postgresql_url,
    sqlite_url,
    url,
)

__all__ = [
    "empty_postgresql_url",
    "new_url",
    "postgresql_server",
    "postgresql_template",
    "postgresql_url",
    "sqlite_url",
    "store",
    "url",
]


@pytest.fixture
def store(url: str) -> Iterator[Store]:
    with Store.open(url) as opened:
        yield opened
