"""Count scans: a tag's page opened by someone outside the shop."""

from __future__ import annotations

import re

from fastapi import Request

from api.web.head import HEAD
from api.web.identity import cookie_of
from api.web.state import scans_of

TAG_PAGE = re.compile(r"/t/|/8004/|/01/\d+/21/", re.IGNORECASE)


async def count_scan(request: Request) -> None:
    """A dependency of the public pages: the scan is counted in memory and written later, with others.

    Nothing of the visitor is kept. A page that a phone or proxy still had is not seen here, so the
    count is a lower bound.
    """
    path: str = request.scope["path"]
    if (
        request.method == "GET"
        and not request.scope.get(HEAD)
        and TAG_PAGE.match(path)
        and not cookie_of(request, "session")
    ):
        scans_of(request).add(path)
