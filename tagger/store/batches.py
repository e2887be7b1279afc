"""Proof tests and crimps of several assemblies in one act: a whole run, or some of it.

Each assembly has its own line of history, held against what was asked of it. The lines of one proof
test have one moment and one reference, by which its certificate is known.
"""

from __future__ import annotations

import secrets
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Annotated, Any

from pydantic import BaseModel, ConfigDict, Field
from sqlalchemy import select

from tagger.code import number as tag_number
from tagger.code.number import ALPHABET
from tagger.errors import Problem, StoreError
from tagger.messages import Message, pressure
from tagger.store.base import compact
from tagger.store.history import add_events, refuse_void
from tagger.store.models import EventRow
from tagger.store.proof_tests import ProofTest, Result, refuse_gauge
from tagger.store.proving import CrimpMeasured, Proving, line_of
from tagger.store.values import Assembly, Event, Kind
from tagger.trade.tables import Tables

MOST_OF_A_BATCH = 500


class Flushing(BaseModel):
    """How assemblies were cleaned inside, with what, and by whom."""

    model_config = ConfigDict(frozen=True, extra="forbid", str_strip_whitespace=True)

    method: Annotated[str, Field(min_length=1, max_length=120)]
    flushed_by: Annotated[str, Field(min_length=1, max_length=80)]


@dataclass(frozen=True)
class Batch:
    """One proof test of several assemblies: its reference, and the line of history of each."""

    reference: str
    tests: tuple[Event, ...]

    @property
    def numbers(self) -> list[str]:
        return [test.number for test in self.tests]


class Batches(Proving):
    """The part of the store that proves several assemblies at once: all of them, or none."""

    def record_proof_batch(
        self,
        numbers: Sequence[str],
        test: ProofTest,
        *,
        tables: Tables | None = None,
        by: str | None = None,
        confirmed: bool = False,
    ) -> Batch:
        """Writes one proof test of all these assemblies into the history of each.

        Raises StoreError where one of them refuses the test, by its number; and, unless ``confirmed``, where
        the pressure would hold one of them.
        """
        known, now = self._members(numbers), self.now()
        refuse_gauge(test, now.date())
        self.refuse_unexplained_pass([one.number for one in known], test)
        reference = "B-" + "".join(secrets.choice(ALPHABET) for _ in range(7))
        lines = _judged(test, known, tables)
        if not confirmed:
            _refuse_held(test, lines)
        with self.writing() as session:
            refuse_void(session, list(lines))
            values = [
                {"number": number, "kind": str(Kind.PROOF_TESTED), "at": now, "by": by,
                 "data": {**data, "batch": reference}}
                for number, data in lines.items()
            ]  # fmt: skip
            ids = add_events(session, values)
        tests = tuple(
            Event(id_, number, Kind.PROOF_TESTED, now, by, {**data, "batch": reference})
            for id_, (number, data) in zip(ids, lines.items(), strict=True)
        )
        return Batch(reference, tests)

    def record_crimp_batch(
        self, crimps: Mapping[str, Sequence[CrimpMeasured]], *, by: str | None = None
    ) -> list[Event]:
        """Writes the crimp diameters measured on each of these assemblies into its history."""
        known = [one.number for one in self._members(list(crimps))]
        with self.writing():
            measured = {compact(number): found for number, found in crimps.items()}
            return [self.record_crimps(number, measured[number], by=by) for number in known]

    def record_flushing(
        self, numbers: Sequence[str], flushing: Flushing, *, by: str | None = None
    ) -> list[Event]:
        """Writes into the history of each of these assemblies that it was flushed, how and by whom."""
        known = [one.number for one in self._members(numbers)]
        return self.record_many(known, Kind.FLUSHED, flushing.model_dump(mode="json"), by)

    def flushed(self, numbers: Sequence[str]) -> dict[str, Event]:
        """The last flushing of each of these assemblies that was flushed, by its number."""
        return self.last(numbers, Kind.FLUSHED)

    def proof_batch(self, number: str) -> Batch | None:
        """The batch in which an assembly was last tested; None where that test was its alone."""
        test = self.last([number], Kind.PROOF_TESTED).get(compact(number))
        reference = test.data.get("batch") if test else None
        if test is None or reference is None:
            return None
        query = select(EventRow).where(EventRow.kind == str(Kind.PROOF_TESTED), EventRow.at == test.at)
        with self.reading() as session:
            rows = list(session.scalars(query.order_by(EventRow.id)))
        tests = tuple(
            Event(row.id, row.number, Kind.PROOF_TESTED, row.at, row.by, row.data)
            for row in rows
            if row.data.get("batch") == reference
        )
        return Batch(reference, tests)

    def last_proof_test(self) -> Event | None:
        """The proof test recorded last, of whichever assembly: its gauge is likely the next one's too."""
        query = select(EventRow).where(EventRow.kind == str(Kind.PROOF_TESTED))
        with self.reading() as session:
            row = session.scalar(query.order_by(EventRow.at.desc()).limit(1))
            if row is None:
                return None
            return Event(row.id, row.number, Kind.PROOF_TESTED, row.at, row.by, row.data)

    def _members(self, numbers: Sequence[str]) -> list[Assembly]:
        """The assemblies of a batch, each once. Raises StoreError for none, too many, or unknown ones."""
        asked = list(dict.fromkeys(compact(number) for number in numbers))
        if not asked:
            raise StoreError(Problem("numbers", None, Message("store-batch-empty")))
        if len(asked) > MOST_OF_A_BATCH:
            wrong = Message("store-batch-too-large", count=len(asked), most=MOST_OF_A_BATCH)
            raise StoreError(Problem("numbers", len(asked), wrong))
        return self.assemblies(asked)


def _judged(test: ProofTest, known: Sequence[Assembly], tables: Tables | None) -> dict[str, dict[str, Any]]:
    """The line of history of each. Raises StoreError naming each problem once, with the numbers it is of."""
    lines, refused = dict[str, dict[str, Any]](), dict[Problem, list[str]]()
    for one in known:
        try:
            lines[one.number] = line_of(one, test, tables, confirmed=True)
        except StoreError as error:
            for problem in error.problems:
                refused.setdefault(problem, []).append(tag_number.format(one.number))
    if refused:
        raise StoreError(
            problem if len(numbers) == len(known) else _of(problem, numbers)
            for problem, numbers in refused.items()
        )
    return lines


def _of(problem: Problem, numbers: list[str]) -> Problem:
    """A problem that some of the batch have, with their numbers."""
    said = Message("store-batch-of", numbers=tuple(numbers), why=problem.message)
    return Problem(problem.field, problem.value, said)


def _refuse_held(test: ProofTest, lines: Mapping[str, Mapping[str, Any]]) -> None:
    """Raises StoreError where the pressure would hold an assembly: in one act a slip would hold them all."""
    if held := [number for number, data in lines.items() if data["result"] == Result.HELD]:
        numbers = tuple(tag_number.format(number) for number in held)
        wrong = Message("store-batch-held", given=pressure(test.pressure_bar), numbers=numbers)
        raise StoreError(Problem("pressure_bar", test.pressure_bar, wrong))
