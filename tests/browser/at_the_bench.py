"""The bench as a builder finds it: signed in, a first hose built, keys that are counted, a scanner."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator

import pytest
from playwright.sync_api import Page, expect

from api.web.identity import hash_password
from tagger.store import Role
from tests.browser.conftest import Live
from tests.printing.ipp.endpoint import Endpoint, serving, until

NAME, PASSWORD = "Anna", "correct horse 17"
DESK, PHONE = {"width": 1280, "height": 800}, {"width": 390, "height": 844}
SMALL_DESK = {"width": 1366, "height": 768}
PICTURES = os.environ.get("TAGGER_TEST_PICTURES")
OpenPage = Callable[..., Page]


@pytest.fixture
def bench(live: Live, open_page: OpenPage) -> Page:
    """A page of the bench, signed in as the manager."""
    return signed_in(live, open_page(viewport=DESK))


def signed_in(live: Live, page: Page) -> Page:
    if live.store.person(NAME) is None:
        live.store.add_person(NAME, hash_password(PASSWORD), Role.MANAGER)
    page.goto(f"{live.url}/bench")
    page.fill("[name=name]", NAME)
    page.fill("[name=password]", PASSWORD)
    page.keyboard.press("Enter")
    page.wait_for_url("**/bench/build")
    return page


@pytest.fixture(scope="module")
def endpoint(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Endpoint]:
    """A printer in the network."""
    with serving(tmp_path_factory.mktemp("printer") / "spool", "application/pdf,image/pwg-raster") as printer:
        yield printer


class Keys:
    """Presses keys and counts them; a chord counts each of its keys."""

    def __init__(self, page: Page) -> None:
        self.page, self.count = page, 0

    def press(self, *keys: str) -> None:
        for key in keys:
            self.page.keyboard.press(key)
            self.count += len(key.split("+"))

    def type(self, text: str) -> None:
        self.page.keyboard.type(text, delay=120)  # as hands type; faster would be a scanner
        self.count += len(text)

    def measure(self, text: str) -> None:
        """What the tape or the gauge says: not counted."""
        self.page.keyboard.type(text, delay=120)


def two_swivels(page: Page) -> None:
    page.select_option("[name='end_a.connection']", "sae_37_flare")
    page.select_option("[name='end_a.form']", "female_swivel")
    if page.locator("#view[aria-busy]").count():  # with scripts: what it says moves what is below
        expect(page.locator("#view")).to_have_attribute("aria-busy", "false")
    page.check("[name='end_b.same']")


def arrived(page: Page, what: Callable[[], object]) -> None:
    """Waits for what a handler of this test is given by the browser."""
    until(lambda: (page.wait_for_timeout(20), what())[1])  # the handlers run while the page waits


def build_one(live: Live, page: Page, **changes: str) -> str:
    page.goto(f"{live.url}/bench/build")
    two_swivels(page)
    for name, value in {"hose.standard": "R2", "hose.dash": "12", "length_mm": "1250", **changes}.items():
        page.fill(f"[name='{name}']", value)
    page.keyboard.press("Control+Enter")
    page.wait_for_url("**/bench/run/*")
    return live.store.find(limit=1).assemblies[0].number


def scan(page: Page, text: str) -> None:
    """A scanner: a key every few milliseconds, and Enter."""
    page.keyboard.type(text, delay=3)
    page.keyboard.press("Enter")
