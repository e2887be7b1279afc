"""How good the source of a part's rating is, in words a builder understands."""

from __future__ import annotations

from tagger.messages import Message
from tagger.trade.results import Grade, PartRating, WorkingPressure
from tagger.trade.rows import UNVERIFIED
from tagger.trade.tables import Tables


def graded(found: WorkingPressure, tables: Tables) -> WorkingPressure:
    """The working pressure with the grade of each part's source."""
    parts = [part.model_copy(update={"grade": _grade(part, tables)}) for part in found.parts]
    return found.model_copy(update={"parts": tuple(parts)})


def _grade(part: PartRating, tables: Tables) -> Grade | None:
    return None if part.value_bar is None else of_source(part.source, part.confidence, tables)


def of_source(source: str, confidence: str | None, tables: Tables) -> Grade | None:
    """The grade of a figure with this source and confidence; None where the source is none of the tables."""
    if confidence in UNVERIFIED:
        return "unverified"
    if confidence in ("shop", "given"):
        return "shop" if confidence == "shop" else "given"
    known = tables.sources.get(source)
    if known is None:
        return None
    return "unverified" if known.grade in UNVERIFIED else known.grade  # type: ignore[return-value]


def said(grade: Grade) -> Message:
    """The grade in words: "standard seen", "secondary table"."""
    return Message(f"trade-grade-{grade}")


def cited(part: PartRating) -> Message | str:
    """The short name of a part's source with its grade; an older record has none."""
    if part.grade is None:
        return part.source
    return Message("trade-graded", source=part.source, grade=said(part.grade))
