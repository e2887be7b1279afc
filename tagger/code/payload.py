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
from contextlib import suppress
from dataclasses import dataclass
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
_VERSION_BITS = 4
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
    flat = _flatten(content)
    value, length = 1 << _VERSION_BITS | VERSION, 1 + _VERSION_BITS
    read: Flat = {}
    for field in _layout(VERSION):
        if field.always or _applies(field, read):
            read[field.name] = flat.get(field.name)
            part, width = _field_bits(field, flat)
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


@dataclass(frozen=True, slots=True)
class _Field:
    """A field of a layout; README.md says what each property means. ``step`` is a ratio, ``at`` a path."""

    name: str
    kind: str
    bits: int | dict[str, int]
    at: tuple[str, ...] | None
    table: str
    step: tuple[int, int]
    offset: int
    absent: int | None
    optional: bool
    below: str | None
    above: str | None
    first_day: date | None
    always: bool  # without any condition
    only_with: str | None
    only_if_zero: str | None
    asked: tuple[tuple[str, bool, tuple[Any, ...]], ...]  # a field, and whether its value must be among these
    connection: str  # of a size: the field of its end's connection

    @classmethod
    def of(cls, written: dict[str, Any]) -> _Field:
        """A field as the layout's file has it."""
        return cls(
            name=written["name"],
            kind=written["kind"],
            bits=written["bits"],
            at=tuple(written["at"].split(".")) if "at" in written else None,
            table=written.get("table", ""),
            step=Fraction(str(written.get("step", 1))).as_integer_ratio(),
            offset=written.get("offset", 0),
            absent=written.get("absent"),
            optional=bool(written.get("optional")),
            below=written.get("below"),
            above=written.get("above"),
            first_day=date.fromisoformat(written["from"]) if "from" in written else None,
            always=written.keys().isdisjoint(_CONDITIONS),
            only_with=written.get("only_with"),
            only_if_zero=written.get("only_if_zero"),
            asked=tuple(_asked(condition) for condition in written.get("when", ())),
            connection=written["name"].replace(".size", ".connection"),
        )


@cache
def _layout(version: int) -> tuple[_Field, ...]:
    if version not in VERSIONS:
        raise PayloadError(Problem("digits", None, Message("code-version", version=version)))
    layout = layout_as_written(version)
    assert layout["version_bits"] == _VERSION_BITS
    return tuple(map(_Field.of, layout["fields"]))


def _crc(value: int, length: int) -> int:
    return binascii.crc_hqx(value.to_bytes((length + 7) // 8, "big"), 0)


# --- a content as flat names and values, and back -------------------------------------------


def _flatten(content: TagContent) -> Flat:
    """The layout's fields by name: most are the value at ``at`` in the content, the rest are worked out."""
    values = content.model_dump(mode="json")
    flat: Flat = {name: _value_at(values, at) for name, at in _placed(VERSION)}
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
    for name, at in _placed(version):
        if name in flat:
            _put(values, at, flat[name])
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
def _placed(version: int) -> tuple[tuple[str, tuple[str, ...]], ...]:
    """The fields that are a value of the content as it stands, and where."""
    return tuple((field.name, field.at) for field in _layout(version) if field.at is not None)


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


def _field_bits(field: _Field, flat: Flat) -> tuple[int, int]:
    """A field as an integer, and its width in bits."""
    value = flat.get(field.name)
    if value is None and field.optional:
        return 0, 1
    if field.kind == "text":
        raw, width = _text_bits(field, value or "")
    else:
        width = _width(field, flat)
        absent = field.absent
        raw = absent if value is None and absent is not None else _raw(field, value, flat)
        if not 0 <= raw < 1 << width or (value is not None and raw == absent):
            raise PayloadError(Problem(field.name, value, Message("code-too-large")))
    return (1 << width | raw, width + 1) if field.optional else (raw, width)


def _applies(field: _Field, flat: Flat) -> bool:
    """Whether the field is there at all, by the fields before it."""
    if field.only_with and flat.get(field.only_with) is None:
        return False
    if field.only_if_zero and flat[field.only_if_zero] != _NAMED:
        return False
    for name, wanted, values in field.asked:  # noqa: SIM110 - a generator takes as long as all else here
        if (flat.get(name) in values) is not wanted:
            return False
    return True


def _asked(condition: dict[str, Any]) -> tuple[str, bool, tuple[Any, ...]]:
    """A condition as the field it asks about, and whether its value must be among these, or must not."""
    wanted = "in" in condition
    return condition["field"], wanted, tuple(condition["in" if wanted else "not_in"])


def _width(field: _Field, flat: Flat) -> int:
    """The field's bits; a size has as many as its family's terms need."""
    bits = field.bits
    return bits if type(bits) is int else bits[_sizing(field, flat)]  # type: ignore[index]


def _sizing(field: _Field, flat: Flat) -> Sizing:
    return _sized_by(flat[field.connection])


@cache
def _sized_by(connection: str) -> Sizing:
    return Connection(connection).sized_by


def _raw(field: _Field, value: Any, flat: Flat) -> int:
    kind = field.kind
    if kind == "int":
        steps = _steps(field, value)
        if field.below is not None:
            return _steps(field, flat[field.below]) - steps
        return steps - (field.offset if field.above is None else _steps(field, flat[field.above]))
    if kind == "point":
        return _point(field.table, field.name, value)
    if kind == "flags":
        return sum(1 << _point(field.table, field.name, item) for item in value or ())
    if kind == "date":
        assert field.first_day is not None
        return (date.fromisoformat(value) - field.first_day).days
    sizing = _sizing(field, flat)
    if sizing in _POINT_SIZES:
        return _point(sizing, field.name, value)
    try:
        return dash_of_pipe(value) if sizing is Sizing.PIPE else int(value)
    except ValueError:
        raise PayloadError(Problem(field.name, value, Message("code-not-a-size"))) from None


def _steps(field: _Field, value: Any) -> int:
    return _in_steps(str(value), field.step)


@lru_cache(maxsize=8192)  # assemblies of a run have many a figure in common
def _in_steps(value: str, step: tuple[int, int]) -> int:
    return round(Fraction(value) / Fraction(*step))


def _point(table: str, name: str, value: str) -> int:
    try:
        return points(table)[value]
    except KeyError:
        raise PayloadError(Problem(name, value, Message("code-not-stored"))) from None


def _text_bits(field: _Field, value: str) -> tuple[int, int]:
    width: int = _width(field, {})
    longest = (1 << width) - 1
    if len(value) > longest or not all(" " <= char <= "~" for char in value):
        raise PayloadError(Problem(field.name, value, Message("code-text", maximum=longest)))
    raw = len(value)
    for char in value:
        raw = raw << 7 | ord(char)
    return raw, width + 7 * len(value)


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
    version = bits.take(_VERSION_BITS)
    flat: Flat = {}
    for field in _layout(version):
        if (field.always or _applies(field, flat)) and (not field.optional or bits.take(1)):
            raw = bits.take(_width(field, flat))
            if raw != field.absent:
                flat[field.name] = _value(field, raw, bits, flat)
    if bits.left:
        raise PayloadError(Problem("digits", None, Message("code-surplus", bits=bits.left)))
    return flat, version


def _value(field: _Field, raw: int, bits: _Bits, flat: Flat) -> Any:
    kind = field.kind
    if kind == "int":
        if field.below is not None:
            raw = _steps(field, flat[field.below]) - raw
        elif field.above is not None:
            raw += _steps(field, flat[field.above])
        return _figure(raw + field.offset, field.step)
    if kind == "point":
        return _name(field.table, field.name, raw)
    if kind == "text":
        return "".join(chr(bits.take(7)) for _ in range(raw))
    if kind == "flags":
        return [name for point, name in names(field.table).items() if raw >> point & 1]
    if kind == "date":
        assert field.first_day is not None
        return field.first_day + timedelta(days=raw)
    sizing = _sizing(field, flat)
    if sizing in _POINT_SIZES:
        return _name(sizing, field.name, raw)
    if sizing is Sizing.PIPE:
        return pipe_of_dash(raw)
    return raw if sizing is Sizing.DASH else str(raw)


@lru_cache(maxsize=8192)
def _figure(steps: int, step: tuple[int, int]) -> float:
    return steps if step == (1, 1) else float(round(steps * Fraction(*step), 4))


def _name(table: str, field: str, point: int) -> str:
    try:
        return names(table)[point]
    except KeyError:
        raise PayloadError(Problem(field, point, Message("code-unknown-point"))) from None
