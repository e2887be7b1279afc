"""``python -m examples.pictures``: makes the pictures that the README shows, from the invented week."""

from __future__ import annotations

import tempfile
import threading
import time
from pathlib import Path

import uvicorn
from PIL import Image
from playwright.sync_api import Browser, Page, sync_playwright

from api.app import DEMO_NAME, DEMO_PASSWORD, create_app
from api.settings import Settings
from examples.calendar import Calendar
from examples.load import Week, load_week
from examples.run import _free_port
from tagger.printing import raster
from tagger.record_tag import tags_of
from tagger.store import Store
from tests.browser.conftest import CHROMIUM

HERE = Path(__file__).parent / "pictures"
FOUR_TAGS = HERE.parents[1] / "label_templates" / "hang_tags.png"
FOUR = ("boom_rod_side", "steering_two_elbows", "crusher_drive", "press_return")
PHONE = {"width": 390, "height": 844}
DESK = {"width": 1280, "height": 860}


def main() -> None:
    """Loads, serves, photographs."""
    HERE.mkdir(exist_ok=True)
    port = _free_port(8300)
    with tempfile.TemporaryDirectory() as folder:
        settings = Settings(
            database_url=f"sqlite:///{folder}/week.sqlite3",
            base_url=f"http://127.0.0.1:{port}",
            shop_name="Tidewrack Hose Shop",
            shop_phone="555-0142",
            demo=True,
        )
        calendar = Calendar()
        with Store.open(settings.database_url, now=calendar) as store:
            week = load_week(store, calendar)
            _tags(store, week, settings)
        server = uvicorn.Server(
            uvicorn.Config(
                create_app(settings), host="127.0.0.1", port=port, log_level="error", proxy_headers=False
            )
        )
        thread = threading.Thread(target=server.run)
        thread.start()
        while not server.started:
            time.sleep(0.05)
        with sync_playwright() as playwright:
            browser = playwright.chromium.launch(executable_path=CHROMIUM, args=["--no-sandbox"])
            _phone(browser, week, settings)
            _bench(browser, week, settings)
            browser.close()
        server.should_exit = True
        thread.join()


def _tags(store: Store, week: Week, settings: Settings) -> None:
    shown = settings.model_copy(update={"base_url": "https://tags.tidewrack-hose.example"})
    tags = tags_of(store, week.built["steering_two_elbows"][:1], shown)
    raster.write(tags, shown.template("hang_tag"), HERE / "hang_tag.png", dpi=203)
    _four(store, week, shown)


def _four(store: Store, week: Week, shown: Settings) -> None:
    """Four hang tags of the week side by side, as the README of the templates shows them."""
    built = [week.built[name][0] for name in FOUR]
    tags = [raster.image(tag, shown.template("hang_tag"), 300) for tag in tags_of(store, built, shown)]
    width, height = (side + 12 for side in tags[0].size)
    sheet = Image.new("1", (2 * width - 12, 2 * height - 12), 0)
    for place, tag in enumerate(tags):
        sheet.paste(tag, (place % 2 * width, place // 2 * height))
    sheet.save(FOUR_TAGS, optimize=True, dpi=(300, 300))


def _phone(browser: Browser, week: Week, settings: Settings) -> None:
    page = browser.new_page(viewport=PHONE)
    elbows, boom = week.built["steering_two_elbows"][0], week.built["boom_rod_side"][0]
    page.goto(f"{settings.base_url}/t/{elbows.number}")
    _keep(page, "phone_overview")
    page.goto(f"{settings.base_url}/t/{boom.number}#fit")
    page.locator('a[href="#step-1"]').first.click()
    while not page.get_by_text("1 flat = 1/6 turn").is_visible():
        page.locator(":is(button, a):visible", has_text="Next").click()
    page.wait_for_timeout(3000)  # the nut turns
    _keep(page, "phone_fit")
    page.goto(f"{settings.base_url}/t/{week.built['travel_drive'][0].number}")
    _keep(page, "phone_withdrawn")
    page.goto(f"{settings.base_url}/t/{boom.number}#order")
    page.locator("#order").scroll_into_view_if_needed()
    page.wait_for_timeout(300)
    _keep(page, "phone_order")
    page.close()


def _bench(browser: Browser, week: Week, settings: Settings) -> None:
    page = browser.new_page(viewport=DESK)
    page.goto(f"{settings.base_url}/bench")
    page.fill("input[name=name]", DEMO_NAME)
    page.fill("input[name=password]", DEMO_PASSWORD)
    page.keyboard.press("Enter")
    page.wait_for_url("**/bench/build*")
    page.goto(f"{settings.base_url}/bench/build?tag={week.built['steering_two_elbows'][0].number}")
    page.wait_for_timeout(1500)
    _keep(page, "bench_build")
    boom = week.built["boom_rod_side"][0].number
    for name, path in (
        ("record", f"tag/{boom}"),
        ("withdrawn", "withdrawn"),
        ("orders", "orders"),
        ("find", "find"),
        ("figures", "figures"),
    ):
        page.goto(f"{settings.base_url}/bench/{path}")
        page.wait_for_timeout(300)
        _keep(page, f"bench_{name}")
    page.close()


def _keep(page: Page, name: str) -> None:
    """A screenshot in 64 colours: small enough to live beside the text."""
    file = HERE / f"{name}.png"
    page.screenshot(path=file)
    with Image.open(file) as picture:
        small = picture.convert("RGB").quantize(64, dither=Image.Dither.NONE)
    small.save(file, optimize=True)


if __name__ == "__main__":
    main()
