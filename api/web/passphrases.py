"""Passwords that are refused: too short, too simple, or among the commonest (NIST SP 800-63B, 5.1.1.2).

No rules of composition: a phrase of plain words is a good one. ``data/common_passwords.csv`` holds, of the 30,000
commonest passwords that the library zxcvbn lists (MIT), the first 3,000 and all of ten characters and more.
"""

from __future__ import annotations

import csv
import hashlib
import re
from functools import cache
from itertools import pairwise
from pathlib import Path
from typing import Final

from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.store.folding import fold

LEAST: Final = 12
MOST: Final = 128
_COMMON = Path(__file__).parent / "data" / "common_passwords.csv"
_FEW: Final = 4
"""So many different characters, or characters beside a known word, make nothing harder to guess."""


def refuse_weak(password: str, *own: str) -> None:
    """Raises StoreError saying why. ``own``: words that anybody would try here, such as the person's name."""
    if len(password) < LEAST:
        raise StoreError(Problem("password", None, Message("guard-password-short", least=LEAST)))
    if len(password) > MOST:
        raise StoreError(Problem("password", None, Message("guard-password-long", most=MOST)))
    plain = fold(password) or ""
    if _is_common(plain) or _is_simple(plain) or any(_is_hardly_more_than(word, plain) for word in own):
        raise StoreError(Problem("password", None, Message("guard-password-common")))


def _is_common(plain: str) -> bool:
    """Whether it is on the list: as it is, with digits and marks about it, or said more than once.

    >>> [_is_common(word) for word in ("!!letmein12345", "letmeinletmein", "letmein, I have the keys")]
    [True, True, False]
    """
    bare = re.sub(r"^[\W\d_]+|[\W\d_]+$", "", plain)
    once = {re.sub(r"^(.+?)\1+$", r"\1", word[:200]) for word in (plain, bare)}
    return any(_short_hash(word) in _common() for word in {plain, bare, *once} if word)


def _is_simple(plain: str) -> bool:
    """Whether it repeats a few characters, or counts up or down.

    >>> [_is_simple(word) for word in ("abababababab", "abcdefghijklm", "987654321098", "correct horse")]
    [True, True, False, False]
    """
    steps = {ord(after) - ord(before) for before, after in pairwise(plain)}
    return len(set(plain)) <= _FEW or len(steps) == 1


def _is_hardly_more_than(word: str, plain: str) -> bool:
    """Whether little is left of it without the word.

    >>> _is_hardly_more_than("Ridge Hose", "ridgehose2026"), _is_hardly_more_than("Al", "al has a boat")
    (True, False)
    """
    letters = re.sub(r"\W", "", fold(word) or "")
    bare = re.sub(r"\W", "", plain)
    return bool(letters) and letters in bare and len(bare.replace(letters, "")) <= _FEW


def _short_hash(word: str) -> str:
    return hashlib.sha256(word.encode(errors="surrogatepass")).hexdigest()[:12]


@cache
def _common() -> frozenset[str]:
    """The first 12 hex digits of their SHA-256: nobody need read the words here."""
    with _COMMON.open(encoding="utf-8", newline="") as file:
        return frozenset(row["sha256_12"] for row in csv.DictReader(file))
