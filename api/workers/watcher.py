"""The state of the database as this process last saw it: at each request, or once a second."""

from __future__ import annotations

import logging
import threading
import time
from typing import Final

from tagger.store import Store
from tagger.store.watching import Watch

_LOG = logging.getLogger(__name__)
EVERY_S: Final = 1.0
FRESH_S: Final = 1.9
"""How old a look may be that something is answered by: a withdrawal shows on every server within 2 s."""


class Watcher:
    """Looks at SQLite whenever it is asked, at PostgreSQL in a thread; knows nothing until it was started."""

    def __init__(self, store: Store) -> None:
        self._watch = Watch(store.database)
        self._started = False
        self._last: tuple[float, str] | None = None
        self._stop = threading.Event()
        self._thread = threading.Thread(target=self._run, name="watcher", daemon=True)

    def now(self) -> str | None:
        """The state; None where it is not known of these two seconds. Asked by the event loop alone."""
        if not self._started:
            return None
        if self._watch.at_once:
            try:
                return self._watch.look()
            except Exception:
                return None
        last = self._last
        return last[1] if last is not None and time.monotonic() - last[0] < FRESH_S else None

    def start(self) -> None:
        self._started = True
        if not self._watch.at_once:
            self._thread.start()

    def stop(self) -> None:
        self._started = False
        self._stop.set()
        if not self._watch.at_once:
            self._thread.join(5)
        self._watch.close()

    def _run(self) -> None:
        while True:
            began = time.monotonic()
            try:
                self._last = began, self._watch.look()
            except Exception as error:  # pages are made anew until it answers again
                _LOG.error("the database's state is not known: %s", error)
            if self._stop.wait(EVERY_S):
                return
