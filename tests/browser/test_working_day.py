"""One working day at the bench with a scanner, from an order by a scanned tag to a certificate.

One browser at the bench and one phone; each part of the day goes on where the last one ended.
"""

from __future__ import annotations

import time

from playwright.sync_api import Dialog, Page, expect

from tagger.i18n import Translator
from tagger.spec import AssemblySpec
from tagger.store import Assembly, CrimpValue, Kind, Scope, Store
from tagger.trade import assess
from tests.browser.at_the_bench import SMALL_DESK, Keys, OpenPage, scan, signed_in
from tests.browser.conftest import Live, until
from tests.browser.test_scan_offline import FORGET, KEPT, LISTED, without_network
from tests.browser.test_scan_tag import path

T = Translator()
END = {"connection": "sae_37_flare", "dash": 12, "form": "female_swivel"}


def test_a_whole_working_day_with_a_scanner(live: Live, open_page: OpenPage) -> None:
    store = live.store
    store.keep_crimp(CrimpValue("EN 853 2SN", 12, "two-wire shell", 33.4, 0.1, 0.2, "invented for a test"))
    old = _on_its_machine(store)
    phone, bench = open_page(), signed_in(live, open_page(viewport=SMALL_DESK))
    order = _ordered_longer_by_phone(live, phone, old)
    new = _built_with_the_change(live, bench, order)
    _printed(live, bench, new)
    _crimped_and_tested(live, bench, new)
    _certified(live, bench, f"/bench/tag/{new}/certificate.pdf")
    _fitted(live, bench, phone, old, new)
    quick = _two_straight_ends_in_16_keys(live, bench)
    batch = _a_batch_of_twelve(live, bench)
    _corrected_and_held_by_its_old_lot(live, bench, batch[0])
    _void(live, bench, phone, quick)


def _on_its_machine(store: Store) -> Assembly:
    """A hose of last year, fitted on a customer's machine."""
    spec = AssemblySpec.read(
        {"hose": {"standard": "EN 853 2SN", "dash": 12, "lot": "R-100"}, "end_a": END, "end_b": END, "length_mm": 1250}
    )  # fmt: skip
    place = {"customer": "Quarry North", "machine": "Loader 4", "position": "boom, rod side"}
    [made] = store.register(spec, assess(spec), **place)
    store.record(made.number, Kind.FITTED)
    return made


def _ordered_longer_by_phone(live: Live, phone: Page, old: Assembly) -> str:
    """The mechanic scans the tag on the machine and asks for a longer one."""
    phone.goto(live.url + path(old) + "#order")
    phone.get_by_text(T("scan-order-changes"), exact=True).click()
    phone.fill("[name=change_length]", "100 mm longer")
    phone.get_by_label(T("scan-field-contact_phone")).fill("+44 1632 960 222")
    phone.get_by_role("button", name=T("scan-order-send")).click()
    expect(phone.get_by_role("heading", name=T("scan-ordered-received"))).to_be_visible()
    [order] = live.store.orders(number=old.number)
    assert order.changes is not None and "100 mm longer" in order.changes
    return order.reference


def _built_with_the_change(live: Live, bench: Page, reference: str) -> str:
    """The order's number into the field at the top; at the old length it is not built."""
    bench.focus("#go")
    scan(bench, reference)
    bench.wait_for_url(f"**/bench/orders/{reference}")
    bench.locator(f"a[href='/bench/build?order={reference}']").click()
    expect(bench.locator("[name=length_mm]")).to_have_value("1250")
    expect(bench.locator("[name='hose.lot']")).to_have_value("")
    before = live.store.count()
    bench.keyboard.press("Control+Enter")
    expect(bench.locator("#problems")).to_contain_text("100 mm longer")
    assert live.store.count() == before
    bench.fill("[name=length_mm]", "1350")
    bench.focus("[name='hose.lot']")
    scan(bench, "R-200")
    expect(bench.locator("[name='hose.lot']")).to_have_value("R-200")
    bench.keyboard.press("Control+Enter")
    bench.wait_for_url("**/bench/run/*")
    [number] = live.store.order(reference).built
    made = live.store.assembly(number)
    assert (made.spec.length_mm, made.spec.hose.lot, made.customer) == (1350, "R-200", "Quarry North")
    return number


def _printed(live: Live, bench: Page, number: str) -> None:
    """Enter on the focused button; the tab knows it."""
    expect(bench.get_by_role("button", name="Print (PDF)")).to_be_focused()
    with bench.context.expect_page():
        bench.keyboard.press("Enter")
    expect(bench.locator("#made")).not_to_contain_text("not printed yet")
    assert live.store.times_printed(number) == 1


def _crimped_and_tested(live: Live, bench: Page, number: str) -> None:
    """Its tag is scanned; psi typed as bar is a slip, Enter does nothing, the key is deliberate."""
    bench.focus("#go")
    scan(bench, number)
    bench.wait_for_url(f"**/bench/tag/{number}")
    bench.fill("[name=crimp_a]", "33.4")
    bench.fill("[name=crimp_b]", "33.5")
    bench.locator("form[action$='/crimp'] button").click()
    expect(bench.locator(".each.good")).to_have_count(2)
    pressure = bench.locator("[name=pressure_bar]")
    pressure.fill("6000")
    expect(bench.locator("#proof-read")).to_contain_text("Above the minimum burst pressure")
    pressure.press("Enter")
    bench.once("dialog", lambda dialog: dialog.accept())  # in a hurry: yes
    bench.get_by_role("button", name="Passed", exact=True).click()
    expect(bench.locator("#problems")).to_contain_text("above the minimum burst pressure")
    assert live.store.each([number], Kind.PROOF_TESTED) == []
    pressure.fill("6000 psi")
    expect(bench.locator("#proof-read")).to_contain_text("Enough for the proof test.")
    bench.get_by_role("button", name="Passed", exact=True).click()
    expect(bench.get_by_text("Proof test passed").first).to_be_visible()
    assert live.store.proof_states([number]) == {number: "passed"}


def _certified(live: Live, bench: Page, address: str) -> None:
    """The link on the page leads to the paper."""
    assert bench.locator(f"a[href='{address}']").count() == 1
    answer = bench.request.get(live.url + address)
    assert answer.status == 200 and answer.body().startswith(b"%PDF")


def _fitted(live: Live, bench: Page, phone: Page, old: Assembly, new: str) -> None:
    """Both pages say that a replacement is built until somebody says that it is installed."""
    bench.goto(f"{live.url}/bench/tag/{old.number}")
    expect(bench.get_by_text("A replacement is built.")).to_be_visible()
    phone.goto(live.url + path(old))
    expect(phone.locator("main")).to_contain_text(T("scan-notice-replacement-title"))
    assert [one.number for one in live.store.on_machine("Quarry North", "Loader 4")] == [old.number]
    bench.goto(f"{live.url}/bench/tag/{new}")
    expect(bench.get_by_text("This replacement is built.")).to_be_visible()
    bench.select_option("[name=kind]", "fitted")
    bench.locator("form[action$='/event'] button").click()
    expect(bench.get_by_text("This replacement is built.")).to_have_count(0)
    assert [one.number for one in live.store.on_machine("Quarry North", "Loader 4")] == [new]
    assert live.store.assembly(old.number).replaced_by == new


def _two_straight_ends_in_16_keys(live: Live, bench: Page) -> str:
    """A new hose from the first field on, no mouse."""
    bench.goto(f"{live.url}/bench/build")
    keys = Keys(bench)
    expect(bench.locator("[name='hose.standard']")).to_be_focused()
    for text in ("2SN", "8", "3", "f"):
        keys.type(text)
        keys.press("Enter")
    expect(bench.locator("[name='end_b.same']")).to_be_focused()
    keys.press("Space")
    expect(bench.locator("[name=length_mm]")).to_be_focused()
    keys.type("900")
    expect(bench.get_by_text("Limited by")).to_be_visible()
    keys.press("Control+Enter")
    bench.wait_for_url("**/bench/run/*")
    [made] = live.store.find(limit=1).assemblies
    assert (made.spec.hose.standard, made.spec.hose.dash, made.spec.length_mm) == ("EN 853 2SN", 8, 900)
    print(f"{keys.count} keystrokes with those of the length")
    assert keys.count <= 16
    return made.number


def _a_batch_of_twelve(live: Live, bench: Page) -> list[str]:
    """Twelve alike: one traveller, one proof test, one certificate."""
    bench.goto(f"{live.url}/bench/build")
    fields = {
        "hose.standard": "2SN",
        "hose.dash": "12",
        "hose.lot": "R-300",
        "length_mm": "700",
        "count": "12",
    }
    for end in ("a", "b"):
        bench.select_option(f"[name='end_{end}.connection']", "sae_37_flare")
        bench.select_option(f"[name='end_{end}.form']", "female_swivel")
    for name, value in fields.items():
        bench.fill(f"[name='{name}']", value)
    bench.keyboard.press("Control+Enter")
    bench.wait_for_url("**/bench/run/*")
    run = live.store.run(live.store.find(limit=1).assemblies[0].run)
    numbers = [one.number for one in run]
    assert len(numbers) == 12
    sheet = bench.request.get(f"{live.url}/bench/run/{run[0].run}/traveller.pdf")
    assert sheet.body().startswith(b"%PDF")
    bench.get_by_role("link", name="Crimps and proof test").click()
    bench.fill("[name=pressure_bar]", "6000 psi")
    expect(bench.locator("#proof-read")).to_contain_text("Enough for the proof test.")
    bench.get_by_role("button", name="Selected: passed").click()
    expect(bench.get_by_text("Proof test passed")).to_have_count(12)
    _certified(live, bench, f"/bench/tag/{numbers[-1]}/batch.pdf")
    return numbers


def _corrected_and_held_by_its_old_lot(live: Live, bench: Page, number: str) -> None:
    """The wrong reel was written down: a withdrawal of the old lot and of the new one both find the hose."""
    bench.goto(f"{live.url}/bench/tag/{number}")
    bench.get_by_text("Correct the record or make it void").click()
    bench.locator("form[action$='/correct'] [name='hose.lot']").fill("R-301")
    bench.fill("[name=correct_reason]", "read from the wrong reel")
    bench.get_by_role("button", name="Save correction").click()
    expect(bench.locator("#hist + div")).to_contain_text("R-300")
    for lot in ("R-300", "R-301"):
        assert number in live.store.affected(Scope.HOSE_LOT, lot)
    assert live.store.assembly(number).spec.hose.lot == "R-301"


def _void(live: Live, bench: Page, phone: Page, number: str) -> None:
    """Entered twice: void. Its page says so, and so does a phone that has never seen it and has no signal."""
    bench.goto(f"{live.url}/bench/tag/{number}")
    bench.get_by_text("Correct the record or make it void").click()
    bench.fill("[name=void_reason]", "registered twice")
    asked: list[str] = []

    def answer(dialog: Dialog) -> None:
        asked.append(dialog.message)
        dialog.accept()

    bench.once("dialog", answer)
    bench.get_by_role("button", name="Make void").click()
    expect(bench.get_by_text("registered twice").first).to_be_visible()
    made = live.store.assembly(number)
    assert made.void is not None and len(asked) == 1
    time.sleep(2.1)  # how old the list may be that the server answers with
    until(phone, KEPT)
    phone.evaluate(FORGET, "/scan/held.json")  # as if a minute had passed
    phone.goto(f"{live.url}/find")
    until(phone, LISTED)
    without_network(phone, live)
    phone.goto(live.url + path(made))
    expect(phone.locator("main")).to_contain_text(T("scan-void-title"))
    assert phone.locator(".step").count() == 0
    phone.goto(f"{live.url}/t/{made.number}")
    expect(phone.locator("main")).to_contain_text(T("offline-number-void"))
    bench.goto(live.url + path(made))
    expect(bench.locator("main")).to_contain_text(T("scan-void-title"))
