"""The tag page in a real browser: the spec, the order, the fit guide."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pypdfium2
import pytest
from playwright.sync_api import Page, expect

from api.web.limits import CALM
from tagger.i18n import Translator
from tagger.spec import AssemblySpec
from tagger.store import Allowance, Assembly
from tagger.trade import assess
from tests.browser.conftest import Live

TWO_ELBOWS: dict[str, Any] = {
    "hose": {"standard": "SAE 100R2", "dash": 12, "edition": "S"},
    "end_a": {"connection": "sae_37_flare", "dash": 12, "form": "female_swivel", "shape": "elbow_45"},
    "end_b": {"connection": "sae_37_flare", "dash": 12, "form": "female_swivel", "shape": "elbow_90", "drop_mm": 56},
    "length_mm": 1250, "clocking_deg": 135, "max_temperature_c": 100, "fluid": "mineral_oil",
    "covers": ["abrasion_sleeve"], "note": "boom cylinder, rod side",
}  # fmt: skip
T = Translator()
OpenPage = Callable[..., Page]


def registered(live: Live, data: dict[str, Any] = TWO_ELBOWS) -> Assembly:
    spec = AssemblySpec.read(data)
    return live.store.register(spec, assess(spec))[0]


@pytest.fixture(scope="module")
def assembly(live: Live) -> Assembly:
    return registered(live)


def path(assembly: Assembly) -> str:
    return f"/T/{assembly.number}/{assembly.digits}"


def test_the_link_on_a_tag_shows_its_spec(live: Live, assembly: Assembly, open_page: OpenPage) -> None:
    page = open_page()
    page.goto(live.url + path(assembly))
    bar = assembly.content.working_pressure_bar
    assert bar is not None
    expect(page.locator(".plate")).to_contain_text(f"{round(bar)} bar")
    expect(page.locator(".plate")).to_contain_text("psi")
    expect(page.locator("#line")).to_contain_text("SAE 100R2")
    expect(page.locator("#spec")).to_contain_text("1250 mm")
    expect(page.locator("#spec")).to_contain_text("135° counter-clockwise")
    assert page.locator("#spec .end svg").count() == 2


def test_an_order_sent_from_the_phone_is_in_the_store(
    live: Live, assembly: Assembly, open_page: OpenPage
) -> None:
    page = open_page()
    page.goto(live.url + path(assembly))
    page.locator(".tabs").get_by_role("link", name=T("scan-order-again")).click()
    page.get_by_label(T("scan-field-quantity")).fill("2")
    page.get_by_label(T("scan-field-reference")).fill("Pit 7")
    page.get_by_label(T("scan-field-contact_phone")).fill("+44 1632 960 222")
    page.get_by_text(T("scan-order-changes")).click()
    page.locator("#change_length").fill("1300 mm")
    page.get_by_role("button", name=T("scan-order-send")).click()
    expect(page.get_by_role("heading", name=T("scan-ordered-received"))).to_be_visible()
    order = next(o for o in live.store.orders(number=assembly.number) if o.customer_reference == "Pit 7")
    assert (order.quantity, order.contact.phone, order.changes) == (2, "+44 1632 960 222", "Length: 1300 mm")
    expect(page.locator("main")).to_contain_text(order.reference)
    assert "960 222" not in page.locator("main").inner_text()


def test_in_a_flood_an_order_carries_the_phones_work_and_arrives(live: Live, open_page: OpenPage) -> None:
    made, page, said = registered(live), open_page(), []
    while not live.store.try_now({"order of all": Allowance(CALM, 3600)}):
        pass  # as many from other addresses
    page.on("response", lambda answer: said.append(answer.status) if answer.url.endswith("/order") else None)
    page.goto(live.url + path(made) + "#order")
    page.get_by_role("textbox", name=T("scan-field-contact_phone")).fill("+44 1632 960 222")
    page.locator("#order [data-send]").click()
    expect(page.get_by_role("heading", name=T("scan-ordered-received"))).to_be_visible()
    assert said == [429, 201] and len(live.store.orders(number=made.number)) == 1
    live.store.give_back(*["order of all"] * CALM)


def test_an_order_without_javascript_sent_twice_is_one_order(
    live: Live, assembly: Assembly, open_page: OpenPage
) -> None:
    references = set()
    for width in (360, 390):
        page = open_page(java_script_enabled=False, viewport={"width": width, "height": 740})
        page.goto(live.url + path(assembly) + "#order")
        page.get_by_label(T("scan-field-reference")).fill("no script")
        page.get_by_label(T("scan-field-contact_phone")).fill("+44 1632 960 111")
        page.get_by_role("button", name=T("scan-order-send")).click()
        references.add(page.url)
    assert len(references) == 1
    assert (
        len([o for o in live.store.orders(number=assembly.number) if o.customer_reference == "no script"])
        == 1
    )


TWO_KINDS = TWO_ELBOWS | {
    "end_a": {"connection": "flange_code61", "dash": 12, "form": "flange_head", "shape": "elbow_45"},
}


@pytest.mark.parametrize(
    ("data", "most", "language", "scheme"),
    [(TWO_ELBOWS, 12, "en", "light"), (TWO_KINDS, 16, "de", "dark")],
)
def test_the_fit_guide_walks_few_screens_to_the_end_with_next_always_in_reach_and_prints_on_three_pages(
    live: Live, open_page: OpenPage, data: dict[str, Any], most: int, language: str, scheme: Any
) -> None:
    """At 360 px without JavaScript: one screen at a time, its text never below the button that leads on."""
    page = open_page(java_script_enabled=False, viewport={"width": 360, "height": 740}, color_scheme=scheme)
    address = f"{live.url}{path(registered(live, data))}?lang={language}"
    page.goto(f"{address}#step-1")
    count = page.locator(".step").count()
    assert count <= most
    for place in range(1, count + 1):
        page.goto(f"{address}#step-{place}")
        assert page.locator(".step:visible").count() == 1
        button = page.locator(f"#step-{place} .row a").last
        box = button.bounding_box()
        assert box is not None and box["y"] + box["height"] <= 740 and box["height"] >= 44, place
        button.click(trial=True)
    page.goto(f"{address}#fit")
    assert page.locator(".step:visible").count() == count  # all of them on one page, with ticks
    paper = pypdfium2.PdfDocument(page.pdf(format="A4"))
    printed = " ".join(" ".join(each.get_textpage().get_text_bounded() for each in paper).split())
    assert len(paper) <= 3
    t = Translator(language)
    assert t("fit-screen-safe") in printed and t("fit-screen-after") in printed
    assert t("scan-order-send") not in printed


def test_the_fit_guide_walks_one_step_a_screen_to_the_end(
    live: Live, assembly: Assembly, open_page: OpenPage
) -> None:
    page = open_page()
    page.goto(live.url + path(assembly))
    page.locator(".tabs").get_by_role("link", name=T("scan-fit")).click()
    page.get_by_role("link", name=T("scan-fit-start")).click()
    said = []
    while True:
        steps = page.locator(".step:visible")
        assert steps.count() == 1
        assert not steps.locator(".source").first.is_visible()  # folded under "Where is this from"
        said.append(steps.inner_text())
        if not steps.get_by_role("link", name=T("scan-fit-next")).count():
            break
        steps.get_by_role("link", name=T("scan-fit-next")).click()
    text = "\n".join(said)
    for wanted in ("lock the machine out", "N·m", "flats", "cardboard", "never with your hand", "135°"):
        assert wanted in text
