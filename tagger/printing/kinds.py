"""The kinds of labels in a run: labels of one kind scan alike, so one of them is simulated for all."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from functools import lru_cache

from tagger.drawing import Group, Part, Text
from tagger.printing.content import Tag
from tagger.printing.layout import Page

LEGIBLE_MM = 1.7  # em of the smallest text: about 5 pt
LONGEST_LINK = 255  # characters; IEC 61406-1 as remembered, not confirmed


@dataclass(frozen=True, slots=True)
class Kind:
    """What decides how a label of one template scans and what preflight says of it.

    ``symbols``: the kind, version, level and dots a module of each symbol. Of one kind the label on the
    thinnest hose is the worst where labels bend with the hose, and a flag's wings end on the thickest.
    """

    symbols: tuple[tuple[str, int, str, int], ...]
    legible: bool
    short_link: bool
    diameter_known: bool

    @classmethod
    def of(cls, tag: Tag, page: Page) -> Kind:
        smallest = min(map(_smallest, page.drawing.parts), default=_NONE)
        return cls(
            tuple((p.symbol.kind, p.symbol.version, p.symbol.level, p.dots) for p in page.symbols),
            smallest >= LEGIBLE_MM - 0.01,
            len(tag.link) <= LONGEST_LINK,
            _diameter(tag) is not None,
        )


@dataclass
class Kinds:
    """The kinds of labels met so far, each with its tags on the thinnest and on the thickest hose."""

    met: dict[Kind, tuple[Tag, Tag]] = field(default_factory=dict)

    def add(self, tag: Tag, page: Page) -> None:
        self._keep(Kind.of(tag, page), (tag, tag))

    def merge(self, other: Kinds) -> None:
        for kind, ends in other.met.items():
            self._keep(kind, ends)

    def worst(self, *, bends: bool) -> Iterator[Tag]:
        """One tag of each kind to be simulated; where labels bend with the hose, on the thinnest and the thickest."""
        for thin, thick in self.met.values():
            yield thin
            if bends and _diameter(thick) != _diameter(thin):
                yield thick

    def _keep(self, kind: Kind, ends: tuple[Tag, Tag]) -> None:
        known = self.met.get(kind)
        if known is None:
            self.met[kind] = ends
            return
        thin, thick = known
        if _round(ends[0]) < _round(thin):
            thin = ends[0]
        if _round(ends[1]) > _round(thick):
            thick = ends[1]
        self.met[kind] = thin, thick


_NONE = 9.0  # em of no text at all


@lru_cache(maxsize=512)
def _smallest_of_all(group: Group) -> float:
    return min([item.size for item in group.items if isinstance(item, Text)], default=_NONE)


def _smallest(part: Part) -> float:
    """The em of the smallest text."""
    if isinstance(part, Group):
        return _smallest_of_all(part)
    return part.size if isinstance(part, Text) else _NONE


def _diameter(tag: Tag) -> float | None:
    return tag.assessment.hose_od_mm if tag.assessment else None


def _round(tag: Tag) -> float:
    return _diameter(tag) or 0.0
