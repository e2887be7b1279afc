"""Hoses that must not be used: why, since when and by whose word, for the tag that says so on the hose."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date

from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.record import Stop
from tagger.store.proof_tests import Result, verdict, why_held
from tagger.store.proving import Proving, out_of_band
from tagger.store.values import Kind

STOPPING = "do_not_use"
"""The purpose of a label template that is for these hoses alone."""
_Cause = tuple[Message, Message, date, str | None]  # in full, without what was typed in, day, by whom


class Stops(Proving):
    """The part of the store that says which hoses must not be used."""

    def stops(self, numbers: Sequence[str]) -> dict[str, Stop]:
        """Those of these tags whose hose must not be used: withdrawn, void, held, failed, or badly crimped.

        The gravest cause comes first; day and person are its own. A tag that only waits for its proof test
        is none of them.
        """
        return {
            number: Stop(tuple(c[0] for c in causes), causes[0][1], causes[0][2], causes[0][3])
            for number, causes in self._causes([tag_number.compact(n) for n in numbers]).items()
        }

    def refuse_print(self, numbers: Sequence[str], purpose: str) -> None:
        """Raises StoreError naming every tag that must not be printed on a label of this purpose."""
        if purpose != STOPPING:
            self.refuse_blocked(numbers, traveller=purpose == "traveller")
            return
        stopped = self.stops(numbers)
        shown = [tag_number.format(n) for n in numbers if tag_number.compact(n) not in stopped]
        if shown:
            raise StoreError(Problem("number", n, Message("store-stop-none", number=n)) for n in shown)

    def _causes(self, numbers: list[str]) -> dict[str, list[_Cause]]:
        found: dict[str, list[_Cause]] = {}
        for number, cause in (
            *self._withdrawn(numbers),
            *self._void(numbers),
            *self._tested(numbers),
            *self._crimped(numbers),
        ):
            found.setdefault(number, []).append(cause)
        return found

    def _withdrawn(self, numbers: list[str]) -> Iterator[tuple[str, _Cause]]:
        for known in self.assemblies(numbers):
            for one in known.withdrawals:
                said = Message("store-stop-withdrawn", reason=one.reason)
                yield known.number, (said, Message("store-stop-withdrawn-short"), one.at.date(), one.by)

    def _void(self, numbers: list[str]) -> Iterator[tuple[str, _Cause]]:
        for number, void in self.void_of(numbers).items():
            said = Message("store-stop-void", reason=void.reason)
            yield number, (said, Message("store-stop-void-short"), void.at.date(), void.by)

    def _tested(self, numbers: list[str]) -> Iterator[tuple[str, _Cause]]:
        held = self.held(numbers)
        for number, event in held.items():
            said = Message("store-stop-held", why=why_held(event.data))
            yield number, (said, Message("store-stop-held-short"), event.at.date(), event.by)
        for number, event in self.last(numbers, Kind.PROOF_TESTED).items():
            result, day = verdict(event.data), event.at.date()
            if result.result is Result.FAILED:
                failed = Message("store-stop-proof", day=day)
                yield number, (failed, failed, day, event.by)
            elif result.result is Result.HELD and not result.over and number not in held:
                slip = Message("store-stop-slip", day=day)
                yield number, (slip, slip, day, event.by)

    def _crimped(self, numbers: list[str]) -> Iterator[tuple[str, _Cause]]:
        last = self.last(numbers, Kind.CRIMPED)
        for number, crimps in self.crimped(numbers).items():
            if ends := out_of_band(crimps):
                said, event = Message("store-stop-crimp", ends=ends), last[number]
                yield number, (said, said, event.at.date(), event.by)
