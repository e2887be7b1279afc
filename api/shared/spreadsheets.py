"""Assemblies as rows, with the columns a list may have: what is exported can be read in again."""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterable, Iterator, Sequence
from functools import cache, lru_cache
from itertools import chain, islice
from typing import Any

from openpyxl import Workbook
from starlette.responses import Response, StreamingResponse

from tagger import lists
from tagger.code import number as tag_number
from tagger.record import RECORD_FIELDS, recorded
from tagger.spec import AssemblySpec
from tagger.store import Assembly, Filter, Store
from tagger.store.overrated import each_as_of_today
from tagger.trade.tables import Tables

_OWN = ("number", "registered_at", "built_on", "working_pressure_bar", "replaces", "replaced_by", "order_reference",
        "withdrawn", "proof_test", "digits")  # fmt: skip
FORMS = ("csv", "xlsx")
_PART = 1000  # assemblies read at once
_NOT_XML = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\ud800-\udfff\ufffe\uffff]")  # XML 1.0, 2.2
SHEET = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"


@cache
def heading() -> tuple[str, ...]:
    return (*_OWN, *(name for name in lists.columns() if name not in ("quantity", "lot_reason", *_OWN)))


def rows(store: Store, wanted: Filter = Filter(), tables: Tables | None = None) -> Iterator[list[Any]]:
    """The cells of all assemblies that meet the conditions, newest first; read a part at a time.

    With ``tables`` each has the pressure that holds today, else the one registered.
    """
    every = store.every(wanted)
    every = each_as_of_today(every, tables) if tables else every
    while part := list(islice(every, _PART)):
        proved = store.proof_states([item.number for item in part])
        yield from (row(item, proved.get(item.number)) for item in part)


def row(item: Assembly, proof_test: str | None) -> list[Any]:
    """One assembly's cells, in the order of the heading; ``proof_test``: what its last one proves."""
    own = {
        "number": tag_number.format(item.number),
        "registered_at": item.created_at.isoformat(timespec="seconds"),
        "built_on": item.built_on.isoformat() if item.built_on else None,
        "working_pressure_bar": item.content.working_pressure_bar,
        "replaces": tag_number.format(item.replaces) if item.replaces else None,
        "replaced_by": tag_number.format(item.replaced_by) if item.replaced_by else None,
        "order_reference": item.order_reference,
        "withdrawn": "; ".join(w.reason for w in item.withdrawals) or None,
        "proof_test": proof_test,
        "digits": item.digits,
    }
    return [*own.values(), *_of_spec(item.spec), *recorded(item).values()]


@lru_cache(maxsize=20_000)
def _of_spec(spec: AssemblySpec) -> tuple[Any, ...]:
    """The spec's cells; a run shares one spec, so most rows find theirs made."""
    cells = _flat(spec.as_dict())
    return tuple(cells.get(name) for name in heading()[len(_OWN) : -len(RECORD_FIELDS)])


def _flat(data: dict[str, Any], prefix: str = "") -> dict[str, Any]:
    found: dict[str, Any] = {}
    for name, value in data.items():
        if isinstance(value, dict):
            found |= _flat(value, f"{prefix}{name}.")
        else:
            found[prefix + name] = ";".join(value) if isinstance(value, list) else value
    return found


def plain(cell: Any) -> Any:
    """A text that a spreadsheet would run as a formula is marked as text; what XML cannot hold is replaced.

    >>> plain("=1+1"), plain("-12 flare"), plain(-12)
    ("'=1+1", "'-12 flare", -12)
    """
    if not isinstance(cell, str):
        return cell
    text = _NOT_XML.sub("\N{REPLACEMENT CHARACTER}", cell)
    return f"'{text}" if text[:1] in ("=", "+", "-", "@", "\t", "\r") else text


def csv_lines(head: Sequence[str], rows: Iterable[Sequence[Any]]) -> Iterator[bytes]:
    """CSV (RFC 4180) in UTF-8, with the mark by which spreadsheets know it."""
    out = io.StringIO()
    writer = csv.writer(out)
    out.write("\ufeff")
    writer.writerow(head)
    for cells in rows:
        writer.writerow([plain(cell) for cell in cells])
        if out.tell() > 60_000:
            yield out.getvalue().encode()
            out.seek(0)
            out.truncate()
    yield out.getvalue().encode()


def xlsx(head: Sequence[str], rows: Iterable[Sequence[Any]]) -> bytes:
    """One sheet. Texts are written as texts, so that 3/4 stays a size and no day."""
    book = Workbook(write_only=True)
    sheet = book.create_sheet("assemblies")
    sheet.append(list(head))
    for cells in rows:
        sheet.append([plain(cell) for cell in cells])
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def file(form: str, name: str, head: Sequence[str], rows: Iterable[Sequence[Any]]) -> Response:
    """A list as a file to keep; ``form`` is one of FORMS.

    The first row is asked for before anything is answered: what is wrong with a condition is an error of
    its own, and no file that breaks off.
    """
    headers = {"Content-Disposition": f'attachment; filename="{name}.{form}"', "Cache-Control": "no-store"}
    each = iter(rows)
    rows = chain(list(islice(each, 1)), each)
    if form == "xlsx":
        return Response(xlsx(head, rows), media_type=SHEET, headers=headers)
    return StreamingResponse(csv_lines(head, rows), media_type="text/csv", headers=headers)
