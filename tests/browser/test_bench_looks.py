"""Every page of the bench: nothing that axe objects to, nothing wider than the screen, targets for a glove."""

from __future__ import annotations

from pathlib import Path

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page, expect

from tagger.i18n import LANGUAGES, SOURCE
from tagger.store import CrimpValue, PrintState, ProofTest
from tests.browser.at_the_bench import (
    NAME,
    PHONE,
    PICTURES,
    SMALL_DESK,
    OpenPage,
    bench,
    build_one,
    endpoint,
    signed_in,
)
from tests.browser.conftest import Live
from tests.browser.prints import jobs_in_each_state
from tests.printing.ipp.endpoint import Endpoint
from tests.volume import volume

__all__ = ["bench", "endpoint"]


LIST = b"""hose,dash,end_a.connection,end_a.dash,end_a.form,end_b.connection,end_b.dash,end_b.form,OAL,colour
R2,12,sae_37_flare,12,female_swivel,sae_37_flare,12,female_swivel,1250,red
R2,12,sae_37_flare,7,female_swivel,sae_37_flare,12,female_swivel,long,red
"""
TABLET, UPRIGHT = {"width": 1024, "height": 768}, {"width": 768, "height": 1024}
_SMALL = """() => [...document.querySelectorAll('a, button, input, select, textarea, summary')].filter((one) => {
  const target = one.matches('[type=checkbox], [type=radio]') ? one.closest('label') ?? one : one;
  const box = target.getBoundingClientRect();
  return box.width && !one.closest('.skip') && (box.height < 44 || box.width < 44);
}).map((one) => one.outerHTML.slice(0, 120))"""
"""The targets on the page that a gloved finger misses."""


_LOW = """() => [...document.querySelectorAll('.fields')].flatMap((box) => {
  const top = (one) => Math.round(one.getBoundingClientRect().top);
  const cells = [...box.children].filter((one) => one.matches('div:has(> label > span)') && one.offsetHeight);
  const controls = cells.map((one) => one.querySelector('input, select')).filter(Boolean);
  return controls.flatMap((one, place) => controls.slice(place + 1).filter((other) => {
    const cell = one.closest('div'), next = other.closest('div');
    return top(cell) === top(next) && top(one) !== top(other);
  }).map((other) => `${one.name} and ${other.name}`));
})"""
"""Fields of one row that do not stand level: one label is longer than the other."""
_PAST = """() => {
  document.querySelectorAll('main details').forEach((one) => { one.open = true; });
  return [...document.querySelectorAll('main :is(label, button, a.button, dd)')].filter((one) =>
    one.clientWidth && one.scrollWidth > one.clientWidth + 1 && !one.matches('.unseen')).map((one) => `${one.textContent.trim()} reaches past its place`);
}"""
"""Words that run on over what stands beside them, with everything unfolded."""
_CUT = """() => {
  const pen = document.createElement('canvas').getContext('2d');
  return [...document.querySelectorAll('input[placeholder]')].filter((one) => {
    const look = getComputedStyle(one);
    pen.font = look.font;
    const room = one.clientWidth - parseFloat(look.paddingLeft) - parseFloat(look.paddingRight);
    return one.clientWidth && !one.value && pen.measureText(one.placeholder).width > room + 1;
  }).map((one) => `${one.name} cuts off: ${one.placeholder}`);
}"""
"""Hints in empty fields that are longer than their field."""
_CUT_CHOICES = """() => {
  const pen = document.createElement('canvas').getContext('2d');
  document.querySelectorAll('main details').forEach((one) => { one.open = true; });
  const told = ['form', 'medium', 'kind', 'fluid', 'hose.rating.fluid', 'end_a.connection', 'end_b.connection', 'end.connection'].map((name) => `main select[name="${name}"]`);
  return [...document.querySelectorAll(told.join())].filter((one) => {
    const look = getComputedStyle(one), arrow = 20;
    pen.font = look.font;
    const room = one.clientWidth - parseFloat(look.paddingLeft) - parseFloat(look.paddingRight) - arrow;
    return one.clientWidth && [...one.options].some((choice) => pen.measureText(choice.text).width > room);
  }).map((one) => `${one.name} cuts off its choices`);
}"""
"""Lists of which a choice is longer than the list is wide."""


def test_with_gloves_on_a_tablet_every_target_is_large_and_register_is_in_view(
    live: Live, open_page: OpenPage
) -> None:
    page = open_page(viewport=TABLET, has_touch=True, is_mobile=True)
    signed_in(live, page)
    place = {"customer": "Quarry North", "machine": "Loader 4", "hose.lot": "H-5"}
    number = build_one(live, page, **place)
    order = live.store.request_order(number=number, contact={"phone": "1"}, key=f"gloves {number}")
    run = live.store.assembly(number).run
    addresses = {
        "build": "/bench/build",
        "find": f"/bench/find?number={number}",
        "record": f"/bench/tag/{number}",
        "run": f"/bench/run/{run}",
        "prove": f"/bench/run/{run}/prove",
        "top": "/bench/go?text=north",
        "top-nothing": "/bench/go?text=7K3MQ-9XWZR1",
        "customer": "/bench/customer?name=Quarry North",
        "hoses": "/bench/hoses",
        "stock": "/bench/stock",
        "crimp-cards": "/bench/shop/crimps",
        "flush": f"/bench/run/{run}/flush",
        "lists": "/bench/lists",
        "papers": "/bench/papers",
        "order": f"/bench/orders/{order.reference}",
    }
    wrong: list[str] = []
    for language in ("en", "de"):
        page.goto(f"{live.url}/bench/build?lang={language}")
        for name, address in addresses.items():
            page.goto(live.url + address)
            for size in (TABLET, UPRIGHT, SMALL_DESK):
                page.set_viewport_size(size)  # type: ignore[arg-type]
                where = f"{name} {language} {size['width']}"
                wrong += [
                    f"{where}: {one}"
                    for one in (
                        *(flaw for look in (_SMALL, _LOW, _CUT) for flaw in page.evaluate(look)),
                        *(page.evaluate(_CUT_CHOICES) if size is TABLET else ()),
                    )
                ]
                if size is not SMALL_DESK:
                    wrong += [f"{where}: {one}" for one in page.evaluate(_PAST)]
                if not page.evaluate("document.documentElement.scrollWidth <= innerWidth"):
                    wrong.append(f"{where} is wider than the screen")
                if name == "build" and size is not UPRIGHT:
                    expect(page.locator("#register")).to_be_in_viewport(ratio=1)
                    head = page.locator("header.top").bounding_box()
                    assert head is not None and head["height"] <= 120
                if PICTURES:
                    page.screenshot(path=Path(PICTURES) / f"touch-{where.replace(' ', '-')}.png")
            if name == "find":
                expect(page.locator("[name=number]")).to_be_focused()
    assert not wrong, "\n".join(wrong)


def _pages(live: Live, page: Page, endpoint: Endpoint) -> dict[str, str]:
    """Every page of the bench with something on it."""
    store = live.store
    number = build_one(
        live,
        page,
        **{
            "customer": "Quarry North",
            "machine": "Loader 4",
            "position": "boom, rod side",
            "hose.lot": "H-5",
        },
    )
    order = store.request_order(
        number=number,
        quantity=2,
        contact={"name": "Bela", "phone": "1", "email": "the.whole.workshop@quarry-of-the-north.example"},
        changes="100 mm longer",
        key=f"axe {number}",
    )
    if not store.crimps():
        store.keep_crimp(CrimpValue("SAE 100R2", 12, "two-wire shell", 33.4, 0.1, 0.2, "invented for a test"))
        store.save_recipe("boom hose", store.assembly(number).spec)
    test = ProofTest(pressure_bar=345, hold_s=60, medium="water", passed=False, tester="Bela")
    store.record_proof_test(number, test, by=NAME)
    waiting = build_one(live, page)
    jobs = jobs_in_each_state(live.store, waiting, endpoint)
    withdrawal = store.withdraw("seat cracked", tag=number)
    return {
        "build": "/bench/build",
        "build-from-tag": f"/bench/build?tag={number}",
        "identify": "/bench/identify?form=male&thread_od=1 1/16 in&tpi=12&seat=37",
        "run": f"/bench/run/{store.assembly(number).run}",
        "prove": f"/bench/run/{store.assembly(number).run}/prove",
        "run-printers": f"/bench/run/{store.assembly(waiting).run}",
        "prints": "/bench/prints",
        **{f"print-{s}": f"/bench/prints/{jobs[s]}" for s in (PrintState.FAILED, PrintState.UNKNOWN)},
        "printer": f"/bench/shop/printers/{store.print_job(jobs[PrintState.DONE]).printer_id}",
        "record": f"/bench/tag/{number}",
        "orders": "/bench/orders?show=all",
        "order": f"/bench/orders/{order.reference}",
        "find": "/bench/find?customer=quarry",
        "machine": "/bench/machine?customer=Quarry North&machine=Loader 4",
        "withdrawn": "/bench/withdrawn?scope=hose_lot&value=H-5",
        "affected": f"/bench/withdrawn/{withdrawal.id}",
        "lists": "/bench/lists",
        "customer": "/bench/customer?name=Quarry North",
        "top": "/bench/go?text=north",
        "hoses": "/bench/hoses",
        "stock": "/bench/stock",
        "crimp-cards": "/bench/shop/crimps",
        "flush": f"/bench/run/{store.assembly(number).run}/flush",
        "fitted": "/bench/fitted",
        "overrated": "/bench/overrated",
        "figures": "/bench/figures",
        "shop": "/bench/shop",
        "me": "/bench/me",
        "papers": "/bench/papers",
        "gauges": "/bench/gauges",
        "measure": "/bench/measure",
        "look": "/bench/identify/look?thread=female",
        "layers": "/bench/identify/layers?kind=wire_braid&layers=2",
        "api": "/api/v1/docs",
        "refused": "/bench/tag/nonsense",
    }


@pytest.mark.parametrize("language", volume(("en",), tuple(LANGUAGES)))
def test_axe_finds_nothing_and_no_page_is_wider_than_the_screen(
    live: Live, open_page: OpenPage, endpoint: Endpoint, language: str
) -> None:
    """Each page is loaded once, then resized and recoloured."""
    page = open_page(viewport=SMALL_DESK)
    page.goto(f"{live.url}/bench/sign-in?lang={language}")
    found = _flaws(page, "sign-in", language)
    signed_in(live, page)
    addresses = _pages(live, page, endpoint)
    for name, address in addresses.items():
        page.goto(live.url + address)
        found += _flaws(page, name, language)
    page.goto(f"{live.url}/bench/build")
    page.keyboard.press("Control+Enter")
    page.get_by_role("alert").wait_for()
    found += _flaws(page, "build-wrong", language)
    page.goto(f"{live.url}/bench/lists")
    page.set_input_files("[name=file]", {"name": "a.csv", "mimeType": "text/csv", "buffer": LIST})
    page.locator("form[action='/bench/lists/read'] button").click()
    page.locator("form[action='/bench/lists/dry']").wait_for()
    found += _flaws(page, "match", language)
    page.locator("form[action='/bench/lists/dry'] button:not([formaction])").click()
    page.get_by_role("alert").wait_for()
    found += _flaws(page, "dry-run", language)
    assert not found, "\n".join(found)


_COLOURS = ["color-contrast", "link-in-text-block"]
"""The rules of axe that depend on the colour scheme; all others see the same page in light and dark."""


_SIDEWAYS = "[...document.querySelectorAll('.scroll')].some((one) => one.scrollWidth > one.clientWidth)"


def _flaws(page: Page, name: str, language: str) -> list[str]:
    """What axe objects to and what sticks out, in both sizes.

    Colours are the same in every language: English is looked at in light and dark and both sizes,
    the others in light on a phone.
    """
    if page.evaluate("document.documentElement.lang") != language:
        return [f"{name} is not in {language}"]
    found = []
    for size in (SMALL_DESK, PHONE):
        page.set_viewport_size(size)  # type: ignore[arg-type]
        page.evaluate("new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn)))")
        place = f"{name} {language} {size['width']}"
        if not page.evaluate("document.documentElement.scrollWidth <= innerWidth"):
            found.append(f"{place} is wider than the screen")
        looks: list[tuple[str, list[str] | None]] = (
            [("light", None)] if size is PHONE or language == SOURCE else []
        )
        if language == SOURCE:
            looks.append(("dark", _COLOURS))
        for scheme, rules in looks:
            page.emulate_media(color_scheme=scheme)  # type: ignore[arg-type]
            found += _violations(page, f"{place} {scheme}", rules)
        if name == "shop" and size is PHONE and page.evaluate(_SIDEWAYS):
            found.append(f"{place} has a table that scrolls sideways")
        if PICTURES:
            file = f"bench-{name}-{language}-{size['width']}.png"
            page.screenshot(path=Path(PICTURES) / file, full_page=True)
    page.set_viewport_size(SMALL_DESK)  # type: ignore[arg-type]
    return found


def _violations(page: Page, name: str, rules: list[str] | None = None) -> list[str]:
    if not page.evaluate("'axe' in window"):
        page.evaluate(Axe().axe_script)
    options = {"resultTypes": ["violations"]} | ({"runOnly": rules} if rules else {})
    results = page.evaluate("(options) => axe.run(document, options)", options)
    return [
        f"{name}: {v['id']} ({v['impact']}): {v['help']}: {[n['target'] for n in v['nodes']][:4]}"
        for v in results["violations"]
    ]
