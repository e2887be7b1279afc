"""Messages as values: an id and the values that go into its text.

Whoever finds a fault or a fact makes a Message. It is rendered once, where the reader's language is
known, by ``tagger.i18n`` in Python or by the phone from the same catalogue. No sentence is put together
from parts of sentences, and none is recognised afterwards.

The id begins with the name of its catalogue file: ``trade-too-hot`` stands in ``trade.ftl``.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import Any, Union

from pydantic import GetCoreSchemaHandler, SerializationInfo
from pydantic_core import CoreSchema, core_schema


class Unit(StrEnum):
    """What a Figure counts; the catalogue shows it in SI and US units, rounded to the safe side."""

    PRESSURE = "pressure"  # bar; never shown as more than it is
    LEAST_PRESSURE = "least_pressure"  # bar that must be reached: never shown as less
    LENGTH = "length"  # mm
    DIAMETER = "diameter"  # mm, to the hundredth, as a caliper reads a thread
    TEMPERATURE = "temperature"  # °C
    TORQUE = "torque"  # N·m
    COUNT = "count"  # flats or turns, shown to the twelfth: "1 to 1 1/4"
    ANGLE = "angle"  # degrees


@dataclass(frozen=True)
class Figure:
    """A number with its unit, or a range where ``low`` is given.

    ``at_most`` says that the source gives a ceiling only.

    >>> Figure(206.8, Unit.PRESSURE).as_json()
    {'value': 206.8, 'unit': 'pressure'}
    """

    value: float
    unit: Unit
    low: float | None = None
    at_most: bool = False

    def as_json(self) -> dict[str, Any]:
        """The figure as plain JSON values."""
        more: dict[str, Any] = {} if self.low is None else {"low": self.low}
        if self.at_most:
            more["at_most"] = True
        return {"value": self.value, "unit": str(self.unit), **more}


Value = Union[str, int, float, date, Figure, "Message", "tuple[Value, ...]"]


class Message:
    """An id with its values. Equal where both are equal; never changed.

    >>> Message("trade-jump", end=Message("words-part-end_a"), dash=12).as_json()
    {'id': 'trade-jump', 'values': {'end': {'id': 'words-part-end_a', 'values': {}}, 'dash': 12}}
    """

    __slots__ = ("_json", "_look", "_values", "id")

    id: str
    _values: tuple[tuple[str, Value], ...]
    _json: dict[str, Any]  # both are made when they are asked for
    _look: Look

    def __init__(self, id: str, /, **values: Value) -> None:
        object.__setattr__(self, "id", id)
        object.__setattr__(self, "_values", tuple(values.items()))

    @property
    def values(self) -> Mapping[str, Value]:
        """The values by name."""
        return dict(self._values)

    def __setattr__(self, name: str, value: object) -> None:
        raise AttributeError(f"a message is a value: {name} cannot be set")

    def __reduce__(self) -> tuple[Any, ...]:
        return _made, (self.id, dict(self._values))

    @property
    def look(self) -> Look:
        """The message as a key that is equal only where it is shown alike: 12, 12.0 and True are equal, and are not."""
        try:
            return self._look
        except AttributeError:
            parts: list[object] = [self.id]
            for name, value in self._values:
                parts += name, value if type(value) is str else _look_of(value)
            object.__setattr__(self, "_look", Look(tuple(parts)))
            return self._look

    def __eq__(self, other: object) -> bool:
        if self is other:
            return True
        return isinstance(other, Message) and self.id == other.id and self.values == other.values

    def __hash__(self) -> int:
        return hash((self.id, frozenset(self._values)))

    def __repr__(self) -> str:
        values = ", ".join(f"{name}={value!r}" for name, value in self._values)
        return f"Message({self.id!r}{', ' if values else ''}{values})"

    def __str__(self) -> str:
        """The English text, for logs and tracebacks; pages and commands render with a Translator."""
        return english(self)

    def as_json(self) -> dict[str, Any]:
        """Id and values as plain JSON values; without the text, which needs a language."""
        return {"id": self.id, "values": {name: _plain(value) for name, value in self._values}}

    def _to_write(self) -> dict[str, Any]:
        """The same, made once: only for who writes it out at once, and changes nothing in it."""
        try:
            return self._json
        except AttributeError:
            object.__setattr__(self, "_json", self.as_json())
            return self._json

    @classmethod
    def from_json(cls, data: Mapping[str, Any]) -> Message:
        """What ``as_json`` wrote."""
        return cls(data["id"], **{name: _value(value) for name, value in data.get("values", {}).items()})

    @classmethod
    def __get_pydantic_core_schema__(cls, source: Any, handler: GetCoreSchemaHandler) -> CoreSchema:
        """Messages inside pydantic models: kept and read as ``{"id", "values"}``."""
        return core_schema.no_info_plain_validator_function(
            lambda value: value if isinstance(value, Message) else cls.from_json(value),
            serialization=core_schema.plain_serializer_function_ser_schema(_serialized, info_arg=True),
        )

    @classmethod
    def __get_pydantic_json_schema__(cls, schema: Any, handler: Any) -> dict[str, Any]:
        return {
            "type": "object",
            "properties": {"id": {"type": "string"}, "values": {"type": "object"}},
            "required": ["id"],
        }


class Look:
    """A message's ``look``, with its hash worked out once."""

    __slots__ = ("_hash", "_parts")

    def __init__(self, parts: tuple[object, ...]) -> None:
        self._parts, self._hash = parts, hash(parts)

    def __hash__(self) -> int:
        return self._hash

    def __eq__(self, other: object) -> bool:
        return self is other or (isinstance(other, Look) and self._parts == other._parts)


def _look_of(value: object) -> object:
    """A value with its type, and of what holds values the looks of those."""
    if type(value) is Message:
        return value.look
    if type(value) is Figure:
        return Figure, value.unit, value.at_most, repr(value.value), repr(value.low)
    if type(value) is tuple:
        return tuple(map(_look_of, value))
    return type(value), repr(value) if type(value) is float else value  # 0.0 and -0.0 are equal


TO_WRITE = object()
"""The ``context`` of a ``model_dump`` that is written out at once: equal messages are one object in it."""


def _serialized(message: Message, info: SerializationInfo) -> dict[str, Any]:
    return message._to_write() if info.context is TO_WRITE else message.as_json()


def english(message: Message, attribute: str | None = None) -> str:
    """The English text of a message or of its ``.mend``: for logs, tracebacks and tests only."""
    from tagger.i18n import Translator  # here, because the catalogues build on this module

    return Translator().render(message, attribute=attribute)


def as_is(text: str, mend: str = "") -> Message:
    """A text that has no id: somebody's own words, such as a reason typed in or a source cited."""
    return Message("words-as-is-mended", text=text, mend=mend) if mend else Message("words-as-is", text=text)


def _made(id: str, values: dict[str, Value]) -> Message:
    return Message(id, **values)


def _plain(value: Value) -> Any:
    if isinstance(value, Message | Figure):
        return value.as_json()
    if isinstance(value, tuple):
        return [_plain(item) for item in value]
    if isinstance(value, date):
        return {"date": value.isoformat()}
    return value


def _value(data: Any) -> Value:
    if isinstance(data, list):
        return tuple(_value(item) for item in data)
    if isinstance(data, Mapping):
        if "id" in data:
            return Message.from_json(data)
        if "date" in data:
            return date.fromisoformat(data["date"])
        return Figure(
            data["value"], Unit(data["unit"]), low=data.get("low"), at_most=data.get("at_most", False)
        )
    plain: Value = data
    return plain


def pressure(bar: float) -> Figure:
    """A pressure in bar, shown rounded to the safe side."""
    return Figure(bar, Unit.PRESSURE)


def least_pressure(bar: float) -> Figure:
    """A pressure in bar that must be reached (proof, minimum burst), never shown as less."""
    return Figure(bar, Unit.LEAST_PRESSURE)


def length(mm: float) -> Figure:
    """A length in mm."""
    return Figure(mm, Unit.LENGTH)


def diameter(mm: float) -> Figure:
    """A diameter of a thread or a flange head in mm."""
    return Figure(mm, Unit.DIAMETER)


def temperature(celsius: float) -> Figure:
    """A temperature in °C."""
    return Figure(celsius, Unit.TEMPERATURE)


def angle(degrees: float) -> Figure:
    """An angle in degrees."""
    return Figure(degrees, Unit.ANGLE)


def torque(low: float | None, high: float) -> Figure:
    """A torque range in N·m; ``low`` is None where the source gives a ceiling only."""
    return Figure(high, Unit.TORQUE, low=low, at_most=low is None)


def count(low: float, high: float) -> Figure:
    """A count of flats or of turns, as a range."""
    return Figure(high, Unit.COUNT, low=low)
