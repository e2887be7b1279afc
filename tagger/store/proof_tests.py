"""A proof test as it was made, what it proves, and the allowance that releases one made too high.

A test proves what was asked then: the figures it was held against are kept with it. A record from
before results were kept is read by the same rules.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum
from typing import Annotated, Any, Literal, get_args

from pydantic import ConfigDict, Field, field_validator

from tagger import phrases
from tagger.errors import Problem, StoreError
from tagger.messages import Message, least_pressure, pressure
from tagger.spec import PressureBar
from tagger.trade.proof import Required
from tagger.trade.tables import tables
from tagger.trimmed import Trimmed

Medium = Literal["mineral oil", "water", "water with inhibitor", "air", "nitrogen"]
MEDIA: tuple[str, ...] = get_args(Medium)
GASES = ("air", "nitrogen")


class Result(StrEnum):
    """What a test proves."""

    PASSED = "passed"
    TESTED = "tested"  # it held, and that is not a proof test passed
    HELD = "held"  # loaded beyond a proof test: not to be used until the manufacturers allow it
    FAILED = "failed"
    OUTDATED = "outdated"  # a crimp was recorded after it: what was tested is no more what is there


class _Value(Trimmed):
    model_config = ConfigDict(frozen=True)


class ProofTest(_Value):
    """One proof test as it was made. ``passed``: it held, without leak or failure.

    ``lower_source``: the customer or standard that asks for less than a proof test. ``rating_bar``
    with ``rating_source``: the manufacturer's working pressure of the parts whose rating is not
    known or not verified; ``rating_confirmed``: it is right although it is above every rating of the
    tables for a part of that kind. ``gauge``: by its number or name; ``gauge_valid_until``: the last day
    on which its calibration holds. ``method``: the procedure that was followed.
    ``called_for_bar``, ``called_for_s`` (the least hold) and
    ``called_for_most_s`` (the longest) are filled in when the test is recorded.
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
    lower_source: Annotated[str, Field(max_length=120)] = ""
    rating_bar: Annotated[PressureBar, Field(gt=0, le=3000)] | None = None
    rating_source: Annotated[str, Field(max_length=120)] = ""
    rating_confirmed: bool = False
    gauge: Annotated[str, Field(max_length=80)] = ""
    gauge_valid_until: date | None = None
    method: Annotated[str, Field(max_length=120)] = ""

    @field_validator("gauge_valid_until", mode="before")
    @classmethod
    def _empty(cls, value: Any) -> Any:
        """A form sends an empty text for a day that was not entered."""
        return None if value == "" else value


class ProofAllowance(_Value):
    """The manufacturers' written allowance for an assembly that was loaded beyond a proof test."""

    allowed_by: Annotated[str, Field(min_length=1, max_length=120)]
    allowed_on: date
    document: Annotated[str, Field(min_length=1, max_length=120)]


@dataclass(frozen=True)
class Verdict:
    """What a recorded test proves, and why no more than that. ``over``: it loaded the assembly too high.

    ``by_document``: a customer, a standard or the manufacturers, named with it, let it stand as it is.
    """

    result: Result
    why: Message | None = None
    over: bool = False
    by_document: bool = False

    @property
    def releases(self) -> bool:
        """Whether a shop that lets nothing out untested may let the assembly out."""
        return self.result is Result.PASSED or (self.result is Result.TESTED and self.by_document)


def judged(test: ProofTest, asked: Required) -> dict[str, Any]:
    """The line of history for a test held against what was asked of it.

    Raises StoreError for a pressure that cannot have been applied, and for a test called passed that
    proves nothing: a rating that is missing, too low a pressure or too short a hold without a source.
    """
    if asked.is_slip(test.pressure_bar):
        raise StoreError(Problem("pressure_bar", test.pressure_bar, _slip(test.pressure_bar, asked)))
    result = _result(test, asked)
    figures: dict[str, Any] = {
        "passed": result is Result.PASSED,
        "called_for_bar": asked.pressure_bar,
        "called_for_s": asked.hold_min.value,
        "called_for_most_s": asked.hold_max.value,
        "called_for_most_bar": asked.most_bar,
        "burst_bar": asked.burst_bar,
        "result": str(result),
    }
    return test.model_dump(mode="json") | figures


def refuse_unconfirmed(test: ProofTest, asked: Required) -> None:
    """Raises StoreError for a pressure that would hold the assembly: it may be mistyped."""
    if asked.is_over(test.pressure_bar) and not asked.is_slip(test.pressure_bar):
        assert asked.most_bar is not None  # only a test above it is over
        over = Message(
            "store-proof-over-unconfirmed", given=pressure(test.pressure_bar), most=pressure(asked.most_bar)
        )
        raise StoreError(Problem("confirmed", None, over))


def refuse_gauge(test: ProofTest, today: date) -> None:
    """Raises StoreError for a calibration without its gauge, and for a test called passed after its end."""
    until = test.gauge_valid_until
    if until is None:
        return
    if not test.gauge:
        raise StoreError(Problem("gauge", None, Message("store-proof-gauge-missing")))
    if test.passed and until < today - timedelta(days=1):  # somewhere it is still yesterday
        raise StoreError(
            Problem("gauge_valid_until", until.isoformat(), Message("store-proof-gauge-expired", day=until))
        )


def _result(test: ProofTest, asked: Required) -> Result:
    """What the test proves. Raises StoreError for one called passed that proves nothing."""
    if not test.passed:
        return Result.FAILED
    _refuse_rating(test, asked)
    lower = bool(test.lower_source)
    if asked.unverified and not lower:
        raise StoreError(Problem("rating_bar", None, _rating_missing(asked)))
    if asked.is_over(test.pressure_bar):
        return Result.HELD
    if problems := [] if lower else _short_of(test, asked):
        raise StoreError(problems)
    return Result.TESTED if _short_of(test, asked) else Result.PASSED


def _refuse_rating(test: ProofTest, asked: Required) -> None:
    """Raises StoreError for a rating without its source, or one where every part has its own."""
    if test.rating_bar is None:
        return
    if not test.rating_source:
        raise StoreError(Problem("rating_source", None, Message("store-proof-rating-source")))
    if not asked.can_be_given and asked.pressure_bar is not None:
        raise StoreError(Problem("rating_bar", test.rating_bar, Message("store-proof-rating-not-asked")))


def _short_of(test: ProofTest, asked: Required) -> list[Problem]:
    """Everything by which a test that held is less than a proof test."""
    found = []
    if asked.rating_missing:
        found.append(Problem("rating_bar", None, _rating_missing(asked)))
    elif asked.pressure_bar is not None and not asked.is_enough(test.pressure_bar):
        given, called = pressure(test.pressure_bar), least_pressure(asked.pressure_bar)
        low = Message("store-proof-pressure-low", given=given, called=called)
        found.append(Problem("pressure_bar", test.pressure_bar, low))
    if test.hold_s < asked.hold_min.value:
        short = Message("store-proof-hold-short", given=test.hold_s, called=asked.hold_min.value)
        found.append(Problem("hold_s", test.hold_s, short))
    if test.medium in GASES:
        found.append(Problem("medium", test.medium, Message("store-proof-gas")))
    return found


def _rating_missing(asked: Required) -> Message:
    if not asked.can_be_given:
        return Message("store-proof-no-rating-applies")
    if asked.unverified:
        parts = tuple(phrases.part(name) for name in asked.unverified)
        return Message("store-proof-rating-unverified", parts=parts)
    return Message("store-proof-rating-unknown", parts=tuple(phrases.part(name) for name in asked.unknown))


def _slip(bar: float, asked: Required) -> Message:
    assert asked.burst_bar is not None and asked.burst_of is not None
    burst, of = least_pressure(asked.burst_bar), phrases.part(asked.burst_of)
    return Message("store-proof-above-burst", given=pressure(bar), burst=burst, part=of)


def verdict(data: Mapping[str, Any]) -> Verdict:
    """What a line of history says of a test, whenever it was written."""
    bar, called = data.get("pressure_bar", 0.0), data.get("called_for_bar")
    most, burst = _limits(data)
    slip = burst is not None and bar > burst + 0.05
    over = most is not None and bar > most + 0.05 and not slip
    result = Result(data["result"]) if "result" in data else _kept(data, over or slip)
    if result is Result.HELD:
        return Verdict(result, why_held(data), over)
    if result is not Result.TESTED:
        return Verdict(result, over=over)
    if data.get("lower_source"):
        why = Message("store-proof-why-lower", source=data["lower_source"])
        return Verdict(result, why, by_document=data.get("medium") not in GASES)
    if data.get("medium") in GASES:
        why = Message("store-proof-why-gas")
    elif called is None:
        why = Message("store-proof-why-unknown")
    else:
        why = Message("store-proof-why-short")
    return Verdict(result, why)


def why_held(data: Mapping[str, Any]) -> Message:
    """How far above a proof test a recorded test was."""
    bar = data["pressure_bar"]
    most, burst = _limits(data)
    if burst is not None and bar > burst + 0.05:
        return Message("store-proof-why-slip", given=pressure(bar), burst=least_pressure(burst))
    assert most is not None  # only a test above it is held
    return Message("store-proof-why-held", given=pressure(bar), most=pressure(most))


def _limits(data: Mapping[str, Any]) -> tuple[float | None, float | None]:
    """Above which pressures a test was too high, and cannot have been made: as kept, else by its proof pressure."""
    if "result" in data:
        return data.get("called_for_most_bar"), data.get("burst_bar")
    called, rule = data.get("called_for_bar"), tables().rule
    if called is None:
        return None, None
    return called * rule("proof_most").value, called / rule("proof_factor").value * rule("burst_factor").value


def _kept(data: Mapping[str, Any], too_high: bool) -> Result:
    """What a test proves that was recorded before results were kept."""
    if not data.get("passed"):
        return Result.FAILED
    if too_high:
        return Result.HELD
    called, least = data.get("called_for_bar"), data.get("called_for_s")
    enough = called is not None and data["pressure_bar"] >= called
    enough = enough and (least is None or data["hold_s"] >= least)
    return Result.PASSED if enough and data.get("medium") not in GASES else Result.TESTED
