"""The PDF: pages, sheets, letters, streaming."""

import io
import re

import numpy as np
import pypdfium2
import pytest

from tagger.errors import TemplateError
from tagger.printing import pdf, raster, template
from tests.printing.conftest import page_image
from tests.speed import samples


def written(tags, label, **options):
    out = io.BytesIO()
    pdf.write(tags, label, out, **options)
    return out.getvalue()


def test_one_label_a_page_at_its_size(make_tag):
    document = pypdfium2.PdfDocument(written([make_tag(seed=n) for n in range(3)], template.load("hang_tag")))
    assert len(document) == 3
    assert document[0].get_size() == pytest.approx((100 / 25.4 * 72, 60 / 25.4 * 72), abs=0.01)


def test_text_can_be_searched_and_copied(make_tag):
    tag = make_tag(shop="Schläuche Łódź, Ωμέγα, Шланги")
    words = (
        pypdfium2.PdfDocument(written([tag], template.load("roll_4x6")))[0].get_textpage().get_text_bounded()
    )
    for part in (tag.shown_number, "207 bar", "drop 56 mm", "N·m", "Łódź", "Ωμέγα", "Шланги"):
        assert part in words.replace("\r\n", " "), part


def test_fonts_are_embedded_once_and_only_the_letters_used(make_tag):
    one = written([make_tag()], template.load("hang_tag"))
    assert one.count(b"/FontFile2") == 2
    many = written([make_tag(seed=n) for n in range(40)], template.load("hang_tag"))
    assert many.count(b"/FontFile2") == 2
    assert len(one) < 30_000
    assert (len(many) - len(one)) / 39 < 1200


def test_what_many_labels_share_is_written_once_and_looks_as_if_each_had_its_own():
    tags = [*samples.tags(140)]  # all different; pages are made 64 at a time
    label = template.load("hang_tag")
    many = written(tags, label)
    assert many.count(b"/Subtype/Form") >= 1
    for n in (0, 70, 139):
        alone = written([tags[n]], label)  # too few to share anything
        assert b"/Subtype/Form" not in alone
        shown, own = (
            np.asarray(page_image(data, page, 203), dtype=int) for data, page in ((many, n), (alone, 0))
        )
        assert np.abs(shown - own).max() < 40


def test_the_cross_reference_table_points_at_every_object(make_tag):
    """Viewers mend a wrong table silently; printers do not."""
    data = written([make_tag(seed=n) for n in range(3)], template.load("sheet_a4"))
    table = int(re.search(rb"startxref\n(\d+)\n%%EOF", data)[1])
    first, count = re.match(rb"xref\n(\d+) (\d+)\n", data[table:]).groups()
    lines = data[table:].split(b"\n")[2 : 2 + int(count)]
    assert first == b"0"
    for number, line in enumerate(lines[1:], 1):
        assert len(line) == 19
        assert data[int(line[:10]) :].startswith(b"%d 0 obj" % number)
    for found in re.finditer(rb"/Length (\d+)[^>]*>>\nstream\n", data):
        assert data[found.end() + int(found[1]) :].startswith(b"endstream")


def test_symbols_are_one_bit_image_masks(make_tag):
    import zlib

    data = written([make_tag()], template.load("hang_tag"))
    streams = [
        zlib.decompress(part) for part in re.findall(rb"stream\n(x\xda.*?)endstream", data, re.DOTALL)[:1]
    ]
    assert streams[0].count(b"/IM true") == 3


def test_a_sheet_starts_at_any_free_place(make_tag):
    sheet = template.load("sheet_a4")
    tags = [make_tag(seed=n) for n in range(7)]
    data = written(tags, sheet, start=6)
    assert len(pypdfium2.PdfDocument(data)) == 2
    first = np.asarray(page_image(data, 0, 72)) < 128
    rows = [first[y : y + 150].any() for y in (100, 270, 440)]
    assert rows == [False, False, True]  # five places are used, the sixth is in the third row
    left = first[430:580, 20:280]
    assert not left.any()


def test_a_place_that_is_not_on_the_sheet_is_refused(make_tag):
    with pytest.raises(TemplateError, match=r"start: 9 is not a place on the sheet.*from 1 to 8"):
        written([make_tag()], template.load("sheet_a4"), start=9)
    with pytest.raises(TemplateError, match="one label per page"):
        written([make_tag()], template.load("hang_tag"), start=2)


def test_sheet_png_and_pdf_show_the_same(make_tag):
    sheet = template.load("sheet_letter")
    tags = [make_tag(seed=n) for n in range(8)]
    (page,) = raster.pages(tags, sheet, 203)
    paper = page_image(written(tags, sheet), 0, 203).resize(page.size)
    ink = np.asarray(page.convert("L")).mean(), np.asarray(paper).mean()
    assert ink[0] == pytest.approx(ink[1], abs=3)


def test_several_processes_make_the_same_file(make_tag):
    tags = [make_tag(seed=n) for n in range(130)]
    label = template.load("roll_2x1")
    assert written(tags, label, processes=2) == written(tags, label, processes=1)


def test_progress_counts_every_tag(make_tag):
    seen = []
    written([make_tag(seed=n) for n in range(70)], template.load("roll_2x1"), progress=seen.append)
    assert sum(seen) == 70


def test_tags_are_taken_as_they_come(make_tag):
    """A run is streamed: no more tags are made than are being written."""
    ahead, done, most = 0, 0, 0

    def coming():
        nonlocal ahead, most
        for n in range(400):
            ahead += 1
            most = max(most, ahead - done)
            yield make_tag(seed=n % 5)

    def count(number):
        nonlocal done
        done += number

    written(coming(), template.load("roll_2x1"), progress=count, processes=1)
    assert done == 400
    assert most <= 128


def test_a_tag_that_does_not_fit_leaves_no_file(make_tag, tmp_path):
    out = tmp_path / "run.pdf"
    out.write_bytes(b"the old one")
    with pytest.raises(TemplateError):
        pdf.write([make_tag(), make_tag(shop="软管")], template.load("roll_4x6"), out)
    assert out.read_bytes() == b"the old one"
    assert list(tmp_path.iterdir()) == [out]


def test_no_tag_at_all_is_refused():
    with pytest.raises(TemplateError, match="Enter at least one"):
        written([], template.load("hang_tag"))


def test_the_same_tags_give_the_same_bytes(make_tag):
    assert written([make_tag()], template.load("hang_tag")) == written(
        [make_tag()], template.load("hang_tag")
    )


def test_png_knows_its_resolution(make_tag, tmp_path):
    from PIL import Image

    (file,) = raster.write([make_tag()], template.load("roll_4x2"), tmp_path / "tag.png", dpi=300)
    with Image.open(file) as image:
        assert image.mode == "1"
        assert image.size == (1200, 600)
        assert image.info["dpi"] == pytest.approx((300, 300), abs=0.1)
    files = raster.write(
        [make_tag(seed=n) for n in range(3)], template.load("roll_2x1"), tmp_path / "many.png"
    )
    assert [file.name for file in files] == ["many.png", "many-2.png", "many-3.png"]


def test_every_page_is_in_the_tree_once_with_operators_of_its_own(make_tag):
    data = written([make_tag(seed=n) for n in range(70)], template.load("hang_tag"))
    kids = re.findall(rb"(\d+) 0 R", re.search(rb"/Kids \[([^]]*)\]", data)[1])
    made = re.findall(
        rb"\n(\d+) 0 obj\n<</Type/Page/Parent (\d+) 0 R(?:/Resources \d+ 0 R)?/Contents (\d+) 0 R>>", data
    )
    assert [page for page, _, _ in made] == kids
    assert len({*kids}) == len({contents for _, _, contents in made}) == 70
    (tree,) = {parent for _, parent, _ in made}
    assert b"\n%b 0 obj\n%% page tree" % tree in data or b"\n%b 0 obj\n<<" % tree in data
    assert re.search(rb"/Type /Pages", data) and re.search(rb"/Count 70\b", data)
