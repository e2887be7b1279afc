"""Erases what was kept long enough, as the shop set it; where it set nothing there is no thread."""

from __future__ import annotations

import logging
import threading
from typing import Final

from tagger.store import Keep, Store

_LOG = logging.getLogger(__name__)
EVERY_S: Final = 6 * 3600.0
_FIRST_S: Final = 60.0  # after the start: those who wait for a page come first
_STOP_S: Final = 5.0


class Eraser:
    """A thread that erases; one a process is enough, several do no harm."""

    def __init__(self, store: Store, keep: Keep, first_s: float = _FIRST_S) -> None:
        self._store, self._keep, self._first_s = store, keep, first_s
        self._stop = threading.Event()
        self._thread = threading.Thread(target=self._run, name="retention", daemon=True)

    def start(self) -> None:
        if self._keep != Keep():
            self._thread.start()

    def stop(self) -> None:
        """Ends; a part that is being erased is finished first."""
        self._stop.set()
        if self._thread.ident is not None:
            self._thread.join(_STOP_S)

    def _run(self) -> None:
        wait = self._first_s
        while not self._stop.wait(wait):
            wait = EVERY_S
            try:
                old = self._store.erase_old(self._keep)
            except Exception as error:  # the database may be away for a while: it is tried again
                _LOG.error("what was kept long enough is not erased: %s", error)
                continue
            _LOG.info(
                "erased: contacts %d, photos %d, reports of fitting %d", old.contacts, old.photos, old.reports
            )
