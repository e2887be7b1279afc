"""The seal of a signed tag: a key id and an Ed25519 signature (RFC 8032) behind the payload, in the same digits.

Signed are the tag number, the key id and the payload, as text that names what it is for: a signature
can serve for no other number, no other values, and nothing but a tag. Keys and whose they are: ``tagger/signing.py``.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Final

from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey, Ed25519PublicKey

from tagger.code import payload

_SIGNATURE_BITS: Final = 512
_PURPOSE: Final = "hose-tag-1"  # the same words for ever: another kind of text gets another
SIGNED_TEXT: Final = f"{_PURPOSE}:{{number}}:{{key_id}}:{{digits}}"
"""What is signed, in ASCII: the number without its dash, the payload's digits alone."""
_FIELD: Final = 2**255 - 19
_EIGHTH: Final = 2707385501144840649318225287225658788936804267575313519463743609750303402022
_SMALL: Final = frozenset({0, 1, _FIELD - 1, _EIGHTH, _FIELD - _EIGHTH})
"""The y of every point whose order divides 8: as a public key, such a point would let anybody sign."""


@dataclass(frozen=True)
class Seal:
    """Which key signed (1 to 255), and its signature of 64 bytes."""

    key_id: int
    signature: bytes


def text(number: str, digits: str, key_id: int) -> bytes:
    """What is signed: ``number`` without its dash, ``digits`` of the payload alone.

    >>> text("7K3MQ9XW2R1", "1234567890", 3)
    b'hose-tag-1:7K3MQ9XW2R1:3:1234567890'
    """
    return SIGNED_TEXT.format(number=number, key_id=key_id, digits=digits).encode("ascii")


def sealed(number: str, digits: str, key_id: int, private: bytes) -> str:
    """The digits of the signed tag. ``private``: the private key of RFC 8032, 32 bytes."""
    seal = key_id << _SIGNATURE_BITS | int.from_bytes(signed(text(number, digits, key_id), private), "big")
    return str(int(digits) << payload.SEAL_BITS | seal)


def opened(digits: str) -> tuple[str, Seal | None]:
    """The payload's digits alone, and the seal where there is one. Raises PayloadError."""
    alone, seal = payload.unsealed(digits)
    if seal is None:
        return alone, None
    signature = (seal & (1 << _SIGNATURE_BITS) - 1).to_bytes(64, "big")
    return alone, Seal(seal >> _SIGNATURE_BITS, signature)


def fits(number: str, digits: str, seal: Seal, public: bytes) -> bool:
    """Whether the holder of ``public`` (32 bytes) signed these digits for this number."""
    return verified(text(number, digits, seal.key_id), seal.signature, public)


def signed(message: bytes, private: bytes) -> bytes:
    """The signature of a message, 64 bytes."""
    return _own(private).sign(message)


@lru_cache(maxsize=2)
def _own(private: bytes) -> Ed25519PrivateKey:
    """Made once for a run: half the time of a signature."""
    return Ed25519PrivateKey.from_private_bytes(private)


def verified(message: bytes, signature: bytes, public: bytes) -> bool:
    """Whether it is the signature of this message by the holder of ``public``."""
    if not is_sound(public):
        return False
    try:
        Ed25519PublicKey.from_public_bytes(public).verify(signature, message)
    except InvalidSignature:
        return False
    return True


def public_of(private: bytes) -> bytes:
    """The public key of a private one."""
    return Ed25519PrivateKey.from_private_bytes(private).public_key().public_bytes_raw()


def is_sound(public: bytes) -> bool:
    """Whether a key is 32 bytes, in the one spelling that RFC 8032 has for it, and of no small order."""
    if len(public) != 32:
        return False
    y = int.from_bytes(public, "little") & (1 << 255) - 1
    return y < _FIELD and y not in _SMALL
