"""A fitting of the shop under its own stock number: which end it makes, and what it is cut and crimped by.

The figures are the fitting manufacturer's, given with their source; none is assumed.
"""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum
from typing import Annotated, Any

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, ValidationError, model_validator

from tagger import phrases
from tagger.errors import Problem, SpecError, problems_of
from tagger.messages import Message, length, pressure
from tagger.spec import AssemblySpec, End, GivenRating, PressureBar, SpecValueError
from tagger.units import read_length_mm


class CutOff(StrEnum):
    """Where a cut-off ends. It begins at the seat; of an elbow, at the centreline of its outlet."""

    HOSE_BUTT = "seat_to_hose_butt"
    SHELL_MOUTH = "seat_to_shell_mouth"


_Mm = Annotated[float, Field(gt=0, le=1000), BeforeValidator(lambda value: round(read_length_mm(value), 1))]
_Text = Annotated[str, Field(min_length=1, max_length=120)]
_NOT_COMPARED = ("lot", "fitting", "rating")


class Fitting(BaseModel):
    """One row of the shop's list of fittings. Lengths in mm, or a text with a unit; pressure in bar.

    ``fitting_series``: the shop's name of the insert and shell, by which crimp cards are kept.
    ``swivel``: whether the end turns on the fitting after it is crimped. ``source``: whose figures the
    dimensions are. ``rating_confirmed``: its own rating is right although it is above those of the tables.
    """

    model_config = ConfigDict(frozen=True, extra="forbid", str_strip_whitespace=True)

    stock_number: Annotated[str, Field(min_length=1, max_length=40)]
    fitting_series: Annotated[str, Field(min_length=1, max_length=60)] | None = None
    end: End
    swivel: bool | None = None
    cut_off_mm: _Mm | None = None
    cut_off_kind: CutOff | None = None
    insertion_depth_mm: _Mm | None = None
    source: _Text | None = None
    rating_bar: Annotated[PressureBar, Field(gt=0, le=1000)] | None = None
    rating_source: Annotated[str, Field(min_length=1, max_length=80)] | None = None
    rating_confirmed: bool | None = None
    note: Annotated[str, Field(max_length=200)] | None = None

    @model_validator(mode="after")
    def _whole(self) -> Fitting:
        for name in _NOT_COMPARED:
            if getattr(self.end, name) is not None:
                raise SpecValueError(f"end.{name}", None, Message("stock-not-of-a-row"))
        if (self.cut_off_mm is None) != (self.cut_off_kind is None):
            field = "cut_off_kind" if self.cut_off_kind is None else "cut_off_mm"
            kinds = tuple(map(str, CutOff))
            raise SpecValueError(field, None, Message("stock-cut-off-incomplete", kinds=kinds))
        if (self.cut_off_mm or self.insertion_depth_mm) and self.source is None:
            raise SpecValueError("source", None, Message("stock-source-missing"))
        if (self.rating_bar is None) != (self.rating_source is None):
            field = "rating_source" if self.rating_source is None else "rating_bar"
            raise SpecValueError(field, None, Message("stock-rating-incomplete"))
        if self.seat_to_butt_mm is not None and self.seat_to_butt_mm <= 0:
            wrong = Message("stock-cut-off-inside", insertion=length(self.insertion_depth_mm or 0))
            raise SpecValueError("cut_off_mm", self.cut_off_mm, wrong)
        return self

    @property
    def seat_to_butt_mm(self) -> float | None:
        """From the seat to where the hose butts: what the end adds to the cut length; None where not known.

        A dimension that ends at the shell's mouth reaches past that point by the insertion depth.
        """
        if self.cut_off_mm is None or self.cut_off_kind is CutOff.HOSE_BUTT:
            return self.cut_off_mm
        if self.insertion_depth_mm is None:
            return None
        return round(self.cut_off_mm - self.insertion_depth_mm, 1)

    @property
    def seat_to_mouth_mm(self) -> float | None:
        """From the seat to the shell's mouth, where the free hose begins; None where the cut-off is not known.

        Without its insertion depth a cut-off to where the hose butts is the least that it can be.
        """
        if self.cut_off_mm is None or self.cut_off_kind is CutOff.SHELL_MOUTH:
            return self.cut_off_mm
        return round(self.cut_off_mm + (self.insertion_depth_mm or 0.0), 1)

    def spec_end(self) -> dict[str, Any]:
        """The end of a spec that it makes, as JSON values, under its stock number."""
        return self.end.model_dump(mode="json", exclude_none=True) | {"fitting": self.stock_number}

    def as_dict(self) -> dict[str, Any]:
        """Plain JSON values, absent ones left out."""
        return self.model_dump(mode="json", exclude_none=True)


Fittings = Mapping[str, Fitting]
"""Fittings by the key of their stock number."""


def stock_key(number: str) -> str:
    """Stock numbers are one in any case and spacing.

    >>> stock_key(" tw-12  j ")
    'TW-12 J'
    """
    return " ".join(number.split()).upper()


def named(spec: AssemblySpec) -> tuple[str, ...]:
    """The stock numbers that a spec names, as keys."""
    numbers = (spec.end_a.fitting, spec.end_b.fitting)
    return tuple(dict.fromkeys(stock_key(number) for number in numbers if number))


def numbers_in(data: object) -> list[str]:
    """The stock numbers in a spec's JSON that has not been read yet."""
    if not isinstance(data, dict):
        return []
    ends = (data.get(name) for name in ("end_a", "end_b"))
    numbers = (end.get("fitting") for end in ends if isinstance(end, dict))
    return [number for number in numbers if isinstance(number, str) and number.strip()]


def filled(data: Any, fittings: Fittings) -> Any:
    """A spec's JSON with what its stock numbers say filled in where an end leaves it out."""
    if not isinstance(data, dict):
        return data
    found = dict(data)
    for name in ("end_a", "end_b"):
        end = data.get(name)
        number = end.get("fitting") if isinstance(end, dict) else None
        fitting = fittings.get(stock_key(number)) if isinstance(number, str) else None
        if fitting is not None and isinstance(end, dict):
            given = {key: value for key, value in end.items() if value is not None}
            found[name] = _kept(fitting, given) | given | {"fitting": fitting.stock_number}
    return found


def _kept(fitting: Fitting, given: Mapping[str, Any]) -> dict[str, Any]:
    """The fitting's end, without its size or drop where the spec gives its own: they are compared later."""
    kept = fitting.end.model_dump(mode="json", exclude_none=True)
    sized = ("dash", "size", "description")
    left_out = {*(sized if any(name in given for name in sized) else ())}
    if "shape" in given:
        left_out.add("drop_mm")
    return {name: value for name, value in kept.items() if name not in left_out}


def with_ratings(spec: AssemblySpec, fittings: Fittings) -> AssemblySpec:
    """The spec with its fittings' own ratings, where none is entered for that end or a higher one is."""
    update = {}
    for name, end in (("end_a", spec.end_a), ("end_b", spec.end_b)):
        fitting = fittings.get(stock_key(end.fitting)) if end.fitting else None
        if fitting is None or fitting.rating_bar is None or fitting.rating_source is None:
            continue
        if end.rating is None or end.rating.value_bar > fitting.rating_bar:
            own = GivenRating(
                value_bar=fitting.rating_bar,
                source=fitting.rating_source,
                confirmed=bool(fitting.rating_confirmed),
            )
            update[name] = end.model_copy(update={"rating": own})
    return spec.model_copy(update=update)


def rating_problems(spec: AssemblySpec, working_bar: float | None, fittings: Fittings) -> list[Problem]:
    """Fittings whose own rating is below the working pressure of the assembly."""
    found = []
    for name, end in (("end_a", spec.end_a), ("end_b", spec.end_b)):
        fitting = fittings.get(stock_key(end.fitting)) if end.fitting else None
        if fitting is None or fitting.rating_bar is None or working_bar is None:
            continue
        if working_bar > fitting.rating_bar + 0.05:  # a tag carries pressures to 0.1 bar
            wrong = Message(
                "stock-rating-below",
                number=fitting.stock_number,
                rating=pressure(fitting.rating_bar),
                source=fitting.rating_source or "",
                pressure=pressure(working_bar),
            )
            found.append(Problem(f"{name}.fitting", end.fitting, wrong))
    return found


def problems(spec: AssemblySpec, fittings: Fittings) -> list[Problem]:
    """Stock numbers that are not kept, or whose fitting is another one than the spec says."""
    found = []
    for name, end in (("end_a", spec.end_a), ("end_b", spec.end_b)):
        if end.fitting is None:
            continue
        fitting = fittings.get(stock_key(end.fitting))
        if fitting is None:
            found.append(
                Problem(f"{name}.fitting", end.fitting, Message("stock-not-kept", number=end.fitting))
            )
        elif not is_the(fitting, end):
            wrong = Message(
                "stock-another-end",
                number=fitting.stock_number,
                kept=phrases.end(fitting.end),
                given=phrases.end(end),
            )
            found.append(Problem(f"{name}.fitting", end.fitting, wrong))
    return found


def is_the(fitting: Fitting, end: End) -> bool:
    """Whether a spec's end is the one that the fitting makes; a drop that is not entered is no other."""
    kept, given = (one.model_dump(exclude=set(_NOT_COMPARED)) for one in (fitting.end, end))
    for name in ("drop_mm", "series", "hose_dash"):
        if given[name] is None or kept[name] is None:
            kept.pop(name), given.pop(name)
    return kept == given


def refuse_others(spec: AssemblySpec, fittings: Fittings) -> None:
    """Raises SpecError for the stock numbers that are not this spec's ends."""
    if found := problems(spec, fittings):
        raise SpecError(found)


def read_fitting(data: object) -> Fitting:
    """A row from plain values. Raises SpecError naming every field that is wrong."""
    try:
        return Fitting.model_validate(data)
    except ValidationError as error:
        raise SpecError(problems_of(error)) from None
