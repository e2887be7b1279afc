"""Grades follow the print: sound dots are A, and each fault lowers its own parameter."""

import numpy as np
import pytest
from PIL import Image, ImageFilter

from tagger.code.symbol import codeword_blocks, codeword_of_module, qr
from tagger.errors import SymbolError
from tagger.printing.grade import grade

LINK = "HTTPS://TAGS.EXAMPLE-HOSE-SHOP.COM/T/7K3MQ9XW2R1/" + "271828" * 15
STEP = 8


def picture(level="H", dots=STEP):
    made = qr(LINK, level)
    light = np.pad(~made.modules, 4, constant_values=True)
    return made, (np.kron(light, np.ones((dots, dots))) * 255).astype(np.uint8)


def values(image):
    return {one.name: one for one in grade(image).parameters}


@pytest.mark.parametrize("level", "LMQH")
def test_sound_dots_are_grade_a(level):
    made, image = picture(level)
    found = grade(image)
    assert found.letter == "A"
    assert (found.text, found.version, found.level) == (LINK, made.version, level)
    assert {one.name: round(one.value, 2) for one in found.parameters} == {
        "decode": 1, "symbol contrast": 1, "modulation": 1, "fixed pattern damage": 0,
        "axial non-uniformity": 0, "grid non-uniformity": 0, "unused error correction": 1,
    }  # fmt: skip


@pytest.mark.parametrize(("share", "letter"), [(0.75, "A"), (0.60, "B"), (0.45, "C"), (0.30, "D")])
def test_symbol_contrast_follows_the_grey(share, letter):
    _, image = picture()
    grey = (128 + (image.astype(float) - 128) * share).clip(0, 255).astype(np.uint8)
    found = values(grey)["symbol contrast"]
    assert found.letter == letter
    assert found.value == pytest.approx(share, abs=0.02)


def test_a_stretched_print_loses_axial_uniformity():
    _, image = picture()
    for factor, letter in ((1.04, "A"), (1.075, "B"), (1.09, "C")):
        wide = Image.fromarray(image).resize(
            (round(image.shape[1] * factor), image.shape[0]), Image.Resampling.NEAREST
        )
        found = values(wide)["axial non-uniformity"]
        assert found.letter == letter
        assert found.value == pytest.approx(2 * (factor - 1) / (factor + 1), abs=0.004)


def test_a_bent_print_loses_grid_uniformity():
    _, image = picture()
    rows = np.arange(image.shape[0])
    bent = np.stack([np.roll(image[row], round(STEP * 0.5 * np.sin(3.14 * row / len(rows)))) for row in rows])
    flat, curved = values(image)["grid non-uniformity"], values(bent)["grid non-uniformity"]
    assert flat.value < 0.05 < 0.09 < curved.value


def test_blur_lowers_modulation():
    _, image = picture()
    letters = []
    for radius in (1.0, 3.0, 4.0):
        blurred = Image.fromarray(image).filter(ImageFilter.GaussianBlur(radius))
        letters.append(values(blurred)["modulation"].grade)
    assert letters[0] == 4
    assert letters[0] > letters[1] >= letters[2]


def test_unused_error_correction_counts_the_wrong_codewords():
    """Six spoilt codewords of one block of level H, out of the thirteen it restores."""
    made, image = picture()
    blocks, restores = codeword_blocks(made.version, made.level)
    place_of = codeword_of_module(made.version)
    for codeword in np.flatnonzero(blocks == 0)[:6]:
        row, column = np.argwhere(place_of == codeword)[0]
        y, x = (row + 4) * STEP, (column + 4) * STEP
        image[y : y + STEP, x : x + STEP] ^= 255
    found = values(image)["unused error correction"]
    assert found.value == pytest.approx(1 - 6 / restores[0])
    assert found.letter == "B"


def test_a_wounded_finder_is_fixed_pattern_damage():
    _, image = picture()
    for count, letter in ((0, "A"), (1, "B"), (2, "C"), (3, "D")):
        wounded = image.copy()
        for step in range(count):
            y, x = (4 + 2 + step) * STEP, (4 + 2) * STEP  # in the dark middle of the first finder
            wounded[y : y + STEP, x : x + STEP] ^= 255
        assert values(wounded)["fixed pattern damage"].letter == letter


def test_a_turned_photograph_is_graded_too():
    _, image = picture()
    turned = Image.fromarray(np.pad(image, 60, constant_values=255)).rotate(
        17, resample=Image.Resampling.BICUBIC, fillcolor=255
    )
    assert grade(turned).letter in "AB"


def test_no_symbol_is_grade_f():
    with pytest.raises(SymbolError, match="grade F"):
        grade(Image.new("L", (300, 300), 255))
