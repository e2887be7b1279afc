"""Serving the application on a port of this machine, and a client that keeps its session."""

from __future__ import annotations

import asyncio
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import Any, Self

import httpx
import uvicorn

from api.app import create_app
from api.settings import Settings
from tagger.store import Store

PASSWORD = "correct horse 17"


@dataclass(frozen=True)
class Served:
    url: str


class _Server(uvicorn.Server):
    """Looks often whether it should end, so that a test does not wait for it."""

    async def main_loop(self) -> None:
        await self.on_tick(0)  # sets the date that answers carry
        while not self.should_exit:
            await asyncio.sleep(0.01)


@contextmanager
def serving(settings: Settings, store: Store) -> Iterator[Served]:
    server = _Server(
        uvicorn.Config(
            create_app(settings, store=store), port=0, log_level="warning", lifespan="on", proxy_headers=False
        )
    )
    thread = threading.Thread(target=server.run, daemon=True)
    thread.start()
    while not server.started:
        assert thread.is_alive(), "the server did not start"
        time.sleep(0.01)
    port = server.servers[0].sockets[0].getsockname()[1]
    try:
        yield Served(f"http://127.0.0.1:{port}")
    finally:
        server.should_exit = True
        thread.join(10)


class Bench(httpx.Client):
    """Signed in through the real form; sends the session's CSRF token with every form."""

    def __init__(self, url: str, store: Store, name: str) -> None:
        super().__init__(
            base_url=url, follow_redirects=True, timeout=30, verify=False
        )  # no TLS, no list of authorities
        self.store, self.name, self.csrf = store, name, ""

    def __enter__(self) -> Self:
        super().__enter__()
        answer = self.post("/bench/sign-in", data={"name": self.name, "password": PASSWORD})
        assert answer.status_code == 200, answer.text
        signed_in = self.store.signed_in(self.cookies["tagger_session"])
        assert signed_in is not None
        self.csrf = signed_in.csrf
        return self

    def submit(self, address: str, fields: dict[str, Any] | None = None, **more: Any) -> httpx.Response:
        return self.post(address, data={"csrf": self.csrf, **(fields or {})}, **more)


HOSE = {
    "hose.standard": "R2", "hose.dash": "12", "end_a.connection": "sae_37_flare", "end_a.form": "female_swivel",
    "end_a.shape": "straight", "end_b.same": "1", "length_mm": "49 1/4 in", "length_basis": "sealing_face",
    "count": "1", "template": "hang_tag",
}  # fmt: skip
"""The fields of the shortest build."""
