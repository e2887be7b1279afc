"""Renders messages in one language."""

from __future__ import annotations

from functools import cached_property
from html import escape
from typing import Any

from babel import Locale

from tagger.i18n import figures
from tagger.i18n import values as fluent
from tagger.i18n.catalogue import Catalogue, catalogue
from tagger.i18n.languages import LANGUAGES, SOURCE
from tagger.messages import Figure, Message, Value

_BOTH = '<span class="both"><span class="si">'
_MARKS = {
    ord(fluent.SI): _BOTH,
    ord(fluent.US): '</span> <span class="us">',
    ord(fluent.END): "</span></span>",
}


class Translator:
    """Messages as text in one language; English where a language lacks a message.

    >>> Translator("de").language, Translator("xx").language
    ('de', 'en')
    """

    def __init__(self, language: str = SOURCE) -> None:
        self.language = language if language in LANGUAGES else SOURCE

    @cached_property
    def locale(self) -> Locale:
        return Locale.parse(self.language, sep="-")

    def __call__(self, message: Message | str, /, **values: Value) -> str:
        """The text of a message, or of an id with its values."""
        return self.render(_message(message, values))

    def mend(self, message: Message) -> str:
        """What to do about it: the message's ``.mend``; empty where it has none."""
        return self.render(message, attribute="mend")

    def html(self, message: Message | str, /, **values: Value) -> str:
        """The text as HTML, escaped; each figure marked so that a page can put the reader's system first."""
        return escape(self.render(_message(message, values), marked=True), quote=True).translate(_MARKS)

    def figure(self, figure: Figure) -> str:
        """A figure alone, in both systems: "207 bar (3000 psi)"."""
        si, us = figures.shown(figure, self)
        return si if us is None else f"{si} ({us})"

    def torque_range(self, low: str, high: str) -> str:
        """From ``low`` to ``high``; the unit stands with ``high``."""
        return self("words-range", low=low, high=high)

    def torque_limit(self, high: str) -> str:
        """A ceiling that has no lower value."""
        return self("words-at-most", high=high)

    def as_json(self, message: Message) -> dict[str, Any]:
        """A message for programs and people: its id, its values, its text in this language."""
        return message.as_json() | {"text": self(message)}

    def has(self, id: str) -> bool:
        """Whether there is such a message."""
        return self._catalogue_of(id) is not None

    def render(
        self,
        message: Message,
        *,
        attribute: str | None = None,
        marked: bool = False,
        more: dict[str, Any] | None = None,
    ) -> str:
        """The text of a message or of one of its attributes.

        ``marked``: figures stand between the private-use signs of ``tagger.i18n.values``.
        ``more``: further values, such as the case a nested message is asked for in.
        """
        found = self._catalogue_of(message.id)
        if found is None:
            return message.id if attribute is None else ""
        given = {name: fluent.fluent_value(value, self, marked) for name, value in message.values.items()}
        return found.text(message.id, attribute, {"case": "", **given, **(more or {})})

    def decimal(self, text: str) -> str:
        """A figure's text with the decimal sign of the language.

        >>> Translator("de").decimal("37.5 mm")
        '37,5 mm'
        """
        sign = self.decimal_sign
        return text if sign == "." else text.replace(".", sign)

    @cached_property
    def decimal_sign(self) -> str:
        """What the language writes between units and tenths."""
        return self("words-decimal-sign")

    def _catalogue_of(self, id: str) -> Catalogue | None:
        for language in dict.fromkeys((self.language, SOURCE)):
            found = catalogue(language)
            if found.has(id):
                return found
        return None


def _message(message: Message | str, values: dict[str, Value]) -> Message:
    return message if isinstance(message, Message) else Message(message, **values)
