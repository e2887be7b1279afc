"""What is said of an assembly's working pressure: the figure, or as much of the truth as is known.

Tag, page, command line and papers say the same; the phone's side of this is
``api/static/reader/rated.js``.
"""

from __future__ import annotations

from collections.abc import Sequence

from tagger import phrases
from tagger.messages import Message, pressure
from tagger.spec import AssemblySpec, Danger, Part, TagContent

PARTS: tuple[Part, ...] = ("hose", "end_a", "end_b")


def parts(names: Sequence[Part]) -> Message:
    """Some of the hose and its ends, as a value of other messages: "hose and end A"."""
    return Message("words-parts", which="-".join(name for name in PARTS if name in names))


def lines(content: TagContent) -> tuple[Message, ...]:
    """The figure, with the parts that no published source rates; or the most that the known parts allow,
    and whose figure to use for each of the others. Each message is a whole line.
    """
    bar = content.working_pressure_bar
    if bar is not None and content.unverified_parts:
        return (
            Message("words-rated-unverified", pressure=pressure(bar), parts=parts(content.unverified_parts)),
        )
    if bar is not None:
        return (Message("words-rated", pressure=pressure(bar)),)
    if not content.unknown_parts:
        return (phrases.NOT_KNOWN,)
    ask = tuple(_use_the_manufacturers(name, content.spec) for name in content.unknown_parts)
    doubtful = (unverified(content),) if content.unverified_parts else ()
    return (*at_most(content), *ask, *doubtful)


def message(content: TagContent) -> Message:
    """The lines as one message of one to four sentences."""
    said = lines(content)
    match said:
        case (only,):
            return only
        case (first, second):
            return Message("words-two-sentences", first=first, second=second)
        case (first, second, third):
            return Message("words-three-sentences", first=first, second=second, third=third)
    first, second, third, fourth = said
    return Message("words-four-sentences", first=first, second=second, third=third, fourth=fourth)


def at_most(content: TagContent) -> tuple[Message, ...]:
    """What the known parts allow; empty where none is known."""
    if content.at_most_bar is None:
        return ()
    known = [name for name in PARTS if name not in content.unknown_parts]
    return (Message("words-rated-at_most", parts=parts(known), pressure=pressure(content.at_most_bar)),)


def unverified(content: TagContent) -> Message:
    """That no published source rates these parts."""
    return Message("words-unverified", parts=parts(content.unverified_parts))


def dangers(content: TagContent) -> tuple[Message, ...]:
    """The dangers that a tag carries: what is asked of the assembly is more than a source allows."""
    return tuple(_danger(danger, content.spec) for danger in content.dangers)


def named(part: Part, spec: AssemblySpec) -> Message:
    """Which hose or end it is: "SAE 100R2 -12 (3/4 in)", "1/4 NPT"."""
    if part == "hose":
        return phrases.hose(spec.hose)
    return phrases.end_title(spec.end_a if part == "end_a" else spec.end_b)


def _use_the_manufacturers(part: Part, spec: AssemblySpec) -> Message:
    return Message(f"words-rated-ask-{part}", what=named(part, spec))


def _danger(danger: Danger, spec: AssemblySpec) -> Message:
    if danger is Danger.FLUID:
        return Message("words-danger-fluid", fluid=phrases.fluid_of(spec))
    return Message(f"words-danger-{danger}")
