"""CUPS's ``ippeveprinter``: a real IPP endpoint that keeps what it was given.

And a line to it that breaks: everything that is real, but for the moment at which it is cut.
"""

from __future__ import annotations

import os
import shutil
import socket
import subprocess
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

import pytest

from tests.ports import free_port

SBIN = f"{os.environ.get('PATH', '')}:/usr/sbin"
PROGRAMS = {
    "ippeveprinter": ("cups-ipp-utils", shutil.which("ippeveprinter", path=SBIN)),
    "dbus-daemon": ("dbus-daemon", shutil.which("dbus-daemon", path=SBIN)),
    "cupsd": ("cups-daemon", shutil.which("cupsd", path=SBIN)),
}


@dataclass(frozen=True)
class Endpoint:
    uri: str
    spool: Path

    def received(self) -> list[Path]:
        return sorted(file for file in self.spool.iterdir() if file.suffix in (".pdf", ".pwg"))


@contextmanager
def serving(folder: Path, formats: str, *options: str, port: int = 0) -> Iterator[Endpoint]:
    """A printer on a free port, which prints at once: left to itself, it plays at printing for seconds.

    It insists on a D-Bus to announce itself on: it gets an empty one.
    """
    _needs("ippeveprinter", "dbus-daemon")
    folder.mkdir(exist_ok=True)
    options = options if "-c" in options else ("-c", str(shutil.which("true")), *options)
    port = port or free_port()
    address = f"unix:path={folder}/bus"
    bus = subprocess.Popen(
        ["dbus-daemon", "--session", "--nofork", f"--address={address}"], stderr=subprocess.DEVNULL
    )
    try:
        until(lambda: _answers(folder / "bus"))
        device = subprocess.Popen(
            [str(PROGRAMS["ippeveprinter"][1]), "-r", "off", "-n", "localhost", "-p", str(port), "-d", str(folder),
             "-k", "-f", formats, *options, "labels"],
            env={**os.environ, "DBUS_SYSTEM_BUS_ADDRESS": address},
            stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
        )  # fmt: skip
        try:
            until(lambda: _listens(port) or _ended(device))
            yield Endpoint(f"ipp://localhost:{port}/ipp/print", folder)
        finally:
            device.kill()
            device.wait()
    finally:
        bus.kill()
        bus.wait()
        (folder / "bus").unlink(missing_ok=True)


_CUPSD = """
Listen localhost:{port}
LogLevel warn
Browsing Off
WebInterface No
DefaultAuthType None
<Location />
  Order allow,deny
  Allow all
</Location>
<Policy default>
  <Limit All>
    Order allow,deny
    Allow all
  </Limit>
</Policy>
"""
_FILES = """
ServerRoot {folder}/etc
ServerBin {folder}/bin
RequestRoot {folder}/requests
TempDir {folder}/tmp
CacheDir {folder}/cache
StateDir {folder}/state
AccessLog {folder}/access
ErrorLog {folder}/error
PageLog {folder}/page
"""
_QUEUE = """
<Printer labels>
DeviceURI keep:{folder}/kept
State Idle
Accepting Yes
</Printer>
"""
_BACKEND = """#!/bin/sh
# what CUPS hands to a device: job, user, title, copies, options, file
[ $# -gt 0 ] || exit 0
cat "$6" > "${DEVICE_URI#keep:}/$1.part" && mv "${DEVICE_URI#keep:}/$1.part" "${DEVICE_URI#keep:}/$1.pdf"
"""


@contextmanager
def print_server(folder: Path) -> Iterator[Endpoint]:
    """CUPS itself, with a configuration and a spool of its own: one queue, whose device files what it gets."""
    _needs("cupsd")
    port = free_port()
    for name in ("etc", "bin/backend", "requests", "tmp", "cache", "state", "kept"):
        (folder / name).mkdir(parents=True)
    own = next(path for path in map(Path, ("/usr/lib/cups", "/usr/libexec/cups")) if path.is_dir())
    for there in own.iterdir():
        if there.name != "backend":
            (folder / "bin" / there.name).symlink_to(there)
    for name, text in (("cupsd.conf", _CUPSD), ("cups-files.conf", _FILES), ("printers.conf", _QUEUE)):
        (folder / "etc" / name).write_text(text.format(port=port, folder=folder))
    backend = folder / "bin" / "backend" / "keep"
    backend.write_text(_BACKEND)
    backend.chmod(0o700)
    config = ["-c", str(folder / "etc" / "cupsd.conf"), "-s", str(folder / "etc" / "cups-files.conf")]
    server = subprocess.Popen([str(PROGRAMS["cupsd"][1]), "-f", *config], stderr=subprocess.DEVNULL)
    try:
        until(lambda: _listens(port) or _ended(server))
        yield Endpoint(f"ipp://localhost:{port}/printers/labels", folder / "kept")
    finally:
        server.kill()
        server.wait()


def _needs(*programs: str) -> None:
    for program in programs:
        package, path = PROGRAMS[program]
        if path is None:
            pytest.fail(
                f"{program} is not installed: run `make test`, which installs it, or `apt-get install {package}`"
            )


@contextmanager
def cut_line(endpoint: Endpoint, *, after: int) -> Iterator[str]:
    """An address that leads to the endpoint, for requests shorter than ``after`` octets.

    Of a longer one the printer gets that much, and then the line is dead in both directions.
    """
    target = int(endpoint.uri.split(":")[2].split("/")[0])
    with socket.create_server(("127.0.0.1", 0)) as front:

        def carry() -> None:
            while True:
                try:
                    near, _ = front.accept()
                except OSError:
                    return
                with near, socket.create_connection(("127.0.0.1", target)) as far:
                    threading.Thread(target=_pump, args=(far, near), daemon=True).start()
                    _pump(near, far, after)

        threading.Thread(target=carry, daemon=True).start()
        yield f"ipp://127.0.0.1:{front.getsockname()[1]}/ipp/print"


def _pump(source: socket.socket, sink: socket.socket, left: int = 1 << 40) -> None:
    try:
        while left > 0 and (piece := source.recv(min(left, 65_536))):
            sink.sendall(piece)
            left -= len(piece)
        for end in (source, sink) if left <= 0 else (sink,):
            end.shutdown(socket.SHUT_RDWR)
    except OSError:
        pass  # the other side hung up first


def _listens(port: int) -> bool:
    with socket.socket() as probe:
        return probe.connect_ex(("127.0.0.1", port)) == 0


def _answers(bus: Path) -> bool:
    """Its file is there a moment before anybody listens, and a printer that is refused then ends."""
    with socket.socket(socket.AF_UNIX) as probe:
        return probe.connect_ex(str(bus)) == 0


def _ended(program: subprocess.Popen[bytes]) -> bool:
    assert program.poll() is None, f"{program.args!r} ended with {program.returncode} before it listened"
    return False


def until(ready: Callable[[], object], patience_s: float = 60) -> None:
    """Waits for what comes by itself. The patience is for what never comes: a loaded machine may take its time."""
    end = time.monotonic() + patience_s
    while not ready():
        assert time.monotonic() < end, "it never came to be"
        time.sleep(0.02)
