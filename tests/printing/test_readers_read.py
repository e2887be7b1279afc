"""What is printed is what three independent readers read."""

import numpy as np
import pytest
import zxingcpp

from tagger.code import link
from tagger.printing import raster, template
from tagger.printing.readers import qr_readers

READERS = qr_readers()


AROUND_MM = 10
"""What a phone held before one of several symbols sees of the label beside it."""


def parts(tag, name, page):
    """What each symbol says, the link or the number's alone, each with the picture that is to be read.

    Of several symbols each is read for itself, as a phone held before it sees it, the others painted over: OpenCV
    tries each corner of one with those of all the others, for seconds.
    """
    label = template.load(name)
    said = {"all": tag.link, "spec": tag.link, "number": link.number_only(tag.link)}
    codes = [box for box in label.box if box.kind == "qr"]
    if len(codes) == 1:
        return [(page, said[codes[0].holds])]
    return [(_alone(page, label, box, codes), said[box.holds]) for box in codes]


def _alone(page, label, box, codes):
    """One symbol and what is around it, of ``page``: the label's own picture, or the sheet that it stands on."""
    alone = label.sheet is None or abs(page.height / page.width - label.size[1] / label.size[0]) < 0.01
    first = (0, 0) if alone else label.sheet.first
    dots = page.width / (label.size if alone else label.sheet.page_size)[0]
    shown = page.copy()
    for other in codes:
        if other is not box:
            shown.paste("white", _dots(first, other, dots, 0))
    left, top, right, bottom = _dots(first, box, dots, AROUND_MM)
    return shown.crop((max(left, 0), max(top, 0), min(right, page.width), min(bottom, page.height)))


def _dots(first, box, dots, margin):
    left, top = first[0] + box.at[0], first[1] + box.at[1]
    corners = left - margin, top - margin, left + box.size[0] + margin, top + box.size[1] + margin
    return tuple(round(corner * dots) for corner in corners)


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
