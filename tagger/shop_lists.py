"""The shop's lists of parts from CSV or XLSX: every problem named by row and column, all rows or none."""

from __future__ import annotations

import datetime as dt
from collections.abc import Callable, Iterator, Mapping, Sequence
from pathlib import Path
from typing import Any, TypeVar

from tagger import lists
from tagger.errors import Problem, SpecError, TaggerError
from tagger.messages import Message
from tagger.spec import End
from tagger.trade.compatibility import end_problems
from tagger.trade.fittings import Fitting, read_fitting
from tagger.trade.given import problem_with_fitting
from tagger.trade.own_hoses import OwnHose, read_own_hose
from tagger.trade.tables import Tables

T = TypeVar("T")
Table = Sequence[Sequence[object]]
_OF_AN_ASSEMBLY = ("lot", "fitting", "rating")
FITTING_COLUMNS = (
    "stock_number", "fitting_series",
    *(f"end.{name}" for name in End.model_fields if name not in _OF_AN_ASSEMBLY),
    *(name for name in Fitting.model_fields if name not in ("stock_number", "fitting_series", "end")),
)  # fmt: skip

HOSE_COLUMNS = tuple(OwnHose.model_fields)


def table_of(path: Path) -> list[list[object]]:
    """The cells of a .csv or .xlsx file, the header row first. Raises SpecError."""
    return lists.read_table(path)


def read_fittings(table: Table, tables: Tables) -> list[Fitting]:
    """The rows of a list of fittings, each end held against the tables. Raises SpecError."""

    def read(given: dict[str, Any]) -> Fitting:
        fitting = read_fitting(given)
        refuse_unsound(fitting, tables)
        return fitting

    return read_rows(table, FITTING_COLUMNS, read)


def refuse_unsound(fitting: Fitting, tables: Tables) -> None:
    """Raises SpecError for a form or a size that the fitting's family does not have, and for an own rating above
    every one of that family that nobody confirms: it may be psi typed as bar."""
    wrong = end_problems("end", fitting.end, tables)
    if fitting.rating_bar is not None:
        confirmed = bool(fitting.rating_confirmed)
        high = problem_with_fitting(fitting.end, fitting.rating_bar, tables, confirmed=confirmed)
        wrong += [high] if high else []
    if wrong:
        raise SpecError(wrong)


def read_own_hoses(table: Table, tables: Tables) -> list[OwnHose]:
    """The rows of a list of the shop's hoses. Raises SpecError; for a hose that is there twice as well."""
    found = read_numbered(table, HOSE_COLUMNS, lambda given: read_own_hose(given, tables))
    keys = [hose.key for _, hose in found]
    problems = [
        Problem(
            f"row {number}.part",
            hose.part,
            Message("trade-own-hose-twice", part=hose.part, dash=hose.dash),
        )
        for place, (number, hose) in enumerate(found)
        if hose.key in keys[:place]
    ]
    if problems:
        raise SpecError(problems)
    return [hose for _, hose in found]


def row_of(fitting: Fitting) -> list[Any]:
    """A fitting's cells under FITTING_COLUMNS: they can be read in again."""
    data = fitting.as_dict()
    flat = {**data, **{f"end.{name}": value for name, value in data["end"].items()}}
    return [flat.get(name) for name in FITTING_COLUMNS]


def row_of_hose(hose: OwnHose) -> list[Any]:
    """A hose's cells under HOSE_COLUMNS: they can be read in again."""
    data = hose.model_dump(mode="json") | {"fluids": ";".join(hose.fluids)}
    return [data[name] for name in HOSE_COLUMNS]


def read_rows(table: Table, columns: Sequence[str], read: Callable[[dict[str, Any]], T]) -> list[T]:
    """Each row as ``read`` makes it from its cells, nested by the dots of the columns.

    Raises SpecError with the problems of the heading, or of all rows at once ("row 3.cut_off_mm").
    """
    return [row for _, row in read_numbered(table, columns, read)]


def read_numbered(
    table: Table, columns: Sequence[str], read: Callable[[dict[str, Any]], T]
) -> list[tuple[int, T]]:
    """The same, each with its row's number in the spreadsheet: blank rows count there as well."""
    heading = [str(cell or "").strip() for cell in table[0]] if table else []
    problems = list(_heading_problems(heading, columns))
    if problems:
        raise SpecError(problems)
    found: list[tuple[int, T]] = []
    for number, cells in enumerate(table[1:], 2):
        given = {
            n: c for n, cell in zip(heading, cells, strict=False) if n and (c := _cell(cell)) is not None
        }
        if not given:
            continue
        try:
            found.append((number, read(_nested(given))))
        except TaggerError as error:
            problems += error.within(f"row {number}").problems
    if not found and not problems:
        problems.append(Problem("file", None, Message("lists-no-rows")))
    if problems:
        raise SpecError(problems)
    return found


def _heading_problems(heading: Sequence[str], columns: Sequence[str]) -> Iterator[Problem]:
    if not any(heading):
        yield Problem("file", None, Message("lists-empty"))
    for place, name in enumerate(heading, 1):
        if name and name not in columns:
            yield Problem(f"column {place}", name, Message("lists-unknown-column", columns=tuple(columns)))
    for name in sorted({name for name in heading if name and heading.count(name) > 1}):
        yield Problem("heading", name, Message("lists-column-twice"))


def _cell(cell: object) -> object:
    """A cell's text, or a day that the spreadsheet made of it; None when empty."""
    if isinstance(cell, dt.date | dt.datetime):
        return cell
    if isinstance(cell, float) and cell.is_integer():
        cell = int(cell)
    text = str(cell if cell is not None else "").strip()
    return text.removeprefix("'") or None


def _nested(given: Mapping[str, object]) -> dict[str, Any]:
    found: dict[str, Any] = {}
    for name, value in given.items():
        if isinstance(value, dt.date | dt.datetime):
            raise SpecError(Problem(name, str(value), Message("lists-became-a-date")))
        parent, _, last = name.rpartition(".")
        (found.setdefault(parent, {}) if parent else found)[last] = value
    return found
