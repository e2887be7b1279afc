"""The build page: what it asks for, what it says while somebody types, and what stops it."""

from __future__ import annotations

from pathlib import Path

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page, Route, expect

from tests.browser.at_the_bench import (
    DESK,
    PICTURES,
    OpenPage,
    arrived,
    bench,
    build_one,
    scan,
    settled,
    signed_in,
    two_swivels,
)
from tests.browser.conftest import Live

__all__ = ["bench"]


def test_nothing_is_chosen_beforehand_and_what_is_missing_is_told_in_one_look(
    bench: Page, live: Live
) -> None:
    before = live.store.count()
    for end in ("end_a", "end_b"):
        for part in ("connection", "form", "size"):
            expect(bench.locator(f"[name='{end}.{part}']")).to_have_value("")
    expect(bench.locator("[name='end_b.same']")).not_to_be_checked()
    bench.keyboard.press("Control+Enter")
    links = bench.get_by_role("alert").get_by_role("link")
    expect(links).to_have_text([
        "Hose standard (from lay line)", "Dash size", "End A, Connection", "End A, End type", "End B, Connection",
        "End B, End type", "Overall length",
    ])  # fmt: skip
    links.nth(4).click()
    expect(bench.locator("[name='end_b.connection']")).to_be_focused()
    assert live.store.count() == before


def test_a_wrong_reel_stops_the_builder_until_a_reason_is_chosen(bench: Page, live: Live) -> None:
    build_one(live, bench, **{"hose.lot": "H-77002"})
    before = live.store.count()
    live.store.withdraw("cover blisters", hose_lot="H-77003")

    bench.goto(f"{live.url}/bench/build")
    bench.fill("[name='hose.lot']", "H-77003")
    expect(bench.locator("#view")).to_contain_text("Hose lot H-77003 is withdrawn (“cover blisters”)")

    two_swivels(bench)
    for name, value in {"hose.standard": "EN 857 2SC", "hose.dash": "12", "length_mm": "900 mm"}.items():
        bench.fill(f"[name='{name}']", value)
    bench.fill("[name='hose.lot']", "")
    bench.focus("[name=machine]")
    scan(bench, "H-77002")
    expect(bench.locator("#view")).to_contain_text("H-77002 is known as SAE 100R2 -12")
    expect(bench.locator("[name='hose.standard']")).to_have_value("EN 857 2SC")
    bench.keyboard.press("Control+Enter")
    expect(bench.locator("#problems")).to_contain_text("known as SAE 100R2")
    assert live.store.count() == before

    bench.select_option("[name=lot_reason]", "other_manufacturer")
    bench.keyboard.press("Control+Enter")
    bench.wait_for_url("**/bench/run/*")
    assert live.store.count() == before + 1


def test_clocking_is_set_by_turning_the_drawing(bench: Page) -> None:
    bench.select_option("[name='end_a.shape']", "elbow_90")
    bench.select_option("[name='end_b.shape']", "elbow_90")
    dial = bench.get_by_role("slider")
    expect(dial).to_be_visible()
    settled(bench)
    box = dial.bounding_box()
    assert box is not None
    middle_x, middle_y = box["width"] / 2, box["height"] / 2
    dial.click(
        position={"x": middle_x + 60, "y": middle_y}
    )  # to the right: a quarter, counter-clockwise from down
    expect(bench.locator("[name=clocking_deg]")).to_have_value("90")
    settled(bench)
    dial.click(position={"x": middle_x - 60, "y": middle_y})
    expect(bench.locator("[name=clocking_deg]")).to_have_value("270")
    dial.focus()
    bench.keyboard.press("ArrowUp")
    bench.keyboard.press("PageDown")
    expect(bench.locator("[name=clocking_deg]")).to_have_value("256")


@pytest.mark.parametrize("fails", ["the line is cut", "the server errs"])
def test_figures_that_belong_to_other_fields_say_so(bench: Page, fails: str) -> None:
    two_swivels(bench)
    for name, value in {"hose.standard": "R2", "hose.dash": "12", "length_mm": "1250"}.items():
        bench.fill(f"[name='{name}']", value)
    view = bench.locator("#view")
    expect(view).to_contain_text("1250 mm")
    expect(view).to_have_attribute("aria-busy", "false")
    held: list[Route] = []  # answers that do not come
    bench.route("**/bench/build/preview", lambda route: held.append(route))
    bench.fill("[name=length_mm]", "900")
    expect(bench.get_by_text("Updating ...")).to_be_visible()
    expect(view).to_have_attribute("aria-busy", "true")
    arrived(bench, lambda: held)
    for waiting in held:
        waiting.abort() if fails == "the line is cut" else waiting.fulfill(status=500, body="no")
    expect(bench.get_by_role("alert")).to_contain_text("Out of date. No answer from the server")
    expect(view).to_contain_text("1250 mm")
    assert Axe().run(bench).response["violations"] == []
    if PICTURES:
        bench.screenshot(path=Path(PICTURES) / f"bench-out-of-date-{fails.split()[1]}.png")
    bench.unroute("**/bench/build/preview")
    expect(view).to_contain_text("900 mm")  # asked again by itself
    expect(view).to_have_attribute("aria-busy", "false")
    for sign in ("Updating ...", "Out of date."):
        expect(bench.get_by_text(sign)).to_be_hidden()


def test_an_end_is_identified_by_measuring_without_leaving_the_page(bench: Page) -> None:
    bench.fill("[name='hose.standard']", "R2")
    bench.get_by_role("link", name="Identify by measuring").first.click()
    bench.select_option("#identify [name=form]", "male")
    bench.get_by_label("Male thread, outside diameter").fill("1 1/16 in")
    bench.get_by_label("Threads per inch").fill("12")
    bench.select_option("#identify [name=seat]", "37")
    bench.get_by_role("button", name="Identify", exact=True).click()
    expect(bench.get_by_role("row").nth(1)).to_contain_text("-12 37° flare (JIC)")
    bench.get_by_role("row").nth(1).get_by_role("link", name="End A").click()
    expect(bench.locator("[name='end_a.size']")).to_have_value("12")
    expect(bench.locator("[name='end_a.form']")).to_have_value("male")
    expect(bench.locator("[name='hose.standard']")).to_have_value("SAE 100R2")


def test_what_cannot_be_measured_is_answered_in_the_window_and_the_series_goes_with_the_end(
    bench: Page,
) -> None:
    bench.get_by_role("link", name="Identify by measuring").first.click()
    bench.select_option("#identify [name=form]", "male")
    bench.get_by_label("Male thread, outside diameter").fill("22")
    bench.get_by_label("pitch in mm").fill("1.5")
    bench.select_option("#identify [name=seat]", "boss")
    bench.get_by_role("button", name="Identify", exact=True).click()
    found = bench.locator("#identified")
    expect(found).to_contain_text("Measure next: series")
    found.get_by_role("link", name="I cannot measure that").click()
    expect(found).not_to_contain_text("Measure next:")
    bench.select_option("#identify [name=series]", "S")
    with bench.expect_response("**/bench/identify?*series=S*"):
        bench.get_by_role("button", name="Identify", exact=True).click()
    expect(found.locator("[data-series=S]").first).to_be_visible()
    bench.get_by_role("row").nth(1).get_by_role("link", name="End A").click()
    expect(bench.locator("[name='end_a.series']")).to_have_value("S")


def test_a_lay_line_typed_into_the_hose_field_fills_the_hose_once_the_field_is_left(bench: Page) -> None:
    bench.locator("[name='hose.standard']").press_sequentially("SAE 100R2AT-12")
    expect(bench.locator("[name='hose.dash']")).to_have_value("")
    bench.locator("[name='length_mm']").focus()
    expect(bench.locator("[name='hose.standard']")).to_have_value("SAE 100R2")
    expect(bench.locator("[name='hose.dash']")).to_have_value("12")
    expect(bench.locator("[name='hose.edition']")).to_have_value("AT")


def test_the_size_of_a_lay_line_is_that_of_the_whole_line_however_late_an_answer_comes(bench: Page) -> None:
    """The answer to "...-1" came when the field was left already: dash 1 was filled in and stayed."""
    held: list[Route] = []
    bench.route("**/bench/build/preview", lambda route: held.append(route))
    line = bench.locator("[name='hose.standard']")
    line.press_sequentially("SAE 100R2AT-1")
    arrived(bench, lambda: asks(held, "SAE 100R2AT-1"))
    line.press_sequentially("2")
    bench.locator("[name='length_mm']").focus()
    arrived(bench, lambda: asks(held, "SAE 100R2AT-12"))
    for route in held:  # the answers come now, in their order
        with bench.expect_response("**/bench/build/preview"):
            route.continue_()
    expect(line).to_have_value("SAE 100R2")
    expect(bench.locator("[name='hose.dash']")).to_have_value("12")


def asks(held: list[Route], line: str) -> bool:
    """Whether a question about just this lay line is held."""
    return any(f'"hose.standard"\r\n\r\n{line}\r\n' in (route.request.post_data or "") for route in held)


def test_what_is_typed_before_the_pages_scripts_have_come_stays_in_its_field_and_is_answered(
    bench: Page,
) -> None:
    """The list of problems took the focus a moment after the page had come back, and with it what was typed."""
    held: list[Route] = []
    late = [True]
    bench.route("**/bench*.js*", lambda route: held.append(route) if late else route.continue_())
    bench.keyboard.press("Control+Enter")
    expect(bench.locator("#problems")).to_be_visible()
    length = bench.locator("[name=length_mm]")
    length.focus()
    bench.keyboard.type("9")
    arrived(bench, lambda: any("bench.js" in route.request.url for route in held))
    late.clear()
    for route in held:
        route.continue_()
    expect(bench.locator("#view")).to_contain_text("below the minimum")  # the scripts have come, and asked
    bench.keyboard.type("00")
    expect(length).to_have_value("900")


def test_a_form_that_comes_back_tells_a_test_what_is_wrong_with_it(bench: Page, live: Live) -> None:
    with pytest.raises(AssertionError, match=r"Overall length(.|\n)*'hose.dash': '12'"):
        build_one(live, bench, length_mm="")


def test_the_page_answers_without_script_too(live: Live, open_page: OpenPage) -> None:
    page = signed_in(live, open_page(viewport=DESK, java_script_enabled=False))
    page.fill("[name='hose.standard']", "4SP")
    page.fill("[name='hose.dash']", "12")
    two_swivels(page)
    page.get_by_role("button", name="Register and print").click()
    expect(page.get_by_role("alert")).to_contain_text("Still missing: Overall length")
    page.fill("[name=length_mm]", "900")
    page.get_by_role("button", name="Register and print").click()
    expect(page.get_by_role("heading", level=1)).to_contain_text("1 tag registered")


def test_a_fraction_without_a_unit_is_refused_and_one_with_it_is_echoed(bench: Page) -> None:
    length = bench.locator("[name=length_mm]")
    length.fill("49 1/4")
    expect(bench.locator("#view")).to_contain_text("49 1/4")
    expect(bench.locator("[data-reading=length_mm]")).to_be_empty()
    length.fill("49 1/4 in")
    expect(bench.locator("[data-reading=length_mm]")).to_contain_text("1251 mm (49 1/4 in)")


def test_an_unknown_end_is_asked_for_once_and_the_next_build_of_it_has_the_shops_value(
    bench: Page, live: Live
) -> None:
    def begin() -> None:
        bench.goto(f"{live.url}/bench/build")
        bench.fill("[name='hose.standard']", "2SN")
        bench.fill("[name='hose.dash']", "8")
        bench.select_option("[name='end_a.connection']", "jis_30")
        bench.select_option("[name='end_a.form']", "female_swivel")
        settled(bench)
        bench.check("[name='end_b.same']")
        bench.fill("[name='end_a.size']", "M22x1.5")
        bench.fill("[name='length_mm']", "1000")

    begin()
    asked = bench.locator("[data-ask='end_a.rating']")
    expect(asked).to_contain_text("enter the fitting manufacturer's working pressure")
    expect(bench.locator("[data-ask='hose.rating']")).to_be_hidden()
    bench.fill("[name='end_a.rating.value_bar']", "3000 psi")
    bench.fill("[name='end_a.rating.source']", "catalogue, page 7")
    expect(asked).to_contain_text("207 bar")
    settled(bench)
    bench.check("[name=keep]")
    bench.click("#register")
    bench.wait_for_url("**/bench/run/*")
    begin()
    expect(bench.locator("#view .big").first).to_contain_text("207 bar")
    expect(bench.locator("#asks")).to_be_hidden()
    bench.locator("#view details summary").first.click()
    expect(bench.locator("#view")).to_contain_text("your shop's value (source: catalogue, page 7)")
    axe = Axe().run(bench)
    assert axe.violations_count == 0, axe.generate_report()
