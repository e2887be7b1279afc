"""Messages as a tag shows them: short ranges, and one decimal sign on the whole tag."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache
from typing import TypeVar

from tagger.i18n import Translator, figures
from tagger.messages import Figure, Message

Once = TypeVar("Once", str, tuple[str, ...])


@dataclass(frozen=True)
class Voice:
    """One language of a tag. ``point``: decimals with a point, whatever the language writes.

    >>> from tagger.messages import Message, torque
    >>> Voice("de")(Message("printing-tighten-torque", end="A", torque=torque(103.4, 115)))
    'Anziehen A: 103,4–115 N·m (76–85 lbf·ft)'
    """

    language: str
    point: bool = False

    def __call__(self, message: Message) -> str:
        """The text of a message."""
        if message.id == "words-as-is":  # somebody's own text, the same in every language
            return str(message.values["text"])
        return _text(_Shown(message), self.language, self.point)

    def figure(self, figure: Figure) -> str:
        """A figure in both systems."""
        return _translator(self.language, self.point).figure(figure)

    def pair(self, figure: Figure) -> tuple[str, str | None]:
        """A figure in SI and in US units."""
        return figures.shown(figure, _translator(self.language, self.point))


@lru_cache(maxsize=64)
def voices(languages: tuple[str, ...]) -> tuple[Voice, ...]:
    """The voices of a tag in these languages.

    Two languages with different decimal signs share the point (ISO 80000-1 allows both signs), so that
    a figure reads the same in both and a line without words stands once.
    """
    mixed = len({Translator(language).decimal_sign for language in languages}) > 1
    return tuple(Voice(language, mixed) for language in languages)


def once(texts: Iterable[Once]) -> tuple[Once, ...]:
    """Each text once, in the order they come."""
    return tuple(dict.fromkeys(texts))


class _TagTranslator(Translator):
    """Ranges of torque as tables write them: "103–115 N·m", "≤ 115 N·m"."""

    def __init__(self, language: str, point: bool) -> None:
        super().__init__(language)
        self._point = point

    def decimal(self, text: str) -> str:
        return text if self._point else super().decimal(text)

    def torque_range(self, low: str, high: str) -> str:
        return f"{low}–{high}"

    def torque_limit(self, high: str) -> str:
        return f"≤ {high}"


@lru_cache(maxsize=16)
def _translator(language: str, point: bool) -> _TagTranslator:
    return _TagTranslator(language, point)


class _Shown:
    """A message, equal to another where both are shown alike."""

    __slots__ = ("look", "message")

    def __init__(self, message: Message) -> None:
        self.message, self.look = message, message.look

    def __hash__(self) -> int:
        return hash(self.look)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, _Shown) and self.look == other.look


@lru_cache(maxsize=2048)  # most lines of a run are the same
def _text(shown: _Shown, language: str, point: bool) -> str:
    return _translator(language, point)(shown.message)
