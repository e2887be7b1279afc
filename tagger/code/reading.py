"""What a scanned tag says by itself, without any database."""

from __future__ import annotations

from typing import Any

from tagger import rated
from tagger.code import number, payload
from tagger.code.link import Link
from tagger.errors import Problem, Speaks, SpecError
from tagger.messages import Message, english
from tagger.spec import TagContent


def content_of(found: Link) -> TagContent:
    """The content in a link's digits.

    Raises SpecError for a number alone, PayloadError for digits that are damaged.
    """
    if found.digits is None:
        raise SpecError(Problem("tag", number.format(found.number), Message("code-number-alone")))
    return payload.decode(found.digits)


def as_dict(content: TagContent, found: Link | None = None, t: Speaks | None = None) -> dict[str, Any]:
    """``{"number", "link", "spec", ...}``; number and link are null for digits without a link.

    ``working_pressure_message``: what is said of the pressure, its text in the language of ``t``.
    """
    said = rated.message(content)
    return {
        "number": number.format(found.number) if found else None,
        "link": found.text if found else None,
        "spec": content.spec.as_dict(),
        **content.model_dump(mode="json", exclude={"spec"}),
        "working_pressure_message": said.as_json() | {"text": t(said) if t else english(said)},
    }
