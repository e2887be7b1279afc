"""Working pressure: the least of the hose and both ends (SAE J517, SAE J516 previews).

A rating is the least of what the sources print for that very part: family, size, form, shape
and material. Where no source does, it is None and the assembly's is None too, unless the
spec brings a figure with its source; even then no known part is exceeded. Where the spec asks
more heat or another fluid of the hose than a source allows, no figure applies, unless one is
entered whose source names that fluid and temperature.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import Literal, TypeVar

from tagger import phrases
from tagger.errors import TradeError
from tagger.messages import Message, pressure
from tagger.messages import temperature as celsius
from tagger.spec import AssemblySpec, End, Fluid, Hose, Material, PressureOverride
from tagger.trade import given, temperature
from tagger.trade import rows as row
from tagger.trade.results import PartRating, Warning_, WorkingPressure
from tagger.trade.tables import Tables, compact_name

Rated = TypeVar("Rated", row.HosePressureRow, row.PressureRow)


def rate(spec: AssemblySpec, tables: Tables) -> tuple[WorkingPressure, list[Warning_]]:
    """The working pressure of the assembly, in bar, part by part, with its warnings."""
    if impossible := given.problems(spec, tables):
        raise TradeError(impossible)
    printed, warnings = hose_rating(spec.hose, tables, _asked(spec, tables))
    unfit = temperature.unfit(spec, tables)
    hose = printed
    if unfit is not None:
        hose = _beyond_limits(spec, tables, printed) or _not_known("hose", unfit)
        warnings = [w for w in warnings if w.code != "edition_not_given"]
    hose, more = _hose_with_given(hose, printed, unfit, spec, tables)
    warnings += more
    parts = [hose]
    for name, end in (("end_a", spec.end_a), ("end_b", spec.end_b)):
        rated, more = _end_with_given(name, end, spec, tables)
        parts.append(rated)
        warnings += more + _same_thread(name, end, tables)
    marked = [given.above_published(part, spec, tables) for part in parts]
    parts = [part for part, _ in marked]
    warnings += _part_warnings(parts)
    for _, said in marked:
        warnings += said
    override, within = spec.working_pressure, unfit is None
    unfit = None if hose.value_bar is not None else unfit
    if override is not None and _beyond(unfit, spec, tables) and not temperature.lifts(override, spec):
        warnings.append(_not_lifted(override))
    elif (doubt := given.unconfirmed(spec, parts, tables)) is not None:
        answer, more = _nothing_shown(parts, doubt, _lowest_known(parts) if unfit is None else None)
        return answer, warnings + more
    elif override is not None:
        bar = override.value_bar
        if not within and printed.value_bar is not None and bar > printed.value_bar:
            warnings.append(_beyond_limits_warning(bar, printed.value_bar, printed.source))
            bar = printed.value_bar
        parts.append(PartRating(part="override", value_bar=bar, source=override.source, confidence="given"))
    answer, more = _together(parts, unfit)
    return answer, warnings + more


@dataclass(frozen=True)
class Asked:
    """What is asked of a part beside its pressure: the fluid, and how hot it may get in °C."""

    fluid: Fluid = Fluid.MINERAL_OIL
    hottest_c: float | None = None


def _asked(spec: AssemblySpec, tables: Tables) -> Asked:
    return Asked(spec.fluid or Fluid.MINERAL_OIL, given.hottest_c(spec, tables))


def _hose_with_given(
    hose: PartRating, printed: PartRating, unfit: Message | None, spec: AssemblySpec, tables: Tables
) -> tuple[PartRating, list[Warning_]]:
    """The hose's rating with the one that was given for it, which beyond a limit must name fluid and heat."""
    rating = spec.hose.rating
    lifted = hose.value_bar is not None or not _beyond(unfit, spec, tables)
    if rating is not None and not lifted:
        lifted = spec.max_temperature_c is not None and temperature.lifts(rating, spec)
    counts = rating is not None and given.not_used("hose", rating, spec, tables, lifted=lifted) is None
    if rating is not None and counts and hose.confidence in row.UNVERIFIED:
        hose = _of_verified_edition(hose, spec, tables)
    verified = printed.value_bar is not None and printed.confidence not in row.UNVERIFIED
    rated, more = given.with_given(hose, rating, spec, tables, lifted=lifted, capped=verified)
    most = printed.value_bar if verified and rated.confidence == "given" else None
    if rated.value_bar is not None and most is not None and rated.value_bar > most:
        more.append(_beyond_limits_warning(rated.value_bar, most, printed.source))
        rated = rated.model_copy(update={"value_bar": most})
    return rated, more


def _of_verified_edition(hose: PartRating, spec: AssemblySpec, tables: Tables) -> PartRating:
    """The least verified rating of the editions that the hose may be of, for a figure given to be held against: that
    of an edition from memory, however low, does not make it good."""
    rows = [r for r in _rows_of_hose(spec.hose, tables) if _holds_for(r, _asked(spec, tables))]
    sure = [r for r in rows if r.confidence not in row.UNVERIFIED]
    low = min(sure, key=lambda r: r.max_working_bar, default=None)
    return hose if low is None else _rating("hose", low, low.note)


def _beyond_limits(spec: AssemblySpec, tables: Tables, printed: PartRating) -> PartRating | None:
    """A shop's own rating for the very fluid and heat that the standard does not allow; never above its own."""
    if spec.max_temperature_c is None:
        return None
    fluid = spec.fluid or Fluid.MINERAL_OIL
    found = [
        r
        for r in _rows_of_hose(spec.hose, tables)
        if r.fluid == fluid
        and r.max_temperature_c is not None
        and spec.max_temperature_c <= r.max_temperature_c
    ]
    if not found:
        return None
    low = min(found, key=lambda r: r.max_working_bar)
    rated = _rating("hose", low, low.note)
    if printed.value_bar is not None and printed.value_bar < low.max_working_bar:
        return rated.model_copy(update={"value_bar": printed.value_bar, "printed": printed.printed})
    return rated


def _end_with_given(
    name: str, end: End, spec: AssemblySpec, tables: Tables
) -> tuple[PartRating, list[Warning_]]:
    """An end's rating with the one that was given for it, which beyond a source's condition must name the heat."""
    asked = _asked(spec, tables)
    rated = end_rating(name, end, tables, asked.hottest_c, asked.fluid)
    named = end.rating is not None and end.rating.max_temperature_c is not None
    lifted = named or not _conditional(rated)
    return given.with_given(rated, end.rating, spec, tables, lifted=lifted)


def _conditional(rated: PartRating) -> bool:
    """Whether the end has a rating that does not hold at the heat that is asked of it."""
    return rated.why is not None and rated.why.id == "trade-why-end-condition"


def _beyond(unfit: Message | None, spec: AssemblySpec, tables: Tables) -> bool:
    """Whether the spec asks more of the hose than the tables allow, or of a hose not in them a fluid
    that needs a source."""
    if unfit is not None:
        return True
    unknown = tables.standard_of(spec.hose.standard) is None
    if not unknown or spec.fluid is None or not temperature.needs_source(spec.fluid, tables):
        return False
    return not temperature.approved(spec, tables)


def _not_lifted(override: PressureOverride) -> Warning_:
    message = Message(
        "trade-pressure-not-lifted", entered=pressure(override.value_bar), source=override.source
    )
    return Warning_(code="pressure_not_lifted", field="working_pressure", message=message, severity="danger")


def hose_rating(hose: Hose, tables: Tables, asked: Asked | None = None) -> tuple[PartRating, list[Warning_]]:
    """The hose's own rating: the least printed for its standard, edition and dash.

    Without an edition, the least over all editions. A row that names a fluid or a temperature holds for
    what is ``asked`` alone. A hose whose own part number is rated is rated by that alone: above every published
    one, that is said (``given.above_published``).
    """
    asked = asked or Asked()
    rated, warnings = tables.once(("hose rating", hose, asked), lambda: _hose_rating(hose, tables, asked))
    return rated, [*warnings]


def _hose_rating(hose: Hose, tables: Tables, asked: Asked) -> tuple[PartRating, list[Warning_]]:
    standard = tables.standard_of(hose.standard)
    rows = _rows_of_hose(hose, tables)
    found = [r for r in rows if _holds_for(r, asked)]
    if (limit := _too_hot_for_its_part(rows, found, asked)) is not None:
        why = Message("trade-why-part-condition", part=hose.part or "", limit=celsius(limit))
        return _not_known("hose", why), []
    found = [r for r in found if r.part] or found
    if standard is None:
        if found:
            low = _least_printed(_trusted(found), tables)
            return _rating("hose", low, low.note), []
        return _not_known("hose", Message("trade-why-standard", standard=hose.standard)), []
    if not found:
        why = Message("trade-why-hose", standard=standard.standard, dash=hose.dash)
        return _not_known("hose", why), []
    found = _trusted(found)
    low = _least_printed(found, tables, psi=standard.bands == "sae")
    warnings = _edition_warning(hose, standard, found, low) if hose.edition is None else []
    if low.in_standard == "no":
        outside = Message("trade-outside-standard", dash=hose.dash, standard=standard.standard)
        warnings.append(Warning_(code="outside_standard", field="hose.dash", message=outside))
    return _rating("hose", low, low.note), warnings


def _rows_of_hose(hose: Hose, tables: Tables) -> list[row.HosePressureRow]:
    """The rows of the hose's standard, edition and dash; those of all editions where none is named."""
    standard = tables.standard_of(hose.standard)
    edition = tables.edition_of(hose, standard.standard) if standard else None
    named = compact_name(hose.edition or "") if standard is None else ""
    return [
        r
        for r in tables.pressures_of(hose)
        if r.dash in (str(hose.dash), "all")
        and (r.part or edition is None or r.edition == edition.figures)
        and (r.part or not named or compact_name(r.edition) == named)
    ]


def _holds_for(item: row.HosePressureRow, asked: Asked) -> bool:
    if item.fluid and item.fluid != asked.fluid:
        return False
    most = item.max_temperature_c
    return most is None or (asked.hottest_c is not None and asked.hottest_c <= most)


def _too_hot_for_its_part(
    rows: list[row.HosePressureRow], held: list[row.HosePressureRow], asked: Asked
) -> float | None:
    """The highest temperature in °C that the hose's own part number is rated for with that fluid, where none
    of its own ratings holds; else None. A rating of its standard does not stand in for it."""
    if any(r.part for r in held):
        return None
    own = [r.max_temperature_c for r in rows if r.part and r.fluid in ("", asked.fluid)]
    return max((limit for limit in own if limit is not None), default=None)


def _trusted(found: list[Rated]) -> list[Rated]:
    """What rates a part: unverified figures give way to a shop's own of the same edition or series."""
    own = {_variant(r) for r in found if r.confidence == "shop"}
    return [r for r in found if r.confidence not in row.UNVERIFIED or _variant(r) not in own]


def _variant(item: row.HosePressureRow | row.PressureRow) -> str:
    return item.edition if isinstance(item, row.HosePressureRow) else item.series


def end_rating(
    name: str,
    end: End,
    tables: Tables,
    hottest_c: float | None = None,
    fluid: Fluid = Fluid.MINERAL_OIL,
) -> PartRating:
    """The rating of one end by family, size, form, shape and material.

    A row that holds only up to a temperature rates nothing above it, nor where ``hottest_c`` is not known;
    one that holds for a fluid rates nothing with another.
    """
    fitting = [r for r in _rows_of(end, tables) if _fits(r, end)]
    own = [r for r in fitting if r.use == "rating" and r.material == end.material and r.fluid in ("", fluid)]
    rated = _trusted([r for r in own if _holds_at(r, hottest_c)])
    if own and not rated:
        limit = max(r.max_temperature_c for r in own if r.max_temperature_c is not None)
        return _not_known(
            name,
            Message(
                "trade-why-end-condition",
                end=phrases.end_family(end),
                material=phrases.material(end.material),
                limit=celsius(limit),
            ),
        )
    if not rated or not _whatever_series(rated, end, tables):
        return _not_known(name, _no_rating(end, fitting))
    low = _below_ceilings(_least_printed(rated, tables), fitting)
    notes = [low.applies_to, low.note] + [
        f"{r.source}: {r.printed}, {r.note}" for r in fitting if r.use == "note"
    ]
    return _rating(name, low, "; ".join(filter(None, notes)))


def _below_ceilings(low: row.PressureRow, fitting: list[row.PressureRow]) -> row.PressureRow:
    """An unverified figure is no higher than what a published source allows the family at most."""
    if low.confidence not in row.UNVERIFIED:
        return low
    ceilings = [r for r in fitting if r.use == "ceiling" and r.material == low.material]
    top = min(ceilings, key=lambda r: r.max_working_bar, default=low)
    if top.max_working_bar >= low.max_working_bar:
        return low
    return replace(low, max_working_bar=top.max_working_bar, printed=top.printed)


def _holds_at(item: row.PressureRow, hottest_c: float | None) -> bool:
    return item.max_temperature_c is None or (hottest_c is not None and hottest_c <= item.max_temperature_c)


def _rows_of(end: End, tables: Tables) -> Iterable[row.PressureRow]:
    """The rows of the end's family and of one that no gauge tells from it (NPT and NPTF)."""
    other = tables.families[end.connection].same_thread
    for family in (end.connection, *([other] if other else [])):
        for size in (end.size_key, "all"):
            yield from tables.end_pressures.get((family, size), ())


def _same_thread(name: str, end: End, tables: Tables) -> list[Warning_]:
    """Said where no gauge tells the end's thread from another family's."""
    other = tables.families[end.connection].same_thread
    if other is None:
        return []
    families = (phrases.connection(end.connection), phrases.connection(other))
    message = Message("trade-same-thread", part=phrases.part(name), families=families)
    return [Warning_(code="same_thread", field=name, message=message, severity="note")]


def _whatever_series(rated: list[row.PressureRow], end: End, tables: Tables) -> bool:
    """Whether the rows rate the end's series or, where it is not given, each that it may be."""
    given = {r.series for r in rated}
    return end.series is not None or "" in given or given >= tables.series_of(end.connection, end.size_key)


def _no_rating(end: End, fitting: list[row.PressureRow]) -> Message:
    """Why no row rates this end: what the family's rows say of other metals and at most."""
    values = {"end": phrases.end_family(end), "material": phrases.material(end.material)}
    steel = end.material is not Material.CARBON_STEEL and any(r.use == "rating" for r in fitting)
    top = min((r for r in fitting if r.use == "ceiling"), key=lambda r: r.max_working_bar, default=None)
    if top is None:
        return Message("trade-why-end-steel" if steel else "trade-why-end", **values)
    return Message(
        "trade-why-end-steel-ceiling" if steel else "trade-why-end-ceiling",
        **values,
        ceiling=pressure(top.max_working_bar),
        source=top.source,
    )


def _least_printed(found: Sequence[Rated], tables: Tables, *, psi: bool = True) -> Rated:
    """The row with the least figure.

    Figures within 0.3 % are one figure printed in two units (2500 psi, 172 bar): of those the published
    one is shown, of the better grade of source, then in the unit of its standard.
    """
    least = min(r.max_working_bar for r in found)
    same = [r for r in found if r.max_working_bar <= least * 1.003]

    def rank(item: Rated) -> tuple[bool, int, bool, float]:
        unverified = item.confidence in row.UNVERIFIED
        return unverified, _grade_of(item, tables), not _in_unit(item.printed, psi), item.max_working_bar

    return min(same, key=rank)


def _grade_of(item: row.HosePressureRow | row.PressureRow, tables: Tables) -> int:
    """The grade of a row's source, the best 0; of a source that the tables do not know, after all others."""
    known = tables.sources.get(item.source)
    return row.GRADES.index(known.grade) if known else len(row.GRADES)


def _in_unit(printed: str, psi: bool) -> bool:
    """Whether a figure is printed in bar, or in the round psi that standards print."""
    figure, _, unit = printed.partition(" ")
    return unit == "psi" and figure.isdecimal() and int(figure) % 25 == 0 if psi else unit == "bar"


def _fits(item: row.PressureRow, end: End) -> bool:
    shape = "elbow" if end.is_elbow else "straight"
    return (
        (not item.forms or end.form in item.forms)
        and (not item.shapes or shape in item.shapes)
        and (not item.series or end.series is None or item.series == end.series)
    )


def _together(parts: list[PartRating], unfit: Message | None) -> tuple[WorkingPressure, list[Warning_]]:
    known = [p for p in parts if p.value_bar is not None]
    unknown = [p for p in parts if p.value_bar is None]
    given = next((p for p in parts if p.part == "override"), None)
    if unfit is not None and given is None:  # no "at most": it could be read as a pressure that applies
        return _nothing_shown(parts, Message("trade-pressure-unfit", why=unfit), None)
    if unknown and given is None:
        low = _lowest_known(parts)
        return _nothing_shown(parts, _unknown_because(unknown, low), low)
    low = _lowest(known)
    answer = WorkingPressure(
        value_bar=low.value_bar,
        limited_by=low.part,
        source=low.source,
        printed=low.printed,
        parts=tuple(parts),
        margin_bar=_margin(low, known),
    )
    return answer, [] if given is None else [_override_warning(given, low, unknown)]


def _margin(low: PartRating, known: list[PartRating]) -> float | None:
    others = [p.value_bar for p in known if p is not low and p.value_bar is not None]
    return None if low.value_bar is None or not others else round(min(others) - low.value_bar, 1)


def _nothing_shown(
    parts: list[PartRating], why: Message, low: PartRating | None
) -> tuple[WorkingPressure, list[Warning_]]:
    """No working pressure, why, and the least of the parts that are known."""
    answer = WorkingPressure(
        value_bar=None,
        limited_by=None,
        source="",
        why=why,
        parts=tuple(parts),
        at_most_bar=low.value_bar if low else None,
    )
    return answer, [
        Warning_(code="pressure_not_known", field="working_pressure", message=why, severity="danger")
    ]


def _unknown_because(unknown: list[PartRating], low: PartRating | None) -> Message:
    parts = _named(unknown)
    if low is None or low.value_bar is None:
        return Message("trade-pressure-not-known", parts=parts)
    limit = pressure(low.value_bar)
    return Message("trade-pressure-at-most", parts=parts, pressure=limit, part=phrases.part(low.part))


def _override_warning(given: PartRating, low: PartRating, unknown: list[PartRating]) -> Warning_:
    """What a pressure given means beside the tables: used, used for parts not known, or too high."""
    assert given.value_bar is not None
    assert low.value_bar is not None
    stands_for = {"parts": _named(unknown)} if unknown else {}
    if low is given:
        severity: Literal["care", "note"] = "care" if unknown else "note"
        which = "trade-pressure-entered-for" if unknown else "trade-pressure-entered"
        message = Message(which, source=given.source, **stands_for)
        return Warning_(code="pressure_given", field="working_pressure", message=message, severity=severity)
    message = Message(
        "trade-pressure-too-high-for" if unknown else "trade-pressure-too-high",
        entered=pressure(given.value_bar),
        source=given.source,
        part=phrases.part(low.part),
        pressure=pressure(low.value_bar),
        **stands_for,
    )
    return _too_high(message)


def _beyond_limits_warning(given_bar: float, limit_bar: float, source: str) -> Warning_:
    message = Message(
        "trade-pressure-beyond-hose",
        entered=pressure(given_bar),
        pressure=pressure(limit_bar),
        source=source,
    )
    return _too_high(message)


def _too_high(message: Message) -> Warning_:
    return Warning_(
        code="pressure_given_too_high", field="working_pressure", message=message, severity="danger"
    )


def _part_warnings(parts: Iterable[PartRating]) -> list[Warning_]:
    found = []
    for part in parts:
        named = phrases.part(part.part)
        if part.value_bar is None and part.why is not None:
            said = Message("trade-rating-not-known", part=named, why=part.why)
            found.append(Warning_(code="rating_not_known", field=part.part, message=said))
        elif part.value_bar is not None and part.confidence in ("shop", "given"):
            said = Message(
                f"trade-rating-by-{part.confidence}",
                part=named,
                pressure=pressure(part.value_bar),
                source=part.source,
            )
            found.append(Warning_(code="rating_by_shop", field=part.part, message=said, severity="note"))
        elif part.value_bar is not None and part.standing == "unverified":
            said = Message(
                "trade-rating-unverified",
                part=named,
                pressure=pressure(part.value_bar),
                source=part.source,
            )
            code = "rating_by_judgement" if part.confidence == "judgement" else "rating_from_memory"
            found.append(Warning_(code=code, field=part.part, message=said))
    return found


def _edition_warning(
    hose: Hose, standard: row.HoseStandard, found: list[row.HosePressureRow], low: row.HosePressureRow
) -> list[Warning_]:
    best: dict[str, float] = {}
    for r in found:
        best[r.edition] = min(r.max_working_bar, best.get(r.edition, r.max_working_bar))
    if len(best) < 2:
        return []
    message = Message(
        "trade-edition-not-entered",
        standard=standard.standard,
        dash=hose.dash,
        ratings=tuple(
            Message("trade-edition-rating", edition=name, pressure=pressure(bar))
            for name, bar in sorted(best.items())
        ),
        pressure=pressure(low.max_working_bar),
    )
    return [Warning_(code="edition_not_given", field="hose.edition", message=message)]


def _lowest(parts: Iterable[PartRating]) -> PartRating:
    """The least; between equals the hose or the earlier end, and a table's before one given."""
    return min(parts, key=lambda p: p.value_bar if p.value_bar is not None else float("inf"))


def _lowest_known(parts: Iterable[PartRating]) -> PartRating | None:
    known = [p for p in parts if p.value_bar is not None]
    return _lowest(known) if known else None


def _rating(name: str, low: row.HosePressureRow | row.PressureRow, note: str) -> PartRating:
    kind = low.confidence if low.confidence in ("published", "shop", *row.UNVERIFIED) else "none"
    return PartRating(
        part=name,
        value_bar=low.max_working_bar,
        source=low.source,
        printed=low.printed,
        confidence=kind,  # type: ignore[arg-type]
        note=note,
    )


def _not_known(name: str, why: Message) -> PartRating:
    return PartRating(part=name, value_bar=None, source="", confidence="none", why=why)


def _named(parts: Iterable[PartRating]) -> tuple[Message, ...]:
    return tuple(phrases.part(p.part) for p in parts)
