"""Symbols as matrices: standard-conforming, smallest that holds, read back by another library."""

import barcode
import numpy as np
import pytest
import zxingcpp
from hypothesis import given, settings
from hypothesis import strategies as st
from qrcode import constants
from qrcode.main import QRCode

from tagger.code import symbol
from tagger.errors import SymbolError
from tests.volume import volume

LINK = "HTTPS://TAGS.EXAMPLE-HOSE-SHOP.COM/T/7K3MQ9XW2R1/" + "9" * 93
ALNUM = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:"


def picture(made, dots=4):
    quiet = np.pad(~made.modules, made.quiet, constant_values=True)
    return (np.kron(quiet, np.ones((dots, dots))) * 255).astype(np.uint8)


def read(made):
    return [found.text for found in zxingcpp.read_barcodes(picture(made))]


@pytest.mark.parametrize("level", "LMQH")
@pytest.mark.parametrize("mask", [None, *range(8)])
def test_every_level_and_mask_is_read(level, mask):
    made = symbol.qr(LINK, level, mask=mask)
    assert read(made) == [LINK]
    assert mask is None or made.mask == mask


@given(st.text(ALNUM, min_size=1, max_size=120), st.sampled_from("LMQH"))
@settings(max_examples=volume(60, 600), deadline=None)
def test_any_text_is_read_back(text, level):
    assert read(symbol.qr(text, level)) == [text]


@pytest.mark.parametrize(
    "text", ["1234567", "HTTPS://A.B/T/7K3MQ9XW2R1", "https://a.b/t/7k3mq9xw2r1", LINK + "/é 1"]
)
def test_a_text_takes_as_many_bits_as_are_written_of_it(text):
    for version in (1, 9, 10, 26, 27, 40):
        segments = symbol._segments(text)
        written = sum(len(symbol._segment_bits(segment, version)) for segment in segments)
        assert symbol._bits(segments, version) == written


def test_a_run_of_fourteen_digits_at_the_end_is_written_in_numeric_mode():
    """ISO/IEC 18004, 7.4: 47 bits instead of 77, which is more than the head of another segment takes."""
    assert [len(segment) for segment in symbol._segments("HTTPS:" + "7" * 14)] == [6, 14]
    assert [len(segment) for segment in symbol._segments("HTTPS:" + "7" * 13)] == [19]


@pytest.mark.parametrize("mask", range(8))
@pytest.mark.parametrize("level", "LMQH")
def test_modules_are_the_librarys_own(level, mask):
    """Put together by array operations, but module for module what the library draws."""
    made = symbol.qr(LINK, level, mask=mask)
    theirs = QRCode(
        version=made.version,
        error_correction=getattr(constants, f"ERROR_CORRECT_{level}"),
        mask_pattern=mask,
    )
    theirs.add_data(LINK, optimize=14)
    theirs.make(fit=False)
    assert np.array_equal(made.modules, np.array(theirs.modules))


def test_chosen_mask_has_the_least_penalty():
    chosen = symbol.qr(LINK, "H")
    penalties = [penalty_in_plain_loops(symbol.qr(LINK, "H", mask=mask).modules) for mask in range(8)]
    assert penalties[chosen.mask] == min(penalties)


def test_the_penalty_counts_what_the_standard_counts():
    random = np.random.default_rng(7)
    for made in (
        np.stack([symbol.qr(LINK, "H", mask=mask).modules for mask in range(8)]),
        random.random((6, 21, 21)) < 0.5,
        np.repeat(random.random((6, 25, 5)) < 0.7, 5, axis=2),  # long runs
        np.repeat(random.random((6, 5, 25)) < 0.2, 5, axis=1),
    ):
        found = symbol._penalties(made.astype(np.uint8))
        assert found.tolist() == [penalty_in_plain_loops(one) for one in made.astype(np.uint8)]


def test_a_codeword_has_eight_modules():
    for version in (1, 2, 5, 7):
        words = symbol.codeword_of_module(version)
        assert set(np.bincount(words[words >= 0])) == {8}


def penalty_in_plain_loops(modules):
    """The four rules of ISO/IEC 18004, 7.8.3, written out one by one."""
    size, total = len(modules), 0
    for lines in (modules, modules.T):
        for line in lines:
            text = "".join("1" if dark else "0" for dark in line)
            for run in text.replace("01", "0 1").replace("10", "1 0").split():
                total += len(run) - 2 if len(run) >= 5 else 0
            for start in range(size - 10):
                total += 40 * (text[start : start + 11] in ("10111010000", "00001011101"))
    for y in range(size - 1):
        for x in range(size - 1):
            total += 3 * (modules[y : y + 2, x : x + 2].sum() in (0, 4))
    return total + 10 * int(abs(modules.mean() - 0.5) * 20)


def test_digits_go_in_numeric_mode():
    letters = symbol.version_for(LINK.replace("9", "A"), "H")
    assert symbol.version_for(LINK, "H") < letters


def test_too_much_text_is_refused():
    with pytest.raises(SymbolError, match="too long for a QR code"):
        symbol.qr("A" * 5000, "H")


def test_too_small_a_version_is_refused():
    with pytest.raises(SymbolError, match="too small"):
        symbol.qr(LINK, "H", version=2)


def test_code_128_modules_are_the_librarys_own():
    assert (
        "".join("01"[int(dark)] for dark in symbol.code128("7K3MQ9XW2R1").modules[0])
        == (barcode.Code128("7K3MQ9XW2R1").build()[0])
    )


@pytest.mark.parametrize("text", ["7K3MQ9XW2R1", "12345678901", "00000000000", "ZZZZZZZZZZ9"])
def test_code_128_is_read(text):
    made = symbol.code128(text)
    bars = np.repeat(picture(made, 3)[10 * 3 : 11 * 3], 30, axis=0)
    assert [found.text for found in zxingcpp.read_barcodes(bars)] == [text]


def test_a_bar_code_is_read_whatever_two_digits_begin_the_number():
    """A pair of digits at the start is a number from 0 to 99, never a change of code set."""
    for pair in range(100):
        text = f"{pair:02}69VW5S5Y8"
        bars = np.repeat(picture(symbol.code128(text), 2)[10 * 2 : 11 * 2], 15, axis=0)
        assert [found.text for found in zxingcpp.read_barcodes(bars)] == [text]


def test_code_128_refuses_what_it_cannot_hold():
    with pytest.raises(SymbolError, match="cannot be put in a bar code"):
        symbol.code128("Größe")
