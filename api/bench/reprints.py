"""Why a tag is printed again: what the print page offers, and how a page shows what was recorded."""

from __future__ import annotations

REPRINTS = ("paper-jam", "damaged", "lost", "second")
"""The reasons offered; each is kept by this name. A program may record any other text."""
