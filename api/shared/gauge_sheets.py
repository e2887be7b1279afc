"""What pages offer of gauge sheets: their names, the families, the papers, and the marks of one."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from tagger import phrases
from tagger.errors import Problem, SpecError, UnitError
from tagger.gauges import KINDS, PAPERS, hoses, marked, threads
from tagger.i18n import Translator
from tagger.messages import Message, diameter
from tagger.trade.identifying import marks
from tagger.trade.tables import Tables
from tagger.units import read_length_mm, with_unit


def offered(tables: Tables, t: Translator) -> dict[str, Any]:
    """For the page that lists the sheets."""
    return {
        "kinds": [(kind, t(Message(f"gauges-name-{kind}"))) for kind in KINDS if kind != "threads"],
        "families": [(str(one), t(phrases.connection(one))) for one in threads.families(tables)],
        "papers": [(paper, t(Message(f"gauges-paper-{paper}"))) for paper in PAPERS],
    }


def found_on(asked: dict[str, str], query: Mapping[str, str], tables: Tables) -> dict[str, Any]:
    """For the fields that take what was found on a sheet; ``query``: with ``sheet`` and ``family``, as its code has them."""
    kind, family = query.get("sheet", ""), query.get("family", "")
    return {
        "marks": marked.of_sheet(kind, family, tables) if kind in KINDS else [],
        "from_sheet": kind in KINDS or bool(asked.get("found")),
    }


def hoses_left(od: str, check_line: str, unit: str, tables: Tables, t: Translator) -> dict[str, Any]:
    """What an outside diameter read on a strip leaves: it, corrected, and each standard with its dash sizes.

    Raises SpecError where it or the check line cannot be read, or the check line is missing or off by more than 3 %.
    """
    if not check_line.strip():
        raise SpecError(Problem("scale", None, Message("identify-scale-missing")))
    true = marks.scale(check_line)
    try:
        read = read_length_mm(with_unit(od.strip(), unit)) * true
    except UnitError as error:
        raise SpecError([Problem("od", one.value, one.message) for one in error.problems]) from None
    known = hoses.strips(tables)
    unknown = tuple(name for name in tables.standards if name not in known)
    left = [
        (standard, ", ".join(f"-{band.dash}" for band in bands if band.holds(read)))
        for standard, bands in known.items()
    ]
    return {
        "od": t.figure(diameter(round(read, 2))),
        "left": [(name, sizes) for name, sizes in left if sizes],
        "unknown": t("gauges-hose-unknown", names=unknown) if unknown else "",
    }
