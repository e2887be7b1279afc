"""Torque, flats and turns for an end, each with basis and source, and the fit guide's steps.

How a figure is chosen where sources disagree (README.md, "Tightening"): a machine's manual
speaks for that machine, so a table of the family comes first; among equals the one with the
lowest upper figure is shown, because an over-tightened seat cracks. All others are named in
``spread``.
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache
from typing import Literal

from tagger import phrases
from tagger.messages import Figure, Message, Unit, Value, as_is, count
from tagger.messages import torque as newton_metres
from tagger.spec import STATED, Basis, End, Form, Material
from tagger.trade import agreeing, bolting, joints
from tagger.trade import rows as row
from tagger.trade.results import EndAdvice, Flats, Torque, Turns, Warning_
from tagger.trade.steps import steps_for
from tagger.trade.tables import Tables

__all__ = ["advice", "steps_for"]

Kind = Literal["torque", "flats", "turns"]

LUBRICATIONS = frozenset(
    (
        "not_stated",
        "lightly_oiled",
        "lubricated",
        "run_on_dry",
        "threads",
        "threads_fluid_or_grease",
        "threads_engine_oil",
        "sealant_two_threads_bare",
        "sealed",
        "lubricated_or_sealed",
        "o_ring_oiled",
        "o_ring_system_oil",
        "o_ring_hydraulic_fluid",
        "o_ring_and_threads",
        "dry",
    )
)
"""The words of the ``lubrication`` column; a shop may write its own text instead."""

_BASIS_ORDER = {"wrench_resistance": 0, "finger_tight": 1, "not_stated": 2, "torque": 3}


def advice(name: str, end: End, tables: Tables) -> tuple[EndAdvice, list[Warning_]]:
    """How to tighten one end, and what the reader must know of it.

    A figure that no source gives is None. Torque is N·m, flats are sixths of a turn. Ends that differ in nothing
    but what no tightening depends on are looked up once.
    """
    alike = bare(end)
    found, warnings = tables.once(("advice", name, alike), lambda: _advice(name, alike, tables))
    return found, [*warnings]


def bare(end: End) -> End:
    """The end without what no tightening depends on."""
    return end.model_copy(update={"drop_mm": None, "fitting": None, "lot": None, "rating": None})


def _advice(name: str, end: End, tables: Tables) -> tuple[EndAdvice, list[Warning_]]:
    sizes, turned = (end.size_key, "all"), _turned(end, tables)
    every = [r for r in tables.tightening.get(end.connection, ()) if r.size in sizes]
    mine = [r for r in every if r.use == "hose" and not turned.isdisjoint(r.part)]
    factor, rows_for_metal = _for_material(mine, end.material, tables)
    taper = end.connection.is_taper
    of_series = bolting.of_class(_of_series(rows_for_metal, end, tables), end, tables)
    torque_row = None if taper else _pick(of_series, "torque")
    flats_row = None if taper or factor < 1 else _pick(of_series, "flats")
    if torque_row is not None and tables.families[end.connection].method == "torque":
        flats_row = None  # one method for a joint: a face seal is tightened by torque
    turns_row = _pick(rows_for_metal, "turns") if taper else None
    found = EndAdvice(
        torque=_torque(torque_row, of_series, factor, end.material, tables) if torque_row else None,
        flats=_flats(flats_row, of_series) if flats_row else None,
        turns=_turns(turns_row, rows_for_metal) if turns_row else None,
        spread=tuple(_said(r) for r in every if r not in (torque_row, flats_row, turns_row)),
    )
    warnings = _warnings(name, end, found, torque_row, factor, tables)
    if (found.torque, found.flats, found.turns) == (None, None, None) and not end.connection.is_latched:
        warnings.insert(0, _not_known(name, end, every))
    if torque_row:
        warnings += agreeing.warnings(name, torque_row, agreeing.peers(torque_row, of_series))
        warnings += bolting.warnings(name, torque_row, of_series, end, tables)
    if flats_row:
        warnings += agreeing.flats_warnings(name, flats_row, of_series)
    return found, warnings + _two_bases(name, flats_row, of_series)


def _of_series(mine: list[row.TighteningRow], end: End, tables: Tables) -> list[row.TighteningRow]:
    """The rows that may be shown: where a thread is made for two duties, those for the end's own.

    A light torque, or a light count of flats, loosens a heavy stud, so neither a series unknown nor a
    source that names none will do; a shop's row without one is the shop's word for both.
    """
    if not tables.families[end.connection].series:
        return mine
    return [r for r in mine if r.series == end.series or (r.confidence == "shop" and not r.series)]


def _turned(end: End, tables: Tables) -> set[str]:
    """The part that is turned: an adjustable stud has a locknut, and elbows are adjustable.

    A family made with a nut and with a stud (BSPP) has the one that the form says: a stud's torque is up
    to 2.3 times that of a nut on a cone, so neither stands for the other.
    """
    if end.connection.is_taper:
        return {"taper"}
    by: set[str] = set(tables.families[end.connection].tighten_by)
    if by == {"screws"}:
        return {"cap_screw"}
    if end.form.swivels:
        return {"nut"}
    if "stud" not in by:
        return by
    return {"locknut"} if end.is_elbow and end.form is Form.MALE else {"stud", "washer_stud"}


def _for_material(
    mine: list[row.TighteningRow], material: Material, tables: Tables
) -> tuple[float, list[row.TighteningRow]]:
    """The rows for that metal; else, for soft metals, those for steel with the factor.

    A steel figure is not shown for stainless: a tag could not carry the doubt with it.
    """
    if any("cap_screw" in r.part for r in mine) and material is not Material.CARBON_STEEL:
        return 1.0, []  # the screws stay steel, and what clamp load a softer head takes no source says
    own = [r for r in mine if r.material == material]
    steel = [r for r in mine if r.material == Material.CARBON_STEEL]
    if own or material in (Material.CARBON_STEEL, Material.STAINLESS_STEEL):
        return 1.0, own
    return tables.rule("soft_metal_percent").value / 100, steel


def _pick(rows: Iterable[row.TighteningRow], figure: Kind) -> row.TighteningRow | None:
    """The row to show: the first by ``_rank``."""
    return min((r for r in rows if _has(r, figure)), key=lambda r: _rank(r, figure), default=None)


def _has(item: row.TighteningRow, figure: Kind) -> bool:
    """Whether a row gives the figure in a way that can be worked to."""
    if figure == "torque":
        return item.torque_max_nm is not None
    if figure == "flats":
        return item.basis in STATED and item.flats_min is not None and item.flats_max is not None
    return item.basis in STATED and item.turns_min is not None and item.turns_max is not None


def _rank(item: row.TighteningRow, figure: Kind) -> tuple[object, ...]:
    """A shop's own first, memory last; a figure for the size before a general rule; a range
    before a mere ceiling; a table of the family before a machine's manual; then the lowest
    upper figure, and of equal flats those from wrench resistance (``_two_bases``)."""
    upper = {"torque": item.torque_max_nm, "flats": item.flats_max, "turns": item.turns_max}[figure]
    confidence, general, ceiling, machine = agreeing.standing(item)
    return (
        confidence,
        general,
        figure == "torque" and ceiling,
        machine,
        upper,
        _BASIS_ORDER.get(item.basis, 9),
        item.flats_max is None,
    )


def _torque(
    item: row.TighteningRow,
    rows: list[row.TighteningRow],
    factor: float,
    material: Material,
    tables: Tables,
) -> Torque:
    """The row's torque; where other rows count as much and share a range with it, that range."""
    assert item.torque_max_nm is not None
    equals = agreeing.peers(item, rows)
    agreed = agreeing.shared(item, equals)
    least, most = agreed or (item.torque_min_nm, item.torque_max_nm)
    basis = _torque_basis(item, factor, material, tables)
    if agreed:
        basis = Message("trade-torque-basis-shared", basis=basis, count=len(equals))
    beside = agreeing.others(equals if agreed else [item], rows)
    if beside:
        low, high = (round(figure * factor, 1) for figure in beside)
        basis = Message("trade-torque-basis-others", basis=basis, others=newton_metres(low, high))
    return Torque(
        min=None if least is None else round(least * factor, 1),
        max=round(most * factor, 1),
        basis=basis,
        source=item.source,
        part="cap_screw" if "cap_screw" in item.part else "nut",
    )


def _torque_basis(item: row.TighteningRow, factor: float, material: Material, tables: Tables) -> Message:
    """The joint as the source names it, how it is lubricated, and what else the torque depends on."""
    values: dict[str, Value] = {"joint": item.end_type, "lubrication": lubrication(item.lubrication)}
    if item.screw:
        grade = bolting.class_of(item)
        return Message("trade-torque-basis-screw", **values, screw=item.screw, grade=grade)
    if factor == 1:
        return Message("trade-torque-basis", **values)
    rule = tables.rule("soft_metal_percent")
    return Message(
        "trade-torque-basis-reduced",
        **values,
        percent=rule.value,
        material=phrases.material(material),
        source=rule.source,
    )


def lubrication(cell: str) -> Message:
    """How a joint is lubricated: a word of the tables' own, or a shop's text as it is."""
    word = cell or "not_stated"
    return Message(f"trade-lubrication-{word}") if word in LUBRICATIONS else as_is(cell)


def _flats(item: row.TighteningRow, rows: list[row.TighteningRow]) -> Flats:
    """The row's flats, or what the rows that count as much share with it."""
    low, high = agreeing.flats(item, rows)
    return Flats(min=low, max=high, basis=Basis(item.basis), source=item.source)


def _two_bases(name: str, shown: row.TighteningRow | None, rows: list[row.TighteningRow]) -> list[Warning_]:
    """That another source counts the very same flats from another start: one of the two is wrong.

    Never converted. Wrench resistance is shown: it has a figure (about 30 lbf·in), finger-tight leaves
    play of unknown size, and a joint that turns less may leak.
    """
    if shown is None:
        return []
    same = [
        r
        for r in rows
        if r.basis in STATED
        and r.basis != shown.basis
        and (r.flats_min, r.flats_max) == (shown.flats_min, shown.flats_max)
    ]
    if not same:
        return []
    message = Message(
        "trade-flats-two-bases",
        part=phrases.part(name),
        basis=phrases.basis(shown.basis),
        other=phrases.basis(same[0].basis),
        source=shown.source,
        contrary=same[0].source,
    )
    return [Warning_(code="flats_two_bases", field=name, message=message, severity="note")]


def _turns(item: row.TighteningRow, rows: list[row.TighteningRow]) -> Turns:
    """The row's turns, or what the rows that count as much share with it."""
    low, high = agreeing.turns(item, rows)
    return Turns(min=low, max=high, basis=Basis(item.basis), source=item.source)


@lru_cache(maxsize=4096)
def _said(item: row.TighteningRow) -> Message:
    """One source in a line: its figures, what it speaks of, and its name."""
    values: dict[str, Value] = {
        "values": tuple(_figures(item)),
        "joint": item.end_type,
        "screw": f"{item.screw} {item.screw_class}".strip() or "none",
        "sizes": "all" if item.size == "all" else "one",
        "source": item.source,
    }
    if item.material == Material.CARBON_STEEL:
        return Message("trade-spread", **values)
    into_aluminium = item.material == "aluminium_port"
    material = Message("trade-aluminium-port") if into_aluminium else phrases.material(item.material)
    return Message("trade-spread-material", **values, material=material)


def _figures(item: row.TighteningRow) -> Iterable[Value]:
    if item.torque_max_nm is not None:
        yield newton_metres(item.torque_min_nm, item.torque_max_nm)
    if item.flats_max is not None:
        yield _counted("flats", item.flats_min, item.flats_max, item.basis)
    if item.turns_max is not None:
        yield _counted("turns", item.turns_min, item.turns_max, item.basis)


def _counted(what: Literal["flats", "turns"], low: float | None, high: float, basis: str) -> Message:
    """ "1 to 1 1/2 flats from finger-tight"; a count beside a torque has no basis of its own."""
    figure = Figure(high, Unit.COUNT, at_most=True) if low is None else count(low, high)
    said = Message(f"words-{what}", count=figure, many="one" if high <= 1 else "other")
    if basis == Basis.TORQUE:
        return said
    return Message("words-counted", count=said, basis=phrases.basis(basis))


def _not_known(name: str, end: End, every: list[row.TighteningRow]) -> Warning_:
    """That no figure can be shown, and why: what it depends on, where a source gives several."""
    part = phrases.part(name)
    by_ring = [r for r in every if r.use == "ring" and r.material == end.material and r.torque_max_nm]
    message = Message("trade-tightening-not-known", part=part)
    if by_ring:
        torques = tuple(agreeing.of_source(r) for r in by_ring)
        message = Message("trade-torque-by-ring", part=part, torques=torques)
    elif end.connection.is_flange and end.material is not Material.CARBON_STEEL:
        material = phrases.material(end.material)
        message = Message("trade-tightening-soft-flange", part=part, material=material)
    return Warning_(code="tightening_not_known", field=name, message=message)


def _warnings(
    name: str,
    end: End,
    found: EndAdvice,
    torque_row: row.TighteningRow | None,
    factor: float,
    tables: Tables,
) -> list[Warning_]:
    part, material = phrases.part(name), phrases.material(end.material)
    warnings = []
    if found.torque is None and end.series is None and tables.families[end.connection].series:
        message = Message("trade-torque-series", part=part)
        warnings.append(Warning_(code="series_not_given", field=f"{name}.series", message=message))
    if found.torque is not None and torque_row is not None and torque_row.confidence == "memory":
        source = torque_row.source
        message = Message("trade-torque-unverified", part=part, source=source)
        warnings.append(Warning_(code="torque_from_memory", field=name, message=message))
    if found.torque is not None and joints.is_stud_of_two(end, tables):
        message = Message("trade-stud-not-nut", part=part)
        warnings.append(Warning_(code="stud_not_nut", field=name, message=message, severity="note"))
    if factor < 1 and found.torque is not None:
        message = Message("trade-soft-material", part=part, material=material)
        warnings.append(Warning_(code="soft_material", field=name, message=message))
    return warnings
