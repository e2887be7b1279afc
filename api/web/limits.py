"""How often one address may ask, and how much one request may send.

Requests are counted in memory, per process: a guard, not an account. What is rare and must hold on every server,
such as wrong passwords and orders, is counted in the database (``tagger/store/tries.py``).
"""

from __future__ import annotations

import hashlib
import time
from collections import deque
from collections.abc import Callable, Mapping
from http import HTTPStatus
from ipaddress import IPv4Address, ip_address, ip_network
from threading import Lock
from typing import Final, Literal

from starlette.datastructures import Headers
from starlette.exceptions import HTTPException
from starlette.requests import Request, cookie_parser
from starlette.responses import JSONResponse, PlainTextResponse, Response
from starlette.types import ASGIApp, Receive, Scope, Send
from starlette.types import Message as Received

from api.web.state import store_of
from tagger.errors import Problem, StoreError
from tagger.i18n import Translator, negotiate
from tagger.messages import Message
from tagger.store import Allowance
from tagger.store.base import hashed

_NOT_COUNTED = ("/static/", "/scan/", "/health", "/ready")
WINDOW_S = 60.0
MOST_BYTES = 20_000_000  # a photo or a list has its own limit below this
CALM: Final = 60
"""How many orders, and how many reports, all addresses together send in an hour before each must carry work."""
WORK_BITS: Final = 14
"""How much work that is: a second or so of a phone that is five years old."""


class Limiter:
    """At most ``limit`` acts a ``window`` (seconds) for each key.

    >>> limiter = Limiter(2, 60, clock=lambda: 0.0)
    >>> [limiter.allow("a"), limiter.allow("a"), limiter.allow("a"), limiter.allow("b")]
    [True, True, False, True]
    """

    def __init__(self, limit: int, window: float, clock: Callable[[], float] = time.monotonic) -> None:
        self.limit, self.window, self.clock = limit, window, clock
        self._acts: dict[str, deque[float]] = {}
        self._lock = Lock()

    def allow(self, key: str) -> bool:
        """Counts one act and says whether it may happen; one refused does not count."""
        with self._lock:
            acts = self._recent(key)
            if len(acts) >= self.limit:
                return False
            acts.append(self.clock())
            return True

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


class TooMany(StoreError):
    """More orders or reports than a customer sends; a phone keeps what it has and sends it later.

    ``work_bits``: above 0 it goes through at once with the work of ``is_worked``.
    """

    def __init__(self, problem: Problem, work_bits: int = 0) -> None:
        super().__init__(problem)
        self.work_bits = work_bits


def admit(
    request: Request,
    what: Literal["order", "report"],
    number: str | None,
    an_hour: int,
    sent: Mapping[str, str],
) -> None:
    """Counts an order or a report, on all servers together. Raises TooMany: for this address, for this tag, or
    in a flood from everywhere, where each must carry its browser's work.

    ``sent``: the form as it came; its ``key`` is the browser's own, new for each order, and ``work`` is bound to it.
    """
    store = store_of(request)
    keys = [f"{what} from {asker(request)}", *([f"{what} tag {number}"] if number else [])]
    if store.try_now(dict.fromkeys(keys, Allowance(an_hour, 3600))):
        raise TooMany(Problem(what, None, Message(f"guard-{what}s-too-many")))
    if not store.try_now({f"{what} of all": Allowance(CALM, 3600)}):
        return
    if not is_worked(sent.get("key", ""), sent.get("work", "")):
        store.give_back(*keys)  # the same one comes again with its work
        raise TooMany(Problem(what, None, Message("guard-flood")), WORK_BITS)


def is_worked(key: str, work: str) -> bool:
    """Whether SHA-256 of ``KEY:WORK`` begins with that many zero bits: some 16,000 tries for whoever sends it, one
    for us. A flood of orders costs its sender as much again for each of them."""
    if not key or not work:
        return False
    digest = hashlib.sha256(f"{key}:{work}".encode(errors="replace")).digest()
    return int.from_bytes(digest) >> (8 * len(digest) - WORK_BITS) == 0


class LimitRequests:
    """Refuses whoever asks too often, with 429 and when to try again.

    A public page counts for the address that asks, and so does what a stranger asks of bench and API. Whoever is
    signed in there, or holds a device's token, has a count of its own: a flood from the shop's own address does not
    keep the shop out. Which they are is known once a room has let them in.
    """

    def __init__(self, app: ASGIApp, *, strangers: int, known: int) -> None:
        self.app = app
        self._strangers, self._known = Limiter(strangers, WINDOW_S), Limiter(known, WINDOW_S)
        self._let_in: set[str] = set()

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        client = scope.get("client")
        if scope["type"] != "http" or client is None or scope["path"].startswith(_NOT_COUNTED):
            await self.app(scope, receive, send)
            return
        room = next((name for name in ("/bench", "/api") if scope["path"].startswith(name)), "")
        shown = _credential(scope) if room else ""
        if shown in self._let_in:
            allowed = self._known.allow(shown)
        else:
            allowed = self._strangers.allow(f"{room} {counted_as(client[0])}")
        if not allowed:
            await _refusal(scope)(scope, receive, send)
            return
        found = scope.setdefault("state", {})
        await self.app(scope, receive, send)
        if shown:
            self._remember(shown, bool(found.get("who") or found.get("device")))

    def _remember(self, shown: str, let_in: bool) -> None:
        if not let_in:
            self._let_in.discard(shown)
            return
        if len(self._let_in) >= 10_000:
            self._let_in.clear()  # each comes back with its next request
        self._let_in.add(shown)


def _credential(scope: Scope) -> str:
    """The token or the session that a request shows, unreadable; empty where it shows none."""
    headers = Headers(scope=scope)
    cookies = cookie_parser("; ".join(headers.getlist("cookie")))
    session = next((value for name, value in cookies.items() if name.endswith("tagger_session")), "")
    shown = headers.get("authorization") or session
    return hashed(shown) if shown else ""


def _refusal(scope: Scope) -> Response:
    t = Translator(negotiate(Headers(scope=scope).get("accept-language", "")))
    said, again = Message("guard-too-many-requests"), {"Retry-After": "60"}
    if not scope["path"].startswith("/api"):
        return PlainTextResponse(t(said) + "\n", 429, again)
    body = {"type": "about:blank", "title": HTTPStatus(429).phrase, "status": 429, **said.as_json()}
    return JSONResponse(
        body | {"detail": t(said), "problems": []}, 429, again, media_type="application/problem+json"
    )


class LimitBody:
    """Stops reading a request that is larger than any page or program needs to send, with 413."""

    def __init__(self, app: ASGIApp, *, most: int = MOST_BYTES) -> None:
        self.app = app
        self.most = most

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        read = 0

        async def counted() -> Received:
            nonlocal read
            message = await receive()
            read += len(message.get("body", b""))
            if read > self.most:
                raise HTTPException(413)  # the words are those of whoever was asked (errors.py)
            return message

        await self.app(scope, counted if scope["type"] == "http" else receive, send)
