"""When two texts name one lot: a withdrawal must not miss a hose because of how its lot was typed."""

from __future__ import annotations

import re
import unicodedata
from typing import Final

_WORDS: Final = ("LOT", "LOTE", "BATCH", "CHARGE", "REEL")
_BEFORE: Final = re.compile(rf"({'|'.join(_WORDS)})\b(\W*(NO|NR)\b)?\W+(?=\w)")
"""What stands before a lot on its label: "LOT: H-2310", "Lot no. H-2310"."""


def lot_key(lot: str | None) -> str | None:
    """A lot as it is kept: without regard to case and spacing; None for one that says nothing.

    >>> lot_key(" h  2310 ")
    'H 2310'
    """
    text = " ".join(lot.split()).upper() if lot else ""
    return text or None


def bare(lot: str) -> str:
    """A lot's letters and digits alone: "H 2310" or "H2310" typed for the withdrawn H-2310 is that lot until a manager
    says otherwise, and so is "LOT: H-2310". A lot without any is itself.

    >>> bare("h-2310") == bare("H 2310") == bare("Lot no. H-2310") == "H2310"
    True
    """
    key = str(lot_key(unicodedata.normalize("NFKC", lot)))
    key = _BEFORE.sub("", key, count=1) if _BEFORE.match(key) else key
    return "".join(one for one in key if one.isalnum()) or key


def kept_as(bare_lot: str) -> list[str]:
    """The letters and digits under which such a lot may be kept: with a label's word too, as it was kept once."""
    return [bare_lot, *(word + bare_lot for word in _WORDS)]
