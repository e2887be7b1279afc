"""Text as it may be kept: so long, and without the characters that a database or a page chokes on.

The types of the columns check it, so no way into the database goes round the check, and both
databases refuse the same (PostgreSQL refuses long text and NUL by itself, SQLite neither).
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import chain
from typing import Any, NamedTuple

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


class SharedText(str):
    """A piece that many texts have in common: one object, kept once beside the memory (``spool``)."""

    __slots__ = ()


@dataclass(frozen=True, slots=True)
class Written:
    """Plain JSON values as text in pieces, looked through already: as it is kept, and as its digest is taken."""

    kept: tuple[str, ...]
    digested: tuple[str, ...]

    @property
    def text(self) -> str:
        """The text that is kept."""
        return "".join(self.kept)

    @property
    def to_keep(self) -> ToKeep:
        """The text that is kept, without the other."""
        return ToKeep(self.kept)


class ToKeep(NamedTuple):
    """A text of plain JSON values in pieces, looked through already, of which the digest is taken."""

    kept: tuple[str, ...]


_TO_KEEP = json.JSONEncoder(sort_keys=True, ensure_ascii=False).encode
_TO_DIGEST = json.JSONEncoder(sort_keys=True, ensure_ascii=False, separators=(",", ":")).encode


def written(value: Any, field: str = "") -> Written:
    """The values as text, always the same for the same values; ``field`` as ``Json`` has it. Raises StoreError."""
    return looked_through(as_kept(value), value, field)


def as_kept(value: Any) -> str:
    """Plain JSON values as they are kept."""
    return _TO_KEEP(value)


def looked_through(text: str, value: Any, field: str = "") -> Written:
    """The values as ``written``, whose text there is already."""
    if _is_doubtful(text):
        _check_within(field, value)
    return Written((text,), (_TO_DIGEST(_WHOLE.decode(text)),))


def _is_doubtful(text: str) -> bool:
    if "\\" not in text and text.isprintable():  # as it mostly is
        return False
    return _DOUBTFUL.search(text) is not None


def members(values: Mapping[str, Any]) -> Written:
    """Neighbouring members of an object as many have them, but for the name of the first; see ``written_with``."""
    (kept,), (digested,) = (whole := written(values)).kept, whole.digested
    after = len(min(values)) + len('{"":')
    return Written((SharedText(kept[after + 1 : -1]),), (SharedText(digested[after:-1]),))


def written_with(values: Mapping[str, Any]) -> Written:
    """An object as ``written``, in which ``members`` that are written already stand under the name of their first."""
    parts: list[Written] = []

    def stand_in(part: Written) -> str:
        parts.append(part)
        return _STANDS_IN

    text = json.JSONEncoder(sort_keys=True, ensure_ascii=False, default=stand_in).encode(values)
    kept = text.split(_SHOWN_AS)
    if len(kept) != len(parts) + 1 or any(map(_is_doubtful, kept)):
        _check_within("", values)
    digested = _TO_DIGEST(_WHOLE.decode(text)).split(_SHOWN_AS)
    return Written(
        _together(kept, [part.kept for part in parts]), _together(digested, [part.digested for part in parts])
    )


_STANDS_IN = "\0"  # no text that is kept has it
_SHOWN_AS = '"\\u0000"'


def _together(between: Sequence[str], parts: Iterable[Sequence[str]]) -> tuple[str, ...]:
    """The pieces of a text: what is between the parts, and those."""
    first, *others = between
    return first, *chain.from_iterable((*part, after) for part, after in zip(parts, others, strict=True))


def as_digested(value: Any) -> str:
    """Plain JSON values as their digest is taken; whole numbers are integers in it (``whole``)."""
    return _TO_DIGEST(value)


def whole(figure: float) -> float:
    """A whole number as an integer: PostgreSQL knows one kind of number in JSON."""
    return int(figure) if figure.is_integer() else figure


@lru_cache(maxsize=4096)  # a run's texts hold the same figures again and again
def _figure(text: str) -> float:
    return whole(float(text))


_WHOLE = json.JSONDecoder(parse_float=_figure)


def as_json(value: Any) -> str:
    """What a JSON column is sent."""
    return "".join(value.kept) if isinstance(value, ToKeep | Written) else json.dumps(value)


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
        if not isinstance(value, ToKeep | Written):
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
