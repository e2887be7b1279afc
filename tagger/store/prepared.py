"""A run as it would be registered: its rows worked out, what is wrong with them, and nothing written yet."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field
from typing import Any

from tagger.code import payload
from tagger.errors import Problem, StoreError, TaggerError
from tagger.messages import Message
from tagger.record import MAX_LENGTH, as_kept, problem_of, recorded
from tagger.spec import MAX_COUNT, Danger, TagContent
from tagger.store import designs, texts
from tagger.store.base import compact, written_beside
from tagger.store.designs import Ready
from tagger.store.lot_names import lot_key
from tagger.store.spool import Spool
from tagger.store.texts import refuse_control
from tagger.store.values import Registration
from tagger.trade import temperature
from tagger.trade.fittings import named

MAX_RUN = 100_000  # in one act


@dataclass(frozen=True)
class _Row:
    """A row of a run, worked out."""

    asked: Registration
    content: TagContent  # what its symbols say, as whoever scans them reads it
    design: dict[str, Any]
    columns: dict[str, Any]  # everything but the number and the moment


@dataclass(frozen=True)
class Kept:
    """What is registered of a row beside its design."""

    count: int
    replaces: str | None
    columns: dict[str, Any]


@dataclass
class Prepared:
    """The rows of a run as they would be registered, beside the memory if it is long; ``refuse`` says what is wrong."""

    labels: Held  # (Registration, TagContent) of each row
    kept: Held  # Kept of each row
    designs: Held  # Ready, of each design once
    design_places: dict[str, int] = field(default_factory=dict)
    in_the_books: list[int] = field(default_factory=list)  # places of rows that the books may have a word on
    count: int = 0  # assemblies
    mark: str = ""
    problems: list[Problem] = field(default_factory=list)

    def refuse(self) -> None:
        """Raises StoreError with the problems of all rows."""
        if self.problems:
            raise StoreError(self.problems)

    def placed(self) -> Iterator[tuple[Kept, range]]:
        """Each row, with the places of its assemblies in the run."""
        start = 0
        for row in self.kept:
            yield row, range(start, start + row.count)
            start += row.count

    def add(self, row: _Row) -> None:
        asked, design = row.asked, row.design
        if _is_in_the_books(asked):
            self.in_the_books.append(len(self.kept))
        self.labels.append((asked, row.content))
        self.kept.append(Kept(asked.count, asked.replaces, row.columns))
        if design["id"] not in self.design_places:
            self.design_places[design["id"]] = len(self.designs)
            self.designs.append(Ready.of(design))


Held = list[Any] | Spool[Any]


@dataclass(frozen=True)
class Drawn:
    """A run with the tag numbers drawn for it. Nothing is written yet, and nothing keeps them free."""

    prepared: Prepared
    numbers: list[str]

    def each(self) -> Iterator[tuple[str, str, TagContent, Registration]]:
        """Number, digits of the symbol, what they say, and row of each assembly, as they will be registered."""
        labels = iter(self.prepared.labels)
        for row, places in self.prepared.placed():
            asked, content = next(labels)
            for place in places:
                yield self.numbers[place], row.columns["digits"], content, asked


def prepare(rows: Iterable[Registration], held: Callable[[], Held] = list) -> Prepared:
    """Each row's columns, and the problems of all rows together; ``held`` makes what the rows are kept in."""
    prepared = Prepared(held(), held(), held())
    wrong: list[tuple[int, TaggerError]] = []
    mark, place = hashlib.sha256(b"["), 0
    for place, row in enumerate(rows, 1):
        plain = row.spec.as_dict()
        text = texts.as_kept(plain)
        mark.update(b", " * (place > 1) + written_beside(_asked(row), "spec", text))
        prepared.count += row.count
        try:
            prepared.add(prepare_row(row, texts.looked_through(text, plain)))
        except TaggerError as error:
            wrong.append((row.listed_row or place, error))
    mark.update(b"]")
    prepared.mark = mark.hexdigest()
    for at, refused in wrong:
        prepared.problems += (refused.within(f"row {at}") if place > 1 else refused).problems
    if not place:
        prepared.problems.append(Problem("rows", None, Message("store-rows-none")))
    prepared.problems += too_many(prepared.count)
    return prepared


def too_many(total: int) -> list[Problem]:
    """That a run of so many assemblies is too long for one act, where it is."""
    return (
        [Problem("rows", total, Message("store-rows-too-many", count=total, most=MAX_RUN))]
        if total > MAX_RUN
        else []
    )


def prepare_row(row: Registration, said: texts.Written | None = None) -> _Row:
    """A row as it is kept; ``said``: its spec as it is written. Raises TaggerError for what cannot be."""
    design = designs.row_of(said or texts.written(row.spec.as_dict()), row.assessment)
    content, columns = _columns(row)
    return _Row(row, content, design, {"design_id": design["id"], **columns})


def dangers_without_reason(row: Registration) -> list[Problem]:
    """What keeps a row from being registered until somebody writes why: a danger of fluid, heat, cold or vacuum.

    A dash or a dot is no reason. A pressure whose source names that very fluid and temperature is one for the two of them.
    """
    given = row.spec.working_pressure
    if sum(letter.isalpha() for letter in row.reason or "") >= 2:
        return []
    allowed = {None, Danger.PRESSURE}
    if given is not None and temperature.lifts(given, row.spec):
        allowed |= {Danger.FLUID, Danger.HEAT}
    return [
        Problem("reason", None, Message("store-danger-reason", danger=warning.message))
        for warning in row.assessment.warnings
        if warning.danger not in allowed
    ]


def _columns(row: Registration) -> tuple[TagContent, dict[str, Any]]:
    """What the tag's symbols say, and the columns that go with it."""
    own = own_columns(row)
    content = row.assessment.content_of(row.spec, row.built_on)
    carried = payload.carried(content)
    digits = payload.encode_carried(carried)
    printed = payload.decode(digits)
    if printed != carried:  # a tag that would say something else must never be printed
        raise StoreError(Problem("spec", None, Message("store-read-back")))
    spec = row.spec
    if carried.spec is spec:  # equal to what was read: one object is kept beside the memory once
        printed = printed.model_copy(update={"spec": spec})
    return printed, {
        "digits": digits,
        **own,
        "hose_standard": spec.hose.standard,
        "hose_dash": spec.hose.dash,
        "hose_lot": lot_key(spec.hose.lot),
        "fitting_lot_a": lot_key(spec.end_a.lot),
        "fitting_lot_b": lot_key(spec.end_b.lot),
        "connection_a": str(spec.end_a.connection),
        "connection_b": str(spec.end_b.connection),
        "working_pressure_bar": row.assessment.working_pressure.value_bar,
    }


def own_columns(row: Registration) -> dict[str, Any]:
    """What is a row's own beside its spec. Raises StoreError, also for a danger without a reason."""
    if not 1 <= row.count <= MAX_COUNT:
        wrong = Message("store-quantity-not-valid", count=row.count, most=MAX_COUNT)
        raise StoreError(Problem("count", row.count, wrong))
    if against := dangers_without_reason(row):
        raise StoreError(against)
    return {
        "built_on": row.built_on,
        **{name: text_of(name, text) for name, text in recorded(row).items()},
        "replaces": compact(row.replaces) if row.replaces else None,
        "order_reference": row.order_reference,
    }


def text_of(name: str, value: str | None) -> str | None:
    """A text of the record as it is kept: on one line, None where it is empty. Raises StoreError."""
    kept = as_kept(name, value)
    refuse_control(name, kept)
    if kept is not None and len(kept) > MAX_LENGTH:
        raise StoreError(Problem(name, kept[:20] + "...", Message("store-too-long", most=MAX_LENGTH)))
    if wrong := problem_of(name, kept):
        raise StoreError(wrong)
    return kept


def _asked(row: Registration) -> dict[str, Any]:
    """What makes two requests the same, beside the spec: not the day, nor what the tables said that day.

    A text of the record, or a reason, that is not given is left out: a new one must not make old requests differ.
    """
    given = {name: text for name, text in recorded(row).items() if text is not None}
    asked = {name: getattr(row, name) for name in ("count", "replaces", "order_reference")}
    reasons: dict[str, Any] = {"lot_reason": row.lot_reason} if row.lot_reason is not None else {}
    if row.changes_considered:
        reasons["changes_considered"] = True
    return {**asked, **given, **reasons}


def _is_in_the_books(row: Registration) -> bool:
    """Whether what is kept may forbid a row: it names a lot, a fitting or an order."""
    spec = row.spec
    lots = (spec.hose.lot, spec.end_a.lot, spec.end_b.lot, row.lot_reason, row.order_reference)
    return any(lots) or bool(named(spec))
