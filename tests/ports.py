"""Ports for the servers that tests start: none that this machine gives to others, and none twice.

A port found by binding to 0 and let go belongs to whoever asks next, mostly a connection of a browser, before the
server that it was meant for has started.
"""

from __future__ import annotations

import secrets
import socket
from typing import Final

FIRST, LAST = 10_000, 32_000  # below those that systems choose by themselves: from 32768 on, or from 49152
_HELD: Final[list[socket.socket]] = []
"""The UDP port of the same number is this process's until it ends: no other process of the tests takes that number."""


def free_port(address: str = "127.0.0.1") -> int:
    """A port on which nobody listens and nobody will, but for whom it is given to."""
    while True:
        port = FIRST + secrets.randbelow(LAST - FIRST)
        held = socket.socket(type=socket.SOCK_DGRAM)
        try:
            held.bind((address, port))
            with socket.socket() as probe:
                probe.bind((address, port))
        except OSError:
            held.close()
            continue
        _HELD.append(held)
        return port
