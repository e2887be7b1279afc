"""What the fields of a refused input are called on a page."""

from __future__ import annotations

from tagger.errors import Problem
from tagger.i18n import Translator
from tagger.messages import Message, as_is

_ENDS = ("end_a", "end_b")


def caption(field: str) -> Message:
    """The caption of a field of an input: ``contact.phone``, ``end_a.dash``; any field of an end is that end.

    A field without a caption is named as it is.
    """
    first = field.partition(".")[0]
    found = f"scan-field-{first if first in _ENDS else field.replace('.', '_')}"
    return Message(found) if Translator().has(found) else as_is(field)


def in_words(problem: Problem, t: Translator) -> str:
    """A refusal as one line: caption, why, what to do."""
    line = t(
        "scan-refused-line",
        field=caption(problem.field),
        why=problem.message,
        mend=t.mend(problem.message),
    )
    return line.strip()
