"""A real server with a real database, and somebody signed in."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import httpx
import pytest

from api.settings import Settings
from tagger.store import Role, Store
from tests.bench.served import PASSWORD, Bench, Served, serving
from tests.databases import fresh_sqlite
from tests.passwords import QUICK
from tests.passwords import quick_passwords as quick_passwords  # for every test of this folder


@pytest.fixture(scope="session")
def password_hash() -> str:
    return QUICK.hash(PASSWORD)


@pytest.fixture
def store(tmp_path: Path, password_hash: str) -> Iterator[Store]:
    with Store.open(fresh_sqlite(tmp_path)) as opened:
        for role in Role:
            opened.add_person(role.value, password_hash, role)
        yield opened


@pytest.fixture
def settings() -> Settings:
    return Settings(
        base_url="http://tags.example.com", shop_name="Ridge Hose", public_requests_per_minute=10_000
    )


@pytest.fixture
def served(store: Store, settings: Settings) -> Iterator[Served]:
    with serving(settings, store) as running:
        yield running


@pytest.fixture
def bench(served: Served, store: Store) -> Iterator[Bench]:
    """The manager's browser, without the browser."""
    with Bench(served.url, store, "manager") as signed_in:
        yield signed_in


@pytest.fixture
def stranger(served: Served) -> Iterator[httpx.Client]:
    with httpx.Client(base_url=served.url, verify=False) as client:
        yield client
