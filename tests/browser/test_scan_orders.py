"""Ordering from a phone: over plain HTTP, once, with a line that stands still, and again after an order."""

from __future__ import annotations

import socket
from collections.abc import Callable, Iterator

import pytest
from playwright.sync_api import Page, expect

from tagger.i18n import Translator
from tests.browser.conftest import Live, served
from tests.browser.test_scan_tag import path, registered

T = Translator()
OpenPage = Callable[..., Page]
SEND = """() => { const button = document.querySelector("[data-send]"); button.click(); return button.textContent; }"""


@pytest.fixture(scope="module")
def plain(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Live]:
    """The shop's server at this machine's own address: to a browser no secure page, as localhost would be."""
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as probe:
        probe.connect(("192.0.2.1", 9))  # sends nothing: it tells the address this machine would send from
        address = probe.getsockname()[0]
    assert not address.startswith("127."), "this machine has no address but its own loopback"
    with served(tmp_path_factory.mktemp("plain"), address) as running:
        yield running


def test_over_plain_http_an_order_is_sent_once_and_the_same_again_is_asked_about(
    plain: Live, open_page: OpenPage
) -> None:
    page, made = open_page(), registered(plain)
    page.goto(plain.url + path(made) + "#order")
    assert not page.evaluate("isSecureContext")
    assert page.evaluate(SEND) == T("scan-order-send"), "without a way to answer nothing is sent"
    expect(page.locator("[data-wrong]")).to_have_text(T("scan-order-contact-hint"))
    page.get_by_label(T("scan-field-contact_phone")).fill("+44 1632 960 222")
    assert page.evaluate(SEND) == T("scan-order-sending"), "said in the very act of the tap"
    expect(page.get_by_role("heading", name=T("scan-ordered-received"))).to_be_visible()
    (first,) = plain.store.orders(number=made.number)
    page.go_back()
    page.locator("[data-send]").click()
    expect(page.locator("[data-again]")).to_contain_text(first.reference)
    assert len(plain.store.orders(number=made.number)) == 1
    page.get_by_label(T("scan-field-contact_phone")).fill("+44 1632 960 222")
    page.locator("[data-again-yes]").click()
    expect(page.get_by_role("heading", name=T("scan-ordered-received"))).to_be_visible()
    assert len(plain.store.orders(number=made.number)) == 2


def test_an_order_on_a_line_that_stands_still_is_kept_and_sent_by_the_clock(
    plain: Live, open_page: OpenPage
) -> None:
    """Nothing tells the browser that the line is back: the page tries again by itself."""
    page, made = open_page(), registered(plain)
    page.clock.install()
    page.goto(plain.url + path(made) + "#order")
    page.route("**/order", lambda route: None)  # never answered
    page.get_by_label(T("scan-field-contact_phone")).fill("+44 1632 960 222")
    page.locator("[data-send]").click()
    page.clock.fast_forward(21_000)
    expect(page.locator("[data-done]")).to_contain_text(T("scan-outbox-waiting"))
    page.unroute("**/order")
    page.clock.fast_forward(11_000)
    expect(page.locator("[data-outbox]")).to_contain_text(T("scan-outbox-sent"))
    expect(page.locator("[data-done]")).to_be_hidden()
    assert len(plain.store.orders(number=made.number)) == 1


def test_an_order_refused_after_it_waited_stands_in_the_form_again(plain: Live, open_page: OpenPage) -> None:
    page, made = open_page(), registered(plain)
    page.goto(plain.url + path(made) + "#order")
    page.context.set_offline(True)
    page.get_by_label(T("scan-field-contact_phone")).fill("+44 1632 960 222")
    page.get_by_label(T("scan-field-reference")).fill("pump 7")
    page.get_by_label(T("scan-field-needed_by")).fill("2020-01-02")
    page.locator("[data-send]").click()
    expect(page.locator("[data-done]")).to_be_visible()
    page.context.set_offline(False)
    expect(page.locator("[data-outbox]")).to_contain_text(T("scan-outbox-refused"))
    page.get_by_role("link", name=T("scan-outbox-correct")).click()
    page.reload()
    expect(page.get_by_label(T("scan-field-reference"))).to_have_value("pump 7")
    page.get_by_role("button", name=T("scan-outbox-delete")).click()
    page.reload()
    expect(page.locator("[data-outbox]")).to_be_hidden()
    assert plain.store.orders(number=made.number) == []
