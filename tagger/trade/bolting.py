"""The screws of a flange: one torque belongs to one thread and one property class."""

from __future__ import annotations

from collections.abc import Iterable

from tagger import phrases
from tagger.messages import Message
from tagger.messages import torque as newton_metres
from tagger.spec import End
from tagger.trade import rows as row
from tagger.trade.results import Warning_
from tagger.trade.tables import Tables

NOT_NAMED = "none"
"""In place of a class that the source does not name."""


def class_of(item: row.TighteningRow) -> str:
    """The property class a row names; ``NOT_NAMED`` where it names none."""
    return item.screw_class or NOT_NAMED


def of_class(rows: list[row.TighteningRow], end: End, tables: Tables) -> list[row.TighteningRow]:
    """Without the rows for a class that is not one of those the flange asks for."""
    asked = {r.screw_class for r in tables.screw_classes.get(end.connection, ())}
    return [r for r in rows if not asked or not r.screw_class or r.screw_class in asked]


def warnings(
    name: str, shown: row.TighteningRow, rows: Iterable[row.TighteningRow], end: End, tables: Tables
) -> list[Warning_]:
    """Which screws the torque shown is for, which class they need, and what other screws the flange has."""
    if not shown.screw:
        return []
    part, found = phrases.part(name), []
    if not shown.screw_class:
        found.append(_class_not_stated(name, shown, tables))
    if asked := tables.screw_classes.get(end.connection, ()):
        names = tuple(r.screw_class for r in asked)
        message = Message("trade-screw-class-needed", part=part, classes=names, source=asked[0].source)
        found.append(Warning_(code="screw_class_needed", field=name, message=message, severity="note"))
    if others := tuple(_other_screws(shown, rows)):
        message = Message("trade-other-screws", part=part, screw=shown.screw, torques=others)
        found.append(Warning_(code="other_screws", field=name, message=message, severity="note"))
    return found


def _class_not_stated(name: str, shown: row.TighteningRow, tables: Tables) -> Warning_:
    part, screw, source = phrases.part(name), shown.screw, shown.source
    torques = tuple(_of_classes(screw, tables))
    message = Message("trade-screw-class-not-stated", part=part, screw=screw, source=source)
    if torques:
        message = Message("trade-screw-class-tables", part=part, screw=screw, source=source, torques=torques)
    return Warning_(code="screw_class_not_stated", field=name, message=message)


def _of_classes(screw: str, tables: Tables) -> Iterable[Message]:
    """What general bolt tables give the screw, from the least to the most of each class."""
    rows = tables.screw_torques.get(screw, ())
    for name in dict.fromkeys(r.screw_class for r in rows):
        of = [r for r in rows if r.screw_class == name]
        span = newton_metres(min(r.torque_min_nm for r in of), max(r.torque_max_nm for r in of))
        yield Message("trade-torque-of-class", grade=name, torque=span)


def _other_screws(shown: row.TighteningRow, rows: Iterable[row.TighteningRow]) -> Iterable[Message]:
    """The same flange with other screws, or a class that is named, each with its source."""
    for r in rows:
        if (
            r.torque_max_nm is not None
            and r.screw
            and (r.screw, r.screw_class)
            != (
                shown.screw,
                shown.screw_class,
            )
        ):
            torque = newton_metres(r.torque_min_nm, r.torque_max_nm)
            yield Message(
                "trade-torque-of-screw", grade=class_of(r), screw=r.screw, torque=torque, source=r.source
            )
