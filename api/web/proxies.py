"""Whose word on a visitor's address is believed: the proxies' that the shop names; any other is noticed."""

from __future__ import annotations

import logging
from ipaddress import ip_address
from threading import Lock

from starlette.datastructures import Headers
from starlette.types import ASGIApp, Receive, Scope, Send
from uvicorn.middleware.proxy_headers import ProxyHeadersMiddleware

_LOG = logging.getLogger("tagger.api")


class Unnamed:
    """A peer that sends X-Forwarded-For though the shop does not name it; the first, or the first of the own network.

    A proxy that is not named makes one visitor of all: they share one limit. A visitor may also write the header
    itself, which is believed as little; so one of the shop's own network is the likelier proxy.
    """

    def __init__(self) -> None:
        self.address: str | None = None
        self._near = False
        self._lock = Lock()

    def notice(self, address: str) -> None:
        if self._near or address == self.address:
            return
        with self._lock:
            near = _is_near(address)
            if self.address is not None and not near:
                return
            self.address, self._near = address, near
        _LOG.warning(
            "X-Forwarded-For from %s is not believed: TAGGER_TRUSTED_PROXIES does not name it. If it is the shop's "
            "proxy, all visitors behind it count as one address.",
            address,
        )


class Proxies(ProxyHeadersMiddleware):
    """uvicorn's middleware, which takes the visitor's address from a named proxy; and notices the others."""

    def __init__(self, app: ASGIApp, *, named: tuple[str, ...], unnamed: Unnamed) -> None:
        super().__init__(app, trusted_hosts=list(named))  # type: ignore[arg-type]
        self._unnamed = unnamed

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:  # type: ignore[override]
        if (
            scope["type"] == "http"
            and (client := scope.get("client"))
            and client[0] not in self.trusted_hosts
        ):
            if "x-forwarded-for" in Headers(scope=scope):
                self._unnamed.notice(client[0])
            await self.app(scope, receive, send)  # type: ignore[arg-type]
            return
        await super().__call__(scope, receive, send)  # type: ignore[arg-type]


def _is_near(address: str) -> bool:
    try:
        return ip_address(address).is_private
    except ValueError:
        return False
