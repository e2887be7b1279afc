"""The texts of an assembly's record: what a shop notes beside the spec, such as whose it is.

This is their only list. Each is optional text of at most ``MAX_LENGTH`` characters; it goes into the
database and never into the symbol. Registering, finding, lists, exports, the command line, the
bench's forms, the JSON API and the fields of label templates all read the list here; what else a
new one needs is its column in ``store/models.py`` with a migration, and its caption
(``words-record-<name>``) in every language.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, fields
from datetime import date

from tagger.errors import Problem
from tagger.messages import Message

MAX_LENGTH = 120
_ISO_4406 = re.compile(r"([0-9]{1,2})/([0-9]{1,2})/([0-9]{1,2})")
_HIGHEST_SCALE_NUMBER = 28  # ISO 4406 as published tables print it: 0 to 28


@dataclass(frozen=True, kw_only=True)
class Record:
    """Base class of whatever carries these texts; None: not given."""

    customer: str | None = None
    machine: str | None = None
    position: str | None = None  # where on the machine
    reason: str | None = None  # why it was built although a source speaks of a danger
    cleanliness: str | None = None  # the class asked for, as a code of ISO 4406: "18/16/13"


@dataclass(frozen=True)
class Stop:
    """Why a hose must not be used, since when and by whose word.

    ``why``: the causes in full, the gravest first; ``brief``: that one without what somebody typed in, where
    there is little room. ``on`` and ``by`` are its day and person.
    """

    why: tuple[Message, ...]
    brief: Message
    on: date
    by: str | None = None


RECORD_FIELDS = tuple(field.name for field in fields(Record))


def recorded(holder: object) -> dict[str, str | None]:
    """The texts of anything that has them as attributes, by name."""
    return {name: getattr(holder, name) for name in RECORD_FIELDS}


def as_kept(name: str, text: str | None) -> str | None:
    """A text of the record on one line; None where it is empty.

    >>> as_kept("machine", " Loader  4 "), as_kept("cleanliness", "18 / 16 / 13"), as_kept("position", " ")
    ('Loader 4', '18/16/13', None)
    """
    words = (text or "").split()
    return ("" if name == "cleanliness" else " ").join(words) or None


def problem_of(name: str, text: str | None) -> Problem | None:
    """What is wrong with the form of a text, as kept; None where nothing is.

    A code of ISO 4406 counts the particles above 4, 6 and 14 µm: three scale numbers, none above the one before.
    """
    if name != "cleanliness" or text is None:
        return None
    found = _ISO_4406.fullmatch(text)
    numbers = [int(number) for number in found.groups()] if found else []
    if numbers and numbers == sorted(numbers, reverse=True) and numbers[0] <= _HIGHEST_SCALE_NUMBER:
        return None
    return Problem(name, text[:40], Message("spec-cleanliness-code"))
