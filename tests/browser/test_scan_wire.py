"""What the first view of a tag page costs on a bad line: requests and bytes, counted on the wire."""

from __future__ import annotations

import re
import socket
import threading
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field

import pytest
from playwright.sync_api import Page

from tests.browser.conftest import Live, until
from tests.browser.test_scan_offline import KEPT
from tests.browser.test_scan_tag import path, registered

OpenPage = Callable[..., Page]
FIRST_VIEW = 20_000  # bytes of the page, headers and all, packed as a browser asks for it
KEPT_FOR_LATER = 97_000
"""All that a phone keeps to read tags without a signal: scripts of the page itself, and what checks a signature."""
KEPT_APART = 42_000 + 8_500
"""What identifies an end, and the trade's words: fetched after all that reads a tag."""
APART = "async () => !!(await caches.match('/scan/glossary?lang=en'))"  # the last of them
SIZES = """async () => {
  const base = document.querySelector("script[type=module]").src.replace(/[^/]*$/, "");
  const sizes = ["identify", "identify-en", "glossary-en"].map(async (name) => {
    const { headers } = await fetch(`${base}${name}.json`);
    return [...headers].reduce((sum, [key, value]) => sum + key.length + value.length + 4, Number(headers.get("content-length")));
  });
  return (await Promise.all(sizes)).reduce((sum, one) => sum + one, 0);
}"""


@dataclass
class Wire:
    """A proxy that counts: everything the phone receives goes through it."""

    target: tuple[str, int]
    listener: socket.socket = field(init=False)
    received: int = 0
    requests: list[bytes] = field(default_factory=list)

    def __post_init__(self) -> None:
        self.listener = socket.create_server(("127.0.0.1", 0))
        threading.Thread(target=self._accept, daemon=True).start()

    @property
    def url(self) -> str:
        return f"http://127.0.0.1:{self.listener.getsockname()[1]}"

    def _accept(self) -> None:
        while True:
            try:
                client, _ = self.listener.accept()
            except OSError:
                return
            server = socket.create_connection(self.target)
            threading.Thread(target=self._pump, args=(client, server, False), daemon=True).start()
            threading.Thread(target=self._pump, args=(server, client, True), daemon=True).start()

    def _pump(self, source: socket.socket, sink: socket.socket, down: bool) -> None:
        try:
            while data := source.recv(65536):
                if down:
                    self.received += len(data)
                else:
                    self.requests += re.findall(rb"(?:GET|POST) (\S+) HTTP", data)
                sink.sendall(data)
        except OSError:
            pass
        finally:
            sink.close()


@pytest.fixture
def wire(live: Live) -> Iterator[Wire]:
    host, port = live.url.removeprefix("http://").split(":")
    proxy = Wire((host, int(port)))
    yield proxy
    proxy.listener.close()


def test_the_text_shows_after_one_request_of_few_bytes(live: Live, wire: Wire, open_page: OpenPage) -> None:
    """Without scripts the page is the same, so what it needs to show its text is what it asks for then."""
    page = open_page(java_script_enabled=False)
    page.goto(wire.url + path(registered(live)))
    assert page.locator(".plate .figure").is_visible()
    first = [request.decode() for request in wire.requests]
    assert first[0].startswith("/T/")
    blocking = [r for r in first[1:] if not r.endswith((".svg", ".webmanifest")) and "/scan/" not in r]
    assert not blocking
    assert wire.received < FIRST_VIEW


def test_the_first_view_with_all_it_keeps_for_later(
    live: Live, wire: Wire, open_page: OpenPage, record_property: Callable[[str, object], None]
) -> None:
    page, made = open_page(), registered(live)
    bare = open_page(java_script_enabled=False)
    bare.goto(wire.url + path(made))
    text = wire.received
    wire.received = 0
    asked: list[str] = []
    page.on("request", lambda request: asked.append(request.url))
    page.goto(wire.url + path(made))
    page.wait_for_load_state("networkidle")
    shown = wire.received
    until(page, KEPT)
    page.wait_for_timeout(500)
    record_property("first view, bytes", shown)
    record_property("with the reader for no signal, bytes", wire.received)
    until(page, APART)
    reading = wire.received - text
    apart = page.evaluate(SIZES)
    print(
        f"\nfirst view {shown} bytes; with the offline reader {wire.received - apart} bytes, to identify an"
        f" end and for the words {apart} more, {len(wire.requests)} requests"
    )
    assert reading - apart < KEPT_FOR_LATER and 0 < apart < KEPT_APART
    assert all(url.startswith(wire.url) for url in asked)


def test_a_second_view_of_an_unchanged_page_is_nearly_free(
    live: Live, wire: Wire, open_page: OpenPage
) -> None:
    page = open_page(service_workers="block")
    address = wire.url + path(registered(live))
    page.goto(address)
    page.wait_for_load_state("networkidle")
    before = wire.received
    page.reload()
    page.wait_for_load_state("networkidle")
    assert wire.received - before < 3_000
