"""Which hoses of this shop must not be used, for phones that will have no signal.

A phone keeps the list and looks a tag's number up in it. Numbers are told as digests: who has a tag
can look it up, and nobody reads off the others.
"""

from __future__ import annotations

import hashlib
import time
from datetime import UTC, datetime
from typing import Any, Final

from fastapi import APIRouter, Request
from fastapi.responses import JSONResponse, Response

from api.scan import pages
from api.web.state import store_of

router = APIRouter()
FRESH_S: Final = 2.0  # how old the list may be that one process answers with
_DIGITS: Final = 16
"""Of the digest in hexadecimal: among a million numbers and ten thousand withdrawn ones, two share 64
bits with a probability of 5e-10 (birthday bound)."""


@router.get("/scan/held.json", include_in_schema=False)
def held(request: Request) -> Response:
    """The digests of the numbers that are withdrawn, void, or held by the shop, and when that was so (UTC)."""
    state = request.app.state
    made: tuple[float, dict[str, Any]] | None = getattr(state, "scan_held", None)
    if made is None or time.monotonic() - made[0] > FRESH_S:
        now = datetime.now(UTC).isoformat(timespec="seconds")
        store = store_of(request)
        lists = {
            "withdrawn": store.withdrawn_numbers(),
            "void": store.void_numbers(),
            "held": sorted({*store.unreleased_numbers(), *store.kept_back_numbers()}),
        }
        found = {"as_of": now} | {name: sorted(map(digest, numbers)) for name, numbers in lists.items()}
        made = time.monotonic(), found
        state.scan_held = made
    return pages.kept(request, JSONResponse(made[1]), "no-cache")


def digest(number: str) -> str:
    """What stands in the list for a tag number; ``static/reader/held.js`` computes the same."""
    return hashlib.sha256(number.encode()).hexdigest()[:_DIGITS]
