"""Reading the pages in the sun, with gloves, by keyboard, large, and with a screen reader."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

import pypdfium2
import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page, expect

from tagger.i18n import Translator
from tests.browser import sniffer
from tests.browser.conftest import Live
from tests.browser.test_scan_tag import path, registered

T = Translator()
OpenPage = Callable[..., Page]
HOSE = (
    "/identify/hose?a=sae_37_flare~12~female_swivel&b=sae_37_flare~12~male"
    "&standard=SAE+100R2&dash=12&length=1250&shape_a=elbow_90&shape_b=straight"
)
_USUAL = {"color_scheme": "light", "forced_colors": "none", "contrast": "no-preference"}
LOOKS: dict[str, dict[str, Any]] = {
    "light": _USUAL,
    "dark": {**_USUAL, "color_scheme": "dark"},
    "high contrast": {**_USUAL, "forced_colors": "active"},
    "more contrast": {**_USUAL, "contrast": "more"},
}
_VIOLATIONS = {"resultTypes": ["violations"]}
_COLOURS = {"runOnly": ["color-contrast", "link-in-text-block"]}
"""The rules of axe that depend on how a page is coloured; all others see the same page in every look."""
# Visible text under 16 px, and targets under 44 px; a link inside a sentence is no target of its own.
SMALL = """() => {
  const shown = (e) => e.checkVisibility({ visibilityProperty: true, opacityProperty: true }) && e.getClientRects().length;
  const texts = [...document.querySelectorAll("body *")].filter((e) => shown(e) && !e.closest(".quiet, .skip, svg, script, style") &&
    [...e.childNodes].some((n) => n.nodeType === 3 && n.data.trim()) && parseFloat(getComputedStyle(e).fontSize) < 16);
  const drawn = [...document.querySelectorAll("svg text")].filter((e) => shown(e) &&
    parseFloat(getComputedStyle(e).fontSize) * e.ownerSVGElement.getBoundingClientRect().width / e.ownerSVGElement.viewBox.baseVal.width < 16);
  const targets = [...document.querySelectorAll("a, button, input:not([type=hidden]), select, textarea, summary")].filter((e) => {
    if (!shown(e) || e.closest("p") && e.tagName === "A" && !e.classList.contains("button") || e.classList.contains("skip")) return false;
    const box = (e.closest("label") || e).getBoundingClientRect();
    return box.height < 44 || box.width < 44;
  });
  return [...texts, ...drawn, ...targets].map((e) => e.outerHTML.slice(0, 120));
}"""


@pytest.fixture(scope="module")
def addresses(live: Live) -> dict[str, str]:
    """Every public page, by name."""
    assembly, withdrawn = registered(live), registered(live)
    live.store.withdraw("The hose lot failed its burst test", tag=withdrawn.number)
    other = registered(live, {**_OTHER})
    order = live.store.request_order(
        number=assembly.number, contact={"phone": "1"}, changes="Length: 1300 mm"
    )
    tag = path(assembly)
    return {
        "tag": tag,
        "order form": f"{tag}#order",
        "fit": f"{tag}#fit",
        "fit step": f"{tag}#step-1",
        "fit step with nut": f"{tag}#fit-20",
        "withdrawn": path(withdrawn),
        "differs": f"/T/{assembly.number}/{other.digits}",
        "no record": f"/T/7K3MQ9XW2R1/{other.digits}",
        "refused": "/T/7K3MQ9XW2R2",
        "ordered": f"/order/{order.reference}",
        "fitted": f"/fitted/{assembly.number}",
        "find": "/find",
        "find refused": "/find?q=7K3MQ9XW2R2",
        "identify": "/identify",
        "candidates": "/identify?form=male&diameter=1+1/16+in&tpi=12&seat=45",
        "look": "/identify/look?thread=female",
        "layers": "/identify/layers?kind=wire_braid&layers=2",
        "gauges": "/gauges",
        "measure": "/measure",
        "hose": HOSE,
        "hose refused": HOSE.replace("dash=12", "dash=13"),
    }


_OTHER = {
    "hose": {"standard": "EN 853 2SN", "dash": 8},
    "end_a": {"connection": "npt", "size": "1/2", "form": "male"},
    "end_b": {"connection": "din24_light", "size": "15", "form": "female_swivel", "shape": "elbow_90"},
    "length_mm": 900,
}  # fmt: skip


@pytest.fixture(scope="module")
def axe() -> Iterator[Axe]:
    yield Axe()


def test_two_engines_of_accessibility_rules_find_nothing_wrong(
    live: Live, addresses: dict[str, str], open_page: OpenPage, axe: Axe
) -> None:
    """Each page is loaded once and recoloured: axe's rules of colour in every look, all others in the first."""
    page = open_page()
    wrong = {}
    for name, address in addresses.items():
        page.emulate_media(**LOOKS["light"])
        page.goto(live.url + address)
        for look, media in LOOKS.items():
            page.emulate_media(**media)
            found = axe.run(page, options=_VIOLATIONS if look == "light" else _VIOLATIONS | _COLOURS)
            if found.violations_count:
                wrong[f"{name}, {look}"] = found.generate_report()
            elif look == "light" and (sniffed := sniffer.errors(page)):
                wrong[name] = "\n".join(sniffed)
    assert not wrong, "\n".join(f"{name}: {report}" for name, report in wrong.items())


def test_text_is_16_px_and_targets_are_44_px(
    live: Live, addresses: dict[str, str], open_page: OpenPage
) -> None:
    page = open_page()
    wrong = {}
    for name, address in addresses.items():
        page.goto(live.url + address)
        page.evaluate("document.querySelectorAll('details').forEach((e) => { e.open = true; })")
        if small := page.evaluate(SMALL):
            wrong[name] = small
    assert not wrong, wrong


@pytest.mark.parametrize("lang", ["en", "fr", "es", "de"])
def test_nothing_is_cut_off_at_200_percent(
    live: Live, addresses: dict[str, str], open_page: OpenPage, lang: str
) -> None:
    """A phone of 390 px zoomed to 200 % has 195 CSS pixels: the page must not scroll sideways."""
    page = open_page(viewport={"width": 195, "height": 422}, device_scale_factor=2, locale=lang)
    wide = {}
    for name, address in addresses.items():
        page.goto(live.url + address)
        width = page.evaluate("document.documentElement.scrollWidth")
        if width > 195:
            wide[name] = width
    assert not wide, wide


def test_order_and_guide_work_by_keyboard_alone(
    live: Live, addresses: dict[str, str], open_page: OpenPage
) -> None:
    page = open_page()
    page.goto(live.url + addresses["tag"])
    _tab_to(page, T("scan-order-again"))
    page.keyboard.press("Enter")
    expect(page.locator("#order")).to_be_visible()
    _tab_to(page, T("scan-field-contact_phone"))
    page.keyboard.type("+44 1632 960 444")
    _tab_to(page, T("scan-order-send"))
    page.keyboard.press("Enter")
    expect(page.get_by_role("heading", name=T("scan-ordered-received"))).to_be_visible()
    page.goto(live.url + addresses["fit"])
    _tab_to(page, T("scan-fit-start"))
    page.keyboard.press("Enter")
    for _ in range(3):
        _tab_to(page, "Next")
        page.keyboard.press("Enter")
    expect(page.locator("#step-4")).to_be_visible()


def _tab_to(page: Page, name: str) -> None:
    """Presses the tab key until the element of that name has the focus, and that can be seen."""
    script = """() => { const e = document.activeElement; const l = e.labels && e.labels[0];
      return [(l || e).innerText.trim(), getComputedStyle(e).outlineStyle]; }"""
    for _ in range(60):
        page.keyboard.press("Tab")
        text, outline = page.evaluate(script)
        if text == name:
            assert outline != "none"
            return
    raise AssertionError(f"the tab key does not reach {name!r}")


def test_a_page_prints_the_spec_and_every_step(
    live: Live, addresses: dict[str, str], open_page: OpenPage
) -> None:
    page = open_page()
    page.goto(live.url + addresses["tag"])
    page.emulate_media(media="print")
    expect(page.locator(".plate")).to_be_visible()
    steps = page.locator(".step")
    assert steps.count() >= 10
    for place in range(steps.count()):
        expect(steps.nth(place)).to_be_visible()
    expect(page.locator(".tabs")).to_be_hidden()
    document = pypdfium2.PdfDocument(page.pdf())
    paper = " ".join(each.get_textpage().get_text_bounded() for each in document)
    assert "Source: SAE J514" in " ".join(paper.split())  # also the sources that the screen folds away
