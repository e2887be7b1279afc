"""Tag pages as they were last sent, for as long as nothing at all has changed in the database.

A page is kept under everything that it is made of: the address, what the request says of language,
units, form and packing, the day, the shop's signing keys, and the database's state, which is asked for
before the page is made. A request that says anything else, such as a session or a query, is answered anew.
"""

from __future__ import annotations

from datetime import UTC, date, datetime
from typing import Final, NamedTuple

from starlette.datastructures import Headers
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from api.scan.counting import TAG_PAGE
from api.web.head import HEAD
from api.web.keys import ShopKeys
from api.workers.scan_counts import ScanCounts
from api.workers.watcher import Watcher
from tagger.signing import Keys

MOST_BYTES: Final = 32_000_000  # of all kept pages
_LONGEST_KEY: Final = 1_000
_COOKIES: Final = ("lang", "units")
Key = tuple[str, ...]
State = tuple[str, Keys]  # of the database, and the keys that tags are held against


class _Sent(NamedTuple):
    start: Message
    body: bytes
    etag: str


class PageCache:
    """Answers a tag's page from memory where it is the same as before, and counts the scan."""

    def __init__(self, app: ASGIApp, *, watcher: Watcher, scans: ScanCounts, keys: ShopKeys) -> None:
        self.app, self._watcher, self._scans, self._keys = app, watcher, scans, keys
        self._kept: dict[Key, _Sent] = {}
        self._bytes, self._state = 0, ("", keys.now())

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        key = _key(scope) if scope["type"] == "http" else None
        seen = self._watcher.now() if key else None
        if key is None or seen is None:
            await self.app(scope, receive, send)
            return
        state = seen, self._keys.now()
        if state != self._state:
            self._kept, self._bytes, self._state = {}, 0, state
        if (sent := self._kept.get(key)) is None:
            await self.app(scope, receive, self._keeping(send, key, state))
            return
        if not scope.get(HEAD):
            self._scans.add(scope["path"])
        await _again(sent, Headers(scope=scope).get("if-none-match", ""), send)

    def _keeping(self, send: Send, key: Key, state: State) -> Send:
        """Sends on, and keeps a whole page that others may see too."""
        start: Message = {}

        async def on(message: Message) -> None:
            nonlocal start
            if message["type"] == "http.response.start":
                start = {**message, "headers": list(message["headers"])}
            elif not message.get("more_body") and state == self._state:
                self._keep(key, start, message.get("body", b""))
            await send(message)

        return on

    def _keep(self, key: Key, start: Message, body: bytes) -> None:
        headers = Headers(raw=start["headers"])
        whole = headers.get("content-length") == str(len(body))
        public = headers.get("cache-control", "").startswith("public") and "set-cookie" not in headers
        size = len(body) + _LONGEST_KEY
        if start["status"] != 200 or not whole or not public or size > MOST_BYTES:
            return
        if self._bytes + size > MOST_BYTES:
            self._kept, self._bytes = {}, 0
        if key not in self._kept:
            self._bytes += size
        self._kept[key] = _Sent(start, body, headers.get("etag", ""))


def _key(scope: Scope) -> Key | None:
    """What a page is made of, as far as the request says; None for what is answered anew each time."""
    if scope["method"] != "GET" or scope["query_string"] or not TAG_PAGE.match(scope["path"]):
        return None
    headers = Headers(scope=scope)
    cookies = headers.get("cookie", "")
    names = [pair.partition("=")[0].strip() for pair in cookies.split(";") if pair.strip()]
    if any(name not in _COOKIES for name in names) or len(headers.getlist("cookie")) > 1:
        return None
    said = [",".join(headers.getlist(name)) for name in ("accept", "accept-language", "accept-encoding")]
    if "accept" not in headers:
        said.append("no accept")
    key = (scope["path"], cookies, *said, str(date.today()), str(datetime.now(UTC).date()))
    return key if sum(map(len, key)) <= _LONGEST_KEY else None


async def _again(sent: _Sent, asked: str, send: Send) -> None:
    start, body = {**sent.start, "headers": list(sent.start["headers"])}, sent.body
    if sent.etag and sent.etag in [part.strip() for part in asked.split(",")]:
        left_out = (b"content-length", b"content-type", b"content-encoding")
        start["status"] = 304
        start["headers"] = [pair for pair in start["headers"] if pair[0] not in left_out]
        body = b""
    await send(start)
    await send({"type": "http.response.body", "body": body})
