"""Slow senders are dropped, a bad line is not; and the server ends in time whatever hangs. Real sockets."""

from __future__ import annotations

import os
import signal
import socket
import time
from collections.abc import Callable, Iterator
from contextlib import ExitStack, closing, contextmanager, suppress
from dataclasses import dataclass
from pathlib import Path

import httpx
import pytest

from api.web.senders import Impatient
from tagger.cli import serving
from tagger.store import Store, Target
from tests.databases import fresh_sqlite
from tests.ports import free_port
from tests.processes import Process, start
from tests.store.samples import spec

QUICKLY = """
from api.web import senders
from tagger.cli import serving
senders.Impatient.EVERY_S, senders.Impatient.READER_S = 0.1, 1
senders.Impatient.HEADERS_S = senders.Impatient.PATIENCE_S = {patience}
senders.Impatient.FROM_ONE = {from_one}
serving.ANSWERS_S, serving.AT_MOST_S = 0.5, 1.5
serving.run("127.0.0.1", {port})
"""
"""The server that ``tagger serve`` runs, with less patience than a shop's."""
WITHOUT_END = 3600  # s: what then ends is ended by something else
HALF_HEADERS = b"GET /find HTTP/1.1\r\nHost: tags\r\nX-Slow: "
HALF_BODY = (
    b"POST /order HTTP/1.1\r\nHost: tags\r\nContent-Length: 200000\r\n"
    b"Content-Type: application/x-www-form-urlencoded\r\n\r\nnumber="
)


@dataclass
class Running:
    process: Process
    port: int
    log: Path

    def connect(self) -> socket.socket:
        return socket.create_connection(("127.0.0.1", self.port), timeout=60)


@contextmanager
def _running(
    folder: Path, url: str, *, patience: float, from_one: int = 320, **more: str
) -> Iterator[Running]:
    port = free_port()
    env = {name: value for name, value in os.environ.items() if not name.startswith("TAGGER_")}
    log = folder / "log"
    with log.open("wb") as out:
        arguments = ["-c", QUICKLY.format(port=port, patience=patience, from_one=from_one)]
        env |= {"TAGGER_DATABASE_URL": url, **more}
        process = start(arguments, env=env, stdout=out.fileno(), stderr=out.fileno())
    try:
        while True:
            assert process.poll() is None, log.read_text()
            with socket.socket() as probe:
                if probe.connect_ex(("127.0.0.1", port)) == 0:
                    break
            time.sleep(0.05)
        yield Running(process, port, log)
    finally:
        process.kill()
        process.wait()


@pytest.fixture(scope="module")
def running(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Running]:
    folder = tmp_path_factory.mktemp("senders")
    with _running(folder, fresh_sqlite(folder), patience=3) as started:
        yield started


def _ended(connection: socket.socket) -> bool:
    """Whether the server has given the connection up."""
    connection.setblocking(False)
    try:
        return connection.recv(1) == b""
    except BlockingIOError:
        return False
    except ConnectionError:
        return True


def _comes(holds: Callable[[], bool]) -> bool:
    until = time.monotonic() + 60
    while not holds():
        if time.monotonic() > until:
            return False
        time.sleep(0.05)
    return True


def test_300_half_sent_requests_are_dropped_and_a_slow_line_is_not(running: Running) -> None:
    with ExitStack() as opened:
        begun = [b""] * 100 + [HALF_HEADERS] * 100 + [HALF_BODY] * 100
        slow = [opened.enter_context(closing(running.connect())) for _ in begun]
        for connection, start in zip(slow, begun, strict=True):
            connection.sendall(start)

        line = opened.enter_context(
            closing(running.connect())
        )  # a bad line: twice the least, in small pieces
        body = b"number=" + b"x" * 6000
        line.sendall(HALF_BODY.replace(b"200000", str(len(body)).encode()).removesuffix(b"number="))
        began, sent = time.monotonic(), 0
        while sent < len(body):
            for connection, start in zip(slow, begun, strict=True):
                if start:
                    with suppress(OSError):
                        connection.send(b"a")  # each still says something
            due = 400 + round(
                1600 * (time.monotonic() - began)
            )  # so many a second, whatever holds the test up
            line.sendall(body[sent:due])
            sent = due
            time.sleep(0.25)
        assert line.recv(12) == b"HTTP/1.1 422", "read whole and answered, after more than the patience"
        assert _comes(lambda: all(_ended(connection) for connection in slow))

        whole = httpx.get(f"http://127.0.0.1:{running.port}/find", timeout=60)
        assert whole.status_code == 200 and "server" not in whole.headers, (
            "nor does it say what it is made of"
        )
        assert "Traceback" not in running.log.read_text()


def test_one_address_takes_so_many_connections_and_the_others_are_answered(tmp_path: Path) -> None:
    with (
        _running(tmp_path, fresh_sqlite(tmp_path), patience=WITHOUT_END, from_one=40) as running,
        ExitStack() as opened,
    ):
        all_of_one = [opened.enter_context(closing(running.connect())) for _ in range(50)]
        assert _comes(lambda: sum(map(_ended, all_of_one)) >= 10)
        other = opened.enter_context(
            closing(socket.create_connection(("127.0.0.1", running.port), 60, ("127.0.0.2", 0)))
        )
        other.sendall(b"GET /health HTTP/1.1\r\nHost: tags\r\n\r\n")
        assert other.recv(12) == b"HTTP/1.1 200"
        assert not any(map(_ended, all_of_one[:30])), "the first ones are kept"


def test_a_connection_that_is_used_again_has_its_time_for_each_request(running: Running) -> None:
    with closing(running.connect()) as line:
        asked = b"GET /scan/held.json HTTP/1.1\r\nHost: tags\r\n\r\n"
        for _ in range(5):  # longer together than the time for headers
            line.sendall(asked[:10])
            time.sleep(0.7)
            line.sendall(asked[10:])
            got = b""
            while not got.endswith(b"}"):
                more = line.recv(65536)
                assert more, "dropped"
                got += more
            assert got.startswith(b"HTTP/1.1 200")
        line.sendall(asked[:10])
        assert _comes(lambda: _ended(line))


def test_a_reader_that_takes_nothing_is_dropped(running: Running) -> None:
    with closing(socket.socket()) as lazy:
        lazy.setsockopt(socket.SOL_SOCKET, socket.SO_RCVBUF, 4096)
        lazy.settimeout(60)
        lazy.connect(("127.0.0.1", running.port))
        kit = b"GET /scan/any/kit.json HTTP/1.1\r\nHost: tags\r\n\r\n"
        with pytest.raises(ConnectionError):
            while True:  # asks on and on, and reads nothing
                lazy.send(kit)
                time.sleep(0.02)


def test_the_server_ends_whatever_hangs(tmp_path: Path) -> None:
    """Nothing but its own end would end what hangs here."""
    url = fresh_sqlite(tmp_path)
    with (
        _running(tmp_path, url, patience=WITHOUT_END) as running,
        closing(running.connect()) as half,
    ):
        half.sendall(HALF_BODY)
        time.sleep(0.2)
        running.process.terminate()
        assert running.process.wait(60) == -signal.SIGTERM

    with closing(
        socket.create_server(("127.0.0.1", 0))
    ) as silent:  # takes what is sent to it, and never answers
        hook = f"http://127.0.0.1:{silent.getsockname()[1]}/"
        with Store.open(url) as store:
            store.announce = (Target("webhook", hook),)
            store.request_order(spec=spec(), quantity=1, contact={"phone": "1"})
        with _running(tmp_path, url, patience=WITHOUT_END, TAGGER_WEBHOOK_URL=hook) as hanging:
            silent.settimeout(60)
            with closing(silent.accept()[0]):
                hanging.process.terminate()
                assert hanging.process.wait(60) == serving.CUT_OFF
                assert "cut off" in hanging.log.read_text()


def test_a_shops_server_has_the_patience_that_the_readme_says() -> None:
    assert Impatient.FROM_ONE == 256
    assert (Impatient.HEADERS_S, Impatient.BYTES_PER_S, Impatient.PATIENCE_S) == (10, 1000, 20)
    assert serving.ANSWERS_S < serving.AT_MOST_S < 9.7  # and 0.3 s until the end is noticed


@pytest.fixture(autouse=True)
def _enough_files() -> None:
    """300 connections have two ends."""
    import resource

    soft, hard = resource.getrlimit(resource.RLIMIT_NOFILE)
    if soft < 1024:
        resource.setrlimit(resource.RLIMIT_NOFILE, (min(1024, hard), hard))
