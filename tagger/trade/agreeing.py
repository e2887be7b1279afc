"""Several sources of one torque, or of one count of flats or turns: what they share, and whether they contradict each other."""

from __future__ import annotations

from collections.abc import Iterable

from tagger import phrases
from tagger.messages import Message, as_is
from tagger.messages import torque as newton_metres
from tagger.spec import STATED, Connection, End, Material
from tagger.trade import rows as row
from tagger.trade.results import Turns, Warning_
from tagger.trade.tables import Tables

Range = tuple[float, float]

CONFIDENCE_ORDER = {"shop": 0, "published": 1, "practice": 2, "judgement": 3, "memory": 4}


def standing(item: row.TighteningRow) -> tuple[object, ...]:
    """How much a row's torque counts, best first: a shop's own, a figure for the size before a general
    rule, a range before a mere ceiling, a table of the family before a machine's manual."""
    return (
        CONFIDENCE_ORDER[item.confidence],
        item.size == "all",
        item.torque_min_nm is None,
        item.scope != "family",
    )


def peers(best: row.TighteningRow, rows: Iterable[row.TighteningRow]) -> list[row.TighteningRow]:
    """The rows that count as much as the best one, for the same screw."""
    return [r for r in rows if _torqued(r) and _screw(r) == _screw(best) and standing(r) == standing(best)]


def shared(best: row.TighteningRow, equals: list[row.TighteningRow]) -> Range | None:
    """The range in N·m that the sources have in common; None where they have none, or there is only one.

    A nut and a stud are two joints, a dry and an oiled thread two conditions: they share nothing.
    A flange's torque stays as printed, because the range tells which screw it is for.
    """
    if len(equals) < 2 or best.screw or best.torque_min_nm is None:
        return None
    oiled = {r.lubrication for r in equals if r.lubrication not in ("", "not_stated")}
    if len({r.part for r in equals}) > 1 or len(oiled) > 1:
        return None
    low = max(r.torque_min_nm or 0.0 for r in equals)
    high = min(r.torque_max_nm or 0.0 for r in equals)
    return (low, high) if low <= high else None


def turns(best: row.TighteningRow, rows: Iterable[row.TighteningRow]) -> Range:
    """The turns that the rows which count as much as the best one have in common; the best one's where none."""
    equals = [r for r in rows if r.turns_max is not None and _count_alike(r, best)]
    low = max(r.turns_min or 0.0 for r in equals)
    high = min(r.turns_max or 0.0 for r in equals)
    return (low, high) if low <= high else (best.turns_min or 0.0, best.turns_max or 0.0)


def flats(best: row.TighteningRow, rows: Iterable[row.TighteningRow]) -> Range:
    """The flats that the rows which count as much as the best one have in common; the best one's where none."""
    low, high = _flats_in_common(_flats_alike(best, rows))
    return (low, high) if low <= high else (best.flats_min or 0.0, best.flats_max or 0.0)


def flats_warnings(name: str, best: row.TighteningRow, rows: Iterable[row.TighteningRow]) -> list[Warning_]:
    """That sources of equal standing share no flats: each is named, and the builder asks which holds."""
    equals = _flats_alike(best, rows)
    low, high = _flats_in_common(equals)
    if low <= high:
        return []
    named = tuple(_flats_of_source(r) for r in (best, *(r for r in equals if r is not best)))
    message = Message("trade-flats-sources-disagree", part=phrases.part(name), flats=named)
    return [Warning_(code="flats_sources_disagree", field=name, message=message, severity="note")]


def _flats_in_common(equals: list[row.TighteningRow]) -> Range:
    """From the greatest minimum to the least maximum: the wrong way round where they share none."""
    return max(r.flats_min or 0.0 for r in equals), min(r.flats_max or 0.0 for r in equals)


def _flats_alike(best: row.TighteningRow, rows: Iterable[row.TighteningRow]) -> list[row.TighteningRow]:
    """The rows of the same part that count from the same start and as much as the best one, itself among them."""
    return [r for r in rows if r.flats_max is not None and r.part == best.part and _count_alike(r, best)]


def _flats_of_source(item: row.TighteningRow) -> Message:
    counted = phrases.flats(item.flats_min or 0.0, item.flats_max or 0.0)
    return Message("trade-flats-of-source", flats=counted, source=item.source)


def _count_alike(item: row.TighteningRow, best: row.TighteningRow) -> bool:
    return item.basis == best.basis and standing(item)[:2] == standing(best)[:2] and item.scope == best.scope


def other_turns(end: End, told: Turns, tables: Tables) -> tuple[tuple[Message, Message], ...]:
    """Turns, and turns with their source, of every source for this taper thread where one contradicts those told.

    Empty where every source shares some turns with those told; else those told stand among them.
    """
    rows = turns_of(end.connection, end.size_key, end.material, tables)
    if all(_meets(low, high, told) for low, high, _ in rows):
        return ()
    found = []
    for low, high, source in rows:
        turned = phrases.turns(low, high)
        named = Message("fit-turns_of_source", turns=turned, source=as_is(tables.where_from(source)))
        found.append((turned, named))
    return tuple(found)


def turns_of(
    connection: Connection, size: str, material: Material, tables: Tables
) -> list[tuple[float, float, str]]:
    """Turns past finger-tight with their source, of taper threads on hoses; a source's figure once."""
    found = [
        (r.turns_min or 0.0, r.turns_max, r.source)
        for r in tables.tightening.get(connection, ())
        if "taper" in r.part
        and r.turns_max is not None
        and r.use == "hose"
        and r.basis in STATED
        and r.size in (size, "all")
        and r.material == material
    ]
    return list(dict.fromkeys(found))


def _meets(low: float, high: float, told: Turns) -> bool:
    """Whether two ranges share anything; a tag carries sixths."""
    return low <= told.max + 0.01 and told.min <= high + 0.01


def others(chosen: list[row.TighteningRow], rows: Iterable[row.TighteningRow]) -> Range | None:
    """From the least to the most that the sources beside the chosen ones give for the same screw, in N·m."""
    rest = [r for r in rows if _torqued(r) and r not in chosen and _screw(r) == _screw(chosen[0])]
    highs = [r.torque_max_nm for r in rest if r.torque_max_nm is not None]
    lows = [r.torque_max_nm if r.torque_min_nm is None else r.torque_min_nm for r in rest]
    return (min(low for low in lows if low is not None), max(highs)) if rest else None


def warnings(name: str, best: row.TighteningRow, equals: list[row.TighteningRow]) -> list[Warning_]:
    """That sources of equal standing share no torque: each is named, and the builder asks which holds."""
    if _meet(best, equals):
        return []
    named = tuple(of_source(r) for r in (best, *(r for r in equals if r is not best)))
    message = Message("trade-torque-sources-disagree", part=phrases.part(name), torques=named)
    return [Warning_(code="torque_sources_disagree", field=name, message=message)]


def of_source(item: row.TighteningRow) -> Message:
    """A torque with its joint and its source."""
    torque = newton_metres(item.torque_min_nm, item.torque_max_nm or 0.0)
    return Message("trade-torque-of-source", torque=torque, joint=item.end_type, source=item.source)


def _meet(best: row.TighteningRow, equals: list[row.TighteningRow]) -> bool:
    """Whether every other range meets the one shown: then what is shown contradicts none of them."""
    low, high = best.torque_min_nm or 0.0, best.torque_max_nm or 0.0
    return all((r.torque_min_nm or 0.0) <= high and low <= (r.torque_max_nm or 0.0) for r in equals)


def _screw(item: row.TighteningRow) -> tuple[str, str]:
    """A screw is its thread and its property class."""
    return item.screw, item.screw_class


def _torqued(item: row.TighteningRow) -> bool:
    return item.torque_max_nm is not None
