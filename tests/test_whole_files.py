"""A file is whole or not there, and two that are written at once never become one."""

from __future__ import annotations

import os
from pathlib import Path

import pypdfium2
import pytest
from PIL import Image

from tagger import whole_files
from tagger.printing import pdf, raster, template
from tests.speed.samples import tags


def test_of_two_written_to_one_place_at_once_the_last_to_end_stays_and_is_whole(tmp_path: Path) -> None:
    hang_tag = template.load("hang_tag")
    few, many = [*tags(2, seed=1)], [*tags(3, seed=2)]
    pdf.write(
        few, hang_tag, tmp_path / "run.pdf", accept=lambda _: pdf.write(many, hang_tag, tmp_path / "run.pdf")
    )
    pages = [page.get_textpage().get_text_range() for page in pypdfium2.PdfDocument(tmp_path / "run.pdf")]
    assert len(pages) == 2 and all(tag.shown_number in said for tag, said in zip(few, pages, strict=True))
    raster.write(
        few,
        hang_tag,
        tmp_path / "run.png",
        accept=lambda _: raster.write(many, hang_tag, tmp_path / "run.png"),
    )
    alone = raster.write(few, hang_tag, tmp_path / "alone.png")
    for place, file in zip(("run.png", "run-2.png"), alone, strict=True):
        assert Image.open(tmp_path / place).tobytes() == Image.open(file).tobytes()
    assert not [*tmp_path.glob("*.part")]


def test_what_was_there_stays_where_writing_fails(tmp_path: Path) -> None:
    out = tmp_path / "tag.svg"
    out.write_text("yesterday's")
    with pytest.raises(OSError, match="full"), whole_files.whole(out) as part:
        part.write_text("half of to")
        raise OSError("full")
    assert [(one.name, one.read_text()) for one in tmp_path.iterdir()] == [("tag.svg", "yesterday's")]


def test_what_a_killed_program_left_is_cleared_away_and_nobody_elses(tmp_path: Path) -> None:
    for name in ("run[1].pdf.0a0a.part", "run1.pdf.0b0b.part", "run[1].pdf.0c0c.part"):
        (tmp_path / name).touch()
        if "0c0c" not in name:
            os.utime(tmp_path / name, (0, 0))
    whole_files.write(tmp_path / "run[1].pdf", b"%PDF")
    left = {one.name for one in tmp_path.iterdir()}
    assert left == {"run[1].pdf", "run1.pdf.0b0b.part", "run[1].pdf.0c0c.part"}
