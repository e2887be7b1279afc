"""The order of the two ends: what turns the whole hose goes in first, what swivels comes last.

A hose whose first end is tight must not turn any more: an end without a swivel that is screwed in
after it twists the hose. A flange, or the eye of a banjo, keeps its angle free until its screws are tight;
couplers and staples are pushed together and turn freely, so they come after all others.
"""

from __future__ import annotations

from typing import Literal

from tagger import phrases
from tagger.messages import Message
from tagger.spec import AssemblySpec, Connection, End, Form
from tagger.trade.results import Warning_
from tagger.trade.tables import Tables

Name = Literal["end_a", "end_b"]
NAMES: tuple[Name, Name] = ("end_a", "end_b")
Motion = Literal["turns_hose", "mating", "flange", "swivel", "free"]

ORDER: tuple[Motion, ...] = ("turns_hose", "mating", "flange", "swivel", "free")
"""The motions in the order their ends are connected in."""

ADJUSTABLE = (Connection("sae_orb"), Connection("metric_orb"))
"""Boss studs, whose elbows have a locknut."""

CONDITIONS = frozenset(
    (
        "rigid_first",
        "rigid_second",
        "rigid_pair",
        "mating_first",
        "mating_second",
        "swivel_last",
        "flange_loose",
        "free_last",
        "clock_nut",
        "clock_screws",
        "clock_locknut",
    )
)
"""The words of fit_steps.csv that depend on the order of the ends."""


def motion(end: End, tables: Tables) -> Motion:
    """What turns while this end is screwed in; an end of no row is asked for like one without a nut."""
    known = tables.motions.get((end.connection, end.form))
    return known.motion if known else "mating"


def first_end(spec: AssemblySpec, tables: Tables) -> Name:
    """The end that is connected first; of two alike end A."""
    a, b = (ORDER.index(motion(end, tables)) for end in (spec.end_a, spec.end_b))
    return "end_a" if a <= b else "end_b"


def stays_loose(spec: AssemblySpec, tables: Tables) -> bool:
    """Whether the end connected first is tightened only when the other is connected: flanges and banjo eyes."""
    first = spec.end_a if first_end(spec, tables) == "end_a" else spec.end_b
    return motion(first, tables) == "flange"


def conditions(spec: AssemblySpec, name: Name, tables: Tables) -> set[str]:
    """The conditions of fit_steps.csv that hold for one end because of the other."""
    ends = {"end_a": spec.end_a, "end_b": spec.end_b}
    mine = motion(ends.pop(name), tables)
    theirs = motion(ends.popitem()[1], tables)
    first = first_end(spec, tables) == name
    holds = {
        "rigid_first": mine == "turns_hose" and first,
        "rigid_second": mine == "turns_hose" and not first,
        "rigid_pair": mine == theirs == "turns_hose" and first,
        "mating_first": mine == "mating" and first,
        "mating_second": mine == "mating" and not first,
        "swivel_last": mine == "swivel" and theirs not in ("swivel", "free"),
        "free_last": mine == "free" and theirs != "free",
        "flange_loose": mine == "flange",
    }
    return {word for word, true in holds.items() if true} | _clocked(spec, tables)


def _clocked(spec: AssemblySpec, tables: Tables) -> set[str]:
    """What keeps the angle between two elbows free until the end that is connected last is tight.

    A flange has no nut to turn, and a rigid elbow points where its thread stops; only a boss stud has a locknut.
    """
    if spec.clocking_deg is None:
        return set()
    last = spec.end_b if first_end(spec, tables) == "end_a" else spec.end_a
    moves = motion(last, tables)
    if moves in ("swivel", "mating"):
        return {"clock_nut"}
    if moves == "flange":
        return {"clock_screws"}
    return {"clock_locknut"} if last.connection in ADJUSTABLE and last.form is Form.MALE else set()


def warnings(spec: AssemblySpec, tables: Tables) -> list[Warning_]:
    """Warn of two ends that turn the hose, and say how it can be installed; never refused."""
    motions = [motion(end, tables) for end in (spec.end_a, spec.end_b)]
    if motions == ["turns_hose", "turns_hose"]:
        message = Message("trade-two-rigid-ends")
        return [Warning_(code="two_rigid_ends", field="end_b", message=message)]
    if motions == ["mating", "mating"]:
        message = Message("trade-no-nut-at-either-end")
        return [Warning_(code="mating_nut_needed", field="end_b", message=message, severity="note")]
    if set(motions) == {"turns_hose", "mating"}:
        name = "end_a" if motions[0] == "mating" else "end_b"
        message = Message("trade-mating-nut-needed", part=phrases.part(name))
        return [Warning_(code="mating_nut_needed", field=name, message=message, severity="note")]
    return []
