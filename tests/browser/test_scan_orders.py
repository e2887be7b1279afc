"""Ordering from a phone: over plain HTTP, once, with a line that stands still, and again after an order."""

from __future__ import annotations

import socket
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PIL import Image
from playwright.sync_api import Page, expect

from tagger.i18n import Translator
from tests.browser.conftest import Live, served
from tests.browser.test_scan_tag import path, registered

T = Translator()
OpenPage = Callable[..., Page]
SEND = """() => { const button = document.querySelector("#order [data-send]"); button.click(); return button.textContent; }"""


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
    expect(page.locator("#order [data-wrong]")).to_have_text(T("scan-order-contact-hint"))
    page.get_by_role("textbox", name=T("scan-field-contact_phone")).fill("+44 1632 960 222")
    assert page.evaluate(SEND) == T("scan-order-sending"), "said in the very act of the tap"
    expect(page.get_by_role("heading", name=T("scan-ordered-received"))).to_be_visible()
    (first,) = plain.store.orders(number=made.number)
    page.go_back()
    page.locator("#order [data-send]").click()
    expect(page.locator("[data-again]")).to_contain_text(first.reference)
    assert len(plain.store.orders(number=made.number)) == 1
    page.get_by_role("textbox", name=T("scan-field-contact_phone")).fill("+44 1632 960 222")
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
    page.get_by_role("textbox", name=T("scan-field-contact_phone")).fill("+44 1632 960 222")
    with page.expect_request("**/order"):
        page.locator("#order [data-send]").click()
    page.clock.fast_forward(21_000)
    expect(page.locator("#order [data-done]")).to_contain_text(T("scan-outbox-waiting"))
    page.unroute("**/order")
    page.clock.fast_forward(11_000)
    expect(page.locator("[data-outbox]")).to_contain_text(T("scan-outbox-sent"))
    expect(page.locator("#order [data-done]")).to_be_hidden()
    assert len(plain.store.orders(number=made.number)) == 1


def test_an_order_refused_after_it_waited_stands_in_the_form_again(plain: Live, open_page: OpenPage) -> None:
    page, made = open_page(), registered(plain)
    page.goto(plain.url + path(made) + "#order")
    page.context.set_offline(True)
    page.get_by_role("textbox", name=T("scan-field-contact_phone")).fill("+44 1632 960 222")
    page.get_by_label(T("scan-field-reference")).fill("pump 7")
    page.get_by_label(T("scan-field-needed_by")).fill("2020-01-02")
    page.locator("#order [data-send]").click()
    expect(page.locator("#order [data-done]")).to_be_visible()
    page.context.set_offline(False)
    expect(page.locator("[data-outbox]")).to_contain_text(T("scan-outbox-refused"))
    page.get_by_role("link", name=T("scan-outbox-correct")).click()
    page.reload()
    expect(page.get_by_label(T("scan-field-reference"))).to_have_value("pump 7")
    page.get_by_role("button", name=T("scan-outbox-delete")).click()
    expect(page.locator("[data-outbox]")).to_be_hidden()  # once the phone has forgotten it
    page.reload()
    expect(page.locator("[data-outbox]")).to_be_hidden()
    assert plain.store.orders(number=made.number) == []


def test_a_report_of_fitting_and_a_photo_without_a_signal_arrive_once_and_small(
    plain: Live, open_page: OpenPage, tmp_path: Path
) -> None:
    page, made = open_page(), registered(plain)
    large = tmp_path / "large.png"
    Image.effect_noise((2000, 1500), 80).save(large)
    page.goto(plain.url + path(made) + "#fit")
    page.context.set_offline(True)
    page.get_by_text(T("fitted-report")).click()
    today = page.evaluate("new Date().toLocaleDateString('sv')")
    expect(page.get_by_label(T("scan-field-fitted_on"))).to_have_value(today)
    page.get_by_label(T("scan-field-machine"), exact=True).fill("Loader 4")
    page.get_by_label(T("fitted-photo")).set_input_files(large)
    page.locator("#fit [data-send]").click()
    expect(page.locator("#fit [data-done]")).to_contain_text(T("fitted-waiting-open"))
    assert plain.store.fitted_reports(number=made.number) == []
    sent: list[int] = []
    page.on("request", lambda r: sent.append(len(r.post_data_buffer or b"")) if r.method == "POST" else None)
    page.context.set_offline(False)
    expect(page.locator("[data-outbox]")).to_contain_text(T("fitted-outbox-sent"))
    page.reload()
    (report,) = plain.store.fitted_reports(number=made.number)
    assert (report.fitted_on.isoformat(), report.machine) == (today, "Loader 4")
    assert report.photo is not None
    assert large.stat().st_size > 2_000_000
    assert sent == [] or max(sent) < 600_000
    late = registered(plain)  # withdrawn while its report waits on the phone
    page.goto(plain.url + path(late) + "#fit")
    page.context.set_offline(True)
    page.get_by_text(T("fitted-report")).click()
    page.locator("#fit [data-send]").click()
    expect(page.locator("#fit [data-done]")).to_contain_text(T("fitted-waiting-open"))
    plain.store.withdraw("burst low", tag=late.number)
    page.context.set_offline(False)
    told = page.locator("[data-outbox] .danger")
    expect(told).to_contain_text(T("scan-withdrawn-act"))
    assert plain.store.fitted_reports(number=late.number)[0].withdrawn == ("burst low",)
    told.get_by_role("button", name=T("scan-outbox-delete")).click()
    expect(told).to_be_hidden()
    page.goto(f"{plain.url}{path(made)}#order")
    page.get_by_label(T("scan-order-remember")).check()
    page.get_by_role("textbox", name=T("scan-field-contact_phone")).fill("+44 1632 960 333")
    page.locator("#order [data-send]").click()
    expect(page.get_by_role("heading", name=T("scan-ordered-received"))).to_be_visible()
    page.goto(plain.url + path(registered(plain)) + "#order")
    expect(page.get_by_role("textbox", name=T("scan-field-contact_phone"))).to_have_value("+44 1632 960 333")
