"""Text that comes from outside: files that cannot be used, encodings, JSON."""

from __future__ import annotations

import codecs
import errno
import json
from typing import Any

from tagger.errors import Problem, SpecError
from tagger.messages import Message

# Longest first: the mark of UTF-32 begins with that of UTF-16.
_MARKS = (
    (codecs.BOM_UTF32_LE, "utf-32"),
    (codecs.BOM_UTF32_BE, "utf-32"),
    (codecs.BOM_UTF8, "utf-8-sig"),
    (codecs.BOM_UTF16_LE, "utf-16"),
    (codecs.BOM_UTF16_BE, "utf-16"),
)


def unusable(error: OSError) -> Message:
    """Why a file cannot be read or written."""
    match error:
        case FileNotFoundError():
            return Message("spec-file-missing")
        case IsADirectoryError():
            return Message("spec-file-folder")
        case PermissionError():
            return Message("spec-file-denied")
    if error.errno == errno.ENOSPC:
        return Message("spec-file-disk-full")
    return Message("spec-file-unusable", reason=error.strerror or str(error))


def marked(data: bytes) -> str:
    """The encoding that a byte order mark names (Unicode Standard, 23.8); UTF-8 without one.

    >>> marked(b"\\xff\\xfe{\\x00"), marked(b"{}")
    ('utf-16', 'utf-8')
    """
    return next((name for mark, name in _MARKS if data.startswith(mark)), "utf-8")


def text(data: bytes | str) -> str:
    """A file's text. Raises SpecError naming the encoding."""
    if isinstance(data, str):
        return data.removeprefix("\ufeff")
    encoding = marked(data)
    try:
        return data.decode(encoding)
    except UnicodeDecodeError:
        if encoding == "utf-8":
            wrong = Message("spec-not-utf8")
        else:
            wrong = Message("spec-encoding-damaged", encoding=encoding.removesuffix("-sig").upper())
        raise SpecError(Problem("spec", None, wrong)) from None


def json_value(data: bytes | str) -> Any:
    """The value of a JSON text. Raises SpecError where it is not JSON, or has a key twice.

    RFC 8259 leaves open what a repeated key means; either of the two could be the one that was meant.
    """
    try:
        value = json.loads(text(data), object_pairs_hook=_Object)
    except json.JSONDecodeError as error:
        wrong = Message("spec-not-json", line=error.lineno, column=error.colno)
        raise SpecError(Problem("spec", None, wrong)) from None
    except RecursionError:
        raise SpecError(Problem("spec", None, Message("spec-too-deep"))) from None
    except ValueError:  # what Python says of a number of thousands of digits
        raise SpecError(Problem("spec", None, Message("spec-number-too-long"))) from None
    if twice := _twice(value):
        raise SpecError(Problem(field, None, Message("spec-twice")) for field in twice)
    return value


class _Object(dict[str, Any]):
    """An object that remembers which of its keys came twice."""

    def __init__(self, pairs: list[tuple[str, Any]]) -> None:
        super().__init__(pairs)
        keys = [key for key, _ in pairs]
        self.twice = [key for key in self if keys.count(key) > 1] if len(self) < len(keys) else []


def _twice(value: object) -> list[str]:
    """The dotted paths of all keys that appear twice; without recursion, however deep the nesting."""
    found: list[str] = []
    left: list[tuple[str, object]] = [("", value)]
    while left:
        path, one = left.pop()
        if isinstance(one, _Object):
            found += [f"{path}{key}" for key in one.twice]
            left += [(f"{path}{key}.", inner) for key, inner in one.items()]
        elif isinstance(one, list):
            left += [(f"{path}{place}.", inner) for place, inner in enumerate(one)]
    return found
