"""Text that comes from outside: its encoding, and the JSON in it."""

from __future__ import annotations

import codecs
import json
from typing import Any

from tagger.errors import Problem, SpecError

# Longest first: the mark of UTF-32 begins with that of UTF-16.
_MARKS = (
    (codecs.BOM_UTF32_LE, "utf-32"),
    (codecs.BOM_UTF32_BE, "utf-32"),
    (codecs.BOM_UTF8, "utf-8-sig"),
    (codecs.BOM_UTF16_LE, "utf-16"),
    (codecs.BOM_UTF16_BE, "utf-16"),
)


def marked(data: bytes) -> str:
    """The encoding that a byte order mark names (Unicode Standard, 23.8); UTF-8 without one.

    >>> marked(b"\\xff\\xfe{\\x00"), marked(b"{}")
    ('utf-16', 'utf-8')
    """
    return next((name for mark, name in _MARKS if data.startswith(mark)), "utf-8")


def text(data: bytes | str) -> str:
    """A file's text. Raises SpecError naming the encoding and the mend."""
    if isinstance(data, str):
        return data.removeprefix("\ufeff")
    encoding = marked(data)
    try:
        return data.decode(encoding)
    except UnicodeDecodeError:
        if encoding == "utf-8":
            why = "is not UTF-8 text: perhaps it was saved as Latin-1 or Windows-1252"
        else:
            why = f"begins as {encoding.removesuffix('-sig').upper()} text, but is damaged"
        raise SpecError(Problem("spec", None, why, "Save it again with the encoding UTF-8.")) from None


def json_value(data: bytes | str) -> Any:
    """The value of a JSON text. Raises SpecError where it is none, or says a thing twice.

    RFC 8259 leaves open what a key given twice means; here either of the two could be the one
    that was meant.
    """
    try:
        value = json.loads(text(data), object_pairs_hook=_Object)
    except json.JSONDecodeError as error:
        why = f"is not JSON from line {error.lineno}, column {error.colno} on"
        raise SpecError(Problem("spec", None, why, "Check quotes, commas and brackets there.")) from None
    except RecursionError:
        why = "is nested too deeply for a spec"
        raise SpecError(
            Problem("spec", None, why, "Give the fields of a spec, nothing around them.")
        ) from None
    except ValueError:  # what Python says of a number of thousands of digits
        why = "has a number that is too long"
        raise SpecError(Problem("spec", None, why, "Give figures of a hose.")) from None
    if twice := _twice(value):
        raise SpecError(Problem(field, None, "stands twice", "Keep one.") for field in twice)
    return value


class _Object(dict[str, Any]):
    """An object that remembers which of its keys came twice."""

    def __init__(self, pairs: list[tuple[str, Any]]) -> None:
        super().__init__(pairs)
        keys = [key for key, _ in pairs]
        self.twice = [key for key in self if keys.count(key) > 1] if len(self) < len(keys) else []


def _twice(value: object) -> list[str]:
    """The dotted paths of all keys that stand twice; without recursion, however deep it is nested."""
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
