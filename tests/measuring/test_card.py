"""The scale card: true to size on paper, corrected by its check line, and found in a photo or refused in words."""

from __future__ import annotations

import io
from functools import cache

import numpy as np
import pypdfium2
import pytest
from PIL import Image, ImageDraw, ImageOps

from tagger.code import symbol
from tagger.errors import LinkError, SpecError
from tagger.i18n import LANGUAGES, Translator
from tagger.measuring import card, rectify
from tagger.papers import scale_card
from tests.measuring import rendered
from tests.measuring.rendered import Scene

DPI = 300
PX = 10  # a mm of the photos from straight above


@pytest.mark.parametrize("paper", scale_card.PAPERS)
def test_the_printed_card_is_true_to_a_twentieth_of_a_millimetre(paper: str) -> None:
    """Its sheet at 300 dpi: the symbols lie where the photo's reader takes them to lie, and the check line is 100 mm."""
    page = pypdfium2.PdfDocument(scale_card.of("en", paper))[0]
    assert page.get_size() == pytest.approx(scale_card.PAPERS[paper], abs=0.01)
    sheet = page.render(scale=DPI / 72, grayscale=True).to_pil()
    sight = rectify.find(sheet)
    assert sight.residual < 0.03 and len(sight.symbols) == 4
    left, top = (sheet.width / DPI * 25.4 - card.WIDTH) / 2, scale_card.TOP
    places = np.array([(0.0, 0.0), (card.WIDTH, 0.0), (card.WIDTH, card.HEIGHT), (0.0, card.HEIGHT)])
    on_paper = (
        rectify.project(np.asarray(np.linalg.inv(sight.to_card), dtype=np.float64), places) * 25.4 / DPI
    )
    assert on_paper == pytest.approx(places + np.array([left, top]), abs=0.05)
    x, y = card.CHECK_FROM
    row = np.asarray(sheet)[round((top + y) * DPI / 25.4)]
    inside = slice(round((left + x - 4) * DPI / 25.4), round((left + x + card.CHECK_LINE + 4) * DPI / 25.4))
    dark = np.flatnonzero(row[inside] < 128)
    assert (dark[-1] - dark[0]) * 25.4 / DPI == pytest.approx(
        card.CHECK_LINE, abs=0.3
    )  # its strokes are 0.18 mm
    assert len(dark) == dark[-1] - dark[0] + 1


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_sheet_says_in_each_language_what_to_do_and_what_a_photo_cannot_tell(language: str) -> None:
    page = pypdfium2.PdfDocument(scale_card.of(language, "letter"))[0]
    said = " ".join(page.get_textpage().get_text_bounded().split())
    t = Translator(language)
    for id in ("measure-card-lay", "measure-defer", *scale_card.STEPS, *scale_card.LIMITS):
        assert " ".join(t(id).split()) in said, id
    boxes = [one.get_bounds() for one in page.get_objects() if one.type == pypdfium2.raw.FPDF_PAGEOBJ_TEXT]
    width, _ = page.get_size()
    assert min(box[1] for box in boxes) > 20 and all(box[0] > 20 and box[2] < width - 20 for box in boxes)


def test_the_check_line_corrects_from_97_to_103_percent_and_nothing_beyond() -> None:
    assert [card.read_scale(text) for text in ("97", "103 mm", "100,5", "")] == [0.97, 1.03, 1.005, 1.0]
    assert card.read_scale("3.9 in") == pytest.approx(0.9906)
    for wrong in ("96.9", "103.1", "4.2 in", "98.5 psi", "x"):
        with pytest.raises(SpecError) as caught:
            card.read_scale(wrong)
        assert caught.value.problems[0].field == "check"
    with pytest.raises(SpecError, match=r"96\.9.*Print the card at 100 %"):
        card.read_scale("96.9")


@cache
def _above() -> Image.Image:
    """The card from straight above on a grey table."""
    photo = Image.new("L", (1800, 1400), 150)
    photo.paste(rendered.printed().resize((round(card.WIDTH * PX), round(card.HEIGHT * PX))), (300, 250))
    return photo


def _covered(*corners: str) -> Image.Image:
    photo = _above().copy()
    for corner in corners:
        x, y = card.CORNERS[corner]
        left, top = 300 + x * PX, 250 + y * PX
        ImageDraw.Draw(photo).rectangle((left + 60, top + 60, left + 240, top + 240), fill=250)  # glare
    return photo


def test_a_card_is_found_however_it_is_turned_and_with_one_code_under_glare() -> None:
    whole = rectify.find(_above())
    middle = np.array([[900.0, 650.0]])
    assert whole.at(middle) == pytest.approx(np.array([[60.0, 40.0]]), abs=0.05)
    for turn in (90, 180, 270):
        assert rectify.find(_above().rotate(turn, expand=True)).px_per_mm == pytest.approx(PX, rel=0.003)
    one_hidden = rectify.find(_covered("BL"))
    assert len(one_hidden.symbols) == 3
    beside = np.array([[900.0, 1250.0]])  # where the end lies
    assert one_hidden.at(beside) == pytest.approx(whole.at(beside), abs=0.08)


def _two() -> Image.Image:
    photo = Image.new("L", (1800, 2300), 150)
    photo.paste(_above(), (0, 0))
    photo.paste(_above().crop((300, 250, 1500, 1050)), (300, 1300))
    return photo


def _tag() -> Image.Image:
    modules = symbol.qr("https://tags.example.com/T/7K3MQ9XW2R1").modules
    photo = Image.fromarray(np.where(np.pad(modules, 6), 0, 255).astype(np.uint8))
    return photo.resize((photo.width * 8, photo.height * 8), Image.Resampling.NEAREST)


def _curled() -> Image.Image:
    """The card bent like a leaf: its middle lies 1.5 mm away from where a flat one has it."""
    whole = np.asarray(_above())
    bend = np.round(15 * np.sin(np.pi * np.arange(whole.shape[1]) / whole.shape[1] * 3)).astype(int)
    return Image.fromarray(
        np.stack([np.roll(column, by) for column, by in zip(whole.T, bend, strict=True)]).T
    )


def _strewn() -> Image.Image:
    """Four codes that nobody printed on one card, two of them in one place."""
    photo = Image.new("L", (1800, 1400), 200)
    for n, corner in enumerate(card.CORNERS):
        x, y = card.CORNERS[corner]
        one = _above().crop(
            (300 + round(x * PX) - 35, 250 + round(y * PX) - 35, 560 + round(x * PX), 510 + round(y * PX))
        )
        photo.paste(one.rotate(90 * n), (100 + 400 * n, 300))
    return photo


def _small() -> Image.Image:
    return _above().resize((630, 490), Image.Resampling.LANCZOS)


def _slanted() -> Image.Image:
    scene = Scene(camera=(60, 360, 230), aim=(60, 60), size=(2400, 1800))
    return Image.open(io.BytesIO(rendered.take(scene, end=False))).convert("L")


WRONG = {
    "measure-no-card": lambda: Image.new("L", (800, 600), 200),
    "measure-other-code": _tag,
    "measure-few-symbols": lambda: _covered("TL", "BR"),
    "measure-two-cards": _two,
    "measure-mirrored": lambda: ImageOps.mirror(_above()),
    "measure-not-flat": _curled,
    "measure-too-far": _small,
    "measure-slanted": _slanted,
}


def test_codes_strewn_about_and_a_focal_length_that_is_none_break_nothing() -> None:
    with pytest.raises(LinkError, match="not flat"):
        rectify.find(_strewn())
    told = []
    for exif in (b"Exif\0\0II*\0\x08\0\0\0\xff\xff", b"Exif\0\0" + b"\xff" * 40, b""):
        photo = _above().copy()
        photo.info["exif"] = exif
        told.append(rectify.find(photo).focal_told)
    assert told == [False, False, False]


@pytest.mark.parametrize("id", WRONG)
def test_a_photo_that_cannot_be_measured_is_refused_with_what_to_do(id: str) -> None:
    with pytest.raises(LinkError) as caught:
        rectify.find(WRONG[id]())
    [problem] = caught.value.problems
    assert (problem.field, problem.message.id) == ("photo", id)
    assert Translator("de").mend(problem.message)
