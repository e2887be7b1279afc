"""The JSON API of a real server, and devices of each role."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import httpx
import pytest

from api.settings import Settings
from tagger.store import Role, Store
from tests.bench.served import serving
from tests.databases import fresh_sqlite
from tests.passwords import quick_passwords as quick_passwords  # for every test of this folder


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    with Store.open(fresh_sqlite(tmp_path)) as opened:
        yield opened


@pytest.fixture
def url(store: Store) -> Iterator[str]:
    with serving(Settings(base_url="https://tags.example.com"), store) as served:
        yield served.url


@pytest.fixture
def device(store: Store, url: str) -> Iterator[Callable[[Role], httpx.Client]]:
    clients = []

    def made(role: Role) -> httpx.Client:
        _, secret = store.make_token(f"a {role}", role)
        headers = {"Authorization": f"Bearer {secret}"}
        clients.append(httpx.Client(base_url=f"{url}/api/v1", headers=headers, timeout=30, verify=False))
        return clients[-1]

    yield made
    for client in clients:
        client.close()


@pytest.fixture
def api(device: Callable[[Role], httpx.Client]) -> httpx.Client:
    """A device that may do everything."""
    return device(Role.MANAGER)
