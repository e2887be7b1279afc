"""Tag numbers: ten random characters and one check character, shown as XXXXX-XXXXXX.

The alphabet has 32 characters: digits and letters without I, L, O and U, which are misread.
The check character is that of the hybrid system MOD M+1,M of ISO/IEC 7064 with M = 32; it
catches every single wrong character and nearly every swap of two neighbours. Random, so
that nobody can walk through a shop's customers.

>>> validate("7k3mq-9xw2r1")
'7K3MQ9XW2R1'
>>> format("7K3MQ9XW2R1")
'7K3MQ-9XW2R1'
"""

from __future__ import annotations

import secrets

from stdnum.iso7064 import mod_37_36

from tagger.errors import NumberError, Problem
from tagger.messages import Message

ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
LENGTH = 11
_READ_AS = str.maketrans({"O": "0", "I": "1", "L": "1", "-": None, " ": None, "–": None, "—": None})

# Characters that hands and eyes mix up, for suggesting what was meant.
_MIXED_UP = ("8B", "5S", "2Z", "6G", "0DQ", "VY", "MN", "17", "CG", "EF", "PR", "KX")


def make() -> str:
    """A new tag number, from the system's source of randomness (50 bits)."""
    bits = secrets.randbits(5 * (LENGTH - 1))  # five for each character
    body = "".join([ALPHABET[bits >> 5 * place & 31] for place in range(LENGTH - 1)])
    return body + mod_37_36.calc_check_digit(body, ALPHABET)


def compact(text: str) -> str:
    """The number without dashes and blanks, in upper case; O read as 0, I and L as 1.

    >>> compact(" 7k3mq-9xw2ro ")
    '7K3MQ9XW2R0'
    """
    return text.strip().upper().translate(_READ_AS)


def validate(text: str) -> str:
    """The compact number; raises NumberError saying which part looks wrong."""
    number = compact(text)
    strange = tuple(
        Message("code-character-at", character=char, place=place)
        for place, char in enumerate(number, 1)
        if char not in ALPHABET
    )
    if strange:
        raise NumberError(Problem("number", text, Message("code-number-characters", characters=strange)))
    if len(number) != LENGTH:
        wrong = Message("code-number-length", count=len(number), right=LENGTH)
        raise NumberError(Problem("number", text, wrong))
    if not mod_37_36.is_valid(number, ALPHABET):
        raise NumberError(Problem("number", text, _wrong_check(number)))
    return number


def _wrong_check(number: str) -> Message:
    meant = tuple(format(n) for n in near(number)[:3])
    return Message("code-number-check-near", numbers=meant) if meant else Message("code-number-check")


def is_valid(text: str) -> bool:
    """Whether ``text`` is a tag number, in any spelling."""
    try:
        validate(text)
    except NumberError:
        return False
    return True


def format(number: str) -> str:
    """The number as it is shown and printed."""
    number = compact(number)
    return f"{number[:5]}-{number[5:]}"


def near(text: str) -> list[str]:
    """Valid numbers one usual slip away: a look-alike character, or two neighbours swapped."""
    number = compact(text)
    found = []
    for place, char in enumerate(number):
        for group in _MIXED_UP:
            if char in group:
                found += [number[:place] + other + number[place + 1 :] for other in group if other != char]
    for place in range(len(number) - 1):
        swapped = number[:place] + number[place + 1] + number[place] + number[place + 2 :]
        found.append(swapped)
    return [n for n in dict.fromkeys(found) if n != number and is_valid_compact(n)]


def is_valid_compact(number: str) -> bool:
    """Whether a compact number is well formed, without looking for what was meant."""
    return (
        len(number) == LENGTH
        and all(c in ALPHABET for c in number)
        and bool(mod_37_36.is_valid(number, ALPHABET))
    )
