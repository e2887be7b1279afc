"""Keys, clicks and scans: how few of them it takes to a printed tag."""

from __future__ import annotations

import pytest
from playwright.sync_api import Page, Route, expect

from tagger.spec import Connection
from tests.browser.at_the_bench import Keys, bench, build_one, endpoint, scan, typed
from tests.browser.conftest import Live
from tests.printing.ipp.endpoint import Endpoint

__all__ = ["bench", "endpoint"]


@pytest.mark.parametrize("place", ["PDF", "printer"])
def test_from_a_blank_page_to_a_printed_tag_by_keyboard_in_40_keystrokes(
    bench: Page, live: Live, endpoint: Endpoint, place: str
) -> None:
    printer = None
    if place == "printer":  # the second tag of the day: the first one was printed there with a click
        known = live.store.printers()
        printer = known[0] if known else live.store.add_printer("Bench 1", endpoint.uri, 300)
        build_one(live, bench)
        bench.get_by_role("button", name=f"Print on {printer.name}").click()
        bench.wait_for_url("**/bench/prints/*")
        bench.goto(f"{live.url}/bench/build")
    keys = Keys(bench)
    before = live.store.count()
    expect(bench.locator("[name='hose.standard']")).to_be_focused()
    keys.type("2SN")
    keys.press("Enter")
    keys.type("8")
    keys.press("Enter")  # on to end A: edition and lots are not needed
    keys.type("O-ring f")  # face seal
    keys.press("Enter")
    keys.type("f")  # female swivel; the size is the hose's
    keys.press("Enter", "Tab")  # the ends are not alike
    keys.type("O-ring f")
    keys.press("Enter")
    keys.type("f")
    keys.press("Tab", "Tab")
    keys.type("9")  # 90 degree elbow
    keys.press("Tab")
    keys.measure("56")
    keys.press("Enter")
    keys.measure("1250")
    expect(bench.get_by_text("Limited by")).to_be_visible()
    keys.press("Control+Enter")
    bench.wait_for_url("**/bench/run/*")
    expect(
        bench.get_by_role("button", name=f"Print {f'on {printer.name}' if printer else '(PDF)'}")
    ).to_be_focused()
    if printer:
        keys.press("Enter")
        bench.wait_for_url("**/bench/prints/*")
        expect(bench.get_by_role("status")).to_contain_text("Bench 1 printed it")
        expect(bench.get_by_role("link", name="New build")).to_be_focused()
    else:
        with bench.context.expect_page():
            keys.press("Enter")
    [made] = live.store.find(limit=1).assemblies
    assert live.store.count() == before + 1
    assert (made.spec.hose.standard, made.spec.hose.dash, made.spec.length_mm) == ("EN 853 2SN", 8, 1250)
    assert made.spec.end_a.connection is made.spec.end_b.connection is Connection.ORFS
    assert (made.spec.end_a.shape, made.spec.end_b.shape, made.spec.end_b.drop_mm) == (
        "straight",
        "elbow_90",
        56,
    )
    assert live.store.times_printed(made.number) == 1
    print(f"{keys.count} keystrokes plus the measurements")
    assert keys.count <= 40


def test_two_straight_ends_from_the_first_field_in_16_keystrokes(bench: Page, live: Live) -> None:
    keys, before = Keys(bench), live.store.count()
    expect(bench.locator("[name='hose.standard']")).to_be_focused()
    keys.type("R2")
    keys.press("Enter")
    keys.type("8")
    keys.press("Enter")
    keys.type("3")  # the list's first connection with a 3: the 37 degree flare
    keys.press("Enter")
    keys.type("f")
    keys.press("Enter")
    expect(bench.locator("[name='end_b.same']")).to_be_focused()
    keys.press("Space")
    expect(bench.locator("[name=length_mm]")).to_be_focused()
    keys.type("1250")
    expect(bench.get_by_text("Limited by")).to_be_visible()
    keys.press("Control+Enter")
    bench.wait_for_url("**/bench/run/*")
    [made] = live.store.find(limit=1).assemblies
    assert live.store.count() == before + 1
    assert (made.spec.hose.standard, made.spec.hose.dash, made.spec.length_mm) == ("SAE 100R2", 8, 1250)
    for end in (made.spec.end_a, made.spec.end_b):
        assert (end.connection, end.dash, end.form) == (Connection.SAE_37_FLARE, 8, "female_swivel")
    print(f"{keys.count} keystrokes with those of the length")
    assert keys.count <= 16


_TICKED = """() => {
  document.querySelector("[name='end_b.same']").click();
  return document.activeElement.name;
}"""


def test_the_tick_for_a_like_end_goes_on_to_the_length_before_anything_else_can_be_typed(bench: Page) -> None:
    assert bench.evaluate(_TICKED) == "length_mm"  # a moment later, a hand may be in another field
    bench.reload()
    bench.locator("label:has([name='end_b.same'])").click(position={"x": 60, "y": 10})
    expect(bench.locator("[name='end_b.same']")).to_be_checked()
    expect(bench.locator("[name=length_mm]")).to_be_focused()


_KEYS_OF_WHICH_THE_FIRST_LIES_APART = """async (text) => {
  const field = document.querySelector("[name='hose.standard']");
  const press = (key) => field.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true }));
  for (const [place, key] of [...text].entries()) {
    press(key);
    field.value += key;
    if (!place) await new Promise((done) => setTimeout(done, 400));
  }
  press("Enter");
}"""


def test_a_repeat_of_a_scanned_tag_takes_the_scan_and_two_keys(bench: Page, live: Live) -> None:
    number = build_one(live, bench)
    before = live.store.count()
    bench.goto(f"{live.url}/bench/build")
    expect(bench.locator("[name='hose.standard']")).to_be_focused()
    scan(bench, number)
    expect(bench.locator("[name=length_mm]")).to_have_value("1250")
    keys = Keys(bench)
    keys.press("Control+Enter")
    bench.wait_for_url("**/bench/run/*")
    assert (live.store.count(), keys.count) == (before + 1, 2)
    bench.goto(f"{live.url}/bench/build")  # a slow scanner, or a hand that copies the number
    expect(bench.locator("[name='hose.standard']")).to_be_focused()
    typed(bench, number, apart_ms=70)
    bench.keyboard.press("Enter")
    expect(bench.locator("[name=length_mm]")).to_have_value("1250")
    expect(bench.locator("[name='hose.standard']")).not_to_have_value(number)
    bench.goto(f"{live.url}/bench/build")  # the first key opens the field's list, and the others wait for it
    bench.evaluate(_KEYS_OF_WHICH_THE_FIRST_LIES_APART, "H-2310-AB")
    expect(bench.locator("#scanned")).to_contain_text("H-2310-AB: first use of this lot")
    assert live.store.find(limit=1).assemblies[0].spec == live.store.assembly(number).spec


def test_from_an_order_request_to_new_tags_in_five_clicks(bench: Page, live: Live) -> None:
    old = build_one(live, bench, **{"machine": "Loader 4"})
    order = live.store.request_order(number=old, quantity=2, contact={"phone": "1"}, key=old)
    clicks = 0

    def click(name: str, role: str = "link") -> None:
        nonlocal clicks
        bench.get_by_role(role, name=name).first.click()  # type: ignore[arg-type]
        clicks += 1

    click("Orders")
    bench.get_by_role("row", name=order.reference).get_by_role("link", name="Build").click()
    clicks += 1
    click("Register and print", "button")
    with bench.context.expect_page():
        click("Print (PDF)", "button")
    built = live.store.order(order.reference).built
    assert len(built) == 2
    assert [live.store.assembly(n).replaces for n in built] == [old, old]
    assert all(live.store.times_printed(n) == 1 for n in built)
    print(f"{clicks} clicks")
    assert clicks <= 5


def test_a_scan_into_any_field_does_the_right_thing(bench: Page, live: Live) -> None:
    number = build_one(live, bench, **{"hose.lot": "H-77001", "end_a.lot": "F-88001", "customer": "Quarry"})
    before = live.store.count()

    bench.goto(f"{live.url}/bench/build")
    bench.focus("[name=customer]")
    scan(bench, "H-77001")
    expect(bench.locator("#scanned")).to_contain_text("Hose lot H-77001")
    expect(bench.locator("[name='hose.standard']")).to_have_value("SAE 100R2")
    expect(bench.locator("[name='hose.lot']")).to_have_value("H-77001")
    expect(bench.locator("[name=customer]")).to_have_value("")

    bench.focus("[name='end_b.lot']")
    scan(bench, "F-88001")
    expect(bench.locator("[name='end_b.lot']")).to_have_value("F-88001")

    bench.focus("[name=note]") if bench.locator("[name=note]").is_visible() else bench.focus("[name=machine]")
    made = live.store.assembly(number)
    scan(bench, f"{live.url}/T/{number}/{made.digits}".upper())
    expect(bench.locator("[name=length_mm]")).to_have_value("1250")
    expect(bench.locator("[name=customer]")).to_have_value("Quarry")
    assert live.store.count() == before, "a scan never registers"

    bench.focus("#go")
    scan(bench, number)
    bench.wait_for_url(f"**/bench/tag/{number}")


def test_a_scan_before_the_last_one_is_answered_leaves_nothing_of_it_in_the_field(
    bench: Page, live: Live
) -> None:
    build_one(live, bench, **{"hose.lot": "H-77003", "end_a.lot": "F-88003"})
    bench.goto(f"{live.url}/bench/build")
    slow: list[Route] = []
    bench.route("**/bench/scan?text=H-77003", lambda route: slow.append(route))

    def answered() -> None:
        while not slow:
            bench.wait_for_timeout(20)
        slow.pop().continue_()

    bench.focus("[name=customer]")
    scan(bench, "H-77003")
    scan(bench, "F-88003")
    answered()
    expect(bench.locator("[name='end_a.lot']")).to_have_value("F-88003")
    expect(bench.locator("[name='hose.lot']")).to_have_value("H-77003")
    expect(bench.locator("[name=customer]")).to_have_value("")
    bench.focus("[name='hose.lot']")  # the wrong reel, and then the right one
    scan(bench, "H-77003")
    scan(bench, "MB-1111")
    answered()
    expect(bench.locator("#scanned")).to_contain_text("MB-1111")
    expect(bench.locator("[name='hose.lot']")).to_have_value("MB-1111")
    bench.focus("[name='end_b.lot']")
    scan(bench, "MB-2222")
    expect(bench.locator("#scanned")).to_contain_text("MB-2222")
    scan(bench, "MB-3333")
    expect(bench.locator("#scanned")).to_contain_text("MB-3333")
    expect(bench.locator("[name='end_b.lot']")).to_have_value("MB-3333")


def test_a_scan_over_a_list_chooses_nothing_in_it(bench: Page, live: Live) -> None:
    bench.select_option("[name='end_b.connection']", "orfs")
    bench.select_option("[name='end_b.form']", "female_swivel")
    bench.focus("[name='end_b.connection']")
    scan(bench, "MB-445566")
    expect(bench.locator("[name='hose.lot']")).to_have_value("MB-445566")
    expect(bench.locator("[name='end_b.connection']")).to_have_value("orfs")
    expect(bench.locator("[name='end_b.form']")).to_have_value("female_swivel")


def test_a_digit_chooses_a_picture_and_what_a_scanner_types_chooses_none(bench: Page, live: Live) -> None:
    bench.goto(f"{live.url}/bench/identify/look")
    choices = bench.locator("[aria-labelledby=question] a")
    first, unsure = (choices.nth(place).get_attribute("href") for place in (0, -1))
    bench.evaluate(  # without a pause, as a scanner does; then the pause after which a key is a person's again
        """async () => {
          for (const key of "1012") document.body.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true }));
          await new Promise((over) => setTimeout(over, 300));
        }"""
    )
    assert bench.url == f"{live.url}/bench/identify/look"
    bench.keyboard.press("1")
    bench.wait_for_url(f"**{first}")
    bench.goto(f"{live.url}/bench/identify/look")
    bench.keyboard.press("0")
    bench.wait_for_url(f"**{unsure}")
