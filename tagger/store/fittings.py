"""The shop's list of fittings, by stock number. The newest row of a stock number holds; none is erased."""

from __future__ import annotations

import difflib
from collections.abc import Iterable, Sequence
from datetime import datetime
from functools import lru_cache
from typing import Any

from sqlalchemy import ColumnElement, and_, func, select
from sqlalchemy.orm import Session

from tagger.errors import Problem, SpecError, StoreError, TaggerError
from tagger.messages import Message
from tagger.spec import AssemblySpec
from tagger.store.base import Part, in_chunks
from tagger.store.models import FittingRow
from tagger.store.values import Registration
from tagger.trade.cutting import cut
from tagger.trade.fittings import (
    Fitting,
    filled,
    named,
    numbers_in,
    rating_problems,
    refuse_others,
    stock_key,
    with_ratings,
)

MOST_FITTINGS = 20_000


class Fittings(Part):
    """The part of the store for the shop's fittings."""

    def keep_fitting(self, fitting: Fitting, *, by: str | None = None) -> Fitting:
        """Keeps a fitting under its stock number; it holds from now on."""
        return self.keep_fittings([fitting], by=by)[0]

    def keep_fittings(self, fittings: Sequence[Fitting], *, by: str | None = None) -> list[Fitting]:
        """Keeps all of them, or none; a row that is kept already just so is not written again.

        Raises StoreError for a stock number that is there twice.
        """
        keys = [stock_key(fitting.stock_number) for fitting in fittings]
        twice = sorted({key for key in keys if keys.count(key) > 1})
        if twice:
            raise StoreError(
                Problem("stock_number", key, Message("stock-twice", number=key)) for key in twice
            )
        with self.writing() as session:
            known = _newest(session, keys)
            now = self.now()
            for key, fitting in zip(keys, fittings, strict=True):
                if known.get(key) != fitting:
                    session.add(_row(key, fitting, now, by))
            session.flush()
        return list(fittings)

    def drop_fitting(self, number: str, *, by: str | None = None) -> Fitting:
        """Takes a fitting out of the list; records that name it stay. Raises StoreError where none is kept."""
        with self.writing() as session:
            dropped = self.fitting(number)
            key = stock_key(number)
            session.add(FittingRow(key=key, words="", kept=None, at=self.now(), by=by))
            return dropped

    def fitting(self, number: str) -> Fitting:
        """One fitting by its stock number. Raises StoreError where none is kept."""
        found = self.fittings_named([number]).get(stock_key(number))
        if found is None:
            raise StoreError(Problem("fitting", number, Message("stock-not-kept", number=number)))
        return found

    def fittings_named(self, numbers: Iterable[str]) -> dict[str, Fitting]:
        """Those of these stock numbers that are kept, by key."""
        with self.reading() as session:
            return _newest(session, [stock_key(number) for number in numbers])

    def fittings_of(self, spec: AssemblySpec) -> dict[str, Fitting]:
        """The fittings that a spec names, by key."""
        numbers = named(spec)
        return self.fittings_named(numbers) if numbers else {}

    def fittings(
        self, text: str = "", *, limit: int | None = None, after: str | None = None
    ) -> list[Fitting]:
        """The list by stock number; with ``text`` those in which each of its words is found.

        With ``limit`` so many of them, from the one that follows the stock number ``after``.
        """
        query = select(FittingRow).where(_newest_kept())
        for word in stock_key(text).split():
            query = query.where(FittingRow.words.contains(word, autoescape=True))
        if after is not None:
            query = query.where(FittingRow.key > stock_key(after))
        with self.reading() as session:
            rows = session.scalars(query.order_by(FittingRow.key).limit(limit))
            return [Fitting.model_validate(row.kept) for row in rows]

    def read_spec(self, data: object) -> AssemblySpec:
        """A spec from plain values, its ends filled in from the stock numbers that they name.

        Raises SpecError naming every field that is wrong, and stock numbers of other ends.
        """
        numbers = numbers_in(data)
        if not numbers:
            return AssemblySpec.read(data)
        fittings = self.fittings_named(numbers)
        if strange := [number for number in numbers if stock_key(number) not in fittings]:
            raise SpecError(self._not_kept(data, strange))
        spec = AssemblySpec.read(filled(data, fittings))
        refuse_others(spec, fittings)
        return with_ratings(spec, fittings)

    def _not_kept(self, data: Any, numbers: Sequence[str]) -> list[Problem]:
        """Stock numbers of a spec's JSON that are not kept, each with the nearest three that are."""
        ends = [
            (name, data[name].get("fitting"))
            for name in ("end_a", "end_b")
            if isinstance(data.get(name), dict)
        ]
        with self.reading() as session:
            keys = tuple(
                session.scalars(select(FittingRow.key).where(_newest_kept()).order_by(FittingRow.key))
            )
        found = []
        for name, number in ends:
            if number in numbers:
                near = nearest(stock_key(number), keys)
                said = Message("stock-not-kept-nearest", number=number, nearest=near)
                wrong = said if near else Message("stock-not-kept", number=number)
                found.append(Problem(f"{name}.fitting", number, wrong))
        return found


def _newest_kept() -> ColumnElement[bool]:
    """A condition on rows: the newest of its stock number, and not taken out of the list."""
    newest = select(func.max(FittingRow.id)).group_by(FittingRow.key)
    return and_(FittingRow.id.in_(newest), FittingRow.words != "")


@lru_cache(maxsize=256)
def nearest(key: str, keys: tuple[str, ...]) -> tuple[str, ...]:
    """At most three of the keys whose spelling is nearest; none where all are far."""
    return tuple(difflib.get_close_matches(key, keys, n=3, cutoff=0.5))


def refuse_other_fittings(session: Session, rows: Sequence[Registration]) -> None:
    """Raises SpecError for every row whose stock number is not kept, is another end than the spec's, or is rated
    below the working pressure, or that is no longer than the cut-offs of its fittings.

    Problems name the row, counted from 1, where there is more than one.
    """
    keys = list(dict.fromkeys(key for row in rows for key in named(row.spec)))
    if not keys:
        return
    known = _newest(session, keys)
    problems: list[Problem] = []
    for place, row in enumerate(rows, 1):
        try:
            refuse_others(row.spec, known)
            cut(row.spec, known)
            if low := rating_problems(row.spec, row.assessment.working_pressure.value_bar, known):
                raise SpecError(low)
        except TaggerError as error:
            if len(rows) == 1:
                raise
            problems += error.within(f"row {place}").problems
    if problems:
        raise SpecError(problems)


def _newest(session: Session, keys: Sequence[str]) -> dict[str, Fitting]:
    found: dict[str, Fitting] = {}
    for chunk in in_chunks(list(dict.fromkeys(keys))):
        newest = select(func.max(FittingRow.id)).where(FittingRow.key.in_(chunk)).group_by(FittingRow.key)
        for row in session.scalars(select(FittingRow).where(FittingRow.id.in_(newest))):
            if row.kept is not None:
                found[row.key] = Fitting.model_validate(row.kept)
    return found


def _row(key: str, fitting: Fitting, at: datetime, by: str | None) -> FittingRow:
    return FittingRow(key=key, words=_words(fitting), kept=fitting.as_dict(), at=at, by=by)


def _words(fitting: Fitting) -> str:
    """What a fitting is looked for by: its numbers, and the trade's words for its end."""
    end = fitting.end
    words = [fitting.stock_number, fitting.fitting_series or "", str(end.connection), end.size_text]
    words += [_TRADE.get(str(end.connection), ""), str(end.form), str(end.shape), str(end.angle_deg or "")]
    return stock_key(" ".join(words).replace("_", " "))


_TRADE = {
    "sae_37_flare": "JIC", "sae_45_flare": "SAE", "orfs": "ORFS flat face", "sae_orb": "ORB boss",
    "metric_orb": "boss", "din24_light": "DIN metric", "din24_heavy": "DIN metric",
    "flange_code61": "split flange", "flange_code62": "split flange", "jis_30": "JIS", "jis_60": "JIS",
}  # fmt: skip
"""Words of the trade for a family, beside its own name."""
