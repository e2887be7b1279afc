"""Which hose standards a hose cannot be, by its layers and diameters, and what its lay line says.

    >>> from tagger.trade.tables import tables
    >>> found = exclude(HoseSeen(outside_mm=13.2, kind="wire_braid", layers=1), tables())
    >>> "EN 853 1SN" in found.names, "EN 856 4SP" in found.names
    (True, False)

It only excludes, and it never rates: hoses of different rating have the same layers and nearly the same diameters
(-8 1SN, 2SC and R7 are within 1 mm). Where the tables have no value, nothing is excluded.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from tagger.connection import names_tube
from tagger.errors import Problem, SpecError, UnitError
from tagger.messages import Message, diameter
from tagger.trade import layline
from tagger.trade.identifying.readings import unknown
from tagger.trade.layline import LayLine
from tagger.trade.rows import LAYERS, UNVERIFIED, HoseBendRow, HoseLayersRow, HosePressureRow, HoseSizeRow
from tagger.trade.tables import Tables
from tagger.units import MM_PER_INCH, read_length_mm, whole_number

OUTSIDE_MM, OUTSIDE_SHARE = 1.5, 0.065
"""How far an outside diameter may be off every source's: sources of one size differ by up to 6.1 % (a test holds it)."""
BORE_MM, BORE_SHARE = 1.0, 0.03
"""How far a bore may be off: judgement, wider than half the 1.6 mm between dash sizes, so that neighbours overlap."""
MOST_LAYERS = 8
MOST_MM = 250.0


@dataclass(frozen=True)
class HoseSeen:
    """What is known of a hose; None where nothing is. ``kind``: of rows.LAYERS, ``layers`` of them.

    ``lay_line``: as it is printed along the hose.
    """

    outside_mm: float | None = None
    bore_mm: float | None = None
    kind: str | None = None
    layers: int | None = None
    lay_line: str = ""

    @classmethod
    def read(
        cls,
        *,
        od: object = None,
        bore: object = None,
        kind: object = None,
        layers: object = None,
        lay_line: object = None,
    ) -> HoseSeen:
        """From what people type: "22.5", "7/8 in", "2". Raises SpecError naming every field that cannot be read."""
        problems: list[Problem] = []
        found = cls(
            outside_mm=_length("od", od, problems),
            bore_mm=_length("bore", bore, problems),
            kind=_kind(kind, problems),
            layers=_layers(layers, problems),
            lay_line="" if unknown(lay_line) else str(lay_line).strip()[:300],
        )
        if not problems:
            problems = list(_contradictions(found))
        if problems:
            raise SpecError(problems)
        return found


@dataclass(frozen=True)
class Size:
    """A dash size of a standard that remains; ``outside_mm`` from the least to the greatest of its sources."""

    dash: int
    outside_mm: tuple[float, float] | None
    sources: tuple[Message | str, ...]

    @property
    def in_words(self) -> Message:
        if self.outside_mm is None:
            return Message("identify-hose-size", dash=self.dash)
        least, most = map(diameter, self.outside_mm)
        return Message("identify-hose-size_od", dash=self.dash, least=least, most=most)


@dataclass(frozen=True)
class Remaining:
    """A standard that it can be; ``unchecked``: ``layers`` or ``od``, which the tables do not know of it."""

    standard: str
    construction: str
    sizes: tuple[Size, ...]
    unchecked: tuple[str, ...]

    def in_words(self, *, all_sizes: bool = False) -> tuple[Message, ...]:
        """Its sizes and their sources, and what was not checked; a standard of which nothing was is left without sizes."""
        said = [Message(f"identify-hose-unchecked-{what}") for what in self.unchecked]
        if len(self.unchecked) == 2 and not all_sizes:
            return tuple(said)
        sources = _once(source for size in self.sizes for source in size.sources)
        named = Message("identify-hose-sizes", sizes=tuple(size.in_words for size in self.sizes))
        return (named, *([Message("identify-hose-sources", sources=sources)] if sources else []), *said)


@dataclass(frozen=True)
class Excluded:
    standard: str
    why: Message


@dataclass(frozen=True)
class Exclusion:
    """``line``: the lay line read, None where none was given; ``notes``: what it says, and where it cannot be true.

    ``never_rates``: that nothing of this is a rating.
    """

    remaining: tuple[Remaining, ...]
    excluded: tuple[Excluded, ...]
    line: LayLine | None
    notes: tuple[Message, ...]
    never_rates: Message

    @property
    def names(self) -> tuple[str, ...]:
        return tuple(one.standard for one in self.remaining)


def exclude(seen: HoseSeen, tables: Tables) -> Exclusion:
    """What the hose cannot be, with reasons, and what remains."""
    remaining, excluded = [], []
    for standard in tables.standards:
        found = _of_standard(standard, seen, tables)
        if isinstance(found, Remaining):
            remaining.append(found)
        else:
            excluded.append(found)
    line = layline.read(seen.lay_line, tables) if seen.lay_line else None
    notes = _line_notes(line, remaining, excluded, tables) if line else ()
    remaining.sort(key=lambda one: len(one.unchecked))
    return Exclusion(tuple(remaining), tuple(excluded), line, notes, Message("identify-hose-never_rates"))


def _of_standard(standard: str, seen: HoseSeen, tables: Tables) -> Remaining | Excluded:
    unchecked = []
    if seen.kind is not None:
        rows = tables.hose_layers.get(standard, ())
        if not rows:
            unchecked.append("layers")
        elif why := _wrong_layers(seen, rows):
            return Excluded(standard, why)
    sizes, nearest = [], list[_Off]()
    for dash in dashes(standard, tables):
        size, off = _size(standard, dash, seen, tables)
        if off is None:
            sizes.append(size)
        else:
            nearest.append(off)
    if not sizes:
        return Excluded(standard, min(nearest, key=lambda one: one.by).why(tables.standards[standard].source))
    if seen.outside_mm is not None and any(size.outside_mm is None for size in sizes):
        unchecked.append("od")
    return Remaining(standard, tables.standards[standard].construction, tuple(sizes), tuple(unchecked))


def _wrong_layers(seen: HoseSeen, rows: tuple[HoseLayersRow, ...]) -> Message | None:
    """Why the layers are none of the standard's; None where they can be."""
    of_kind = [row for row in rows if row.kind == seen.kind]
    count = seen.layers
    if any(count is None or row.layers_min <= count <= row.layers_max for row in of_kind):
        return None
    own = tuple(_in_words(row) for row in rows)
    return Message("identify-hose-other_layers", own=own, sources=_sources(rows))


def _sources(rows: Sequence[HoseLayersRow | HoseSizeRow]) -> tuple[Message | str, ...]:
    """Where the rows come from, each source once; one from memory or by judgement is called unverified."""
    return _once(
        Message("identify-hose-unverified", source=row.source) if row.confidence in UNVERIFIED else row.source
        for row in rows
    )


def _once(sources: Iterable[Message | str]) -> tuple[Message | str, ...]:
    return tuple({str(source): source for source in sources}.values())


def _in_words(row: HoseLayersRow) -> Message:
    if row.layers_min == row.layers_max:
        return Message(f"identify-hose-layers-{row.kind}", count=row.layers_min)
    return Message(f"identify-hose-layers_range-{row.kind}", least=row.layers_min, most=row.layers_max)


def dashes(standard: str, tables: Tables) -> tuple[int, ...]:
    """The dash sizes that any table has of a standard; all sizes where none names one."""
    rows: tuple[HosePressureRow | HoseBendRow | HoseSizeRow, ...] = (
        *tables.hose_pressures.get(standard, ()),
        *tables.hose_bends.get(standard, ()),
        *tables.hose_sizes.get(standard, ()),
    )
    named = {int(row.dash) for row in rows if row.dash.isdigit() and not row.part}
    names = "tube" if names_tube(standard) else "bore"
    return tuple(sorted(named)) or tuple(sorted(dash for kind, dash in tables.bores if kind == names))


@dataclass(frozen=True)
class _Off:
    """That a reading is off a size by so many mm: ``own`` is the nearest that the size may have."""

    by: float
    feature: str
    measured: float
    own: float
    size: Size

    def why(self, otherwise: str) -> Message:
        return Message(
            "identify-hose-other_bore" if self.feature == "bore" else "identify-hose-other_od",
            measured=diameter(self.measured),
            dash=self.size.dash,
            nearest=diameter(self.own),
            sources=self.size.sources or (otherwise,),
        )


def _size(standard: str, dash: int, seen: HoseSeen, tables: Tables) -> tuple[Size, _Off | None]:
    """A size, and how far off it is; None where nothing speaks against it."""
    rows = [r for r in tables.hose_sizes.get(standard, ()) if r.dash == str(dash) and not r.part]
    outer = [r.outside_diameter_mm for r in rows]
    outside = (min(outer), max(outer)) if outer else None
    size = Size(dash, outside, _sources(rows))
    bore = _bores(standard, dash, rows, tables)
    for feature, measured, own, within in (
        ("bore", seen.bore_mm, bore, (BORE_MM, BORE_SHARE)),
        ("od", seen.outside_mm, outside or (bore[0], MOST_MM), (OUTSIDE_MM, OUTSIDE_SHARE)),
    ):
        if measured is None:
            continue
        off = max(own[0] - measured, measured - own[1])
        if off > max(within[0], within[1] * measured):
            return size, _Off(off, feature, measured, own[0] if measured < own[0] else own[1], size)
    return size, None


def _bores(standard: str, dash: int, rows: list[HoseSizeRow], tables: Tables) -> tuple[float, float]:
    """The least and greatest bore that a source names, or that the dash itself does."""
    of_tube = names_tube(standard)
    nominal = tables.bores.get(("tube" if of_tube else "bore", dash))
    named = [r.bore_mm for r in rows if r.bore_mm is not None] + ([nominal.bore_mm] if nominal else [])
    if not of_tube or not named:
        named.append(dash * MM_PER_INCH / 16)
    return min(named), max(named)


def _line_notes(
    line: LayLine, remaining: list[Remaining], excluded: list[Excluded], tables: Tables
) -> tuple[Message, ...]:
    """What the line names, and where that cannot be the hose that was measured."""
    notes = list[Message]()
    if not line.standards:
        return (Message("identify-hose-line_unread"), *line.notes)
    notes.append(Message("identify-hose-line_names", standards=line.standards))
    out = {one.standard for one in excluded}
    for standard in line.standards:
        if standard in out:
            notes.append(Message("identify-hose-line_excluded", standard=standard))
    of_line = [one for one in remaining if one.standard in line.standards]
    if (
        line.dash is not None
        and of_line
        and not any(s.dash == line.dash for one in of_line for s in one.sizes)
    ):
        notes.append(Message("identify-hose-line_size", dash=line.dash))
    return (*notes, *line.notes)


def _contradictions(seen: HoseSeen) -> Iterator[Problem]:
    if seen == HoseSeen():
        yield Problem("od", None, Message("identify-hose-none"))
    if seen.layers is not None and seen.kind is None:
        yield Problem("kind", None, Message("identify-hose-kind-missing"))
    if seen.bore_mm is not None and seen.outside_mm is not None and seen.bore_mm >= seen.outside_mm:
        yield Problem("bore", seen.bore_mm, Message("identify-hose-bore-too-large"))


def _length(field: str, value: object, problems: list[Problem]) -> float | None:
    if unknown(value):
        return None
    try:
        found = read_length_mm(value)
    except UnitError as error:
        problems += [Problem(field, p.value, p.message) for p in error.problems]
        return None
    if not 1 <= found <= MOST_MM:
        problems.append(Problem(field, value, Message("identify-hose-not-a-diameter", value=str(value))))
    return found


def _kind(value: object, problems: list[Problem]) -> str | None:
    if unknown(value):
        return None
    text = str(value).strip().lower().replace(" ", "_").replace("-", "_")
    if text not in LAYERS:
        problems.append(
            Problem("kind", value, Message("identify-not-an-answer", value=str(value)[:40], known=LAYERS))
        )
        return None
    return text


def _layers(value: object, problems: list[Problem]) -> int | None:
    if unknown(value):
        return None
    number = value if isinstance(value, int) else whole_number(str(value))
    if number is None or not 1 <= number <= MOST_LAYERS:
        wrong = Message("identify-hose-not-a-count", value=str(value)[:40], most=MOST_LAYERS)
        problems.append(Problem("layers", value, wrong))
        return None
    return number
