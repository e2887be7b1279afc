"""How an end is shaped where it seals: a cone that stands out like a nose or lies inside like a funnel."""

from __future__ import annotations

from dataclasses import dataclass

from tagger.spec import Connection, Form
from tagger.trade.tables import Tables

HALF_ANGLES = {"37": 37, "45": 45, "30": 30, "60": 30, "24": 12}
"""Degrees between a cone's side and its axis, by what a seat gauge is called: 24 and 60 count both sides."""


@dataclass(frozen=True, slots=True)
class Cone:
    """``outside``: a nose; else a funnel. ``half_angle``: degrees between its side and its axis."""

    outside: bool
    half_angle: int


def cone_of(family: Connection, form: Form, tables: Tables) -> Cone | None:
    """The cone of a form; None where it seals otherwise. Of several seats the most usual."""
    row = next((row for row in tables.cones if (row.family, row.form) == (family, form)), None)
    seat = usual_seat(family, form, tables)
    if row is None or seat not in HALF_ANGLES:
        return None
    return Cone(row.cone == "outside", HALF_ANGLES[seat])


def usual_seat(family: Connection, form: Form, tables: Tables) -> str | None:
    """What a seat gauge or the eye most often says of a form; None where the tables do not say."""
    rows = [row for row in tables.seats if (row.family, row.form) == (family, form)]
    return max(rows, key=lambda row: row.share).seat if rows else None
