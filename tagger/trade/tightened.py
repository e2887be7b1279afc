"""How one end is tightened, as a reader is told it: by its torque, or by the turn with its basis; never by both.

Page and command line say the same; the phone's side of this is ``api/static/reader/tighten.js``.
"""

from __future__ import annotations

from tagger import phrases
from tagger.messages import Message, torque
from tagger.spec import STATED, End, Tightening
from tagger.trade import joints
from tagger.trade.screws import screw_for
from tagger.trade.tables import Tables


def lines(tightening: Tightening | None, end: End, tables: Tables) -> tuple[Message, ...]:
    """The torque with its conditions, and the count that may take its place; never a guess.

    A family that is tightened by one method has its torque only, whatever else an older tag carries, and a count
    whose start no source states is none that can be worked to.
    """
    if end.connection.is_latched:
        return (phrases.NOTHING_TO_TIGHTEN,)
    if tightening is None:
        return (phrases.NOT_KNOWN,)
    by_torque, count = _torque(tightening, end, tables), _count(tightening, end)
    if by_torque is None or count is None:
        return tuple(line for line in (by_torque, count) if line is not None) or (phrases.NOT_KNOWN,)
    return (by_torque, phrases.or_counted(count)) if either_way(end, tables) else (by_torque,)


def either_way(end: End, tables: Tables) -> bool:
    """Whether flats may take the place of a torque; in the other families the torque counts."""
    about = tables.families.get(end.connection)
    return about is not None and about.method == "flats"


def _count(tightening: Tightening, end: End) -> Message | None:
    return phrases.counted(tightening, end) if tightening.flats_basis in STATED else None


def _torque(tightening: Tightening, end: End, tables: Tables) -> Message | None:
    """The torque of the nut, the stud or each screw of a flange, with its lubrication and what it holds for."""
    low, high = tightening.torque_min_nm, tightening.torque_max_nm
    if high is None or end.connection.is_taper:
        return None
    figure = torque(low, high)
    if joints.is_of_nut(tightening, end):
        return Message("words-torque-of-nut", torque=figure)
    said = of_screw(tightening, end) if end.connection.is_flange else Message("words-as-is", text=figure)
    said = phrases.lubricated(said, tightening) or said
    return Message("words-torque-stud", torque=said) if joints.is_stud_of_two(end, tables) else said


def of_screw(tightening: Tightening, end: End) -> Message:
    """The torque of each screw of a flange, with which screw it is, or who knows it."""
    assert tightening.torque_max_nm is not None
    figure, screw = torque(tightening.torque_min_nm, tightening.torque_max_nm), screw_for(tightening, end)
    if screw is None:
        return Message("words-torque-any-screw", torque=figure)
    return Message("words-torque-screw", torque=figure, screw=screw)
