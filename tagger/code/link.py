"""The link on a tag: build it, and read it in the forms it may have.

Own form: ``HTTPS://HOST/T/<NUMBER>/<DIGITS>``. Upper case, so that a QR symbol holds it in
alphanumeric mode at 5.5 bits a character, and the digits in numeric mode at 3 1/3 bits.

GS1 form (GS1 Digital Link URI syntax: a path may stand before the key, and application
identifier 8004 is the GIAI): ``HTTPS://HOST/T/<DIGITS>/8004/<COMPANY PREFIX><NUMBER>``.

Typed or minimal form (an identification link in the sense of IEC 61406-1 is any unique URL of
the object): ``HTTPS://HOST/T/<NUMBER>``, or ``HTTPS://HOST/<NUMBER>``, or the bare number.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from typing import Literal
from urllib.parse import SplitResult, urlsplit

from tagger.code import number as tag_number
from tagger.errors import LinkError, NumberError, Problem
from tagger.messages import Message

Kind = Literal["own", "gs1", "number"]
_EXAMPLE = "https://tags.example.com"
_ALPHANUMERIC = re.compile(r"^[0-9A-Z $%*+\-./:]+$")  # ISO/IEC 18004, table 5
_OWN = re.compile(r"^/T/(?P<number>[^/]+)(?:/(?P<digits>\d+))?/?$", re.IGNORECASE)
_GS1 = re.compile(r"(?:/T/(?P<digits>\d+))?/8004/(?P<giai>[0-9]{4,12}[0-9A-Z]{11})/?$", re.IGNORECASE)
_BARE = re.compile(r"/(?P<number>[0-9A-Z]{5}-?[0-9A-Z]{6})/?$", re.IGNORECASE)


@dataclass(frozen=True)
class Link:
    """What a scanned string says: a tag number, and the digits where it has them."""

    number: str
    digits: str | None
    kind: Kind
    text: str = field(default="", compare=False, repr=False)  # as scanned or typed


def build(
    base_url: str,
    number: str,
    digits: str | None = None,
    *,
    gs1_prefix: str | None = None,
    checked: bool = True,
) -> str:
    """The link for a tag; ``checked`` is False for a specimen alone, whose number no reader accepts.

    Raises LinkError when the base address would not fit a QR symbol's alphanumeric mode.

    >>> build("https://tags.example.com", "7K3MQ9XW2R1", "123")
    'HTTPS://TAGS.EXAMPLE.COM/T/7K3MQ9XW2R1/123'
    """
    base = base_url.strip().rstrip("/").upper()
    parts = _parts(base)
    if parts is None or parts.scheme.upper() not in ("HTTP", "HTTPS") or not parts.netloc:
        raise LinkError(Problem("base_url", base_url, Message("code-link-address", example=_EXAMPLE)))
    if not _ALPHANUMERIC.match(base) or parts.query or parts.fragment or parts.path:
        raise LinkError(Problem("base_url", base_url, Message("code-link-host", example=_EXAMPLE)))
    if checked:
        number = tag_number.validate(number)
    if gs1_prefix:
        stem = f"/T/{digits}" if digits else ""
        return f"{base}{stem}/8004/{gs1_prefix}{number}"
    return f"{base}/T/{number}" + (f"/{digits}" if digits else "")


def number_only(text: str) -> str:
    """A link without its digits: short enough for a small symbol, and read with the shop's record.

    >>> number_only("HTTPS://TAGS.EXAMPLE.COM/T/7K3MQ9XW2R1/123")
    'HTTPS://TAGS.EXAMPLE.COM/T/7K3MQ9XW2R1'
    >>> number_only("HTTPS://TAGS.EXAMPLE.COM/T/123/8004/95123457K3MQ9XW2R1")
    'HTTPS://TAGS.EXAMPLE.COM/8004/95123457K3MQ9XW2R1'
    """
    path = urlsplit(text).path
    match = _OWN.search(path) or _GS1.search(path)
    digits = match["digits"] if match else None
    if digits is None:
        return text
    if text.endswith(f"/{digits}"):
        return text.removesuffix(f"/{digits}")
    return text.replace(f"/T/{digits}/8004/", "/8004/")


_LONGEST = 4_000  # characters; no symbol that is read holds more, and a search takes the square of it


def parse(text: str) -> Link:
    """Reads a scanned or typed string.

    Raises LinkError for a string that is no link of ours, NumberError for a slip in the number.

    >>> parse("https://tags.example.com/t/7k3mq-9xw2r1/123")
    Link(number='7K3MQ9XW2R1', digits='123', kind='own')
    """
    text = text.strip()
    parts = _parts(text) if "/" in text else SplitResult("", "", "", "", "")
    if parts is None or len(text) > _LONGEST:
        raise _unknown(text[:_LONGEST])
    path = parts.path
    if match := _OWN.search(path):
        return Link(tag_number.validate(match["number"]), match["digits"], "own", text)
    if match := _GS1.search(path):
        number = tag_number.validate(match["giai"][-tag_number.LENGTH :])
        return Link(number, match["digits"], "gs1", text)
    if match := _BARE.search(path):
        return Link(tag_number.validate(match["number"]), None, "number", text)
    if not path and text:
        return Link(tag_number.validate(text), None, "number", text)
    raise _unknown(text)


def _parts(address: str) -> SplitResult | None:
    """The parts of an address; None for one that is broken, such as ``http://[x/``."""
    try:
        return urlsplit(address)
    except ValueError:
        return None


def _unknown(text: str) -> LinkError:
    return LinkError(Problem("link", text[:120], Message("code-link-unknown")))


def is_valid(text: str) -> bool:
    """Whether ``text`` is a link or number this system can read."""
    try:
        parse(text)
    except (LinkError, NumberError):
        return False
    return True
