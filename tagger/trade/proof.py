"""What a proof test of an assembly must be: twice the rating of its weakest part, held 30 to 60 s (SAE J343).

Pure figures: the store judges a test by them, pages and papers show them.
"""

from __future__ import annotations

from dataclasses import dataclass

from tagger.trade.results import Assessment, PartRating
from tagger.trade.rows import Rule
from tagger.trade.tables import Tables

_PARTS = ("hose", "end_a", "end_b")
_ROUNDING = 0.05  # pressures are kept to 0.1 bar


@dataclass(frozen=True)
class Required:
    """What is asked of a proof test, in bar and s; None where it is not known.

    ``most_bar``: above it the parts were loaded more than a proof test loads them. ``burst_bar``: the
    minimum burst pressure of ``burst_of``; more cannot have been applied. ``unknown`` and
    ``unverified`` name the parts whose manufacturers' rating is asked for first; ``can_be_given``:
    whether a rating given with the test stands for them.
    """

    pressure_bar: float | None
    most_bar: float | None
    burst_bar: float | None
    burst_of: str | None
    hold_min: Rule
    hold_max: Rule
    unknown: tuple[str, ...] = ()
    unverified: tuple[str, ...] = ()
    can_be_given: bool = False

    @property
    def rating_missing(self) -> bool:
        """Whether the rating must be given before a test can pass."""
        return self.pressure_bar is None or bool(self.unverified)

    def is_over(self, bar: float) -> bool:
        """Whether a pressure is more than a proof test may be."""
        return self.most_bar is not None and bar > self.most_bar + _ROUNDING

    def is_slip(self, bar: float) -> bool:
        """Whether a pressure is above the minimum burst pressure: it was not applied, it was mistyped."""
        return self.burst_bar is not None and bar > self.burst_bar + _ROUNDING

    def is_enough(self, bar: float) -> bool:
        return self.pressure_bar is not None and bar >= self.pressure_bar


def required(rated: Assessment, tables: Tables, given_bar: float | None = None) -> Required:
    """What a proof test of the assembly must be.

    ``given_bar``: the manufacturer's rating, in bar, of the parts whose rating is not known or not
    verified; it raises no rating that is known, and lifts no limit of fluid or heat.
    """
    pressure = rated.working_pressure
    parts = {part.part: part for part in pressure.parts}
    named = [(name, parts[name]) for name in _PARTS if name in parts]
    unknown = tuple(n for n, p in named if p.value_bar is None) if pressure.value_bar is None else ()
    unverified = tuple(n for n, p in named if p.standing == "unverified")
    if pressure.limited_by == "override":  # a rating of the whole assembly, with its source
        unverified = ()
    limit = any(w.code == "pressure_not_lifted" for w in rated.warnings)
    limit = limit or (pressure.why is not None and pressure.why.id == "trade-pressure-unfit")
    asked = pressure.value_bar is None or bool(unverified)
    rating = pressure.value_bar
    if asked and given_bar is not None and not limit:
        rating = min([given_bar, *_verified(pressure.parts)])
        unknown = unverified = ()
    least = rating if rating is not None else pressure.at_most_bar
    burst_bar, burst_of = _burst(least, pressure.limited_by or "hose", parts, tables)
    proof = tables.rule("proof_factor").value
    return Required(
        pressure_bar=None if rating is None else round(rating * proof, 1),
        most_bar=None if least is None else round(least * proof * tables.rule("proof_most").value, 1),
        burst_bar=burst_bar,
        burst_of=burst_of,
        hold_min=tables.rule("proof_hold_min"),
        hold_max=tables.rule("proof_hold_max"),
        unknown=unknown,
        unverified=unverified,
        can_be_given=asked and not limit,
    )


def _verified(parts: tuple[PartRating, ...]) -> list[float]:
    return [p.value_bar for p in parts if p.value_bar is not None and p.standing == "verified"]


def _burst(
    least_bar: float | None, of: str, parts: dict[str, PartRating], tables: Tables
) -> tuple[float | None, str | None]:
    """The minimum burst pressure, and the part it is of: four times the least rating (SAE J517, J514).

    Where no rating of the assembly is known, four times that of the hose by its standard.
    """
    hose = parts.get("hose")
    if least_bar is None and hose is not None:
        least_bar, of = hose.value_bar, "hose"
    if least_bar is None:
        return None, None
    return round(least_bar * tables.rule("burst_factor").value, 1), of
