"""``tagger tables report``: how much is known, by family, how sure it is, and how often identify is right."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator
from typing import Any

from tagger import phrases
from tagger.i18n import Translator
from tagger.messages import Message
from tagger.spec import Connection
from tagger.trade import known
from tagger.trade.identifying import measuring
from tagger.trade.tables import Tables

EACH = 4  # simulated measurements a connection and way: the whole report takes seconds


def answer(tables: Tables) -> dict[str, Any]:
    """All of it as JSON; shares from 0 to 1."""
    return {
        "grids": [_grid(tables, known.grid(tables, material)) for material in known.MATERIALS],
        "identify": [
            {
                "measured": one.way,
                "first": round(one.first, 4),
                "among_three": round(one.among_three, 4),
                "questions": round(one.questions, 2),
            }
            for one in measuring.table(tables, EACH)
        ],
    }


def _grid(tables: Tables, found: known.Grid) -> dict[str, Any]:
    every, sixteen = known.described(tables), known.first_sixteen()
    kept = {
        name: known.grid(known.kept_once(tables, found.material, every_form=form), found.material)
        for name, form in (("usual_form", False), ("every_form", True))
    }
    return {
        "material": found.material.value,
        "hoses": len(found.hoses),
        "all_families": _shares(found.assemblies(every)),
        "first_sixteen_families": _shares(found.assemblies(sixteen)),
        "once_kept": {
            name: {
                "all_families": _shares(grid.assemblies(every)),
                "first_sixteen_families": _shares(grid.assemblies(sixteen)),
            }
            for name, grid in kept.items()
        },
        "families": [_family(found, family) for family in every],
        "grades": _grades(found.grades),
    }


def _family(found: known.Grid, family: Connection) -> dict[str, Any]:
    ends = _shares(found.ends_of(family))
    return {"family": family.value, "ends": ends.pop("count"), **ends}


def _shares(counted: Counter[known.Standing]) -> dict[str, Any]:
    shares: dict[str, Any] = {
        standing: round(known.share(counted, standing), 4) for standing in known.STANDINGS
    }
    return {"count": counted.total(), **shares}


def _grades(counted: Counter[str]) -> list[dict[str, Any]]:
    total = max(counted.total(), 1)
    return [
        {"grade": grade, "share": round(counted[grade] / total, 4)}
        for grade in known.GRADES
        if counted[grade]
    ]


def text(found: dict[str, Any], t: Translator) -> str:
    """The same as lines of text in the language of ``t``."""
    lines = [line for grid in found["grids"] for line in _grid_text(grid, t)]
    return "\n".join([*lines, *_identify_text(found["identify"], t)])


def _grid_text(grid: dict[str, Any], t: Translator) -> Iterator[str]:
    yield t(Message("cli-known-material", material=phrases.material(grid["material"]), hoses=grid["hoses"]))
    for name, of in (("now", grid), *grid["once_kept"].items()):
        for families in ("all_families", "first_sixteen_families"):
            which = Message(f"cli-known-{families}")
            yield "  " + t(_line(Message(f"cli-known-{name}", families=which), of[families]))
    yield ""
    yield t(Message("cli-known-by-family"))
    for row in grid["families"]:
        if row["ends"]:
            yield "  " + t(_line(phrases.connection(row["family"]), {**row, "count": row["ends"]}))
    yield ""
    yield t(Message("cli-known-by-grade"))
    for row in grid["grades"]:
        grade = Message(f"cli-grade-{row['grade']}")
        yield "  " + t(Message("cli-known-grade", grade=grade, share=_percent(row["share"])))
    yield ""


def _line(what: Message, shares: dict[str, Any]) -> Message:
    values = {standing: _percent(shares[standing]) for standing in known.STANDINGS}
    return Message("cli-known-shares", what=what, count=shares["count"], **values)


def _identify_text(rows: Iterable[dict[str, Any]], t: Translator) -> Iterator[str]:
    yield t(Message("cli-known-identify"))
    for row in rows:
        yield "  " + t(
            Message(
                "cli-known-measured",
                measured=Message(f"cli-measured-{_slug(row['measured'])}"),
                first=_percent(row["first"]),
                three=_percent(row["among_three"]),
                questions=row["questions"],
            )
        )


def _slug(way: str) -> str:
    """The id of a way of measuring: "diameter-pitch-seat"."""
    return "asked" if way == measuring.ASKED else way.replace(", ", "-")


def _percent(share: float) -> float:
    return round(share * 100, 1)
