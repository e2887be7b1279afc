"""Scan pages under a storm, as a ratio to a bare FastAPI route that answers a constant of the same size.

    .venv/bin/python -m tests.speed.scan_storm [SECONDS]

Both are served by one worker each and asked by eight clients in processes of their own, in turns in one
run, so that the load of the machine meets both. The page is asked for as a phone does: gzip, HTML.
"""

from __future__ import annotations

import http.client
import multiprocessing
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from typing import Any

from tagger.spec import AssemblySpec
from tagger.store import Store
from tagger.trade import assess
from tests.scan.conftest import SPEC, path
from tests.speed.table import Row

CLIENTS, ROUNDS = 8, 4
HEADERS = {"Accept": "text/html", "Accept-Language": "en", "Accept-Encoding": "gzip"}
_PAGE = """
import sys, uvicorn
from api.app import create_app
from api.settings import Settings
app = create_app(Settings(database_url=sys.argv[2], public_requests_per_minute=10_000_000))
uvicorn.run(app, port=int(sys.argv[1]), log_level="error", access_log=False)
"""
_BARE = """
import sys, uvicorn
from fastapi import FastAPI, Response
app, body = FastAPI(), b"x" * int(sys.argv[2])
@app.get("/{rest:path}")
async def constant() -> Response:
    return Response(body, media_type="text/html")
uvicorn.run(app, port=int(sys.argv[1]), log_level="error", access_log=False)
"""


def _ask(port: int, address: str, seconds: float, out: Any) -> None:
    connection, took = http.client.HTTPConnection("127.0.0.1", port), []
    end = time.perf_counter() + seconds
    while (start := time.perf_counter()) < end:
        connection.request("GET", address, headers=HEADERS)
        answer = connection.getresponse()
        answer.read()
        assert answer.status == 200
        took.append(time.perf_counter() - start)
    out.put(took)


def _storm(port: int, address: str, seconds: float) -> list[float]:
    out: Any = multiprocessing.Queue()
    clients = [
        multiprocessing.Process(target=_ask, args=(port, address, seconds, out)) for _ in range(CLIENTS)
    ]
    for client in clients:
        client.start()
    took = [one for _ in clients for one in out.get()]
    for client in clients:
        client.join()
    return took


def _size(port: int, address: str) -> int:
    for _ in range(600):
        try:
            connection = http.client.HTTPConnection("127.0.0.1", port)
            connection.request("GET", address, headers=HEADERS)
            return len(connection.getresponse().read())
        except OSError:
            time.sleep(0.1)
    raise SystemExit("the server did not start")


def measure(seconds: float) -> tuple[dict[str, list[float]], int]:
    """What each answer took, in ms and in order, of the page and of the constant; the page's size."""
    with tempfile.TemporaryDirectory() as folder:
        url = f"sqlite:///{folder}/tags.sqlite3"
        with Store.open(url) as store:
            spec = AssemblySpec.read(SPEC)
            address = path(store.register(spec, assess(spec))[0])
        servers = [subprocess.Popen((sys.executable, "-c", _PAGE, "8797", url))]
        try:
            size = _size(8797, address)
            servers.append(subprocess.Popen((sys.executable, "-c", _BARE, "8798", str(size))))
            _size(8798, "/")
            found: dict[str, list[list[float]]] = {"scan page": [], "constant": []}
            for _ in range(ROUNDS):
                found["scan page"].append(_storm(8797, address, seconds))
                found["constant"].append(_storm(8798, "/", seconds))
        finally:
            for server in servers:
                server.terminate()
                server.wait(30)
    return {
        name: sorted(1000 * one for took in rounds for one in took) for name, rounds in found.items()
    }, size


def rows(small: bool) -> Iterator[Row]:
    """For the table of all benchmarks."""
    seconds = 0.5 if small else 3.0
    found, _ = measure(seconds)
    page, constant = found["scan page"], found["constant"]
    rate = len(page) / seconds / ROUNDS
    yield Row("a tag's page beside a constant", rate, "a second", len(page) / len(constant), ">= 0.4")
    yield Row("the same, p99", _p99(page), "ms", _p99(page) / _p99(constant))


def _p99(took: list[float]) -> float:
    return took[len(took) * 99 // 100]


def main(seconds: float) -> None:
    """Prints requests a second, p50 and p99 of both, and their ratio."""
    found, size = measure(seconds)
    rates = {name: len(took) / seconds / ROUNDS for name, took in found.items()}
    for name, took in found.items():
        print(f"{name}: {rates[name]:.0f}/s, p50 {statistics.median(took):.1f} ms, p99 {_p99(took):.1f} ms")
    print(f"ratio {rates['scan page'] / rates['constant']:.2f} at {size} bytes, {CLIENTS} clients, 1 worker")


if __name__ == "__main__":
    main(float(sys.argv[1]) if len(sys.argv) > 1 else 3)
