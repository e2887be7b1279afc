"""Connections that send too slowly are dropped, so that half-sent requests cannot hold the server.

uvicorn ends a connection that idles between requests, and waits without end for the rest of one that has begun.
"""

from __future__ import annotations

import asyncio
import time
from typing import ClassVar

import h11
from uvicorn.middleware.proxy_headers import _TrustedHosts as Named
from uvicorn.protocols.http.h11_impl import H11Protocol

from api.web.limits import counted_as


class Impatient(H11Protocol):
    """uvicorn's HTTP/1.1 connection, looked at each second.

    A request's headers are there within ``HEADERS_S`` of the connection or of their first byte. Its body comes at
    ``BYTES_PER_S`` on the average of ``PATIENCE_S``: a bad line may stand still that long, a trickle may not go on.
    A reader that takes nothing of an answer for ``READER_S`` is dropped as well. One address, an IPv6 one by its /64,
    has ``FROM_ONE`` connections at once, unless it is a proxy that the shop names.
    """

    FROM_ONE: ClassVar[int] = 256

    HEADERS_S: ClassVar[float] = 10
    BYTES_PER_S: ClassVar[float] = 1000
    PATIENCE_S: ClassVar[float] = 20
    READER_S: ClassVar[float] = 60
    EVERY_S: ClassVar[float] = 1

    counted_for = ""  # the address
    _look_again: asyncio.TimerHandle | None = None
    _looked_at = 0.0
    _received = 0  # bytes since the last look
    _patience = 0.0  # seconds that the sender of a body may still be silent
    _answered: object = None  # the last request whose headers have come
    _headers_for = 0.0  # seconds that headers have been awaited
    _unread_for = 0.0  # seconds in which nothing of the answer was taken
    _unread = 0  # bytes of the answer that wait for the reader

    def connection_made(self, transport: asyncio.Transport) -> None:  # type: ignore[override]
        super().connection_made(transport)
        self.counted_for = counted_as(self.client[0] if self.client else None)
        if self._too_many_from_there():
            transport.abort()
            return
        self._patience, self._looked_at = self.PATIENCE_S, time.monotonic()
        self._look_again = self.loop.call_later(self.EVERY_S, self._look)

    def _too_many_from_there(self) -> bool:
        own = sum(getattr(other, "counted_for", "") == self.counted_for for other in self.connections)
        return own > self.FROM_ONE and not self._is_a_named_proxy()

    def _is_a_named_proxy(self) -> bool:
        state = getattr(self.config.loaded_app, "state", None)
        named = state.settings.trusted_proxies if state is not None else ()
        return self.client is not None and self.client[0] in Named(list(named))

    def connection_lost(self, exc: Exception | None) -> None:
        if self._look_again is not None:
            self._look_again.cancel()
        super().connection_lost(exc)

    def data_received(self, data: bytes) -> None:
        self._received += len(data)
        super().data_received(data)

    def _look(self) -> None:
        now = time.monotonic()
        # Not more than was planned: while the program itself was busy, nobody could send.
        passed, self._looked_at = min(now - self._looked_at, 2 * self.EVERY_S), now
        received, self._received = self._received, 0
        tried = (
            self._too_long_for_headers(passed),
            self._too_slow_a_body(passed, received),
            self._too_long_without_reading(passed),
        )
        if any(tried):
            self.transport.abort()
        else:
            self._look_again = self.loop.call_later(self.EVERY_S, self._look)

    def _too_long_for_headers(self, passed: float) -> bool:
        """A connection that idles after an answer is uvicorn's to end (``timeout_keep_alive``)."""
        another = self.cycle is not self._answered  # headers have come since the last look
        self._answered = self.cycle
        awaited = self.conn.their_state is h11.IDLE and self.timeout_keep_alive_task is None
        self._headers_for = self._headers_for + passed if awaited and not another else 0
        return self._headers_for >= self.HEADERS_S

    def _too_slow_a_body(self, passed: float, received: int) -> bool:
        if self.conn.their_state is not h11.SEND_BODY:
            self._patience = self.PATIENCE_S
        elif not (
            self.flow.read_paused or self.conn.they_are_waiting_for_100_continue
        ):  # it is not we who wait
            self._patience = min(self.PATIENCE_S, self._patience + received / self.BYTES_PER_S - passed)
        return self._patience <= 0

    def _too_long_without_reading(self, passed: float) -> bool:
        unread = self.transport.get_write_buffer_size()
        self._unread_for = self._unread_for + passed if 0 < self._unread <= unread else 0
        self._unread = unread
        return self._unread_for >= self.READER_S
