"""How many requests are answered at once: those beyond are sent away at once, not kept waiting without end."""

from __future__ import annotations

from collections import Counter
from http import HTTPStatus
from typing import Final

from starlette.datastructures import Headers
from starlette.exceptions import HTTPException
from starlette.requests import Request
from starlette.responses import JSONResponse, PlainTextResponse, Response
from starlette.types import ASGIApp, Receive, Scope, Send
from starlette.types import Message as Received

from api.web.health import PATHS
from tagger.i18n import Translator, negotiate
from tagger.messages import Message

AGAIN_S: Final = 3
"""When it makes sense to ask again."""


def room_of(path: str) -> str:
    """Which room an address belongs to.

    >>> [room_of(path) for path in ("/T/7K3MQ9XW2R1", "/bench/build", "/api/v1/check", "/benches")]
    ['scan', 'bench', 'api', 'scan']
    """
    first = path.split("/", 2)[1] if path.startswith("/") else ""
    return first if first in ("bench", "api") else "scan"


class LimitLoad:
    """Sends requests away with 503 and when to ask again while ``most`` of their room are under way.

    Each room has a count of its own: a flood of the public pages leaves the bench working. It stands behind the
    cache of tag pages, so a page that is kept is still shown, and a mechanic reads the tag. A request is under way
    from when it has come whole: slow or silent senders take nobody's place.
    """

    def __init__(self, app: ASGIApp, *, most: int, under_way: Counter[str], sent_away: Counter[str]) -> None:
        self.app, self._most = app, most
        self._under_way, self._sent_away = under_way, sent_away

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] != "http" or scope["path"] in PATHS:
            await self.app(scope, receive, send)
            return
        room, inside = room_of(scope["path"]), False

        def enter() -> None:
            nonlocal inside
            if self._under_way[room] >= self._most:
                self._sent_away[room] += 1
                raise Full
            self._under_way[room] += 1
            inside = True

        async def arrived() -> Received:
            message = await receive()
            if not inside and message["type"] == "http.request" and not message.get("more_body"):
                enter()
            return message

        try:
            if not _brings_a_body(scope):
                enter()
            await self.app(scope, arrived, send)
        except Full:
            await _busy(scope)(scope, receive, send)
        finally:
            if inside:
                self._under_way[room] -= 1


class Full(HTTPException):
    """The request's room is full: raised where the last of its body is read, before anything is done with it."""

    def __init__(self) -> None:
        super().__init__(503)


async def sent_away(request: Request, error: Exception) -> Response:
    """The answer to a request whose body came whole when its room was full."""
    return _busy(request.scope)


def _brings_a_body(scope: Scope) -> bool:
    headers = Headers(scope=scope)
    return "transfer-encoding" in headers or headers.get("content-length", "0") != "0"


def _busy(scope: Scope) -> Response:
    t = Translator(negotiate(Headers(scope=scope).get("accept-language", "")))
    said, again = Message("guard-busy"), {"Retry-After": str(AGAIN_S), "Cache-Control": "no-store"}
    words = f"{t(said)} {t.mend(said)}"
    if room_of(scope["path"]) != "api":
        return PlainTextResponse(words + "\n", 503, again)
    body = {"type": "about:blank", "title": HTTPStatus(503).phrase, "status": 503, **said.as_json()}
    return JSONResponse(
        body | {"detail": words, "problems": []}, 503, again, media_type="application/problem+json"
    )
