"""Codes of a phone that stand beside a password (TOTP, RFC 6238), and recovery codes for when it is lost."""

from __future__ import annotations

import re
import secrets
import time
from typing import Final

import pyotp

from tagger.code import symbol
from tagger.store import Person, Store
from tagger.store.own_account import Noted

RECOVERY_CODES: Final = 10
_STEP_S: Final = 30
_ALPHABET: Final = "0123456789abcdefghjkmnpqrstvwxyz"


def new_secret() -> str:
    """160 bits in base32, what RFC 4226 advises."""
    return pyotp.random_base32()


def is_secret(text: str) -> bool:
    """Whether it is one as ``new_secret`` draws them."""
    return re.fullmatch("[A-Z2-7]{32}", text) is not None


def address(secret: str, name: str, shop: str) -> str:
    """What the phone scans."""
    return pyotp.TOTP(secret).provisioning_uri(name=name, issuer_name=shop)


def picture(text: str) -> str:
    """A QR symbol as SVG, one unit a module, without styles."""
    made = symbol.qr(text, "M")
    dark = "".join(
        f"M{x + made.quiet} {y + made.quiet}h1v1h-1z"
        for y, row in enumerate(made.modules)
        for x, on in enumerate(row)
        if on
    )
    side = made.full_size
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {side} {side}" width="240" height="240" '
        f'shape-rendering="crispEdges"><path fill="#fff" d="M0 0h{side}v{side}H0z"/><path d="{dark}"/></svg>'
    )


def step_of(secret: str, code: str, now: float | None = None) -> int | None:
    """Which step of 30 s the code is of: this one, the last or the next, for a clock that is off; else None.

    ``now``: seconds since 1970, by default those of the clock.
    """
    given = "".join(code.split())
    today = int((time.time() if now is None else now) // _STEP_S)
    try:
        totp = pyotp.TOTP(secret)
        near = range(max(0, today - 1), today + 2)
        fits = [step for step in near if secrets.compare_digest(totp.generate_otp(step), given)]
    except (ValueError, TypeError):  # no secret, or no digits
        return None
    return max(fits, default=None)


def new_recovery_codes() -> list[str]:
    """Codes to write down: 120 bits each, in groups of four; without I, L, O and U."""
    drawn = ["".join(secrets.choice(_ALPHABET) for _ in range(24)) for _ in range(RECOVERY_CODES)]
    return ["-".join(code[place : place + 4] for place in range(0, 24, 4)) for code in drawn]


def plain(code: str) -> str:
    """A recovery code as it is kept, however it was typed.

    >>> plain(" 12AB-34cd 56ef-789O")
    '12ab34cd56ef7890'
    """
    typed = "".join(character for character in code.lower() if character.isalnum())
    return typed.translate(str.maketrans("oil", "011"))


def accepted(store: Store, person: Person, code: str, *, address: str | None = None) -> str | None:
    """How a code was good, ``"code"`` or ``"recovery code"``; it is used up. None where it is not.

    ``address``: from where; of one that was used before the person is told.
    """
    secret = store.code_secret(person.id)
    step = step_of(secret, code) if secret else None
    if step is not None:
        if store.use_step(person.id, step):
            return "code"
        store.note(person.id, Noted.CODE_AGAIN, address=address)
        return None
    return "recovery code" if store.use_recovery_code(person.id, plain(code)) else None
