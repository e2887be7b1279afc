"""The log: each request with an id of its own, which its answer carries and every line about it.

A line says which route was asked, never which tag, order or customer: the address itself is not in it.
"""

from __future__ import annotations

import json
import logging
import secrets
import time
from collections.abc import Callable
from contextvars import ContextVar
from datetime import UTC, datetime
from typing import Any

from starlette.types import ASGIApp, Message, Receive, Scope, Send

from api.web.load import room_of

REQUESTS = logging.getLogger("tagger.requests")
_ID: ContextVar[str | None] = ContextVar("request", default=None)
Told = Callable[[str, str, int, float], None]  # room, method, status, seconds


class RequestLog:
    """Gives each request an id, and tells of each answer: to the log, where it is asked for, and to ``told``, which counts."""

    def __init__(self, app: ASGIApp, *, told: Told | None) -> None:
        self.app, self._told = app, told

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return
        id, status, began = secrets.token_hex(8), 500, time.perf_counter()
        _ID.set(id)

        async def noted(message: Message) -> None:
            nonlocal status
            if message["type"] == "http.response.start":
                status = message["status"]
                message = {**message, "headers": [*message["headers"], (b"x-request-id", id.encode())]}
            await send(message)

        try:
            await self.app(scope, receive, noted)
        finally:
            seconds = time.perf_counter() - began
            if self._told is not None:
                self._told(room_of(scope["path"]), scope["method"], status, seconds)
            if REQUESTS.isEnabledFor(logging.INFO):
                said = {"method": scope["method"], "route": _route(scope), "status": status}
                REQUESTS.info(
                    "%(method)s %(route)s %(status)s", said, extra={**said, "ms": round(seconds * 1000, 1)}
                )


def _route(scope: Scope) -> str:
    """The route that answered; a tag's page may come from the cache, and some are sent away before it is known."""
    return str(getattr(scope.get("route"), "path", room_of(scope["path"])))


class JsonLines(logging.Formatter):
    """One JSON object a line."""

    def format(self, record: logging.LogRecord) -> str:
        said: dict[str, Any] = {
            "at": datetime.fromtimestamp(record.created, UTC).isoformat(timespec="milliseconds"),
            "level": record.levelname.lower(),
            "logger": record.name,
            "request": _ID.get(),
        }
        text = record.getMessage()
        said |= json.loads(text) if record.name == "tagger.security" else {"text": text}
        said |= {
            name: vars(record)[name] for name in ("method", "route", "status", "ms") if name in vars(record)
        }
        if record.exc_info:
            said["error"] = self.formatException(record.exc_info)
        return json.dumps(
            {name: value for name, value in said.items() if value is not None}, ensure_ascii=True
        )


class TextLines(logging.Formatter):
    """One line for people, with the id of the request."""

    def format(self, record: logging.LogRecord) -> str:
        id, ms = _ID.get(), vars(record).get("ms")
        parts = [super().format(record), f"{ms} ms" if ms is not None else "", f"[{id}]" if id else ""]
        return " ".join(filter(None, parts))


def arrange(kind: str) -> None:
    """Writes everything to standard error as ``text`` or ``json``, a line for each request too; ``warnings`` as before."""
    if kind == "warnings":
        return
    handler = logging.StreamHandler()
    handler.setFormatter(
        JsonLines() if kind == "json" else TextLines("%(asctime)s %(levelname)s %(name)s: %(message)s")
    )
    root = logging.getLogger()
    root.handlers = [handler]
    REQUESTS.setLevel(logging.INFO)
    for name in ("uvicorn", "uvicorn.error", "uvicorn.access"):  # they write for themselves otherwise
        logging.getLogger(name).handlers, logging.getLogger(name).propagate = [], True
