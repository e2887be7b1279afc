"""What is printed is what three independent readers read."""

import numpy as np
import pytest
import zxingcpp

from tagger.code import link
from tagger.printing import raster, template
from tagger.printing.readers import qr_readers

READERS = qr_readers()


def parts(tag, name, page):
    """What the symbols say, the link or the number's alone, each with a picture in which the others are painted over."""
    label = template.load(name)
    said = {"all": tag.link, "spec": tag.link, "number": link.number_only(tag.link)}
    codes = [(box, said[box.holds]) for box in label.box if box.kind == "qr"]
    return [
        (_without(page, label, [box for box, other in codes if other != text]), text)
        for text in {t for _, t in codes}
    ]


def _without(page, label, boxes):
    """``page``: the label's own picture, or the sheet that it stands on."""
    alone = label.sheet is None or abs(page.height / page.width - label.size[1] / label.size[0]) < 0.01
    first = (0, 0) if alone else label.sheet.first
    dots = page.width / (label.size if alone else label.sheet.page_size)[0]
    shown = page.copy()
    for box in boxes:
        left, top = first[0] + box.at[0], first[1] + box.at[1]
        corners = left, top, left + box.size[0], top + box.size[1]
        shown.paste("white", tuple(round(corner * dots) for corner in corners))
    return shown


def test_all_three_readers_are_here():
    assert set(READERS) == {"zxing-cpp", "OpenCV", "zbar"}


@pytest.mark.parametrize("reader", ["zxing-cpp", "OpenCV", "zbar"])
@pytest.mark.parametrize("name", template.names())
def test_qr_is_read_from_the_203_dpi_png(tag, name, reader, with_margin):
    for part, text in parts(tag, name, raster.image(tag, template.load(name))):
        assert READERS[reader](with_margin(part)) == {text}


@pytest.mark.parametrize("reader", ["zxing-cpp", "OpenCV", "zbar"])
@pytest.mark.parametrize("name", template.names())
def test_qr_is_read_from_the_rasterised_pdf(tag, name, reader, rasterised_pdf, with_margin):
    for part, text in parts(tag, name, rasterised_pdf(tag, template.load(name))):
        assert READERS[reader](with_margin(part)) == {text}


def test_code_128_says_the_number(tag, rasterised_pdf, with_margin):
    hang = template.load("hang_tag")
    for image in (raster.image(tag, hang), rasterised_pdf(tag, hang)):
        found = zxingcpp.read_barcodes(with_margin(image), formats=zxingcpp.BarcodeFormat.Code128)
        assert [one.text for one in found] == [tag.number]


@pytest.mark.parametrize("name", template.names())
def test_pdf_and_png_show_the_same(tag, name, rasterised_pdf):
    """Ink in one is ink in the other, to a dot's breadth: hinting moves edges, nothing else."""
    label = template.load(name)
    dots = np.asarray(next(raster.pages([tag], label)).convert("L")) < 128
    paper = np.asarray(rasterised_pdf(tag, label, dpi=203).resize(dots.shape[::-1])) < 128
    assert np.mean(dots & ~_spread(paper)) < 0.006
    assert np.mean(paper & ~_spread(dots)) < 0.006


def _spread(ink: np.ndarray) -> np.ndarray:
    """The ink and the dots next to it."""
    padded = np.pad(ink, 1)
    rows, columns = ink.shape
    return np.any([padded[y : y + rows, x : x + columns] for y in range(3) for x in range(3)], axis=0)
