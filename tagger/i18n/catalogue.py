"""The catalogues of one language: ``<language>/<room>.ftl``, each parsed when its first message is asked for."""

from __future__ import annotations

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


class Catalogue:
    """The messages of one language. Only the rooms that are asked for are read."""

    def __init__(self, language: str) -> None:
        from tagger.i18n import values

        functions: dict[str, Callable[..., Any]] = {"SAY": values.say, "LIST": values.join}
        self.bundle = FluentBundle([language], functions=functions, use_isolating=False)
        self._rooms: set[str] = set()
        self._read(TERMS)

    def _read(self, room: str) -> None:
        if room not in self._rooms:
            self._rooms.add(room)
            self.bundle.add_resource(FluentResource(source(self.bundle.locales[0], room)))

    def has(self, id: str) -> bool:
        """Whether the language has that message."""
        self._read(id.partition("-")[0])
        return self.bundle.has_message(id)

    def text(self, id: str, attribute: str | None, values: dict[str, FluentType | str]) -> str:
        """One message, or one attribute of it, filled in; empty where it has no such attribute."""
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
