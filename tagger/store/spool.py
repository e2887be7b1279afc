"""Values of a long run kept beside the memory: in a file without a name, which ends with the process."""

from __future__ import annotations

import io
import pickle
import tempfile
import zlib
from array import array
from collections.abc import Iterator
from typing import Any, Generic, TypeVar

from tagger.messages import Look, Message
from tagger.store.texts import SharedText
from tagger.trade.results import Flats, Torque, Turns

T = TypeVar("T")
Shared = Message | SharedText | Torque | Flats | Turns | tuple[Message, ...]

_SHARED = frozenset((Message, SharedText, Torque, Flats, Turns))
_MOST_SHARED = 5_000


class Spool(Generic[T]):
    """Values in the order they are added, read one by one as often as it takes.

    What is read is equal to what was added, and never the same object; but messages, of which the values of a
    run are full, tuples of them, tightening values and texts that are shared are one object where they are the same, and written once.
    """

    def __init__(self) -> None:
        self._file = tempfile.TemporaryFile()  # noqa: SIM115
        self._starts = array("Q", [0])
        self._shared: list[Shared] = []
        self._places: dict[Look, int] = {}  # of messages
        self._same: dict[int, int] = {}  # by identity, which is that of nothing else as long as it is shared

    def append(self, value: T) -> None:
        """Keeps one more value."""
        out = io.BytesIO()
        _Pickler(out, self).dump(value)
        packed = zlib.compress(out.getbuffer(), 1)
        self._file.seek(self._starts[-1])
        self._file.write(packed)
        self._starts.append(self._starts[-1] + len(packed))

    def __len__(self) -> int:
        return len(self._starts) - 1

    def __getitem__(self, place: int) -> T:
        start, stop = self._starts[place], self._starts[place + 1]
        self._file.seek(start)
        value: T = _Unpickler(io.BytesIO(zlib.decompress(self._file.read(stop - start))), self).load()
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


class _Pickler(pickle.Pickler):
    def __init__(self, out: io.BytesIO, spool: Spool[Any]) -> None:
        super().__init__(out, pickle.HIGHEST_PROTOCOL)
        self._spool = spool

    def persistent_id(self, obj: Any) -> int | None:
        kind = type(obj)
        if kind in _SHARED or (kind is tuple and obj and type(obj[0]) is Message):
            return self._spool.place_of(obj)
        return None


class _Unpickler(pickle.Unpickler):
    def __init__(self, source: io.BytesIO, spool: Spool[Any]) -> None:
        super().__init__(source)
        self._spool = spool

    def persistent_load(self, pid: Any) -> Shared:
        return self._spool.shared_at(pid)
