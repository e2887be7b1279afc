"""Identifying an end without a signal: the same answer as with one, to the order of what it can be."""

from __future__ import annotations

from collections.abc import Callable
from urllib.parse import urlencode

from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page, expect

from tagger.i18n import Translator
from tagger.messages import Message
from tests.browser import sniffer
from tests.browser.conftest import Live, until
from tests.browser.test_scan_offline import without_network
from tests.browser.test_scan_tag import path, registered

OpenPage = Callable[..., Page]
KEPT = "async () => !!(await caches.match('/scan/identify?lang={lang}'))"
FILLED = "async () => document.querySelector('[data-identify]').children.length > 0"
MEASURED = (
    {"form": "female_swivel", "diameter": "1 in", "tpi": "12", "seat": "37"},
    {"form": "male", "diameter": "20.9", "tpi": "14", "seat": "60"},  # a tie, and the cone asked for
    {"form": "male", "diameter": "1 1/16 in", "tpi": "12", "seat": "45"},  # a thread with another seat
    {"form": "male", "diameter": "22", "pitch": "1.5", "seat": "boss"},  # two series
    {"form": "male", "diameter": "1 1/16", "tpi": "12", "seat": "37"},  # refused: of what?
)
LOOKED = (
    {},
    {"side": "female", "swivels": "yes", "diameter": "25"},
    {
        "side": "female",
        "swivels": "yes",
        "seals": "cone",
        "cone": "outside",
        "seat": "24",
    },  # look-alikes in words
    {"side": "none", "form": "unknown"},
    {"side": "male", "shape": "taper", "seals": "boss"},  # cannot all be true
)
SEEN = "main [role=status], main .looking h2, main .looking a, main .looking li, main .looking svg"
ANSWER = "main .lead, main .card, main .notice, main h2:not([hidden])"


def _answer(page: Page) -> list[str]:
    """What the page says, piece by piece and without blanks, but for its heading notices."""
    texts = ["".join(text.split()) for text in page.locator(ANSWER).all_text_contents()]
    return [text for text in texts if text not in _heads(page)]


def _seen(page: Page) -> list[str]:
    """Question, answers with their addresses and how many pictures, what remains."""
    script = """all => all.map(one => `${one.tagName} ${one.textContent.split(/\\s+/).join("")}
        ${one.tagName === "A" ? [...new URL(one.href).searchParams].sort() : ""}`)"""
    told: list[str] = page.locator(SEEN).evaluate_all(script)
    return told


def _heads(page: Page) -> tuple[str, ...]:
    t = Translator(page.locator("html").get_attribute("lang") or "en")
    return tuple("".join(t(id).split()) for id in ("scan-identify-careful", "scan-identify-kept"))


def test_an_end_is_identified_without_a_signal_as_with_one(live: Live, open_page: OpenPage) -> None:
    for lang, options in (
        ("en", {"viewport": {"width": 390, "height": 844}}),
        ("de", {"viewport": {"width": 360, "height": 740}, "color_scheme": "dark"}),
    ):
        t = Translator(lang)
        page = open_page(**options)
        page.goto(live.url + path(registered(live)) + f"?lang={lang}")
        until(page, KEPT.format(lang=lang))
        told = []
        for asked in MEASURED:
            page.goto(f"{live.url}/identify?{urlencode(asked)}")
            told.append(_answer(page))
        assert len(told[0]) >= 5
        looked = []
        for asked in LOOKED:
            page.goto(f"{live.url}/identify/look?{urlencode(asked)}")
            looked.append(_seen(page))
        assert len(looked[1]) > 20
        without_network(page, live)
        for asked, online in zip(LOOKED, looked, strict=True):
            page.goto(f"{live.url}/identify/look?{urlencode(asked)}")
            until(page, FILLED)
            assert _seen(page) == online, asked
            assert page.evaluate("() => document.documentElement.scrollWidth <= innerWidth")
        page.goto(f"{live.url}/identify/look?{urlencode(LOOKED[1])}")
        page.locator("main [role=group] a").first.click()
        page.wait_for_url("**seals=cone**")
        until(page, FILLED)
        assert not Axe().run(page).violations_count
        page.get_by_role("link", name=t("identify-looking-measure"), exact=True).click()
        expect(page.locator("#diameter")).to_have_value("25")
        for asked, online in zip(MEASURED, told, strict=True):
            page.goto(f"{live.url}/identify?{urlencode(asked)}")
            expect(page.locator("main")).to_contain_text(t("scan-identify-kept"))
            until(page, FILLED)
            assert _answer(page) == online, asked
            assert page.evaluate("() => document.documentElement.scrollWidth <= innerWidth")
        expect(page.locator("[role=alert]")).to_contain_text(
            t(Message("spec-unit-bare-fraction", fraction="1 1/16"))
        )
        page.goto(f"{live.url}/identify?{urlencode(MEASURED[1])}")
        expect(page.locator(".notice", has_text=t("scan-ask-cone"))).to_be_visible()
        assert not Axe().run(page).violations_count
        assert not sniffer.errors(page)


def test_both_ends_are_picked_without_a_signal_and_the_rest_is_said_to_need_one(
    live: Live, open_page: OpenPage
) -> None:
    """By hand: pictures beside the questions, what is asked next can be answered, the way back keeps what was typed."""
    t, page = Translator(), open_page(viewport={"width": 360, "height": 740})
    page.goto(live.url + path(registered(live)))
    until(page, KEPT.format(lang="en"))
    without_network(page, live)
    page.goto(live.url + "/identify")
    for name in ("form", "seat"):
        shown = page.locator(f'label:has(input[name="{name}"]:not([value=""]))')
        assert shown.count() > 5 and shown.locator("svg").count() == shown.count()
    page.get_by_label("female, swivel nut").or_(page.locator('input[value="female_swivel"]')).first.check()
    page.locator("#diameter").fill("18.9")
    page.locator("#tpi").fill("14")
    page.locator('input[name="seat"][value="60"]').check()
    expect(page.locator('[data-optional="cone"]')).to_be_hidden()
    page.get_by_role("button", name=t("scan-identify-go")).click()
    expect(page.locator(".notice", has_text=t("scan-ask-cone"))).to_be_visible()
    assert page.locator("#diameter").input_value() == "18.9"
    page.locator('input[name="cone"][value="inside"]').check()
    page.get_by_role("button", name=t("scan-identify-go")).click()
    expect(page.locator('input[name="cone"][value="inside"]')).to_be_checked()
    page.get_by_role("link", name=t("scan-identify-use_a")).first.click()
    expect(page.locator("main")).to_contain_text(t("scan-identify-measure_b"))
    page.get_by_role("link", name=t("scan-identify-same")).click()
    expect(page.locator("main")).to_contain_text(t.mend(Message("offline-identified")))
    expect(page.locator("main form")).to_be_hidden()
    assert page.locator("main .letter").all_text_contents() == ["A", "B"]
    page.get_by_role("link", name=t("scan-identify-next_hose")).click()
    expect(page.locator("main")).to_contain_text(t("offline-identified"))
    page.goto(live.url + "/identify?lang=fr")  # of which nothing is kept
    expect(page.locator("main")).to_contain_text(t("scan-identify-kept"))
    page.goto(live.url + "/identify?a=nonsense~1~x&form=zzz&diameter=%3Cb%3E27")
    until(page, FILLED)
    expect(page.locator("[role=alert]").first).to_be_visible()
    assert page.locator("main b").count() == 0
