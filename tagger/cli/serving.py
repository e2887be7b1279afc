"""The web application's server: it drops slow senders, and ends in ten seconds whatever hangs."""

from __future__ import annotations

import os
import sys
import threading
import time
from contextlib import suppress

import uvicorn

ANSWERS_S = 4
"""How long requests under way have for their answers once the server is told to end."""
AT_MOST_S = 9
"""How long all of the end may take: then the process is cut off, as by a power cut, which loses no record."""
CUT_OFF = 70
"""The exit code of a process that was cut off (EX_SOFTWARE of sysexits.h)."""


def run(host: str, port: int) -> None:
    """Serves until the process is told to end.

    Application and connection are given by name, so that the library needs nothing of the web application. Whose
    X-Forwarded-For is believed the application says itself (TAGGER_TRUSTED_PROXIES); uvicorn alone would believe
    any that comes from this machine.
    """
    server = uvicorn.Server(
        uvicorn.Config(
            "api.app:create_app",
            factory=True,
            host=host,
            port=port,
            log_level="warning",
            proxy_headers=False,
            server_header=False,
            http="api.web.senders:Impatient",
            timeout_graceful_shutdown=ANSWERS_S,
        )
    )
    server.config.load_app()  # imported before the loop starts
    threading.Thread(target=_cut_off, args=(server,), name="end", daemon=True).start()
    with suppress(KeyboardInterrupt):
        server.run()
    if not server.started:
        sys.exit(3)  # uvicorn's own code for a start that failed


def _cut_off(server: uvicorn.Server) -> None:
    """Ends the process when it has not ended by itself. A thread of its own: whatever hangs may be the loop."""
    while not server.should_exit:
        time.sleep(0.3)
    time.sleep(AT_MOST_S)
    print(
        f"cut off: something still hung {AT_MOST_S} s after the end was asked for",
        file=sys.stderr,
        flush=True,
    )
    os._exit(CUT_OFF)
