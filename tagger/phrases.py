"""The parts of a spec as messages: what every room says of an assembly in the same words."""

from __future__ import annotations

from typing import Literal

from tagger import units
from tagger.connection import names_tube
from tagger.messages import Message, Value, angle, count, length
from tagger.spec import (
    AssemblySpec,
    Basis,
    Connection,
    Cover,
    End,
    Fluid,
    Form,
    Hose,
    LengthBasis,
    Material,
    Tightening,
)

Part = Literal["hose", "end_a", "end_b", "override"]
NOT_KNOWN = Message("words-not-known")
NOTHING_TO_TIGHTEN = Message("words-nothing-to-tighten")


def part(name: str) -> Message:
    """The hose, an end, or the figure given ("override"), as a value of other messages."""
    return Message(f"words-part-{name}")


def connection(which: Connection | str) -> Message:
    return Message(f"words-connection-{which}")


def form(which: Form | str) -> Message:
    return Message(f"words-form-{which}")


def material(which: Material | str) -> Message:
    return Message(f"words-material-{which}")


def fluid(which: Fluid | str) -> Message:
    return Message(f"words-fluid-{which}")


def fluid_of(spec: AssemblySpec) -> Message:
    """The fluid that was entered; without one an assembly is for mineral oil only."""
    return Message("words-fluid-not_entered") if spec.fluid is None else fluid(spec.fluid)


def cover(which: Cover | str) -> Message:
    return Message(f"words-cover-{which}")


def basis(which: Basis | str) -> Message:
    """Where a count of flats or turns starts: "from finger-tight"."""
    return Message(f"words-basis-{which}")


def length_basis(which: LengthBasis | str) -> Message:
    return Message(f"words-length_basis-{which}")


def shape(end: End) -> Message:
    """Straight, or the elbow with its drop."""
    if not end.is_elbow:
        return Message("words-shape-straight")
    if end.drop_mm is None:
        return Message("words-shape-elbow", angle=angle(end.angle_deg))
    return Message("words-shape-elbow-drop", angle=angle(end.angle_deg), drop=length(end.drop_mm))


def end(which: End) -> Message:
    """One end in a line: size, family, form, shape, and what is not ordinary about it."""
    common: dict[str, Value] = {
        "size": which.size_text,
        "connection": family_of(which),
        "form": form(which.form),
        "shape": shape(which),
    }
    ordinary = which.material is Material.CARBON_STEEL
    if which.hose_dash is None:
        if ordinary:
            return Message("words-end", **common)
        return Message("words-end-material", **common, material=material(which.material))
    if ordinary:
        return Message("words-end-jump", **common, dash=which.hose_dash)
    return Message(
        "words-end-material-jump", **common, material=material(which.material), dash=which.hose_dash
    )


def family_of(which: End) -> Message:
    """What stands behind the size; behind a description it is in brackets, or the two would read as one name."""
    return connection(which.connection) if which.description is None else Message("words-end-described")


def end_family(which: End) -> Message:
    """Size, family and form only: "-12 37° flare (JIC), male"."""
    return Message(
        "words-end-family",
        size=which.size_text,
        connection=family_of(which),
        form=form(which.form),
    )


def end_title(which: End) -> Message:
    """Size and family: "-12 37° flare (JIC)"."""
    return Message("words-end-title", size=which.size_text, connection=family_of(which))


def hose(which: Hose) -> Message:
    """The hose in a line: "SAE 100R2 -12 (3/4 in)", "SAE 100R5 -12 (for 3/4 in tube)"."""
    inches = units.inch_text(which.dash * units.MM_PER_INCH / 16)
    if names_tube(which.standard):
        return Message("words-hose-tube", standard=which.standard, dash=which.dash, inches=inches)
    if which.edition:
        return Message(
            "words-hose-edition",
            standard=which.standard,
            edition=which.edition,
            dash=which.dash,
            inches=inches,
        )
    return Message("words-hose", standard=which.standard, dash=which.dash, inches=inches)


def vacuum(bar: float) -> Message:
    """How far below the atmosphere the inside of a hose may go."""
    return Message("words-vacuum", mbar=round(bar * 1000))


def overall_length(spec: AssemblySpec) -> Message:
    """The overall length with its basis."""
    return Message("words-length", length=length(spec.length_mm), basis=length_basis(spec.length_basis))


def clocking(spec: AssemblySpec) -> Message | None:
    """The clocking angle with its convention; None unless both ends are elbows."""
    if spec.clocking_deg is None:
        return None
    return Message("words-clocking", angle=angle(spec.clocking_deg))


def flats(low: float, high: float) -> Message:
    """A count of flats: "1 to 1 1/4 flats"."""
    return Message("words-flats", count=count(low, high), many=_many(high))


def turns(low: float, high: float) -> Message:
    """Whole turns, for taper threads: "1 1/2 to 3 turns"."""
    return Message("words-turns", count=count(low, high), many=_many(high))


def counted(tightening: Tightening, end: End) -> Message | None:
    """Flats, or turns for a taper thread, with the basis they are counted from; None where not known."""
    said, start = turned(tightening, end), tightening.flats_basis
    return None if said is None or start is None else Message("words-counted", count=said, basis=basis(start))


def or_counted(count: Message) -> Message:
    """What ``counted`` answered, beside a torque: either is done, never both."""
    return Message("words-counted-or", **count.values)


def turned(tightening: Tightening, end: End) -> Message | None:
    """The count of flats, or of turns for a taper thread, without its basis; None where not known."""
    low, high = tightening.flats_min, tightening.flats_max
    if low is None or high is None:
        return None
    return turns(low / 6, high / 6) if end.connection.is_taper else flats(low, high)


_BRIEFLY = {
    "run_on_dry": "lubricated",
    "threads_fluid_or_grease": "threads",
    "threads_engine_oil": "threads",
    "sealant_two_threads_bare": "sealed",
    "o_ring_system_oil": "o_ring_oiled",
    "o_ring_hydraulic_fluid": "o_ring_oiled",
}
"""What is lubricated, for a tag too small to say with what."""


def lubricated(torque: Value, tightening: Tightening, *, briefly: bool = False) -> Message | None:
    """A torque with how the joint is lubricated at it; None where the tag does not say."""
    said = lubrication(tightening, briefly=briefly)
    return None if said is None else Message("words-torque-lubricated", torque=torque, lubrication=said)


def lubrication(tightening: Tightening, *, briefly: bool = True) -> Message | None:
    """How the joint is lubricated at its torque; None where the tag does not say."""
    word = tightening.lubrication
    if word is None:
        return None
    return Message(f"trade-lubrication-{_BRIEFLY.get(word, word) if briefly else word}")


def _many(high: float) -> str:
    """Singular up to one, as the trade counts ("1/2 flat"); French has it below two ("1 1/2 pan")."""
    if high <= 1:
        return "one"
    return "below_two" if high < 2 else "other"
