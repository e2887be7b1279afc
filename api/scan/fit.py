"""The fit guide of a tag: the trade's steps for both ends, in the reader's language.

Which steps apply is the trade's word (``tagger.trade.steps``); this module orders them for
two ends, puts the figures in words, and hangs pictures on them. A step that both ends need
with the same figures is shown once.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from html import escape
from importlib import resources
from typing import Any

from api.scan import picture
from api.scan.fill import both
from api.scan.i18n import Reader, Translator
from api.shared.known_tag import turns_of
from tagger import units
from tagger.spec import Connection, End, TagContent, Tightening
from tagger.trade import geometry, steps
from tagger.trade.results import EndAdvice
from tagger.trade.rows import FitStep
from tagger.trade.screws import screw_of
from tagger.trade.screws import table as screw_table
from tagger.trade.tables import Tables, compact_name
from tagger.words import N_

PHASES = {
    "before": N_("Before you start"),
    "check": N_("Check"),
    "route": N_("Lay the hose"),
    "tighten": N_("Tighten"),
    "prove": N_("Prove it"),
}
FIGURE_SOURCE = "the source of the figure"
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


@dataclass(frozen=True)
class _Shown:
    """One step in words. ``ends``: "A", "B" or "AB"."""

    row: FitStep
    text: str
    picture: str
    source: str
    ends: str


def guide(
    content: TagContent, radius: float | None, advice: tuple[EndAdvice, EndAdvice] | None, reader: Reader
) -> dict[str, Any]:
    """Phases with their steps, numbered through, each knowing the one before and after.

    ``radius``: smallest bend radius in mm. ``advice``: for ends A and B the record's own advice,
    which names the sources of its figures; None where the figures are those on the tag.
    """
    t = reader.t
    ours, theirs = (
        _of_end(letter, content, radius, advice[place] if advice else None, reader)
        for place, letter in enumerate("AB")
    )
    shown = _merged(ours, theirs)
    total = len(shown)
    phases: list[dict[str, Any]] = []
    for n, step in enumerate(shown, 1):
        title = t(PHASES[step.row.phase])
        if not phases or phases[-1]["phase"] != step.row.phase:
            phases.append({"phase": step.row.phase, "title": title, "steps": []})
        where = {"A": f" · {t('End A')}", "B": f" · {t('End B')}"}.get(step.ends, "")
        phases[-1]["steps"].append({
            "id": f"fit-{n}", "n": n, "total": total, "where": title + where,
            "text": step.text, "picture": step.picture, "source": step.source,
            "severity": "danger" if step.row.caution == "yes" else "",
            "back": f"fit-{n - 1}" if n > 1 else "fit", "next": f"fit-{n + 1}" if n < total else None,
        })  # fmt: skip
    return {"phases": phases, "total": total}


def _merged(a: list[_Shown], b: list[_Shown]) -> list[_Shown]:
    """Both ends' steps in the trade's order; tightening is done end by end unless it is the same."""
    found: list[_Shown] = []
    for phase in PHASES:
        ours = [step for step in a if step.row.phase == phase]
        theirs = [step for step in b if step.row.phase == phase]
        same = [(s.row.step_id, s.text, s.source) for s in ours] == [
            (s.row.step_id, s.text, s.source) for s in theirs
        ]
        if phase == "tighten" and not same:
            found += ours + theirs
            continue
        common = {(s.row.step_id, s.text) for s in ours} & {(s.row.step_id, s.text) for s in theirs}
        both = [
            _Shown(s.row, s.text, s.picture, s.source, "AB")
            for s in ours
            if (s.row.step_id, s.text) in common
        ]
        alone = [s for s in ours + theirs if (s.row.step_id, s.text) not in common]
        found += sorted(both + alone, key=lambda s: (s.row.order, s.ends))
    return found


def _of_end(
    letter: str, content: TagContent, radius: float | None, advice: EndAdvice | None, reader: Reader
) -> list[_Shown]:
    t = reader.t
    spec = content.spec
    end, tightening = (spec.end_a, content.tighten_a) if letter == "A" else (spec.end_b, content.tighten_b)
    chosen = steps.steps_for(
        end, tightening, spec=spec, pressure_bar=content.working_pressure_bar, bend_radius_mm=radius,
        turns=turns_of(end, tightening), tables=reader.tables,
    )  # fmt: skip
    figures = figures_of(end, tightening, content, radius, reader)
    rows = {row.step_id: row for row in reader.tables.steps}
    found = []
    for step in chosen:
        row = rows[step.step_id]
        text = escape(t(row.text)).format(
            **{key: f"<strong>{both(value)}</strong>" for key, value in figures.items()}
        )
        drawing = _picture(row, content, tightening, reader)
        source = _source(row, advice, t)
        found.append(_Shown(row, text, drawing, source, letter))
    return found


def figures_of(
    end: End, tightening: Tightening | None, content: TagContent, radius: float | None, reader: Reader
) -> dict[str, str]:
    """The figures that a step may name, in the reader's language and both systems."""
    words, t = reader.words, reader.t
    found: dict[str, str] = {}
    if tightening and tightening.torque_max_nm is not None:
        found["torque"] = words.torque(tightening.torque_min_nm, tightening.torque_max_nm)
        screw = screw_of(end, tightening.torque_min_nm, tightening.torque_max_nm)
        if screw is None:
            found["torque_basis"] = t("see the maker for which screw and grade")
        else:
            found["torque_basis"] = t("{screw} screw; see the maker for its grade", screw=screw)
    if tightening and tightening.flats_max is not None and tightening.flats_basis is not None:
        low, high = tightening.flats_min or 0, tightening.flats_max
        found["flats"] = words.count(low, high)
        found["flats_basis"] = words.basis(tightening.flats_basis)
        found["turns"] = words.count(low / 6, high / 6)
    if content.working_pressure_bar is not None:
        found["pressure"] = words.pressure(content.working_pressure_bar)
    if radius is not None:
        found["bend_radius"] = units.show_length(radius)
    if content.spec.clocking_deg is not None:
        found["clocking"] = f"{content.spec.clocking_deg}°"
    return found


def _source(row: FitStep, advice: EndAdvice | None, t: Translator) -> str:
    if row.source != FIGURE_SOURCE:
        return t("Source: {source}", source=t(row.source))
    figures = (advice.torque, advice.flats, advice.turns) if advice else ()
    named = {"torque": 0, "flats": 1, "turns": 2}
    wanted = [figures[place] for key, place in named.items() if figures and f"{{{key}}}" in row.text]
    sources = dict.fromkeys(figure.source for figure in wanted if figure)
    return t(
        "Source: {source}", source="; ".join(sources) or t("as the shop that built it put it on the tag")
    )


def _picture(row: FitStep, content: TagContent, tightening: Tightening | None, reader: Reader) -> str:
    words, t = reader.words, reader.t
    if row.picture == "clocking" and content.spec.clocking_deg is not None:
        return picture.clocking(content.spec, reader)
    counted = tightening and tightening.flats_max and tightening.flats_basis
    if (
        row.picture == "nut_flats"
        and tightening
        and counted
        and tightening.flats_max
        and tightening.flats_max < 6
    ):
        low, high = tightening.flats_min, tightening.flats_max
        if row.step_id.startswith("mark"):
            return picture.nut(low, high, t("A line across nut and body"), turned=False)
        basis = words.basis(tightening.flats_basis) if tightening.flats_basis else ""
        return picture.nut(low, high, f"{words.flats(low or 0, high)} {basis}", turned=True)
    return drawn(row.picture) if row.picture in DRAWN else ""


@cache
def drawn(key: str) -> str:
    """A picture that is the same for every hose; it says nothing that the step's words do not."""
    file = resources.files("api").joinpath("templates", "scan", "pictures", f"{key}.svg")
    return file.read_text(encoding="utf-8").strip()


def rules(tables: Tables) -> dict[str, Any]:
    """What the phone needs to choose the steps by itself: the rows, and the bend radii."""
    rows = [
        {"id": r.step_id, "phase": r.phase, "order": r.order, "families": r.families, "forms": r.forms,
         "condition": r.condition, "picture": r.picture, "caution": r.caution == "yes"}
        for r in tables.steps
    ]  # fmt: skip
    return {
        "rows": rows,
        "taper": [c.value for c in Connection if c.is_taper],
        "screws": screw_table(),
        "bends": _bends(tables),
        "spellings": _spellings(tables),
        "pictures": {key: drawn(key) for key in DRAWN},
    }


def steps_of(reader: Reader) -> dict[str, list[str]]:
    """Each step's text and source in one language."""
    t = reader.t
    return {
        row.step_id: [t(row.text), "" if row.source == FIGURE_SOURCE else t(row.source)]
        for row in reader.tables.steps
    }


def _spellings(tables: Tables) -> dict[str, str]:
    """The other spellings of a standard's name, without case and punctuation."""
    return {compact_name(name): r.standard for r in tables.standards.values() for name in r.aliases}


def _bends(tables: Tables) -> dict[str, list[Any]]:
    """Smallest bend radius in mm and its source, by "standard|dash"."""
    from tagger.spec import Hose

    found: dict[str, list[Any]] = {}
    for standard, rows in tables.hose_bends.items():
        for row in rows:
            if row.dash.isdigit() and int(row.dash) < 64:  # what a spec can name
                bend = geometry.bend_radius(Hose(standard=standard, dash=int(row.dash)), tables)[0]
                if bend.mm is not None:
                    found[f"{standard}|{row.dash}"] = [bend.mm, bend.source]
    return found
