"""What a manufacturer says of one part, entered with the spec: used for what no verified source rates.

It stands for a rating that is not known or unverified, may lower one that is known, and raises none. A figure
above every published one of that part, or where there is none above every one of the tables for that kind of
part, may be psi typed as bar or another part's: it counts when it is confirmed.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from tagger import phrases
from tagger.errors import Problem
from tagger.messages import Message, Value, pressure
from tagger.messages import temperature as celsius
from tagger.spec import AssemblySpec, End, Fluid, GivenRating, Hose, Sizing
from tagger.trade import temperature
from tagger.trade.results import Assessment, PartRating, Warning_
from tagger.trade.row_checks import SLIP_BAR
from tagger.trade.rows import UNVERIFIED
from tagger.trade.tables import Tables

EQUAL_BAR = 0.05  # closer than a tag tells apart
_ROUNDED = 1.003  # the same figure rounded otherwise: 2500 psi printed as 172 bar


def problems(spec: AssemblySpec, tables: Tables) -> list[Problem]:
    """Figures that no hose or end of the tables can have: refused, whoever confirms them."""
    found = []
    known = _in_tables("hose", spec, tables)
    for name, given in ratings(spec):
        if _in_tables(name, spec, tables) and given.value_bar > SLIP_BAR:
            slip = Message("trade-rating-impossible", limit=pressure(SLIP_BAR))
            found.append(Problem(f"{name}.rating.value_bar", given.value_bar, slip))
    override = spec.working_pressure
    if override is not None and known and override.value_bar > SLIP_BAR:
        slip = Message("trade-rating-impossible", limit=pressure(SLIP_BAR))
        found.append(Problem("working_pressure.value_bar", override.value_bar, slip))
    return found


def _in_tables(part: str, spec: AssemblySpec, tables: Tables) -> bool:
    """Whether the tables know the part's standard or family."""
    if part == "hose":
        return tables.standard_of(spec.hose.standard) is not None
    end = spec.end_a if part == "end_a" else spec.end_b
    return end.connection.sized_by is not Sizing.WORDS


def problem_with_test(
    bar: float, parts: Iterable[str], spec: AssemblySpec, tables: Tables, *, confirmed: bool
) -> Problem | None:
    """What speaks against a manufacturer's rating in bar that is given with a proof test for these parts."""
    parts = tuple(parts)
    if bar > SLIP_BAR and any(_in_tables(part, spec, tables) for part in parts):
        return Problem("rating_bar", bar, Message("trade-rating-impossible", limit=pressure(SLIP_BAR)))
    if confirmed:
        return None
    limits = [(limit, part) for part in parts if (limit := highest_published(part, spec, tables)) is not None]
    lowest, part = min(limits, default=(None, ""))
    if lowest is not None and bar > lowest * _ROUNDED:
        high = Message(
            "trade-rating-confirm-unpublished",
            entered=pressure(bar),
            part=phrases.part(part),
            highest=pressure(lowest),
        )
        return Problem("rating_confirmed", None, high)
    limits = [(limit, part) for part in parts if (limit := highest_bar(part, spec, tables)) is not None]
    lowest, part = min(limits, default=(None, ""))
    if lowest is None or bar <= lowest + EQUAL_BAR:
        return None
    said = Message(
        "trade-rating-confirm", entered=pressure(bar), part=phrases.part(part), highest=pressure(lowest)
    )
    return Problem("rating_confirmed", None, said)


def problem_with_fitting(end: End, bar: float, tables: Tables, *, confirmed: bool) -> Problem | None:
    """What speaks against a fitting's own rating in bar: it is above every one of its family, and nobody confirms it."""
    highest = highest_of_end(end, tables)
    if confirmed or highest is None or bar <= highest * _ROUNDED:
        return None
    high = Message(
        "trade-rating-confirm",
        entered=pressure(bar),
        part=phrases.connection(end.connection),
        highest=pressure(highest),
    )
    return Problem("rating_confirmed", None, high)


def unconfirmed(spec: AssemblySpec, parts: Iterable[PartRating], tables: Tables) -> Message | None:
    """Why the working pressure that was entered does not count until it is confirmed; None where it does.

    It is above every rating of the tables for a kind of part that it stands for: one whose own is not known.
    """
    override = spec.working_pressure
    if override is None or override.confirmed:
        return None
    limits = [(highest_bar(p.part, spec, tables), p.part) for p in parts if p.value_bar is None]
    lowest, part = min(((limit, name) for limit, name in limits if limit is not None), default=(None, ""))
    if lowest is None or override.value_bar <= lowest + EQUAL_BAR:
        return None
    return Message(
        "trade-pressure-unconfirmed",
        entered=pressure(override.value_bar),
        source=override.source,
        part=phrases.part(part),
        highest=pressure(lowest),
    )


def as_registered(spec: AssemblySpec, tables: Tables) -> AssemblySpec:
    """The spec of something that was registered: its length and the working pressure entered for it were confirmed
    then, or are older than ticks; a pressure that no hose can have does not count."""
    spec = spec.model_copy(update={"length_confirmed": True})
    override = spec.working_pressure
    if override is None:
        return spec
    impossible = override.value_bar > SLIP_BAR and tables.standard_of(spec.hose.standard) is not None
    change: dict[str, object] = (
        {"value_bar": SLIP_BAR, "confirmed": None} if impossible else {"confirmed": True}
    )
    return spec.model_copy(update={"working_pressure": override.model_copy(update=change)})


def ratings(spec: AssemblySpec) -> list[tuple[str, GivenRating]]:
    """The ratings that came with the spec, by part."""
    parts = (("hose", spec.hose.rating), ("end_a", spec.end_a.rating), ("end_b", spec.end_b.rating))
    return [(name, rating) for name, rating in parts if rating is not None]


def with_given(
    rated: PartRating,
    given: GivenRating | None,
    spec: AssemblySpec,
    tables: Tables,
    *,
    lifted: bool = True,
    capped: bool = False,
) -> tuple[PartRating, list[Warning_]]:
    """A part's rating with the figure that was given for it, and what is to be said of that.

    ``lifted`` is False where a limit of fluid or heat stands against the figure; ``capped`` where the caller lets
    it be no higher than a verified one.
    """
    if given is None:
        return rated, []
    refused = not_used(rated.part, given, spec, tables, lifted=lifted)
    if refused is not None:
        said = Warning_(
            code="rating_not_used", field=f"{rated.part}.rating", message=refused, severity="danger"
        )
        return rated, [said]
    verified = rated.value_bar is not None and rated.confidence not in UNVERIFIED
    if verified and rated.value_bar is not None and given.value_bar > rated.value_bar + EQUAL_BAR:
        message = Message(
            "trade-rating-too-high",
            entered=pressure(given.value_bar),
            source=given.source,
            part=phrases.part(rated.part),
            pressure=pressure(rated.value_bar),
        )
        return rated, [Warning_(code="rating_given_too_high", field=f"{rated.part}.rating", message=message)]
    if not capped and (doubt := _unpublished(rated.part, given, spec, tables)):
        return rated, [doubt]
    part = PartRating(part=rated.part, value_bar=given.value_bar, source=given.source, confidence="given")
    return part, []


def not_used(
    part: str, given: GivenRating, spec: AssemblySpec, tables: Tables, *, lifted: bool
) -> Message | None:
    """Why the figure given does not count; None where it does."""
    said: dict[str, Value] = {
        "part": phrases.part(part),
        "entered": pressure(given.value_bar),
        "source": given.source,
    }
    fluid = spec.fluid or Fluid.MINERAL_OIL
    if not lifted:
        return Message("trade-rating-not-lifted", **said)
    if given.fluid is not None and given.fluid != fluid:
        return Message("trade-rating-other-fluid", **said, fluid=phrases.fluid(given.fluid))
    hottest = hottest_c(spec, tables)
    if given.max_temperature_c is not None and (hottest is None or hottest > given.max_temperature_c):
        return Message("trade-rating-too-hot", **said, limit=celsius(given.max_temperature_c))
    highest = highest_bar(part, spec, tables)
    if not given.confirmed and highest is not None and given.value_bar > highest + EQUAL_BAR:
        return Message("trade-rating-unconfirmed", **said, highest=pressure(highest))
    return None


def _unpublished(part: str, given: GivenRating, spec: AssemblySpec, tables: Tables) -> Warning_ | None:
    """That the figure does not count until it is confirmed: it is above every published one of that very part."""
    published = highest_published(part, spec, tables)
    if given.confirmed or published is None or given.value_bar <= published * _ROUNDED:
        return None
    message = Message(
        "trade-rating-unpublished",
        part=phrases.part(part),
        entered=pressure(given.value_bar),
        source=given.source,
        highest=pressure(published),
    )
    return Warning_(code="rating_not_used", field=f"{part}.rating", message=message, severity="danger")


def hottest_c(spec: AssemblySpec, tables: Tables) -> float | None:
    """How hot the assembly may get: as entered, else the limit of its hose with its fluid."""
    return temperature.hottest(spec, tables)[0]


def highest_bar(part: str, spec: AssemblySpec, tables: Tables) -> float | None:
    """The highest rating of the tables for that kind of part: the hose's standard, the end's family.

    Where they have none for it, the highest of any hose or any end.
    """
    if part == "hose":
        return highest_of_hose(spec.hose, tables)
    return highest_of_end(spec.end_a if part == "end_a" else spec.end_b, tables)


def highest_of_hose(hose: Hose, tables: Tables) -> float | None:
    """The highest rating in bar of the hose's standard in any size, a shop's own rows aside."""
    rows = [r for r in tables.raw["hose_pressure"] if r.confidence != "shop"]
    standard = tables.standard_of(hose.standard)
    own = [r for r in rows if standard is not None and r.standard == standard.standard]
    return _highest(own or rows)


def highest_of_end(end: End, tables: Tables) -> float | None:
    """The highest rating in bar of the end's family in any size, a shop's own rows aside."""
    rows = [r for r in tables.raw["connection_pressure"] if r.use == "rating" and r.confidence != "shop"]
    return _highest([r for r in rows if r.family is end.connection] or rows)


def _highest(rows: Iterable[object]) -> float | None:
    return max((r.max_working_bar for r in rows), default=None)  # type: ignore[attr-defined]


def highest_published(part: str, spec: AssemblySpec, tables: Tables) -> float | None:
    """The highest published rating of that very part: standard and size of the hose; family, size and form of
    the end, in whatever shape, series and material. None where there is none."""
    if part == "hose":
        return highest_published_of_hose(spec.hose, tables)
    end = spec.end_a if part == "end_a" else spec.end_b
    return _highest(
        r
        for r in tables.published["connection_pressure"]
        if r.use == "rating"
        and r.family is end.connection
        and r.size == end.size_key
        and (not r.forms or end.form in r.forms)
    )


def highest_published_of_hose(hose: Hose, tables: Tables) -> float | None:
    """The highest published rating in bar of the hose's standard in its size, in any edition; None without one."""
    standard = tables.standard_of(hose.standard)
    name = standard.standard if standard else None
    sizes = (str(hose.dash), "all")
    return _highest(r for r in tables.published["hose_pressure"] if r.standard == name and r.dash in sizes)


def above_published(
    rated: PartRating, spec: AssemblySpec, tables: Tables
) -> tuple[PartRating, list[Warning_]]:
    """The rating marked where a shop's or a given figure is above every published one, and that it is said."""
    if rated.value_bar is None or rated.confidence not in ("shop", "given"):
        return rated, []
    highest = highest_published(rated.part, spec, tables)
    if highest is None or rated.value_bar <= highest * _ROUNDED:
        return rated, []
    message = Message(
        "trade-rating-above-published",
        part=phrases.part(rated.part),
        pressure=pressure(rated.value_bar),
        source=rated.source,
        highest=pressure(highest),
    )
    said = Warning_(code="rating_above_published", field=rated.part, message=message)
    return rated.model_copy(update={"above_published_bar": highest}), [said]


@dataclass(frozen=True)
class Ask:
    """A figure to ask the manufacturer for: the spec's field that takes it, and what to enter."""

    field: str
    message: Message


def asks(found: Assessment) -> list[Ask]:
    """What only a manufacturer knows of this assembly: ratings that are unknown or unverified, and a fluid that
    no source allows."""
    asked = []
    for warning in found.warnings:
        if warning.code in ("fluid_not_named", "fluid_not_suited"):
            fluid = warning.message.values["fluid"]
            asked.append(Ask("hose.approval", Message("trade-ask-approval", fluid=fluid)))
    for part in found.working_pressure.parts:
        if part.part == "hose" and asked:
            continue
        if part.value_bar is None or part.confidence in UNVERIFIED:
            asked.append(Ask(f"{part.part}.rating", _ask_for(part.part)))
    return asked


def _ask_for(part: str) -> Message:
    if part == "hose":
        return Message("trade-ask-rating-hose")
    return Message("trade-ask-rating-end", part=phrases.part(part))
