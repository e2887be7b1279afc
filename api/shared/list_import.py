"""A customer's list read as ours: its columns matched to ours, its problems named by cell."""

from __future__ import annotations

import datetime as dt
import json
import re
import tempfile
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from openpyxl.utils import get_column_letter

from api.shared import list_words, spreadsheets
from tagger import list_columns, lists
from tagger.errors import Problem, SpecError, TaggerError
from tagger.messages import Message
from tagger.record import recorded
from tagger.store import Registration, Store
from tagger.trade import assess
from tagger.trade.cutting import reaches_mm
from tagger.trade.results import Assessment
from tagger.trade.tables import Tables

Cells = list[list[object]]
MAX_BYTES, MAX_ROWS = 5_000_000, 5_000


@dataclass(frozen=True)
class Dry:
    """What a dry run found: what would be registered, or every problem with its cell."""

    rows: tuple[Registration, ...]
    numbers: tuple[int, ...]  # each row's number in the spreadsheet
    problems: tuple[tuple[str, Problem], ...]  # (cell, problem)
    words: tuple[list_words.Reading, ...] = ()  # their words, and what each is taken for

    @property
    def pieces(self) -> int:
        return sum(row.count for row in self.rows)

    @property
    def told(self) -> list[tuple[list[str], Problem]]:
        """Every problem once, with all the cells that have it."""
        found: dict[tuple[object, ...], tuple[list[str], Problem]] = {}
        for cell, problem in self.problems:
            column = cell.rstrip("0123456789")
            same = (column, _without_row(problem).field, repr(problem.value), repr(problem.message))
            found.setdefault(same, ([], problem))[0].append(cell)
        return list(found.values())


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


def dry_run(
    table: Cells,
    match: Sequence[str],
    tables: Tables,
    today: dt.date,
    store: Store,
    chosen_words: list_words.Choices | None = None,
) -> Dry:
    """Reads every row, asks the trade and what the lots are known as; writes nothing.

    Rows that are right are kept as well. ``chosen_words``: what somebody chose a word to mean.
    """
    words = list_words.readings(table, match, chosen_words or {})
    meant = {
        (word.column, word.theirs): word.ours
        for word in words
        if word.column not in list_words.OPEN or list_words.read(word.column, word.theirs) != word.ours
    }
    chosen = [place for place, ours in enumerate(match) if ours]
    problems: list[tuple[str, Problem]] = []
    twice = sorted({ours for ours in match if ours and list(match).count(ours) > 1})
    problems += _of_the_heading(table[0], match)
    problems += [
        (f"{get_column_letter(word.place + 1)}{word.row}", _not_known(word))
        for word in words
        if not word.ours and word.column not in list_words.OPEN
    ]
    units = [list_columns.unit_of(table[0][place], match[place]) for place in chosen]
    problems += [
        ("heading", Problem(ours, None, Message("papers-list-matched-twice", column=ours))) for ours in twice
    ]
    rows: list[Registration] = []
    numbers: list[int] = []
    known: dict[str, Assessment] = {}
    for place, cells in enumerate([] if twice else table[1:], 2):
        here = [
            list_columns.with_unit(cells[c] if c < len(cells) else None, unit)
            for c, unit in zip(chosen, units, strict=True)
        ]
        problems += _outside(place, cells, len(match))
        if all(cell in (None, "") for cell in here):
            continue
        given = _in_our_words(dict(zip((match[c] for c in chosen), here, strict=True)), meant)
        if given is None:  # a word that is told above, once for the whole list
            continue
        try:
            [listed] = lists.read_rows([[*given], [*given.values()]], store.read_spec)
            text = json.dumps(listed.spec.as_dict(), sort_keys=True)
            known[text] = known.get(text) or assess(
                listed.spec, tables, reaches_mm=reaches_mm(listed.spec, store.fittings_of(listed.spec))
            )
        except TaggerError as error:
            found = [_without_row(problem) for problem in error.problems]
            found += _behind(found, given, tables, store)
            problems += [(_cell(problem.field, place, match), problem) for problem in found]
            continue
        rows.append(
            Registration(
                listed.spec,
                known[text],
                listed.quantity,
                today,
                lot_reason=listed.lot_reason,
                changes_considered=False,
                listed_row=place,
                **recorded(listed),
            )
        )
        numbers.append(place)
    problems += [
        (_cell(problem.field, numbers[row], match), problem) for row, problem in store.refusals(rows)
    ]
    told = {(problem.field, problem.value) for _, problem in problems}
    waits = any(
        not word.ours for word in words if word.column not in list_words.OPEN
    )  # rows were passed over
    said = [
        word
        for word in words
        if word.ours or waits or word.column not in list_words.OPEN or (word.column, word.theirs) in told
    ]
    return Dry(tuple(rows), tuple(numbers), tuple(problems), tuple(said))


def _in_our_words(row: dict[str, object], meant: Mapping[tuple[str, str], str]) -> dict[str, object] | None:
    """The row with our values for their words; None where one of them is not known."""
    found = dict(row)
    for column, cell in row.items():
        word = (column, str(cell).strip())
        if word not in meant:
            continue
        if not meant[word]:
            return None
        found[column] = meant[word]
        size = column.replace(".connection", ".size")
        if column.endswith(".connection") and list_words.size_in(cell) and not found.get(size):
            found[size] = list_words.size_in(cell)
    return found


def _not_known(word: list_words.Reading) -> Problem:
    nearest = tuple(list_words.named(word.column, value) for value in word.nearest)
    wrong = Message("papers-list-word-not-known", word=word.theirs, nearest=nearest)
    return Problem(word.column, word.theirs, wrong)


def _of_the_heading(heading: Sequence[object], match: Sequence[str]) -> Iterator[tuple[str, Problem]]:
    """A cut length that was matched to the overall length: they differ by the fittings' cut-offs; an odd unit."""
    for place, (theirs, ours) in enumerate(zip(heading, match, strict=False), 1):
        if list_columns.unit_not_plain(theirs, ours):
            wrong = Message("lists-unit-not-plain", heading=str(theirs))
            yield f"{get_column_letter(place)}1", Problem(ours, str(theirs), wrong)
        if ours == "length_mm" and list_columns.is_cut_length(theirs):
            wrong = Message("lists-cut-length", heading=str(theirs))
            yield f"{get_column_letter(place)}1", Problem(ours, str(theirs), wrong)


def left_out(table: Cells, match: Sequence[str]) -> list[tuple[str, str]]:
    """The filled columns that are none of ours, as (cell, heading): nothing of them is registered."""
    return [
        (f"{get_column_letter(place + 1)}1", str(heading or ""))
        for place, (heading, ours) in enumerate(zip(table[0], match, strict=False))
        if not ours
        and _bare(heading) not in map(_bare, spreadsheets.heading())
        and any(row[place] not in (None, "") for row in table[1:] if place < len(row))
    ]


def not_read(table: Cells, match: Sequence[str]) -> list[tuple[str, Problem]]:
    """What is wrong with a list of which a filled column would be passed over: it may say fluid or pressure."""
    return [
        (cell, Problem("", heading, Message("papers-list-column-not-read", heading=heading)))
        for cell, heading in left_out(table, match)
    ]


def _bare(heading: object) -> str:
    return str(heading or "").strip().lower()


def _outside(row: int, cells: Sequence[object], width: int) -> Iterator[tuple[str, Problem]]:
    """A filled cell beyond the heading: a decimal comma that split a figure in two, mostly."""
    for place, cell in enumerate(cells[width:], width + 1):
        if cell not in (None, ""):
            yield f"{get_column_letter(place)}{row}", Problem("", cell, Message("papers-list-cell-outside"))


def _behind(found: Sequence[Problem], row: dict[str, object], tables: Tables, store: Store) -> list[Problem]:
    """What the trade says of a row's parts although another field of it is wrong.

    The wrong fields are left out, and the length, which must be there, is taken as a metre: so one
    dry run tells everything, and a builder need not mend and try again field by field.
    """
    wrong = {problem.field for problem in found}
    if any(field.startswith(("hose", "end_")) for field in wrong):
        return []
    kept = {name: value for name, value in row.items() if name not in wrong} | {"length_mm": 1000}
    try:
        [listed] = lists.read_rows([[*kept], [*kept.values()]], store.read_spec)
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
