"""The fit guide of a tag: the trade's steps for both ends as screens, in the reader's language.

Which steps apply is the trade's word (``tagger.trade.steps``), and so is the screen that each stands on: one
place and one set of tools. This module orders the screens of two ends and adds the pictures. The phone does
the same (``static/reader/fit.js``).
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from importlib import resources
from typing import Any, Literal

from api.scan import picture
from api.scan.visitor import Reader
from api.shared.known_tag import turns_of
from tagger import phrases
from tagger.i18n import Translator
from tagger.messages import Message, as_is
from tagger.spec import Basis, Connection, Material, TagContent, Tightening
from tagger.trade import agreeing, geometry, joints, motion, steps
from tagger.trade.results import EndAdvice
from tagger.trade.screws import table as screw_table
from tagger.trade.steps import OF_ONE_END, PHASES, SCREENS, Step
from tagger.trade.tables import Tables, compact_name

DRAWN = (
    "cardboard",
    "lay_line",
    "bend",
    "two_wrenches",
    "hold_adapter",
    "flange_cross",
    "seat_gauge",
    "thread_gauge",
    "taper",
    "locknut",
)


WHOLE_TURN = 6  # flats
Ends = Literal["A", "B", "AB"]


@dataclass(frozen=True)
class _Line:
    """One step as a page shows it, and the ends it is for."""

    step: Step
    picture: str
    source: Message
    ends: Ends

    @property
    def said(self) -> tuple[str, Message, Message]:
        return self.step.step_id, self.step.message, self.source

    def for_both(self) -> _Line:
        return _Line(self.step, self.picture, self.source, "AB")


@dataclass(frozen=True)
class _Screen:
    """Steps that are done at one place with one set of tools."""

    name: str
    ends: Ends
    lines: list[_Line]


def guide(
    content: TagContent, radius: float | None, advice: tuple[EndAdvice, EndAdvice] | None, reader: Reader
) -> dict[str, Any]:
    """Screens with their lines, numbered through, each knowing the one before and after.

    ``radius``: minimum bend radius in mm. ``advice``: for ends A and B the record's own advice,
    which names the sources of its figures; None where the figures are those on the tag.
    """
    ours, theirs = (
        _of_end(letter, content, radius, advice[place] if advice else None, reader)
        for place, letter in enumerate[Literal["A", "B"]](("A", "B"))
    )
    if motion.first_end(content.spec, reader.tables) == "end_b":
        ours, theirs = theirs, ours
    loose = motion.stays_loose(content.spec, reader.tables)
    screens = [screen for phase in PHASES for screen in _screens(phase, ours, theirs, loose)]
    total = len(screens)
    return {
        "screens": [_filled(each, n, total, reader.t) for n, each in enumerate(screens, 1)],
        "total": total,
    }


def _screens(phase: str, first: list[_Line], second: list[_Line], loose: bool) -> list[_Screen]:
    """The screens of one phase: those of the whole assembly, then end by end, or once for two alike.

    ``first`` are the lines of the end that is connected first. ``loose``: it is tightened only when the other
    is connected too.
    """
    mine, theirs = ([line for line in lines if line.step.phase == phase] for lines in (first, second))
    shared = [name for name in SCREENS[phase] if name not in OF_ONE_END]
    found = [_Screen(name, "AB", _merged(_on(name, mine), _on(name, theirs))) for name in shared]
    own = [name for name in SCREENS[phase] if name in OF_ONE_END]
    ours, others = ([line for name in own for line in _on(name, lines)] for lines in (mine, theirs))
    if [line.said for line in ours] == [line.said for line in others]:
        found += [_Screen(name, "AB", _merged(_on(name, mine), _on(name, theirs))) for name in own]
    else:
        places = [(name, lines) for lines in (ours, others) for name in own]
        if loose:
            places.sort(key=lambda place: own.index(place[0]))
        found += [_Screen(name, lines[0].ends, _on(name, lines)) for name, lines in places if lines]
    return [screen for screen in found if screen.lines]


def _on(name: str, lines: list[_Line]) -> list[_Line]:
    return [line for line in lines if line.step.screen == name]


def _merged(a: list[_Line], b: list[_Line]) -> list[_Line]:
    """The lines of both ends in the trade's order; what both say is said once."""
    common = {line.said for line in a} & {line.said for line in b}
    both = [line.for_both() for line in a if line.said in common]
    alone = [line for line in a + b if line.said not in common]
    return sorted(both + alone, key=lambda line: (line.step.order, line.ends))


def _filled(screen: _Screen, n: int, total: int, t: Translator) -> dict[str, Any]:
    """What the template shows of screen ``n`` of ``total``."""
    named = {"A": t("scan-end_a"), "B": t("scan-end_b"), "AB": None}
    lines = [
        {
            "text": t.html(line.step.message),
            "end": named[line.ends] if screen.ends == "AB" else None,
            "severity": "danger" if line.step.caution else "",
        }
        for line in screen.lines
    ]
    sources = dict.fromkeys(t("scan-source", source=line.source) for line in screen.lines)
    return {
        "id": f"step-{n}",
        "count": t("scan-fit-step", n=n, total=total),
        "title": t(f"fit-screen-{screen.name}"),
        "end": named[screen.ends] if screen.name in OF_ONE_END else None,
        "lines": lines,
        "pictures": list(dict.fromkeys(line.picture for line in screen.lines if line.picture)),
        "sources": list(sources),
        "back": f"step-{n - 1}" if n > 1 else "fit",
        "next": f"step-{n + 1}" if n < total else None,
    }


def _of_end(
    letter: Literal["A", "B"],
    content: TagContent,
    radius: float | None,
    advice: EndAdvice | None,
    reader: Reader,
) -> list[_Line]:
    spec = content.spec
    end, tightening = (spec.end_a, content.tighten_a) if letter == "A" else (spec.end_b, content.tighten_b)
    chosen = steps.steps_for(
        end,
        tightening,
        spec=spec,
        name="end_a" if letter == "A" else "end_b",
        pressure_bar=content.working_pressure_bar,
        at_most_bar=content.at_most_bar,
        bend_radius_mm=radius,
        turns=turns_of(end, tightening),
        tables=reader.tables,
    )
    return [
        _Line(step, _picture(step, content, tightening, reader), _source(step, advice), letter)
        for step in chosen
    ]


def _source(step: Step, advice: EndAdvice | None) -> Message:
    """Where the step comes from; of a step with a figure, where the record says that the figure does."""
    if step.source.id != steps.FIGURE_SOURCE or advice is None:
        return step.source
    figures = {"torque": advice.torque, "flats": advice.flats, "turns": advice.turns}
    wanted = [figure for name, figure in figures.items() if name in step.figures and figure]
    sources = dict.fromkeys(figure.source for figure in wanted)
    return as_is("; ".join(sources)) if sources else step.source


def _picture(step: Step, content: TagContent, tightening: Tightening | None, reader: Reader) -> str:
    if step.picture == "clocking" and content.spec.clocking_deg is not None:
        return picture.clocking(content.spec, reader)
    if step.picture == "nut_flats" and tightening and tightening.flats_max and tightening.flats_basis:
        low, high = tightening.flats_min, tightening.flats_max
        if high < WHOLE_TURN:
            return _nut(low, high, tightening.flats_basis, reader.t)
    return drawn(step.picture) if step.picture in DRAWN else ""


def _nut(low: float | None, high: float, start: Basis, t: Translator) -> str:
    """The nut turned by its flats, from its mark."""
    said = t("words-counted", count=phrases.flats(low or 0, high), basis=phrases.basis(start))
    return picture.nut(low, high, said, turned=True)


@cache
def drawn(key: str) -> str:
    """A picture that is the same for every hose; it says nothing that the step's words do not."""
    file = resources.files("api").joinpath("templates", "scan", "pictures", f"{key}.svg")
    return file.read_text(encoding="utf-8").strip()


def rules(tables: Tables) -> dict[str, Any]:
    """What the phone needs to choose the steps by itself: the rows, and the bend radii."""
    rows = [
        {
            "id": r.step_id,
            "phase": r.phase,
            "order": r.order,
            "families": r.families,
            "forms": r.forms,
            "condition": r.condition,
            "message": r.message,
            "figures": r.figures,
            "picture": r.picture,
            "caution": r.caution == "yes",
            "source": r.source,
            "screen": steps.screen_of(r),
            "sizes": r.sizes,
        }
        for r in tables.steps
    ]
    return {
        "rows": rows,
        "motions": {f"{r.family}|{r.form}": r.motion for r in tables.motions.values()},
        "order": motion.ORDER,
        "taper": [c.value for c in Connection if c.is_taper],
        "latched": [c.value for c in Connection if c.is_latched],
        "screws": screw_table(),
        "nuts": joints.nuts(),
        "screens": SCREENS,
        "of_one_end": OF_ONE_END,
        "adjustable": motion.ADJUSTABLE,
        "turns": _turns(tables),
        "bends": _bends(tables),
        "spellings": _spellings(tables),
        "pictures": {key: drawn(key) for key in DRAWN},
    }


def _turns(tables: Tables) -> dict[str, list[Any]]:
    """Turns of taper threads as [least, most, source], by "family|size|material"."""
    found: dict[str, list[Any]] = {}
    for family, size in tables.threads:
        for material in Material if family.is_taper else ():
            rows = agreeing.turns_of(family, size, material, tables)
            if rows:
                found[f"{family}|{size}|{material}"] = [list(each) for each in rows]
    return found


def _spellings(tables: Tables) -> dict[str, str]:
    """The other spellings of a standard's name, without case and punctuation."""
    return {compact_name(name): r.standard for r in tables.standards.values() for name in r.aliases}


def _bends(tables: Tables) -> dict[str, list[Any]]:
    """Minimum bend radius in mm and its source, by "standard|dash"."""
    from tagger.spec import Hose

    found: dict[str, list[Any]] = {}
    for standard, rows in tables.hose_bends.items():
        for row in rows:
            if not row.part and row.dash.isdigit() and int(row.dash) < 64:  # what a spec can name
                bend = geometry.bend_radius(Hose(standard=standard, dash=int(row.dash)), tables)[0]
                if bend.mm is not None:
                    found[f"{standard}|{row.dash}"] = [bend.mm, bend.source]
    return found
