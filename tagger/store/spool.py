"""Values of a long run kept beside the memory: in a file without a name, which ends with the process."""

from __future__ import annotations

import io
import pickle
import tempfile
import zlib
from array import array
from collections.abc import Iterator
from enum import Enum
from typing import Any, Generic, TypeVar

from pydantic import BaseModel

from tagger.messages import Look, Message
from tagger.store.texts import SharedText
from tagger.trade.results import Assessment, EndAdvice, Flats, Torque, Turns, WorkingPressure

T = TypeVar("T")
Shared = Message | SharedText | Torque | Flats | Turns | WorkingPressure | Enum | tuple[Any, ...]

_SHARED = (Message, SharedText, Torque, Flats, Turns, WorkingPressure, Enum)
_SHARED_TUPLES: dict[type[BaseModel], tuple[str, ...]] = {
    Assessment: ("warnings",),
    EndAdvice: ("spread", "steps"),
}
"""Fields whose tuples are one object for many values of a run."""
_MOST_SHARED = 5_000
_PACKED_FROM = 4_000  # octets: of less it would save little room


class Spool(Generic[T]):
    """Values in the order they are added, read one by one as often as it takes.

    What is read is equal to what was added, and never the same object; but messages, of which the values of a
    run are full, and what else many have in common are one object where they are the same, and written once.
    """

    def __init__(self) -> None:
        self._file = tempfile.TemporaryFile(buffering=0)  # noqa: SIM115
        self._starts = array("Q", [0])
        self._shared: list[Shared] = []
        self._places: dict[Look, int] = {}  # of messages
        self._same: dict[int, int] = {}  # by identity, which is that of nothing else as long as it is shared
        self._shapes: list[_Shape] = []
        self._shape_places: dict[_Shape, int] = {}

    def append(self, value: T) -> None:
        """Keeps one more value."""
        out = io.BytesIO()
        _Pickler(out, self).dump(value)
        packed = out.getvalue()
        if len(packed) >= _PACKED_FROM:
            packed = zlib.compress(packed, 1)
        left = memoryview(packed)
        self._file.seek(self._starts[-1])
        while left:
            left = left[self._file.write(left) :]
        self._starts.append(self._starts[-1] + len(packed))

    def __len__(self) -> int:
        return len(self._starts) - 1

    def __getitem__(self, place: int) -> T:
        start, stop = self._starts[place], self._starts[place + 1]
        self._file.seek(start)
        packed = self._file.read(stop - start)
        if not packed.startswith(_PICKLED):
            packed = zlib.decompress(packed)
        value: T = _Unpickler(io.BytesIO(packed), self).load()
        return value

    def __iter__(self) -> Iterator[T]:
        return (self[place] for place in range(len(self)))

    def place_of(self, value: Shared) -> int | None:
        """Where a value stands among those that are shared; None where there are too many of them."""
        place = self._same.get(id(value))
        if place is None and isinstance(value, Message):
            place = self._places.get(value.look)
        if place is None and len(self._shared) < _MOST_SHARED:
            place = self._same[id(value)] = len(self._shared)
            self._shared.append(value)
            if isinstance(value, Message):
                self._places[value.look] = place
        return place

    def shared_at(self, place: int) -> Shared:
        return self._shared[place]

    def shape_of(self, model: BaseModel) -> int:
        """Where the shape of a model stands among those met: there are few, for a model's fields are always the same."""
        shape = type(model), tuple(model.__dict__), frozenset(model.model_fields_set)
        place = self._shape_places.get(shape)
        if place is None:
            place = self._shape_places[shape] = len(self._shapes)
            self._shapes.append(shape)
        return place

    def model_of(self, place: int, *values: Any) -> BaseModel:
        """A model as it was: nothing is worked out or checked again."""
        kind, names, given = self._shapes[place]
        model = kind.__new__(kind)
        model.__setstate__(
            {
                "__dict__": dict(zip(names, values, strict=True)),
                "__pydantic_fields_set__": set(given),
                "__pydantic_extra__": None,
                "__pydantic_private__": None,
            }
        )
        return model


_Shape = tuple[type[BaseModel], tuple[str, ...], frozenset[str]]
"""Of a model: its type, its fields in their order, and those that were given."""
_PICKLED = b"\x80"  # what every pickle begins with, and nothing that zlib packs


def _shared_at(place: int) -> Shared:
    """Stands in what is written for the spool's own; see ``_Unpickler``."""
    raise NotImplementedError


def _model_of(place: int, *values: Any) -> BaseModel:
    raise NotImplementedError


class _Tuple:
    """Stands for a tuple that is shared."""

    __slots__ = ("place",)

    def __init__(self, place: int) -> None:
        self.place = place


class _Ways(dict[type, str]):
    """How values of a type are written; "" as pickle writes them."""

    def __missing__(self, kind: type) -> str:
        way = "model" if issubclass(kind, BaseModel) else ""
        if issubclass(kind, _SHARED):
            way = "shared"
        self[kind] = way
        return way


_WAYS = _Ways({_Tuple: "tuple"})


class _Pickler(pickle.Pickler):
    def __init__(self, out: io.BytesIO, spool: Spool[Any]) -> None:
        super().__init__(out, pickle.HIGHEST_PROTOCOL)
        self._spool = spool

    def reducer_override(self, obj: Any) -> Any:
        """Asked of all that is neither a plain value nor a list, tuple or dict of Python's own."""
        how = _WAYS[type(obj)]
        if how == "shared":
            place = self._spool.place_of(obj)
            return NotImplemented if place is None else (_shared_at, (place,))
        if how == "tuple":
            return _shared_at, (obj.place,)
        if how == "model":
            values = obj.__dict__
            if shared := _SHARED_TUPLES.get(type(obj)):
                values = values | {name: self._tuple(values[name]) for name in shared}
            return _model_of, (self._spool.shape_of(obj), *values.values())
        return NotImplemented

    def _tuple(self, value: Any) -> Any:
        place = self._spool.place_of(value) if value else None  # of () there is one anyway
        return value if place is None else _Tuple(place)


class _Unpickler(pickle.Unpickler):
    def __init__(self, source: io.BytesIO, spool: Spool[Any]) -> None:
        super().__init__(source)
        self._spool = spool

    def find_class(self, module: str, name: str) -> Any:
        if module == __name__ and name == _shared_at.__name__:
            return self._spool.shared_at
        if module == __name__ and name == _model_of.__name__:
            return self._spool.model_of
        return super().find_class(module, name)
