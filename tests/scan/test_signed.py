"""A tag's page says whether the shop signed the tag, and shuts the guide of one whose signature does not fit."""

from __future__ import annotations

import json
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from fastapi.testclient import TestClient

from api.app import create_app
from api.settings import Settings
from tagger import signing
from tagger.code import payload
from tagger.signing import SigningError
from tagger.store import Store
from tests.code.payload_examples import EXAMPLES
from tests.scan.conftest import OTHER_SHOP, register, text

PLAIN = payload.encode(EXAMPLES["contract_example"])
TODAY = date(2026, 11, 25)
BROKEN = "The signature does not fit: do not trust the values"
GATE = '<details class="gate">'


@pytest.fixture
def file(tmp_path: Path) -> Path:
    signing.renew(tmp_path / "keys.json", TODAY)
    return tmp_path / "keys.json"


@pytest.fixture
def client(store: Store, file: Path) -> Iterator[TestClient]:
    settings = Settings(
        base_url="https://tags.example.com", public_requests_per_minute=10_000, signing_key=file
    )
    with TestClient(create_app(settings, store=store), base_url="https://tags.example.com") as started:
        yield started


def _signature(client: TestClient, path: str) -> object:
    return client.get(path, headers={"accept": "application/json"}).json()["signature"]


def test_a_tag_is_signed_not_signed_or_not_to_be_trusted(
    client: TestClient, store: Store, file: Path
) -> None:
    """Of another shop's hose, whose values are the tag's own, and of a registered one."""
    keys, ours = signing.load(file), register(store)
    for number, plain in ((OTHER_SHOP, PLAIN), (ours.number, ours.digits)):
        signed = keys.sign(number, plain)
        page = client.get(f"/T/{number}/{signed}").text
        assert "Signed by this shop" in text(page) and "signed with key 1 of the shop" in text(page)
        assert BROKEN not in page and GATE not in page
        page = client.get(f"/T/{number}/{plain}").text
        assert "Not signed" in text(page) and GATE not in page
        moved = keys.sign("00000000001", plain)
        page = client.get(f"/T/{number}/{moved}").text
        assert BROKEN in text(page) and "not those that were signed" in text(page)
        before, guide = page.split('id="fit-title"')
        assert GATE in before and GATE in guide  # the tightening values, and the guide
        assert ("Show the pressure on the tag" in before) == (number == OTHER_SHOP)  # else it is the record's
        assert guide.index(BROKEN) < guide.index(GATE) < guide.index('id="step-1"')
        assert before.index(BROKEN) < before.index('id="spec"')
        assert _signature(client, f"/T/{number}/{signed}") == {"state": "signed", "key_id": 1, "why": None}
        assert _signature(client, f"/T/{number}/{moved}") == {
            "state": "broken",
            "key_id": 1,
            "why": "altered",
        }
    assert _signature(client, f"/T/{ours.number}") is None  # the record's page, without a tag
    assert client.get(f"/T/{OTHER_SHOP}/{signed[:-2]}").status_code == 404  # a cut one is damaged


def test_a_new_and_a_withdrawn_key_count_at_once_on_kept_pages_too(client: TestClient, file: Path) -> None:
    path = f"/T/{OTHER_SHOP}/{signing.load(file).sign(OTHER_SHOP, PLAIN)}"
    assert "Signed by this shop" in client.get(path).text
    worker = client.get("/scan-worker.js").text
    assert [key["id"] for key in _keys(client)] == [1]
    signing.renew(file, TODAY)
    newer = f"/T/{OTHER_SHOP}/{signing.load(file).sign(OTHER_SHOP, PLAIN)}"
    assert "Signed by this shop" in client.get(newer).text and "Signed by this shop" in client.get(path).text
    assert [key["id"] for key in _keys(client)] == [1, 2]
    assert client.get("/scan-worker.js").text != worker  # so that phones fetch the new keys
    signing.withdraw(file, 1, TODAY)
    assert BROKEN in client.get(path).text and "withdrew the key" in text(client.get(path).text)
    assert "Signed by this shop" in client.get(newer).text


def _keys(client: TestClient) -> list[dict[str, object]]:
    """The public keys, as they are published and as a phone keeps them: the same, and never the private one."""
    published = client.get("/.well-known/hose-tag-keys.json")
    kit = client.get("/scan/now/kit.json")
    [tables] = [file["text"] for name, file in kit.json().items() if name.endswith("/tables.json")]
    keys: list[dict[str, object]] = published.json()["keys"]
    assert tables["keys"] == keys
    private = json.loads(Path(str(client.app.state.settings.signing_key)).read_text(encoding="utf-8"))[
        "private"
    ]  # type: ignore[attr-defined]
    assert private not in published.text + kit.text
    return keys


def test_a_key_file_that_breaks_leaves_the_last_keys_and_stops_the_next_start(
    client: TestClient, store: Store, file: Path
) -> None:
    path = f"/T/{OTHER_SHOP}/{signing.load(file).sign(OTHER_SHOP, PLAIN)}"
    file.write_text("{", encoding="utf-8")
    assert "Signed by this shop" in client.get(path).text
    with pytest.raises(SigningError, match="not a complete key file"):
        create_app(Settings(signing_key=file), store=store)


def test_a_shop_without_keys_says_nothing_of_signatures(store: Store, file: Path) -> None:
    client = TestClient(create_app(Settings(), store=store))
    page = client.get(f"/T/{OTHER_SHOP}/{PLAIN}").text
    assert "Signature" not in text(page) and "igned" not in text(page)
    signed = signing.load(file).sign(OTHER_SHOP, PLAIN)
    assert "Signed, but not checked" in text(client.get(f"/T/{OTHER_SHOP}/{signed}").text)
    assert client.get("/.well-known/hose-tag-keys.json").json()["keys"] == []
    assert 'const LIBRARY = "" &&' in client.get("/scan-worker.js").text
