"""The verdict on one field of a comparison, and the sentences that every field uses."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from tagger.messages import Message, Value

FieldVerdict = Literal["same", "better", "differs", "dangerous"]


@dataclass(frozen=True)
class Field:
    """One field of a comparison: ``dangerous`` means that the new assembly does not replace the old one."""

    field: str
    verdict: FieldVerdict
    reason: Message


def values(old: Value, new: Value) -> Message:
    """What the old and the new assembly have."""
    return Message("trade-compare-values", old=old, new=new)


def both(what: Value) -> Message:
    """What both assemblies have."""
    return Message("trade-compare-both", both=what)
