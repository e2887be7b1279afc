"""A real browser and a real server for the browser tests.

``live``: the application on a free port with its own SQLite file, ``live.url`` and ``live.store``.
``browser``: one headless Chromium for the session. ``open_page``: a function giving a page in a
fresh context, a phone of 390 x 844 by default; anything the page does wrong (an exception, a
refused policy) fails the test. ``until``: waits for a script in a page to answer true.
"""

from __future__ import annotations

import os
import shutil
import socket
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest
import uvicorn
from playwright.sync_api import Browser, BrowserContext, Page, expect, sync_playwright

from api.app import create_app
from api.settings import Settings
from tagger.store import Store
from tests.passwords import quick_passwords as quick_passwords  # for every test of this folder

CHROMIUM = (
    os.environ.get("TAGGER_TEST_CHROMIUM") or shutil.which("chromium") or shutil.which("chromium-browser")
)
PHONE = {"width": 390, "height": 844}
expect.set_options(timeout=60_000)  # ms; for what never comes: on a loaded machine an answer takes its time


@dataclass
class Live:
    """A running server."""

    url: str
    store: Store
    settings: Settings


def until(page: Page, script: str, patience_s: float = 60) -> None:
    """Waits for ``script``, an async function in the page, to answer true.

    Playwright's ``wait_for_function`` does not: to it the promise itself is true enough.
    """
    deadline = time.monotonic() + patience_s
    while not page.evaluate(script):
        assert time.monotonic() < deadline, f"never true: {script}"
        time.sleep(0.05)


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    if not CHROMIUM:
        pytest.fail(
            "Chromium is not installed: run `make test`, which installs it, or `apt-get install chromium`"
        )
    with sync_playwright() as playwright:
        found = playwright.chromium.launch(executable_path=CHROMIUM, args=["--no-sandbox"])
        yield found
        found.close()


@pytest.fixture(scope="module")
def live(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Live]:
    with served(tmp_path_factory.mktemp("live"), "127.0.0.1") as running:
        yield running


@contextmanager
def served(folder: Path, address: str, **more: Any) -> Iterator[Live]:
    """The application, with its files in ``folder``, at an address of this machine; ``more``: other settings."""
    listening = socket.create_server((address, 0))  # held from now on: nobody else can take this port
    port = listening.getsockname()[1]
    settings = Settings(
        database_url=f"sqlite:///{folder}/tags.sqlite3", base_url=f"http://{address}:{port}", port=port,
        shop_name="Quarry Road Hose", shop_phone="+44 1632 960 111", shop_email="orders@example.com",
        public_requests_per_minute=100_000, **more,
    )  # fmt: skip
    app = create_app(settings)
    server = uvicorn.Server(uvicorn.Config(app, log_level="warning"))
    thread = threading.Thread(target=server.run, kwargs={"sockets": [listening]}, daemon=True)
    thread.start()
    while not server.started:
        assert thread.is_alive(), "the server did not start"
        time.sleep(0.01)
    yield Live(settings.base_url, app.state.store, settings)
    server.should_exit = True
    thread.join(timeout=10)


@pytest.fixture
def open_page(browser: Browser) -> Iterator[Callable[..., Page]]:
    contexts: list[BrowserContext] = []
    wrong: list[str] = []

    def open_(**options: Any) -> Page:
        context = browser.new_context(**{"viewport": PHONE, "locale": "en-GB", **options})
        context.set_default_timeout(60_000)
        contexts.append(context)
        page = context.new_page()
        page.on("pageerror", lambda error: wrong.append(f"{page.url}: {error}"))
        page.on(
            "console",
            lambda m: wrong.append(f"{page.url}: {m.text}") if "Content Security" in m.text else None,
        )
        return page

    yield open_
    for context in contexts:
        context.close()
    assert not wrong, wrong
