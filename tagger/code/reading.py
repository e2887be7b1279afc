"""What a scanned tag says by itself, without any database."""

from __future__ import annotations

from typing import Any

from tagger.code import number, payload
from tagger.code.link import Link
from tagger.errors import Problem, SpecError
from tagger.messages import Message
from tagger.spec import TagContent


def content_of(found: Link) -> TagContent:
    """The content in a link's digits.

    Raises SpecError for a number alone, PayloadError for digits that are damaged.
    """
    if found.digits is None:
        raise SpecError(Problem("tag", number.format(found.number), Message("code-number-alone")))
    return payload.decode(found.digits)


def as_dict(content: TagContent, found: Link | None = None) -> dict[str, Any]:
    """``{"number", "link", "spec", ...}``; number and link are null for digits without a link."""
    return {
        "number": number.format(found.number) if found else None,
        "link": found.text if found else None,
        "spec": content.spec.as_dict(),
        **content.model_dump(mode="json", exclude={"spec"}),
    }
