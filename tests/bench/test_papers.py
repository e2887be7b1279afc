"""The page that makes the wall chart and the pocket booklet."""

from __future__ import annotations

import pypdfium2

from tagger.i18n import LANGUAGES, Translator
from tagger.store import Store
from tests.bench.served import Bench
from tests.store.test_fittings import ROW


def test_chart_and_booklet_are_made_on_their_page_in_every_language(bench: Bench, store: Store) -> None:
    page = bench.get("/bench/papers")
    assert page.status_code == 200
    for words in (
        "A2",
        "Letter",
        "/bench/papers/chart.pdf",
        "/bench/papers/booklet.pdf",
        "turn the sheets over",
    ):
        assert words in page.text
    assert "/bench/papers" in bench.get("/bench/stock").text
    refused = bench.get("/bench/papers/chart.pdf", params={"connections": "stock"})
    assert refused.status_code == 422 and "No fitting in the shop" in refused.text
    store.keep_fitting(ROW)
    answer = bench.get("/bench/papers/chart.pdf", params={"connections": "numbers", "paper": "A2"})
    assert answer.headers["content-type"] == "application/pdf"
    [chart] = pypdfium2.PdfDocument(answer.content)
    assert ROW.stock_number in chart.get_textpage().get_text_range()
    for language in LANGUAGES:
        answer = bench.get("/bench/papers/booklet.pdf", params={"lang": language, "form": "pages"})
        cover = pypdfium2.PdfDocument(answer.content)[0].get_textpage().get_text_range()
        assert Translator(language)("charts-booklet-sub") in " ".join(cover.split()), language
    wrong = bench.get("/bench/papers/booklet.pdf", params={"paper": "A7"})
    assert wrong.status_code == 422 and "A7" in wrong.text and "Letter" in wrong.text
