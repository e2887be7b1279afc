"""Hose standards as somebody names them."""

from __future__ import annotations

from tagger.errors import Problem, StoreError
from tagger.messages import Message
from tagger.trade.tables import Tables


def standard_of(tables: Tables, name: str) -> str:
    """A hose standard's name as the tables spell it. Raises StoreError for one they do not have."""
    standard = tables.standard_of(name)
    if standard is None:
        raise StoreError(Problem("hose_standard", name, Message("guard-hose-standard-unknown", name=name)))
    return standard.standard
