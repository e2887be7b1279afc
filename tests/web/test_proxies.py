"""Whose X-Forwarded-For is believed: nobody's, unless the shop names its proxies."""

from __future__ import annotations

import os
import socket
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import httpx

from tests import processes
from tests.ports import free_port


@contextmanager
def _served(folder: Path, **more: str) -> Iterator[str]:
    """``tagger serve`` in a process of its own."""
    port = free_port()
    env = {name: value for name, value in os.environ.items() if not name.startswith("TAGGER_")}
    env |= {
        "TAGGER_DATABASE_URL": f"sqlite:///{folder}/tags.sqlite3",
        "TAGGER_PUBLIC_REQUESTS_PER_MINUTE": "5",
    }
    with Path(os.devnull).open("w") as nowhere:
        server = processes.start(
            ["-m", "tagger.cli", "serve", "--port", str(port)],
            env={**env, **more}, stdout=nowhere.fileno(), stderr=nowhere.fileno(),
        )  # fmt: skip
    try:
        for _ in range(600):
            assert server.poll() is None, "the server ended"
            with socket.socket() as probe:
                if probe.connect_ex(("127.0.0.1", port)) == 0:
                    break
            time.sleep(0.1)
        yield f"http://127.0.0.1:{port}"
    finally:
        server.terminate()
        server.wait(60)


def _answers(url: str) -> list[int]:
    """Twelve askings from one machine, each saying that it comes for another."""
    with httpx.Client(base_url=url, timeout=30) as client:
        return [
            client.get("/find", headers={"X-Forwarded-For": f"203.0.113.{place}"}).status_code
            for place in range(12)
        ]


def test_invented_addresses_do_not_pass_the_rate_limit(tmp_path: Path) -> None:
    with _served(tmp_path) as url:
        assert 429 in _answers(url)


def test_a_proxy_that_the_shop_names_is_believed(tmp_path: Path) -> None:
    with _served(tmp_path, TAGGER_TRUSTED_PROXIES="127.0.0.1") as url:
        assert set(_answers(url)) == {200}
