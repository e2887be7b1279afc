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


class Forms:
    """The forms that pay within some drawings; each drawing then as ``cut`` has it."""

    def __init__(self, drawings: Iterable[Drawing], fonts: FontCodes) -> None:
        drawings = list(drawings)
        self._seen = Counter(item for one in drawings for item in one.items if not isinstance(item, Grid))
        self._names: dict[tuple[tuple[Item, ...], float], str] = {}
        self.packed: dict[str, bytes] = {}
        self._runs = {id(one): [*self._neighbours(one)] for one in drawings}  # which live as long
        self._drawings = drawings
        runs = Counter((run, one.height) for one in drawings for run, shared in self._runs[id(one)] if shared)
        for (run, height), count in runs.items():
            if count < _OFTEN:
                continue
            packed = zlib.compress(items_code(run, height, fonts).encode("latin-1"), 9)
            if count * (len(packed) - _CALL) > _COSTS + len(packed):
                name = f"X{hashlib.sha256(packed).hexdigest()[:8]}"
                self._names[run, height] = name
                self.packed[name] = packed

    def cut(self, drawing: Drawing) -> Iterator[tuple[Item, ...] | str]:
        """The drawing's items in order, and in their midst the names of forms that stand for some of them."""
        for run, shared in self._runs.get(id(drawing)) or self._neighbours(drawing):
            yield self._names.get((run, drawing.height), run) if shared else run

    def _neighbours(self, drawing: Drawing) -> Iterator[tuple[tuple[Item, ...], bool]]:
        """Neighbours that are met equally often belong together: the picture of an end, a sign, a hole."""
        for count, run in groupby(drawing.items, self._often):
            yield tuple(run), count >= _OFTEN

    def _often(self, item: Item) -> int:
        return 0 if isinstance(item, Grid) else self._seen[item]
