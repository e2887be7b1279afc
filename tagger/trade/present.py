"""What an assembly that was rated earlier may work at today: the lower of then and now.

Tables are corrected. A tag or record keeps the figure it was made with; whoever shows it shows the lower.
"""

from __future__ import annotations

from contextlib import suppress
from dataclasses import dataclass

from tagger.errors import TaggerError
from tagger.messages import Message, pressure
from tagger.spec import AssemblySpec, TagContent
from tagger.trade import given
from tagger.trade.assess import assess
from tagger.trade.rating import end_rating, hose_rating
from tagger.trade.results import Assessment, EndAdvice, PartRating, WorkingPressure
from tagger.trade.tables import Tables

_TOLD = ("working_pressure_bar", "at_most_bar", "unknown_parts", "unverified_parts", "dangers")
_SAME_BAR = 0.5  # what rounding to a tag's tenths and to psi may differ by


@dataclass(frozen=True)
class Overrated:
    """A pressure above what the tables of today allow, in bar; ``now_bar`` None: no pressure applies.

    ``at_most``: both are what the known parts allow, of an assembly whose working pressure is not known.
    """

    was_bar: float
    now_bar: float | None
    now: Assessment
    at_most: bool = False

    @property
    def message(self) -> Message:
        """What the page tells the reader."""
        was = pressure(self.was_bar)
        if self.now_bar is None:
            why = self.now.working_pressure.why or Message("words-not-known")
            return Message("trade-overrated-no-longer", was=was, why=why)
        said = "trade-overrated-at_most" if self.at_most else "trade-overrated"
        return Message(said, was=was, now=pressure(self.now_bar))

    @property
    def claim(self) -> Message:
        """What is told of digits without a record, which nobody here registered."""
        if self.now_bar is None:
            return Message("scan-claims-none", was=pressure(self.was_bar))
        return Message("scan-claims-more", was=pressure(self.was_bar), now=pressure(self.now_bar))


def overrated(content: TagContent, tables: Tables, spec: AssemblySpec | None = None) -> Overrated | None:
    """How the content's pressure stands above today's rating; None where it does not.

    ``spec``: that of the record, where there is one; it holds what manufacturers say of the parts, which no tag
    carries.

    A tag of version 1 does not say what fluid and heat the source of an entered pressure names: read
    without its record, such a pressure lifts no limit.
    """
    was, at_most = content.working_pressure_bar, content.working_pressure_bar is None
    was = content.at_most_bar if was is None else was
    if was is None:
        return None
    try:
        now = assess(given.as_registered(spec or content.spec, tables), tables, made=True)
    except TaggerError:  # no assembly of today's tables; its parts may still be known
        by_parts = _part_by_part(spec or content.spec, tables)
        if by_parts is None:
            return None
        now = by_parts
    rated = now.working_pressure
    bar = rated.value_bar
    if at_most and bar is None:
        bar = rated.at_most_bar
        if bar is None and not (rated.why and rated.why.id == "trade-pressure-unfit"):
            return None  # nothing is known of it today to hold the figure against
    return Overrated(was, bar, now, at_most) if bar is None or bar < was - _SAME_BAR else None


def _part_by_part(spec: AssemblySpec, tables: Tables) -> Assessment | None:
    """The least rating of the parts that the tables know, and nothing else; None where they know none.

    Parts that do not go together claim no more than each of them bears.
    """
    parts: list[PartRating] = []
    with suppress(TaggerError):
        parts.append(hose_rating(spec.hose, tables)[0])
    for name, end in (("end_a", spec.end_a), ("end_b", spec.end_b)):
        with suppress(TaggerError):
            parts.append(end_rating(name, end, tables, spec.max_temperature_c))
    known = [(part.value_bar, part) for part in parts if part.value_bar is not None]
    if not known:
        return None
    bar, least = min(known, key=lambda one: one[0])
    nothing = EndAdvice(torque=None, flats=None)
    pressure = WorkingPressure(value_bar=bar, limited_by=least.part, source=least.source, parts=tuple(parts))
    return Assessment(
        working_pressure=pressure,
        test_pressure_bar=None,
        burst_pressure_bar=None,
        length_tolerance=None,
        clocking_tolerance_deg=None,
        bend_radius_mm=None,
        bend_radius_source="",
        hose_od_mm=None,
        hose_od_source="",
        end_a=nothing,
        end_b=nothing,
    )


def lowered(content: TagContent, found: Overrated | None) -> TagContent:
    """The content with the pressure of today where that is lower, and with what is not known of it today."""
    if found is None:
        return content
    now = found.now.content_of(content.spec)
    if found.at_most and found.now_bar is not None:  # what was not known stays so: no pressure is made of it
        lower = {"at_most_bar": found.now_bar, "dangers": now.dangers}
        return content.model_copy(update=lower)
    return content.model_copy(update={name: getattr(now, name) for name in _TOLD})


def says_no_more(printed: TagContent, registered: TagContent) -> bool:
    """Whether a tag says what was registered, or less pressure: one that was printed again after tables were
    corrected."""
    if printed == registered:
        return True
    bar, most = printed.working_pressure_bar, registered.working_pressure_bar
    if bar is None and most is None:
        bar, most = printed.at_most_bar, registered.at_most_bar
    if most is None or (bar is not None and bar > most):
        return False
    return printed == registered.model_copy(update={name: getattr(printed, name) for name in _TOLD})
