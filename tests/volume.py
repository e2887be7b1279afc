"""How often a proof by volume is repeated: killed servers, invented measurements, requests at once.

``make test`` takes a few of each; ``make prove`` sets ``TAGGER_TEST_VOLUME=full`` and takes them all.
"""

from __future__ import annotations

import os
from typing import TypeVar

T = TypeVar("T")
FULL = os.environ.get("TAGGER_TEST_VOLUME") == "full"


def volume(few: T, many: T) -> T:
    """``few`` in everyday runs, ``many`` under ``make prove``."""
    return many if FULL else few
