"""Connection families: what a tag's digits mean by them, for ever.

A family is a row of ``code/data/code_points.csv``: beside its permanent code point stand how it
names its sizes and how it joins, because a tag read years from now must mean the same. What the
trade adds and a shop may replace (forms, tightening, pressures) is in ``trade/data``.
"""

from __future__ import annotations

import csv
import io
from enum import StrEnum
from functools import cache
from importlib import resources


class Sizing(StrEnum):
    """The terms in which a family names its sizes."""

    DASH = "dash"  # sixteenths of an inch: 12
    PIPE = "pipe"  # nominal pipe size in inches: "3/4"
    TUBE = "tube"  # tube outside diameter in mm: "12"
    THREAD = "thread"  # metric thread: "M22x1.5"
    NAMED = "named"  # names of the family's own, each with a code point: "13.25"
    WORDS = "words"  # no sizes: somebody's description, with the thread


class Joint(StrEnum):
    """What holds a family's two halves together."""

    PARALLEL = "parallel"  # a parallel thread; something else than the thread seals
    TAPER = "taper"  # a taper thread, turned past finger-tight by turns, never by flats
    FLANGE = "flange"  # a head, a clamp and its screws
    LATCH = "latch"  # pushed together and held by balls, a sleeve or a staple; nothing is tightened


@cache
def code_points() -> tuple[dict[str, str], ...]:
    """The rows of ``code_points.csv``: table, point, name; for a connection also sized_by and joint.

    A hose with ``sized_by`` tube has dashes that name the tube, not the bore.
    """
    text = resources.files("tagger.code").joinpath("data/code_points.csv").read_text(encoding="utf-8")
    return tuple(csv.DictReader(io.StringIO(text)))


_TUBE_HOSES = frozenset(
    row["name"] for row in code_points() if row["table"] == "hose" and row["sized_by"] == Sizing.TUBE
)


def names_tube(standard: str) -> bool:
    """Whether a hose standard's dash names the tube it goes with, so that its bore is smaller (SAE J517).

    >>> names_tube("SAE 100R5"), names_tube("SAE 100R2")
    (True, False)
    """
    return standard in _TUBE_HOSES


def tube_hoses() -> tuple[str, ...]:
    """The standards whose dash names the tube."""
    return tuple(sorted(_TUBE_HOSES))


_ROWS = {row["name"]: row for row in code_points() if row["table"] == "connection"}
_SIZED_BY = {name: Sizing(row["sized_by"]) for name, row in _ROWS.items()}
_JOINTS = {name: Joint(row["joint"]) for name, row in _ROWS.items()}


class Connection(StrEnum):
    """The family an end belongs to, named by its standard."""

    # A member for each row, its name in capitals: the documented way to make members in a loop.
    _ignore_ = ["members", "name"]  # noqa: RUF012
    members = vars()
    for name in _ROWS:
        members[name.upper()] = name

    @property
    def sized_by(self) -> Sizing:
        """How the family names its sizes."""
        return _SIZED_BY[self._value_]

    @property
    def joint(self) -> Joint:
        """What holds the two halves together."""
        return _JOINTS[self._value_]

    @property
    def is_flange(self) -> bool:
        return self.joint is Joint.FLANGE

    @property
    def is_latched(self) -> bool:
        """Whether the halves are pushed together, so that nothing is tightened: couplers and staples."""
        return self.joint is Joint.LATCH

    @property
    def is_taper(self) -> bool:
        """Whether the thread is a taper, which is turned past finger-tight by turns, never by flats."""
        return self.joint is Joint.TAPER
