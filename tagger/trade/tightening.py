"""Torque, flats and turns for an end, each with basis and source, and the fit guide's steps.

How a figure is chosen where sources disagree (README.md, "Tightening"): a machine's manual
speaks for that machine, so a table of the family comes first; among equals the one with the
lowest upper figure is shown, because an over-tightened seat cracks. All others are named in
``spread``.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Literal

from tagger.messages import as_is
from tagger.spec import BASIS_WORDS, STATED, Basis, End, Form, Material
from tagger.trade import rows as row
from tagger.trade.results import NOT_KNOWN, EndAdvice, Flats, Torque, Turns, Warning_
from tagger.trade.steps import count_text, range_text, steps_for
from tagger.trade.tables import Tables
from tagger.units import mixed_text

__all__ = ["advice", "steps_for"]

Figure = Literal["torque", "flats", "turns"]

_CONFIDENCE_ORDER = {"shop": 0, "published": 1, "practice": 2, "memory": 3}
_BASIS_ORDER = {"finger_tight": 0, "wrench_resistance": 1, "not_stated": 2, "torque": 3}


def advice(name: str, end: End, tables: Tables) -> tuple[EndAdvice, list[Warning_]]:
    """How to tighten one end, and what the reader must know of it.

    A figure that no source gives is None. Torque is N·m, flats are sixths of a turn.
    """
    every = [r for r in tables.tightening.get(end.connection, ()) if r.size in (end.size_key, "all")]
    mine = [r for r in every if r.use == "hose" and _turned(end, tables) & set(r.part)]
    factor, rows_for_metal = _for_material(mine, end.material, tables)
    taper = end.connection.is_taper
    torque_row = None if taper else _pick(rows_for_metal, "torque")
    flats_row = None if taper or factor < 1 else _pick(rows_for_metal, "flats")
    turns_row = _pick(rows_for_metal, "turns") if taper else None
    found = EndAdvice(
        torque=_torque(torque_row, factor, end.material, tables) if torque_row else None,
        flats=_flats(flats_row) if flats_row else None,
        turns=_turns(turns_row) if turns_row else None,
        spread=tuple(_said(r) for r in every if r not in (torque_row, flats_row, turns_row)),
    )
    return found, _warnings(name, end, found, torque_row, factor)


def _turned(end: End, tables: Tables) -> set[str]:
    """The part that is turned: an adjustable stud has a locknut, and elbows are adjustable."""
    if end.connection.is_taper:
        return {"taper"}
    by: set[str] = set(tables.families[end.connection].tighten_by)
    if by == {"screws"}:
        return {"cap_screw"}
    if by == {"stud"} and end.is_elbow and end.form is Form.MALE:
        return {"locknut"}
    return {"nut"} if end.form is Form.FEMALE_SWIVEL else by


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


def _pick(rows: Iterable[row.TighteningRow], figure: Figure) -> row.TighteningRow | None:
    """The row to show: the first by ``_rank``."""
    return min((r for r in rows if _has(r, figure)), key=lambda r: _rank(r, figure), default=None)


def _has(item: row.TighteningRow, figure: Figure) -> bool:
    """Whether a row gives the figure in a way that can be worked to."""
    if figure == "torque":
        return item.torque_max_nm is not None
    if figure == "flats":
        return item.basis in STATED and item.flats_min is not None and item.flats_max is not None
    return item.turns_min is not None and item.turns_max is not None


def _rank(item: row.TighteningRow, figure: Figure) -> tuple[object, ...]:
    """A shop's own first, memory last; a figure for the size before a general rule; a range
    before a mere ceiling; a table of the family before a machine's manual; then the lowest
    upper figure, and of equals the one that starts earliest."""
    upper = {"torque": item.torque_max_nm, "flats": item.flats_max, "turns": item.turns_max}[figure]
    return (
        _CONFIDENCE_ORDER[item.confidence],
        item.size == "all",
        figure == "torque" and item.torque_min_nm is None,
        item.scope != "family",
        upper,
        _BASIS_ORDER.get(item.basis, 9),
        item.flats_max is None,
    )


def _torque(item: row.TighteningRow, factor: float, material: Material, tables: Tables) -> Torque:
    assert item.torque_max_nm is not None
    words = [item.end_type, item.lubrication or "lubrication not stated"]
    if item.screw:
        words.append(f"each {item.screw} screw")
    source = item.source
    if factor < 1:
        rule = tables.rule("soft_metal_percent")
        words.append(f"{rule.value:g} % of the steel figure for {material.replace('_', ' ')} ({rule.source})")
    low = None if item.torque_min_nm is None else round(item.torque_min_nm * factor, 1)
    return Torque(
        min=low,
        max=round(item.torque_max_nm * factor, 1),
        basis=", ".join(words),
        source=source,
        part="cap_screw" if "cap_screw" in item.part else "nut",
    )


def _flats(item: row.TighteningRow) -> Flats:
    assert item.flats_min is not None and item.flats_max is not None
    return Flats(min=item.flats_min, max=item.flats_max, basis=Basis(item.basis), source=item.source)


def _turns(item: row.TighteningRow) -> Turns:
    assert item.turns_min is not None and item.turns_max is not None
    return Turns(min=item.turns_min, max=item.turns_max, basis=Basis(item.basis), source=item.source)


def _said(item: row.TighteningRow) -> str:
    """One source in a line: its figures, what it speaks of, and its name."""
    figures = []
    if item.torque_max_nm is not None:
        figures.append(f"{range_text(item.torque_min_nm, item.torque_max_nm)} N·m")
    if item.flats_max is not None:
        figures.append(_counted("flat", item.flats_min, item.flats_max, item.basis))
    if item.turns_max is not None:
        figures.append(_counted("turn", item.turns_min, item.turns_max, item.basis))
    about = item.end_type + (f", {item.screw} screw" if item.screw else "")
    if item.material != Material.CARBON_STEEL:
        about += f", {item.material.replace('_', ' ')}"
    general = ", all sizes" if item.size == "all" else ""
    return f"{', '.join(figures)} ({about}{general}): {item.source}"


def _counted(word: str, low: float | None, high: float, basis: str) -> str:
    """ "1 to 1.5 flats from finger-tight"."""
    figure = f"at most {mixed_text(high)}" if low is None else count_text(low, high)
    start = "the source does not say from where" if basis == Basis.NOT_STATED else ""
    start = BASIS_WORDS[Basis(basis)] if basis in STATED else start
    return f"{figure} {word}{'s' if high > 1 else ''} {start}".strip()


def _warnings(
    name: str, end: End, found: EndAdvice, torque_row: row.TighteningRow | None, factor: float
) -> list[Warning_]:
    said = "End A" if name == "end_a" else "End B"
    warnings = []
    if found.torque is None and found.flats is None and found.turns is None:
        text = f"{said}: how far to tighten is {NOT_KNOWN}."
        if end.connection.is_flange and end.material is not Material.CARBON_STEEL:
            metal = end.material.replace("_", " ")
            text = (
                f"{said}: the screws of a flange stay steel, and no source says what clamp load a head of {metal} "
                f"takes: half the steel figure could leak. How far to tighten is {NOT_KNOWN}."
            )
        warnings.append(Warning_(code="tightening_not_known", field=name, message=as_is(text)))
    elif found.torque is not None and torque_row is not None and torque_row.confidence == "memory":
        text = (
            f"{said}: the torque is from memory ({torque_row.source.removeprefix('memory: ')}): confirm it."
        )
        warnings.append(Warning_(code="torque_from_memory", field=name, message=as_is(text)))
    if factor < 1 and found.torque is not None:
        text = f"{said}: {end.material} takes less than steel; no count of flats is known for it."
        warnings.append(Warning_(code="soft_material", field=name, message=as_is(text)))
    return warnings
