"""Models of what is sent to us, whose texts lose the blanks around them and are held to what their schema says."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from typing import Any, get_args

from annotated_types import MaxLen
from pydantic import BaseModel, ConfigDict, GetJsonSchemaHandler, SecretStr, ValidationInfo, field_validator
from pydantic.fields import FieldInfo
from pydantic.json_schema import JsonSchemaValue
from pydantic_core import CoreSchema, PydanticKnownError

NOT_BLANK = r"[^\t-\r \u0085\u00a0\u1680\u2000-\u200a\u2028\u2029\u202f\u205f\u3000]"
"""A mark that stays: none of Unicode's White_Space (PropList.txt), which is what pydantic takes from both ends."""


class Trimmed(BaseModel):
    """Blanks count until they are taken away: what is longer with them than its schema allows is refused.

    Where the schema asks for one mark at least, it says that it is none of the blanks.
    """

    model_config = ConfigDict(extra="forbid", str_strip_whitespace=True)

    @field_validator("*", mode="before")
    @classmethod
    def _as_long_as_described(cls, value: object, info: ValidationInfo) -> object:
        if isinstance(value, str):
            longest = _longest(cls, str(info.field_name))
            if longest is not None and len(value) > longest:
                raise PydanticKnownError("string_too_long", {"max_length": longest})
        return value

    @classmethod
    def __get_pydantic_json_schema__(
        cls, core_schema: CoreSchema, handler: GetJsonSchemaHandler
    ) -> JsonSchemaValue:
        described = handler(core_schema)
        for member in handler.resolve_ref_schema(described).get("properties", {}).values():
            for choice in (member, *member.get("anyOf", ())):
                if choice.get("type") == "string" and choice.get("minLength"):
                    choice.setdefault("pattern", NOT_BLANK)
        return described


@cache
def _longest(model: type[BaseModel], name: str) -> int | None:
    """How long a text this member may be; None: as long as it likes, or no text."""
    field = model.model_fields[name]
    if not {str, SecretStr} & set(_types(field.annotation)):
        return None
    return next((mark.max_length for mark in _marks(field) if isinstance(mark, MaxLen)), None)


def _types(annotation: Any) -> Iterator[Any]:
    yield annotation
    for inner in get_args(annotation):
        yield from _types(inner)


def _marks(field: FieldInfo) -> Iterator[Any]:
    """What the field is held to, by itself or in one of its choices."""
    yield from field.metadata
    for inner in _types(field.annotation):
        for about in getattr(inner, "__metadata__", ()):
            yield from about.metadata if isinstance(about, FieldInfo) else (about,)
