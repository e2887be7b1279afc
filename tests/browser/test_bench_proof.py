"""Proof tests on the bench: read aloud, and recorded by a deliberate key alone."""

from __future__ import annotations

from playwright.sync_api import Page, expect

from tagger.code import number as tag_number
from tagger.store import Kind
from tests.browser.at_the_bench import bench, build_one
from tests.browser.conftest import Live

__all__ = ["bench"]


def test_a_proof_pressure_is_read_aloud_and_enter_records_nothing(bench: Page, live: Live) -> None:
    number = build_one(live, bench, **{"hose.standard": "EN 853 2SN"})
    bench.goto(f"{live.url}/bench/tag/{number}")
    pressure, said = bench.locator("[name=pressure_bar]"), bench.locator("#proof-read")
    expect(pressure).to_have_attribute("placeholder", "414 bar (6000 psi)")
    pressure.fill("6000")
    expect(said).to_contain_text("6000 bar (87020 psi) Above the minimum burst pressure")
    pressure.press("Enter")
    asked = []
    bench.on("dialog", lambda dialog: (asked.append(dialog.message), dialog.dismiss()))
    bench.get_by_role("button", name="Passed", exact=True).click()
    assert len(asked) == 1 and "6000 bar" in asked[0]
    assert live.store.each([number], Kind.PROOF_TESTED) == []
    pressure.fill("6000 psi")
    expect(said).to_contain_text("414 bar (6000 psi) Enough for the proof test.")
    bench.get_by_role("button", name="Passed", exact=True).click()
    expect(bench.get_by_text("Proof test passed").first).to_be_visible()
    [event] = live.store.each([number], Kind.PROOF_TESTED)
    assert (event.data["result"], event.data["pressure_bar"]) == ("passed", 413.7)


def test_a_run_is_proof_tested_in_one_act_and_enter_records_nothing(bench: Page, live: Live) -> None:
    number = build_one(live, bench, **{"hose.standard": "EN 853 2SN", "count": "3"})
    run = live.store.run(live.store.assembly(number).run)
    bench.get_by_role("link", name="Crimps and proof test").click()
    pressure, said = bench.locator("[name=pressure_bar]"), bench.locator("#proof-read")
    pressure.fill("6000 psi")
    expect(said).to_contain_text("414 bar (6000 psi) Enough for the proof test.")
    pressure.press("Enter")
    numbers = [one.number for one in run]
    assert live.store.each(numbers, Kind.PROOF_TESTED) == []
    bench.get_by_label(f"Test {tag_number.format(numbers[2])}").uncheck()
    bench.get_by_role("button", name="Selected: passed").click()
    expect(bench.get_by_text("Proof test passed")).to_have_count(2)
    assert {event.number for event in live.store.each(numbers, Kind.PROOF_TESTED)} == set(numbers[:2])
    expect(bench.get_by_role("link", name="Batch certificate B-")).to_be_visible()
