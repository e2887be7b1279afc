"""The bench in a real browser: keyboard alone, few clicks, scans, and nothing that axe objects to."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Dialog, Page, Route, expect

from api.web.identity import hash_password
from tagger.code import number as tag_number
from tagger.i18n import LANGUAGES, SOURCE
from tagger.spec import Connection
from tagger.store import CrimpValue, Kind, PrintState, ProofTest, Role
from tests.browser.conftest import Live, until
from tests.browser.prints import jobs_in_each_state
from tests.printing.ipp.endpoint import Endpoint, free_port, serving
from tests.volume import volume

NAME, PASSWORD = "Anna", "correct horse 17"
DESK, PHONE = {"width": 1280, "height": 800}, {"width": 390, "height": 844}
SMALL_DESK = {"width": 1366, "height": 768}
PICTURES = os.environ.get("TAGGER_TEST_PICTURES")
LIST = b"""hose,dash,end_a.connection,end_a.dash,end_a.form,end_b.connection,end_b.dash,end_b.form,OAL,colour
R2,12,sae_37_flare,12,female_swivel,sae_37_flare,12,female_swivel,1250,red
R2,12,sae_37_flare,7,female_swivel,sae_37_flare,12,female_swivel,long,red
"""
OpenPage = Callable[..., Page]


@pytest.fixture
def bench(live: Live, open_page: OpenPage) -> Page:
    """A page of the bench, signed in as the manager."""
    return _signed_in(live, open_page(viewport=DESK))


def _signed_in(live: Live, page: Page) -> Page:
    if live.store.person(NAME) is None:
        live.store.add_person(NAME, hash_password(PASSWORD), Role.MANAGER)
    page.goto(f"{live.url}/bench")
    page.fill("[name=name]", NAME)
    page.fill("[name=password]", PASSWORD)
    page.keyboard.press("Enter")
    page.wait_for_url("**/bench/build")
    return page


@pytest.fixture(scope="module")
def endpoint(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Endpoint]:
    """A printer in the network."""
    with serving(tmp_path_factory.mktemp("printer") / "spool", "application/pdf,image/pwg-raster") as printer:
        yield printer


class Keys:
    """Presses keys and counts them; a chord counts each of its keys."""

    def __init__(self, page: Page) -> None:
        self.page, self.count = page, 0

    def press(self, *keys: str) -> None:
        for key in keys:
            self.page.keyboard.press(key)
            self.count += len(key.split("+"))

    def type(self, text: str) -> None:
        self.page.keyboard.type(text, delay=120)  # as hands type; faster would be a scanner
        self.count += len(text)

    def measure(self, text: str) -> None:
        """What the tape or the gauge says: not counted."""
        self.page.keyboard.type(text, delay=120)


@pytest.mark.parametrize("place", ["PDF", "printer"])
def test_from_a_blank_page_to_a_printed_tag_by_keyboard_in_40_keystrokes(
    bench: Page, live: Live, endpoint: Endpoint, place: str
) -> None:
    printer = None
    if place == "printer":  # the second tag of the day: the first one was printed there with a click
        known = live.store.printers()
        printer = known[0] if known else live.store.add_printer("Bench 1", endpoint.uri, 300)
        _build_one(live, bench)
        bench.get_by_role("button", name=f"Print on {printer.name}").click()
        bench.wait_for_url("**/bench/prints/*")
        bench.goto(f"{live.url}/bench/build")
    keys = Keys(bench)
    before = live.store.count()
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


def test_a_repeat_of_a_scanned_tag_takes_the_scan_and_two_keys(bench: Page, live: Live) -> None:
    number = _build_one(live, bench)
    before = live.store.count()
    bench.goto(f"{live.url}/bench/build")
    _scan(bench, number)
    expect(bench.locator("[name=length_mm]")).to_have_value("1250")
    keys = Keys(bench)
    keys.press("Control+Enter")
    bench.wait_for_url("**/bench/run/*")
    assert (live.store.count(), keys.count) == (before + 1, 2)
    assert live.store.find(limit=1).assemblies[0].spec == live.store.assembly(number).spec


def test_nothing_is_chosen_beforehand_and_what_is_missing_is_told_in_one_look(
    bench: Page, live: Live
) -> None:
    before = live.store.count()
    for end in ("end_a", "end_b"):
        for part in ("connection", "form", "size"):
            expect(bench.locator(f"[name='{end}.{part}']")).to_have_value("")
    expect(bench.locator("[name='end_b.same']")).not_to_be_checked()
    bench.keyboard.press("Control+Enter")
    links = bench.get_by_role("alert").get_by_role("link")
    expect(links).to_have_text([
        "Hose standard (from lay line)", "Dash size", "End A, Connection", "End A, End type", "End B, Connection",
        "End B, End type", "Overall length",
    ])  # fmt: skip
    links.nth(4).click()
    expect(bench.locator("[name='end_b.connection']")).to_be_focused()
    assert live.store.count() == before


def test_a_scan_over_a_list_chooses_nothing_in_it(bench: Page, live: Live) -> None:
    bench.select_option("[name='end_b.connection']", "orfs")
    bench.select_option("[name='end_b.form']", "female_swivel")
    bench.focus("[name='end_b.connection']")
    _scan(bench, "MB-445566")
    expect(bench.locator("[name='hose.lot']")).to_have_value("MB-445566")
    expect(bench.locator("[name='end_b.connection']")).to_have_value("orfs")
    expect(bench.locator("[name='end_b.form']")).to_have_value("female_swivel")


def _two_swivels(page: Page) -> None:
    page.select_option("[name='end_a.connection']", "sae_37_flare")
    page.select_option("[name='end_a.form']", "female_swivel")
    page.check("[name='end_b.same']")


def _build_one(live: Live, page: Page, **changes: str) -> str:
    page.goto(f"{live.url}/bench/build")
    _two_swivels(page)
    for name, value in {"hose.standard": "R2", "hose.dash": "12", "length_mm": "1250", **changes}.items():
        page.fill(f"[name='{name}']", value)
    page.keyboard.press("Control+Enter")
    page.wait_for_url("**/bench/run/*")
    return live.store.find(limit=1).assemblies[0].number


def test_from_an_order_request_to_new_tags_in_five_clicks(bench: Page, live: Live) -> None:
    old = _build_one(live, bench, **{"machine": "Loader 4"})
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


def test_a_printer_is_added_by_keyboard_and_checked(bench: Page, live: Live, endpoint: Endpoint) -> None:
    bench.goto(f"{live.url}/bench/shop")
    bench.focus("[name=uri]")
    bench.keyboard.type(f"ipp://localhost:{free_port()}/ipp/print")
    bench.focus("form[action='/bench/shop/printers'] [name=name]")
    bench.keyboard.type("Counter")
    bench.keyboard.press("Enter")
    expect(bench.get_by_role("alert")).to_contain_text("cannot be reached (Connection refused)")
    expect(bench.locator("form[action='/bench/shop/printers'] [name=name]")).to_have_value("Counter")
    bench.fill("[name=uri]", endpoint.uri)
    bench.keyboard.press("Enter")
    expect(bench.get_by_role("heading", level=1)).to_have_text("Printer Counter")
    expect(bench.get_by_text("PWG Raster, PDF")).to_be_visible()
    bench.once("dialog", lambda dialog: dialog.accept())
    bench.get_by_role("button", name="Remove").click()
    bench.wait_for_url("**/bench/shop?note=saved")
    assert "Counter" not in [p.name for p in live.store.printers()]


def test_a_job_that_was_not_taken_is_told_at_once_and_sent_again(
    bench: Page, live: Live, endpoint: Endpoint
) -> None:
    off = live.store.add_printer("Off", f"ipp://localhost:{free_port()}/ipp/print", 300)
    number = _build_one(live, bench)
    bench.get_by_role("button", name="Print on Off").click()
    expect(bench.get_by_role("status")).to_contain_text("Connection refused")
    bench.reload()
    expect(bench.get_by_role("link", name="Print jobs 1")).to_be_visible()
    assert live.store.times_printed(number) == 0
    live.store.retire_printer(off.id)
    live.store.add_printer("Off", endpoint.uri, 300)
    bench.get_by_role("button", name="Send again").click()
    expect(bench.get_by_role("status")).to_contain_text("Off printed it")
    live.store.retire_printer(off.id)
    assert live.store.times_printed(number) == 1


def test_the_tab_knows_at_once_what_was_printed_and_asks_before_it_prints_again(
    bench: Page, live: Live
) -> None:
    number = _build_one(live, bench)
    expect(bench.locator("#made")).to_contain_text("not printed yet")
    with bench.context.expect_page():
        bench.get_by_role("button", name="Print (PDF)").click()
    expect(bench.locator("#made")).not_to_contain_text("not printed yet")
    asked: list[str] = []

    def answer(dialog: Dialog) -> None:
        asked.append(dialog.message)
        dialog.dismiss() if len(asked) == 1 else dialog.accept()

    bench.on("dialog", answer)
    again = bench.get_by_role("button", name="Reprint (PDF)")
    again.click()
    assert asked == ["This tag has already been printed or sent to a printer. Print it again?"]
    assert live.store.times_printed(number) == 1
    with bench.context.expect_page() as opened:
        again.click()
    opened.value.wait_for_load_state()
    until(bench, "() => document.querySelector('#print-reason select') !== null")
    assert (len(asked), live.store.times_printed(number)) == (2, 2)


def test_a_failed_job_leads_to_sending_it_again(bench: Page, live: Live, endpoint: Endpoint) -> None:
    off = live.store.add_printer("Away", f"ipp://localhost:{free_port()}/ipp/print", 300)
    number = _build_one(live, bench)
    bench.get_by_role("button", name="Print on Away").click()
    expect(bench.get_by_role("status")).to_contain_text("Connection refused")
    bench.get_by_role("link", name="Back to").click()
    expect(bench.locator("#jobs")).to_contain_text("Connection refused")
    live.store.retire_printer(off.id)
    back = live.store.add_printer("Away", endpoint.uri, 300)
    bench.locator("#jobs").get_by_role("button", name="Send again").click()
    expect(bench.get_by_role("status")).to_contain_text("Away printed it")
    live.store.retire_printer(back.id)
    assert live.store.times_printed(number) == 1


TABLET = {"width": 1024, "height": 768}
_SMALL = """() => [...document.querySelectorAll('a, button, input, select, textarea, summary')].filter((one) => {
  const target = one.matches('[type=checkbox], [type=radio]') ? one.closest('label') ?? one : one;
  const box = target.getBoundingClientRect();
  return box.width && !one.closest('.skip') && (box.height < 44 || box.width < 44);
}).map((one) => one.outerHTML.slice(0, 120))"""
"""The targets on the page that a gloved finger misses."""


@pytest.mark.parametrize("language", ["en", "de"])
@pytest.mark.parametrize("size", [SMALL_DESK, TABLET], ids=["desk", "tablet"])
def test_register_is_in_view_the_head_is_low_and_find_is_focused(
    live: Live, open_page: OpenPage, size: dict[str, int], language: str
) -> None:
    page = open_page(viewport=size, has_touch=True, is_mobile=True)
    _signed_in(live, page)
    number = _build_one(live, page)
    page.goto(f"{live.url}/bench/build?lang={language}")
    expect(page.locator("#register")).to_be_in_viewport(ratio=1)
    head = page.locator("header.top").bounding_box()
    assert head is not None and head["height"] <= 120
    small = {"build": page.evaluate(_SMALL)}
    for name, address in {"find": "/bench/find?number=" + number, "record": f"/bench/tag/{number}"}.items():
        page.goto(live.url + address)
        small[name] = page.evaluate(_SMALL)
        if name == "find":
            expect(page.locator("[name=number]")).to_be_focused()
    assert not any(small.values()), small
    assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")


def _scan(page: Page, text: str) -> None:
    """A scanner: a key every few milliseconds, and Enter."""
    page.keyboard.type(text, delay=3)
    page.keyboard.press("Enter")


def test_a_scan_into_any_field_does_the_right_thing(bench: Page, live: Live) -> None:
    number = _build_one(live, bench, **{"hose.lot": "H-77001", "end_a.lot": "F-88001", "customer": "Quarry"})
    before = live.store.count()

    bench.goto(f"{live.url}/bench/build")
    bench.focus("[name=customer]")
    _scan(bench, "H-77001")
    expect(bench.locator("#scanned")).to_contain_text("Hose lot H-77001")
    expect(bench.locator("[name='hose.standard']")).to_have_value("SAE 100R2")
    expect(bench.locator("[name='hose.lot']")).to_have_value("H-77001")
    expect(bench.locator("[name=customer]")).to_have_value("")

    bench.focus("[name='end_b.lot']")
    _scan(bench, "F-88001")
    expect(bench.locator("[name='end_b.lot']")).to_have_value("F-88001")

    bench.focus("[name=note]") if bench.locator("[name=note]").is_visible() else bench.focus("[name=machine]")
    made = live.store.assembly(number)
    _scan(bench, f"{live.url}/T/{number}/{made.digits}".upper())
    expect(bench.locator("[name=length_mm]")).to_have_value("1250")
    expect(bench.locator("[name=customer]")).to_have_value("Quarry")
    assert live.store.count() == before, "a scan never registers"

    bench.focus("#go")
    _scan(bench, number)
    bench.wait_for_url(f"**/bench/tag/{number}")


def test_a_wrong_reel_stops_the_builder_until_a_reason_is_chosen(bench: Page, live: Live) -> None:
    _build_one(live, bench, **{"hose.lot": "H-77002"})
    before = live.store.count()
    live.store.withdraw("cover blisters", hose_lot="H-77003")

    bench.goto(f"{live.url}/bench/build")
    bench.fill("[name='hose.lot']", "H-77003")
    expect(bench.locator("#view")).to_contain_text("Hose lot H-77003 is withdrawn (“cover blisters”)")

    _two_swivels(bench)
    for name, value in {"hose.standard": "EN 857 2SC", "hose.dash": "12", "length_mm": "900 mm"}.items():
        bench.fill(f"[name='{name}']", value)
    bench.fill("[name='hose.lot']", "")
    bench.focus("[name=machine]")
    _scan(bench, "H-77002")
    expect(bench.locator("#view")).to_contain_text("H-77002 is known as SAE 100R2 -12")
    expect(bench.locator("[name='hose.standard']")).to_have_value("EN 857 2SC")
    bench.keyboard.press("Control+Enter")
    expect(bench.locator("#problems")).to_contain_text("known as SAE 100R2")
    assert live.store.count() == before

    bench.select_option("[name=lot_reason]", "other_manufacturer")
    bench.keyboard.press("Control+Enter")
    bench.wait_for_url("**/bench/run/*")
    assert live.store.count() == before + 1


def test_clocking_is_set_by_turning_the_drawing(bench: Page) -> None:
    bench.select_option("[name='end_a.shape']", "elbow_90")
    bench.select_option("[name='end_b.shape']", "elbow_90")
    dial = bench.get_by_role("slider")
    expect(dial).to_be_visible()
    dial.scroll_into_view_if_needed()
    box = dial.bounding_box()
    assert box is not None
    middle_x, middle_y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    bench.mouse.click(middle_x + 60, middle_y)  # to the right: a quarter, counter-clockwise from down
    expect(bench.locator("[name=clocking_deg]")).to_have_value("90")
    bench.mouse.click(middle_x - 60, middle_y)
    expect(bench.locator("[name=clocking_deg]")).to_have_value("270")
    dial.focus()
    bench.keyboard.press("ArrowUp")
    bench.keyboard.press("PageDown")
    expect(bench.locator("[name=clocking_deg]")).to_have_value("256")


@pytest.mark.parametrize("fails", ["the line is cut", "the server errs"])
def test_figures_that_belong_to_other_fields_say_so(bench: Page, fails: str) -> None:
    _two_swivels(bench)
    for name, value in {"hose.standard": "R2", "hose.dash": "12", "length_mm": "1250"}.items():
        bench.fill(f"[name='{name}']", value)
    view = bench.locator("#view")
    expect(view).to_contain_text("1250 mm")
    expect(view).to_have_attribute("aria-busy", "false")
    held: list[Route] = []  # answers that do not come
    bench.route("**/bench/build/preview", lambda route: held.append(route))
    bench.fill("[name=length_mm]", "900")
    expect(bench.get_by_text("Updating ...")).to_be_visible()
    expect(view).to_have_attribute("aria-busy", "true")
    bench.wait_for_timeout(200)
    assert held
    for waiting in held:
        waiting.abort() if fails == "the line is cut" else waiting.fulfill(status=500, body="no")
    expect(bench.get_by_role("alert")).to_contain_text("Out of date. No answer from the server")
    expect(view).to_contain_text("1250 mm")
    assert Axe().run(bench).response["violations"] == []
    if PICTURES:
        bench.screenshot(path=Path(PICTURES) / f"bench-out-of-date-{fails.split()[1]}.png")
    bench.unroute("**/bench/build/preview")
    expect(view).to_contain_text("900 mm")  # asked again by itself
    expect(view).to_have_attribute("aria-busy", "false")
    for sign in ("Updating ...", "Out of date."):
        expect(bench.get_by_text(sign)).to_be_hidden()


def test_an_end_is_identified_by_measuring_without_leaving_the_page(bench: Page) -> None:
    bench.fill("[name='hose.standard']", "R2")
    bench.get_by_role("link", name="Identify by measuring").first.click()
    bench.select_option("#identify [name=form]", "male")
    bench.get_by_label("Male thread, outside diameter").fill("1 1/16 in")
    bench.get_by_label("Threads per inch").fill("12")
    bench.select_option("#identify [name=seat]", "37")
    bench.get_by_role("button", name="Identify", exact=True).click()
    expect(bench.get_by_role("row").nth(1)).to_contain_text("-12 37° flare (JIC)")
    bench.get_by_role("row").nth(1).get_by_role("link", name="End A").click()
    expect(bench.locator("[name='end_a.size']")).to_have_value("12")
    expect(bench.locator("[name='end_a.form']")).to_have_value("male")
    expect(bench.locator("[name='hose.standard']")).to_have_value("SAE 100R2")


def test_what_cannot_be_measured_is_answered_in_the_window_and_the_series_goes_with_the_end(
    bench: Page,
) -> None:
    bench.get_by_role("link", name="Identify by measuring").first.click()
    bench.select_option("#identify [name=form]", "male")
    bench.get_by_label("Male thread, outside diameter").fill("22")
    bench.get_by_label("pitch in mm").fill("1.5")
    bench.select_option("#identify [name=seat]", "boss")
    bench.get_by_role("button", name="Identify", exact=True).click()
    found = bench.locator("#identified")
    expect(found).to_contain_text("Measure next: series")
    found.get_by_role("link", name="I cannot measure that").click()
    expect(found).not_to_contain_text("Measure next:")
    bench.select_option("#identify [name=series]", "S")
    bench.get_by_role("button", name="Identify", exact=True).click()
    bench.get_by_role("row").nth(1).get_by_role("link", name="End A").click()
    expect(bench.locator("[name='end_a.series']")).to_have_value("S")


def test_a_lay_line_typed_into_the_hose_field_fills_the_hose_once_the_field_is_left(bench: Page) -> None:
    bench.locator("[name='hose.standard']").press_sequentially("SAE 100R2AT-12")
    expect(bench.locator("[name='hose.dash']")).to_have_value("")
    bench.locator("[name='length_mm']").focus()
    expect(bench.locator("[name='hose.standard']")).to_have_value("SAE 100R2")
    expect(bench.locator("[name='hose.dash']")).to_have_value("12")
    expect(bench.locator("[name='hose.edition']")).to_have_value("AT")


def test_the_page_answers_without_script_too(live: Live, open_page: OpenPage) -> None:
    page = _signed_in(live, open_page(viewport=DESK, java_script_enabled=False))
    page.fill("[name='hose.standard']", "4SP")
    page.fill("[name='hose.dash']", "12")
    _two_swivels(page)
    page.get_by_role("button", name="Register and print").click()
    expect(page.get_by_role("alert")).to_contain_text("Still missing: Overall length")
    page.fill("[name=length_mm]", "900")
    page.get_by_role("button", name="Register and print").click()
    expect(page.get_by_role("heading", level=1)).to_contain_text("1 tag registered")


def test_a_proof_pressure_is_read_aloud_and_enter_records_nothing(bench: Page, live: Live) -> None:
    number = _build_one(live, bench, **{"hose.standard": "EN 853 2SN"})
    bench.goto(f"{live.url}/bench/tag/{number}")
    pressure, said = bench.locator("[name=pressure_bar]"), bench.locator("#proof-read")
    expect(pressure).to_have_attribute("placeholder", "414 bar (6000 psi)")
    pressure.fill("6000")
    expect(said).to_contain_text("6000 bar (87020 psi) Above the minimum burst pressure")
    pressure.press("Enter")
    asked = []
    bench.on("dialog", lambda dialog: (asked.append(dialog.message), dialog.dismiss()))
    bench.get_by_role("button", name="Passed", exact=True).click()
    assert len(asked) == 1 and "6000 bar" in asked[0]
    assert live.store.each([number], Kind.PROOF_TESTED) == []
    pressure.fill("6000 psi")
    expect(said).to_contain_text("414 bar (6000 psi) Enough for the proof test.")
    bench.get_by_role("button", name="Passed", exact=True).click()
    expect(bench.get_by_text("Proof test passed").first).to_be_visible()
    [event] = live.store.each([number], Kind.PROOF_TESTED)
    assert (event.data["result"], event.data["pressure_bar"]) == ("passed", 413.7)


def test_a_fraction_without_a_unit_is_refused_and_one_with_it_is_echoed(bench: Page) -> None:
    length = bench.locator("[name=length_mm]")
    length.fill("49 1/4")
    expect(bench.locator("#view")).to_contain_text("49 1/4")
    expect(bench.locator("[data-reading=length_mm]")).to_be_empty()
    length.fill("49 1/4 in")
    expect(bench.locator("[data-reading=length_mm]")).to_contain_text("1251 mm (49 1/4 in)")


def _pages(live: Live, page: Page, endpoint: Endpoint) -> dict[str, str]:
    """Every page of the bench with something on it."""
    store = live.store
    number = _build_one(
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
        contact={"name": "Bela", "phone": "1"},
        changes="100 mm longer",
        key=f"axe {number}",
    )
    if not store.crimps():
        store.keep_crimp(CrimpValue("SAE 100R2", 12, "two-wire shell", 33.4, 0.1, 0.2, "invented for a test"))
        store.save_recipe("boom hose", store.assembly(number).spec)
    test = ProofTest(pressure_bar=345, hold_s=60, medium="water", passed=False, tester="Bela")
    store.record_proof_test(number, test, by=NAME)
    waiting = _build_one(live, page)
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
        "figures": "/bench/figures",
        "shop": "/bench/shop",
        "me": "/bench/me",
        "api": "/api/v1/docs",
        "refused": "/bench/tag/nonsense",
    }


@pytest.mark.parametrize("language", volume(("en", "de"), tuple(LANGUAGES)))
def test_axe_finds_nothing_and_no_page_is_wider_than_the_screen(
    live: Live, open_page: OpenPage, endpoint: Endpoint, language: str
) -> None:
    """Each page is loaded once, then resized and recoloured."""
    page = open_page(viewport=SMALL_DESK)
    page.goto(f"{live.url}/bench/sign-in?lang={language}")
    found = _flaws(page, "sign-in", language)
    _signed_in(live, page)
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


def test_an_unknown_end_is_asked_for_once_and_the_next_build_of_it_has_the_shops_value(
    bench: Page, live: Live
) -> None:
    def begin() -> None:
        bench.goto(f"{live.url}/bench/build")
        bench.fill("[name='hose.standard']", "2SN")
        bench.fill("[name='hose.dash']", "8")
        bench.select_option("[name='end_a.connection']", "jis_30")
        bench.select_option("[name='end_a.form']", "female_swivel")
        bench.check("[name='end_b.same']")
        bench.fill("[name='end_a.size']", "M22x1.5")
        bench.fill("[name='length_mm']", "1000")

    begin()
    asked = bench.locator("[data-ask='end_a.rating']")
    expect(asked).to_contain_text("enter the fitting manufacturer's working pressure")
    expect(bench.locator("[data-ask='hose.rating']")).to_be_hidden()
    bench.fill("[name='end_a.rating.value_bar']", "3000 psi")
    bench.fill("[name='end_a.rating.source']", "catalogue, page 7")
    expect(asked).to_contain_text("207 bar")
    bench.check("[name=keep]")
    bench.click("#register")
    bench.wait_for_url("**/bench/run/*")
    begin()
    expect(bench.locator("#view .big").first).to_contain_text("207 bar")
    expect(bench.locator("#asks")).to_be_hidden()
    bench.locator("#view details summary").first.click()
    expect(bench.locator("#view")).to_contain_text("your shop's value (source: catalogue, page 7)")
    axe = Axe().run(bench)
    assert axe.violations_count == 0, axe.generate_report()


def test_a_run_is_proof_tested_in_one_act_and_enter_records_nothing(bench: Page, live: Live) -> None:
    number = _build_one(live, bench, **{"hose.standard": "EN 853 2SN", "count": "3"})
    run = live.store.run(live.store.assembly(number).run)
    bench.get_by_role("link", name="Crimps and proof test").click()
    pressure, said = bench.locator("[name=pressure_bar]"), bench.locator("#proof-read")
    pressure.fill("6000 psi")
    expect(said).to_contain_text("414 bar (6000 psi) Enough for the proof test.")
    pressure.press("Enter")
    numbers = [one.number for one in run]
    assert live.store.each(numbers, Kind.PROOF_TESTED) == []
    bench.get_by_label(f"Test {tag_number.format(numbers[2])}").uncheck()
    bench.get_by_role("button", name="Selected: passed").click()
    expect(bench.get_by_text("Proof test passed")).to_have_count(2)
    assert {event.number for event in live.store.each(numbers, Kind.PROOF_TESTED)} == set(numbers[:2])
    expect(bench.get_by_role("link", name="Batch certificate B-")).to_be_visible()
