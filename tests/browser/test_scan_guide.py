"""The fit guide in the hand: Next in reach, the screen on, the step found again, read aloud on a tap."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from playwright.sync_api import Page, expect

from tagger.i18n import Translator
from tests.browser.conftest import Live
from tests.browser.test_scan_tag import path, registered

OpenPage = Callable[..., Page]
WATCHED = """() => {
  window.said = []; window.woken = 0;
  const request = WakeLock.prototype.request, speak = SpeechSynthesis.prototype.speak;
  WakeLock.prototype.request = function (kind) { window.woken += 1; return request.call(this, kind); };
  SpeechSynthesis.prototype.speak = function (saying) { window.said.push([saying.lang, saying.text]); return speak.call(this, saying); };
}"""
OUT_OF_REACH = """() => {
  const bar = document.querySelector(".tabs").getBoundingClientRect();
  return [...document.querySelectorAll(".step:target .row > *")].filter((e) => {
    const box = e.getBoundingClientRect();
    return box.bottom > bar.top + 0.5 || box.top < 0 || box.height < 44 || box.width < 44;
  }).map((e) => e.textContent);
}"""


@pytest.mark.parametrize("lang", ["de", "fr", "es"])
def test_next_is_in_reach_on_every_step_of_a_small_phone_and_the_guide_goes_on_where_it_stopped(
    live: Live, open_page: OpenPage, lang: str
) -> None:
    t = Translator(lang)
    page, made = open_page(viewport={"width": 360, "height": 640}, locale=lang), registered(live)
    page.add_init_script(f"({WATCHED})()")
    page.goto(live.url + path(made) + "#step-1")
    assert page.evaluate("window.woken") >= 1
    address = "#step-1"
    for step in range(40):
        assert page.evaluate(OUT_OF_REACH) == [], f"{lang}, {address}"
        if step == 3:
            stopped = address
        forward = page.locator(".step:target .row a").last
        address = str(forward.get_attribute("href"))
        if address == "#spec":
            break
        forward.click()
    assert address == "#spec", "the guide comes to an end"
    page.goto(live.url + path(made) + stopped)
    page.locator(".step:target .aloud").click()
    [(said_in, text)] = page.evaluate("window.said")
    assert said_in == lang and len(text) > 10
    page.goto(live.url + "/find")
    page.goto(live.url + path(made) + "#fit")
    page.get_by_role("link", name=t("scan-fit-resume")).click()
    expect(page.locator(f".step{stopped}")).to_be_visible()
    page.evaluate("(last) => { location.hash = last; }", page.locator(".step").last.get_attribute("id"))
    page.locator(".step:target .row a").last.click()
    page.reload()
    assert page.get_by_role("link", name=t("scan-fit-resume")).count() == 0, "done: it begins anew"
