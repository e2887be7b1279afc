"""Scans gathered in memory and written together, so that a page that is opened writes nothing.

What a process has gathered is lost when it is killed: ``EVERY_S`` of scans, and those of the time in
which the database took no writing. Scans are counts and nothing else: no page waits for them.
"""

from __future__ import annotations

import logging
import threading
from datetime import datetime
from typing import Final

from tagger.code import link
from tagger.errors import TaggerError
from tagger.store import Store

_LOG = logging.getLogger(__name__)
EVERY_S = 10.0  # from the first scan that waits to the moment when all that wait are written
BATCH: Final = 500  # in one transaction: other writers come in between
MOST: Final = 100_000  # that wait while the database takes none; further ones are not counted
_STOP_S: Final = 5.0


class ScanCounts:
    """A thread that writes what was gathered; of several processes each has its own."""

    def __init__(self, store: Store) -> None:
        self._store = store
        self._waiting: list[tuple[str, datetime]] = []  # oldest first
        self._writing = threading.Lock()
        self._some, self._stop = threading.Event(), threading.Event()
        self._thread = threading.Thread(target=self._run, name="scan counts", daemon=True)

    def add(self, path: str) -> None:
        """Counts a scan of the tag at this path; of a slip in its number the page itself has said so."""
        try:
            number = link.parse(path).number
        except TaggerError:
            return
        if len(self._waiting) < MOST:
            self._waiting.append((number, self._store.now()))
            self._some.set()

    def write(self) -> None:
        """Writes all that wait. What the database does not take goes on waiting, and its error is raised."""
        with self._writing:
            self._some.clear()
            while batch := self._waiting[:BATCH]:
                try:
                    self._store.record_scans(batch)
                except Exception:
                    self._some.set()
                    raise
                del self._waiting[: len(batch)]

    def start(self) -> None:
        self._thread.start()

    def stop(self) -> None:
        """Writes what waits and ends, or, where the database takes nothing, ends without."""
        self._stop.set()
        self._some.set()
        self._thread.join(_STOP_S)

    def _run(self) -> None:
        while not self._stop.is_set():
            self._some.wait()
            self._stop.wait(EVERY_S)
            try:
                self.write()
            except Exception as error:  # the database may be full or away for a while
                _LOG.error("%d scans wait, they cannot be written: %s", len(self._waiting), error)
