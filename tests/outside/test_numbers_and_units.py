"""Check characters, the payload's check value and unit conversions against published figures."""

from __future__ import annotations

import pytest
from stdnum.iso7064 import mod_37_36

from tagger import units
from tagger.code import payload
from tests.outside.published import rows

ALPHABETS = {"mod37_36": "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ", "mod11_10": "0123456789"}


@pytest.mark.parametrize("row", rows("iso_7064_hybrid_systems.csv"), ids=lambda row: row["text"])
def test_the_hybrid_system_gives_the_published_check_character(row: dict[str, str]) -> None:
    # The same function, over the 32-letter alphabet, checks tag numbers; no example of that is published.
    assert mod_37_36.calc_check_digit(row["text"], ALPHABETS[row["system"]]) == row["check_character"]


def test_the_crc_has_its_published_check_value() -> None:
    # CRC-16/XMODEM of "123456789" is 0x31C3: public catalogue of parametrised CRC algorithms.
    text = b"123456789"
    assert payload._crc(int.from_bytes(text, "big"), len(text) * 8) == 0x31C3


@pytest.mark.parametrize("row", rows("unit_conversions.csv"), ids=lambda row: row["given"])
def test_conversions_agree_with_what_manuals_print(row: dict[str, str]) -> None:
    figure, unit = row["printed"].split()
    read = units.read_pressure_bar if unit == "bar" else units.read_torque_nm
    assert round(read(row["given"])) == pytest.approx(float(figure), abs=float(row["printed_to"]) * 0.5)


def test_the_inch_and_the_pound_force_are_the_defined_ones() -> None:
    # NIST SP 811, appendix B.8: 1 in = 25.4 mm exactly, 1 psi = 6.894757 kPa, 1 lbf·ft = 1.355818 N·m.
    assert units.read_length_mm("1 in") == 25.4
    assert units.read_pressure_bar("1 psi") == pytest.approx(0.06894757, rel=1e-7)
    assert units.read_torque_nm("1 lbf·ft") == pytest.approx(1.355818, rel=1e-6)
    assert units.read_torque_nm("12 lbf·in") == pytest.approx(1.355818, rel=1e-6)
