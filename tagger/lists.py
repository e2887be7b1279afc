"""A list of specs, one row each, from CSV or XLSX: every problem named by row and column.

Columns are the spec's keys joined by dots (``hose.standard``, ``end_a.dash``, ``length_mm``);
``covers`` are separated by ``;``; ``quantity`` is 1 if absent; ``lot_reason`` says why a reel lot is
used although it is known as another hose. The texts of ``record.py``
(``customer``, ``machine``, ...) go to the record. An empty cell means not given.
"""

from __future__ import annotations

import csv
import datetime as dt
import io
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any, get_args

from openpyxl.utils import get_column_letter
from pydantic import BaseModel

from tagger import workbooks
from tagger.errors import Problem, SpecError
from tagger.intake import marked, unusable
from tagger.messages import Message
from tagger.record import RECORD_FIELDS, Record, as_kept, problem_of
from tagger.spec import MAX_COUNT, AssemblySpec


@dataclass(frozen=True)
class ListedSpec(Record):
    """One row: ``row`` as the spreadsheet numbers it, the header row being row 1."""

    row: int
    spec: AssemblySpec
    quantity: int
    lot_reason: str | None = None


@cache
def columns() -> tuple[str, ...]:
    """Every column a list may have, the spec's first."""
    return (*_dotted(AssemblySpec), "quantity", *RECORD_FIELDS, "lot_reason")


ReadSpec = Callable[[object], AssemblySpec]
"""A spec from plain values: ``Store.read_spec`` fills in the ends that name a stock number."""


def read_list(path: Path, read: ReadSpec = AssemblySpec.read) -> list[ListedSpec]:
    """The rows of a .csv or .xlsx file. Raises SpecError with the problems of all rows at once."""
    return read_rows(read_table(path), read)


def read_table(path: Path) -> list[list[object]]:
    """The cells of a .csv or .xlsx file as they are, the header row first. Raises SpecError."""
    return list(each_of_table(path))


def each_of_table(path: Path) -> Iterator[list[object]]:
    """The same row by row: of a long .csv file no more is held than its text. Raises SpecError as it comes to it."""
    try:
        if path.suffix.lower() == ".xlsx":
            yield from workbooks.sheet(path)
        else:
            yield from workbooks.bounded(_csv_rows(path.read_bytes()))
    except csv.Error:
        raise SpecError(Problem("file", path.name, Message("lists-not-csv"))) from None
    except OSError as error:
        raise SpecError(Problem("file", str(path), unusable(error))) from None


def read_rows(table: list[list[object]], read: ReadSpec = AssemblySpec.read) -> list[ListedSpec]:
    """The same from cells, the header row first. Raises SpecError."""
    return list(each_row(table, read))


def each_row(table: Iterable[list[object]], read: ReadSpec = AssemblySpec.read) -> Iterator[ListedSpec]:
    """The same one by one. Raises SpecError at the end with the problems of all rows at once."""
    left = iter(table)
    first = next(left, None)
    if first is None:
        raise SpecError(Problem("file", None, Message("lists-empty")))
    heading = [str(cell or "").strip() for cell in first]
    _check_heading(heading)
    rows = 0
    problems: list[Problem] = []
    for number, cells in enumerate(left, 2):
        given = {
            name: value
            for name, cell in zip(heading, cells, strict=False)
            if name and (value := _cell(cell)) is not None
        }
        problems += _outside(number, cells, len(heading))
        if not given:
            continue
        try:
            listed = _row(number, given, read)
        except SpecError as error:
            problems += error.within(f"row {number}").problems
            continue
        rows += 1
        yield listed
    if not rows and not problems:
        problems.append(Problem("file", None, Message("lists-no-rows")))
    if problems:
        raise SpecError(problems)


def _outside(row: int, cells: list[object], width: int) -> Iterator[Problem]:
    """A problem for each filled cell to the right of the header row."""
    for place, cell in enumerate(cells[width:], width + 1):
        if (value := _cell(cell)) is not None:
            where = f"row {row}.cell {get_column_letter(place)}{row}"
            yield Problem(where, value, Message("lists-outside-header"))


def _check_heading(heading: list[str]) -> None:
    known = columns()
    problems = [
        Problem(f"column {place}", name, Message("lists-unknown-column", columns=known))
        for place, name in enumerate(heading, 1)
        if name and name not in known
    ]
    twice = {name for name in heading if name and heading.count(name) > 1}
    problems += [Problem("heading", name, Message("lists-column-twice")) for name in sorted(twice)]
    if problems:
        raise SpecError(problems)


def _row(number: int, given: dict[str, object], read: ReadSpec) -> ListedSpec:
    quantity = _quantity(given.pop("quantity", 1))
    record = {name: str(given.pop(name)) for name in (*RECORD_FIELDS, "lot_reason") if name in given}
    if wrong := [p for name, text in record.items() if (p := problem_of(name, as_kept(name, text)))]:
        raise SpecError(wrong)
    return ListedSpec(number, read(_nested(given)), quantity, **record)


def _nested(given: dict[str, object]) -> dict[str, Any]:
    spec: dict[str, Any] = {}
    for name, value in given.items():
        if isinstance(value, dt.date | dt.datetime):
            raise SpecError(Problem(name, str(value), Message("lists-became-a-date")))
        *parents, last = name.split(".")
        inner = spec
        for parent in parents:
            inner = inner.setdefault(parent, {})
        if last == "covers":
            value = [part.strip() for part in str(value).split(";") if part.strip()]
        elif last in ("lot", "part", "edition", "size", "note", "standard", "fitting"):
            value = str(value)
        elif last in ("dash", "hose_dash"):
            value = str(value)  # a spreadsheet makes the number -12 of what the trade writes -12
        elif last == "shape" and str(value).isdecimal():
            value = int(str(value))
        inner[last] = value
    return spec


def _quantity(value: object) -> int:
    try:
        quantity = int(str(value))
    except ValueError:
        quantity = 0
    if not 1 <= quantity <= MAX_COUNT:
        raise SpecError(Problem("quantity", value, Message("lists-quantity", maximum=MAX_COUNT)))
    return quantity


def _cell(cell: object) -> object:
    """A cell's value; None when empty; whole numbers without the spreadsheet's ".0"."""
    if isinstance(cell, str):
        return cell.strip() or None
    if isinstance(cell, float) and cell.is_integer():
        return int(cell)
    return cell


def _csv_rows(data: bytes) -> Iterator[list[object]]:
    try:
        text = data.decode(marked(data))
    except UnicodeDecodeError:
        text = data.decode("cp1252", errors="replace")
    first = text.split("\n", 1)[0]
    delimiter = max((",", ";", "\t"), key=first.count)
    for row in csv.reader(io.StringIO(text), delimiter=delimiter):
        yield [*row]


def _dotted(model: type[BaseModel], prefix: str = "") -> Iterator[str]:
    for name, field in model.model_fields.items():
        inner = [kind for kind in (field.annotation, *get_args(field.annotation)) if _is_model(kind)]
        if inner:
            yield from _dotted(inner[0], f"{prefix}{name}.")
        else:
            yield prefix + name


def _is_model(kind: object) -> bool:
    return isinstance(kind, type) and issubclass(kind, BaseModel)
