"""Proving an assembly: crimp diameters measured, proof test made; and what may not be printed.

A tag is blocked while its last proof test failed, while a test loaded it beyond a proof test and the
manufacturers' allowance is not recorded, while its last crimp measurement was out of its band, and
while it is withdrawn. Later lines of history unblock it; none is ever taken back.

A crimp that is recorded after a proof test ends what the test proved: what was tested is crimped anew.

In a shop that tests first (``proof_first``) no tag is printed either, no order handed over, and nothing
recorded as installed before the proof test passed. Its number is on the traveller, which is printed all the same.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Annotated, Any, Literal

from pydantic import BaseModel, ConfigDict, Field
from sqlalchemy import JSON, Text, and_, cast, exists, or_, select, type_coerce

from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError
from tagger.messages import Message, pressure
from tagger.phrases import part
from tagger.store.assemblies import Assemblies
from tagger.store.history import History
from tagger.store.models import AssemblyRow, EventRow
from tagger.store.proof_tests import (
    ProofAllowance,
    ProofTest,
    Result,
    Verdict,
    judged,
    refuse_gauge,
    refuse_unconfirmed,
    verdict,
    why_held,
)
from tagger.store.values import Assembly, Event, Kind
from tagger.trade import given, present, proof
from tagger.trade.proof import Required
from tagger.trade.tables import Tables
from tagger.trade.tables import tables as our_tables


class _Value(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid", str_strip_whitespace=True)


class CrimpMeasured(_Value):
    """One crimp as measured: the end, the diameter in mm, and the band it was held against."""

    end: Literal["a", "b"]
    measured_mm: Annotated[float, Field(ge=1, le=300)]
    shell: str
    low_mm: float
    high_mm: float
    source: str

    @property
    def holds(self) -> bool:
        """Whether it is within the band, its limits included."""
        return round(self.low_mm, 3) <= round(self.measured_mm, 3) <= round(self.high_mm, 3)


class Proving(Assemblies, History):
    """The part of the store that says whether an assembly has been proved."""

    proof_first = False
    """Whether the shop prints no tag and hands nothing over before the proof test passed."""
    shop_papers: frozenset[str] = frozenset()
    """The label templates that stay in the shop: a print on one of them lets nothing out."""

    def record_many(
        self,
        numbers: Sequence[str],
        kind: Kind | str,
        data: Mapping[str, Any] | None = None,
        by: str | None = None,
    ) -> list[Event]:
        """As of the history. Raises StoreError where the shop tests first and what is installed is not tested."""
        with self.writing():
            if str(kind) == str(Kind.FITTED):
                _refuse_fitted(self.untested(numbers))
            return super().record_many(numbers, kind, data, by)

    def record_proof_test(
        self,
        number: str,
        test: ProofTest,
        *,
        tables: Tables | None = None,
        by: str | None = None,
        confirmed: bool = True,
    ) -> Event:
        """Writes a proof test into the history, with what was asked of it and what it proves.

        Raises StoreError for a pressure above the minimum burst pressure, for a test called passed
        that proves nothing or follows one that failed and says nothing of what was mended, for one of an assembly whose tag says more than the manufacturer, for a
        manufacturer's rating above the tables that nobody confirms, for a test called passed of an assembly
        that is withdrawn and, unless ``confirmed``, for a
        pressure that would hold the assembly.
        """
        known = self.assembly(number)
        refuse_gauge(test, self.now().date())
        self.refuse_unexplained_pass([known.number], test)
        line = line_of(known, test, tables, confirmed=confirmed)
        return self.record(known.number, Kind.PROOF_TESTED, line, by)

    def refuse_unexplained_pass(self, numbers: Sequence[str], test: ProofTest) -> None:
        """Raises StoreError for a test called passed of an assembly whose last one failed, unless a note says
        what was mended: a leak that is tested until it holds once is still a leak."""
        if not test.passed or test.note:
            return
        failed = [n for n, (_, proves) in self.proved_of(numbers).items() if proves.result is Result.FAILED]
        if failed:
            named = tuple(tag_number.format(number) for number in failed)
            raise StoreError(Problem("note", None, Message("store-proof-after-failure", numbers=named)))

    def allow_proof_test(self, number: str, allowance: ProofAllowance, *, by: str | None = None) -> Event:
        """Writes down that the manufacturers allow an assembly that was loaded beyond a proof test.

        Raises StoreError where it is not held, and for a day to come.
        """
        known = self.assembly(number)
        held = self.held([known.number]).get(known.number)
        if held is None:
            raise StoreError(Problem("number", number, Message("store-proof-not-held")))
        if allowance.allowed_on > self.now().date():
            wrong = Message("store-proof-allowed-future", day=allowance.allowed_on)
            raise StoreError(Problem("allowed_on", allowance.allowed_on, wrong))
        data = allowance.model_dump(mode="json") | {"test": held.id}
        return self.record(known.number, Kind.PROOF_ALLOWED, data, by)

    def held(self, numbers: Sequence[str]) -> dict[str, Event]:
        """Those of these tags that a test loaded beyond a proof test, by that test, until it is allowed."""
        allowed = self.last(numbers, Kind.PROOF_ALLOWED)
        found: dict[str, Event] = {}
        for event in self.each(numbers, Kind.PROOF_TESTED):
            released = allowed[event.number].data["test"] if event.number in allowed else 0
            if event.id > released and verdict(event.data).over:
                found[event.number] = event
        return found

    def proved(self, number: str) -> tuple[Event, Verdict] | None:
        """The last proof test of an assembly and what it proves today; None where there is none.

        An assembly that is held proves nothing by a later test.
        """
        return next(iter(self.proved_of([number]).values()), None)

    def proved_of(self, numbers: Sequence[str]) -> dict[str, tuple[Event, Verdict]]:
        """The last proof test of each of these assemblies that has one, and what it proves today."""
        tested = self.last(numbers, Kind.PROOF_TESTED)
        held, crimped = self.held(list(tested)), self.last(tested, Kind.CRIMPED)
        return {
            number: (event, _today(event, held.get(number), crimped.get(number)))
            for number, event in tested.items()
        }

    def proof_states(self, numbers: Sequence[str]) -> dict[str, str]:
        """What the last proof test of each of these proves today, by number; one without a test is left out."""
        return {number: str(said.result) for number, (_, said) in self.proved_of(numbers).items()}

    def untested(self, numbers: Sequence[str]) -> list[str]:
        """Those of these tags whose last proof test does not let them out; none where the shop does not ask."""
        if not self.proof_first:
            return []
        proved = self.proved_of(numbers)
        known = [tag_number.compact(number) for number in numbers]
        return [number for number in known if number not in proved or not proved[number][1].releases]

    def kept_back(self, numbers: Sequence[str]) -> list[str]:
        """Those of these that must not be installed because the shop tests first: not tested, or crimped since.

        What was let out, installed or with a printed tag, before the shop tested first is none of them.
        """
        untested = self.untested(numbers)
        out = self._let_out(untested)
        tested, crimped = (self.last(untested, kind) for kind in (Kind.PROOF_TESTED, Kind.CRIMPED))
        since = {n for n in tested if n in crimped and crimped[n].id > tested[n].id}
        return [number for number in untested if number in since or number not in out]

    def _let_out(self, numbers: Sequence[str]) -> set[str]:
        """Those of these that were installed, or whose tag was printed."""
        fitted = self.last(numbers, Kind.FITTED)
        printed = (
            e for e in self.each(numbers, Kind.PRINTED) if e.data.get("template") not in self.shop_papers
        )
        return {*fitted, *(event.number for event in printed)}

    def kept_back_numbers(self) -> list[str]:
        """The tag number of every assembly that ``kept_back`` names, in order."""
        if not self.proof_first:
            return []
        row, event = AssemblyRow, EventRow
        paper = type_coerce(event.data, JSON)["template"].as_string()
        tag = and_(event.kind == str(Kind.PRINTED), paper.not_in(self.shop_papers) | paper.is_(None))
        out = exists().where(event.number == row.number, or_(event.kind == str(Kind.FITTED), tag))
        crimped = exists().where(event.number == row.number, event.kind == str(Kind.CRIMPED))
        with self.reading() as session:
            numbers = list(session.scalars(select(row.number).where(or_(~out, crimped))))
        return sorted(self.kept_back(numbers))

    def record_crimps(self, number: str, crimps: Sequence[CrimpMeasured], *, by: str | None = None) -> Event:
        """Writes measured crimp diameters into the history, in their bands or not.

        Raises StoreError where an end is measured twice: which of the two holds cannot be told.
        """
        ends = [crimp.end for crimp in crimps]
        if twice := sorted({end for end in ends if ends.count(end) > 1}):
            parts = tuple(part(f"end_{end}") for end in twice)
            raise StoreError(Problem("crimps", None, Message("store-crimp-twice", ends=parts)))
        data = {"crimps": [crimp.model_dump(mode="json") | {"holds": crimp.holds} for crimp in crimps]}
        return self.record(number, Kind.CRIMPED, data, by)

    def crimped(self, numbers: Sequence[str]) -> dict[str, tuple[dict[str, Any], ...]]:
        """The last crimp measured of each end, as it was kept, by tag: one end measured again clears no other."""
        found: dict[str, dict[str, dict[str, Any]]] = {}
        for event in self.each(numbers, Kind.CRIMPED):
            of_ends = found.setdefault(event.number, {})
            of_ends.update((crimp["end"], crimp) for crimp in event.data.get("crimps", ()))
        return {number: tuple(ends[end] for end in sorted(ends)) for number, ends in found.items()}

    def refuse_untested(self, numbers: Sequence[str]) -> None:
        """Raises StoreError naming every tag that the shop does not let out yet."""
        if untested := self.untested(numbers):
            shown = [tag_number.format(number) for number in untested]
            raise StoreError(
                Problem("number", number, Message("store-blocked-untested", number=number))
                for number in shown
            )

    def blocked(self, numbers: Sequence[str], *, traveller: bool = False) -> dict[str, Message]:
        """Those of these tags that must not be printed, and why; ``traveller``: on paper for the shop alone."""
        found = {
            a.number: Message(
                "store-blocked-withdrawn", number=tag_number.format(a.number), reason=a.withdrawals[0].reason
            )
            for a in self.assemblies(numbers)
            if a.withdrawn
        }
        for number, void in self.void_of(numbers).items():
            shown = tag_number.format(number)
            found.setdefault(number, Message("store-blocked-void", number=shown, reason=void.reason))
        found = self.unreleased(numbers) | found
        for number in [] if traveller else self.untested(numbers):
            untested = Message("store-blocked-untested", number=tag_number.format(number))
            found.setdefault(number, untested)
        return found

    def unreleased(self, numbers: Sequence[str]) -> dict[str, Message]:
        """Those of these assemblies that must not be installed for what was measured on them, and why.

        A crimp out of its band, a proof test that failed or was too high: until a later line of history clears it.
        """
        found: dict[str, Message] = {}
        for number, crimps in self.crimped(numbers).items():
            if ends := out_of_band(crimps):
                why = Message("store-blocked-crimp", number=tag_number.format(number), ends=ends)
                found.setdefault(number, why)
        for number, event in self.last(numbers, Kind.PROOF_TESTED).items():
            said, shown, day = verdict(event.data), tag_number.format(number), event.at.date()
            if said.result is Result.FAILED:
                found.setdefault(number, Message("store-blocked-proof", number=shown, day=day))
            elif said.result is Result.HELD and not said.over:
                found.setdefault(number, Message("store-blocked-proof-slip", number=shown, day=day))
        for number, event in self.held(numbers).items():
            held = Message(
                "store-blocked-proof-held", number=tag_number.format(number), why=why_held(event.data)
            )
            found.setdefault(number, held)
        return found

    def unreleased_numbers(self) -> list[str]:
        """The tag number of every assembly that ``unreleased`` names, in order."""
        result = type_coerce(EventRow.data, JSON)["result"].as_string()
        proof = or_(result.is_(None), result.not_in([str(Result.PASSED), str(Result.TESTED)]))
        crimp = cast(EventRow.data, Text).contains('"holds": false')
        suspect = or_(
            and_(EventRow.kind == str(Kind.PROOF_TESTED), proof),
            and_(EventRow.kind == str(Kind.CRIMPED), crimp),
        )
        with self.reading() as session:
            numbers = list(session.scalars(select(EventRow.number).where(suspect).distinct()))
        return sorted(self.unreleased(numbers))

    def refuse_blocked(self, numbers: Sequence[str], *, traveller: bool = False) -> None:
        """Raises StoreError naming every tag that must not be printed."""
        if blocked := self.blocked(numbers, traveller=traveller):
            raise StoreError(
                Problem("number", tag_number.format(number), why) for number, why in blocked.items()
            )


def _refuse_fitted(untested: Sequence[str]) -> None:
    """Raises StoreError naming every assembly that is not installed before its proof test passed."""
    if untested:
        shown = map(tag_number.format, untested)
        raise StoreError(Problem("number", n, Message("store-fitted-untested", number=n)) for n in shown)


def _today(event: Event, held: Event | None, crimped: Event | None) -> Verdict:
    """What a last test proves today; ``held``: the test that holds the assembly; ``crimped``: its last crimp."""
    said = verdict(event.data)
    if held is not None and said.result is not Result.FAILED:
        return Verdict(Result.HELD, why_held(held.data), over=True)
    proves_nothing = said.result is Result.FAILED or (said.result is Result.HELD and not said.over)
    if crimped is not None and crimped.id > event.id and not proves_nothing:
        return Verdict(Result.OUTDATED, Message("store-proof-why-crimped", day=crimped.at.date()))
    if said.over and said.result is Result.HELD:
        return Verdict(Result.TESTED, Message("store-proof-why-allowed"), by_document=True)
    return said


_ROUNDED = 0.99  # of a working pressure: 155 bar is entered for 2250 psi, 155.1 bar


def line_of(known: Assembly, test: ProofTest, tables: Tables | None, *, confirmed: bool) -> dict[str, Any]:
    """The line of history for a test of the assembly. Raises StoreError as ``record_proof_test`` does."""
    _refuse_withdrawn(known, test)
    asked = rated_for(known, test, tables)
    if not confirmed:
        refuse_unconfirmed(test, asked)
    line = judged(test, asked)
    _refuse_below_tag(known, test)
    return line


def _refuse_withdrawn(known: Assembly, test: ProofTest) -> None:
    """Raises StoreError for a test called passed of a hose that must not be used; one that failed may say why."""
    if test.passed and known.withdrawn:
        reasons = tuple(withdrawal.reason for withdrawal in known.withdrawals)
        raise StoreError(Problem("passed", None, Message("store-proof-withdrawn", reasons=reasons)))


def _refuse_below_tag(known: Assembly, test: ProofTest) -> None:
    """Raises StoreError where the manufacturer rates the parts below the working pressure on the tag."""
    told, bar = known.content.working_pressure_bar, test.rating_bar
    if test.passed and told is not None and bar is not None and bar < told * _ROUNDED:
        wrong = Message("store-proof-rating-below-tag", given=pressure(bar), told=pressure(told))
        raise StoreError(Problem("rating_bar", bar, wrong))


def rated_for(known: Assembly, test: ProofTest, tables: Tables | None = None) -> Required:
    """What this test must be, by the rating that is given with it. Raises StoreError where that cannot be right."""
    without = proof_required(known, tables)
    if test.rating_bar is not None and without.can_be_given:
        wrong = given.problem_with_test(
            test.rating_bar,
            without.unknown + without.unverified,
            known.spec,
            tables or our_tables(),
            confirmed=test.rating_confirmed,
        )
        if wrong is not None:
            raise StoreError(wrong)
    return proof_required(known, tables, test.rating_bar)


def proof_required(known: Assembly, tables: Tables | None = None, given_bar: float | None = None) -> Required:
    """What a proof test of the assembly must be, by the lower of its rating then and today.

    ``given_bar``: the manufacturer's rating of the parts whose rating is not known or not verified.
    """
    tables = tables or our_tables()
    high = present.overrated(known.content, tables, known.spec)
    return proof.required(high.now if high else known.assessment, tables, given_bar)


def out_of_band(crimps: Iterable[Mapping[str, Any]]) -> tuple[Message, ...]:
    """The ends whose crimp was measured out of its card's band, each with its diameter; ``crimps`` as they are kept."""
    return tuple(
        Message("store-crimp-of-end", end=part(f"end_{crimp['end']}"), measured=float(crimp["measured_mm"]))
        for crimp in crimps
        if not crimp["holds"]
    )
