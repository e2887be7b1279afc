"""A photo of a tag on the page that finds tags: sent small, read, and after a failure the form is still there."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PIL import Image
from playwright.sync_api import Page, expect

from tagger.code import link
from tagger.code.symbol import qr
from tagger.i18n import Translator
from tests.browser.conftest import Live
from tests.browser.test_scan_tag import registered

T = Translator()
OpenPage = Callable[..., Page]


def test_a_photo_is_made_small_and_read_and_a_failed_one_leaves_every_way_to_look_again(
    live: Live, open_page: OpenPage, tmp_path: Path
) -> None:
    page, made = open_page(service_workers="block"), registered(live)
    rows = qr(link.build(live.url, made.number, made.digits)).modules
    symbol = Image.new("L", (len(rows[0]) + 8, len(rows) + 8), 255)
    for y, row in enumerate(rows):
        for x, dark in enumerate(row):
            symbol.putpixel((x + 4, y + 4), 0 if dark else 255)
    picture = Image.effect_noise((3000, 2400), 90)
    picture.paste(symbol.resize((1400, 1400), Image.Resampling.NEAREST), (300, 400))
    good, bad = tmp_path / "tag.jpg", tmp_path / "none.jpg"
    picture.save(good, "JPEG", quality=92)
    Image.new("RGB", (300, 200), "white").save(bad, "JPEG")
    sent: list[int] = []
    page.on("request", lambda r: sent.append(len(r.post_data_buffer or b"")) if r.method == "POST" else None)
    page.goto(f"{live.url}/find")
    read = page.get_by_role("button", name=T("scan-photo-read"))
    page.get_by_label(T("scan-photo-label")).set_input_files(bad)
    read.click()
    expect(page.locator(".notice.danger")).to_be_visible()
    expect(page.get_by_label(T("scan-field-number"))).to_be_visible()
    page.get_by_label(T("scan-photo-label")).set_input_files(good)
    read.click()
    expect(page.locator("h1.number")).to_be_visible()
    assert page.url.endswith(f"/T/{made.number}/{made.digits}")
    assert good.stat().st_size > 2_500_000 and sent[-1] < 0.5 * good.stat().st_size
    page.goto(f"{live.url}/find")
    page.context.set_offline(True)
    page.get_by_label(T("scan-photo-label")).set_input_files(bad)
    read.click()
    expect(page.locator("[data-photo-says]")).to_have_text(T("scan-photo-none_offline"))
