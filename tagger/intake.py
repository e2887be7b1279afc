"""Text that comes from outside: files that cannot be used, encodings, JSON."""

from __future__ import annotations

import codecs
import errno
import json
import math
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


def json_value(data: bytes | str, field: str = "spec") -> Any:
    """The value of a JSON text. Raises SpecError where it is not JSON, or has a key twice.

    RFC 8259 leaves open what a repeated key means; either of the two could be the one that was meant.
    It has no NaN and no Infinity (6), which Python would read, and halves of a UTF-16 pair (8.2) cannot be kept
    or sent. ``field``: what a refusal of the whole names.
    """
    try:
        value = json.loads(
            text(data), object_pairs_hook=_Object, parse_float=_finite, parse_constant=_no_constant
        )
    except json.JSONDecodeError as error:
        wrong = Message("spec-not-json", line=error.lineno, column=error.colno)
        raise SpecError(Problem(field, None, wrong)) from None
    except RecursionError:
        raise SpecError(Problem(field, None, Message("spec-too-deep"))) from None
    except _NoConstant:
        raise SpecError(Problem(field, None, Message("spec-json-unreadable"))) from None
    except ValueError:  # a number of thousands of digits, or beyond what a float holds
        raise SpecError(Problem(field, None, Message("spec-number-too-long"))) from None
    if problems := _problems(value, field):
        raise SpecError(problems)
    return value


class _NoConstant(ValueError):
    """NaN, Infinity or -Infinity."""


def _no_constant(name: str) -> float:
    raise _NoConstant(name)


def _finite(digits: str) -> float:
    number = float(digits)
    if not math.isfinite(number):
        raise ValueError(digits)
    return number


class _Object(dict[str, Any]):
    """An object that remembers which of its keys came twice."""

    def __init__(self, pairs: list[tuple[str, Any]]) -> None:
        super().__init__(pairs)
        keys = [key for key, _ in pairs]
        self.twice = [key for key in self if keys.count(key) > 1] if len(self) < len(keys) else []


def _problems(value: object, whole: str) -> list[Problem]:
    """Every key that comes twice, and every text that no encoding can hold; without recursion, however deep."""
    found: list[Problem] = []
    left: list[tuple[str, object]] = [("", value)]
    while left:
        path, one = left.pop()
        if isinstance(one, _Object):
            found += [Problem(f"{path}{_shown(key)}", None, Message("spec-twice")) for key in one.twice]
            left += [(f"{path}{_shown(key)}.", inner) for key, inner in one.items()]
            left += [(path, key) for key in one]
        elif isinstance(one, list):
            left += [(f"{path}{place}.", inner) for place, inner in enumerate(one)]
        elif isinstance(one, str) and _shown(one) != one:
            found.append(
                Problem(path.removesuffix(".") or whole, _shown(one)[:40], Message("spec-half-character"))
            )
    return found


def _shown(text: str) -> str:
    """The text with a question mark for each half of a UTF-16 pair."""
    return text.encode("utf-8", "replace").decode()
