"""Withdrawing: what it touches, what every page then says, whom to call, and lifting."""

from __future__ import annotations

import csv
import io
import re

import httpx
import pypdfium2

from api.settings import Settings
from tagger.store import Store
from tests.bench.served import HOSE, Bench, Served


def _build(bench: Bench, **changes: str) -> None:
    bench.submit("/bench/build", {**HOSE, "hose.lot": "H-2291", **changes})


def test_what_a_withdrawal_would_touch_is_shown_before(bench: Bench, store: Store) -> None:
    _build(bench, count="3", customer="Quarry")
    page = bench.get("/bench/withdrawn?scope=hose_lot&value=h-2291").text
    assert "<strong>3 registered assemblies are affected.</strong> Customers: 1." in page
    assert store.withdrawals() == []


def test_every_affected_tag_page_says_it_first_within_one_cache_lifetime(
    bench: Bench, stranger: httpx.Client, store: Store, settings: Settings
) -> None:
    _build(bench, count="5")
    items = store.find().assemblies
    for item in items:
        page = stranger.get(f"/T/{item.number}/{item.digits}")
        kept = re.search(r"max-age=(\d+)", page.headers["cache-control"])
        assert kept is not None and int(kept[1]) <= settings.page_cache_seconds
        assert "cover blisters" not in page.text
    bench.submit("/bench/withdrawn", {"scope": "hose_lot", "value": "H-2291", "reason": "cover blisters"})
    for item in items:
        text = stranger.get(f"/T/{item.number}/{item.digits}").text
        main = text[text.index("<main") :]
        assert "cover blisters" in main[:1500], "it stands first on the page"


def test_the_call_list_and_the_letters_name_every_hose_and_customer(bench: Bench, store: Store) -> None:
    _build(bench, customer="Quarry North", machine="Loader 4", position="boom")
    _build(bench, customer="=cmd|'/c calc'!A1", machine="Crane 2")
    answer = bench.submit(
        "/bench/withdrawn", {"scope": "hose_lot", "value": "H-2291", "reason": "cover blisters"}
    )
    assert "2 assemblies" in answer.text
    rows = list(
        csv.DictReader(io.StringIO(bench.get("/bench/withdrawn/1/call.csv").content.decode("utf-8-sig")))
    )
    assert [row["Machine"] for row in rows] == ["Crane 2", "Loader 4"]
    assert rows[0]["Customer"].startswith("'="), "a spreadsheet must not run it"
    letters = pypdfium2.PdfDocument(bench.get("/bench/withdrawn/1/letters.pdf").content)
    texts = [page.get_textpage().get_text_range() for page in letters]
    assert len(texts) == 2
    assert "Quarry North" in texts[1] and "Loader 4, boom" in texts[1] and "cover blisters" in texts[1]
    german = pypdfium2.PdfDocument(bench.get("/bench/withdrawn/1/letters.pdf?lang=de").content)
    text = " ".join(german[0].get_textpage().get_text_range().split())
    assert "Verwenden Sie die hier aufgeführten Schlauchleitungen nicht" in text
    assert "Schlauchcharge H-2291" in text and "Sofort ins Krankenhaus" in text
    assert german.get_metadata_value("Title") == "Sperrung 1"


def test_only_a_manager_lifts_and_it_stays_in_the_record(bench: Bench, served: Served, store: Store) -> None:
    _build(bench)
    bench.submit("/bench/withdrawn", {"scope": "hose_lot", "value": "H-2291", "reason": "cover blisters"})
    with Bench(served.url, store, "counter") as counter:
        assert counter.submit("/bench/withdrawn/1/lift", {"reason": "ok"}).status_code == 403
    bench.submit("/bench/withdrawn/1/lift", {"reason": "tested again: sound"})
    assert "tested again: sound" in bench.get("/bench/withdrawn").text
    assert not store.find().assemblies[0].withdrawn


def test_a_withdrawn_tag_is_not_printed(bench: Bench, store: Store) -> None:
    _build(bench)
    [item] = store.find().assemblies
    bench.submit("/bench/withdrawn", {"scope": "tag", "value": item.number, "reason": "seat cracked"})
    refused = bench.submit("/bench/print", {"number": item.number, "as": "pdf"})
    assert refused.status_code == 422 and "seat cracked" in refused.text


def test_an_order_from_a_withdrawn_tag_says_so_to_the_shop(bench: Bench, store: Store) -> None:
    _build(bench)
    [made] = store.find().assemblies
    order = store.request_order(number=made.number, contact={"phone": "555 0101"})
    pages = f"/bench/orders/{order.reference}", f"/bench/build?order={order.reference}"
    assert not any("burst low" in bench.get(page).text for page in pages)
    store.withdraw("burst low", hose_lot="H-2291")
    shown, build = (bench.get(page).text for page in pages)
    assert "The tag of a withdrawn hose (burst low): build it anew" in shown
    assert "burst low" in build and 'value="H-2291"' not in build, "its lots are not copied"
    assert "burst low" in bench.get("/bench/build", params={"tag": made.number}).text
