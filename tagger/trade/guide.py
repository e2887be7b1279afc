"""The fit guide of a whole hose assembly: the steps of both ends, in order, screen by screen.

Which steps apply, and on which screen each stands, is told by ``steps``; here the screens of two ends are put in
one order: those of the whole assembly, then end by end, or once for two ends that are alike. The page, the phone
(``api/static/reader/fit.js``) and the fitter's card follow it.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Literal

from tagger.messages import Message, angle, as_is
from tagger.spec import STATED, End, TagContent, Tightening
from tagger.trade import motion, steps
from tagger.trade.motion import Name
from tagger.trade.results import EndAdvice, Turns
from tagger.trade.steps import OF_ONE_END, PHASES, SCREENS, Step
from tagger.trade.tables import Tables

Ends = Literal["A", "B", "AB"]


@dataclass(frozen=True)
class Line:
    """One step with where it comes from and the ends it is for; ``tightening``: the values of its end."""

    step: Step
    source: Message
    ends: Ends
    tightening: Tightening | None = None

    @property
    def said(self) -> tuple[str, Message, Message]:
        return self.step.step_id, self.step.message, self.source


@dataclass(frozen=True)
class Screen:
    """Steps that are done at one place with one set of tools."""

    name: str
    ends: Ends
    lines: tuple[Line, ...]


def screens(
    content: TagContent, radius: float | None, advice: tuple[EndAdvice, EndAdvice] | None, tables: Tables
) -> list[Screen]:
    """The guide of what a tag carries, from making the machine safe to checking once more.

    ``radius``: minimum bend radius in mm. ``advice``: for ends A and B the record's own advice,
    which names the sources of its figures; None where the figures are those on the tag.
    """
    first = _of_end("A", content, radius, advice[0] if advice else None, tables)
    second = _of_end("B", content, radius, advice[1] if advice else None, tables)
    if motion.first_end(content.spec, tables) == "end_b":
        first, second = second, first
    loose = motion.stays_loose(content.spec, tables)
    return [screen for phase in PHASES for screen in _of_phase(phase, first, second, loose)]


def said(step: Step, content: TagContent, *, clockwise: bool) -> Message:
    """What a step says; that which sets two elbows as the shop counts the angle."""
    degrees = content.spec.clocking_deg
    if not clockwise or step.picture != "clocking" or degrees is None:
        return step.message
    return Message("fit-clocking_clockwise", clocking=angle((360 - degrees) % 360))


def _of_phase(phase: str, first: list[Line], second: list[Line], loose: bool) -> list[Screen]:
    """The screens of one phase: those of the whole assembly, then end by end, or once for two alike.

    ``first`` are the lines of the end that is connected first. ``loose``: it is tightened only when the other
    is connected too.
    """
    mine, theirs = ([line for line in lines if line.step.phase == phase] for lines in (first, second))
    shared = [name for name in SCREENS[phase] if name not in OF_ONE_END]
    found = [Screen(name, "AB", _merged(_on(name, mine), _on(name, theirs))) for name in shared]
    own = [name for name in SCREENS[phase] if name in OF_ONE_END]
    ours, others = ([line for name in own for line in _on(name, lines)] for lines in (mine, theirs))
    if [line.said for line in ours] == [line.said for line in others]:
        found += [Screen(name, "AB", _merged(_on(name, mine), _on(name, theirs))) for name in own]
    else:
        places = [(name, lines) for lines in (ours, others) for name in own]
        if loose:
            places.sort(key=lambda place: own.index(place[0]))
        found += [Screen(name, lines[0].ends, tuple(_on(name, lines))) for name, lines in places if lines]
    return [screen for screen in found if screen.lines]


def _on(name: str, lines: list[Line]) -> list[Line]:
    return [line for line in lines if line.step.screen == name]


def _merged(a: list[Line], b: list[Line]) -> tuple[Line, ...]:
    """The lines of both ends in the trade's order; what both say is said once."""
    common = {line.said for line in a} & {line.said for line in b}
    both = [replace(line, ends="AB") for line in a if line.said in common]
    alone = [line for line in a + b if line.said not in common]
    return tuple(sorted(both + alone, key=lambda line: (line.step.order, line.ends)))


def _of_end(
    letter: Literal["A", "B"],
    content: TagContent,
    radius: float | None,
    advice: EndAdvice | None,
    tables: Tables,
) -> list[Line]:
    spec = content.spec
    end, tightening = (spec.end_a, content.tighten_a) if letter == "A" else (spec.end_b, content.tighten_b)
    name: Name = "end_a" if letter == "A" else "end_b"
    chosen = steps.steps_for(
        end,
        tightening,
        spec=spec,
        name=name,
        pressure_bar=content.working_pressure_bar,
        at_most_bar=content.at_most_bar,
        bend_radius_mm=radius,
        turns=turns_of(end, tightening),
        tables=tables,
    )
    return [Line(step, _source(step, advice), letter, tightening) for step in chosen]


def turns_of(end: End, tightening: Tightening | None) -> Turns | None:
    """A taper thread's figure stands on the tag as flats, six to a turn."""
    if tightening is None or not end.connection.is_taper:
        return None
    low, high, basis = tightening.flats_min, tightening.flats_max, tightening.flats_basis
    if (
        low is None or high is None or basis not in STATED
    ):  # a start that no source states cannot be worked to
        return None
    return Turns(min=low / 6, max=high / 6, basis=basis, source="")


def _source(step: Step, advice: EndAdvice | None) -> Message:
    """Where the step comes from; of a step with a figure, where the record says that the figure does."""
    if step.source.id != steps.FIGURE_SOURCE or advice is None:
        return step.source
    figures = {"torque": advice.torque, "flats": advice.flats, "turns": advice.turns}
    wanted = [figure for name, figure in figures.items() if name in step.figures and figure]
    sources = dict.fromkeys(figure.source for figure in wanted)
    return as_is("; ".join(sources)) if sources else step.source
