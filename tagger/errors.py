"""One family of exceptions; each names the field, the value, why it is wrong and what to do."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date
from typing import Any, Final, Protocol

from pydantic import ValidationError

from tagger.messages import Message, Value, angle, as_is, english, length, temperature, torque


class Speaks(Protocol):
    """Who renders messages in one language: a ``tagger.i18n.Translator``."""

    def __call__(self, message: Message, /) -> str: ...

    def mend(self, message: Message) -> str: ...


@dataclass(frozen=True, init=False)
class Problem:
    """One thing wrong with an input.

    ``field`` is a dotted path in the input ("end_b.dash"), ``value`` what was entered there,
    ``message`` why that is wrong, with what to do about it as its ``.mend``.
    """

    field: str
    value: object
    message: Message

    def __init__(self, field: str, value: object, what: Message | str, mend: str = "") -> None:
        """``what``: a message, or somebody's own words (a printer's, a library's) as they are."""
        object.__setattr__(self, "field", field)
        object.__setattr__(self, "value", value)
        object.__setattr__(self, "message", as_is(what, mend) if isinstance(what, str) else what)

    @property
    def why(self) -> str:
        """Why it is wrong, in English: for logs and tests."""
        return english(self.message)

    @property
    def mend(self) -> str:
        """What to do about it, in English: for logs and tests."""
        return english(self.message, "mend")

    def __str__(self) -> str:
        """Field, value, why and what to do, in English: for logs and tracebacks."""
        value = "" if self.value is None else f" (value: {_plain(self.value)!r})"
        mend = f" {self.mend}" if self.mend else ""
        return f"{self.field}: {self.why.removesuffix('.')}{value}.{mend}"

    def as_dict(self, t: Speaks | None = None) -> dict[str, object]:
        """The problem as plain JSON values, its sentences in the language of ``t`` (default English)."""
        value = _plain(self.value)
        if not isinstance(value, str | int | float | bool | type(None)):
            value = repr(value)
        said = (
            {"why": t(self.message), "mend": t.mend(self.message)}
            if t
            else {"why": self.why, "mend": self.mend}
        )
        return {"field": self.field, "value": value, **self.message.as_json(), **said}


def _plain(value: object) -> object:
    """A day as people write it; everything else as it is."""
    return value.isoformat() if isinstance(value, date) else value


class TaggerError(Exception):
    """Base of everything this package raises on purpose."""

    def __init__(self, problems: Problem | Iterable[Problem]) -> None:
        self.problems = (problems,) if isinstance(problems, Problem) else tuple(problems)
        super().__init__("\n".join(str(problem) for problem in self.problems))

    def within(self, prefix: str) -> TaggerError:
        """The same error with every field put under ``prefix`` ("row 3")."""
        return type(self)(
            Problem(f"{prefix}.{p.field}" if p.field else prefix, p.value, p.message) for p in self.problems
        )


class UnitError(TaggerError, ValueError):
    """A value with a unit that cannot be read."""


class SpecError(TaggerError):
    """A spec that does not describe an assembly."""


class NumberError(TaggerError):
    """Not a tag number, or one with a wrong character."""


class PayloadError(TaggerError):
    """Digits that are not a payload, or a damaged one."""


class LinkError(TaggerError):
    """Not a link this system can read."""


class TradeError(TaggerError):
    """Parts that cannot exist, or cannot be put together."""


class TemplateError(TaggerError):
    """A label template that cannot be used; ``field`` starts with its file name.

    ``number``: the tag number of the label that it does not hold, where one of many does not fit.
    """

    number: str | None = None


class SymbolError(TaggerError):
    """A symbol that does not fit or would not scan."""


class StoreError(TaggerError):
    """A record that cannot be kept or found."""


def problems_of(error: ValidationError) -> list[Problem]:
    """Turns a pydantic error into problems with dotted fields and messages."""
    return problems_from(error.errors(include_url=False))


def problems_from(items: Iterable[Mapping[str, Any]]) -> list[Problem]:
    """The same from the items of such an error."""
    found = []
    for item in items:
        field = ".".join(str(part) for part in item["loc"] if not _is_branch(part)) or "spec"
        context = item.get("ctx", {})
        value: object = item.get("input")
        if isinstance(value, dict | list):
            value = None
        if isinstance(context.get("error"), TaggerError):
            for inner in context["error"].problems:
                path = ".".join(part for part in (field if field != "spec" else "", inner.field) if part)
                given = inner.value if inner.value is not None else value
                found.append(Problem(path or "spec", given, inner.message))
        elif item["type"] == "missing":
            found.append(Problem(field, None, Message("spec-missing")))
        elif item["type"] == "string_too_long":
            found.append(Problem(field, f"{str(value)[:40]}...", _message(field, item)))
        else:
            found.append(Problem(field, value, _message(field, item)))
    return found


def _message(field: str, item: Mapping[str, Any]) -> Message:
    """What pydantic says to programmers, as a builder would say it, with the limit."""
    kind, context = item["type"], item.get("ctx", {})
    if kind in _PLAIN:
        return _PLAIN[kind]
    match kind:
        case "enum" | "literal_error":
            return Message("spec-not-one-of", choices=tuple(re.findall(r"'([^']*)'", context["expected"])))
        case "greater_than_equal":
            return Message("spec-below-minimum", minimum=_limit(field, context["ge"]))
        case "greater_than":
            return Message("spec-not-more-than", limit=_limit(field, context["gt"]))
        case "less_than_equal":
            return Message("spec-above-maximum", maximum=_limit(field, context["le"]))
        case "string_too_long":
            return Message("spec-too-long", maximum=context["max_length"])
        case "string_pattern_mismatch":
            return Message("spec-not-the-pattern", pattern=context["pattern"])
        case "model_type" | "model_attributes_type" | "dict_type":
            return Message("spec-not-an-object", example='{"field": 1}')
    said = str(item["msg"])
    return as_is(said[:1].lower() + said[1:])


_PLAIN: Final = {
    "extra_forbidden": Message("spec-unknown-field"),
    "string_too_short": Message("spec-empty"),
    "string_type": Message("spec-not-text"),
    **dict.fromkeys(
        ("int_type", "int_parsing", "int_from_float", "int_parsing_size"),
        Message("spec-not-a-whole-number"),
    ),
    **dict.fromkeys(("float_type", "float_parsing", "finite_number"), Message("spec-not-a-number")),
    **dict.fromkeys(("bool_type", "bool_parsing"), Message("spec-not-yes-or-no")),
    **dict.fromkeys(("tuple_type", "list_type"), Message("spec-not-a-list")),
    **dict.fromkeys(
        ("date_type", "date_parsing", "date_from_datetime_parsing", "date_from_datetime_inexact"),
        Message("spec-not-a-date"),
    ),
    **dict.fromkeys(("json_invalid", "json_type"), Message("spec-json-unreadable")),
}
"""pydantic's kinds of error whose message needs no values."""


def _limit(field: str, limit: float) -> Value:
    """A limit with the unit that the end of the field's name tells."""
    match field.rpartition("_")[2]:
        case "mm":
            return length(limit)
        case "bar":
            return Message("spec-bar", number=limit)  # a Figure shows whole bars, and a limit may be 0.1
        case "c":
            return temperature(limit)
        case "nm":
            return torque(limit, limit)
        case "deg":
            return angle(limit)
    return limit


def _is_branch(part: object) -> bool:
    """pydantic names the arm of a union it tried; that is no field of the user's."""
    return isinstance(part, str) and (
        part.startswith(("literal[", "function-", "constrained-", "lax-or-strict"))
        or part in {"int", "float", "str"}
    )
