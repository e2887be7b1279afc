"""The trade's tables with the shop's own rows, loaded anew when the shop keeps or withdraws one."""

from __future__ import annotations

import threading

from api.settings import Settings
from tagger.store import Store
from tagger.trade.tables import Tables


class ShopTables:
    """The tables of today: each process looks at the store's revision whenever it is asked for them."""

    def __init__(self, settings: Settings, store: Store) -> None:
        self._settings, self._store = settings, store
        self._lock = threading.Lock()
        self._revision: tuple[int, int] | None = None
        self._tables = self.now()

    def now(self) -> Tables:
        """Raises TradeError where a row of the shop's cannot be used."""
        revision = self._store.shop_revision()
        with self._lock:
            if revision != self._revision:
                self._tables = self._settings.tables(self._store.held_rows())
                self._revision = revision
            return self._tables
