"""Values of messages as Fluent takes them: figures in both systems, nested messages, lists, dates.

The phone does the same in ``api/static/reader/i18n.js``; a browser test holds the two together.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import TYPE_CHECKING, Any

from babel import Locale
from fluent.runtime.types import FluentFloat, FluentInt, FluentType

from tagger.i18n import figures
from tagger.messages import Figure, Message, Value

if TYPE_CHECKING:
    from tagger.i18n.translator import Translator

SI, US, END = "\ue000", "\ue001", "\ue002"
"""Private-use signs around a figure's two systems, where a page wants to mark them up."""


class _Nested(FluentType):
    """A message as a value of another one; SAY gives it further values, such as its case."""

    def __init__(self, message: Message, render: Callable[..., str]) -> None:
        self.message, self.render = message, render

    def format(self, locale: Locale) -> str:
        return self.render(self.message)


class _Figure(FluentType):
    def __init__(self, figure: Figure, translator: Translator, marked: bool) -> None:
        self.figure, self.translator, self.marked = figure, translator, marked

    def format(self, locale: Locale) -> str:
        si, us = figures.shown(self.figure, self.translator)
        if us is None:
            return si
        return f"{SI}{si}{US}{us}{END}" if self.marked else f"{si} ({us})"


class _List(FluentType):
    def __init__(self, items: list[str], language: str) -> None:
        self.items, self.language = items, language

    def format(self, locale: Locale) -> str:
        return ", ".join(self.items)


LONGEST, LONGEST_LIST = 1000, 2200
"""Characters that are shown of a text and of a list: Fluent renders a value of more than 2500 as "{???}"."""


def fluent_value(value: Value, translator: Translator, marked: bool) -> FluentType | str:
    """A value as the bundle takes it."""
    match value:
        case Message():
            return _Nested(value, lambda m, **more: translator.render(m, marked=marked, more=more))
        case Figure():
            return _Figure(value, translator, marked)
        case bool():
            return str(value)
        case str():
            return value if len(value) <= LONGEST else value[:LONGEST] + "…"
        case int():
            return FluentInt(value, useGrouping=False)
        case float():
            return FluentFloat(value, useGrouping=False, maximumFractionDigits=3)
        case date():
            return figures.show_date(value, translator)
        case _:
            items = [_text(fluent_value(item, translator, marked), translator) for item in value]
            return _List(_no_longer(items), translator.language)


def _no_longer(items: list[str]) -> list[str]:
    """The items as far as they are no longer than LONGEST_LIST together, then "…"."""
    length = 0
    for place, item in enumerate(items):
        length += len(item) + len(", ")
        if length > LONGEST_LIST:
            return [*items[:place], "…"]
    return items


def _text(value: FluentType | str, translator: Translator) -> str:
    return value if isinstance(value, str) else value.format(translator.locale)


def say(value: Any, **more: Any) -> Any:
    """Fluent function: ``SAY($part, case: "of")`` renders a nested message with further values."""
    return value.render(value.message, **more) if isinstance(value, _Nested) else value


def join(value: Any, style: Any = "and") -> Any:
    """Fluent function: ``LIST($items)`` is "a, b and c"; ``LIST($items, style: "or")`` is "a, b or c"."""
    if not isinstance(value, _List):
        return value
    from babel.lists import format_list

    return format_list(value.items, style="or" if str(style) == "or" else "standard", locale=value.language)
