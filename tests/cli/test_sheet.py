"""``tagger sheet`` writes one sheet; ``tagger identify`` takes what was found on it."""

from __future__ import annotations

from pathlib import Path

import pypdfium2

from tests.cli.test_cli import Shell
from tests.cli.test_cli import tagger as tagger  # the fixture


def test_a_sheet_is_written_on_the_paper_and_of_the_family_asked_for_and_its_marks_are_taken(
    tagger: Shell, tmp_path: Path
) -> None:
    out = tmp_path / "sheet.pdf"
    answer = tagger.json("sheet", "threads", "--family", "orfs", "--paper", "Letter", "--out", str(out))
    assert answer == {"file": str(out)}
    page = pypdfium2.PdfDocument(out)[0]
    assert (page.get_width(), page.get_height()) == (612.0, 792.0)
    assert "D30.16" in page.get_textpage().get_text_range()

    found = tagger.json(
        "identify", "--form", "male", "--found", "D30.16 P2.117", "--scale", "100", "--seat", "face"
    )
    first = found["candidates"][0]
    assert (first["connection"], first["thread"]) == ("orfs", "1 3/16-12 UN")

    out.unlink()
    refused = tagger("sheet", "threads", "--family", "orffs", "--out", str(out), code=1)
    assert "family" in refused.stderr and "orfs" in refused.stderr
    assert not out.exists()
    refused = tagger("sheet", "seats", "--out", str(tmp_path / "sheet.png"), code=1)
    assert ".pdf" in refused.stderr
    refused = tagger("identify", "--form", "male", "--found", "D30.16", "--scale", "90", code=1)
    assert "100 % (actual size)" in refused.stderr
