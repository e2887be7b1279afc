"""Codes of a phone against the published test values.

Source: RFC 6238, "TOTP: Time-Based One-Time Password Algorithm", appendix B, the rows of SHA-1; the table has eight
digits, of which a phone's code is the last six (RFC 4226, 5.3: the value modulo a power of ten).
"""

from __future__ import annotations

import base64

import pytest

from api.web import codes

SECRET = base64.b32encode(b"12345678901234567890").decode()
PUBLISHED = {
    59: "94287082",
    1111111109: "07081804",
    1111111111: "14050471",
    1234567890: "89005924",
    2000000000: "69279037",
    20000000000: "65353130",
}


@pytest.mark.parametrize("at", PUBLISHED)
def test_a_code_is_the_published_one(at: int) -> None:
    code = PUBLISHED[at][-6:]
    assert codes.step_of(SECRET, f"{code[:3]} {code[3:]}", at) == at // 30
    assert codes.step_of(SECRET, code, at + 30) == at // 30 == codes.step_of(SECRET, code, at - 30)
    assert codes.step_of(SECRET, code, at + 90) is None
    wrong = f"{(int(code) + 1) % 1_000_000:06}"
    assert codes.step_of(SECRET, wrong, at) is None
