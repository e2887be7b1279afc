"""What many labels of a run share, as form objects: written once in the file, and named by what they draw."""

from __future__ import annotations

import hashlib
import zlib
from collections import Counter
from collections.abc import Iterable, Iterator
from itertools import groupby

from tagger.drawing import Drawing, Grid, Group, Part
from tagger.printing.pdf.fonts import FontCodes
from tagger.printing.pdf.operators import parts_code

_COSTS = 220  # bytes of a form object beside its operators
_CALL = 12  # bytes that a page takes to draw one
_OFTEN = 4  # pages of a chunk


_Run = tuple[tuple[int, ...], float]  # neighbours by the identities of the first equal to each; their height


class Forms:
    """The forms that pay within some drawings; each drawing then as ``cut`` has it.

    Drawings share their pictures as objects: a piece is compared with others once, and then known by its identity,
    which stays its own as long as the drawings are held here. A group that few drawings have is looked through.
    """

    def __init__(self, drawings: Iterable[Drawing], fonts: FontCodes) -> None:
        self._drawings = list(drawings)
        groups = _counted(part for one in self._drawings for part in one.parts if isinstance(part, Group))
        self._pieces = {id(one): [*_pieces(one, groups)] for one in self._drawings}
        self._often = groups | _counted(
            piece
            for pieces in self._pieces.values()
            for piece in pieces
            if not isinstance(piece, Grid | Group)
        )
        self._names: dict[_Run, str] = {}
        self.packed: dict[str, bytes] = {}
        self._runs = {id(one): [*self._neighbours(one)] for one in self._drawings}
        met: dict[_Run, tuple[Part, ...]] = {}
        times: Counter[_Run] = Counter()
        for one in self._drawings:
            for pieces, run in self._runs[id(one)]:
                if run is not None:
                    times[run] += 1
                    met.setdefault(run, pieces)
        for run, count in times.items():
            if count < _OFTEN:
                continue
            packed = zlib.compress(parts_code(met[run], run[1], fonts).encode("latin-1"), 9)
            if count * (len(packed) - _CALL) > _COSTS + len(packed):
                name = f"X{hashlib.sha256(packed).hexdigest()[:8]}"
                self._names[run] = name
                self.packed[name] = packed

    def cut(self, drawing: Drawing) -> Iterator[tuple[Part, ...] | str]:
        """The drawing's parts in order, and in their midst the names of forms that stand for some of them."""
        if id(drawing) not in self._runs:
            yield drawing.parts
            return
        for pieces, run in self._runs[id(drawing)]:
            yield pieces if run is None else self._names.get(run, pieces)

    def _neighbours(self, drawing: Drawing) -> Iterator[tuple[tuple[Part, ...], _Run | None]]:
        """Neighbours that are met equally often belong together: the picture of an end, a sign, a hole."""
        once = (0, 0)
        for count, pieces in groupby(
            self._pieces[id(drawing)], lambda piece: self._often.get(id(piece), once)[0]
        ):
            run = tuple(pieces)
            if count < _OFTEN:
                yield run, None
            else:
                yield run, (tuple([self._often[id(piece)][1] for piece in run]), drawing.height)


def _counted(pieces: Iterable[Part]) -> dict[int, tuple[int, int]]:
    """Of each piece by its identity: how many are equal to it, and the identity of the first of them."""
    every = list(pieces)
    times = Counter(map(id, every))
    equal: dict[object, list[int]] = {}  # first identity, count
    slots = {}
    for piece in {id(piece): piece for piece in every}.values():
        known = piece.items if isinstance(piece, Group) else piece
        slot = slots[id(piece)] = equal.setdefault(known, [id(piece), 0])
        slot[1] += times[id(piece)]
    return {name: (count, first) for name, (first, count) in slots.items()}


def _pieces(drawing: Drawing, groups: dict[int, tuple[int, int]]) -> Iterator[Part]:
    """What may be shared in a drawing: groups that are met often, and all else item by item."""
    for part in drawing.parts:
        if isinstance(part, Group) and groups[id(part)][0] < _OFTEN:
            yield from part.items
        else:
            yield part
