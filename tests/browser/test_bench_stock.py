"""The shop's fittings on the build page: letters and a scan fill in the ends, and the cut length is shown."""

from __future__ import annotations

from playwright.sync_api import Page, expect

from tagger.trade.fittings import CutOff
from tests.browser.at_the_bench import bench, scan, typed
from tests.browser.conftest import Live
from tests.store.test_fittings import ELBOW, ROW

__all__ = ["bench"]


def test_letters_and_a_scan_fill_in_the_ends_and_the_cut_length_is_shown(bench: Page, live: Live) -> None:
    elbow = ELBOW.model_copy(update={"cut_off_mm": 85.0, "cut_off_kind": CutOff.SHELL_MOUTH,
                                     "insertion_depth_mm": 24.0, "source": "an invented chart"})  # fmt: skip
    live.store.keep_fittings([ROW, elbow])
    bench.goto(f"{live.url}/bench/build")
    bench.fill("[name='hose.standard']", "R2")
    bench.fill("[name='hose.dash']", "12")
    bench.focus("[name='end_a.fitting']")
    typed(bench, "jic 90", apart_ms=120)
    expect(bench.locator("#fittings-end_a option")).to_have_count(1)
    bench.keyboard.press("Enter")
    expect(bench.locator("[name='end_a.fitting']")).to_have_value("TW-1290")
    expect(bench.locator("[name='end_a.shape']")).to_have_value("elbow_90")
    expect(bench.locator("[name='end_a.drop_mm']")).to_have_value("56")
    bench.focus("[name='hose.lot']")
    scan(bench, "TW-1204")
    expect(bench.locator("[name='end_b.fitting']")).to_have_value("TW-1204")
    expect(bench.locator("[name='end_b.shape']")).to_have_value("straight")
    expect(bench.locator("[name='hose.lot']")).to_have_value("")
    bench.fill("[name='length_mm']", "1250")
    expect(bench.locator("#cut")).to_contain_text(
        "1250 mm − (85 mm − 24 mm insertion) (A) − 48.5 mm (B) = 1140.5 mm"
    )
    bench.fill("[name='end_b.size']", "10")
    expect(bench.locator("#view")).to_contain_text("Stock number TW-1204 is another fitting")
    bench.fill("[name='end_b.size']", "12")
    expect(bench.locator("#cut")).to_contain_text("= 1140.5 mm")
    bench.keyboard.press("Control+Enter")
    bench.wait_for_url("**/bench/run/*")
    spec = live.store.find(limit=1).assemblies[0].spec
    assert (spec.end_a.fitting, spec.end_b.fitting) == ("TW-1290", "TW-1204")
