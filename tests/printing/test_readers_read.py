"""What is printed is what three independent readers read."""

import numpy as np
import pytest
import zxingcpp

from tagger.code import link
from tagger.printing import raster, template
from tagger.printing.readers import qr_readers

READERS = qr_readers()


def carried(tag, name):
    """What every symbol of the template says: the whole link, or that of the number alone."""
    holds = {box.holds for box in template.load(name).box if box.kind == "qr"}
    return link.number_only(tag.link) if holds == {"number"} else tag.link


def test_all_three_readers_are_here():
    assert set(READERS) == {"zxing-cpp", "OpenCV", "zbar"}


@pytest.mark.parametrize("reader", ["zxing-cpp", "OpenCV", "zbar"])
@pytest.mark.parametrize("name", template.names())
def test_qr_is_read_from_the_203_dpi_png(tag, name, reader, with_margin):
    image = with_margin(raster.image(tag, template.load(name)))
    assert READERS[reader](image) == {carried(tag, name)}


@pytest.mark.parametrize("reader", ["zxing-cpp", "OpenCV", "zbar"])
@pytest.mark.parametrize("name", template.names())
def test_qr_is_read_from_the_rasterised_pdf(tag, name, reader, rasterised_pdf, with_margin):
    image = with_margin(rasterised_pdf(tag, template.load(name)))
    assert READERS[reader](image) == {carried(tag, name)}


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
