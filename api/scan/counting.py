"""Count scans: a tag's page opened by someone outside the shop."""

from __future__ import annotations

import re

from fastapi import BackgroundTasks, Request

from api.web.head import HEAD
from api.web.identity import COOKIE
from api.web.state import store_of
from tagger.code import link
from tagger.errors import TaggerError
from tagger.store import Kind, Store

_TAG_PAGE = re.compile(r"/t/|/8004/|/01/\d+/21/", re.IGNORECASE)


def count_scan(request: Request, later: BackgroundTasks) -> None:
    """A dependency of the public pages: writes a scan into the history after the page is sent.

    Nothing of the visitor is kept. A page that a phone or proxy still had is not seen here, so the
    count is a lower bound.
    """
    if (
        request.method == "GET"
        and not request.scope.get(HEAD)
        and _TAG_PAGE.match(request.url.path)
        and COOKIE not in request.cookies
    ):
        later.add_task(_record, store_of(request), str(request.url.replace(query="", fragment="")))


def _record(store: Store, address: str) -> None:
    try:
        number = link.parse(address).number
        if store.known(number):
            store.record(number, Kind.SCANNED)
    except TaggerError:  # a slip in the number: the page itself has said so
        return
