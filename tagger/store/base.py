"""The base class of the parts of the store."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Callable, Iterator, Mapping
from contextlib import AbstractContextManager
from datetime import UTC, datetime
from typing import Any, TypeVar

from sqlalchemy.orm import Session

from tagger.code import number as tag_number
from tagger.errors import Problem
from tagger.messages import Message
from tagger.store.database import Database

Clock = Callable[[], datetime]
T = TypeVar("T")


def utc_now() -> datetime:
    return datetime.now(UTC)


class Part:
    """A part of the store: its database, and its clock (a test may set it)."""

    def __init__(self, database: Database, now: Clock = utc_now) -> None:
        self.database = database
        self.now = now

    def reading(self) -> AbstractContextManager[Session]:
        return self.database.reading()

    def writing(self) -> AbstractContextManager[Session]:
        return self.database.writing()

    def act(self, work: Callable[[Session], T]) -> T:
        return self.database.act(work)


def compact(number: str) -> str:
    """A tag number as it is kept. Raises NumberError for one with a slip in it."""
    return tag_number.validate(number)


def not_registered(number: str, field: str = "number") -> Problem:
    """The problem of a tag number that has no record."""
    shown = tag_number.format(number)
    return Problem(field, shown, Message("store-not-registered", number=shown))


def fingerprint(value: Any) -> str:
    """Tells whether two requests with one key ask for the same thing."""
    return hashlib.sha256(as_written(value)).hexdigest()


def as_written(value: Any) -> bytes:
    """A value as it is fingerprinted: the same bytes for the same values."""
    return _WRITTEN(value).encode(errors="surrogatepass")


_WRITTEN = json.JSONEncoder(sort_keys=True, default=str, ensure_ascii=False).encode


def written_beside(value: Mapping[str, Any], name: str, text: str) -> bytes:
    """An object as ``as_written``, which under ``name`` has what ``text`` is in JSON already.

    >>> written_beside({"a": 1, "z": None}, "b", "[2, 3]")
    b'{"a": 1, "b": [2, 3], "z": null}'
    """
    members = (f'"{key}": {text if key == name else _WRITTEN(value[key])}' for key in sorted((*value, name)))
    return f"{{{', '.join(members)}}}".encode(errors="surrogatepass")


def fingerprint_of(text: str) -> str:
    """The fingerprint of a value that is written already, with its keys in order."""
    return hashlib.sha256(text.encode(errors="surrogatepass")).hexdigest()


def hashed(secret: str) -> str:
    """What is kept of a text that is only ever compared: a cookie, a token, the key of a count."""
    return hashlib.sha256(secret.encode(errors="surrogatepass")).hexdigest()


def in_chunks(items: list[str], size: int = 500) -> Iterator[list[str]]:
    """Databases limit how many values one statement may name."""
    for start in range(0, len(items), size):
        yield items[start : start + size]
