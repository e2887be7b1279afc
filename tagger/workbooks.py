"""Tables from files, within bounds: a small file can hold cells without end.

The reader of spreadsheets and the unpacker beneath it are written by others, and say what is wrong with a damaged file
in many ways; here it is one.
"""

from __future__ import annotations

import zipfile
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Any, BinaryIO, Final

import openpyxl

from tagger.errors import Problem, SpecError
from tagger.messages import Message

MOST_CELLS: Final = 1_000_000
MOST_UNPACKED: Final = 30_000_000  # bytes of all parts of a spreadsheet
_MOST_TAGS: Final = 2_500_000  # of XML, in all parts: four make a cell
_CHUNK: Final = 1_000_000


def sheet(path: Path) -> list[list[object]]:
    """The rows of the first sheet of an XLSX file, without the empty cells at their ends.

    Raises SpecError for a damaged file, one that is too large, and each formula without a value; OSError.
    """
    with path.open("rb") as file:
        try:
            _measure(file)
            return _read(file)
        except SpecError:
            raise
        except Exception:
            raise SpecError(Problem("file", path.name, Message("lists-not-a-spreadsheet"))) from None


def bounded(rows: Iterable[list[object]]) -> Iterator[list[object]]:
    """The same rows. Raises SpecError as soon as there are more than MOST_CELLS, a row counting as one more."""
    seen = 0
    for row in rows:
        seen += len(row) + 1
        if seen > MOST_CELLS:
            raise _too_large()
        yield row


def _measure(file: BinaryIO) -> None:
    """Raises SpecError for what would unpack to more than the bounds; nothing is kept."""
    with zipfile.ZipFile(file) as packed:
        if sum(part.file_size for part in packed.infolist()) > MOST_UNPACKED:
            raise _too_large()
        tags = 0
        for part in packed.infolist():
            with packed.open(part) as unpacked:  # never more than the size that was added up
                while chunk := unpacked.read(_CHUNK):
                    tags += chunk.count(b"<")
                    if tags > _MOST_TAGS:
                        raise _too_large()


def _read(file: BinaryIO) -> list[list[object]]:
    shown, typed = _rows(file, data_only=True), _rows(file, data_only=False)
    problems: list[Problem] = []
    table: list[list[object]] = []
    for values, cells in zip(bounded(shown), bounded(typed), strict=False):
        for cell, value in zip(cells, values, strict=False):
            if cell.data_type == "f" and value.value is None:  # type: ignore[attr-defined]
                where = f"cell {cell.coordinate}"  # type: ignore[attr-defined]
                problems.append(Problem(where, str(cell.value)[:40], Message("lists-formula")))  # type: ignore[attr-defined]
        table.append(_trimmed(values))
    if problems:
        raise SpecError(problems)
    return table


def _rows(file: BinaryIO, *, data_only: bool) -> Iterator[list[Any]]:
    """The cells of the first sheet: the values last computed, or what was typed, formulas too."""
    book = openpyxl.load_workbook(file, read_only=True, data_only=data_only, keep_links=False)
    first = book.worksheets[0]
    first.reset_dimensions()  # what the file says of its size may be wrong, and would cut or fill the rows
    for row in first.iter_rows():
        yield [*row]


def _trimmed(cells: list[Any]) -> list[object]:
    values = [cell.value for cell in cells]
    while values and values[-1] is None:
        values.pop()
    return values


def _too_large() -> SpecError:
    megabytes = MOST_UNPACKED // 1_000_000
    return SpecError(Problem("file", None, Message("lists-too-large", cells=MOST_CELLS, megabytes=megabytes)))
