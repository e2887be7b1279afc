"""The fit guide in the hand: Next in reach, the screen on, the step found again, read aloud on a tap."""

from __future__ import annotations

from collections.abc import Callable

from playwright.sync_api import Page, expect

from tagger.code import number as tag_number
from tagger.code import payload
from tagger.i18n import Translator
from tagger.spec import AssemblySpec, TagContent
from tests.browser.conftest import Live, until
from tests.browser.test_scan_tag import TWO_ELBOWS, path, registered

OpenPage = Callable[..., Page]
WATCHED = """() => {
  window.said = []; window.woken = 0;
  const request = WakeLock.prototype.request, speak = SpeechSynthesis.prototype.speak;
  WakeLock.prototype.request = function (kind) { window.woken += 1; return request.call(this, kind); };
  SpeechSynthesis.prototype.speak = function (saying) { window.said.push([saying.lang, saying.text]); return speak.call(this, saying); };
}"""
OUT_OF_REACH = """() => {
  const wrong = [], seen = [];
  for (let address = "#step-1"; address !== "#spec" && !seen.includes(address);) {
    seen.push(address);
    location.hash = address;
    const row = document.querySelector(".step:target .row"), bar = document.querySelector(".tabs").getBoundingClientRect();
    for (const one of row.children) {
      const box = one.getBoundingClientRect();
      if (box.bottom > bar.top + 0.5 || box.top < 0 || box.height < 44 || box.width < 44) wrong.push(`${address}: ${one.textContent}`);
    }
    address = [...row.querySelectorAll("a")].at(-1).getAttribute("href");
  }
  return { wrong, seen, steps: document.querySelectorAll(".step").length };
}"""
ORDER = """() => {
  location.hash = "#order";
  const order = document.querySelector("#order"), wrong = [];
  for (const more of order.querySelectorAll("details")) more.open = true;
  for (const one of order.querySelectorAll("input:not([type=hidden]), select, textarea, button, summary")) {
    if (!one.checkVisibility() || one.type === "file" && !one.offsetParent) continue;
    one.scrollIntoView({ block: "center" });
    const box = (one.closest("label") || one).getBoundingClientRect();
    const on = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
    const covered = !(on && (one === on || one.contains(on) || on.contains(one)));
    if (covered || box.left < 0 || box.right > innerWidth + 0.5 || box.height < 44) wrong.push(one.name || one.textContent);
  }
  location.hash = "#step-1";
  return wrong;
}"""


def test_next_is_in_reach_on_every_step_of_a_small_phone(live: Live, open_page: OpenPage) -> None:
    """And every field and button of the order form, at both widths."""
    page, made = open_page(viewport={"width": 360, "height": 640}), registered(live)
    for lang in ("de", "fr", "es"):
        page.goto(f"{live.url}{path(made)}?lang={lang}#step-1")
        expect(page.locator(".step:target .aloud")).to_be_visible()
        for width in (320, 360, 390):
            page.set_viewport_size({"width": width, "height": 640})
            found = page.evaluate(OUT_OF_REACH)
            assert found["wrong"] == [], (lang, width)
            assert page.evaluate("document.documentElement.scrollWidth") == width, lang
            assert page.evaluate(ORDER) == [], (lang, width)
        assert len(found["seen"]) == found["steps"] > 3, "Next leads through every step to the end"


def test_the_screen_stays_on_a_step_is_read_aloud_and_the_guide_goes_on_where_it_stopped(
    live: Live, open_page: OpenPage
) -> None:
    page, made = open_page(locale="de"), registered(live)
    t = Translator("de")
    page.add_init_script(f"({WATCHED})()")
    page.goto(live.url + path(made) + "#step-1")
    expect(page.locator(".step:target .aloud")).to_be_visible()
    assert page.evaluate("window.woken") >= 1
    page.locator(".step:target .row a").last.click()
    stopped = page.evaluate("location.hash")
    page.locator(".step:target .aloud").click()
    [(said_in, text)] = page.evaluate("window.said")
    assert said_in == "de" and len(text) > 10
    page.goto(live.url + "/find")
    page.goto(live.url + path(made) + "#fit")
    page.get_by_role("link", name=t("scan-fit-resume")).click()
    expect(page.locator(f".step{stopped}")).to_be_visible()
    page.evaluate("(last) => { location.hash = last; }", page.locator(".step").last.get_attribute("id"))
    page.locator(".step:target .row a").last.click()
    page.reload()
    assert page.get_by_role("link", name=t("scan-fit-resume")).count() == 0, "done: it begins anew"


def test_a_link_to_a_step_leads_past_the_gate_only_where_a_hand_has_opened_it(
    live: Live, open_page: OpenPage
) -> None:
    """Browsers open what hides a link's target: a step of an earlier visit must not show a guide that is doubted since."""
    page = open_page()
    doubted = payload.encode(TagContent(spec=AssemblySpec.read(TWO_ELBOWS)))  # a pressure wholly unknown
    address = f"{live.url}/T/{tag_number.make()}/{doubted}"
    page.goto(f"{address}#step-3")
    until(page, "async () => location.hash === '#fit'")
    assert page.locator(".step:visible").count() == 0
    page.locator("#fit details.gate > summary").click()
    page.get_by_role("link", name=Translator()("scan-fit-start")).click()
    page.locator(".step:target .row a").last.click()
    expect(page.locator("#step-2")).to_be_visible()
    page.reload()
    until(page, "async () => location.hash === '#fit'")
    assert page.locator(".step:visible").count() == 0
    page.locator("#fit details.gate > summary").click()
    page.get_by_role("link", name=Translator()("scan-fit-resume")).click()
    expect(page.locator("#step-2")).to_be_visible()
