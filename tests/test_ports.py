"""The ports that tests give to servers are nobody else's."""

from __future__ import annotations

import socket
import subprocess
import sys
from pathlib import Path

import pytest

from tests import ports

_ANOTHER = """
import sys
from tests import ports
ports.FIRST = int(sys.argv[1])
ports.LAST = ports.FIRST + 2
print(ports.free_port())
"""


def test_a_port_that_was_given_is_given_to_no_other_process(monkeypatch: pytest.MonkeyPatch) -> None:
    one = ports.free_port()
    monkeypatch.setattr(ports, "FIRST", one)
    monkeypatch.setattr(ports, "LAST", one + 2)  # of these two, one is taken
    other = subprocess.run(
        (sys.executable, "-c", _ANOTHER, str(one)), capture_output=True, text=True, check=True,
        cwd=Path(__file__).parents[1],
    )  # fmt: skip
    assert int(other.stdout) == one + 1


def test_this_machine_gives_such_a_port_to_no_connection() -> None:
    given = Path("/proc/sys/net/ipv4/ip_local_port_range")
    first = int(given.read_text().split()[0]) if given.exists() else 49_152
    assert ports.FIRST < ports.LAST <= first
    with socket.create_server(("127.0.0.1", ports.free_port())) as server:
        assert server.getsockname()[1] < first
