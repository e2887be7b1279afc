"""Slips of a hurried builder that the bench catches before the hose leaves."""

from __future__ import annotations

from playwright.sync_api import Page, expect

from tests.browser.at_the_bench import bench, settled, two_swivels
from tests.browser.conftest import Live

__all__ = ["bench"]
HEADING = "hose,dash,end_a.connection,end_a.dash,end_a.form,end_b.connection,end_b.dash,end_b.form,Length\n"
ROW = "R2,12,jicc,12,female swivel,ORFS,12,female_swivel,900\n"


def test_1500_bar_is_echoed_large_and_refused_and_a_jump_size_is_filled_in_by_its_button(
    bench: Page, live: Live
) -> None:
    before = live.store.count()
    two_swivels(bench)
    for name, value in {"hose.standard": "R2", "hose.dash": "12", "length_mm": "1250"}.items():
        bench.fill(f"[name='{name}']", value)
    bench.locator("form#build > div > details > summary").first.click()
    bench.fill("[name='working_pressure.value_bar']", "1500")
    bench.fill("[name='working_pressure.source']", "a catalogue")
    said = bench.locator("[data-reading='working_pressure.value_bar']")
    expect(said).to_have_text("1500 bar (21755 psi)")
    assert said.evaluate("one => parseFloat(getComputedStyle(one).fontSize)") >= 28
    expect(bench.locator("#view")).to_contain_text("No such part works above 1000 bar")
    settled(bench)
    bench.check("[name='working_pressure.confirmed']")
    bench.keyboard.press("Control+Enter")
    expect(bench.locator("#problems")).to_contain_text("No such part works above 1000 bar")
    bench.fill("[name='working_pressure.value_bar']", "")
    bench.fill("[name='working_pressure.source']", "")
    settled(bench)
    bench.uncheck("[name='working_pressure.confirmed']")

    bench.fill("[name='end_a.size']", "10")
    offered = bench.locator("#view").get_by_role("button", name="It is a jump size: use 12")
    expect(offered).to_have_count(2)  # both ends are alike
    bench.keyboard.press("Control+Enter")
    told = bench.locator("#problems")
    expect(told).to_contain_text("enter 12 under “Jump size: tail for hose dash”")
    expect(told).not_to_contain_text("hose_dash")
    tail = bench.locator("[name='end_a.hose_dash']")
    expect(tail).not_to_be_visible()
    told.get_by_role("button", name="It is a jump size: use 12").first.click()
    expect(tail).to_be_focused()
    expect(tail).to_have_value("12")
    assert live.store.count() == before
    bench.fill("[name='end_b.hose_dash']", "12")
    bench.keyboard.press("Control+Enter")
    bench.wait_for_url("**/bench/run/*")
    [made] = live.store.find(limit=1).assemblies
    assert (made.spec.end_a.dash, made.spec.end_a.hose_dash, live.store.count()) == (10, 12, before + 1)


def test_a_word_of_a_list_is_mended_in_the_page_without_going_back_to_the_spreadsheet(
    bench: Page, live: Live
) -> None:
    before = live.store.count()
    bench.goto(f"{live.url}/bench/lists")
    file = {"name": "day.csv", "mimeType": "text/csv", "buffer": (HEADING + 3 * ROW).encode()}
    bench.set_input_files("[name=file]", file)  # type: ignore[arg-type]
    bench.locator("form[action='/bench/lists/read'] button").click()
    check = bench.locator("form[action='/bench/lists/dry'] button:not([formaction])")
    check.click()
    expect(bench.get_by_role("alert")).to_contain_text("1")
    expect(bench.locator("td.tagno")).to_have_text(["C2"])
    assert bench.locator("select[aria-label*='female swivel']").input_value() == "female_swivel"
    bench.locator("select[aria-label*='jicc']").select_option("sae_37_flare")
    check.click()
    register = bench.locator("button[formaction='/bench/lists/run']")
    expect(register).to_be_focused()
    bench.keyboard.press("Enter")
    bench.wait_for_url("**/bench/run/*")
    assert live.store.count() == before + 3
    [made] = live.store.find(limit=1).assemblies
    assert (str(made.spec.end_a.connection), str(made.spec.end_b.connection)) == ("sae_37_flare", "orfs")
