"""The fit guide of a tag: the trade's steps for both ends as screens, in the reader's language.

Which steps apply is the trade's word (``tagger.trade.steps``), and so are the screen that each stands on and the
order of the screens of two ends (``tagger.trade.guide``). This module adds the pictures. The phone does the
same (``static/reader/fit.js``).
"""

from __future__ import annotations

from functools import cache
from importlib import resources
from typing import Any

from api.scan import picture
from api.scan.visitor import Reader
from tagger import phrases
from tagger.i18n import Translator
from tagger.spec import Basis, Connection, Material, TagContent, Tightening
from tagger.trade import agreeing, geometry, joints, motion, steps
from tagger.trade import guide as order_of
from tagger.trade.guide import Screen
from tagger.trade.results import EndAdvice
from tagger.trade.screws import table as screw_table
from tagger.trade.steps import OF_ONE_END, SCREENS, Step
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


def guide(
    content: TagContent,
    radius: float | None,
    advice: tuple[EndAdvice, EndAdvice] | None,
    reader: Reader,
    *,
    clockwise: bool = False,
) -> dict[str, Any]:
    """Screens with their lines, numbered through, each knowing the one before and after.

    ``radius``: minimum bend radius in mm. ``advice``: for ends A and B the record's own advice,
    which names the sources of its figures; None where the figures are those on the tag.
    ``clockwise``: the shop counts the clocking angle clockwise, with elbow A pointing up.
    """
    screens = order_of.screens(content, radius, advice, reader.tables)
    total = len(screens)
    return {
        "screens": [_filled(each, n, total, content, reader, clockwise) for n, each in enumerate(screens, 1)],
        "total": total,
    }


def _filled(
    screen: Screen, n: int, total: int, content: TagContent, reader: Reader, clockwise: bool
) -> dict[str, Any]:
    """What the template shows of screen ``n`` of ``total``."""
    t = reader.t
    pictures = (_picture(line.step, content, line.tightening, reader, clockwise) for line in screen.lines)
    named = {"A": t("scan-end_a"), "B": t("scan-end_b"), "AB": None}
    lines = [
        {
            "text": t.html(order_of.said(line.step, content, clockwise=clockwise)),
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
        "pictures": list(dict.fromkeys(filter(None, pictures))),
        "sources": list(sources),
        "back": f"step-{n - 1}" if n > 1 else "fit",
        "next": f"step-{n + 1}" if n < total else None,
    }


def _picture(
    step: Step, content: TagContent, tightening: Tightening | None, reader: Reader, clockwise: bool
) -> str:
    if step.picture == "clocking" and content.spec.clocking_deg is not None:
        return picture.clocking(content.spec, reader, clockwise=clockwise)
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
        "studs": joints.studs(tables),
        "either_way": [name for name, about in tables.families.items() if about.method == "flats"],
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
