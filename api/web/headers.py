"""The guards that every page stands behind: headers."""

from __future__ import annotations

import base64
import hashlib
from collections.abc import Sequence

from starlette.datastructures import Headers, MutableHeaders
from starlette.types import ASGIApp, Message, Receive, Scope, Send


def content_policy(*, styles: Sequence[str] = ()) -> str:
    """A Content-Security-Policy: our own files only, no script in the page.

    ``styles``: the exact text of style elements that the page holds; allowed by their hashes,
    so that a cached page stays valid.
    """
    hashes = [
        f"'sha256-{base64.b64encode(hashlib.sha256(text.encode()).digest()).decode()}'" for text in styles
    ]
    return "; ".join(
        (
            "default-src 'none'",
            "script-src 'self'",
            " ".join(("style-src 'self'", *hashes)),
            "img-src 'self' data: blob:",
            "font-src 'self'",
            "connect-src 'self'",
            "manifest-src 'self'",
            "worker-src 'self'",
            "frame-src 'self'",
            "form-action 'self'",
            "base-uri 'none'",
            "frame-ancestors 'self'",
            "object-src 'none'",
        )
    )


HEADERS = {
    "Content-Security-Policy": content_policy(),
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "same-origin",
    "X-Frame-Options": "SAMEORIGIN",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Permissions-Policy": "camera=(self), microphone=(), geolocation=(), payment=()",
}
STRICT_TRANSPORT = "max-age=31536000"


class SecurityHeaders:
    """Adds the headers that a response has not set itself. Where a response leads to an address of the host that was
    asked, it leads by path alone: that host was named by whoever asked, and behind a proxy the scheme is not ours.
    """

    def __init__(self, app: ASGIApp, *, secure: bool) -> None:
        self.app = app
        self.headers = dict(HEADERS)
        if secure:
            self.headers["Strict-Transport-Security"] = STRICT_TRANSPORT

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return

        async def guarded(message: Message) -> None:
            if message["type"] == "http.response.start":
                headers = MutableHeaders(scope=message)
                for name, value in self.headers.items():
                    headers.setdefault(name, value)
                if location := headers.get("location"):
                    headers["location"] = _by_path(location, scope)
            await send(message)

        await self.app(scope, receive, guarded)


def _by_path(location: str, scope: Scope) -> str:
    own = f"{scope['scheme']}://{Headers(scope=scope).get('host', '')}/"
    return "/" + location.removeprefix(own).lstrip("/") if location.startswith(own) else location
