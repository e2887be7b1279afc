"""No signal: the phone reads a tag it has never seen, and an order waits and arrives once."""

from __future__ import annotations

import re
import time
from collections.abc import Callable
from datetime import UTC, date, datetime, timedelta

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page, expect

from tagger.code import number as tag_number
from tagger.code import payload
from tagger.i18n import LANGUAGES, Translator
from tagger.messages import Message
from tagger.spec import AssemblySpec
from tagger.store import ProofTest, Store
from tagger.trade import assess
from tests.browser import sniffer
from tests.browser.conftest import Live, until
from tests.browser.test_scan_tag import TWO_ELBOWS, path, registered

T = Translator()
OpenPage = Callable[..., Page]
KEPT = """async () => {
  await navigator.serviceWorker.ready;
  const names = (await caches.keys()).filter((name) => name.startsWith("reader-") && name !== "reader-choice");
  const kept = await Promise.all(names.map(async (name) => (await (await caches.open(name)).keys()).map((r) => r.url)));
  return kept.flat().filter((url) => url.includes("words-") || url.includes("/shell")).length >= 2;
}"""

SHELL_OF = "async () => {{ await navigator.serviceWorker.ready; return !!(await caches.match('/scan/shell?lang={lang}')); }}"


def unseen() -> str:
    """The link of another shop's hose: no record here, never opened on this phone."""
    spec = AssemblySpec.read({
        "hose": {"standard": "EN 856 4SP", "dash": 16},
        "end_a": {"connection": "flange_code62", "dash": 16, "form": "flange_head", "shape": "elbow_90"},
        "end_b": {"connection": "orfs", "dash": 16, "form": "female_swivel", "shape": "elbow_45"},
        "length_mm": 2400, "clocking_deg": 270,
    })  # fmt: skip
    digits = payload.encode(assess(spec).content_of(spec))
    return f"/T/{tag_number.make()}/{digits}"


def without_network(page: Page, live: Live) -> None:
    page.context.set_offline(True)
    reached = page.evaluate(
        "() => fetch('/find?' + Math.random(), {cache: 'no-store'}).then(() => true, () => false)"
    )
    assert not reached


@pytest.fixture
def phone(live: Live, open_page: OpenPage) -> Page:
    """A phone that has opened one tag page, with a signal."""
    page = open_page()
    page.goto(live.url + path(registered(live)))
    until(page, KEPT)
    return page


def test_a_tag_never_seen_opens_without_a_network(live: Live, phone: Page) -> None:
    without_network(phone, live)
    phone.goto(live.url + unseen())
    expect(phone.locator(".notice").first).to_contain_text(T("offline-tag-only"))
    expect(phone.locator("h1.number")).to_be_visible()
    expect(phone.locator("#line")).to_contain_text("EN 856 4SP -16")
    expect(phone.locator(".plate")).to_contain_text("bar")
    expect(phone.locator("#spec")).to_contain_text("270° counter-clockwise")
    assert phone.locator("#spec svg").count() == 4
    phone.locator(".tabs").get_by_role("link", name=T("scan-fit")).click()
    phone.get_by_role("link", name=T("scan-fit-start")).click()
    expect(phone.locator(".step:visible")).to_have_count(1)
    text = phone.locator("#fit").evaluate("e => e.textContent")
    for wanted in ("lock the machine out", "each M12 screw", "O-ring", "cardboard", "270°"):
        assert wanted in text


def test_the_day_goes_into_the_calendar_without_a_network(live: Live, phone: Page) -> None:
    """The same file as the server's, but for the moment it was made."""
    spec = AssemblySpec.read(TWO_ELBOWS)
    content = assess(spec).content_of(spec, built_on=date(2025, 1, 2))
    number, digits = tag_number.make(), payload.encode(content)
    answer = phone.request.get(f"{live.url}/calendar/{number}/{digits}.ics")
    assert answer.status == 200
    without_network(phone, live)
    phone.goto(f"{live.url}/T/{number}/{digits}")
    expect(phone.get_by_role("link", name=T("fitted-calendar"))).to_be_visible()
    assert not Axe().run(phone).violations_count and not sniffer.errors(phone)
    with phone.expect_download() as saved:
        phone.get_by_role("link", name=T("fitted-calendar")).click()
    assert saved.value.suggested_filename == f"{number}.ics"
    made = saved.value.path().read_bytes().decode()
    stamp = re.compile(r"DTSTAMP:\w+\r\n")
    assert stamp.sub("", made) == stamp.sub("", answer.text())
    assert "DTSTART;VALUE=DATE:20310102\r\n" in made


def test_the_gs1_form_of_a_link_opens_without_a_network(live: Live, phone: Page) -> None:
    without_network(phone, live)
    _, _, number, digits = unseen().split("/")
    phone.goto(f"{live.url}/T/{digits}/8004/9506000{number}")
    expect(phone.locator("#line")).to_contain_text("EN 856 4SP -16")


def test_a_damaged_or_bare_link_is_refused_with_words_without_a_network(live: Live, phone: Page) -> None:
    without_network(phone, live)
    link = unseen()
    for address, id in (
        (link[:-3], "code-damaged"),
        (link.rpartition("/")[0] + "/123456789", "code-not-digits"),
        ("/T/" + link.split("/")[2], "offline-number-alone"),
        ("/T/7K3MQ9XWZR1", "code-number-check"),
        ("/identify/hose?a=npt~3/4~male&b=npt~3/4~male", "offline-identified"),
    ):
        phone.goto(live.url + address)
        assert T.has(id)
        expect(phone.locator("main")).to_contain_text(T(id))
        expect(phone.locator("main")).to_contain_text(T.mend(Message(id)))


def test_the_language_last_seen_is_the_one_without_a_network(live: Live, phone: Page) -> None:
    phone.goto(live.url + path(registered(live)) + "?lang=de")
    until(phone, SHELL_OF.format(lang="de"))
    without_network(phone, live)
    phone.goto(live.url + unseen())
    expect(phone.locator(".plate")).to_contain_text("Betriebsdruck")
    assert phone.locator("html").get_attribute("lang") == "de"


@pytest.mark.parametrize("lang", LANGUAGES)
def test_no_word_is_cut_off_without_a_network(live: Live, open_page: OpenPage, lang: str) -> None:
    """Tabs and captions on a narrow phone hold their words in every language."""
    page = open_page(viewport={"width": 360, "height": 740})
    page.goto(live.url + path(registered(live)) + f"?lang={lang}")
    until(page, SHELL_OF.format(lang=lang))
    without_network(page, live)
    page.goto(live.url + unseen())
    expect(page.locator(".plate")).to_contain_text(Translator(lang)("scan-pressure"))
    cut = """() => [...document.querySelectorAll('.tabs a, dt, h1, h2, h3, .button')]
      .filter((e) => e.offsetParent && e.scrollWidth > e.clientWidth).map((e) => e.textContent)"""
    assert page.evaluate(cut) == []
    assert page.evaluate("() => document.documentElement.scrollWidth <= innerWidth")


def test_units_chosen_with_a_signal_hold_without_one(live: Live, phone: Page) -> None:
    phone.locator(".choose summary").click()
    phone.get_by_role("link", name="psi, in first").click()
    without_network(phone, live)
    phone.goto(live.url + unseen())
    expect(phone.locator("#line")).to_be_visible()
    assert "units-inch" in (phone.locator("html").get_attribute("class") or "")
    boxes = [phone.locator(f".plate .figure .{name}").bounding_box() for name in ("us", "si")]
    assert boxes[0] and boxes[1]
    assert boxes[0]["x"] < boxes[1]["x"]


def test_axe_finds_nothing_wrong_without_a_network(live: Live, phone: Page) -> None:
    until(phone, "async () => !!(await caches.match('/scan/glossary?lang=en'))")
    without_network(phone, live)
    for address in (unseen(), unseen()[:-3], "/find"):
        phone.goto(live.url + address)
        phone.locator("main h1, main h2").first.wait_for()
        found = Axe().run(phone)
        assert not found.violations_count, found.generate_report()
    phone.goto(f"{live.url}/glossary?lang=en#withdrawn")  # the words too, from the foot of each page
    expect(phone.locator("#withdrawn p").first).to_have_text(T("glossary-means-withdrawn"))
    assert not Axe().run(phone).violations_count


def test_an_order_made_offline_arrives_exactly_once(live: Live, phone: Page) -> None:
    without_network(phone, live)
    link = unseen()
    phone.goto(live.url + link + "#order")
    phone.get_by_label(T("scan-field-reference")).fill("from the pit")
    phone.get_by_label(T("scan-field-contact_phone")).fill("+44 1632 960 333")
    phone.get_by_role("button", name=T("scan-order-send")).dblclick()
    expect(phone.locator("#order [data-done]")).to_contain_text(T("scan-order-waiting"))
    expect(phone.locator("#order [data-done]")).to_contain_text(tag_number.format(link.split("/")[2]))
    assert not found(live.store)
    phone.context.set_offline(False)
    phone.reload()
    expect(phone.locator("[data-outbox]")).to_contain_text(T("scan-outbox-sent"))
    phone.reload()
    phone.goto(live.url + "/find")
    orders = found(live.store)
    assert len(orders) == 1
    assert orders[0].spec.hose.standard == "EN 856 4SP"
    assert orders[0].number == link.split("/")[2]


def test_an_order_sent_again_after_a_lost_answer_is_one_order(live: Live, phone: Page) -> None:
    """The shop keeps the order, the answer is lost on the way back, the phone sends it again."""
    assembly = registered(live, TWO_ELBOWS)
    phone.goto(live.url + path(assembly) + "#order")
    lost = []

    def lose(route) -> None:  # type: ignore[no-untyped-def]
        if not lost:
            lost.append(route.fetch().status)
            route.abort()
        else:
            route.continue_()

    phone.context.route("**/order", lose)
    phone.get_by_label(T("scan-field-reference")).fill("bad line")
    phone.get_by_label(T("scan-field-contact_phone")).fill("1")
    phone.get_by_role("button", name=T("scan-order-send")).click()
    expect(phone.locator("#order [data-done]")).to_contain_text(T("scan-order-waiting"))
    assert lost == [201]
    phone.reload()
    expect(phone.locator("[data-outbox]")).to_contain_text(T("scan-outbox-sent"))
    orders = [o for o in live.store.orders(number=assembly.number) if o.customer_reference == "bad line"]
    assert len(orders) == 1


def found(store: Store):  # type: ignore[no-untyped-def]
    return [order for order in store.orders() if order.customer_reference == "from the pit"]


LISTED = """async () => Boolean(await (await caches.open("reader-choice")).match("/scan/held.json"))"""
SEEN = """async () => (await (await caches.open("reader-choice")).keys()).some((r) => r.url.includes("/seen-withdrawn/"))"""
SEEN_OF = (
    """async () => Boolean(await (await caches.open("reader-choice")).match("/seen-withdrawn/{number}"))"""
)
LIST = """await (await (await caches.open("reader-choice")).match("/scan/held.json")).json()"""
DATED = """async (day) => { const kept = await caches.open("reader-choice");
  await kept.put("/scan/held.json", new Response(JSON.stringify({ as_of: day, withdrawn: [], void: [], held: [] }))); }"""
FORGET = """async (at) => { await (await caches.open("reader-choice")).delete(at); return true; }"""


def test_a_withdrawal_seen_is_not_forgotten_without_a_network(live: Live, open_page: OpenPage) -> None:
    """Seen with a signal, then no signal, and no list either: what the phone saw holds."""
    page, made = open_page(), registered(live)
    live.store.withdraw("The crimp cracked", tag=made.number)
    page.goto(live.url + path(made))
    until(page, KEPT)
    until(page, SEEN)
    page.evaluate(FORGET, "/scan/held.json")
    without_network(page, live)
    page.goto(live.url + path(made))
    expect(page.locator("section.withdrawn")).to_contain_text("The crimp cracked")
    assert page.locator(".step").count() == 0
    assert page.locator(".end .gate").count() == 2 and not page.locator(".end li:visible").count()
    expect(page.locator("#fit")).to_contain_text(T("scan-withdrawn-no_guide"))


def test_a_withdrawal_never_opened_is_known_from_the_shops_list(live: Live, open_page: OpenPage) -> None:
    page, held, sound = open_page(), registered(live), registered(live)
    live.store.withdraw("The hose lot failed its burst test", tag=held.number)
    time.sleep(2.1)  # how old the list may be that the server answers with
    page.goto(live.url + path(sound))
    until(page, KEPT)
    until(page, LISTED)
    without_network(page, live)
    page.goto(live.url + path(held))
    expect(page.locator("section.withdrawn h2")).to_have_text(T("scan-withdrawn-title"))
    assert page.locator(".step").count() == 0
    page.goto(f"{live.url}/t/{held.number}")
    expect(page.locator("main")).to_contain_text(T("offline-number-withdrawn"))
    page.goto(live.url + path(sound))
    expect(page.locator(".notice").first).to_contain_text("does not name this hose as withdrawn")
    expect(page.locator(".notice").first).to_contain_text("UTC")
    assert page.locator("section.withdrawn").count() == 0


def test_what_a_proof_test_loaded_too_high_is_known_from_the_shops_list(
    live: Live, open_page: OpenPage
) -> None:
    page, held, sound = open_page(), registered(live), registered(live)
    called = held.assessment.test_pressure_bar
    assert called is not None
    test = ProofTest(pressure_bar=called * 1.5, hold_s=60, medium="water", passed=True, tester="Bela")
    live.store.record_proof_test(held.number, test)
    time.sleep(2.1)  # how old the list may be that the server answers with
    page.goto(live.url + path(sound))
    until(page, KEPT)
    until(page, LISTED)
    assert page.locator("section.held").count() == 0
    without_network(page, live)
    page.goto(live.url + path(held))
    expect(page.locator("section.held h2")).to_have_text(T("scan-held-title"))
    assert page.locator(".step").count() == 0
    page.goto(f"{live.url}/t/{held.number}")
    expect(page.locator("main")).to_contain_text(T("offline-number-held"))


def test_what_was_seen_holds_over_a_list_that_is_older_and_over_a_wrong_clock(
    live: Live, open_page: OpenPage
) -> None:
    """Void seen a moment after the list came was forgotten without a signal; so was a withdrawal seen by a
    phone whose clock was an hour behind, whose list was never fetched again either. And a page that said
    "withdrawn" said below that the shop's list does not name the hose."""
    page, sound, withdrawn, void, high = open_page(), *(registered(live) for _ in range(4))
    page.clock.set_system_time(datetime.now(UTC) - timedelta(hours=1))
    page.goto(live.url + path(sound))
    until(page, KEPT)
    until(page, LISTED)
    live.store.withdraw("The crimp cracked", tag=withdrawn.number)
    live.store.void(void.number, "another hose was picked")
    called = high.assessment.test_pressure_bar
    assert called is not None
    test = ProofTest(pressure_bar=called * 1.5, hold_s=60, medium="water", passed=True, tester="Bela")
    live.store.record_proof_test(high.number, test)
    for bad in (withdrawn, void, high):
        page.goto(live.url + path(bad))
        until(page, SEEN_OF.format(number=tag_number.compact(bad.number)))
    without_network(page, live)
    for bad, said in ((withdrawn, "section.withdrawn"), (void, "section.void"), (high, "section.held")):
        page.goto(live.url + path(bad))
        expect(page.locator(said)).to_be_visible()
        expect(page.locator("main")).to_contain_text(T("offline-barred"))
        expect(page.locator("main")).not_to_contain_text("does not name this hose")
        assert page.locator(".step").count() == 0
    page.context.set_offline(False)
    time.sleep(2.1)  # how old the list may be that the server answers with
    page.evaluate(DATED, (datetime.now(UTC) + timedelta(hours=1)).isoformat())  # as a clock behind sees it
    page.goto(live.url + path(sound))
    until(
        page,
        f"async () => {{ const list = {LIST}; return list.void.length > 0 && list.withdrawn.length > 0; }}",
    )


def test_a_lifted_withdrawal_clears(live: Live, open_page: OpenPage) -> None:
    page, made = open_page(), registered(live)
    withdrawal = live.store.withdraw("A doubt", tag=made.number)
    page.goto(live.url + path(made))
    until(page, KEPT)
    until(page, SEEN)
    until(page, LISTED)  # no list of before is on its way any longer
    live.store.lift(withdrawal.id, "retested")
    time.sleep(2.1)
    page.evaluate(FORGET, "/scan/held.json")  # as if a minute had passed
    page.goto(f"{live.url}/find")  # not the tag itself: the list alone tells
    until(page, LISTED)
    without_network(page, live)
    page.goto(live.url + path(made))
    expect(page.locator(".notice").first).to_contain_text("does not name this hose as withdrawn")
    assert page.locator("section.withdrawn").count() == 0


def test_a_server_that_hangs_does_not_undo_a_withdrawal(live: Live, open_page: OpenPage) -> None:
    page, made = open_page(), registered(live)
    live.store.withdraw("The crimp cracked", tag=made.number)
    page.goto(live.url + path(made))
    until(page, KEPT)
    until(page, SEEN)
    page.context.route("**/t/**", lambda route: None)
    page.context.route("**/T/**", lambda route: None)  # never answered
    page.context.route("**/identify?**", lambda route: None)
    until(page, "async () => !!(await caches.match('/scan/identify?lang=en'))")
    page.evaluate("open('/identify?form=female_swivel&diameter=1+in&tpi=12&seat=37')")
    page.goto(live.url + path(made))
    expect(page.locator("section.withdrawn")).to_contain_text("The crimp cracked")
    expect(page.locator(".notice").first).to_contain_text(T("offline-tag-only"))
    (beside,) = [one for one in page.context.pages if one != page]
    expect(beside.locator("main")).to_contain_text(T("scan-identify-kept"))
    expect(beside.locator(".card").first).to_contain_text("-12 37° flare")


def test_find_has_the_tags_seen_on_this_phone_without_a_network(live: Live, phone: Page) -> None:
    """By the list, and by a typed number alone: with the digits that were seen. An order number says what it needs."""
    made = registered(live)
    phone.goto(f"{live.url}/t/{made.number}")  # typed with a signal: without digits in the address
    expect(phone.locator("h1.number")).to_be_visible()
    phone.goto(f"{live.url}/find")
    expect(phone.locator("[data-seen] a").first).to_have_text(tag_number.format(made.number))
    expect(phone.locator("[data-seen] li").first).to_have_text(re.compile(r" in\), 1250 mm \(49\.21 in\)$"))
    without_network(phone, live)
    phone.goto(f"{live.url}/find")
    expect(phone.locator("[data-seen] a").first).to_be_visible()
    assert not Axe().run(phone).violations_count
    phone.locator("#q").fill(tag_number.format(made.number).lower())
    phone.get_by_role("button", name=T("scan-typed-show")).click()
    expect(phone.locator("#line")).to_contain_text("SAE 100R2")
    phone.goto(f"{live.url}/find?q=r-1234567")
    expect(phone.locator("main")).to_contain_text(T("offline-order"))
    phone.goto(f"{live.url}/find?q={live.url}{unseen()}")
    expect(phone.locator("#line")).to_contain_text("EN 856 4SP -16")
    phone.goto(f"{live.url}/find")
    phone.get_by_role("button", name=T("scan-seen-forget")).click()
    expect(phone.locator("[data-seen]")).to_be_hidden()
