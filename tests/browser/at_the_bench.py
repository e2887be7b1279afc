"""The bench as a builder finds it: signed in, a first hose built, keys that are counted, a scanner."""

from __future__ import annotations

import os
import time
from collections.abc import Callable, Iterator
from typing import Any

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
        typed(self.page, text, apart_ms=120)  # as hands type; faster would be a scanner
        self.count += len(text)

    def measure(self, text: str) -> None:
        """What the tape or the gauge says: not counted."""
        typed(self.page, text, apart_ms=120)


def two_swivels(page: Page) -> None:
    page.select_option("[name='end_a.connection']", "sae_37_flare")
    page.select_option("[name='end_a.form']", "female_swivel")
    if page.locator("#view[aria-busy]").count():  # with scripts
        settled(page)
    page.check("[name='end_b.same']")


def settled(page: Page) -> None:
    """The build page has answered what was filled in: until then what it says moves what is to be clicked on."""
    expect(page.locator("#view")).to_have_attribute("aria-busy", "false")


def arrived(page: Page, what: Callable[[], object]) -> None:
    """Waits for what a handler of this test is given by the browser."""
    until(lambda: (page.wait_for_timeout(20), what())[1])  # the handlers run while the page waits


def build_one(live: Live, page: Page, **changes: str) -> str:
    page.goto(f"{live.url}/bench/build")
    two_swivels(page)
    for name, value in {"hose.standard": "R2", "hose.dash": "12", "length_mm": "1250", **changes}.items():
        page.fill(f"[name='{name}']", value)
    register(page)
    return live.store.find(limit=1).assemblies[0].number


_HELD = """() => Object.fromEntries([...document.querySelectorAll("#build :is(input, select)")]
  .filter((one) => one.name && one.value && one.type !== "hidden").map((one) => [one.name, one.value]))"""


def register(page: Page) -> None:
    """The build page, of which nothing was wrong before, is sent by its keys; where it comes back, the failure says why."""
    page.keyboard.press("Control+Enter")
    page.locator("#made, #problems").first.wait_for()
    if "/bench/run/" not in page.url:
        raise AssertionError(
            f"{page.locator('#problems').inner_text()}\nThe page holds {page.evaluate(_HELD)}"
        )


def scan(page: Page, text: str) -> None:
    """A scanner: a key every 3 ms, and Enter."""
    typed(page, f"{text}\r", apart_ms=3)


def typed(page: Page, text: str, apart_ms: int) -> None:
    """Each key tells its own time, as a keyboard's does: a loaded machine makes no hand of a scanner, nor two words of one."""
    line, began = page.context.new_cdp_session(page), time.time()
    for place, one in enumerate(text):
        if place:
            page.wait_for_timeout(apart_ms)
        key: dict[str, Any] = {"key": one, "timestamp": began + place * apart_ms / 1000}
        if one == "\r":
            key |= {"key": "Enter", "code": "Enter", "windowsVirtualKeyCode": 13}
        line.send("Input.dispatchKeyEvent", {"type": "keyDown", "text": one, **key})
        line.send("Input.dispatchKeyEvent", {"type": "keyUp", **key})
    line.detach()
