"""The fit guide of one end: rows of data/fit_steps.csv that apply, as messages with their figures.

Works from what a tag carries, so that the page offline says the same as the page with a record.
"""

from __future__ import annotations

from collections.abc import Iterable, Set
from dataclasses import dataclass
from functools import lru_cache

from tagger import phrases
from tagger.messages import Message, Value, angle, as_is, length, pressure, torque
from tagger.spec import STATED, AssemblySpec, Basis, Connection, End, Form, Material, Tightening
from tagger.trade import agreeing, joints, motion, tightened
from tagger.trade.motion import Name
from tagger.trade.results import EndAdvice, Turns, carried_tightening
from tagger.trade.rows import FitStep
from tagger.trade.screws import screw_for
from tagger.trade.tables import Tables
from tagger.trade.tables import tables as our_tables
from tagger.units import lbf_ft_of, mixed_text, number_text

PHASES = ("before", "check", "route", "tighten", "prove")
SCREENS = {
    "before": ("safe", "injection", "old"),
    "check": ("new", "match"),
    "route": ("route", "clocking"),
    "tighten": ("order", "join", "tighten"),
    "prove": ("leaks", "after"),
}
"""The screens of each phase in order: one place and one set of tools each. A step of none is on the last."""
OF_ONE_END = ("match", "join", "tighten")
"""The screens that each kind of end has for itself; the others are for the whole hose assembly."""
FIGURE_SOURCE = "fit-source-tag"
"""The ``source`` of a step whose source is that of its figures; said where theirs is not known."""
EACH_TURNS_SOURCE = "fit-source-turns"
NOT_SAID = "not_stated"
"""What a tag carries where the source of a torque does not say how the joint is lubricated."""


@dataclass(frozen=True)
class Step:
    """One step with its figures. ``picture`` is a key; ``source`` is that of the practice, not the figure."""

    step_id: str
    phase: str
    screen: str
    order: int
    message: Message
    figures: tuple[str, ...]
    picture: str
    caution: bool
    source: Message


def steps_for(
    end: End,
    tightening: Tightening | None,
    *,
    spec: AssemblySpec,
    name: Name,
    pressure_bar: float | None = None,
    at_most_bar: float | None = None,
    bend_radius_mm: float | None = None,
    turns: Turns | None = None,
    tables: Tables | None = None,
) -> tuple[Step, ...]:
    """The steps for one end in order, with their figures; ``name`` says which end of the spec it is.

    ``at_most_bar``: what the known parts allow, where the pressure of the whole is not known.
    """
    tables = tables or our_tables()
    figures = _figures(end, tightening, turns, spec, pressure_bar, bend_radius_mm)
    rows, figures = _rows_for(end, tightening, spec, name, figures, at_most_bar, turns, tables)
    return tuple(_step(row, figures) for row in rows)


def _rows_for(
    end: End,
    tightening: Tightening | None,
    spec: AssemblySpec,
    name: Name,
    figures: dict[str, Value],
    at_most_bar: float | None,
    turns: Turns | None,
    tables: Tables,
) -> tuple[tuple[FitStep, ...], dict[str, Value]]:
    """The rows that apply, with the figures that they may name: ``figures`` and more."""
    figures = dict(figures)
    if "pressure" not in figures and at_most_bar is not None:
        figures["at_most"] = pressure(at_most_bar)
    if turns is not None and (others := agreeing.other_turns(end, turns, tables)):
        figures["turn_choices"] = tuple(dict.fromkeys(turned for turned, _ in others))
        figures["turn_sources"] = tuple(named for _, named in others)
    either = tightened.either_way(end, tables)
    holds = frozenset(
        _conditions(end, spec, tightening, figures, either) | motion.conditions(spec, name, tables)
    )
    family, form, size = end.connection, end.form, end.size_key
    key = ("steps", holds, family, form, size)
    return tables.once(key, lambda: _rows_that_hold(tables.steps, holds, family, form, size)), figures


def _rows_that_hold(
    rows: Iterable[FitStep], holds: Set[str], family: Connection, form: Form, size: str
) -> tuple[FitStep, ...]:
    return tuple(
        row
        for row in rows
        if row.condition in holds
        and ("all" in row.families or family in row.families)
        and ("all" in row.forms or form in row.forms)
        and ("all" in row.sizes or size in row.sizes)
    )


def _step(row: FitStep, figures: dict[str, Value]) -> Step:
    own = {name: figures[name] for name in row.figures}
    message = Message(row.message, **own) if row.message.startswith("fit-") else as_is(row.message)
    return Step(
        step_id=row.step_id,
        phase=row.phase,
        screen=screen_of(row),
        order=row.order,
        message=message,
        figures=row.figures,
        picture=row.picture,
        caution=row.caution == "yes",
        source=source_of(row, figures),
    )


def screen_of(row: FitStep) -> str:
    """The screen a step stands on; a shop's step that names none is on the last of its phase."""
    return row.screen or SCREENS[row.phase][-1]


def source_of(row: FitStep, figures: dict[str, Value]) -> Message:
    """Where a step's practice comes from: a message, or a citation as it is.

    Where sources differ each is named with its own figure.
    """
    if row.source == EACH_TURNS_SOURCE:
        return Message(row.source, turn_sources=figures["turn_sources"])
    return Message(row.source) if row.source.startswith("fit-") else as_is(row.source)


def for_end(
    name: Name,
    advice: EndAdvice,
    spec: AssemblySpec,
    pressure_bar: float | None,
    bend_radius_mm: float | None,
    tables: Tables,
    at_most_bar: float | None = None,
) -> tuple[tuple[str, ...], dict[str, str]]:
    """Ids of the steps for an assessed end, and its figures as English text."""
    end = spec.end_a if name == "end_a" else spec.end_b
    tightening = carried_tightening(advice)
    figures = _figures(end, tightening, advice.turns, spec, pressure_bar, bend_radius_mm)
    rows, _ = _rows_for(end, tightening, spec, name, figures, at_most_bar, advice.turns, tables)
    said = {name: _in_english(value) for name, value in figures.items()}
    chosen = tuple([row.step_id for row in rows])
    return tables.once(("ids", chosen), lambda: chosen), said


def clocking_text(degrees: int) -> str:
    """A clocking as it stands among the figures of ``for_end``."""
    return _in_english(angle(degrees))


@lru_cache(maxsize=4096)  # a list of assemblies names the same figures again and again
def _in_english(value: Value) -> str:
    return str(Message("words-as-is", text=value))


def _figures(
    end: End,
    tightening: Tightening | None,
    turns: Turns | None,
    spec: AssemblySpec,
    pressure_bar: float | None,
    bend_radius_mm: float | None,
) -> dict[str, Value]:
    found: dict[str, Value] = {}
    if tightening is not None and tightening.torque_max_nm is not None:
        low, high = tightening.torque_min_nm, tightening.torque_max_nm
        found["torque"] = torque(low, high)
        found["screw"] = screw_for(tightening, end) or "none"
        if tightening.lubrication not in (None, NOT_SAID):
            found["lubrication"] = Message(f"trade-lubrication-{tightening.lubrication}")
    if turns is None and tightening is not None and tightening.flats_max is not None:
        found["flats"] = phrases.flats(tightening.flats_min or 0.0, tightening.flats_max)
        if tightening.flats_basis in STATED:
            found["flats_basis"] = phrases.basis(tightening.flats_basis)
    if turns is not None:
        found["turns"] = phrases.turns(turns.min, turns.max)
    if pressure_bar is not None:
        found["pressure"] = pressure(pressure_bar)
    if bend_radius_mm is not None:
        found["bend_radius"] = length(bend_radius_mm)
    if spec.clocking_deg is not None:
        found["clocking"] = angle(spec.clocking_deg)
    return found


def _conditions(
    end: End, spec: AssemblySpec, tightening: Tightening | None, figures: dict[str, Value], either: bool
) -> set[str]:
    """The conditions that hold; the words of fit_steps.csv's ``condition`` column.

    ``either``: flats may take the place of a torque; otherwise nothing but the torque is spoken of.
    """
    flats, torque, turns = "flats_basis" in figures, "torque" in figures, "turns" in figures
    counted = flats and (either or not torque)
    of_nut = tightening is not None and joints.is_of_nut(tightening, end)
    basis = tightening.flats_basis if tightening is not None and counted else None
    oiled = tightening.lubrication if tightening is not None else None
    worked_to = torque and not of_nut
    holds = {
        "": True,
        "has_flats": flats,
        "has_torque": torque,
        "stud_torque": torque and not of_nut,
        "nut_torque": of_nut,
        "lubrication_said": worked_to and "lubrication" in figures,
        "lubrication_unknown": worked_to and oiled == NOT_SAID,
        "lubrication_not_carried": worked_to and oiled is None,
        "has_turns": turns,
        "turns_disputed": "turn_sources" in figures,
        "flats_alone": flats and not torque,
        "flats_and_torque": flats and torque,
        "either_way": flats and torque and either,
        "torque_counts": flats and worked_to and not either,
        "flats_finger_tight": basis is Basis.FINGER_TIGHT,
        "flats_wrench_resistance": basis is Basis.WRENCH_RESISTANCE,
        "no_figures": not (flats or torque or turns),
        "has_pressure": "pressure" in figures,
        "at_most_pressure": "at_most" in figures,
        "no_pressure": not {"pressure", "at_most"} & set(figures),
        "has_bend": "bend_radius" in figures,
        "no_bend": "bend_radius" not in figures,
        "straight": not end.is_elbow,
        "elbow": end.is_elbow,
        "elbow_alone": end.is_elbow and spec.clocking_deg is None,
        "elbow_pair": spec.clocking_deg is not None,
        "stainless": end.material is Material.STAINLESS_STEEL,
    }
    return {name for name, true in holds.items() if true}


CONDITIONS = frozenset(
    ("", "has_flats", "has_torque", "stud_torque", "nut_torque", "lubrication_said", "lubrication_unknown",
     "lubrication_not_carried", "has_turns", "turns_disputed", "flats_alone", "flats_and_torque", "either_way",
     "torque_counts", "flats_finger_tight", "flats_wrench_resistance", "no_figures", "has_pressure", "at_most_pressure", "no_pressure", "has_bend", "no_bend",
     "straight", "elbow", "elbow_alone", "elbow_pair", "stainless", *motion.CONDITIONS)
)  # fmt: skip
"""Every word the ``condition`` column may hold."""

STEP_FIGURES = frozenset(
    (
        "torque",
        "screw",
        "lubrication",
        "flats",
        "flats_basis",
        "turns",
        "turn_choices",
        "pressure",
        "at_most",
        "bend_radius",
        "clocking",
    )
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
