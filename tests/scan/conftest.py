"""A store and an application of their own for each test of the public pages."""

from __future__ import annotations

import re
from collections.abc import Iterator
from html import unescape
from pathlib import Path
from typing import Any

import pytest
from fastapi import FastAPI
from fastapi.testclient import TestClient

from api.app import create_app
from api.settings import Settings
from api.workers.scan_counts import ScanCounts
from tagger.spec import AssemblySpec
from tagger.store import Assembly, Store
from tagger.trade import assess
from tests.databases import fresh_sqlite

OTHER_SHOP = "7K3MQ9XW2R1"
SPEC: dict[str, Any] = {
    "hose": {"standard": "SAE 100R2", "dash": 12, "lot": "H-2291"},
    "end_a": {"connection": "sae_37_flare", "dash": 12, "form": "female_swivel", "shape": "elbow_45"},
    "end_b": {"connection": "sae_37_flare", "dash": 12, "form": "female_swivel", "shape": "elbow_90", "drop_mm": 56},
    "length_mm": 1250.0, "clocking_deg": 135, "max_temperature_c": 100, "fluid": "mineral_oil",
    "covers": ["abrasion_sleeve"], "note": "boom cylinder, rod side",
}  # fmt: skip
PARTLY_RATED: dict[str, Any] = {
    "hose": {"standard": "SAE 100R2", "dash": 8},
    "end_a": {"connection": "sae_37_flare", "dash": 8, "form": "female_swivel"},
    "end_b": {"connection": "jis_60", "size": "1/2", "form": "female_swivel"},
    "clocking_deg": None,
}


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    with Store.open(fresh_sqlite(tmp_path)) as opened:
        yield opened


@pytest.fixture
def client(store: Store) -> TestClient:
    settings = Settings(
        base_url="https://tags.example.com",
        shop_email="orders@example.com",
        public_requests_per_minute=10_000,
    )
    return TestClient(create_app(settings, store=store), base_url="https://tags.example.com")


@pytest.fixture
def assembly(store: Store) -> Assembly:
    return register(store)


def register(store: Store, **changed: Any) -> Assembly:
    spec = AssemblySpec.read(SPEC | changed)
    return store.register(spec, assess(spec))[0]


def text(html: str) -> str:
    """What a reader sees, on one line."""
    body = re.sub(r"<(style|script).*?</\1>", " ", html, flags=re.DOTALL)
    return " ".join(unescape(re.sub(r"<[^>]*>", " ", body)).split())


def path(assembly: Assembly) -> str:
    return f"/T/{assembly.number}/{assembly.digits}"


def scans(client: TestClient) -> ScanCounts:
    """The scans that its application has gathered."""
    app = client.app
    assert isinstance(app, FastAPI)
    found: ScanCounts = app.state.scans
    return found
