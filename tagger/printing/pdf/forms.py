"""What many labels of a run share, as form objects: written once in the file, and named by what they draw."""

from __future__ import annotations

import hashlib
import zlib
from collections import Counter
from collections.abc import Iterable, Iterator
from itertools import groupby

from tagger.drawing import Drawing, Grid, Item
from tagger.printing.pdf.fonts import FontCodes
from tagger.printing.pdf.operators import items_code

_COSTS = 220  # bytes of a form object beside its operators
_CALL = 12  # bytes that a page takes to draw one
_OFTEN = 4  # pages of a chunk


_Run = tuple[
    tuple[int, ...], float
]  # neighbours by the identities of the first items equal to them; their height


class Forms:
    """The forms that pay within some drawings; each drawing then as ``cut`` has it.

    Drawings share their pictures as objects: an item is compared with others once, and then known by its identity,
    which stays its own as long as the drawings are held here.
    """

    def __init__(self, drawings: Iterable[Drawing], fonts: FontCodes) -> None:
        self._drawings = list(drawings)
        self._often = self._counted()
        self._names: dict[_Run, str] = {}
        self.packed: dict[str, bytes] = {}
        self._runs = {id(one): [*self._neighbours(one)] for one in self._drawings}
        met: dict[_Run, tuple[Item, ...]] = {}
        times: Counter[_Run] = Counter()
        for one in self._drawings:
            for items, run in self._runs[id(one)]:
                if run is not None:
                    times[run] += 1
                    met.setdefault(run, items)
        for run, count in times.items():
            if count < _OFTEN:
                continue
            packed = zlib.compress(items_code(met[run], run[1], fonts).encode("latin-1"), 9)
            if count * (len(packed) - _CALL) > _COSTS + len(packed):
                name = f"X{hashlib.sha256(packed).hexdigest()[:8]}"
                self._names[run] = name
                self.packed[name] = packed

    def cut(self, drawing: Drawing) -> Iterator[tuple[Item, ...] | str]:
        """The drawing's items in order, and in their midst the names of forms that stand for some of them."""
        for items, run in self._runs.get(id(drawing)) or self._neighbours(drawing):
            yield items if run is None else self._names.get(run, items)

    def _counted(self) -> dict[int, tuple[int, int]]:
        """Of each item by its identity: how many are equal to it, and the identity of the first of them."""
        every = [item for one in self._drawings for item in one.items if not isinstance(item, Grid)]
        times = Counter(map(id, every))
        equal: dict[Item, list[int]] = {}  # first identity, count
        slots = {}
        for item in {id(item): item for item in every}.values():
            slot = slots[id(item)] = equal.setdefault(item, [id(item), 0])
            slot[1] += times[id(item)]
        return {name: (count, first) for name, (first, count) in slots.items()}

    def _neighbours(self, drawing: Drawing) -> Iterator[tuple[tuple[Item, ...], _Run | None]]:
        """Neighbours that are met equally often belong together: the picture of an end, a sign, a hole."""
        once = (0, 0)
        for count, items in groupby(drawing.items, lambda item: self._often.get(id(item), once)[0]):
            run = tuple(items)
            if count < _OFTEN:
                yield run, None
            else:
                yield run, (tuple([self._often[id(item)][1] for item in run]), drawing.height)
