"""The payload: a tag's whole content as one decimal integer, and back.

The layouts are data (``data/payload_v*.json``, ``data/code_points.csv``), read by this module
and by the page's JavaScript alike. Code points are permanent: never reused, never renumbered;
old tags decode for ever. README.md beside this file is the format's specification.

Bits, most significant first: a 1 that keeps leading zeros, the version, the fields, and the
CRC-16/XMODEM of all before it (its check value for "123456789" is 0x31C3). On a signed tag a seal
follows, which ``signature.py`` knows; what the tag says is read without it.
"""

from __future__ import annotations

import binascii
import json
from collections.abc import Iterator
from contextlib import suppress
from datetime import date, timedelta
from fractions import Fraction
from functools import cache, lru_cache
from importlib import resources
from typing import Any

from pydantic import ValidationError

from tagger.connection import code_points
from tagger.errors import PayloadError, Problem, problems_of
from tagger.messages import Message
from tagger.spec import (
    Connection,
    End,
    Fluid,
    PressureOverride,
    Sizing,
    TagContent,
    Tightening,
    dash_of_pipe,
    pipe_of_dash,
    updated,
)

_DATA = resources.files(__package__) / "data"
VERSIONS = tuple(sorted(int(f.name[9:-5]) for f in _DATA.iterdir() if f.name.startswith("payload_v")))
VERSION = VERSIONS[-1]  # what is written; all are read
_NAMED = "(named in full)"
_OTHER_SOURCE = 0
_TABLES, _KNOWN_PARTS = "(tables)", "(known parts)"  # where a working pressure is from, and an at-most
SEAL_BITS = 8 + 512  # of a signed tag, behind the payload: key id and signature
_MOST_DIGITS = 520
_WIDEST_NM = 102.2  # between the least torque and the greatest

_CONDITIONS = ("only_with", "only_if_zero", "when")  # under which a field is there
_POINT_SIZES = (Sizing.THREAD, Sizing.NAMED)  # sizes that are code points of the table of that name

Flat = dict[str, Any]


def encode(content: TagContent) -> str:
    """The content as decimal digits.

    Raises PayloadError where a part has no code point, naming the field.
    """
    return encode_carried(carried(content))


def encode_carried(content: TagContent) -> str:
    """The same of what ``carried`` answered."""
    layout = _layout(VERSION)
    flat = _flatten(content)
    value, length = 1 << layout["version_bits"] | VERSION, 1 + layout["version_bits"]
    read: Flat = {}
    for field in layout["fields"]:
        if field["always"] or _applies(field, read):
            read[field["name"]] = flat.get(field["name"])
            for part, width in _field_bits(field, flat):
                value, length = value << width | part, length + width
    return str(value << 16 | _crc(value, length))


def decode(digits: str) -> TagContent:
    """What the digits say, signed or not. Raises PayloadError when they are damaged or of a later version."""
    flat, version = _read_flat(unsealed(digits)[0])
    try:
        return TagContent.model_validate(_unflatten(flat, version))
    except ValidationError as error:
        raise PayloadError(problems_of(error)) from None


def carried(content: TagContent) -> TagContent:
    """The content as a tag carries it.

    A pressure source in words of its own becomes "see the record". A pressure given is carried where it
    counts, and not above the working pressure. Words of a joint that have no code point are left out.
    """
    spec = updated(content.spec.carried(), {"working_pressure": _carried_pressure(content)})
    return content.model_copy(
        update={
            "spec": spec,
            "tighten_a": _carried_tightening(content.tighten_a, spec.end_a),
            "tighten_b": _carried_tightening(content.tighten_b, spec.end_b),
        }
    )


def _carried_pressure(content: TagContent) -> PressureOverride | None:
    given, bar, spec = content.spec.working_pressure, content.working_pressure_bar, content.spec
    if given is None or bar is None:
        return None
    source = (
        given.source if given.source in points("pressure_source") else names("pressure_source")[_OTHER_SOURCE]
    )
    told = PressureOverride(value_bar=min(bar, given.value_bar), source=source)
    hottest, asked = given.max_temperature_c, spec.max_temperature_c
    fluid = spec.fluid or Fluid.MINERAL_OIL
    if hottest is None or given.fluid is not fluid or (asked is not None and hottest < asked):
        return told
    return told.model_copy(update={"fluid": fluid, "max_temperature_c": hottest if asked is None else asked})


def _carried_tightening(tightening: Tightening | None, end: End) -> Tightening | None:
    if tightening is None:
        return None
    low, high = tightening.torque_min_nm, tightening.torque_max_nm
    left_out: dict[str, None] = {}
    if low is not None and high is not None and high - low > _WIDEST_NM:
        left_out["torque_min_nm"] = None
    for name in ("lubrication", "screw"):
        if high is None or getattr(tightening, name) not in points(name):
            left_out[name] = None
    if not end.connection.is_flange:
        left_out["screw"] = None
    else:  # its screws have a torque, and there is no nut whose flats could be counted
        left_out |= dict.fromkeys(("flats_min", "flats_max", "flats_basis"))
    told = updated(tightening, left_out)
    return told if told != _NOTHING_SAID else None


_NOTHING_SAID = Tightening()


def unsealed(digits: str) -> tuple[str, int | None]:
    """The payload of the digits, and the seal behind it as an integer of SEAL_BITS; None without one.

    The check says where the payload ends. Where it fits at both places, once by chance, the fields do:
    with a seal they leave bits over. Raises PayloadError for what is neither.
    """
    value = _value_of(digits)
    before = value >> SEAL_BITS
    whole = _checked(value)
    if not _checked(before):
        if not whole:
            raise PayloadError(Problem("digits", None, Message("code-damaged")))
        return str(value), None
    if whole:
        with suppress(PayloadError):
            _read_flat(str(value))
            return str(value), None
    return str(before), value & (1 << SEAL_BITS) - 1


def _value_of(digits: str) -> int:
    text = digits.strip()
    if not text.isascii() or not text.isdigit() or not 10 <= len(text) <= _MOST_DIGITS:
        raise PayloadError(Problem("digits", digits[:60], Message("code-not-digits")))
    return int(text)


def _checked(value: int) -> bool:
    """Whether the last 16 bits are the check of those before them."""
    length = value.bit_length() - 16
    return length >= 6 and _crc(value >> 16, length) == value & 0xFFFF


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


def content_as_written(version: int) -> dict[str, Any]:
    """How the fields of one of ``VERSIONS`` that have no place of their own become the content, for other readers."""
    rules: dict[str, Any] = json.loads((_DATA / f"content_v{version}.json").read_text(encoding="utf-8"))
    return rules


@cache
def _layout(version: int) -> dict[str, Any]:
    if version not in VERSIONS:
        raise PayloadError(Problem("digits", None, Message("code-version", version=version)))
    layout = layout_as_written(version)
    for field in layout["fields"]:
        field["step"] = Fraction(str(field.get("step", 1))).as_integer_ratio()
        field["always"] = field.keys().isdisjoint(_CONDITIONS)
        field["asked"] = [_asked(condition) for condition in field.get("when", ())]
        if "at" in field:
            field["at"] = tuple(field["at"].split("."))
    return layout


def _crc(value: int, length: int) -> int:
    return binascii.crc_hqx(value.to_bytes((length + 7) // 8, "big"), 0)


# --- a content as flat names and values, and back -------------------------------------------


def _flatten(content: TagContent) -> Flat:
    """The layout's fields by name: most are the value at ``at`` in the content, the rest are worked out."""
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
    flat |= _flat_pressure(content)
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


def _flat_pressure(content: TagContent) -> Flat:
    """One pressure and where it is from: the tables, the parts that are known, or somebody's word."""
    given, bar = content.spec.working_pressure, content.working_pressure_bar
    if bar is None:
        return {"pressure_from": _KNOWN_PARTS, "pressure_bar": content.at_most_bar}
    if given is None:
        return {"pressure_from": _TABLES, "pressure_bar": bar}
    return {
        "pressure_from": given.source,
        "pressure_bar": bar,
        "given_names_duty": int(given.max_temperature_c is not None),
        "given_temperature_c": given.max_temperature_c,
    }


def _unflatten(flat: Flat, version: int) -> dict[str, Any]:
    values: dict[str, Any] = {}
    for field in _placed(version):
        if field["name"] in flat:
            _put(values, field["at"], flat[field["name"]])
    if "pressure_from" in flat:
        _put_pressure(values, flat)
    hose = values["spec"]["hose"]
    standard, _, edition = flat["hose.code"].partition("|")
    if flat["hose.code"] == _NAMED:
        standard, edition = flat["hose.standard"], flat["hose.edition"]
    hose |= {"standard": standard, "edition": edition or None}
    for name in ("end_a", "end_b"):
        by_dash = _sized_by(flat[f"{name}.connection"]) is Sizing.DASH
        values["spec"][name] |= {
            "dash" if by_dash else "size": flat.get(f"{name}.size"),
            "shape": flat[f"{name}.bend_deg"] or "straight",
            "hose_dash": hose["dash"] if flat[f"{name}.jump_size"] else None,
        }
    return values


def _put_pressure(values: dict[str, Any], flat: Flat) -> None:
    """The other way round of ``_flat_pressure``."""
    source, bar = flat["pressure_from"], flat.get("pressure_bar")
    if source == _KNOWN_PARTS:
        values["at_most_bar"] = bar
        return
    values["working_pressure_bar"] = bar
    if source == _TABLES:
        return
    given = {"value_bar": bar, "source": source}
    if flat["given_names_duty"]:
        hottest = flat.get("max_temperature_c")
        given["fluid"] = flat.get("fluid") or Fluid.MINERAL_OIL
        given["max_temperature_c"] = flat["given_temperature_c"] if hottest is None else hottest
    values["spec"]["working_pressure"] = given


@cache
def _placed(version: int) -> tuple[dict[str, Any], ...]:
    """The fields that are a value of the content as it stands."""
    return tuple(field for field in _layout(version)["fields"] if "at" in field)


def _value_at(values: dict[str, Any], place: tuple[str, ...]) -> Any:
    """The value at a place; None where it, or what should hold it, is absent or empty."""
    found: Any = values
    for key in place:
        found = found and found.get(key)
    return None if found == [] else found


def _put(values: dict[str, Any], place: tuple[str, ...], value: Any) -> None:
    *above, last = place
    for key in above:
        values = values.setdefault(key, {})
    values[last] = value


# --- one field as bits, and back --------------------------------------------------------------


def _field_bits(field: dict[str, Any], flat: Flat) -> Iterator[tuple[int, int]]:
    value = flat.get(field["name"])
    if field.get("optional"):
        yield (0, 1) if value is None else (1, 1)
        if value is None:
            return
    if field["kind"] == "text":
        yield from _text_bits(field, value or "")
        return
    width = _width(field, flat)
    raw = field["absent"] if value is None and "absent" in field else _raw(field, value, flat)
    if not 0 <= raw < 1 << width or (value is not None and raw == field.get("absent")):
        raise PayloadError(Problem(field["name"], value, Message("code-too-large")))
    yield raw, width


def _applies(field: dict[str, Any], flat: Flat) -> bool:
    """Whether the field is there at all, by the fields before it."""
    if "only_with" in field and flat.get(field["only_with"]) is None:
        return False
    if "only_if_zero" in field and flat[field["only_if_zero"]] != _NAMED:
        return False
    return all((flat.get(name) in values) is wanted for name, wanted, values in field["asked"])


def _asked(condition: dict[str, Any]) -> tuple[str, bool, list[Any]]:
    """A condition as the field it asks about, and whether its value must be among these, or must not."""
    wanted = "in" in condition
    return condition["field"], wanted, condition["in" if wanted else "not_in"]


def _width(field: dict[str, Any], flat: Flat) -> int:
    """The field's bits; a size has as many as its family's terms need."""
    bits = field["bits"]
    width: int = bits[_sizing(field, flat)] if isinstance(bits, dict) else bits
    return width


def _sizing(field: dict[str, Any], flat: Flat) -> Sizing:
    return _sized_by(flat[field["name"].replace(".size", ".connection")])


@cache
def _sized_by(connection: str) -> Sizing:
    return Connection(connection).sized_by


def _raw(field: dict[str, Any], value: Any, flat: Flat) -> int:
    kind, name = field["kind"], field["name"]
    if kind == "point":
        return _point(field["table"], name, value)
    if kind == "flags":
        return sum(1 << _point(field["table"], name, item) for item in value or ())
    if kind == "date":
        days: int = (date.fromisoformat(value) - date.fromisoformat(field["from"])).days
        return days
    if kind == "size":
        sizing = _sizing(field, flat)
        if sizing in _POINT_SIZES:
            return _point(sizing, name, value)
        try:
            return dash_of_pipe(value) if sizing is Sizing.PIPE else int(value)
        except ValueError:
            raise PayloadError(Problem(name, value, Message("code-not-a-size"))) from None
    steps = _steps(field, value)
    if "below" in field:
        return _steps(field, flat[field["below"]]) - steps
    return steps - (_steps(field, flat[field["above"]]) if "above" in field else field.get("offset", 0))


def _steps(field: dict[str, Any], value: Any) -> int:
    return _in_steps(str(value), field["step"])


@lru_cache(maxsize=8192)  # assemblies of a run have many a figure in common
def _in_steps(value: str, step: tuple[int, int]) -> int:
    return round(Fraction(value) / Fraction(*step))


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
    value = _value_of(digits)
    if not _checked(value):
        raise PayloadError(Problem("digits", None, Message("code-damaged")))
    bits = _Bits(value >> 16, value.bit_length() - 17)
    version = bits.take(4)
    flat: Flat = {}
    for field in _layout(version)["fields"]:
        if (field["always"] or _applies(field, flat)) and (not field.get("optional") or bits.take(1)):
            value = _value(field, bits, flat)
            if value is not None:
                flat[field["name"]] = value
    if bits.left:
        raise PayloadError(Problem("digits", None, Message("code-surplus", bits=bits.left)))
    return flat, version


def _value(field: dict[str, Any], bits: _Bits, flat: Flat) -> Any:
    raw, kind = bits.take(_width(field, flat)), field["kind"]
    if raw == field.get("absent"):
        return None
    if kind == "text":
        return "".join(chr(bits.take(7)) for _ in range(raw))
    if kind == "point":
        return _name(field["table"], field["name"], raw)
    if kind == "flags":
        return [name for point, name in names(field["table"]).items() if raw >> point & 1]
    if kind == "date":
        return date.fromisoformat(field["from"]) + timedelta(days=raw)
    if kind == "size":
        sizing = _sizing(field, flat)
        if sizing in _POINT_SIZES:
            return _name(sizing, field["name"], raw)
        if sizing is Sizing.PIPE:
            return pipe_of_dash(raw)
        return raw if sizing is Sizing.DASH else str(raw)
    if "below" in field:
        raw = _steps(field, flat[field["below"]]) - raw
    elif "above" in field:
        raw += _steps(field, flat[field["above"]])
    return _figure(raw + field.get("offset", 0), field["step"])


@lru_cache(maxsize=8192)
def _figure(steps: int, step: tuple[int, int]) -> float:
    return steps if step == (1, 1) else float(round(steps * Fraction(*step), 4))


def _name(table: str, field: str, point: int) -> str:
    try:
        return names(table)[point]
    except KeyError:
        raise PayloadError(Problem(field, point, Message("code-unknown-point"))) from None
