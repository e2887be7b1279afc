"""HEAD: what GET would answer, without the body (RFC 9110, 9.3.2)."""

from __future__ import annotations

from typing import Final

from starlette.types import ASGIApp, Message, Receive, Scope, Send

HEAD: Final = "tagger.head"
"""In the scope of a request that came as HEAD and goes on as GET."""


class AnswerHead:
    """Lets every page be asked for by HEAD."""

    def __init__(self, app: ASGIApp) -> None:
        self.app = app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] != "http" or scope["method"] != "HEAD":
            await self.app(scope, receive, send)
            return

        async def without_body(message: Message) -> None:
            if message["type"] == "http.response.body":
                message = {**message, "body": b""}
            await send(message)

        await self.app({**scope, "method": "GET", HEAD: True}, receive, without_body)
