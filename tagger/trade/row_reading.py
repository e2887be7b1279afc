"""Reading the data files, and what a shop adds to them: every cell is checked.

The type of a field in ``rows.py`` says how its cell is read. Lists in a cell are separated by ``;``. An empty
cell is None, or an empty list.
"""

from __future__ import annotations

import csv
from collections.abc import Callable, Iterator, Mapping
from dataclasses import MISSING, fields
from fractions import Fraction
from functools import cache
from math import isfinite
from pathlib import Path
from typing import Any, TypeVar

from tagger.errors import Problem, TradeError
from tagger.messages import Message
from tagger.spec import Connection

Row = TypeVar("Row")
Check = Callable[[Any], Iterator[tuple[str, Message]]]
"""What is wrong with a row, by column."""


def read_rows(path: Path, kind: type[Row], check: Check | None = None) -> Iterator[Row]:
    """The rows of a CSV file. A column that has a default may be absent.

    Raises TradeError naming file, line and column where a cell cannot be read, or ``check`` finds
    something; all of a file at once.
    """
    every = fields(kind)  # type: ignore[arg-type]
    defaults = {column.name for column in every if column.default is not MISSING}
    problems: list[Problem] = []
    with path.open(newline="", encoding="utf-8") as file:
        table = csv.DictReader(file)
        if wrong := sorted(
            set(table.fieldnames or ())
            ^ {column.name for column in every} - defaults.difference(table.fieldnames or ())
        ):
            columns_off = Message("trade-wrong-columns", file=path.name, columns=tuple(wrong))
            raise TradeError(Problem(path.name, ", ".join(wrong), columns_off))
        for cells in table:
            try:
                yield read_row(cells, kind, f"{path.name}, line {table.line_num}", check)
            except TradeError as error:
                problems += error.problems
    if problems:
        raise TradeError(problems)


def read_row(cells: Mapping[str, str], kind: type[Row], where: str, check: Check | None = None) -> Row:
    """One row from its cells. Raises TradeError naming ``where`` and the column."""
    values: dict[str, Any] = {}
    problems: list[Problem] = []
    for column in fields(kind):  # type: ignore[arg-type]
        if column.name not in cells:
            continue
        try:
            values[column.name] = _reader(str(column.type))(cells[column.name] or "")
        except ValueError:
            unread = Message("trade-cell-not-read")
            problems.append(Problem(f"{where}, {column.name}", cells[column.name], unread))
    if problems:
        raise TradeError(problems)
    row = kind(**values)
    if found := list(check(row)) if check else []:
        raise TradeError(Problem(f"{where}, {name}", cells.get(name), wrong) for name, wrong in found)
    return row


@cache
def _reader(annotation: str) -> Callable[[str], Any]:
    optional = annotation.endswith("| None")
    kind = annotation.removesuffix("| None").strip()
    read: Callable[[str], Any]
    if kind == "float":
        read = _number
    elif kind == "int":
        read = int
    elif kind == "Connection":
        read = Connection
    elif kind.startswith("tuple["):
        part = _reader(kind.removeprefix("tuple[").removesuffix(", ...]"))
        return lambda text: tuple(part(item.strip()) for item in text.split(";") if item.strip())
    elif kind.startswith("Literal["):
        allowed = {word.strip().strip("\"'") for word in kind[8:-1].split(",")}

        def read(text: str) -> str:
            return _one_of(text, allowed)
    else:
        return str.strip
    return lambda text: None if optional and not text.strip() else read(text)


def _number(text: str) -> float:
    """A decimal or a fraction: thirds of a flat are written as fractions, to be exact."""
    try:
        number = float(Fraction(text)) if "/" in text else float(text)
    except ZeroDivisionError:
        raise ValueError(text) from None
    if not isfinite(number):
        raise ValueError(text)
    return number


def _one_of(text: str, allowed: set[str]) -> str:
    if text not in allowed:
        raise ValueError(text)
    return text
