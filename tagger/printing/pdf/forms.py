"""What many labels of a run share, as form objects: drawn by name, and written once in the file."""

from __future__ import annotations

import zlib
from collections import Counter
from collections.abc import Iterable, Iterator
from functools import lru_cache
from itertools import groupby

from tagger.drawing import Drawing, Grid, Group, Item, Part
from tagger.drawing.primitives import items_of
from tagger.printing.pdf.fonts import FontCodes, Letters
from tagger.printing.pdf.operators import parts_code

_COSTS = 220  # bytes of a form object beside its operators
_CALL = 12  # bytes that a page takes to draw one
_OFTEN = 4  # pages of a chunk

_Run = tuple[tuple[int, ...], float]  # neighbours by their places among the pieces met; their height
_Cut = list[tuple[tuple[Part, ...], _Run | None]]
"""Neighbours, and what they are as a run where they are met often."""


class Forms:
    """The forms that pay within some drawings, which alone know them by these names; each drawing then as ``cut`` has it."""

    def __init__(self, drawings: Iterable[Drawing], fonts: FontCodes) -> None:
        self._drawings = list(drawings)
        self._names: dict[_Run, str] = {}
        self.packed: dict[str, bytes] = {}
        met = _Met(self._drawings)
        self._cuts: dict[int, _Cut] = {id(one): met.cut(one) for one in self._drawings}
        runs: dict[_Run, tuple[Part, ...]] = {}
        times: Counter[_Run] = Counter()
        for cut in self._cuts.values():
            for pieces, run in cut:
                if run is not None:
                    times[run] += 1
                    runs.setdefault(run, pieces)
        for run, count in times.items():
            if count < _OFTEN:
                continue
            packed, letters = _packed(items_of(runs[run]), run[1])
            if count * (len(packed) - _CALL) > _COSTS + len(packed):
                name = self._names[run] = f"X{len(self.packed)}"
                self.packed[name] = packed
                fonts.use(letters)

    def cut(self, drawing: Drawing) -> Iterator[tuple[Part, ...] | str]:
        """The drawing's parts in order, and in their midst the names of forms that stand for some of them."""
        for pieces, run in self._cuts.get(id(drawing), [(drawing.parts, None)]):
            yield pieces if run is None else self._names.get(run, pieces)


class _Met:
    """The pieces of some drawings, and how often each is met: groups, and of those that are rare the items.

    Drawings share their pictures as objects: a piece is compared with others once, and then known by its identity,
    which stays its own as long as the drawings are held.
    """

    def __init__(self, drawings: list[Drawing]) -> None:
        self._places: dict[object, int] = {}  # of each piece: equal ones have one place
        self._known: dict[int, int] = {}  # the same by their identities
        self._times = [0]  # by place; at the first those of symbols, of which each label has its own
        self._count(part for one in drawings for part in one.parts if isinstance(part, Group))
        self._pieces = {id(one): [*self._pieces_of(one)] for one in drawings}
        self._count(piece for one in self._pieces.values() for piece in one if not isinstance(piece, Group))

    def cut(self, drawing: Drawing) -> _Cut:
        """Neighbours that are met equally often belong together: the picture of an end, a sign, a hole."""
        pieces = self._pieces[id(drawing)]
        places = [self._known.get(id(piece), 0) for piece in pieces]
        found: _Cut = []
        start = 0
        for times, those in groupby([self._times[place] for place in places]):
            stop = start + len(list(those))
            run = (tuple(places[start:stop]), drawing.height) if times >= _OFTEN else None
            found.append((tuple(pieces[start:stop]), run))
            start = stop
        return found

    def _pieces_of(self, drawing: Drawing) -> Iterator[Part]:
        for part in drawing.parts:
            if isinstance(part, Group) and self._times[self._known[id(part)]] < _OFTEN:
                yield from part.items
            else:
                yield part

    def _count(self, pieces: Iterable[Part]) -> None:
        for piece in pieces:
            place = self._known.get(id(piece))
            if place is None:
                if isinstance(piece, Grid):
                    continue
                same = piece.items if isinstance(piece, Group) else piece
                place = self._known[id(piece)] = self._places.setdefault(same, len(self._times))
                if place == len(self._times):
                    self._times.append(0)
            self._times[place] += 1


@lru_cache(maxsize=1024)  # what one chunk of a run has often, the next has too
def _packed(items: tuple[Item, ...], height: float) -> tuple[bytes, Letters]:
    """The operators of a form object, deflated, and the letters they show."""
    fonts = FontCodes()
    return zlib.compress(parts_code(items, height, fonts).encode("latin-1"), 9), fonts.used
