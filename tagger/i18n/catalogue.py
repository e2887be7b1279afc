"""The catalogues of one language: ``<language>/<room>.ftl``.

A file is read when its first message is asked for, and each message is parsed when it is first shown:
parsing a whole file takes longer than most commands.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import cache
from typing import Any, Final

from fluent.runtime import FluentBundle, FluentResource
from fluent.runtime.types import FluentNone, FluentType

from tagger.i18n.languages import folder

TERMS: Final = "words"
"""The room whose terms and names every other room may use: always there."""


@cache
def source(language: str, room: str) -> str:
    """One catalogue file as it is kept; empty where the language has none of that room."""
    file = folder(language).joinpath(f"{room}.ftl")
    return file.read_text(encoding="utf-8") if file.is_file() else ""


@cache
def rooms(language: str) -> tuple[str, ...]:
    """The catalogue files of a language, by name."""
    return tuple(
        sorted(
            place.name.removesuffix(".ftl")
            for place in folder(language).iterdir()
            if place.name.endswith(".ftl")
        )
    )


@cache
def entries(language: str, room: str) -> dict[str, str]:
    """The source of each message and term of a room, by its id."""
    parts = _START.split(source(language, room))[1:]
    return {part[: part.index("=")].rstrip(): part for part in parts}


_START: Final = re.compile(r"^(?=-?[A-Za-z][\w-]* *=)", re.MULTILINE)
_REFERENCE: Final = re.compile(r"\{\s*(-?[a-z][\w-]*)")
"""What a message may name inside braces: another message, or a term."""


class Catalogue:
    """The messages of one language. Only those that are asked for are parsed."""

    def __init__(self, language: str) -> None:
        from tagger.i18n import values

        functions: dict[str, Callable[..., Any]] = {"SAY": values.say, "LIST": values.join}
        self.language = language
        self.bundle = FluentBundle([language], functions=functions, use_isolating=False)
        self._parsed: set[str] = set()

    def has(self, id: str) -> bool:
        """Whether the language has that message."""
        return id in self._room_of(id)

    def _room_of(self, id: str) -> dict[str, str]:
        return entries(self.language, TERMS if id.startswith("-") else id.partition("-")[0])

    def _parse(self, id: str) -> None:
        """Adds a message to the bundle, with the messages and terms that it names."""
        written = self._room_of(id).get(id)
        if written is None or id in self._parsed:
            return
        for named in _REFERENCE.findall(written):
            if named != id:
                self._parse(named)
        self.bundle.add_resource(FluentResource(written))
        self._parsed.add(id)  # last: another thread may ask for it meanwhile, and parses it too

    def text(self, id: str, attribute: str | None, values: dict[str, FluentType | str]) -> str:
        """One message, or one attribute of it, filled in; empty where it has no such attribute."""
        self._parse(id)
        message = self.bundle.get_message(id)
        pattern = message.attributes.get(attribute) if attribute else message.value
        if pattern is None:
            return ""
        text, _ = self.bundle.format_pattern(pattern, values)
        return str(text) if isinstance(text, FluentNone) else text


@cache
def catalogue(language: str) -> Catalogue:
    """The catalogue of one language, read once."""
    return Catalogue(language)
