"""A customer's list read as ours: its columns matched to ours, its problems named by cell."""

from __future__ import annotations

import datetime as dt
import json
import re
import tempfile
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from openpyxl.utils import get_column_letter

from tagger import lists
from tagger.errors import Problem, SpecError, TaggerError
from tagger.messages import Message
from tagger.record import recorded
from tagger.store import Registration, Store
from tagger.trade import assess
from tagger.trade.results import Assessment
from tagger.trade.tables import Tables

Cells = list[list[object]]
MAX_BYTES, MAX_ROWS = 5_000_000, 5_000

_ALSO: dict[str, tuple[str, ...]] = {
    "hose.standard": ("hose", "hose type", "standard", "hose standard"),
    "hose.dash": ("dash", "hose size", "hose dash", "size"),
    "hose.part": ("hose part", "hose part number", "part number"),
    "hose.lot": ("hose lot", "reel lot", "reel", "batch"),
    "end_a.connection": ("end a", "fitting a", "connection a", "end 1", "fitting 1"),
    "end_b.connection": ("end b", "fitting b", "connection b", "end 2", "fitting 2"),
    "end_a.dash": ("dash a", "size a"),
    "end_b.dash": ("dash b", "size b"),
    "end_a.shape": ("shape a",),
    "end_b.shape": ("shape b",),
    "length_mm": ("length", "overall length", "oal", "cut length mm"),
    "clocking_deg": ("clocking", "angle", "orientation"),
    "quantity": ("qty", "count", "pcs", "pieces", "number of"),
    "customer": ("client",),
    "machine": ("equipment", "unit"),
    "position": ("location", "place"),
    "note": ("remark", "remarks", "comment"),
}
"""Headings that customers write, as far as they are plain."""


@dataclass(frozen=True)
class Dry:
    """What a dry run found: what would be registered, or every problem with its cell."""

    rows: tuple[Registration, ...]
    numbers: tuple[int, ...]  # each row's number in the spreadsheet
    problems: tuple[tuple[str, Problem], ...]  # (cell, problem)

    @property
    def pieces(self) -> int:
        return sum(row.count for row in self.rows)


def read(name: str, data: bytes) -> Cells:
    """The cells of an uploaded file. Raises SpecError for one that is too big or no list."""
    if len(data) > MAX_BYTES:
        raise SpecError(
            Problem("file", name, Message("papers-list-too-large", name=name, most=MAX_BYTES // 1_000_000))
        )
    suffix = ".xlsx" if name.lower().endswith(".xlsx") or data[:2] == b"PK" else ".csv"
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / f"list{suffix}"
        path.write_bytes(data)
        table = [list(row) for row in lists.read_table(path)]
    while table and all(cell in (None, "") for cell in table[-1]):
        table.pop()
    if len(table) < 2:
        raise SpecError(Problem("file", name, Message("papers-list-no-rows", name=name)))
    if len(table) - 1 > MAX_ROWS:
        raise SpecError(Problem("file", name, Message("papers-list-too-many-rows", name=name, most=MAX_ROWS)))
    return table


def guess(heading: Sequence[object]) -> list[str]:
    """For each of their columns ours, where it is plain; "" where it is not. None twice."""
    names = {_bare(column): column for column in lists.columns()}
    names |= {_bare(other): column for column, others in _ALSO.items() for other in others}
    found: list[str] = []
    for cell in heading:
        ours = names.get(_bare(str(cell or "")), "")
        found.append("" if ours in found else ours)
    return found


def dry_run(table: Cells, match: Sequence[str], tables: Tables, today: dt.date, store: Store) -> Dry:
    """Reads every row, asks the trade and what the lots are known as; writes nothing.

    Rows that are right are kept as well.
    """
    chosen = [place for place, ours in enumerate(match) if ours]
    problems: list[tuple[str, Problem]] = []
    twice = sorted({ours for ours in match if ours and list(match).count(ours) > 1})
    problems += [
        ("heading", Problem(ours, None, Message("papers-list-matched-twice", column=ours))) for ours in twice
    ]
    rows: list[Registration] = []
    numbers: list[int] = []
    known: dict[str, Assessment] = {}
    for place, cells in enumerate([] if twice else table[1:], 2):
        here = [cells[c] if c < len(cells) else None for c in chosen]
        if all(cell in (None, "") for cell in here):
            continue
        try:
            [listed] = lists.read_rows([[match[c] for c in chosen], here])
            text = json.dumps(listed.spec.as_dict(), sort_keys=True)
            known[text] = known.get(text) or assess(listed.spec, tables)
        except TaggerError as error:
            found = [_without_row(problem) for problem in error.problems]
            found += _behind(found, dict(zip((match[c] for c in chosen), here, strict=True)), tables)
            problems += [(_cell(problem.field, place, match), problem) for problem in found]
            continue
        rows.append(
            Registration(
                listed.spec,
                known[text],
                listed.quantity,
                today,
                lot_reason=listed.lot_reason,
                **recorded(listed),
            )
        )
        numbers.append(place)
    problems += [
        (_cell(problem.field, numbers[row], match), problem) for row, problem in store.lot_problems(rows)
    ]
    return Dry(tuple(rows), tuple(numbers), tuple(problems))


def _behind(found: Sequence[Problem], row: dict[str, object], tables: Tables) -> list[Problem]:
    """What the trade says of a row's parts although another field of it is wrong.

    The wrong fields are left out, and the length, which must be there, is taken as a metre: so one
    dry run tells everything, and a builder need not mend and try again field by field.
    """
    wrong = {problem.field for problem in found}
    if any(field.startswith(("hose", "end_")) for field in wrong):
        return []
    kept = {name: value for name, value in row.items() if name not in wrong} | {"length_mm": 1000}
    try:
        [listed] = lists.read_rows([[*kept], [*kept.values()]])
        assess(listed.spec, tables)
    except TaggerError as error:
        return [p for p in map(_without_row, error.problems) if p.field not in wrong]
    return []


def example_row() -> list[object]:
    """One row under all our columns, to begin a list from."""
    example: dict[str, object] = {
        "hose.standard": "SAE 100R2",
        "hose.dash": 12,
        "end_a.connection": "sae_37_flare",
        "end_a.dash": 12,
        "end_a.form": "female_swivel",
        "end_b.connection": "sae_37_flare",
        "end_b.dash": 12,
        "end_b.form": "female_swivel",
        "end_b.shape": "elbow_90",
        "end_b.drop_mm": 56,
        "length_mm": 1250,
        "quantity": 1,
    }
    return [example.get(name) for name in lists.columns()]


def pack(table: Cells) -> str:
    """The cells as text, to be carried by the page from step to step."""

    def plain(value: Any) -> Any:
        return {"date": value.isoformat()} if isinstance(value, dt.date | dt.datetime) else str(value)

    return json.dumps(table, default=plain, ensure_ascii=False)


def unpack(text: str) -> Cells:
    """The other way. Raises SpecError for what is no table."""
    try:
        data = json.loads(text)
        return [[_unpacked(cell) for cell in row] for row in data]
    except (ValueError, TypeError, KeyError, RecursionError):
        raise SpecError(Problem("list", None, Message("papers-list-damaged"))) from None


def _unpacked(cell: Any) -> object:
    return dt.datetime.fromisoformat(cell["date"]) if isinstance(cell, dict) else cell


def _bare(text: str) -> str:
    return re.sub(r"[^a-z0-9.]", "", text.lower().replace("_", "").replace(" ", ""))


_ROW = re.compile(r"^row 2\.?")


def _without_row(problem: Problem) -> Problem:
    return Problem(_ROW.sub("", problem.field), problem.value, problem.message)


def _cell(field: str, row: int, match: Sequence[str]) -> str:
    """Where a problem sits: "C7"; "row 7" where none of their columns holds the field."""
    name = _ROW.sub("", field)
    for place, ours in enumerate(match, 1):
        if ours and (ours == name or name.startswith(f"{ours}.")):
            return f"{get_column_letter(place)}{row}"
    return f"row {row}"
