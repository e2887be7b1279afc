"""QR capacities and Code 128 check values against published figures."""

from __future__ import annotations

import barcode
import pytest
from barcode.charsets import code128 as charset

from tagger.code import symbol
from tests.outside.published import rows


@pytest.mark.parametrize("row", rows("qr_capacity.csv"), ids=lambda row: f"{row['version']}-{row['level']}")
def test_a_symbol_holds_what_the_standard_says(row: dict[str, str]) -> None:
    version, level = int(row["version"]), row["level"]
    assert symbol.capacity_bits(version, level) == int(row["data_bits"])
    digits, letters = int(row["numeric"]), int(row["alphanumeric"])
    assert symbol.version_for("7" * digits, level) == version
    assert symbol.version_for("7" * (digits + 1), level) == version + 1
    assert symbol.version_for("A" * letters, level) == version
    assert symbol.version_for("A" * (letters + 1), level) == version + 1


@pytest.mark.parametrize("row", rows("code_128_check.csv"), ids=lambda row: row["text"])
def test_code_128_has_the_published_check_value(row: dict[str, str]) -> None:
    # The published sums start in the set named; a symbol started otherwise has another sum, so
    # the values of that set are summed here and compared with the library's own check function.
    text = row["text"]
    if row["start_set"] == "C":  # a pair of digits is its own value
        values = [int(text[at : at + 2]) for at in range(0, len(text), 2)]
    else:
        values = [{"A": charset.A, "B": charset.B}[row["start_set"]][letter] for letter in text]
    start = charset.START_CODES[row["start_set"]]
    code = barcode.Code128(text)
    assert code._calculate_checksum([start, *values]) == int(row["check_value"])


def test_our_code_128_symbol_carries_the_published_check_character() -> None:
    # "345678" starts in set C by itself: 105 + 34 + 2*56 + 3*78 = 485, modulo 103 is 73.
    pattern = "".join("01"[int(dark)] for dark in symbol.code128("345678").modules[0])
    characters = [pattern[at : at + 11] for at in range(0, len(pattern) - 13, 11)]
    assert charset.CODES.index(characters[-1]) == 73
