"""The marks of a sheet in the order in which they stand on it, for a page that asks which of them was found."""

from __future__ import annotations

from tagger.gauges import flanges, hexes, pitches, seats, threads
from tagger.spec import Connection, Form
from tagger.trade.identifying.marks import mark
from tagger.trade.tables import Tables

Marked = tuple[str, str]
"""A mark and what stands beside it without words: size, thread, threads per inch."""


def of_sheet(kind: str, family: str, tables: Tables) -> list[Marked]:
    """The marks of a sheet; none where it is not known, or has none (hoses)."""
    if kind == "threads":
        return _of_threads(family, tables)
    if kind == "pitches":
        return [
            (mark("P", p), f"{rows[0].tpi:g}/in" if rows[0].tpi else f"{p:g} mm")
            for p, rows in pitches.combs(tables)
        ]
    if kind == "seats":
        return [
            (mark("A", float(seat)), f"{half:g}\u00b0 / {2 * half:g}\u00b0")
            for seat, half in seats.HALF.items()
        ]
    if kind == "hexes":
        return [(mark("H", width), "") for width in hexes.widths(tables)]
    if kind == "flanges":
        return _of_flanges(family, tables)
    return []


def _of_threads(family: str, tables: Tables) -> list[Marked]:
    if family not in threads.families(tables):
        return []
    rows = [one.row for one in threads.of_family(Connection(family), tables)]
    forms = [Form(name) for name in tables.families[Connection(family)].forms]
    letters = "D" * any(form.is_male_thread for form in forms) + "F" * any(
        form.is_female_thread for form in forms
    )
    return [
        (mark(letter, row.thread_od_mm if letter == "D" else row.female_minor_mm), f"{threads.size_text(row.family, row.size)}  {row.thread}")
        for letter in letters
        for row in rows
    ]  # fmt: skip


def _of_flanges(family: str, tables: Tables) -> list[Marked]:
    found = []
    for one in flanges.of_tables(tables):
        for letter, what in (("R", "head_mm"), ("B", "bolt_long_mm")):
            if str(one.family) == family and (figure := one.mm(what)):
                found.append((mark(letter, figure), f"-{one.size}"))
    return found
