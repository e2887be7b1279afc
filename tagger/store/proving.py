"""Proving an assembly: crimp diameters measured, proof test made; and what may not be printed.

A tag is blocked while its last proof test failed, while its last crimp measurement was out of its
band, and while it is withdrawn. Later lines of history unblock it; none is ever taken back.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Annotated, Literal, get_args

from pydantic import BaseModel, ConfigDict, Field

from tagger.code import number as tag_number
from tagger.errors import Problem, StoreError
from tagger.messages import Message, least_pressure, pressure
from tagger.phrases import part
from tagger.spec import PressureBar
from tagger.store.assemblies import Assemblies
from tagger.store.history import History
from tagger.store.values import Event, Kind

Medium = Literal["mineral oil", "water", "water with inhibitor", "air", "nitrogen"]
MEDIA: tuple[str, ...] = get_args(Medium)


class _Value(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid", str_strip_whitespace=True)


class ProofTest(_Value):
    """One proof test as it was made.

    ``called_for_bar`` is what the assessment asked for then, ``called_for_s`` the least hold and
    ``called_for_most_s`` the longest.
    """

    pressure_bar: Annotated[PressureBar, Field(gt=0, le=6000)]
    hold_s: Annotated[int, Field(ge=1, le=86_400)]
    medium: Medium
    passed: bool
    tester: Annotated[str, Field(min_length=1, max_length=80)]
    called_for_bar: float | None = None
    called_for_s: float | None = None
    called_for_most_s: float | None = None
    note: Annotated[str, Field(max_length=500)] = ""


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

    def record_proof_test(self, number: str, test: ProofTest, *, by: str | None = None) -> Event:
        """Writes a proof test into the history.

        Raises StoreError for one called passed though its pressure was lower, or its hold shorter,
        than called for.
        """
        if test.passed and test.called_for_bar is not None and test.pressure_bar < test.called_for_bar:
            given, called = pressure(test.pressure_bar), least_pressure(test.called_for_bar)
            wrong = Message("store-proof-pressure-low", given=given, called=called)
            raise StoreError(Problem("pressure_bar", test.pressure_bar, wrong))
        if test.passed and test.called_for_s is not None and test.hold_s < test.called_for_s:
            wrong = Message("store-proof-hold-short", given=test.hold_s, called=test.called_for_s)
            raise StoreError(Problem("hold_s", test.hold_s, wrong))
        return self.record(number, Kind.PROOF_TESTED, test.model_dump(mode="json"), by)

    def record_crimps(self, number: str, crimps: Sequence[CrimpMeasured], *, by: str | None = None) -> Event:
        """Writes measured crimp diameters into the history, in their bands or not."""
        data = {"crimps": [crimp.model_dump(mode="json") | {"holds": crimp.holds} for crimp in crimps]}
        return self.record(number, Kind.CRIMPED, data, by)

    def blocked(self, numbers: Sequence[str]) -> dict[str, Message]:
        """Those of these tags that must not be printed, and why."""
        found = {
            a.number: Message(
                "store-blocked-withdrawn", number=tag_number.format(a.number), reason=a.withdrawals[0].reason
            )
            for a in self.assemblies(numbers)
            if a.withdrawn
        }
        for number, event in self.last(numbers, Kind.CRIMPED).items():
            ends = tuple(
                Message("store-crimp-of-end", end=part(f"end_{c['end']}"), measured=float(c["measured_mm"]))
                for c in event.data.get("crimps", ())
                if not c["holds"]
            )
            if ends:
                why = Message("store-blocked-crimp", number=tag_number.format(number), ends=ends)
                found.setdefault(number, why)
        for number, event in self.last(numbers, Kind.PROOF_TESTED).items():
            if not event.data.get("passed"):
                day = event.at.date()
                why = Message("store-blocked-proof", number=tag_number.format(number), day=day)
                found.setdefault(number, why)
        return found

    def refuse_blocked(self, numbers: Sequence[str]) -> None:
        """Raises StoreError naming every tag that must not be printed."""
        if blocked := self.blocked(numbers):
            raise StoreError(
                Problem("number", tag_number.format(number), why) for number, why in blocked.items()
            )
