"""The payload: a tag's whole content as one decimal integer, and back.

The layout is data (``data/payload_v1.json``, ``data/code_points.csv``), read by this module
and by the page's JavaScript alike. Code points are permanent: never reused, never renumbered;
old tags decode for ever. README.md beside this file is the format's specification.

Bits, most significant first: a 1 that keeps leading zeros, the version, the fields, and the
CRC-16/XMODEM of all before it (its check value for "123456789" is 0x31C3).
"""

from __future__ import annotations

import binascii
import json
from collections.abc import Iterator
from datetime import date, timedelta
from fractions import Fraction
from functools import cache
from importlib import resources
from typing import Any

from pydantic import ValidationError

from tagger.connection import code_points
from tagger.errors import PayloadError, Problem, problems_of
from tagger.messages import Message
from tagger.spec import Connection, Sizing, TagContent, dash_of_pipe, pipe_of_dash

_DATA = resources.files(__package__) / "data"
VERSIONS = tuple(sorted(int(f.name[9:-5]) for f in _DATA.iterdir() if f.name.startswith("payload_v")))
VERSION = VERSIONS[-1]  # what is written; all are read
_NAMED = "(named in full)"
_OTHER_SOURCE = 0

Flat = dict[str, Any]


def encode(content: TagContent) -> str:
    """The content as decimal digits.

    Raises PayloadError where a part has no code point, naming the field.
    """
    layout = _layout(VERSION)
    flat = _flatten(content)
    bits = [(1, 1), (VERSION, layout["version_bits"])]
    for field in layout["fields"]:
        bits += _field_bits(field, flat)
    value = length = 0
    for part, width in bits:
        value, length = value << width | part, length + width
    return str(value << 16 | _crc(value, length))


def decode(digits: str) -> TagContent:
    """What the digits say. Raises PayloadError when they are damaged or of a later version."""
    flat, version = _read_flat(digits)
    try:
        return TagContent.model_validate(_unflatten(flat, version))
    except ValidationError as error:
        raise PayloadError(problems_of(error)) from None


def carried(content: TagContent) -> TagContent:
    """The content as a tag carries it: a pressure source in words of its own becomes "see the record"."""
    given = content.spec.working_pressure
    spec = content.spec.carried()
    if given:
        known = given.source in points("pressure_source")
        source = given.source if known else names("pressure_source")[_OTHER_SOURCE]
        told = given.model_copy(update={"source": source, "fluid": None, "max_temperature_c": None})
        spec = spec.model_copy(update={"working_pressure": told})
    return content.model_copy(update={"spec": spec})


def byte_length(digits: str) -> int:
    """How many bytes the digits hold."""
    return (int(digits).bit_length() + 7) // 8


@cache
def points(table: str) -> dict[str, int]:
    """Name to permanent code point of one table."""
    return {row["name"]: int(row["point"]) for row in code_points() if row["table"] == table}


@cache
def names(table: str) -> dict[int, str]:
    """Permanent code point to name of one table."""
    return {point: name for name, point in points(table).items()}


def layout_as_written(version: int) -> dict[str, Any]:
    """The bit layout of one of ``VERSIONS``, as its file has it."""
    layout: dict[str, Any] = json.loads((_DATA / f"payload_v{version}.json").read_text(encoding="utf-8"))
    return layout


@cache
def _layout(version: int) -> dict[str, Any]:
    if version not in VERSIONS:
        raise PayloadError(Problem("digits", None, Message("code-version", version=version)))
    layout = layout_as_written(version)
    for field in layout["fields"]:
        field["step"] = Fraction(str(field.get("step", 1)))
    return layout


def _crc(value: int, length: int) -> int:
    return binascii.crc_hqx(value.to_bytes((length + 7) // 8, "big"), 0)


# --- a content as flat names and values, and back -------------------------------------------


def _flatten(content: TagContent) -> Flat:
    """The layout's fields by name: most are the value at ``at`` in the content, the rest are worked out."""
    content = carried(content)
    values = content.model_dump(mode="json")
    flat = {field["name"]: _value_at(values, field["at"]) for field in _placed(VERSION)}
    spec = content.spec
    hose = spec.hose
    key = f"{hose.standard}|{hose.edition}" if hose.edition else hose.standard
    flat |= {
        "hose.code": key if key in points("hose") else _NAMED,
        "hose.standard": hose.standard,
        "hose.edition": hose.edition or "",
    }
    for name, end in (("end_a", spec.end_a), ("end_b", spec.end_b)):
        flat |= {
            f"{name}.size": end.size_key,
            f"{name}.bend_deg": end.angle_deg,
            f"{name}.jump_size": int(end.hose_dash is not None),
        }
        if end.hose_dash not in (None, hose.dash):
            differs = Message("code-hose-tail", dash=hose.dash)
            raise PayloadError(Problem(f"{name}.hose_dash", end.hose_dash, differs))
    return flat


def _unflatten(flat: Flat, version: int) -> dict[str, Any]:
    values: dict[str, Any] = {}
    for field in _placed(version):
        if field["name"] in flat:
            _put(values, field["at"], flat[field["name"]])
    hose = values["spec"]["hose"]
    standard, _, edition = flat["hose.code"].partition("|")
    if flat["hose.code"] == _NAMED:
        standard, edition = flat["hose.standard"], flat["hose.edition"]
    hose |= {"standard": standard, "edition": edition or None}
    for name in ("end_a", "end_b"):
        by_dash = Connection(flat[f"{name}.connection"]).sized_by is Sizing.DASH
        values["spec"][name] |= {
            "dash" if by_dash else "size": flat[f"{name}.size"],
            "shape": flat[f"{name}.bend_deg"] or "straight",
            "hose_dash": hose["dash"] if flat[f"{name}.jump_size"] else None,
        }
    return values


def _placed(version: int) -> list[dict[str, Any]]:
    """The fields that are a value of the content as it stands."""
    return [field for field in _layout(version)["fields"] if "at" in field]


def _value_at(values: dict[str, Any], place: str) -> Any:
    """The value at a dotted place; None where it, or what should hold it, is absent or empty."""
    found: Any = values
    for key in place.split("."):
        found = found and found[key]
    return None if found == [] else found


def _put(values: dict[str, Any], place: str, value: Any) -> None:
    *above, last = place.split(".")
    for key in above:
        values = values.setdefault(key, {})
    values[last] = value


# --- one field as bits, and back --------------------------------------------------------------


def _field_bits(field: dict[str, Any], flat: Flat) -> Iterator[tuple[int, int]]:
    if not _applies(field, flat):
        return
    value = flat.get(field["name"])
    if field.get("optional"):
        yield (0, 1) if value is None else (1, 1)
        if value is None:
            return
    if field["kind"] == "text":
        yield from _text_bits(field, value or "")
        return
    raw = _raw(field, value, flat)
    if not 0 <= raw < 1 << field["bits"]:
        raise PayloadError(Problem(field["name"], value, Message("code-too-large")))
    yield raw, field["bits"]


def _applies(field: dict[str, Any], flat: Flat) -> bool:
    if "only_with" in field and flat.get(field["only_with"]) is None:
        return False
    return "only_if_zero" not in field or flat[field["only_if_zero"]] == _NAMED


def _raw(field: dict[str, Any], value: Any, flat: Flat) -> int:
    kind, name = field["kind"], field["name"]
    if kind == "point":
        return _point(field["table"], name, value)
    if kind == "flags":
        return sum(1 << _point(field["table"], name, item) for item in value)
    if kind == "date":
        days: int = (date.fromisoformat(value) - date.fromisoformat(field["from"])).days
        return days
    if kind == "size":
        sizing = Connection(flat[name.replace(".size", ".connection")]).sized_by
        if sizing is Sizing.THREAD:
            return _point("thread", name, value)
        try:
            return dash_of_pipe(value) if sizing is Sizing.PIPE else int(value)
        except ValueError:
            raise PayloadError(Problem(name, value, Message("code-not-a-size"))) from None
    raw: int = round(Fraction(str(value)) / field["step"]) - field.get("offset", 0)
    return raw


def _point(table: str, name: str, value: str) -> int:
    try:
        return points(table)[value]
    except KeyError:
        raise PayloadError(Problem(name, value, Message("code-not-stored"))) from None


def _text_bits(field: dict[str, Any], value: str) -> Iterator[tuple[int, int]]:
    longest = (1 << field["bits"]) - 1
    if len(value) > longest or not all(" " <= char <= "~" for char in value):
        raise PayloadError(Problem(field["name"], value, Message("code-text", maximum=longest)))
    yield len(value), field["bits"]
    for char in value:
        yield ord(char), 7


class _Bits:
    """Reads an integer's bits from the most significant down."""

    def __init__(self, value: int, length: int) -> None:
        self.value, self.left = value, length

    def take(self, width: int) -> int:
        if width > self.left:
            raise PayloadError(Problem("digits", None, Message("code-incomplete")))
        self.left -= width
        return self.value >> self.left & (1 << width) - 1


def _read_flat(digits: str) -> tuple[Flat, int]:
    text = digits.strip()
    if not text.isascii() or not text.isdigit() or not 10 <= len(text) <= 300:
        raise PayloadError(Problem("digits", digits[:60], Message("code-not-digits")))
    value = int(text)
    length = value.bit_length() - 16
    body = value >> 16
    if length < 6 or _crc(body, length) != value & 0xFFFF:
        raise PayloadError(Problem("digits", None, Message("code-damaged")))
    bits = _Bits(body, length - 1)
    version = bits.take(4)
    flat: Flat = {}
    for field in _layout(version)["fields"]:
        if _applies(field, flat) and (not field.get("optional") or bits.take(1)):
            flat[field["name"]] = _value(field, bits, flat)
    if bits.left:
        raise PayloadError(Problem("digits", None, Message("code-surplus", bits=bits.left)))
    return flat, version


def _value(field: dict[str, Any], bits: _Bits, flat: Flat) -> Any:
    raw, kind = bits.take(field["bits"]), field["kind"]
    if kind == "text":
        return "".join(chr(bits.take(7)) for _ in range(raw))
    if kind == "point":
        return _name(field["table"], field["name"], raw)
    if kind == "flags":
        return [name for point, name in names(field["table"]).items() if raw >> point & 1]
    if kind == "date":
        return date.fromisoformat(field["from"]) + timedelta(days=raw)
    if kind == "size":
        sizing = Connection(flat[field["name"].replace(".size", ".connection")]).sized_by
        if sizing is Sizing.THREAD:
            return _name("thread", field["name"], raw)
        if sizing is Sizing.PIPE:
            return pipe_of_dash(raw)
        return raw if sizing is Sizing.DASH else str(raw)
    figure = (raw + field.get("offset", 0)) * field["step"]
    return int(figure) if field["step"] == 1 else float(round(figure, 4))


def _name(table: str, field: str, point: int) -> str:
    try:
        return names(table)[point]
    except KeyError:
        raise PayloadError(Problem(field, point, Message("code-unknown-point"))) from None
