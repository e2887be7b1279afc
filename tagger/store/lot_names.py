"""When two texts name one lot: a withdrawal must not miss a hose because of how its lot was typed."""

from __future__ import annotations

import unicodedata


def lot_key(lot: str | None) -> str | None:
    """A lot as it is kept: without regard to case and spacing; None for one that says nothing.

    >>> lot_key(" h  2310 ")
    'H 2310'
    """
    text = " ".join(lot.split()).upper() if lot else ""
    return text or None


def bare(lot: str) -> str:
    """A lot's letters and digits alone: "H 2310" or "H2310" typed for the withdrawn H-2310 is that lot until a manager
    says otherwise. A lot without any is itself.

    >>> bare("h-2310") == bare("H 2310") == "H2310"
    True
    """
    key = str(lot_key(unicodedata.normalize("NFKC", lot)))
    return "".join(one for one in key if one.isalnum()) or key
