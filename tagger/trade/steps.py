"""The fit guide of one end: rows of data/fit_steps.csv that apply, with their figures.

Works from what a tag carries, so that the page offline says the same as the page with a record.
"""

from __future__ import annotations

from dataclasses import dataclass

from tagger.spec import BASIS_WORDS, STATED, AssemblySpec, Basis, End, Tightening
from tagger.trade.results import EndAdvice, Turns, carried_tightening
from tagger.trade.tables import Tables
from tagger.trade.tables import tables as our_tables
from tagger.units import lbf_ft_of, mixed_text, number_text, show_length, show_pressure


@dataclass(frozen=True)
class Step:
    """One step, filled in. ``picture`` is a key; ``source`` is that of the practice, not the figure."""

    step_id: str
    phase: str
    text: str
    picture: str
    caution: bool
    source: str


def steps_for(
    end: End,
    tightening: Tightening | None,
    *,
    spec: AssemblySpec,
    pressure_bar: float | None = None,
    bend_radius_mm: float | None = None,
    turns: Turns | None = None,
    torque_basis: str = "",
    tables: Tables | None = None,
) -> tuple[Step, ...]:
    """The steps for one end in order, with figures in both systems."""
    tables = tables or our_tables()
    figures = _figures(tightening, turns, spec, pressure_bar, bend_radius_mm, torque_basis)
    return tuple(
        Step(r.step_id, r.phase, r.text.format(**figures), r.picture, r.caution == "yes", r.source)
        for r in tables.steps
        if r.condition in _conditions(end, spec, figures)
        and ("all" in r.families or end.connection in r.families)
        and ("all" in r.forms or end.form in r.forms)
    )


def for_end(
    end: End,
    advice: EndAdvice,
    spec: AssemblySpec,
    pressure_bar: float | None,
    bend_radius_mm: float | None,
    tables: Tables,
) -> tuple[tuple[str, ...], dict[str, str]]:
    """Ids and figures of the steps for an assessed end."""
    tightening = carried_tightening(advice)
    basis = str(advice.torque.basis) if advice.torque else ""
    found = steps_for(
        end, tightening, spec=spec, pressure_bar=pressure_bar, bend_radius_mm=bend_radius_mm,
        turns=advice.turns, torque_basis=basis, tables=tables,
    )  # fmt: skip
    figures = _figures(tightening, advice.turns, spec, pressure_bar, bend_radius_mm, basis)
    return tuple(step.step_id for step in found), figures


def _figures(
    tightening: Tightening | None,
    turns: Turns | None,
    spec: AssemblySpec,
    pressure_bar: float | None,
    bend_radius_mm: float | None,
    torque_basis: str,
) -> dict[str, str]:
    found: dict[str, str] = {}
    if tightening is not None and tightening.torque_max_nm is not None:
        found["torque"] = torque_text(tightening.torque_min_nm, tightening.torque_max_nm)
        found["torque_basis"] = torque_basis or "see the record for what it holds for"
    if turns is None and tightening is not None and tightening.flats_max is not None:
        found["flats"] = count_text(tightening.flats_min or 0.0, tightening.flats_max)
        if tightening.flats_basis in STATED:
            found["flats_basis"] = BASIS_WORDS[tightening.flats_basis]
    if turns is not None:
        found["turns"] = count_text(turns.min, turns.max)
    if pressure_bar is not None:
        found["pressure"] = show_pressure(pressure_bar)
    if bend_radius_mm is not None:
        found["bend_radius"] = show_length(bend_radius_mm)
    if spec.clocking_deg is not None:
        found["clocking"] = f"{spec.clocking_deg}°"
    return found


def _conditions(end: End, spec: AssemblySpec, figures: dict[str, str]) -> set[str]:
    """The conditions that hold; the words of fit_steps.csv's ``condition`` column."""
    flats, torque, turns = "flats_basis" in figures, "torque" in figures, "turns" in figures
    basis = figures.get("flats_basis", "")
    holds = {
        "": True,
        "has_flats": flats,
        "has_torque": torque,
        "has_turns": turns,
        "flats_and_torque": flats and torque,
        "flats_finger_tight": basis == BASIS_WORDS[Basis.FINGER_TIGHT],
        "flats_wrench_resistance": basis == BASIS_WORDS[Basis.WRENCH_RESISTANCE],
        "no_figures": not (flats or torque or turns),
        "has_pressure": "pressure" in figures,
        "no_pressure": "pressure" not in figures,
        "has_bend": "bend_radius" in figures,
        "no_bend": "bend_radius" not in figures,
        "straight": not end.is_elbow,
        "elbow": end.is_elbow,
        "elbow_pair": spec.clocking_deg is not None,
    }
    return {name for name, true in holds.items() if true}


CONDITIONS = frozenset(
    ("", "has_flats", "has_torque", "has_turns", "flats_and_torque", "flats_finger_tight",
     "flats_wrench_resistance", "no_figures", "has_pressure", "no_pressure", "has_bend", "no_bend",
     "straight", "elbow", "elbow_pair")
)  # fmt: skip
"""Every word the ``condition`` column may hold."""

PLACEHOLDERS = frozenset(
    ("torque", "torque_basis", "flats", "flats_basis", "turns", "pressure", "bend_radius", "clocking")
)
"""Every figure a step may name."""


def range_text(low: float | None, high: float, places: int = 1) -> str:
    """A range as people say it.

    >>> range_text(90, 110), range_text(102, 102), range_text(None, 95)
    ('90 to 110', '102', 'at most 95')
    """
    if low is None:
        return f"at most {number_text(high, places)}"
    if low == high:
        return number_text(high, places)
    return f"{number_text(low, places)} to {number_text(high, places)}"


def count_text(low: float, high: float) -> str:
    """Flats or turns as the trade says them, in twelfths.

    >>> count_text(1, 1.5), count_text(1 / 3, 0.5), count_text(2, 2)
    ('1 to 1 1/2', '1/3 to 1/2', '2')
    """
    shown = [mixed_text(figure) for figure in dict.fromkeys((low, high))]
    return " to ".join(shown)


def torque_text(low: float | None, high: float) -> str:
    """Both systems.

    >>> torque_text(90, 110)
    '90 to 110 N·m (66 to 81 lbf·ft)'
    """
    inch_low = None if low is None else lbf_ft_of(low)
    return f"{range_text(low, high)} N·m ({range_text(inch_low, lbf_ft_of(high))} lbf·ft)"
