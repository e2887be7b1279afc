"""The captions of the bench's fields: a form and a problem name a field in the same words."""

from __future__ import annotations

from tagger import phrases
from tagger.i18n import Translator
from tagger.messages import Message, as_is
from tagger.record import RECORD_FIELDS

_ENDS = {"end_a": "bench-end_a", "end_b": "bench-end_b"}
_ENGLISH = Translator()


def caption(field: str) -> Message:
    """The caption of a field by its name; a name that no form has stays as it is.

    >>> str(caption("hose.lot")), str(caption("end_a.size")), str(caption("row 3"))
    ('Reel lot', 'End A, Size', 'row 3')
    """
    end, _, part = field.partition(".")
    if end in _ENDS:
        if not part:
            return Message(_ENDS[end])
        return Message("bench-field-of-end", end=phrases.part(end), field=_known(f"end.{part}", part))
    return _known(field, field)


def _known(field: str, otherwise: str) -> Message:
    id = f"bench-field-{field.replace('.', '-')}"
    if _ENGLISH.has(id):
        return Message(id)
    return Message(f"words-record-{field}") if field in RECORD_FIELDS else as_is(otherwise)
