"""Hose standards as somebody names them."""

from __future__ import annotations

from tagger.errors import Problem, StoreError
from tagger.trade.tables import Tables


def standard_of(tables: Tables, name: str) -> str:
    """A hose standard's name as the tables spell it. Raises StoreError for one they do not have."""
    standard = tables.standard_of(name)
    if standard is None:
        raise StoreError(
            Problem("hose_standard", name, "is not a hose standard here", "Choose one from the list.")
        )
    return standard.standard
