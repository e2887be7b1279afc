"""The octets of IPP requests and answers: the encoding of RFC 8010, sections 3.1 to 3.9.

Attributes are a dict from name to the list of its values; a collection is such a dict again.
"""

from __future__ import annotations

import struct
from collections.abc import Iterable
from typing import NamedTuple


class Resolution(NamedTuple):
    """Dots an inch, across the feed and along it."""

    across: int
    along: int


Attributes = dict[str, list["Value"]]
Value = str | int | bool | range | Resolution | Attributes


class Tag:
    """The tags of RFC 8010, 3.5, that are used here."""

    OPERATION, JOB, END = 0x01, 0x02, 0x03
    INTEGER, BOOLEAN, ENUM = 0x21, 0x22, 0x23
    RESOLUTION, RANGE, COLLECTION, END_COLLECTION = 0x32, 0x33, 0x34, 0x37
    NAME, KEYWORD, URI, CHARSET, LANGUAGE, MIME, MEMBER = 0x42, 0x44, 0x45, 0x47, 0x48, 0x49, 0x4A


Given = str | int | list[tuple[str, int, "Given"]]
Attribute = tuple[str, int, Given]
"""Name, tag and value of an attribute to send; a collection's value is the list of its members."""


class Broken(ValueError):
    """Octets that are not an IPP answer."""


def encode(operation: int, groups: Iterable[tuple[int, Iterable[Attribute]]]) -> bytes:
    """A request of IPP 2.0 up to its end tag; a document may follow."""
    body = struct.pack(">BBHI", 2, 0, operation, 1)
    for group, attributes in groups:
        body += bytes([group]) + b"".join(_attribute(*one) for one in attributes)
    return body + bytes([Tag.END])


def _attribute(name: str, tag: int, value: Given) -> bytes:
    if isinstance(value, list):  # RFC 8010, 3.1.6
        members = b"".join(_piece(Tag.MEMBER, "", n.encode()) + _attribute("", t, v) for n, t, v in value)
        return _piece(tag, name, b"") + members + _piece(Tag.END_COLLECTION, "", b"")
    return _piece(tag, name, struct.pack(">i", value) if isinstance(value, int) else value.encode())


def _piece(tag: int, name: str, value: bytes) -> bytes:
    named = name.encode()
    return struct.pack(">BH", tag, len(named)) + named + struct.pack(">H", len(value)) + value


def decode(data: bytes) -> tuple[int, Attributes]:
    """Status and attributes, of all groups together. Raises Broken."""
    try:
        (status,) = struct.unpack_from(">H", data, 2)
        reader, found, values = _Reader(data, 8), Attributes(), list[Value]()
        while (tag := reader.tag()) != Tag.END:
            if tag < 0x10:  # the next group begins
                continue
            name, raw = reader.counted(), reader.counted()
            if name:  # an empty one adds a value to the attribute before
                values = found.setdefault(name.decode(), [])
            if (value := reader.value(tag, raw)) is not None:
                values.append(value)
    except (IndexError, struct.error, UnicodeDecodeError, RecursionError) as error:
        raise Broken(str(error)) from error
    return status, found


class _Reader:
    def __init__(self, data: bytes, at: int) -> None:
        self.data, self.at = data, at

    def tag(self) -> int:
        self.at += 1
        return self.data[self.at - 1]

    def counted(self) -> bytes:
        (length,) = struct.unpack_from(">H", self.data, self.at)
        start, self.at = self.at + 2, self.at + 2 + length
        if self.at > len(self.data):
            raise IndexError("the answer ends too early")
        return self.data[start : self.at]

    def value(self, tag: int, raw: bytes) -> Value | None:
        if tag in (Tag.INTEGER, Tag.ENUM):
            return int(struct.unpack(">i", raw)[0])
        if tag == Tag.BOOLEAN:
            return raw != b"\0"
        if tag == Tag.RANGE:
            low, high = struct.unpack(">ii", raw)
            return range(low, high + 1)
        if tag == Tag.RESOLUTION:
            across, along, unit = struct.unpack(">iib", raw)
            inch = 1 if unit == 3 else 2.54  # 4 is dots a centimetre
            return Resolution(round(across * inch), round(along * inch))
        if tag == Tag.COLLECTION:
            return self.collection()
        return raw.decode() if 0x41 <= tag <= 0x49 else None

    def collection(self) -> Attributes:
        found, values = Attributes(), list[Value]()
        while (tag := self.tag()) != Tag.END_COLLECTION:
            _, raw = self.counted(), self.counted()
            if tag == Tag.MEMBER:
                values = found.setdefault(raw.decode(), [])
            elif (value := self.value(tag, raw)) is not None:
                values.append(value)
        self.counted(), self.counted()
        return found
