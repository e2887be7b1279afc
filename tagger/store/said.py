"""Messages kept in a column: ids and values, rendered when they are read."""

from __future__ import annotations

import json
from collections.abc import Iterable
from typing import Any

from sqlalchemy import Text, TypeDecorator
from sqlalchemy.engine import Dialect

from tagger.errors import Speaks
from tagger.messages import Message, as_is, english


class Said(tuple[Message, ...]):
    """Messages told one after the other, each with what to do about it. Empty: nothing is said.

    >>> str(Said([Message("store-print-retired")]))
    'The printer was removed before the job was sent. Send the tags to another printer.'
    """

    __slots__ = ()

    def text(self, t: Speaks) -> str:
        """All of them in the language of ``t``."""
        return " ".join(part for message in self for part in (t(message), t.mend(message)) if part)

    def as_json(self) -> list[dict[str, Any]]:
        """Ids and values as plain JSON values."""
        return [message.as_json() for message in self]

    def __str__(self) -> str:
        """The English text: for logs and tests."""
        return " ".join(
            part for message in self for part in (english(message), english(message, "mend")) if part
        )


class Told(TypeDecorator[Said]):
    """A nullable text column that keeps ``Said`` as JSON; an older row's sentence is read as it is."""

    impl = Text
    cache_ok = True

    def process_bind_param(self, value: Iterable[Message] | None, dialect: Dialect) -> str | None:
        said = Said(value or ())
        return json.dumps(said.as_json(), ensure_ascii=False) if said else None

    def process_result_value(self, value: str | None, dialect: Dialect) -> Said:
        if not value:
            return Said()
        try:
            return Said(Message.from_json(item) for item in json.loads(value))
        except (ValueError, TypeError, KeyError):  # written before messages were values
            return Said([as_is(value)])
