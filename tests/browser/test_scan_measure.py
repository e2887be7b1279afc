"""Measuring by a photo on a phone and at the bench: lines by finger, by keys, found by the program; never taken unseen."""

from __future__ import annotations

import re
from pathlib import Path
from urllib.parse import parse_qsl, urlsplit

from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page, expect

from tagger.i18n import Translator
from tests.browser import sniffer
from tests.browser.at_the_bench import OpenPage, signed_in
from tests.browser.conftest import Live
from tests.measuring import rendered
from tests.measuring.rendered import Scene

SCENE = Scene(camera=(80, 130, 260), turn=3, length=20.0)
NEAR = {"edge_1": 85.5, "edge_2": 113.0, "crest_1": 40.0, "crest_2": 58.0}  # mm, where the end is about


def _value(page: Page, name: str) -> float:
    return float(page.locator(f"[name={name}]").input_value().replace(",", "."))


def _lines(page: Page, address: str, photo: Path) -> None:
    """The page with the lines, each moved near the thread by keys."""
    page.goto(address)
    page.fill("#check", "100")
    page.set_input_files("#photo", str(photo))
    page.locator("[data-measure-send] button.main").click()
    for place, (name, wanted) in enumerate(NEAR.items()):
        page.locator(".handle").nth(place).focus()
        while abs(_value(page, name) - wanted) > 0.55:
            page.keyboard.press("PageDown" if _value(page, name) < wanted else "PageUp")


def test_the_lines_are_found_confirmed_moved_by_finger_and_lead_to_identify(
    live: Live, open_page: OpenPage, tmp_path: Path
) -> None:
    photo, t = tmp_path / "end.jpg", Translator()
    photo.write_bytes(rendered.take(SCENE))
    page = open_page()
    _lines(page, f"{live.url}/measure?lang=en", photo)
    page.get_by_role("button", name=t("measure-find")).click()
    confirm = page.get_by_label(t("measure-field-confirmed"))
    expect(confirm).to_be_visible()
    expect(page.locator("[data-measure-result]")).to_contain_text(t("measure-confirm-first"))
    on = page.get_by_role("link", name=t("measure-identify"))
    expect(on).to_have_count(0)
    confirm.check()
    expect(on).to_be_visible()
    expect(page.locator("#ticks line")).to_have_count(
        round(_value(page, "threads")) - 1
    )  # a count that is off shows
    asked = dict(parse_qsl(urlsplit(on.get_attribute("href") or "").query))
    diameter, pitch = (asked[name].partition(" ")[0] for name in ("diameter", "pitch"))
    assert abs(float(diameter) - SCENE.diameter) < 0.2 and abs(float(pitch) - SCENE.pitch) < 0.04
    assert page.evaluate("() => document.documentElement.scrollWidth <= innerWidth")
    assert not Axe().run(page).violations_count and not sniffer.errors(page)

    page.locator(".pick button").nth(1).click()  # line 2, moved finely in the magnifier
    before, box = _value(page, "edge_2"), page.locator(".magnifier").bounding_box()
    assert box is not None
    page.mouse.move(box["x"] + 100, box["y"] + 60)
    page.mouse.down()
    page.mouse.move(box["x"] + 100, box["y"] + 90, steps=5)
    page.mouse.up()
    assert abs(_value(page, "edge_2") - before - 30 * 24 / box["width"]) < 0.15
    expect(confirm).to_be_hidden()  # lines by hand are their own confirmation
    expect(page.locator(".readings .line").first).not_to_contain_text(diameter)
    dragged = _value(page, "edge_2")
    page.locator("[data-nudge='-0.1']").click()
    assert abs(dragged - 0.1 - _value(page, "edge_2")) < 0.001
    on.click()
    expect(page.locator("main")).to_contain_text(t("scan-identify-measure_a"))

    bench = signed_in(live, open_page(viewport={"width": 1280, "height": 800}))
    _lines(bench, f"{live.url}/bench/measure?lang=de", photo)
    german = Translator("de")
    bench.get_by_role("button", name=german("measure-find")).click()
    bench.get_by_label(german("measure-field-confirmed")).check()
    bench.get_by_role("link", name=german("measure-identify")).click()
    expect(bench.locator("[name=thread_od]").first).to_have_value(re.compile(r"26\.[67]"))
    assert not Axe().run(bench).violations_count
    expect(bench.locator("[name=thread_od]").first).to_have_value(re.compile(" ± "))  # its band goes along

    plain = open_page(java_script_enabled=False)
    plain.goto(f"{live.url}/measure?lang=en")
    plain.set_input_files("#photo", str(photo))
    plain.locator("[data-measure-send] button.main").click()
    typed = {name: f"{value:.1f}" for name, value in NEAR.items()} | {"threads": "8", "tilt": "3"}
    for name, value in typed.items():
        plain.fill(f"[name={name}]", value)
    plain.get_by_role("button", name=t("measure-read-off")).click()
    expect(plain.locator(".readings")).to_contain_text(t("measure-not-checked"))
