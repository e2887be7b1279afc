"""How often one address may ask, and how much one request may send.

Counts are kept in memory, per process: a guard, not an account.
"""

from __future__ import annotations

import time
from collections import deque
from collections.abc import Callable
from ipaddress import IPv4Address, ip_address, ip_network
from threading import Lock

from starlette.datastructures import Headers
from starlette.exceptions import HTTPException
from starlette.requests import Request
from starlette.responses import PlainTextResponse
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from tagger.i18n import Translator, negotiate

MOST_BYTES = 20_000_000  # a photo or a list has its own limit below this


class Limiter:
    """At most ``limit`` acts a ``window`` (seconds) for each key.

    >>> limiter = Limiter(2, 60, clock=lambda: 0.0)
    >>> [limiter.allow("a"), limiter.allow("a"), limiter.allow("a"), limiter.allow("b")]
    [True, True, False, True]
    >>> limiter.allow("a", "c"), limiter.give_back("a"), limiter.allow("a", "c")
    (False, None, True)
    """

    def __init__(self, limit: int, window: float, clock: Callable[[], float] = time.monotonic) -> None:
        self.limit, self.window, self.clock = limit, window, clock
        self._acts: dict[str, deque[float]] = {}
        self._lock = Lock()

    def allow(self, *keys: str) -> bool:
        """Counts one act for every key and says whether it may happen; one refused counts for none."""
        with self._lock:
            recent = [self._recent(key) for key in keys]
            if any(len(acts) >= self.limit for acts in recent):
                return False
            for acts in recent:
                acts.append(self.clock())
            return True

    def give_back(self, key: str) -> None:
        """The last act counted was none after all."""
        with self._lock:
            if acts := self._recent(key):
                acts.pop()

    def forget(self, key: str) -> None:
        with self._lock:
            self._acts.pop(key, None)

    def _recent(self, key: str) -> deque[float]:
        now = self.clock()
        if len(self._acts) > 10_000:  # addresses seen once must not pile up
            self._acts = {k: d for k, d in self._acts.items() if d and d[-1] > now - self.window}
        acts = self._acts.setdefault(key, deque())
        while acts and acts[0] <= now - self.window:
            acts.popleft()
        return acts


def counted_as(address: str | None) -> str:
    """What an address is counted under: an IPv6 one by its /64, which one subscriber has whole.

    >>> counted_as("2001:db8:0:7:1:2:3:4"), counted_as("192.0.2.7"), counted_as("::ffff:192.0.2.7")
    ('2001:db8:0:7::/64', '192.0.2.7', '192.0.2.7')
    """
    try:
        found = ip_address((address or "").partition("%")[0])
    except ValueError:
        return address or ""
    if isinstance(found, IPv4Address):
        return str(found)
    if found.ipv4_mapped:
        return str(found.ipv4_mapped)
    return str(ip_network((found, 64), strict=False))


def asker(request: Request) -> str:
    """Whom a request is counted for."""
    return counted_as(request.client.host if request.client else None)


class LimitPublic:
    """Refuses an address that asks the public pages too often, with 429 and when to try again."""

    def __init__(self, app: ASGIApp, *, per_minute: int) -> None:
        self.app = app
        self.limiter = Limiter(per_minute, 60)

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        client = scope.get("client")
        if (
            scope["type"] != "http"
            or client is None
            or scope["path"].startswith(("/static/", "/scan/", "/bench", "/api/"))
            or self.limiter.allow(counted_as(client[0]))
        ):
            await self.app(scope, receive, send)
            return
        wanted = Headers(scope=scope).get("accept-language", "")
        words = Translator(negotiate(wanted))("guard-too-many-requests")
        await PlainTextResponse(words + "\n", 429, {"Retry-After": "60"})(scope, receive, send)


class LimitBody:
    """Stops reading a request that is larger than any page or program needs to send, with 413."""

    def __init__(self, app: ASGIApp, *, most: int = MOST_BYTES) -> None:
        self.app = app
        self.most = most

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        read = 0

        async def counted() -> Message:
            nonlocal read
            message = await receive()
            read += len(message.get("body", b""))
            if read > self.most:
                raise HTTPException(413)  # the words are those of whoever was asked (errors.py)
            return message

        await self.app(scope, counted if scope["type"] == "http" else receive, send)
