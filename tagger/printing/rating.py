"""What a tag says of the pressure: the figure with its mark, or what is known and a line to write on.

Each is a view of ``tagger.rated``; a tag has little room, so that there are long and short forms.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from tagger import phrases, rated
from tagger.messages import Message, pressure
from tagger.printing.content import Tag
from tagger.printing.words import once, voices
from tagger.spec import AssemblySpec, Part, TagContent

CAPTION = Message("printing-field-working_pressure")


@dataclass(frozen=True)
class Plate:
    """The words of a pressure box. ``figures``: bar and psi; empty where the pressure is not known.

    ``forms`` say the same below the figures, or in their place: the fullest first, the shortest last.
    """

    captions: tuple[str, ...]
    figures: tuple[str, ...]
    forms: tuple[tuple[str, ...], ...]


def plate(tag: Tag, languages: tuple[str, ...], dangers: bool) -> Plate:
    """What stands in a pressure box, in each language; with the dangers where nothing else tells them."""
    bar = tag.content.working_pressure_bar
    more = short_dangers(tag) if dangers else []
    if bar is not None and not tag.content.unverified_parts and not more:
        return _of_figures_alone(bar, languages)
    spoken = voices(languages)
    forms = [form(tag.content) + more for form in (_full, _short, _shortest, _in_one)]
    return Plate(
        captions=once(voice(CAPTION) for voice in spoken),
        figures=() if bar is None else tuple(text for text in spoken[0].pair(pressure(bar)) if text),
        forms=once(once(voice(line) for voice in spoken for line in form) for form in forms),
    )


@lru_cache(maxsize=512)
def _of_figures_alone(bar: float, languages: tuple[str, ...]) -> Plate:
    """Of a pressure that nothing more is said of, as of most."""
    spoken = voices(languages)
    figures = tuple(text for text in spoken[0].pair(pressure(bar)) if text)
    return Plate(once(voice(CAPTION) for voice in spoken), figures, ((),))


def short_lines(tag: Tag) -> list[Message]:
    """The working pressure in as few lines as it takes."""
    return _figure(tag.content) + _short(tag.content)


def shortest_lines(tag: Tag) -> list[Message]:
    """The same where there is least room."""
    return _figure(tag.content) + _shortest(tag.content)


def lines_in_one(tag: Tag) -> list[Message]:
    """The same in the fewest lines of a wide box."""
    return _figure(tag.content) + _in_one(tag.content)


def _figure(content: TagContent) -> list[Message]:
    bar = content.working_pressure_bar
    return [] if bar is None else [Message("printing-value", value=pressure(bar))]


def short_dangers(tag: Tag) -> list[Message]:
    """The dangers that the tag carries, in one line."""
    named = tuple(Message(f"printing-danger-{danger}") for danger in tag.content.dangers)
    return [Message("printing-dangers", dangers=named)] if named else []


def shortest_dangers(tag: Tag) -> list[Message]:
    """The dangers by name alone."""
    named = tuple(Message(f"printing-danger-{danger}") for danger in tag.content.dangers)
    return [Message("printing-dangers-least", dangers=named)] if named else []


def _full(content: TagContent) -> list[Message]:
    doubtful = [rated.unverified(content)] if content.unverified_parts else []
    if content.working_pressure_bar is not None:
        return doubtful
    if not content.unknown_parts:
        return [phrases.NOT_KNOWN]
    write = [
        Message(f"printing-write-{part}", what=_named(part, content.spec)) for part in content.unknown_parts
    ]
    return [*rated.at_most(content), *write, *doubtful]


def _named(part: Part, spec: AssemblySpec) -> Message:
    """Which hose or end it is; an end of no family apart from its description."""
    end = {"end_a": spec.end_a, "end_b": spec.end_b}.get(part)
    if end is not None and end.description is not None:
        return Message("printing-end-described", description=end.description)
    return rated.named(part, spec)


def _short(content: TagContent) -> list[Message]:
    doubtful = []
    if content.unverified_parts:
        doubtful.append(Message("printing-unverified", parts=rated.parts(content.unverified_parts)))
    if content.working_pressure_bar is not None:
        return doubtful
    if not content.unknown_parts:
        return [phrases.NOT_KNOWN]
    write = Message("printing-write", parts=rated.parts(content.unknown_parts))
    known = [Message("printing-at_most", **line.values) for line in rated.at_most(content)]
    return [*known, write, *doubtful]


def _shortest(content: TagContent) -> list[Message]:
    """As ``_short``; what the known parts allow without their names, for it bounds the whole assembly."""
    said = _short(content)
    if said == [phrases.NOT_KNOWN]:
        return [Message("printing-not-known-least")]
    if content.at_most_bar is not None:
        said[0] = Message("printing-at_most-all", pressure=pressure(content.at_most_bar))
    return said


def _in_one(content: TagContent) -> list[Message]:
    """As ``_shortest``; the line to write on and what no published source rates in one: wide boxes hold it in one line."""
    said = _shortest(content)
    if content.working_pressure_bar is None and content.unknown_parts and content.unverified_parts:
        both = {
            "parts": rated.parts(content.unknown_parts),
            "doubtful": rated.parts(content.unverified_parts),
        }
        said[-2:] = [Message("printing-write-unverified", **both)]
    return said
