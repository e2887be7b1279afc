"""Printing from the bench: printers, jobs, and what was printed already."""

from __future__ import annotations

from playwright.sync_api import Dialog, Page, expect

from tests.browser.at_the_bench import bench, build_one, endpoint
from tests.browser.conftest import Live, until
from tests.ports import free_port
from tests.printing.ipp.endpoint import Endpoint

__all__ = ["bench", "endpoint"]


def test_a_printer_is_added_by_keyboard_and_checked(bench: Page, live: Live, endpoint: Endpoint) -> None:
    bench.goto(f"{live.url}/bench/shop")
    bench.focus("[name=uri]")
    bench.keyboard.type(f"ipp://localhost:{free_port()}/ipp/print")
    bench.focus("form[action='/bench/shop/printers'] [name=name]")
    bench.keyboard.type("Counter")
    bench.keyboard.press("Enter")
    expect(bench.get_by_role("alert")).to_contain_text("cannot be reached (Connection refused)")
    expect(bench.locator("form[action='/bench/shop/printers'] [name=name]")).to_have_value("Counter")
    bench.fill("[name=uri]", endpoint.uri)
    bench.keyboard.press("Enter")
    expect(bench.get_by_role("heading", level=1)).to_have_text("Printer Counter")
    expect(bench.get_by_text("PWG Raster, PDF")).to_be_visible()
    bench.once("dialog", lambda dialog: dialog.accept())
    bench.get_by_role("button", name="Remove").click()
    bench.wait_for_url("**/bench/shop?note=saved")
    assert "Counter" not in [p.name for p in live.store.printers()]


def test_a_job_that_was_not_taken_is_told_at_once_and_sent_again(
    bench: Page, live: Live, endpoint: Endpoint
) -> None:
    off = live.store.add_printer("Off", f"ipp://localhost:{free_port()}/ipp/print", 300)
    number = build_one(live, bench)
    bench.get_by_role("button", name="Print on Off").click()
    expect(bench.get_by_role("status")).to_contain_text("Connection refused")
    bench.reload()
    expect(bench.get_by_role("link", name="Print jobs 1")).to_be_visible()
    assert live.store.times_printed(number) == 0
    live.store.retire_printer(off.id)
    on = live.store.add_printer("Off", endpoint.uri, 300)
    bench.get_by_role("button", name="Send again").click()
    expect(bench.get_by_role("status")).to_contain_text("Off printed it")
    live.store.retire_printer(on.id)
    assert live.store.times_printed(number) == 1


def test_the_tab_knows_at_once_what_was_printed_and_asks_before_it_prints_again(
    bench: Page, live: Live
) -> None:
    number = build_one(live, bench)
    expect(bench.locator("#made")).to_contain_text("not printed yet")
    with bench.context.expect_page():
        bench.get_by_role("button", name="Print (PDF)").click()
    expect(bench.locator("#made")).not_to_contain_text("not printed yet")
    asked: list[str] = []

    def answer(dialog: Dialog) -> None:
        asked.append(dialog.message)
        dialog.dismiss() if len(asked) == 1 else dialog.accept()

    bench.on("dialog", answer)
    again = bench.get_by_role("button", name="Reprint (PDF)")
    again.click()
    assert asked == ["This tag has already been printed or sent to a printer. Print it again?"]
    assert live.store.times_printed(number) == 1
    with bench.context.expect_page() as opened:
        again.click()
    opened.value.wait_for_load_state()
    until(bench, "() => document.querySelector('#print-reason select') !== null")
    assert (len(asked), live.store.times_printed(number)) == (2, 2)


def test_a_failed_job_leads_to_sending_it_again(bench: Page, live: Live, endpoint: Endpoint) -> None:
    off = live.store.add_printer("Away", f"ipp://localhost:{free_port()}/ipp/print", 300)
    number = build_one(live, bench)
    bench.get_by_role("button", name="Print on Away").click()
    expect(bench.get_by_role("status")).to_contain_text("Connection refused")
    bench.get_by_role("link", name="Back to").click()
    expect(bench.locator("#jobs")).to_contain_text("Connection refused")
    live.store.retire_printer(off.id)
    back = live.store.add_printer("Away", endpoint.uri, 300)
    bench.locator("#jobs").get_by_role("button", name="Send again").click()
    expect(bench.get_by_role("status")).to_contain_text("Away printed it")
    live.store.retire_printer(back.id)
    assert live.store.times_printed(number) == 1
