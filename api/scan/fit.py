"""The fit guide of a tag: the trade's steps for both ends, in the reader's language.

Which steps apply is the trade's word (``tagger.trade.steps``); this module orders them for
two ends and adds the pictures. A step that both ends need with the same figures is shown once.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cache
from importlib import resources
from typing import Any

from api.scan import picture
from api.scan.visitor import Reader
from api.shared.known_tag import turns_of
from tagger import phrases
from tagger.i18n import Translator
from tagger.messages import Message, as_is
from tagger.spec import Basis, Connection, TagContent, Tightening
from tagger.trade import geometry, joints, motion, steps
from tagger.trade.results import EndAdvice
from tagger.trade.screws import table as screw_table
from tagger.trade.steps import PHASES, Step
from tagger.trade.tables import Tables, compact_name

DRAWN = (
    "cardboard",
    "lay_line",
    "bend",
    "two_wrenches",
    "flange_cross",
    "seat_gauge",
    "thread_gauge",
    "taper",
    "locknut",
)


WHOLE_TURN = 6  # flats


@dataclass(frozen=True)
class _Shown:
    """One step as a page shows it. ``ends``: "A", "B" or "AB"."""

    step: Step
    picture: str
    source: Message
    ends: str

    @property
    def said(self) -> tuple[str, Message]:
        return self.step.step_id, self.step.message


def guide(
    content: TagContent, radius: float | None, advice: tuple[EndAdvice, EndAdvice] | None, reader: Reader
) -> dict[str, Any]:
    """Phases with their steps, numbered through, each knowing the one before and after.

    ``radius``: minimum bend radius in mm. ``advice``: for ends A and B the record's own advice,
    which names the sources of its figures; None where the figures are those on the tag.
    """
    ours, theirs = (
        _of_end(letter, content, radius, advice[place] if advice else None, reader)
        for place, letter in enumerate("AB")
    )
    if motion.first_end(content.spec, reader.tables) == "end_b":
        ours, theirs = theirs, ours
    shown = _merged(ours, theirs)
    total = len(shown)
    phases: list[dict[str, Any]] = []
    for n, each in enumerate(shown, 1):
        if not phases or phases[-1]["phase"] != each.step.phase:
            title = reader.t(f"fit-phase-{each.step.phase}")
            phases.append({"phase": each.step.phase, "title": title, "steps": []})
        phases[-1]["steps"].append(_filled(each, n, total, reader.t))
    return {"phases": phases, "total": total}


def _filled(each: _Shown, n: int, total: int, t: Translator) -> dict[str, Any]:
    """What the template shows of step ``n`` of ``total``."""
    end = {"A": t("scan-end_a"), "B": t("scan-end_b")}.get(each.ends)
    return {
        "id": f"step-{n}",
        "count": t("scan-fit-step", n=n, total=total),
        "phase": t(f"fit-phase-{each.step.phase}"),
        "end": end,
        "text": t.html(each.step.message),
        "picture": each.picture,
        "source": t("scan-source", source=each.source),
        "severity": "danger" if each.step.caution else "",
        "back": f"step-{n - 1}" if n > 1 else "fit",
        "next": f"step-{n + 1}" if n < total else None,
    }


def _merged(a: list[_Shown], b: list[_Shown]) -> list[_Shown]:
    """Both ends' steps in the trade's order; tightening is done end by end unless it is the same.

    ``a`` are the steps of the end that is connected first.
    """
    found: list[_Shown] = []
    for phase in PHASES:
        ours = [each for each in a if each.step.phase == phase]
        theirs = [each for each in b if each.step.phase == phase]
        same = [(each.said, each.source) for each in ours] == [(each.said, each.source) for each in theirs]
        if phase == "tighten" and not same:
            found += ours + theirs
            continue
        common = {each.said for each in ours} & {each.said for each in theirs}
        both = [replace(each, ends="AB") for each in ours if each.said in common]
        alone = [each for each in ours + theirs if each.said not in common]
        found += sorted(both + alone, key=lambda each: (each.step.order, each.ends))
    return found


def _of_end(
    letter: str, content: TagContent, radius: float | None, advice: EndAdvice | None, reader: Reader
) -> list[_Shown]:
    spec = content.spec
    end, tightening = (spec.end_a, content.tighten_a) if letter == "A" else (spec.end_b, content.tighten_b)
    chosen = steps.steps_for(
        end,
        tightening,
        spec=spec,
        name="end_a" if letter == "A" else "end_b",
        pressure_bar=content.working_pressure_bar,
        bend_radius_mm=radius,
        turns=turns_of(end, tightening),
        tables=reader.tables,
    )
    return [
        _Shown(step, _picture(step, content, tightening, reader), _source(step, advice), letter)
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
            return _nut(step, low, high, tightening.flats_basis, reader.t)
    return drawn(step.picture) if step.picture in DRAWN else ""


def _nut(step: Step, low: float | None, high: float, start: Basis, t: Translator) -> str:
    """The nut with its mark before the turn, or turned by its flats."""
    if step.step_id.startswith("mark"):
        return picture.nut(low, high, t("fit-mark"), turned=False)
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
        "bends": _bends(tables),
        "spellings": _spellings(tables),
        "pictures": {key: drawn(key) for key in DRAWN},
    }


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
