"""Text as it may be kept: so long, and without the characters that a database or a page chokes on.

The types of the columns check it, so no way into the database goes round the check, and both
databases refuse the same (PostgreSQL refuses long text and NUL by itself, SQLite neither).
"""

from __future__ import annotations

import json
import re
from dataclasses import dataclass
from typing import Any

from sqlalchemy import JSON, String, Text, TypeDecorator
from sqlalchemy.dialects.postgresql import JSONB
from sqlalchemy.engine import Dialect
from sqlalchemy.exc import DontWrapMixin
from sqlalchemy.sql.operators import OperatorType
from sqlalchemy.types import TypeEngine

from tagger.errors import Problem, StoreError
from tagger.messages import Message

# C0 but tab and the line ends, DEL, and halves of a UTF-16 pair, which UTF-8 cannot hold.
_CONTROL = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f\ud800-\udfff]")
_SHOWN = 40
_JSON = JSON(none_as_null=True).with_variant(JSONB(none_as_null=True), "postgresql")
_DOUBTFUL = re.compile(r"[\x7f\ud800-\udfff]|\\(?:u00[01]|[bf])")
"""What JSON shows of such a character, and of some that may stand: without it there is none."""


class TextRefused(StoreError, DontWrapMixin):
    """A text that cannot be kept; SQLAlchemy lets it through as it is."""


def clean(text: str) -> str:
    """A text that others wrote, fit to be kept."""
    return _CONTROL.sub("\N{REPLACEMENT CHARACTER}", text)


def _refuse_control(field: str, text: str) -> None:
    if _CONTROL.search(text):
        raise TextRefused(Problem(field, clean(text)[:_SHOWN], Message("store-control-character")))


@dataclass(frozen=True, slots=True)
class Written:
    """Plain JSON values as the text that is kept, looked through already."""

    text: str


def written(value: Any, field: str = "") -> Written:
    """The values as text, always the same for the same values; ``field`` as ``Json`` has it. Raises StoreError."""
    text = json.dumps(value, sort_keys=True, ensure_ascii=False)
    if _DOUBTFUL.search(text):
        _check_within(field, value)
    return Written(text)


def as_json(value: Any) -> str:
    """What a JSON column is sent."""
    return value.text if isinstance(value, Written) else json.dumps(value)


class Line(TypeDecorator[str]):
    """Text of at most ``length`` characters, or of any length; ``field`` names it in a refusal."""

    impl = String
    cache_ok = True

    def __init__(self, length: int | None, field: str) -> None:
        super().__init__(length)
        self.length, self.field = length, field

    def load_dialect_impl(self, dialect: Dialect) -> TypeEngine[Any]:
        return unchecked(self)

    def process_bind_param(self, value: str | None, dialect: Dialect) -> str | None:
        if value is not None:
            if self.length is not None and len(value) > self.length:
                wrong = Message("store-too-long", most=self.length)
                raise TextRefused(Problem(self.field, clean(value)[:_SHOWN] + "...", wrong))
            _refuse_control(self.field, value)
        return value

    def coerce_compared_value(self, op: OperatorType | None, value: Any) -> TypeEngine[Any]:
        """Looked for, a text may be longer than any that is kept: it is not found."""
        return Line(None, self.field)


class Json(TypeDecorator[Any]):
    """Plain JSON values; ``field`` stands before the path of a text in a refusal."""

    impl = JSON
    cache_ok = True

    def __init__(self, field: str = "") -> None:
        super().__init__(none_as_null=True)
        self.field = field

    def load_dialect_impl(self, dialect: Dialect) -> TypeEngine[Any]:
        return unchecked(self)

    def process_bind_param(self, value: Any, dialect: Dialect) -> Any:
        if not isinstance(value, Written):
            refuse_control(self.field, value)
        return value


def refuse_control(field: str, value: Any) -> None:
    """Raises TextRefused for a character in a text, or in any text within plain JSON values, that cannot be kept.

    ``field`` stands before the path of the text.
    """
    if _has_control(value):
        _check_within(field, value)


def _has_control(value: Any) -> bool:
    """Whether there is such a character in any text within; it says not where."""
    left = [value]
    while left:
        one = left.pop()
        if isinstance(one, str):
            if _CONTROL.search(one):
                return True
        elif isinstance(one, dict):
            left.extend(one.values())
        elif isinstance(one, list | tuple):
            left.extend(one)
    return False


def _check_within(path: str, value: Any) -> None:
    if isinstance(value, str):
        _refuse_control(path, value)
    elif isinstance(value, dict):
        for name, inner in value.items():
            _check_within(f"{path}.{clean(str(name))}" if path else clean(str(name)), inner)
    elif isinstance(value, list | tuple):
        for inner in value:
            _check_within(path, inner)


def unchecked(kind: TypeEngine[Any]) -> TypeEngine[Any]:
    """The type beneath: a copy of what is kept already must not be refused."""
    if isinstance(kind, Line):
        return Text() if kind.length is None else String(kind.length)
    return _JSON if isinstance(kind, Json) else kind
