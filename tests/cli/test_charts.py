"""The wall chart and the pocket booklet from the command line."""

from __future__ import annotations

import pypdfium2

from tests.cli.test_cli import Shell
from tests.cli.test_shop_fittings import HEADING, ROWS, _file, tagger  # noqa: F401


def test_the_chart_and_the_booklet_are_written_and_other_files_refused(tagger: Shell) -> None:  # noqa: F811
    chart, booklet = tagger.folder / "chart.pdf", tagger.folder / "booklet.pdf"
    tagger("fittings", "--import", _file(tagger, "fittings.csv", "\n".join([HEADING, *ROWS])))
    assert tagger.json("chart", "--out", chart, "--stock-numbers", "--lang", "de")["file"] == str(chart)
    [page] = pypdfium2.PdfDocument(chart)
    text = page.get_textpage().get_text_range()
    assert (
        "1 37°-Bördel (JIC)" in text
        and "TW-1204" in text
        and "BSPP (BSP zylindrisch)" not in text.split("\u2260")[0]
    )
    said = tagger("booklet", "--out", booklet, "--paper", "letter").stdout
    assert "turn the sheets over their long edge" in said
    assert len(pypdfium2.PdfDocument(booklet)) % 2 == 0
    told = tagger.json("booklet", "--out", tagger.folder / "booklet.png", code=1)["refused"]
    assert told[0]["id"] == "cli-out-not-pdf"
