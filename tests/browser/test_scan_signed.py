"""Signed tags on a phone without a signal: verified by its own browser, and by the library where that does not know how."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tagger import signing
from tagger.code import payload
from tests.browser.conftest import Live, served, until
from tests.browser.test_scan_offline import KEPT, without_network
from tests.code.payload_examples import EXAMPLES
from tests.code.signed_examples import ANOTHER, NUMBER

OpenPage = Callable[..., Page]
PLAIN = payload.encode(EXAMPLES["contract_example"])
DOES_NOT_KNOW = """
if (globalThis.crypto?.subtle) crypto.subtle.importKey = () => Promise.reject(new DOMException("", "NotSupportedError"));
"""
LIBRARY_KEPT = """async () => (await Promise.all((await caches.keys()).map(async (name) =>
  (await (await caches.open(name)).keys()).map((request) => request.url)))).flat().some((url) => url.includes("/ed25519/"))"""


@pytest.fixture(scope="module")
def signing_shop(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Live]:
    folder: Path = tmp_path_factory.mktemp("signing")
    signing.renew(folder / "keys.json", date(2026, 11, 25))
    with served(folder, "127.0.0.1", signing_key=folder / "keys.json") as running:
        yield running


@pytest.mark.parametrize("able", [True, False], ids=["browser", "library"])
def test_a_phone_without_a_signal_tells_signed_from_forged(
    signing_shop: Live, open_page: OpenPage, able: bool
) -> None:
    """The guide of a forged tag opens by a deliberate act alone; the library is loaded for signed tags alone."""
    page, url, keys = open_page(), signing_shop.url, signing_shop.settings.keys()
    if not able:
        page.add_init_script(DOES_NOT_KNOW)
    page.goto(f"{url}/T/{NUMBER}/{PLAIN}")
    until(page, KEPT)
    if not able:
        until(page, LIBRARY_KEPT)
    assert page.evaluate(LIBRARY_KEPT) is not able
    without_network(page, signing_shop)
    loaded: list[str] = []
    page.on("request", lambda request: loaded.append(request.url) if "/ed25519/" in request.url else None)
    body, gates = page.locator("main"), page.locator("details.gate")

    page.goto(f"{url}/T/{NUMBER}/{PLAIN}")
    expect(body).to_contain_text("Not signed")
    assert gates.count() == 0 and not loaded
    page.goto(f"{url}/T/{NUMBER}/{keys.sign(NUMBER, PLAIN)}")
    expect(body).to_contain_text("Signed by this shop")
    assert gates.count() == 0
    page.goto(f"{url}/T/{NUMBER}/{keys.sign(ANOTHER, PLAIN)}")
    notice = page.locator(".notice.danger").first
    expect(notice).to_contain_text("The signature does not fit: do not trust the values")
    expect(notice).to_contain_text("not those that were signed")
    assert gates.count() == 4  # pressure, tightening of both ends, and the guide
    expect(page.locator(".plate .figure")).to_be_hidden()
    page.locator("nav.tabs a[href='#fit']").click()
    start = page.locator("#fit a[href='#step-1']").first
    expect(start).to_be_hidden()
    page.locator("#fit details.gate > summary").click()
    expect(start).to_be_visible()
    assert bool(loaded) is not able
