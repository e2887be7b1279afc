"""What the wall chart and the booklet say of a family, taken from the tables: threads, seats, how it seals, look-alikes.

Every figure keeps its source; ``Marks`` numbers the sources as they are met on a paper.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field

from tagger import phrases
from tagger.messages import Message, angle
from tagger.spec import Connection, Form, Material, Sizing
from tagger.trade import alike
from tagger.trade.cones import HALF_ANGLES
from tagger.trade.known import an_end
from tagger.trade.rows import UNVERIFIED, FlangeRow, PlainEnd, ThreadRow
from tagger.trade.tables import Tables

UNVERIFIED_SIGN = "\N{DAGGER}"
ALIKE_SIGN = "\N{NOT EQUAL TO}"
_FLANGE_FIGURES = ("head_mm", "bolt_long_mm", "bolt_short_mm", "screw_inch", "screw_metric")


@dataclass(frozen=True)
class Cited:
    """Where something comes from, and how sure it is."""

    source: str
    confidence: str


@dataclass(frozen=True)
class Seal:
    """One thing said of how a family seals."""

    message: Message
    cited: tuple[Cited, ...]


@dataclass(frozen=True)
class Size:
    """One size of a family: ``name`` as the trade says it, and the row that the tables have of it."""

    name: str
    dashes: tuple[int, ...]
    thread: ThreadRow | None = None
    plain: tuple[PlainEnd, ...] = ()
    flange: dict[str, FlangeRow] = field(default_factory=dict)
    alike: tuple[Connection, ...] = ()


@dataclass(frozen=True)
class Facts:
    """A family with its number, which is the same on every paper, and on one that leaves families out."""

    number: int
    family: Connection
    seals: tuple[Seal, ...]
    sizes: tuple[Size, ...]

    @property
    def alike(self) -> tuple[Connection, ...]:
        """The families that it is taken for in any size."""
        return tuple(dict.fromkeys(other for size in self.sizes for other in size.alike))


class Marks:
    """The sources of one paper, numbered as they are met: "[3]", or "[3†]" for an unverified figure."""

    def __init__(self) -> None:
        self._numbers: dict[str, int] = {}

    def mark(self, *cited: Cited) -> str:
        numbers = []
        for one in dict.fromkeys(cited):
            number = self._numbers.setdefault(one.source, len(self._numbers) + 1)
            numbers.append(f"{number}{UNVERIFIED_SIGN if one.confidence in UNVERIFIED else ''}")
        return f"[{','.join(dict.fromkeys(numbers))}]"

    def listed(self) -> list[tuple[int, str]]:
        return [(number, source) for source, number in self._numbers.items()]


def all_facts(tables: Tables) -> tuple[Facts, ...]:
    """Every family that has sizes, in the order of the tables."""
    families = [family for family in tables.families if family.sized_by is not Sizing.WORDS]
    return tuple(_facts(number, family, tables) for number, family in enumerate(families, 1))


def numbered(family: Connection, facts: Iterable[Facts]) -> Message:
    """ "2 45° flare": a family under its number."""
    number = next(one.number for one in facts if one.family is family)
    return Message("charts-numbered", number=number, family=phrases.connection(family))


def _facts(number: int, family: Connection, tables: Tables) -> Facts:
    sizes = tuple(_size(family, size, tables) for size in tables.sizes(family))
    return Facts(number, family, tuple(_seals(family, tables)), sizes)


def _size(family: Connection, size: str, tables: Tables) -> Size:
    form = tables.families[family].forms[0]
    name = an_end(family, size, form, material=Material.CARBON_STEEL).size_text
    if family.sized_by is Sizing.NAMED:
        name = size
    shared = dict.fromkeys(other for other, _ in alike.sharing(family, size, tables))
    return Size(
        name,
        tables.natural_hose(family, size),
        tables.threads.get((family, size)),
        tables.plain_ends.get((family, size), ()),
        {r.what: r for r in tables.flanges if (r.family, r.size) == (family, size)},
        tuple(shared),
    )


def _seals(family: Connection, tables: Tables) -> Iterator[Seal]:
    rows = [row for row in tables.seats if row.family is family]
    own = Cited(tables.families[family].source, tables.families[family].confidence)
    if family.is_flange:
        yield Seal(Message("charts-seals-head"), _cited(rows))
        return
    if not rows:
        forms = tables.families[family].forms
        kind = (
            "standpipe" if Form.STANDPIPE in forms else "staple" if Form.STAPLE_MALE in forms else "coupler"
        )
        yield Seal(Message(f"charts-seals-{kind}"), (own,))
        return
    for half in dict.fromkeys(HALF_ANGLES[row.seat] for row in rows if row.seat in HALF_ANGLES):
        of_cone = [row for row in rows if HALF_ANGLES.get(row.seat) == half]
        message = Message("charts-seals-cone", half=angle(half), included=angle(2 * half))
        yield Seal(message, _cited(of_cone))
    yield from _where(family, tables)
    usual = [row for row in rows if row.seat not in HALF_ANGLES]
    for kind in dict.fromkeys(row.seat for row in usual):
        if kind == "flat" and any(row.seat == "face" for row in usual):
            continue  # a face seal's nut is flat: it is the same joint
        also = kind == "flat" and len(usual) < len(rows)
        kind_rows = [row for row in usual if row.seat == kind]
        yield Seal(Message("charts-seals-or-flat" if also else f"charts-seals-{kind}"), _cited(kind_rows))


def _where(family: Connection, tables: Tables) -> Iterator[Seal]:
    """Which forms have a nose, and which a funnel."""
    for way in ("outside", "inside"):
        rows = [row for row in tables.cones if row.family is family and row.cone == way]
        if rows:
            forms = tuple(phrases.form(row.form) for row in rows)
            yield Seal(Message(f"charts-where-{way}", forms=forms), _cited(rows))


def _cited(rows: Iterable[object]) -> tuple[Cited, ...]:
    found = [Cited(row.source, row.confidence) for row in rows]  # type: ignore[attr-defined]
    return tuple(dict.fromkeys(found))


def cited(row: ThreadRow | PlainEnd | FlangeRow) -> Cited:
    return Cited(row.source, row.confidence)


def flange_figures(size: Size) -> list[FlangeRow]:
    """What is known of a flange, in the order that it is read."""
    return [size.flange[what] for what in _FLANGE_FIGURES if what in size.flange]
