"""One family of exceptions; every one tells the field, the value, why, and the mend."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date
from typing import Any, Protocol

from pydantic import ValidationError

from tagger.messages import Message, as_is, english


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
        given = "" if self.value is None else f" (given: {_plain(self.value)!r})"
        mend = f" {self.mend}" if self.mend else ""
        return f"{self.field}: {self.why}{given}.{mend}"

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
    """A figure with a unit that cannot be read."""


class SpecError(TaggerError):
    """A spec that does not describe an assembly."""


class NumberError(TaggerError):
    """Not a tag number, or one with a slip in it."""


class PayloadError(TaggerError):
    """Digits that are not a payload, or a damaged one."""


class LinkError(TaggerError):
    """Not a link this system can read."""


class TradeError(TaggerError):
    """Parts that cannot exist, or cannot be put together."""


class TemplateError(TaggerError):
    """A label template that cannot be used; ``field`` starts with its file name."""


class SymbolError(TaggerError):
    """A symbol that does not fit or would not scan."""


class StoreError(TaggerError):
    """A record that cannot be kept or found."""


def problems_of(error: ValidationError) -> list[Problem]:
    """Turns a pydantic error into problems with dotted fields and plain words."""
    return problems_from(error.errors(include_url=False))


def problems_from(items: Iterable[Mapping[str, Any]]) -> list[Problem]:
    """The same from the items of such an error."""
    found = []
    for item in items:
        field = ".".join(str(part) for part in item["loc"] if not _is_branch(part)) or "spec"
        kind, context = item["type"], item.get("ctx", {})
        value: object = item.get("input")
        if isinstance(value, dict | list):
            value = None
        if kind == "extra_forbidden":
            found.append(Problem(field, value, "is not a field here", "Take it out, or check its spelling."))
        elif kind == "missing":
            found.append(Problem(field, None, "is missing", "Add it."))
        elif isinstance(context.get("error"), TaggerError):
            for inner in context["error"].problems:
                path = ".".join(part for part in (field if field != "spec" else "", inner.field) if part)
                given = inner.value if inner.value is not None else value
                found.append(Problem(path or "spec", given, inner.message))
        elif kind in ("enum", "literal_error"):
            found.append(Problem(field, value, "is not known here", f"Use one of: {context['expected']}."))
        else:
            found.append(_in_words(field, value, kind, context, item["msg"]))
    return found


_UNITS = {"mm": " mm", "bar": " bar", "c": " °C", "nm": " N·m", "deg": "°"}  # as a field's name ends


def _in_words(field: str, value: object, kind: str, context: dict[str, Any], said: str) -> Problem:
    """What pydantic says to programmers, as a builder would: with the limit and the mend."""
    unit = _UNITS.get(field.rpartition("_")[2], "")
    match kind:
        case "greater_than_equal":
            least = f"{context['ge']:g}{unit}"
            return Problem(
                field, value, f"is less than {least}, the least taken here", f"Give {least} or more."
            )
        case "less_than_equal":
            most = f"{context['le']:g}{unit}"
            return Problem(field, value, f"is more than {most}, the most taken here", f"Give {most} or less.")
        case "string_too_long":
            most = context["max_length"]
            value = f"{str(value)[:40]}..."
            return Problem(field, value, f"is longer than {most} characters", f"Shorten it to {most}.")
        case "string_too_short":
            return Problem(field, value, "is empty", "Fill it in.")
        case "string_type":
            return Problem(field, value, "is not text", "Put it in quotes.")
        case "int_type" | "int_parsing" | "int_from_float" | "int_parsing_size":
            return Problem(field, value, "is not a whole number", "Give one such as 12.")
        case "float_type" | "float_parsing" | "finite_number":
            return Problem(field, value, "is not a figure", "Give one such as 1.5.")
        case "tuple_type" | "list_type":
            return Problem(field, value, "is not a list", 'Put it in brackets, such as ["one", "another"].')
        case "model_type" | "model_attributes_type" | "dict_type":
            mend = 'Give its fields in braces, such as {"field": 1}.'
            return Problem(field, value, "is not a group of named fields", mend)
        case "date_type" | "date_parsing" | "date_from_datetime_parsing" | "date_from_datetime_inexact":
            return Problem(field, value, "is not a date", "Give year, month and day, such as 2027-03-31.")
    return Problem(field, value, said[:1].lower() + said[1:])


def _is_branch(part: object) -> bool:
    """pydantic names the arm of a union it tried; that is no field of the user's."""
    return isinstance(part, str) and (
        part.startswith(("literal[", "function-", "constrained-", "lax-or-strict"))
        or part in {"int", "float", "str"}
    )
